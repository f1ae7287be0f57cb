"""Shelves that walls carry, and the screws of their cleats: in a corner and over the top.

A corner shelf is taken as strips side by side, parallel to the line between the free ends
of its cleats, each carried by both; what reaches past that line hangs on them. Nothing
closer is published; by the lower bound theorem of plates such a set of strips, in
equilibrium, is on the safe side for strength. Against plates by finite elements the sag
comes out 1.5 to 2 times too great. Lengths mm, forces N.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import pairwise

from closetbench.core import grades, shelves
from closetbench.core.beams import Ends, Section, deflection, moment, rectangle
from closetbench.core.circumstances import Circumstances
from closetbench.core.component import Component, fastener_count
from closetbench.core.envelope import Envelope
from closetbench.core.envelope import Wall as Side
from closetbench.core.errors import ClosetError
from closetbench.core.figures import GRAVITY, Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.fixings import (
    FASTENERS,
    NDS_LATERAL,
    board_withdrawal,
    lateral_allowable,
)
from closetbench.core.handling import DENSITIES
from closetbench.core.loaded import lip_of, lips_in, sideways_verdict
from closetbench.core.loads import Criterion
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Box, Grain
from closetbench.core.parts import Part, Role
from closetbench.core.shelves import Hold, Shelf
from closetbench.core.wall_shelves import CLEAT_PITCH, SHELF_PITCH, SHELF_SCREW, WALL_SCREW
from closetbench.core.walls import DEFER, STUD_GRAVITY, STUD_REACH, WallKind, studs_hit

STRIPS = "a strip from cleat to cleat: lower bound theorem of plates; Wood Handbook Table 9-1"
GRID = 20.0
"""mm between the points in which a corner shelf is summed up."""
TOUCH = 2.0
"""mm between a shelf and what lies right under it."""
PER_STUD = 2
"""Screws that a cleat 50 mm high and more may have one above the other in a stud, 4 diameters
apart (common practice, no published source)."""


def corner_findings(
    component: Component, envelope: Envelope, use: Criterion, circumstances: Circumstances,
    catalogue: Catalogue, figures: Figures,
) -> Iterable[Finding]:
    """Corner shelves that are alike, once: sag, strength, whether they stay on their cleats,
    and the cleats' screws."""
    found = [p for p in component.parts if p.role is Role.CORNER_SHELF]
    part, names = found[0], tuple(p.full_name for p in found)
    cleats = [p for p in component.parts if p.role is Role.CLEAT]
    board = catalogue.material(part.panel.material, subject=component.name)
    panel = part.panel
    along_back, along_side = (
        next(c.panel.length for c in cleats if c.place.along[0]),
        next(c.panel.length + c.panel.thickness for c in cleats if c.place.along[1]),
    )
    notch = panel.notches[0] if panel.notches else None
    dx, dy = (notch.dx, notch.dy) if notch else (0.0, 0.0)
    inner = (panel.length - dx) / along_back + (panel.width - dy) / along_side
    area, far = _plan(panel.length, panel.width, dx, dy, along_back, along_side)
    load = min(use.pressure * area, use.cap) + use.centre
    own = board.density * 1e-9 * area * board.thickness * GRAVITY
    if notch and inner < 1:
        yield Finding(
            Severity.NOT_CHECKED, part.full_name, "corner-legs",
            "not checked: its legs are too long for their depth to be carried from wall to wall; "
            f"put a leg, a bracket or a side panel under the free end of each; {DEFER}",
            STRIPS, parts=names,
        )
    else:
        yield from _corner_strip(
            part, names, (along_back, along_side), (load, own), 1.0 if notch else far, use,
            circumstances, catalogue, figures)
    yield from _held_down(
        part, names, cleats[:2], (along_back, along_side), (dx, dy), use, own, catalogue, figures)
    yield from cleat_findings(
        component, [(c, (load + own) / 2) for c in cleats[:2]], envelope, circumstances,
        catalogue, figures)


def _plan(
    a: float, b: float, dx: float, dy: float, along_back: float, along_side: float
) -> tuple[float, float]:
    """Area of a corner shelf, and x/a + y/b of its farthest corner, 1 on the line between the
    cleats' free ends."""
    corners = ((a, b - dy), (a - dx, b)) if dx else ((a, b),)
    return a * b - dx * dy, max(cx / along_back + cy / along_side for cx, cy in corners)


