"""A panel from above: its grooves, rabbets and bands, and the names of its rims."""

from __future__ import annotations

from closetbench.core.panel import Face, Grain, Panel, Rim
from closetbench.gui import palette
from closetbench.gui.qt import QtCore, QtGui, translate
from closetbench.gui.sketch import Sketch

CONTEXT = "Closetbench_Panel"


class PanelSketch(Sketch):
    """Draws one panel, length to the right, to scale as far as it fits."""

    def __init__(self) -> None:
        super().__init__("panel sketch", 150)
        self.panel: Panel | None = None

    def show_panel(self, panel: Panel | None) -> None:
        """Draw this panel from now on."""
        self.panel = panel
        self.update()

    def draw(self, painter: QtGui.QPainter) -> None:
        """The outline, what is cut into it, and words at its four rims."""
        panel = self.panel
        if panel is None:
            return
        margin_x, margin_y = 46.0, 20.0
        scale = min(
            (self.width() - 2 * margin_x) / panel.length,
            (self.height() - 2 * margin_y) / panel.width,
        )
        wide, high = panel.length * scale, max(panel.width * scale, 24.0)
        x0, y0 = (self.width() - wide) / 2, (self.height() - high) / 2
        # the front rim (y = 0) is at the bottom
        down = high / panel.width

        def box(x: float, y: float, dx: float, dy: float) -> QtCore.QRectF:
            return QtCore.QRectF(x0 + x * scale, y0 + high - (y + dy) * down, dx * scale, dy * down)

        whole = box(0, 0, panel.length, panel.width)
        painter.setBrush(palette.wood(self))
        self.pen(painter, 1.4, 0.8)
        painter.drawRect(whole)
        self._grain(painter, panel, whole)
        for groove in panel.grooves:
            cut = panel.groove_box(groove)
            upper = groove.face is Face.UPPER
            shade = palette.ink(self, 0.45 if upper else 0.15)
            painter.setBrush(shade)
            self.pen(painter, 1.0, 0.9, dashed=not upper)
            painter.drawRect(box(cut.x0, cut.y0, cut.x1 - cut.x0, cut.y1 - cut.y0))
        painter.setBrush(QtGui.QBrush())
        for band in panel.bands:
            self.pen(painter, 3.5, accent=True)
            start, end = {
                Rim.FRONT: (whole.bottomLeft(), whole.bottomRight()),
                Rim.REAR: (whole.topLeft(), whole.topRight()),
                Rim.START: (whole.topLeft(), whole.bottomLeft()),
                Rim.END: (whole.topRight(), whole.bottomRight()),
            }[band.rim]
            painter.drawLine(start, end)
        middle = self.width() / 2, self.height() / 2
        for text, at, turned in (
            (translate(CONTEXT, "rear"), (middle[0], y0 - 10), False),
            (translate(CONTEXT, "front"), (middle[0], y0 + high + 10), False),
            (translate(CONTEXT, "start"), (x0 - 10, middle[1]), True),
            (translate(CONTEXT, "end"), (x0 + wide + 10, middle[1]), True),
        ):
            self.words(painter, at, text, turned=turned)

    def _grain(self, painter: QtGui.QPainter, panel: Panel, whole: QtCore.QRectF) -> None:
        if panel.grain is Grain.NONE:
            return
        self.pen(painter, 0.8, 0.22)
        along = panel.grain is Grain.LENGTH
        for step in range(1, 6):
            if along:
                y = whole.top() + whole.height() * step / 6
                self.line(painter, (whole.left() + 6, y), (whole.right() - 6, y))
            else:
                x = whole.left() + whole.width() * step / 6
                self.line(painter, (x, whole.top() + 6), (x, whole.bottom() - 6))
