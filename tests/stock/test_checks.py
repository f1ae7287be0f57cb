"""Each bad input is refused with a message that says what to do."""

from __future__ import annotations

from dataclasses import replace
from math import inf, nan

import pytest

from closetbench.core.errors import LayoutError
from closetbench.stock.plan import CutPart, CutSettings, CutWeights, GrainOnSheet, StockSheet
from closetbench.stock.sheets import plan_sheets

SHEET = StockSheet("full", "ply 18", 2440, 1220, trim=5)
PART = CutPart("side", 2000, 600, "ply 18")


def refused(parts=(PART,), stock=(SHEET,), settings=CutSettings()) -> LayoutError:  # noqa: B008
    with pytest.raises(LayoutError) as caught:
        plan_sheets(parts, stock, settings)
    return caught.value


@pytest.mark.parametrize(
    ("change", "prop"),
    [
        ({"kerf": -0.1}, "kerf"),
        ({"kerf": nan}, "kerf"),
        ({"seconds": -1}, "seconds"),
        ({"tidy": inf}, "tidy"),
        ({"stages": 1}, "stages"),
        ({"weights": CutWeights(cuts=-1)}, "weight of a cut"),
    ],
)
def test_settings(change, prop):
    assert refused(settings=replace(CutSettings(), **change)).prop == prop


@pytest.mark.parametrize(
    ("change", "prop"),
    [
        ({"length": 0}, "length"),
        ({"width": nan}, "width"),
        ({"trim": -1}, "trim"),
        ({"trim": 610}, "trim"),
        ({"quantity": -1}, "quantity"),
        ({"cost": -5.0}, "cost"),
        ({"key": ""}, "key"),
    ],
)
def test_sheets(change, prop):
    error = refused(stock=[replace(SHEET, **change)])
    assert error.prop == prop


def test_trim_that_eats_the_sheet_says_how_much_would_do():
    message = str(refused(stock=[replace(SHEET, trim=700)]))
    assert "sheet full: trim is 700 mm at each edge" in message
    assert "less than 610 mm" in message


def test_keys_that_come_twice():
    assert "part side: key is side" in str(refused(parts=[PART, PART]))
    assert "sheet full: key is full" in str(refused(stock=[SHEET, SHEET]))


@pytest.mark.parametrize("size", [0, -1, nan, inf])
def test_part_of_impossible_size(size):
    assert refused(parts=[replace(PART, length=size)]).prop == "length"


def test_a_material_that_is_not_in_stock():
    error = refused(parts=[replace(PART, material="oak 20")])
    assert (error.subject, error.prop, error.value) == ("part side", "material", "oak 20")
    assert "ply 18" in error.limit
    assert "there is: none" in str(refused(stock=[replace(SHEET, quantity=0)]))


def test_a_part_larger_than_every_sheet_names_the_nearest_and_what_would_do():
    small = StockSheet("small", "ply 18", 1200, 600)
    error = refused(parts=[replace(PART, length=2436)], stock=[small, SHEET])
    message = str(error)
    assert "part side: size is 2436 mm x 600 mm" in message
    assert "the nearest, full, gives 2430 mm x 1210 mm inside its trim" in message
    assert "trim the sheet less" in message
    assert "smaller by 6 mm along the sheet's length" in message


def test_a_part_whose_grain_keeps_it_off_the_sheet():
    part = replace(PART, grain=GrainOnSheet.ACROSS)
    message = str(refused(parts=[part]))
    assert "grain across" in message
    assert "let its grain run the other way" in message


def test_stock_that_runs_out_says_how_many_are_needed():
    parts = [replace(PART, key=str(i)) for i in range(5)]
    error = refused(parts=parts, stock=[replace(SHEET, quantity=2)],
                    settings=CutSettings(seconds=0.05))  # fmt: skip
    assert error.value == "2 of full"
    assert "at least 3 are needed" in error.limit
