"""The task panel of a carcass."""

from __future__ import annotations

import string
from collections.abc import Iterator
from dataclasses import replace
from itertools import count
from typing import Any

from closetbench.core.closet import part_weight
from closetbench.core.drags import Drag, carcass_drags
from closetbench.core.errors import ClosetError
from closetbench.core.frame import LEAST_OPENING
from closetbench.core.joinery import Joint
from closetbench.core.specs import BackKind, BaseKind, BaySpec, CarcassSpec, TopKind
from closetbench.gui import choices, units
from closetbench.gui.bays_form import BaysForm
from closetbench.gui.component_sketch import ComponentSketch, labels_in
from closetbench.gui.fields import (
    CheckField,
    ChoiceField,
    Field,
    LengthField,
    NumberField,
    TextField,
)
from closetbench.gui.form import FindingsList, Fold, Form
from closetbench.gui.qt import translate
from closetbench.gui.remembered import last_values
from closetbench.gui.spec_panel import SpecPanel
from closetbench.gui.trial import verify_spec
from closetbench.model import bridge
from closetbench.model.make import MATERIAL, write_spec

CONTEXT = "Closetbench_Carcass"


_AS_THE_LAST = (
    "depth", "base", "back", "joint", "shelf_joint", "top", "band", "shelf_band", "shelf_lip",
    "rules", "drill", "groove_stop", "against_back",
)
"""What a new carcass has from the one before it, beside the board."""


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


def new_spec(closet: Any) -> CarcassSpec:
    """A carcass for the rest of the envelope's width, of the boards that the last one is of;
    the first one as it was last accepted elsewhere, where that can be built.

    Raises ``ClosetError`` where the others leave nothing.
    """
    design = bridge.design_of(closet)
    built = bridge.closet_of(closet)
    standing = [s for s in design.components if isinstance(s, CarcassSpec)]
    taken = {o.Label for o in closet.Document.Objects}
    name = next(n for n in _names() if n not in taken)
    spec = CarcassSpec(name, standing[-1].material if standing else MATERIAL)
    if standing:
        last = standing[-1]
        spec = replace(spec, **{name: getattr(last, name) for name in _AS_THE_LAST})
        right = max(c.box.x1 for c in built.components if c.bays)
        left_over = built.envelope.width - right
        board = bridge.catalogue_of(closet).material(spec.material)
        if left_over < 2 * board.thickness + LEAST_OPENING:
            raise ClosetError(
                closet.Label, _tr("width that is left"), f"{left_over:.1f} mm",
                _tr("edit {} and give it a width that leaves room for another").format(
                    standing[-1].name),
            )
        return spec
    remembered = last_values(CarcassSpec)
    if remembered:
        try:
            tried = replace(spec, **remembered)
            bridge.build(
                replace(design, components=(*design.components, tried)),
                bridge.catalogue_of(closet), bridge.format_of(closet))
        except ClosetError:
            return spec
        return tried
    return spec


def _names() -> Iterator[str]:
    yield from string.ascii_uppercase
    yield from (f"A{n}" for n in count(2))


