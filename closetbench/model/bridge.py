"""Between document objects and the core: designs out of properties, and what they come to.

What a design comes to is kept for a while by the (frozen) design itself, and looked up
once per closet and recompute.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from pathlib import Path
from typing import Any

import FreeCAD

from closetbench.core.bodies import Body
from closetbench.core.circumstances import Circumstances
from closetbench.core.closet import Closet, ClosetDesign, Spec, build_closet
from closetbench.core.component import Component
from closetbench.core.errors import ClosetError, LengthError
from closetbench.core.existing import ExistingSpec
from closetbench.core.figures import Figures
from closetbench.core.kept import with_kept
from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.single import build_panel
from closetbench.core.specs import BaySpec
from closetbench.model.base import class_of
from closetbench.model.carcass import bay_spec, carcass_spec
from closetbench.model.contents import CONTENTS, content_spec, rank
from closetbench.model.panel import panel_spec
from closetbench.model.plain import from_text
from closetbench.model.survey import site_of
from closetbench.resources import load_catalogue

_READERS: Mapping[str, Callable[[Any], Any]] = {
    "Carcass": carcass_spec, **dict.fromkeys(CONTENTS, content_spec), "GroovedPanel": panel_spec,
}
"""How a component's properties are read, by its class."""
_KEPT = 24
_built: OrderedDict[tuple[ClosetDesign, int, LengthFormat], tuple[Catalogue, Closet]] = (
    OrderedDict()
)
_measured: OrderedDict[tuple[int, tuple[tuple[str, str], ...]], tuple[Catalogue, Catalogue]] = (
    OrderedDict()
)
_passes: dict[str, dict[str, Built]] = {}


@dataclass(frozen=True)
class Built:
    """What a closet comes to, with what its part objects need to show it.

    ``bodies``: everything that takes space, by its component's name and its own.
    """

    closet: Closet
    bodies: Mapping[str, Mapping[str, Body]]
    catalogue: Catalogue
    form: LengthFormat
    at: FreeCAD.Placement


def end_pass(doc: Any) -> None:
    """A recompute starts or is over: what was looked up in the last one counts no more."""
    _passes.pop(doc.Name, None)


def closet_for(obj: Any) -> Any:
    """The closet that an object belongs to, None where there is none."""
    if hasattr(obj, "Closet"):
        return obj.Closet
    return next((o for o in obj.InList if class_of(o) == "Closet"), None)


def survey_for(closet: Any) -> Any:
    """The survey in a closet's group, None where there is none."""
    return next((o for o in closet.Group if class_of(o) == "Survey"), None)


def carcasses_in(closet: Any) -> list[Any]:
    """The carcasses of a closet from left to right."""
    return [o for o in closet.Group if class_of(o) == "Carcass"]


def chain_of(closet: Any) -> list[Any]:
    """The components whose parts are objects, in the order in which they are built."""
    found = [o for o in closet.Group if class_of(o) == "Carcass" or class_of(o) in CONTENTS]
    return sorted(found, key=rank)


def components_in(closet: Any) -> list[Any]:
    """The objects of a design's components, in the design's order."""
    return [o for o in closet.Group if class_of(o) in _READERS]


def spec_of(obj: Any) -> ClosetDesign | Spec | BaySpec:
    """What an object's properties say: of a survey a design without components."""
    others: dict[str, Callable[[Any], Any]] = {
        "Survey": site_of, "Bay": bay_spec, "Closet": design_of,
    }
    found: ClosetDesign | Spec | BaySpec = (others | dict(_READERS))[class_of(obj)](obj)
    return found


def design_of(closet: Any) -> ClosetDesign:
    """The whole design, its components in the group's order."""
    return _design(closet, [_READERS[class_of(o)](o) for o in components_in(closet)])


def _design(closet: Any, specs: Sequence[Spec]) -> ClosetDesign:
    survey = survey_for(closet)
    if survey is None:
        raise ClosetError(closet.Label, "survey", "missing", "put a survey into the closet's group")
    return replace(
        site_of(survey), name=closet.Label, components=tuple(specs),
        circumstances=circumstances_of(closet),
    )


def circumstances_of(closet: Any) -> Circumstances:
    """What is known about the place and the people."""
    return from_text(Circumstances, closet.Circumstances, closet.Label, "circumstances")


