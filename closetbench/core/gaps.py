"""Gaps between carcasses and the room, as tapered lines that fillers are cut to."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from closetbench.core.component import Component
from closetbench.core.envelope import Envelope, Wall
from closetbench.core.levelling import floor_gap
from closetbench.core.panel import Box
from closetbench.core.readings import On
from closetbench.core.room import Room


@dataclass(frozen=True)
class GapLine:
    """A gap along an edge: its width at both ends of a straight line that nowhere reaches
    into the wall, and how much further from the line the wall lies in between or may lie."""

    first: float
    last: float
    spare: float = 0.0

    @property
    def narrow(self) -> float:
        """Width at its narrower end."""
        return min(self.first, self.last)

    @property
    def wide(self) -> float:
        """Width at its wider end."""
        return max(self.first, self.last)


@dataclass(frozen=True)
class SideGap:
    """The gap beside a carcass and where it starts and ends in z."""

    line: GapLine
    low: float
    high: float


def gap_line(gap: Callable[[float], float], start: float, end: float, sd: float) -> GapLine:
    """The line along a gap that may be bowed; twice the ``sd`` of the wall is spare."""
    first, last = gap(start), gap(end)
    # a surface of the second degree strays furthest from its chord half way along
    bow = gap((start + end) / 2) - (first + last) / 2
    return GapLine(first + min(bow, 0.0), last + min(bow, 0.0), abs(bow) + 2 * sd)


@dataclass(frozen=True)
class Gaps:
    """Distances in the closet's frame between a carcass and the room around it."""

    room: Room
    envelope: Envelope

    def beside(self, wall: Wall, box: Box, y: float, z: float) -> float:
        """From the carcass's side to the side wall."""
        e = self.envelope
        if wall is Wall.LEFT:
            return box.x0 - (self.room.left.at(y + e.y0, z + e.z0) - e.x0)
        return self.room.right.at(y + e.y0, z + e.z0) - e.x0 - box.x1

    def above(self, box: Box, x: float, y: float) -> float:
        """From the carcass's top to the ceiling."""
        e = self.envelope
        return self.room.ceiling.at(x + e.x0, y + e.y0) - e.z0 - box.z1

    def below(self, x: float, y: float) -> float:
        """From the envelope's floor level down to the floor."""
        return floor_gap(self.room, self.envelope)(x, y)

    def side(self, wall: Wall, carcass: Component, to_ceiling: bool) -> SideGap:
        """The gap beside a carcass along its front, from the floor to its top or further."""
        b = carcass.box
        x, y = (b.x0 if wall is Wall.LEFT else b.x1), b.y0
        low = -max(0.0, self.below(x, y))
        high = b.z1 + (max(0.0, self.above(b, x, y)) if to_ceiling else 0.0)
        on = On.LEFT if wall is Wall.LEFT else On.RIGHT
        sd = math.sqrt(self.room.variance((
            (1.0, on, y + self.envelope.y0, (low + high) / 2 + self.envelope.z0),)))
        line = gap_line(lambda z: self.beside(wall, b, y, z), low, high, sd)
        return SideGap(line, low, high)

    def top(self, carcass: Component, start: float, end: float) -> GapLine:
        """The gap above a carcass along its front, from ``start`` to ``end`` in x."""
        b = carcass.box
        sd = math.sqrt(self.room.variance((
            (1.0, On.CEILING, (start + end) / 2 + self.envelope.x0, b.y0 + self.envelope.y0),)))
        return gap_line(lambda x: self.above(b, x, b.y0), start, end, sd)
