from __future__ import annotations

from fractions import Fraction as F
from math import isfinite

import pytest
from hypothesis import given
from hypothesis import strategies as st

from closetbench.core.errors import LengthError
from closetbench.core.lengths import (
    CENTIMETRES,
    DECIMAL_INCHES,
    FEET_AND_INCHES,
    INCH,
    METRES,
    MILLIMETRES,
    SIXTEENTHS,
    THIRTY_SECONDS,
    LengthFormat,
    read_exact,
    read_length,
)

IN = INCH
FT = 12 * INCH


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ('72 5/16"', (72 + F(5, 16)) * IN),
        ("72-5/16 in", (72 + F(5, 16)) * IN),
        ('72+5/16"', (72 + F(5, 16)) * IN),
        ("72 5 / 16 inches", (72 + F(5, 16)) * IN),
        ("6' 1/4", 6 * FT + IN / 4),
        ("6' 0 1/4\"", 6 * FT + IN / 4),
        ("6'-0 1/4\"", 6 * FT + IN / 4),
        ("6' - 0 1/4\"", 6 * FT + IN / 4),
        ("6' + 1/4\"", 6 * FT + IN / 4),
        ("6'2''", 6 * FT + 2 * IN),
        ("6'2", 6 * FT + 2 * IN),
        ("6 ft 2 in", 6 * FT + 2 * IN),
        ("6 ft. 2 in.", 6 * FT + 2 * IN),
        ("6 feet 2.5 inches", 6 * FT + F(5, 2) * IN),
        ("1 foot", FT),
        ("2-1/2 ft", F(5, 2) * FT),
        ("5/4 in", F(5, 4) * IN),
        ("11 15/16 Inch", (11 + F(15, 16)) * IN),
        ("1832.5 mm", F(18325, 10)),
        ("1832.5mm", F(18325, 10)),
        ("183.25 cm", F(18325, 10)),
        ("1.8325 m", F(18325, 10)),
        ("1.8325 metres", F(18325, 10)),
        ("1 m 83 cm 2.5 mm", F(18325, 10)),
        ("1m 832.5 millimeters", F(18325, 10)),
        ("18 MM", F(18)),
        ("18.", F(18)),
        (".5", F(1, 2)),
        ("+18", F(18)),
        ("0", F(0)),
        ("-0", F(0)),
    ],
)
def test_usual_spellings(text: str, mm: F) -> None:
    assert read_exact(text) == mm
    assert read_length(text) == float(mm)


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ('½"', IN / 2),
        ("5⅜″", (5 + F(3, 8)) * IN),
        ("5 ⅝”", (5 + F(5, 8)) * IN),
        ("5³⁄₈ in", (5 + F(3, 8)) * IN),
        ("5 3⁄8 in", (5 + F(3, 8)) * IN),
        ("⅟₁₆ in", IN / 16),
        ("6′ 2½″", 6 * FT + F(5, 2) * IN),
        ("6’–2½”", 6 * FT + F(5, 2) * IN),
        ("72‑5∕16 in", (72 + F(5, 16)) * IN),
        ("6\u00a0ft\u20092\u202fin", 6 * FT + 2 * IN),
        ("\ufeff１８\u00a0mm", F(18)),
        ("72\u00a05/16 in", (72 + F(5, 16)) * IN),
    ],
)
def test_typographic_characters(text: str, mm: F) -> None:
    assert read_exact(text) == mm


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ("1832,5 mm", F(18325, 10)),
        ("1832,500", F(18325, 10)),
        ("0,125", F(1, 8)),
        (",5", F(1, 2)),
        ("1.832,5", F(18325, 10)),
        ("1,832.5", F(18325, 10)),
        ("1,832,500 mm", F(1832500)),
        ("1.832.500 mm", F(1832500)),
        ("1\u202f832,5 mm", F(18325, 10)),
        ("1\u00a0832", F(1832)),
        ("1 832.5 mm", F(18325, 10)),
        ("1.832", F(1832, 1000)),
    ],
)
def test_decimal_and_grouping_signs(text: str, mm: F) -> None:
    assert read_exact(text) == mm


def test_a_comma_that_can_be_read_in_two_ways_is_refused_with_both() -> None:
    with pytest.raises(LengthError) as caught:
        read_length("1,832 mm")
    assert "1832 or 1.832" in caught.value.limit


@pytest.mark.parametrize(
    ("unit", "mm"), [("mm", F(6)), ("cm", F(60)), ("m", F(6000)), ("in", 6 * IN), ("ft", 6 * FT)]
)
def test_a_bare_number_is_in_the_callers_unit(unit: str, mm: F) -> None:
    assert read_exact("6", unit) == mm


