"""What our sketches share: lines, arrows and words that follow the theme's colours."""

from __future__ import annotations

import math

from closetbench.gui import palette
from closetbench.gui.qt import QtCore, QtGui, QtWidgets

Point = tuple[float, float]


class Sketch(QtWidgets.QWidget):
    """A drawing that fills its width; subclasses draw with the helpers here."""

    def __init__(self, name: str, height: int) -> None:
        super().__init__()
        self.setObjectName(name)
        self.setMinimumSize(220, height)
        self.setSizePolicy(QtWidgets.QSizePolicy.Expanding, QtWidgets.QSizePolicy.Fixed)
        self._height = height

    def sizeHint(self) -> QtCore.QSize:  # noqa: N802
        """As wide as the task view by default."""
        return QtCore.QSize(300, self._height)

    def paintEvent(self, event: QtGui.QPaintEvent) -> None:  # noqa: N802
        """Draw."""
        painter = QtGui.QPainter(self)
        painter.setRenderHint(QtGui.QPainter.Antialiasing)
        try:
            self.draw(painter)
        finally:
            painter.end()

    def draw(self, painter: QtGui.QPainter) -> None:
        """Draw onto the widget, in its pixels."""
        raise NotImplementedError

    def pen(
        self, painter: QtGui.QPainter, width: float = 1.0, share: float = 1.0,
        dashed: bool = False, accent: bool = False,
    ) -> None:
        """Take a pen in the text's colour, faded to ``share``, or in the accent."""
        colour = palette.accent(self) if accent else palette.ink(self, share)
        pen = QtGui.QPen(colour, width)
        if dashed:
            pen.setStyle(QtCore.Qt.DashLine)
        painter.setPen(pen)

    @staticmethod
    def line(painter: QtGui.QPainter, a: Point, b: Point) -> None:
        """A line."""
        painter.drawLine(QtCore.QPointF(*a), QtCore.QPointF(*b))

    @staticmethod
    def polygon(painter: QtGui.QPainter, *points: Point) -> None:
        """A closed line."""
        painter.drawPolygon(QtGui.QPolygonF([QtCore.QPointF(*p) for p in points]))

    @classmethod
    def arrow(cls, painter: QtGui.QPainter, a: Point, b: Point, both: bool = True) -> None:
        """A line with a head at its end, or at both ends."""
        cls.line(painter, a, b)
        for tip, other in ((b, a), (a, b)) if both else ((b, a),):
            turn = math.atan2(other[1] - tip[1], other[0] - tip[0])
            for side in (-0.45, 0.45):
                cls.line(painter, tip, (
                    tip[0] + 7 * math.cos(turn + side), tip[1] + 7 * math.sin(turn + side)
                ))

    def words(
        self, painter: QtGui.QPainter, at: Point, text: str, *, turned: bool = False,
        share: float = 0.8, room: float = 1e6,
        colour: QtGui.QColor | None = None,
    ) -> None:
        """Words centred at a point, upward if ``turned``; cut off with … beyond ``room``."""
        painter.save()
        painter.setPen(colour or palette.ink(self, share))
        metrics = QtGui.QFontMetricsF(painter.font())
        text = metrics.elidedText(text, QtCore.Qt.ElideRight, room)
        box = metrics.boundingRect(text)
        painter.translate(*at)
        if turned:
            painter.rotate(-90)
        painter.drawText(QtCore.QPointF(-box.width() / 2, metrics.capHeight() / 2), text)
        painter.restore()
