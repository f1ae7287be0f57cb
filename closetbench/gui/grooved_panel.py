"""The task panel of a single grooved panel."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from closetbench.core.drags import Drag, panel_drags
from closetbench.core.errors import ClosetError
from closetbench.core.panel import Face, Grain, Rim
from closetbench.core.specs import PanelSpec
from closetbench.gui import choices, units
from closetbench.gui.fields import (
    ChoiceField,
    CountField,
    LengthField,
    NumberField,
    TextField,
    TicksField,
)
from closetbench.gui.form import FindingsList, Fold, Form
from closetbench.gui.panel_sketch import PanelSketch
from closetbench.gui.qt import translate
from closetbench.gui.remembered import last_values
from closetbench.gui.spec_panel import SpecPanel
from closetbench.gui.trial import verify_spec
from closetbench.model import bridge
from closetbench.model.make import make_panel, write_spec

CONTEXT = "Closetbench_Panel"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


def make_new(doc: Any, closet: Any) -> Any:
    """A panel as one was last accepted, but for its name and its size."""
    panel = make_panel(doc, closet)
    try:
        spec = replace(bridge.spec_of(panel), **last_values(PanelSpec))
        verify_spec(panel, spec)
    except ClosetError:
        return panel
    write_spec(panel, spec)
    return panel


class GroovedPanelPanel(SpecPanel):
    """Size, grooves, rabbets and bands of one panel."""

    page = "Panel"

    def spec(self) -> PanelSpec:
        return bridge.spec_of(self.obj)  # type: ignore[return-value]

    def verify(self, spec: PanelSpec) -> None:
        verify_spec(self.obj, spec)

    def write(self, spec: PanelSpec) -> None:
        write_spec(self.obj, spec)

    def build(self) -> None:
        self.catalogue = bridge.catalogue_of(bridge.closet_for(self.obj))
        self.form = [self._board(), self._grooves(), self._results()]
        self.bind(*self.fields)

    def _board(self) -> Form:
        form = Form(_tr("Panel"), "panel")
        self.sketch = PanelSketch()
        form.whole(self.sketch)
        form.row(_tr("Name"), TextField("name"))
        form.row(_tr("Material"), ChoiceField("material", choices.materials(self.catalogue)))
        tip = _tr("Finished size, edge bands included.")
        form.row(_tr("Length"), LengthField("length", "length"), tip=tip)
        form.row(_tr("Width"), LengthField("width", "width"), tip=tip)
        self.grain = ChoiceField("grain", choices.of_enum(Grain))
        form.row(_tr("Grain along"), self.grain)
        form.row(_tr("Bands at"), TicksField("bands", Rim))
        form.row(_tr("Edge band"), ChoiceField("band", choices.bands(self.catalogue)))
        return form

    def _grooves(self) -> Form:
        form = Form(_tr("Grooves and rabbets"), "panel")
        form.row(_tr("Number of grooves"), CountField("grooves", 0, 200))
        self.lay = [
            ChoiceField("measured_from", choices.of_enum(Rim)),
            LengthField("first", "position"),
            LengthField("spacing", "distance"),
            LengthField("stop_first", "stops"),
            LengthField("stop_last", "stops"),
        ]
        form.row(_tr("Measured from"), self.lay[0], tip=_tr(
            "From an end the grooves run across the width, from an edge along the length."))
        form.row(_tr("First at"), self.lay[1], tip=_tr(
            "From that rim to the near wall of the first groove."))
        form.row(_tr("Spacing"), self.lay[2], tip=_tr("From near wall to near wall."))
        form.heads(_tr("at front or start"), _tr("at rear or end"))
        form.row(_tr("Stopped"), self.lay[3], self.lay[4], tip=_tr(
            "How far the grooves stay away from the rims that they run between; 0 runs through."))
        form.row(_tr("Rabbets at"), TicksField("rabbets", Rim))
        self.cut = [
            ChoiceField("face", choices.of_enum(Face)),
            ChoiceField(
                "mating", choices.materials(self.catalogue, (None, _tr("the same board")))),
            LengthField("depth", "groove depth", _tr("by rule")),
        ]
        form.row(_tr("In the face"), self.cut[0])
        form.row(_tr("For panels of"), self.cut[1], tip=_tr(
            "Board that goes into the grooves: its measured thickness sets their width."))
        form.row(_tr("Depth"), self.cut[2])
        inner = Form("", "panel")
        inner.row(_tr("of the thickness"), NumberField(
            "rules.depth_fraction", "groove depth as a fraction of the thickness", 0.1, 0.5))
        inner.row(_tr("in steps of"), LengthField("rules.depth_step", "step of the groove depth"))
        inner.row(_tr("Fit"), LengthField("rules.fit", "fit"))
        form.whole(Fold(_tr("Shop figures"), inner), inner)
        return form

    def _results(self) -> Form:
        form = Form(_tr("What it comes to"), "part")
        self.summary = form.note("summary")
        self.findings = FindingsList()
        form.whole(self.findings)
        return form

    def handle_title(self, drag: Drag) -> str:
        return _tr("Length") if drag.key == "length" else _tr("Width")

    def own_subjects(self) -> tuple[str, ...]:
        return (self.obj.Label, f"{self.obj.Label}: panel")

    def refresh(self) -> None:
        spec = self.spec()
        for field in self.lay:
            self.form[1].enable(field, spec.grooves > 0)
        for field in self.cut:
            self.form[1].enable(field, bool(spec.grooves or spec.rabbets))
        board = self.catalogue.materials.get(spec.material)
        self.form[0].enable(self.grain, board is not None and board.grained)
        try:
            component = bridge.component_of(self.obj)
        except ClosetError as error:
            self.summary.setText(units.explained(str(error)))
            self.sketch.show_panel(None)
            self.handles.place(())
            return
        panel = component.parts[0].panel
        self.handles.place(panel_drags(panel, self.locked))
        self.sketch.show_panel(panel)
        lines = [
            _tr("Saw: {} x {}, {} thick").format(
                *(units.shown(v) for v in (panel.cut_length, panel.cut_width, panel.thickness)))
        ]
        if panel.grooves:
            groove = panel.grooves[0]
            lines.append(_tr("Cuts: {} wide, {} deep").format(
                units.shown(groove.width), units.shown(groove.depth)))
            self.cut[2].hint(groove.depth)
        self.summary.setText("\n".join(lines))
        self.findings.show_findings(component.findings)