def test_a_bare_fraction_needs_inches() -> None:
    assert read_exact("5/8", "in") == F(5, 8) * IN
    assert read_exact("72 5/16", "in") == (72 + F(5, 16)) * IN
    with pytest.raises(LengthError, match="inches or feet, not in millimetres"):
        read_exact("5/8", "mm")


def test_a_unit_in_the_text_wins_over_the_callers() -> None:
    assert read_exact("18 mm", "in") == 18
    assert read_exact('1"', "mm") == IN


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("", "type a length such as"),
        (" \u00a0", "type a length such as"),
        ("-", "type a length such as"),
        ("wide", "cannot be read"),
        ("nan", "cannot be read"),
        ("inf", "cannot be read"),
        ("-inf mm", "cannot be read"),
        ("1e3", "'e' is no unit"),
        ("5 yd", "'yd' is no unit"),
        ("5 m²", "'m²' is no unit"),
        ('1/0"', "must not be 0"),
        ('72 5/0"', "must not be 0"),
        ('5/8/2"', "one number above and one below"),
        ('5/"', "one number above and one below"),
        ('/8"', "one number above and one below"),
        ("1' 14\"", "must be under 12"),
        ("1' 12", "must be under 12"),
        ("1 m 100 cm", "must be under 100"),
        ("6.5' 2\"", "only the smallest unit"),
        ('72 17/16"', "must be under 1"),
        ('5.5 1/2"', "whole inches or feet"),
        ("2\" 6'", "feet cannot follow inches"),
        ("2 in 2 in", "inches cannot follow inches"),
        ("1 m 2 in", "mixes metric and inch"),
        ("6' 2 cm", "mixes metric and inch"),
        ("1 m 83", "say the unit"),
        ('72" 5/16', "say the unit"),
        ("6 2", "without a unit"),
        ('72 516"', "without a unit"),
        ("1 832", "without a unit"),
        ('72 - 5/16"', "subtraction"),
        ('72 -5/16"', "subtraction"),
        ("6'-", "ends in the middle"),
        ("1,2.3", "no number"),
        ("0,832.5", "no number"),
        ("1.2.3", "no number"),
        ("1832,", "no number"),
        ("9" * 5000, "that long"),
        ("1/2 m", "not in metres"),
    ],
)
def test_what_is_no_length_is_refused(text: str, reason: str) -> None:
    unit = "in" if '/8/2"' in text else "mm"
    with pytest.raises(LengthError) as caught:
        read_exact(text, unit, subject="bay 2", prop="width")
    error = caught.value
    assert reason in error.limit
    assert (error.subject, error.prop) == ("bay 2", "width")
    assert str(error.value).startswith((text.strip() or "empty")[:60])


def test_the_callers_unit_must_be_one() -> None:
    with pytest.raises(LengthError, match="must be one of mm, cm, m, in, ft"):
        read_length("1", "yard")


@pytest.mark.parametrize("sign", ["-", "−", "– ", "‒", "－"])
def test_negative_only_where_the_caller_allows(sign: str) -> None:
    assert read_exact(f"{sign}6' 2\"", allow_negative=True) == -(6 * FT + 2 * IN)
    with pytest.raises(LengthError, match="must not be negative"):
        read_exact(f"{sign}6' 2\"")


SHOP_CHARACTERS = "0123456789.,/'\" -+mcinft½⅜²₈−″\u00a0"


@given(st.one_of(st.text(max_size=80), st.text(SHOP_CHARACTERS, max_size=20)))
def test_any_text_is_read_or_refused(text: str) -> None:
    try:
        value = read_length(text, "in", allow_negative=True)
    except LengthError:
        return
    assert isfinite(value)


@pytest.mark.parametrize(
    ("form", "mm", "text"),
    [
        (MILLIMETRES, 1832.5, "1832.5 mm"),
        (MILLIMETRES, 1832.0, "1832 mm"),
        (LengthFormat("mm", F(1, 2)), 1832.3, "1832.5 mm"),
        (LengthFormat("mm", F(1)), 1832.5, "1832 mm"),
        (LengthFormat("mm", F(1)), 1833.5, "1834 mm"),
        (LengthFormat("mm", F(1, 100)), 0.05, "0.05 mm"),
        (LengthFormat("mm", F(1, 10)), 0.15, "0.2 mm"),
        (LengthFormat("mm", F(1, 10)), 0.25, "0.2 mm"),
        (LengthFormat("mm", F(1)), -0.4, "0 mm"),
        (CENTIMETRES, 1832.5, "183.25 cm"),
        (METRES, 1832.4, "1.832 m"),
        (METRES, 5.0, "0.005 m"),
        (DECIMAL_INCHES, 1836.7, "72.311 in"),
        (SIXTEENTHS, 1836.7, '72 5/16"'),
        (SIXTEENTHS, 12.7, '1/2"'),
        (SIXTEENTHS, 0.0, '0"'),
        (SIXTEENTHS, 304.7, '12"'),
        (THIRTY_SECONDS, 18.0, '23/32"'),
        (FEET_AND_INCHES, 304.7, "1' 0\""),
        (FEET_AND_INCHES, 303.0, '11 15/16"'),
        (FEET_AND_INCHES, 1836.7, "6' 0 5/16\""),
        (FEET_AND_INCHES, 1879.6, "6' 2\""),
        (FEET_AND_INCHES, -1836.7, "-6' 0 5/16\""),
        (FEET_AND_INCHES, 0.1, '0"'),
    ],
)
def test_printed_text(form: LengthFormat, mm: float, text: str) -> None:
    assert form.text(mm) == text


