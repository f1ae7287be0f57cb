"""Gaps between carcasses and the room, as tapered lines that fillers are cut to."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from closetbench.core.envelope import Envelope, Wall
from closetbench.core.levelling import floor_gap
from closetbench.core.panel import Box, Rim, Taper
from closetbench.core.readings import On
from closetbench.core.room import Room

STRAIGHT = 1.0
"""mm that a wall may stray from a straight piece; more is cut in several. Less is scribed."""
MOST_PIECES = 4


@dataclass(frozen=True)
class GapLine:
    """A gap along an edge, as straight pieces that nowhere reach into the wall: its width at
    both ends and at the bends between (``via``: share of the way, and width), and how much
    further from them the wall lies elsewhere or may lie."""

    first: float
    last: float
    spare: float = 0.0
    via: tuple[tuple[float, float], ...] = ()

    @property
    def widths(self) -> tuple[float, ...]:
        """Its width from bend to bend."""
        return self.first, *(v for _, v in self.via), self.last

    @property
    def narrow(self) -> float:
        """Its least width."""
        return min(self.widths)

    @property
    def wide(self) -> float:
        """Its greatest width."""
        return max(self.widths)

    def taper(self, rim: Rim, allowance: float) -> Taper:
        """The rim of a strip that is as wide as the gap where that is widest."""
        wide = self.wide
        return Taper(rim, wide - self.first, wide - self.last, allowance,
                     tuple((at, wide - v) for at, v in self.via))


@dataclass(frozen=True)
class Front:
    """The front of a unit to which its gaps are covered: a carcass's, its face frame's where it
    has one, a bench's that stands free. ``board``: material of what shows there; ``lap``: how
    far a moulding may lie on it; ``closed``: sides on which an end stile reaches to the wall;
    ``topped``: whether the gap above it is covered too."""

    name: str
    box: Box
    board: str
    lap: float
    closed: frozenset[Wall] = frozenset()
    topped: bool = True


@dataclass(frozen=True)
class SideGap:
    """The gap beside a carcass and where it starts and ends in z."""

    line: GapLine
    low: float
    high: float


def gap_line(gap: Callable[[float], float], start: float, end: float, sd: float) -> GapLine:
    """The line along a gap that may be bowed; twice the ``sd`` of the wall is spare."""
    # a surface of the second degree strays furthest from its chord half way along, and from
    # n chords by 1 / n² of that
    bow = gap((start + end) / 2) - (gap(start) + gap(end)) / 2
    count = min(max(math.ceil(math.sqrt(abs(bow) / STRAIGHT) - 1e-9), 1), MOST_PIECES)
    stray = bow / count**2
    shares = [i / count for i in range(count + 1)]
    widths = [gap(start + s * (end - start)) + min(stray, 0.0) for s in shares]
    return GapLine(
        widths[0], widths[-1], abs(stray) + 2 * sd,
        tuple(zip(shares[1:-1], widths[1:-1], strict=True)),
    )


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

    def behind(self, box: Box, x: float, z: float) -> float:
        """From the rear of what stands there to the rear wall."""
        e = self.envelope
        return self.room.back.at(x + e.x0, z + e.z0) - e.y0 - box.y1

    def above(self, box: Box, x: float, y: float) -> float:
        """From the carcass's top to the ceiling."""
        e = self.envelope
        return self.room.ceiling.at(x + e.x0, y + e.y0) - e.z0 - box.z1

    def below(self, x: float, y: float) -> float:
        """From the envelope's floor level down to the floor."""
        return floor_gap(self.room, self.envelope)(x, y)

    def side(self, wall: Wall, carcass: Front, to_ceiling: bool) -> SideGap:
        """The gap beside a carcass along its front, from the floor to its top or further."""
        b = carcass.box
        x, y = (b.x0 if wall is Wall.LEFT else b.x1), b.y0
        low = -max(0.0, self.below(x, y))
        high = b.z1 + (max(0.0, self.above(b, x, y)) if to_ceiling else 0.0)
        return SideGap(self.along(wall, carcass, low, high), low, high)

    def along(self, wall: Wall, front: Front, low: float, high: float) -> GapLine:
        """The gap beside a front between two heights."""
        b, y = front.box, front.box.y0
        on = On.LEFT if wall is Wall.LEFT else On.RIGHT
        sd = math.sqrt(self.room.variance((
            (1.0, on, y + self.envelope.y0, (low + high) / 2 + self.envelope.z0),)))
        return gap_line(lambda z: self.beside(wall, b, y, z), low, high, sd)

    def top(self, carcass: Front, start: float, end: float) -> GapLine:
        """The gap above a carcass along its front, from ``start`` to ``end`` in x."""
        b = carcass.box
        sd = math.sqrt(self.room.variance((
            (1.0, On.CEILING, (start + end) / 2 + self.envelope.x0, b.y0 + self.envelope.y0),)))
        return gap_line(lambda x: self.above(b, x, b.y0), start, end, sd)
