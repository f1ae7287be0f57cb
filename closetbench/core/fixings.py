"""Screws and nails: what holds them in wood and in boards, and what holds in which wall.

Diameters and lengths mm, forces N, ``gravity`` is the specific gravity (oven-dry weight
over volume). "Ultimate" is what pulls a fastener out in tests; "allowable" is what it may
be given to carry. The ultimate loads are the Wood Handbook's formulas (chapter on
fastenings, constants from memory; their inch and metric forms agree to 0.1 %); the
allowable ones are those of the NDS, which are fixed shares of the handbook's.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum

from closetbench.core.beams import above_zero
from closetbench.core.errors import ClosetError
from closetbench.core.grades import specific_gravity
from closetbench.core.materials import Material, MaterialKind

HANDBOOK = "Wood Handbook FPL-GTR-190 chapter 8 (from memory)"
NDS_SCREW = "NDS 12.2.2: 2850·G²·D lb per inch of thread, not in end grain"
NDS_NAIL = "NDS 12.2.3: 1380·G^2.5·D lb per inch (quoted), not in end grain"
NDS_LATERAL = "allowable lateral load, older NDS: screws C·D², nails C·D^1.5, end grain 2/3"
LATERAL_SHARE = 0.75
"""Allowable lateral load over the handbook's at 0.38 mm slip: in every group of species the
C of the older NDS (4,800, 3,960, 3,240, 2,520) is three quarters of the handbook's K."""
SCREW_REACH = (7.0, 4.0)
"""Diameters that a screw reaches into the piece with its point for its full lateral load, and
for any."""
NAIL_REACH = ((0.57, 10.0), (0.48, 11.0), (0.43, 13.0), (0.0, 14.0))
"""Least specific gravity of a group of species and the diameters that a nail must reach in for
its full lateral load; under a third of that it carries nothing (older NDS, read in a
formulary)."""


class FastenerKind(Enum):
    """Kinds of fastener that the handbook has formulas for."""

    SCREW = "screw"
    NAIL = "nail"


SAFETY: Mapping[FastenerKind, float] = {
    FastenerKind.SCREW: 15_700 / 2_850, FastenerKind.NAIL: 7_850 / 1_380,
}
"""Ultimate withdrawal by the handbook over allowable by the NDS. That of screws is taken for
boards too, for which none is published (common practice)."""


@dataclass(frozen=True)
class Fastener:
    """A fastener: shank diameter and length."""

    kind: FastenerKind
    diameter: float
    length: float

    def __post_init__(self) -> None:
        above_zero(self.kind.value, diameter=self.diameter, length=self.length)


FASTENERS: Mapping[str, Fastener] = {
    "screw_35x16": Fastener(FastenerKind.SCREW, 3.5, 16),
    "screw_4x20": Fastener(FastenerKind.SCREW, 4.0, 20),
    "screw_4x25": Fastener(FastenerKind.SCREW, 4.0, 25),
    "screw_4x30": Fastener(FastenerKind.SCREW, 4.0, 30),
    "screw_4x40": Fastener(FastenerKind.SCREW, 4.0, 40),
    "screw_4x50": Fastener(FastenerKind.SCREW, 4.0, 50),
    "screw_5x70": Fastener(FastenerKind.SCREW, 5.0, 70),
    "screw_5x90": Fastener(FastenerKind.SCREW, 5.0, 90),
    "screw_6x100": Fastener(FastenerKind.SCREW, 6.0, 100),
    "screw_no8_1_1_4": Fastener(FastenerKind.SCREW, 0.164 * 25.4, 1.25 * 25.4),
    "screw_no8_2": Fastener(FastenerKind.SCREW, 0.164 * 25.4, 2 * 25.4),
    "screw_no10_3": Fastener(FastenerKind.SCREW, 0.190 * 25.4, 3 * 25.4),
    "nail_16x25": Fastener(FastenerKind.NAIL, 1.6, 25),
    "nail_18x40": Fastener(FastenerKind.NAIL, 1.8, 40),
    "nail_20x50": Fastener(FastenerKind.NAIL, 2.0, 50),
}
"""The catalogue's fasteners. Shank diameters of No. 8 and No. 10: 0.164 and 0.190 in."""


def withdrawal(kind: FastenerKind, gravity: float, diameter: float, depth: float) -> float:
    """Ultimate withdrawal in N from side grain, ``depth`` of thread in the wood: screws
    108.25·G²·D·L, nails 54.12·G^2.5·D·L."""
    above_zero("withdrawal", specific_gravity=gravity, diameter=diameter, depth=depth)
    if kind is FastenerKind.SCREW:
        return 108.25 * gravity**2 * diameter * depth
    return 54.12 * math.pow(gravity, 2.5) * diameter * depth


