"""The sound part of damaged offcuts: exact, and nothing of the rest lost."""

from __future__ import annotations

import random
import tomllib

import pytest

from closetbench.core.errors import LayoutError
from closetbench.stock.length_checks import verify_lengths
from closetbench.stock.length_plan import LengthNeed
from closetbench.stock.lengths import plan_lengths
from closetbench.stock.offcuts import (
    Offcut,
    after_cutting,
    check_offcuts,
    offcuts_as_lengths,
    offcuts_as_stock,
    read_offcuts,
    write_offcuts,
)
from closetbench.stock.part_lists import read_part_list
from closetbench.stock.plan import CutFrom, CutPart, CutSettings
from closetbench.stock.sheets import plan_sheets
from closetbench.stock.sound import Area, Defect, around, defects_on, sound_area

CORNER = Defect(0.0, 120.0, 300.0, 400.0)
QUICK = CutSettings(kerf=3.0, seconds=0.02, tidy=0.0)


def sheet(*defects: Defect, grain: str = "length") -> Offcut:
    return Offcut("bad", "ply18", 1000.0, 400.0, grain=grain, defects=defects)


def test_a_bad_corner_leaves_the_larger_of_two_rectangles():
    # 1000 x 300 below it is more than 880 x 400 beside it? 0.300 against 0.352 m²
    assert sheet(CORNER).sound == Area(120.0, 0.0, 880.0, 400.0)
    assert sheet(Defect(0.0, 120.0, 360.0, 400.0)).sound == Area(0.0, 0.0, 1000.0, 360.0)
    assert sheet().sound == Area(0.0, 0.0, 1000.0, 400.0)


def test_the_largest_of_all_rectangles_is_found():
    """Against every rectangle on a grid of whole steps."""
    dice = random.Random(7)
    for _ in range(150):
        wide, high = dice.randint(2, 8), dice.randint(2, 8)
        defects = []
        for _ in range(dice.randint(1, 5)):
            x, y = dice.randrange(wide), dice.randrange(high)
            defects.append(Defect(x, dice.randint(x + 1, wide), y, dice.randint(y + 1, high)))
        clear = {
            (x, y) for x in range(wide) for y in range(high)
            if not any(d.start <= x < d.end and d.low <= y < d.high for d in defects)
        }
        most = max((
            (x1 - x0) * (y1 - y0)
            for x0 in range(wide) for x1 in range(x0 + 1, wide + 1)
            for y0 in range(high) for y1 in range(y0 + 1, high + 1)
            if all((x, y) in clear for x in range(x0, x1) for y in range(y0, y1))
        ), default=0)
        if not most:
            with pytest.raises(LayoutError, match="leave nothing sound"):
                sound_area("offcut", wide, high, defects)
            continue
        found = sound_area("offcut", wide, high, defects)
        assert found.dx * found.dy == most
        assert all(
            d.end <= found.x or d.start >= found.x + found.dx
            or d.high <= found.y or d.low >= found.y + found.dy for d in defects
        )


def test_what_lies_around_the_sound_part_is_whole_and_keeps_its_defects():
    sound = Area(200.0, 50.0, 500.0, 300.0)
    pieces = around(1000.0, 400.0, sound, 3.0)
    assert pieces == (
        Area(0.0, 0.0, 197.0, 400.0), Area(703.0, 0.0, 297.0, 400.0),
        Area(200.0, 0.0, 500.0, 47.0), Area(200.0, 353.0, 500.0, 47.0),
    )
    knot = Defect(690.0, 760.0, 380.0, 400.0)
    assert defects_on(pieces[1], [knot], 400.0) == (Defect(0.0, 57.0, 380.0, 400.0),)
    assert defects_on(pieces[0], [knot], 400.0) == ()
    assert defects_on(pieces[1], [Defect(0.0, 720.0)], 400.0) == (Defect(0.0, 17.0),)


def test_planners_get_the_sound_part_along_the_grain():
    (found,) = offcuts_as_stock([sheet(CORNER)])
    assert (found.length, found.width) == (880.0, 400.0)
    assert found.cut_from == CutFrom(1000.0, 400.0, 120.0, 0.0)
    (turned,) = offcuts_as_stock([sheet(CORNER, grain="width")])
    assert (turned.length, turned.width) == (400.0, 880.0)
    assert turned.cut_from == CutFrom(400.0, 1000.0, 0.0, 120.0)
    (whole,) = offcuts_as_stock([sheet()])
    assert whole.cut_from is None


@pytest.mark.parametrize("grain", ["length", "width"])
def test_the_damaged_end_is_kept_once_the_sound_part_is_cut(grain):
    bad = Offcut("bad", "ply18", 1000.0, 400.0, grain=grain, place="rack",
                 defects=(Defect(300.0, 340.0, 100.0, 140.0),))
    assert bad.sound == Area(340.0, 0.0, 660.0, 400.0)
    stock = offcuts_as_stock([bad])
    sides = (650.0, 390.0) if grain == "length" else (390.0, 650.0)
    plan = plan_sheets([CutPart("a", *sides, "ply18")], stock, QUICK)
    (left,) = after_cutting([bad], plan, "box room")
    assert (left.length, left.width, left.grain) == (337.0, 400.0, grain)
    assert left.defects == (Defect(300.0, 337.0, 100.0, 140.0),)
    assert (left.source, left.place) == ("box room, S1", "")
    assert left.sound == Area(0.0, 0.0, 300.0, 400.0)


