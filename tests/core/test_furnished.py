"""What must hold for every furnished closet: 500 random ones, by other arithmetic than the
core's."""

from __future__ import annotations

import random
from itertools import combinations

import pytest

from closetbench.core.bodies import Body
from closetbench.core.closet import Closet
from closetbench.core.drawers import DrawersSpec
from closetbench.core.panel import Box
from closetbench.core.parts import Part, Role
from closetbench.core.slides import SlideClass
from tests.core import solids
from tests.core.furnished import CATALOGUE, furnished

BATCH = 50
AHEAD = (Role.FRONT, Role.DOOR)
FRAME = (Role.STILE, Role.RAIL, Role.MULLION)
BOUNDS = (
    *FRAME, Role.SIDE, Role.DIVIDER, Role.TOP, Role.BOTTOM, Role.FIXED_SHELF, Role.BENCH_FRAME,
    Role.BENCH_TOP,
)

pytestmark = pytest.mark.once


def sloped(body: Body) -> bool:
    return isinstance(body, Part) and (bool(body.panel.tapers) or not all(
        abs(c) in (0.0, 1.0) for c in (*body.place.along, *body.place.across)))


def fitted(p: Body, q: Body) -> bool:
    """Whether one is a front tapered to an opening that the carcass is drawn without."""
    return any(
        isinstance(a, Part) and a.panel.tapers and a.role in AHEAD and b.role in BOUNDS
        for a, b in ((p, q), (q, p))
    )


def within(body: Body, point: tuple[float, float, float]) -> bool:
    """Whether a point lies in the wood of a body, cuts left out."""
    if not isinstance(body, Part):
        b = body.box()
        return b.x0 < point[0] < b.x1 and b.y0 < point[1] < b.y1 and b.z0 < point[2] < b.z1
    place, panel = body.place, body.panel
    d = tuple(p - o for p, o in zip(point, place.origin, strict=True))
    x, y, z = (
        sum(a * b for a, b in zip(d, way, strict=True))
        for way in (place.along, place.across, place.up)
    )
    if not (0 < x < panel.length and 0 < y < panel.width and 0 < z < panel.thickness):
        return False
    ring = panel.outline()
    sides = zip(ring, (*ring[1:], ring[0]), strict=True)
    if panel.tapers and any(
        (x1 - x0) * (y - y0) - (y1 - y0) * (x - x0) < 0 for (x0, y0), (x1, y1) in sides
    ):
        return False
    return not any(
        c.x0 < x < c.x1 and c.y0 < y < c.y1 and c.z0 < z < c.z1
        for c in solids.panel_cuts(panel)
    )


def meet(p: Body, q: Body, rng: random.Random) -> bool:
    """Whether two bodies share more than a hair: exactly where both are level, else by points
    within the sloped one, a millimetre inside."""
    a, b = p.box(), q.box()
    if not a.overlaps(b, 1e-3):
        return False
    if sloped(p) or sloped(q):
        if not sloped(p):
            p, q = q, p
        assert isinstance(p, Part)
        panel = p.panel
        points = (
            p.place.point(
                rng.uniform(1, panel.length - 1), rng.uniform(1, panel.width - 1),
                rng.uniform(1, panel.thickness - 1))
            for _ in range(300)
        )
        return any(within(p, point) and within(q, point) for point in points)
    both = solids.common(a, b)
    cuts = [c for v in (p, q) if isinstance(v, Part) for c in solids.part_cuts(v)]
    return any(c.volume > 1.0 for c in solids.cells(both, [c for c in cuts if c.overlaps(both)]))


def named(found: Closet, rule: str) -> set[tuple[str, str]]:
    """Subject and each part that a finding of a rule names."""
    return {(f.subject, p) for f in found.findings if f.rule == rule for p in f.parts}


@pytest.mark.parametrize("start", range(0, 500, BATCH))
def test_solids_meet_nowhere_but_where_a_finding_names_both(start: int) -> None:
    rng = random.Random(start)
    for seed in range(start, start + BATCH):
        found = furnished(seed)
        pairs = named(found, "parts-overlap")
        for p, q in combinations(found.bodies, 2):
            if fitted(p, q) or not meet(p, q, rng):
                continue
            assert p.component != q.component, (seed, p.full_name, q.full_name)
            both = {(p.full_name, q.full_name), (q.full_name, p.full_name)}
            assert both & pairs, (seed, p.full_name, q.full_name)


