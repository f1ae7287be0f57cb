"""The task panel of the checks: what was found in a closet, and how to put it right."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import FreeCAD
import FreeCADGui

from closetbench.core.errors import ClosetError
from closetbench.core.findings import Finding, Severity, by_severity
from closetbench.core.walls import DEFER
from closetbench.gui import palette, panels, units
from closetbench.gui.depth_advice import strip_notes
from closetbench.gui.fields import ChoiceField, Field
from closetbench.gui.finding_objects import editor_of, objects_of
from closetbench.gui.findings_table import (
    CONTEXT,
    DANGER_GROUND,
    ON_DANGER,
    FindingsTable,
    counted,
    safe,
)
from closetbench.gui.form import Form, enlarging_button
from closetbench.gui.qt import QtCore, QtWidgets, translate
from closetbench.gui.said import finding_said, said
from closetbench.gui.task import TaskPanel
from closetbench.model import bridge

NARROW, WIDE, HIGH, DETAIL = 290, 400, 240, 190
"""px: widths of the table where the room is given and where it can be had, its height, and
the height of what is said below it."""
SETTLED = 300
"""ms after which FreeCAD has put the focus into a new panel's first field."""
_FILTERS: tuple[tuple[tuple[Severity, ...], str], ...] = (
    (tuple(Severity), "everything"),
    ((Severity.DANGER,), "dangers"),
    ((Severity.DANGER, Severity.WARNING), "dangers and warnings"),
    ((Severity.WARNING,), "warnings"),
    ((Severity.NOT_CHECKED,), "what is not checked"),
    ((Severity.NOTE,), "notes"),
)


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


