"""The cutting order: what is cut where, in the order sawn, and what a little less would save."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction

import pytest

from closetbench.core.errors import LayoutError
from closetbench.core.findings import Finding, Severity
from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.resources import load_catalogue
from closetbench.shop.cutting_order import cutting_order_lines, write_cutting_order
from closetbench.stock.length_plan import BarPlan, LengthCut, LengthPlan, StockLength
from closetbench.stock.offcuts import Offcut, offcuts_as_stock
from closetbench.stock.plan import CutPart, CutSettings, StockSheet
from closetbench.stock.sheets import plan_sheets
from closetbench.stock.sound import Defect
from closetbench.stock.tools import STORE_PANEL_SAW, TABLE_SAW, TRACK_SAW, Shop

SETTINGS = CutSettings(kerf=3.2, seconds=0.02, tidy=0.0)
STOCK = (StockSheet("ply18", "ply18", 2440.0, 1220.0, 0.0, None, 60.0),)


def order(depth: float, count: int, form: LengthFormat = MILLIMETRES) -> list[str]:
    parts = [CutPart(f"A: side {i}", 2300.0, depth, "ply18") for i in range(count)]
    plan = plan_sheets(parts, STOCK, SETTINGS)
    return cutting_order_lines(plan, parts, STOCK, SETTINGS, load_catalogue(), form)


def test_every_part_comes_off_once_and_cuts_are_numbered_in_order():
    lines = order(400.0, 5)
    text = "\n".join(lines)
    cuts = "\n".join(line for line in lines if re.match(r" +\d+ +(rip|crosscut)", line))
    assert all(len(re.findall(rf"A: side {i}\b", cuts)) == 1 for i in range(5))
    for sheet in re.split(r"\n(?=S\d)", text)[1:]:
        numbers = [int(n) for n in re.findall(r"^ +(\d+) +(?:rip|crosscut)", sheet, re.MULTILINE)]
        assert numbers == list(range(1, len(numbers) + 1))
        assert sheet.index("at the store") < sheet.index("at home")
    assert "the saw's own manual" in lines[0]


def test_fences_are_in_the_users_unit():
    inches = order(406.4, 2, LengthFormat("in-frac", Fraction(1, 16)))
    # 16", and 3 mm that the store leaves on
    assert any(re.search(r'rip +S1 +16 1/8" ', line) for line in inches)
    assert any(re.search(r'bring to size first: .*: rip to 16"', line) for line in inches)


def test_a_depth_that_the_kerf_spoils_is_pointed_at_only_where_it_costs_a_sheet():
    """Kerf arithmetic: 3 x 406 + 2 x 3.2 > 1220 >= 3 x 404 + 2 x 3.2."""
    wide = order(406.0, 6)
    advice = wide[wide.index("strip widths"):]
    assert any("404.5 mm or less it gives 3" in line for line in advice)
    assert "strip widths" not in order(406.0, 2)
    assert "strip widths" not in order(404.0, 6)


def test_it_is_written_whole(tmp_path):
    parts = [CutPart("A: side", 2300.0, 400.0, "ply18")]
    plan = plan_sheets(parts, STOCK, SETTINGS)
    path = write_cutting_order(
        tmp_path / "cutting.txt", plan, parts, STOCK, SETTINGS, load_catalogue(), MILLIMETRES
    )
    text = path.read_text(encoding="utf-8")
    assert text.endswith("\n")
    assert "A: side" in text
    assert [p.name for p in tmp_path.iterdir()] == ["cutting.txt"]


def test_what_no_saw_can_hold_is_cut_by_hand_in_its_turn():
    """A strip 30 mm wide is less than any of the saws may hold (their data)."""
    parts = [CutPart("A: side", 2300.0, 400.0, "ply18"),
             *(CutPart(f"A: cleat {i}", 700.0, 30.0, "ply18") for i in range(6))]
    plan = plan_sheets(parts, STOCK, SETTINGS)
    lines = cutting_order_lines(plan, parts, STOCK, SETTINGS, load_catalogue(), MILLIMETRES)
    home = lines[next(i for i, t in enumerate(lines) if t.startswith("  at home")):]
    numbers = [int(t.split()[0]) for t in home if re.match(r" +[0-9]+ +(rip|crosscut)", t)]
    assert numbers == sorted(numbers)
    by_hand = [t for t in home if t.endswith("hand saw or mitre saw")]
    assert by_hand
    assert all(re.search(r"[0-9] mm", t) for t in by_hand)
    assert any("the piece clamped" in t for t in home)


def test_dangers_stand_on_top():
    parts = [CutPart("A: side", 2300.0, 400.0, "ply18")]
    plan = plan_sheets(parts, STOCK, SETTINGS)
    found = (Finding(Severity.NOTE, "work", "dust", "wear a respirator"),
             Finding(Severity.DANGER, "A", "tipping", "it tips", fix="anchor it"))
    lines = cutting_order_lines(
        plan, parts, STOCK, SETTINGS, load_catalogue(), MILLIMETRES, findings=found)
    assert lines[0].startswith("1 DANGER: read this before anything is cut")
    assert lines[1:4] == ["DANGER: A: it tips", "    anchor it", ""]
    assert not any("respirator" in line for line in lines)
    assert not order(400.0, 1)[0].startswith("1 DANGER")


def test_lengths_that_overlap_are_not_written():
    plan = plan_sheets([], STOCK, SETTINGS)
    cuts = (LengthCut("a", 0.0, 500.0), LengthCut("b", 400.0, 800.0))
    bar = BarPlan("L1", StockLength("s", "pine1x4", 2438.4), cuts)
    with pytest.raises(LayoutError, match="closer than the kerf"):
        cutting_order_lines(
            plan, [], STOCK, SETTINGS, load_catalogue(), MILLIMETRES, lengths=LengthPlan((bar,)))


def test_the_sound_part_of_a_damaged_offcut_is_cut_out_first():
    bad = Offcut("shed 1", "ply18", 1000.0, 400.0, defects=(Defect(0.0, 120.0, 300.0, 400.0),))
    stock = offcuts_as_stock([bad])
    parts = [CutPart("A: shelf", 800.0, 390.0, "ply18")]
    plan = plan_sheets(parts, stock, SETTINGS)
    text = "\n".join(
        cutting_order_lines(plan, parts, stock, SETTINGS, load_catalogue(), MILLIMETRES))
    assert "offcut shed 1, 880 mm x 400 mm" in text
    assert "sound part of 1000 mm x 400 mm, its corner at 120 mm and 0 mm" in text
    assert "the saw on the damaged side: crosscut at 120 mm, from the corner" in text
    middle = Offcut("shed 2", "ply18", 1000.0, 400.0, defects=(
        Defect(0.0, 100.0), Defect(900.0, 1000.0), Defect(0.0, 1000.0, 0.0, 20.0),
        Defect(0.0, 1000.0, 380.0, 400.0)))
    stock = offcuts_as_stock([middle])
    parts = [CutPart("A: shelf", 700.0, 300.0, "ply18")]
    plan = plan_sheets(parts, stock, SETTINGS)
    text = "\n".join(
        cutting_order_lines(plan, parts, stock, SETTINGS, load_catalogue(), MILLIMETRES))
    assert "crosscut at 100 mm, crosscut at 900 mm, rip at 20 mm, rip at 380 mm," in text


def test_damaged_lengths_say_where_each_piece_begins():
    stock = StockLength("t", "steel_27", 1500.0, defects=((600.0, 640.0),), offcut=True)
    bar = BarPlan("L1", stock, (LengthCut("b", 0.0, 590.0), LengthCut("a", 640.0, 1490.0)))
    text = "\n".join(cutting_order_lines(
        plan_sheets([], STOCK, SETTINGS), [], STOCK, SETTINGS, load_catalogue(), MILLIMETRES,
        lengths=LengthPlan((bar,), {"steel_27": True})))
    assert "keep clear of what is damaged, 600 mm to 640 mm: all from the same end" in text
    assert re.search(r"crosscut 850 mm +a +from 640 mm on", text)


def test_what_a_rough_store_saw_leaves_larger_is_brought_to_size_at_home():
    parts = [CutPart(f"p{i}", 700, 300, "ply18") for i in range(7)]
    parts.append(CutPart("q", 2300, 250, "ply18"))
    stock = [StockSheet("s", "ply18", 2440, 1220, trim=6)]
    plan = plan_sheets(parts, stock, SETTINGS)
    lines = cutting_order_lines(plan, parts, stock, SETTINGS, load_catalogue(), MILLIMETRES)
    text = "\n".join(lines)
    # planned at 954.8 mm; 6 mm narrower, so that the strip beyond it has as much to be cut off
    assert re.search(r" 5 +rip +S1 +948.8 mm +S1-A +S1-B", text)
    assert "left larger on purpose, the other side smaller by that: S1-B" in text
    assert "bring to size first: S1-B: rip to 250 mm" in text
    good = Shop(own=(replace(STORE_PANEL_SAW, tolerance=0.5), TABLE_SAW, TRACK_SAW))
    exact = "\n".join(cutting_order_lines(
        plan, parts, stock, SETTINGS, load_catalogue(), MILLIMETRES, good))
    assert re.search(r" 5 +rip +S1 +954.8 mm", exact)
    assert "bring to size" not in exact
