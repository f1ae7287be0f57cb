"""The adjusted room as faces to be drawn: walls, front, trim, dead space, obstacles.

All in the closet's frame, mm.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from enum import Enum
from itertools import pairwise

from closetbench.core.convex import Ring, Solid, Vector, block, corners
from closetbench.core.envelope import Envelope
from closetbench.core.panel import Box
from closetbench.core.returns import dead_spaces
from closetbench.core.room import Room
from closetbench.core.surfaces import Surface

BENT_STEPS = 8
"""Into how many strips a bent wall is parted each way."""
SETTLED = 1e-6
"""mm: a corner that moves by less in a pass is found."""


class Kind(Enum):
    """What can be shown and hidden by itself."""

    WALLS = "walls"
    FLOOR = "floor"
    CEILING = "ceiling"
    FRONT = "front wall"
    TRIM = "casing and baseboard"
    DEAD_SPACE = "dead space"
    OBSTACLES = "obstacles"


@dataclass(frozen=True)
class Shown:
    """Something of the room: its faces, as rings of points. ``sizes``: what of it is to be
    told beside its name, lengths in mm; ``litres`` 0 for what has no volume of interest."""

    kind: Kind
    name: str
    faces: Solid
    sizes: tuple[float, ...] = ()
    litres: float = 0.0

    @property
    def middle(self) -> Vector:
        """The middle of its points."""
        points = [p for ring in self.faces for p in ring]
        n = len(points)
        return (
            sum(p[0] for p in points) / n, sum(p[1] for p in points) / n,
            sum(p[2] for p in points) / n,
        )


def room_scene(room: Room, envelope: Envelope) -> tuple[Shown, ...]:
    """Everything of the room that there is to see, from its surfaces to its obstacles."""
    e = envelope

    def moved(faces: Solid) -> Solid:
        return tuple(tuple((x - e.x0, y - e.y0, z - e.z0) for x, y, z in f) for f in faces)

    own = [*_surfaces(room), *_front(room), *_casing(room), *_baseboard(room)]
    own += [
        Shown(Kind.OBSTACLES, o.name, block(corners(Box(o.x0, o.y0, o.z0, o.x1, o.y1, o.z1))),
              (o.x1 - o.x0, o.y1 - o.y0, o.z1 - o.z0))
        for o in room.obstacles
    ]
    return (
        *(Shown(s.kind, s.name, moved(s.faces), s.sizes, s.litres) for s in own),
        *(
            Shown(Kind.DEAD_SPACE, d.where, block(corners(d.box)), (d.depth,), d.litres)
            for d in dead_spaces(room, envelope)
        ),
    )


def _surfaces(room: Room) -> Iterator[Shown]:
    whole = (room.left, room.right, room.back, room.floor, room.ceiling)
    steps = BENT_STEPS if any(any(s.c[3:]) for s in whole) else 1
    shares = [i / steps for i in range(steps + 1)]

    def side(wall: Surface) -> Solid:
        return _mesh([[_beside(room, wall, s, t) for t in shares] for s in shares])

    def level(surface: Surface) -> Solid:
        up = 1.0 if surface is room.ceiling else 0.0
        return _mesh([[_across(room, s, t, up) for t in shares] for s in shares])

    yield Shown(Kind.WALLS, "left wall", side(room.left))
    yield Shown(Kind.WALLS, "right wall", side(room.right))
    yield Shown(Kind.WALLS, "back wall", _mesh(
        [[_across(room, s, 1.0, t) for t in shares] for s in shares]))
    yield Shown(Kind.FLOOR, "floor", level(room.floor))
    yield Shown(Kind.CEILING, "ceiling", level(room.ceiling))


def _beside(room: Room, wall: Surface, along: float, up: float) -> Vector:
    """A point of a side wall by its shares of depth and height."""
    def nearer(at: Vector) -> Vector:
        x = wall.at(at[1], at[2])
        y = along * room.back.at(x, at[2])
        return x, y, _height(room, x, y, up)

    return _settled(nearer)


def _across(room: Room, along: float, into: float, up: float) -> Vector:
    """A point by its shares of width, depth and height."""
    def nearer(at: Vector) -> Vector:
        low, high = room.left.at(at[1], at[2]), room.right.at(at[1], at[2])
        x = low + along * (high - low)
        y = into * room.back.at(x, at[2])
        return x, y, _height(room, x, y, up)

    return _settled(nearer)


def _settled(nearer: Callable[[Vector], Vector]) -> Vector:
    """The point that stays where it is; the slopes are small, so a few passes settle it."""
    at = (0.0, 0.0, 0.0)
    for _ in range(8):
        before, at = at, nearer(at)
        if max(abs(a - b) for a, b in zip(before, at, strict=True)) < SETTLED:
            break
    return at


def _height(room: Room, x: float, y: float, up: float) -> float:
    low, high = room.floor.at(x, y), room.ceiling.at(x, y)
    return low + up * (high - low)


def _mesh(rows: list[list[Vector]]) -> Solid:
    return tuple(
        (a, b, d, c)
        for first, second in pairwise(rows)
        for (a, c), (b, d) in zip(pairwise(first), pairwise(second), strict=True)
    )


def _front(room: Room) -> Iterator[Shown]:
    """The wall around the opening: both returns and what is over it."""
    o = room.opening
    if o is None:
        return

    def plate(bottom: tuple[float, float], top: tuple[float, float], x0: float, x1: float,
              u0: float, u1: float) -> Solid:
        """Between two lines in the front's plane, each its heights at the left and right."""
        return block(tuple(
            (x, y, z)
            for (left, right), (p, q) in ((bottom, (x0, x1)), (top, (u0, u1)))
            for x, y, z in ((p, -o.depth, left), (q, -o.depth, right), (q, 0.0, right),
                            (p, 0.0, left))
        ))

    low_left, low_right = (_beside(room, w, 0.0, 0.0) for w in (room.left, room.right))
    top_left, top_right = (_beside(room, w, 0.0, 1.0) for w in (room.left, room.right))
    floor0, floor1 = (room.floor.at(x, 0.0) for x in (o.x0, o.x1))
    ceiling0, ceiling1 = (room.ceiling.at(x, 0.0) for x in (o.x0, o.x1))
    yield Shown(Kind.FRONT, "left return", plate(
        (low_left[2], floor0), (top_left[2], ceiling0), low_left[0], o.x0, top_left[0], o.x0))
    yield Shown(Kind.FRONT, "right return", plate(
        (floor1, low_right[2]), (ceiling1, top_right[2]), o.x1, low_right[0], o.x1,
        top_right[0]))
    if min(ceiling0, ceiling1) - o.z1 > 1.0:
        yield Shown(Kind.FRONT, "over the opening", plate(
            (o.z1, o.z1), (ceiling0, ceiling1), o.x0, o.x1, o.x0, o.x1))


