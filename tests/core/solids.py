"""Panels as solids made of boxes: exact, and by other arithmetic than the core's."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from itertools import combinations, pairwise, product

from closetbench.core.panel import Box, Panel
from closetbench.core.parts import Part

EPS = 1e-6


def panel_cuts(panel: Panel) -> list[Box]:
    """The boxes that grooves and notches take out, in the panel's frame."""
    return [panel.groove_box(g) for g in panel.grooves] + [
        panel.notch_box(n) for n in panel.notches
    ]


def part_cuts(part: Part) -> list[Box]:
    """The same in the closet's frame."""
    return [part.place.box(box) for box in panel_cuts(part.panel)]


def common(a: Box, b: Box) -> Box:
    """What two boxes share; empty where a maximum is not above its minimum."""
    return Box(
        max(a.x0, b.x0), max(a.y0, b.y0), max(a.z0, b.z0),
        min(a.x1, b.x1), min(a.y1, b.y1), min(a.z1, b.z1),
    )


def _stops(low: float, high: float, values: Iterable[float]) -> list[tuple[float, float]]:
    if high - low <= EPS:
        return []
    inside = sorted({low, high, *(v for v in values if low < v < high)})
    return [(a, b) for a, b in pairwise(inside) if b - a > EPS]


def cells(box: Box, cuts: Sequence[Box]) -> Iterator[Box]:
    """The cells of a box, parted at all faces of the cuts, that no cut takes out."""
    spans = [
        _stops(box.x0, box.x1, (v for c in cuts for v in (c.x0, c.x1))),
        _stops(box.y0, box.y1, (v for c in cuts for v in (c.y0, c.y1))),
        _stops(box.z0, box.z1, (v for c in cuts for v in (c.z0, c.z1))),
    ]
    for (x0, x1), (y0, y1), (z0, z1) in product(*spans):
        x, y, z = (x0 + x1) / 2, (y0 + y1) / 2, (z0 + z1) / 2
        if not any(c.x0 < x < c.x1 and c.y0 < y < c.y1 and c.z0 < z < c.z1 for c in cuts):
            yield Box(x0, y0, z0, x1, y1, z1)


def part_cells(part: Part) -> list[Box]:
    """The wood of a part in the closet's frame, as cells."""
    return list(cells(part.box(), part_cuts(part)))


def shared(p: Part, q: Part) -> Box | None:
    """A cell in which both parts have wood, if there is one."""
    both = common(p.box(), q.box())
    cuts = [c for c in (*part_cuts(p), *part_cuts(q)) if c.overlaps(both)]
    return next(cells(both, cuts), None)


def clashes(parts: Sequence[Part]) -> list[str]:
    """Every pair of parts that share wood, and where."""
    boxed = [(p, p.box()) for p in parts]
    return [
        f"{p.full_name} / {q.full_name}: {where}"
        for (p, a), (q, b) in combinations(boxed, 2)
        if a.overlaps(b) and (where := shared(p, q)) is not None
    ]


def volume(panel: Panel) -> float:
    """Volume of a panel from its cells, less the cylinders of its holes."""
    body = Box(0.0, 0.0, 0.0, panel.length, panel.width, panel.thickness)
    wood = math.fsum(c.volume for c in cells(body, panel_cuts(panel)))
    holes = math.fsum(
        len(row.centres()) * math.pi * (row.diameter / 2) ** 2 * row.depth for row in panel.holes
    )
    return wood - holes


def area(points: Sequence[tuple[float, float]]) -> float:
    """Area of an outline, positive where it runs counter-clockwise."""
    return math.fsum(
        (x0 * y1 - x1 * y0) / 2
        for (x0, y0), (x1, y1) in pairwise([*points, points[0]])
    )
