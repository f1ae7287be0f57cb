"""The room from its readings: rooms known from their corners must come back."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import product

import pytest
from hypothesis import given, settings

from closetbench.core.errors import SurveyError
from closetbench.core.findings import Severity
from closetbench.core.room import DISAGREEMENT, Surface, build_room
from tests.core.rooms import TrueRoom, crooked_rooms

RACKED = TrueRoom(rear_left=(12.0, 640.0), rear_right=(1909.0, 631.0))


def test_perfect_box_comes_back_as_it_is() -> None:
    room = build_room(TrueRoom().survey())
    assert room.findings == ()
    for y, z in product((0.0, 300.0, 600.0), (0.0, 700.0, 2400.0)):
        assert room.left.at(y, z) == pytest.approx(0.0, abs=1e-9)
        assert room.right.at(y, z) == pytest.approx(1900.0, abs=1e-9)
    for x in (0.0, 950.0, 1900.0):
        assert room.back.at(x, 1000.0) == pytest.approx(600.0, abs=1e-9)
        assert room.floor.at(x, 300.0) == pytest.approx(0.0, abs=1e-9)
        assert room.ceiling.at(x, 300.0) == pytest.approx(2400.0, abs=1e-9)


def test_corner_lines_of_a_box_are_its_twelve_edges_without_the_open_ends_left_out() -> None:
    lines = build_room(TrueRoom().survey()).corner_lines()
    assert len(lines) == 12
    ends = {tuple(round(v, 9) + 0.0 for v in point) for line in lines for point in line}
    assert ends == set(product((0.0, 1900.0), (0.0, 600.0), (0.0, 2400.0)))
    lengths = sorted(round(math.dist(*line), 6) for line in lines)
    assert lengths == [600.0] * 4 + [1900.0] * 4 + [2400.0] * 4


def test_racked_plan_is_drawn_from_depths_and_diagonals() -> None:
    room = build_room(RACKED.survey())
    assert room.findings == ()
    low = RACKED.levels[0]
    assert room.left.at(640.0, low) == pytest.approx(12.0, abs=1e-6)
    assert room.right.at(631.0, low) == pytest.approx(1909.0, abs=1e-6)
    assert room.back.at(12.0, low) == pytest.approx(640.0, abs=1e-6)
    assert room.back.at(1909.0, low) == pytest.approx(631.0, abs=1e-6)


def test_leaning_walls_lean_where_they_were_read() -> None:
    true = TrueRoom(left=(8.0, -4.0), right=(6.0, 2.0), bulge=(5.0, -3.0), back=(7.0, 9.0))
    room = build_room(true.survey())
    assert room.findings == ()
    assert room.left.at(0.0, 2200.0) == pytest.approx(8.0)
    assert room.left.at(600.0, 2200.0) == pytest.approx(-4.0)
    assert room.left.at(0.0, 1150.0) == pytest.approx(4.0)
    assert room.right.at(0.0, 1200.0) == pytest.approx(1895.0)
    assert room.right.at(0.0, 2200.0) == pytest.approx(1894.0)
    assert room.right.at(600.0, 1200.0) == pytest.approx(1903.0)
    assert room.back.at(0.0, 2200.0) == pytest.approx(593.0)
    assert room.back.at(1900.0, 2200.0) == pytest.approx(591.0)


def test_floor_rises_and_ceiling_follows_the_heights() -> None:
    true = TrueRoom(floor=(0.0, 7.0, -3.0, 2.0), ceiling=(2412.0, 2415.0, 2407.0, 2409.0))
    room = build_room(true.survey())
    for (x, y), floor, ceiling in zip(true.plan(), true.floor, true.ceiling, strict=True):
        assert room.floor.at(x, y) == pytest.approx(floor, abs=1e-9)
        assert room.ceiling.at(x, y) == pytest.approx(ceiling, abs=1e-9)


@settings(max_examples=60)
@given(crooked_rooms())
def test_any_room_comes_back_from_its_readings(true: TrueRoom) -> None:
    room = build_room(true.survey())
    assert room.findings == ()
    for z in (0.0, *true.levels, 1777.0, 2500.0):
        for y in (0.0, 200.0, true.rear_left[1]):
            assert room.left.at(y, z) == pytest.approx(true.left_x(y, z), abs=1e-6)
        for y in (0.0, 200.0, true.rear_right[1]):
            assert room.right.at(y, z) == pytest.approx(true.right_x(y, z), abs=1e-6)
        for x in (true.rear_left[0], 500.0, true.rear_right[0]):
            assert room.back.at(x, z) == pytest.approx(true.back_y(x, z), abs=1e-6)
    for x, y in (*true.plan(), (300.0, 100.0)):
        assert room.floor.at(x, y) == pytest.approx(true.floor_z(x, y), abs=1e-6)
        assert room.ceiling.at(x, y) == pytest.approx(true.ceiling_z(x, y), abs=1e-6)


@settings(max_examples=30)
@given(crooked_rooms())
def test_corners_lie_on_three_surfaces_at_once(true: TrueRoom) -> None:
    for point in {p for line in build_room(true.survey()).corner_lines() for p in line}:
        x, y, z = point
        wall = min((true.left_x(y, z), true.right_x(y, z)), key=lambda at: abs(at - x))
        level = min((true.floor_z(x, y), true.ceiling_z(x, y)), key=lambda at: abs(at - z))
        depth = min((0.0, true.back_y(x, z)), key=lambda at: abs(at - y))
        assert (wall, depth, level) == pytest.approx(point, abs=1e-6)


def test_without_diagonals_the_plan_is_symmetrical_and_said_to_be_unchecked() -> None:
    survey = replace(
        TrueRoom(rear_left=(10.0, 600.0), rear_right=(1890.0, 600.0)).survey(),
        diagonal_to_left=None,
    )
    room = build_room(survey)
    (finding,) = room.findings
    assert finding.severity is Severity.NOT_CHECKED
    assert finding.rule == "plan-square"
    assert "measure both diagonals" in finding.message
    assert room.left.at(survey.depth_left, 100.0) == pytest.approx(10.0)
    assert room.right.at(survey.depth_right, 100.0) == pytest.approx(1890.0)


def test_wrong_rear_width_is_pointed_at() -> None:
    true = RACKED.survey()
    wrong = replace(true, width_back_low=true.width_back_low + 10.0)
    # the lean of the right wall, worked from the same width, disagrees too
    assert len(build_room(wrong).findings) == 2
    (finding,) = build_room(replace(wrong, lean_right_back=None)).findings
    assert finding.severity is Severity.WARNING
    assert finding.rule == "readings-disagree"
    assert finding.message == (
        "the width at the back, low does not agree with the depths and diagonals: "
        "measure them again"
    )
    assert finding.value == f"{true.width_back_low + 10:.1f} mm"
    assert finding.limit == f"{true.width_back_low:.1f} mm expected, within 4 mm"


@pytest.mark.parametrize("place", ["front", "back"])
def test_wrong_lean_of_the_right_wall_is_pointed_at(place: str) -> None:
    survey = replace(TrueRoom().survey(), **{f"lean_right_{place}": 6.0})
    (finding,) = build_room(survey).findings
    assert finding.message == (
        f"the lean of the right wall at the {place} does not agree with the widths and the left "
        "wall's lean: measure them again"
    )
    assert (finding.value, finding.limit) == ("6.0 mm", "0.0 mm expected, within 4 mm")


def test_readings_that_differ_less_than_the_tape_are_left_alone() -> None:
    just = DISAGREEMENT - 0.1
    survey = replace(TrueRoom().survey(), width_back_low=1900.0 + just, lean_right_back=None)
    assert build_room(survey).findings == ()
    assert build_room(replace(TrueRoom().survey(), lean_right_front=just)).findings == ()


def test_tapes_that_do_not_meet_are_refused() -> None:
    survey = replace(TrueRoom().survey(), diagonal_to_left=1200.0)
    with pytest.raises(SurveyError) as caught:
        build_room(survey)
    assert str(caught.value) == (
        "survey: depth along the left wall with the diagonal from front right to back left is "
        "600 and 1200 mm; cannot meet over a front width of 1900 mm; measure all three again"
    )
    with pytest.raises(SurveyError, match="diagonal from front left to back right"):
        build_room(replace(TrueRoom().survey(), diagonal_to_right=3000.0))


def test_rear_wall_must_be_wider_than_it_is_skew() -> None:
    survey = replace(
        TrueRoom().survey(), diagonal_to_left=None, width_back_low=300.0, depth_right=950.0
    )
    with pytest.raises(SurveyError) as caught:
        build_room(survey)
    assert str(caught.value) == (
        "survey: width at the back, low is 300 mm; must be more than the 350 mm by which the "
        "depths differ"
    )


def test_surface_is_bilinear_between_stations_and_goes_on_beyond_them() -> None:
    surface = Surface((0.0, 10.0), (0.0, 1.0, 2.0), ((0.0, 4.0, 2.0), (10.0, 10.0, 30.0)))
    assert surface.at(5.0, 0.5) == (0.0 + 4.0 + 10.0 + 10.0) / 4
    assert surface.at(0.0, 3.0) == 0.0
    assert surface.at(20.0, 0.0) == 20.0
    assert surface.over(0.0, 10.0, 0.0, 2.0) == (0.0, 30.0)
    assert surface.over(0.0, 0.0, 0.5, 1.5) == (2.0, 4.0)
