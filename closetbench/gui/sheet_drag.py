"""Parts on the drawing of a cut layout, dragged with the mouse in the 3D view.

A part is pressed on, taken along and dropped on its sheet or on another. It goes to the cuts
and edges nearby, a kerf between, and every place is tried on the core while the mouse moves.
Nothing of it is in the document before it is dropped where the plan holds.
"""

from __future__ import annotations

import textwrap
from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import FreeCAD

from closetbench.core.errors import ClosetError
from closetbench.gui import palette, scene, units
from closetbench.gui.eye import Eye, Grip, Hand, Pixel, eyes_on
from closetbench.gui.layout_words import why_not
from closetbench.gui.qt import QtCore, translate
from closetbench.model.layout import corners_of, moves_of
from closetbench.stock.by_hand import snapped
from closetbench.stock.plan import Placement, Plan, SheetPlan

if TYPE_CHECKING:
    from closetbench.gui.layout_panel import LayoutPanel

CONTEXT = "Closetbench_Layout"
NODE = "Closetbench_SheetDrag"
SNAP = 10.0
"""px within which a part goes to an edge or a neighbour."""
_LIFT = 2.0
"""mm that the likeness lies over the drawing."""
_CLEAR = 0.45
_WORDS = 44
"""Letters in a line of what is said."""
_LETTER = 10.0
"""px that one of them takes at most."""


@dataclass
class _Held(Grip):
    """A part in the hand: where it lay, and by which point it is held."""

    part: Placement
    grip: tuple[float, float]
    trial: Callable[[str, float, float, bool, str], Plan] | None = None
    reason: str = ""
    given_up: bool = False
    at: tuple[str, float, float] | None = None


