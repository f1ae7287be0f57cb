"""The check of plans of lengths shares nothing with the planner: plans spoilt on purpose."""

from __future__ import annotations

import random
from dataclasses import replace

import pytest

from closetbench.core.errors import LayoutError
from closetbench.stock.layout_io import lengths_summary
from closetbench.stock.length_checks import require_cuttable, verify_lengths
from closetbench.stock.length_plan import BarPlan, LengthCut, LengthNeed, LengthPlan, StockLength
from closetbench.stock.lengths import plan_lengths

KERF = 3.0
STOCK = (
    StockLength("long", "pine", 2400.0, 10.0, 6, 9.0, ((700.0, 720.0),)),
    StockLength("short", "pine", 1800.0, 0.0, None, 7.5),
)
NEEDS = tuple(
    LengthNeed(f"p{n}", length, "pine")
    for n, length in enumerate((980.0, 980.0, 640.0, 640.0, 515.5, 320.0, 1250.0, 60.0))
)
PLAN = plan_lengths(NEEDS, STOCK, KERF)


def spoilt(draw: random.Random) -> LengthPlan:
    """The plan with one thing changed that makes it wrong."""
    bars = list(PLAN.bars)
    at = draw.randrange(len(bars))
    bar = bars[at]
    cuts = list(bar.cuts)
    one = draw.randrange(len(cuts))
    cut = cuts[one]
    kind = draw.randrange(8)
    if kind == 0:
        del cuts[one]
    elif kind == 1:
        cuts.append(cut)
    elif kind == 2:
        cuts[one] = replace(cut, end=cut.end + draw.choice((-2.0, 0.001, 5.0)))
    elif kind == 3:
        cuts[one] = replace(cut, part="stranger")
    elif kind == 4:  # beyond either end
        by = draw.choice((-cut.start - 1.0, bar.stock.length - cut.start - 10.0))
        cuts[one] = LengthCut(cut.part, cut.start + by, cut.end + by)
    elif kind == 5:  # into the kerf before it, or into the trim
        before = [c for c in cuts if c.end < cut.start]
        by = (max((c.end for c in before), default=bar.stock.trim) - cut.start
              + (KERF - 0.01 if before else -0.01))
        cuts[one] = LengthCut(cut.part, cut.start + by, cut.end + by)
    elif kind == 6:
        bar = replace(bar, stock=replace(bar.stock, length=bar.stock.length + 100.0))
    else:
        return replace(PLAN, bars=tuple(
            replace(b, stock=replace(b.stock, key="unknown")) if i == at else b
            for i, b in enumerate(bars)))
    bars[at] = replace(bar, cuts=tuple(cuts))
    return replace(PLAN, bars=tuple(bars))


def test_a_good_plan_has_no_faults():
    assert verify_lengths(PLAN, NEEDS, STOCK, KERF) == ()
    require_cuttable(PLAN)


def test_every_one_of_500_spoilt_plans_is_caught():
    draw = random.Random(4)
    caught = [bool(verify_lengths(spoilt(draw), NEEDS, STOCK, KERF)) for _ in range(500)]
    assert all(caught)


def test_a_defect_in_a_piece_and_too_much_stock_are_caught():
    two = (LengthNeed("a", 800.0, "pine"), LengthNeed("b", 800.0, "pine"))
    stock = (replace(STOCK[0], quantity=1),)
    plan = LengthPlan((
        BarPlan("L1", stock[0], (LengthCut("a", 10.0, 810.0),)),
        BarPlan("L2", stock[0], (LengthCut("b", 720.0, 1520.0),)),
    ))
    faults = verify_lengths(plan, two, stock, KERF)
    assert faults == ("stock length long is taken 2 times, there are 1", "L1: a holds a defect")


def test_a_kept_plan_that_overlaps_is_not_written():
    bar = BarPlan("L1", STOCK[1], (LengthCut("a", 0.0, 500.0), LengthCut("b", 400.0, 800.0)))
    with pytest.raises(LayoutError, match="a and b are closer than the kerf"):
        require_cuttable(LengthPlan((bar,)))


def test_what_is_left_holds_no_defect():
    """2400 less the piece's end at 600: a knot from 1500 to 1540 leaves 900 and 860 whole."""
    stock = StockLength("s", "pine", 2400.0, defects=((1500.0, 1540.0),))
    assert BarPlan("L1", stock, (LengthCut("a", 0.0, 600.0),)).rest == 900.0
    assert BarPlan("L1", stock, (LengthCut("a", 0.0, 700.0),)).rest == 860.0
    assert BarPlan("L1", stock, (LengthCut("a", 1600.0, 2400.0),)).rest == 0.0


def test_no_price_is_called_the_least_where_one_is_lacking():
    stock = (STOCK[1], StockLength("no price", "pine", 3000.0))
    told = lengths_summary(plan_lengths(NEEDS[:1], stock, KERF))
    assert "no plan takes less length; prices are lacking" in told
    assert "no plan costs less" in lengths_summary(plan_lengths(NEEDS[:1], STOCK, KERF))
