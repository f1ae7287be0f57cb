"""Carrying a rectangle through a gap in a wall, round a corner, up under a ceiling.

Closed forms where there are any; elsewhere a search through the positions of the piece with
a stated resolution. Lengths in mm, angles in radians.
"""

from __future__ import annotations

import heapq
import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import lru_cache

GOLDEN = (math.sqrt(5.0) - 1) / 2


def tilt_diagonal(height: float, depth: float) -> float:
    """What a piece needs under the ceiling while it is tilted up: its diagonal."""
    return math.hypot(height, depth)


def longest_round_corner(a: float, b: float, thick: float = 0.0) -> float:
    """Longest rectangle, ``thick`` wide, that goes round a square corner between corridors
    of width ``a`` and ``b``.

    Without thickness the ladder's (a^(2/3) + b^(2/3))^(3/2); with it the least of
    (a sin t + b cos t - thick) / (sin t cos t) over the angle t.
    """
    if thick <= 0.0:
        return float((a ** (2 / 3) + b ** (2 / 3)) ** 1.5)
    if thick >= min(a, b):
        return thick if thick == min(a, b) else 0.0

    def at(t: float) -> float:
        return (a * math.sin(t) + b * math.cos(t) - thick) / (math.sin(t) * math.cos(t))

    low, high = 1e-6, math.pi / 2 - 1e-6
    while high - low > 1e-10:
        p, q = high - GOLDEN * (high - low), low + GOLDEN * (high - low)
        low, high = (low, q) if at(p) < at(q) else (p, high)
    return at((low + high) / 2)


def angle_through(p: float, q: float, w: float, h: float) -> float | None:
    """The least angle at which a rectangle p x q goes through a rectangular window w x h.

    0 where it goes straight; p lies along w then. None where it does not go at any angle:
    the condition of Carver (American Mathematical Monthly 64, 1957, problem E 1225).
    """
    reach = math.hypot(p, q)
    angles = [0.0, math.pi / 2]
    # where the one or the other extent, reach times a cosine, comes down to the window's
    angles += [
        lean + math.acos(size / reach)
        for lean, size in ((math.atan2(q, p), w), (math.atan2(p, q), h)) if size < reach
    ]
    for angle in sorted(a for a in angles if a <= math.pi / 2):
        across, up = extents(p, q, angle)
        if across <= w + 1e-9 and up <= h + 1e-9:
            return angle
    return None


def extents(p: float, q: float, angle: float) -> tuple[float, float]:
    """Size of the upright box around a rectangle p x q turned by ``angle``."""
    c, s = abs(math.cos(angle)), abs(math.sin(angle))
    return p * c + q * s, p * s + q * c


def turns_within(p: float, q: float, w: float, h: float, start: float = 0.0,
                 end: float = math.pi / 2) -> bool:
    """Whether a rectangle p x q can turn from one angle to the other inside w x h.

    In a rectangle it only has to fit at every angle between; exact.
    """
    steps = [start, end]
    for peak in (math.atan2(q, p), math.atan2(p, q)):
        # at these angles the one or the other extent is greatest
        steps += [t for t in (peak, -peak, math.pi - peak) if min(start, end) < t < max(start, end)]
    return all(
        across <= w + 1e-9 and up <= h + 1e-9
        for across, up in (extents(p, q, t) for t in steps)
    )


@dataclass(frozen=True)
class Slot:
    """A wall with a gap, seen along the gap's edges.

    ``v`` runs along the wall, ``y`` through it; the wall fills ``-thick`` to 0 but for the
    gap from ``gap0`` to ``gap1``. Behind it (y > 0) is a rectangle from ``in0`` to ``in1``,
    ``depth`` deep; before it all is free from ``out0`` to ``out1``.
    """

    gap0: float
    gap1: float
    thick: float
    in0: float
    in1: float
    depth: float
    out0: float = -math.inf
    out1: float = math.inf


@dataclass(frozen=True)
class Position:
    """The centre of a piece and how it is turned."""

    v: float
    y: float
    angle: float


class _Turned:
    """A rectangle at one angle: how wide it is within a stretch of y."""

    def __init__(self, p: float, q: float, angle: float) -> None:
        self.c, self.s = math.cos(angle), math.sin(angle)
        self.p, self.q = p / 2, q / 2
        self.half_y = abs(self.p * self.s) + abs(self.q * self.c)
        # the corner that reaches furthest along v, and where it lies in y
        self.peak = self.p * self.s - math.copysign(self.q, self.s) * self.c

    def upper(self, y: float) -> float:
        """Greatest v of the piece at a height y within it."""
        c, s = self.c, self.s
        ends = (self.p - y * s) / c if c > 1e-9 else math.inf
        if abs(s) < 1e-9:
            return ends
        flank = (y * c + self.q) / s if s > 0 else (self.q - y * c) / -s
        return min(ends, flank)

    def span(self, low: float, high: float) -> tuple[float, float] | None:
        """Least and greatest v of what lies between two values of y; None for nothing."""
        low, high = max(low, -self.half_y), min(high, self.half_y)
        if low > high:
            return None
        most = self.upper(min(max(self.peak, low), high))
        least = -self.upper(min(max(self.peak, -high), -low))
        return least, most


def free_span(slot: Slot, piece: _Turned, y: float) -> tuple[float, float] | None:
    """The values of v at which a turned piece with its centre at ``y`` hits nothing."""
    if y + piece.half_y > slot.depth:
        return None
    low, high = -math.inf, math.inf
    for start, end, v0, v1 in (
        (-math.inf, -slot.thick, slot.out0, slot.out1), (-slot.thick, 0.0, slot.gap0, slot.gap1),
        (0.0, math.inf, slot.in0, slot.in1),
    ):
        found = piece.span(start - y, end - y)
        if found is None or (found[0] == found[1] and start == -slot.thick):
            continue
        low, high = max(low, v0 - found[0]), min(high, v1 - found[1])
    return (low, high) if low <= high else None


