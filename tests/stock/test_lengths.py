"""Cutting lengths: against brute force, and a published example."""

from __future__ import annotations

from dataclasses import replace
from random import Random

import pytest

from closetbench.core.errors import LayoutError
from closetbench.stock.length_plan import LengthNeed, LengthPlan, StockLength, clear_stretches
from closetbench.stock.lengths import least_count, plan_lengths

KERF = 3.0
BAR = StockLength("bar", "oak", 2400.0)


def needs_of(*sizes: tuple[float, int]) -> list[LengthNeed]:
    return [LengthNeed(f"{s:g}/{i}", s, "oak") for s, n in sizes for i in range(n)]


def checked(needs, stock, kerf=KERF) -> LengthPlan:
    """A plan of which everything is checked anew."""
    plan = plan_lengths(needs, stock, kerf)
    wanted = {need.key: need.length for need in needs}
    seen = []
    used: dict[str, int] = {}
    for bar in plan.bars:
        used[bar.stock.key] = used.get(bar.stock.key, 0) + 1
        at = None
        for cut in sorted(bar.cuts, key=lambda c: c.start):
            seen.append(cut.part)
            assert cut.end - cut.start == pytest.approx(wanted[cut.part], abs=1e-6)
            assert cut.start >= bar.stock.trim - 1e-6
            assert cut.end <= bar.stock.length - bar.stock.trim + 1e-6
            assert all(cut.end <= low + 1e-6 or cut.start >= high - 1e-6
                       for low, high in bar.stock.defects)  # fmt: skip
            assert at is None or cut.start >= at + kerf - 1e-6
            at = cut.end
    assert sorted(seen) == sorted(wanted)
    for each in stock:
        assert each.quantity is None or used.get(each.key, 0) <= each.quantity
    assert len({bar.name for bar in plan.bars}) == len(plan.bars)
    return plan


def least_by_trying(lengths, stock_lengths, kerf):
    """The least number of equal stock lengths, by trying every way to deal the pieces out."""
    best = len(lengths)
    order = sorted(lengths, reverse=True)

    def deal(index, left):
        nonlocal best
        if len(left) >= best:
            return
        if index == len(order):
            best = len(left)
            return
        for bar, free in enumerate(left):
            if order[index] <= free + 1e-9:
                deal(index + 1, [*left[:bar], free - order[index] - kerf, *left[bar + 1 :]])
        deal(index + 1, [*left, stock_lengths - order[index] - kerf])

    deal(0, [])
    return best


@pytest.mark.parametrize("seed", range(12))
def test_as_few_as_brute_force(seed):
    random = Random(seed)
    lengths = [random.choice([410.0, 555.5, 602.0, 799.0, 1197.0]) for _ in range(8)]
    needs = [LengthNeed(str(i), length, "oak") for i, length in enumerate(lengths)]
    plan = checked(needs, [BAR])
    assert len(plan.bars) == least_by_trying(lengths, 2400.0, KERF)
    assert len(plan.bars) >= least_count(needs, 2400.0, KERF)
    assert plan.proved == {"oak": True}


def test_published_example_of_a_paper_mill():
    # Wikipedia, "Cutting stock problem": rolls of 5600 mm, 13 widths, 73 rolls at least,
    # 0.401 % waste.
    demand = (
        (1380, 22), (1520, 25), (1560, 12), (1710, 14), (1820, 18), (1880, 18), (1930, 20),
        (2000, 10), (2050, 12), (2100, 14), (2140, 16), (2150, 18), (2200, 20),
    )  # fmt: skip
    needs = needs_of(*demand)
    plan = checked(needs, [StockLength("roll", "oak", 5600.0)], kerf=0.0)
    assert len(plan.bars) == 73
    assert plan.proved == {"oak": True}
    waste = 1 - sum(n.length for n in needs) / (73 * 5600)
    assert waste == pytest.approx(0.00401, abs=5e-6)