def closet_of(closet: Any) -> Closet:
    """What the design comes to; ``ClosetError`` for what cannot be built."""
    return build(design_of(closet), catalogue_of(closet), format_of(closet))


def component_of(obj: Any) -> Component:
    """What a component comes to; ``ClosetError`` if it cannot be built.

    It is looked up in the whole closet. Only where that cannot be built, by a bad value of
    another component it may be, no more is built than comes before it.
    """
    closet = closet_for(obj)
    if class_of(obj) == "GroovedPanel":
        return build_panel(panel_spec(obj), catalogue_of(closet))
    if closet is None:
        raise ClosetError(obj.Label, "closet", "none", "put it into the group of a closet")
    try:
        whole = closet_of(closet)
        return next(c for c in whole.components if c.name == obj.Label)
    except ClosetError:
        design = _design(closet, _needed(closet, obj))
        whole = build(design, catalogue_of(closet), format_of(closet))
        return next(c for c in whole.components if c.name == obj.Label)


def _needed(closet: Any, obj: Any) -> list[Spec]:
    """What has to stand for a component to be built: what comes before it, and the pieces
    that carcasses among that are made to measure for."""
    chain = chain_of(closet)
    index = chain.index(obj) + 1
    specs = [_READERS[class_of(o)](o) for o in chain[:index]]
    names = {s.name for s in specs}
    later = (_READERS[class_of(o)](o) for o in chain[index:])
    return specs + [
        s for s in later if isinstance(s, ExistingSpec) and s.spot.carcass in names
    ]


def built_of(closet: Any, afresh: bool = False) -> Built:
    """What a closet comes to, looked up once in a recompute; ``afresh``: now."""
    doc = closet.Document
    known = _passes.setdefault(doc.Name, {}) if doc.Recomputing else {}
    if afresh or closet.Name not in known:
        whole = closet_of(closet)
        bodies = {c.name: {b.name: b for b in c.bodies} for c in whole.components}
        known[closet.Name] = Built(
            whole, bodies, boards_for(closet), format_of(closet), survey_for(closet).Placement
        )
    return known[closet.Name]


def build(
    design: ClosetDesign, catalogue: Catalogue, form: LengthFormat = MILLIMETRES
) -> Closet:
    """``build_closet``, remembered."""
    key = (design, id(catalogue), form)
    if key not in _built:
        # the catalogue is kept too, so that its id stays its own
        _remember(_built, key, (catalogue, build_closet(design, catalogue, Figures(form))))
    _built.move_to_end(key)
    return _built[key][1]


def catalogue_of(closet: Any | None) -> Catalogue:
    """The catalogue that a closet uses: ours, the user's file, the measured thicknesses."""
    if closet is None:
        return load_catalogue()
    base = load_catalogue(Path(closet.Catalogue) if closet.Catalogue else None)
    key = (id(base), tuple(sorted(closet.Measured.items())))
    if not key[1]:
        return base
    if key not in _measured:
        materials = dict(base.materials)
        for name, text in key[1]:
            subject = f"{closet.Label}, measured thickness"
            board = base.material(name, subject=subject)
            try:
                value = float(text)
            except ValueError:
                raise ClosetError(subject, name, text, "must be a number of mm") from None
            materials[name] = board.with_measured(value)
        _remember(_measured, key, (base, replace(base, materials=materials)))
    return _measured[key][1]


def boards_for(closet: Any) -> Catalogue:
    """The catalogue with the panels that are kept from existing pieces."""
    specs = (content_spec(o) for o in closet.Group if class_of(o) in CONTENTS)
    return with_kept(catalogue_of(closet), [s for s in specs if isinstance(s, ExistingSpec)])


def format_of(closet: Any | None) -> LengthFormat:
    """How a closet's texts print lengths."""
    if closet is None:
        return MILLIMETRES
    try:
        step = Fraction(closet.LengthStep)
    except (ValueError, ZeroDivisionError):
        raise LengthError(
            closet.Label, "length step", closet.LengthStep, "must be a number or a fraction"
        ) from None
    return LengthFormat(closet.LengthStyle, step)


def _remember(store: OrderedDict[Any, Any], key: Any, value: Any) -> None:
    store[key] = value
    while len(store) > _KEPT:
        store.popitem(last=False)
