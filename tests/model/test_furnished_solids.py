"""Some of the random furnished closets as solids: FreeCAD finds the common volumes that the
core's boxes say, none where nothing is named, and the drawers' ways free where they are."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations

import FreeCAD
import pytest

from closetbench.core.conflicts import common_volume
from closetbench.core.drawers import DrawersSpec
from closetbench.core.parts import Role
from closetbench.model.shapes import panel_shape, placement
from tests.core.furnished import furnished
from tests.core.test_furnished import drawers_of, fitted, named

pytestmark = pytest.mark.freecad

SEEDS = (3, 57, 111, 222, 305, 318, 444, 491)


def solid(part, undrilled=False):
    panel = replace(part.panel, holes=(), rim_holes=()) if undrilled else part.panel
    shape = panel_shape(panel)
    shape.Placement = placement(part.place)
    return shape


@pytest.mark.parametrize("seed", SEEDS)
def test_common_volumes_of_solids_are_those_of_the_core(seed):
    found = furnished(seed)
    pairs = named(found, "parts-overlap")
    solids = {}
    compared = 0
    for p, q in combinations(found.parts, 2):
        if not p.box().overlaps(q.box(), 1e-3) or fitted(p, q):
            continue
        a, b = (
            solids.setdefault(part.full_name, solid(part, undrilled=True)) for part in (p, q))
        real, said = a.common(b).Volume, common_volume(p, q)
        # a front that is tapered counts as its rectangle
        if not (p.panel.tapers or q.panel.tapers):
            assert real == pytest.approx(said, rel=1e-5, abs=0.05), (p.full_name, q.full_name)
        compared += 1
        if real > 1.0:
            both = {(p.full_name, q.full_name), (q.full_name, p.full_name)}
            assert both & pairs, (p.full_name, q.full_name)
    assert compared > 3


@pytest.mark.parametrize("seed", SEEDS)
def test_solids_are_the_panels_and_drawers_come_out(seed):
    found = furnished(seed)
    for part in found.parts:
        shape = solid(part)
        assert shape.isValid(), part.full_name
        assert shape.Volume == pytest.approx(part.panel.volume, rel=1e-6), part.full_name
    blocked = {s for s, _ in (*named(found, "pull-blocked"), *named(found, "pull-behind-door"))}
    overlaps = {n for pair in named(found, "parts-overlap") for n in pair}
    specs = {s.name for s in found.design.components if isinstance(s, DrawersSpec)}
    for name, group, slide in drawers_of(found):
        if name in blocked or {p.full_name for p in group} & overlaps:
            continue
        sides = [p for p in group if p.role is Role.BOX_SIDE]
        travel = sides[0].panel.length * slide.extension + slide.over_travel
        assert name.partition(":")[0] in specs
        others = [p for p in found.parts if p not in group]
        for part in group:
            moved = solid(part, undrilled=True)
            low = moved.BoundBox
            # the way is what the part passes through, shut to pulled out, in steps of 50 mm
            near = [
                o for o in others
                if o.box().x0 < low.XMax and o.box().x1 > low.XMin
                and o.box().z0 < low.ZMax and o.box().z1 > low.ZMin
                and o.box().y0 < low.YMax and o.box().y1 > low.YMin - travel
                and not fitted(part, o)
            ]
            for other in near:
                rest = solid(other, undrilled=True)
                at = 0.0
                while at <= travel:
                    here = moved.translated(FreeCAD.Vector(0.0, -at, 0.0))
                    assert here.common(rest).Volume < 1.0, (part.full_name, other.full_name, at)
                    at += 50.0
