"""Where a component stands: the opening that it has to itself, or its site in the envelope."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace

from closetbench.core.component import Component, require
from closetbench.core.envelope import Envelope
from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.frame import PINS
from closetbench.core.panel import Box
from closetbench.core.parts import Part, Role

_VERTICAL = (Role.SIDE, Role.DIVIDER)
_LEVEL = (Role.TOP, Role.BOTTOM, Role.FIXED_SHELF)
_FRAME_UPRIGHT = (Role.STILE, Role.MULLION)


@dataclass(frozen=True)
class Spot:
    """Where the user puts a component.

    ``carcass``: name of the carcass or bench that it stands in.
    ``bay``: which of its bays, from the left, 1 first.
    ``compartment``: which space between the fixed shelves, from the bottom, 1 first.
    ``start``: how far above the compartment's floor it begins.
    ``height``: how high it is, None for all that is left.
    """

    carcass: str
    bay: int = 1
    compartment: int = 1
    start: float = 0.0
    height: float | None = None


@dataclass(frozen=True)
class Lap:
    """A panel that bounds an opening: its thickness, and whether a neighbour's front may
    lie on it too."""

    thickness: float
    shared: bool

    def full(self, gap: float) -> float:
        """How far a front laps over it: all but half a gap, or half of it where shared."""
        return self.half(gap) if self.shared else self.thickness - gap / 2

    def half(self, gap: float) -> float:
        """How far a front laps over half of it, so that a gap stays between neighbours."""
        return (self.thickness - gap) / 2


PinRow = tuple[float, float]
"""Height of a hole for shelf pins, and the pitch of its row, mm."""


@dataclass(frozen=True)
class Opening:
    """A clear opening: its box (y0 at the front edges of the carcass or its face frame), and
    what bounds it.

    ``subject`` names it in messages. ``material``: key of the carcass's board. ``packing``:
    how far a face frame stands in at the left and right of the carcass's own opening.
    ``host``: what it is in; ``framed``: whether it is seen through a face frame. ``rows``: of
    the rows for shelf pins at the left and the right the height of a hole and the pitch.
    ``figures`` prints those of findings.
    """

    subject: str
    material: str
    box: Box
    left: Lap
    right: Lap
    below: Lap
    above: Lap
    packing: tuple[float, float] = (0.0, 0.0)
    host: str = ""
    framed: bool = False
    rows: tuple[PinRow | None, PinRow | None] = (None, None)
    figures: Figures = field(default_factory=Figures)

    @property
    def width(self) -> float:
        """Clear width, mm."""
        return self.box.x1 - self.box.x0

    @property
    def height(self) -> float:
        """Clear height, mm."""
        return self.box.z1 - self.box.z0

    @property
    def depth(self) -> float:
        """Free depth from the front edges to the nearest thing behind, mm."""
        return self.box.y1 - self.box.y0


def opening_at(spot: Spot, carcass: Component, subject: str) -> Opening:
    """The opening that a spot means in a built carcass.

    Its depth ends at the back or at the cleats that cross its height. Raises
    ``ClosetError`` where there is no such bay or compartment, or the height does not fit.
    """
    if not 1 <= spot.bay <= len(carcass.bays):
        raise ClosetError(
            subject, "bay", spot.bay, f"must be 1 to {len(carcass.bays)} in {carcass.name}"
        )
    bay = carcass.bays[spot.bay - 1].space
    shelves = _fixed_shelves(carcass, bay)
    edges = [bay.z0, *(z for ends in shelves for z in ends), bay.z1]
    count = len(edges) // 2
    if not 1 <= spot.compartment <= count:
        raise ClosetError(
            subject, "compartment", spot.compartment,
            f"must be 1 to {count} in {carcass.name}, bay {spot.bay}",
        )
    low, high = edges[2 * spot.compartment - 2: 2 * spot.compartment]
    start = require(subject, "start above the compartment's floor", spot.start, 0.0, high - low)
    z0 = low + start
    height = high - z0 if spot.height is None else spot.height
    require(subject, "height", height, 20.0, high - z0, "in its compartment")
    z1 = z0 + height
    rear = min(
        (b.y0 for b in _cleats_behind(carcass, bay, z0, z1)), default=bay.y1
    )
    last = len(carcass.bays)
    level = next((p.panel.thickness for p in carcass.parts if p.role in _LEVEL), None)
    under, over = carcass.laps if level is None else (level, level)
    if spot.compartment < count:
        lower, upper = shelves[spot.compartment - 1]
        over = upper - lower
    if spot.compartment > 1:
        lower, upper = shelves[spot.compartment - 2]
        under = upper - lower
    lefts = [carcass.box.x0, *(b.space.x1 for b in carcass.bays)]
    rights = [*(b.space.x0 for b in carcass.bays), carcass.box.x1]
    return Opening(
        f"{subject} in {carcass.name}, bay {spot.bay}",
        carcass.board or next(p.panel.material for p in carcass.parts if p.role in _VERTICAL),
        Box(bay.x0, bay.y0, z0, bay.x1, rear, z1),
        Lap(bay.x0 - lefts[spot.bay - 1], spot.bay > 1),
        Lap(rights[spot.bay] - bay.x1, spot.bay < last),
        Lap(under if start == 0 else 0.0, start > 0 or spot.compartment > 1),
        Lap(over if z1 > high - 1e-6 else 0.0, z1 < high - 1e-6 or spot.compartment < count),
        host=carcass.name, rows=(_pin_row(carcass, bay.x0, 1), _pin_row(carcass, bay.x1, -1)),
    )


def _fixed_shelves(carcass: Component, bay: Box) -> list[tuple[float, float]]:
    """Lower and upper end of the fixed shelves of a bay, rising; a lip counts with its shelf."""
    lips = {p.name: p.box().z0 for p in carcass.parts if p.role is Role.LIP}
    return sorted(
        (lips.get(f"{p.name} lip", p.box().z0), p.box().z1)
        for p in carcass.parts if p.role is Role.FIXED_SHELF and _crosses(p, bay)
    )


def _pin_row(carcass: Component, x: float, toward: int) -> PinRow | None:
    """A hole and the pitch of the rows in the upright that bounds a bay at ``x``, whichever
    side they serve; ``toward`` the bay: 1 to the right, -1 to the left."""
    for part in carcass.parts:
        box = part.box()
        if part.role not in _VERTICAL or abs((box.x1 if toward > 0 else box.x0) - x) > 1e-6:
            continue
        for row in part.panel.holes:
            if row.name == PINS:
                return part.place.point(row.x, row.y, 0.0)[2], row.pitch
    return None


@dataclass(frozen=True)
class Site:
    """What stands before a component is built: the envelope, the carcasses and benches by
    name, the face frames by their carcass's name, and where the envelope is ``free`` to the
    right of them. ``figures`` prints those of findings."""

    envelope: Envelope
    hosts: Mapping[str, Component] = field(default_factory=dict)
    frames: Mapping[str, Component] = field(default_factory=dict)
    free: float = 0.0
    figures: Figures = field(default_factory=Figures)

    def with_(self, component: Component) -> Site:
        """The site once a component stands."""
        if component.frames:
            return replace(self, frames={**self.frames, component.frames: component})
        if not component.bays:
            return self
        free = max(self.free, component.box.x1)
        return replace(self, hosts={**self.hosts, component.name: component}, free=free)

    def host(self, name: str, subject: str) -> Component:
        """The carcass or bench of that name; ``ClosetError`` where there is none."""
        if name not in self.hosts:
            raise ClosetError(
                subject, "carcass", f"'{name}'",
                f"must be one of {', '.join(self.hosts) or 'those there: there is none'}",
            )
        return self.hosts[name]

    def opening(self, spot: Spot, subject: str) -> Opening:
        """The opening that a spot means, seen through the carcass's face frame if any."""
        host = self.host(spot.carcass, subject)
        found = replace(opening_at(spot, host, subject), figures=self.figures)
        frame = self.frames.get(spot.carcass)
        return found if frame is None else through_frame(found, frame, host.box)


