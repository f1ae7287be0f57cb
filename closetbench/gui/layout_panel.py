"""The task panel of a cut layout: saw and search settings, the plan and its sheets."""

from __future__ import annotations

import time
from dataclasses import dataclass

from closetbench.core.errors import ClosetError
from closetbench.gui import choices, units
from closetbench.gui.dangers import DangerNote
from closetbench.gui.fields import ChoiceField, CountField, LengthField, NumberField
from closetbench.gui.form import Fold, Form, enlarging_button
from closetbench.gui.qt import QtWidgets, let_events_in, translate
from closetbench.gui.sheet_view import SheetView
from closetbench.gui.spec_panel import SpecPanel
from closetbench.model import bridge
from closetbench.model.layout import plan_of, settings_of, write_settings
from closetbench.model.properties import put
from closetbench.stock.checks import check_settings, check_stock
from closetbench.stock.from_parts import stock_sheets
from closetbench.stock.plan import CutSettings, FirstCut, Plan, PlanProgress, SearchEnd

CONTEXT = "Closetbench_Layout"
BREATH = 0.05
"""Seconds between two looks at what the user does while the search runs."""


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


@dataclass(frozen=True)
class Cutting:
    """What the panel edits. ``trim`` None: as the catalogue says."""

    settings: CutSettings
    trim: float | None


class StagesField(CountField):
    """How many times the cutting may change direction; 0 stands for no limit."""

    def value(self) -> int | None:  # type: ignore[override]
        return super().value() or None

    def put(self, value: int | None) -> None:
        super().put(value or 0)