def _held_down(
    part: Part, names: tuple[str, ...], cleats: Sequence[Part], legs: tuple[float, float],
    cut: tuple[float, float], use: Criterion, own: float, catalogue: Catalogue, figures: Figures,
) -> Iterable[Finding]:
    """Whether its screws keep a corner shelf on its cleats where only what lies beyond the
    line between their free ends is loaded. The pull of a screw grows with its distance from
    that line."""
    panel = part.panel
    high = legs[0] * legs[1] / math.hypot(*legs)
    past = area = lift = weight = 0.0
    x = GRID / 2
    while x < panel.length:
        y = GRID / 2
        while y < panel.width:
            if x < panel.length - cut[0] or y < panel.width - cut[1]:
                out = (x / legs[0] + y / legs[1] - 1) * high
                area += GRID**2
                weight += out * GRID**2
                if out > 0:
                    past += GRID**2
                    lift += out * GRID**2
            y += GRID
        x += GRID
    turning = min(use.pressure, use.cap / past if past else use.pressure) * lift
    turning += own * weight / area
    if turning <= 0:
        return
    screw = FASTENERS[SHELF_SCREW]
    count = sum(fastener_count(c.panel.length, SHELF_PITCH) for c in cleats)
    # evenly spread along both cleats: sum of the squares of their distances
    worst = turning / (count * high / 3)
    title = catalogue.item(SHELF_SCREW).title
    text = (
        f"loaded beyond the ends of its cleats alone it pulls at the {count} x {title} that hold "
        f"it down on them, at the corner with {figures.force(worst)}"
    )
    board = catalogue.material(cleats[0].panel.material, subject=part.full_name)
    depth = screw.length - panel.thickness
    try:
        if depth <= 0:
            raise ClosetError(title, "length", f"{screw.length:g} mm", "is too short")
        hold, source = board_withdrawal(board, screw, depth, edge=True)
        low, most = (board_withdrawal(board, screw, depth, True, d)[0]
                     for d in DENSITIES[board.kind][:2])
    except ClosetError as error:
        yield Finding(
            Severity.NOT_CHECKED, part.full_name, "corner-tips",
            f"not checked: {text}: {error.limit}", value=figures.force(worst), parts=names)
        return
    yield Finding(
        Severity.NOTE if worst <= hold else Severity.DANGER, part.full_name, "corner-tips",
        text if worst <= hold else f"may tip off its cleats: {text}",
        f"statics; {source}", figures.force(worst), figures.force(hold),
        "" if worst <= hold else "shallower legs, longer screws, or a leg under its front",
        f"{figures.force(min(low, hold))} to {figures.force(max(most, hold))} by the density "
        "published for the board", names,
    )


def strip_of(legs: tuple[float, float]) -> tuple[float, float, float]:
    """Span and width of the strip from one cleat's free end to the other's, as wide as the
    triangle within that line is high, and what it carries of the load: strips of its length
    would have twice the area of the triangle on which all of the load lies."""
    span = math.hypot(*legs)
    return span, legs[0] * legs[1] / span, 2.0


def _corner_strip(
    part: Part, names: tuple[str, ...], legs: tuple[float, float], loads: tuple[float, float],
    out: float, use: Criterion, circumstances: Circumstances, catalogue: Catalogue,
    figures: Figures,
) -> Iterable[Finding]:
    """Sag and strength of the longest strip, in the board's weaker direction. The corner of an
    uncut shelf sags more, in proportion to how far ``out`` it lies."""
    board = catalogue.material(part.panel.material, subject=part.full_name)
    damp = bool(circumstances.damp)
    if damp and grades.grade(board).damp is None:
        yield shelves.damp_finding(board, part.full_name, names)
        return
    span, width, share = strip_of(legs)
    e = min(grades.stiffness(board, True, damp), grades.stiffness(board, False, damp))

    def bar(stiff: float) -> Section:
        return rectangle(width, board.thickness, stiff, grades.shear_modulus(board, stiff))

    low, high = grades.scatter(board, e)
    sag, soft, stiff = (out * deflection(bar(v), span, loads[0] * share) for v in (e, low, high))
    stress = bar(e).stress(moment(span, (loads[0] + loads[1]) * share))
    along = board.e_along <= board.e_across
    allowed = grades.allowed_stress(board, along, damp)
    breaking = grades.lasting_strength(board, along, damp)
    limit = use.limit(span)
    mass = f"{figures.mass(loads[0] / GRAVITY)} of {use.title}"
    fix = "a thicker or stiffer board, shorter legs, or a leg under its front"
    if stress > allowed:
        yield Finding(
            Severity.DANGER if stress > breaking else Severity.WARNING, part.full_name,
            "corner-strength",
            f"a weak board may break under {mass} in time" if stress > breaking else
            f"keeps less strength in reserve under {mass} for years than building design asks for",
            f"{STRIPS}; {grades.grade(board).mor_source}; {grades.STRENGTH_SOURCE}; load: "
            f"{use.source}", figures.stress(stress), figures.stress(allowed), fix,
            "for the mean strengths published "
            + " to ".join(figures.stress(v) for v in grades.strength_range(board, allowed)), names,
        )
    yield Finding(
        Severity.WARNING if sag > limit else Severity.NOTE, part.full_name, "corner-sag",
        f"{'sags too much' if sag > limit else 'sags'} between the ends of its cleats under "
        f"{mass}, reckoned as a strip, which is more than it will",
        f"{STRIPS}; {use.source}", figures.small(sag), figures.small(limit),
        fix if sag > limit else "",
        f"{figures.small_range(stiff, soft)} between the stiffest and the softest boards "
        f"published ({grades.grade(board).e_source})", names,
    )


