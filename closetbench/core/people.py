"""What concerns the people who build and use the closet: reach, lids, light, paint, tools.

Each caution is given once for a closet, where it applies, with its source. Heights in mm
from the floor.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import Enum

from closetbench.core.bench_strength import Bench
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.handling import weight_range
from closetbench.core.materials import Catalogue
from closetbench.core.rods_strength import Rod
from closetbench.core.walls import DEFER


class ChildAge(Enum):
    """Ages of children for whom reach is published."""

    THREE_TO_FOUR = "3 to 4"
    FIVE_TO_EIGHT = "5 to 8"
    NINE_TO_TWELVE = "9 to 12"


CHILD_REACH: Mapping[ChildAge, tuple[float, float]] = {
    ChildAge.THREE_TO_FOUR: (20 * 25.4, 36 * 25.4),
    ChildAge.FIVE_TO_EIGHT: (18 * 25.4, 40 * 25.4),
    ChildAge.NINE_TO_TWELVE: (16 * 25.4, 44 * 25.4),
}
"""Lowest and highest reach, forward or side: 2010 ADA Standards, advisory 308.1."""
CHILD_SOURCE = "2010 ADA Standards, advisory 308.1, children's reach ranges"
SEATED_REACH = (15 * 25.4, 48 * 25.4)
SEATED_SOURCE = "2010 ADA Standards 308.2.1 and 308.3.1; homes are not bound by them"


class Light(Enum):
    """The light in a closet, or the want of one."""

    NONE = "no light"
    SURFACE_ENCLOSED = "surface, enclosed lamp or LED"
    SURFACE_FLUORESCENT = "surface, fluorescent"
    RECESSED_ENCLOSED = "recessed, enclosed lamp or LED"
    RECESSED_FLUORESCENT = "recessed, fluorescent"
    IDENTIFIED = "LED or fluorescent identified for use in closet storage"
    OPEN_LAMP = "open or partly enclosed lamp, or pendant"


LIGHT_CLEARANCE: Mapping[Light, float] = {
    Light.SURFACE_ENCLOSED: 12 * 25.4,
    Light.SURFACE_FLUORESCENT: 6 * 25.4,
    Light.RECESSED_ENCLOSED: 6 * 25.4,
    Light.RECESSED_FLUORESCENT: 6 * 25.4,
    Light.IDENTIFIED: 0.0,
}
"""mm from the nearest storage space, NEC 410.16(C)."""
LIGHT_SOURCE = (
    "NEC 410.16 and the closet storage space of NEC 410.2: 600 mm from sides and back up to "
    "1.8 m or the highest rod, 300 mm or the shelf's depth above"
)

VENT_VOLUME = 31.0
"""litres: 1.1 ft³, the closed space from which ASTM F2598 and F834 care for a child inside."""


@dataclass(frozen=True)
class Level:
    """Something at a height that people reach for."""

    name: str
    height: float


def within_reach(height: float, age: ChildAge) -> bool:
    """Whether a child of that age reaches a height, mm."""
    low, high = CHILD_REACH[age]
    return low - 0.5 <= height <= high + 0.5


def reach_findings(levels: Sequence[Level], figures: Figures) -> list[Finding]:
    """Which levels a seated person cannot reach: one remark."""
    out = [v for v in levels if not SEATED_REACH[0] <= v.height <= SEATED_REACH[1]]
    if not out:
        return []
    top = max(levels, key=lambda v: v.height)
    return [Finding(
        Severity.NOTE, top.name, "reach",
        f"{len(out)} of {len(levels)} shelves and rods lie outside the reach of somebody seated, "
        "the highest as given: keep what is used daily within it",
        SEATED_SOURCE, figures.length(top.height),
        f"{figures.length(SEATED_REACH[0])} to {figures.length(SEATED_REACH[1])}",
        parts=tuple(v.name for v in out),
    )]


def child_findings(
    levels: Sequence[Level], children: Sequence[ChildAge] | None, figures: Figures
) -> list[Finding]:
    """Children's reach, and what they climb. ``children`` None: not known."""
    subject = "children"
    if children is None:
        return [Finding(
            Severity.NOT_CHECKED, subject, "children-unknown",
            "not checked: what children reach and climb; say whether children live or visit here",
            CHILD_SOURCE,
        )]
    if not children:
        return []
    found = [Finding(
        Severity.WARNING, subject, "children-climb",
        "children climb open shelves and drawers like a ladder: fasten everything to the wall "
        "before use, heavy things low, nothing tempting on top, nothing poisonous, sharp or small "
        f"within reach; {DEFER}", "CPSC advice on tip-over",
    )]
    for age in dict.fromkeys(children):
        low, high = CHILD_REACH[age]
        can = tuple(v.name for v in levels if within_reach(v.height, age))
        found.append(Finding(
            Severity.NOTE, subject, "child-reach",
            f"a child of {age.value} years reaches {len(can)} of {len(levels)} shelves and rods",
            CHILD_SOURCE, "", f"{figures.length(low)} to {figures.length(high)}", parts=can,
        ))
    return found