def withdrawal_allowable(
    kind: FastenerKind, gravity: float, diameter: float, depth: float
) -> float:
    """Allowable withdrawal from side grain, N: the ultimate over ``SAFETY``, which is
    19.65·G²·D·L for screws and 9.51·G^2.5·D·L for nails (NDS 12.2)."""
    return withdrawal(kind, gravity, diameter, depth) / SAFETY[kind]


def head_pull_through(gravity: float, head: float, thickness: float) -> float:
    """Allowable pull in N of a round head or washer ``head`` mm wide through wood or plywood:
    4.757·π·D_H·G²·t, t at most 2.5·D_H (NDS 2018 eq. 12.2-6, 690 and 1725 lb/in², quoted)."""
    above_zero("head", specific_gravity=gravity, head=head, thickness=thickness)
    return 4.757 * math.pi * head * gravity**2 * min(thickness, 2.5 * head)


LATERAL_K: Mapping[FastenerKind, tuple[tuple[bool, float, float, float], ...]] = {
    FastenerKind.NAIL: (
        (False, 0.29, 0.42, 50.04), (False, 0.43, 0.47, 62.55), (False, 0.48, 0.52, 76.45),
        (True, 0.33, 0.47, 50.04), (True, 0.48, 0.56, 69.50), (True, 0.57, 0.74, 94.52),
    ),
    FastenerKind.SCREW: (
        (False, 0.29, 0.42, 23.17), (False, 0.43, 0.47, 29.79), (False, 0.48, 0.52, 36.40),
        (True, 0.33, 0.47, 23.17), (True, 0.48, 0.56, 31.99), (True, 0.57, 0.74, 44.13),
    ),
}
"""Lateral coefficients: hardwood, least and greatest specific gravity, K for N and mm."""


def lateral_k(kind: FastenerKind, gravity: float, hardwood: bool = False) -> float:
    """The handbook's lateral coefficient; ``ClosetError`` where the wood is not tabulated.

    Between two rows the lighter wood's is taken.
    """
    rows = [row for row in LATERAL_K[kind] if row[0] is hardwood]
    fitting = [k for _, low, _, k in rows if gravity >= low]
    if not fitting or gravity > rows[-1][2] + 0.005:
        raise ClosetError(
            kind.value, "specific gravity", f"{gravity:.2f}",
            f"must be {rows[0][1]} to {rows[-1][2]} for the table of lateral loads",
        )
    return fitting[-1]


def lateral(kind: FastenerKind, gravity: float, diameter: float, hardwood: bool = False) -> float:
    """Lateral load in N at a slip of 0.38 mm in side grain: K·D^1.5 for nails, K·D² else."""
    above_zero("lateral load", specific_gravity=gravity, diameter=diameter)
    power = 1.5 if kind is FastenerKind.NAIL else 2.0
    return lateral_k(kind, gravity, hardwood) * math.pow(diameter, power)


def lateral_allowable(
    kind: FastenerKind, gravity: float, diameter: float, depth: float, end_grain: bool = False
) -> float:
    """Allowable lateral load, N: ``LATERAL_SHARE`` of the handbook's, in proportion where the
    fastener reaches less deep than ``SCREW_REACH`` or ``NAIL_REACH``, nothing where it reaches
    too little; two thirds in end grain. Woods heavier than softwoods of the table count as
    hardwoods."""
    above_zero("lateral load", specific_gravity=gravity, diameter=diameter, depth=depth)
    if kind is FastenerKind.SCREW:
        full, least = SCREW_REACH
    else:
        full = next(n for low, n in NAIL_REACH if gravity >= low)
        least = full / 3
    if depth < least * diameter:
        return 0.0
    value = LATERAL_SHARE * lateral(kind, gravity, diameter, hardwood=gravity > 0.525)
    return value * min(1.0, depth / (full * diameter)) * (2 / 3 if end_grain else 1.0)


def particleboard_withdrawal(
    gravity: float, diameter: float, depth: float, edge: bool = False
) -> float:
    """Ultimate withdrawal of a screw from particleboard, N:
    K·D^½·(L − D/3)^1.25·G², K 41.1 from a face and 31.8 from an edge (Eckelman 1975, as in
    the Wood Handbook)."""
    above_zero("withdrawal", specific_gravity=gravity, diameter=diameter, depth=depth)
    held = max(depth - diameter / 3, 0.0)
    return (31.8 if edge else 41.1) * math.sqrt(diameter) * math.pow(held, 1.25) * gravity**2


