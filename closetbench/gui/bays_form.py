"""The table of a carcass's bays: a row of fields for each."""

from __future__ import annotations

from collections.abc import Callable

from closetbench.core.specs import BaySpec
from closetbench.gui.fields import CountField, Field, LengthField, LengthsField
from closetbench.gui.form import ErrorLabel, Form, Head
from closetbench.gui.qt import QtWidgets, translate

CONTEXT = "Closetbench_Bay"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


class BaysForm(Form):
    """Rows of clear width, fixed and loose shelves; ``grow`` and ``drop`` are called for the
    buttons."""

    def __init__(self, grow: Callable[[], None], drop: Callable[[int], None]) -> None:
        super().__init__(_tr("Bays, from left to right"), "bay")
        self._drop = drop
        self._rows = QtWidgets.QWidget()
        self._table = QtWidgets.QGridLayout(self._rows)
        self._table.setContentsMargins(0, 0, 0, 0)
        self._table.setHorizontalSpacing(4)
        self._table.setVerticalSpacing(3)
        self.whole(self._rows)
        self.trouble = ErrorLabel("bays")
        self.whole(self.trouble)
        self.add = QtWidgets.QPushButton(_tr("Add a bay"))
        self.add.setObjectName("add bay")
        self.add.setAutoDefault(False)
        self.add.clicked.connect(grow)
        self.whole(self.add)

    def rebuild(self, bays: tuple[BaySpec, ...]) -> list[Field]:
        """A row for each bay; the new fields."""
        for field in list(self.fields):
            self.release(field)
        while self._table.count():
            widget = self._table.takeAt(0).widget()
            widget.hide()
            widget.deleteLater()
        for column, text in enumerate(
            (_tr("Clear width"), _tr("Fixed"), _tr("Loose"), _tr("Fixed at")), 1
        ):
            self._table.addWidget(Head(text), 0, column)
        self._table.setColumnStretch(1, 3)
        self._table.setColumnStretch(4, 3)
        return [f for i in range(len(bays)) for f in self._row(i, len(bays) > 1)]

    def _row(self, index: int, removable: bool) -> list[Field]:
        at = 2 * index + 1
        width = LengthField(f"bays.{index}.width", "width", _tr("shared"))
        width.line.setToolTip(_tr(
            "Clear width of the bay. Left empty, it shares what the others leave."))
        fixed = CountField(f"bays.{index}.fixed", 0, 40)
        fixed.spin.setToolTip(_tr("Fixed shelves, let into the sides at equal clear heights."))
        loose = CountField(f"bays.{index}.adjustable", 0, 40)
        loose.spin.setToolTip(_tr("Adjustable shelves, loose on pins."))
        heights = LengthsField(f"bays.{index}.heights", "height", _tr("equal"))
        heights.line.setToolTip(_tr(
            "Heights of the fixed shelves' undersides above the bay's floor, set apart by "
            "semicolons. Left empty, the clear heights are equal."))
        fields: list[Field] = [width, fixed, loose, heights]
        self._table.addWidget(QtWidgets.QLabel(str(index + 1)), at, 0)
        for column, field in enumerate(fields, 1):
            if isinstance(field, CountField):
                field.spin.setMaximumWidth(56)
            self._table.addWidget(field.widget, at, column)
        remove = QtWidgets.QToolButton()
        remove.setText("×")
        remove.setObjectName(f"remove bay {index + 1}")
        remove.setToolTip(_tr("Remove this bay"))
        remove.setEnabled(removable)
        remove.clicked.connect(lambda: self._drop(index))
        self._table.addWidget(remove, at, 5)
        self.adopt(fields, self._table, at + 1)
        return fields
