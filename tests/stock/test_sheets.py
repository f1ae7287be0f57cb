"""The planner of sheets: whole plans, checked by the independent verifier."""

from __future__ import annotations

from dataclasses import replace
from random import Random
from time import sleep

import pytest

from closetbench.core.errors import LayoutError
from closetbench.stock.plan import (
    CutPart,
    CutSettings,
    FirstCut,
    GrainOnSheet,
    Plan,
    PlanProgress,
    Proof,
    SearchEnd,
    StockSheet,
)
from closetbench.stock.sheets import plan_sheets
from closetbench.stock.verify import verify_plan

SHEET = StockSheet("full", "ply 18", 2440, 1220, trim=5)
QUICK = CutSettings(seconds=0.1, tidy=0.0)


def parts_of(*sizes: tuple[float, float, int], grain=GrainOnSheet.FREE, material="ply 18"):
    return [
        CutPart(f"{length:g}x{width:g}/{i}", length, width, material, grain)
        for length, width, count in sizes
        for i in range(count)
    ]


def planned(parts, stock, settings=QUICK, progress=None) -> Plan:
    plan = plan_sheets(parts, stock, settings, progress)
    assert verify_plan(plan, parts, settings, stock) == ()
    return plan


def test_three_strips_of_404_but_only_two_of_406_with_kerf_and_trim():
    # 3 x 404 + 2 x 3.2 = 1218.4; 3 x 406 + 2 x 3.2 = 1224.4; a sheet without trim has 1220.
    bare = replace(SHEET, trim=0)
    rips = replace(QUICK, stages=2)
    assert len(planned(parts_of((2440, 404, 3)), [bare], rips).sheets) == 1
    assert len(planned(parts_of((2440, 406, 3)), [bare], rips).sheets) == 2


def test_parts_that_fill_the_sheet_exactly_need_no_kerf_at_its_edge():
    # 2 x 1218.4 + 3.2 = 2440; 2 x 608.4 + 3.2 = 1220.
    plan = planned(parts_of((1218.4, 608.4, 4)), [replace(SHEET, trim=0)])
    assert len(plan.sheets) == 1
    assert plan.sheets[0].rests == ()
    assert plan.bound == {"ply 18": 1}
    assert plan.ended == {"ply 18": SearchEnd.PROVED}


def test_inch_sizes_are_kept_exactly():
    parts = parts_of((16 * 25.4, 11.25 * 25.4, 7), (25.4 / 32 * 700, 25.4 / 3, 5))
    plan = planned(parts, [StockSheet("4x8", "ply 18", 96 * 25.4, 48 * 25.4, trim=6.35)])
    size = {part.key: (part.length, part.width) for part in parts}
    for placement in plan.sheets[0].placements:
        sides = (placement.dy, placement.dx) if placement.rotated else (placement.dx, placement.dy)
        assert sides == size[placement.part]


@pytest.mark.parametrize(
    ("grain", "turned"), [(GrainOnSheet.ALONG, {False}), (GrainOnSheet.ACROSS, {True})]
)
def test_grain_decides_how_parts_lie(grain, turned):
    plan = planned(parts_of((700, 300, 9), grain=grain), [SHEET])
    assert {p.rotated for s in plan.sheets for p in s.placements} == turned


def test_materials_are_planned_apart():
    thin = StockSheet("thin", "ply 6", 2440, 1220)
    parts = parts_of((2000, 500, 3)) + parts_of((1000, 500, 2), material="ply 6")
    plan = planned(parts, [SHEET, thin])
    assert len(plan.sheets_of("ply 18")) == 2
    assert len(plan.sheets_of("ply 6")) == 1
    assert [sheet.name for sheet in plan.sheets] == ["S1", "S2", "S3"]


def test_offcuts_are_used_before_sheets_are_bought():
    offcut = StockSheet("left", "ply 18", 900, 700, quantity=1, offcut=True)
    plan = planned(parts_of((800, 600, 1)), [SHEET, offcut])
    assert [s.sheet.key for s in plan.sheets] == ["left"]
    plan = planned(parts_of((800, 600, 1), (2400, 600, 2)), [SHEET, offcut])
    assert [s.sheet.key for s in plan.sheets] == ["left", "full"]