def test_lengths_are_cut_around_their_defects():
    tube = Offcut("tube", "steel", 1500.0, 0.0, defects=(Defect(600.0, 640.0),))
    board = Offcut("board", "pine", 1500.0, 140.0, defects=(Defect(600.0, 640.0, 0.0, 20.0),))
    across = Offcut("across", "pine", 140.0, 1500.0, grain="width",
                    defects=(Defect(0.0, 20.0, 600.0, 640.0),))
    split = Offcut("split", "pine", 140.0, 1500.0, grain="width", defects=(Defect(0.0, 20.0),))
    found = offcuts_as_lengths([tube, board, across, split])
    assert [(s.key, s.length, s.width, s.defects) for s in found] == [
        ("tube", 1500.0, 0.0, ((600.0, 640.0),)), ("board", 1500.0, 140.0, ((600.0, 640.0),)),
        ("across", 1500.0, 140.0, ((600.0, 640.0),)),
    ]
    needs = [LengthNeed("a", 850.0, "steel"), LengthNeed("b", 590.0, "steel")]
    plan = plan_lengths(needs, found[:1], 3.0)
    assert verify_lengths(plan, needs, found[:1], 3.0) == ()
    assert {c.part: c.start for c in plan.bars[0].cuts} == {"b": 0.0, "a": 640.0}


def test_a_file_keeps_defects(tmp_path):
    listed = (
        sheet(CORNER, Defect(900.0, 1000.0)),
        Offcut("tube", "steel", 1500.0, 0.0, defects=(Defect(600.0, 640.5),)),
    )
    path = tmp_path / "offcuts.toml"
    write_offcuts(path, listed)
    assert read_offcuts(path) == listed
    rows = tomllib.loads(path.read_text(encoding="utf-8"))["offcut"]
    assert [row["defects"] for row in rows] == [
        [[0.0, 120.0, 300.0, 400.0], [900.0, 1000.0]], [[600.0, 640.5]]]


@pytest.mark.parametrize(
    ("defects", "message"),
    [
        ([Defect(0.0, 1001.0)], "defect 1 is 0 to 1001 mm along its length; must lie within 0"),
        ([Defect(5.0, 5.0)], "its start first"),
        ([Defect(0.0, 5.0, 300.0, 401.0)], "along its width; must lie within 0 to 400 mm"),
        ([Defect(0.0, 5.0, 300.0, 0.0)], "along its width"),
        ([Defect(0.0, 1000.0)], "leave nothing sound"),
        ([Defect(float(i), i + 0.5) for i in range(41)], "at most 40"),
    ],
)
def test_defects_that_cannot_be(defects, message):
    with pytest.raises(LayoutError) as caught:
        check_offcuts([sheet(*defects)])
    assert "offcut bad" in str(caught.value)
    assert message in str(caught.value)


def test_a_bar_has_no_width():
    with pytest.raises(LayoutError, match="a length of a bar has no width"):
        check_offcuts([Offcut("t", "steel", 900.0, 0.0, defects=(Defect(0.0, 9.0, 1.0, 2.0),))])


@pytest.mark.parametrize("value", ["[1, 2]", "3", "[[1]]", "[[1, 2, 3]]", '[["a", 2]]',
                                   "[[2, 1]]", "[[1, 2, 4, 3]]", "[[nan, 2]]"])
def test_defects_in_a_file_that_are_none(tmp_path, value):
    path = tmp_path / "offcuts.toml"
    path.write_text(
        f'[[offcut]]\nkey = "a"\nmaterial = "m"\nlength = 9\nwidth = 9\ndefects = {value}\n')
    with pytest.raises(LayoutError, match=r"offcut 1: defect 1 is .* must be \[from, to\]"):
        read_offcuts(path)


def test_part_lists_have_damaged_offcuts(tmp_path):
    path = tmp_path / "list.json"
    start = '{"sheets": {"ply18": [{"length": 1000, "width": 400, "offcut": true, "defects": '
    parts = '}]}, "parts": [{"id": "a", "length": 800, "width": 390, "material": "ply18"}]}'
    path.write_text(start + '[["0 mm", "120 mm", 300, 400]]' + parts)
    (found,) = read_part_list(path).sheets
    assert (found.length, found.width, found.cut_from) == (
        880.0, 400.0, CutFrom(1000.0, 400.0, 120.0, 0.0))
    path.write_text(start + "[[1, 2, 3]]" + parts)
    with pytest.raises(LayoutError, match=r"must be a list of \[from, to\], or \[from, to, from"):
        read_part_list(path)
    path.write_text((start + "[[0, 120]]" + parts).replace("true", "false"))
    with pytest.raises(LayoutError, match="what is bought is sound"):
        read_part_list(path)
