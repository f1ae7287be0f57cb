"""Benches: members by hand, tops, lids, pull-outs between the posts, what is refused."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.bench import BenchFace, BenchSpec, Lay, TopRun
from closetbench.core.drawers import DrawersSpec
from closetbench.core.errors import ClosetError
from closetbench.core.findings import Severity
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.parts import Role
from closetbench.core.specs import BaySpec
from tests.core.inside_case import CARCASS, CATALOGUE, closet, component, parts, rules
from tests.core.solids import clashes

BENCH = BenchSpec("B", width=900.0, top_run=TopRun.ALONG)
T, W = 38.1, 88.9


def free(spec=BENCH, *more, width=1000.0, depth=500.0, height=2000.0):
    return closet(spec, *more, carcass=None, width=width, depth=depth, height=height)


def boxes(built, role=Role.BENCH_FRAME):
    return {p.name: p.box() for p in parts(built, role, "B")}


def test_members_by_hand():
    """450 mm high, top 27 mm, rails upright: posts 450 - 27 - 88.9 high, frame from y = 20."""
    built = free()
    found = boxes(built)
    clear = 450 - 27 - W
    post = found["front post 1"]
    assert (post.x0, post.x1) == (0.0, pytest.approx(T))
    assert (post.y0, post.y1, post.z0, post.z1) == pytest.approx((20, 20 + W, 0, clear))
    last = found["rear post 2"]
    assert (last.x0, last.x1) == (pytest.approx(900 - T), pytest.approx(900))
    assert (last.y0, last.y1) == (pytest.approx(500 - W), pytest.approx(500))
    rails = [found[f"rail {i}"] for i in (1, 2, 3)]
    assert [r.y0 for r in rails] == pytest.approx([20, (20 + 500 - T) / 2, 500 - T])
    assert all((r.z0, r.z1) == pytest.approx((clear, 450 - 27)) for r in rails)
    assert all((r.x0, r.x1) == pytest.approx((0, 900)) for r in rails)
    top = boxes(built, Role.BENCH_TOP)["top"]
    assert (top.x0, top.y0, top.z0, top.x1, top.y1, top.z1) == pytest.approx(
        (0, 0, 423, 900, 500, 450))
    bearer = found["rail bearer 1"]
    assert (bearer.z1, bearer.y0, bearer.y1) == pytest.approx((clear, 20 + W, 500 - W))
    assert clashes(built.parts) == []


@pytest.mark.parametrize("lay", Lay)
@pytest.mark.parametrize("run", TopRun)
@pytest.mark.parametrize("face", BenchFace)
@pytest.mark.parametrize("top", ["pine_glued27", "ply18", "pine_1x6"])
@pytest.mark.parametrize("lid", [False, True])
def test_nothing_overlaps_and_the_seat_is_where_it_should_be(lay, run, face, top, lid):
    spec = replace(BENCH, lay=lay, top_run=run, face=face, top=top, lid=lid, bays=2,
                   rails=2 if lid else 4, overhang_ends=15.0)
    built = free(spec)
    bench = component(built, "B")
    assert clashes(built.parts) == []
    assert bench.box.z1 == pytest.approx(450)
    assert (bench.box.x0, bench.box.x1) == pytest.approx((0, 900))
    assert (bench.box.y0, bench.box.y1) == pytest.approx((0, 500))
    upper = [p for p in bench.parts if p.role in (Role.BENCH_TOP, Role.LID)]
    area = sum(p.panel.length * p.panel.width for p in upper)
    assert area == pytest.approx(900 * (497 if lid else 500))
    high = T if lay is Lay.FLAT else W
    for bay in bench.bays:
        space = bay.space
        assert space.z1 == pytest.approx(450 - CATALOGUE.materials[top].thickness - high)
        assert not [p for p in bench.parts if p.role is not Role.BENCH_FACE
                    and p.box().overlaps(space)]


def test_flat_rails_leave_more_height_for_a_pull_out():
    upright, flat = (
        component(free(replace(BENCH, lay=lay)), "B").bays[0].space.z1 for lay in Lay)
    assert flat - upright == pytest.approx(W - T)


def test_glue_up_widths():
    """500 mm of boards 5-1/2 in wide, 1.5 mm jointed off each edge: four of 125 mm."""
    built = free(replace(BENCH, top="pine_1x6"))
    boards = parts(built, Role.BENCH_TOP, "B")
    assert [p.panel.width for p in boards] == [pytest.approx(125.0)] * 4
    across = free(replace(BENCH, top="pine_1x6", top_run=TopRun.ACROSS))
    boards = parts(across, Role.BENCH_TOP, "B")
    assert [p.panel.width for p in boards] == [pytest.approx(900 / 7)] * 7
    assert all(p.panel.length == pytest.approx(500) for p in boards)
    # all of them are one piece, seven times
    assert len({p.panel.shape_key() for p in boards}) == 1


def test_a_pull_out_between_the_posts():
    pull = DrawersSpec("P", Spot("B", 2), front=FrontSpec(FrontKind.FULL, "ply18"))
    built = free(replace(BENCH, bays=2), pull)
    bay = component(built, "B").bays[1].space
    sides = parts(built, Role.BOX_SIDE, "P")
    left, right = (p.box() for p in sides)
    assert left.x0 - bay.x0 == pytest.approx(13.1)
    assert bay.x1 - right.x1 == pytest.approx(13.1)
    front = parts(built, Role.FRONT, "P")[0].box()
    # it laps over half of the middle post and all of the end post, less the gaps
    assert front.x0 == pytest.approx(bay.x0 - (T - 3) / 2)
    assert front.x1 == pytest.approx(900 - 1.5)
    assert front.z1 == pytest.approx(bay.z1 + W - 1.5)
    assert front.y1 == pytest.approx(20.0)
    # the slide's height is that of the bearer between the posts
    bearer = boxes(built)["slide bearer 2"] if "slide bearer 2" in boxes(built) else (
        boxes(built)["rail bearer 2"])
    assert bearer.x0 == pytest.approx(bay.x0 - T)
    assert not rules(built.findings, "P") & {"parts-overlap", "pull-blocked"}


def test_a_full_face_stands_in_the_way_of_a_pull_out():
    pull = DrawersSpec("P", Spot("B", 1), front=FrontSpec(FrontKind.NONE))
    built = free(replace(BENCH, face=BenchFace.FULL), pull)
    (found,) = [f for f in built.findings if f.rule == "pull-blocked"]
    assert "B: face" in found.message


def test_a_lid_names_the_shelf_that_it_hits():
    carcass = replace(CARCASS, bays=(BaySpec(width=900.0, heights=(600.0,)), BaySpec()))
    spec = BenchSpec("B", Spot("A", 1, 1), rails=2, lid=True)
    built = closet(spec, carcass=carcass, width=1400.0)
    (found,) = [f for f in built.findings if f.rule == "swing-blocked"]
    assert found.subject == "B: lid"
    assert "A: bay 1 shelf 1" in found.message
    low = closet(spec, carcass=replace(carcass, bays=(BaySpec(900.0), BaySpec())), width=1400.0)
    assert "swing-blocked" not in rules(low.findings)


def test_a_lid_is_a_danger_to_children_that_is_named():
    """ASTM F963 4.27 and CPSC: supports, air, no latch."""
    lid = replace(BENCH, lid=True, rails=2, face=BenchFace.FULL, lid_support=False)
    found = {f.rule: f.severity for f in free(lid).findings if f.subject == "B"}
    assert found["lid-support"] is Severity.DANGER
    assert found["lid-air"] is Severity.DANGER
    safe = replace(lid, lid_support=True, vents=True)
    assert not rules(free(safe).findings, "B") & {"lid-support", "lid-air"}
    needs = {n.key: n.count for n in component(free(safe), "B").hardware}
    assert needs["lid_support"] == 2
    assert needs["butt_hinge_60"] == 3


def test_it_stands_in_a_bay_with_play_and_beside_a_carcass():
    carcass = replace(CARCASS, bays=(BaySpec(width=700.0), BaySpec()))
    built = closet(BenchSpec("B", Spot("A", 1, 1)), carcass=carcass, width=1300.0)
    bay = built.components[0].bays[0].space
    box = component(built, "B").box
    assert (box.x0, box.x1) == (pytest.approx(bay.x0 + 2), pytest.approx(bay.x1 - 2))
    assert (box.y0, box.y1, box.z0) == pytest.approx((bay.y0, bay.y1, bay.z0))
    beside = closet(
        BenchSpec("B"), carcass=replace(CARCASS, width=700.0, bays=(BaySpec(),)), width=1500.0)
    box = component(beside, "B").box
    assert (box.x0, box.x1) == (pytest.approx(700), pytest.approx(1500))
    assert clashes(built.parts) == clashes(beside.parts) == []


def test_strength_is_checked_with_its_own_figures():
    built = free(replace(BENCH, bays=2))
    (bench,) = component(built, "B").checked
    assert bench.span == pytest.approx((900 - T) / 2)
    assert (bench.wide, bench.high) == (pytest.approx(T), pytest.approx(W))
    assert bench.top_span == pytest.approx((500 - 20 - T) / 2)
    assert "bench-sag" in rules(built.findings, "B")
    # pine is weak across its grain: boards from rail to rail carry what a glued panel along
    # the bench does not
    assert "bench-top-strength" in rules(built.findings, "B")
    across = free(replace(BENCH, bays=2, top_run=TopRun.ACROSS))
    assert not rules(across.findings, "B") & {"bench-top-strength", "bench-strength"}


def test_hardware_is_in_the_catalogue():
    spec = replace(BENCH, face=BenchFace.APRON, lid=True, rails=2)
    for need in free(spec).hardware:
        CATALOGUE.item(need.key)


@pytest.mark.parametrize(
    ("spec", "message"),
    [
        (replace(BENCH, height=200.0), r"B: clear height under the rails is 84\.1 mm; must be 128"),
        (replace(BENCH, depth=230.0), r"depth between front and rear post is 32\.2 mm; must be 60"),
        (replace(BENCH, width=1200.0), r"B: width is 1200 mm; must be 200 to 1000 mm beside"),
        (replace(BENCH, rails=1), r"rails is 1; must be 2 to 8"),
        (replace(BENCH, rails=7, lay=Lay.FLAT), r"rails is 7; must be at most 5 to lie side"),
        (replace(BENCH, lid=True), r"rails is 3; must be 2 under a lid"),
        (replace(BENCH, bays=8), r"bay 1: width is 6\d\.\d+ mm; must be 100"),
        (replace(BENCH, member=120.0), r"width of the members is 120 mm; must be 38\.1 to 88\.9"),
        (replace(BENCH, overhang=200.0), r"overhang is 200 mm; must be 0 to 150"),
        (replace(BENCH, lid=True, rails=2, strip=10.0), r"strip behind the lid is 10 mm; must be"),
        (replace(BENCH, spot=Spot("B", 1)), r"carcass is .B.; must be one of those there"),
        (replace(BENCH, x=1100.0), r"distance from the left is 1100 mm; must be 0 to 1000 mm"),
    ],
)
def test_what_is_refused_names_value_and_limit(spec, message):
    with pytest.raises(ClosetError, match=message):
        free(spec)


def test_members_longer_than_the_boards_are_refused():
    with pytest.raises(ClosetError, match=r"rail 1: length is 3500 mm; must be 1 to 3048 mm from"):
        free(replace(BENCH, width=3500.0, bays=4), width=3500.0)
