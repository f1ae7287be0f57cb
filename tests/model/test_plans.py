"""The cut layout and the bill as objects."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.closet import ClosetDesign
from closetbench.core.errors import ClosetError
from closetbench.core.inside import Spot
from closetbench.core.rods import RodsSpec
from closetbench.core.specs import BaySpec, CarcassSpec
from closetbench.model.base import is_invalid
from closetbench.model.bill import bill_of
from closetbench.model.bridge import carcasses_in, catalogue_of, closet_of
from closetbench.model.files import read_model
from closetbench.model.layout import (
    cutting_of,
    faces_of,
    lengths_of,
    needs_for,
    plan_of,
    settings_of,
    shop_of,
    write_shop,
)
from closetbench.model.make import closet_from_design, make_bill, make_layout, make_offcuts
from closetbench.model.offcuts import load_file, offcuts_of, put_offcuts, reserve_for, save_file
from closetbench.stock.from_parts import cut_parts
from closetbench.stock.offcuts import Offcut
from closetbench.stock.plan import CutFrom, CutSettings, FirstCut
from closetbench.stock.sound import Defect
from closetbench.stock.tools import TABLE_SAW, Shop, StoreWork

pytestmark = pytest.mark.freecad

QUICK = CutSettings(kerf=4.0, stages=None, first=FirstCut.ANY, seconds=0.01, tidy=0.01, seed=5)


@pytest.fixture
def closet(doc):
    spec = CarcassSpec("Case", "ply18", width=800.0, bays=(BaySpec(fixed=2),))
    return closet_from_design(
        doc, ClosetDesign("Small", size=(1000.0, 500.0, 1500.0), components=(spec,)))


def test_settings_come_back(doc, closet):
    assert settings_of(make_layout(doc, closet, QUICK)) == QUICK
    assert settings_of(make_layout(doc, closet)) == CutSettings()


def test_a_layout_is_planned_when_asked_and_not_before(doc, closet):
    layout = make_layout(doc, closet, QUICK)
    doc.recompute()
    assert plan_of(layout) is None
    assert (layout.OutOfDate, layout.Sheets) == (True, 0)
    plan = layout.Proxy.plan(layout)
    doc.recompute()
    assert plan_of(layout) == plan
    assert (layout.OutOfDate, layout.Sheets) == (False, len(plan.sheets))
    placed = {p.part for s in plan.sheets for p in s.placements}
    assert placed == {p.key for p in cut_parts(closet_of(closet).parts, catalogue_of(closet))}
    used = sum(s.used_area for s in plan.sheets)
    whole = sum(s.sheet.length * s.sheet.width for s in plan.sheets)
    assert layout.Yield == pytest.approx(100 * used / whole)
    left = sum(r.dx * r.dy for s in plan.sheets for r in s.rests)
    assert layout.Shape.Area == pytest.approx(used + left, rel=1e-9)
    assert len(layout.Shape.Faces) == len(faces_of(plan, lengths_of(layout)))
    box = layout.Shape.BoundBox
    assert box.YMax < 0
    assert box.XLength == pytest.approx(
        sum(s.sheet.length for s in plan.sheets) + 200.0 * (len(plan.sheets) - 1))


def test_a_layout_knows_when_it_is_out_of_date(doc, closet):
    layout = make_layout(doc, closet, QUICK)
    layout.Update = True
    doc.recompute()
    assert (layout.Update, layout.OutOfDate) == (False, False)
    plan, shape = layout.PlanJson, layout.Shape.hashCode()
    bay = carcasses_in(closet)[0].BayList[0]
    doc.openTransaction("Shelves")
    bay.FixedShelves = 3
    doc.recompute()
    doc.commitTransaction()
    assert layout.OutOfDate
    assert (layout.PlanJson, layout.Shape.hashCode()) == (plan, shape)
    doc.undo()
    assert not layout.OutOfDate
    doc.recompute()
    assert not layout.OutOfDate
    layout.Kerf = 3.0
    doc.recompute()
    assert layout.OutOfDate
    layout.Update = True
    doc.recompute()
    assert not layout.OutOfDate
    layout.TrimOverride, layout.Trim = True, 25.0
    doc.recompute()
    assert layout.OutOfDate
    layout.Update = True
    doc.recompute()
    assert all(s.sheet.trim == 25.0 for s in plan_of(layout).sheets)


def test_a_layout_that_cannot_be_made_keeps_the_last(doc, closet):
    layout = make_layout(doc, closet, QUICK)
    layout.Update = True
    doc.recompute()
    plan = plan_of(layout)
    layout.TrimOverride, layout.Trim = True, 700.0
    with pytest.raises(ClosetError, match="trim"):
        layout.Proxy.plan(layout)
    layout.Update = True
    doc.recompute()
    assert is_invalid(layout)
    assert plan_of(layout) == plan
    layout.Closet = None
    doc.recompute()
    assert "link the closet" in layout.getStatusString()


def test_the_plan_outlives_the_file(doc, closet, reopen):
    layout = make_layout(doc, closet, QUICK)
    layout.Update = True
    doc.recompute()
    again = reopen(doc).getObject(layout.Name)
    assert plan_of(again) == plan_of(layout)
    assert not again.OutOfDate


def test_the_bill_is_written_once_and_then_when_asked(doc, closet):
    layout = make_layout(doc, closet, QUICK)
    bill = make_bill(doc, closet, layout)
    doc.recompute()
    assert not bill.OutOfDate
    assert bill.Unpriced
    layout.Update = True
    doc.recompute()
    assert bill.OutOfDate
    bill.Update = True
    doc.recompute()
    assert (bill.OutOfDate, bill.Update) == (False, False)
    lines, cost = list(bill.Lines), bill.Cost
    assert lines[0] == '"Small"'
    assert cost == pytest.approx(sum(p.total or 0 for p in bill_of(bill).purchases()))
    carcasses_in(closet)[0].Width = 700.0
    doc.recompute()
    assert bill.OutOfDate
    assert list(bill.Lines) == lines


def test_the_bill_takes_the_bit_into_account(doc, closet):
    bill = make_bill(doc, closet)
    doc.recompute()
    bill.RouterBit = 12.7
    doc.recompute()
    assert bill.OutOfDate
    bill.Update = True
    doc.recompute()
    assert any("12.7" in line for line in bill.Lines)
    assert replace(bill_of(bill), bit=None) != bill_of(bill)


def test_rods_are_planned_by_length_and_billed(doc):
    specs = (CarcassSpec("Case", "ply18", width=800.0), RodsSpec("Rod", Spot("Case", 1)))
    closet = closet_from_design(
        doc, ClosetDesign("Small", size=(1000.0, 620.0, 2100.0), components=specs))
    layout = make_layout(doc, closet, QUICK)
    bill = make_bill(doc, closet, layout)
    doc.recompute()
    (unplanned,) = [p for p in bill_of(bill).purchases() if p.kind == "bar"]
    assert unplanned.count == 0
    layout.Update = bill.Update = True
    doc.recompute()
    cutting = cutting_of(layout)
    (bar,) = cutting.lengths.bars
    assert [c.part for c in bar.cuts] == ["Rod: rod"]
    assert layout.Lengths == 1
    (bought,) = [p for p in bill_of(bill).purchases() if p.kind == "bar"]
    assert (bought.count, bought.size) == (1, "2500 mm")
    assert any("Cut by length" in line for line in bill.Lines)
    assert faces_of(cutting.sheets, cutting.lengths)[-1] == ("part", "Rod: rod")


def test_offcuts_at_hand_are_used_reserved_and_left(doc, closet, tmp_path, reopen):
    hand = make_offcuts(doc, [
        Offcut("big", "ply18", 1700.0, 900.0, place="rack", defects=(Defect(0.0, 100.0),)),
        Offcut("kept", "ply18", 2000.0, 1200.0, reserved="another job"),
    ])
    layout = make_layout(doc, closet, QUICK)
    assert layout.Offcuts == hand
    (big, *_) = needs_for(layout).sheets
    assert (big.length, big.width, big.cut_from) == (
        1600.0, 900.0, CutFrom(1700.0, 900.0, 100.0, 0.0))
    layout.Update = True
    doc.recompute()
    plan = plan_of(layout)
    assert "kept" not in {s.sheet.key for s in plan.sheets}
    assert "big" in {s.sheet.key for s in plan.sheets}
    reserve_for(hand, ["big"], closet.Label)
    doc.recompute()
    assert [o.reserved for o in offcuts_of(hand)] == ["Small", "another job"]
    assert not layout.OutOfDate
    path = tmp_path / "offcuts.toml"
    save_file(hand, path)
    saved = offcuts_of(hand)
    put_offcuts(hand, [])
    doc.recompute()
    assert (hand.Count, layout.OutOfDate) == (0, True)
    load_file(hand, path)
    doc.recompute()
    assert offcuts_of(hand) == saved
    assert (hand.Count, layout.OutOfDate) == (2, False)
    with pytest.raises(ClosetError, match="same key"):
        put_offcuts(hand, [*saved, saved[0]])
    again = reopen(doc).getObject(hand.Name)
    assert offcuts_of(again) == saved


def test_a_part_is_moved_by_hand_or_refused(doc, closet):
    layout = make_layout(doc, closet, QUICK)
    layout.Update = True
    doc.recompute()
    plan, kept = plan_of(layout), layout.PlanJson
    sheet = plan.sheets[-1]
    part = sheet.placements[0]
    with pytest.raises(ClosetError, match="outside the trimmed sheet"):
        layout.Proxy.move(layout, part.part, -50.0, 0.0)
    assert (layout.PlanJson, layout.ByHand) == (kept, False)
    doc.openTransaction("Move")
    turned = sheet.sheet.length - sheet.sheet.trim - part.dx
    high = sheet.sheet.width - sheet.sheet.trim - part.dy
    moved = layout.Proxy.move(layout, part.part, turned, high)
    doc.recompute()
    doc.commitTransaction()
    assert layout.ByHand
    assert not layout.OutOfDate
    assert plan_of(layout) == moved
    doc.undo()
    assert (layout.PlanJson, layout.ByHand) == (kept, False)
    layout.Kerf = 2.0
    with pytest.raises(ClosetError, match="out of date"):
        layout.Proxy.move(layout, part.part, part.x, part.y)


def test_who_cuts_what_comes_back(doc, closet):
    layout = make_layout(doc, closet)
    assert shop_of(layout) == Shop()
    shop = Shop(StoreWork.RIPS, 4, True, False, (TABLE_SAW,))
    write_shop(layout, shop)
    assert shop_of(layout) == shop


def test_sheets_to_spare_are_in_the_bill(doc, closet):
    layout = make_layout(doc, closet, QUICK)
    layout.Update = True
    bill = make_bill(doc, closet, layout)
    doc.recompute()
    before = bill.Cost
    bill.SparePer, bill.SpareAbove, bill.Update = 10, 0, True
    doc.recompute()
    spare = [p for p in bill_of(bill).purchases() if "to spare" in p.note]
    assert spare
    assert bill.Cost > before


def test_a_job_is_read_back_with_what_its_papers_say(doc, closet, tmp_path):
    layout = make_layout(doc, closet, QUICK, Shop(StoreWork.NOTHING))
    layout.TrimOverride, layout.Trim = True, 12.0
    bill = make_bill(doc, closet, layout)
    bill.RouterBit, bill.SparePer = 8.0, 10
    hand = make_offcuts(doc)
    layout.Offcuts, hand.File = hand, "hand.toml"
    doc.recompute()
    path = tmp_path / "closet.FCStd"
    doc.saveCopy(str(path))
    found = read_model(path)
    assert (found.cutting, found.shop) == (QUICK, Shop(StoreWork.NOTHING))
    assert (found.trim, found.bit, found.spare.per) == (12.0, 8.0, 10)
    assert found.offcuts_file.name == "hand.toml"
