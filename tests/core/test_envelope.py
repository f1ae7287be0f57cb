"""The box that fits: it keeps its clearances everywhere and is nowhere too small."""

from __future__ import annotations

from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from closetbench.core.envelope import Clearances, Envelope, Gap, Wall, fit_envelope
from closetbench.core.errors import SurveyError
from closetbench.core.room import build_room
from tests.core.rooms import TrueRoom, crooked_rooms

KEEP = Clearances(left=5.0, right=6.0, back=7.0, top=10.0, floor=1.0)


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
    box = fit_envelope(build_room(TrueRoom().survey()), KEEP)
    assert (box.width, box.depth, box.height) == pytest.approx((1889.0, 593.0, 2389.0), abs=1e-9)
    assert (box.x0, box.y0, box.z0) == pytest.approx((5.0, 0.0, 1.0), abs=1e-9)
    for wall, gap in ((Wall.LEFT, 5.0), (Wall.RIGHT, 6.0), (Wall.BACK, 7.0), (Wall.TOP, 10.0),
                      (Wall.FLOOR, 1.0)):
        assert [g.value for g in box.gaps_at(wall)] == pytest.approx(
            [gap] * len(box.gaps_at(wall)), abs=1e-9
        )


def test_leaning_wall_is_touched_where_it_leans_in() -> None:
    # the left wall comes in by 21 mm from 100 to 2200 mm: 1 mm in 100, so 23 mm at 2400
    true = TrueRoom(left=(21.0, 21.0))
    box = fit_envelope(build_room(true.survey()), Clearances(5.0, 5.0, 5.0, 0.0, 0.0))
    assert box.x0 == pytest.approx(23.0 + 5.0, abs=1e-9)
    assert box.width == pytest.approx(1900.0 - 5.0 - 28.0, abs=1e-9)
    gaps = {(g.across, g.up): g.value for g in box.gaps_at(Wall.LEFT)}
    assert gaps[0.0, 0.0] == pytest.approx(28.0 + 1.0, abs=1e-9)
    assert gaps[0.0, 1200.0] == pytest.approx(28.0 - 11.0, abs=1e-9)
    assert gaps[0.0, 2400.0] == pytest.approx(5.0, abs=1e-9)


def test_box_stands_on_the_highest_point_of_the_floor_under_it() -> None:
    true = TrueRoom(floor=(0.0, 19.0, 0.0, 19.0), ceiling=(2400.0, 2419.0, 2400.0, 2419.0))
    box = fit_envelope(build_room(true.survey()), Clearances(0.0, 5.0, 0.0, 0.0, 0.0))
    assert box.z0 == pytest.approx(18.95, abs=1e-9)  # 1 in 100, at 1895 mm
    assert box.height == pytest.approx(2400.0 - 18.95, abs=1e-9)
    gaps = {(g.across, g.up): g.value for g in box.gaps_at(Wall.FLOOR)}
    assert gaps[0.0, 0.0] == pytest.approx(18.95, abs=1e-9)
    assert gaps[box.width, 0.0] == pytest.approx(0.0, abs=1e-9)


def test_shallow_closet_may_be_wider_than_the_rear_allows() -> None:
    true = TrueRoom(rear_left=(30.0, 600.0), rear_right=(1870.0, 600.0))
    room = build_room(true.survey())
    deep, shallow = fit_envelope(room, KEEP), fit_envelope(room, KEEP, depth=300.0)
    assert shallow.depth == 300.0
    assert shallow.width == pytest.approx(1900.0 - 2 * 15.0 - 11.0, abs=1e-9)
    assert deep.width == pytest.approx(1900.0 - 2 * 30.0 * 593 / 600 - 11.0, abs=1e-9)
    assert fit_envelope(room, KEEP, depth=5000.0) == deep


@settings(max_examples=60)
@given(crooked_rooms(), st.sampled_from([None, 200.0, 330.0]))
def test_box_keeps_clear_everywhere_and_no_face_can_move_out(
    true: TrueRoom, depth: float | None
) -> None:
    box = fit_envelope(build_room(true.survey()), KEEP, depth)
    wanted = {
        Wall.LEFT: KEEP.left, Wall.RIGHT: KEEP.right, Wall.BACK: KEEP.back, Wall.TOP: KEEP.top,
        Wall.FLOOR: KEEP.floor,
    }
    for wall, gap in least_gaps(true, box).items():
        assert gap >= wanted[wall] - 1e-6, wall
        if wall is Wall.BACK and depth is not None:
            assert box.depth == depth
        else:
            # each wall is touched, so a face moved out by 0.01 mm would come too near
            assert gap < wanted[wall] + 0.01, wall


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
    box = fit_envelope(build_room(true.survey()), KEEP)
    for gap in box.gaps:
        a, b = gap.across, gap.up
        expected = distance(true, box, gap)
        assert gap.value == pytest.approx(expected, abs=1e-6), gap
        limit_a = box.depth if gap.wall in (Wall.LEFT, Wall.RIGHT) else box.width
        limit_b = box.depth if gap.wall in (Wall.TOP, Wall.FLOOR) else box.height
        assert 0 <= a <= limit_a + 1e-9
        assert -1e-9 <= b <= limit_b + 1e-9
    assert {g.wall for g in box.gaps} == set(Wall)


def test_gaps_of_the_side_walls_are_given_at_every_level_that_was_read() -> None:
    box = fit_envelope(build_room(TrueRoom().survey()), KEEP)
    ups = sorted({round(g.up + box.z0, 6) for g in box.gaps_at(Wall.RIGHT)})
    assert ups == [1.0, 100.0, 1200.0, 2200.0, 2390.0]


@pytest.mark.parametrize("name", ["left", "right", "back", "top", "floor"])
@pytest.mark.parametrize("value", [-1.0, 501.0, float("nan")])
def test_clearances_must_be_reasonable(name: str, value: float) -> None:
    with pytest.raises(SurveyError) as caught:
        Clearances(**{name: value})
    assert str(caught.value) == f"clearances: {name} is {value:g} mm; must be 0 to 500 mm"


def test_room_too_narrow_for_any_closet_is_refused() -> None:
    true = TrueRoom(front=300.0, rear_right=(300.0, 600.0))
    with pytest.raises(SurveyError) as caught:
        fit_envelope(build_room(true.survey()), Clearances(left=120.0, right=120.0))
    assert str(caught.value) == (
        "envelope: width is 60.0 mm; must be at least 100 mm; check the readings and the "
        "clearances"
    )


@pytest.mark.parametrize("depth", [0.0, -5.0])
def test_depth_must_be_above_zero(depth: float) -> None:
    with pytest.raises(SurveyError) as caught:
        fit_envelope(build_room(TrueRoom().survey()), KEEP, depth)
    assert str(caught.value) == f"envelope: depth is {depth:g} mm; must be above 0 mm"
