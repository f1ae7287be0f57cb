"""Hanging rods: sag and strength of tubes and wooden poles under clothes.

A rod is a simply supported beam over each of its spans: pockets and flanges hold its ends
hardly more than that. Lengths mm, loads kg/m, stresses N/mm².
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from enum import Enum

from closetbench.core.bars import BarClass
from closetbench.core.beams import Section, above_zero, circle, deflection, longest, moment, tube
from closetbench.core.errors import ClosetError
from closetbench.core.figures import GRAVITY, Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.fixings import FASTENERS, board_lateral
from closetbench.core.grades import NINETY_PERCENT
from closetbench.core.handling import DENSITIES
from closetbench.core.loads import (
    ROD_LEAST_METAL,
    ROD_LEAST_WOOD,
    ROD_LONGEST,
    ROD_SERVICE,
    ROD_SPAN_OVER,
    ROD_TEST,
)
from closetbench.core.materials import Catalogue


class RodKind(Enum):
    """What a rod is made of."""

    STEEL = "steel tube"
    ALUMINIUM = "aluminium tube"
    PINE = "pine pole"
    OAK = "oak pole"

    @property
    def is_wood(self) -> bool:
        """Whether it is a solid wooden pole."""
        return self in (RodKind.PINE, RodKind.OAK)


@dataclass(frozen=True)
class RodGrade:
    """E and G, bending stress allowed for years and what it is a share of (mean strength of
    clear wood, yield of metal), N/mm²; coefficient of variation of E; density, kg/m³."""

    e: float
    g: float
    allowed: float
    mean: float
    cov: float
    density: float
    source: str


CLEAR_WOOD = (1 - NINETY_PERCENT * 0.16) / 2.1
"""Share of the mean strength of clear wood that may be used: ASTM D245 divides the weakest
twentieth (coefficient of variation 16 %) by 2.1 (from memory)."""

GRADES: Mapping[RodKind, RodGrade] = {
    RodKind.STEEL: RodGrade(
        200e3, 77e3, 205 / 1.67, 205, 0.0, 7850,
        "steel: E 200 GPa; yield of soft tube 205 N/mm² over 1.67 (from memory)",
    ),
    RodKind.ALUMINIUM: RodGrade(
        69e3, 26e3, 110 / 1.95, 110, 0.0, 2700,
        "aluminium 6063-T5: E 69 GPa; least yield 110 N/mm² (quoted) over 1.95 (from memory)",
    ),
    RodKind.PINE: RodGrade(
        8890, 8890 / 16, 64.8 * CLEAR_WOOD, 64.8, 0.22, 450,
        "ponderosa pine: Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (from memory)",
    ),
    RodKind.OAK: RodGrade(
        12550, 12550 / 16, 98.6 * CLEAR_WOOD, 98.6, 0.22, 700,
        "northern red oak: Wood Handbook FPL-GTR-282 Table 5-3b, ASTM D245 (from memory)",
    ),
}
SUPPORT_SCREW, SUPPORT_SCREWS, SUPPORT_PLATE = "screw_35x16", 2, 1.5
"""Screws of a support, how many, and what of their length its plate takes, mm (common
practice, no published source)."""
ROD_SOURCE = "Architectural Woodwork Standards, edition 1 (2009), 4.4.16"


@dataclass(frozen=True)
class Rod:
    """A rod as planned: ``span`` between its outer supports, ``supports`` between them,
    ``wall`` of a tube, ``height`` above the floor (None: not known), ``load`` of clothes;
    ``holder``: key of the board that its supports are screwed to (None: not known)."""

    name: str
    kind: RodKind
    diameter: float
    span: float
    wall: float | None = None
    supports: int = 0
    height: float | None = None
    load: float = ROD_SERVICE
    holder: str | None = None

    def __post_init__(self) -> None:
        above_zero(self.name, diameter=self.diameter, span=self.span, load=self.load)
        if self.supports < 0:
            raise ClosetError(self.name, "supports", self.supports, "must be 0 or more")
        if not self.kind.is_wood and self.wall is None:
            raise ClosetError(
                self.name, "wall", "missing", f"must be given: a {self.kind.value} is hollow"
            )

    @property
    def clear(self) -> float:
        """The distance from one support to the next, mm."""
        return self.span / (self.supports + 1)


@dataclass(frozen=True)
class RodResult:
    """Sag (mm), its range over the scatter of E, the limit; stress under the load and what
    is allowed; ``test``: stress under the load of furniture tests; ``longest``: longest
    span that passes; ``support``: N on a support between two spans, or at an end."""

    sag: float
    soft: float
    stiff: float
    limit: float
    stress: float
    test: float
    allowed: float
    longest: float
    support: float


def bar_weight(bar: BarClass, length: float) -> float:
    """kg of a length of a bar, mm, by the density that its strength is reckoned with."""
    return length * 1e-3 * _per_metre(RodKind(bar.kind), bar.diameter, bar.wall)


def _per_metre(kind: RodKind, diameter: float, wall: float) -> float:
    inside = 0.0 if kind.is_wood else diameter - 2 * wall
    return math.pi / 4 * (diameter**2 - inside**2) * GRADES[kind].density * 1e-6


def section(rod: Rod, factor: float = 1.0) -> Section:
    """The rod's section, its E times ``factor``."""
    g = GRADES[rod.kind]
    if rod.kind.is_wood:
        return circle(rod.diameter, g.e * factor, g.g * factor)
    assert rod.wall is not None
    return tube(rod.diameter, rod.wall, g.e * factor, g.g * factor)


