"""Handles in the 3D view that are dragged to change the lengths in an open task panel.

They are nodes in the scene and a watch over the mouse of its views, ahead of FreeCAD's own, so
that they work in every style of navigation. Nothing of them is in the document.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import FreeCAD
from pivy import coin

from closetbench.core.drags import Drag
from closetbench.core.parts import Vector
from closetbench.gui import palette, scene, units
from closetbench.gui.eye import Eye, Grip, Hand, eyes_on
from closetbench.gui.handle_nodes import REACH, HandleNode
from closetbench.gui.qt import QtCore

if TYPE_CHECKING:
    from closetbench.gui.spec_panel import SpecPanel

NODE = "Closetbench_Handles"
NEAR = 9.0
"""px from a handle's middle line within which the mouse takes it."""
ABOVE = 26.0
"""px from a handle up to what is said of it."""
FLAT = 0.15
"""Share of its length that must be seen of a handle's axis for it to be shown."""
IDLE, HOT, REFUSED = 0, 1, 2


@dataclass
class _Held(Grip):
    """A handle in the hand, and what it was when it was taken."""

    drag: Drag
    start: float
    refused: bool = False
    last: float | None = None


class Handles(Hand):
    """The handles of a panel, from the first time that they are placed until it closes."""

    _panel: SpecPanel
    _held: _Held | None

    def __init__(self, panel: SpecPanel) -> None:
        super().__init__(panel)
        self._name = panel.doc.Name
        self._root: Any = None
        self._frame = ""
        self._shown: list[HandleNode] = []
        self._said = coin.SoSeparator()
        self._eyes: list[Eye] = []
        self._lead: Eye | None = None
        self._hot = ""

    # -- what the panel asks for

    def place(self, drags: Sequence[Drag]) -> None:
        """Stand handles where these are, in the place of those before."""
        if not self._panel.is_open or not (drags or self._root):
            return
        if self._root is None and not self._open():
            return
        self._root.removeAllChildren()
        self._said.removeAllChildren()
        self._shown = [HandleNode(d) for d in drags]
        style = coin.SoPickStyle()
        style.style = coin.SoPickStyle.UNPICKABLE
        self._root.addChild(style)
        self._root.addChild(scene.on_top([*(h.node for h in self._shown), self._said]))
        if self._lead is not None:
            self.fit(self._lead)

    def close(self) -> None:
        """Take everything out of the scene and leave the mouse to FreeCAD."""
        self._timer.stop()
        self._held = None
        for eye in self._eyes:
            eye.close()
        self._eyes, self._lead, self._shown = [], None, []
        if self._root is not None:
            self._root.removeAllChildren()
            doc = FreeCAD.listDocuments().get(self._name)
            obj = doc.getObject(self._frame) if doc is not None else None
            if obj is not None and obj.ViewObject is not None:
                scene.take_out(obj.ViewObject, NODE)
            self._root = None

    def _open(self) -> bool:
        obj = self._panel.handle_frame()
        self._eyes = eyes_on(self._name, self)
        if obj is None or not self._eyes:
            return False
        self._lead = self._eyes[0]
        self._frame = obj.Name
        self._root = scene.unpickable(NODE)
        scene.put_in(obj.ViewObject, self._root)
        return True

    # -- where they are on the screen

    def where(self, key: str) -> QtCore.QPoint | None:
        """The middle of a handle in the view that has the mouse, None where it is not seen."""
        handle = next((h for h in self._shown if h.drag.key == key and h.shown), None)
        if handle is None or self._lead is None:
            return None
        at, _ = self._globally(handle.drag)
        return self._lead.point(self._lead.sight().pixel(at))

    @property
    def viewport(self) -> Any:
        """The widget that shows the view that has the mouse."""
        return self._lead.port if self._lead is not None else None

    def _placement(self) -> Any:
        obj = self._panel.doc.getObject(self._frame)
        return obj.getGlobalPlacement() if obj is not None else FreeCAD.Placement()

    def _globally(self, drag: Drag) -> tuple[Vector, Vector]:
        frame = self._placement()
        at, way = FreeCAD.Vector(*drag.at), FreeCAD.Vector(*drag.way)
        return tuple(frame.multVec(at)), tuple(frame.Rotation.multVec(way))

    def fit(self, eye: Eye) -> None:
        """Give the handles their size on the screen, as one looks now."""
        if eye is not self._lead:
            return
        sight, back = eye.sight(), self._placement().Rotation.inverted()
        new = False
        for handle in self._shown:
            at, way = self._globally(handle.drag)
            flat, seen = sight.across(at, way)
            own = tuple(back.multVec(FreeCAD.Vector(*flat))) if seen > FLAT else None
            new = handle.fit(sight.millimetres(at) * eye.ratio, own) or new
        if new:
            self._say()

    def _at(self, eye: Eye, pixel: tuple[float, float]) -> HandleNode | None:
        """The handle at a pixel."""
        sight = eye.sight()
        best, least = None, NEAR * eye.ratio
        for handle in self._shown:
            if not handle.shown:
                continue
            at, way = self._globally(handle.drag)
            flat, _ = sight.across(at, way)
            reach = REACH * sight.millimetres(at) * eye.ratio
            ends = [sight.pixel(tuple(
                a + side * reach * w for a, w in zip(at, flat, strict=True)))
                for side in (-1, 1)]
            apart = _from_segment(pixel, *ends)
            if apart < least:
                best, least = handle, apart
        return best

    # -- the mouse

    def hover(self, eye: Eye, pixel: tuple[float, float]) -> bool:
        """The mouse passes, no button pressed; whether it is over a handle."""
        if self._lead is not eye:
            self._lead = eye
            self.fit(eye)
        handle = self._at(eye, pixel)
        self._warm(handle.drag.key if handle is not None else "")
        return handle is not None

    def _warm(self, key: str) -> None:
        if key != self._hot:
            self._hot = key
            for eye in self._eyes:
                eye.point_out(bool(key))
            self._say()

    def take(self, eye: Eye, pixel: tuple[float, float]) -> bool:
        """The left button is pressed; whether on a handle."""
        handle = self._at(eye, pixel) if self._panel.is_open else None
        if handle is None:
            return False
        start = eye.sight().along(pixel, *self._globally(handle.drag))
        if start is not None:
            self._held = _Held(eye, pixel, pixel, handle.drag, start)
            self._warm(handle.drag.key)
            self._panel.point_to(handle.drag.changes[0].path)
        return True

    def follow_held(self, held: _Held) -> None:
        """Drag what is held to the mouse, and let go of it where it was dropped."""
        way = self._globally(held.drag)
        along = held.eye.sight().along(held.mouse, *way) if held.moved else None
        if along is not None:
            values = held.drag.values(along - held.start, units.step())
            first = values[held.drag.changes[0].path]
            if first != held.last:
                held.last = first
                held.refused = not self._panel.drag(values)
        if self._held is not held:  # the panel was closed meanwhile
            return
        if held.dropped:
            self._held = None
        self._say()

    def _say(self) -> None:
        """Colour the handles, and write what the one under the mouse is and comes to."""
        held = self._held
        refused = held is not None and held.refused
        self._said.removeAllChildren()
        for handle in self._shown:
            hot = handle.drag.key == self._hot
            handle.paint((REFUSED if refused else HOT) if hot else IDLE)
            if not hot or self._lead is None or not handle.shown:
                continue
            sight = self._lead.sight()
            at, _ = self._globally(handle.drag)
            high = sight.above(at, ABOVE * self._lead.ratio * sight.millimetres(at))
            back = self._placement().inverse().multVec(FreeCAD.Vector(*high))
            title = self._panel.handle_title(handle.drag)
            text = f"{title} {units.typed(handle.drag.changes[0].now)}".strip()
            ground = palette.HIT if refused else palette.LABEL
            self._said.addChild(scene.label(text, tuple(back), ground))


def _from_segment(
    at: tuple[float, float], one: tuple[float, float], other: tuple[float, float]
) -> float:
    """How far a pixel is from a line between two."""
    dx, dy = other[0] - one[0], other[1] - one[1]
    long = dx * dx + dy * dy
    share = ((at[0] - one[0]) * dx + (at[1] - one[1]) * dy) / long if long else 0.0
    share = min(max(share, 0.0), 1.0)
    return math.dist(at, (one[0] + share * dx, one[1] + share * dy))
