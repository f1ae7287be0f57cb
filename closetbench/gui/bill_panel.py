"""The task panel of a bill: what it takes into account, its tables, the file to write."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from closetbench.core.errors import ClosetError
from closetbench.gui import units
from closetbench.gui.dangers import DangerNote, report_written
from closetbench.gui.dxf_panel import layout_for
from closetbench.gui.fields import CountField, LengthField, NumberField
from closetbench.gui.files import PathField, file_stem, home_folder
from closetbench.gui.form import Form, enlarging_button
from closetbench.gui.qt import QtWidgets, translate
from closetbench.gui.spec_panel import SpecPanel
from closetbench.model.bill import bill_of
from closetbench.model.properties import put
from closetbench.model.spoken import words
from closetbench.shop.bill import bill_rows, save_bill
from closetbench.shop.tables import Table, said_rows, tables

CONTEXT = "Closetbench_Bill"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


@dataclass(frozen=True)
class Settings:
    """What the panel edits. ``bit`` None: not said; ``waste`` in percent;
    ``spare``: one sheet to spare for each so many, 0 for none."""

    bit: float | None
    waste: float
    spare: int


class BillPanel(SpecPanel):
    """Shows the bill and writes it as CSV."""

    page = "Bill"

    def spec(self) -> Settings:
        return Settings(
            self.obj.RouterBit.Value or None, 100 * self.obj.BandWaste, self.obj.SparePer)

    def verify(self, spec: Settings) -> None:
        if spec.bit is not None and not 1 <= spec.bit <= 60:
            raise ClosetError(
                self.obj.Label, "router bit", f"{spec.bit:g} mm", "must be 1 to 60 mm")

    def write(self, spec: Settings) -> None:
        put(self.obj, "RouterBit", spec.bit or 0.0)
        put(self.obj, "BandWaste", spec.waste / 100)
        put(self.obj, "SparePer", spec.spare)
        put(self.obj, "Update", True)

    def build(self) -> None:
        if self.obj.Layout is None:
            self.obj.Layout = layout_for(self.obj.Closet)
        form = Form(_tr("Bill"), "bill")
        form.whole(DangerNote(self.obj.Closet))
        form.row(_tr("Router bit"), LengthField("bit", "router bit", _tr("not said")), tip=_tr(
            "Diameter of the bit at hand: the bill then gives the passes for each groove."))
        form.row(_tr("Band waste"), NumberField("waste", "waste", 0, 100, "%"), tip=_tr(
            "Edge band bought over the length of the rims."))
        form.row(_tr("A spare sheet for every"), CountField("spare", 0, 100, _tr("none")),
                 tip=_tr("One sheet of a material more for each so many, where more than four "
                         "are needed."))
        self.file = PathField(
            "file", _tr("write no file"), _tr("Write the bill"), "CSV (*.csv)", save=True)
        form.row(_tr("CSV file"), self.file)
        stem = file_stem(self.obj.Closet.Label)
        self.file.put(str(home_folder() / f"{stem}-bill.csv"))
        self.note = form.note("summary")
        table = Form(_tr("As it will be written"), "bill")
        self.tabs = QtWidgets.QTabWidget()
        self.tabs.setObjectName("bill")
        self.tabs.setMinimumHeight(260)
        table.whole(self.tabs)
        table.whole(enlarging_button(_tr("Bill"), self._larger))
        self.form = [form, table]
        self.bind(*(f for f in self.fields if f is not self.file))

    def _larger(self) -> QtWidgets.QTabWidget:
        tabs = QtWidgets.QTabWidget()
        for table in self._tables():
            tabs.addTab(_table(table), table.name)
        tabs.setCurrentIndex(self.tabs.currentIndex())
        return tabs

    def _tables(self) -> tuple[Table, ...]:
        reader = words()
        return tables(said_rows(bill_rows(bill_of(self.obj), reader), reader))

    def refresh(self) -> None:
        try:
            found = self._tables()
        except ClosetError as error:
            self.note.setText(units.explained(str(error)))
            self.tabs.clear()
            return
        self.note.setText(self._summary())
        at = self.tabs.currentIndex()
        self.tabs.clear()
        for table in found:
            self.tabs.addTab(_table(table), table.name)
        self.tabs.setCurrentIndex(max(0, at))

    def _summary(self) -> str:
        lines = []
        layout = self.obj.Layout
        if layout is None or not layout.PlanJson:
            lines.append(_tr("The sheets are not planned yet: the bill cannot count them."))
        elif layout.OutOfDate:
            lines.append(_tr("The cut layout is out of date: plan the sheets again first."))
        cost = f"{self.obj.Cost:.2f} {self.obj.Currency}".strip()
        if self.obj.Unpriced:
            lines.append(_tr("At least {}: not everything has a price.").format(cost))
        elif self.obj.Cost:
            lines.append(_tr("In all {}.").format(cost))
        return "\n".join(lines)

    def finish(self) -> None:
        """Keep the lines in the document, and write the file."""
        put(self.obj, "Update", True)
        self.preview_now()
        path = str(self.file.value()).strip()
        if path:
            written = save_bill(Path(path), bill_of(self.obj), words())
            report_written(_tr("Written: {}").format(written), self.obj.Closet)


def _cell(cell: object) -> str:
    if cell is None:
        return ""
    return f"{cell:.3f}".rstrip("0").rstrip(".") if isinstance(cell, float) else str(cell)


def _table(table: Table) -> QtWidgets.QWidget:
    page = QtWidgets.QWidget()
    box = QtWidgets.QVBoxLayout(page)
    box.setContentsMargins(2, 2, 2, 2)
    for text in table.notes:
        note = QtWidgets.QLabel(text)
        note.setWordWrap(True)
        box.addWidget(note)
    grid = QtWidgets.QTableWidget(len(table.rows), len(table.heads))
    grid.setHorizontalHeaderLabels(table.heads)
    grid.verticalHeader().hide()
    grid.setEditTriggers(QtWidgets.QAbstractItemView.NoEditTriggers)
    for i, row in enumerate(table.rows):
        for j, cell in enumerate(row[: len(table.heads)]):
            text = _cell(cell)
            item = QtWidgets.QTableWidgetItem(text)
            item.setToolTip(text)
            grid.setItem(i, j, item)
    grid.resizeColumnsToContents()
    for j in range(len(table.heads)):
        grid.setColumnWidth(j, min(grid.columnWidth(j), 260))
    grid.resizeRowsToContents()
    box.addWidget(grid, 1)
    return page
