"""Every check on a built closet: shelves, fixings, tipping, weights, people.

Nothing passes in silence: what is not known is "not checked", with what to find out.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from closetbench.core import (
    anchoring,
    bench_strength,
    drawer_strength,
    grades,
    handling,
    movement,
    people,
    rods_strength,
    shelves,
    walls,
)
from closetbench.core.anchoring import Anchorage, FreeUnit
from closetbench.core.circumstances import Circumstances
from closetbench.core.component import Component
from closetbench.core.drawers import DrawersSpec
from closetbench.core.envelope import Wall as Side
from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.fixings import board_withdrawal
from closetbench.core.loaded import joint_findings, loaded_shelves
from closetbench.core.loads import CRITERIA, ShelfUse, criterion
from closetbench.core.materials import Catalogue
from closetbench.core.parts import HardwareNeed, Part, Role
from closetbench.core.people import Level
from closetbench.core.specs import BaseKind, CarcassSpec, PanelSpec
from closetbench.core.walls import WallKind

if TYPE_CHECKING:
    from closetbench.core.closet import Closet

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
class Checked:
    """What the checks come to: findings, and the hardware that fastens the closet."""

    findings: tuple[Finding, ...]
    hardware: tuple[HardwareNeed, ...]


def check_closet(
    closet: Closet, catalogue: Catalogue, circumstances: Circumstances,
    figures: Figures | None = None,
) -> tuple[Finding, ...]:
    """The findings of every check; ``run_checks`` has the hardware too."""
    return run_checks(closet, catalogue, circumstances, figures).findings


def run_checks(
    closet: Closet, catalogue: Catalogue, circumstances: Circumstances,
    figures: Figures | None = None,
) -> Checked:
    """Every check on a built closet, figures printed as ``figures`` says."""
    figures = figures or Figures()
    specs = {c.name: c for c in closet.design.components}
    carcasses = [
        (c, spec) for c in closet.components
        if isinstance(spec := specs.get(c.name), CarcassSpec)
    ]
    masses = {
        c.name: [(p, handling.part_weight(p, catalogue)) for p in c.parts]
        for c in closet.components
    }
    found: list[Finding] = []
    needs: list[HardwareNeed] = []
    found += walls.wall_findings(circumstances.wall, "wall") if (
        carcasses or circumstances.units) else []
    for component, spec in carcasses:
        inside = _drawers_in(closet, component.name)
        own = [pair for c in (component, *(c for c, _ in inside)) for pair in masses[c.name]]
        unit = carcass_unit(component, spec, own, tuple(
            b.drawer for c, s in inside for b in drawer_strength.boxes(c, s, catalogue)
        ))
        fastened = _fasten(component, closet, catalogue, circumstances, unit, figures)
        ranges = [
            handling.weight_range(m, catalogue.material(p.panel.material)) for p, m in own
        ]
        found += anchoring.findings(
            fastened.unit, fastened.anchorage, figures, fastened.why_not,
            (sum(low for low, _ in ranges), sum(high for _, high in ranges)))
        needs += fastened.needs
        found += _shelf_findings(
            component, spec, closet, catalogue, circumstances, figures)
        whole = handling.carcass_finding(
            component.name, sum(m for _, m in masses[component.name]), figures)
        found += [whole] if whole else []
    found += [
        Finding(
            Severity.NOT_CHECKED, c.name, "component-not-checked",
            f"not checked: strength and stability of {c.name}; {walls.DEFER}",
        )
        for c in closet.components
        if not c.checked
        and not isinstance(specs.get(c.name), CarcassSpec | PanelSpec | DrawersSpec)
    ]
    for component in closet.components:
        bank = specs.get(component.name)
        if isinstance(bank, DrawersSpec):
            found += drawer_strength.findings(component, bank, catalogue, figures)
    if carcasses and circumstances.damp is None:
        found.append(Finding(
            Severity.NOT_CHECKED, "room", "climate",
            "not checked: damp air; the shelves are taken to be in a dry, heated room",
            "EN 1995-1-1 service class 1; EN 312, EN 622: boards for dry conditions",
        ))
    for unit in circumstances.units:
        found += anchoring.findings(unit, _strap(unit), figures, _STRAP_UNKNOWN)
        needs.append(anchoring.anchor_needs(unit))
    found += _inner_findings(circumstances, catalogue, figures)
    everything = [pair for c in closet.components for pair in masses[c.name]]
    found += handling.part_findings(everything, catalogue, figures)
    found += handling.sheet_findings(
        [p.panel.material for p, _ in everything], catalogue, figures)
    found += movement.findings(closet.parts, catalogue, figures)
    found += _people_findings(closet, circumstances, figures)
    return Checked(tuple(found), tuple(needs))


def _drawers_in(closet: Closet, carcass: str) -> list[tuple[Component, DrawersSpec]]:
    """The banks of drawers in a carcass."""
    built = {c.name: c for c in closet.components}
    return [
        (built[s.name], s) for s in closet.design.components
        if isinstance(s, DrawersSpec) and s.spot.carcass == carcass
    ]


def _shelf_findings(
    component: Component, spec: CarcassSpec, closet: Closet, catalogue: Catalogue,
    circumstances: Circumstances, figures: Figures,
) -> Iterable[Finding]:
    groups = loaded_shelves(component, spec, closet.envelope.height, catalogue)
    if not groups:
        return
    damp = bool(circumstances.damp)
    use = criterion(
        circumstances.shelf_use, circumstances.shelf_load, circumstances.sag_over)
    if use is None:
        yield _without_use(component.name, groups, damp, figures)
        return
    for group in groups:
        yield from shelves.findings(group, use, catalogue, figures, damp)
    yield from joint_findings(component, spec, groups, use, catalogue, figures)


def _without_use(
    name: str, groups: Sequence[Sequence[shelves.Shelf]], damp: bool, figures: Figures
) -> Finding:
    """Nobody has said what the shelves are for: what the weakest one would do."""
    general = CRITERIA[ShelfUse.GENERAL]
    if damp:
        groups = [g for g in groups if grades.grade(g[0].board).damp]
    texts: list[str] = []
    if groups:
        weakest = max(
            groups, key=lambda g: (r := shelves.check(g[0], general, damp)).sag / r.limit)[0]
        for use in (ShelfUse.LINEN, ShelfUse.GENERAL, ShelfUse.BOOKS):
            result = shelves.check(weakest, CRITERIA[use], damp)
            weak = "" if result.strong else " and may break in time"
            texts.append(
                f"under {CRITERIA[use].title} ({figures.on_area(CRITERIA[use].pressure)}) "
                f"{figures.small(result.sag)} of {figures.small(result.limit)}{weak}"
            )
        texts = [f"; {weakest.name} would sag " + ", ".join(texts)]
    return Finding(
        Severity.NOT_CHECKED, name, "shelf-use",
        "not checked: whether the shelves carry what you will put on them, since that is not "
        "known; say what they are for" + "".join(texts),
        "; ".join(CRITERIA[use].source for use in (ShelfUse.LINEN, ShelfUse.STIFF)),
        fix="enter the use of the shelves: linen, general, books or stiff",
    )


@dataclass(frozen=True)
class _Fastened:
    unit: FreeUnit
    anchorage: Anchorage
    why_not: str
    needs: tuple[HardwareNeed, ...]


_STRAP_UNKNOWN = (
    "what its anti-tip anchors hold is for their maker to say, and needs a stud or masonry behind"
)


def _strap(unit: FreeUnit) -> Anchorage:
    return Anchorage(anchoring.ANCHORS, unit.height, None, "anti-tip anchors")


def carcass_unit(
    component: Component, spec: CarcassSpec, masses: Weighed,
    drawers: tuple[anchoring.Drawer, ...] = (),
) -> FreeUnit:
    """A carcass as something that stands free, empty, with the centre of its parts' mass.

    ``masses``: of all parts, those of the ``drawers`` in it included.
    """
    box = component.box
    total = sum(m for _, m in masses)
    boxes = [(p.box(), m) for p, m in masses]
    y = sum(m * (b.y0 + b.y1) / 2 for b, m in boxes) / total - box.y0
    z = sum(m * (b.z0 + b.z1) / 2 for b, m in boxes) / total - box.z0
    foot = 0.0 if spec.base.kind is BaseKind.NONE else spec.base.setback
    return FreeUnit(
        component.name, box.x1 - box.x0, box.y1 - box.y0, box.z1 - box.z0, total, foot, y, z,
        drawers,
    )


def _fasten(
    component: Component, closet: Closet, catalogue: Catalogue,
    circumstances: Circumstances, unit: FreeUnit, figures: Figures,
) -> _Fastened:
    """How a carcass is held to the wall: screws through its cleats, or anchors."""
    rows = _strips(component, catalogue)
    if not rows:
        return _Fastened(
            unit, _strap(unit),
            f"it has neither cleats nor a back of {STRIP_BACK:g} mm to screw through, and "
            + _STRAP_UNKNOWN + _board_hold(component, catalogue, figures),
            (anchoring.anchor_needs(unit),),
        )
    wall = circumstances.wall
    level, thick, spans = max(rows, key=lambda row: row[0])
    nothing = Anchorage(0, level, None, "screws through its cleats")
    gaps = [g.value for g in closet.envelope.gaps_at(Side.BACK)]
    gap = closet.envelope.depth - component.box.y1 + max(gaps, default=0.0)
    if wall.kind is not WallKind.WOOD_STUDS or wall.stud_spacing is None:
        return _Fastened(unit, nothing, "the wall is not known or not computed, so no "
            "screws for it are in the bill", ())
    if gap > FARTHEST_WALL:
        return _Fastened(
            unit, nothing, f"it stands {gap:.0f} mm from the wall: set it at the rear or "
            "anchor it with brackets", (anchoring.anchor_needs(unit),),
        )
    screw = walls.wall_screw(wall, thick, gap, catalogue)
    if screw is None:
        return _Fastened(
            unit, nothing, f"no screw of the catalogue reaches through {thick:.0f} mm of cleat, "
            f"{gap:.0f} mm of gap and {wall.cover:.0f} mm of lining far enough into a stud", (),
        )
    hits = walls.studs_hit(wall, spans)
    if not hits:
        where = "" if wall.first_stud is not None else ", wherever the studs are: survey the first"
        return _Fastened(
            unit, nothing, f"no stud is sure to lie behind its top cleat{where}, or anchor it "
            "with brackets", (anchoring.anchor_needs(unit),),
        )
    item = catalogue.item(screw.key)
    count = sum(walls.studs_hit(wall, row[2]) for row in rows)
    return _Fastened(
        unit,
        Anchorage(
            hits, level, screw.pull,
            f"{hits} x {item.title} through the top cleat, one into each stud, and as many "
            "through each other cleat, heads on washers",
        ),
        "", (HardwareNeed(screw.key, count, f"{component.name} to the studs"),),
    )


def _board_hold(component: Component, catalogue: Catalogue, figures: Figures) -> str:
    """What a screw of an anchor may hold in the face of the carcass's own board."""
    side = next((p for p in component.parts if p.role is Role.SIDE), None)
    if side is None:
        return ""
    board = catalogue.material(side.panel.material, subject=component.name)
    depth = board.thickness - SCREW_SKIN
    try:
        hold, source = board_withdrawal(board, ANCHOR_SCREW, depth)
    except ClosetError:
        return ""
    return (
        f"; a screw {figures.small(ANCHOR_SCREW)} thick and {figures.small(depth)} deep in the "
        f"face of its own board may hold {figures.force(hold)} ({source})"
    )


