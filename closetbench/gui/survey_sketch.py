"""The closet looked into and from above: which reading a field stands for."""

from __future__ import annotations

from itertools import pairwise

from closetbench.gui import palette
from closetbench.gui.qt import QtCore, QtGui, translate
from closetbench.gui.sketch import Point, Sketch

CONTEXT = "Closetbench_Survey"

Space = tuple[float, float, float]
LEVELS = {"low": 0.12, "mid": 0.50, "high": 0.88}
LEFT_JAMB, RIGHT_JAMB, LINTEL = 0.16, 0.84, 0.86
_SIDES = {"left": 0.0, "right": 1.0}
_ENDS = {"front": 0.0, "back": 1.0}
_BACK = 0.56
"""Size of the back wall in the view from the front, of the front's size."""


def _segments() -> dict[str, tuple[Space, Space, bool]]:
    """From where to where each reading is taken in a unit room; whether it is an offset."""
    found: dict[str, tuple[Space, Space, bool]] = {}
    for end, y in _ENDS.items():
        for level, z in LEVELS.items():
            found[f"width_{end}_{level}"] = ((0, y, z), (1, y, z), False)
        for side, x in _SIDES.items():
            found[f"height_{end}_{side}"] = ((x, y, 0), (x, y, 1), False)
            into = 0.16 if side == "left" else -0.16
            found[f"lean_{side}_{end}"] = (
                (x, y, LEVELS["high"]), (x + into, y, LEVELS["high"]), True)
        found[f"rise_{end}"] = ((1, y, 0), (1, y, 0.2), True)
    for side, x in _SIDES.items():
        found[f"depth_{side}"] = ((x, 0, 0), (x, 1, 0), False)
        found[f"lean_back_{side}"] = (
            (x, 1, LEVELS["high"]), (x, 0.6, LEVELS["high"]), True)
    found["opening_width"] = ((LEFT_JAMB, 0, 0.4), (RIGHT_JAMB, 0, 0.4), False)
    found["opening_height"] = ((0.5, 0, 0), (0.5, 0, LINTEL), False)
    found["lintel"] = ((0.5, 0, LINTEL), (0.5, 0, 1), False)
    found["return_left"] = ((0, 0, 0.4), (LEFT_JAMB, 0, 0.4), False)
    found["return_right"] = ((RIGHT_JAMB, 0, 0.4), (1, 0, 0.4), False)
    found["rise_left"] = ((0, 1, 0), (0, 1, 0.25), True)
    found["diagonal_to_right"] = ((0, 0, 0), (1, 1, 0), False)
    found["diagonal_to_left"] = ((1, 0, 0), (0, 1, 0), False)
    for number, z in enumerate(LEVELS.values()):
        found[f"levels.{number}"] = ((0.5, 0, 0), (0.5, 0, z), False)
    return found


SEGMENTS = _segments()

HINTS = {
    "width": "Wall to wall, the tape level.",
    "height": "Floor to ceiling, the tape plumb, close to the corner.",
    "depth": "Along the wall, from the front line to the back wall, on the floor.",
    "diagonal": "On the floor, from the front corner to the back corner across.",
    "lean": "Plumb offset between the low and the high level: above 0 where the wall leans "
    "into the closet on its way up.",
    "rise": "Level offset of the floor: above 0 where it rises.",
    "opening": "Clear size of the opening, jamb to jamb and floor to lintel.",
    "lintel": "From the underside of the lintel to the ceiling, inside.",
    "return": "From the side wall to the jamb, inside.",
    "jamb": "Thickness of the wall at the opening.",
    "casing": "The casing around the opening, on the room's side; 0 where there is none.",
    "baseboard": "A baseboard that stays; 0 where there is none or it comes off.",
    "door": "The closet's own door, flush with the room's side of the wall.",
    "levels": "Height above the floor at which these readings are taken.",
}


def hint(name: str) -> str:
    """How the reading of that name is taken."""
    return translate(CONTEXT, HINTS.get(name.replace(".", "_").split("_")[0], ""))


