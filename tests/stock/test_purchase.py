"""What to buy: counts, spares, weight, and the ways compared."""

from __future__ import annotations

from random import Random

import pytest

from closetbench.core.materials import Material, MaterialKind, SheetSize
from closetbench.stock.plan import CutPart, CutSettings, FirstCut, Plan, SheetPlan, StockSheet
from closetbench.stock.purchase import SpareRule, plan_purchase, to_buy, ways_to_buy

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
    assert to_buy(sheets(*[FULL] * 4), rule=SpareRule(10))[0].spare == 0
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


def least_cost_by_trying(parts, stock, kerf):
    """The least cost of sheets for a few parts, from every way to pack them by guillotine cuts.

    ``boxes[s]``: the smallest boxes that a set of parts fits in, from all ways to put two sets
    side by side or above each other.
    """
    count = len(parts)
    boxes = {}
    for chosen in range(1, 1 << count):
        found = set()
        if chosen & (chosen - 1) == 0:
            part = parts[chosen.bit_length() - 1]
            found = {(part.length, part.width), (part.width, part.length)}
        left = (chosen - 1) & chosen
        while left:
            right = chosen ^ left
            if left < right:
                for aw, ah in boxes[left]:
                    for bw, bh in boxes[right]:
                        found.add((aw + kerf + bw, max(ah, bh)))
                        found.add((max(aw, bw), ah + kerf + bh))
            left = (left - 1) & chosen
        boxes[chosen] = [
            (w, h) for w, h in found
            if not any((u, v) != (w, h) and u <= w and v <= h for u, v in found)
        ]
    alone = {
        s: min((each.cost for each in stock
                if any(w <= each.length and h <= each.width for w, h in boxes[s])),
               default=float("inf"))
        for s in boxes
    }
    best = {0: 0.0}
    for chosen in range(1, 1 << count):
        part = chosen
        best[chosen] = float("inf")
        while part:
            best[chosen] = min(best[chosen], alone[part] + best[chosen ^ part])
            part = (part - 1) & chosen
    return best[(1 << count) - 1]


@pytest.mark.parametrize("seed", range(10))
def test_the_cheapest_mix_of_sizes_against_brute_force(seed):
    random = Random(seed)
    stock = [
        StockSheet("large", "mdf-18", 2440, 1220, cost=random.choice([46.0, 50.0, 58.0])),
        StockSheet("half", "mdf-18", 1220, 1220, cost=random.choice([26.0, 30.0])),
        StockSheet("quarter", "mdf-18", 1220, 610, cost=random.choice([15.0, 18.0])),
    ]
    parts = [
        CutPart(str(i), random.randint(300, 1200), random.randint(250, 600), "mdf-18")
        for i in range(6)
    ]
    settings = CutSettings(kerf=3.0, stages=None, first=FirstCut.ANY, seconds=0.15, tidy=0.0)
    plan, ways = plan_purchase(parts, stock, settings)
    least = least_cost_by_trying(parts, stock, 3.0)
    cost = sum(sheet.sheet.cost for sheet in plan.sheets)
    assert cost == ways[0].cost == least
    for way in ways:
        assert way.cost >= least
        if way.proved and len(way.sizes) == 3:
            assert way.cost == least


def test_the_plan_is_never_dearer_than_one_size_alone():
    random = Random(4)
    parts = [
        CutPart(str(i), random.randint(200, 1100), random.randint(150, 600), "mdf-18")
        for i in range(30)
    ]
    plan, ways = plan_purchase(parts, [FULL, HALF, OFFCUT], QUICK)
    cost = sum(sheet.sheet.cost or 0.0 for sheet in plan.sheets)
    assert cost <= min(way.cost for way in ways if way.offcuts)
    assert {(w.sizes, w.offcuts) for w in ways} == {
        (sizes, at_hand) for sizes in (("full",), ("half",), ("full", "half"))
        for at_hand in (True, False)
    }  # fmt: skip


def test_stopped_while_ways_are_compared_the_plan_stays():
    parts = [CutPart(str(i), 1190, 600 - i, "mdf-18") for i in range(9)]
    seen = []

    def progress(state):
        seen.append(state.done)
        return len(seen) < 3 or state.done == 1.0

    plan, ways = plan_purchase(parts, [FULL, HALF], CutSettings(seconds=0.1, tidy=0.0), progress)
    assert {p.part for s in plan.sheets for p in s.placements} == {p.key for p in parts}
    assert ways == ()
