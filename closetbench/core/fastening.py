"""How a carcass is held to the wall: screws through its cleats or back, or anti-tip anchors.

Lengths mm, forces N. What cannot be computed comes with the reason.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from closetbench.core import anchoring, walls
from closetbench.core.anchoring import ANCHOR_HOLDS, Anchorage, FreeUnit
from closetbench.core.circumstances import Circumstances
from closetbench.core.component import Component
from closetbench.core.envelope import Envelope
from closetbench.core.envelope import Wall as Side
from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.fixings import Fastener, FastenerKind, board_withdrawal
from closetbench.core.materials import Catalogue
from closetbench.core.parts import HardwareNeed, Part, Role
from closetbench.core.specs import BaseKind, CarcassSpec
from closetbench.core.walls import WallKind

STRIP_BACK = 12.7
"""mm: a back this thick takes the screws into the wall, Architectural Woodwork Standards,
edition 1, 4.4.18."""
BACK_SCREWS_BELOW = 40.0
"""How far below the top the screws go through such a back, mm."""
ANCHOR_SCREW, SCREW_SKIN = 4.0, 2.0
"""mm: a usual screw of an anchor, and what must stay under its point."""
FARTHEST_WALL = 60.0
"""A carcass farther from the wall than this has nothing to be screwed to, mm."""

Weighed = Sequence[tuple[Part, float]]


@dataclass(frozen=True)
class Fastened:
    """A unit, what holds it, why that is not settled ("" where it is), and what it takes."""

    unit: FreeUnit
    anchorage: Anchorage
    why_not: str
    needs: tuple[HardwareNeed, ...]


STRAP_UNKNOWN = (
    "what its anti-tip anchors hold is for their maker to say, and needs a stud or masonry behind"
)


def strap(unit: FreeUnit) -> Anchorage:
    """Anti-tip anchors of which nobody knows what they are screwed to."""
    return Anchorage(anchoring.anchors(unit), unit.height, None, "anti-tip anchors")


def carcass_unit(
    component: Component, spec: CarcassSpec, masses: Weighed,
    drawers: tuple[anchoring.Drawer, ...] = (), leaves: tuple[anchoring.Leaf, ...] = (),
) -> FreeUnit:
    """A carcass as something that stands free, empty, with the centre of its parts' mass.

    ``masses``: of all parts, those of the ``drawers`` in it included, of the ``leaves`` not.
    """
    box = component.box
    total = sum(m for _, m in masses)
    boxes = [(p.box(), m) for p, m in masses]
    y = sum(m * (b.y0 + b.y1) / 2 for b, m in boxes) / total - box.y0
    z = sum(m * (b.z0 + b.z1) / 2 for b, m in boxes) / total - box.z0
    foot = 0.0 if spec.base.kind is BaseKind.NONE else spec.base.setback
    return FreeUnit(
        component.name, box.x1 - box.x0, box.y1 - box.y0, box.z1 - box.z0, total, foot, y, z,
        drawers, leaves=leaves,
    )


def fasten(
    component: Component, envelope: Envelope, catalogue: Catalogue,
    circumstances: Circumstances, unit: FreeUnit, figures: Figures,
) -> Fastened:
    """How a carcass is held to the wall, and whether that can be computed."""
    rows = _strips(component, catalogue)
    gaps = [g.value for g in envelope.gaps_at(Side.BACK)]
    gap = envelope.depth - component.box.y1 + max(gaps, default=0.0)
    if not rows:
        return _by_anchors(component, catalogue, circumstances, unit, gap, figures)
    wall = circumstances.wall
    level, thick, spans, key = max(rows, key=lambda row: row[0])
    nothing = Anchorage(0, level, None, "screws through its cleats")
    if wall.kind is not WallKind.WOOD_STUDS or wall.stud_spacing is None:
        return Fastened(unit, nothing, "the wall is not known or not computed, so no "
            "screws for it are in the bill", ())
    if gap > FARTHEST_WALL:
        return Fastened(
            unit, nothing, f"it stands {figures.length(gap)} from the wall: set it at the rear "
            "or anchor it with brackets", (anchoring.anchor_needs(unit),),
        )
    screw = walls.wall_screw(wall, thick, gap, catalogue)
    if screw is None:
        return Fastened(
            unit, nothing, "no screw of the catalogue reaches through "
            f"{figures.small(thick)} of cleat, {figures.small(gap)} of gap and "
            f"{figures.small(wall.cover)} of lining far enough into a stud", (),
        )
    hits = walls.studs_hit(wall, spans)
    if not hits:
        where = "" if wall.first_stud is not None else ", wherever the studs are: survey the first"
        return Fastened(
            unit, nothing, f"no stud is sure to lie behind its top cleat{where}, or anchor it "
            "with brackets", (anchoring.anchor_needs(unit),),
        )
    item = catalogue.item(screw.key)
    through = walls.through_board(catalogue.material(key, subject=component.name))
    pull = screw.pull if through is None else min(screw.pull, through)
    heads = "; whether the heads pull through this board is not published" if (
        through is None) else ""
    count = sum(walls.studs_hit(wall, row[2]) for row in rows)
    purpose = f"{component.name} to the studs"
    return Fastened(
        unit,
        Anchorage(
            hits, level, pull,
            f"{hits} x {item.title} through the top cleat, one into each stud, and as many "
            f"through each other cleat, heads on washers{heads}",
        ),
        "", (HardwareNeed(screw.key, count, purpose), HardwareNeed(walls.WASHER, count, purpose)),
    )


def _by_anchors(
    component: Component, catalogue: Catalogue, circumstances: Circumstances, unit: FreeUnit,
    gap: float, figures: Figures,
) -> Fastened:
    """A carcass that nothing can be screwed through: anchors on its own boards, into studs."""
    wall = circumstances.wall
    hold, text = _board_hold(component, catalogue, figures)
    why = f"it has neither cleats nor a back of {figures.small(STRIP_BACK)} to screw through, and "
    studs = walls.studs_hit(wall, [(component.box.x0, component.box.x1)])
    each = min(ANCHOR_HOLDS, hold)
    if hold <= 0 or wall.kind is not WallKind.WOOD_STUDS or not studs or gap > FARTHEST_WALL:
        return Fastened(
            unit, strap(unit), why + STRAP_UNKNOWN + text, (anchoring.anchor_needs(unit),))
    count = anchoring.anchors(unit, each)
    if count > studs:
        return Fastened(
            unit, strap(unit),
            f"{why}it would take {count} anchors of {figures.force(each)} each, but only {studs} "
            f"studs are sure to lie behind it{text}", (anchoring.anchor_needs(unit, count),),
        )
    return Fastened(
        unit,
        Anchorage(
            count, unit.height, each,
            f"{count} {anchoring.ANCHOR_SOURCE} at its top, each into a stud and, with a screw of "
            f"its own, into the board{text}",
        ),
        "", (anchoring.anchor_needs(unit, count),),
    )


def _board_hold(
    component: Component, catalogue: Catalogue, figures: Figures
) -> tuple[float, str]:
    """What a screw of an anchor may hold in the face of the carcass's own board, N, and the
    words for it; 0 where nothing is published."""
    side = next((p for p in component.parts if p.role is Role.SIDE), None)
    if side is None:
        return 0.0, ""
    board = catalogue.material(side.panel.material, subject=component.name)
    depth = board.thickness - SCREW_SKIN
    screw = Fastener(FastenerKind.SCREW, ANCHOR_SCREW, board.thickness)
    try:
        hold, source = board_withdrawal(board, screw, depth)
    except ClosetError:
        return 0.0, ""
    return hold, (
        f"; a screw {figures.small(ANCHOR_SCREW)} thick and {figures.small(depth)} deep in the "
        f"face of its own board may hold {figures.force(hold)} ({source})"
    )


def _strips(
    component: Component, catalogue: Catalogue
) -> list[tuple[float, float, list[tuple[float, float]], str]]:
    """What screws can go through into the wall, by level: height, thickness, stretches, and
    key of the board."""
    rear = component.box.y1
    levels: dict[float, list[Part]] = {}
    for part in component.parts:
        if part.role is Role.CLEAT and part.place.along[0] and part.box().y1 > rear - 1.0:
            levels.setdefault(round(part.box().z0, 3), []).append(part)
    if levels:
        return [
            (
                (group[0].box().z0 + group[0].box().z1) / 2, group[0].panel.thickness,
                [(p.box().x0, p.box().x1) for p in group], group[0].panel.material,
            )
            for group in levels.values()
        ]
    backs = [p for p in component.parts if p.role is Role.BACK]
    if not backs or backs[0].panel.thickness < STRIP_BACK:
        return []
    boxes = [p.box() for p in backs]
    spans = [(b.x0, b.x1) for b in boxes]
    thick = backs[0].panel.thickness + rear - boxes[0].y1
    top, bottom = max(b.z1 for b in boxes), min(b.z0 for b in boxes)
    key = backs[0].panel.material
    return [
        (top - BACK_SCREWS_BELOW, thick, spans, key),
        (bottom + BACK_SCREWS_BELOW, thick, spans, key),
    ]
