"""What is behind the closet, and the screws through a cleat into it.

Only studs of wood are computed. For every other wall the tool says whom to ask. Lengths
mm from the left end of the envelope, forces N.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from closetbench.core.errors import ClosetError
from closetbench.core.findings import Finding, Severity
from closetbench.core.fixings import (
    FASTENERS,
    SCREW_REACH,
    head_pull_through,
    lateral_allowable,
    shortest_screw,
    withdrawal_allowable,
)
from closetbench.core.grades import specific_gravity
from closetbench.core.materials import Catalogue, Material, MaterialKind

DEFER = "local codes and a licensed professional come first"


class WallKind(Enum):
    """What the wall behind the closet is."""

    WOOD_STUDS = "wood studs"
    STEEL_STUDS = "steel studs"
    PLASTER_ON_LATH = "plaster on lath"
    HOLLOW_BLOCK = "hollow block"
    BRICK = "brick"
    CONCRETE = "concrete"


WHOM_TO_ASK = {
    WallKind.STEEL_STUDS: "ask the maker of the anchors for loads in this gauge of steel, or "
    "have plywood or lumber set between the studs behind the cleats",
    WallKind.PLASTER_ON_LATH: "find out what the lath is nailed to, probe for the studs, and "
    "enter them as wood studs; the plaster and the lath carry nothing",
    WallKind.HOLLOW_BLOCK: "ask the maker of the anchors for loads in hollow block",
    WallKind.BRICK: "ask the maker of the anchors for loads in brick; old mortar and perforated "
    "brick hold less",
    WallKind.CONCRETE: "ask the maker of the anchors for loads in concrete",
}
SILICA = (
    "drilling masonry raises silica dust: drill with extraction and wear a respirator (OSHA limit "
    "50 µg/m³, 29 CFR 1926.1153)"
)
STUD_WIDTH = 38.1
"""A stud's face, 1-1/2 in (PS 20)."""
STUD_GRAVITY = 0.42
"""Spruce-pine-fir, NDS Table 12.3.3A (quoted)."""
STUD_REACH = 38.0
"""mm: no screw reaches deeper than a stud laid flat, IRC R602.5: 2x4 flat at 16 in."""
LINING = 15.9
"""mm of plasterboard where nobody has measured it: the thicker of the usual two, 5/8 in."""
AIM = 12.7
"""mm beside a stud's middle that a screw may go astray and still hold."""


@dataclass(frozen=True)
class Wall:
    """The wall behind: ``kind`` None is unknown; ``stud_spacing`` centre to centre and
    ``first_stud``, the middle of the leftmost stud, as surveyed; ``lining``: thickness of
    plasterboard and panelling over the studs."""

    kind: WallKind | None = None
    stud_spacing: float | None = None
    first_stud: float | None = None
    lining: float | None = None

    def __post_init__(self) -> None:
        for name, value, low, high in (
            ("stud spacing", self.stud_spacing, 200.0, 1300.0),
            ("first stud", self.first_stud, 0.0, 20000.0),
            ("lining", self.lining, 0.0, 100.0),
        ):
            if value is not None and not (math.isfinite(value) and low <= value <= high):
                raise ClosetError(
                    "wall", name, f"{value:g} mm", f"must be {low:g} to {high:g} mm"
                )

    @property
    def cover(self) -> float:
        """Thickness over the studs, mm."""
        return LINING if self.lining is None else self.lining


def studs_hit(wall: Wall, spans: Sequence[tuple[float, float]]) -> int:
    """Studs that cleats over these stretches are sure to find.

    With the first stud surveyed: those that lie ``AIM`` or more within a stretch. Without:
    the fewest that there can be, wherever the studs are.
    """
    spacing = wall.stud_spacing
    if spacing is None:
        return 0
    count = 0
    for start, end in spans:
        low, high = start + AIM, end - AIM
        if wall.first_stud is None:
            count += max(0, math.floor((high - low) / spacing + 1e-9))
        elif high >= low:
            first = max(0, math.ceil((low - wall.first_stud) / spacing - 1e-9))
            last = math.floor((high - wall.first_stud) / spacing + 1e-9)
            count += max(0, last - first + 1)
    return count


