"""A part moved by hand: what holds comes back verified, what does not is refused."""

from __future__ import annotations

from dataclasses import replace
from random import Random

import pytest

from closetbench.core.errors import LayoutError
from closetbench.stock.by_hand import move_part, sawn_anew, snapped
from closetbench.stock.plan import (
    CutPart,
    CutSettings,
    FirstCut,
    GrainOnSheet,
    Placement,
    StockSheet,
)
from closetbench.stock.sheets import plan_sheets
from closetbench.stock.verify import cut_up, verify_plan

SETTINGS = CutSettings(kerf=3.0, seconds=0.02, tidy=0.0)
STOCK = [StockSheet("s", "ply", 2440, 1220, trim=6.0)]


def planned(parts, settings=SETTINGS):
    return plan_sheets(parts, STOCK, settings)


def at(plan, key):
    return next(p for s in plan.sheets for p in s.placements if p.part == key)


ALONG = GrainOnSheet.ALONG
PARTS = [CutPart("a", 1000, 400, "ply", ALONG), CutPart("b", 800, 300, "ply", ALONG),
         CutPart("c", 500, 200, "ply", ALONG)]


def test_a_part_moves_where_there_is_room_and_the_cuts_follow():
    plan = planned(PARTS)
    moved = move_part(plan, "c", 1900.0, 1000.0, False, PARTS, SETTINGS, STOCK)
    assert (at(moved, "c").x, at(moved, "c").y) == (1900.0, 1000.0)
    assert verify_plan(moved, PARTS, SETTINGS, STOCK) == ()
    assert set("abc") <= set(cut_up(moved.sheets[0]))
    assert at(plan, "c").x != 1900.0
    assert not moved.repeatable


@pytest.mark.parametrize(("key", "x", "y", "turned", "said"), [
    ("c", 2000.0, 900.0, False, "outside the trimmed sheet"),
    ("c", 0.0, 900.0, False, "outside the trimmed sheet"),
    ("c", 1900.0, 300.0, True, "turned, its grain must run along"),
    ("x", 0.0, 0.0, False, "lies on no sheet"),
])
def test_a_bad_move_is_refused_with_its_reason(key, x, y, turned, said):
    with pytest.raises(LayoutError) as caught:
        move_part(planned(PARTS), key, x, y, turned, PARTS, SETTINGS, STOCK)
    assert said in str(caught.value)


def test_a_part_on_another_and_a_gap_that_no_two_cuts_fit():
    plan = planned(PARTS)
    a = at(plan, "a")
    with pytest.raises(LayoutError, match="closer than the kerf"):
        move_part(plan, "c", a.x + 10, a.y + 10, False, PARTS, SETTINGS, STOCK)
    with pytest.raises(LayoutError, match="too narrow for two cuts"):
        move_part(plan, "c", 6.0 + 1.5, 900.0, False, PARTS, SETTINGS, STOCK)


def test_a_pinwheel_cannot_be_sawn():
    """Four parts around a gap: no cut goes from edge to edge (the standard example)."""
    stock = [StockSheet("s", "ply", 1000, 1000)]
    parts = [CutPart(k, 600, 390, "ply") for k in "abcd"]
    plan = plan_sheets(parts, [StockSheet("s", "ply", 1000, 1700)], SETTINGS)
    assert len(plan.sheets) == 1
    around = (
        Placement("a", 0, 0, 600, 390, False), Placement("b", 603, 0, 390, 600, True),
        Placement("c", 393, 603, 600, 390, False), Placement("d", 0, 393, 390, 600, True),
    )
    sheet = replace(plan.sheets[0], sheet=stock[0], placements=around, rests=(), cuts=())
    with pytest.raises(LayoutError):
        sawn_anew(sheet, CutSettings(kerf=3.0, stages=None, first=FirstCut.ANY))


@pytest.mark.parametrize("seed", range(25))
def test_planned_sheets_are_sawn_anew_as_well_as_the_planner_did(seed):
    random = Random(seed)
    first = random.choice(list(FirstCut))
    settings = CutSettings(kerf=3.2, seconds=0.02, tidy=0.0, first=first)
    parts = [
        CutPart(str(i), random.randint(150, 900), random.randint(80, 500), "ply",
                random.choice(list(GrainOnSheet)))
        for i in range(random.randint(2, 16))
    ]
    plan = planned(parts, settings)
    for sheet in plan.sheets:
        again = sawn_anew(sheet, settings)
        other = replace(plan, sheets=tuple(again if s is sheet else s for s in plan.sheets))
        assert verify_plan(other, parts, settings, STOCK) == ()
        assert sum(r.dx * r.dy for r in again.rests) > 0


