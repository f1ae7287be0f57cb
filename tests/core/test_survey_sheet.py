"""What the survey sheet asks for, in which order, and where each reading is entered."""

from __future__ import annotations

from dataclasses import fields, replace
from fractions import Fraction

import pytest

from closetbench.core.lengths import LengthFormat
from closetbench.core.readings import observations
from closetbench.core.survey import (
    OPENING_NAMES,
    READING_NAMES,
    TRIM_NAMES,
    Reading,
    ReadingKind,
    Survey,
)
from closetbench.core.survey_sheet import (
    ORDER,
    View,
    level_step,
    property_name,
    rough_survey,
    survey_sheet,
)
from tests.core.measured import plain_survey
from tests.core.rooms import TrueRoom
from tests.core.test_room import opened

SURVEY = opened()


def test_every_reading_is_asked_for_once_and_numbered_in_order() -> None:
    sheet = survey_sheet("closet", SURVEY)
    assert set(ORDER) == set(READING_NAMES)
    keys = [b.key for b in sheet.blanks]
    assert keys[:len(ORDER)] == list(ORDER)
    assert keys[len(ORDER):len(ORDER) + 5] == list(OPENING_NAMES)
    assert [b.number for b in sheet.blanks] == list(range(1, 52))
    assert len({b.name for b in sheet.blanks}) == 51
    assert {k for k in keys if not k.startswith("extra")} <= {f.name for f in fields(Survey)}


def test_blanks_name_the_property_and_hold_what_was_read() -> None:
    by_key = {b.key: b for b in survey_sheet("closet", SURVEY).blanks}
    width = by_key["width_front_low"]
    assert (width.prop, width.value, width.view) == ("WidthFrontLow", 1900.0, View.FRONT)
    assert (width.start, width.end) == ((0.0, 100.0), (1900.0, 100.0))
    assert by_key["lean_right_back"].how == "+ into the closet on its way up"
    assert by_key["opening_height"].end == (940.0, 2030.0)
    assert all(b.value is None for b in survey_sheet("closet", SURVEY, blank=True).blanks)
    assert property_name("lintel") == "Lintel"


def test_extra_readings_keep_theirs_and_the_recommended_ones_are_blank() -> None:
    extra = Reading(ReadingKind.HEIGHT, 2399.0, x=950.0, y=0.0, label="over the socket")
    sheet = survey_sheet("closet", replace(SURVEY, extras=(extra,)))
    first, *rest = (b for b in sheet.blanks if b.key.startswith("extra"))
    assert first.name == "over the socket"
    assert (first.key, first.reading) == ("extra", extra)
    assert (first.prop, first.value, first.view) == ("ExtraReadings", 2399.0, View.FRONT)
    assert len(rest) == 22  # the height in the middle of the front is there
    assert all(b.value is None for b in rest)
    short = survey_sheet("closet", replace(SURVEY, extras=(extra,)), full=False)
    assert len(short.blanks) == 23 + 5 + 1


def test_what_stands_around_the_opening_is_asked_for_too() -> None:
    plain = plain_survey(1900.0, 600.0, 2400.0)
    sheet = survey_sheet("closet", replace(plain, baseboard_height=95.0))
    assert {t.key: t.value for t in sheet.trim} == {
        **dict.fromkeys(TRIM_NAMES), "baseboard_height": 95.0}
    assert sheet.trim[1].prop == "BaseboardHeight"
    assert not any(t.value for t in survey_sheet("closet", SURVEY, blank=True).trim)


def test_a_closet_of_rough_sizes_gets_a_sheet_to_be_measured_with() -> None:
    sheet = survey_sheet("closet", rough_survey((1200.0, 600.0, 2400.0)), blank=True)
    assert (sheet.width, sheet.depth, sheet.height) == (1200.0, 600.0, 2400.0)
    assert sheet.levels == (120.0, 1200.0, 2160.0)
    assert len(sheet.blanks) == 48
    form = LengthFormat("in-frac", Fraction(1, 16))
    inches = rough_survey((1828.8, 609.6, 2438.4), level_step(form))
    assert [v / 25.4 for v in inches.levels] == pytest.approx([5, 48, 86])
    assert rough_survey((500.0, 300.0, 30.0)).levels == (1.5, 15.0, 27.0)


def test_sheet_shows_the_closet_at_hand() -> None:
    sheet = survey_sheet("closet", SURVEY)
    assert (sheet.width, sheet.depth, sheet.height) == (1900.0, 600.0, 2400.0)
    assert sheet.opening == (190.0, 1690.0, 2030.0)
    assert survey_sheet("closet", TrueRoom().survey()).opening is None
    for blank in sheet.blanks:
        across = 600.0 if blank.view is View.SIDE else 1900.0
        up = 600.0 if blank.view is View.PLAN else 2400.0
        for u, v in (blank.start, blank.end):
            assert -1e-9 <= u <= across + 1e-9
            assert -1e-9 <= v <= up + 1e-9


def test_a_filled_sheet_is_a_fully_measured_room() -> None:
    survey = plain_survey(1900.0, 600.0, 2400.0)
    sheet = survey_sheet("closet", survey)
    asked = {b.name for b in sheet.blanks} - set(OPENING_NAMES.values())
    assert asked == {o.name for o in observations(survey)}
    assert len(asked) == 43