@dataclass(frozen=True)
class WallScrew:
    """A screw through a cleat into a stud: key in the catalogue, the length that was
    needed, what it reaches into the stud, and what it may hold pulled and sideways, N."""

    key: str
    needed: float
    reach: float
    pull: float
    sideways: float


def wall_screw(wall: Wall, cleat: float, gap: float, catalogue: Catalogue) -> WallScrew | None:
    """The shortest screw of the catalogue through a cleat ``cleat`` mm thick and a gap into
    a stud, 7 diameters deep or more. None where there is none."""
    before = cleat + gap + wall.cover
    best: WallScrew | None = None
    for diameter in sorted({f.diameter for f in FASTENERS.values() if f.diameter >= 4.5}):
        needed = before + SCREW_REACH[0] * diameter
        key = shortest_screw(catalogue.hardware, needed, diameter)
        if key is None:
            continue
        screw = FASTENERS[key]
        reach = min(screw.length - before, STUD_REACH)
        # a third of the length is shank and tip: only thread in the stud counts
        pull = withdrawal_allowable(
            screw.kind, STUD_GRAVITY, screw.diameter, min(reach, screw.length * 2 / 3)
        )
        sideways = lateral_allowable(screw.kind, STUD_GRAVITY, screw.diameter, reach)
        if best is None or screw.length < FASTENERS[best.key].length:
            best = WallScrew(key, needed, reach, pull, sideways)
    return best


WASHER, WASHER_WIDTH = "washer_20", 20.0
"""Key in the catalogue, and mm across, of the washers under the heads."""


def through_board(board: Material) -> float | None:
    """Allowable pull in N of a head on its washer through a board; None where none is
    published, as for particleboard and MDF."""
    if board.kind not in (MaterialKind.PLYWOOD, MaterialKind.LUMBER):
        return None
    return head_pull_through(specific_gravity(board), WASHER_WIDTH, board.thickness)


def wall_findings(wall: Wall, subject: str) -> list[Finding]:
    """What is not known about the wall, and what is hidden in it: once for a closet."""
    return [*_unknown(wall, subject), Finding(
        Severity.WARNING, subject, "wires",
        "cables and pipes run in walls: find them with a detector, switch the circuit off, and "
        f"drive no screw deeper than it needs; {DEFER}",
        "NEC 300.4(A)(1): cables may lie 1-1/4 in (32 mm) behind a stud's face (quoted)",
    )]


def _unknown(wall: Wall, subject: str) -> list[Finding]:
    if wall.kind is None:
        return [Finding(
            Severity.NOT_CHECKED, subject, "wall-unknown",
            "not checked: what the screws hold in, since the wall is not known; find out whether "
            f"it is studs or masonry before you buy screws; {DEFER}",
            fix="enter the kind of wall, and the studs' spacing and place",
        )]
    if wall.kind is not WallKind.WOOD_STUDS:
        masonry = wall.kind in (WallKind.BRICK, WallKind.CONCRETE, WallKind.HOLLOW_BLOCK)
        tail = f"; {SILICA}" if masonry else ""
        return [Finding(
            Severity.NOT_CHECKED, subject, "wall-not-computed",
            f"not checked: what screws hold in {wall.kind.value}: {WHOM_TO_ASK[wall.kind]}; "
            f"{DEFER}{tail}",
        )]
    if wall.stud_spacing is None:
        return [Finding(
            Severity.NOT_CHECKED, subject, "studs-unknown",
            "not checked: how many screws find a stud, since their spacing is not known; find "
            f"them and enter spacing and place; {DEFER}",
            "International Residential Code R602: 16 or 24 in from centre to centre",
        )]
    return []
