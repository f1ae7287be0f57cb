"""The task panel of a cut layout: saw and search settings, the plan and its sheets."""

from __future__ import annotations

import time
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from closetbench.core.errors import ClosetError
from closetbench.core.materials import Material
from closetbench.gui import choices, units
from closetbench.gui.dangers import DangerNote
from closetbench.gui.depth_advice import DepthAdvice
from closetbench.gui.fields import CheckField, ChoiceField, CountField, LengthField, NumberField
from closetbench.gui.form import ErrorLabel, Fold, Form, enlarging_button
from closetbench.gui.layout_link import SelectionWatch, objects_by_part, select
from closetbench.gui.layout_words import lengths_line, sheets_line, split_line, why_not
from closetbench.gui.qt import QtWidgets, let_events_in, translate
from closetbench.gui.sheet_drag import SheetDrag
from closetbench.gui.sheet_view import SheetView
from closetbench.gui.spec_panel import SpecPanel
from closetbench.model import bridge
from closetbench.model.base import ours
from closetbench.model.layout import (
    lengths_of,
    plan_of,
    settings_of,
    shop_of,
    write_settings,
    write_shop,
)
from closetbench.model.offcuts import reserve_for
from closetbench.model.properties import put
from closetbench.shop.buying import title_of
from closetbench.stock.checks import check_settings, check_stock
from closetbench.stock.from_parts import stock_sheets
from closetbench.stock.offcuts import taken
from closetbench.stock.plan import CutSettings, FirstCut, PlanProgress
from closetbench.stock.tools import Shop, StoreWork, check_shop

CONTEXT = "Closetbench_Layout"
BREATH = 0.05
"""Seconds between two looks at what the user does while the search runs."""


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


@dataclass(frozen=True)
class Cutting:
    """What the panel edits. ``trim`` None: as the catalogue says; ``offcuts``: those at hand
    are used."""

    settings: CutSettings
    trim: float | None
    shop: Shop
    offcuts: bool


class LimitField(CountField):
    """A whole number, of which 0 stands for no limit."""

    def value(self) -> int | None:  # type: ignore[override]
        return super().value() or None

    def put(self, value: int | None) -> None:
        super().put(value or 0)


