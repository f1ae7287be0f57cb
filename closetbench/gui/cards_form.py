"""A list of records in a form: a card of fields for each, to add to and to take from."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from closetbench.gui.fields import Field
from closetbench.gui.form import ErrorLabel, Form, Head
from closetbench.gui.qt import QtWidgets, translate

CONTEXT = "Closetbench"

Line = tuple[str, Sequence[Field]]
"""A label and the fields beside it."""


class CardsForm(Form):
    """``lines``: the lines of the card of one record, by its number; ``heads`` stand over
    each card's columns. ``grow`` and ``drop`` are called for the buttons."""

    def __init__(
        self, title: str, name: str, add: str, lines: Callable[[int], list[Line]],
        grow: Callable[[], None], drop: Callable[[int], None], heads: Sequence[str] = (),
    ) -> None:
        super().__init__(title, "survey")
        self._lines, self._drop, self._heads = lines, drop, heads
        self._cards = QtWidgets.QWidget()
        self._stack = QtWidgets.QVBoxLayout(self._cards)
        self._stack.setContentsMargins(0, 0, 0, 0)
        self.whole(self._cards)
        self.trouble = ErrorLabel(title)
        self.whole(self.trouble)
        button = QtWidgets.QPushButton(add)
        button.setObjectName(f"add {name}")
        button.setAutoDefault(False)
        button.clicked.connect(grow)
        self.whole(button)

    def rebuild(self, count: int) -> list[Field]:
        """A card for each record; the new fields."""
        for field in list(self.fields):
            self.release(field)
        while self._stack.count():
            widget = self._stack.takeAt(0).widget()
            widget.hide()
            widget.deleteLater()
        for index in range(count):
            self._stack.addWidget(self._card(index))
        return list(self.fields)

    def _card(self, index: int) -> QtWidgets.QFrame:
        card = QtWidgets.QFrame()
        card.setFrameShape(QtWidgets.QFrame.StyledPanel)
        grid = QtWidgets.QGridLayout(card)
        grid.setContentsMargins(4, 4, 4, 4)
        grid.setVerticalSpacing(3)
        lines = self._lines(index)
        widest = max(len(fields) for _, fields in lines)
        remove = QtWidgets.QToolButton()
        remove.setText("×")
        remove.setToolTip(translate(CONTEXT, "Remove"))
        remove.setObjectName(f"remove {self.windowTitle()} {index + 1}")
        remove.clicked.connect(lambda: self._drop(index))
        grid.addWidget(remove, 0, widest + 1)
        made: list[Field] = []
        at, heads = 0, tuple(self._heads)
        for text, fields in lines:
            if heads and len(fields) == widest:
                for column, head in enumerate(heads, 1):
                    grid.addWidget(Head(head), at, column)
                heads, at = (), at + 1
            grid.addWidget(QtWidgets.QLabel(text), at, 0)
            for column, field in enumerate(fields, 1):
                last = column == len(fields)
                grid.addWidget(field.shown, at, column, 1, widest - column + 1 if last else 1)
                grid.setColumnStretch(column, 1)
            made += fields
            at += 1
        self.adopt(made, grid, at)
        return card
