"""A piece of furniture that is reused: a chest or cabinet built into a bay.

It is measured at several places, for it is not square either; the bay is made to measure
around the largest of each, and the shelf above it follows its height. Panels kept from it
may become fronts elsewhere.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from enum import Enum

from closetbench.core.anchoring import Drawer, FreeUnit
from closetbench.core.bodies import Piece
from closetbench.core.component import Component, require
from closetbench.core.convex import Ring, Vector
from closetbench.core.errors import ClosetError
from closetbench.core.findings import Finding, Severity
from closetbench.core.inside import Opening, Spot
from closetbench.core.materials import Catalogue
from closetbench.core.moves import Pull
from closetbench.core.parts import HardwareNeed, Role
from closetbench.core.specs import CarcassSpec
from closetbench.core.walls import DEFER

SCREW = "screw_4x40"
LEAST, MOST = 50.0, 4000.0
"""Sizes of a piece of furniture, mm."""
BOX_SIDES, BOX_HEIGHT, BOX_DEPTH = 60.0, 20.0, 40.0
"""How much smaller than its place in the piece the inside of a drawer is taken to be, mm:
common practice, no published source."""


class Flank(Enum):
    """A side of an existing piece, as one faces it."""

    LEFT = "left"
    RIGHT = "right"


@dataclass(frozen=True)
class ScrewPoint:
    """Where a side of the piece can be screwed through.

    ``side``: which side.
    ``from_front``: from its front edge.
    ``from_floor``: above the floor as found, feet included.
    """

    side: Flank
    from_front: float
    from_floor: float


@dataclass(frozen=True)
class KeptPanel:
    """A panel kept from the piece to be cut into parts elsewhere.

    ``name``: what it was.
    ``length``: usable length, along the grain if it has any.
    ``width``: usable width.
    ``thickness``: by caliper.
    ``grained``: whether its grain must run along a part's length.
    """

    name: str
    length: float
    width: float
    thickness: float
    grained: bool = True


@dataclass(frozen=True)
class ExistingSpec:
    """A reused chest or cabinet. What is not measured is taken as its fellow.

    ``name``: the component's name.
    ``spot``: the bay that it stands in.
    ``width_front_low``: width at the front, low down.
    ``width_front_high``: width at the front, high up.
    ``width_back_low``: width at the back, low down.
    ``width_back_high``: width at the back, high up.
    ``height_left``: height at the left, feet and top included.
    ``height_right``: height at the right.
    ``depth_left``: depth at the left, mouldings and fronts included, pulls not.
    ``depth_right``: depth at the right.
    ``feet``: height of the feet that are taken off.
    ``top``: thickness of the top that is taken off.
    ``moulding``: how far the mouldings that are taken off stand out at each side and in front.
    ``side_gap``: clearance kept at each side.
    ``gap_above``: clearance kept under the shelf above.
    ``setback``: how far its front stays behind the carcass's front edges.
    ``fitted``: the bay takes its width from the piece, unless it has one of its own.
    ``shelf_above``: a fixed shelf lies over it and follows its height.
    ``weight``: in kg, with its drawers; None where nobody has weighed it.
    ``drawers``: number of its drawers, one above the other.
    ``travel``: how far they come out.
    ``screws``: where it can be screwed through.
    ``kept``: panels kept from what is taken off it.
    """

    name: str
    spot: Spot
    width_front_low: float
    height_left: float
    depth_left: float
    width_front_high: float | None = None
    width_back_low: float | None = None
    width_back_high: float | None = None
    height_right: float | None = None
    depth_right: float | None = None
    feet: float = 0.0
    top: float = 0.0
    moulding: float = 0.0
    side_gap: float = 3.0
    gap_above: float = 5.0
    setback: float = 0.0
    fitted: bool = True
    shelf_above: bool = True
    weight: float | None = None
    drawers: int = 0
    travel: float = 0.0
    screws: tuple[ScrewPoint, ...] = ()
    kept: tuple[KeptPanel, ...] = ()

    @property
    def widths(self) -> tuple[float, float, float, float]:
        """Front low, front high, back low, back high, without what is taken off."""
        front = self.width_front_low
        high = front if self.width_front_high is None else self.width_front_high
        low = front if self.width_back_low is None else self.width_back_low
        back = high if self.width_back_high is None else self.width_back_high
        less = 2 * self.moulding
        return front - less, high - less, low - less, back - less

    @property
    def heights(self) -> tuple[float, float]:
        """Left and right, without what is taken off."""
        right = self.height_left if self.height_right is None else self.height_right
        return self.height_left - self.feet - self.top, right - self.feet - self.top

    @property
    def depths(self) -> tuple[float, float]:
        """Left and right, without what is taken off."""
        right = self.depth_left if self.depth_right is None else self.depth_right
        return self.depth_left - self.moulding, right - self.moulding


def check_sizes(spec: ExistingSpec) -> None:
    """Refuse measurements that are no piece of furniture's, or leave nothing of it."""
    for prop, values in (
        ("width", spec.widths), ("height", spec.heights), ("depth", spec.depths)
    ):
        for value in values:
            require(spec.name, f"{prop} once it is stripped", value, LEAST, MOST)
        if max(values) - min(values) > 0.1 * max(values):
            raise ClosetError(
                spec.name, prop, f"{min(values):g} to {max(values):g} mm",
                "must not differ by more than a tenth; measure again",
            )
    for prop, value in (
        ("height of the feet", spec.feet), ("thickness of the top", spec.top),
        ("moulding", spec.moulding), ("clearance at each side", spec.side_gap),
        ("clearance above", spec.gap_above), ("setback", spec.setback), ("travel", spec.travel),
    ):
        require(spec.name, prop, value, 0.0, MOST)