class SurveySketch(Sketch):
    """Two views of a room a little out of true; the reading ``shown`` stands out."""

    def __init__(self) -> None:
        super().__init__("survey sketch", 190)
        self.shown = ""

    def point_out(self, name: str) -> None:
        """Show where the reading of that name is taken."""
        self.shown = name
        self.update()

    def draw(self, painter: QtGui.QPainter) -> None:
        """The view from the front at the left, the plan at the right."""
        split = self.width() * 0.58
        high = self.height() - 20
        self._front = (8.0, 4.0, split - 20, high - 8)
        self._plan = (split + 12, high * 0.22, self.width() - split - 24, high * 0.62)
        self._room(painter)
        for caption, x in (
            (translate(CONTEXT, "from the front"), split / 2),
            (translate(CONTEXT, "from above"), (split + self.width()) / 2),
        ):
            self.words(painter, (x, self.height() - 8), caption, share=0.6)
        if self.shown.startswith(("opening", "return", "lintel")):
            self._opening(painter)
        if self.shown in SEGMENTS:
            self._point_out(painter, *SEGMENTS[self.shown])

    def _seen(self, p: Space) -> Point:
        x0, y0, w, h = self._front
        size = 1 - (1 - _BACK) * p[1]
        return x0 + w * (0.5 + size * (p[0] - 0.5)), y0 + h * (0.46 + size * (0.54 - p[2]))

    def _above(self, p: Space) -> Point:
        x0, y0, w, h = self._plan
        return x0 + w * p[0], y0 + h * (1 - p[1])

    def _room(self, painter: QtGui.QPainter) -> None:
        painter.setBrush(palette.wood(self))
        self.pen(painter, 0.1, 0.0)
        floor = ((0, 0, 0), (1, 0, 0), (1, 1, 0), (0, 1, 0))
        self.polygon(painter, *(self._seen(p) for p in floor))
        self.polygon(painter, *(self._above(p) for p in floor))
        painter.setBrush(QtGui.QBrush())
        self.pen(painter, 1.6, 0.75)
        for y in (0, 1):
            self.polygon(painter, *(
                self._seen((x, y, z)) for x, z in ((0, 0), (1, 0), (1, 1), (0, 1))))
        for x, z in ((0, 0), (1, 0), (1, 1), (0, 1)):
            self.line(painter, self._seen((x, 0, z)), self._seen((x, 1, z)))
        corners = [self._above(p) for p in ((0, 0, 0), (0, 1, 0), (1, 1, 0), (1, 0, 0))]
        for a, b in pairwise(corners):
            self.line(painter, a, b)
        self.pen(painter, 1.2, 0.6, dashed=True)
        self.line(painter, corners[0], corners[3])
        self.pen(painter, 1.0, 0.3)
        for name, (a, b, offset) in SEGMENTS.items():
            if name.startswith("width") and not offset:
                self.line(painter, self._seen(a), self._seen(b))

    def _opening(self, painter: QtGui.QPainter) -> None:
        self.pen(painter, 1.4, accent=True, dashed=True)
        corners = [(LEFT_JAMB, 0), (LEFT_JAMB, LINTEL), (RIGHT_JAMB, LINTEL), (RIGHT_JAMB, 0)]
        for (x, z), (x2, z2) in pairwise(corners):
            self.line(painter, self._seen((x, 0, z)), self._seen((x2, 0, z2)))

    def _point_out(self, painter: QtGui.QPainter, a: Space, b: Space, offset: bool) -> None:
        self.pen(painter, 2.6, accent=True)
        upright = a[:2] == b[:2]
        self.arrow(painter, self._seen(a), self._seen(b), both=not offset)
        if upright:
            painter.setBrush(palette.accent(self))
            x, y = self._above(a)
            painter.drawEllipse(QtCore.QRectF(x - 3, y - 3, 6, 6))
            painter.setBrush(QtGui.QBrush())
        else:
            self.arrow(painter, self._above(a), self._above(b), both=not offset)
        if offset:
            self.pen(painter, 1.4, accent=True, dashed=True)
            start, end = self._true_line(a)
            self.line(painter, self._seen(start), self._seen(end))

    def _true_line(self, at: Space) -> tuple[Space, Space]:
        """The plumb or level line that an offset is read from."""
        x, y, z = at
        if z > 0:
            return (x, y, LEVELS["low"]), (x, y, z)
        if self.shown == "rise_left":
            return (0, 0, 0), (0, 1, 0)
        return (0, y, 0), (1, y, 0)
