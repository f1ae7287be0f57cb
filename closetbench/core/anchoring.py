"""Tipping of what stands free, before and after it is fastened to the wall.

A unit tips over the front line of its support. Lengths mm from its front, forward
negative, heights from the floor; masses kg; moments N·mm. The published rules are for
free-standing clothing storage units; they exempt built-in units "intended to be
permanently attached", which is what fastening makes of a carcass.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from closetbench.core.beams import above_zero
from closetbench.core.errors import ClosetError
from closetbench.core.figures import GRAVITY, POUND, POUND_FORCE, Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.loads import CLOTHES_DENSITY
from closetbench.core.parts import HardwareNeed
from closetbench.core.walls import DEFER

TALL = 27 * 25.4
"""mm: units this high or higher come under 16 CFR 1261 (ASTM F2057-23)."""
PULL = 10 * POUND_FORCE
PULL_HEIGHT = 56 * 25.4
CHILD = 60 * POUND
CARPET = 0.43 * 25.4
"""ASTM F2057-23 section 9 (from memory, but for the 60 lb): a pull of 10 lbf at a
hand-hold up to 56 in high; 60 lb on an open drawer with the rear raised by 0.43 in as on
carpet."""
RULES = "ASTM F2057-23 as 16 CFR 1261 (test figures from memory)"
ANCHOR = "anti_tip_anchor"
MANY = 10
ANCHORS = 2
"""Least anchors for a unit: one for each of two studs (common practice, no published source)."""
ANCHOR_HOLDS = 50 * POUND_FORCE
"""N that a tip-over restraint has to hold by ASTM F3096, which F2057 asks for (quoted by a
test laboratory)."""
ANCHOR_SOURCE = "anti-tip anchors made to ASTM F3096, 50 lbf each (quoted)"


@dataclass(frozen=True)
class Drawer:
    """A drawer: inside ``width``, ``height`` and ``depth``, ``level`` of its middle above
    the floor, ``extension`` that it comes out, ``mass`` when empty."""

    width: float
    height: float
    depth: float
    level: float
    extension: float
    mass: float = 0.0

    def __post_init__(self) -> None:
        above_zero(
            "drawer", width=self.width, height=self.height, depth=self.depth, level=self.level,
            extension=self.extension,
        )
        if not (math.isfinite(self.mass) and self.mass >= 0):
            raise ClosetError("drawer", "mass", f"{self.mass:g} kg", "must be 0 or more")

    @property
    def filling(self) -> float:
        """Mass of clothes that fill it, kg: 8.5 lb/ft³."""
        return self.width * self.height * self.depth * CLOTHES_DENSITY


@dataclass(frozen=True)
class Leaf:
    """A door on a unit's front: its ``width``, ``level`` of its middle above the floor, mass."""

    width: float
    level: float
    mass: float

    def __post_init__(self) -> None:
        above_zero("door", width=self.width, level=self.level, mass=self.mass)


@dataclass(frozen=True)
class FreeUnit:
    """Something that stands on the floor. ``mass`` empty, drawers included, ``leaves`` not;
    ``foot``: how far the front of its support lies behind its front; ``centre`` and
    ``centre_height`` of its mass with the drawers shut, None for the middle; ``altered``: sawn,
    without its feet or on another base, so that its maker's label and kit hold no more."""

    name: str
    width: float
    depth: float
    height: float
    mass: float
    foot: float = 0.0
    centre: float | None = None
    centre_height: float | None = None
    drawers: tuple[Drawer, ...] = ()
    altered: bool = False
    leaves: tuple[Leaf, ...] = ()

    def __post_init__(self) -> None:
        above_zero(
            self.name, width=self.width, depth=self.depth, height=self.height, mass=self.mass
        )
        if not 0 <= self.foot < self.depth:
            raise ClosetError(
                self.name, "foot", f"{self.foot:g} mm", f"must be 0 to {self.depth:g} mm"
            )
        if self.centre is not None and not 0 < self.centre < self.depth:
            raise ClosetError(
                self.name, "centre", f"{self.centre:g} mm", f"must be within {self.depth:g} mm"
            )
        high = self.centre_height
        if high is not None and not 0 < high < self.height:
            raise ClosetError(
                self.name, "height of its centre", f"{high:g} mm",
                f"must be within {self.height:g} mm",
            )
        drawers = sum(d.mass for d in self.drawers)
        if drawers >= self.mass:
            raise ClosetError(
                self.name, "mass of its drawers", f"{drawers:g} kg",
                f"must be less than the {self.mass:g} kg of the whole",
            )


