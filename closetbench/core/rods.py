"""Hanging rods: single, double, across or along, at the height that their use asks for.

Heights are of the rod's axis above the closet's floor. Published: 64 in for a single rod
and 3 in from rod to shelf (Time-Saver Standards), 24 in of depth with the rod 12 in from
the wall (as quoted from bath and closet planning), supports at most 48 in apart and least
diameters (Architectural Woodwork Standards, edition 1, 4.4.16). The others are common
practice, no published source.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

from closetbench.core.bars import BarClass
from closetbench.core.bodies import LengthPart
from closetbench.core.component import Component, box_around, require
from closetbench.core.errors import ClosetError
from closetbench.core.findings import Finding, Severity
from closetbench.core.inside import Opening, Spot
from closetbench.core.loads import ROD_LONGEST
from closetbench.core.materials import Catalogue
from closetbench.core.moves import Zone
from closetbench.core.panel import Box
from closetbench.core.parts import HardwareNeed, Role
from closetbench.core.rods_strength import Rod, RodKind

IN = 25.4
LONG_HEIGHT, SHORT_HEIGHT, UPPER_HEIGHT = 66 * IN, 42 * IN, 84 * IN
CHILD_HEIGHT = 36 * IN
"""mm: 66 in for coats (trim carpenters' practice), 42 and 84 in for two rods one above the
other (common practice), 36 in, the highest that a child of 3 to 4 reaches (2010 ADA
Standards, advisory 308.1)."""
BELOW_SHELF, LEAST_BELOW_SHELF = 3 * IN, 2 * IN
"""mm from a rod's axis to what lies above it: 3 in (Time-Saver Standards), at least 2 in so
that a hanger can be lifted off (common practice)."""
HANGING_DEPTH = 24 * IN
FROM_WALL = 12 * IN
"""mm: depth that clothes on hangers take, and the rod in the middle of it."""
HANGER = 17 * IN
"""Width of a usual hanger, mm: common practice, no published source. With less depth it does
not hang square to the rod."""
GARMENT = 20 * IN
"""Width of clothes on a hanger, mm: common practice, no published source."""
TIGHT_DEPTH = GARMENT + 2 * IN
"""With less depth than this clothes touch the wall or what is before them, mm: common
practice, no published source."""


class RodUse(Enum):
    """What hangs on a rod, which says how high it is."""

    LONG = "long"
    SHORT = "short"
    DOUBLE = "double"
    """Two rods for short things, one above the other."""
    CHILD = "child's reach"


class RodRun(Enum):
    """Which way a rod runs."""

    ACROSS = "across"
    """From side to side; clothes hang side on."""
    ALONG = "along"
    """From the rear to the front, under what lies above; clothes face the front."""


class RodHolder(Enum):
    """What holds the ends of a rod that runs across."""

    SOCKETS = "sockets"
    FLANGES = "flanges"


USES = {
    RodUse.LONG: (LONG_HEIGHT, 1500.0), RodUse.SHORT: (SHORT_HEIGHT, 960.0),
    RodUse.DOUBLE: (SHORT_HEIGHT, 960.0), RodUse.CHILD: (CHILD_HEIGHT, 700.0),
}
"""Height of the (lower) rod and how far its clothes hang down, mm."""


@dataclass(frozen=True)
class RodsSpec:
    """A hanging rod, or two, in one opening.

    ``name``: the component's name.
    ``spot``: where it hangs.
    ``use``: what hangs on it, which says how high it is.
    ``run``: across the bay or along its depth.
    ``rod``: key of a class of bar.
    ``height``: of the rod's axis above the floor, None by its use or as high as it can be.
    ``upper``: of the upper of two rods, None by rule.
    ``setback``: from the rear of the opening to the rod's axis, None takes 305 mm or the middle.
    ``holder``: what holds the ends of a rod that runs across.
    ``supports``: supports between the ends, None as many as the span asks for.
    """

    name: str
    spot: Spot
    use: RodUse = RodUse.LONG
    run: RodRun = RodRun.ACROSS
    rod: str = "steel_27"
    height: float | None = None
    upper: float | None = None
    setback: float | None = None
    holder: RodHolder = RodHolder.SOCKETS
    supports: int | None = None


def build_rods(spec: RodsSpec, opening: Opening, catalogue: Catalogue) -> Component:
    """The rods in the closet's frame; ``ClosetError`` for what cannot be built."""
    bar = catalogue.bar(spec.rod, subject=opening.subject)
    across = spec.run is RodRun.ACROSS
    if spec.upper is not None and spec.use is not RodUse.DOUBLE:
        raise ClosetError(
            opening.subject, "height of the upper rod", f"{spec.upper:g} mm",
            f"must be left open for {spec.use.value} things, which hang on one rod",
        )
    if not across and spec.use is RodUse.DOUBLE:
        raise ClosetError(
            opening.subject, "use", spec.use.value, "must hang on rods that run across"
        )
    room = opening.depth if across else opening.width
    require(
        opening.subject, "depth for hangers" if across else "width for hangers", room, HANGER,
        float("inf"), f"for hangers {HANGER:.0f} mm wide on a rod {spec.run.value}",
    )
    found: list[Finding] = []
    heights = _heights(spec, opening, bar, found)
    if room < HANGING_DEPTH - 0.5:
        found.append(Finding(
            Severity.WARNING if room < TIGHT_DEPTH else Severity.NOTE, spec.name, "shallow-rod",
            "clothes on hangers are deeper than the bay: they stand out at the front or rub "
            "against a door" if across else
            "clothes on hangers are wider than the bay: they rub against its sides",
            "closet planning, as quoted: 24 in with the rod 12 in from the wall",
            opening.figures.length(room), opening.figures.length(HANGING_DEPTH),
        ))
    names = ("rod",) if len(heights) == 1 else ("lower rod", "upper rod")
    rods = tuple(
        _rod(spec, opening, bar, name, z) for name, z in zip(names, heights, strict=True)
    )
    return Component(
        spec.name, (), box_around(rods), _hardware(spec, opening, bar, len(rods)), tuple(found),
        lengths=rods, zones=tuple(_zone(spec, opening, rod) for rod in rods),
        checked=tuple(
            Rod(
                rod.full_name, RodKind(bar.kind), bar.diameter,
                opening.width if across else opening.depth, bar.wall or None,
                _supports(spec, opening), rod.start[2], holder=opening.material,
            )
            for rod in rods
        ),
    )


def _heights(
    spec: RodsSpec, opening: Opening, bar: BarClass, found: list[Finding]
) -> tuple[float, ...]:
    """The rods' axes above the floor, rising."""
    if spec.run is RodRun.ALONG:
        z = opening.box.z1 - bar.drop
        if spec.height is not None and abs(spec.height - z) > 0.5:
            raise ClosetError(
                opening.subject, "height", f"{spec.height:g} mm",
                f"must be {z:.1f} mm: a rod along the bay hangs {bar.drop:g} mm under what lies "
                "above; or leave it open",
            )
        return (require(opening.subject, "height", z, opening.box.z0 + bar.drop, z),)
    usual, _ = USES[spec.use]
    double = spec.use is RodUse.DOUBLE
    if not double:
        return (_height(spec.height, usual, "height", spec, opening, found),)
    upper = _height(spec.upper, UPPER_HEIGHT, "height of the upper rod", spec, opening, found)
    lower = usual if spec.height is None else spec.height
    if spec.height is None and upper < UPPER_HEIGHT:
        lower = min(lower, opening.box.z0 + (upper - opening.box.z0) / 2)
    require(
        opening.subject, "height", lower, opening.box.z0 + bar.diameter,
        upper - bar.diameter - BELOW_SHELF, "below the upper rod",
    )
    return (lower, upper)


def _height(
    given: float | None, usual: float, prop: str, spec: RodsSpec, opening: Opening,
    found: list[Finding],
) -> float:
    low = opening.box.z0 + LEAST_BELOW_SHELF
    if given is not None:
        return require(
            opening.subject, prop, given, low, opening.box.z1 - LEAST_BELOW_SHELF,
            f"above the floor, {LEAST_BELOW_SHELF:.0f} mm below what lies above it",
        )
    best = max(min(usual, opening.box.z1 - BELOW_SHELF), low)
    if best < usual - 0.5:
        found.append(Finding(
            Severity.NOTE, spec.name, "rod-low",
            f"hangs lower than rods for {spec.use.value} things usually do, under what lies "
            "above it", "common practice, no published source", opening.figures.length(best),
            opening.figures.length(usual),
        ))
    return best


def _setback(spec: RodsSpec, opening: Opening, bar: BarClass) -> float:
    if spec.setback is None:
        return min(FROM_WALL, opening.depth / 2)
    return require(
        opening.subject, "distance of the rod from the rear", spec.setback, bar.diameter,
        opening.depth - bar.diameter, "to lie in the bay",
    )


def _rod(
    spec: RodsSpec, opening: Opening, bar: BarClass, name: str, z: float
) -> LengthPart:
    box, gap = opening.box, bar.end_gap
    if spec.run is RodRun.ACROSS:
        y = box.y1 - _setback(spec, opening, bar)
        start, end = (box.x0 + gap, y, z), (box.x1 - gap, y, z)
    else:
        x = (box.x0 + box.x1) / 2
        start, end = (x, box.y0 + gap, z), (x, box.y1 - gap, z)
    require(
        opening.subject, "length of the rod", math.dist(start, end), bar.diameter, bar.length,
        f"to be cut from a {bar.title}",
    )
    return LengthPart(name, spec.name, Role.ROD, bar.key, bar.diameter, bar.wall, start, end)


def _zone(spec: RodsSpec, opening: Opening, rod: LengthPart) -> Zone:
    """Where the clothes of a rod hang."""
    box, drop = opening.box, USES[spec.use][1]
    z = rod.start[2]
    low = max(z - drop, box.z0)
    if spec.run is RodRun.ACROSS:
        y = rod.start[1]
        space = Box(box.x0, max(y - GARMENT / 2, box.y0), low, box.x1,
                    min(y + GARMENT / 2, box.y1), z - rod.diameter)
    else:
        x = rod.start[0]
        space = Box(max(x - GARMENT / 2, box.x0), box.y0, low,
                    min(x + GARMENT / 2, box.x1), box.y1, z - rod.diameter)
    return Zone(f"clothes on the {rod.name}", space, "clothes")


def _supports(spec: RodsSpec, opening: Opening) -> int:
    """Supports between the ends of a rod."""
    span = opening.width if spec.run is RodRun.ACROSS else opening.depth
    if spec.supports is None:
        return math.ceil(span / ROD_LONGEST - 1e-9) - 1
    if spec.supports < 0:
        raise ClosetError(opening.subject, "supports", spec.supports, "must be 0 or more")
    return spec.supports


def _hardware(
    spec: RodsSpec, opening: Opening, bar: BarClass, count: int
) -> tuple[HardwareNeed, ...]:
    between = _supports(spec, opening)
    if spec.run is RodRun.ALONG:
        return (HardwareNeed(bar.hanger, count * (between + 2), "hanging rods"),)
    end = bar.socket if spec.holder is RodHolder.SOCKETS else bar.flange
    needs = [HardwareNeed(end, 2 * count, "ends of hanging rods")]
    if between:
        needs.append(HardwareNeed(bar.hanger, between * count, "hanging rods between the ends"))
    return tuple(needs)
