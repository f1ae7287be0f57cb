"""The values that the planners of sheets take and give.

Lengths are millimetres. A sheet lies with its length along x and its width along y,
origin at the raw sheet's corner. Grain, where a sheet has it, runs along x.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum


class GrainOnSheet(Enum):
    """How a part may lie on the sheet."""

    ALONG = "along"
    """The part's length runs along the sheet's length."""
    ACROSS = "across"
    """The part's length runs along the sheet's width."""
    FREE = "free"
    """Either way."""


class FirstCut(Enum):
    """The direction of the cuts that the shop makes first on a whole sheet.

    A sheet that needs no cut of that direction goes straight on to the other, which is
    its second stage all the same.
    """

    RIP = "rip"
    """Along the sheet's length."""
    CROSSCUT = "crosscut"
    """Along the sheet's width."""
    ANY = "any"


@dataclass(frozen=True)
class CutPart:
    """A rectangle to be cut; ``key`` is unique, one piece per value.

    ``length`` x ``width`` in mm as sawn; ``label`` is the text drawn on the piece.
    """

    key: str
    length: float
    width: float
    material: str
    grain: GrainOnSheet = GrainOnSheet.FREE
    label: str = ""


@dataclass(frozen=True)
class CutFrom:
    """What a sheet is cut out of before all else: a damaged offcut ``length`` x ``width``, mm,
    and where on it the sheet's low corner lies, along the same axes."""

    length: float
    width: float
    x: float
    y: float


@dataclass(frozen=True)
class StockSheet:
    """A sheet to be bought, or an offcut at hand.

    ``quantity`` None: as many as are needed. ``trim``: mm taken off each of the four
    edges before any part is cut. ``cost`` per sheet, None where unknown. ``cut_from``: the
    damaged offcut that it is the sound part of.
    """

    key: str
    material: str
    length: float
    width: float
    trim: float = 0.0
    quantity: int | None = None
    cost: float | None = None
    offcut: bool = False
    cut_from: CutFrom | None = None


@dataclass(frozen=True)
class CutWeights:
    """What counts between two plans on the same sheets; the lower sum is the better plan.

    ``cuts``: for each cut; ``length``: for each metre sawn; ``offcut``: taken off for each
    square metre of the largest offcut.
    """

    cuts: float = 1.0
    length: float = 0.2
    offcut: float = 20.0


@dataclass(frozen=True)
class CutSettings:
    """What the saw and the shop allow, and how long to look for a better plan.

    ``kerf`` in mm. ``stages``: how many times the cutting may change direction, the first
    direction counted as one; every cut counts, that which brings a part to its size too;
    None: no limit. ``seconds``: search for fewer sheets, per material; ``tidy``: seconds
    more, per material of 30 parts or more, for fewer cuts and a larger offcut on as many
    sheets. Both are budgets of counted work, so that the same ``seed`` gives the same plan
    everywhere; a machine ten times slower than reckoned ends the search by its clock, and
    the plan says so.
    """

    kerf: float = 3.2
    stages: int | None = 4
    first: FirstCut = FirstCut.RIP
    seconds: float = 1.0
    seed: int = 1
    tidy: float = 1.0
    weights: CutWeights = CutWeights()


@dataclass(frozen=True)
class Placement:
    """A part on a sheet: lower-left corner and extents in mm on the raw sheet.

    ``rotated``: the part's length runs along the sheet's width.
    """

    part: str
    x: float
    y: float
    dx: float
    dy: float
    rotated: bool


@dataclass(frozen=True)
class Rest:
    """A rectangle of a sheet that no part takes, whole after the planned cuts."""

    x: float
    y: float
    dx: float
    dy: float


@dataclass(frozen=True)
class Cut:
    """One cut: ``number`` in the order sawn, on the piece ``piece`` (a name).

    ``rip``: along the sheet's length. ``fence``: mm from the piece's edge that runs
    against the fence to the near side of the kerf, which is the size of the piece there.
    ``x0, y0, x1, y1``: the kerf's centre line on the raw sheet. ``yields``: the pieces
    afterwards, that at the fence first; a part is named by its key.
    """

    number: int
    piece: str
    rip: bool
    fence: float
    x0: float
    y0: float
    x1: float
    y1: float
    yields: tuple[str, ...] = ()


@dataclass(frozen=True)
class SheetPlan:
    """One sheet with what lies on it. ``name`` is unique within the plan ("S1")."""

    name: str
    sheet: StockSheet
    kerf: float
    placements: tuple[Placement, ...]
    rests: tuple[Rest, ...] = ()
    cuts: tuple[Cut, ...] = ()

    @property
    def used_area(self) -> float:
        """Area of the parts on this sheet, mm²."""
        return sum(p.dx * p.dy for p in self.placements)

    @property
    def yield_fraction(self) -> float:
        """Area of the parts over the area of the raw sheet."""
        return self.used_area / (self.sheet.length * self.sheet.width)


class SearchEnd(Enum):
    """Why the search for a better plan of one material ended."""

    PROVED = "proved"
    """No plan takes fewer sheets, or cheaper ones."""
    BUDGET = "budget"
    """The work that the settings allow was done."""
    CLOCK = "clock"
    """The machine was far slower than reckoned: the same seed may give another plan."""
    CANCELLED = "cancelled"


@dataclass(frozen=True)
class PlanProgress:
    """How far the search is: ``done`` from 0 to 1 over all materials.

    ``sheets``: in the best plan of ``material`` so far; ``bound``: none can have fewer.
    """

    material: str
    done: float
    sheets: int
    bound: int


class Proof(Enum):
    """What is known of the sheets that a plan takes of a material."""

    FEWEST = "fewest"
    """No plan takes fewer sheets."""
    CHEAPEST = "cheapest"
    """No plan buys less, though with offcuts or smaller sheets it may take more of them."""
    NONE = "none"


@dataclass(frozen=True)
class Plan:
    """A whole plan: its sheets, and per material a proved least number of sheets.

    ``ended``: per material, why the search for fewer sheets ended. ``repeatable``: the
    same input gives this very plan again; not so where the clock or the user ended a
    search.
    """

    sheets: tuple[SheetPlan, ...]
    bound: dict[str, int] = field(default_factory=dict)
    ended: dict[str, SearchEnd] = field(default_factory=dict)
    repeatable: bool = True

    def sheets_of(self, material: str) -> tuple[SheetPlan, ...]:
        """The sheets of one material, in order."""
        return tuple(s for s in self.sheets if s.sheet.material == material)

    def proof_of(self, material: str) -> Proof:
        """What is proved of the sheets of one material."""
        if len(self.sheets_of(material)) == self.bound.get(material):
            return Proof.FEWEST
        proved = self.ended.get(material) is SearchEnd.PROVED
        return Proof.CHEAPEST if proved else Proof.NONE