class LayoutPanel(SpecPanel):
    """Plans the sheets, shows how they are cut."""

    page = "Layout"

    # -- the specification

    def spec(self) -> Cutting:
        trim = self.obj.Trim.Value if self.obj.TrimOverride else None
        return Cutting(
            settings_of(self.obj), trim, shop_of(self.obj), self.obj.Offcuts is not None)

    def verify(self, spec: Cutting) -> None:
        check_settings(spec.settings)
        check_shop(spec.shop)
        closet = self.obj.Closet
        used = {p.panel.material for p in bridge.closet_of(closet).parts}
        check_stock(stock_sheets(bridge.catalogue_of(closet), used, trim=spec.trim))

    def write(self, spec: Cutting) -> None:
        write_settings(self.obj, spec.settings)
        put(self.obj, "TrimOverride", spec.trim is not None)
        if spec.trim is not None:
            put(self.obj, "Trim", spec.trim)
        write_shop(self.obj, spec.shop)
        at_hand = next(ours(self.doc, "Offcuts"), None)
        put(self.obj, "Offcuts", at_hand if spec.offcuts else None)

    def reason(self, error: ClosetError) -> str:
        return error.limit

    # -- the forms

    def build(self) -> None:
        self._stopped = self.planning = False
        self._second: SheetView | None = None
        self.depths = DepthAdvice(self.obj, self.preview_now)
        self.form = [self._saw(), self._results(), self.depths]
        self.bind(*self.fields)
        self._watch = SelectionWatch(self.obj, self.show_part)
        self.sheet_drag = SheetDrag(self)

    def _saw(self) -> Form:
        form = Form(_tr("Saw and sheets"), "layout")
        form.whole(DangerNote(self.obj.Closet))
        form.row(_tr("Kerf"), LengthField("settings.kerf", "kerf"), tip=_tr(
            "Width of the cut that the blade makes."))
        form.row(_tr("Trim"), LengthField("trim", "trim", _tr("as the catalogue says")), tip=_tr(
            "Taken off each edge of a sheet before any part is cut."))
        form.row(_tr("First cuts"), ChoiceField("settings.first", choices.of_enum(FirstCut)),
                 tip=_tr("Direction of the cuts that are made first on a whole sheet."))
        form.row(_tr("Changes of direction"), LimitField(
            "settings.stages", 0, 20, _tr("no limit")), tip=_tr(
            "How many times the cutting may change direction, the first counted as one."))
        offcuts = CheckField("offcuts", _tr("Use the offcuts at hand first"))
        form.check(offcuts, _tr("They are a list of their own in the document."))
        form.enable(offcuts, next(ours(self.doc, "Offcuts"), None) is not None)
        who = Form("", "layout")
        who.row(_tr("The store saws"), ChoiceField("shop.store", choices.of_enum(StoreWork)))
        who.row(_tr("Its cuts, at most"), LimitField("shop.most", 0, 200, _tr("any number")),
                tip=_tr("On one sheet. A piece that is too much for one person to carry is cut "
                        "smaller at the store where it can be."))
        who.check(CheckField("shop.straightedge", _tr("Circular saw on a straightedge at home")))
        who.check(CheckField("shop.table", _tr("Table saw at home")))
        form.whole(Fold(_tr("Who cuts what"), who), who)
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
        self.late = ErrorLabel("out of date")
        form.whole(self.late)
        self.summary = form.note("summary")
        self.sheets = self._view()
        self.sheets.turned.connect(self._tell_split)
        form.whole(self.sheets)
        self.chosen = form.note("chosen")
        self.verdict = ErrorLabel("verdict")
        form.whole(self.verdict)
        self.turning = QtWidgets.QPushButton(_tr("Turn the part"))
        self.turning.setObjectName("turn")
        self.turning.setAutoDefault(False)
        self.turning.clicked.connect(self._turn)
        self.turning.hide()
        form.whole(self.turning)
        self.split = form.note("split")
        form.whole(enlarging_button(_tr("Sheets"), self._larger))
        return form

    def _view(self) -> SheetView:
        view = SheetView()
        view.picked.connect(self.pick)
        view.dropped.connect(self.move)
        return view

    def _larger(self) -> SheetView:
        view = self._view()
        view.drawing.highest = 800
        view.index = self.sheets.index
        view.show_plan(plan_of(self.obj), self._materials(), self.sheets.drawing.names)
        view.drawing.chosen = self.sheets.drawing.chosen
        # the window owns it: it may be gone when the plan changes next
        self._second = view
        view.destroyed.connect(self._forget_second)
        return view

    def _forget_second(self) -> None:
        self._second = None

    # -- parts on the sheets

    def pick(self, key: str) -> None:
        """A part was clicked on: select its object."""
        self.verdict.say("")
        self._tell_chosen(key)
        found = objects_by_part(self.obj.Closet).get(key)
        self.sheets.drawing.chosen = key
        self.sheets.drawing.update()
        if found is not None:
            select(found)

    def show_part(self, key: str) -> None:
        """A part was selected elsewhere: show it on its sheet."""
        if key == self.sheets.drawing.chosen:
            return
        for view in filter(None, (self.sheets, self._second)):
            view.show_part(key)
        self._tell_chosen(key)

    def move(self, key: str, x: float, y: float, turned: bool = False, to: str = "") -> None:
        """Move a part, to the sheet named ``to`` or on its own, or say why it may not lie there;
        nothing has changed then."""
        try:
            self.obj.Proxy.move(self.obj, key, x, y, turned, to)
        except ClosetError as error:
            self.say_stays(why_not(error))
            return
        self.verdict.say("")
        self._keep_offcuts()
        self.preview_now()
        for view in filter(None, (self.sheets, self._second)):
            view.show_part(key)
        self._tell_chosen(key)

    def say_stays(self, reason: str) -> None:
        """Say why a part was not moved."""
        self.verdict.say(_tr("It stays where it was: {}").format(reason))

    def _keep_offcuts(self) -> None:
        """Keep the offcuts that the plan takes for this closet, and no others."""
        plan = plan_of(self.obj)
        if self.obj.Offcuts is not None and plan is not None:
            reserve_for(
                self.obj.Offcuts, taken(plan, lengths_of(self.obj)), self.obj.Closet.Label)

    def _turn(self) -> None:
        key = self.sheets.drawing.chosen
        sheet = self.sheets.sheet
        placed = next((p for p in sheet.placements if p.part == key), None) if sheet else None
        if placed is not None:
            self.move(key, placed.x, placed.y, True)

    def _tell_chosen(self, key: str) -> None:
        sheet = self.sheets.sheet
        placed = next((p for p in sheet.placements if p.part == key), None) if sheet else None
        self.turning.setVisible(placed is not None)
        self.chosen.setText("" if placed is None else _tr("{}: {} x {}, at {} and {}").format(
            key, units.shown(placed.dx), units.shown(placed.dy), units.shown(placed.x),
            units.shown(placed.y)))

    def _tell_split(self) -> None:
        sheet = self.sheets.sheet
        self.split.setText("" if sheet is None else split_line(
            sheet, bridge.catalogue_of(self.obj.Closet), shop_of(self.obj)))

    # -- planning

    def _go_or_stop(self) -> None:
        if self.planning:
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
        self.planning, self._stopped = True, False
        self._rest(True)
        self.go.setText(_tr("Stop: take the best so far"))
        self.bar.show()
        self._seen = 0.0
        try:
            # what the plan is for has to be up to date
            self.preview_now()
            self.obj.Proxy.plan(self.obj, self._progress)
            self._keep_offcuts()
        finally:
            self.planning = False
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
            title = title_of(state.material, bridge.catalogue_of(self.obj.Closet))
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
        if self.planning:
            self._stopped = True
            return False
        return super().reject()

    def accept(self) -> bool:
        return not self.planning and super().accept()

    def finish(self) -> None:
        """There is to be a plan when the panel closes."""
        if plan_of(self.obj) is None or self.obj.OutOfDate:
            self.plan()

    # -- what follows

    def _materials(self) -> Mapping[str, Material]:
        return bridge.catalogue_of(self.obj.Closet).materials

    def refresh(self) -> None:
        plan, lengths = plan_of(self.obj), lengths_of(self.obj)
        self.sheet_drag.follow(plan)
        self.depths.follow()
        if plan is None or lengths is None:
            self.summary.setText(_tr("Not planned yet."))
            self.sheets.show_plan(None, {}, {})
            return
        catalogue = bridge.catalogue_of(self.obj.Closet)
        lines = [sheets_line(plan, key, catalogue) for key in plan.bound]
        lines += [lengths_line(lengths, key, catalogue) for key in lengths.proved]
        if self.obj.ByHand:
            lines.append(_tr("Parts were moved by hand."))
        self.summary.setText("\n".join(lines))
        self.late.say(_tr(
            "Out of date: the parts or the settings have changed since; plan again."
        ) if self.obj.OutOfDate else "")
        try:
            names = {p.full_name: p.name for p in bridge.closet_of(self.obj.Closet).parts}
        except ClosetError:
            names = {}
        for view in filter(None, (self.sheets, self._second)):
            view.show_plan(plan, catalogue.materials, names)
        self._tell_chosen(self.sheets.drawing.chosen)

    def _close(self, end: Callable[[], None] | None) -> None:
        if self.is_open:
            self.sheet_drag.close()
            self._watch.stop()
        super()._close(end)
