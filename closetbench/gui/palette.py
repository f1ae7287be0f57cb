"""Colours: of boards in the 3D view, of text and of sketches on light and dark themes."""

from __future__ import annotations

from closetbench.core.materials import Material
from closetbench.core.reading_lines import Trust
from closetbench.core.room_scene import Kind
from closetbench.gui.qt import QtGui, QtWidgets
from closetbench.shop.board_colours import Colour, board_colour

SURVEY: Colour = (0.45, 0.55, 0.63)
EDGES: Colour = (0.25, 0.20, 0.16)
PIECES: dict[str, Colour] = {"Bar": (0.78, 0.80, 0.82), "ExistingPiece": (0.55, 0.68, 0.72)}
"""Colours of what is not cut from boards, by class."""
SHEET: Colour = (0.95, 0.84, 0.66)
LABEL: Colour = (0.40, 0.12, 0.08)
"""The ground of parts' names in the 3D view."""
TRUST: dict[Trust, Colour] = {
    Trust.AGREES: (0.05, 0.48, 0.42),
    Trust.DOUBTFUL: (0.73, 0.42, 0.00),
    Trust.WRONG: (0.80, 0.13, 0.13),
    Trust.UNCHECKED: (0.40, 0.44, 0.50),
}
"""Readings by what the others say about them: grounds of white words."""
ROOM: dict[Kind, tuple[Colour, float]] = {
    Kind.WALLS: ((0.72, 0.78, 0.82), 0.78),
    Kind.FLOOR: ((0.62, 0.52, 0.42), 0.70),
    Kind.CEILING: ((0.85, 0.87, 0.88), 0.80),
    Kind.FRONT: ((0.78, 0.80, 0.74), 0.80),
    Kind.TRIM: ((0.93, 0.93, 0.90), 0.35),
    Kind.DEAD_SPACE: ((0.56, 0.33, 0.72), 0.72),
    Kind.OBSTACLES: ((0.20, 0.45, 0.80), 0.35),
}
"""What the room is drawn in, and how much of what is behind shows through."""
FREE: Colour = (0.15, 0.60, 0.35)
HIT: Colour = (0.88, 0.12, 0.12)
GHOST: Colour = (0.20, 0.55, 0.85)

HANDLE: Colour = (0.02, 0.36, 0.72)
HANDLE_HOT: Colour = (0.95, 0.45, 0.00)
HALO: Colour = (1.0, 1.0, 1.0)
"""Handles, those under the mouse, and what sets both off from dark grounds."""


def band_colour(board: Colour) -> Colour:
    """The colour of an edge band on a board of a colour."""
    return _mixed(board, (0.45, 0.26, 0.10), 0.5)


def groove_colour(board: Colour) -> Colour:
    """The colour of what is cut into a board."""
    return _mixed(board, (0.0, 0.0, 0.0), 0.3)


def cut_colour(board: Colour) -> Colour:
    """The colour of a board where the view cuts through it."""
    return _mixed(board, (0.60, 0.22, 0.10), 0.55)


def _mixed(one: Colour, other: Colour, share: float) -> Colour:
    red, green, blue = (a + share * (b - a) for a, b in zip(one, other, strict=True))
    return red, green, blue


def is_dark(widget: QtWidgets.QWidget) -> bool:
    """Whether text on the widget is light on a dark ground.

    The text's colour is asked, not the ground's: style sheets set it on every widget,
    but often leave the ground to a parent.
    """
    return widget.palette().color(widget.foregroundRole()).lightnessF() > 0.5


def ink(widget: QtWidgets.QWidget, share: float = 1.0) -> QtGui.QColor:
    """The colour of text on the widget, faded to a share of its strength."""
    colour = QtGui.QColor(widget.palette().color(widget.foregroundRole()))
    colour.setAlphaF(share)
    return colour


def accent(widget: QtWidgets.QWidget) -> QtGui.QColor:
    """The colour that points something out in a sketch."""
    return QtGui.QColor("#ffb454" if is_dark(widget) else "#b4500a")


def wood(widget: QtWidgets.QWidget) -> QtGui.QColor:
    """The ground of a board in a sketch."""
    return QtGui.QColor("#6b5840" if is_dark(widget) else "#ead9bd")


def board_ground(widget: QtWidgets.QWidget, material: Material | None) -> QtGui.QColor:
    """The ground of a board in a sketch: its colour in the 3D view, darker on a dark theme."""
    colour = QtGui.QColor.fromRgbF(*board_colour(material))
    return colour.darker(190) if is_dark(widget) else colour


def ink_over(ground: QtGui.QColor) -> QtGui.QColor:
    """A colour of words that can be read on a ground."""
    return QtGui.QColor("#2b2118" if ground.lightnessF() > 0.5 else "#f6ecdb")


def error_colour(widget: QtWidgets.QWidget) -> str:
    """A red that can be read on the widget's ground."""
    return "#ff8f85" if is_dark(widget) else "#b3261e"


def warning_colour(widget: QtWidgets.QWidget) -> str:
    """An amber that can be read on the widget's ground."""
    return "#f2b95c" if is_dark(widget) else "#8a5a00"


def done_colour(widget: QtWidgets.QWidget) -> str:
    """A green, for what is done, that can be read on the widget's ground."""
    return "#7fd39a" if is_dark(widget) else "#1f7a3d"


def unknown_colour(widget: QtWidgets.QWidget) -> str:
    """A violet, for what nobody knows, that can be read on the widget's ground."""
    return "#c3a6f5" if is_dark(widget) else "#6a3fb0"


def trust_ink(widget: QtWidgets.QWidget, state: Trust) -> QtGui.QColor:
    """The colour of words about a reading, by what the others say of it."""
    if state in (Trust.WRONG, Trust.DOUBTFUL):
        return QtGui.QColor(
            error_colour(widget) if state is Trust.WRONG else warning_colour(widget))
    return ink(widget, 0.65 if state is Trust.UNCHECKED else 1.0)
