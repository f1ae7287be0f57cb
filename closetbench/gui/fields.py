"""Fields of a form: an editor each, with a value that is read only where the user typed.

A field's ``value()`` is the stored value until the user has changed the text, so that
nothing is rounded by being shown. ``edited`` is emitted when a change is complete (Enter,
leaving the field, a click), not at every key.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from enum import Enum
from typing import Any

from closetbench.core.errors import ClosetError
from closetbench.core.lengths import read_length
from closetbench.gui import units
from closetbench.gui.qt import QtCore, QtWidgets, Signal, translate

ONE_LINE = 20
"""Letters that boxes to tick may have beside each other in a form's width."""


class Field(QtCore.QObject):
    """An editor with a name (the widget's object name) and a value.

    ``edited``: the user has completed a change. ``entered``: the editor has the focus.
    ``locked``: the value follows from elsewhere and cannot be edited here.
    """

    edited = Signal(object)
    entered = Signal(object)

    def __init__(self, name: str, widget: QtWidgets.QWidget) -> None:
        super().__init__(widget)
        self.name = name
        self.widget = widget
        self.locked = False
        widget.setObjectName(name)
        widget.installEventFilter(self)

    @property
    def shown(self) -> QtWidgets.QWidget:
        """What goes into the form: the editor, or a widget that holds it."""
        return self.widget

    def value(self) -> Any:
        """The value as the core takes it; ``ClosetError`` where the text says none."""
        raise NotImplementedError

    def put(self, value: Any) -> None:
        """Show a value; the field counts as untouched again."""
        raise NotImplementedError

    def lock(self, why: str) -> None:
        """Keep the value from being edited, and say why."""
        self.locked = True
        self.widget.setEnabled(False)
        self.widget.setToolTip(why)

    def commit(self) -> bool:
        """Take what was typed and not yet taken; whether there was such a change."""
        return False

    def eventFilter(self, watched: QtCore.QObject, event: QtCore.QEvent) -> bool:  # noqa: N802
        """Tell when the editor gets the focus; keep the wheel from changing what it passes."""
        if event.type() == QtCore.QEvent.FocusIn:
            self.entered.emit(self)
        elif event.type() == QtCore.QEvent.Wheel and not self.widget.hasFocus():
            event.ignore()
            return True
        return False


class TextField(Field):
    """A line of text."""

    def __init__(self, name: str, hint: str = "") -> None:
        self.line = QtWidgets.QLineEdit()
        super().__init__(name, self.line)
        self.line.setPlaceholderText(hint)
        self.line.editingFinished.connect(self.commit)
        self._stored: Any = ""
        self._shown = ""
        self._told: str | None = None

    def value(self) -> Any:
        if self.line.text() == self._shown:
            return self._stored
        return self.read(self.line.text().strip())

    def put(self, value: Any) -> None:
        self._stored = value
        self._told = None
        self._shown = self.write(value)
        self.line.setText(self._shown)
        self.line.setCursorPosition(0)

    def commit(self) -> bool:
        if not self.touched:
            return False
        self._told = self.line.text()
        self.edited.emit(self)
        return True

    def ask(self) -> None:
        """Show nothing, so that a value has to be typed."""
        self._shown, self._told = "", None
        self.line.clear()

    @property
    def touched(self) -> bool:
        """Whether the text differs from what was shown, and from what was told last."""
        return self.line.text() not in (self._shown, self._told)

    def read(self, text: str) -> Any:
        """The value that a text says."""
        return text

    def write(self, value: Any) -> str:
        """The text for a value."""
        return str(value)


class LengthField(TextField):
    """A length in mm, typed in any spelling, shown in FreeCAD's unit.

    ``blank``: what an empty field means ("from the envelope"): its value is then None.
    ``signed``: negative lengths are allowed.
    """

    def __init__(self, name: str, prop: str, blank: str = "", signed: bool = False) -> None:
        super().__init__(name, blank)
        self.prop = prop
        self.blank = blank
        self.signed = signed
        self.line.setMinimumWidth(72)

    def hint(self, follows: float | None) -> None:
        """Show what an empty field comes to."""
        if self.blank:
            now = self.blank if follows is None else f"{units.shown(follows)} ({self.blank})"
            self.line.setPlaceholderText(now)
            self.line.setToolTip(self.line.placeholderText())

    def read(self, text: str) -> float | None:
        if not text and self.blank:
            return None
        return read_length(
            text, units.current_format().unit, allow_negative=self.signed,
            subject="field", prop=self.prop,
        )

    def write(self, value: float | None) -> str:
        return "" if value is None else units.typed(value)