def test_a_number_without_its_unit_for_columns() -> None:
    assert MILLIMETRES.text(1832.5, unit=False) == "1832.5"
    assert SIXTEENTHS.text(1836.7, unit=False) == "72 5/16"
    assert (CENTIMETRES.unit, FEET_AND_INCHES.unit) == ("cm", "in")


def test_rounding_error_is_printed_minus_true() -> None:
    assert SIXTEENTHS.error(1836.5375) == pytest.approx(0.2)
    assert SIXTEENTHS.text_with_error(1836.5375) == '72 5/16" (+0.2 mm)'
    assert SIXTEENTHS.text_with_error(1836.9) == '72 5/16" (-0.2 mm)'
    assert SIXTEENTHS.text_with_error(1836.7) == '72 5/16" (+0.04 mm)'
    assert SIXTEENTHS.text_with_error(1836.7375) == '72 5/16"'
    assert MILLIMETRES.text_with_error(0.1 + 0.2) == "0.3 mm"


def test_a_sum_of_decimals_in_binary_prints_as_the_sum() -> None:
    assert MILLIMETRES.rounded(sum([0.1] * 3)) == 0.3
    assert MILLIMETRES.error(1.1 * 3) == pytest.approx(0.0, abs=1e-12)


STEPS = {
    "mm": [F(5), F(1), F(1, 2), F(1, 10), F(1, 100)],
    "cm": [F(1), F(1, 2), F(1, 10)],
    "m": [F(10), F(1), F(1, 10)],
    "in": [F(1, 16), F(1, 10), F(1, 1000)],
    "in-frac": [F(1), F(1, 8), F(1, 16), F(1, 32), F(1, 64), F(1, 128)],
    "ft-in": [F(1), F(1, 16), F(1, 32), F(1, 64)],
}
FORMATS = [LengthFormat(style, step) for style, steps in STEPS.items() for step in steps]


@given(st.sampled_from(FORMATS), st.floats(-1e5, 1e5))
def test_what_is_printed_reads_back_exactly(form: LengthFormat, mm: float) -> None:
    text = form.text(mm)
    assert read_exact(text, allow_negative=True) == form.exact(mm)
    assert read_length(text, allow_negative=True) == form.rounded(mm)
    bare = form.text(mm, unit=False)
    assert read_length(bare, form.unit, allow_negative=True) == form.rounded(mm)
    assert form.text(form.rounded(mm)) == text
    step = form.resolution * (INCH if form.unit == "in" else 1)
    assert abs(form.error(mm)) <= float(step) / 2 + 1e-9


@given(st.integers(0, 10**7), st.sampled_from([1, 2, 4, 8, 16, 32, 64]))
def test_fractions_are_printed_in_lowest_terms(n: int, bottom: int) -> None:
    text = LengthFormat("in-frac", F(1, bottom)).text(float(n * INCH / bottom))
    if "/" in text:
        top, below = text.rstrip('"').split()[-1].split("/")
        assert int(top) % 2 == 1
        assert int(below) <= bottom


@pytest.mark.parametrize(
    ("style", "step"),
    [
        ("mm", F(0)),
        ("mm", F(-1)),
        ("mm", F(1, 3)),
        ("in-frac", F(1, 10)),
        ("in-frac", F(3, 16)),
        ("ft-in", F(1, 256)),
        ("yard", F(1)),
    ],
)
def test_formats_that_cannot_print_are_refused(style: str, step: F) -> None:
    with pytest.raises(LengthError):
        LengthFormat(style, step)  # type: ignore[arg-type]


@pytest.mark.parametrize("mm", [float("nan"), float("inf"), float("-inf")])
def test_what_is_no_finite_number_is_not_printed(mm: float) -> None:
    with pytest.raises(LengthError, match="finite"):
        MILLIMETRES.text(mm)