@dataclass(frozen=True)
class Tip:
    """One way to tip: what turns it over and what holds it back, N·mm."""

    how: str
    overturning: float
    restoring: float

    @property
    def ratio(self) -> float:
        """Restoring over overturning; 1 and more stands."""
        return math.inf if self.overturning <= 0 else self.restoring / self.overturning

    def anchor_force(self, height: float) -> float:
        """N that anchors at a height must hold, 0 where it stands by itself."""
        return max(0.0, self.overturning - self.restoring) / height


@dataclass(frozen=True)
class _Mass:
    kg: float
    y: float
    z: float


def tips(unit: FreeUnit) -> tuple[Tip, ...]:
    """The ways in which the published rules try to tip a unit, without an anchor.

    Every drawer is open at once, as where no interlock keeps them shut, and every door stands
    square to the front.
    """
    filled = _masses(unit, filled=True)
    empty = _masses(unit, filled=False)
    hand = min(unit.height, PULL_HEIGHT)
    out = max((d.extension for d in unit.drawers), default=0.0)
    level = next((d.level for d in unit.drawers if d.extension == out), unit.height / 2)
    doors = "with its doors open" if unit.leaves else ""
    drawers = "with all drawers open and full" if unit.drawers else ""
    drawers = " and ".join(filter(None, (doors, drawers))) or "empty"
    perch = "the front of an open drawer" if unit.drawers else "the front edge of a shelf"
    return (
        _tip(drawers, unit, filled),
        _tip(f"{drawers}, pulled at the edge", unit, filled, pull=PULL * hand),
        _tip(
            f"on carpet, a child on {perch}", unit, [*empty, _Mass(CHILD, -out, level)],
            lift=CARPET,
        ),
    )


def _masses(unit: FreeUnit, filled: bool) -> list[_Mass]:
    y = unit.depth / 2 if unit.centre is None else unit.centre
    z = unit.height / 2 if unit.centre_height is None else unit.centre_height
    found = [_Mass(unit.mass, y, z)]
    for d in unit.drawers:
        # moved out of the closed unit's mass
        found.append(_Mass(-d.mass, d.depth / 2, d.level))
        found.append(_Mass(d.mass, d.depth / 2 - d.extension, d.level))
        if filled:
            found.append(_Mass(d.filling, d.depth / 2 - d.extension, d.level))
    return found + [_Mass(leaf.mass, -leaf.width / 2, leaf.level) for leaf in unit.leaves]


def _tip(
    how: str, unit: FreeUnit, masses: Sequence[_Mass], pull: float = 0.0, lift: float = 0.0
) -> Tip:
    slope = math.asin(min(1.0, lift / (unit.depth - unit.foot)))
    over, back = pull, 0.0
    for m in masses:
        arm = (m.y - unit.foot) * math.cos(slope) - m.z * math.sin(slope)
        turn = m.kg * GRAVITY * arm
        if m.kg < 0 or turn >= 0:
            back += turn
        else:
            over -= turn
    return Tip(how, over - min(back, 0.0), max(back, 0.0))


@dataclass(frozen=True)
class Anchorage:
    """How a unit is fastened: ``count`` fasteners at ``height`` that may hold ``pull`` N
    each; ``text`` says what they are. Without a computed hold ``pull`` is None."""

    count: int
    height: float
    pull: float | None
    text: str


