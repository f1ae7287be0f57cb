"""What the user decides about a carcass and about a single panel.

Lengths are millimetres; ``None`` where the size follows from the envelope, the
catalogue or a rule.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum

from closetbench.core.errors import ClosetError
from closetbench.core.joinery import JoineryRules, Joint
from closetbench.core.panel import Face, Grain, Rim


class TopKind(Enum):
    """Where the top lies."""

    OVER = "over the sides"
    """On the sides and dividers, fastened from above."""
    BETWEEN = "between the sides"
    NONE = "none"


class BaseKind(Enum):
    """What the carcass stands on."""

    NONE = "none"
    TOE_KICK = "toe kick"
    """Sides to the floor, notched at the front, with kick boards between them."""
    FRAME = "base frame"
    """A frame of its own, set and levelled first."""


class BackKind(Enum):
    """What closes or braces the carcass at the rear."""

    NONE = "none"
    PANEL = "panel"
    """A panel let into grooves."""
    CLEATS = "cleats"
    """Cleats (nailers) between the verticals, for screws into the studs."""


@dataclass(frozen=True)
class BaseSpec:
    """The base. ``setback`` from the carcass front to the kick or the frame's front rail;
    ``spacing``: widest clear distance between cross members of a frame."""

    kind: BaseKind = BaseKind.FRAME
    height: float = 80.0
    setback: float = 50.0
    material: str | None = None
    spacing: float = 600.0


@dataclass(frozen=True)
class BackSpec:
    """The back. ``inset``: from the rear edges to the back's rear face (10 to 12 mm is
    common practice, no published source); ``cleat_height`` of a cleat."""

    kind: BackKind = BackKind.CLEATS
    material: str | None = None
    inset: float = 10.0
    cleat_height: float = 90.0


@dataclass(frozen=True)
class BaySpec:
    """One bay. ``width``: clear opening, None shares what is left with the other such bays.

    ``fixed``: number of fixed shelves, spread to equal clear heights, unless ``heights``
    gives the height of each one's underside above the bay's floor. ``adjustable``:
    number of loose shelves on pins, each put into the highest free space.
    """

    width: float | None = None
    fixed: int = 0
    heights: tuple[float, ...] = ()
    adjustable: int = 0


@dataclass(frozen=True)
class DrillRules:
    """Rows of holes for shelf pins.

    5 mm holes 32 mm apart, the front row 37 mm from the front edge and the rear row a
    multiple of 32 mm behind it: the 32 mm system as published in trade literature.
    ``margin``: nearest hole to a fixed panel; ``depth`` of a blind hole; ``play``: how
    much shorter than its bay a loose shelf is (2 to 3 mm, common practice, no
    published source).
    """

    diameter: float = 5.0
    pitch: float = 32.0
    front: float = 37.0
    rear: float = 37.0
    margin: float = 96.0
    depth: float = 10.0
    play: float = 3.0
    setback: float = 2.0

    def __post_init__(self) -> None:
        checks = (
            ("diameter", self.diameter, 1.0, 20.0),
            ("pitch", self.pitch, 5.0, 500.0),
            ("distance of the front row", self.front, 5.0, 300.0),
            ("distance of the rear row", self.rear, 5.0, 300.0),
            ("distance from a fixed panel", self.margin, 0.0, 1000.0),
            ("depth", self.depth, 1.0, 50.0),
            ("play of a loose shelf", self.play, 0.0, 20.0),
            ("setback of a loose shelf", self.setback, 0.0, 100.0),
        )
        for name, value, low, high in checks:
            if not low <= value <= high:
                raise ClosetError(
                    "shelf pin holes", name, f"{value:g} mm", f"must be {low:g} to {high:g} mm"
                )


@dataclass(frozen=True)
class LipSpec:
    """A strip along the front edge of a shelf, level with its upper face.

    ``height``: of the strip, 0 for none.
    ``material``: key of its board, None takes the shelf's.
    """

    height: float = 0.0
    material: str | None = None


@dataclass(frozen=True)
class CarcassSpec:
    """A carcass. Sizes are outer sizes, base included; None takes what the envelope leaves.

    ``x``: left side's distance from the envelope's left, None: beside the carcass before.
    ``against_back``: stands at the rear of a deeper envelope, else at its front.
    ``band``: key of the edge band for visible front edges; None takes the material's own,
    "" bands nothing. ``groove_stop``: how far grooves stay back from the front edge;
    None stops them 10 mm short where the front is banded and runs them through where not.
    ``shelf_lip``: in front of each fixed and loose shelf, which is that much less deep;
    ``shelf_band``: key of the band on the shelves' front edges, None as on the carcass's, ""
    none; a shelf behind a lip has none, and the lip has it on its long edges.
    """

    name: str
    material: str
    width: float | None = None
    height: float | None = None
    depth: float | None = None
    x: float | None = None
    against_back: bool = True
    bays: tuple[BaySpec, ...] = (BaySpec(),)
    joint: Joint = Joint.GROOVE
    shelf_joint: Joint = Joint.GROOVE
    top: TopKind = TopKind.OVER
    base: BaseSpec = field(default_factory=BaseSpec)
    back: BackSpec = field(default_factory=BackSpec)
    band: str | None = None
    groove_stop: float | None = None
    shelf_lip: LipSpec = field(default_factory=LipSpec)
    shelf_band: str | None = None
    rules: JoineryRules = field(default_factory=JoineryRules)
    drill: DrillRules = field(default_factory=DrillRules)


@dataclass(frozen=True)
class PanelSpec:
    """A single grooved panel.

    ``grooves`` equal grooves for panels of ``mating`` material, the first at ``first``
    from ``measured_from`` and the others ``spacing`` apart (near wall to near wall);
    ``depth`` None takes the rule. ``rabbets``: rims with a rabbet for the same material.
    """

    name: str
    material: str
    length: float
    width: float
    grain: Grain = Grain.LENGTH
    mating: str | None = None
    face: Face = Face.UPPER
    measured_from: Rim = Rim.START
    grooves: int = 0
    first: float = 100.0
    spacing: float = 300.0
    depth: float | None = None
    stop_first: float = 0.0
    stop_last: float = 0.0
    rabbets: tuple[Rim, ...] = ()
    bands: tuple[Rim, ...] = ()
    band: str | None = None
    rules: JoineryRules = field(default_factory=JoineryRules)