class CarcassPanel(SpecPanel):
    """Sizes, bays, joints, base and back of a carcass."""

    page = "Carcass"

    # -- the specification

    def spec(self) -> Any:
        return bridge.spec_of(self.obj)

    def verify(self, spec: Any) -> None:
        """Build the carcass in its closet, the others to its right included."""
        verify_spec(self.obj, spec)

    def write(self, spec: Any) -> None:
        write_spec(self.obj, spec)

    # -- the forms

    def build(self) -> None:
        self.catalogue = bridge.catalogue_of(bridge.closet_for(self.obj))
        self.bays = BaysForm(self._grow, self._drop)
        self.form = [self._main(), self.bays, self._make_up(), self._results()]
        self.bind(*self.fields)
        self.sketch.follow(self.fields, labels_in(self.forms))
        self._bay_rows()

    def _main(self) -> Form:
        form = Form(_tr("Carcass"), "carcass")
        self.sketch = ComponentSketch("Carcass")
        form.whole(self.sketch)
        form.row(_tr("Name"), TextField("name"))
        form.row(_tr("Material"), ChoiceField("material", choices.materials(self.catalogue)))
        blank = _tr("envelope")
        self.sizes = {
            "width": LengthField("width", "width", blank),
            "height": LengthField("height", "height", blank),
            "depth": LengthField("depth", "depth", blank),
        }
        tip = _tr("Outer size, base included. Left empty, it is what the envelope leaves.")
        form.row(_tr("Width"), self.sizes["width"], tip=tip)
        form.row(_tr("Height"), self.sizes["height"], tip=tip)
        form.row(_tr("Depth"), self.sizes["depth"], tip=tip)
        self.left = LengthField(
            "x", "distance from the left", _tr("beside the last"))
        form.row(_tr("From the left"), self.left, tip=_tr(
            "Distance of its left side from the left of the envelope. Left empty, it stands "
            "beside the carcass before it."))
        form.check(CheckField("against_back", _tr("Against the back")), _tr(
            "Stands at the rear of a deeper envelope, else at its front."))
        return form

    def _make_up(self) -> Form:
        form = Form(_tr("Joints, base and back"), "carcass")
        case_joints = [(j, choices.words(j.value)) for j in Joint if j is not Joint.CLEATS]
        form.row(_tr("Top and bottom by"), ChoiceField("joint", case_joints))
        form.row(_tr("Fixed shelves by"), ChoiceField("shelf_joint", choices.of_enum(Joint)))
        form.row(_tr("Top lies"), ChoiceField("top", choices.of_enum(TopKind)))
        form.row(_tr("Edge band"), ChoiceField("band", choices.bands(self.catalogue)))
        same = (None, _tr("as the carcass"))
        form.row(_tr("Shelf band"), ChoiceField("shelf_band", choices.bands(self.catalogue)),
                 tip=_tr("Edge band of the shelves' front edges, or of their lips. Automatic: as "
                         "the carcass's."))
        form.row(_tr("Shelf lip"), LengthField("shelf_lip.height", "height of the shelves' lip"),
                 tip=_tr("Height of a strip in front of each shelf, level with its upper face; 0 "
                         "for none. It stiffens the shelf, which is that much less deep."))
        self.lip_material = ChoiceField(
            "shelf_lip.material", choices.materials(self.catalogue, same))
        form.row(_tr("Lip material"), self.lip_material)
        form.row(_tr("Stands on"), ChoiceField("base.kind", choices.of_enum(BaseKind)))
        self.base = [
            LengthField("base.height", "base height"),
            LengthField("base.setback", "base setback"),
            ChoiceField("base.material", choices.materials(self.catalogue, same)),
        ]
        self.spacing = LengthField("base.spacing", "spacing of the base's cross members")
        form.row(_tr("Base height"), self.base[0])
        form.row(_tr("Set back"), self.base[1], tip=_tr(
            "From the front of the carcass to the kick board or the frame's front rail."))
        form.row(_tr("Base material"), self.base[2])
        form.row(_tr("Members every"), self.spacing, tip=_tr(
            "Widest clear distance between the cross members of a base frame."))
        form.row(_tr("Back"), ChoiceField("back.kind", choices.of_enum(BackKind)))
        by_rule = (None, _tr("by rule"))
        self.back_material = ChoiceField(
            "back.material", choices.materials(self.catalogue, by_rule))
        self.inset = LengthField("back.inset", "back inset")
        self.cleat = LengthField("back.cleat_height", "cleat height")
        form.row(_tr("Back material"), self.back_material)
        form.row(_tr("Back inset"), self.inset, tip=_tr(
            "From the rear edges to the back's rear face: room to scribe to the wall."))
        form.row(_tr("Cleat height"), self.cleat)
        figures = self._figures()
        form.whole(Fold(_tr("Shop figures: grooves and shelf pins"), figures), figures)
        return form

    def _figures(self) -> Form:
        form = Form("", "panel")
        rule = _tr("by rule")
        form.row(_tr("Groove stop"), LengthField("groove_stop", "groove stop", rule), tip=_tr(
            "How far grooves stay back from the front edge; 0 runs them through. By rule: "
            "stopped behind a banded edge, through a bare one."))
        form.row(_tr("Groove depth"), LengthField("rules.depth", "groove depth", rule))
        form.row(_tr("of the thickness"), NumberField(
            "rules.depth_fraction", "groove depth as a fraction of the thickness", 0.1, 0.5))
        for name, label, prop, tip in (
            ("rules.depth_step", _tr("in steps of"), "step of the groove depth", ""),
            ("rules.fit", _tr("Fit"), "fit", _tr("Groove wider than the panel in it.")),
            ("rules.end_clearance", _tr("End clearance"), "end clearance", _tr(
                "How far a tongue stays short of the bottom of its groove.")),
            ("drill.diameter", _tr("Pin holes"), "diameter", ""),
            ("drill.pitch", _tr("Pin pitch"), "pitch", ""),
            ("drill.front", _tr("Front row at"), "front row", ""),
            ("drill.rear", _tr("Rear row at"), "rear row", ""),
            ("drill.margin", _tr("Clear of shelves"), "margin", ""),
            ("drill.depth", _tr("Hole depth"), "depth", ""),
            ("drill.play", _tr("Shelf play"), "play", _tr(
                "How much shorter than its bay a loose shelf is.")),
        ):
            form.row(label, LengthField(name, prop), tip=tip)
        return form

    def _results(self) -> Form:
        form = Form(_tr("What it comes to"), "part")
        self.summary = form.note("summary")
        self.findings = FindingsList()
        form.whole(self.findings)
        return form

    # -- bays

    def _bay_rows(self) -> None:
        made = self.bays.rebuild(self.spec().bays)
        self.bind(*made)
        if self.is_open:
            self.settle()

    def _grow(self) -> None:
        spec = self.spec()
        self._put_bays(spec, (*spec.bays, BaySpec()))

    def _drop(self, index: int) -> None:
        spec = self.spec()
        self._put_bays(spec, (*spec.bays[:index], *spec.bays[index + 1:]))

    def _put_bays(self, spec: Any, bays: tuple[BaySpec, ...]) -> None:
        self.bays.trouble.say("")
        spec = replace(spec, bays=bays)
        try:
            self.verify(spec)
        except ClosetError as error:
            self.bays.trouble.say(units.explained(self.reason(error)))
            return
        self._pending = {k: v for k, v in self._pending.items() if not k.startswith("bays.")}
        self.write(spec)
        # the new bay's object comes into being in the recompute
        self.preview_now()
        self._bay_rows()

    def take(self, field: Field) -> None:
        """Heights given and the number of fixed shelves go together."""
        place, _, what = field.name.rpartition(".")
        if place.startswith("bays.") and what in ("heights", "fixed"):
            self._take_shelves(field, place, what)
            return
        super().take(field)

    def _take_shelves(self, field: Field, place: str, what: str) -> None:
        other = "fixed" if what == "heights" else "heights"
        try:
            value = field.value()
        except ClosetError as error:
            self.set_error(field, error.limit)
            return
        self._pending[field.name] = value
        self._pending[f"{place}.{other}"] = len(value) if what == "heights" else ()
        self.try_pending(field)

    # -- handles in the 3D view

    def handle_frame(self) -> Any:
        return bridge.survey_for(bridge.closet_for(self.obj))

    def handle_title(self, drag: Drag) -> str:
        titles = {"width": _tr("Width"), "height": _tr("Height"), "depth": _tr("Depth")}
        return titles.get(drag.key) or translate("Closetbench_Bay", "Clear width")

    # -- what follows

    def own_subjects(self) -> tuple[str, ...]:
        return (self.obj.Label, "joinery", "shelf pin holes")

    def refresh(self) -> None:
        spec = self.spec()
        self._enable(spec)
        try:
            component = bridge.component_of(self.obj)
        except ClosetError as error:
            self.summary.setText(units.explained(str(error)))
            self.findings.show_findings(())
            self.handles.place(())
            return
        self.handles.place(carcass_drags(spec, component, self.locked))
        box = component.box
        outer = (box.x1 - box.x0, box.z1 - box.z0, box.y1 - box.y0)
        for field, value in zip(self.sizes.values(), outer, strict=True):
            field.hint(value)
        self.left.hint(box.x0)
        weight = sum(part_weight(p, self.catalogue) for p in component.parts)
        clear = ", ".join(units.shown(b.space.x1 - b.space.x0) for b in component.bays)
        self.summary.setText("\n".join((
            _tr("Outer: {} wide, {} high, {} deep").format(*(units.shown(v) for v in outer)),
            _tr("Clear widths: {}").format(clear),
            _tr("{} parts, {:.1f} kg").format(len(component.parts), weight),
        )))
        self.findings.show_findings(component.findings)

    def _enable(self, spec: Any) -> None:
        form = self.form[2]
        for field in self.base:
            form.enable(field, spec.base.kind is not BaseKind.NONE)
        form.enable(self.lip_material, spec.shelf_lip.height > 0)
        form.enable(self.spacing, spec.base.kind is BaseKind.FRAME)
        form.enable(self.back_material, spec.back.kind is not BackKind.NONE)
        form.enable(self.inset, spec.back.kind is BackKind.PANEL)
        form.enable(self.cleat, spec.back.kind is BackKind.CLEATS)


