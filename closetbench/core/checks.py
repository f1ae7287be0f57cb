"""Every check on a built closet: shelves, fixings, tipping, weights, people.

Nothing passes in silence: what is not known is "not checked", with what to find out.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING

from closetbench.core import (
    anchoring,
    base_strength,
    bench_strength,
    drawer_strength,
    fastening,
    grades,
    handling,
    hung,
    movement,
    people,
    rods_strength,
    shelves,
    wall_borne,
    walls,
)
from closetbench.core.anchoring import Leaf
from closetbench.core.circumstances import Circumstances
from closetbench.core.component import Component
from closetbench.core.contents import Contents
from closetbench.core.doors import DoorsSpec
from closetbench.core.drawers import DrawersSpec
from closetbench.core.existing import ExistingSpec
from closetbench.core.face_frame import NAIL, FaceFrameSpec
from closetbench.core.figures import Figures
from closetbench.core.fillers import FillersSpec
from closetbench.core.findings import Finding, Severity
from closetbench.core.loaded import (
    cleat_screw_findings,
    joint_findings,
    loaded_shelves,
    shoe_shelves,
)
from closetbench.core.loads import CRITERIA, ShelfUse
from closetbench.core.materials import Catalogue
from closetbench.core.parts import HardwareNeed, Part, Role
from closetbench.core.people import Level
from closetbench.core.shoe_shelves import ShoeShelvesSpec
from closetbench.core.specs import CarcassSpec, PanelSpec
from closetbench.core.wall_shelves import CornerShelvesSpec, OverShelfSpec

if TYPE_CHECKING:
    from closetbench.core.closet import Closet

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
        unit = fastening.carcass_unit(component, spec, own, tuple(
            b.drawer for c, s in inside for b in drawer_strength.boxes(c, s, catalogue)
        ), tuple(_leaves_on(closet, component.name, catalogue)))
        fastened = fastening.fasten(
            component, closet.envelope, catalogue, circumstances, unit, figures)
        low, high = _range(own, catalogue)
        found += anchoring.findings(
            fastened.unit, fastened.anchorage, figures, fastened.why_not, (low, high))
        needs += fastened.needs
        found += _shelf_findings(
            component, spec, closet, sum(m for _, m in own), catalogue, circumstances, figures)
        whole = handling.carcass_finding(
            component.name, sum(m for _, m in masses[component.name]),
            _range(masses[component.name], catalogue), figures)
        found += [whole] if whole else []
    found += _without_use(closet, carcasses, catalogue, circumstances, figures)
    for component in closet.components:
        found += _what_is_in(
            component, specs[component.name], closet, catalogue, circumstances, figures)
    if carcasses and circumstances.damp is None:
        found.append(Finding(
            Severity.NOT_CHECKED, "room", "climate",
            "not checked: damp air; the shelves are taken to be in a dry, heated room",
            "EN 1995-1-1 service class 1; EN 312, EN 622: boards for dry conditions",
        ))
    for unit in circumstances.units:
        found += anchoring.findings(
            unit, fastening.strap(unit), figures, fastening.STRAP_UNKNOWN)
        needs.append(anchoring.anchor_needs(unit))
    found += _inner_findings(circumstances, catalogue, figures)
    everything = [pair for c in closet.components for pair in masses[c.name]]
    found += handling.part_findings(everything, catalogue, figures)
    found += handling.sheet_findings(
        [p.panel.material for p, _ in everything], catalogue, figures)
    found += movement.findings(closet.parts, catalogue, figures)
    found += _people_findings(closet, circumstances, figures)
    return Checked(tuple(found), tuple(needs))


def _range(
    masses: Sequence[tuple[Part, float]], catalogue: Catalogue
) -> tuple[float, float]:
    """The least and the greatest that these parts may weigh together."""
    ranges = [handling.weight_range(m, catalogue.material(p.panel.material)) for p, m in masses]
    return sum(low for low, _ in ranges), sum(high for _, high in ranges)


def _drawers_in(closet: Closet, carcass: str) -> list[tuple[Component, DrawersSpec]]:
    """The banks of drawers in a carcass."""
    built = {c.name: c for c in closet.components}
    return [
        (built[s.name], s) for s in closet.design.components
        if isinstance(s, DrawersSpec) and s.spot.carcass == carcass
    ]


def _leaves_on(closet: Closet, carcass: str, catalogue: Catalogue) -> Iterable[Leaf]:
    """The doors before a carcass."""
    built = {c.name: c for c in closet.components}
    for spec in closet.design.components:
        if isinstance(spec, DoorsSpec) and spec.spot.carcass == carcass:
            for part in built[spec.name].parts:
                if part.role is Role.DOOR:
                    b = part.box()
                    yield Leaf(
                        b.x1 - b.x0, (b.z0 + b.z1) / 2, handling.part_weight(part, catalogue))


def _what_is_in(
    component: Component, spec: Contents | CarcassSpec | PanelSpec | FillersSpec,
    closet: Closet, catalogue: Catalogue, circumstances: Circumstances, figures: Figures,
) -> Iterable[Finding]:
    """The checks of what stands in, hangs in or lies over the carcasses, by its kind."""
    if isinstance(spec, DrawersSpec):
        yield from drawer_strength.findings(component, spec, catalogue, figures)
    elif isinstance(spec, DoorsSpec):
        frame = next((c for c in closet.components if c.frames == spec.spot.carcass), None)
        holder = frame.parts[0].panel.material if frame else _board_of(closet, spec.spot.carcass)
        yield from hung.door_findings(component, holder, catalogue, figures)
    elif isinstance(spec, FaceFrameSpec):
        yield from hung.frame_findings(
            component, _board_of(closet, spec.carcass), NAIL, catalogue, figures)
    elif isinstance(spec, ShoeShelvesSpec | CornerShelvesSpec | OverShelfSpec):
        use = circumstances.shelf_criterion()
        if use is None:
            return
        if isinstance(spec, ShoeShelvesSpec):
            groups = shoe_shelves(component, catalogue)
            for group in groups:
                yield from shelves.findings(
                    group, use, catalogue, figures, bool(circumstances.damp))
            yield from cleat_screw_findings(
                groups, _board_of(closet, spec.spot.carcass), use, catalogue, figures)
        elif isinstance(spec, CornerShelvesSpec):
            yield from wall_borne.corner_findings(
                component, closet.envelope, use, circumstances, catalogue, figures)
        else:
            yield from wall_borne.over_findings(
                component, closet.components, closet.envelope, use, circumstances, catalogue,
                figures)
    elif not component.checked and not isinstance(
        spec, CarcassSpec | PanelSpec | FillersSpec | ExistingSpec
    ):  # a reused piece that nobody has weighed says so itself
        yield Finding(
            Severity.NOT_CHECKED, component.name, "component-not-checked",
            f"not checked: strength and stability of {component.name}; {walls.DEFER}",
        )


def _board_of(closet: Closet, name: str) -> str:
    """Key of the board that what stands in a carcass or bench is screwed to."""
    host = next(c for c in closet.components if c.name == name)
    return host.board or next(
        p.panel.material for p in (*host.parts, *host.reused)
        if p.role in (Role.SIDE, Role.DIVIDER)
    )


def _shelf_findings(
    component: Component, spec: CarcassSpec, closet: Closet, mass: float, catalogue: Catalogue,
    circumstances: Circumstances, figures: Figures,
) -> Iterable[Finding]:
    groups = loaded_shelves(component, spec, closet.envelope.height, catalogue)
    if not groups:
        return
    damp = bool(circumstances.damp)
    use = circumstances.shelf_criterion()
    if use is None:
        return
    for group in groups:
        yield from shelves.findings(group, use, catalogue, figures, damp)
    yield from joint_findings(component, spec, groups, use, catalogue, figures)
    yield from base_strength.findings(component, groups, use, mass, catalogue, figures, damp)


def _without_use(
    closet: Closet, carcasses: Sequence[tuple[Component, CarcassSpec]], catalogue: Catalogue,
    circumstances: Circumstances, figures: Figures,
) -> Iterable[Finding]:
    """Nobody has said what the shelves are for: what the weakest one would do. Once for a
    closet."""
    if circumstances.shelf_criterion() is not None:
        return
    damp = bool(circumstances.damp)
    groups = [
        group for component, spec in carcasses
        for group in loaded_shelves(component, spec, closet.envelope.height, catalogue)
    ]
    others = [p for c in closet.components for p in c.parts if p.role in _OTHER_SHELVES]
    if not (groups or others):
        return
    names = (*(s.name for g in groups for s in g), *(p.full_name for p in others))
    general = CRITERIA[ShelfUse.GENERAL]
    if damp:
        groups = [g for g in groups if grades.grade(g[0].board).damp]
    texts: list[str] = []
    if groups:
        weakest = max(
            groups, key=lambda g: (r := shelves.check(g[0], general, damp)).sag / r.limit)[0]
        for use in (ShelfUse.LINEN, ShelfUse.GENERAL, ShelfUse.BOOKS):
            result = shelves.check(weakest, CRITERIA[use], damp)
            weak = " and may break in time" if result.breaks else ""
            texts.append(
                f"under {CRITERIA[use].title} ({figures.on_area(CRITERIA[use].pressure)}) "
                f"{figures.small(result.sag)} of {figures.small(result.limit)}{weak}"
            )
        texts = [f"; {weakest.name} would sag " + ", ".join(texts)]
    yield Finding(
        Severity.NOT_CHECKED, closet.design.name, "shelf-use",
        "not checked: whether the shelves carry what you will put on them, since that is not "
        "known; say what they are for" + "".join(texts),
        "; ".join(CRITERIA[use].source for use in (ShelfUse.LINEN, ShelfUse.STIFF)),
        fix="enter the use of the shelves: linen, general, books or stiff", parts=names,
    )


_OTHER_SHELVES = (Role.SHOE_SHELF, Role.CORNER_SHELF, Role.OVER_SHELF)


def _inner_findings(
    circumstances: Circumstances, catalogue: Catalogue, figures: Figures
) -> Iterable[Finding]:
    for rod in circumstances.rods:
        yield from rods_strength.findings(rod, catalogue, figures)
    for bench in circumstances.benches:
        yield from bench_strength.findings(bench, catalogue, figures)
        yield from people.lid_findings(bench, catalogue, figures)


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
    if circumstances.children:
        yield from people.entrapment_findings(
            _openings(closet), circumstances.children, figures)
    yield from people.rod_findings(circumstances.rods, circumstances.children, figures)
    yield from people.light_findings(
        circumstances.light, circumstances.light_clearance, figures)
    yield from people.room_findings(circumstances.outlets, circumstances.old_paint)
    parts = closet.parts
    yield from people.work_findings(bool(parts), any(p.panel.grooves for p in parts))


def _openings(closet: Closet) -> list[Level]:
    """Each shelf of a carcass with the clear height above it, where nothing stands on it."""
    found: list[Level] = []
    cases = {s.name for s in closet.design.components if isinstance(s, CarcassSpec)}
    inside = [
        b.box() for c in closet.components if c.name not in cases and not c.frames
        for b in c.bodies
    ]
    for component in closet.components:
        if component.name not in cases:
            continue
        level = [
            (p.box(), p.full_name) for p in component.parts
            if p.role in (Role.BOTTOM, Role.FIXED_SHELF, Role.ADJUSTABLE_SHELF, Role.TOP)
        ]
        for bay in component.bays:
            x = (bay.space.x0 + bay.space.x1) / 2
            boards = sorted(
                ((b, n) for b, n in level if b.x0 < x < b.x1), key=lambda pair: pair[0].z0)
            for (low, name), (high, _) in pairwise(boards):
                middle = (low.z1 + high.z0) / 2
                if not any(
                    b.x0 < x < b.x1 and b.z0 < middle < b.z1 and b.y1 > bay.space.y0
                    and b.y0 < bay.space.y1 for b in inside
                ):
                    found.append(Level(name, high.z0 - low.z1))
    return found
