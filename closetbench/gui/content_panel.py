"""The task panel of what goes into or beside carcasses: drawers, doors, rods and the like.

One panel for all: its fields follow from the specification.
"""

from __future__ import annotations

import math
import typing
from collections.abc import Iterable, Iterator
from dataclasses import MISSING, fields, replace
from itertools import chain, count
from typing import Any

from closetbench.core.closet import part_weight
from closetbench.core.component import Component
from closetbench.core.errors import ClosetError
from closetbench.core.inside import Spot
from closetbench.core.specs import CarcassSpec
from closetbench.gui import units
from closetbench.gui.cards_form import CardsForm
from closetbench.gui.component_sketch import ComponentSketch, labels_in
from closetbench.gui.fields import ChoiceField, CountField, LengthField, TextField
from closetbench.gui.form import FindingsList, Fold, Form
from closetbench.gui.qt import translate
from closetbench.gui.remembered import kept_values, last_values
from closetbench.gui.spec_fields import (
    card_lines,
    form_of,
    label_of,
    new_record,
    record_lists,
)
from closetbench.gui.spec_panel import SpecPanel
from closetbench.gui.trial import verify_spec
from closetbench.gui.view_providers import ICONS
from closetbench.model import bridge
from closetbench.model.base import class_of
from closetbench.model.contents import CONTENTS
from closetbench.model.make import MATERIAL, write_spec
from closetbench.model.spec_table import field_texts

CONTEXT = "Closetbench_Component"
_PART, _PLAY = 0.7, 6.0
"""How much of its place a piece takes until its sizes are entered, and what is left around
one that fills it, mm."""
_VARIANTS: dict[str, tuple[dict[str, Any], ...]] = {"Doors": ({}, {"leaves": 2})}
"""What to try where the usual does not go: two doors where one is too heavy or too wide."""


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


class ContentPanel(SpecPanel):
    """Name, place and all that the specification says."""

    # -- the specification

    def help_page(self) -> str:
        return class_of(self.obj)

    def spec(self) -> Any:
        spec = bridge.spec_of(self.obj)
        if self._has_spot and spec.spot is None:
            return replace(spec, spot=Spot(""))
        return spec

    def verify(self, spec: Any) -> None:
        verify_spec(self.obj, _free(spec))

    def write(self, spec: Any) -> None:
        write_spec(self.obj, _free(spec))

    def own_subjects(self) -> tuple[str, ...]:
        return (self.obj.Label,)

    # -- the forms

    def build(self) -> None:
        kind = class_of(self.obj)
        self.catalogue = bridge.boards_for(bridge.closet_for(self.obj))
        spec = CONTENTS[kind].spec
        hints = typing.get_type_hints(spec)
        self._has_spot = "spot" in hints
        icon = ICONS[kind]
        place = Form(_tr("Place"), icon)
        place.row(_tr("Name"), TextField("name"))
        if "carcass" in hints:
            place.row(_tr("In front of"), ChoiceField("carcass", self._hosts(free=False)))
        if self._has_spot:
            self._spot(place, type(None) in typing.get_args(hints["spot"]))
        own = form_of(spec, self.title_of(kind), icon, self.catalogue)
        self.lists = {name: self._list(own, name, inner) for name, inner in record_lists(spec)}
        self.sketch = ComponentSketch(kind)
        place.whole(self.sketch)
        self.form = [place, own, self._results()]
        self.bind(*self.fields)
        self.sketch.follow(self.fields, labels_in(self.forms))
        for name in self.lists:
            self._cards(name)

    # -- lists of records, such as the screws of an existing piece

    def _list(self, form: Form, name: str, kind: type[Any]) -> CardsForm:
        cards = CardsForm(
            label_of(name, type_of_spec(self.obj)), name, _tr("Add"),
            lambda i: card_lines(kind, f"{name}.{i}", self.catalogue),
            lambda: self._grow(name, kind), lambda i: self._shrink(name, i),
        )
        tip = field_texts(type_of_spec(self.obj)).get(name, "")
        fold = Fold(cards.windowTitle(), cards)
        fold.head.setToolTip(_tr(tip) if tip else "")
        form.whole(fold, cards)
        return cards

    def _cards(self, name: str) -> None:
        self.bind(*self.lists[name].rebuild(len(getattr(self.spec(), name))))
        if self.is_open:
            self.settle()

    def _grow(self, name: str, kind: type[Any]) -> None:
        spec = self.spec()
        known = getattr(spec, name)
        self._put_list(name, replace(spec, **{name: (*known, new_record(kind, len(known) + 1))}))

    def _shrink(self, name: str, index: int) -> None:
        spec = self.spec()
        known = getattr(spec, name)
        self._put_list(name, replace(spec, **{name: (*known[:index], *known[index + 1:])}))

    def _put_list(self, name: str, spec: Any) -> None:
        trouble = self.lists[name].trouble
        trouble.say("")
        try:
            self.verify(spec)
        except ClosetError as error:
            trouble.say(units.explained(self.reason(error)))
            return
        self._pending = {k: v for k, v in self._pending.items() if not k.startswith(f"{name}.")}
        self.write(spec)
        self._cards(name)
        self.preview_soon()

    def _spot(self, form: Form, free: bool) -> None:
        form.row(_tr("In"), ChoiceField("spot.carcass", self._hosts(free)))
        form.row(_tr("Bay"), CountField("spot.bay", 1, 50), tip=_tr("From the left, 1 first."))
        form.row(_tr("Compartment"), CountField("spot.compartment", 1, 50), tip=_tr(
            "The space between two fixed shelves, from the bottom, 1 first."))
        form.row(_tr("Starts at"), LengthField(
            "spot.start", "start above the compartment's floor"), tip=_tr(
            "How far above the compartment's floor it begins."))
        form.row(_tr("Height"), LengthField("spot.height", "height", _tr("all that is left")))

    def _hosts(self, free: bool) -> list[tuple[str, str]]:
        closet = bridge.closet_for(self.obj)
        kinds = ("Carcass", "Bench") if self._has_spot else ("Carcass",)
        names = [
            o.Label for o in bridge.components_in(closet)
            if class_of(o) in kinds and o != self.obj
        ]
        first = [("", _tr("free in the closet"))] if free else []
        return first + [(name, name) for name in names]

    @staticmethod
    def title_of(kind: str) -> str:
        """What a class of objects is called."""
        words = "".join(f" {c.lower()}" if c.isupper() else c for c in kind).strip()
        return _tr(words.capitalize())

    def _results(self) -> Form:
        form = Form(_tr("What it comes to"), "part")
        self.summary = form.note("summary")
        self.findings = FindingsList()
        form.whole(self.findings)
        return form

    def refresh(self) -> None:
        if self._has_spot:
            inside = bool(self.spec().spot.carcass)
            for field in self.form[0].fields:
                if field.name.startswith("spot.") and field.name != "spot.carcass":
                    self.form[0].enable(field, inside)
        try:
            component = bridge.component_of(self.obj)
        except ClosetError as error:
            self.summary.setText(units.explained(str(error)))
            self.findings.show_findings(())
            return
        self.summary.setText(self._summary(component))
        self.findings.show_findings(component.findings)

    def _summary(self, component: Component) -> str:
        box = component.box
        sizes = (box.x1 - box.x0, box.z1 - box.z0, box.y1 - box.y0)
        weight = sum(part_weight(p, self.catalogue) for p in component.parts)
        return "\n".join((
            _tr("Outer: {} wide, {} high, {} deep").format(*(units.shown(v) for v in sizes)),
            _tr("{} parts, {:.1f} kg").format(len(component.bodies), weight),
        ))


