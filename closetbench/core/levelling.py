"""Standing level on a floor that is not: shims at stated points, or a base scribed to it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from closetbench.core import convex
from closetbench.core.bodies import Piece
from closetbench.core.component import Component
from closetbench.core.envelope import Envelope
from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.panel import Box, Rim, Taper
from closetbench.core.parts import FACING, LYING_DEEP, Part, Role
from closetbench.core.room import Room

MOST_SHIM = 12.7
"""mm: shims under a toe base up to 1/2 in, Architectural Woodwork Standards, edition 1
(2009), 1.2.9."""
LEAST_SHIM = 0.5
"""mm: less is no gap; common practice, no published source."""

SHIM_WIDE, SHIM_LONG = 40.0, 60.0
"""mm: about what of a pair of tapered shims bears; common practice, no published source."""

_STANDING = (Role.SIDE, Role.DIVIDER, Role.BASE_FRAME, Role.TOE_KICK)


@dataclass(frozen=True)
class Shim:
    """A place under a carcass, in the closet's frame, and how thick to pack it, mm; ``inward``:
    1 where the carcass goes on to the rear of it, -1 where to the front."""

    x: float
    y: float
    thickness: float
    inward: float = 1.0


def floor_gap(room: Room, envelope: Envelope) -> Callable[[float, float], float]:
    """How far the floor lies below the envelope at a point of the closet's frame."""
    return lambda x, y: envelope.z0 - room.floor.at(x + envelope.x0, y + envelope.y0)


def shims(component: Component, room: Room, envelope: Envelope) -> tuple[Shim, ...]:
    """Where to pack a carcass: under both ends of everything that runs into the depth and
    stands on the floor."""
    gap = floor_gap(room, envelope)
    found = []
    for part in component.parts:
        b = part.box()
        if part.role in _STANDING and abs(b.z0) < 1e-6 and b.y1 - b.y0 > b.x1 - b.x0:
            x = (b.x0 + b.x1) / 2
            y0 = b.y0
            for notch in part.panel.notches:
                # the side stands behind its toe kick notch
                if notch.end is Rim.START and notch.edge is Rim.FRONT:
                    y0 += notch.dy
            found += [Shim(x, y, gap(x, y), way) for y, way in ((y0, 1.0), (b.y1, -1.0))]
    return tuple(found)


def shim_pieces(component: str, carcass: str, places: Sequence[Shim]) -> tuple[Piece, ...]:
    """The shims as they lie under a carcass, from the floor up to it."""
    found: list[Piece] = []
    for shim in places:
        if shim.thickness < LEAST_SHIM:
            continue
        x0, x1 = shim.x - SHIM_WIDE / 2, shim.x + SHIM_WIDE / 2
        y0, y1 = sorted((shim.y, shim.y + shim.inward * SHIM_LONG))
        box = Box(x0, y0, -shim.thickness, x1, y1, 0.0)
        found.append(Piece(
            f"{carcass} shim {len(found) + 1}", component, Role.SHIM, convex.corners(box), 0.0
        ))
    return tuple(found)


def shim_findings(
    name: str, places: tuple[Shim, ...], figures: Figures | None = None
) -> list[Finding]:
    """Where the shims go, and a warning where they are too thick."""
    form = figures or Figures()
    needed = [s for s in places if s.thickness >= LEAST_SHIM]
    if not needed:
        return []
    found = [Finding(
        Severity.NOTE, name, "shims",
        "level it with shims: " + "; ".join(
            f"{form.small(s.thickness)} at {form.length(s.x)} across, {form.length(s.y)} deep"
            for s in needed
        ),
        "", form.small(max(s.thickness for s in needed)), form.small(MOST_SHIM),
    )]
    most = max(s.thickness for s in needed)
    if most > MOST_SHIM:
        found.append(Finding(
            Severity.WARNING, name, "shims-thick",
            "the floor falls too far to be shimmed: scribe the base frame to it",
            "Architectural Woodwork Standards, edition 1 (2009), 1.2.9",
            form.small(most), form.small(MOST_SHIM),
        ))
    return found


def scribe_base(
    component: Component, room: Room, envelope: Envelope, allowance: float
) -> Component:
    """The carcass with its base frame reaching down to the floor as it lies.

    Raises ``ClosetError`` where sides stand on the floor: only a frame can be scribed.
    """
    gap = floor_gap(room, envelope)
    standing = [p for p in component.parts if p.role in _STANDING and abs(p.box().z0) < 1e-6]
    for part in standing:
        if part.role is not Role.BASE_FRAME:
            raise ClosetError(
                component.name, "levelling", "scribed to the floor",
                f"needs a base frame, but the {part.name} stands on the floor; use shims",
            )
    lower = {p.name: _reaching_down(p, gap, allowance) for p in standing}
    parts = tuple(lower.get(p.name, p) for p in component.parts)
    return replace(component, parts=parts)


def _reaching_down(part: Part, gap: Callable[[float, float], float], allowance: float) -> Part:
    b, panel = part.box(), part.panel
    y = (b.y0 + b.y1) / 2
    x = (b.x0 + b.x1) / 2
    directions = (part.place.along, part.place.across)
    assert directions in (FACING, LYING_DEEP)
    if directions == FACING:
        first, last = gap(b.x0, y), gap(b.x1, y)
    else:
        first, last = gap(x, b.y0), gap(x, b.y1)
    most = max(first, last)
    return replace(
        part,
        panel=replace(panel, width=panel.width + most, tapers=(
            Taper(Rim.FRONT, most - first, most - last, allowance),)),
        place=part.place.moved(0.0, 0.0, -most),
    )