def over_findings(
    component: Component, others: Sequence[Component], envelope: Envelope, use: Criterion,
    circumstances: Circumstances, catalogue: Catalogue, figures: Figures,
) -> Iterable[Finding]:
    """An over-the-top shelf: each piece between the uprights and side cleats that carry it,
    what reaches past the last of them, and the cleats' screws. The cleat behind is left out
    of account: it carries the rear edge, the front sags all the same."""
    uprights = [
        p.box() for c in others for p in c.parts if p.role in (Role.SIDE, Role.DIVIDER)]
    tops = [p.box() for c in others for p in c.parts if p.role is Role.TOP]
    cleats = [p for p in component.parts if p.role is Role.CLEAT]
    damp = bool(circumstances.damp)
    lips = lips_in(component)
    for part in component.parts:
        if part.role is not Role.OVER_SHELF:
            continue
        box = part.box()
        board = catalogue.material(part.panel.material, subject=part.full_name)
        if damp and grades.grade(board).damp is None:
            yield shelves.damp_finding(board, part.full_name, (part.full_name,))
            continue
        at = _supports(box, uprights, tops, [c.box() for c in cleats])
        if len(at) < 2:
            yield Finding(
                Severity.DANGER, part.full_name, "over-shelf-loose",
                f"lies on {len(at)} uprights and cleats at its ends: it takes two or it comes down",
                "statics",
                fix="cleats on the side walls, or a height at which it lies on a carcass",
            )
            continue
        along = part.panel.grain is not Grain.WIDTH
        lip = lip_of(part, lips, catalogue)
        span = max((b - a for a, b in pairwise(at)), default=0.0)
        past = max(at[0] - box.x0, box.x1 - at[-1], 0.0)
        if span > 0:
            yield from shelves.findings(
                [Shelf(part.full_name, board, span, part.panel.width, Hold.CLEATS, along, lip)],
                use, catalogue, figures, damp)
        if past > board.thickness:
            yield from _overhang(part, past, span, use, catalogue, figures, damp)
    ends = [c for c in cleats if c.place.along[1]]
    backs = [c for c in cleats if c.place.along[0]]
    shelf = next(p for p in component.parts if p.role is Role.OVER_SHELF)
    board = catalogue.material(shelf.panel.material, subject=shelf.full_name)

    def on(cleat: Part, wide: float) -> tuple[Part, float]:
        own = board.weight(wide, shelf.panel.width) * GRAVITY
        return cleat, (use.load(wide, shelf.panel.width) + use.centre + own) / 2

    at = _supports(shelf.box(), uprights, tops, [c.box() for c in cleats])
    widest = max((b - a for a, b in pairwise(at)), default=shelf.panel.length)
    yield from cleat_findings(
        component, [*(on(c, widest) for c in ends), *(on(c, c.panel.length) for c in backs)],
        envelope, circumstances, catalogue, figures)


def _supports(
    box: Box, uprights: Sequence[Box], tops: Sequence[Box], cleats: Sequence[Box]
) -> list[float]:
    """Middles of what a shelf lies on, from the left. Under the top of a carcass its uprights
    carry."""
    found = set()
    for u in uprights:
        # a divider ends under the top, or in a groove of it
        over = [
            t.z1 for t in tops
            if t.x0 - TOUCH < u.x0 and u.x1 < t.x1 + TOUCH
            and t.z0 - TOUCH < u.z1 < t.z1 + TOUCH
        ]
        if abs(max([u.z1, *over]) - box.z0) < TOUCH:
            found.add(round((u.x0 + u.x1) / 2, 1))
    for c in cleats:
        if c.y1 - c.y0 > c.x1 - c.x0 and abs(c.z1 - box.z0) < TOUCH:
            found.add(round((c.x0 + c.x1) / 2, 1))
    return sorted(x for x in found if box.x0 - TOUCH <= x <= box.x1 + TOUCH)


