"""The room from its readings: rooms known from their corners must come back."""

from __future__ import annotations

import math
import re
from dataclasses import replace
from fractions import Fraction
from itertools import product

import pytest
from hypothesis import given, settings

from closetbench.core.errors import SurveyError
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.lengths import LengthFormat
from closetbench.core.readings import On, recommended
from closetbench.core.room import Room, build_room
from closetbench.core.surfaces import Surface
from closetbench.core.survey import (
    READING_NAMES,
    Obstacle,
    OwnDoor,
    Reading,
    ReadingKind,
    Side,
    Survey,
    TapeClass,
)
from tests.core.measured import plain_survey
from tests.core.rooms import TrueRoom, crooked_rooms

RACKED = TrueRoom(rear_left=(12.0, 640.0), rear_right=(1909.0, 631.0))


def test_perfect_box_comes_back_as_it_is() -> None:
    room = build_room(TrueRoom().survey())
    assert doubts(room) == []
    for y, z in product((0.0, 300.0, 600.0), (0.0, 700.0, 2400.0)):
        assert room.left.at(y, z) == pytest.approx(0.0, abs=1e-6)
        assert room.right.at(y, z) == pytest.approx(1900.0, abs=1e-6)
    for x in (0.0, 950.0, 1900.0):
        assert room.back.at(x, 1000.0) == pytest.approx(600.0, abs=1e-6)
        assert room.floor.at(x, 300.0) == pytest.approx(0.0, abs=1e-6)
        assert room.ceiling.at(x, 300.0) == pytest.approx(2400.0, abs=1e-6)


def test_corner_lines_of_a_box_are_its_twelve_edges_without_the_open_ends_left_out() -> None:
    lines = build_room(TrueRoom().survey()).corner_lines()
    assert len(lines) == 12
    ends = {tuple(round(v, 6) + 0.0 for v in point) for line in lines for point in line}
    assert ends == set(product((0.0, 1900.0), (0.0, 600.0), (0.0, 2400.0)))
    lengths = sorted(round(math.dist(*line), 5) for line in lines)
    assert lengths == [600.0] * 4 + [1900.0] * 4 + [2400.0] * 4


def test_racked_plan_is_drawn_from_depths_and_diagonals() -> None:
    room = build_room(RACKED.survey())
    assert doubts(room) == []
    low = RACKED.levels[0]
    assert room.left.at(640.0, low) == pytest.approx(12.0, abs=1e-6)
    assert room.right.at(631.0, low) == pytest.approx(1909.0, abs=1e-6)
    assert room.back.at(12.0, low) == pytest.approx(640.0, abs=1e-6)
    assert room.back.at(1909.0, low) == pytest.approx(631.0, abs=1e-6)


def doubts(room: Room) -> list[Finding]:
    """The findings, but for those that a plain survey, quite plumb and level, always has."""
    usual = ("not-plumbed", "bows-not-read", "reading-alone")
    return [f for f in room.findings if f.rule not in usual]


def rules(room: Room) -> list[str]:
    return [f.rule for f in doubts(room)]


def only(room: Room, rule: str) -> Finding:
    (finding,) = (f for f in room.findings if f.rule == rule)
    return finding


NEAR = 0.15
"""mm: floor and ceiling are read in the corners as they lean, the true levels are given at
the low level; what that makes on slopes is less than this."""


@settings(max_examples=60)
@given(crooked_rooms())
def test_any_flat_room_comes_back_from_its_readings(true: TrueRoom) -> None:
    room = build_room(true.survey())
    assert doubts(room) == []
    for z in (0.0, *true.levels, 1777.0, 2500.0):
        for y in (0.0, 200.0, true.rear_left[1]):
            assert room.left.at(y, z) == pytest.approx(true.left_x(y, z), abs=NEAR)
        for y in (0.0, 200.0, true.rear_right[1]):
            assert room.right.at(y, z) == pytest.approx(true.right_x(y, z), abs=NEAR)
        for x in (true.rear_left[0], 500.0, true.rear_right[0]):
            assert room.back.at(x, z) == pytest.approx(true.back_y(x, z), abs=NEAR)
    for x, y in (*true.plan(), (300.0, 100.0)):
        assert room.floor.at(x, y) == pytest.approx(true.floor_z(x, y), abs=NEAR)
        assert room.ceiling.at(x, y) == pytest.approx(true.ceiling_z(x, y), abs=NEAR)
    for reading in room.readings:
        assert reading.used
        assert abs(reading.residual) < NEAR
        assert 0 < reading.sd_adjusted <= reading.sd * 1.5
        assert -1e-9 <= reading.redundancy <= 1


