"""Hanging rods: heights by use, lengths, supports, depth, what is refused, bars to buy."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.errors import ClosetError
from closetbench.core.inside import Spot
from closetbench.core.panel import Box
from closetbench.core.rods import RodHolder, RodRun, RodsSpec, RodUse
from closetbench.core.specs import BaySpec
from tests.core.inside_case import CARCASS, CATALOGUE, closet, component, rules

PLAIN = replace(CARCASS, bays=(BaySpec(width=900.0), BaySpec()))
BAY = Spot("A", 1)
RODS = RodsSpec("R", BAY)


def hung(spec: RodsSpec, carcass=PLAIN, width=1300.0, depth=650.0, height=2400.0):
    built = closet(spec, carcass=carcass, width=width, depth=depth, height=height)
    return built, component(built, "R"), built.components[0].bays[spec.spot.bay - 1].space


@pytest.mark.parametrize(
    ("use", "heights"),
    [
        (RodUse.LONG, (1676.4,)),
        (RodUse.SHORT, (1066.8,)),
        (RodUse.DOUBLE, (1066.8, 2133.6)),
        (RodUse.CHILD, (914.4,)),
    ],
)
def test_heights_by_use(use, heights):
    """66 in for one rod: trim carpenters' practice; 42 and 84 in for two and 36 in for a child:
    common practice, the last within the reach of 20 to 36 in at 3 to 4 years of the 2010 ADA
    Standards, advisory 308.1."""
    built, rods, bay = hung(replace(RODS, use=use))
    assert tuple(r.start[2] for r in rods.lengths) == pytest.approx(heights)
    for rod in rods.lengths:
        assert rod.length == pytest.approx(bay.x1 - bay.x0 - 3.0)
        assert rod.start[0] == pytest.approx(bay.x0 + 1.5)
        # 12 in from the wall
        assert bay.y1 - rod.start[1] == pytest.approx(304.8)
    assert not rules(built.findings, "R") & {"parts-overlap", "rod-low", "shallow-rod"}


def test_a_rod_never_comes_nearer_than_three_inches_to_a_shelf_by_rule():
    carcass = replace(PLAIN, bays=(BaySpec(width=900.0, heights=(1500.0,)), BaySpec()))
    built, rods, bay = hung(RODS, carcass)
    assert rods.lengths[0].start[2] == pytest.approx(bay.z0 + 1500 - 76.2)
    assert "rod-low" in rules(built.findings, "R")
    low = replace(RODS, use=RodUse.DOUBLE)
    built, rods, bay = hung(low, replace(PLAIN, height=1800.0))
    lower, upper = (r.start[2] for r in rods.lengths)
    assert upper == pytest.approx(bay.z1 - 76.2)
    assert lower == pytest.approx((bay.z0 + upper) / 2)


def test_a_rod_along_the_bay_hangs_under_what_lies_above():
    spec = replace(RODS, run=RodRun.ALONG)
    _, rods, bay = hung(spec)
    (rod,) = rods.lengths
    assert rod.start[2] == pytest.approx(bay.z1 - 60)
    assert rod.start[0] == rod.end[0] == pytest.approx((bay.x0 + bay.x1) / 2)
    assert rod.length == pytest.approx(bay.y1 - bay.y0 - 3.0)
    assert {n.key: n.count for n in rods.hardware} == {"rod_hanger_27": 2}
    box = rod.box()
    assert (box.x1 - box.x0, box.z1 - box.z0) == (pytest.approx(27), pytest.approx(27))


@pytest.mark.parametrize(
    ("width", "supports"), [(900.0, 0), (1219.0, 0), (1220.0, 1), (2400.0, 1), (2450.0, 2)]
)
def test_supports_at_most_48_in_apart(width, supports):
    """Architectural Woodwork Standards, edition 1 (2009), 4.4.16: 48 in between supports."""
    carcass = replace(PLAIN, bays=(BaySpec(width=width), BaySpec()))
    _, rods, _ = hung(RODS, carcass, width=width + 400.0)
    needs = {n.key: n.count for n in rods.hardware}
    assert needs.get("rod_hanger_27", 0) == supports
    assert needs["rod_support_27"] == 2


def test_fewer_supports_than_that_are_a_finding():
    carcass = replace(PLAIN, bays=(BaySpec(width=1500.0), BaySpec()))
    built, _, _ = hung(replace(RODS, supports=0), carcass, width=1900.0)
    (found,) = [f for f in built.findings if f.rule == "rod-supports"]
    assert found.subject == "R: rod"


def test_flanges_instead_of_sockets():
    _, rods, _ = hung(replace(RODS, holder=RodHolder.FLANGES, use=RodUse.DOUBLE))
    assert {n.key: n.count for n in rods.hardware} == {"rod_flange_27": 4}


def test_every_fitting_of_every_bar_is_in_the_catalogue():
    for key in CATALOGUE.bars:
        for run in RodRun:
            built, _, _ = hung(replace(RODS, rod=key, run=run))
            for need in built.hardware:
                CATALOGUE.item(need.key)


def test_rods_are_lengths_and_no_parts():
    built = closet(
        RODS, RodsSpec("S", Spot("A", 2), use=RodUse.DOUBLE), carcass=PLAIN, width=1300.0,
        height=2400.0,
    )
    assert "rod_steel_27" not in {n.key for n in built.hardware}
    assert len(built.lengths) == 3
    assert len(built.parts) == len([b for b in built.bodies if b.role.value != "hanging rod"])


def test_a_shallow_bay_is_a_finding():
    """24 in of depth: closet planning, as quoted."""
    for depth, doubtful in ((500.0, True), (640.0, False)):
        built, _, _ = hung(RODS, depth=depth)
        assert ("shallow-rod" in rules(built.findings, "R")) is doubtful


def test_a_shelf_among_the_clothes_is_named():
    carcass = replace(PLAIN, bays=(BaySpec(width=900.0, adjustable=1), BaySpec()))
    built, _, _ = hung(RODS, carcass)
    (found,) = [f for f in built.findings if f.rule == "zone-taken"]
    assert "A: bay 1 loose shelf 1" in found.message
    assert found.subject == "R: clothes on the rod"


def test_a_rod_through_a_loose_shelf_is_a_conflict():
    carcass = replace(PLAIN, bays=(BaySpec(width=900.0, adjustable=1), BaySpec()))
    built, _, _ = hung(RODS, carcass)
    shelf = next(p.box() for p in built.parts if "loose" in p.name)
    built, _, _ = hung(replace(RODS, height=shelf.z0), carcass)
    (found,) = [f for f in built.findings if f.rule == "parts-overlap"]
    assert found.subject == "R: rod"
    assert "loose shelf" in found.message


def test_the_box_of_a_rod_is_square():
    _, rods, _ = hung(RODS)
    (rod,) = rods.lengths
    (x, y, z), r = rod.start, 13.5
    box = rod.box()
    assert box == Box(x, y - r, z - r, rod.end[0], y + r, z + r)


@pytest.mark.parametrize(
    ("spec", "depth", "message"),
    [
        (RODS, 400.0, r"R in A, bay 1: depth for hangers is 38.* mm; must be at least 431.8 mm"),
        (replace(RODS, height=2390.0), 650.0, r"height is 2390 mm; must be .* 51 mm below what"),
        (replace(RODS, upper=1900.0), 650.0, r"height of the upper rod is 1900 mm; must be left"),
        (replace(RODS, use=RodUse.DOUBLE, height=2100.0), 650.0,
         r"height is 2100 mm; must be .* below the upper rod"),
        (replace(RODS, setback=700.0), 650.0, r"distance of the rod from the rear is 700 mm; must"),
        (replace(RODS, supports=-1), 650.0, r"supports is -1; must be 0 or more"),
        (replace(RODS, rod="brass"), 650.0, r"bar is brass; is not in the catalogue"),
        (replace(RODS, run=RodRun.ALONG, use=RodUse.DOUBLE), 650.0, r"use is double; must hang"),
        (replace(RODS, run=RodRun.ALONG, height=1500.0), 650.0,
         r"height is 1500 mm; must be 23\d\d\.\d mm"),
        (replace(RODS, run=RodRun.ALONG, spot=Spot("A", 2)), 650.0,
         r"width for hangers is 3\d\d mm; must be"),
    ],
)
def test_what_is_refused_names_value_and_limit(spec, depth, message):
    with pytest.raises(ClosetError, match=message):
        hung(spec, depth=depth)


def test_a_rod_longer_than_its_bar_is_refused():
    carcass = replace(PLAIN, bays=(BaySpec(width=2600.0), BaySpec()))
    with pytest.raises(ClosetError, match=r"length of the rod is 2597 mm; must be 27 to 2500 mm"):
        hung(RODS, carcass, width=3000.0)
