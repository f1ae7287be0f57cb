"""The box that fits: it keeps its clearances everywhere and is nowhere too small."""

from __future__ import annotations

from dataclasses import replace
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from closetbench.core.envelope import (
    Clearances,
    Envelope,
    Gap,
    Objective,
    Wall,
    fit_envelope,
)
from closetbench.core.errors import SurveyError
from closetbench.core.room import Room, build_room
from closetbench.core.surfaces import Surface
from closetbench.core.survey import Obstacle, TapeClass
from tests.core.measured import plain_survey
from tests.core.rooms import TrueRoom, crooked_rooms

KEEP = Clearances(left=5.0, right=6.0, back=7.0, top=10.0, floor=1.0)
NEAR = 0.2
"""mm: what the rooms' corners at the low level and at the floor may differ on a slope."""


def certain(true: TrueRoom) -> Room:
    """The room as if there were no doubt about it."""
    return replace(build_room(true.survey()), covariance=())


def least_gaps(true: TrueRoom, box: Envelope, steps: int = 12) -> dict[Wall, float]:
    """The narrowest gap around the box, from a net of points over each of its faces."""
    def net(low: float, high: float, *stations: float) -> list[float]:
        even = [low + (high - low) * i / steps for i in range(steps + 1)]
        return even + [s for s in stations if low < s < high]

    x0, x1, y1 = box.x0, box.x0 + box.width, box.depth
    z0, z1 = box.z0, box.z0 + box.height
    xs, ys, zs = net(x0, x1), net(0.0, y1), net(z0, z1, *true.levels)
    return {
        Wall.LEFT: min(x0 - true.left_x(y, z) for y, z in product(ys, zs)),
        Wall.RIGHT: min(true.right_x(y, z) - x1 for y, z in product(ys, zs)),
        Wall.BACK: min(true.back_y(x, z) - y1 for x, z in product(xs, zs)),
        Wall.TOP: min(true.ceiling_z(x, y) - z1 for x, y in product(xs[::4], ys[::4])),
        Wall.FLOOR: min(z0 - true.floor_z(x, y) for x, y in product(xs[::4], ys[::4])),
    }


def test_perfect_room_gives_the_box_less_the_clearances() -> None:
    box = fit_envelope(certain(TrueRoom()), KEEP)
    assert (box.width, box.depth, box.height) == pytest.approx((1889.0, 593.0, 2389.0), abs=1e-5)
    assert (box.x0, box.y0, box.z0) == pytest.approx((5.0, 0.0, 1.0), abs=1e-5)
    for wall, gap in ((Wall.LEFT, 5.0), (Wall.RIGHT, 6.0), (Wall.BACK, 7.0), (Wall.TOP, 10.0),
                      (Wall.FLOOR, 1.0)):
        assert [g.value for g in box.gaps_at(wall)] == pytest.approx(
            [gap] * len(box.gaps_at(wall)), abs=1e-5
        )


def test_leaning_wall_is_touched_where_it_leans_in() -> None:
    # the left wall comes in by 21 mm from 100 to 2200 mm: 1 mm in 100, so 23 mm at 2400
    true = TrueRoom(left=(21.0, 21.0))
    box = fit_envelope(certain(true), Clearances(5.0, 5.0, 5.0, 0.0, 0.0))
    assert box.margins == (0.0, 0.0, 0.0)
    assert box.x0 == pytest.approx(23.0 + 5.0, abs=1e-5)
    assert box.width == pytest.approx(1900.0 - 5.0 - 28.0, abs=1e-5)
    gaps = {(g.across, g.up): g.value for g in box.gaps_at(Wall.LEFT)}
    assert gaps[0.0, 0.0] == pytest.approx(28.0 + 1.0, abs=1e-5)
    assert [gap for _, gap in box.profile(Wall.LEFT, "front")] == pytest.approx(
        [29.0, 17.0, 5.0], abs=1e-5
    )
    assert [at for at, _ in box.profile(Wall.LEFT, "back")] == pytest.approx(
        [0.0, 1200.0, 2400.0], abs=1e-5
    )