@settings(max_examples=30)
@given(crooked_rooms())
def test_corners_lie_on_three_surfaces_at_once(true: TrueRoom) -> None:
    for point in {p for line in build_room(true.survey()).corner_lines() for p in line}:
        x, y, z = point
        wall = min((true.left_x(y, z), true.right_x(y, z)), key=lambda at: abs(at - x))
        level = min((true.floor_z(x, y), true.ceiling_z(x, y)), key=lambda at: abs(at - z))
        depth = min((0.0, true.back_y(x, z)), key=lambda at: abs(at - y))
        assert (wall, depth, level) == pytest.approx(point, abs=NEAR)


def test_twisted_wall_is_shown_as_twisted() -> None:
    flat = (22 / 7, 22 / 7)  # so that the right wall stays straight
    room = build_room(TrueRoom(left=(16.0, -4.0), right=(6.0, 6.0), bulge=flat).survey())
    finding = only(room, "wall-bent")
    assert rules(room) == ["wall-bent"]
    assert finding.severity is Severity.NOTE
    assert finding.message == "the readings show a twist of the left wall"
    assert finding.value == "-20.0 mm"
    assert room.left.at(0.0, 2200.0) == pytest.approx(16.0, abs=NEAR)
    assert room.left.at(600.0, 2200.0) == pytest.approx(-4.0, abs=NEAR)
    assert room.left.at(300.0, 1150.0) == pytest.approx(3.0, abs=NEAR)
    assert room.right.at(300.0, 1150.0) == pytest.approx(1897.0, abs=NEAR)


def test_walls_nearer_each_other_half_way_up_are_shown_as_bowed() -> None:
    room = build_room(TrueRoom(bulge=(9.0, 9.0)).survey())
    finding = only(room, "wall-bent")
    assert finding.message == "the readings show a bow of the side walls"
    # the widths say by how much together, at 1,200 of 100 to 2,200 mm; not which wall
    share = 4 * (1100 / 2100) * (1000 / 2100)
    assert finding.value == f"{9 / share:.1f} mm"
    width = room.right.at(0.0, 1200.0) - room.left.at(0.0, 1200.0)
    assert width == pytest.approx(1891.0, abs=NEAR)
    assert room.left.at(0.0, 1200.0) == pytest.approx(4.5, abs=NEAR)
    parts = [(1.0, On.LEFT, 0.0, 1200.0)]
    assert room.variance(parts) ** 0.5 > 2.0  # type: ignore[arg-type]


def test_a_plumb_reading_half_way_up_says_which_wall_is_bowed() -> None:
    half = Reading(ReadingKind.LEAN, 9.0, y=0.0, z=100.0, z2=1200.0, side=Side.LEFT)
    survey = TrueRoom(bulge=(9.0, 9.0)).survey()
    room = build_room(replace(survey, extras=(half,)))
    assert room.left.at(0.0, 1200.0) > 8.0
    assert room.right.at(0.0, 1200.0) > 1898.0


def test_without_diagonals_the_plan_is_symmetrical_and_said_to_be_unchecked() -> None:
    survey = replace(
        TrueRoom(rear_left=(10.0, 600.0), rear_right=(1890.0, 600.0)).survey(),
        diagonal_to_left=None, diagonal_to_right=None,
    )
    room = build_room(survey)
    finding = only(room, "not-measured")
    assert finding.severity is Severity.NOT_CHECKED
    assert re.search(r"; measure the diagonal from front \w+ to back \w+ next$", finding.message)
    assert room.left.at(survey.depth_left, 100.0) == pytest.approx(10.0, abs=NEAR)
    assert room.right.at(survey.depth_right, 100.0) == pytest.approx(1890.0, abs=NEAR)
    with_one = build_room(replace(survey, diagonal_to_right=math.hypot(1890.0, 600.0)))
    assert rules(with_one) == []
    loose, tight = (r.variance([(1.0, On.LEFT, 600.0, 100.0)]) for r in (room, with_one))  # type: ignore[arg-type]
    assert tight < loose / 4


def test_a_room_without_any_plumb_reading_says_so() -> None:
    finding = only(build_room(TrueRoom().survey()), "not-plumbed")
    assert finding.severity is Severity.NOT_CHECKED
    leaning = build_room(replace(TrueRoom().survey(), rise_left=1.0))
    assert "not-plumbed" not in [f.rule for f in leaning.findings]


def test_figures_are_printed_in_the_users_unit() -> None:
    true = RACKED.survey()
    wrong = replace(true, width_back_low=true.width_back_low + 25.4)
    figures = Figures(LengthFormat("in-frac", Fraction(1, 16)))
    finding = only(build_room(wrong, figures), "reading-wrong")
    value = true.width_back_low / 25.4
    assert (finding.value, finding.limit.split(" expected")[0]) == (
        f'{value + 1:.2f}"', f'{value:.2f}"')