def _strips(
    component: Component, catalogue: Catalogue
) -> list[tuple[float, float, list[tuple[float, float]]]]:
    """What screws can go through into the wall, by level: height, thickness, stretches."""
    rear = component.box.y1
    levels: dict[float, list[Part]] = {}
    for part in component.parts:
        if part.role is Role.CLEAT and part.place.along[0] and part.box().y1 > rear - 1.0:
            levels.setdefault(round(part.box().z0, 3), []).append(part)
    if levels:
        return [
            (
                (group[0].box().z0 + group[0].box().z1) / 2, group[0].panel.thickness,
                [(p.box().x0, p.box().x1) for p in group],
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
    return [
        (top - BACK_SCREWS_BELOW, thick, spans), (bottom + BACK_SCREWS_BELOW, thick, spans)
    ]


def _inner_findings(
    circumstances: Circumstances, catalogue: Catalogue, figures: Figures
) -> Iterable[Finding]:
    for rod in circumstances.rods:
        yield from rods_strength.findings(rod, figures)
    for bench in circumstances.benches:
        yield from bench_strength.findings(bench, catalogue, figures)
        yield from people.lid_findings(bench)


def _people_findings(
    closet: Closet, circumstances: Circumstances, figures: Figures
) -> Iterable[Finding]:
    levels = [
        Level(p.full_name, p.box().z1) for p in closet.parts
        if p.role in (Role.FIXED_SHELF, Role.ADJUSTABLE_SHELF)
    ]
    levels += [Level(r.name, r.height) for r in circumstances.rods if r.height is not None]
    yield from people.reach_findings(levels, figures)
    yield from people.child_findings(levels, circumstances.children, figures)
    yield from people.rod_findings(circumstances.rods, circumstances.children, figures)
    yield from people.light_findings(
        circumstances.light, circumstances.light_clearance, figures)
    yield from people.room_findings(circumstances.outlets, circumstances.old_paint)
    parts = closet.parts
    yield from people.work_findings(bool(parts), any(p.panel.grooves for p in parts))
