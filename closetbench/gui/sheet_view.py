"""A plan's sheets, one at a time: what lies where."""

from __future__ import annotations

from closetbench.gui import palette, units
from closetbench.gui.qt import QtCore, QtGui, QtWidgets, translate
from closetbench.gui.sketch import Sketch
from closetbench.stock.plan import Plan, SheetPlan

CONTEXT = "Closetbench_Layout"


class SheetView(QtWidgets.QWidget):
    """One sheet to scale, and buttons to the one before and the one after."""

    def __init__(self) -> None:
        super().__init__()
        self._plan: Plan | None = None
        self._titles: dict[str, str] = {}
        self.index = 0
        self.drawing = _Sheet()
        self.caption = QtWidgets.QLabel()
        self.caption.setObjectName("sheet caption")
        self.caption.setAlignment(QtCore.Qt.AlignCenter)
        self.caption.setWordWrap(True)
        self.back = self._button("sheet before", QtCore.Qt.LeftArrow, -1)
        self.forward = self._button("sheet after", QtCore.Qt.RightArrow, 1)
        box = QtWidgets.QGridLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.addWidget(self.back, 0, 0)
        box.addWidget(self.caption, 0, 1)
        box.addWidget(self.forward, 0, 2)
        box.addWidget(self.drawing, 1, 0, 1, 3)
        box.setColumnStretch(1, 1)

    def show_plan(self, plan: Plan | None, titles: dict[str, str], names: dict[str, str]) -> None:
        """Show a plan. ``titles``: of the materials; ``names``: to write on the parts."""
        self._plan, self._titles = plan, titles
        self.drawing.names = names
        self.index = min(self.index, max(0, len(plan.sheets) - 1)) if plan else 0
        self.turn(0)

    def turn(self, step: int) -> None:
        """Go to another sheet."""
        sheets = self._plan.sheets if self._plan is not None else ()
        self.setVisible(bool(sheets))
        if not sheets:
            return
        self.index = (self.index + step) % len(sheets)
        sheet = sheets[self.index]
        self.drawing.show_sheet(sheet)
        self.caption.setText(translate(CONTEXT, "{} of {}: {}\n{} x {}, yield {:.0%}").format(
            sheet.name, len(sheets),
            self._titles.get(sheet.sheet.material, sheet.sheet.material),
            units.shown(sheet.sheet.length), units.shown(sheet.sheet.width),
            sheet.yield_fraction,
        ))
        for button in (self.back, self.forward):
            button.setEnabled(len(sheets) > 1)

    def _button(self, name: str, arrow: QtCore.Qt.ArrowType, step: int) -> QtWidgets.QToolButton:
        button = QtWidgets.QToolButton()
        button.setObjectName(name)
        button.setArrowType(arrow)
        button.setAutoRaise(True)
        button.clicked.connect(lambda: self.turn(step))
        return button


class _Sheet(Sketch):
    def __init__(self) -> None:
        super().__init__("sheet", 180)
        self.highest = 320
        self.sheet: SheetPlan | None = None
        self.names: dict[str, str] = {}

    def show_sheet(self, sheet: SheetPlan) -> None:
        """Draw this sheet from now on."""
        self.sheet = sheet
        self._fit()
        self.update()

    def resizeEvent(self, event: QtGui.QResizeEvent) -> None:  # noqa: N802
        """Keep as high as the sheet is at that width."""
        self._fit()

    def _fit(self) -> None:
        if self.sheet is not None:
            raw = self.sheet.sheet
            high = min(int((self.width() - 6) * raw.width / raw.length) + 7, self.highest)
            self.setFixedHeight(max(high, 60))

    def draw(self, painter: QtGui.QPainter) -> None:
        """The sheet, its trim, the parts with their names and the direction of the grain."""
        plan = self.sheet
        if plan is None:
            return
        raw = plan.sheet
        scale = min((self.width() - 6) / raw.length, (self.height() - 6) / raw.width)
        x0 = (self.width() - raw.length * scale) / 2
        y1 = (self.height() + raw.width * scale) / 2

        def box(x: float, y: float, dx: float, dy: float) -> QtCore.QRectF:
            return QtCore.QRectF(x0 + x * scale, y1 - (y + dy) * scale, dx * scale, dy * scale)

        hatch = QtGui.QBrush(palette.ink(self, 0.25), QtCore.Qt.BDiagPattern)
        self.pen(painter, 1.2, 0.8)
        painter.setBrush(hatch)
        painter.drawRect(box(0, 0, raw.length, raw.width))
        font = painter.font()
        font.setPointSizeF(max(6.5, font.pointSizeF() * 0.8))
        painter.setFont(font)
        for rest in plan.rests:
            self.pen(painter, 0.8, 0.5, dashed=True)
            painter.drawRect(box(rest.x, rest.y, rest.dx, rest.dy))
        for placed in plan.placements:
            where = box(placed.x, placed.y, placed.dx, placed.dy)
            painter.setBrush(palette.wood(self))
            self.pen(painter, 1.0, 0.8)
            painter.drawRect(where)
            self._name(painter, where, self.names.get(placed.part, placed.part))

    def _name(self, painter: QtGui.QPainter, where: QtCore.QRectF, text: str) -> None:
        turned = where.height() > where.width()
        room, across = (
            (where.height(), where.width()) if turned else (where.width(), where.height()))
        if across < QtGui.QFontMetricsF(painter.font()).capHeight() + 3 or room < 14:
            return
        centre = where.center()
        self.words(
            painter, (centre.x(), centre.y()), text, turned=turned, on_wood=True, room=room - 4)