def _casing(room: Room) -> Iterator[Shown]:
    o = room.opening
    if o is None or o.casing_width <= 0 or o.casing_thickness <= 0:
        return
    w, y0, y1 = o.casing_width, -o.depth - o.casing_thickness, -o.depth
    for name, x0, x1, z0, z1 in (
        ("left casing", o.x0 - w, o.x0, room.floor.at(o.x0, 0.0), o.z1),
        ("right casing", o.x1, o.x1 + w, room.floor.at(o.x1, 0.0), o.z1),
        ("head casing", o.x0 - w, o.x1 + w, o.z1, o.z1 + w),
    ):
        yield Shown(Kind.TRIM, name, block(corners(Box(x0, y0, z0, x1, y1, z1))))


def _baseboard(room: Room) -> Iterator[Shown]:
    """Along both sides and the back; lengths go into each other in the corners."""
    high, thick = room.baseboard
    if high <= 0 or thick <= 0:
        return
    fl, fr = (_beside(room, w, 0.0, 0.0) for w in (room.left, room.right))
    bl, br = (_across(room, s, 1.0, 0.0) for s in (0.0, 1.0))

    def strip(a: Vector, b: Vector, way: tuple[float, float]) -> Solid:
        ring: Ring = (a, b, (b[0] + way[0], b[1] + way[1], b[2]),
                      (a[0] + way[0], a[1] + way[1], a[2]))
        return block((*ring, *((x, y, z + high) for x, y, z in ring)))

    yield Shown(Kind.TRIM, "left baseboard", strip(bl, fl, (thick, 0.0)))
    yield Shown(Kind.TRIM, "right baseboard", strip(fr, br, (-thick, 0.0)))
    yield Shown(Kind.TRIM, "back baseboard", strip(br, bl, (0.0, -thick)))
