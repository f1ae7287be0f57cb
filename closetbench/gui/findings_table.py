"""A table of findings, what can hurt on top."""

from __future__ import annotations

from collections.abc import Sequence

from closetbench.core.findings import Finding, Severity, by_severity
from closetbench.gui import palette
from closetbench.gui.qt import QtCore, QtGui, QtWidgets, Signal, translate
from closetbench.gui.said import finding_said

CONTEXT = "Closetbench_Checks"
_COLUMNS = (
    ("Severity", 106), ("Part", 110), ("Finding", 300), ("Value", 100), ("Limit", 100),
    ("What to do", 150), ("Spread", 150), ("Source", 180),
)
_LINES = 2
"""Lines of a finding that the table shows; the whole of it stands below or in the tip."""
DANGER_GROUND, ON_DANGER = "#b3261e", "#ffffff"
"""Ground and ink of what must not be missed, on any theme."""


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


class FindingsTable(QtWidgets.QTableWidget):
    """One finding in a row. ``picked``: the user has chosen it; ``opened``: by a double
    click."""

    picked = Signal(object)
    opened = Signal(object)

    def __init__(self, whole: bool = False) -> None:
        super().__init__(0, len(_COLUMNS))
        self.setObjectName("findings table")
        self._whole = whole
        self._rows: list[Finding] = []
        self.setHorizontalHeaderLabels([_tr(name) for name, _ in _COLUMNS])
        for column, (_, width) in enumerate(_COLUMNS):
            self.setColumnWidth(column, width)
        self.horizontalHeader().setStretchLastSection(True)
        self.horizontalHeader().setDefaultAlignment(QtCore.Qt.AlignLeft | QtCore.Qt.AlignVCenter)
        self.verticalHeader().hide()
        self.setWordWrap(True)
        self.setEditTriggers(QtWidgets.QAbstractItemView.NoEditTriggers)
        self.setSelectionBehavior(QtWidgets.QAbstractItemView.SelectRows)
        self.setSelectionMode(QtWidgets.QAbstractItemView.SingleSelection)
        self.setHorizontalScrollMode(QtWidgets.QAbstractItemView.ScrollPerPixel)
        self.setVerticalScrollMode(QtWidgets.QAbstractItemView.ScrollPerPixel)
        self.setTabKeyNavigation(False)
        self.itemSelectionChanged.connect(self._pick)
        self.itemClicked.connect(self._pick)
        self.itemDoubleClicked.connect(self._open)

    @property
    def rows(self) -> Sequence[Finding]:
        """What is shown, from the top."""
        return self._rows

    @property
    def chosen(self) -> Finding | None:
        """The finding whose row is selected."""
        lines = self.selectionModel().selectedRows()
        return self._rows[lines[0].row()] if lines else None

    def show_findings(self, findings: Sequence[Finding]) -> None:
        """Put these in the place of what was shown; one that is still there stays chosen."""
        before = self.chosen
        # a style sheet gives the colours and the font of what it has polished only
        self.ensurePolished()
        self.blockSignals(True)
        self._rows = by_severity(findings)
        self.clearSelection()
        self.setRowCount(len(self._rows))
        for at, finding in enumerate(self._rows):
            self._fill(at, finding)
            if before is not None and _same(before, finding):
                self.selectRow(at)
        if self._whole:
            self.resizeRowsToContents()
        self.blockSignals(False)

    def _fill(self, at: int, finding: Finding) -> None:
        finding = finding_said(finding)
        texts = (
            _tr(finding.severity.value), finding.subject, finding.message, finding.value,
            finding.limit, finding.fix, finding.spread, finding.source,
        )
        for column, text in enumerate(texts):
            item = QtWidgets.QTableWidgetItem(text)
            item.setTextAlignment(QtCore.Qt.AlignLeft | QtCore.Qt.AlignTop)
            if text:
                # as rich text, which Qt wraps
                item.setToolTip(f"<p>{safe(text)}</p>")
            self.setItem(at, column, item)
        self._mark(self.item(at, 0), finding.severity)
        self.setRowHeight(at, _LINES * self.fontMetrics().lineSpacing() + 2)

    def _mark(self, item: QtWidgets.QTableWidgetItem, severity: Severity) -> None:
        font = item.font()
        font.setBold(severity in (Severity.DANGER, Severity.WARNING))
        font.setItalic(severity is Severity.NOT_CHECKED)
        item.setFont(font)
        # style sheets take the colours of texts for themselves, but leave the swatch
        swatch = {
            Severity.DANGER: DANGER_GROUND, Severity.WARNING: palette.warning_colour(self),
            Severity.NOT_CHECKED: palette.unknown_colour(self),
        }.get(severity)
        item.setData(QtCore.Qt.DecorationRole, QtGui.QColor(swatch or QtCore.Qt.transparent))
        if severity is Severity.DANGER:
            item.setBackground(QtGui.QBrush(QtGui.QColor(DANGER_GROUND)))
            item.setForeground(QtGui.QBrush(QtGui.QColor(ON_DANGER)))
        elif swatch is not None:
            item.setForeground(QtGui.QBrush(QtGui.QColor(swatch)))

    def _pick(self, *_: object) -> None:
        if self.chosen is not None:
            self.picked.emit(self.chosen)

    def _open(self, *_: object) -> None:
        if self.chosen is not None:
            self.opened.emit(self.chosen)


def _same(one: Finding, other: Finding) -> bool:
    return (one.rule, one.subject) == (other.rule, other.subject)


def counted(findings: Sequence[Finding]) -> str:
    """How many there are of each severity, in words; empty for none."""
    words = {
        Severity.DANGER: (_tr("1 danger"), _tr("{} dangers")),
        Severity.WARNING: (_tr("1 warning"), _tr("{} warnings")),
        Severity.NOT_CHECKED: (_tr("1 not checked"), _tr("{} not checked")),
        Severity.NOTE: (_tr("1 note"), _tr("{} notes")),
    }
    found = []
    for severity, (one, many) in words.items():
        count = sum(f.severity is severity for f in findings)
        if count:
            found.append(one if count == 1 else many.format(count))
    return ", ".join(found)


def safe(text: str) -> str:
    """A text as rich text that looks the same."""
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
