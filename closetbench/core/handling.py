"""Weights, and how many people it takes to lift them.

Masses kg, lengths mm. The lifting equation is NIOSH's revised one (publication 94-110):
two hands, a steady load, no carrying.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from enum import Enum

from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.materials import Catalogue, Material, MaterialKind
from closetbench.core.parts import Part

LOAD_CONSTANT = 23.0
"""kg: the most for one person under the best conditions, NIOSH 94-110."""
TWO_PEOPLE = 2 * LOAD_CONSTANT * 2 / 3
THREE_PEOPLE = 3 * LOAD_CONSTANT / 2
"""A team lifts two thirds (two) or half (three) of what its members could alone, HSE
guidance L23 (quoted)."""
LONG, LARGE = 1500.0, 1.5e6
"""mm and mm²: beyond both a panel takes two people whatever it weighs (common practice)."""
SOURCE = "NIOSH 94-110, load constant; team lifting: HSE L23 (quoted)"

DENSITIES: Mapping[MaterialKind, tuple[float, float, str]] = {
    MaterialKind.MELAMINE: (640, 800, "ANSI A208.1 class M"),
    MaterialKind.MDF: (680, 800, "mill sheets"),
    MaterialKind.PLYWOOD: (400, 700, "Wood Handbook FPL-GTR-282 Table 12-1; birch mill sheets"),
    MaterialKind.HARDBOARD: (900, 1000, "Wood Handbook FPL-GTR-282 Table 12-1 (from memory)"),
    MaterialKind.LUMBER: (390, 665, "Wood Handbook FPL-GTR-282 Table 5-3b, softwoods"),
}
"""Least and greatest density published for boards of a kind, kg/m³."""

CARRYING = (
    "carry it upright between two, one hand under the lower edge and one on top, in gloves, and "
    "not in wind; stand it steeply against a wall, and chock it; or have it cut to the strips that "
    "you need where you buy it"
)


class Grip(Enum):
    """How well a load can be gripped: the coupling multiplier below and above 750 mm."""

    GOOD = (1.0, 1.0)
    FAIR = (0.95, 1.0)
    POOR = (0.90, 0.90)


def recommended_weight(
    reach: float, height: float, travel: float, grip: Grip,
    twist: float = 0.0, frequency: float = 1.0,
) -> float:
    """Recommended weight limit in kg by NIOSH 94-110.

    ``reach``: hands in front of the ankles; ``height`` of the hands at the start;
    ``travel`` up or down, mm; ``twist`` in degrees; ``frequency``: multiplier of its table,
    1 for a lift now and then. A reach under 250 mm and a travel under 250 mm count as 250.
    Raises ``ClosetError`` outside the equation's range.
    """
    for name, value, low, high in (
        ("reach", reach, 0.0, 630.0), ("height of the hands", height, 0.0, 1750.0),
        ("travel", travel, 0.0, 1750.0), ("twist", twist, 0.0, 135.0),
        ("frequency multiplier", frequency, 0.0, 1.0),
    ):
        if not low <= value <= high:
            raise ClosetError("lift", name, f"{value:g}", f"must be {low:g} to {high:g}")
    h, v, d = max(reach, 250.0) / 10, height / 10, max(travel, 250.0) / 10
    coupling = grip.value[0] if height < 750 else grip.value[1]
    return (
        LOAD_CONSTANT * (25 / h) * (1 - 0.003 * abs(v - 75)) * (0.82 + 4.5 / d)
        * (1 - 0.0032 * twist) * frequency * coupling
    )


AWKWARD = recommended_weight(400.0, 700.0, 400.0, Grip.POOR)
"""kg for a sheet held flat: hands 400 mm ahead, from 700 mm up by 400 mm, a poor grip."""


def part_weight(part: Part, catalogue: Catalogue) -> float:
    """Weight of a finished part in kg, machining taken off."""
    return part.panel.volume * catalogue.material(part.panel.material).density * 1e-9


def people(mass: float) -> int:
    """How many it takes to lift a mass, 4 for more than three can."""
    if mass <= LOAD_CONSTANT:
        return 1
    return 2 if mass <= TWO_PEOPLE else 3 if mass <= THREE_PEOPLE else 4


def _band(mass: float) -> str:
    count = people(mass)
    if count == 2:
        return "takes two people"
    if count == 3:
        return "takes three people"
    return "is more than three people should lift by hand"


def weight_range(mass: float, board: Material) -> tuple[float, float]:
    """The mass at the least and at the greatest density published for the board's kind."""
    low, high, _ = DENSITIES[board.kind]
    return mass * min(low / board.density, 1.0), mass * max(high / board.density, 1.0)


