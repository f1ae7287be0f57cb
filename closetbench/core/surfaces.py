"""Surfaces of a room: a coordinate as a polynomial of the second degree in two others.

Planes, planes with a bow and twisted planes are all of this form, so that their greatest
and least values over a rectangle are exact, not sampled.
"""

from __future__ import annotations

from dataclasses import dataclass

TERMS = 6
"""Coefficients of a surface: of 1, u, v, uv, u² and v²."""


@dataclass(frozen=True)
class Surface:
    """``c[0] + c[1] u + c[2] v + c[3] uv + c[4] u² + c[5] v²``, all in mm."""

    c: tuple[float, float, float, float, float, float]

    @classmethod
    def plane(cls, level: float, along_u: float = 0.0, along_v: float = 0.0) -> Surface:
        """A plane by its coordinate at u = v = 0 and its slopes."""
        return cls((level, along_u, along_v, 0.0, 0.0, 0.0))

    def at(self, u: float, v: float) -> float:
        """The coordinate at one point."""
        c = self.c
        return c[0] + u * (c[1] + c[3] * v + c[4] * u) + v * (c[2] + c[5] * v)

    def critical(
        self, u0: float, u1: float, v0: float, v1: float
    ) -> tuple[tuple[float, float], ...]:
        """The points of a rectangle at which the coordinate can be least or greatest.

        The corners, the turning points along the edges and the one inside.
        """
        _, b, a, twist, uu, vv = self.c
        points = [(u, v) for u in (u0, u1) for v in (v0, v1)]
        if vv:
            for u in (u0, u1):
                v = -(a + twist * u) / (2 * vv)
                if v0 < v < v1:
                    points.append((u, v))
        if uu:
            for v in (v0, v1):
                u = -(b + twist * v) / (2 * uu)
                if u0 < u < u1:
                    points.append((u, v))
        det = 4 * uu * vv - twist * twist
        if det:
            u, v = (twist * a - 2 * vv * b) / det, (twist * b - 2 * uu * a) / det
            if u0 < u < u1 and v0 < v < v1:
                points.append((u, v))
        return tuple(points)

    def over(self, u0: float, u1: float, v0: float, v1: float) -> tuple[float, float]:
        """Least and greatest coordinate over a rectangle."""
        found = [self.at(u, v) for u, v in self.critical(u0, u1, v0, v1)]
        return min(found), max(found)


def basis(u: float, v: float) -> tuple[float, float, float, float, float, float]:
    """What the coefficients are multiplied with at a point."""
    return 1.0, u, v, u * v, u * u, v * v
