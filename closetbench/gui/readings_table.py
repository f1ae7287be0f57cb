"""A table of what the room makes of every reading."""

from __future__ import annotations

from collections.abc import Sequence

from closetbench.core.figures import Figures
from closetbench.core.reading_lines import Trust, trust
from closetbench.core.room import AdjustedReading
from closetbench.gui import palette, units
from closetbench.gui.qt import QtCore, QtGui, QtWidgets, Signal, translate
from closetbench.gui.said import said

CONTEXT = "Closetbench_Survey"
_COLUMNS = ("Reading", "Read", "Expected", "Residual", "Sd", "")
HIGH = 190
"""px of the table's height in the panel."""


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


class ReadingsTable(QtWidgets.QTableWidget):
    """A reading in each row, in the order of the form. ``picked``: the user has clicked the
    one with that key."""

    picked = Signal(str)

    def __init__(self) -> None:
        super().__init__(0, len(_COLUMNS))
        self.setObjectName("readings table")
        self.setHorizontalHeaderLabels([_tr(name) if name else "" for name in _COLUMNS])
        head = self.horizontalHeader()
        head.setMinimumSectionSize(20)
        head.setSectionResizeMode(QtWidgets.QHeaderView.ResizeToContents)
        head.setSectionResizeMode(0, QtWidgets.QHeaderView.Stretch)
        # names differ at their ends
        self.setTextElideMode(QtCore.Qt.ElideLeft)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(self.fontMetrics().height() + 4)
        self.setWordWrap(False)
        self.setEditTriggers(QtWidgets.QAbstractItemView.NoEditTriggers)
        self.setSelectionBehavior(QtWidgets.QAbstractItemView.SelectRows)
        self.setSelectionMode(QtWidgets.QAbstractItemView.SingleSelection)
        self.setTabKeyNavigation(False)
        self.setFocusPolicy(QtCore.Qt.ClickFocus)
        self.setFixedHeight(HIGH)
        self.itemClicked.connect(lambda item: self.picked.emit(self.rows[item.row()].key))
        self.rows: Sequence[AdjustedReading] = ()

    def show_readings(self, readings: Sequence[AdjustedReading]) -> None:
        """Put these in the place of what was shown."""
        self.rows = readings
        self.ensurePolished()
        self.setRowCount(len(readings))
        form = units.current_format()
        figures = Figures(form)
        for at, one in enumerate(readings):
            state = trust(one)
            cells = (
                _named(one), form.text(one.value, unit=False),
                form.text(one.adjusted, unit=False),
                units.signed(figures, one.residual),
                figures.small(one.sd).removesuffix(f" {form.unit}"), MARKS[state],
            )
            tip = self._tip(one, state, figures)
            for column, text in enumerate(cells):
                self._put(at, column, text, state, tip)

    def _put(self, at: int, column: int, text: str, state: Trust, tip: str) -> None:
        item = self.item(at, column)
        if item is None:
            item = QtWidgets.QTableWidgetItem()
            self.setItem(at, column, item)
            if column:
                item.setTextAlignment(QtCore.Qt.AlignRight | QtCore.Qt.AlignVCenter)
        item.setText(text)
        item.setToolTip(tip)
        item.setForeground(QtGui.QBrush(palette.trust_ink(self, state)))
        font = item.font()
        font.setBold(state is Trust.WRONG)
        item.setFont(font)

    def _tip(self, one: AdjustedReading, state: Trust, figures: Figures) -> str:
        return "\n".join((
            f"{_named(one)}: {_tr(state.value)}",
            _tr("expected {}, give or take {}").format(
                figures.small(one.adjusted), figures.small(2 * one.sd_adjusted)),
            _tr("{} % of it is controlled by other readings; w = {}").format(
                f"{100 * one.redundancy:.0f}", f"{one.w:.1f}"),
        ))


def _named(one: AdjustedReading) -> str:
    """A reading's name in the user's language."""
    name = said(one.name)
    return name[0].upper() + name[1:]


MARKS = {Trust.AGREES: "✓", Trust.DOUBTFUL: "?", Trust.WRONG: "✗", Trust.UNCHECKED: "–"}
"""Said beside the colours, for who cannot tell them apart."""


def legend() -> str:
    """What the marks mean."""
    return ", ".join(f"{MARKS[t]} {_tr(t.value)}" for t in Trust)