def test_wrong_rear_width_is_named_with_what_it_should_be() -> None:
    true = RACKED.survey()
    room = build_room(replace(true, width_back_low=true.width_back_low + 10.0))
    (finding,) = doubts(room)
    assert finding.severity is Severity.WARNING
    assert finding.rule == "reading-wrong"
    value = true.width_back_low
    assert finding.message == (
        f"the width at the back, low cannot be right: {value + 10:.1f} mm was read, "
        f"{value:.1f} mm follows from the others; measure it again. The room is worked out "
        "without it"
    )
    assert finding.limit.startswith(f"{value:.1f} mm expected, give or take ")
    (left_out,) = (r for r in room.readings if not r.used)
    assert left_out.key == "width_back_low"
    assert left_out.residual == pytest.approx(-10.0, abs=NEAR)
    assert left_out.w > 3.29
    assert room.right.at(631.0, 100.0) == pytest.approx(1909.0, abs=NEAR)


def test_readings_that_check_only_each_other_are_named_together() -> None:
    room = build_room(replace(TrueRoom().survey(), rise_back=12.0))
    finding = only(room, "readings-rival")
    assert finding.message.startswith(
        "one of these must be wrong, and the readings do not say which: the rise of the floor "
        "from left to right at the front and the rise of the floor from left to right at the "
        "back; measure them again; take the "
    )
    assert finding.value == "0.0 mm and 12.0 mm"
    assert "readings-disagree" not in rules(room)
    # the floor may be out by as much as they differ, the walls are as sure as ever
    sure = build_room(TrueRoom().survey())
    slope = [(1.0, On.FLOOR, 1900.0, 0.0)]
    assert room.variance(slope) > 20 * sure.variance(slope)
    width = [(1.0, On.RIGHT, 0.0, 1200.0)]
    assert room.variance(width) == pytest.approx(sure.variance(width), rel=0.02)


def test_a_shape_and_a_reading_that_explain_the_same_are_both_named() -> None:
    finding = only(build_room(replace(TrueRoom().survey(), lean_back_left=14.0)), "wall-bent")
    assert finding.message == (
        "the readings show a twist of the back wall, or a reading is wrong: the lean of the back "
        "wall at the left and the lean of the back wall at the right; take the depth "
        "in the middle, high as well"
    )


SINGLE = TrueRoom(
    rear_left=(4.0, 640.0), rear_right=(1909.0, 634.0), left=(5.0, 5.0), right=(22 / 7, 22 / 7),
    bulge=(5 / 3, 5 / 3), back=(3.0, 3.0), floor=(0.0, 5.0, -2.0, 3.0),
).survey()


@pytest.mark.parametrize("key", READING_NAMES)
def test_a_plain_survey_names_a_wrong_reading_or_what_to_take_next(key: str) -> None:
    # 23 readings cannot all check each other: what they narrow down to a group, and what
    # nothing checks, is said with the reading to take next
    wrong = replace(SINGLE, **{key: getattr(SINGLE, key) + 15.0})  # type: ignore[arg-type]
    found = [f for f in build_room(wrong).findings if READING_NAMES[key] in f.message]
    assert found
    first = found[0]
    assert first.rule in ("reading-wrong", "readings-rival", "wall-bent", "reading-alone")
    if first.rule != "reading-wrong":
        assert re.search(r"; take the .+ as well", first.message)


def test_the_reading_to_take_next_settles_which_is_wrong() -> None:
    wrong = replace(SINGLE, rise_back=SINGLE.rise_back + 12.0)
    rival = only(build_room(wrong), "readings-rival").message
    (name,) = re.findall("; take the (.+) as well", rival)
    (following,) = (r for r in recommended(SINGLE) if r.name == name)
    following = replace(following, value=3.0)  # from front left to back right
    room = build_room(replace(wrong, extras=(following,)))
    assert [r.key for r in room.readings if not r.used] == ["rise_back"]


def test_what_no_reading_checks_or_shows_is_said() -> None:
    plain = build_room(SINGLE)
    assert only(plain, "reading-alone").message.startswith(
        "nothing checks a reading, so that a wrong one would not show: the depth along the left"
    )
    assert "bow of the ceiling from left to right" in only(plain, "bows-not-read").message
    full = plain_survey(1900.0, 600.0, 2400.0, opening=True)
    assert not {"reading-alone", "bows-not-read"} & {f.rule for f in build_room(full).findings}


def test_readings_that_differ_no_more_than_the_tape_are_left_alone() -> None:
    assert doubts(build_room(replace(TrueRoom().survey(), width_back_low=1901.0))) == []
    assert doubts(build_room(replace(TrueRoom().survey(), lean_right_front=1.5))) == []