class LayoutPanel(SpecPanel):
    """Plans the sheets, shows how they are cut."""

    # -- the specification

    def spec(self) -> Cutting:
        trim = self.obj.Trim.Value if self.obj.TrimOverride else None
        return Cutting(settings_of(self.obj), trim)

    def verify(self, spec: Cutting) -> None:
        check_settings(spec.settings)
        closet = self.obj.Closet
        used = {p.panel.material for p in bridge.closet_of(closet).parts}
        check_stock(stock_sheets(bridge.catalogue_of(closet), used, trim=spec.trim))

    def write(self, spec: Cutting) -> None:
        write_settings(self.obj, spec.settings)
        put(self.obj, "TrimOverride", spec.trim is not None)
        if spec.trim is not None:
            put(self.obj, "Trim", spec.trim)

    def reason(self, error: ClosetError) -> str:
        return error.limit

    # -- the forms

    def build(self) -> None:
        self._stopped = self._planning = False
        self.form = [self._saw(), self._results()]
        self.bind(*self.fields)

    def _saw(self) -> Form:
        form = Form(_tr("Saw and sheets"), "layout")
        form.whole(DangerNote(self.obj.Closet))
        form.row(_tr("Kerf"), LengthField("settings.kerf", "kerf"), tip=_tr(
            "Width of the cut that the blade makes."))
        form.row(_tr("Trim"), LengthField("trim", "trim", _tr("as the catalogue says")), tip=_tr(
            "Taken off each edge of a sheet before any part is cut."))
        form.row(_tr("First cuts"), ChoiceField("settings.first", choices.of_enum(FirstCut)),
                 tip=_tr("Direction of the cuts that are made first on a whole sheet."))
        form.row(_tr("Changes of direction"), StagesField(
            "settings.stages", 0, 20, _tr("no limit")), tip=_tr(
            "How many times the cutting may change direction, the first counted as one."))
        inner = Form("", "layout")
        for name, label in (
            ("seconds", _tr("For fewer sheets")), ("tidy", _tr("For fewer cuts")),
        ):
            inner.row(label, NumberField(f"settings.{name}", name, 0, 3600, "s"))
        inner.row(_tr("Seed"), CountField("settings.seed", 0, 99999), tip=_tr(
            "Another number may find another plan; the same one finds the same again."))
        form.whole(Fold(_tr("How long to search, per material"), inner), inner)
        self.go = QtWidgets.QPushButton(_tr("Plan the sheets"))
        self.go.setObjectName("plan")
        self.go.clicked.connect(self._go_or_stop)
        self.bar = QtWidgets.QProgressBar()
        self.bar.setObjectName("progress")
        self.bar.setRange(0, 1000)
        self.bar.setTextVisible(False)
        self.bar.hide()
        self.doing = form.note("planning")
        form.whole(self.bar)
        form.whole(self.go)
        return form

    def _results(self) -> Form:
        form = Form(_tr("Sheets"), "part")
        self.summary = form.note("summary")
        self.sheets = SheetView()
        form.whole(self.sheets)
        form.whole(enlarging_button(_tr("Sheets"), self._larger))
        return form

    def _larger(self) -> SheetView:
        view = SheetView()
        view.drawing.highest = 800
        view.index = self.sheets.index
        view.show_plan(plan_of(self.obj), self._titles(), self.sheets.drawing.names)
        return view

    # -- planning

    def _go_or_stop(self) -> None:
        if self._planning:
            self._stopped = True
            return
        for field in self.fields:
            field.commit()
        if self.first_error() is None:
            try:
                self.plan()
            except ClosetError as error:
                self.doing.setText(units.explained(str(error)))

    def plan(self) -> None:
        """Search, keeping the window alive; stopped early, the best plan so far counts."""
        self._planning, self._stopped = True, False
        self._rest(True)
        self.go.setText(_tr("Stop: take the best so far"))
        self.bar.show()
        self._seen = 0.0
        try:
            # what the plan is for has to be up to date
            self.preview_now()
            self.obj.Proxy.plan(self.obj, self._progress)
        finally:
            self._planning = False
            self._rest(False)
            self.go.setText(_tr("Plan the sheets"))
            self.bar.hide()
            self.doing.setText("")
        self.preview_now()

    def _progress(self, state: PlanProgress) -> bool:
        now = time.monotonic()
        if now - self._seen > BREATH:
            self._seen = now
            self.bar.setValue(int(1000 * state.done))
            title = self._titles().get(state.material, state.material)
            self.doing.setText(_tr("{}: {} sheets so far, at least {} needed").format(
                title, state.sheets, state.bound))
            let_events_in()
        return not self._stopped

    def _rest(self, resting: bool) -> None:
        """Leave only the button to stop while the search runs."""
        for field in self.fields:
            field.widget.setEnabled(not (resting or field.locked))
        if self._buttons is not None:
            self._buttons.setEnabled(not resting)

    def reject(self) -> bool:
        """Escape while the search runs stops the search only."""
        if self._planning:
            self._stopped = True
            return False
        return super().reject()

    def accept(self) -> bool:
        return not self._planning and super().accept()

    def finish(self) -> None:
        """There is to be a plan when the panel closes."""
        if plan_of(self.obj) is None or self.obj.OutOfDate:
            self.plan()

    # -- what follows

    def _titles(self) -> dict[str, str]:
        catalogue = bridge.catalogue_of(self.obj.Closet)
        return {key: board.title for key, board in catalogue.materials.items()}

    def refresh(self) -> None:
        plan = plan_of(self.obj)
        if plan is None:
            self.summary.setText(_tr("Not planned yet."))
            self.sheets.show_plan(None, {}, {})
            return
        titles = self._titles()
        lines = [_material_line(plan, key, titles) for key in plan.bound]
        if self.obj.OutOfDate:
            lines.append(_tr("Out of date: the parts or the settings have changed since."))
        self.summary.setText("\n".join(lines))
        try:
            names = {p.full_name: p.name for p in bridge.closet_of(self.obj.Closet).parts}
        except ClosetError:
            names = {}
        self.sheets.show_plan(plan, titles, names)


def _material_line(plan: Plan, key: str, titles: dict[str, str]) -> str:
    sheets = plan.sheets_of(key)
    whole = sum(s.sheet.length * s.sheet.width for s in sheets)
    used = sum(s.used_area for s in sheets) / whole if whole else 0.0
    if len(sheets) == plan.bound[key]:
        proved = _tr("no plan needs fewer")
    elif plan.ended.get(key) is SearchEnd.PROVED:
        proved = _tr("proved to be the cheapest")
    else:
        proved = _tr("not proved: at least {}").format(plan.bound[key])
    text = _tr("{}: 1 sheet, yield {:.0%} ({})") if len(sheets) == 1 else _tr(
        "{}: {count} sheets, yield {:.0%} ({})")
    return text.format(titles.get(key, key), used, proved, count=len(sheets))