def check(rod: Rod) -> RodResult:
    """Sag and strength of one span, its own weight included in the stress."""
    found, bar = GRADES[rod.kind], section(rod)
    half = NINETY_PERCENT * found.cov
    own = _per_metre(rod.kind, rod.diameter, rod.wall or 0.0)

    def force(span: float, kg_per_m: float) -> float:
        return kg_per_m * GRAVITY * span / 1000

    def stress(span: float, kg_per_m: float) -> float:
        return bar.stress(moment(span, force(span, kg_per_m + own)))

    def ratio(span: float) -> float:
        sag = deflection(bar, span, force(span, rod.load))
        return max(sag * ROD_SPAN_OVER / span, stress(span, rod.load) / found.allowed)

    load = force(rod.clear, rod.load)
    return RodResult(
        deflection(bar, rod.clear, load),
        deflection(section(rod, 1 - half), rod.clear, load),
        deflection(section(rod, 1 + half), rod.clear, load),
        rod.clear / ROD_SPAN_OVER,
        stress(rod.clear, rod.load), stress(rod.clear, max(ROD_TEST, rod.load)), found.allowed,
        min(longest(ratio, 1.0, 6000.0) or 0.0, ROD_LONGEST),
        load if rod.supports else load / 2,
    )


def findings(rod: Rod, catalogue: Catalogue, figures: Figures) -> Iterable[Finding]:
    """What there is to say about a rod."""
    result, grade = check(rod), GRADES[rod.kind]
    need = math.ceil(rod.span / result.longest - 1e-9) - 1 if result.longest else 0
    fix = (
        f"supports at most {figures.length(math.floor(result.longest))} apart: {need} between the "
        "ends" if need > rod.supports else ""
    )
    load = f"{figures.on_length(rod.load)} of clothes"
    reserve = (
        f"allowed for the weakest twentieth; clear wood bears {figures.stress(grade.mean)} on "
        "average in a short test" if rod.kind.is_wood else
        f"allowed for the least yield of its grade, {figures.stress(grade.mean)}"
    )
    if result.stress > result.allowed:
        falls = result.stress > grade.mean
        yield Finding(
            Severity.DANGER if falls else Severity.WARNING, rod.name, "rod-strength",
            f"{'bends for good or breaks' if falls else 'has too little reserve'} under {load}",
            grade.source,
            figures.stress(result.stress), figures.stress(result.allowed), fix, reserve,
        )
    elif result.test > result.allowed:
        yield Finding(
            Severity.WARNING, rod.name, "rod-overload",
            f"has no reserve for the {figures.on_length(ROD_TEST)} that furniture tests hang on "
            "rails", f"{grade.source}; EN 14749 (from memory)",
            figures.stress(result.test), figures.stress(result.allowed), fix, reserve,
        )
    least = ROD_LEAST_WOOD if rod.kind.is_wood else ROD_LEAST_METAL
    if rod.diameter < least - 0.05:
        yield Finding(
            Severity.WARNING, rod.name, "rod-diameter", "is thinner than rods are made",
            ROD_SOURCE, figures.small(rod.diameter), f"at least {figures.small(least)}",
        )
    if rod.clear > ROD_LONGEST + 0.5:
        yield Finding(
            Severity.WARNING, rod.name, "rod-supports", "lies too far between its supports",
            ROD_SOURCE, figures.length(rod.clear), figures.length(ROD_LONGEST), fix,
        )
    too_much = result.sag > result.limit
    spread = f"{figures.small_range(result.stiff, result.soft)}" if grade.cov else (
        "E of metal hardly scatters")
    yield Finding(
        Severity.WARNING if too_much else Severity.NOTE, rod.name, "rod-sag",
        f"{'sags too much:' if too_much else 'sags'} {figures.small(result.sag)} under {load}",
        f"{grade.source}; load and limit: common practice, no published source",
        figures.small(result.sag), figures.small(result.limit),
        fix or f"passes to {figures.length(math.floor(result.longest))} between supports", spread,
    )
    yield _screws(rod, result, catalogue, figures)


def _screws(rod: Rod, result: RodResult, catalogue: Catalogue, figures: Figures) -> Finding:
    """The screws of a support, sideways in the panel that they are in."""
    screw = FASTENERS[SUPPORT_SCREW]
    text = (
        f"the screws of its supports, each of which carries up to {figures.force(result.support)}"
    )
    advice = (
        "use every hole of the support, screws that bite at least two thirds of the panel, and "
        "through the panel into a stud or a cleat where you can"
    )
    try:
        if rod.holder is None:
            raise ClosetError(rod.name, "panel", "unknown", "say which board they are in")
        board = catalogue.material(rod.holder, subject=rod.name)
        depth = min(screw.length - SUPPORT_PLATE, board.thickness - 2.0)
        each, source = board_lateral(board, screw, depth)
        low, high = (board_lateral(board, screw, depth, density=d)[0]
                     for d in DENSITIES[board.kind][:2])
    except ClosetError as error:
        return Finding(
            Severity.NOT_CHECKED, rod.name, "rod-screws",
            f"not checked: {text}: {error.limit}; {advice}",
            "no published formula for screws loaded sideways in such boards",
            figures.force(result.support),
        )
    held = SUPPORT_SCREWS * each
    holds = result.support <= held
    return Finding(
        Severity.NOTE if holds else Severity.WARNING, rod.name, "rod-screws",
        f"{text}, {SUPPORT_SCREWS} x {catalogue.item(SUPPORT_SCREW).title} in "
        f"{board.title}{'' if holds else ', may work loose'}", source,
        figures.force(result.support), figures.force(held),
        "" if holds else f"{advice}; or one support more",
        f"{figures.force(SUPPORT_SCREWS * min(low, each))} to "
        f"{figures.force(SUPPORT_SCREWS * max(high, each))} by the density published for the board",
    )
