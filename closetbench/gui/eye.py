"""The mouse of a 3D view, watched ahead of FreeCAD: every style of navigation leaves it alone."""

from __future__ import annotations

import contextlib
import math
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any

import FreeCADGui

from closetbench.gui.qt import QtCore
from closetbench.gui.stage import Sight

if TYPE_CHECKING:
    from closetbench.gui.task import TaskPanel

Pixel = tuple[float, float]


STIR = 3.0
"""px that the mouse has to go before it drags."""
WAIT = 20
"""ms to try again while the document is recomputed."""


@dataclass
class Grip:
    """What is in a hand: in which view, where it was taken, and where the mouse is."""

    eye: Eye
    taken: Pixel
    mouse: Pixel
    moved: bool = field(default=False, kw_only=True)
    dropped: bool = field(default=False, kw_only=True)


class Hand(QtCore.QObject):
    """What takes, moves and drops things in a view; a subclass says what it takes, and what
    follows. Pixels are counted from the left and from below."""

    def __init__(self, panel: TaskPanel) -> None:
        super().__init__()
        self._panel = panel
        self._held: Grip | None = None
        self._timer = QtCore.QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self._follow_mouse)

    @property
    def held(self) -> bool:
        """Whether something is in the hand."""
        return self._held is not None

    def fit(self, eye: Eye) -> None:
        """The view is about to be drawn."""

    def hover(self, eye: Eye, pixel: Pixel) -> bool:
        """The mouse passes, no button pressed; whether that is to be kept from FreeCAD."""
        raise NotImplementedError

    def take(self, eye: Eye, pixel: Pixel) -> bool:
        """The left button is pressed; whether on something."""
        raise NotImplementedError

    def move(self, pixel: Pixel) -> bool:
        """The mouse moves; whether it has something."""
        held = self._held
        if held is None:
            return False
        held.mouse = pixel
        held.moved = held.moved or math.dist(pixel, held.taken) > STIR * held.eye.ratio
        if held.moved and not self._timer.isActive():
            self._timer.start(0)
        return True

    def drop(self, pixel: Pixel) -> bool:
        """The button is let go; whether it held something."""
        if self._held is None:
            return False
        self.move(pixel)
        self._held.dropped = True
        self._timer.start(0)
        return True

    def follow_held(self, held: Any) -> None:
        """What is held, a Grip of the subclass's kind, has moved or was dropped."""
        raise NotImplementedError

    def _follow_mouse(self) -> None:
        if self._held is None:
            return
        if self._panel.doc.Recomputing:  # a long recompute lets timers in
            self._timer.start(WAIT)
            return
        self.follow_held(self._held)


def eyes_on(name: str, hand: Hand) -> list[Eye]:
    """The 3D views of the document of this name, watched for a hand."""
    views = FreeCADGui.getDocument(name).mdiViewsOfType("Gui::View3DInventor")
    return [Eye(hand, view) for view in views if hasattr(view, "graphicsView")]


class Eye(QtCore.QObject):
    """A 3D view and its mouse, seen before FreeCAD sees it."""

    def __init__(self, hand: Hand, view: Any) -> None:
        super().__init__()
        self._hand = hand
        self._view = view
        self.port = view.graphicsView().viewport()
        self._cursor: Any = None
        self.port.installEventFilter(self)

    def close(self) -> None:
        """Leave the view alone."""
        # the view may have been closed before
        with contextlib.suppress(RuntimeError):
            self.point_out(False)
            self.port.removeEventFilter(self)

    @property
    def ratio(self) -> float:
        """Pixels of the screen for each of Qt's."""
        return float(self.port.devicePixelRatioF())

    def sight(self) -> Sight:
        """How the camera stands."""
        ratio = self.ratio
        size = round(self.port.width() * ratio), round(self.port.height() * ratio)
        return Sight(self._view, size)

    def point(self, pixel: tuple[float, float]) -> QtCore.QPoint:
        """Qt's point for a pixel counted from the left and from below."""
        ratio = self.ratio
        return QtCore.QPoint(
            round(pixel[0] / ratio), round(self.port.height() - pixel[1] / ratio))

    def point_out(self, hot: bool) -> None:
        """Show by the pointer that there is something to take."""
        if hot and self._cursor is None:
            self._cursor = self.port.cursor()
            self.port.setCursor(QtCore.Qt.PointingHandCursor)
        elif not hot and self._cursor is not None:
            self.port.setCursor(self._cursor)
            self._cursor = None

    def _pixel(self, event: Any) -> tuple[float, float]:
        at = event.position() if hasattr(event, "position") else event.localPos()
        return at.x() * self.ratio, (self.port.height() - at.y()) * self.ratio

    def eventFilter(self, watched: QtCore.QObject, event: QtCore.QEvent) -> bool:  # noqa: N802
        """Keep from FreeCAD what the mouse does with what is taken."""
        kinds, kind = QtCore.QEvent, event.type()
        if kind == kinds.Paint:
            self._hand.fit(self)
            return False
        if kind == kinds.MouseMove:
            pixel = self._pixel(event)
            if event.buttons() == QtCore.Qt.NoButton:
                # let go where nobody saw it
                return self._hand.drop(pixel) or self._hand.hover(self, pixel)
            return self._hand.move(pixel)
        if kind == kinds.Wheel:
            return self._hand.held
        if kind not in (kinds.MouseButtonPress, kinds.MouseButtonRelease,
                        kinds.MouseButtonDblClick):
            return False
        if event.button() != QtCore.Qt.LeftButton:
            return self._hand.held
        if kind == kinds.MouseButtonRelease:
            return self._hand.drop(self._pixel(event))
        plain = event.modifiers() == QtCore.Qt.NoModifier
        return plain and self._hand.take(self, self._pixel(event))
