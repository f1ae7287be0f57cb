"""What moves in a closet, and the space that must stay free though nothing stands there."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

from closetbench.core.panel import Box


@dataclass(frozen=True)
class Pull:
    """A drawer or pull-out: ``boxes`` of what comes forward by ``travel``, and the names of
    the bodies of its component that come with it."""

    name: str
    bodies: frozenset[str]
    boxes: tuple[Box, ...]
    travel: float

    def swept(self) -> tuple[Box, ...]:
        """The space that it passes through, shut to pulled out."""
        return tuple(
            Box(b.x0, b.y0 - self.travel, b.z0, b.x1, b.y1, b.z1) for b in self.boxes
        )


class Turn(Enum):
    """How something turns about its hinges."""

    LEFT = "left"
    """Hinged at its left edge, opens to the front."""
    RIGHT = "right"
    """Hinged at its right edge, opens to the front."""
    UP = "up"
    """Hinged at its rear edge, opens upwards."""


@dataclass(frozen=True)
class Swing:
    """A door or a lid: its ``box`` when shut, turning about the edge that its hinges hold,
    at the face that looks outwards, to ``opens`` degrees at most. ``needed``: the angle
    without which it is of no use."""

    name: str
    bodies: frozenset[str]
    box: Box
    turn: Turn
    opens: float
    needed: float = 90.0

    def reach(self) -> Box:
        """A box around all positions up to ``opens``."""
        b = self.box
        r = math.hypot(*self._sides())
        if self.turn is Turn.UP:
            return Box(b.x0, b.y1 - r, b.z1 - r, b.x1, b.y1 + r, b.z1 + r)
        x = b.x0 if self.turn is Turn.LEFT else b.x1
        return Box(x - r, b.y0 - r, b.z0, x + r, b.y1, b.z1)

    def _sides(self) -> tuple[float, float]:
        b = self.box
        if self.turn is Turn.UP:
            return b.y1 - b.y0, b.z1 - b.z0
        return b.x1 - b.x0, b.y1 - b.y0

    def outline(self, angle: float) -> tuple[tuple[float, float], ...]:
        """Its section at right angles to the hinges' axis when opened by ``angle`` degrees:
        corners in (x, y), of a lid in (y, z)."""
        b, a = self.box, math.radians(angle)
        if self.turn is Turn.UP:
            pivot, ends = (b.y1, b.z1), ((b.y0, b.z0), (b.y1, b.z1))
            sense = -1.0
        else:
            left = self.turn is Turn.LEFT
            pivot = (b.x0 if left else b.x1, b.y0)
            ends, sense = ((b.x0, b.y0), (b.x1, b.y1)), (-1.0 if left else 1.0)
        c, s = math.cos(a), sense * math.sin(a)
        (u0, v0), (u1, v1) = ends
        return tuple(
            (pivot[0] + c * (u - pivot[0]) - s * (v - pivot[1]),
             pivot[1] + s * (u - pivot[0]) + c * (v - pivot[1]))
            for u, v in ((u0, v0), (u1, v0), (u1, v1), (u0, v1))
        )

    def section(self, box: Box) -> tuple[float, float, float, float] | None:
        """A box seen along the hinges' axis, None where it lies beside the sweep."""
        b = self.box
        if self.turn is Turn.UP:
            beside = min(b.x1, box.x1) - max(b.x0, box.x0) <= 1e-6
            return None if beside else (box.y0, box.z0, box.y1, box.z1)
        beside = min(b.z1, box.z1) - max(b.z0, box.z0) <= 1e-6
        return None if beside else (box.x0, box.y0, box.x1, box.y1)


Move = Pull | Swing


@dataclass(frozen=True)
class Zone:
    """Space that is used though no part stands there, such as that of clothes on a rod."""

    name: str
    box: Box
    use: str
