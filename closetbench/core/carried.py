"""The pieces of a closet that have to come in, and how they move along a path."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from closetbench.core.access import AXES, Pose
from closetbench.core.closet import Closet
from closetbench.core.convex import Vector
from closetbench.core.pieces import Load, is_carried, loads_in

STEP = 25.0
"""mm that a piece moves at most from one position shown to the next."""
TURN = 3.0
"""Degrees that it turns at most."""

Rotation = tuple[Vector, Vector, Vector]
"""By rows."""

STILL: Rotation = ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))


@dataclass(frozen=True)
class Position:
    """Where a piece is: its pose, and how it is turned from the way that it will stand."""

    pose: Pose
    turned: Rotation


def loads_of(closet: Closet) -> tuple[Load, ...]:
    """Everything that is carried in, component by component."""
    return tuple(load for c in closet.components if is_carried(c) for load in loads_in(c))


def positions(
    path: Sequence[Pose], step: float = STEP, turn: float = TURN
) -> tuple[Position, ...]:
    """The path of a piece in small steps, straight between its poses, to the last one, in
    which it stands as it will."""
    if not path:
        return ()
    bases = _bases(path)
    found = [_position(path[0], bases[0])]
    for i, (a, b) in enumerate(pairwise(path)):
        if a.size == b.size and bases[i] == bases[i + 1]:
            found += [_position(p, bases[i]) for p in _between(a, b, step, turn)]
        else:
            found.append(_position(b, bases[i + 1]))
    return tuple(found)


def moved(position: Position, point: Vector, stood: Vector) -> Vector:
    """Where a point of a piece is; ``point`` and its centre ``stood`` as it will stand."""
    way = (point[0] - stood[0], point[1] - stood[1], point[2] - stood[2])
    x, y, z = (sum(p * q for p, q in zip(row, way, strict=True)) for row in position.turned)
    c = position.pose.centre
    return c[0] + x, c[1] + y, c[2] + z


def _position(pose: Pose, base: Rotation) -> Position:
    return Position(pose, _times(_about(pose.axis, pose.angle), base))


def _bases(path: Sequence[Pose]) -> list[Rotation]:
    """How the piece lies in each pose before that pose's own turn.

    Found backwards from the end: where the sizes change from one pose to the next, the
    turn of the first has become the way that it lies.
    """
    bases = [STILL]
    for a, b in reversed(list(pairwise(path))):
        last = bases[-1]
        if a.size != b.size:
            last = _times(_about(a.axis, -a.angle), _times(_about(b.axis, b.angle), last))
        bases.append(last)
    return bases[::-1]


def _between(a: Pose, b: Pose, step: float, turn: float) -> Iterator[Pose]:
    """From one pose to the next, the first left out."""
    first = a.angle if a.axis == b.axis else 0.0
    if a.axis != b.axis and abs(a.angle) > 1e-9:
        if abs(b.angle) > 1e-9:
            yield b
            return
        b = Pose(b.centre, b.size, a.axis, 0.0)
        first = a.angle
    count = max(1, math.ceil(max(
        math.dist(a.centre, b.centre) / step, abs(b.angle - first) / turn)))
    for i in range(1, count + 1):
        s = i / count
        x, y, z = (p + s * (q - p) for p, q in zip(a.centre, b.centre, strict=True))
        yield Pose((x, y, z), b.size, b.axis, first + s * (b.angle - first))


def _about(axis: str, degrees: float) -> Rotation:
    k = AXES.index(axis)
    i, j = (k + 1) % 3, (k + 2) % 3
    # quarter turns come out exact, so that a piece that is back stands as it will
    c, s = round(math.cos(math.radians(degrees)), 15), round(math.sin(math.radians(degrees)), 15)
    rows = [[float(p == q) for q in range(3)] for p in range(3)]
    rows[i][i] = rows[j][j] = c
    rows[i][j], rows[j][i] = -s, s
    return _rows(rows)


def _times(a: Rotation, b: Rotation) -> Rotation:
    return _rows([
        [sum(a[i][k] * b[k][j] for k in range(3)) for j in range(3)] for i in range(3)
    ])


def _rows(m: Sequence[Sequence[float]]) -> Rotation:
    x, y, z = ((r[0], r[1], r[2]) for r in m)
    return x, y, z
