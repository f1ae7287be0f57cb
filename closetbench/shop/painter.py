"""What of a closet is seen, and in which order it has to be painted.

Every part is a board with its notches; its visible faces become axis-parallel rectangles.
A binary space partition puts them from the farthest to the nearest, splitting where two
stand in each other's way, so that what is painted later hides what is behind it. A tongue
that stands in another part's groove is hidden by that part's face, as in the wood.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from enum import IntEnum

from closetbench.core.panel import Box, Face, Panel
from closetbench.core.parts import Part, Vector

_EPS = 1e-6
_TRIALS = 9


class Kind(IntEnum):
    """What a patch shows; of two in one plane the greater is painted later."""

    GROOVE = 0
    WOOD = 1
    HOLE = 2


@dataclass(frozen=True)
class Patch:
    """A visible rectangle in the closet's frame: ``low`` and ``high`` differ on all axes but
    ``axis``. ``edges``: the (axis, side) pairs where a line is to be drawn; side 0 is low."""

    low: Vector
    high: Vector
    axis: int
    kind: Kind
    part: Part
    edges: frozenset[tuple[int, int]]

    @property
    def level(self) -> float:
        """Where its plane lies on its axis."""
        return self.low[self.axis]

    def corners(self) -> tuple[Vector, Vector, Vector, Vector]:
        """Its corners, one after another around it."""
        b, c = _others(self.axis)
        return (
            self.low, _with(self.low, b, self.high[b]), self.high,
            _with(self.low, c, self.high[c]),
        )

    def lines(self) -> Iterator[tuple[Vector, Vector]]:
        """The edges to be drawn."""
        for axis, side in self.edges:
            at = (self.low, self.high)[side][axis]
            yield _with(self.low, axis, at), _with(self.high, axis, at)

    def split(self, axis: int, at: float) -> tuple[Patch, Patch]:
        """The part below a plane and the part above it."""
        below = self.edges - {(axis, 1)}
        above = self.edges - {(axis, 0)}
        return (
            replace(self, high=_with(self.high, axis, at), edges=below),
            replace(self, low=_with(self.low, axis, at), edges=above),
        )


def _others(axis: int) -> tuple[int, int]:
    return (axis + 1) % 3, (axis + 2) % 3


def _with(point: Vector, axis: int, value: float) -> Vector:
    x, y, z = point
    return (value, y, z) if axis == 0 else (x, value, z) if axis == 1 else (x, y, value)


def painted(parts: Iterable[Part], toward: Vector) -> list[Patch]:
    """The visible patches of the parts, the farthest first.

    ``toward``: the direction from the closet to the viewer, who is infinitely far away.
    """
    return list(_ordered([p for part in parts for p in _visible(part, toward)], toward))


def _ordered(patches: list[Patch], toward: Vector) -> Iterator[Patch]:
    if len(patches) < 2:
        yield from patches
        return
    axis, at = _plane(patches)
    below, within, above = _parted(patches, axis, at)
    if toward[axis] < 0:
        below, above = above, below
    yield from _ordered(below, toward)
    yield from sorted(within, key=lambda p: p.kind)
    yield from _ordered(above, toward)


def _plane(patches: Sequence[Patch]) -> tuple[int, float]:
    """The patch's plane, of a few tried, that splits little and halves well."""
    best: tuple[float, int, float] | None = None
    for patch in patches[:: max(1, len(patches) // _TRIALS)]:
        axis, at = patch.axis, patch.level
        below = sum(p.high[axis] < at + _EPS and p.low[axis] < at - _EPS for p in patches)
        above = sum(p.low[axis] > at - _EPS and p.high[axis] > at + _EPS for p in patches)
        within = sum(abs(p.level - at) < _EPS for p in patches if p.axis == axis)
        cost = 4.0 * (len(patches) - below - above - within) + abs(below - above)
        if best is None or cost < best[0]:
            best = (cost, axis, at)
    assert best is not None
    return best[1], best[2]


def _parted(
    patches: Sequence[Patch], axis: int, at: float
) -> tuple[list[Patch], list[Patch], list[Patch]]:
    below: list[Patch] = []
    within: list[Patch] = []
    above: list[Patch] = []
    for patch in patches:
        if patch.axis == axis and abs(patch.level - at) < _EPS:
            within.append(patch)
        elif patch.high[axis] < at + _EPS:
            below.append(patch)
        elif patch.low[axis] > at - _EPS:
            above.append(patch)
        else:
            low, high = patch.split(axis, at)
            below.append(low)
            above.append(high)
    return below, within, above


def _visible(part: Part, toward: Vector) -> Iterator[Patch]:
    """The patches of a part that face the viewer."""
    panel, place = part.panel, part.place

    def seen(normal: Vector) -> bool:
        return sum(n * t for n, t in zip(normal, toward, strict=True)) > _EPS

    def patch(box: Box, kind: Kind, edges: Iterable[tuple[int, int]]) -> Patch:
        moved = place.box(box)
        low, high = (moved.x0, moved.y0, moved.z0), (moved.x1, moved.y1, moved.z1)
        flat = min(range(3), key=lambda i: high[i] - low[i])
        directions = (place.along, place.across, place.up)
        turned = set()
        for axis, side in edges:
            way = directions[axis]
            there = max(range(3), key=lambda i: abs(way[i]))
            turned.add((there, side if way[there] > 0 else 1 - side))
        return Patch(low, high, flat, kind, part, frozenset(turned))

    up = place.up
    for face, z, normal in (
        (Face.UPPER, panel.thickness, up), (Face.LOWER, 0.0, (-up[0], -up[1], -up[2])),
    ):
        if seen(normal):
            yield from _face_patches(panel, face, z, patch)
    for (ax, ay), (bx, by) in _sides(panel):
        if abs(ay - by) < _EPS:
            sign = -1.0 if bx > ax else 1.0
            normal = _times(place.across, sign)
        else:
            sign = 1.0 if by > ay else -1.0
            normal = _times(place.along, sign)
        if seen(normal):
            yield from _rim_patches(panel, (ax, ay, bx, by), sign, patch)


def _times(way: Vector, sign: float) -> Vector:
    return way[0] * sign, way[1] * sign, way[2] * sign


def _sides(panel: Panel) -> Iterator[tuple[tuple[float, float], tuple[float, float]]]:
    ring = panel.outline()
    return zip(ring, (*ring[1:], ring[0]), strict=True)


_Maker = Callable[[Box, Kind, Iterable[tuple[int, int]]], Patch]
_Cell = tuple[float, float, float, float]


def _face_patches(panel: Panel, face: Face, z: float, patch: _Maker) -> Iterator[Patch]:
    away = [panel.notch_box(n) for n in panel.notches]
    cut = [panel.groove_box(g) for g in panel.grooves if g.face is face]
    cells = _cells(
        (0.0, 0.0, panel.length, panel.width),
        [(b.x0, b.y0, b.x1, b.y1) for b in away], [(b.x0, b.y0, b.x1, b.y1) for b in cut],
    )
    for (x0, y0, x1, y1), kind, edges in cells:
        yield patch(Box(x0, y0, z, x1, y1, z), kind, edges)
    for row in panel.holes:
        if row.face is face or row.depth >= panel.thickness - _EPS:
            r = row.diameter / 2
            for x, y in row.centres():
                yield patch(Box(x - r, y - r, z, x + r, y + r, z), Kind.HOLE, ())


def _rim_patches(
    panel: Panel, side: tuple[float, float, float, float], sign: float, patch: _Maker
) -> Iterator[Patch]:
    """A narrow side, with the ends of the grooves that run out through it."""
    ax, ay, bx, by = side
    lies_along = abs(ay - by) < _EPS
    low, high = (min(ax, bx), max(ax, bx)) if lies_along else (min(ay, by), max(ay, by))
    at = ay if lies_along else ax
    open_ends = []
    for groove in panel.grooves:
        b = panel.groove_box(groove)
        near, far = (b.y0, b.y1) if lies_along else (b.x0, b.x1)
        inside = at - sign * 1e-3  # a point just behind the rim
        if near < inside < far:
            u0, u1 = (b.x0, b.x1) if lies_along else (b.y0, b.y1)
            open_ends.append((u0, b.z0, u1, b.z1))
    for (u0, z0, u1, z1), kind, edges in _cells(
        (low, 0.0, high, panel.thickness), [], open_ends
    ):
        box = Box(u0, at, z0, u1, at, z1) if lies_along else Box(at, u0, z0, at, u1, z1)
        first = 0 if lies_along else 1
        yield patch(box, kind, {(first if a == 0 else 2, s) for a, s in edges})


def _cells(
    whole: _Cell, away: Sequence[_Cell], cut: Sequence[_Cell]
) -> Iterator[tuple[_Cell, Kind, list[tuple[int, int]]]]:
    """A rectangle in cells of wood and groove without what is away; edges as (axis, side)."""
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
            around = (((0, 0), (i - 1, j)), ((0, 1), (i + 1, j)),
                      ((1, 0), (i, j - 1)), ((1, 1), (i, j + 1)))
            edges = [edge for edge, (m, n) in around if kind(m, n) is not here]
            yield (xs[i], ys[j], xs[i + 1], ys[j + 1]), here, edges
