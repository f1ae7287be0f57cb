"""Where each reading was taken in the adjusted room, and how far it can be trusted."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from closetbench.core.convex import Vector
from closetbench.core.envelope import Envelope
from closetbench.core.readings import Observation, On, Spot, observations
from closetbench.core.room import AdjustedReading, Room
from closetbench.core.survey import Survey

DOUBTFUL = 2.58
"""|w| that chance exceeds once in a hundred (two-sided, normal distribution)."""
LEAST_CONTROL = 0.1
"""Redundancy below which the others do not notice a blunder (common practice of adjustment,
from memory)."""
INWARD = 20.0
"""mm that a line along a wall is drawn away from it, to be seen."""

_INTO = {On.LEFT: 1.0, On.RIGHT: -1.0, On.BACK: -1.0, On.FLOOR: 1.0, On.CEILING: -1.0,
         On.LINTEL: -1.0}


class Trust(Enum):
    """What the other readings say about one."""

    AGREES = "agrees"
    DOUBTFUL = "doubtful"
    WRONG = "cannot be right"
    UNCHECKED = "not checked by others"


def trust(reading: AdjustedReading) -> Trust:
    """What the others say about a reading; one that was left out is wrong."""
    if not reading.used:
        return Trust.WRONG
    # one of several rivals counts for little: its residual shows what its w does not
    if abs(reading.residual) > DOUBTFUL * reading.sd:
        return Trust.DOUBTFUL
    if reading.redundancy < LEAST_CONTROL:
        return Trust.UNCHECKED
    return Trust.DOUBTFUL if abs(reading.w) > DOUBTFUL else Trust.AGREES


@dataclass(frozen=True)
class ReadingLine:
    """A reading with the ends of its tape, level or plumb line, in the closet's frame.

    ``offset``: the value is no distance between the ends, but how far one lies from plumb
    over, or level with, the other.
    """

    reading: AdjustedReading
    trust: Trust
    start: Vector
    end: Vector
    offset: bool

    @property
    def middle(self) -> Vector:
        """Half way between the ends."""
        a, b = self.start, self.end
        return (a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2


def reading_lines(survey: Survey, room: Room, envelope: Envelope) -> tuple[ReadingLine, ...]:
    """A line for every reading of ``survey``, from which ``room`` was built."""
    by_key = {r.key: r for r in room.readings}
    lines = []
    for seen in observations(survey):
        start, end = _ends(seen, room)
        lines.append(ReadingLine(
            by_key[seen.key], trust(by_key[seen.key]), _shown(start, seen, envelope),
            _shown(end, seen, envelope), seen.axis is not None,
        ))
    return tuple(lines)


def _ends(seen: Observation, room: Room) -> tuple[Vector, Vector]:
    start = _point(seen.start, room, (0.0, 0.0, 0.0), seen.value)
    return start, _point(seen.end, room, start, seen.value)


def _point(spot: Spot, room: Room, start: Vector, value: float) -> Vector:
    at = [0.0 if isinstance(c, On) else c for c in spot]
    # the slopes are small, so a few passes settle it far below a micrometre
    for _ in range(6):
        for k, c in enumerate(spot):
            if isinstance(c, On):
                at[k] = start[k] if c is On.START else _on(c, k, at, room, value)
    return at[0], at[1], at[2]


def _on(on: On, axis: int, at: list[float], room: Room, value: float) -> float:
    if on < On.JAMB_LEFT:
        u, v = (at[i] for i in range(3) if i != axis)
        return room.surface(on).at(u, v)
    if room.opening is not None:
        o = room.opening
        return {On.JAMB_LEFT: o.x0, On.JAMB_RIGHT: o.x1, On.LINTEL: o.z1}[on]
    # a return or lintel by itself makes no opening: it ends where the tape did
    if on is On.JAMB_LEFT:
        return room.left.at(at[1], at[2]) + value
    if on is On.JAMB_RIGHT:
        return room.right.at(at[1], at[2]) - value
    return room.ceiling.at(at[0], at[1]) - value


def _shown(point: Vector, seen: Observation, envelope: Envelope) -> Vector:
    at = [point[0] - envelope.x0, point[1] - envelope.y0, point[2] - envelope.z0]
    for k, (first, last) in enumerate(zip(seen.start, seen.end, strict=True)):
        if isinstance(first, On) and last in (first, On.START):
            at[k] += INWARD * _INTO.get(first, 0.0)
    if {seen.start[0], seen.end[0]} & {On.JAMB_LEFT, On.JAMB_RIGHT}:
        # read where the width between the walls is
        at[2] -= 3 * INWARD
    return at[0], at[1], at[2]