def fitted(
    spec: CarcassSpec, pieces: Iterable[ExistingSpec], catalogue: Catalogue
) -> CarcassSpec:
    """A carcass with its bays made to measure around the pieces that stand in them, and so
    itself where that settles all its bays and it has no width of its own."""
    bays, t = list(spec.bays), catalogue.material(spec.material, subject=spec.name).thickness
    # a lip hangs below its shelf, before the piece
    hang = max(spec.shelf_lip.height - t, 0.0)
    for piece in pieces:
        at = piece.spot.bay - 1
        if piece.spot.carcass != spec.name or not 0 <= at < len(bays):
            continue
        check_sizes(piece)
        bay = bays[at]
        if piece.fitted and bay.width is None:
            bay = replace(bay, width=max(piece.widths) + 2 * piece.side_gap)
        if piece.shelf_above:
            if bay.fixed and not bay.heights:
                raise ClosetError(
                    f"{spec.name}, bay {at + 1}", "fixed shelves", bay.fixed,
                    f"must be given by their heights: the lowest lies over {piece.name}",
                )
            height = piece.spot.start + max(piece.heights) + piece.gap_above + hang
            bay = replace(bay, fixed=0, heights=(height, *bay.heights))
        bays[at] = bay
    width = spec.width
    known = [b.width for b in bays if b.width is not None]
    if width is None and tuple(bays) != spec.bays and len(known) == len(bays):
        width = sum(known) + (len(known) + 1) * t
    return replace(spec, bays=tuple(bays), width=width)


def build_existing(spec: ExistingSpec, opening: Opening) -> Component:
    """The piece in its place; ``ClosetError`` where it does not go in."""
    check_sizes(spec)
    width, height, depth = max(spec.widths), max(spec.heights), max(spec.depths)
    for prop, size, room, gap in (
        ("width", width, opening.width, 2 * spec.side_gap),
        ("height", height, opening.height, spec.gap_above),
        ("depth", depth, opening.depth, spec.setback),
    ):
        if size > room - gap + 1e-6:
            raise ClosetError(
                opening.subject, f"greatest {prop}", f"{size:g} mm",
                f"must be at most {room - gap:.1f} mm, {room:.1f} mm less {gap:g} mm of clearance",
            )
    piece = Piece(
        "piece", spec.name, Role.EXISTING, _corners(spec, opening), spec.weight,
        _fronts(spec, opening),
    )
    box = piece.box()
    moves: tuple[Pull, ...] = ()
    if spec.drawers and spec.travel:
        moves = (Pull("drawers", frozenset({"piece"}), (box,), spec.travel),)
    for i, point in enumerate(spec.screws, 1):
        subject = f"{spec.name}, screw point {i}"
        require(subject, "distance from the front", point.from_front, 10.0, depth - 10.0)
        require(subject, "height above the floor", point.from_floor, spec.feet + 10.0,
                spec.feet + height - 10.0, "to lie in what is left of the side")
    needs = (HardwareNeed(SCREW, len(spec.screws), "existing piece to the carcass"),)
    unit = _unit(spec)
    return Component(
        spec.name, (), box, needs if spec.screws else (), _findings(spec, opening),
        pieces=(piece,), moves=moves, checked=(unit,) if unit else (),
    )


