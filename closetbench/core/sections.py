"""Boards that are no flat ones, as solids: the faces of a quarter round, for pictures."""

from __future__ import annotations

import math
from itertools import pairwise

from closetbench.core.convex import Ring
from closetbench.core.panel import Panel, Point, Rim

FACETS = 6
"""Flats that stand for the round."""


def quarter_round_faces(panel: Panel) -> tuple[tuple[Ring, tuple[bool, ...]], ...]:
    """The faces in the panel's frame, corners counter-clockwise from outside, and which of
    their sides are edges of the piece."""
    r = panel.width
    ends = {t.rim: t for t in panel.tapers}

    def reach(rim: Rim, y: float) -> float:
        taper = ends.get(rim)
        inside = taper.first + (taper.last - taper.first) * y / r if taper else 0.0
        return inside if rim is Rim.START else panel.length - inside

    arc: list[Point] = [
        (r * math.cos(a), r * math.sin(a))
        for a in (math.pi / 2 * i / FACETS for i in range(FACETS + 1))
    ]

    def strip(p: Point, q: Point) -> Ring:
        return (
            (reach(Rim.START, p[0]), *p), (reach(Rim.END, p[0]), *p),
            (reach(Rim.END, q[0]), *q), (reach(Rim.START, q[0]), *q),
        )

    whole, facet = (True,) * 4, (False, True, False, True)
    section = ((0.0, 0.0), *arc)
    start = tuple((reach(Rim.START, y), y, z) for y, z in reversed(section))
    end = tuple((reach(Rim.END, y), y, z) for y, z in section)
    return (
        (strip((r, 0.0), (0.0, 0.0)), whole), (strip((0.0, 0.0), (0.0, r)), whole),
        *((strip(q, p), facet) for p, q in pairwise(arc)),
        (start, (True,) * len(start)), (end, (True,) * len(end)),
    )