@lru_cache(maxsize=512)
def carry_through(
    slot: Slot, p: float, q: float, finest: float = 10.0
) -> tuple[Position, ...] | None:
    """A path of a rectangle, p along the wall and q through it at the end, from before the
    wall to behind it, or None where there is none with ``finest`` mm to spare.

    Remembered, since most pieces of a closet stay as they are while one is changed.
    Searches in steps of four, two and one times ``finest``: in depth, or in the angle that
    moves no corner further. Between two neighbouring steps no point is further than half a
    step from where it is at one of them, so the path of a piece half a step larger all round
    holds; and a piece a step smaller all round that finds none proves that there is none. At
    one depth and angle the free places along the wall are one stretch, found exactly.
    """
    gap = slot.gap1 - slot.gap0
    on_floor = slot.gap0 == slot.in0 == slot.out0
    if on_floor and p > gap and p > longest_round_corner(slot.depth, gap, q):
        # along a floor the gap and the depth make a corner, and round it this does not go
        return None
    for step in (4 * finest, 2 * finest, finest):
        path = _search(slot, p + step, q + step, step)
        if path is not None:
            return path
        less = 2 * step
        if step > finest and _search(slot, max(p - less, 1.0), max(q - less, 1.0), step) is None:
            return None
    return None


def _search(slot: Slot, p: float, q: float, step: float) -> tuple[Position, ...] | None:
    gap, room = slot.gap1 - slot.gap0, slot.in1 - slot.in0
    if p > room or q > slot.depth or min(p, q) > gap:
        return None
    if p > gap and math.hypot(p, q) > room:
        # it cannot go straight in, so it must turn, and is as wide as its diagonal on the way
        return None
    grid = _Grid(slot, p, q, step)
    queue: list[tuple[float, int, int]] = []
    before: dict[tuple[int, int], tuple[int, int] | None] = {}
    for turn in range(-grid.turns, grid.turns + 1):
        row = grid.outside(turn)
        if grid.free(row, turn) is not None:
            before[row, turn] = None
            queue.append((grid.left(row, turn), row, turn))
    heapq.heapify(queue)
    while queue:
        _, row, turn = heapq.heappop(queue)
        if turn == 0 and row * step >= q / 2:
            return _unwind(grid, before, (row, turn))
        here = grid.free(row, turn)
        assert here is not None
        for node in grid.around(row, turn):
            if node in before:
                continue
            there = grid.free(*node)
            if there is not None and max(here[0], there[0]) <= min(here[1], there[1]):
                before[node] = (row, turn)
                heapq.heappush(queue, (grid.left(*node), *node))
    return None


class _Grid:
    """The steps of one search, each worked out when it is first asked for."""

    def __init__(self, slot: Slot, p: float, q: float, step: float) -> None:
        self.slot, self.p, self.q, self.step = slot, p, q, step
        self.turns = max(2, math.ceil(math.pi / 2 * math.hypot(p, q) / 2 / step))
        self.angle = math.pi / 2 / self.turns
        self._pieces: dict[int, _Turned] = {}
        self._free: dict[tuple[int, int], tuple[float, float] | None] = {}

    def piece(self, turn: int) -> _Turned:
        if turn not in self._pieces:
            self._pieces[turn] = _Turned(self.p, self.q, turn * self.angle)
        return self._pieces[turn]

    def free(self, row: int, turn: int) -> tuple[float, float] | None:
        key = row, turn
        if key not in self._free:
            self._free[key] = free_span(self.slot, self.piece(turn), row * self.step)
        return self._free[key]

    def outside(self, turn: int) -> int:
        """The row in which a piece so turned is just before the wall."""
        return math.floor((-self.slot.thick - self.piece(turn).half_y) / self.step)

    def left(self, row: int, turn: int) -> float:
        """Rough way that is left to go, in steps."""
        return max(0.0, self.q / 2 / self.step - row) + abs(turn)

    def around(self, row: int, turn: int) -> Iterator[tuple[int, int]]:
        for dr, dt in ((1, 0), (0, -1), (0, 1), (-1, 0)):
            # further out than just before the wall is nothing to find
            if abs(turn + dt) <= self.turns and row + dr >= self.outside(turn + dt):
                yield row + dr, turn + dt


def _unwind(
    grid: _Grid, before: dict[tuple[int, int], tuple[int, int] | None], last: tuple[int, int]
) -> tuple[Position, ...]:
    nodes = [last]
    while (node := before[nodes[-1]]) is not None:
        nodes.append(node)
    nodes.reverse()
    path: list[Position] = []
    v: float | None = None
    for i, (row, turn) in enumerate(nodes):
        span = grid.free(row, turn)
        assert span is not None
        low, high = span
        if i + 1 < len(nodes):
            following = grid.free(*nodes[i + 1])
            assert following is not None
            low, high = max(low, following[0]), min(high, following[1])
        if v is None:
            v = (low + high) / 2 if math.isfinite(low + high) else min(max(0.0, low), high)
        else:
            moved = min(max(v, low), high)
            if moved != v and i:
                path.append(Position(moved, row * grid.step, turn * grid.angle))
            v = moved
        path.append(Position(v, row * grid.step, turn * grid.angle))
    return tuple(path)


def largest_that(passes: Callable[[float], bool], low: float, high: float, to: float) -> float:
    """The largest length between ``low`` and ``high``, within ``to``, that still passes."""
    if not passes(low):
        return 0.0
    while high - low > to:
        middle = (low + high) / 2
        low, high = (middle, high) if passes(middle) else (low, middle)
    return low
