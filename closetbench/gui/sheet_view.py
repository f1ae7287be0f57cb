"""A plan's sheets, one at a time: what lies where, to be clicked on and moved."""

from __future__ import annotations

from collections.abc import Mapping

from closetbench.core.materials import Material
from closetbench.gui import palette, units
from closetbench.gui.qt import QtCore, QtGui, QtWidgets, Signal, translate
from closetbench.gui.sketch import Sketch
from closetbench.stock.by_hand import snapped
from closetbench.stock.plan import Placement, Plan, SheetPlan

CONTEXT = "Closetbench_Layout"
_DRAG = 5
"""px that the mouse moves before it drags a part, not just clicks on it."""
_SNAP = 8
"""px within which a part that is let go goes to an edge or a neighbour."""


class SheetView(QtWidgets.QWidget):
    """One sheet to scale, and buttons to the one before and the one after.

    ``picked``: a part was clicked on, its key ("" for none). ``dropped``: a part was let go
    elsewhere: its key, and its new low corner in mm. ``turned``: another sheet is shown.
    """

    picked = Signal(str)
    dropped = Signal(str, float, float)
    turned = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._plan: Plan | None = None
        self._materials: Mapping[str, Material] = {}
        self.index = 0
        self.drawing = _Sheet()
        self.drawing.picked.connect(self.picked)
        self.drawing.dropped.connect(self.dropped)
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

    @property
    def sheet(self) -> SheetPlan | None:
        """The sheet that is shown."""
        sheets = self._plan.sheets if self._plan is not None else ()
        return sheets[self.index] if sheets else None

    def show_plan(
        self, plan: Plan | None, materials: Mapping[str, Material], names: Mapping[str, str],
    ) -> None:
        """Show a plan. ``materials``: by key; ``names``: to write on the parts."""
        self._plan, self._materials = plan, materials
        self.drawing.names = names
        self.index = min(self.index, max(0, len(plan.sheets) - 1)) if plan else 0
        self.turn(0)

    def show_part(self, key: str) -> bool:
        """Turn to the sheet that a part lies on, and mark it; whether it lies on one."""
        for index, sheet in enumerate(self._plan.sheets if self._plan is not None else ()):
            if any(p.part == key for p in sheet.placements):
                self.drawing.chosen = key
                self.index = index
                self.turn(0)
                return True
        self.drawing.chosen = ""
        self.drawing.update()
        return False

    def turn(self, step: int) -> None:
        """Go to another sheet."""
        sheets = self._plan.sheets if self._plan is not None else ()
        self.setVisible(bool(sheets))
        if not sheets:
            return
        self.index = (self.index + step) % len(sheets)
        sheet = sheets[self.index]
        material = self._materials.get(sheet.sheet.material)
        self.drawing.show_sheet(sheet, material)
        text = translate(CONTEXT, "{} of {}: {}\n{} x {}, yield {:.0%}").format(
            sheet.name, len(sheets),
            translate(CONTEXT, material.title) if material else sheet.sheet.material,
            units.shown(sheet.sheet.length), units.shown(sheet.sheet.width),
            sheet.yield_fraction,
        )
        if sheet.sheet.offcut:
            text += translate(CONTEXT, ", offcut at hand: {}").format(sheet.sheet.key)
        whole = sheet.sheet.cut_from
        if whole is not None:
            text += translate(CONTEXT, ", sound part of {} x {}, its corner at {} and {}").format(
                *map(units.shown, (whole.length, whole.width, whole.x, whole.y)))
        self.caption.setText(text)
        for button in (self.back, self.forward):
            button.setEnabled(len(sheets) > 1)
        self.turned.emit()

    def _button(self, name: str, arrow: QtCore.Qt.ArrowType, step: int) -> QtWidgets.QToolButton:
        button = QtWidgets.QToolButton()
        button.setObjectName(name)
        button.setArrowType(arrow)
        button.setAutoRaise(True)
        button.clicked.connect(lambda: self.turn(step))
        return button


