"""The offcuts at hand: in, out, reserved, and kept in a file."""

from __future__ import annotations

import pytest

from closetbench.core.errors import DocumentError, LayoutError
from closetbench.stock.length_plan import LengthNeed
from closetbench.stock.lengths import plan_lengths
from closetbench.stock.offcuts import (
    Offcut,
    after_cutting,
    offcuts_as_lengths,
    offcuts_as_stock,
    read_offcuts,
    reserve,
    write_offcuts,
)
from closetbench.stock.plan import CutPart, CutSettings, Plan, StockSheet
from closetbench.stock.sheets import plan_sheets

QUICK = CutSettings(seconds=0.02, tidy=0.0)
HAND = (
    Offcut("ply 18 1", "ply 18", 900.0, 402.5, "box room, S2"),
    Offcut("ply 18 2", "ply 18", 1180.0, 300.0, reserved="porch closet"),
    Offcut('odd "name"\\\t\x7fé', "MDF", 500.25, 80.0),
)
MORE = (
    Offcut("across", "ply 18", 400.0, 900.0, grain="width", place="rack, left"),
    Offcut("tube", "steel_27", 1210.5, 0.0, "porch, L1"),
)


def test_a_file_comes_back_as_it_was(tmp_path):
    path = tmp_path / "offcuts.toml"
    write_offcuts(path, (*HAND, *MORE))
    assert read_offcuts(path) == (*HAND, *MORE)
    write_offcuts(path, ())
    assert read_offcuts(path) == ()
    assert [p.name for p in tmp_path.iterdir()] == ["offcuts.toml"]


def test_no_file_yet_means_no_offcuts(tmp_path):
    assert read_offcuts(tmp_path / "absent.toml") == ()


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("[[offcut]", "cannot be read as TOML"),
        ("[sheet]", "table is sheet"),
        ("offcut = 3", "table is offcut"),
        ("offcut = [3]", "offcut 1: table is 3"),
        ('[[offcut]]\nkey = "a"', "offcut 1: material is missing"),
        ('[[offcut]]\nkey = 7\nmaterial = "m"', "offcut 1: key is 7"),
        ('[[offcut]]\nkey = "a"\nmaterial = "m"\nlength = 0', "length is 0 mm"),
        ('[[offcut]]\nkey = "a"\nmaterial = "m"\nlength = nan', "length is nan"),
        ('[[offcut]]\nkey = "a"\nmaterial = "m"\nlength = 9\nwidht = 9', "entry is widht"),
        ('[[offcut]]\nkey = "a"\nmaterial = "m"\nlength = 9\nwidth = 9\n' * 2, "same key"),
        ('[[offcut]]\nkey = "a"\nmaterial = "m"\nlength = 9\nwidth = 0', "width is 0 mm"),
        ('[[offcut]]\nkey = "a"\nmaterial = "m"\nlength = 9\ngrain = "up"', "grain is up"),
    ],
)
def test_a_bad_file_is_refused(tmp_path, text, message):
    path = tmp_path / "offcuts.toml"
    path.write_text(text, encoding="utf-8")
    with pytest.raises((LayoutError, DocumentError)) as caught:
        read_offcuts(path)
    assert message in str(caught.value)


def test_only_free_offcuts_and_its_own_are_stock_for_a_job():
    assert [s.key for s in offcuts_as_stock(HAND[:2])] == ["ply 18 1"]
    stock = offcuts_as_stock(HAND[:2], "porch closet")
    assert [s.key for s in stock] == ["ply 18 1", "ply 18 2"]
    assert all(s.offcut and s.quantity == 1 and s.trim == 0 for s in stock)


def test_reserving_and_setting_free():
    kept = reserve(HAND, ["ply 18 1"], "box room")
    assert kept[0].reserved == "box room"
    assert reserve(kept, ["ply 18 1"], "")[0] == HAND[0]
    with pytest.raises(LayoutError, match="kept for that job"):
        reserve(HAND, ["ply 18 2"], "box room")
    with pytest.raises(LayoutError, match="no such offcut"):
        reserve(HAND, ["ply 18 9"], "box room")


def test_cutting_takes_offcuts_out_and_brings_large_rests_in():
    sizes = {"a": (890, 390), "b": (2300, 590), "c": (1600, 590)}
    parts = [CutPart(key, length, width, "ply 18") for key, (length, width) in sizes.items()]
    stock = [StockSheet("full", "ply 18", 2440, 1220, trim=5), *offcuts_as_stock(HAND)]
    plan = plan_sheets(parts, stock, QUICK)
    after = after_cutting(HAND, plan, "box room")
    assert [o.key for o in after] == ["ply 18 2", HAND[2].key, "ply 18 3", "ply 18 4"]
    # Beside c to the edge and beside b; what is left along the edge is too narrow to keep.
    assert [(o.length, o.width, o.source) for o in after[2:]] == [
        (826.8, 616.8, "box room, S2"), (126.8, 590.0, "box room, S2"),
    ]  # fmt: skip
    with pytest.raises(LayoutError, match="not at hand"):
        after_cutting(after, plan, "box room")


def test_the_grain_runs_along_the_stock_and_bars_are_lengths():
    (sheet,) = offcuts_as_stock(MORE)
    assert (sheet.key, sheet.length, sheet.width) == ("across", 900.0, 400.0)
    across, tube = offcuts_as_lengths(MORE)
    assert (across.length, across.width) == (900.0, 400.0)
    assert (tube.length, tube.width, tube.quantity, tube.offcut) == (1210.5, 0.0, 1, True)


def test_lengths_that_are_left_come_in():
    plan = plan_lengths(
        [LengthNeed("r", 900.0, "steel_27")], offcuts_as_lengths(MORE[1:]), 3.0)
    after = after_cutting(MORE, Plan(()), "box room", plan, kerf=3.0)
    # 1210.5 - 900 - 3
    assert [(o.key, o.length, o.width) for o in after[1:]] == [("steel_27 1", 307.5, 0.0)]