def type_of_spec(obj: Any) -> type[Any]:
    """The specification that a content's properties stand for."""
    return CONTENTS[class_of(obj)].spec


def _free(spec: Any) -> Any:
    """A specification of which the place may be none."""
    spot = getattr(spec, "spot", None)
    return replace(spec, spot=None) if spot is not None and not spot.carcass else spec


def new_spec(closet: Any, kind: str, preferred: str = "") -> Any:
    """A content of a class, in the first place of the closet where it can be built, those of
    the component named ``preferred`` before the others. Raises ``ClosetError`` for the first
    place tried where there is none."""
    design, catalogue = bridge.design_of(closet), bridge.catalogue_of(closet)
    taken = {o.Label for o in closet.Document.Objects}
    words = ContentPanel.title_of(kind)
    name = next(n for n in chain([words], (f"{words} {i}" for i in count(2))) if n not in taken)
    problem: ClosetError | None = None
    for spec in _tries(closet, kind, name, preferred):
        try:
            bridge.build(replace(design, components=(*design.components, spec)), catalogue)
        except ClosetError as error:
            problem = problem or error
        else:
            return spec
    raise problem or ClosetError(
        closet.Label, _tr("carcass"), _tr("none"), _tr("add a carcass for it to stand in first"))


def _as_the_last(spec: type[Any], standing: Iterable[Any]) -> dict[str, Any]:
    """What a user chooses once, of the last component of the same kind; where there is none,
    as it was last accepted elsewhere. Sizes are those of the place."""
    last = next((s for s in reversed(list(standing)) if type(s) is spec), None)
    return last_values(spec) if last is None else kept_values(last)


def _tries(closet: Any, kind: str, name: str, preferred: str) -> Iterator[Any]:
    spec = CONTENTS[kind].spec
    remembered = _as_the_last(spec, bridge.design_of(closet).components)
    if remembered:
        yield from _places(closet, kind, remembered | {"name": name}, preferred)
    yield from _places(closet, kind, {"name": name}, preferred)


def _places(
    closet: Any, kind: str, values: dict[str, Any], preferred: str
) -> Iterator[Any]:
    spec = CONTENTS[kind].spec
    hints = typing.get_type_hints(spec)
    built = bridge.closet_of(closet)
    hosts = [c for c in built.components if c.bays]
    hosts.sort(key=lambda c: c.name != preferred)
    specs = {s.name: s for s in built.design.components}
    needed = {f.name for f in fields(spec) if f.default is MISSING and f.default_factory is MISSING}
    if "material" in needed:
        values.setdefault("material", next(
            (s.material for s in specs.values() if isinstance(s, CarcassSpec)), MATERIAL))
    if "heights" in needed:
        values["heights"] = (float(math.floor(built.envelope.height * 0.6)),)
    if "carcass" in hints:
        yield from (spec(**values, carcass=host.name) for host in hosts)
    elif "spot" not in hints:
        yield spec(**values)
    else:
        for host, bay, compartment in (
            (h, b, c) for h in hosts for b in range(1, len(h.bays) + 1) for c in (1, 2)
        ):
            box = host.bays[bay - 1].space
            spot = Spot(host.name, bay, compartment)
            for share in (_PART, 1.0):
                room = {
                    "width": (box.x1 - box.x0) * share - _PLAY,
                    "height": (box.z1 - box.z0) * _PART - _PLAY,
                    "depth": (box.y1 - box.y0) * _PART - _PLAY,
                }
                # whole millimetres, as a tape would say
                sizes = {
                    n: float(math.floor(room[word]))
                    for n in needed for word in room if n.startswith(word)
                }
                for more in _VARIANTS.get(kind, ({},)):
                    yield spec(**{**values, **more, **sizes, "spot": spot})
                if not sizes:
                    break
        if "spot" not in needed:
            yield spec(**values)
