"""The cut layout and the bill as objects."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.closet import ClosetDesign
from closetbench.core.errors import ClosetError
from closetbench.core.specs import BaySpec, CarcassSpec
from closetbench.model.base import is_invalid
from closetbench.model.bill import bill_of
from closetbench.model.bridge import carcasses_in, catalogue_of, closet_of
from closetbench.model.layout import plan_of, settings_of
from closetbench.model.make import closet_from_design, make_bill, make_layout
from closetbench.stock.from_parts import cut_parts
from closetbench.stock.plan import CutSettings, FirstCut

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
    assert layout.Shape.Area == pytest.approx(used, rel=1e-9)
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
