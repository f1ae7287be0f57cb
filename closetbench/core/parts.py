"""A part: a panel with a name and a place in the closet."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from closetbench.core.panel import Box, Panel

Vector = tuple[float, float, float]


class Role(Enum):
    """What a part is in the closet."""

    SIDE = "side"
    DIVIDER = "divider"
    TOP = "top"
    BOTTOM = "bottom"
    FIXED_SHELF = "fixed shelf"
    ADJUSTABLE_SHELF = "adjustable shelf"
    BACK = "back"
    CLEAT = "cleat"
    TOE_KICK = "toe kick"
    BASE_FRAME = "base frame"
    PANEL = "panel"
    BOX_SIDE = "drawer box side"
    BOX_FRONT = "drawer box front"
    BOX_BACK = "drawer box back"
    BOX_BOTTOM = "drawer box bottom"
    FRONT = "front"
    DOOR = "door"
    STILE = "stile"
    RAIL = "rail"
    MULLION = "mullion"
    BENCH_FRAME = "bench frame"
    BENCH_TOP = "bench top"
    BENCH_FACE = "bench face"
    LID = "lid"
    SHOE_SHELF = "shoe shelf"
    CORNER_SHELF = "corner shelf"
    OVER_SHELF = "over-the-top shelf"
    LIP = "front lip"
    ROD = "hanging rod"
    EXISTING = "existing piece"
    FILLER = "filler"
    MOULDING = "moulding"
    SHIM = "shim"


@dataclass(frozen=True)
class Place:
    """Where a panel's frame lies: its origin and the directions of its length and width.

    The directions are unit vectors at right angles to each other, along the closet's axes
    unless the panel is sloped; thickness completes a right-handed frame.
    """

    origin: Vector
    along: Vector
    across: Vector

    @property
    def up(self) -> Vector:
        """The direction of the panel's thickness."""
        a, b = self.along, self.across
        return (
            a[1] * b[2] - a[2] * b[1],
            a[2] * b[0] - a[0] * b[2],
            a[0] * b[1] - a[1] * b[0],
        )

    def point(self, x: float, y: float, z: float) -> Vector:
        """A point of the panel's frame in the closet's."""
        a, b, c, o = self.along, self.across, self.up, self.origin
        return (
            o[0] + x * a[0] + y * b[0] + z * c[0],
            o[1] + x * a[1] + y * b[1] + z * c[1],
            o[2] + x * a[2] + y * b[2] + z * c[2],
        )

    def direction(self, way: Vector) -> Vector:
        """A direction of the panel's frame in the closet's."""
        a, b, c = self.along, self.across, self.up
        return (
            way[0] * a[0] + way[1] * b[0] + way[2] * c[0],
            way[0] * a[1] + way[1] * b[1] + way[2] * c[1],
            way[0] * a[2] + way[1] * b[2] + way[2] * c[2],
        )

    def box(self, box: Box) -> Box:
        """The smallest box of the closet's frame around a box of the panel's."""
        spans = ((box.x0, box.x1), (box.y0, box.y1), (box.z0, box.z1))
        ways = (self.along, self.across, self.up)
        low, high = list(self.origin), list(self.origin)
        for (a, b), way in zip(spans, ways, strict=True):
            for i in range(3):
                low[i] += min(a * way[i], b * way[i])
                high[i] += max(a * way[i], b * way[i])
        return Box(low[0], low[1], low[2], high[0], high[1], high[2])

    @property
    def is_level(self) -> bool:
        """Whether the directions run along the closet's axes."""
        return all(abs(c) < 1e-9 or abs(abs(c) - 1) < 1e-9 for c in (*self.along, *self.across))

    def moved(self, dx: float, dy: float, dz: float) -> Place:
        """The same place, moved."""
        x, y, z = self.origin
        return Place((x + dx, y + dy, z + dz), self.along, self.across)


STANDING_ACROSS = ((0.0, 0.0, 1.0), (0.0, 1.0, 0.0))
"""Length up, width into the depth: sides and dividers. LOWER faces right, UPPER left."""
LYING = ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0))
"""Length to the right, width into the depth: shelves, top, bottom. UPPER faces up."""
FACING = ((1.0, 0.0, 0.0), (0.0, 0.0, 1.0))
"""Length to the right, width up: kick boards, cleats, backs. UPPER faces the front."""
FACING_UPRIGHT = ((0.0, 0.0, 1.0), (-1.0, 0.0, 0.0))
"""Length up, width to the left: backs with grain upright. UPPER faces the front."""
LYING_DEEP = ((0.0, 1.0, 0.0), (0.0, 0.0, 1.0))
"""Length into the depth, width up: cross members, end cleats. UPPER faces right."""


@dataclass(frozen=True)
class Part:
    """One piece of the closet. ``name`` is unique within its ``component``."""

    name: str
    component: str
    role: Role
    panel: Panel
    place: Place

    @property
    def full_name(self) -> str:
        """Component and name: unique within a closet."""
        return f"{self.component}: {self.name}"

    def box(self) -> Box:
        """The bounding box in the closet's frame."""
        p = self.panel
        return self.place.box(Box(0.0, 0.0, 0.0, p.length, p.width, p.thickness))


@dataclass(frozen=True)
class HardwareNeed:
    """Hardware that a component needs: key in the catalogue, pieces, and what for."""

    key: str
    count: int
    purpose: str
