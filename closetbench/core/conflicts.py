"""Whether parts of different components take the same space."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations, pairwise

from closetbench.core import convex
from closetbench.core.bodies import Body
from closetbench.core.component import Component
from closetbench.core.findings import Finding, Severity
from closetbench.core.panel import Box
from closetbench.core.parts import Part, Place, Role
from closetbench.core.skew import MOST

LEAST_CONFLICT = 1.0
"""Common volume below this is rounding, mm³."""
_FRONTS = (Role.FRONT, Role.DOOR)
_BOUNDS = (
    Role.SIDE, Role.DIVIDER, Role.TOP, Role.BOTTOM, Role.FIXED_SHELF, Role.STILE, Role.RAIL,
    Role.MULLION, Role.BENCH_FRAME, Role.BENCH_TOP,
)
"""What an inset front is fitted into."""


def common_volume(first: Body, second: Body) -> float:
    """Volume that two bodies share, mm³: grooves, rabbets and notches of panels are left
    out, holes are not (nothing stands in a hole by design but hardware). Rods and existing
    pieces count as the boxes around them.

    Exact: the common box is parted along every cut's faces, and each cell is in or out;
    the cells of sloped panels are cut with each other.
    """
    a, b = first.box(), second.box()
    if not a.overlaps(b):
        return 0.0
    if _is_level(first) and _is_level(second):
        low = (max(a.x0, b.x0), max(a.y0, b.y0), max(a.z0, b.z0))
        high = (min(a.x1, b.x1), min(a.y1, b.y1), min(a.z1, b.z1))
        box = Box(*low, *high)
        return sum(c.volume for c in _cells(box, [*_cuts(first), *_cuts(second)]))
    return sum(
        convex.volume(convex.common(p, q)) for p in _solids(first) for q in _solids(second)
    )


def shares_with_box(body: Body, box: Box) -> bool:
    """Whether a body reaches into a box by more than ``LEAST_CONFLICT``."""
    if not body.box().overlaps(box):
        return False
    if _is_level(body):
        b = body.box()
        both = Box(
            max(b.x0, box.x0), max(b.y0, box.y0), max(b.z0, box.z0),
            min(b.x1, box.x1), min(b.y1, box.y1), min(b.z1, box.z1),
        )
        shared = sum(c.volume for c in _cells(both, _cuts(body)))
    else:
        block = convex.block(convex.corners(box))
        shared = sum(convex.volume(convex.common(s, block)) for s in _solids(body))
    return shared > LEAST_CONFLICT


def _is_level(body: Body) -> bool:
    return not isinstance(body, Part) or body.place.is_level


def _cells(box: Box, cuts: Sequence[Box]) -> Iterator[Box]:
    """The cells of a box, parted along the faces of the cuts, that no cut takes out."""
    low, high = (box.x0, box.y0, box.z0), (box.x1, box.y1, box.z1)
    axes = [
        sorted({
            low[i], high[i],
            *(v for c in cuts for v in (_low(c)[i], _high(c)[i]) if low[i] < v < high[i]),
        })
        for i in range(3)
    ]
    for x0, x1 in pairwise(axes[0]):
        column = [c for c in cuts if c.x0 <= x0 and c.x1 >= x1]
        for y0, y1 in pairwise(axes[1]):
            stack = [c for c in column if c.y0 <= y0 and c.y1 >= y1]
            for z0, z1 in pairwise(axes[2]):
                if not any(c.z0 <= z0 and c.z1 >= z1 for c in stack):
                    yield Box(x0, y0, z0, x1, y1, z1)


def _own_cuts(part: Part) -> list[Box]:
    panel = part.panel
    boxes = [panel.groove_box(g) for g in panel.grooves]
    return [*boxes, *(panel.notch_box(n) for n in panel.notches)]


def _cuts(body: Body) -> list[Box]:
    if not isinstance(body, Part):
        return []
    return [body.place.box(b) for b in _own_cuts(body)]


def _solids(body: Body) -> list[convex.Solid]:
    if not isinstance(body, Part):
        return [convex.block(convex.corners(body.box()))]
    panel = body.panel
    whole = Box(0.0, 0.0, 0.0, panel.length, panel.width, panel.thickness)
    return [_placed(body.place, cell) for cell in _cells(whole, _own_cuts(body))]


def _placed(place: Place, box: Box) -> convex.Solid:
    return convex.block(tuple(place.point(*p) for p in convex.corners(box)))


def _low(box: Box) -> tuple[float, float, float]:
    return box.x0, box.y0, box.z0


def _high(box: Box) -> tuple[float, float, float]:
    return box.x1, box.y1, box.z1


def _tapered_in(first: Body, second: Body) -> bool:
    """Whether one is a front that is tapered to the other as measured: drawn square, the two
    would overlap along the front's edge, by no more than an opening may be out of square."""
    return any(
        isinstance(p, Part) and p.panel.tapers and p.role in _FRONTS and q.role in _BOUNDS
        and _at_edge(p.box(), q.box())
        for p, q in ((first, second), (second, first))
    )


def _at_edge(front: Box, bound: Box) -> bool:
    f, b = front, bound
    return min(b.x1 - f.x0, f.x1 - b.x0, b.z1 - f.z0, f.z1 - b.z0) <= MOST


def conflict_findings(components: Sequence[Component]) -> list[Finding]:
    """A warning for each two bodies of different components that take the same space."""
    found = []
    for first, second in combinations(components, 2):
        if not first.box.overlaps(second.box):
            continue
        for p in first.bodies:
            if not p.box().overlaps(second.box):
                continue
            for q in second.bodies:
                if _tapered_in(p, q):
                    continue
                volume = common_volume(p, q)
                if volume > LEAST_CONFLICT:
                    found.append(Finding(
                        Severity.WARNING, q.full_name, "parts-overlap",
                        f"takes the same space as {p.full_name}: move one of them or make it "
                        "smaller", "", f"{volume / 1000.0:.1f} cm³ in common", "none",
                        parts=(p.full_name,),
                    ))
    return found
