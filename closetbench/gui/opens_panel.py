"""The task panel that shows the space that drawers, pull-outs, doors and lids open into."""

from __future__ import annotations

from typing import Any

from closetbench.core.errors import ClosetError
from closetbench.core.sweeps import Sweep, sweeps
from closetbench.gui import palette, scene, units
from closetbench.gui.form import FindingsList, Form
from closetbench.gui.looking_panel import LookingPanel
from closetbench.gui.qt import QtCore, QtGui, QtWidgets, translate

CONTEXT = "Closetbench_Opens"
HIGH = 220
FREE_CLEAR, HIT_CLEAR = 0.75, 0.25


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


class OpensPanel(LookingPanel):
    """A row for each thing that opens; green where it moves freely, red where it hits."""

    page = "Opens"

    def build(self) -> None:
        self.sweeps = sweeps(self.built)
        if not self.sweeps:
            raise ClosetError(
                self.closet.Label, "drawers and doors", "none",
                "must be there to see what opens: put some in first")
        form = Form(_tr("What opens"), "opens")
        self.verdict = form.note("verdict")
        self.table = QtWidgets.QTableWidget(len(self.sweeps), 3)
        self.table.setObjectName("sweeps")
        self.table.setHorizontalHeaderLabels([_tr("What"), _tr("Opens"), _tr("Free")])
        self.table.horizontalHeader().setSectionResizeMode(0, QtWidgets.QHeaderView.Stretch)
        self.table.verticalHeader().hide()
        self.table.verticalHeader().setDefaultSectionSize(self.table.fontMetrics().height() + 6)
        self.table.setEditTriggers(QtWidgets.QAbstractItemView.NoEditTriggers)
        self.table.setSelectionBehavior(QtWidgets.QAbstractItemView.SelectRows)
        self.table.setTabKeyNavigation(False)
        self.table.setFixedHeight(HIGH)
        for at, sweep in enumerate(self.sweeps):
            self._row(at, sweep)
        self.table.itemSelectionChanged.connect(self._draw)
        form.whole(self.table)
        every = QtWidgets.QPushButton(_tr("Show all"))
        every.setObjectName("all")
        every.clicked.connect(self.table.clearSelection)
        form.whole(every)
        self.said = FindingsList()
        form.whole(self.said)
        form.note("caution").setText(_tr(
            "Doors and lids are taken to turn about the edge that their hinges hold; look at "
            "the hinges' own drawing where it is close."))
        hit = sum(bool(s.blockers) for s in self.sweeps)
        self.verdict.setText(
            _tr("{} of {} cannot open all the way.").format(hit, len(self.sweeps)) if hit else
            _tr("Everything opens freely."))
        self.form = [form]
        self._draw()

    def _row(self, at: int, sweep: Sweep) -> None:
        reach = f"{sweep.reach:g}°" if sweep.turns else units.shown(sweep.reach)
        state = _tr("✗ {}").format(", ".join(sweep.blockers)) if sweep.blockers else _tr("✓")
        for column, text in enumerate((sweep.name, reach, state)):
            item = QtWidgets.QTableWidgetItem(text)
            item.setToolTip(text)
            if sweep.blockers:
                item.setForeground(QtGui.QBrush(QtGui.QColor(palette.error_colour(self.table))))
            if column == 1:
                item.setTextAlignment(QtCore.Qt.AlignRight | QtCore.Qt.AlignVCenter)
            self.table.setItem(at, column, item)

    @property
    def shown(self) -> list[Sweep]:
        """Those whose rows are selected, all where none is."""
        rows = sorted({i.row() for i in self.table.selectionModel().selectedRows()})
        return [self.sweeps[r] for r in rows] or list(self.sweeps)

    def _draw(self) -> None:
        for at in reversed(range(1, self.root.getNumChildren())):
            self.root.removeChild(at)
        shown = self.shown
        free = [solid for s in shown for solid in s.solids]
        hits = [solid for s in shown for solid in s.hits]
        for solids, colour, clear in (
            (free, palette.FREE, FREE_CLEAR), (hits, palette.HIT, HIT_CLEAR)
        ):
            nodes = scene.edges(solids, colour), scene.faces(solids, colour, clear)
            if solids is hits:
                self.root.addChild(scene.on_top(nodes))
                continue
            for node in nodes:
                self.root.addChild(node)
        self.said.show_findings(f for s in shown for f in s.findings)

    def selected(self, objects: Any) -> None:
        """Select the rows of these components' objects."""
        labels = {(getattr(o, "Component", None) or o).Label for o in objects}
        self.table.setSelectionMode(QtWidgets.QAbstractItemView.MultiSelection)
        for at, sweep in enumerate(self.sweeps):
            if sweep.name.partition(": ")[0] in labels:
                self.table.selectRow(at)
        self.table.setSelectionMode(QtWidgets.QAbstractItemView.ExtendedSelection)
