"""What a component of the closet comes to: its parts, its hardware, its bays."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

from closetbench.core.anchoring import FreeUnit
from closetbench.core.bench_strength import Bench
from closetbench.core.bodies import Body, LengthPart, Piece
from closetbench.core.borings import Boring
from closetbench.core.errors import ClosetError
from closetbench.core.findings import Finding
from closetbench.core.materials import Catalogue
from closetbench.core.moves import Move, Zone
from closetbench.core.panel import Band, Box, Rim
from closetbench.core.parts import HardwareNeed, Part
from closetbench.core.rods_strength import Rod


@dataclass(frozen=True)
class Space:
    """What the envelope leaves for a component: its left end and the sizes, mm."""

    x: float
    width: float
    depth: float
    height: float


@dataclass(frozen=True)
class Bay:
    """The clear space between two verticals, in the closet's frame."""

    name: str
    space: Box


@dataclass(frozen=True)
class Component:
    """A built component. ``box``: its outer box in the closet's frame.

    ``parts`` are cut from boards, ``reused`` from panels kept from an existing piece,
    ``lengths`` from bars; ``pieces`` are not cut at all. ``moves``: what moves; ``zones``:
    space that must stay free. ``board``: material of what bounds its bays, and ``laps``
    its thickness below and above them, where no shelf, top or bottom of a carcass does.
    ``frames``: name of the carcass that it stands in front of as its face frame;
    ``borings``: holes that it wants in other components; ``checked``: what the
    checks of strength and stability are to look at.
    """

    name: str
    parts: tuple[Part, ...]
    box: Box
    hardware: tuple[HardwareNeed, ...] = ()
    findings: tuple[Finding, ...] = ()
    bays: tuple[Bay, ...] = ()
    reused: tuple[Part, ...] = ()
    lengths: tuple[LengthPart, ...] = ()
    pieces: tuple[Piece, ...] = ()
    moves: tuple[Move, ...] = ()
    zones: tuple[Zone, ...] = ()
    board: str = ""
    laps: tuple[float, float] = (0.0, 0.0)
    frames: str = ""
    checked: tuple[Rod | Bench | FreeUnit, ...] = ()
    borings: tuple[Boring, ...] = ()

    @property
    def bodies(self) -> tuple[Body, ...]:
        """Everything of it that takes space."""
        return (*self.parts, *self.reused, *self.lengths, *self.pieces)


def box_around(bodies: Iterable[Body]) -> Box:
    """The smallest box around one or more bodies."""
    boxes = [b.box() for b in bodies]
    return Box(
        min(b.x0 for b in boxes), min(b.y0 for b in boxes), min(b.z0 for b in boxes),
        max(b.x1 for b in boxes), max(b.y1 for b in boxes), max(b.z1 for b in boxes),
    )


def bands_for(
    catalogue: Catalogue, material: str, band: str | None, rims: tuple[Rim, ...], subject: str
) -> tuple[Band, ...]:
    """The bands on ``rims``: ``band`` None takes the material's own, "" none."""
    board = catalogue.material(material, subject=subject)
    key = (board.band if board.needs_band else "") if band is None else band
    if not key:
        return ()
    thickness = catalogue.band(key, subject=subject).thickness
    return tuple(Band(rim, key, thickness) for rim in rims)


def fastener_count(run: float, spacing: float = 150.0) -> int:
    """Screws or nails along a joint: one every ``spacing`` mm and at least two.

    Common practice, no published source.
    """
    return max(2, math.ceil(run / spacing))


def require(subject: str, prop: str, value: float, low: float, high: float, why: str = "") -> float:
    """The value, or a ``ClosetError`` when it is not within ``low`` and ``high``."""
    if not (math.isfinite(value) and low - 1e-6 <= value <= high + 1e-6):
        tail = f" {why}" if why else ""
        limit = f"must be {low:g} to {high:g} mm{tail}"
        if math.isinf(high):
            limit = f"must be at least {low:g} mm{tail}"
        elif low > high:
            limit = f"must be at least {low:g} mm, and only {high:g} mm are there{tail}"
        raise ClosetError(subject, prop, f"{value:g} mm", limit)
    return value