def test_box_stands_on_the_highest_point_of_the_floor_under_it() -> None:
    true = TrueRoom(floor=(0.0, 19.0, 0.0, 19.0), ceiling=(2400.0, 2419.0, 2400.0, 2419.0))
    box = fit_envelope(certain(true), Clearances(0.0, 5.0, 0.0, 0.0, 0.0))
    assert box.z0 == pytest.approx(18.95, abs=1e-5)  # 1 in 100, at 1895 mm
    assert box.height == pytest.approx(2400.0 - 18.95, abs=1e-5)
    for edge in ("front", "back"):
        (_, first), _, (_, last) = box.profile(Wall.FLOOR, edge)
        assert (first, last) == pytest.approx((18.95, 0.0), abs=1e-5)
    assert [gap for _, gap in box.profile(Wall.FLOOR, "left")] == pytest.approx([18.95] * 3)


def test_shallow_closet_may_be_wider_than_the_rear_allows() -> None:
    true = TrueRoom(rear_left=(30.0, 600.0), rear_right=(1870.0, 600.0))
    room = certain(true)
    deep, shallow = fit_envelope(room, KEEP), fit_envelope(room, KEEP, depth=300.0)
    assert shallow.depth == 300.0
    assert shallow.width == pytest.approx(1900.0 - 2 * 15.0 - 11.0, abs=1e-5)
    assert deep.width == pytest.approx(1900.0 - 2 * 30.0 * 593 / 600 - 11.0, abs=1e-5)
    assert fit_envelope(room, KEEP, depth=5000.0) == deep


@settings(max_examples=60)
@given(crooked_rooms(), st.sampled_from([None, 200.0, 330.0]))
def test_box_keeps_clear_everywhere_and_no_face_can_move_out(
    true: TrueRoom, depth: float | None
) -> None:
    box = fit_envelope(certain(true), KEEP, depth)
    wanted = {
        Wall.LEFT: KEEP.left, Wall.RIGHT: KEEP.right, Wall.BACK: KEEP.back, Wall.TOP: KEEP.top,
        Wall.FLOOR: KEEP.floor,
    }
    for wall, gap in least_gaps(true, box).items():
        assert gap >= wanted[wall] - NEAR, wall
        if wall is Wall.BACK and box.depth == depth:
            continue  # as deep as was asked for
        # each wall is touched, so a face moved out would come too near
        assert gap < wanted[wall] + NEAR, wall
    assert depth is None or box.depth <= depth


def distance(true: TrueRoom, box: Envelope, gap: Gap) -> float:
    """From the box's face to the wall, where the gap says."""
    x, a, b = box.x0 + gap.across, gap.across, gap.up
    if gap.wall is Wall.LEFT:
        return box.x0 - true.left_x(a, b + box.z0)
    if gap.wall is Wall.RIGHT:
        return true.right_x(a, b + box.z0) - box.x0 - box.width
    if gap.wall is Wall.BACK:
        return true.back_y(x, b + box.z0) - box.depth
    if gap.wall is Wall.TOP:
        return true.ceiling_z(x, b) - box.z0 - box.height
    return box.z0 - true.floor_z(x, b)


@settings(max_examples=40)
@given(crooked_rooms())
def test_gaps_are_the_distances_to_the_walls(true: TrueRoom) -> None:
    box = fit_envelope(certain(true), KEEP)
    for gap in box.gaps:
        a, b = gap.across, gap.up
        expected = distance(true, box, gap)
        assert gap.value == pytest.approx(expected, abs=NEAR), gap
        limit_a = box.depth if gap.wall in (Wall.LEFT, Wall.RIGHT) else box.width
        limit_b = box.depth if gap.wall in (Wall.TOP, Wall.FLOOR) else box.height
        assert 0 <= a <= limit_a + 1e-9
        assert -1e-9 <= b <= limit_b + 1e-9
    assert {g.wall for g in box.gaps} == set(Wall)


@pytest.mark.parametrize("name", ["left", "right", "back", "top", "floor"])
@pytest.mark.parametrize("value", [-1.0, 501.0, float("nan")])
def test_clearances_must_be_reasonable(name: str, value: float) -> None:
    with pytest.raises(SurveyError) as caught:
        Clearances(**{name: value})
    assert str(caught.value) == f"clearances: {name} is {value:g} mm; must be 0 to 500 mm"