def _corners(spec: ExistingSpec, opening: Opening) -> tuple[Vector, ...]:
    """Its corners: evenly about the middle of the opening, as measured."""
    low_front, high_front, low_back, high_back = (w / 2 for w in spec.widths)
    box = opening.box
    x, y, z = (box.x0 + box.x1) / 2, box.y0 + spec.setback, box.z0
    (left, right), (rear_left, rear_right) = spec.heights, spec.depths
    return (
        (x - low_front, y, z), (x + low_front, y, z),
        (x + low_back, y + rear_right, z), (x - low_back, y + rear_left, z),
        (x - high_front, y, z + left), (x + high_front, y, z + right),
        (x + high_back, y + rear_right, z + right), (x - high_back, y + rear_left, z + left),
    )


def _fronts(spec: ExistingSpec, opening: Opening) -> tuple[Ring, ...]:
    """Its drawer fronts, equally high, 15 mm in from the outline."""
    if spec.drawers < 1:
        return ()
    width, height, rim = min(spec.widths[:2]), min(spec.heights), 15.0
    box = opening.box
    x0 = (box.x0 + box.x1 - width) / 2 + rim
    x1, y, z0 = x0 + width - 2 * rim, box.y0 + spec.setback, box.z0 + rim
    pitch = (height - 2 * rim) / spec.drawers
    spans = [(z0 + i * pitch + 2.0, z0 + (i + 1) * pitch - 2.0) for i in range(spec.drawers)]
    return tuple(((x0, y, a), (x1, y, a), (x1, y, b), (x0, y, b)) for a, b in spans)


def _unit(spec: ExistingSpec) -> FreeUnit | None:
    """The piece as the checks of tipping take it."""
    if spec.weight is None:
        return None
    width, height, depth = max(spec.widths), max(spec.heights), min(spec.depths)
    drawers: tuple[Drawer, ...] = ()
    if spec.drawers and spec.travel:
        pitch = height / spec.drawers
        drawers = tuple(
            Drawer(
                max(width - BOX_SIDES, LEAST), max(pitch - BOX_HEIGHT, BOX_HEIGHT),
                max(depth - BOX_DEPTH, LEAST), (i + 0.5) * pitch, spec.travel,
            )
            for i in range(spec.drawers)
        )
    return FreeUnit(
        spec.name, width, depth, height, spec.weight, drawers=drawers,
        altered=bool(spec.feet or spec.top or spec.moulding),
    )


def _findings(spec: ExistingSpec, opening: Opening) -> tuple[Finding, ...]:
    found = []
    if spec.weight is None:
        found.append(Finding(
            Severity.NOT_CHECKED, spec.name, "existing-weight",
            "not checked: whether it tips with its drawers open and whether what it stands on "
            f"carries it; weigh it; {DEFER}",
        ))
    if not spec.screws:
        found.append(Finding(
            Severity.WARNING, spec.name, "existing-loose",
            "is fastened to nothing: find where its sides can be screwed through to the carcass, "
            f"or anchor it to the wall, before its drawers are used; {DEFER}",
            "common practice, no published source",
        ))
    play = opening.width - max(spec.widths) - 2 * spec.side_gap
    if play > 2 * spec.side_gap + 20.0:
        found.append(Finding(
            Severity.NOTE, spec.name, "existing-gap",
            "leaves a wide gap in its bay: let the bay follow it, or cover the gap with strips",
            "", f"{opening.figures.length(play / 2 + spec.side_gap)} at each side",
            opening.figures.length(spec.side_gap),
        ))
    return tuple(found)
