"""Shelves that the walls carry: in a corner, and over the top of everything.

An over-the-top shelf runs from wall to wall, past the returns beside the opening; it lies on
the carcasses where they reach up to it and on cleats on the walls where none does.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from enum import Enum
from itertools import pairwise

from closetbench.core.component import (
    Component,
    bands_for,
    box_around,
    fastener_count,
    require,
)
from closetbench.core.envelope import Envelope
from closetbench.core.errors import ClosetError
from closetbench.core.findings import Finding, Severity
from closetbench.core.inside import Site
from closetbench.core.joinery import JoineryRules, check_panel
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Box, Grain, Notch, Panel, Rim
from closetbench.core.parts import FACING, LYING, LYING_DEEP, HardwareNeed, Part, Place, Role
from closetbench.core.specs import LipSpec as LipSpec

WALL_SCREW, LIP_SCREW = "screw_6x100", "screw_4x40"
CLEAT_PITCH = 400.0
"""A screw for each so many mm of cleat or lip: studs are about as far apart."""
SHELF_SCREW, SHELF_PITCH = "screw_4x40", 200.0
"""What holds shelves down on their cleats: a screw for each so many mm of them (common
practice, no published source)."""
CLEAT_SHORT = 20.0
"""How far a cleat stays back from the front of its shelf, mm."""
LEAST_CLEAT = 80.0
"""A gap between carcasses narrower than this needs no cleat, mm."""
PLAIN = JoineryRules()


class Corner(Enum):
    """A rear corner of the closet."""

    LEFT = "left"
    RIGHT = "right"


@dataclass(frozen=True)
class CornerShelvesSpec:
    """Shelves of one piece in a rear corner, L-shaped unless both legs are as deep as long.

    ``name``: the component's name.
    ``material``: key of their board.
    ``heights``: undersides above the floor.
    ``corner``: the left or the right rear corner.
    ``along_back``: length along the rear wall.
    ``along_side``: length along the side wall.
    ``depth_back``: depth of the leg along the rear wall.
    ``depth_side``: depth of the leg along the side wall.
    ``cleat``: height of the cleats on the walls.
    ``band``: key of their edge band, None for the material's own, "" for none.
    """

    name: str
    material: str
    heights: tuple[float, ...]
    corner: Corner = Corner.LEFT
    along_back: float = 600.0
    along_side: float = 500.0
    depth_back: float = 300.0
    depth_side: float = 300.0
    cleat: float = 50.0
    band: str | None = None


@dataclass(frozen=True)
class OverShelfSpec:
    """A shelf over the top of the carcasses, from wall to wall.

    ``name``: the component's name.
    ``material``: key of its board.
    ``height``: its underside above the floor, None lies on the highest carcass.
    ``depth``: its depth, None takes the envelope's.
    ``x0``: its left end's distance from the envelope's left.
    ``x1``: its right end's, None runs to the right wall.
    ``pieces``: number of pieces it is made in, end to end.
    ``lip``: a strip along its front edge.
    ``cleat``: height of the cleats on the walls, 0 for none.
    ``band``: key of its edge band, None for the material's own, "" for none.
    """

    name: str
    material: str
    height: float | None = None
    depth: float | None = None
    x0: float = 0.0
    x1: float | None = None
    pieces: int = 1
    lip: LipSpec = field(default_factory=LipSpec)
    cleat: float = 60.0
    band: str | None = None


def build_corner_shelves(
    spec: CornerShelvesSpec, envelope: Envelope, catalogue: Catalogue
) -> Component:
    """Shelves and cleats in the closet's frame; ``ClosetError`` for what cannot be built."""
    name, a, b = spec.name, spec.along_back, spec.along_side
    board = catalogue.material(spec.material, subject=name)
    t = board.thickness
    require(name, "length along the back", a, 100.0, envelope.width)
    require(name, "length along the side", b, 100.0, envelope.depth)
    require(name, "depth along the back", spec.depth_back, 50.0, b)
    require(name, "depth along the side", spec.depth_side, 50.0, a)
    require(name, "height of the cleats", spec.cleat, 20.0, 200.0)
    if not spec.heights:
        raise ClosetError(name, "heights", "none", "must be given, one for each shelf")
    left = spec.corner is Corner.LEFT
    x0 = 0.0 if left else envelope.width - a
    y0 = envelope.depth - b
    free = Rim.END if left else Rim.START
    dx, dy = a - spec.depth_side, b - spec.depth_back
    notches = (Notch(free, Rim.FRONT, dx, dy),) if dx > 1e-6 and dy > 1e-6 else ()
    rims = (Rim.FRONT, free)
    grain = Grain.LENGTH if board.grained else Grain.NONE
    shelf = Panel(
        a, b, t, board.key, grain, notches=notches,
        bands=bands_for(catalogue, board.key, spec.band, rims, name), visible=frozenset(rims),
    )
    behind = Panel(a - CLEAT_SHORT, spec.cleat, t, board.key, grain)
    beside = Panel(b - t - CLEAT_SHORT, spec.cleat, t, board.key, grain)
    parts: list[Part] = []
    low = 0.0
    for i, z in enumerate(sorted(spec.heights), 1):
        require(f"{name}, shelf {i}", "height", z, low + spec.cleat, envelope.height - t,
                "above the floor, with room for its cleats")
        low = z + t
        x = x0 if left else x0 + CLEAT_SHORT
        side = 0.0 if left else envelope.width - t
        parts += [
            Part(f"shelf {i}", name, Role.CORNER_SHELF, shelf, Place((x0, y0, z), *LYING)),
            Part(f"shelf {i} back cleat", name, Role.CLEAT, behind,
                 Place((x, envelope.depth, z - spec.cleat), *FACING)),
            Part(f"shelf {i} side cleat", name, Role.CLEAT, beside,
                 Place((side, y0 + CLEAT_SHORT, z - spec.cleat), *LYING_DEEP)),
        ]
    return _component(name, parts, ())