def test_an_offcut_that_saves_no_sheet_takes_what_fits_all_the_same():
    offcut = StockSheet("left", "ply 18", 900, 700, quantity=1, offcut=True)
    parts = parts_of((2400, 600, 1), (300, 200, 1))
    plan = planned(parts, [SHEET, offcut])
    assert [s.sheet.key for s in plan.sheets] == ["left", "full"]
    assert [[p.part for p in s.placements] for s in plan.sheets] == [[parts[1].key], [parts[0].key]]
    assert plan.ended["ply 18"] is SearchEnd.PROVED
    assert plan.proof_of("ply 18") is Proof.CHEAPEST
    assert planned(parts, [SHEET]).proof_of("ply 18") is Proof.FEWEST


def test_an_offcut_with_a_price_or_too_small_a_size_stays_whole():
    parts = parts_of((2400, 600, 1), (300, 200, 1))
    dear = StockSheet("dear", "ply 18", 900, 700, quantity=1, offcut=True, cost=5.0)
    small = StockSheet("small", "ply 18", 250, 250, quantity=3, offcut=True)
    plan = planned(parts, [replace(SHEET, cost=70.0), dear, small])
    assert [s.sheet.key for s in plan.sheets] == ["full"]


def test_offcuts_take_the_parts_of_the_emptiest_sheet_and_no_more_than_there_are():
    offcut = StockSheet("left", "ply 18", 900, 700, quantity=2, offcut=True)
    parts = parts_of((2400, 1200, 2), (800, 600, 5))
    plan = planned(parts, [SHEET, offcut])
    assert [s.sheet.key for s in plan.sheets] == ["left", "left", "full", "full", "full"]
    assert [len(s.placements) for s in plan.sheets] == [1, 1, 1, 1, 3]


@pytest.mark.parametrize("seed", range(12))
def test_offcuts_never_make_more_to_be_bought(seed):
    draw = Random(seed)
    parts = parts_of(*(
        (draw.randint(80, 1200), draw.randint(60, 700), draw.randint(1, 4)) for _ in range(8)))
    offcuts = [
        StockSheet(f"left{n}", "ply 18", draw.randint(200, 1500), draw.randint(100, 900),
                   quantity=draw.randint(1, 2), offcut=True)
        for n in range(3)
    ]
    without = planned(parts, [SHEET])
    plan = planned(parts, [SHEET, *offcuts])
    bought = [s for s in plan.sheets if not s.sheet.offcut]
    assert len(bought) <= len(without.sheets)
    for offcut in offcuts:
        used = [s for s in plan.sheets if s.sheet.key == offcut.key]
        left = [p for s in bought for p in s.placements]
        fits = any(min(p.dx, p.dy) <= min(offcut.length, offcut.width)
                   and max(p.dx, p.dy) <= max(offcut.length, offcut.width) for p in left)
        assert len(used) == offcut.quantity or not fits


def test_the_cheaper_mix_of_sizes_is_bought():
    half = StockSheet("half", "ply 18", 1220, 1220, trim=5, cost=40.0)
    full = replace(SHEET, cost=70.0)
    plan = planned(parts_of((1200, 600, 6)), [full, half])
    # Four lie on a whole sheet (17.5 each), two on a half (20 each).
    assert sorted(s.sheet.key for s in plan.sheets) == ["full", "half"]
    dear = replace(half, cost=75.0)
    plan = planned(parts_of((1200, 600, 6)), [full, dear])
    assert [s.sheet.key for s in plan.sheets] == ["full", "full"]


def test_without_prices_less_area_is_bought():
    half = StockSheet("half", "ply 18", 1220, 1220, trim=5)
    plan = planned(parts_of((1200, 600, 2)), [SHEET, half])
    assert [s.sheet.key for s in plan.sheets] == ["half"]


def test_limited_sheets_are_not_overdrawn():
    few = replace(SHEET, quantity=2)
    assert len(planned(parts_of((1200, 600, 8)), [few]).sheets) == 2
    with pytest.raises(LayoutError, match="at least 3 are needed"):
        plan_sheets(parts_of((1200, 600, 9)), [few], QUICK)