def test_room_too_narrow_for_any_closet_is_refused() -> None:
    true = TrueRoom(front=300.0, rear_right=(300.0, 600.0))
    with pytest.raises(SurveyError) as caught:
        fit_envelope(certain(true), Clearances(left=120.0, right=120.0))
    assert str(caught.value) == (
        "envelope: width is 60.0 mm; must be at least 100 mm; check the readings and the "
        "clearances"
    )


@pytest.mark.parametrize("depth", [0.0, -5.0])
def test_depth_must_be_above_zero(depth: float) -> None:
    with pytest.raises(SurveyError) as caught:
        fit_envelope(certain(TrueRoom()), KEEP, depth)
    assert str(caught.value) == f"envelope: depth is {depth:g} mm; must be above 0 mm"


def test_confidence_must_be_one() -> None:
    with pytest.raises(SurveyError, match="confidence is 1; must be"):
        Clearances(confidence=1.0)


def test_uncertainty_makes_the_box_smaller_and_is_said() -> None:
    room = build_room(plain_survey(1900.0, 600.0, 2400.0))
    sure = fit_envelope(replace(room, covariance=()), KEEP)
    boxes = [fit_envelope(room, replace(KEEP, confidence=c)) for c in (0.8, 0.95, 0.99)]
    widths = [b.width for b in boxes]
    assert sure.width > widths[0] > widths[1] > widths[2] > sure.width - 4.0
    for box in boxes:
        assert box.width == pytest.approx(sure.width - box.margins[0], abs=1e-6)
        assert box.depth == pytest.approx(sure.depth - box.margins[1], abs=1e-6)
        assert box.height == pytest.approx(sure.height - box.margins[2], abs=1e-6)
        # it stands in the middle of what it may be short of
        left = min(g.value for g in box.gaps_at(Wall.LEFT))
        assert left == pytest.approx(KEEP.left + box.margins[0] / 2, abs=1e-5)
        assert all(0 <= g.sd < 2.0 for g in box.gaps)


def test_a_coarser_tape_takes_a_larger_margin() -> None:
    survey = plain_survey(1900.0, 600.0, 2400.0)
    first, second, third = (
        fit_envelope(build_room(replace(survey, tape=t)), KEEP).margins[0] for t in TapeClass
    )
    assert first < second < third


BOX = Room(
    Surface.plane(0.0), Surface.plane(2000.0), Surface.plane(600.0), Surface.plane(0.0),
    Surface.plane(2400.0),
)
NONE = Clearances(0.0, 0.0, 0.0, 0.0, 0.0)


def test_bowed_wall_is_touched_at_its_bow() -> None:
    # 12 mm into the closet at z = 1,000, none at 0 and at 2,000
    bow = Surface((0.0, 0.0, 48.0 / 2000, 0.0, 0.0, -48.0 / 2000**2))
    box = fit_envelope(replace(BOX, left=bow), NONE)
    assert box.x0 == pytest.approx(12.0)
    assert box.width == pytest.approx(1988.0)


def test_baseboard_that_stays_is_kept_clear_of() -> None:
    box = fit_envelope(replace(BOX, baseboard=(90.0, 15.0)), KEEP)
    assert box.width == pytest.approx(2000.0 - 30.0 - 11.0)
    assert box.depth == pytest.approx(600.0 - 15.0 - 7.0)
    above = fit_envelope(replace(BOX, baseboard=(90.0, 15.0)), replace(KEEP, floor=90.0))
    assert above.width == pytest.approx(2000.0 - 11.0)