def anchored(tip: Tip, anchorage: Anchorage) -> float:
    """Restoring over overturning with the anchors' allowable hold; 0 where unknown."""
    if anchorage.pull is None or anchorage.count == 0:
        return 0.0
    held = tip.restoring + anchorage.count * anchorage.pull * anchorage.height
    return math.inf if tip.overturning <= 0 else held / tip.overturning


def findings(
    unit: FreeUnit, anchorage: Anchorage, figures: Figures, why_not: str = "",
    masses: tuple[float, float] | None = None,
) -> list[Finding]:
    """What there is to say about a unit that stands by itself until it is fastened.

    ``why_not``: why the hold of its fastening could not be computed; ``masses``: the least
    and the greatest that it may weigh.
    """
    worst = worst_tip(unit)
    after = min(anchored(t, anchorage) for t in tips(unit))
    turns = worst.ratio < 1
    tall = unit.height >= TALL
    value, limit = figures.moment(worst.restoring), figures.moment(worst.overturning)
    need = figures.force(max(t.anchor_force(anchorage.height) for t in tips(unit)))
    before = (
        f"unanchored it tips over {worst.how}" if turns else
        f"unanchored it withstands {_times(worst.ratio)} what turns it over {worst.how}"
    )
    force = f"; the anchors must hold {need}" if turns else ""
    if after >= 1:
        severity = Severity.WARNING if turns or tall else Severity.NOTE
        text = (
            f"{before}{force}: fasten it before anything is put into it, with {anchorage.text}, "
            f"which makes it withstand {_times(after)} of that"
        )
    elif turns or tall:
        severity = Severity.DANGER
        reason = why_not or f"{anchorage.text} would hold {_times(after)} of that"
        text = (
            f"{before}{force}, and how it is fastened is not settled: {reason}. Screw it into "
            "studs or masonry before anything is put into it"
        )
    else:
        severity = Severity.NOTE
        text = f"{before}; fasten it to the wall all the same"
    found = [Finding(
        severity, unit.name, "tipping", f"{text}; {DEFER}",
        f"{RULES}; {_exempt(unit)}", f"holds back {value}", f"turns over {limit}",
        "" if after >= 1 else "anchor it; heavy things low; nothing tempting on top",
        _spread(unit, masses),
    )]
    if unit.altered:
        found.append(Finding(
            Severity.WARNING, unit.name, "altered-furniture",
            "has been altered: its maker's label, its anti-tip kit and its test count no more; it "
            f"is computed as new, and must be anchored; {DEFER}",
            "no standard covers altered furniture; common practice",
        ))
    return found


def worst_tip(unit: FreeUnit) -> Tip:
    """The way in which a unit tips most easily."""
    return min(tips(unit), key=lambda t: t.ratio)


def _spread(unit: FreeUnit, masses: tuple[float, float] | None) -> str:
    if masses is None:
        return ""
    low, high = (_times(worst_tip(replace(unit, mass=m)).ratio) for m in masses)
    return f"{low} to {high}, by the density of its boards"


def _times(ratio: float) -> str:
    return f"more than {MANY} times" if ratio > MANY else f"{ratio:.1f} times"


def _exempt(unit: FreeUnit) -> str:
    if unit.height < TALL:
        return "lower than the 27 in from which the rule applies"
    return "the rule exempts units permanently attached to the building, and only those"


def anchors(unit: FreeUnit, each: float = ANCHOR_HOLDS) -> int:
    """Anti-tip anchors that keep a unit from tipping, each holding ``each`` N at its top."""
    force = max(t.anchor_force(unit.height) for t in tips(unit))
    return max(ANCHORS, math.ceil(force / each - 1e-9))


def anchor_needs(unit: FreeUnit, count: int | None = None) -> HardwareNeed:
    """The anti-tip anchors of a unit that no cleat fastens, as many as the check asks for."""
    return HardwareNeed(ANCHOR, anchors(unit) if count is None else count,
                        f"{unit.name} to the wall")
