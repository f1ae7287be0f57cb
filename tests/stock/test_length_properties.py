"""Whatever the pieces, the stock and the saw: a plan of lengths is valid, loses nothing, comes
again, is no worse than first fit, and where it says so the cheapest there is."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace
from math import inf

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from closetbench.core.errors import LayoutError
from closetbench.core.panel import Grain, Panel, Rim, Taper
from closetbench.core.parts import FACING, Part, Place, Role
from closetbench.core.trim import SAW
from closetbench.resources import load_catalogue
from closetbench.stock.from_lengths import length_needs, plan_of_lengths, stock_lengths
from closetbench.stock.length_checks import verify_lengths
from closetbench.stock.length_plan import LengthNeed, LengthPlan, StockLength
from closetbench.stock.lengths import plan_lengths

ROOM = 1e-6
"""mm that sums of floats may be off by."""
SLOW = settings(max_examples=150, deadline=None, suppress_health_check=list(HealthCheck))

sizes = st.one_of(
    st.sampled_from([298.0, 399.0, 402.5, 598.5, 799.0, 1198.5, 1199.0]),
    st.integers(20, 1500).map(float),
    st.integers(200, 15_000).map(lambda tenths: tenths / 10),
    st.integers(25, 1900).map(lambda parts: parts * 25.4 / 32),
    st.floats(20.0, 1500.0),
)

pytestmark = pytest.mark.once
pieces = st.builds(
    LengthNeed, key=st.just(""), length=sizes, material=st.sampled_from(["oak", "oak", "pine"]))
kerfs = st.sampled_from([0.0, 1.2, 2.4, 3.0, 3.175])


@st.composite
def stocks(draw: st.DrawFn, most_defects: int = 3) -> StockLength:
    length = draw(st.sampled_from([900.0, 1200.0, 1830.5, 2400.0, 8 * 304.8, 3000.0]))
    defects = []
    for _ in range(draw(st.integers(0, most_defects))):
        start = draw(st.floats(0.0, length - 1.0))
        defects.append((start, min(length, start + draw(st.sampled_from([0.4, 12.0, 150.0])))))
    offcut = draw(st.booleans()) and draw(st.booleans())
    return StockLength(
        "", draw(st.sampled_from(["oak", "oak", "pine"])), length,
        draw(st.sampled_from([0.0, 0.0, 5.0])),
        1 if offcut else draw(st.sampled_from([None, None, None, 0, 1, 3])),
        draw(st.sampled_from([None, 0.0, 4.5, 9.0, 12.0])), tuple(defects), offcut,
    )


def keyed(values):
    return [replace(value, key=f"k{number}") for number, value in enumerate(values)]


@st.composite
def jobs(draw: st.DrawFn, most: int, kinds: int, most_defects: int = 3):
    """Pieces, and stock of which nearly always some is sound and as much as is needed."""
    needs = draw(st.lists(pieces, min_size=1, max_size=most))
    if draw(st.booleans()):  # pieces of one size come in numbers
        needs += [needs[0]] * draw(st.integers(0, most - len(needs)))
    stock = draw(st.lists(stocks(most_defects), max_size=kinds))
    if draw(st.integers(0, 9)):
        stock += [
            StockLength("", material, draw(st.sampled_from([1830.5, 2400.0, 3000.0])),
                        cost=draw(st.sampled_from([None, 7.0, 10.0])))
            for material in ("oak", "pine")
        ]
    assume(stock)
    return keyed(needs), keyed(draw(st.permutations(stock))), draw(kerfs)


def clear(stock: StockLength, kerf: float) -> list[float]:
    """The lengths between trims and defects, worked out apart from the planner: a defect that is
    narrower than the saw takes as much as the saw."""
    taken = [(0.0, stock.trim), (stock.length - stock.trim, stock.length)]
    for low, high in stock.defects:
        more = max(0.0, kerf - (high - low)) / 2
        taken.append((low - more, high + more))
    at, found = 0.0, []
    for low, high in sorted(taken):
        if low > at:
            found.append(low - at)
        at = max(at, high)
    return found


def prices(stock: list[StockLength]) -> dict[str, float]:
    """What each costs; all their length where any to be bought of the material has no price."""
    found = {}
    for each in stock:
        mine = [s for s in stock if s.material == each.material and s.quantity != 0]
        priced = all(s.cost is not None for s in mine if not s.offcut)
        found[each.key] = 0.0 if each.offcut else each.cost if priced else each.length / 1000
    return found


def cost(plan: LengthPlan, stock: list[StockLength]) -> float:
    each = prices(stock)
    return sum(each[bar.stock.key] for bar in plan.bars)


def first_fit(needs, stock, kerf) -> float | None:
    """What the longest pieces first, each into the first room that there is, comes to: a new
    length is the first in the list that is long enough. None where the stock does not do."""
    each, total = prices(stock), 0.0
    for material in {need.material for need in needs}:
        kinds = [s for s in stock if s.material == material]
        free, used = [], dict.fromkeys((s.key for s in kinds), 0)
        mine = sorted((n.length for n in needs if n.material == material), reverse=True)
        for length in mine:
            at = next((i for i, room in enumerate(free) if length <= room + ROOM / 10), None)
            if at is None:
                kind = next((
                    s for s in kinds if (s.quantity is None or used[s.key] < s.quantity)
                    and max(clear(s, kerf), default=0.0) >= length), None)
                if kind is None:
                    return None
                used[kind.key] += 1
                total += each[kind.key]
                at = len(free) + next(
                    i for i, room in enumerate(clear(kind, kerf)) if room >= length)
                free += clear(kind, kerf)
            free[at] -= length + kerf
    return total


def least(needs, stock, kerf) -> float:
    """The least that any plan costs, by trying all of them; infinite where there is none."""
    each, total = prices(stock), 0.0
    for material in {need.material for need in needs}:
        kinds = [s for s in stock if s.material == material]
        order = sorted((n.length for n in needs if n.material == material), reverse=True)
        total += _least(order, kinds, kerf, each)
    return total


def _least(order, kinds, kerf, each) -> float:
    best = inf
    rooms = {s.key: clear(s, kerf) for s in kinds}

    def deal(index: int, free: list[float], used: dict[str, int], spent: float) -> None:
        nonlocal best
        if spent >= best:
            return
        if index == len(order):
            best = spent
            return
        length = order[index]
        seen = set()
        for at, room in enumerate(free):
            if length <= room + ROOM / 10 and room not in seen:
                seen.add(room)
                deal(index + 1, [*free[:at], room - length - kerf, *free[at + 1:]], used, spent)
        for kind in kinds:
            if kind.quantity is not None and used.get(kind.key, 0) >= kind.quantity:
                continue
            for at, room in enumerate(rooms[kind.key]):
                if room >= length - ROOM / 10:
                    left = [r - (length + kerf if i == at else 0.0)
                            for i, r in enumerate(rooms[kind.key])]
                    deal(index + 1, [*free, *left],
                         {**used, kind.key: used.get(kind.key, 0) + 1}, spent + each[kind.key])

    deal(0, [], {}, 0.0)
    return best


@SLOW
@given(jobs(24, 4))
def test_a_plan_holds_or_says_why_there_is_none(job):
    needs, stock, kerf = job
    simple = first_fit(needs, stock, kerf)
    plan = None
    with suppress(LayoutError):
        plan = plan_lengths(needs, stock, kerf)
    if plan is None:
        assert simple is None
        return
    assert verify_lengths(plan, needs, stock, kerf) == ()
    assert sorted(c.part for bar in plan.bars for c in bar.cuts) == sorted(n.key for n in needs)
    assert all(bar.cuts for bar in plan.bars)
    assert set(plan.proved) == {n.material for n in needs}
    assert plan_lengths(needs, stock, kerf) == plan
    if simple is not None:
        assert cost(plan, stock) <= simple + 1e-6


@settings(SLOW, max_examples=120)
@given(jobs(6, 2, 2))
def test_no_plan_of_a_few_pieces_is_cheaper(job):
    needs, stock, kerf = job
    cheapest = least(needs, stock, kerf)
    try:
        plan = plan_lengths(needs, stock, kerf)
    except LayoutError:
        assert cheapest == inf
        return
    assert all(plan.proved.values())
    assert cost(plan, stock) == pytest.approx(cheapest)


@settings(SLOW, max_examples=80)
@given(jobs(12, 3), st.randoms())
def test_the_order_of_the_pieces_changes_no_cost(job, random):
    needs, stock, kerf = job
    try:
        plan = plan_lengths(needs, stock, kerf)
    except LayoutError:
        assume(False)
    shuffled = list(needs)
    random.shuffle(shuffled)
    again = plan_lengths(shuffled, stock, kerf)
    assert verify_lengths(again, needs, stock, kerf) == ()
    if all(plan.proved.values()):
        assert cost(again, stock) == pytest.approx(cost(plan, stock))


CATALOGUE = load_catalogue()
MOULDINGS = sorted(k for k, m in CATALOGUE.materials.items() if k.startswith("scribe_"))


@st.composite
def mouldings(draw: st.DrawFn) -> Part:
    """A moulding with a mitre at neither end, one or both."""
    key = draw(st.sampled_from(MOULDINGS))
    board = CATALOGUE.material(key)
    width, length = board.sheets[0].width, draw(st.floats(300.0, 2000.0))
    tapers = []
    for rim in (Rim.START, Rim.END):
        if draw(st.booleans()):
            reach = draw(st.floats(5.0, width))
            tapers.append(Taper(rim, *draw(st.sampled_from([(0.0, reach), (reach, 0.0)]))))
    panel = Panel(length, width, board.thickness, key, Grain.LENGTH, tapers=tuple(tapers))
    return Part("", "Trim", Role.MOULDING, panel, Place((0.0, 0.0, 0.0), *FACING))


@settings(SLOW, max_examples=60)
@given(st.lists(mouldings(), min_size=1, max_size=8))
def test_mitred_mouldings_get_their_long_point_and_the_trying(parts):
    parts = [replace(part, name=f"m{n}") for n, part in enumerate(parts)]
    needs = length_needs(parts, (), CATALOGUE, 3.2)
    stock = stock_lengths(CATALOGUE, (n.material for n in needs))
    plan = plan_of_lengths(needs, stock, CATALOGUE, 3.2)
    assert verify_lengths(plan, needs, stock, 3.2) == ()
    cut = {c.part: c.end - c.start for bar in plan.bars for c in bar.cuts}
    for part in parts:
        xs = [x for x, _ in part.panel.cut_outline()]
        assert cut[part.full_name] >= max(xs) - min(xs) + 2 * SAW - ROOM
