"""Cuts shared out between the store and home."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.stock.plan import CutPart, CutSettings, StockSheet
from closetbench.stock.sheets import plan_sheets
from closetbench.stock.tools import STORE_PANEL_SAW, TABLE_SAW, TOOLS, TRACK_SAW, split_cuts

PARTS = [CutPart(f"p{i}", 700, 300, "ply") for i in range(7)] + [CutPart("q", 2300, 250, "ply")]


@pytest.fixture(scope="module")
def sheet():
    stock = [StockSheet("s", "ply", 2440, 1220, trim=6)]
    return plan_sheets(PARTS, stock, CutSettings(seconds=0.02, tidy=0.0)).sheets[0]


def test_the_store_cuts_the_whole_sheet_and_home_the_strips(sheet):
    split = split_cuts(sheet, TOOLS)
    assert {each.cut.piece for each in split.store} == {"S1"}
    assert all(each.cut.piece != "S1" for each in split.home)
    assert [c.cut.number for c in (*split.store, *split.home)] == [c.number for c in sheet.cuts]
    assert split.impossible == ()
    assert split.findings == ()
    assert "S1" not in split.carried
    assert any(name.startswith("S1-") for name in split.carried)


def test_a_limited_number_of_store_cuts(sheet):
    split = split_cuts(sheet, TOOLS, store_cuts=2)
    assert len(split.store) == 2
    assert len(split.store) + len(split.home) == len(sheet.cuts)
    assert "S1" in split.carried


def test_a_table_saw_rips_against_its_fence_and_crosscuts_nothing_long(sheet):
    split = split_cuts(sheet, [STORE_PANEL_SAW, TABLE_SAW])
    crosscuts = [cut for cut in split.impossible if not cut.rip]
    assert crosscuts
    assert {f.rule for f in split.findings} == {"no-tool-for-cut"}
    assert f"cut {crosscuts[0].number} on {crosscuts[0].piece}" in " ".join(
        f.message for f in split.findings
    )


def test_the_fence_reaches_only_so_far(sheet):
    short = replace(TABLE_SAW, rips_only=False, widest=10.0)
    trims = [cut for cut in sheet.cuts if cut.piece == "S1"][:4]
    made = [each.cut for each in split_cuts(sheet, [short]).home]
    assert made[:4] == trims
    assert all(cut.fence <= 10 or cut in trims for cut in made if cut.piece != "S1")


def test_a_wider_kerf_than_planned_is_told(sheet):
    split = split_cuts(sheet, [replace(TRACK_SAW, kerf=4.0)])
    assert [finding.rule for finding in split.findings] == ["tool-kerf"]
    assert split.store == ()


def test_short_reach(sheet):
    split = split_cuts(sheet, [replace(TRACK_SAW, longest=1000.0)])
    assert all(cut.rip or cut.piece == "S1" for cut in split.impossible)
    assert split.impossible