class ChecksPanel(TaskPanel):
    """The findings of a closet, which this panel reads and never changes."""

    page = "Checks"
    only_shows = True

    def __init__(self, closet: Any, title: str) -> None:
        super().__init__(closet.Document, title)
        self.closet = closet
        self._findings: Sequence[Finding] = ()
        self._trouble = ""
        self._tables: list[FindingsTable] = []
        self._watch = _Watch(self)

    def build(self) -> None:
        form = self.checks = Form(_tr("Checks"), "checks")
        self.banner = form.note("banner")
        self.filter = ChoiceField("filter", [(s, _tr(text)) for s, text in _FILTERS])
        self.filter.edited.connect(self._show)
        form.row(_tr("Show"), self.filter)
        self.empty = form.note("empty")
        self.table = self._made_table()
        self.table.setMinimumSize(NARROW, HIGH)
        form.whole(self.table)
        # of a fixed height: FreeCAD's box does not grow with what is said in it
        self.detail = QtWidgets.QTextBrowser()
        self.detail.setObjectName("detail")
        self.detail.setFixedHeight(DETAIL)
        self.detail.setFocusPolicy(QtCore.Qt.ClickFocus)
        form.whole(self.detail)
        form.whole(enlarging_button(_tr("Checks"), lambda: self._made_table(whole=True)))
        known = QtWidgets.QPushButton(_tr("Loads, wall, damp, children, light…"))
        known.setObjectName("known")
        known.setToolTip(_tr("Close the checks and say what they have to know."))
        known.clicked.connect(lambda: self._edit(self.closet, "circumstances.shelf_use"))
        form.whole(known)
        caution = form.note("caution")
        caution.setText(_tr(
            "Not checked does not mean safe; {}. Each figure is only as good as what was "
            "entered.").format(said(DEFER)))
        self.form = [form]

    def show(self) -> None:
        super().show()
        FreeCAD.addDocumentObserver(self._watch)

    def _widen(self) -> None:
        # asked for where the dock can be widened, not insisted on where it cannot
        self.table.setMinimumWidth(WIDE)
        super()._widen()
        self.table.setMinimumWidth(NARROW)

    def _made_table(self, whole: bool = False) -> FindingsTable:
        table = FindingsTable(whole)
        table.picked.connect(self.point_out)
        table.opened.connect(self.put_right)
        table.show_findings(self._shown())
        self._tables.append(table)
        table.destroyed.connect(lambda: self._forget(table))
        return table

    def _forget(self, table: FindingsTable) -> None:
        self._tables = [t for t in self._tables if t is not table]

    # -- closing

    def reject(self) -> bool:
        """What the user changed elsewhere while the panel was open stays."""
        self._keep()
        return True

    def _close(self, end: Any) -> None:
        if self.is_open:
            FreeCAD.removeDocumentObserver(self._watch)
        super()._close(end)

    # -- what is shown

    def refresh(self) -> None:
        try:
            found = bridge.closet_of(self.closet).findings
            self._findings = by_severity([*found, *strip_notes(self.closet)])
            self._trouble = ""
        except ClosetError as error:
            self._findings = ()
            self._trouble = units.explained(str(error))
        self._show()

    def _shown(self) -> list[Finding]:
        return [f for f in self._findings if f.severity in self.filter.value()]

    def _show(self, field: Field | None = None) -> None:
        shown = self._shown()
        for table in self._tables:
            table.show_findings(shown)
        self.table.setVisible(bool(shown))
        self._show_banner()
        self.empty.setText(self._why_empty(shown))
        self.empty.setVisible(bool(self.empty.text()))
        self._tell(self.table.chosen)

    def _show_banner(self) -> None:
        found = [f for f in self._findings if f.severity is Severity.DANGER]
        self.banner.setText(counted(self._findings))
        self.banner.setVisible(bool(self._findings))
        self.banner.setStyleSheet(
            f"background: {DANGER_GROUND}; color: {ON_DANGER}; "
            "font-weight: bold; padding: 4px;"
            if found else "font-weight: bold;"
        )

    def _why_empty(self, shown: Sequence[Finding]) -> str:
        if self._trouble:
            return _tr("Nothing can be checked: the closet cannot be built. {}").format(
                self._trouble)
        if not self._findings:
            return _tr("Nothing was found.")
        hidden = counted([
            f for f in self._findings if f.severity is Severity.DANGER and f not in shown])
        if hidden:
            return _tr("Not shown by this choice: {}.").format(hidden)
        return "" if shown else _tr("Nothing of this kind was found.")

    # -- pointing out

    def point_out(self, finding: Finding) -> None:
        """Select what a finding is about, and say what to do."""
        FreeCADGui.Selection.clearSelection()
        for obj in objects_of(self.closet, finding):
            FreeCADGui.Selection.addSelection(obj)
        self._tell(finding)

    def put_right(self, finding: Finding) -> None:
        """Close, and open the panel that edits what a finding is about."""
        obj, field = editor_of(self.closet, finding)
        if obj is not None:
            self._edit(obj, field)

    def _edit(self, obj: Any, field: str) -> None:
        # the click that asks for it is not over yet, and its table goes with this panel
        QtCore.QTimer.singleShot(0, lambda: self._hand_over(obj, field))

    def _hand_over(self, obj: Any, field: str) -> None:
        if not self.is_open:
            return
        self.reject()
        if panels.open_for(obj) and field:
            QtCore.QTimer.singleShot(SETTLED, lambda: _go_to(field))

    def _tell(self, finding: Finding | None) -> None:
        self.detail.setVisible(bool(self._findings))
        if finding is None:
            self.detail.setPlainText(_tr(
                "Click on a finding to see what it is about; double-click to edit that."))
            return
        colour = {
            Severity.DANGER: palette.error_colour(self.detail),
            Severity.WARNING: palette.warning_colour(self.detail),
            Severity.NOT_CHECKED: palette.unknown_colour(self.detail),
        }.get(finding.severity, palette.ink(self.detail).name())
        finding = finding_said(finding)
        lines = [
            f'<b style="color:{colour}">{safe(_tr(finding.severity.value))}</b> '
            f"<b>{safe(finding.subject)}</b>: {safe(finding.message)}"
        ]
        lines += [
            f"<b>{safe(head)}:</b> {safe(text)}"
            for head, text in (
                (_tr("Value"), finding.value), (_tr("Limit"), finding.limit),
                (_tr("Spread"), finding.spread), (_tr("What to do"), finding.fix),
                (_tr("Parts"), "; ".join(finding.parts)), (_tr("Source"), finding.source),
            ) if text
        ]
        self.detail.setHtml("<br/>".join(lines))


class _Watch:
    """Has a panel look again whenever its document is recomputed."""

    def __init__(self, panel: ChecksPanel) -> None:
        self._panel = panel

    def slotRecomputedDocument(self, doc: Any) -> None:  # noqa: N802
        if doc == self._panel.doc:
            QtCore.QTimer.singleShot(0, self._again)

    def _again(self) -> None:
        if self._panel.is_open:
            self._panel.refresh()


def _go_to(name: str) -> None:
    """Bring a field of the panel that is open before the user's eyes."""
    panel = TaskPanel.current
    field = next((f for f in panel.fields if f.name == name), None) if panel else None
    if panel is not None and field is not None:
        panel.reveal(field.widget)
        field.widget.setFocus()
        # what a fold shows has its place only once it is laid out
        QtCore.QTimer.singleShot(SETTLED, lambda: _scroll_to(panel, field))


def _scroll_to(panel: TaskPanel, field: Field) -> None:
    if not panel.is_open:
        return
    parent = field.widget.parentWidget()
    while parent is not None and not isinstance(parent, QtWidgets.QScrollArea):
        parent = parent.parentWidget()
    if parent is not None:
        parent.ensureWidgetVisible(field.widget)
