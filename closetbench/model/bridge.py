"""Between document objects and the core: designs out of properties, and back.

What a design comes to is kept for a while by the (frozen) design itself, and looked up
once per carcass and recompute.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Mapping
from dataclasses import dataclass, replace
from fractions import Fraction
from pathlib import Path
from typing import Any

import FreeCAD

from closetbench.core.circumstances import Circumstances
from closetbench.core.closet import Closet, ClosetDesign, build_closet
from closetbench.core.component import Component
from closetbench.core.errors import ClosetError, LengthError
from closetbench.core.lengths import LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.parts import Part
from closetbench.core.single import build_panel
from closetbench.core.specs import BaySpec, CarcassSpec, PanelSpec
from closetbench.model.base import class_of
from closetbench.model.carcass import bay_spec, carcass_spec
from closetbench.model.panel import panel_spec
from closetbench.model.plain import from_text
from closetbench.model.survey import site_of
from closetbench.resources import load_catalogue

_KEPT = 24
_built: OrderedDict[tuple[ClosetDesign, int], tuple[Catalogue, Closet]] = OrderedDict()
_measured: OrderedDict[tuple[int, tuple[tuple[str, str], ...]], tuple[Catalogue, Catalogue]] = (
    OrderedDict()
)
_passes: dict[str, dict[str, Built]] = {}


@dataclass(frozen=True)
class Built:
    """What a carcass comes to, with what its part objects need to show it."""

    component: Component
    parts: Mapping[str, Part]
    catalogue: Catalogue
    form: LengthFormat
    at: FreeCAD.Placement


def begin_pass(doc: Any) -> None:
    """A recompute starts: nothing looked up before it counts."""
    _passes[doc.Name] = {}


def end_pass(doc: Any) -> None:
    """A recompute is over."""
    _passes.pop(doc.Name, None)


def closet_for(obj: Any) -> Any:
    """The closet group that holds an object, None where none does."""
    return next((o for o in obj.InList if class_of(o) == "Closet"), None)


def survey_for(closet: Any) -> Any:
    """The survey in a closet group, None where there is none."""
    return next((o for o in closet.Group if class_of(o) == "Survey"), None)


def spec_of(obj: Any) -> ClosetDesign | CarcassSpec | PanelSpec | BaySpec:
    """What an object's properties say: of a survey a design without components."""
    readers = {
        "Survey": site_of, "Carcass": carcass_spec, "GroovedPanel": panel_spec, "Bay": bay_spec,
        "Closet": design_of,
    }
    return readers[class_of(obj)](obj)


def design_of(closet: Any) -> ClosetDesign:
    """The whole design: carcasses and then single panels, each in the group's order."""
    survey = survey_for(closet)
    if survey is None:
        raise ClosetError(closet.Label, "survey", "missing", "put a survey into the closet's group")
    specs = [
        spec_of(o) for name in ("Carcass", "GroovedPanel")
        for o in closet.Group if class_of(o) == name
    ]
    return replace(
        site_of(survey), name=closet.Label, components=tuple(specs),
        circumstances=circumstances_of(closet),
    )


def circumstances_of(closet: Any) -> Circumstances:
    """What is known about the place and the people."""
    return from_text(Circumstances, closet.Circumstances, closet.Label, "circumstances")


def closet_of(closet: Any) -> Closet:
    """What the design comes to; ``ClosetError`` for what cannot be built."""
    return build(design_of(closet), catalogue_of(closet))


def component_of(obj: Any) -> Component:
    """What a carcass or a single panel comes to; ``ClosetError`` if it cannot be built."""
    if class_of(obj) == "GroovedPanel":
        return build_panel(panel_spec(obj), catalogue_of(closet_for(obj)))
    return built_of(obj).component


def built_of(carcass: Any) -> Built:
    """What a carcass comes to, worked out once in a recompute."""
    known = _passes.get(carcass.Document.Name, {})
    if carcass.Name not in known:
        found = _build_carcass(carcass)
        known[carcass.Name] = found
    return known[carcass.Name]


def _build_carcass(carcass: Any) -> Built:
    if carcass.Survey is None:
        raise ClosetError(carcass.Label, "survey", "none", "link the survey of its closet")
    closet = closet_for(carcass)
    row = [carcass] if closet is None else carcasses_in(closet)
    catalogue = catalogue_of(closet)
    site = site_of(carcass.Survey)
    component = _component(site, row, row.index(carcass), catalogue)
    return Built(
        component, {p.name: p for p in component.parts}, catalogue, format_of(closet),
        carcass.Survey.Placement,
    )


def _component(
    site: ClosetDesign, row: list[Any], index: int, catalogue: Catalogue
) -> Component:
    """A carcass follows from those at its left. The whole row is built once for all of them;
    only where that fails, by a bad value further right it may be, no more than is needed."""
    try:
        specs = tuple(carcass_spec(o) for o in row)
        return build(replace(site, components=specs), catalogue).components[index]
    except ClosetError:
        specs = tuple(carcass_spec(o) for o in row[: index + 1])
        return build(replace(site, components=specs), catalogue).components[index]


def carcasses_in(closet: Any) -> list[Any]:
    """The carcasses of a closet from left to right."""
    return [o for o in closet.Group if class_of(o) == "Carcass"]


def build(design: ClosetDesign, catalogue: Catalogue) -> Closet:
    """``build_closet``, remembered."""
    key = (design, id(catalogue))
    if key not in _built:
        # the catalogue is kept too, so that its id stays its own
        _remember(_built, key, (catalogue, build_closet(design, catalogue)))
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
                materials[name] = board.with_measured(float(text))
            except ClosetError:
                raise
            except ValueError:
                raise ClosetError(subject, name, text, "must be a number of mm") from None
        _remember(_measured, key, (base, replace(base, materials=materials)))
    return _measured[key][1]


def format_of(closet: Any | None) -> LengthFormat:
    """How a closet's texts print lengths."""
    if closet is None:
        return LengthFormat("mm", Fraction(1, 10))
    try:
        return LengthFormat(closet.LengthStyle, Fraction(closet.LengthStep))
    except (ValueError, ZeroDivisionError) as error:
        if isinstance(error, ClosetError):
            raise
        raise LengthError(
            closet.Label, "length step", closet.LengthStep, "must be a number or a fraction"
        ) from None


def _remember(store: OrderedDict[Any, Any], key: Any, value: Any) -> None:
    store[key] = value
    while len(store) > _KEPT:
        store.popitem(last=False)