def test_a_better_tape_makes_a_surer_room() -> None:
    survey = plain_survey(1900.0, 600.0, 2400.0)
    parts = [(1.0, On.RIGHT, 300.0, 1200.0)]
    coarse, fine = (
        build_room(replace(survey, tape=tape, resolution=step)).variance(parts)  # type: ignore[arg-type]
        for tape, step in ((TapeClass.III, 5.0), (TapeClass.I, 0.5))
    )
    assert coarse > 9 * fine > 0


def test_tapes_that_do_not_meet_are_refused() -> None:
    with pytest.raises(SurveyError) as caught:
        build_room(replace(TrueRoom().survey(), diagonal_to_left=1200.0))
    assert str(caught.value) == (
        "survey: diagonal from front right to back left is 1200 mm; goes with no room that the "
        "other readings allow; about 1992 mm was expected; measure it again"
    )
    with pytest.raises(SurveyError) as caught:
        build_room(replace(TrueRoom().survey(), rise_back=250.0))
    assert str(caught.value) == (
        "survey: the rise of the floor from left to right at the front and the rise of the floor "
        "from left to right at the back is 0, 250 mm; contradict each other by 250 mm or more; "
        "measure these again"
    )


def opened(**changes: float | None) -> Survey:
    start = replace(
        TrueRoom().survey(), opening_width=1500.0, return_left=190.0, return_right=210.0,
        opening_height=2030.0, lintel=370.0, jamb_depth=110.0, casing_width=70.0,
        casing_thickness=15.0,
    )
    return replace(start, **changes)  # type: ignore[arg-type]


def test_opening_lies_between_its_returns_and_under_its_lintel() -> None:
    opening = build_room(opened()).opening
    assert opening is not None
    assert (opening.x0, opening.x1, opening.z1) == pytest.approx((190.0, 1690.0, 2030.0))
    assert (opening.width, opening.depth) == pytest.approx((1500.0, 110.0))
    assert (opening.casing_width, opening.casing_thickness) == (70.0, 15.0)
    assert build_room(TrueRoom().survey()).opening is None


def test_opening_without_returns_is_taken_to_be_in_the_middle() -> None:
    room = build_room(opened(return_left=None, return_right=None, lintel=None))
    assert room.opening is not None
    assert (room.opening.x0, room.opening.x1) == pytest.approx((200.0, 1700.0))
    assert "the opening is in the middle of the front" in only(room, "not-measured").message


def test_returns_alone_give_the_opening_and_no_lintel_leaves_it_open_to_the_ceiling() -> None:
    opening = build_room(opened(opening_width=None, opening_height=None, lintel=None)).opening
    assert opening is not None
    assert (opening.width, opening.z1) == pytest.approx((1500.0, 2400.0))


def test_a_door_of_an_opening_that_is_not_measured_is_said_to_be_unchecked() -> None:
    for width, said in ((None, True), (1500.0, False)):
        survey = replace(TrueRoom().survey(), door=OwnDoor.SLIDING, opening_width=width)
        rules = {f.rule for f in build_room(survey).findings}
        assert ("door-without-opening" in rules) is said


def test_opening_and_returns_check_the_width() -> None:
    rival = only(build_room(opened(return_right=260.0)), "readings-rival").message
    assert "the return at the left of the opening and the return at the right" in rival
    assert "; take the return at the left of the opening, high as well" in rival


def test_room_keeps_what_stands_in_it() -> None:
    pipe = Obstacle("pipe", 0.0, 500.0, 0.0, 60.0, 600.0, 2400.0)
    survey = replace(
        TrueRoom().survey(), obstacles=(pipe,), baseboard_height=90.0, baseboard_thickness=12.0
    )
    room = build_room(survey)
    assert room.obstacles == (pipe,)
    assert room.baseboard == (90.0, 12.0)


def test_surface_is_exact_between_its_corners() -> None:
    bowed = Surface((0.0, 0.0, 4.0, 0.0, 0.0, -1.0))  # 4 v - v², 4 at v = 2
    assert bowed.at(7.0, 2.0) == 4.0
    assert bowed.over(0.0, 10.0, 0.0, 3.0) == (0.0, 4.0)
    assert bowed.over(0.0, 10.0, 2.5, 3.0) == (3.0, 3.75)
    dome = Surface((1.0, 2.0, 2.0, 0.0, -1.0, -1.0))
    assert dome.over(0.0, 3.0, 0.0, 3.0) == (-5.0, 3.0)
    twisted = Surface((0.0, 0.0, 0.0, 1.0, 0.0, 0.0))
    assert twisted.over(-1.0, 2.0, -3.0, 1.0) == (-6.0, 3.0)
    assert Surface.plane(5.0, 0.1, -0.2).at(10.0, 10.0) == pytest.approx(4.0)
