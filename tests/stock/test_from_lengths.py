"""Boards, mouldings, bars and rolls of band: what is planned by length, and from what."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.bars import BarLength
from closetbench.core.bodies import LengthPart
from closetbench.core.errors import CatalogueError
from closetbench.core.materials import BandRoll, EdgeBand
from closetbench.core.panel import Grain, Panel
from closetbench.core.parts import STANDING_ACROSS, Part, Place, Role
from closetbench.resources import load_catalogue
from closetbench.stock.cutting import needs_of, offcuts_after, plan_cutting
from closetbench.stock.from_lengths import (
    BAND_OVERHANG,
    band_rolls,
    by_length,
    length_needs,
    sheet_parts,
    stock_lengths,
)
from closetbench.stock.length_plan import StockLength
from closetbench.stock.offcuts import Offcut
from closetbench.stock.plan import CutSettings

CATALOGUE = load_catalogue()
QUICK = CutSettings(kerf=3.2, seconds=0.02, tidy=0.0)
PLACE = Place((0.0, 0.0, 0.0), *STANDING_ACROSS)


def board(name: str, length: float, width: float, material: str = "pine_1x6",
          grain: Grain = Grain.LENGTH) -> Part:
    thickness = CATALOGUE.material(material).thickness
    panel = Panel(length, width, thickness, material, grain)
    return Part(name, "B", Role.PANEL, panel, PLACE)


def rod(name: str, length: float) -> LengthPart:
    return LengthPart(name, "R", Role.ROD, "steel_27", 27.0, 1.2, (0.0, 0.0, 0.0),
                      (length, 0.0, 0.0))


def test_boards_go_by_length_where_no_two_lie_side_by_side():
    """A 1x6 is 139.7 mm wide (PS 20-20: 5 1/2 in): two of 70 mm and a kerf are wider."""
    assert by_length([board("a", 600, 139.7), board("b", 500, 70)], CATALOGUE, 3.2) == ("pine_1x6",)
    assert by_length([board("a", 600, 70), board("b", 500, 70)], CATALOGUE, 3.2) == ("pine_1x6",)
    assert by_length([board("a", 600, 68), board("b", 500, 68)], CATALOGUE, 3.2) == ()
    assert by_length([board("a", 600, 140)], CATALOGUE, 3.2) == ()
    assert by_length([board("a", 600, 100, grain=Grain.WIDTH)], CATALOGUE, 3.2) == ()
    assert by_length([board("a", 600, 100, "mdf18")], CATALOGUE, 3.2) == ()


def test_what_is_no_length_is_planned_on_sheets():
    parts = [board("a", 600, 120), board("b", 600, 300, "mdf18")]
    assert [p.name for p in sheet_parts(parts, CATALOGUE, 3.2)] == ["b"]
    needs = length_needs(parts, [rod("rod", 900)], CATALOGUE, 3.2)
    assert [(n.key, n.length, n.material) for n in needs] == [
        ("B: a", 600, "pine_1x6"), ("R: rod", 900, "steel_27"),
    ]  # fmt: skip


def test_every_length_that_is_sold_with_its_price_and_trim():
    stock = stock_lengths(CATALOGUE, ["pine_1x6", "steel_27", "pine_1x6"])
    assert [(round(s.length, 1), s.trim, s.cost) for s in stock] == [
        (1828.8, 10, 11.0), (2438.4, 10, 14.0), (3048.0, 10, 18.0), (3657.6, 10, 22.0),
        (2500.0, 0.0, 14.0),
    ]  # fmt: skip


def test_a_narrower_board_at_hand_is_no_stock():
    at_hand = [StockLength("n", "pine_1x6", 900.0, quantity=1, offcut=True, width=90.0),
               StockLength("w", "pine_1x6", 900.0, quantity=1, offcut=True, width=139.7)]
    stock = stock_lengths(CATALOGUE, ["pine_1x6"], at_hand)
    assert [s.key for s in stock if s.offcut] == ["w"]


def test_a_bar_with_the_key_of_a_board_is_refused():
    odd = replace(rod("rod", 900), stock="mdf18")
    with pytest.raises(CatalogueError, match="board's key too"):
        length_needs([], [odd], CATALOGUE, 3.2)


def test_rods_come_from_as_few_bars_as_can_be():
    """897 mm: two from a bar of 2,500 mm, so three bars for five."""
    needs = needs_of([], [rod(f"r{i}", 897.0) for i in range(5)], CATALOGUE, 3.2)
    plan = plan_cutting(needs, QUICK, CATALOGUE).lengths
    assert len(plan.bars_of("steel_27")) == 3
    assert plan.proved == {"steel_27": True}
    fits = needs_of([], [rod("a", 1248.5), rod("b", 1248.5)], CATALOGUE, 3.2)
    assert len(plan_cutting(fits, QUICK, CATALOGUE).lengths.bars) == 1
    over = needs_of([], [rod("a", 1248.6), rod("b", 1248.6)], CATALOGUE, 3.2)
    assert len(plan_cutting(over, QUICK, CATALOGUE).lengths.bars) == 2


def test_the_cheapest_boards_are_bought_and_offcuts_cost_nothing():
    parts = [board(f"p{i}", 880, 139.7) for i in range(4)]
    plan = plan_cutting(needs_of(parts, (), CATALOGUE, 3.2), QUICK, CATALOGUE).lengths
    # 8 ft (14.00) gives two, 10 ft (18.00) three, 12 ft (22.00) four, 6 ft (11.00) two
    assert plan.cost == 22.0
    hand = [Offcut("rest", "pine_1x6", 1000.0, 139.7), Offcut("kept", "pine_1x6", 1800.0, 139.7,
                                                              reserved="another job")]
    needs = needs_of(parts, (), CATALOGUE, 3.2, offcuts=hand, job="this job")
    cutting = plan_cutting(needs, QUICK, CATALOGUE)
    assert cutting.lengths.cost == 18.0
    left = offcuts_after(hand, cutting, "this job")
    assert next(o.key for o in left) == "kept"
    assert "rest" not in {o.key for o in left}
    assert all(o.width == pytest.approx(139.7) for o in left)


def test_rolls_of_band_hold_whole_strips():
    """Strips of 2,000 mm and the overhang: two from a roll of 5 m, four from one of 10 m."""
    band = EdgeBand("b", "band", 0.5, 22.0, rolls=(BandRoll(5000, 4.0), BandRoll(10_000, 7.0)))
    catalogue = replace(CATALOGUE, bands={"b": band})
    runs = [2000.0] * 5
    assert 2 * (2000 + BAND_OVERHANG) < 5000 < 3 * (2000 + BAND_OVERHANG)
    plan = band_rolls(runs, "b", catalogue)
    assert sorted(bar.stock.length for bar in plan.bars) == [5000, 10_000]
    assert plan.cost == 11.0


def test_bars_are_bought_in_the_lengths_that_cost_least():
    """Two rods of 1,190 mm: 2 x 9.50 for short bars, or 16.00 for one of 2.5 m."""
    def planned(short, *rods):
        bar = replace(CATALOGUE.bar("steel_27"), lengths=(BarLength(1250.0, short),))
        item = replace(CATALOGUE.item("rod_steel_27"), cost=16.0, pack=1)
        mine = replace(
            CATALOGUE, bars={**CATALOGUE.bars, "steel_27": bar},
            hardware={**CATALOGUE.hardware, "rod_steel_27": item})
        needs = needs_of((), [rod(str(n), length) for n, length in enumerate(rods)], mine, 3.2)
        return sorted(b.stock.length for b in plan_cutting(needs, QUICK, mine).lengths.bars)

    assert planned(9.5, 1190.0, 1190.0) == [2500.0]
    assert planned(7.5, 1190.0, 1190.0) == [1250.0, 1250.0]
    assert planned(9.5, 1190.0, 1190.0, 1190.0) == [1250.0, 2500.0]
    assert planned(9.5, 1190.0, 1300.0) == [2500.0]
    assert planned(9.5, 1190.0) == [1250.0]
    # without a price for one of them: no more length than is needed
    assert planned(None, 1190.0, 1190.0, 1190.0) == [1250.0, 2500.0]