def test_published_example_of_a_textbook():
    """V. Chvatal, Linear Programming (1983), chapter 13: raws 100 in wide, four finals; the
    linear program needs 452.25 raws (from memory), so none can do with fewer than 453."""
    demand = ((45, 97), (36, 610), (31, 395), (14, 211))
    plan = checked(needs_of(*demand), [StockLength("raw", "oak", 100.0)], kerf=0.0)
    assert len(plan.bars) == 453
    assert plan.proved == {"oak": True}


def test_published_example_of_a_modelling_language():
    """cutstock.mzn (J. Puchinger, 2007): stock of 10, two of 7, two of 5, four of 3. By hand: a
    7 and a 3 twice, both 5 together, both other 3 together."""
    plan = checked(needs_of((7, 2), (5, 2), (3, 4)), [StockLength("s", "oak", 10.0)], kerf=0.0)
    assert len(plan.bars) == 4


@pytest.mark.parametrize("seed", range(8))
def test_as_cheap_as_brute_force_among_two_lengths_with_one_at_hand(seed):
    random = Random(100 + seed)
    lengths = [random.choice([395.0, 610.0, 777.0, 1150.0]) for _ in range(6)]
    needs = [LengthNeed(str(i), length, "oak") for i, length in enumerate(lengths)]
    stock = [
        StockLength("short", "oak", 1500.0, cost=random.choice([6.0, 7.5])),
        StockLength("long", "oak", 2500.0, cost=11.0),
        StockLength("rest", "oak", 1200.0, quantity=1, offcut=True),
    ]
    plan = checked(needs, stock)
    assert plan.cost == pytest.approx(least_cost_by_trying(lengths, stock, KERF))
    assert plan.proved == {"oak": True}


def least_cost_by_trying(lengths, stock, kerf):
    """The least cost, by trying every stock length for every piece."""
    order = sorted(lengths, reverse=True)
    best = float("inf")

    def deal(index, left, cost, at_hand):
        nonlocal best
        if cost >= best:
            return
        if index == len(order):
            best = cost
            return
        for bar, free in enumerate(left):
            if order[index] <= free + 1e-9:
                deal(index + 1, [*left[:bar], free - order[index] - kerf, *left[bar + 1 :]],
                     cost, at_hand)  # fmt: skip
        for each in stock:
            if order[index] <= each.length and not (each.offcut and not at_hand):
                deal(index + 1, [*left, each.length - order[index] - kerf],
                     cost + (each.cost or 0.0), at_hand - each.offcut)  # fmt: skip

    deal(0, [], 0.0, 1)
    return best


def test_the_kerf_between_pieces_but_not_after_the_last():
    # 3 x 798 + 2 x 3 = 2400.
    assert len(checked(needs_of((798.0, 3)), [BAR]).bars) == 1
    assert len(checked(needs_of((798.1, 3)), [BAR]).bars) == 2
    assert len(checked(needs_of((798.0, 3)), [replace(BAR, trim=1.0)]).bars) == 2


def test_the_cheapest_mix_of_lengths():
    long = StockLength("long", "oak", 3600.0, cost=20.0)
    short = replace(BAR, cost=10.0)
    needs = needs_of((1190.0, 5))
    plan = checked(needs, [long, short])
    # Three on the long one and two on the short one: 30; three short ones cost 30 as well,
    # but are more pieces.
    assert plan.cost == 30.0
    assert sorted(bar.stock.key for bar in plan.bars) == ["bar", "long"]
    dear = checked(needs, [replace(long, cost=25.0), short])
    assert dear.cost == 30.0
    assert [bar.stock.key for bar in dear.bars] == ["bar"] * 3


def test_limited_lengths_run_out():
    with pytest.raises(LayoutError, match="do not give 5 pieces"):
        plan_lengths(needs_of((1190.0, 5)), [replace(BAR, quantity=2)], KERF)
    assert len(checked(needs_of((1190.0, 4)), [replace(BAR, quantity=2)]).bars) == 2


