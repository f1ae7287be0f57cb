"""What a handle in the 3D view looks like."""

from __future__ import annotations

import math
from functools import cache
from typing import Any

from pivy import coin

from closetbench.core.drags import Drag
from closetbench.core.parts import Vector
from closetbench.gui import palette

REACH = 19.0
"""px from a handle's middle to its tips."""
_HALO = 1.8


class HandleNode:
    """One handle in the scene."""

    def __init__(self, drag: Drag) -> None:
        self.drag = drag
        self.node = coin.SoSwitch()
        self.node.whichChild.setValue(coin.SO_SWITCH_NONE)
        self._way: Vector = (0.0, 1.0, 0.0)
        self._stand = coin.SoTransform()
        self._stand.translation.setValue(*drag.at)
        self._paint = coin.SoSwitch()
        for colour in (palette.HANDLE, palette.HANDLE_HOT, palette.HIT):
            both = coin.SoGroup()
            both.addChild(_arrows(palette.HALO, _HALO))
            both.addChild(_arrows(colour, 0.0))
            self._paint.addChild(both)
        whole = coin.SoSeparator()
        whole.addChild(self._stand)
        whole.addChild(self._paint)
        self.node.addChild(whole)

    @property
    def shown(self) -> bool:
        """Whether it can be seen as the view stands."""
        return bool(self.node.whichChild.getValue() == 0)

    def fit(self, size: float, way: Vector | None) -> bool:
        """Draw it so many millimetres to the pixel, and that way; None: not at all. Whether
        that is new: every change has the view drawn once more."""
        if way is None:
            if self.shown:
                self.node.whichChild.setValue(coin.SO_SWITCH_NONE)
                return True
            return False
        if (self.shown and math.dist(way, self._way) < 1e-3
                and abs(self._stand.scaleFactor.getValue()[0] - size) < 1e-3 * size):
            return False
        self._way = way
        self._stand.scaleFactor.setValue(size, size, size)
        self._stand.rotation.setValue(
            coin.SbRotation(coin.SbVec3f(0, 1, 0), coin.SbVec3f(*way)))
        self.node.whichChild.setValue(0)
        return True

    def paint(self, state: int) -> None:
        """Colour it as it is: idle, under the mouse, or refused."""
        if self._paint.whichChild.getValue() != state:
            self._paint.whichChild.setValue(state)


@cache
def _arrows(colour: palette.Colour, swell: float) -> Any:
    """Two arrows away from each other along y, in pixels; ``swell``: thicker by so much.

    All handles share them: making nodes takes longer than anything else about a handle.
    """
    root = coin.SoSeparator()
    light, paint = coin.SoLightModel(), coin.SoBaseColor()
    light.model = coin.SoLightModel.BASE_COLOR
    paint.rgb = colour
    shaft = coin.SoCylinder()
    shaft.radius, shaft.height = 2.0 + swell, 14.0
    for node in (light, paint, shaft):
        root.addChild(node)
    for turn in (0.0, math.pi):
        one, turned, out, tip = (
            coin.SoSeparator(), coin.SoRotationXYZ(), coin.SoTranslation(), coin.SoCone())
        turned.axis, turned.angle = coin.SoRotationXYZ.Z, turn
        tip.bottomRadius, tip.height = 6.5 + 1.4 * swell, 13.0 + 2.6 * swell
        out.translation.setValue(0.0, REACH - 6.5 + 0.5 * swell, 0.0)
        for node in (turned, out, tip):
            one.addChild(node)
        root.addChild(one)
    return root
