"""The task panel of the offcuts at hand: a table to edit, files, and what a job leaves."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any

from closetbench.core.errors import ClosetError
from closetbench.gui import choices, units
from closetbench.gui.files import home_folder
from closetbench.gui.form import ErrorLabel, Form
from closetbench.gui.offcut_defects import DefectsForm, length_in
from closetbench.gui.qt import QtCore, QtWidgets, translate
from closetbench.gui.task import TaskPanel
from closetbench.model import bridge
from closetbench.model.base import ours
from closetbench.model.layout import cutting_of
from closetbench.model.offcuts import load_file, offcuts_of, put_offcuts, save_file
from closetbench.stock.cutting import offcuts_after
from closetbench.stock.offcuts import GRAINS, Offcut

CONTEXT = "Closetbench_Offcuts"
_FILTER = "TOML (*.toml)"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


class OffcutsPanel(TaskPanel):
    """Edits the list of offcuts at hand."""

    page = "Offcuts"

    def build(self) -> None:
        self._shown: tuple[Offcut, ...] | None = None
        self.defects = DefectsForm(self._put_one)
        self.form = [self._list(), self.defects, self._jobs()]

    def _list(self) -> Form:
        form = Form(_tr("Offcuts at hand"), "offcuts")
        note = form.note()
        note.setText(_tr(
            "They are used before anything is bought, wherever that saves something. Without a "
            "width it is a length of a bar."))
        self.table = QtWidgets.QTableWidget(0, 8)
        self.table.setObjectName("offcuts")
        self.table.setMinimumHeight(160)
        self.table.setHorizontalHeaderLabels([
            _tr("name"), _tr("material"), _tr("length"), _tr("width"), _tr("grain along"),
            _tr("place"), _tr("left by"), _tr("kept for"),
        ])
        self.table.setSelectionBehavior(QtWidgets.QAbstractItemView.SelectRows)
        self.table.itemChanged.connect(self._edited)
        self.table.itemSelectionChanged.connect(self._follow)
        form.whole(self.table)
        self.trouble = ErrorLabel("offcuts")
        form.whole(self.trouble)
        row = QtWidgets.QWidget()
        box = QtWidgets.QGridLayout(row)
        box.setContentsMargins(0, 0, 0, 0)
        for number, (name, text, work) in enumerate((
            ("add", _tr("Add"), self.add), ("remove", _tr("Remove"), self.remove),
            ("free", _tr("Keep for nobody"), self.free),
            ("read", _tr("Read a file…"), self._ask_read),
            ("write", _tr("Write a file…"), self._ask_write),
        )):
            button = QtWidgets.QPushButton(text)
            button.setObjectName(name)
            button.setAutoDefault(False)
            button.clicked.connect(lambda _=False, work=work: work())
            box.addWidget(button, number // 3, number % 3)
        form.whole(row)
        return form

    def _jobs(self) -> Form:
        form = Form(_tr("Once a job is cut"), "layout")
        note = form.note()
        note.setText(_tr(
            "What the job took goes out of the list; what it leaves, and is large enough to "
            "keep, comes in."))
        self.jobs: list[QtWidgets.QPushButton] = []
        for layout in ours(self.doc, "CutLayout"):
            if layout.Closet is None:
                continue
            button = QtWidgets.QPushButton(_tr("{} is cut").format(layout.Closet.Label))
            button.setObjectName(f"cut {layout.Name}")
            button.setAutoDefault(False)
            button.clicked.connect(lambda _=False, one=layout: self.cut(one))
            planned = bool(layout.PlanJson) and not layout.OutOfDate
            button.setEnabled(planned)
            if not planned:
                button.setToolTip(_tr("Plan its sheets first."))
            form.whole(button)
            self.jobs.append(button)
        return form

    # -- the table

    def refresh(self) -> None:
        self._fill()

    def _fill(self) -> None:
        found = offcuts_of(self.obj)
        if found == self._shown:
            return
        self._shown = found
        closet = next(ours(self.doc, "Closet"), None)
        catalogue = bridge.catalogue_of(closet)
        boards = [
            *choices.materials(catalogue),
            *((bar.key, choices.words(bar.title)) for bar in catalogue.bars.values()),
        ]
        self.table.blockSignals(True)
        self.table.setRowCount(len(found))
        for row, offcut in enumerate(found):
            texts = (
                offcut.key, None, units.typed(offcut.length),
                units.typed(offcut.width) if offcut.width else "", None, offcut.place,
                offcut.source, offcut.reserved,
            )
            for column, text in enumerate(texts):
                if text is not None:
                    self.table.setItem(row, column, QtWidgets.QTableWidgetItem(text))
            self._combo(row, 1, boards, offcut.material)
            self._combo(row, 4, [(g, choices.words(g)) for g in GRAINS], offcut.grain)
        self.table.resizeColumnsToContents()
        self.table.setColumnWidth(1, 150)
        self.table.blockSignals(False)
        self._follow()

    def _combo(self, row: int, column: int, offered: choices.Choices, value: str) -> None:
        combo = QtWidgets.QComboBox()
        for key, text in offered:
            combo.addItem(text, key)
        if combo.findData(value) < 0:
            combo.addItem(value, value)
        combo.setCurrentIndex(combo.findData(value))
        combo.setFocusPolicy(QtCore.Qt.StrongFocus)
        combo.currentIndexChanged.connect(lambda _: self._edited())
        self.table.setCellWidget(row, column, combo)

    def _edited(self, item: Any = None) -> None:
        """Take what the table says; keep what the list was where that is no list."""
        try:
            self._put([self._row(row) for row in range(self.table.rowCount())])
        except ClosetError as error:
            self.trouble.say(units.explained(str(error)))

    def _row(self, row: int) -> Offcut:
        def text(column: int) -> str:
            item = self.table.item(row, column)
            return item.text().strip() if item is not None else ""

        name = f"{_tr('offcut')} {text(0) or row + 1}"
        old = self._shown[row] if self._shown is not None and row < len(self._shown) else None
        width = text(3)
        return Offcut(
            text(0), self.table.cellWidget(row, 1).currentData(),
            length_in(text(2), old.length if old else None, name, "length"),
            length_in(width, old.width if old else None, name, "width") if width else 0.0,
            text(6), text(7), self.table.cellWidget(row, 4).currentData(), text(5),
            old.defects if old else (),
        )

    def _put(self, offcuts: Sequence[Offcut]) -> None:
        put_offcuts(self.obj, offcuts)
        self.trouble.say("")
        self._shown = offcuts_of(self.obj)
        self._follow()
        self.preview_soon()

    # -- what is damaged

    def _line(self) -> int | None:
        """The line that is chosen, or the only one."""
        rows = self._chosen() or ({0} if self.table.rowCount() == 1 else set())
        return min(rows) if len(rows) == 1 else None

    def _follow(self) -> None:
        line, shown = self._line(), self._shown or ()
        self.defects.follow(shown[line] if line is not None and line < len(shown) else None)

    def _put_one(self, offcut: Offcut) -> None:
        line = self._line()
        self._put([offcut if i == line else o for i, o in enumerate(offcuts_of(self.obj))])

    # -- what the buttons do

    def add(self) -> None:
        """One more line, of the material of the last."""
        found = offcuts_of(self.obj)
        if found:
            material = found[-1].material
        else:
            closet = next(ours(self.doc, "Closet"), None)
            parts = bridge.closet_of(closet).parts if closet is not None else ()
            material = parts[0].panel.material if parts else "ply18"
        number = 1
        while f"{material} {number}" in {o.key for o in found}:
            number += 1
        self._put([*found, Offcut(f"{material} {number}", material, 600.0, 300.0)])
        self._shown = None
        self._fill()

    def remove(self) -> None:
        """Take the chosen lines out."""
        rows = self._chosen()
        self._put([o for i, o in enumerate(offcuts_of(self.obj)) if i not in rows])
        self._shown = None
        self._fill()

    def free(self) -> None:
        """Keep the chosen lines for no job."""
        rows = self._chosen()
        self._put([
            replace(o, reserved="") if i in rows else o
            for i, o in enumerate(offcuts_of(self.obj))
        ])
        self._shown = None
        self._fill()

    def _chosen(self) -> set[int]:
        return {index.row() for index in self.table.selectedIndexes()}

    def _ask_read(self) -> None:
        path, _ = QtWidgets.QFileDialog.getOpenFileName(
            self.table.window(), _tr("Read offcuts"), self._start(), _FILTER)
        if path:
            self.read(Path(path))

    def read(self, path: Path) -> None:
        """Put what a file says in the place of the list."""
        try:
            load_file(self.obj, path)
        except ClosetError as error:
            self.trouble.say(units.explained(str(error)))
            return
        self.trouble.say("")
        self.preview_now()

    def _ask_write(self) -> None:
        path, _ = QtWidgets.QFileDialog.getSaveFileName(
            self.table.window(), _tr("Write offcuts"), self._start(), _FILTER)
        if path:
            self.write(Path(path))

    def write(self, path: Path) -> None:
        """Write the list to a file."""
        try:
            save_file(self.obj, path)
        except ClosetError as error:
            self.trouble.say(units.explained(str(error)))

    def _start(self) -> str:
        return self.obj.File or str(home_folder() / "offcuts.toml")

    def cut(self, layout: Any) -> None:
        """A job is cut: what it took goes out, what it left comes in."""
        try:
            cutting = cutting_of(layout)
            if cutting is not None:
                self._put(offcuts_after(
                    offcuts_of(self.obj), cutting, layout.Closet.Label))
        except ClosetError as error:
            self.trouble.say(units.explained(str(error)))
            return
        for button in self.jobs:
            if button.objectName() == f"cut {layout.Name}":
                button.setEnabled(False)
        self._shown = None
        self._fill()

    def finish(self) -> None:
        """What the table says and cannot be kept must not be lost without a word."""
        put_offcuts(self.obj, [self._row(row) for row in range(self.table.rowCount())])
        line = self._line()
        if line is not None:
            self._put_one(replace(offcuts_of(self.obj)[line], defects=self.defects.defects()))