def test_defects_part_a_board():
    knotty = replace(BAR, quantity=1, defects=((1000.0, 1050.0), (0.0, 20.0)))
    assert clear_stretches(knotty, KERF) == ((20.0, 1000.0), (1050.0, 2400.0))
    plan = checked(needs_of((980.0, 1), (1350.0, 1)), [knotty])
    assert [(c.start, c.end) for c in plan.bars[0].cuts] == [(20, 1000), (1050, 2400)]
    with pytest.raises(LayoutError, match=r"the longest is 1350 mm"):
        plan_lengths(needs_of((1351.0, 1)), [knotty], KERF)


def test_a_defect_narrower_than_the_kerf_takes_a_kerf():
    cracked = replace(BAR, defects=((1199.5, 1200.5),))
    assert clear_stretches(cracked, KERF) == ((0.0, 1198.5), (1201.5, 2400.0))
    assert clear_stretches(replace(BAR, defects=((0.0, 2400.0),)), KERF) == ()


def test_many_sizes_still_give_a_plan():
    needs = needs_of(*((200.0 + 13 * n, 3) for n in range(24)))
    plan = checked(needs, [BAR])
    assert len(plan.bars) <= least_count(needs, 2400.0, KERF) + 2


def test_hundreds_of_sizes_fill_their_bars():
    """Random lengths of a few to a bar lose next to nothing: the sum alone is nearly reached."""
    needs = needs_of(*((n / 10, 1) for n in Random(3).sample(range(800, 12000), 300)))
    stock = [replace(BAR, cost=9.5), replace(BAR, key="long", length=3000.0, cost=12.5)]
    plan = checked(needs, stock)
    least = min(
        least_count(needs, 2400.0, KERF) * 9.5, sum(n.length + KERF for n in needs) * 12.5 / 3003)
    assert plan.cost <= 1.02 * least + 9.5


def test_what_the_sum_alone_proves_is_called_proved():
    needs = needs_of(*((n / 10, 1) for n in Random(5).sample(range(1000, 3000), 150)))
    plan = checked(needs, [BAR])
    assert len(plan.bars) == least_count(needs, 2400.0, KERF)
    assert plan.proved[BAR.material]


@pytest.mark.parametrize(
    ("needs", "stock", "kerf", "message"),
    [
        (needs_of((1, 1)), [BAR], -1.0, "kerf is -1"),
        (needs_of((1, 1)) * 2, [BAR], 3.0, "another one has the same key"),
        (needs_of((1, 1)), [BAR, BAR], 3.0, "another one has the same key"),
        (needs_of((0, 1)), [BAR], 3.0, "it must be more than 0"),
        (needs_of((1, 1)), [replace(BAR, material="elm")], 3.0, "no length of it"),
        (needs_of((1, 1)), [replace(BAR, length=0.0)], 3.0, "it must be more than 0"),
        (needs_of((1, 1)), [replace(BAR, trim=1200.0)], 3.0, "leave something of 2400 mm"),
        (needs_of((1, 1)), [replace(BAR, quantity=-1)], 3.0, "quantity is -1"),
        (needs_of((1, 1)), [replace(BAR, cost=-1.0)], 3.0, "a price must be 0 or more"),
        (needs_of((1, 1)), [replace(BAR, defects=((5.0, 4.0),))], 3.0, "its start first"),
        (needs_of((2401, 1)), [BAR], 3.0, "the longest is 2400 mm"),
    ],
)
def test_what_is_refused(needs, stock, kerf, message):
    with pytest.raises(LayoutError) as caught:
        plan_lengths(needs, stock, kerf)
    assert message in str(caught.value)


def test_nothing_to_cut():
    assert plan_lengths([], [BAR], KERF) == LengthPlan((), {})