@pytest.mark.parametrize(
    ("obstacle", "sizes"),
    [
        # a pipe in the rear right corner: beside it, or in front of it and wider
        (Obstacle("pipe", 1920.0, 500.0, 0.0, 2000.0, 600.0, 2400.0), (2000.0, 500.0, 2400.0)),
        # a socket low on the left wall, all the way to the front: above it
        (Obstacle("socket", 0.0, 0.0, 200.0, 30.0, 600.0, 300.0), (2000.0, 600.0, 2100.0)),
        # a beam under the ceiling
        (Obstacle("beam", 0.0, 0.0, 2200.0, 2000.0, 600.0, 2400.0), (2000.0, 600.0, 2200.0)),
        # a pipe along the whole left wall
        (Obstacle("riser", 0.0, 0.0, 0.0, 80.0, 600.0, 2400.0), (1920.0, 600.0, 2400.0)),
    ],
)
def test_obstacles_are_gone_around(
    obstacle: Obstacle, sizes: tuple[float, float, float]
) -> None:
    box = fit_envelope(replace(BOX, obstacles=(obstacle,)), NONE)
    assert (box.width, box.depth, box.height) == pytest.approx(sizes)


def test_the_largest_volume_may_leave_another_side_of_an_obstacle() -> None:
    pipe = Obstacle("pipe", 1920.0, 300.0, 0.0, 2000.0, 600.0, 2400.0)
    room = replace(BOX, obstacles=(pipe,))
    assert fit_envelope(room, NONE).depth == pytest.approx(300.0)
    box = fit_envelope(room, NONE, objective=Objective.VOLUME)
    assert (box.width, box.depth) == pytest.approx((1920.0, 600.0))


def test_two_obstacles_are_gone_around_together() -> None:
    room = replace(BOX, obstacles=(
        Obstacle("riser", 0.0, 0.0, 0.0, 80.0, 600.0, 2400.0),
        Obstacle("beam", 0.0, 0.0, 2250.0, 2000.0, 600.0, 2400.0),
    ))
    box = fit_envelope(room, NONE)
    assert (box.x0, box.width, box.height) == pytest.approx((80.0, 1920.0, 2250.0))


def test_obstacle_that_leaves_no_box_is_named() -> None:
    chest = Obstacle("old chimney", 50.0, 50.0, 60.0, 1950.0, 600.0, 2350.0)
    with pytest.raises(SurveyError) as caught:
        fit_envelope(replace(BOX, obstacles=(chest,)), KEEP)
    assert str(caught.value) == (
        "old chimney: place is 50 to 1950 mm across, up to 2350 mm high; leaves no box of 100 mm "
        "beside, below, above or in front of it; check its sizes, or move it"
    )


def test_under_a_slope_the_largest_volume_gives_up_depth() -> None:
    # the ceiling falls from 2,400 at the front at 45 degrees: height 2,400 - y at depth y
    room = replace(
        BOX, back=Surface.plane(2000.0), ceiling=Surface.plane(2400.0, 0.0, -1.0)
    )
    wide = fit_envelope(room, NONE)
    assert (wide.depth, wide.height) == pytest.approx((2000.0, 400.0))
    # y (2400 - y) is greatest at 1,200
    large = fit_envelope(room, NONE, objective=Objective.VOLUME)
    assert (large.depth, large.height) == pytest.approx((1200.0, 1200.0), abs=1e-3)
    assert fit_envelope(room, NONE, 900.0, Objective.VOLUME).height == pytest.approx(1500.0)


def test_under_a_slope_from_side_to_side_width_may_go_for_height() -> None:
    # the ceiling falls to the right, height 2,400 - 1.2 x: greatest x (2400 - 1.2 x) at 1,000
    room = replace(BOX, ceiling=Surface.plane(2400.0, -1.1))
    assert fit_envelope(room, NONE).width == pytest.approx(2000.0)
    large = fit_envelope(room, NONE, objective=Objective.VOLUME)
    assert large.width == pytest.approx(2400.0 / 2.2, abs=1e-3)
    assert large.height == pytest.approx(1200.0, abs=1e-3)


@settings(max_examples=25)
@given(crooked_rooms())
def test_no_smaller_box_has_more_volume_in_an_ordinary_room(true: TrueRoom) -> None:
    room = certain(true)
    wide = fit_envelope(room, KEEP)
    large = fit_envelope(room, KEEP, objective=Objective.VOLUME)
    assert (wide.width, wide.depth, wide.height) == (large.width, large.depth, large.height)
