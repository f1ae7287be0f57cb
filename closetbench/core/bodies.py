"""What takes space in a closet and is no panel cut from a board: rods, existing pieces.

Everything that takes space, panels too, is a ``Body``: it has a name, a role, a box around
it, and convex solids that fill it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

from closetbench.core.convex import Ring, Solid, Vector, block, prism
from closetbench.core.panel import Box
from closetbench.core.parts import Role


class Body(Protocol):
    """Anything that takes space."""

    @property
    def name(self) -> str:
        """Unique within its component."""

    @property
    def component(self) -> str:
        """The component that it belongs to."""

    @property
    def role(self) -> Role:
        """What it is in the closet."""

    @property
    def full_name(self) -> str:
        """Component and name."""

    def box(self) -> Box:
        """The smallest box around it, in the closet's frame."""


@dataclass(frozen=True)
class LengthPart:
    """A piece cut to length from a bar: its round section's ``diameter``, the ``wall`` of a
    tube (0: solid), and the ends of its axis in the closet's frame. ``stock``: key of the
    class of bar in the catalogue."""

    name: str
    component: str
    role: Role
    stock: str
    diameter: float
    wall: float
    start: Vector
    end: Vector

    @property
    def full_name(self) -> str:
        """Component and name: unique within a closet."""
        return f"{self.component}: {self.name}"

    @property
    def length(self) -> float:
        """What to cut from the bar, mm."""
        return sum(abs(b - a) for a, b in zip(self.start, self.end, strict=True))

    def box(self) -> Box:
        """The box around it; it lies along one of the closet's axes."""
        low = [min(a, b) for a, b in zip(self.start, self.end, strict=True)]
        high = [max(a, b) for a, b in zip(self.start, self.end, strict=True)]
        for i in range(3):
            if high[i] - low[i] < 1e-9:
                low[i] -= self.diameter / 2
                high[i] += self.diameter / 2
        return Box(low[0], low[1], low[2], high[0], high[1], high[2])

    def solid(self) -> Solid:
        """Its outside as a prism, for pictures."""
        return prism(self.start, self.end, self.diameter / 2)


@dataclass(frozen=True)
class Piece:
    """An existing piece of furniture as it stands in the closet, no part to be cut.

    ``corners``: the bottom's from the front left counter-clockwise as seen from above, then
    the top's. ``weight`` kg, None where nobody has weighed it. ``fronts``: its drawer
    fronts as rings on its front, for pictures.
    """

    name: str
    component: str
    role: Role
    corners: tuple[Vector, ...]
    weight: float | None = None
    fronts: tuple[Ring, ...] = ()

    @property
    def full_name(self) -> str:
        """Component and name: unique within a closet."""
        return f"{self.component}: {self.name}"

    def box(self) -> Box:
        """The smallest box around it."""
        xs, ys, zs = zip(*self.corners, strict=True)
        return Box(min(xs), min(ys), min(zs), max(xs), max(ys), max(zs))

    def solid(self) -> Solid:
        """Its faces; measured, so not quite flat."""
        return block(self.corners)
