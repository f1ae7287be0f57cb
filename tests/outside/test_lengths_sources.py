"""Lengths against published definitions and size tables."""

from __future__ import annotations

from fractions import Fraction as F

import pytest

from closetbench.core.lengths import FEET_AND_INCHES, SIXTEENTHS, LengthFormat, read_exact


def test_inch_foot_and_yard_are_exact() -> None:
    # "Refinement of Values for the Yard and the Pound", Federal Register, 1 July 1959:
    # 1 yard = 0.914 4 m exactly; addendum of January 1960 to NBS Circular 572: 1 in = 25.4 mm.
    assert read_exact("3 ft") == F("914.4")
    assert read_exact("36 in") == F("914.4")
    assert read_exact("1 in") == F("25.4")


@pytest.mark.parametrize(
    ("inches", "printed"),
    # ADA 2010 Standards, 308.2.1 reach and 308.3 figures: the inch value and the
    # millimetres printed beside it, which that document rounds to 5 mm.
    [("15 in", 380), ("48 in", 1220), ("44 in", 1120)],
)
def test_metric_values_printed_beside_inches_to_5_mm(inches: str, printed: int) -> None:
    form = LengthFormat("mm", F(5))
    assert form.text(float(read_exact(inches))) == f"{printed} mm"


@pytest.mark.parametrize(
    ("fraction", "inches"),
    # PS 1-19, structural plywood, thickness limits of the performance categories:
    # each is its category in inches less and plus 1/32 in, printed to 0.001 in.
    [
        ("1/4", ("0.219", "0.281")),
        ("15/32", ("0.438", "0.500")),
        ("1/2", ("0.469", "0.531")),
        ("23/32", ("0.688", "0.750")),
        ("3/4", ("0.719", "0.781")),
    ],
)
def test_plywood_categories_as_fractions(fraction: str, inches: tuple[str, str]) -> None:
    category = read_exact(fraction, "in")
    low, high = (read_exact(text, "in") for text in inches)
    slack = F("0.0005") * F("25.4")
    assert abs(category - F(1, 32) * F("25.4") - low) <= slack
    assert abs(category + F(1, 32) * F("25.4") - high) <= slack


@pytest.mark.parametrize(
    ("text", "feet", "inches"),
    # PS 1-19: the 4 ft by 8 ft panel is 48 in by 96 in, 1219.2 by 2438.4 mm.
    [("1219.2 mm", "4' 0\"", '48"'), ("2438.4 mm", "8' 0\"", '96"')],
)
def test_the_four_by_eight_sheet(text: str, feet: str, inches: str) -> None:
    mm = float(read_exact(text))
    assert FEET_AND_INCHES.text(mm) == feet
    assert SIXTEENTHS.text(mm) == inches


@pytest.mark.parametrize(
    ("form", "true", "printed"),
    # NIST Handbook 44, general code, rounding off: a reading half way between two
    # graduations goes to the even one.
    [
        (LengthFormat("mm", F(1)), "12.5 mm", "12 mm"),
        (LengthFormat("mm", F(1)), "13.5 mm", "14 mm"),
        (SIXTEENTHS, "72 1/32 in", '72"'),
        (SIXTEENTHS, "72 3/32 in", '72 1/8"'),
        (SIXTEENTHS, "72 5/32 in", '72 1/8"'),
    ],
)
def test_half_way_goes_to_the_even_graduation(form: LengthFormat, true: str, printed: str) -> None:
    assert form.text(float(read_exact(true))) == printed
