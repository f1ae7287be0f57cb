"""A component with the lengths that its form asks for; the one in hand stands out."""

from __future__ import annotations

from closetbench.gui import palette
from closetbench.gui.drawings import DRAWINGS, HIGH, MOST, WIDE, Dim, rooms
from closetbench.gui.fields import Field
from closetbench.gui.form import Form
from closetbench.gui.qt import QtCore, QtGui, translate
from closetbench.gui.sketch import Sketch

CONTEXT = "Closetbench_Component"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


def labels_in(forms: list[Form]) -> dict[str, str]:
    """The words beside the editors, by the editors' names."""
    return {f.name: form.label(f.name) for form in forms for f in form.fields}


class ComponentSketch(Sketch):
    """Draws a kind of component. ``labels``: the words of the form, by a field's name."""

    def __init__(self, kind: str) -> None:
        super().__init__("component sketch", int(HIGH) + 10)
        self.drawing = DRAWINGS[kind]
        self.labels: dict[str, str] = {}
        self.shown = ""

    def follow(self, fields: list[Field], labels: dict[str, str]) -> None:
        """Point out the length whose field has the focus."""
        self.labels = labels
        names = {dim.name for dim in self.drawing.dims}
        for field in fields:
            if field.name in names:
                field.entered.connect(self._entered)
        self.update()

    def _entered(self, field: Field) -> None:
        self.shown = field.name
        self.update()

    def draw(self, painter: QtGui.QPainter) -> None:
        """The outlines, then every length with its word."""
        scale = min(self.width() / WIDE, self.height() / HIGH)
        painter.translate((self.width() - WIDE * scale) / 2, (self.height() - HIGH * scale) / 2)
        painter.scale(scale, scale)
        font = QtGui.QFont(painter.font())
        font.setPixelSize(9)
        painter.setFont(font)
        drawing = self.drawing
        painter.setBrush(QtCore.Qt.NoBrush)
        self.pen(painter, 0.8, 0.45)
        for box in drawing.faint:
            painter.drawRect(QtCore.QRectF(*box))
        painter.setBrush(palette.wood(self))
        self.pen(painter, 0.9, 0.7)
        for box in drawing.boards:
            painter.drawRect(QtCore.QRectF(*box))
        painter.setBrush(QtCore.Qt.NoBrush)
        for x0, y0, x1, y1 in drawing.lines:
            self.line(painter, (x0, y0), (x1, y1))
        for x, y, r in drawing.rounds:
            painter.drawEllipse(QtCore.QPointF(x, y), r, r)
        self.pen(painter, 0.8, 0.5, dashed=True)
        for x0, y0, x1, y1 in drawing.hidden:
            self.line(painter, (x0, y0), (x1, y1))
        views = {
            "front": _tr("front"), "side": _tr("from the side"), "wall": _tr("wall"),
            "carcass": _tr("carcass"), "from above": _tr("from above"),
        }
        level = [dim for dim in drawing.dims if not dim.turned]
        said = [(at, views[word]) for word, at in drawing.words]
        metrics = QtGui.QFontMetricsF(painter.font())
        room = rooms([
            (at, metrics.boundingRect(text).width())
            for at, text in (*said, *((dim.at, self._label(dim)) for dim in level))
        ])
        for (at, text), most in zip(said, room, strict=False):
            self.words(painter, at, text, share=0.5, room=most)
        most_of = {dim.name: most for dim, most in zip(level, room[len(said):], strict=True)}
        # the one in hand last, over the others
        for dim in sorted(drawing.dims, key=lambda d: d.name == self.shown):
            self._dim(painter, dim, most_of.get(dim.name, MOST))

    def _label(self, dim: Dim) -> str:
        return self.labels.get(dim.name, dim.name)

    def _dim(self, painter: QtGui.QPainter, dim: Dim, room: float) -> None:
        mine = dim.name == self.shown
        self.pen(painter, 1.6 if mine else 0.8, 0.6, accent=mine)
        long = abs(dim.a[0] - dim.b[0]) + abs(dim.a[1] - dim.b[1]) > 12
        if long:
            self.arrow(painter, dim.a, dim.b)
        else:
            self._short(painter, dim)
        colour = palette.accent(self) if mine else None
        self.words(painter, dim.at, self._label(dim), turned=dim.turned, share=0.75,
                   colour=colour, room=room)

    def _short(self, painter: QtGui.QPainter, dim: Dim) -> None:
        """A length too short for heads between its ends: they come from outside."""
        (x0, y0), (x1, y1) = dim.a, dim.b
        if x0 == x1:
            self.arrow(painter, (x0, y0 - 10), dim.a, both=False)
            self.arrow(painter, (x1, y1 + 10), dim.b, both=False)
        else:
            self.arrow(painter, (x0 - 10, y0), dim.a, both=False)
            self.arrow(painter, (x1 + 10, y1), dim.b, both=False)