def part_findings(
    masses: Sequence[tuple[Part, float]], catalogue: Catalogue, figures: Figures
) -> list[Finding]:
    """Parts that one person should not lift: one finding for each number of people."""
    found: list[Finding] = []
    groups: dict[str, list[tuple[Part, float]]] = {}
    large: list[Part] = []
    for part, mass in masses:
        p = part.panel
        if mass > LOAD_CONSTANT:
            groups.setdefault(_band(mass), []).append((part, mass))
        elif p.length > LONG and p.length * p.width > LARGE:
            large.append(part)
    for text, group in groups.items():
        part, mass = max(group, key=lambda pair: pair[1])
        low, high = weight_range(mass, catalogue.material(part.panel.material))
        more = f", as do {len(group) - 1} others" if len(group) > 1 else ""
        found.append(Finding(
            Severity.WARNING, part.full_name, "heavy-part", f"{text}{more}", SOURCE,
            figures.mass(mass), figures.mass(LOAD_CONSTANT), f"{CARRYING}; or build it in place",
            f"{figures.mass(low)} to {figures.mass(high)} by density",
            tuple(p.full_name for p, _ in group),
        ))
    if large:
        part = max(large, key=lambda p: p.panel.length * p.panel.width)
        found.append(Finding(
            Severity.WARNING, part.full_name, "large-part",
            "is too long and wide for one person to handle, though not too heavy",
            "common practice, no published source",
            f"{figures.length(part.panel.length)} x {figures.length(part.panel.width)}",
            f"longer than {figures.length(LONG)} and larger than {figures.area(LARGE)}", CARRYING,
            parts=tuple(p.full_name for p in large),
        ))
    awkward = [p.full_name for p, mass in masses if AWKWARD < mass <= LOAD_CONSTANT]
    if awkward:
        weigh = "1 part weighs" if len(awkward) == 1 else f"{len(awkward)} parts weigh"
        found.append(Finding(
            Severity.NOTE, awkward[0], "awkward-part",
            f"{weigh} more than one person should lift flat at arm's length: carry them upright "
            "and close, or by two",
            f"NIOSH 94-110, hands {figures.length(400.0)} ahead, {figures.length(700.0)} up, "
            "poor grip", "",
            figures.mass(AWKWARD), parts=tuple(awkward),
        ))
    return found


def carcass_finding(
    name: str, mass: float, masses: tuple[float, float], figures: Figures
) -> Finding | None:
    """What an assembled carcass weighs, where that is more than one person may lift;
    ``masses``: the least and the greatest that it may weigh."""
    if mass <= LOAD_CONSTANT:
        return None
    return Finding(
        Severity.WARNING if people(mass) > 2 else Severity.NOTE, name, "heavy-carcass",
        f"assembled it {_band(mass)}: assemble it where it stands, or tip it up with help, never "
        "alone", SOURCE, figures.mass(mass), figures.mass(LOAD_CONSTANT),
        spread=f"{figures.mass(masses[0])} to {figures.mass(masses[1])} by the density of its "
        "boards",
    )


def sheet_findings(keys: Sequence[str], catalogue: Catalogue, figures: Figures) -> list[Finding]:
    """Whole sheets that one person should not carry: one finding for each board, of the lightest
    size that is too heavy, with the heaviest beside it."""
    found = []
    for key in dict.fromkeys(keys):
        board = catalogue.material(key)
        sizes = sorted((board.weight(s.length, s.width), s.length, s.width) for s in board.sheets)
        heavy = [size for size in sizes if size[0] > LOAD_CONSTANT]
        if not heavy:
            continue
        mass, length, width = heavy[0]
        low, high = weight_range(mass, board)
        size = f" of {figures.length(length)} x {figures.length(width)}" if len(sizes) > 1 else ""
        more = ""
        if len(heavy) > 1:
            more = f"; the heaviest that it is sold as weighs {figures.mass(heavy[-1][0])}"
        found.append(Finding(
            Severity.WARNING, board.title, "heavy-sheet",
            f"a whole sheet{size} {_band(mass)}{more}", SOURCE, figures.mass(mass),
            figures.mass(LOAD_CONSTANT), CARRYING,
            f"{figures.mass(low)} to {figures.mass(high)} by density ({DENSITIES[board.kind][2]})",
        ))
    return found
