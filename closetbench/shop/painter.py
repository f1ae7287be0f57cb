"""What of a closet is seen, and in which order it has to be painted.

Every panel is a board with its notches; its visible faces become convex polygons, as do those
of rods and existing pieces. A binary space partition puts them from the farthest to the
nearest, splitting where two stand in each other's way, so that what is painted later hides
what is behind it. A tongue that stands in another part's groove is hidden by that part's
face, as in the wood.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from enum import IntEnum
from functools import cached_property
from itertools import pairwise

from closetbench.core.bodies import Body, LengthPart, Piece
from closetbench.core.convex import Ring, dot, normal
from closetbench.core.panel import Face, Panel, Point, Section
from closetbench.core.parts import Part, Vector
from closetbench.core.sections import quarter_round_faces

_EPS = 1e-6
_TRIALS = 9
_ROUND = 12.0
"""Holes wider than this are drawn round, mm."""


class Kind(IntEnum):
    """What a patch shows; of two in one plane the greater is painted later."""

    GROOVE = 0
    WOOD = 1
    FRONT = 2
    HOLE = 3


@dataclass(frozen=True)
class Patch:
    """A visible convex polygon in the closet's frame, and which way it looks.

    ``drawn``: for each of its sides, from one corner to the next, whether a line is to be
    drawn there.
    """

    ring: Ring
    normal: Vector
    kind: Kind
    body: Body
    drawn: tuple[bool, ...]

    @cached_property
    def low(self) -> Vector:
        """Its least coordinates."""
        x, y, z = (min(values) for values in zip(*self.ring, strict=True))
        return x, y, z

    @cached_property
    def high(self) -> Vector:
        """Its greatest coordinates."""
        x, y, z = (max(values) for values in zip(*self.ring, strict=True))
        return x, y, z

    @cached_property
    def plane(self) -> _Plane:
        """The plane that it lies in."""
        axis = next((i for i in range(3) if abs(self.normal[i]) > 1 - 1e-9), None)
        if axis is None:
            return _Plane(self.normal, dot(self.normal, self.ring[0]), None)
        way = (float(axis == 0), float(axis == 1), float(axis == 2))
        return _Plane(way, self.ring[0][axis], axis)

    def lines(self) -> Iterator[tuple[Vector, Vector]]:
        """The sides to be drawn."""
        sides = pairwise((*self.ring, self.ring[0]))
        return (side for side, drawn in zip(sides, self.drawn, strict=True) if drawn)

    def reach(self, plane: _Plane) -> tuple[float, float]:
        """How far below and above a plane it reaches."""
        if plane.axis is not None:
            return self.low[plane.axis] - plane.at, self.high[plane.axis] - plane.at
        heights = [dot(plane.way, p) - plane.at for p in self.ring]
        return min(heights), max(heights)

    def split(self, plane: _Plane) -> tuple[Patch, Patch]:
        """The part below a plane that goes through it and the part above."""
        heights = [dot(plane.way, p) - plane.at for p in self.ring]
        heights = [0.0 if abs(h) < _EPS else h for h in heights]
        return self._half(heights), self._half([-h for h in heights])

    def _half(self, heights: Sequence[float]) -> Patch:
        """What of it has no height above 0. The side along the cut is no edge."""
        ring: list[Vector] = []
        drawn: list[bool] = []
        corners = list(zip(self.ring, heights, self.drawn, strict=True))
        for (a, u, line), (b, v, _) in pairwise((*corners, corners[0])):
            if u <= 0:
                ring.append(a)
                drawn.append(line and not (u == 0 and v > 0))
            if u * v < 0:
                t = u / (u - v)
                ring.append((
                    a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), a[2] + t * (b[2] - a[2]),
                ))
                drawn.append(line and u > 0)
        return Patch(tuple(ring), self.normal, self.kind, self.body, tuple(drawn))


@dataclass(frozen=True)
class _Plane:
    """A plane: its direction, how far out it lies, its axis where it is square to one."""

    way: Vector
    at: float
    axis: int | None


def painted(bodies: Iterable[Body], toward: Vector) -> list[Patch]:
    """The visible patches of the bodies, the farthest first.

    ``toward``: the direction from the closet to the viewer, who is infinitely far away.
    """
    return list(_ordered([p for body in bodies for p in _visible(body, toward)], toward))


def _ordered(patches: list[Patch], toward: Vector) -> Iterator[Patch]:
    if len(patches) < 2:
        yield from patches
        return
    plane = _plane(patches)
    below, within, above = _parted(patches, plane)
    if dot(plane.way, toward) < 0:
        below, above = above, below
    yield from _ordered(below, toward)
    yield from sorted(within, key=lambda p: p.kind)
    yield from _ordered(above, toward)


def _plane(patches: Sequence[Patch]) -> _Plane:
    """The patch's plane, of a few tried, that splits little and halves well."""
    best: tuple[float, _Plane] | None = None
    for patch in patches[:: max(1, len(patches) // _TRIALS)]:
        plane = patch.plane
        below = within = above = 0
        for p in patches:
            low, high = p.reach(plane)
            if high < _EPS:
                if low < -_EPS:
                    below += 1
                else:
                    within += 1
            elif low > -_EPS:
                above += 1
        cost = 4.0 * (len(patches) - below - above - within) + abs(below - above)
        if best is None or cost < best[0]:
            best = (cost, plane)
    assert best is not None
    return best[1]


def _parted(
    patches: Sequence[Patch], plane: _Plane
) -> tuple[list[Patch], list[Patch], list[Patch]]:
    below: list[Patch] = []
    within: list[Patch] = []
    above: list[Patch] = []
    for patch in patches:
        low, high = patch.reach(plane)
        if patch.plane is plane or (low > -_EPS and high < _EPS):
            within.append(patch)
        elif high < _EPS:
            below.append(patch)
        elif low > -_EPS:
            above.append(patch)
        else:
            first, second = patch.split(plane)
            below.append(first)
            above.append(second)
    return below, within, above


def _visible(body: Body, toward: Vector) -> Iterator[Patch]:
    """The patches of a body that face the viewer."""
    if isinstance(body, Part):
        yield from _panel_patches(body, toward)
    elif isinstance(body, LengthPart):
        ends = (True,) * 16
        for ring in body.solid():
            drawn = ends[: len(ring)] if len(ring) > 4 else (True, False, True, False)
            yield from _seen(Patch(ring, normal(ring), Kind.WOOD, body, drawn), toward)
    elif isinstance(body, Piece):
        for a, b, c, d in body.solid():
            # measured corners lie in no plane: two triangles do
            for half, drawn in (((a, b, c), (True, True, False)), ((a, c, d), (False, True, True))):
                yield from _seen(Patch(half, normal(half), Kind.WOOD, body, drawn), toward)
        for ring in body.fronts:
            yield from _seen(
                Patch(ring, normal(ring), Kind.FRONT, body, (True,) * len(ring)), toward)


def _seen(patch: Patch, toward: Vector) -> Iterator[Patch]:
    if dot(patch.normal, toward) > _EPS:
        yield patch


def _panel_patches(part: Part, toward: Vector) -> Iterator[Patch]:
    panel, place = part.panel, part.place

    def patch(
        points: Iterable[Vector], way: Vector, kind: Kind, drawn: Sequence[bool]
    ) -> Patch:
        return Patch(tuple(place.point(*p) for p in points), way, kind, part, tuple(drawn))

    if panel.section is Section.QUARTER_ROUND:
        for ring, drawn in quarter_round_faces(panel):
            yield from _seen(patch(ring, place.direction(normal(ring)), Kind.WOOD, drawn), toward)
        return
    up = place.up
    for face, z, way in (
        (Face.UPPER, panel.thickness, up), (Face.LOWER, 0.0, (-up[0], -up[1], -up[2])),
    ):
        if dot(way, toward) > _EPS:
            yield from _face_patches(panel, face, z, way, patch)
    outline = panel.outline()
    for a, b in pairwise((*outline, outline[0])):
        size = math.dist(a, b)
        if size < _EPS:
            continue
        u, v = (b[1] - a[1]) / size, (a[0] - b[0]) / size
        i, j = place.along, place.across
        way = (u * i[0] + v * j[0], u * i[1] + v * j[1], u * i[2] + v * j[2])
        if dot(way, toward) > _EPS:
            yield from _rim_patches(panel, a, b, way, patch)


_Maker = Callable[[Iterable[Vector], Vector, Kind, Sequence[bool]], Patch]
_Cell = tuple[float, float, float, float]


def _face_patches(
    panel: Panel, face: Face, z: float, way: Vector, patch: _Maker
) -> Iterator[Patch]:
    if panel.tapers:
        ring = panel.outline()
        yield patch([(x, y, z) for x, y in ring], way, Kind.WOOD, [True] * len(ring))
        yield from _hole_patches(panel, face, z, way, patch)
        return
    away = [panel.notch_box(n) for n in panel.notches]
    cut = [panel.groove_box(g) for g in panel.grooves if g.face is face]
    cells = _cells(
        (0.0, 0.0, panel.length, panel.width),
        [(b.x0, b.y0, b.x1, b.y1) for b in away], [(b.x0, b.y0, b.x1, b.y1) for b in cut],
    )
    for (x0, y0, x1, y1), kind, drawn in cells:
        yield patch([(x0, y0, z), (x1, y0, z), (x1, y1, z), (x0, y1, z)], way, kind, drawn)
    yield from _hole_patches(panel, face, z, way, patch)


def _hole_patches(
    panel: Panel, face: Face, z: float, way: Vector, patch: _Maker
) -> Iterator[Patch]:
    for row in panel.holes:
        if row.face is face or row.depth >= panel.thickness - _EPS:
            sides = 16 if row.diameter > _ROUND else 4
            for x, y in row.centres():
                hole = _polygon(x, y, row.diameter / 2, sides)
                yield patch([(u, v, z) for u, v in hole], way, Kind.HOLE, [False] * sides)


def _polygon(x: float, y: float, r: float, sides: int) -> Iterator[Point]:
    """The corners of a regular polygon of the circle's area around a point."""
    turn = 2 * math.pi / sides
    out = r * math.sqrt(turn / math.sin(turn))
    for i in range(sides):
        angle = (i + 0.5) * turn
        yield x + out * math.cos(angle), y + out * math.sin(angle)


def _rim_patches(
    panel: Panel, a: Point, b: Point, way: Vector, patch: _Maker
) -> Iterator[Patch]:
    """A narrow side, with the ends of the grooves that run out through it."""
    size = math.dist(a, b)
    u, v = (b[0] - a[0]) / size, (b[1] - a[1]) / size
    open_ends = []
    for groove in panel.grooves:
        box = panel.groove_box(groove)
        # a point just behind the rim, to the left of the way from a to b
        if abs(u) > abs(v):
            inside = box.y0 < a[1] + 1e-3 * u < box.y1
            ends = sorted(((box.x0 - a[0]) * u, (box.x1 - a[0]) * u))
        else:
            inside = box.x0 < a[0] - 1e-3 * v < box.x1
            ends = sorted(((box.y0 - a[1]) * v, (box.y1 - a[1]) * v))
        if inside:
            open_ends.append((ends[0], box.z0, ends[1], box.z1))
    for (s0, z0, s1, z1), kind, drawn in _cells(
        (0.0, 0.0, size, panel.thickness), [], open_ends
    ):
        p, q = (a[0] + s0 * u, a[1] + s0 * v), (a[0] + s1 * u, a[1] + s1 * v)
        yield patch([(*p, z0), (*q, z0), (*q, z1), (*p, z1)], way, kind, drawn)


def _cells(
    whole: _Cell, away: Sequence[_Cell], cut: Sequence[_Cell]
) -> Iterator[tuple[_Cell, Kind, list[bool]]]:
    """A rectangle in cells of wood and groove without what is away, and whether a line is
    to be drawn below, to the right of, above and to the left of each."""
    x0, y0, x1, y1 = whole
    inner = [(max(c[0], x0), max(c[1], y0), min(c[2], x1), min(c[3], y1)) for c in (*away, *cut)]
    inner = [c for c in inner if c[2] - c[0] > _EPS and c[3] - c[1] > _EPS]
    xs = sorted({x0, x1, *(c[0] for c in inner), *(c[2] for c in inner)})
    ys = sorted({y0, y1, *(c[1] for c in inner), *(c[3] for c in inner)})

    def covers(cells: Sequence[_Cell], x: float, y: float) -> bool:
        return any(c[0] < x < c[2] and c[1] < y < c[3] for c in cells)

    def kind(i: int, j: int) -> Kind | None:
        if not (0 <= i < len(xs) - 1 and 0 <= j < len(ys) - 1):
            return None
        x, y = (xs[i] + xs[i + 1]) / 2, (ys[j] + ys[j + 1]) / 2
        if covers(away, x, y):
            return None
        return Kind.GROOVE if covers(cut, x, y) else Kind.WOOD

    for i in range(len(xs) - 1):
        for j in range(len(ys) - 1):
            here = kind(i, j)
            if here is None:
                continue
            around = ((i, j - 1), (i + 1, j), (i, j + 1), (i - 1, j))
            drawn = [kind(m, n) is not here for m, n in around]
            yield (xs[i], ys[j], xs[i + 1], ys[j + 1]), here, drawn
