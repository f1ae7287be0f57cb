"""The offcuts at hand: in, out, reserved, and kept in a file."""

from __future__ import annotations

import pytest

from closetbench.core.errors import DocumentError, LayoutError
from closetbench.stock.offcuts import (
    Offcut,
    after_cutting,
    offcuts_as_stock,
    read_offcuts,
    reserve,
    write_offcuts,
)
from closetbench.stock.plan import CutPart, CutSettings, StockSheet
from closetbench.stock.sheets import plan_sheets

QUICK = CutSettings(seconds=0.02, tidy=0.0)
HAND = (
    Offcut("ply 18 1", "ply 18", 900.0, 402.5, "box room, S2"),
    Offcut("ply 18 2", "ply 18", 1180.0, 300.0, reserved="porch closet"),
    Offcut('odd "name"\\\t\x7fé', "MDF", 500.25, 80.0),
)


def test_a_file_comes_back_as_it_was(tmp_path):
    path = tmp_path / "offcuts.toml"
    write_offcuts(path, HAND)
    assert read_offcuts(path) == HAND
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
