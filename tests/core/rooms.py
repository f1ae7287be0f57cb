"""Crooked rooms known from their corners: the readings a tape would give in them, and the
true place of every wall, both worked out without the core's surfaces.

They may be twisted and bent: each side wall stands on two plumb lines, one at the front and
one in the rear corner, and runs straight between them; each line bends at the middle level.
The rear wall leans from the rear corners. Floor and ceiling are the bilinear surfaces over
the four corners.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from hypothesis import strategies as st

from closetbench.core.survey import Survey

Point = tuple[float, float]


@dataclass(frozen=True)
class TrueRoom:
    """``front``: width at the low level; ``rear_left`` and ``rear_right``: the rear corners
    there. The walls' offsets into the closet at the high level, ``left`` and ``right`` at
    the front and at the back, ``back`` at the left and at the right; ``bulge``: the right
    wall's offset into the closet in the middle, at the front and at the back. ``floor`` and
    ``ceiling``: levels at the front left, front right, rear left and rear right corner."""

    front: float = 1900.0
    rear_left: Point = (0.0, 600.0)
    rear_right: Point = (1900.0, 600.0)
    left: Point = (0.0, 0.0)
    right: Point = (0.0, 0.0)
    bulge: Point = (0.0, 0.0)
    back: Point = (0.0, 0.0)
    floor: tuple[float, float, float, float] = (0.0, 0.0, 0.0, 0.0)
    ceiling: tuple[float, float, float, float] = (2400.0, 2400.0, 2400.0, 2400.0)
    levels: tuple[float, float, float] = (100.0, 1200.0, 2200.0)

    def left_line(self, rear: bool, z: float) -> float:
        """x of the left wall's plumb line at the front or in the rear corner."""
        low, _, high = self.levels
        start = self.rear_left[0] if rear else 0.0
        return start + self.left[rear] * (z - low) / (high - low)

    def right_line(self, rear: bool, z: float) -> float:
        """x of the right wall's, which bends at the middle level."""
        low, mid, high = self.levels
        start = self.rear_right[0] if rear else self.front
        if z < mid:
            return start - self.bulge[rear] * (z - low) / (mid - low)
        rest = (z - mid) / (high - mid)
        return start - self.bulge[rear] * (1 - rest) - self.right[rear] * rest

    def left_x(self, y: float, z: float) -> float:
        """x of the left wall."""
        share = y / self.rear_left[1]
        return (1 - share) * self.left_line(False, z) + share * self.left_line(True, z)

    def right_x(self, y: float, z: float) -> float:
        """x of the right wall."""
        share = y / self.rear_right[1]
        return (1 - share) * self.right_line(False, z) + share * self.right_line(True, z)

    def back_y(self, x: float, z: float) -> float:
        """y of the rear wall."""
        (x0, y0), (x1, y1) = self.rear_left, self.rear_right
        low, _, high = self.levels
        share, up = (x - x0) / (x1 - x0), (z - low) / (high - low)
        return (1 - share) * (y0 - self.back[0] * up) + share * (y1 - self.back[1] * up)

    def corner(self, right: bool, z: float) -> Point:
        """x and y of a rear corner at a height."""
        y = (self.rear_right if right else self.rear_left)[1]
        for _ in range(30):
            x = self.right_x(y, z) if right else self.left_x(y, z)
            y = self.back_y(x, z)
        return x, y

    def plan(self) -> tuple[Point, Point, Point, Point]:
        """The corners at the low level."""
        return (0.0, 0.0), (self.front, 0.0), self.rear_left, self.rear_right

    def _over(self, levels: Sequence[float], x: float, y: float) -> float:
        rows = [[1.0, px, py, px * py] for px, py in self.plan()]
        a, b, c, d = np.linalg.solve(np.array(rows), np.array(levels))
        return float(a + b * x + c * y + d * x * y)

    def floor_z(self, x: float, y: float) -> float:
        """z of the floor."""
        return self._over(self.floor, x, y)

    def ceiling_z(self, x: float, y: float) -> float:
        """z of the ceiling."""
        return self._over(self.ceiling, x, y)

    def survey(self) -> Survey:
        """What tape, plumb bob and level read in this room, without a reading error."""
        fl, fr, rl, rr = self.plan()
        front = [self.right_line(False, z) - self.left_line(False, z) for z in self.levels]
        back = [math.dist(self.corner(False, z), self.corner(True, z)) for z in self.levels]
        heights = [c - f for c, f in zip(self.ceiling, self.floor, strict=True)]
        return Survey(
            *front, *back, *heights,
            depth_left=math.dist(fl, rl),
            depth_right=math.dist(fr, rr),
            diagonal_to_right=math.dist(fl, rr),
            diagonal_to_left=math.dist(fr, rl),
            lean_left_front=self.left[0],
            lean_left_back=self.left[1],
            lean_right_front=self.right[0],
            lean_right_back=self.right[1],
            lean_back_left=self.back[0],
            lean_back_right=self.back[1],
            rise_front=self.floor[1],
            rise_back=self.floor[3] - self.floor[2],
            rise_left=self.floor[2],
            levels=self.levels,
        )


@st.composite
def crooked_rooms(draw: st.DrawFn) -> TrueRoom:
    """Rooms with flat walls, out of plumb, level and square by up to 25 mm in every direction."""
    out = st.floats(-25.0, 25.0, allow_nan=False).map(lambda v: round(v, 3))
    width, depth = float(draw(st.integers(900, 3000))), float(draw(st.integers(350, 1200)))
    height = draw(st.integers(2350, 2800))  # whatever its slopes, above the highest level
    left, right, back = draw(out), draw(out), draw(out)
    rear_left = (draw(out), depth + draw(out))
    rear_right = (width + draw(out), depth + draw(out))
    plan = ((0.0, 0.0), (width, 0.0), rear_left, rear_right)

    def level(start: float) -> tuple[float, float, float, float]:
        along, into = draw(out), draw(out)
        zs = [start + along * x / width + into * y / depth for x, y in plan]
        return zs[0], zs[1], zs[2], zs[3]

    return TrueRoom(
        width, rear_left, rear_right, (left, left), (right, right),
        (right * 11 / 21, right * 11 / 21), (back, back), level(0.0), level(float(height)),
    )