class SheetDrag(Hand):
    """The mouse over the drawing of a panel's layout, until the panel closes."""

    _panel: LayoutPanel
    _held: _Held | None

    def __init__(self, panel: LayoutPanel) -> None:
        super().__init__(panel)
        self._obj = panel.obj
        self._name = panel.doc.Name
        self._plan: Plan | None = None
        self._root: Any = None
        self._eyes: list[Eye] = []

    # -- what the panel asks for

    def follow(self, plan: Plan | None) -> None:
        """Offer the parts of this plan from now on."""
        self._plan = plan
        if self._root is None and plan is not None and self._panel.is_open:
            self._eyes = eyes_on(self._name, self)
            self._root = scene.unpickable(NODE)
            scene.put_in(self._obj.ViewObject, self._root)

    def close(self) -> None:
        """Take everything out of the scene and leave the mouse to FreeCAD."""
        self._let_go()
        for eye in self._eyes:
            eye.close()
        self._eyes = []
        if self._root is not None:
            doc = FreeCAD.listDocuments().get(self._name)
            if doc is not None and doc.getObject(self._obj.Name) is not None:
                scene.take_out(self._obj.ViewObject, NODE)
            self._root = None

    def where(self, key: str, share: Pixel = (0.5, 0.5)) -> QtCore.QPoint | None:
        """A part's point in the view, at these shares of its sides; None without one."""
        if self._plan is None or not self._eyes:
            return None
        for sheet, corner in zip(self._plan.sheets, corners_of(self._plan), strict=True):
            for p in sheet.placements:
                if p.part == key:
                    return self.point(
                        corner[0] + p.x + share[0] * p.dx, corner[1] + p.y + share[1] * p.dy)
        return None

    def point(self, x: float, y: float) -> QtCore.QPoint:
        """A point of the drawing in the view."""
        at = self._placement().multVec(FreeCAD.Vector(x, y, 0.0))
        eye = self._eyes[0]
        return eye.point(eye.sight().pixel(tuple(at)))

    @property
    def viewport(self) -> Any:
        """The widget that shows the view."""
        return self._eyes[0].port if self._eyes else None

    # -- the mouse

    def hover(self, eye: Eye, pixel: Pixel) -> bool:
        """Point out a part under the mouse; FreeCAD sees the mouse as well."""
        eye.point_out(self._under(eye, pixel) is not None)
        return False

    def take(self, eye: Eye, pixel: Pixel) -> bool:
        """Take the part at a pixel."""
        found = self._under(eye, pixel)
        if found is None:
            return False
        placed, grip = found
        self._held = held = _Held(eye, pixel, pixel, placed, grip)
        try:
            held.trial = moves_of(self._obj)
        except ClosetError as error:
            held.reason = why_not(error)
        QtCore.QCoreApplication.instance().installEventFilter(self)
        return True

    def eventFilter(self, watched: QtCore.QObject, event: QtCore.QEvent) -> bool:  # noqa: N802
        """Escape, wherever the keyboard is, puts the part back and closes nothing."""
        kinds = QtCore.QEvent
        if event.type() not in (kinds.KeyPress, kinds.ShortcutOverride, kinds.KeyRelease):
            return False
        if event.key() != QtCore.Qt.Key_Escape or self._held is None:
            return False
        # held on to without effect until the button comes up: FreeCAD never saw it go down
        self._held.given_up = True
        self._show(None)
        event.accept()
        return True

    def _let_go(self) -> None:
        self._timer.stop()
        if self._held is not None:
            QtCore.QCoreApplication.instance().removeEventFilter(self)
        self._held = None
        self._show(None)

    def follow_held(self, held: _Held) -> None:
        """Drag what is held to the mouse, and let go of it where it was dropped."""
        if held.moved and not held.given_up:
            self._carry(held)
        if not held.dropped:
            return
        self._let_go()
        if held.given_up or not self._panel.is_open:
            return
        if not held.moved:
            self._panel.show_part(held.part.part)
            self._panel.pick(held.part.part)
        elif held.at is None:
            self._panel.say_stays(held.reason)
        else:
            name, x, y = held.at
            self._panel.move(held.part.part, x, y, to=name)

    def _carry(self, held: _Held) -> None:
        """Where the part lies now, and whether it may lie there."""
        at = self._on_drawing(held.eye, held.mouse)
        if at is None:
            return
        found = self._sheet_at(*at)
        if found is None:
            held.at = None
            held.reason = translate(CONTEXT, "there is no sheet")
            self._show(held, at[0] - held.grip[0], at[1] - held.grip[1])
            return
        sheet, (x0, y0) = found
        step, part = units.step(), held.part
        x, y = (step * round((v - corner - grip) / step) for v, corner, grip in zip(
            at, (x0, y0), held.grip, strict=True))
        reach = SNAP * held.eye.ratio * held.eye.sight().millimetres(self._globally(*at))
        x, y = snapped(sheet, part.part, x, y, part.dx, part.dy, reach)
        if held.at != (sheet.name, x, y):
            held.at = sheet.name, x, y
            if held.trial is not None:
                held.reason = ""
                try:
                    held.trial(part.part, x, y, False, sheet.name)
                except ClosetError as error:
                    held.reason = why_not(error)
        self._show(held, x0 + x, y0 + y)

    # -- what is where

    def _placement(self) -> Any:
        return self._obj.getGlobalPlacement()

    def _globally(self, x: float, y: float) -> tuple[float, float, float]:
        return tuple(self._placement().multVec(FreeCAD.Vector(x, y, 0.0)))

    def _on_drawing(self, eye: Eye, pixel: Pixel) -> tuple[float, float] | None:
        """Where a pixel is on the plane of the drawing, in its frame."""
        frame = self._placement()
        square = frame.Rotation.multVec(FreeCAD.Vector(0.0, 0.0, 1.0))
        at = eye.sight().onto(pixel, tuple(frame.Base), tuple(square))
        if at is None:
            return None
        own = frame.inverse().multVec(FreeCAD.Vector(*at))
        return own.x, own.y

    def _sheet_at(self, x: float, y: float) -> tuple[SheetPlan, tuple[float, float]] | None:
        """The sheet at a point of the drawing, and its corner."""
        plan = self._plan
        for sheet, (x0, y0) in zip(plan.sheets, corners_of(plan), strict=True) if plan else ():
            raw = sheet.sheet
            if x0 <= x <= x0 + raw.length and y0 <= y <= y0 + raw.width:
                return sheet, (x0, y0)
        return None

    def _under(self, eye: Eye, pixel: Pixel) -> tuple[Placement, tuple[float, float]] | None:
        """The part that is seen at a pixel, and where on it that is."""
        panel = self._panel
        if not panel.is_open or panel.planning or not self._obj.ViewObject.Visibility:
            return None
        at = self._on_drawing(eye, pixel)
        found = self._sheet_at(*at) if at is not None else None
        if at is None or found is None:
            return None
        sheet, (x0, y0) = found
        x, y = at[0] - x0, at[1] - y0
        for p in sheet.placements:
            if p.x <= x <= p.x + p.dx and p.y <= y <= p.y + p.dy:
                seen = eye.sight().sees(self._globally(*at))
                return (p, (x - p.x, y - p.y)) if seen else None
        return None

    def _show(self, held: _Held | None, x: float = 0.0, y: float = 0.0) -> None:
        """Draw the part where it would lie, and what is said of that; None: nothing."""
        if self._root is None:
            return
        while self._root.getNumChildren() > 1:  # the first keeps the mouse off
            self._root.removeChild(1)
        if held is None:
            return
        part = held.part
        ring = tuple(
            (x + u * part.dx, y + v * part.dy, _LIFT) for u, v in ((0, 0), (1, 0), (1, 1), (0, 1)))
        good = held.at is not None and not held.reason
        colour = palette.FREE if good else palette.HIT
        text = held.reason
        if good:
            name, at_x, at_y = held.at
            text = translate(CONTEXT, "{}: {} and {}").format(
                name, units.shown(at_x), units.shown(at_y))
        words = textwrap.wrap(text, _WORDS)
        ground = palette.LABEL if good else palette.HIT
        self._root.addChild(scene.on_top([
            scene.faces([(ring,)], colour, _CLEAR), scene.edges([(ring,)], colour, 2.0),
            scene.label("\n".join(words), self._beside(held.eye, x, y + part.dy, words), ground),
        ]))

    def _beside(
        self, eye: Eye, x: float, y: float, words: list[str]
    ) -> tuple[float, float, float]:
        """Where words begin that are to stand at a point: so far to the left that they end in
        the view."""
        sight, at = eye.sight(), self._globally(x, y)
        wide = max(map(len, words), default=0) * _LETTER
        over = sight.pixel(at)[0] / eye.ratio + wide - eye.port.width()
        return x - max(0.0, over) * eye.ratio * sight.millimetres(at), y, _LIFT