def test_first_cut_and_two_stages_are_obeyed():
    parts = parts_of((700, 300, 5), (500, 250, 6), (1100, 420, 3))
    for first in FirstCut:
        for stages in (2, 3, 4, None):
            planned(parts, [SHEET], replace(QUICK, first=first, stages=stages))


def test_no_kerf_is_allowed():
    assert len(planned(parts_of((610, 305, 16)), [replace(SHEET, trim=0)],
                       replace(QUICK, kerf=0.0)).sheets) == 1  # fmt: skip


def test_nothing_to_cut_is_an_empty_plan():
    assert planned([], [SHEET]) == Plan(())


def test_progress_can_end_the_search_and_gets_the_best_plan():
    parts = parts_of((1500, 415, 9), (910, 333, 14), (700, 250, 14), (455, 444, 8))
    seen: list[PlanProgress] = []

    def stop(progress: PlanProgress) -> bool:
        seen.append(progress)
        return False

    plan = planned(parts, [SHEET], replace(QUICK, seconds=50.0, tidy=50.0), stop)
    assert len(seen) == 1
    assert seen[0].material == "ply 18"
    assert seen[0].sheets == len(plan.sheets)
    assert plan.ended == {"ply 18": SearchEnd.CANCELLED}


def test_the_same_seed_gives_the_same_plan():
    parts = parts_of((1500, 415, 5), (910, 333, 9), (700, 250, 9), (455, 444, 6))
    assert planned(parts, [SHEET]) == planned(parts, [SHEET])


def test_a_slower_machine_finds_the_same_plan():
    parts = parts_of((1500, 415, 5), (910, 333, 9), (700, 250, 9), (455, 444, 6))
    settings = replace(QUICK, seconds=0.2, tidy=0.1)

    def dawdle(progress: PlanProgress) -> bool:
        sleep(0.03)
        return True

    assert planned(parts, [SHEET], settings, dawdle) == planned(parts, [SHEET], settings)


def test_a_sheet_that_is_no_whole_number_of_parts():
    # The parts' common measure is 450 mm; 1210 mm is not.
    plan = planned(parts_of((450, 900, 1)), [SHEET], replace(QUICK, kerf=0.0))
    (placed,) = plan.sheets[0].placements
    assert {placed.dx, placed.dy} == {450, 900}


def test_a_sheet_too_small_for_every_part_is_passed_over():
    scrap = StockSheet("scrap", "ply 18", 60, 40, quantity=1, offcut=True)
    assert len(planned(parts_of((700, 300, 2)), [SHEET, scrap]).sheets) == 1


def test_ten_thousand_parts_give_a_plan_at_the_first_look_and_can_be_cancelled():
    random = Random(3)
    parts = [
        CutPart(f"p{i}", random.randint(100, 2000), random.randint(50, 1000), "ply 18")
        for i in range(10_000)
    ]
    seen: list[PlanProgress] = []

    def stop(progress: PlanProgress) -> bool:
        seen.append(progress)
        return False

    plan = planned(parts, [SHEET], replace(QUICK, seconds=100.0), stop)
    assert len(seen) == 1
    assert plan.ended == {"ply 18": SearchEnd.CANCELLED}
    assert not plan.repeatable
    area = sum(part.length * part.width for part in parts)
    assert len(plan.sheets) < 1.2 * area / (SHEET.length * SHEET.width)


def test_the_search_tells_how_far_it_is_and_never_goes_back():
    parts = parts_of((1500, 415, 9), (910, 333, 14), (700, 250, 14), (455, 444, 8))
    parts += parts_of((800, 300, 40), material="ply 6")
    thin = replace(SHEET, key="thin", material="ply 6")
    seen: list[PlanProgress] = []

    def watch(progress: PlanProgress) -> bool:
        seen.append(progress)
        return True

    settings = replace(QUICK, seconds=0.3, tidy=0.2)
    plan = planned(parts, [SHEET, thin], settings, watch)
    done = [progress.done for progress in seen]
    assert done == sorted(done)
    assert done[0] >= 0.0
    assert done[-1] <= 1.0
    for material in plan.bound:
        mine = [progress for progress in seen if progress.material == material]
        counts = [progress.sheets for progress in mine]
        assert counts == sorted(counts, reverse=True)
        assert all(progress.bound <= progress.sheets for progress in mine)