MDF_FACE, MDF_EDGE = 1335.0, 1000.0
"""N, least screw holding of MDF grade MD above 21 mm, ANSI A208.2-2002 (from memory): the
lowest row of the grade, for a No. 10 screw."""
TEST_DIAMETER = 0.190 * 25.4
TEST_DEPTH = 17.0
"""mm: depth of the screw in the test (ASTM D1037, from memory)."""


def board_withdrawal(
    board: Material, fastener: Fastener, depth: float, edge: bool = False,
    density: float | None = None,
) -> tuple[float, str]:
    """Allowable withdrawal from a board in N, and its source.

    ``density`` (kg/m³) takes another than the catalogue's. Particleboard: ultimate over
    ``SAFETY``. MDF: its standard's least screw holding, less for a thinner or shallower
    screw, over ``SAFETY``. Plywood and wood: the NDS formulas, from an edge three quarters
    (FPL survey: 75 to 80 % of the face). Raises ``ClosetError`` for hardboard and for nails
    in boards, where nothing is published.
    """
    diameter, kind = fastener.diameter, fastener.kind
    above_zero(board.title, diameter=diameter, depth=depth)
    gravity = specific_gravity(board, density)
    solid = board.kind in (MaterialKind.PLYWOOD, MaterialKind.LUMBER)
    if board.kind is MaterialKind.HARDBOARD or (kind is FastenerKind.NAIL and not solid):
        raise ClosetError(
            board.title, f"{kind.value}s", board.kind.value,
            f"no withdrawal is published; take no {kind.value}'s hold",
        )
    if board.kind is MaterialKind.MELAMINE:
        ultimate = particleboard_withdrawal(gravity, diameter, depth, edge)
        return ultimate / SAFETY[kind], f"particleboard: {HANDBOOK}"
    if board.kind is MaterialKind.MDF:
        least = MDF_EDGE if edge else MDF_FACE
        share = min(1.0, diameter / TEST_DIAMETER) * min(1.0, depth / TEST_DEPTH)
        return (
            least * share / SAFETY[kind], "MDF: ANSI A208.2 least screw holding (from memory)"
        )
    value = withdrawal_allowable(kind, gravity, diameter, depth)
    source = NDS_SCREW if kind is FastenerKind.SCREW else NDS_NAIL
    return value * (0.75 if edge else 1.0), source


def board_lateral(
    board: Material, fastener: Fastener, depth: float, end: bool = False,
    density: float | None = None,
) -> tuple[float, str]:
    """Allowable lateral load of a fastener with its point in a board, N, and its source.

    ``ClosetError`` for particleboard, MDF and hardboard: no formula is published that covers
    so little depth (EN 1995-1-1 8.3.1.2 asks for 6 to 8 diameters behind the face).
    """
    if board.kind not in (MaterialKind.PLYWOOD, MaterialKind.LUMBER):
        raise ClosetError(
            board.title, f"{fastener.kind.value}s", "loaded sideways",
            "no formula is published for this board; glue the joint, let the shelf into grooves, "
            "or test a corner",
        )
    gravity = specific_gravity(board, density)
    return lateral_allowable(
        fastener.kind, gravity, fastener.diameter, depth, end), NDS_LATERAL


def shortest_screw(keys: Mapping[str, object], needed: float, least: float = 0.0) -> str | None:
    """Key of the shortest screw of the catalogue that is ``needed`` mm long and ``least``
    mm thick or more; None where there is none."""
    fitting = [
        (f.length, f.diameter, key) for key, f in FASTENERS.items()
        if key in keys and f.kind is FastenerKind.SCREW
        and f.length >= needed - 1e-6 and f.diameter >= least - 1e-6
    ]
    return min(fitting)[2] if fitting else None


def longest_screw(keys: Mapping[str, object], most: float, widest: float) -> str | None:
    """Key of the longest screw of the catalogue that is no longer than ``most`` and no
    thicker than ``widest`` mm; None where there is none."""
    fitting = [
        (f.length, f.diameter, key) for key, f in FASTENERS.items()
        if key in keys and f.kind is FastenerKind.SCREW
        and f.length <= most + 1e-6 and f.diameter <= widest + 1e-6
    ]
    return max(fitting)[2] if fitting else None