def through_frame(opening: Opening, frame: Component, carcass: Box) -> Opening:
    """What a face frame leaves of an opening behind it. Its laps are the frame's members, so
    far as they lie before the carcass."""
    box = opening.box
    x, z = (box.x0 + box.x1) / 2, (box.z0 + box.z1) / 2
    boxes = [(p.role in _FRAME_UPRIGHT, p.role is Role.MULLION, p.box()) for p in frame.parts]
    upright = [
        (max(b.x0, carcass.x0), min(b.x1, carcass.x1), inner) for up, inner, b in boxes if up
    ]
    level = [
        (b.z0, b.z1, not edge) for up, _, b in boxes if not up and b.x0 < x < b.x1
        for edge in (abs(b.z0 - frame.box.z0) < 1e-6 or abs(b.z1 - frame.box.z1) < 1e-6,)
    ]
    left, right = _bounds(upright, x, (box.x0, box.x1), (opening.left, opening.right))
    below, above = _bounds(level, z, (box.z0, box.z1), (opening.below, opening.above))
    clear = Box(left[0], frame.box.y0, below[0], right[0], box.y1, above[0])
    for name, size in (("width", clear.x1 - clear.x0), ("height", clear.z1 - clear.z0)):
        if size < 20.0:
            raise ClosetError(
                opening.subject, f"{name} of the opening in {frame.name}", f"{size:.1f} mm",
                "must be at least 20 mm; make the frame's members narrower",
            )
    return replace(
        opening, box=clear, left=left[1], right=right[1], below=below[1], above=above[1],
        packing=(max(0.0, clear.x0 - box.x0), max(0.0, box.x1 - clear.x1)), framed=True,
    )


def _bounds(
    members: Sequence[tuple[float, float, bool]], middle: float, ends: tuple[float, float],
    laps: tuple[Lap, Lap],
) -> tuple[tuple[float, Lap], tuple[float, Lap]]:
    """Where an opening around ``middle`` ends between members, and what bounds it there.

    A member that does not reach an end of the opening leaves it as it was.
    """
    low = max((m for m in members if (m[0] + m[1]) / 2 < middle), default=None)
    high = min((m for m in members if (m[0] + m[1]) / 2 > middle), default=None)
    first, second = (ends[0], laps[0]), (ends[1], laps[1])
    if low is not None and low[1] > ends[0] - 1e-6:
        first = (low[1], Lap(low[1] - low[0], low[2]))
    if high is not None and high[0] < ends[1] + 1e-6:
        second = (high[0], Lap(high[1] - high[0], high[2]))
    return first, second


def _crosses(part: Part, bay: Box) -> bool:
    box = part.box()
    return box.x0 < (bay.x0 + bay.x1) / 2 < box.x1


def _cleats_behind(carcass: Component, bay: Box, z0: float, z1: float) -> list[Box]:
    middle = (bay.y0 + bay.y1) / 2
    boxes = (p.box() for p in carcass.parts if p.role is Role.CLEAT and _crosses(p, bay))
    return [b for b in boxes if b.y0 > middle and b.z0 < z1 - 1e-6 and b.z1 > z0 + 1e-6]
