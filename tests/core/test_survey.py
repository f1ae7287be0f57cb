"""Readings: which are taken and which are refused, in which words."""

from __future__ import annotations

from dataclasses import fields, replace

import pytest

from closetbench.core.errors import SurveyError
from closetbench.core.survey import READING_NAMES, Survey
from tests.core.rooms import TrueRoom

GOOD = TrueRoom().survey()


def refused(**changes: object) -> SurveyError:
    with pytest.raises(SurveyError) as caught:
        replace(GOOD, **changes)  # type: ignore[arg-type]
    return caught.value


def test_every_reading_has_a_name() -> None:
    assert {f.name for f in fields(Survey)} - {"levels"} == set(READING_NAMES)
    assert len(set(READING_NAMES.values())) == len(READING_NAMES)


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