def test_let_go_near_an_edge_or_a_neighbour_it_snaps():
    plan = planned(PARTS)
    sheet, a = plan.sheets[0], at(plan, "a")
    assert snapped(sheet, "c", 10.0, 900.0, 500, 200, 20.0) == (6.0, 900.0)
    x, _ = snapped(sheet, "c", a.x + a.dx + 9.0, 900.0, 500, 200, 20.0)
    assert x == pytest.approx(a.x + a.dx + 3.0)
    assert snapped(sheet, "c", 1500.0, 700.0, 500, 200, 0.0) == (1500.0, 700.0)


TWO = [CutPart("a", 2000, 1100, "ply", ALONG), CutPart("b", 2000, 700, "ply", ALONG),
       CutPart("c", 500, 200, "ply", ALONG)]


def sheet_of(plan, key):
    return next(s for s in plan.sheets if any(p.part == key for p in s.placements))


def test_a_part_goes_to_another_sheet_and_both_are_sawn_anew():
    plan = planned(TWO)
    assert len(plan.sheets) == 2
    here = sheet_of(plan, "c")
    there = next(s for s in plan.sheets if s is not here)
    host = there.placements[0]
    x, y = snapped(there, "c", host.x + host.dx + 20.0, 10.0, 200, 500, 30.0)
    free = [replace(p, grain=GrainOnSheet.FREE) for p in TWO]
    moved = move_part(plan, "c", x, y, True, free, SETTINGS, STOCK, to=there.name)
    assert sheet_of(moved, "c").name == there.name
    assert at(moved, "c").rotated != at(plan, "c").rotated
    assert verify_plan(moved, free, SETTINGS, STOCK) == ()
    with pytest.raises(LayoutError, match="its grain must run along"):
        move_part(plan, "c", x, y, True, TWO, SETTINGS, STOCK, to=there.name)
    with pytest.raises(LayoutError, match="closer than the kerf"):
        move_part(plan, "c", host.x, host.y, False, TWO, SETTINGS, STOCK, to=there.name)
    with pytest.raises(LayoutError, match="sheet is S9; is not in the plan"):
        move_part(plan, "c", x, y, False, TWO, SETTINGS, STOCK, to="S9")


def test_a_sheet_left_without_a_part_is_no_more_in_the_plan():
    parts = [CutPart("a", 2000, 600, "ply", ALONG), CutPart("c", 500, 200, "ply", ALONG)]
    one = planned(parts)
    alone = [replace(one.sheets[0], placements=(p,), name=f"S{n}", cuts=(), rests=())
             for n, p in enumerate(one.sheets[0].placements, 1)]
    two = replace(one, sheets=tuple(sawn_anew(s, SETTINGS) for s in alone))
    # back to where it was beside the other
    was = at(one, "c")
    moved = move_part(two, "c", was.x, was.y, False, parts, SETTINGS, STOCK,
                      to=sheet_of(two, "a").name)
    assert [s.name for s in moved.sheets] == [sheet_of(two, "a").name]
    assert verify_plan(moved, parts, SETTINGS, STOCK) == ()


def test_no_part_goes_to_a_sheet_of_another_material():
    stock = [*STOCK, StockSheet("m", "mdf", 2440, 1220)]
    parts = [CutPart("a", 2000, 600, "ply"), CutPart("m", 500, 200, "mdf")]
    plan = plan_sheets(parts, stock, SETTINGS)
    with pytest.raises(LayoutError, match="of mdf, on a sheet of ply"):
        move_part(plan, "m", 1000.0, 900.0, False, parts, SETTINGS, stock,
                  to=sheet_of(plan, "a").name)


@pytest.mark.parametrize("seed", range(12))
def test_random_moves_between_sheets_hold_or_are_refused(seed):
    random = Random(seed)
    parts = [
        CutPart(str(i), random.randint(300, 1200), random.randint(150, 600), "ply",
                random.choice(list(GrainOnSheet)))
        for i in range(14)
    ]
    plan = planned(parts)
    held = 0
    for _ in range(40):
        key = random.choice(parts).key
        placed = at(plan, key)
        target = random.choice(plan.sheets)
        x, y = snapped(target, key, random.uniform(0, 2440), random.uniform(0, 1220),
                       placed.dx, placed.dy, 300.0)
        try:
            plan = move_part(plan, key, x, y, False, parts, SETTINGS, STOCK, to=target.name)
        except LayoutError:
            continue
        held += 1
        assert verify_plan(plan, parts, SETTINGS, STOCK) == ()
        assert all(s.cuts for s in plan.sheets)
    assert held
