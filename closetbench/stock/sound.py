"""What is sound of a damaged offcut: a bad corner, a split end, a knot is kept clear of.

The planners of sheets know rectangles only. They get the largest rectangle that no defect
touches, found exactly; what lies around it is cut away first, and is an offcut again.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations
from math import isfinite

from closetbench.core.errors import LayoutError
from closetbench.stock.checks import millimetres

MOST_DEFECTS = 40
"""On one offcut: beyond, measure what is sound and list that."""


@dataclass(frozen=True)
class Defect:
    """A damaged place, mm: from ``start`` to ``end`` along the offcut's length, from ``low`` to
    ``high`` across its width, both 0: all across. Measured from one corner, a length's from
    one end."""

    start: float
    end: float
    low: float = 0.0
    high: float = 0.0


@dataclass(frozen=True)
class Area:
    """A rectangle on an offcut: its low corner and extents along length and width, mm."""

    x: float
    y: float
    dx: float
    dy: float


def check_defects(subject: str, length: float, width: float, defects: Sequence[Defect]) -> None:
    """Raise LayoutError for a defect that is not on the offcut, or where nothing sound is left.

    ``width`` 0: a length of a bar.
    """
    if len(defects) > MOST_DEFECTS:
        raise LayoutError(
            subject, "defects", len(defects),
            f"at most {MOST_DEFECTS}; measure what is sound and list that",
        )
    for number, defect in enumerate(defects, 1):
        prop = f"defect {number}"
        sides = [("length", defect.start, defect.end, length)]
        if defect.low or defect.high:
            if not width:
                raise LayoutError(
                    subject, prop, f"{defect.low:g} to {defect.high:g} mm across",
                    "a length of a bar has no width: give where it starts and ends",
                )
            sides.append(("width", defect.low, defect.high, width))
        for side, low, high, full in sides:
            if not (isfinite(low) and isfinite(high) and 0 <= low < high <= full):
                raise LayoutError(
                    subject, prop, f"{low:g} to {high:g} mm along its {side}",
                    f"must lie within 0 to {millimetres(full)}, its start first",
                )
    if defects:
        sound_area(subject, length, width, defects)


def sound_area(subject: str, length: float, width: float, defects: Sequence[Defect]) -> Area:
    """The largest rectangle clear of all defects; LayoutError where there is none.

    Exact: one of its sides lies on a defect or on the edge in each of the four directions, so
    that only those are tried. Of several as large the longest, then that nearest the corner.
    A length of a bar (``width`` 0) counts as 1 mm wide.
    """
    wide = width or 1.0
    placed = [(d.start, d.end, *((d.low, d.high) if d.high else (0.0, wide))) for d in defects]
    xs = sorted({0.0, length, *(d[0] for d in placed), *(d[1] for d in placed)})
    best: tuple[tuple[float, float, float, float], Area] | None = None
    for x0, x1 in combinations(xs, 2):
        y = 0.0
        within = sorted((low, high) for start, end, low, high in placed if start < x1 and end > x0)
        for low, high in (*within, (wide, wide)):
            if low > y:
                rank = ((x1 - x0) * (low - y), x1 - x0, -x0, -y)
                if best is None or rank > best[0]:
                    best = rank, Area(x0, y, x1 - x0, low - y)
            y = max(y, high)
    if best is None:
        raise LayoutError(
            subject, "defects", len(defects), "leave nothing sound; take it out of the list"
        )
    return best[1]


def around(length: float, width: float, sound: Area, kerf: float) -> tuple[Area, ...]:
    """What is left of an offcut once its sound part is cut out, a kerf between: what lies beyond
    its two ends, over the whole width, then what lies below and above it."""
    end, top = sound.x + sound.dx, sound.y + sound.dy
    pieces = (
        Area(0.0, 0.0, sound.x - kerf, width),
        Area(end + kerf, 0.0, length - end - kerf, width),
        Area(sound.x, 0.0, sound.dx, sound.y - kerf),
        Area(sound.x, top + kerf, sound.dx, width - top - kerf),
    )
    return tuple(piece for piece in pieces if piece.dx > 0 and piece.dy > 0)


def defects_on(piece: Area, defects: Sequence[Defect], width: float) -> tuple[Defect, ...]:
    """The defects as they lie on a piece of the offcut, which was ``width`` wide."""
    found = []
    for d in defects:
        low, high = (d.low, d.high) if d.high else (0.0, width)
        start, end = max(d.start - piece.x, 0.0), min(d.end - piece.x, piece.dx)
        low, high = max(low - piece.y, 0.0), min(high - piece.y, piece.dy)
        if start < end and low < high:
            across = low <= 0 and high >= piece.dy
            found.append(Defect(start, end) if across else Defect(start, end, low, high))
    return tuple(found)
