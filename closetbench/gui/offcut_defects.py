"""The damaged places of one offcut: a table to edit, and a sketch of what stays sound."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import astuple, replace

from closetbench.core.errors import ClosetError
from closetbench.core.lengths import read_length
from closetbench.gui import palette, units
from closetbench.gui.form import ErrorLabel, Form
from closetbench.gui.qt import QtCore, QtGui, QtWidgets, translate
from closetbench.gui.sketch import Sketch
from closetbench.stock.offcuts import Offcut, offcuts_as_lengths
from closetbench.stock.sound import Defect

CONTEXT = "Closetbench_Offcuts"
_FRESH = 50.0
"""mm of a defect that was just added, to be put right at once."""


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


def length_in(typed: str, stored: float | None, subject: str, prop: str) -> float:
    """The length in a cell. ``stored``: what it was filled with; where that is what stands
    there still, nothing is rounded by having been shown."""
    if stored is not None and typed == units.typed(stored):
        return stored
    return read_length(typed, units.current_format().unit, subject=subject, prop=prop)


class DefectsForm(Form):
    """Edits the defects of the offcut that is chosen. ``put``: called with it when it was
    changed; it raises ``ClosetError`` where it cannot be so."""

    def __init__(self, put: Callable[[Offcut], None]) -> None:
        super().__init__(_tr("Damaged places"), "offcuts")
        self._put = put
        self._offcut: Offcut | None = None
        self.told = self.note("sound")
        self.sketch = _OffcutSketch()
        self.whole(self.sketch)
        self.table = QtWidgets.QTableWidget(0, 4)
        self.table.setObjectName("defects")
        self.table.setMinimumHeight(110)
        self.table.setHorizontalHeaderLabels([
            _tr("length from"), _tr("to"), _tr("width from"), _tr("to"),
        ])
        self.table.horizontalHeader().setSectionResizeMode(QtWidgets.QHeaderView.Stretch)
        self.table.setSelectionBehavior(QtWidgets.QAbstractItemView.SelectRows)
        self.table.itemChanged.connect(lambda _: self._edited())
        self.whole(self.table)
        self.trouble = ErrorLabel("defects")
        self.whole(self.trouble)
        row = QtWidgets.QWidget()
        box = QtWidgets.QHBoxLayout(row)
        box.setContentsMargins(0, 0, 0, 0)
        self.buttons = []
        for name, text, work in (
            ("add defect", _tr("Add a place"), self.add),
            ("remove defect", _tr("Remove the place"), self.remove),
        ):
            button = QtWidgets.QPushButton(text)
            button.setObjectName(name)
            button.setAutoDefault(False)
            button.clicked.connect(lambda _=False, work=work: work())
            box.addWidget(button)
            self.buttons.append(button)
        self.whole(row)
        self.follow(None)

    def follow(self, offcut: Offcut | None) -> None:
        """Show the defects of this offcut; None: none is chosen."""
        same = offcut is not None and offcut == self._offcut
        self._offcut = offcut
        for widget in (self.sketch, self.table, *self.buttons):
            widget.setVisible(offcut is not None)
        self.sketch.show_offcut(offcut)
        self.told.setText(_told(offcut))
        if same and self.table.rowCount() == len(offcut.defects):
            return
        self.trouble.say("")
        self._fill(offcut.defects if offcut is not None else ())

    def _fill(self, defects: tuple[Defect, ...]) -> None:
        self.table.blockSignals(True)
        self.table.setRowCount(len(defects))
        self.table.setColumnHidden(2, self._offcut is not None and not self._offcut.width)
        self.table.setColumnHidden(3, self._offcut is not None and not self._offcut.width)
        for row, defect in enumerate(defects):
            texts = [units.typed(v) for v in astuple(defect)]
            for column, text in enumerate(texts if defect.high else [*texts[:2], "", ""]):
                self.table.setItem(row, column, QtWidgets.QTableWidgetItem(text))
        self.table.blockSignals(False)

    def add(self) -> None:
        """One more place, at the corner that all are measured from."""
        one = self._offcut
        if one is None:
            return
        across = min(_FRESH, one.width / 4)
        fresh = Defect(0.0, min(_FRESH, one.length / 4), 0.0, across)
        self._change((*one.defects, fresh))

    def remove(self) -> None:
        """Take the chosen places out; the last where none is chosen."""
        if self._offcut is None or not self._offcut.defects:
            return
        rows = {index.row() for index in self.table.selectedIndexes()}
        rows = rows or {len(self._offcut.defects) - 1}
        self._change(tuple(d for i, d in enumerate(self._offcut.defects) if i not in rows))

    def _change(self, defects: tuple[Defect, ...]) -> None:
        try:
            self._put(replace(self._offcut, defects=defects))
        except ClosetError as error:
            self.trouble.say(units.explained(str(error)))

    def _edited(self) -> None:
        """Take what the table says; keep what there was where that cannot be."""
        before = self._offcut
        if before is None:
            return
        try:
            # known already, so that the cell in hand is not filled anew under the editor
            self._offcut = replace(before, defects=self.defects())
            self._put(self._offcut)
        except ClosetError as error:
            self._offcut = before
            self.trouble.say(units.explained(str(error)))
            return
        self.trouble.say("")

    def defects(self) -> tuple[Defect, ...]:
        """What the table says. Raises ``ClosetError`` where that is no length."""
        return tuple(self._row(row) for row in range(self.table.rowCount()))

    def _row(self, row: int) -> Defect:
        old = self._offcut.defects
        stored = astuple(old[row]) if row < len(old) else (None,) * 4
        texts = []
        for column in range(4):
            item = self.table.item(row, column)
            texts.append(item.text().strip() if item is not None else "")
        if not any(texts[2:]):
            texts = texts[:2]
        subject = f"{_tr('offcut')} {self._offcut.key}"
        prop = _tr("damaged place {}").format(row + 1)
        return Defect(*(
            length_in(text, value, subject, prop)
            for text, value in zip(texts, stored, strict=False)
        ))


def _told(offcut: Offcut | None) -> str:
    if offcut is None:
        return _tr("Choose a line above to list what is damaged on it.")
    text = _tr("{}: measured from the corner with the dot.").format(offcut.key) if (
        offcut.width) else _tr("{}: measured from the end with the dot.").format(offcut.key)
    if not offcut.defects:
        return f"{text} {_tr('Nothing is damaged.')}"
    try:
        if offcut.width:
            sound = offcut.sound
            told = _tr(
                "The plan uses the largest sound rectangle, {} x {}, from {} and {} on; it is "
                "cut out first.").format(*map(
                    units.shown, (sound.dx, sound.dy, sound.x, sound.y)))
        else:
            told = _tr("The plan cuts around it.") if offcuts_as_lengths([offcut]) else ""
    except ClosetError as error:
        told = units.explained(str(error))
    return f"{text} {told}"


class _OffcutSketch(Sketch):
    """An offcut to scale, what is damaged on it hatched, what is used framed."""

    def __init__(self) -> None:
        super().__init__("offcut sketch", 130)
        self.offcut: Offcut | None = None

    def show_offcut(self, offcut: Offcut | None) -> None:
        """Draw this one from now on."""
        self.offcut = offcut
        self.update()

    def draw(self, painter: QtGui.QPainter) -> None:
        """The offcut, its defects, its sound part and the corner that is measured from."""
        one = self.offcut
        if one is None:
            return
        width = one.width or one.length / 20
        scale = min((self.width() - 20) / one.length, (self.height() - 20) / width)
        x0 = (self.width() - one.length * scale) / 2
        y0 = (self.height() + width * scale) / 2

        def box(x: float, y: float, dx: float, dy: float) -> QtCore.QRectF:
            return QtCore.QRectF(x0 + x * scale, y0 - (y + dy) * scale, dx * scale, dy * scale)

        painter.setBrush(palette.wood(self))
        self.pen(painter, 1.2, 0.8)
        painter.drawRect(box(0, 0, one.length, width))
        red = QtGui.QColor(palette.error_colour(self))
        painter.setPen(QtGui.QPen(red, 1.2))
        painter.setBrush(QtGui.QBrush(red, QtCore.Qt.BDiagPattern))
        for d in one.defects:
            low, high = (d.low, d.high) if d.high else (0.0, width)
            painter.drawRect(box(d.start, low, d.end - d.start, high - low))
        if one.defects and one.width:
            sound = one.sound
            where = box(sound.x, sound.y, sound.dx, sound.dy)
            painter.setBrush(QtCore.Qt.NoBrush)
            self.pen(painter, 2.0, accent=True)
            painter.drawRect(where.adjusted(1, 1, -1, -1))
            text = f"{units.shown(sound.dx)} x {units.shown(sound.dy)}"
            centre = where.center()
            self.words(painter, (centre.x(), centre.y()), text, room=where.width() - 6,
                       colour=palette.ink_over(palette.wood(self)))
        painter.setPen(QtCore.Qt.NoPen)
        painter.setBrush(palette.accent(self))
        painter.drawEllipse(QtCore.QPointF(x0, y0), 4.5, 4.5)