class _Sheet(Sketch):
    picked = Signal(str)
    dropped = Signal(str, float, float)

    def __init__(self) -> None:
        super().__init__("sheet", 180)
        self.highest = 320
        self.sheet: SheetPlan | None = None
        self.material: Material | None = None
        self.names: Mapping[str, str] = {}
        self.chosen = ""
        self._held: Placement | None = None
        self._from = QtCore.QPoint()
        self._ghost: tuple[float, float] | None = None
        self.setMouseTracking(True)

    def show_sheet(self, sheet: SheetPlan, material: Material | None) -> None:
        """Draw this sheet from now on."""
        self.sheet, self.material = sheet, material
        self._held = self._ghost = None
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

    # -- the mouse

    def _frame(self) -> tuple[float, float, float]:
        """Where the sheet's corner is in the widget, and px in a millimetre."""
        raw = self.sheet.sheet if self.sheet is not None else None
        if raw is None:
            return 0.0, 0.0, 1.0
        scale = min((self.width() - 6) / raw.length, (self.height() - 6) / raw.width)
        return (
            (self.width() - raw.length * scale) / 2, (self.height() + raw.width * scale) / 2, scale)

    def middle_of(self, key: str) -> QtCore.QPoint:
        """Where the middle of a part is in the widget."""
        x0, y1, scale = self._frame()
        p = next(p for p in self.sheet.placements if p.part == key)
        return QtCore.QPoint(
            round(x0 + (p.x + p.dx / 2) * scale), round(y1 - (p.y + p.dy / 2) * scale))

    def _under(self, at: QtCore.QPoint) -> Placement | None:
        x0, y1, scale = self._frame()
        x, y = (at.x() - x0) / scale, (y1 - at.y()) / scale
        placed = self.sheet.placements if self.sheet is not None else ()
        return next(
            (p for p in placed if p.x <= x <= p.x + p.dx and p.y <= y <= p.y + p.dy), None)

    def mousePressEvent(self, event: QtGui.QMouseEvent) -> None:  # noqa: N802
        """Choose the part under the mouse, and hold it."""
        if event.button() == QtCore.Qt.LeftButton:
            self._held, self._from = self._under(event.pos()), event.pos()
            self.chosen = self._held.part if self._held is not None else ""
            self.update()
            self.picked.emit(self.chosen)

    def mouseMoveEvent(self, event: QtGui.QMouseEvent) -> None:  # noqa: N802
        """Take the held part along; tell the name of what is under the mouse."""
        held = self._held
        if held is None or not event.buttons() & QtCore.Qt.LeftButton:
            under = self._under(event.pos())
            self.setToolTip("" if under is None else (
                f"{under.part}\n{units.shown(under.dx)} x {units.shown(under.dy)}"))
            return
        way = event.pos() - self._from
        if self._ghost is None and way.manhattanLength() < _DRAG:
            return
        _, _, scale = self._frame()
        self._ghost = snapped(
            self.sheet, held.part, held.x + way.x() / scale, held.y - way.y() / scale,
            held.dx, held.dy, _SNAP / scale,
        )
        self.update()

    def mouseReleaseEvent(self, event: QtGui.QMouseEvent) -> None:  # noqa: N802
        """Let the part go: whether it may lie there is for others to say."""
        held, ghost = self._held, self._ghost
        self._held = self._ghost = None
        self.update()
        if held is not None and ghost is not None:
            self.dropped.emit(held.part, *ghost)

    # -- the picture

    def draw(self, painter: QtGui.QPainter) -> None:
        """The sheet, its trim, the parts with their names and the direction of the grain."""
        plan = self.sheet
        if plan is None:
            return
        raw = plan.sheet
        x0, y1, scale = self._frame()

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
        fill = palette.board_ground(self, self.material)
        for placed in plan.placements:
            where = box(placed.x, placed.y, placed.dx, placed.dy)
            painter.setBrush(fill)
            self.pen(painter, 1.0, 0.8)
            painter.drawRect(where)
            if self.material is not None and self.material.grained:
                self._grain(painter, where, fill)
        for placed in plan.placements:
            where = box(placed.x, placed.y, placed.dx, placed.dy)
            if placed.part == self.chosen:
                painter.setBrush(QtCore.Qt.NoBrush)
                self.pen(painter, 3.0, accent=True)
                painter.drawRect(where.adjusted(1, 1, -1, -1))
            self._name(painter, where, self.names.get(placed.part, placed.part), fill)
        if self._held is not None and self._ghost is not None:
            painter.setBrush(QtCore.Qt.NoBrush)
            self.pen(painter, 2.0, dashed=True, accent=True)
            painter.drawRect(box(*self._ghost, self._held.dx, self._held.dy))

    @staticmethod
    def _grain(painter: QtGui.QPainter, where: QtCore.QRectF, fill: QtGui.QColor) -> None:
        """Fine strokes along the sheet's length, where the grain of every sheet runs."""
        ink = palette.ink_over(fill)
        ink.setAlphaF(0.22)
        painter.setPen(QtGui.QPen(ink, 0.8))
        count = max(1, int(where.height() // 7))
        for line in range(count):
            y = where.top() + (line + 0.5) * where.height() / count
            # not all begin at the same place: it shall look like wood, not like a table
            start, end = (0.03, 0.82) if line % 2 else (0.14, 0.97)
            painter.drawLine(
                QtCore.QPointF(where.left() + start * where.width(), y),
                QtCore.QPointF(where.left() + end * where.width(), y))

    def _name(
        self, painter: QtGui.QPainter, where: QtCore.QRectF, text: str, fill: QtGui.QColor
    ) -> None:
        turned = where.height() > where.width()
        room, across = (
            (where.height(), where.width()) if turned else (where.width(), where.height()))
        if across < QtGui.QFontMetricsF(painter.font()).capHeight() + 3 or room < 14:
            return
        centre = where.center()
        self.words(painter, (centre.x(), centre.y()), text, turned=turned,
                   colour=palette.ink_over(fill), room=room - 4)
