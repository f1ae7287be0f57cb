"""Convex solids: cut by planes, what two of them share, their volume.

A solid is its faces, each a ring of points counter-clockwise as seen from outside, mm.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from itertools import pairwise

from closetbench.core.panel import Box

Vector = tuple[float, float, float]
Ring = tuple[Vector, ...]
Solid = tuple[Ring, ...]

_EPS = 1e-7
_CORNERS = ((0, 0, 0), (1, 0, 0), (1, 1, 0), (0, 1, 0), (0, 0, 1), (1, 0, 1), (1, 1, 1), (0, 1, 1))
_FACES = (
    (0, 3, 2, 1), (4, 5, 6, 7), (0, 1, 5, 4), (2, 3, 7, 6), (1, 2, 6, 5), (0, 4, 7, 3),
)


def corners(box: Box) -> tuple[Vector, ...]:
    """The eight corners of a box, in the order that ``block`` takes."""
    ends = ((box.x0, box.x1), (box.y0, box.y1), (box.z0, box.z1))
    return tuple((ends[0][i], ends[1][j], ends[2][k]) for i, j, k in _CORNERS)


def block(points: tuple[Vector, ...]) -> Solid:
    """The solid between eight corners: around the bottom from the front left, then the top."""
    return tuple(tuple(points[i] for i in face) for face in _FACES)


def prism(start: Vector, end: Vector, radius: float, sides: int = 16) -> Solid:
    """A round bar as a prism around its axis, its corners on the circle."""
    way = tuple(b - a for a, b in zip(start, end, strict=True))
    size = math.hypot(*way)
    n: Vector = (way[0] / size, way[1] / size, way[2] / size)
    u = cross(n, (1.0, 0.0, 0.0) if abs(n[0]) < 0.9 else (0.0, 1.0, 0.0))
    length = math.hypot(*u)
    u = (u[0] / length, u[1] / length, u[2] / length)
    v = cross(n, u)
    turns = [2 * math.pi * i / sides for i in range(sides)]

    def ring(at: Vector) -> Ring:
        return tuple(
            (
                at[0] + radius * (math.cos(a) * u[0] + math.sin(a) * v[0]),
                at[1] + radius * (math.cos(a) * u[1] + math.sin(a) * v[1]),
                at[2] + radius * (math.cos(a) * u[2] + math.sin(a) * v[2]),
            )
            for a in turns
        )

    low, high = ring(start), ring(end)
    around = [
        (a, b, d, c) for (a, b), (c, d) in zip(
            pairwise((*low, low[0])), pairwise((*high, high[0])), strict=True)
    ]
    return (low[::-1], high, *around)


def cross(a: Vector, b: Vector) -> Vector:
    """The vector product."""
    return (
        a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0],
    )


def dot(a: Vector, b: Vector) -> float:
    """The scalar product."""
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def normal(ring: Ring) -> Vector:
    """Unit vector that a ring's face looks along."""
    x = y = z = 0.0
    for a, b in pairwise((*ring, ring[0])):
        n = cross(a, b)
        x, y, z = x + n[0], y + n[1], z + n[2]
    size = math.sqrt(x * x + y * y + z * z)
    return (x / size, y / size, z / size) if size else (0.0, 0.0, 0.0)


def planes(solid: Solid) -> Iterator[tuple[Vector, float]]:
    """Each face's outward direction and how far out it lies."""
    for ring in solid:
        n = normal(ring)
        yield n, dot(n, ring[0])


def split_ring(ring: Ring, way: Vector, at: float) -> tuple[list[Vector], list[Vector]]:
    """The points of a ring on and below a plane, and those that the plane adds."""
    kept: list[Vector] = []
    added: list[Vector] = []
    for a, b in pairwise((*ring, ring[0])):
        da, db = dot(way, a) - at, dot(way, b) - at
        if da <= _EPS:
            kept.append(a)
            if da >= -_EPS:
                added.append(a)
        if (da < -_EPS and db > _EPS) or (da > _EPS and db < -_EPS):
            t = da / (da - db)
            point = (
                a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), a[2] + t * (b[2] - a[2]),
            )
            kept.append(point)
            added.append(point)
    return kept, added


def clipped(solid: Solid, way: Vector, at: float) -> Solid:
    """What of a solid lies below a plane; empty where nothing does."""
    if not any(dot(way, p) - at > _EPS for ring in solid for p in ring):
        return solid
    faces: list[Ring] = []
    rim: list[Vector] = []
    for ring in solid:
        kept, added = split_ring(ring, way, at)
        if len(kept) > 2:
            faces.append(tuple(kept))
            rim += added
    cap = _around(rim, way)
    return (*faces, cap) if faces and len(cap) > 2 else ()


def _around(points: Iterable[Vector], way: Vector) -> Ring:
    """Points of one plane in the order around their middle, those that coincide once."""
    found: list[Vector] = []
    for p in points:
        if all(math.dist(p, q) > 1e-6 for q in found):
            found.append(p)
    if len(found) < 3:
        return ()
    count = len(found)
    middle: Vector = (
        sum(p[0] for p in found) / count, sum(p[1] for p in found) / count,
        sum(p[2] for p in found) / count,
    )
    u = cross(way, (1.0, 0.0, 0.0) if abs(way[0]) < 0.7 else (0.0, 1.0, 0.0))
    v = cross(way, u)

    def angle(p: Vector) -> float:
        d = (p[0] - middle[0], p[1] - middle[1], p[2] - middle[2])
        return math.atan2(dot(d, v), dot(d, u))

    return tuple(sorted(found, key=angle))


def common(a: Solid, b: Solid) -> Solid:
    """What two convex solids share."""
    for way, at in planes(b):
        if not a:
            return ()
        a = clipped(a, way, at)
    return a


def volume(solid: Solid) -> float:
    """Volume, mm³."""
    total = 0.0
    for ring in solid:
        for b, c in pairwise(ring[1:]):
            total += dot(ring[0], cross(b, c))
    return total / 6
