"""The order of cuts: a sheet cut up as written gives exactly its parts."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.errors import LayoutError
from closetbench.stock.plan import CutPart, CutSettings, FirstCut, SheetPlan, StockSheet
from closetbench.stock.sheets import plan_sheets
from closetbench.stock.verify import cut_up

QUICK = CutSettings(seconds=0.02, tidy=0.0)
SHEET = StockSheet("full", "ply", 2440, 1220, trim=6)


def parts_of(*sizes: tuple[float, float, int]) -> list[CutPart]:
    return [
        CutPart(f"P{n}.{i}", length, width, "ply")
        for n, (length, width, count) in enumerate(sizes, 1)
        for i in range(count)
    ]


MANY = parts_of((1100, 420, 3), (700, 300, 5), (500, 250, 6), (90, 60, 4))


def only_sheet(parts, sheet=SHEET, **changes) -> SheetPlan:
    (plan,) = plan_sheets(parts, [sheet], replace(QUICK, **changes)).sheets
    return plan


@pytest.mark.parametrize("first", FirstCut)
@pytest.mark.parametrize("stages", [3, 4, None])
@pytest.mark.parametrize("trim", [0.0, 2.0, 6.0])
def test_the_cuts_leave_every_part_and_every_rest(first, stages, trim):
    plan = plan_sheets(
        MANY, [replace(SHEET, trim=trim)], replace(QUICK, first=first, stages=stages)
    )
    for sheet in plan.sheets:
        left = cut_up(sheet)
        for placed in sheet.placements:
            piece = left.pop(placed.part)
            assert (piece.x0, piece.y0) == pytest.approx((placed.x, placed.y))
            assert piece.x1 - piece.x0 == pytest.approx(placed.dx)
            assert piece.y1 - piece.y0 == pytest.approx(placed.dy)
        rests = [piece for name, piece in left.items() if "trim" not in name]
        assert sorted((round(p.x0, 6), round(p.y0, 6)) for p in rests) == sorted(
            (round(r.x, 6), round(r.y, 6)) for r in sheet.rests
        )


def test_trimming_comes_first_and_its_fence_is_the_size_kept():
    cuts = only_sheet(parts_of((2000, 500, 2))).cuts
    assert [(c.rip, c.fence) for c in cuts[:4]] == [
        (True, 1214), (True, 1208), (False, 2434), (False, 2428),
    ]  # fmt: skip
    assert [c.number for c in cuts] == list(range(1, len(cuts) + 1))


def test_rips_of_one_size_follow_each_other_before_any_crosscut():
    cuts = only_sheet(parts_of((2300, 250, 3), (1000, 150, 2)), stages=3).cuts[4:]
    kinds = [cut.rip for cut in cuts if cut.piece == "S1"]
    assert all(kinds)
    fences = [cut.fence for cut in cuts if cut.piece == "S1"]
    assert fences == sorted(fences, reverse=True)
    first_crosscut = next(i for i, cut in enumerate(cuts) if not cut.rip)
    assert all(cut.piece != "S1" for cut in cuts[first_crosscut:])


def test_a_part_as_large_as_the_sheet_needs_no_cut():
    whole = parts_of((2440, 1220, 1))
    assert only_sheet(whole, replace(SHEET, trim=0)).cuts == ()


def test_a_part_as_large_as_the_trimmed_sheet_needs_the_trim_only():
    cuts = only_sheet(parts_of((2428, 1208, 1))).cuts
    assert len(cuts) == 4
    assert cuts[-1].yields[0] == "P1.0"


def test_a_rest_thinner_than_the_kerf_is_sawdust():
    plan = only_sheet(parts_of((2439, 1218, 1)), replace(SHEET, trim=0))
    assert plan.rests == ()
    assert len(plan.cuts) == 2
    assert set(cut_up(plan)) == {"P1.0"}


@pytest.mark.parametrize(
    ("change", "message"),
    [
        ({"piece": "S9"}, "there is no piece S9"),
        ({"number": 7}, "the number must be"),
        ({"fence": 123.0}, "the fence at 123"),
        ({"x0": 100.0}, "does not go straight through"),
        ({"y0": 5000.0, "y1": 5000.0}, "misses"),
        ({"yields": ()}, "piece"),
    ],
)
def test_a_wrong_cut_is_found(change, message):
    plan = only_sheet(parts_of((2000, 500, 2)))
    cuts = list(plan.cuts)
    assert cuts[4].rip
    cuts[4] = replace(cuts[4], **change)
    with pytest.raises(LayoutError, match=message):
        cut_up(replace(plan, cuts=tuple(cuts)))
