"""Where a component stands inside a carcass: the opening that it has to itself."""

from __future__ import annotations

from dataclasses import dataclass

from closetbench.core.component import Component, require
from closetbench.core.errors import ClosetError
from closetbench.core.panel import Box
from closetbench.core.parts import Part, Role

_VERTICAL = (Role.SIDE, Role.DIVIDER)
_LEVEL = (Role.TOP, Role.BOTTOM, Role.FIXED_SHELF)


@dataclass(frozen=True)
class Spot:
    """Where the user puts a component: a carcass, one of its bays (from the left, 1 first),
    one compartment between the fixed shelves (from the bottom, 1 first), and there from
    ``start`` mm above its floor, ``height`` mm high (None: all that is left)."""

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


@dataclass(frozen=True)
class Opening:
    """A clear opening: its box (y0 at the carcass's front edges), and what bounds it.

    ``subject`` names it in messages. ``material``: key of the carcass's board.
    """

    subject: str
    material: str
    box: Box
    left: Lap
    right: Lap
    below: Lap
    above: Lap

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
    shelves = sorted(
        (p.box() for p in carcass.parts if p.role is Role.FIXED_SHELF and _crosses(p, bay)),
        key=lambda b: b.z0,
    )
    edges = [bay.z0, *(z for b in shelves for z in (b.z0, b.z1)), bay.z1]
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
    board = _thickness(carcass, _VERTICAL)
    level = _thickness(carcass, _LEVEL)
    return Opening(
        f"{subject} in {carcass.name}, bay {spot.bay}",
        next(p.panel.material for p in carcass.parts if p.role in _VERTICAL),
        Box(bay.x0, bay.y0, z0, bay.x1, rear, z1),
        Lap(board, spot.bay > 1),
        Lap(board, spot.bay < last),
        Lap(level if start == 0 else 0.0, start > 0 or spot.compartment > 1),
        Lap(level if z1 > high - 1e-6 else 0.0, z1 < high - 1e-6 or spot.compartment < count),
    )


def _crosses(part: Part, bay: Box) -> bool:
    box = part.box()
    return box.x0 < (bay.x0 + bay.x1) / 2 < box.x1


def _cleats_behind(carcass: Component, bay: Box, z0: float, z1: float) -> list[Box]:
    middle = (bay.y0 + bay.y1) / 2
    boxes = (p.box() for p in carcass.parts if p.role is Role.CLEAT and _crosses(p, bay))
    return [b for b in boxes if b.y0 > middle and b.z0 < z1 - 1e-6 and b.z1 > z0 + 1e-6]


def _thickness(carcass: Component, roles: tuple[Role, ...]) -> float:
    return next(p.panel.thickness for p in carcass.parts if p.role in roles)
