"""Readings: which are taken and which are refused, in which words."""

from __future__ import annotations

from dataclasses import fields, replace

import pytest

from closetbench.core.errors import SurveyError
from closetbench.core.survey import (
    OPENING_NAMES,
    READING_NAMES,
    TRIM_NAMES,
    Obstacle,
    Reading,
    ReadingKind,
    Side,
    Survey,
)
from tests.core.rooms import TrueRoom

GOOD = TrueRoom().survey()


def refused(**changes: object) -> SurveyError:
    with pytest.raises(SurveyError) as caught:
        replace(GOOD, **changes)  # type: ignore[arg-type]
    return caught.value


def test_every_reading_has_a_name() -> None:
    others = {"levels", "extras", "obstacles", "tape", "resolution", "level_error", "door",
              "door_opens"}
    names = READING_NAMES | OPENING_NAMES | TRIM_NAMES
    assert {f.name for f in fields(Survey)} - others == set(names)
    assert len(set(names.values())) == len(names)


@pytest.mark.parametrize("value", [0.0, -10.0, float("nan"), float("inf")])
@pytest.mark.parametrize("name", ["width_front_low", "depth_left", "diagonal_to_left"])
def test_lengths_must_be_above_zero(name: str, value: float) -> None:
    error = refused(**{name: value})
    assert (error.subject, error.prop, error.value, error.limit) == (
        "survey", READING_NAMES[name], f"{value:g} mm", "must be above 0 mm"
    )


@pytest.mark.parametrize("name", ["lean_left_front", "lean_right_back", "rise_front"])
def test_offsets_must_be_offsets(name: str) -> None:
    assert str(refused(**{name: 640.0})) == (
        f"survey: {READING_NAMES[name]} is 640 mm; must lie within 300 mm either way; "
        "enter the offset, not the distance"
    )
    assert getattr(replace(GOOD, **{name: -12.5}), name) == -12.5


@pytest.mark.parametrize(
    "levels", [(1200.0, 100.0, 2200.0), (100.0, 100.0, 2200.0), (-1.0, 1200.0, 2200.0)]
)
def test_levels_must_rise(levels: tuple[float, float, float]) -> None:
    error = refused(levels=levels)
    assert error.prop == "levels"
    assert error.limit == "must be three heights above the floor, rising"


def test_levels_must_lie_in_the_room() -> None:
    assert str(refused(height_back_left=2100.0)) == (
        "survey: levels is 100, 1200, 2200; must lie below the ceiling, 2100 mm; "
        "enter the heights that were read"
    )


def test_readings_that_were_not_taken_are_none() -> None:
    bare = replace(GOOD, diagonal_to_left=None, lean_right_front=None)
    assert bare.diagonal_to_left is None
    assert bare.lean_right_front is None


@pytest.mark.parametrize(
    ("name", "factor"),
    [("width_front_mid", 1 / 25.4), ("height_back_left", 1 / 10), ("depth_right", 25.4),
     ("diagonal_to_left", 1 / 304.8), ("width_back_low", 12.0)],
)
def test_a_reading_in_another_unit_is_refused(name: str, factor: float) -> None:
    error = refused(**{name: getattr(GOOD, name) * factor})
    assert "one was read in another unit; write the unit behind it" in error.limit
    kind = name.split("_")[0]
    assert kind in error.prop


def test_a_sloping_ceiling_is_no_other_unit() -> None:
    assert replace(GOOD, height_back_left=2210.0, height_back_right=2210.0).height_back_left == 2210


def test_an_opening_is_no_wider_than_the_closet() -> None:
    error = refused(opening_width=1950.0)
    assert error.prop == OPENING_NAMES["opening_width"]
    assert error.limit.startswith("must not be wider than the closet behind it, 1900 mm")


@pytest.mark.parametrize(
    ("name", "value", "words"),
    [("baseboard_height", -1.0, "height of the baseboard"),
     ("jamb_depth", 2000.0, "thickness of the wall at the opening"),
     ("resolution", 0.0, "resolution of the readings"),
     ("level_error", 11.0, "error of the level"),
     ("door_opens", 10.0, "angle to which the closet's own door opens")],
)
def test_what_else_is_given_must_make_sense(name: str, value: float, words: str) -> None:
    assert refused(**{name: value}).prop == words


@pytest.mark.parametrize(
    ("reading", "missing"),
    [
        ({"kind": ReadingKind.WIDTH, "y": 3.0}, "z"),
        ({"kind": ReadingKind.HEIGHT, "x": 3.0}, "y"),
        ({"kind": ReadingKind.LEAN, "side": Side.BACK, "z": 0.0, "z2": 900.0}, "x"),
        ({"kind": ReadingKind.RISE, "x": 0.0, "y": 0.0}, "x2, y2"),
    ],
)
def test_an_extra_reading_says_where_it_was_taken(
    reading: dict[str, object], missing: str
) -> None:
    with pytest.raises(SurveyError) as caught:
        Reading(value=12.0, **reading)  # type: ignore[arg-type]
    assert caught.value.limit == f"must say where it was read: {missing}"


def test_an_extra_reading_is_called_by_its_place_or_its_label() -> None:
    wide = Reading(ReadingKind.WIDTH, 1900.0, y=300.0, z=800.0)
    assert wide.name == "width at y 300, z 800"
    assert replace(wide, label="over the socket").name == "over the socket"
    with pytest.raises(SurveyError, match="over the socket is 0 mm; must be above 0"):
        replace(wide, label="over the socket", value=0.0)
    with pytest.raises(SurveyError, match="must end at the left or at the right"):
        Reading(ReadingKind.PLAN_DIAGONAL, 2000.0, z=100.0, side=Side.BACK)


def test_an_obstacle_has_a_size() -> None:
    with pytest.raises(SurveyError, match="pipe: y0 and y1 is 50 and 50 mm"):
        Obstacle("pipe", 0.0, 50.0, 0.0, 60.0, 50.0, 2400.0)
