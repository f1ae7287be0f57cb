"""Whether parts of different components take the same space."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations, pairwise

from closetbench.core.component import Component
from closetbench.core.findings import Finding, Severity
from closetbench.core.panel import Box
from closetbench.core.parts import Part

LEAST_CONFLICT = 1.0
"""Common volume below this is rounding, mm³."""


def common_volume(first: Part, second: Part) -> float:
    """Volume that two parts' solids share, mm³: grooves, rabbets and notches are left out,
    holes are not (nothing stands in a hole by design but hardware).

    Exact: the common box is parted along every cut's faces, and each cell is in or out.
    """
    a, b = first.box(), second.box()
    if not a.overlaps(b):
        return 0.0
    low = (max(a.x0, b.x0), max(a.y0, b.y0), max(a.z0, b.z0))
    high = (min(a.x1, b.x1), min(a.y1, b.y1), min(a.z1, b.z1))
    cuts = [*_cuts(first), *_cuts(second)]
    axes = [
        sorted({
            low[i], high[i],
            *(v for c in cuts for v in (_low(c)[i], _high(c)[i]) if low[i] < v < high[i]),
        })
        for i in range(3)
    ]
    total = 0.0
    for x0, x1 in pairwise(axes[0]):
        column = [c for c in cuts if c.x0 <= x0 and c.x1 >= x1]
        for y0, y1 in pairwise(axes[1]):
            stack = [c for c in column if c.y0 <= y0 and c.y1 >= y1]
            for z0, z1 in pairwise(axes[2]):
                if not any(c.z0 <= z0 and c.z1 >= z1 for c in stack):
                    total += (x1 - x0) * (y1 - y0) * (z1 - z0)
    return total


def _cuts(part: Part) -> list[Box]:
    panel = part.panel
    boxes = [panel.groove_box(g) for g in panel.grooves]
    boxes += [panel.notch_box(n) for n in panel.notches]
    return [part.place.box(b) for b in boxes]


def _low(box: Box) -> tuple[float, float, float]:
    return box.x0, box.y0, box.z0


def _high(box: Box) -> tuple[float, float, float]:
    return box.x1, box.y1, box.z1


def conflict_findings(components: Sequence[Component]) -> list[Finding]:
    """A warning for each two parts of different components that take the same space."""
    found = []
    for first, second in combinations(components, 2):
        if not first.box.overlaps(second.box):
            continue
        for p in first.parts:
            if not p.box().overlaps(second.box):
                continue
            for q in second.parts:
                volume = common_volume(p, q)
                if volume > LEAST_CONFLICT:
                    found.append(Finding(
                        Severity.WARNING, q.full_name, "parts-overlap",
                        f"takes the same space as {p.full_name}: move one of them or make it "
                        "smaller", "", f"{volume / 1000.0:.1f} cm³ in common", "none",
                    ))
    return found