def _overhang(
    part: Part, past: float, span: float, use: Criterion, catalogue: Catalogue,
    figures: Figures, damp: bool,
) -> Iterable[Finding]:
    """What reaches past the last support: a cantilever where the shelf runs on behind it."""
    board = catalogue.material(part.panel.material, subject=part.full_name)
    along = part.panel.grain is not Grain.WIDTH
    width = part.panel.width
    e = grades.stiffness(board, along, damp)
    load = use.load(past, width)

    def sag(stiff: float) -> float:
        bar = rectangle(width, board.thickness, stiff, grades.shear_modulus(board, stiff))
        return deflection(bar, past, load, ends=Ends.CANTILEVER)

    value, limit = sag(e), use.limit(past)
    low, high = grades.scatter(board, e)
    if past < span and value <= limit:
        return
    yield Finding(
        Severity.WARNING, part.full_name, "over-shelf-end",
        f"reaches {figures.length(past)} past the last thing that carries it: put a cleat or an "
        "upright under its end", f"{use.source}; {shelves.BEAM_SOURCE}; statics",
        figures.small(value), figures.small(limit),
        spread=f"{figures.small_range(sag(high), sag(low))} by the boards published "
        f"({grades.grade(board).e_source})", parts=(part.full_name,),
    )


def cleat_findings(
    component: Component, loads: Sequence[tuple[Part, float]], envelope: Envelope,
    circumstances: Circumstances, catalogue: Catalogue, figures: Figures,
) -> Iterable[Finding]:
    """The screws of cleats on the walls, sideways in the studs, as many as are in the bill."""
    wall = circumstances.wall
    screw = FASTENERS[WALL_SCREW]
    for cleat, load in loads:
        box, name = cleat.box(), cleat.full_name
        across = bool(cleat.place.along[0])
        # the bill has one for every ``CLEAT_PITCH`` of cleat
        count = fastener_count(cleat.panel.length, CLEAT_PITCH)
        title = catalogue.item(WALL_SCREW).title
        carries = f"it carries {figures.force(load)} on {count} x {title}"
        if wall.kind is not WallKind.WOOD_STUDS or wall.stud_spacing is None:
            yield Finding(
                Severity.NOT_CHECKED, name, "cleat-screws",
                f"not checked: {carries}, and the wall is not known or not computed; {DEFER}",
                value=figures.force(load),
            )
            continue
        side = Side.BACK if across else (
            Side.LEFT if box.x0 < envelope.width / 2 else Side.RIGHT)
        gap = max((g.value for g in envelope.gaps_at(side)), default=0.0)
        spans = [(box.x0, box.x1)] if across else [(box.y0, box.y1)]
        studs = studs_hit(wall if across else replace(wall, first_stud=None), spans)
        reach = min(screw.length - cleat.panel.thickness - gap - wall.cover, STUD_REACH)
        each = lateral_allowable(
            screw.kind, STUD_GRAVITY, screw.diameter, reach) if reach > 0 else 0.0
        held = min(count, PER_STUD * studs) * each
        fix = (
            "pack out the gap behind it solidly, and put its screws into studs; or blocking "
            f"between the studs, or a side panel under the shelf; {DEFER}"
        )
        if not studs and not (across and wall.first_stud is not None):
            yield Finding(
                Severity.NOT_CHECKED, name, "cleat-screws",
                f"not checked: {carries}, and whether a stud lies behind it is not known: find "
                f"one, and put every screw into it; {DEFER}", value=figures.force(load), fix=fix,
            )
            continue
        if held <= 0:
            why = "no stud is sure to lie behind it" if not studs else (
                f"they reach only {figures.small(max(reach, 0.0))} into a stud")
            yield Finding(
                Severity.DANGER, name, "cleat-screws", f"may come down: {carries}, and {why}",
                NDS_LATERAL, figures.force(load), "", fix,
            )
            continue
        low, high = (held * lateral_allowable(screw.kind, g, screw.diameter, reach) / each
                     for g in STUD_RANGE)
        severity, lead = sideways_verdict(load, held)
        yield Finding(
            severity, name, "cleat-screws", f"{lead}{carries}",
            f"{NDS_LATERAL}; studs of specific gravity {STUD_GRAVITY:g}", figures.force(load),
            figures.force(held), "" if held >= load else fix,
            f"{figures.force(low)} to {figures.force(high)} in the lightest and the heaviest "
            "softwood studs",
        )


STUD_RANGE = (0.36, 0.50)
"""Specific gravity of studs: spruce-pine-fir of the South to Douglas-fir-larch, NDS Table
12.3.3A (quoted)."""