def build_over_shelf(spec: OverShelfSpec, site: Site, catalogue: Catalogue) -> Component:
    """Shelf, lip and cleats in the closet's frame; ``ClosetError`` for what cannot be built."""
    name, envelope = spec.name, site.envelope
    board = catalogue.material(spec.material, subject=name)
    lip = catalogue.material(spec.lip.material or spec.material, subject=name)
    x1 = envelope.width if spec.x1 is None else spec.x1
    require(name, "left end", spec.x0, 0.0, envelope.width - 100.0)
    require(name, "right end", x1, spec.x0 + 100.0, envelope.width)
    depth = envelope.depth if spec.depth is None else spec.depth
    require(name, "depth", depth, 60.0 + lip.thickness, envelope.depth)
    z = spec.height
    if z is None:
        z = max((h.box.z1 for h in site.hosts.values()), default=None)
        if z is None:
            raise ClosetError(name, "height", "none", "must be given where no carcass carries it")
    require(name, "height", z, spec.cleat, envelope.height - board.thickness, "above the floor")
    if spec.lip.height:
        require(name, "height of the lip", spec.lip.height, board.thickness, 150.0)
    if not 1 <= spec.pieces <= 10:
        raise ClosetError(name, "pieces", spec.pieces, "must be 1 to 10")
    y0 = envelope.depth - depth
    ends, findings = _ends(spec, site, x1, z)
    grain = Grain.LENGTH if board.grained else Grain.NONE
    thick = lip.thickness if spec.lip.height else 0.0
    band = () if thick else bands_for(catalogue, board.key, spec.band, (Rim.FRONT,), name)
    parts: list[Part] = []
    for i, (a, b) in enumerate(pairwise(ends), 1):
        tag = f" {i}" if spec.pieces > 1 else ""
        panel = Panel(b - a, depth - thick, board.thickness, board.key, grain, bands=band,
                      visible=frozenset({Rim.FRONT} if not thick else ()))
        parts.append(Part(f"shelf{tag}", name, Role.OVER_SHELF, panel,
                          Place((a, y0 + thick, z), *LYING)))
        if thick:
            rims = (Rim.FRONT, Rim.REAR)
            strip = Panel(
                b - a, spec.lip.height, thick, lip.key,
                Grain.LENGTH if lip.grained else Grain.NONE,
                bands=bands_for(catalogue, lip.key, spec.band, rims, name),
                visible=frozenset(rims),
            )
            low = z + board.thickness - spec.lip.height
            parts.append(Part(f"lip{tag}", name, Role.LIP, strip,
                              Place((a, y0 + thick, low), *FACING)))
    if spec.cleat:
        require(name, "height of the cleats", spec.cleat, 20.0, 200.0)
        parts += _cleats(spec, site, (x1, y0 + thick, z), board.thickness, grain)
    return _component(name, parts, findings)


