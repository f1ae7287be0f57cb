"""Beam theory with shear: sections, deflection, moments, and spans under any loads.

Units: N, mm, N/mm² (E, G, stress), N·mm (moments), N·mm² (EI), N (shear stiffness G·A').

Deflection by Wood Handbook, FPL-GTR-190 (2010) chapter 9, eq. 9-2 and Table 9-1:
k_b·W·L³/(E·I) + k_s·W·L/(G·A'), W the total load. The factors for moment and shear are
those of any statics table for the same cases.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from enum import Enum

from closetbench.core.errors import ClosetError


class Ends(Enum):
    """How a beam is held."""

    SIMPLE = "simply supported"
    CLAMPED = "clamped"
    CANTILEVER = "cantilever"


class Loading(Enum):
    """Where a load acts and, for two loads, where the deflection is asked for."""

    UNIFORM = "uniform"
    CENTRE = "at midspan"
    QUARTERS = "two equal loads at the outer quarter points"
    QUARTERS_AT_LOAD = "two equal loads at the outer quarter points, deflection at a load"
    TIP = "at the free end"


@dataclass(frozen=True)
class Case:
    """Factors of a load case: bending and shear deflection, greatest moment (times W·L)
    and greatest shear force (times W)."""

    k_b: float
    k_s: float
    moment: float
    shear: float


CASES = {
    (Loading.UNIFORM, Ends.SIMPLE): Case(5 / 384, 1 / 8, 1 / 8, 1 / 2),
    (Loading.UNIFORM, Ends.CLAMPED): Case(1 / 384, 1 / 8, 1 / 12, 1 / 2),
    (Loading.CENTRE, Ends.SIMPLE): Case(1 / 48, 1 / 4, 1 / 4, 1 / 2),
    (Loading.CENTRE, Ends.CLAMPED): Case(1 / 192, 1 / 4, 1 / 8, 1 / 2),
    (Loading.QUARTERS, Ends.SIMPLE): Case(11 / 768, 1 / 8, 1 / 8, 1 / 2),
    (Loading.QUARTERS_AT_LOAD, Ends.SIMPLE): Case(1 / 96, 1 / 8, 1 / 8, 1 / 2),
    (Loading.UNIFORM, Ends.CANTILEVER): Case(1 / 8, 1 / 2, 1 / 2, 1.0),
    (Loading.TIP, Ends.CANTILEVER): Case(1 / 3, 1.0, 1.0, 1.0),
}
"""Wood Handbook, FPL-GTR-190 (2010), Table 9-1."""


@dataclass(frozen=True)
class Fibre:
    """An outermost fibre: its E (N/mm²) and its distance from the neutral axis (mm)."""

    e: float
    c: float


@dataclass(frozen=True)
class Section:
    """A cross-section: ``ei`` N·mm², ``ga`` N, the fibres where the stress is greatest."""

    ei: float
    ga: float
    fibres: tuple[Fibre, ...]

    def stress(self, moment: float) -> float:
        """Greatest bending stress under a moment of N·mm, N/mm²."""
        return max(self.stresses(moment))

    def stresses(self, moment: float) -> tuple[float, ...]:
        """Greatest bending stress in each piece that it was built of, N/mm²."""
        return tuple(abs(moment) * f.e * f.c / self.ei for f in self.fibres)


@dataclass(frozen=True)
class Piece:
    """A rectangle of a built-up section: width, height and height of its underside (mm),
    E and G (N/mm²)."""

    width: float
    height: float
    z: float
    e: float
    g: float


def above_zero(subject: str, **values: float) -> None:
    """Raise ``ClosetError`` for the first value that is not a number above 0."""
    for name, value in values.items():
        if not (math.isfinite(value) and value > 0):
            raise ClosetError(subject, name.replace("_", " "), f"{value:g}", "must be above 0")


def rectangle(width: float, height: float, e: float, g: float) -> Section:
    """A solid rectangle, bent over its height (eq. 9-3, 9-4: A' = 5/6 of the area)."""
    return composite((Piece(width, height, 0.0, e, g),))


def circle(diameter: float, e: float, g: float) -> Section:
    """A solid round (eq. 9-3, 9-4: A' = 9/40·π·d²)."""
    above_zero("round section", diameter=diameter, stiffness=e, shear_stiffness=g)
    return Section(
        e * math.pi * diameter**4 / 64, g * 9 / 40 * math.pi * diameter**2,
        (Fibre(e, diameter / 2),),
    )


def tube(diameter: float, wall: float, e: float, g: float) -> Section:
    """A round tube, I = π/64·(D⁴ − d⁴). A' is half the area, as for a thin wall."""
    above_zero("tube", diameter=diameter, wall=wall, stiffness=e, shear_stiffness=g)
    inside = diameter - 2 * wall
    if inside <= 0:
        raise ClosetError(
            "tube", "wall", f"{wall:g} mm", f"must be less than half of {diameter:g} mm"
        )
    return Section(
        e * math.pi * (diameter**4 - inside**4) / 64,
        g * math.pi * (diameter**2 - inside**2) / 8,
        (Fibre(e, diameter / 2),),
    )


def composite(pieces: Sequence[Piece]) -> Section:
    """Rectangles glued into one section, by transformed widths.

    Bent about the horizontal axis. The shear stiffness is that of the stiffest piece
    alone, which is less than the section's.
    """
    if not pieces:
        raise ClosetError("section", "pieces", "0", "must be 1 or more")
    for p in pieces:
        above_zero(
            "section", width=p.width, height=p.height, stiffness=p.e, shear_stiffness=p.g
        )
    weights = [p.e * p.width * p.height for p in pieces]
    axis = sum(
        w * (p.z + p.height / 2) for w, p in zip(weights, pieces, strict=True)
    ) / sum(weights)
    ei = sum(
        w * (p.height**2 / 12 + (p.z + p.height / 2 - axis) ** 2)
        for w, p in zip(weights, pieces, strict=True)
    )
    fibres = tuple(
        Fibre(p.e, max(abs(p.z - axis), abs(p.z + p.height - axis))) for p in pieces
    )
    return Section(ei, max(p.g * 5 / 6 * p.width * p.height for p in pieces), fibres)


def case(loading: Loading, ends: Ends) -> Case:
    """The factors of a load case; ``ClosetError`` where Table 9-1 has none."""
    found = CASES.get((loading, ends))
    if found is None:
        raise ClosetError(
            "beam", "load case", f"{loading.value}, {ends.value}",
            "is not in the table of load cases; give the loads one by one",
        )
    return found


def deflection(
    section: Section, span: float, total: float,
    loading: Loading = Loading.UNIFORM, ends: Ends = Ends.SIMPLE,
) -> float:
    """Greatest deflection in mm under ``total`` N over a span in mm (eq. 9-2)."""
    above_zero("beam", span=span)
    factors = case(loading, ends)
    return (
        factors.k_b * total * span**3 / section.ei + factors.k_s * total * span / section.ga
    )


def moment(
    span: float, total: float, loading: Loading = Loading.UNIFORM, ends: Ends = Ends.SIMPLE
) -> float:
    """Greatest bending moment in N·mm under ``total`` N."""
    above_zero("beam", span=span)
    return case(loading, ends).moment * total * span


@dataclass(frozen=True)
class PointLoad:
    """``force`` N at ``at`` mm from the left support."""

    force: float
    at: float


@dataclass(frozen=True)
class LineLoad:
    """``per_mm`` N/mm from ``start`` to ``end`` mm from the left support."""

    per_mm: float
    start: float
    end: float


@dataclass(frozen=True)
class Bent:
    """A span under its loads: greatest deflection (mm) and where, greatest moment (N·mm,
    without sign), and what each support carries (N)."""

    deflection: float
    at: float
    moment: float
    left: float
    right: float


def bend(
    section: Section, span: float, loads: Sequence[PointLoad | LineLoad],
    ends: Ends = Ends.SIMPLE,
) -> Bent:
    """A span under any downward point and line loads, shear included.

    By integration of the moments; clamped ends by the condition that they do not turn.
    """
    above_zero("beam", span=span)
    if ends is Ends.CANTILEVER:
        raise ClosetError("beam", "ends", ends.value, "must be simply supported or clamped")
    for load in loads:
        _check_place(load, span)
    total = sum(_force(load) for load in loads)
    right_simple = sum(_force(load) * _middle(load) for load in loads) / span
    left_simple = total - right_simple

    def simple(x: float, times: int) -> float:
        """Moment of the simply supported span, integrated ``times`` times from 0 to x."""
        power = times + 1
        lift = left_simple * x**power / math.factorial(power)
        return lift - sum(_pull(load, x, power) for load in loads)

    m_left = m_right = 0.0
    if ends is Ends.CLAMPED:
        k = section.ei / section.ga
        both = -2 * simple(span, 1) / span
        m_left = (-simple(span, 2) - both * (span**2 / 6 - k)) / (span**2 / 6 + 2 * k)
        m_right = both - m_left
    slope = (m_right - m_left) / span

    def moment_at(x: float) -> float:
        return simple(x, 0) + m_left + slope * x

    def twice(x: float) -> float:
        return simple(x, 2) + m_left * x**2 / 2 + slope * x**3 / 6

    turn = twice(span) / (section.ei * span) - slope / section.ga

    def sag(x: float) -> float:
        return turn * x - twice(x) / section.ei + (moment_at(x) - m_left) / section.ga

    at = _peak(sag, span)
    greatest = max(abs(m_left), abs(m_right), moment_at(_peak(moment_at, span)))
    return Bent(sag(at), at, greatest, left_simple + slope, right_simple - slope)


def _force(load: PointLoad | LineLoad) -> float:
    return load.force if isinstance(load, PointLoad) else load.per_mm * (load.end - load.start)


def _middle(load: PointLoad | LineLoad) -> float:
    return load.at if isinstance(load, PointLoad) else (load.start + load.end) / 2


def _check_place(load: PointLoad | LineLoad, span: float) -> None:
    ends = (load.at, load.at) if isinstance(load, PointLoad) else (load.start, load.end)
    force = load.force if isinstance(load, PointLoad) else load.per_mm
    if not (0 <= ends[0] <= ends[1] <= span * (1 + 1e-9)):
        raise ClosetError(
            "beam", "place of a load", f"{ends[0]:g} to {ends[1]:g} mm",
            f"must lie within the span of {span:g} mm",
        )
    if not (math.isfinite(force) and force >= 0):
        raise ClosetError("beam", "load", f"{force:g}", "must be 0 or more, downward")


def _pull(load: PointLoad | LineLoad, x: float, power: int) -> float:
    """What a load takes off the moment at x; each power above 1 is one integration."""
    if isinstance(load, PointLoad):
        return load.force * max(x - load.at, 0.0) ** power / math.factorial(power)
    near, far = max(x - load.start, 0.0), max(x - load.end, 0.0)
    return load.per_mm * (near ** (power + 1) - far ** (power + 1)) / math.factorial(power + 1)


def _peak(curve: Callable[[float], float], span: float) -> float:
    """Where a curve with one hill near its highest of 129 stations is highest."""
    step = span / 128
    best = max(range(129), key=lambda i: curve(i * step))
    low, high = max(best - 1, 0) * step, min(best + 1, 128) * step
    for _ in range(60):
        third = (high - low) / 3
        if curve(low + third) < curve(high - third):
            low += third
        else:
            high -= third
    return (low + high) / 2


def longest(ratio: Callable[[float], float], low: float, high: float) -> float | None:
    """The longest span in mm, to 0.1 mm, whose ``ratio`` of value to limit is at most 1.

    The ratio must grow with the span. None where even ``low`` is too long; ``high``
    where even that is not.
    """
    if ratio(low) > 1:
        return None
    if ratio(high) <= 1:
        return high
    while high - low > 0.1:
        middle = (low + high) / 2
        if ratio(middle) <= 1:
            low = middle
        else:
            high = middle
    return low
