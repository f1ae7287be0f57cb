"""Boxes along the axes, what they hold together, and the area of a ring of points."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise


@dataclass(frozen=True)
class Box:
    """An axis-parallel box, minimum corner and maximum corner, in mm."""

    x0: float
    y0: float
    z0: float
    x1: float
    y1: float
    z1: float

    @property
    def volume(self) -> float:
        """Volume in mm³."""
        return (self.x1 - self.x0) * (self.y1 - self.y0) * (self.z1 - self.z0)

    def overlaps(self, other: Box, tolerance: float = 1e-6) -> bool:
        """Whether the two share volume (touching is not sharing)."""
        return (
            min(self.x1, other.x1) - max(self.x0, other.x0) > tolerance
            and min(self.y1, other.y1) - max(self.y0, other.y0) > tolerance
            and min(self.z1, other.z1) - max(self.z0, other.z0) > tolerance
        )


def ring_area(ring: Sequence[tuple[float, float]]) -> float:
    """Area within a counter-clockwise ring of points, mm²."""
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in pairwise((*ring, ring[0]))) / 2


def union_volume(boxes: Sequence[Box]) -> float:
    """Volume of the union of boxes, by the cells between all their faces."""
    xs = sorted({v for b in boxes for v in (b.x0, b.x1)})
    ys = sorted({v for b in boxes for v in (b.y0, b.y1)})
    total = 0.0
    for x0, x1 in pairwise(xs):
        column = [b for b in boxes if b.x0 <= x0 and b.x1 >= x1]
        for y0, y1 in pairwise(ys) if column else ():
            spans = sorted((b.z0, b.z1) for b in column if b.y0 <= y0 and b.y1 >= y1)
            reach = -math.inf
            for z0, z1 in spans:
                total += max(0.0, z1 - max(z0, reach)) * (x1 - x0) * (y1 - y0)
                reach = max(reach, z1)
    return total