class LengthsField(TextField):
    """Lengths in mm, set apart by semicolons; empty for none."""

    def __init__(self, name: str, prop: str, blank: str) -> None:
        super().__init__(name, blank)
        self.prop = prop

    def read(self, text: str) -> tuple[float, ...]:
        unit = units.current_format().unit
        return tuple(
            read_length(piece, unit, subject="field", prop=self.prop)
            for piece in re.split(r"\s*;\s*", text.strip("; "))
            if piece
        )

    def write(self, value: tuple[float, ...]) -> str:
        unit = f" {units.current_format().unit}"
        return "; ".join(units.typed(v).removesuffix(unit) for v in value)


class NumberField(TextField):
    """A plain number, between limits that are said when it is not."""

    def __init__(
        self, name: str, prop: str, low: float, high: float, unit: str = "", blank: str = ""
    ) -> None:
        super().__init__(name, blank)
        self.prop, self.low, self.high, self.unit, self.blank = prop, low, high, unit, blank

    def read(self, text: str) -> float | None:
        if not text and self.blank:
            return None
        limit = f"must be a number from {self.low:g} to {self.high:g} {self.unit}".rstrip()
        try:
            number = float(text.removesuffix(self.unit).strip().replace(",", "."))
        except ValueError:
            raise ClosetError("field", self.prop, text or "empty", limit) from None
        if not self.low <= number <= self.high:
            raise ClosetError("field", self.prop, text, limit)
        return number

    def write(self, value: float | None) -> str:
        return "" if value is None else f"{value:g} {self.unit}".rstrip()


class CountField(Field):
    """A whole number; ``special``: how the lowest one reads."""

    def __init__(self, name: str, low: int, high: int, special: str = "") -> None:
        self.spin = QtWidgets.QSpinBox()
        super().__init__(name, self.spin)
        self.spin.setRange(low, high)
        self.spin.setSpecialValueText(special)
        self.spin.setFocusPolicy(QtCore.Qt.StrongFocus)
        self.spin.valueChanged.connect(self._changed)

    def _changed(self) -> None:
        self.edited.emit(self)

    def value(self) -> int:
        return int(self.spin.value())

    def put(self, value: int) -> None:
        self.spin.blockSignals(True)
        self.spin.setValue(value)
        self.spin.blockSignals(False)

    def commit(self) -> bool:
        before = self.value()
        self.spin.interpretText()
        return self.value() != before


class CheckField(Field):
    """Yes or no."""

    def __init__(self, name: str, text: str = "") -> None:
        self.box = QtWidgets.QCheckBox(text)
        super().__init__(name, self.box)
        self.box.toggled.connect(self._changed)

    def _changed(self) -> None:
        self.edited.emit(self)

    def value(self) -> bool:
        return bool(self.box.isChecked())

    def put(self, value: bool) -> None:
        self.box.blockSignals(True)
        self.box.setChecked(value)
        self.box.blockSignals(False)