@pytest.mark.parametrize("start", range(0, 500, BATCH))
def test_nothing_leaves_the_envelope_but_what_is_meant_to(start: int) -> None:
    """Overlaid fronts and doors lie before it, and a face frame that says so or reaches to
    the wall with its scribe allowance."""
    for seed in range(start, start + BATCH):
        found = furnished(seed)
        e = found.envelope
        meant = ("frame-proud", "frame-past", "scribe-stile")
        proud = {f.subject for f in found.findings if f.rule in meant}
        for body in found.bodies:
            b = body.box()
            over = max(-b.x0, b.x1 - e.width)
            if body.role in FRAME and body.component in proud:
                assert over < 10.0 + 1e-6
                assert b.y0 > -25.0
                continue
            assert over < 1e-6, (seed, body.full_name)
            assert b.z0 > -1e-6, (seed, body.full_name)
            assert b.z1 < e.height + 1e-6, (seed, body.full_name)
            assert b.y1 < e.depth + 1e-6, (seed, body.full_name)
            framed = 25.0 if proud else 0.0
            ahead = 25.0 + framed if body.role in AHEAD else framed
            assert b.y0 > -ahead - 1e-6, (seed, body.full_name)


def drawers_of(found: Closet) -> list[tuple[str, list[Part], SlideClass]]:
    """Every drawer: its name, its parts, its slide."""
    specs = [s for s in found.design.components if isinstance(s, DrawersSpec)]
    result = []
    for spec in specs:
        mine = [p for p in found.parts if p.component == spec.name]
        names = {p.name.removesuffix(" bottom") for p in mine if p.role is Role.BOX_BOTTOM}
        for name in names:
            group = [p for p in mine if p.name == name or p.name.startswith(f"{name} ")]
            result.append((f"{spec.name}: {name}", group, CATALOGUE.slides[spec.slide]))
    return result


@pytest.mark.parametrize("start", range(0, 500, BATCH))
def test_every_drawer_comes_out_or_a_finding_says_what_stops_it(start: int) -> None:
    for seed in range(start, start + BATCH):
        found = furnished(seed)
        stops = named(found, "pull-blocked") | named(found, "pull-behind-door")
        overlaps = named(found, "parts-overlap")
        overlaps |= {(b, a) for a, b in overlaps}
        for name, group, slide in drawers_of(found):
            side = next(p.box() for p in group if p.role is Role.BOX_SIDE)
            travel = (side.y1 - side.y0) * slide.extension + slide.over_travel
            way = [
                Box(b.x0, b.y0 - travel, b.z0, b.x1, b.y1, b.z1) for b in (p.box() for p in group)
            ]
            for body in found.bodies:
                if body in group or sloped(body) or any(fitted(p, body) for p in group):
                    continue
                cuts = solids.part_cuts(body) if isinstance(body, Part) else []
                met = any(
                    c.volume > 1.0 for w in way if w.overlaps(body.box())
                    for c in solids.cells(solids.common(w, body.box()), cuts)
                )
                if not met or any((p.full_name, body.full_name) in overlaps for p in group):
                    continue
                assert (name, body.full_name) in stops, (seed, name, body.full_name)


def test_among_them_is_everything() -> None:
    """So that the properties above are about something."""
    roles: set[Role] = set()
    rules: set[str] = set()
    for seed in range(0, 500, 3):
        found = furnished(seed)
        roles |= {b.role for b in found.bodies}
        rules |= {f.rule for f in found.findings}
    assert roles >= {
        Role.FRONT, Role.DOOR, Role.STILE, Role.MULLION, Role.BENCH_TOP, Role.LID, Role.ROD,
        Role.EXISTING, Role.SHOE_SHELF, Role.CORNER_SHELF, Role.OVER_SHELF, Role.LIP,
        Role.BOX_SIDE, Role.FIXED_SHELF, Role.ADJUSTABLE_SHELF,
    }
    assert rules >= {
        "parts-overlap", "pull-blocked", "pull-behind-door", "swing-blocked", "slide-packing",
        "frame-proud", "zone-taken",
    }
