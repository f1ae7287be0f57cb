"""A see-through likeness of a piece in the 3D view, which moves while the piece stays."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from pivy import coin

from closetbench.core.carried import Load, Position
from closetbench.core.convex import Ring, block, corners
from closetbench.gui import palette, scene

FINENESS = 3.0
"""mm that the likeness may stray from round parts."""
CLEAR = 0.25


class Ghost:
    """``node``: to be put where the closet's frame is the frame."""

    def __init__(self, load: Load, objects: Iterable[Any], at: Any) -> None:
        """``objects``: of the piece's bodies; ``at``: the placement of the closet's frame."""
        b = load.piece.box
        self._stood = (b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2, (b.z0 + b.z1) / 2
        self._depth = b.y1 - b.y0
        self.node = coin.SoSeparator()
        self._move = coin.SoMatrixTransform()
        self._paint = coin.SoSwitch()
        self.node.addChild(self._move)
        self.node.addChild(self._paint)
        rings = [r for obj in objects for r in _triangles(obj, at)]
        around = (block(corners(b)),)
        solids = (tuple(rings),) if rings else around
        for colour in (palette.GHOST, palette.HIT):
            one = coin.SoSeparator()
            one.addChild(scene.edges(around, colour, 2.0))
            one.addChild(scene.faces(solids, colour, CLEAR, lit=True))
            self._paint.addChild(one)

    def put(self, position: Position) -> None:
        """Move it to a position of its path."""
        self._paint.whichChild.setValue(0)
        r, c, s = position.turned, position.pose.centre, self._stood
        shift = [c[i] - sum(r[i][k] * s[k] for k in range(3)) for i in range(3)]
        # the 3D view multiplies rows by matrices: ours, turned over
        self._move.matrix.setValue(coin.SbMatrix(
            r[0][0], r[1][0], r[2][0], 0.0, r[0][1], r[1][1], r[2][1], 0.0,
            r[0][2], r[1][2], r[2][2], 0.0, *shift, 1.0,
        ))

    def stuck(self, x: float, before: float) -> None:
        """Show that it does not go in: red, at ``x``, ``before`` the front."""
        self._paint.whichChild.setValue(1)
        away = coin.SbMatrix()
        away.setTranslate(coin.SbVec3f(
            x - self._stood[0], -before - self._depth / 2 - self._stood[1], 0.0))
        self._move.matrix.setValue(away)


def _triangles(obj: Any, at: Any) -> list[Ring]:
    points, triangles = obj.Shape.tessellate(FINENESS)
    back = at.inverse()
    own = [tuple(back.multVec(p)) for p in points]
    return [tuple(own[i] for i in t) for t in triangles]