ENTRAPS = (3.5 * 25.4, 9 * 25.4)
"""mm: an opening that lets the wedge block of 16 CFR 1213 in, 3.5 in high and as wide as a
small child's body, must let a 9 in ball through (9 in read; 3.5 in from memory)."""


def entrapment_findings(
    openings: Sequence[Level], children: Sequence[ChildAge] | None, figures: Figures
) -> list[Finding]:
    """Openings (named, with their clear height) in which a small child's head may stick: one
    remark, where children live or visit."""
    stuck = [o for o in openings if ENTRAPS[0] <= o.height < ENTRAPS[1]]
    if not children or not stuck:
        return []
    tight = min(stuck, key=lambda o: o.height)
    how_many = "1 opening is" if len(stuck) == 1 else f"{len(stuck)} openings are"
    return [Finding(
        Severity.NOTE, tight.name, "entrapment",
        f"{how_many} high enough for a small child's body and too low for its head, the lowest "
        f"as given: make what a toddler reaches lower or higher, or close it; {DEFER}",
        "16 CFR 1213, bunk beds, taken as a guide: nothing is published for closets",
        figures.length(tight.height),
        f"none from {figures.length(ENTRAPS[0])} to {figures.length(ENTRAPS[1])}",
        parts=tuple(o.name for o in stuck),
    )]


ROD_HEIGHTS = (1016.0, 2134.0)
"""mm: from the lower rod of a double hang (40 in) to the upper one (84 in), common practice."""


def rod_findings(
    rods: Sequence[Rod], children: Sequence[ChildAge] | None, figures: Figures
) -> list[Finding]:
    """Rods that hang higher or lower than people use them, unless a child does."""
    found = []
    for rod in rods:
        if rod.height is None:
            found.append(Finding(
                Severity.NOT_CHECKED, rod.name, "rod-height",
                "not checked: who reaches it, since its height is not given",
            ))
            continue
        child = any(within_reach(rod.height, age) for age in children or ())
        if not child and not ROD_HEIGHTS[0] <= rod.height <= ROD_HEIGHTS[1]:
            found.append(Finding(
                Severity.NOTE, rod.name, "rod-height",
                "hangs lower or higher than rods usually do (one rod about "
                f"{figures.length(1626.0)} to {figures.length(1676.0)})",
                "Time-Saver Standards; double hang: common practice, no published source",
                figures.length(rod.height),
                f"{figures.length(ROD_HEIGHTS[0])} to {figures.length(ROD_HEIGHTS[1])}",
            ))
    return found


def lid_findings(bench: Bench, catalogue: Catalogue, figures: Figures) -> list[Finding]:
    """What a hinged lid over a closed space can do to a child."""
    if not bench.lid:
        return []
    found = []
    if bench.lid_turns is not None:
        low, high = weight_range(
            bench.lid_turns, catalogue.material(bench.top, subject=bench.name))
        found.append(Finding(
            Severity.NOTE, bench.name, "lid-weight",
            f"nearly shut, its lid's weight turns it down with {figures.moment(bench.lid_turns)}, "
            "and as much more as lies on it: its supports must hold that together at every height; "
            "compare it with what they are made for",
            "statics", figures.moment(bench.lid_turns), "what the supports hold, by their maker",
            spread=f"{figures.moment(low)} to {figures.moment(high)} by the density of its board",
        ))
    if not bench.lid_support:
        found.append(Finding(
            Severity.DANGER, bench.name, "lid-support",
            "the lid can fall on a child leaning in: fit supports that hold it at any height "
            f"without adjustment, or make it a drawer; {DEFER}",
            "ASTM F963 4.27: no drop of more than 1/2 in (12 mm) from 2 in above closed to 60° "
            "(from memory); CPSC: 21 deaths 1973 to 1981",
            fix="lid supports on both sides, no latch, a gap at the hinge under "
            f"{figures.small(4.76)} or over {figures.small(12.7)}",
        ))
    if bench.volume is None:
        found.append(Finding(
            Severity.NOT_CHECKED, bench.name, "lid-air",
            "not checked: whether a child shut in gets air, since the closed volume is not given",
        ))
    elif bench.volume >= VENT_VOLUME and not bench.vents:
        found.append(Finding(
            Severity.DANGER, bench.name, "lid-air",
            "a child shut in gets no air: two openings that no wall, floor or contents can cover, "
            f"and a lid that opens from inside, with no latch; {DEFER}",
            "ASTM F963 4.27: two openings, 2 in² together, 6 in apart, opened with 10 lbf "
            "(from memory, to be checked); ASTM F2598: from 1.1 ft³",
            figures.volume(bench.volume), figures.volume(VENT_VOLUME),
        ))
    return found