def _ends(
    spec: OverShelfSpec, site: Site, x1: float, z: float
) -> tuple[list[float], tuple[Finding, ...]]:
    """Where the pieces of the shelf end: over the upright nearest to an even division."""
    under = [
        (b.x0 + b.x1) / 2 for h in site.hosts.values() for p in h.parts
        if p.role in (Role.SIDE, Role.DIVIDER) for b in (p.box(),) if b.z1 > z - 60.0
    ]
    size = (x1 - spec.x0) / spec.pieces
    found = [spec.x0]
    for i in range(1, spec.pieces):
        even = spec.x0 + i * size
        near = [x for x in under if abs(x - even) < size / 3 and x > found[-1] + 1.0]
        found.append(min(near, key=lambda x: abs(x - even), default=even))
    loose = [x for x in found[1:] if all(abs(x - u) > 1.0 for u in under)]
    doubts = (Finding(
        Severity.WARNING, spec.name, "joint-in-the-air",
        "a joint between two of its pieces lies over no upright: put a batten under it, or make "
        "it in other pieces", "common practice, no published source",
        ", ".join(site.figures.length(x) for x in loose),
    ),) if loose else ()
    return [*found, x1], doubts


def _cleats(
    spec: OverShelfSpec, site: Site, corner: tuple[float, float, float], t: float, grain: Grain
) -> list[Part]:
    """On the walls under the shelf, but where a carcass stands."""
    x1, y0, z = corner
    depth, width = site.envelope.depth, site.envelope.width
    low = z - spec.cleat
    taken = [h.box for h in site.hosts.values() if h.box.z1 > low + 1e-6]
    strips = Box(spec.x0, depth - t, low, x1, depth, z)
    parts = []
    for i, (a, b) in enumerate(_free(strips, taken), 1):
        panel = Panel(b - a, spec.cleat, t, spec.material, grain)
        parts.append(Part(f"back cleat {i}", spec.name, Role.CLEAT, panel,
                          Place((a, depth, low), *FACING)))
    for side, x, at_wall in (
        ("left", 0.0, spec.x0 < 1e-6), ("right", width - t, x1 > width - 1e-6)
    ):
        length = depth - t - y0 - CLEAT_SHORT
        space = Box(x, y0 + CLEAT_SHORT, low, x + t, depth - t, z)
        if at_wall and length > LEAST_CLEAT and not any(b.overlaps(space) for b in taken):
            panel = Panel(length, spec.cleat, t, spec.material, grain)
            parts.append(Part(f"{side} cleat", spec.name, Role.CLEAT, panel,
                              Place((x, y0 + CLEAT_SHORT, low), *LYING_DEEP)))
    return parts


def _free(strip: Box, taken: Iterable[Box]) -> list[tuple[float, float]]:
    """The stretches of a strip along x that no box takes."""
    x, found = strip.x0, []
    for box in sorted((b for b in taken if b.overlaps(strip)), key=lambda b: b.x0):
        found.append((x, box.x0))
        x = max(x, box.x1)
    found.append((x, strip.x1))
    return [(a, b) for a, b in found if b - a >= LEAST_CLEAT]


def _component(
    name: str, parts: Sequence[Part], findings: tuple[Finding, ...]
) -> Component:
    for part in parts:
        check_panel(part.panel, part.full_name, PLAIN)
    cleats = [p for p in parts if p.role is Role.CLEAT]
    lips = [p for p in parts if p.role is Role.LIP]
    needs = [
        HardwareNeed(key, sum(fastener_count(p.panel.length, pitch) for p in group), purpose)
        for key, group, pitch, purpose in (
            (WALL_SCREW, cleats, CLEAT_PITCH, "cleats to the studs"),
            (SHELF_SCREW, cleats, SHELF_PITCH, "shelves to their cleats"),
            (LIP_SCREW, lips, CLEAT_PITCH, "lips to shelves"),
        ) if group
    ]
    return Component(name, tuple(parts), box_around(parts), tuple(needs), findings)
