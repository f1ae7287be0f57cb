"""The plumb, level, square box that fits in a room, and the gaps that it leaves."""

from __future__ import annotations

from dataclasses import dataclass, fields
from enum import Enum

from closetbench.core.errors import SurveyError
from closetbench.core.room import Room

LEAST_SIZE = 100.0
"""A box smaller than this in any direction holds no closet, mm."""


class Wall(Enum):
    """A side of the room that the envelope keeps away from."""

    LEFT = "left"
    RIGHT = "right"
    BACK = "back"
    TOP = "top"
    FLOOR = "floor"


@dataclass(frozen=True)
class Clearances:
    """The least gap to keep from each surface, mm, all 0 or more.

    5 mm at the sides, 10 mm above and none below is common practice, no published source:
    it covers the reading of the tape and lets the carcass slide in.
    """

    left: float = 5.0
    right: float = 5.0
    back: float = 5.0
    top: float = 10.0
    floor: float = 0.0

    def __post_init__(self) -> None:
        for item in fields(self):
            value = getattr(self, item.name)
            if not 0 <= value <= 500:
                raise SurveyError(
                    "clearances", item.name, f"{value:g} mm", "must be 0 to 500 mm"
                )


@dataclass(frozen=True)
class Gap:
    """The distance from the envelope's face to the wall at one point, mm.

    ``across`` and ``up`` say where, in the envelope's frame: for the side walls y and z,
    for the back x and z, for top and floor x and y.
    """

    wall: Wall
    across: float
    up: float
    value: float


@dataclass(frozen=True)
class Envelope:
    """The box: sizes, its origin in the room's frame, and the gaps around it.

    Gaps are given at the box's edges and, on the side walls, at the levels that were read.
    """

    width: float
    depth: float
    height: float
    x0: float = 0.0
    y0: float = 0.0
    z0: float = 0.0
    gaps: tuple[Gap, ...] = ()

    def gaps_at(self, wall: Wall) -> tuple[Gap, ...]:
        """The gaps along one wall."""
        return tuple(g for g in self.gaps if g.wall is wall)


def fit_envelope(room: Room, clearances: Clearances, depth: float | None = None) -> Envelope:
    """The plumb, level box parallel to the front that keeps the clearances everywhere.

    It stands on the highest point of the floor under it (shims fill the rest) and none
    of its faces can be moved outward. ``depth`` limits how deep it goes, so that a
    shallow closet may be wider than a crooked room's rear allows. Raises ``SurveyError``
    where the room leaves no box of ``LEAST_SIZE``.
    """
    if depth is not None and depth <= 0:
        raise SurveyError("envelope", "depth", f"{depth:g} mm", "must be above 0 mm")
    c = clearances
    # Start from the largest box that any station allows and let each face go back until
    # it is clear over the others' extents; a few rounds settle small slopes exactly.
    x0, x1 = room.left.over(0, room.left.us[-1], 0, room.left.vs[-1])[0], room.right.over(
        0, room.right.us[-1], 0, room.right.vs[-1])[1]
    y1 = room.back.over(x0, x1, 0, room.back.vs[-1])[1]
    z0, z1 = 0.0, room.ceiling.over(x0, x1, 0, y1)[1]
    for _ in range(60):
        before = (x0, x1, y1, z0, z1)
        z0 = room.floor.over(x0, x1, 0, y1)[1] + c.floor
        z1 = room.ceiling.over(x0, x1, 0, y1)[0] - c.top
        y1 = room.back.over(x0, x1, z0, z1)[0] - c.back
        if depth is not None:
            y1 = min(y1, depth)
        if min(x1 - x0, y1, z1 - z0) < LEAST_SIZE:
            break
        x0 = room.left.over(0, y1, z0, z1)[1] + c.left
        x1 = room.right.over(0, y1, z0, z1)[0] - c.right
        if max(abs(a - b) for a, b in zip(before, (x0, x1, y1, z0, z1), strict=True)) < 1e-9:
            break
    for name, size in (("width", x1 - x0), ("depth", y1), ("height", z1 - z0)):
        if size < LEAST_SIZE:
            raise SurveyError(
                "envelope", name, f"{size:.1f} mm",
                f"must be at least {LEAST_SIZE:g} mm; check the readings and the clearances",
            )
    return Envelope(x1 - x0, y1, z1 - z0, x0, 0.0, z0, _gaps(room, x0, x1, y1, z0, z1))


def _gaps(
    room: Room, x0: float, x1: float, y1: float, z0: float, z1: float
) -> tuple[Gap, ...]:
    ups = [z0, *(v for v in room.left.vs if z0 < v < z1), z1]
    gaps = []
    for y in (0.0, y1):
        for z in ups:
            gaps.append(Gap(Wall.LEFT, y, z - z0, x0 - room.left.at(y, z)))
            gaps.append(Gap(Wall.RIGHT, y, z - z0, room.right.at(y, z) - x1))
    for x in (x0, x1):
        for z in (z0, z1):
            gaps.append(Gap(Wall.BACK, x - x0, z - z0, room.back.at(x, z) - y1))
        for y in (0.0, y1):
            gaps.append(Gap(Wall.TOP, x - x0, y, room.ceiling.at(x, y) - z1))
            gaps.append(Gap(Wall.FLOOR, x - x0, y, z0 - room.floor.at(x, y)))
    return tuple(gaps)