def light_findings(
    light: Light | None, clearance: float | None, figures: Figures
) -> list[Finding]:
    """The light's distance from what is stored; ``clearance`` as measured, None unknown."""
    if light is Light.NONE:
        return []
    if light is None or (clearance is None and LIGHT_CLEARANCE.get(light, 0.0) > 0):
        return [Finding(
            Severity.NOT_CHECKED, "light", "light-clearance",
            "not checked: whether a light in the closet keeps clear of what is stored; say what "
            f"light there is and how far it is from the nearest storage space; {DEFER}",
            LIGHT_SOURCE,
        )]
    if light is Light.OPEN_LAMP:
        return [Finding(
            Severity.DANGER, "light", "light-open",
            "open lamps and pendants set clothes on fire and are not allowed in closets: have an "
            f"enclosed one fitted; {DEFER}", "NEC 410.16(B)",
        )]
    need = LIGHT_CLEARANCE[light]
    if clearance is not None and clearance < need:
        return [Finding(
            Severity.DANGER, "light", "light-clearance",
            f"is too near to what is stored: fire; move the shelf or the light; {DEFER}",
            LIGHT_SOURCE, figures.length(clearance), f"at least {figures.length(need)}",
        )]
    return []


def room_findings(outlets: bool | None, old_paint: bool | None) -> list[Finding]:
    """Outlets behind the closet, and paint from before 1978."""
    found = []
    outlet_source = "NEC 314.29 (quoted) and 240.24(D)"
    if outlets is None:
        found.append(Finding(
            Severity.NOT_CHECKED, "room", "outlets",
            "not checked: whether the closet covers outlets, junction boxes, registers or alarms; "
            f"look before you fasten it; {DEFER}", outlet_source,
        ))
    elif outlets:
        found.append(Finding(
            Severity.WARNING, "room", "outlets",
            "outlets and boxes must stay within reach, no breaker panel may be in a clothes "
            "closet, and no register or alarm may be covered: cut the back out around them, or "
            f"have them moved; {DEFER}", outlet_source,
        ))
    paint_source = "EPA 40 CFR 745 (renovation, repair and painting); 16 CFR 1303"
    if old_paint is None:
        found.append(Finding(
            Severity.NOT_CHECKED, "room", "old-paint",
            "not checked: whether walls, trim or a reused piece carry paint from before 1978, "
            f"which may hold lead; {DEFER}", paint_source,
        ))
    elif old_paint:
        found.append(Finding(
            Severity.DANGER, "room", "old-paint",
            "paint from before 1978 may hold lead: have it tested before you sand, saw, scrape or "
            "heat it; keep children away; in a home that is let, certified firms only above 6 ft² "
            f"a room; {DEFER}", paint_source,
        ))
    return found


def work_findings(boards: bool, grooves: bool) -> list[Finding]:
    """Dust, saw and router: for whoever cuts the parts."""
    found = []
    if boards:
        found.append(Finding(
            Severity.NOTE, "work", "dust",
            "wood and board dust harms lungs and may cause cancer: extraction at the tool, a "
            "respirator, sweep nothing dry; resin boards give off formaldehyde: air the room",
            "OSHA 5 mg/m³ respirable, 15 mg/m³ total; NIOSH 1 mg/m³",
        ))
        found.append(Finding(
            Severity.NOTE, "work", "saw",
            "saw with the sheet held on both sides of the cut so that the kerf cannot close, the "
            "guard and the riving knife on, the blade just through, push sticks, nobody in line "
            "with the blade; eyes and ears protected; unplug before changing a blade; the saw's "
            "own manual comes first", "OSHA 29 CFR 1910.213",
        ))
    if grooves:
        found.append(Finding(
            Severity.NOTE, "work", "router",
            "rout with panel and straightedge clamped, against the bit's turn, in passes no deeper "
            "than half the bit's diameter; let the bit stop before you lift it; eyes and ears "
            "protected; the router's own manual comes first",
            "common practice, no published source",
        ))
    return found