class ChoiceField(Field):
    """One of several values, each with the text that it is chosen by."""

    def __init__(self, name: str, choices: Iterable[tuple[Any, str]]) -> None:
        self.combo = QtWidgets.QComboBox()
        super().__init__(name, self.combo)
        self.combo.setFocusPolicy(QtCore.Qt.StrongFocus)
        self.combo.setSizeAdjustPolicy(
            QtWidgets.QComboBox.AdjustToMinimumContentsLengthWithIcon
        )
        self.combo.setMinimumContentsLength(8)
        self._values: list[Any] = []
        self.fill(choices)
        self.combo.currentIndexChanged.connect(self._changed)

    def fill(self, choices: Iterable[tuple[Any, str]]) -> None:
        """Put other choices in their place, without a choice being made."""
        self.combo.blockSignals(True)
        self.combo.clear()
        self._values = []
        for value, text in choices:
            self._values.append(value)
            self.combo.addItem(text)
        self.combo.blockSignals(False)

    def _changed(self) -> None:
        self.edited.emit(self)

    def value(self) -> Any:
        index = self.combo.currentIndex()
        return self._values[index] if index >= 0 else None

    def put(self, value: Any) -> None:
        if value not in self._values:
            # an entry that has gone from the catalogue must not turn into another one
            self._values.append(value)
            self.combo.blockSignals(True)
            self.combo.addItem(str(value.value if isinstance(value, Enum) else value))
            self.combo.blockSignals(False)
        self.combo.blockSignals(True)
        self.combo.setCurrentIndex(self._values.index(value))
        self.combo.blockSignals(False)
        self.combo.setToolTip(self.combo.currentText())


class KeysField(Field):
    """Some keys of a catalogue: a box to tick for each, by its title."""

    def __init__(self, name: str, choices: Iterable[tuple[str, str]]) -> None:
        self.column = QtWidgets.QWidget()
        super().__init__(name, self.column)
        self._layout = QtWidgets.QVBoxLayout(self.column)
        self._layout.setContentsMargins(0, 0, 0, 0)
        self._layout.setSpacing(2)
        self.boxes: dict[str, QtWidgets.QCheckBox] = {}
        for key, title in choices:
            self._add(key, title)
        self.column.setFocusPolicy(QtCore.Qt.StrongFocus)

    def _add(self, key: str, title: str) -> None:
        box = QtWidgets.QCheckBox(title)
        box.setObjectName(f"{self.name} {key}")
        box.clicked.connect(self._clicked)
        self._layout.addWidget(box)
        self.boxes[key] = box
        if len(self.boxes) == 1:
            self.column.setFocusProxy(box)

    def _clicked(self) -> None:
        self.edited.emit(self)

    def value(self) -> tuple[str, ...]:
        return tuple(key for key, box in self.boxes.items() if box.isChecked())

    def put(self, value: tuple[str, ...]) -> None:
        for key in value:
            if key not in self.boxes:
                # what has gone from the catalogue must not be lost unseen
                self._add(key, key)
        for key, box in self.boxes.items():
            box.setChecked(key in value)


class TicksField(Field):
    """Some members of an enumeration: a box to tick for each.

    ``none``: words of a box that says "none of them"; nothing ticked is then None.
    """

    def __init__(self, name: str, kind: type[Enum], none: str = "") -> None:
        self.row = QtWidgets.QWidget()
        super().__init__(name, self.row)
        layout = QtWidgets.QGridLayout(self.row)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        members: list[Enum | None] = [*kind, *([None] if none else [])]
        words = [none if member is None else str(member.value) for member in members]
        columns = len(words) if sum(map(len, words)) <= ONE_LINE else 2
        self.boxes: dict[Enum | None, QtWidgets.QCheckBox] = {}
        for index, (member, word) in enumerate(zip(members, words, strict=True)):
            box = QtWidgets.QCheckBox(translate("Closetbench_Choice", word))
            box.setObjectName(f"{name} {word}")
            box.clicked.connect(lambda _=False, member=member: self._clicked(member))
            layout.addWidget(box, *divmod(index, columns))
            self.boxes[member] = box
        layout.setColumnStretch(columns, 1)
        self.row.setFocusProxy(self.boxes[members[0]])
        self.row.setFocusPolicy(QtCore.Qt.StrongFocus)

    def _clicked(self, member: Enum | None) -> None:
        if self.boxes[member].isChecked():
            for other, box in self.boxes.items():
                if (other is None) != (member is None):
                    box.setChecked(False)
        self.edited.emit(self)

    def value(self) -> tuple[Enum, ...] | None:
        ticked = [member for member, box in self.boxes.items() if box.isChecked()]
        if not ticked and None in self.boxes:
            return None
        return tuple(member for member in ticked if member is not None)

    def put(self, value: tuple[Enum, ...] | None) -> None:
        for member, box in self.boxes.items():
            box.setChecked(value == () if member is None else member in (value or ()))
