"""What to buy: counts, spares, weight, and the ways compared."""

from __future__ import annotations

import pytest

from closetbench.core.materials import Material, MaterialKind, SheetSize
from closetbench.stock.plan import CutPart, CutSettings, Plan, SheetPlan, StockSheet
from closetbench.stock.purchase import SpareRule, to_buy, ways_to_buy

QUICK = CutSettings(seconds=0.02, tidy=0.0)
FULL = StockSheet("full", "mdf-18", 2440, 1220, cost=50.0)
HALF = StockSheet("half", "mdf-18", 1220, 1220, cost=32.0)
OFFCUT = StockSheet("left", "mdf-18", 1210, 650, quantity=1, offcut=True)
MDF = Material(
    "mdf-18", "MDF 18", MaterialKind.MDF, 18.0, None, False, 750.0, 3000.0, 3000.0,
    (SheetSize(2440, 1220),), 0.0, "", False, "invented",
)  # fmt: skip


def sheets(*stock: StockSheet) -> Plan:
    return Plan(tuple(SheetPlan(f"S{n}", s, 3.2, ()) for n, s in enumerate(stock, 1)))


def test_counts_cost_and_weight():
    # 2440 x 1220 x 18 mm of 750 kg/m³ weigh 40.2 kg: arithmetic.
    full, half = to_buy(sheets(OFFCUT, FULL, FULL, HALF), {"mdf-18": MDF})
    assert (full.count, full.cost) == (2, 100.0)
    assert full.weight == pytest.approx(80.37, abs=0.01)
    assert (half.count, half.cost) == (1, 32.0)
    assert half.weight == pytest.approx(20.09, abs=0.01)
    assert to_buy(sheets(FULL))[0].weight is None


def test_spares_are_of_the_commonest_size():
    plan = sheets(*[FULL] * 9, *[HALF] * 2)
    full, half = to_buy(plan, rule=SpareRule(per=10, above=4))
    assert (full.planned, full.spare, full.cost) == (9, 2, 550.0)
    assert half.spare == 0
    assert to_buy(sheets(*[FULL] * 4), rule=SpareRule())[0].spare == 0
    assert SpareRule(per=0).spares(50) == 0


def test_ways_are_compared_by_cost():
    parts = [CutPart(str(i), 1200, 600, "mdf-18") for i in range(6)]
    ways = ways_to_buy(parts, [FULL, HALF], QUICK)
    assert [(way.sizes, way.cost) for way in ways] == [
        (("full", "half"), 82.0), (("half",), 96.0), (("full",), 100.0),
    ]  # fmt: skip


def test_offcuts_and_their_worth():
    parts = [CutPart(str(i), 1200, 600, "mdf-18") for i in range(5)]
    ways = ways_to_buy(parts, [FULL, OFFCUT], QUICK)
    assert [(way.offcuts, way.cost) for way in ways] == [(True, 50.0), (False, 100.0)]


def test_a_size_too_small_alone_is_left_out_and_unknown_prices_go_by_area():
    parts = [CutPart("long", 2400, 300, "mdf-18"), CutPart("short", 600, 300, "mdf-18")]
    plain = StockSheet("plain", "mdf-18", 2440, 1220)
    ways = ways_to_buy(parts, [plain, HALF], QUICK)
    assert [way.sizes for way in ways] == [("plain",), ("plain", "half")]
    assert ways[0].cost is None
    assert ways[0].area == pytest.approx(2.9768)
