"""Rims that run aslant, in one straight piece or several."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from itertools import pairwise

from closetbench.core.cuts import Point, Rim


@dataclass(frozen=True)
class Taper:
    """A rim that runs aslant: it lies ``first`` inside the panel's rectangle where it starts
    (at START, of an end at FRONT) and ``last`` inside where it stops.

    ``allowance``: how much more the saw leaves along this rim, to be scribed away in place.
    ``via``: where it bends on its way, as a share of the way and how far inside it lies there;
    along a bowed wall it is made of several straight pieces.
    """

    rim: Rim
    first: float
    last: float
    allowance: float = 0.0
    via: tuple[Point, ...] = ()

    @property
    def places(self) -> tuple[Point, ...]:
        """Shares of the way, and how far inside the rim lies there, both ends included."""
        return ((0.0, self.first), *self.via, (1.0, self.last))

    def inside(self, share: float) -> float:
        """How far inside the rim lies at a share of the way."""
        for (p, a), (q, b) in pairwise(self.places):
            if share <= q:
                return a + (b - a) * (share - p) / (q - p)
        return self.last

    def reversed(self) -> Taper:
        """The same from the other end."""
        via = tuple((1.0 - at, inside) for at, inside in reversed(self.via))
        return replace(self, first=self.last, last=self.first, via=via)


Line = tuple[float, float]
"""Level at the panel's corner and slope."""


def tapered_ring(
    tapers: Iterable[Taper], size: Point, rims: tuple[float, float, float, float]
) -> tuple[Point, ...]:
    """The outline of a tapered panel, counter-clockwise from the corner START/FRONT.

    ``size``: length and width of the finished rectangle; ``rims``: where START, FRONT, END and
    REAR would lie untapered.
    """
    slants = {t.rim: t for t in tapers}
    x0, y0, x1, y1 = rims
    levels = {
        Rim.FRONT: (y0, 1.0), Rim.END: (x1, -1.0), Rim.REAR: (y1, -1.0), Rim.START: (x0, 1.0)
    }

    def lines(rim: Rim) -> tuple[Line, Line]:
        """The first and the last straight piece of a rim, drawn on to the rectangle."""
        level, sense = levels[rim]
        run = size[1] if rim.is_end else size[0]
        found = []
        for (p, a), (q, b) in pairwise(slants.get(rim, Taper(rim, 0.0, 0.0)).places):
            slope = (b - a) / (q - p)
            found.append((level + sense * (a - slope * p), sense * slope / run))
        return found[0], found[-1]

    def corner(end: Rim, edge: Rim) -> Point:
        a, p = lines(end)[0 if edge is Rim.FRONT else 1]
        b, q = lines(edge)[0 if end is Rim.START else 1]
        y = (b + q * a) / (1 - p * q)  # x = a + p y, y = b + q x
        return a + p * y, y

    def bends(rim: Rim, backwards: bool) -> list[Point]:
        level, sense = levels[rim]
        run = size[1] if rim.is_end else size[0]
        via = slants[rim].via if rim in slants else ()
        found = [(at * run, level + sense * inside) for at, inside in via]
        if rim.is_end:
            found = [(y, x) for x, y in found]
        return found[::-1] if backwards else found

    return (
        corner(Rim.START, Rim.FRONT), *bends(Rim.FRONT, False), corner(Rim.END, Rim.FRONT),
        *bends(Rim.END, False), corner(Rim.END, Rim.REAR), *bends(Rim.REAR, True),
        corner(Rim.START, Rim.REAR), *bends(Rim.START, True),
    )
