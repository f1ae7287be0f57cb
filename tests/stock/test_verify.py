"""The verifier: good plans pass, every kind of broken plan is caught."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from random import Random

import pytest

from closetbench.core.errors import LayoutError
from closetbench.stock.by_hand import sawn_anew
from closetbench.stock.plan import (
    Cut,
    CutPart,
    CutSettings,
    FirstCut,
    GrainOnSheet,
    Placement,
    Plan,
    Rest,
    SheetPlan,
    StockSheet,
)
from closetbench.stock.sheets import plan_sheets
from closetbench.stock.verify import require_sawable, require_valid, verify_plan

SETTINGS = CutSettings(kerf=3.0, stages=3, seconds=0.02, tidy=0.0)
SHEET = StockSheet("s", "ply", 1000, 600, trim=10, quantity=5)
ACROSS, ALONG, FREE = GrainOnSheet.ACROSS, GrainOnSheet.ALONG, GrainOnSheet.FREE


def sheet_of(*placed: tuple[str, float, float, float, float], sheet=SHEET) -> Plan:
    placements = tuple(Placement(key, x, y, dx, dy, False) for key, x, y, dx, dy in placed)
    return Plan((SheetPlan("S1", sheet, 3.0, placements),))


def faults(plan: Plan, settings: CutSettings = SETTINGS) -> str:
    parts = [CutPart(p.part, p.dx, p.dy, "ply") for sheet in plan.sheets for p in sheet.placements]
    return " ".join(verify_plan(plan, parts, settings, [SHEET], cuts=False))


def test_two_parts_need_a_kerf_between_them_and_none_at_the_edge():
    assert faults(sheet_of(("a", 10, 10, 400, 580), ("b", 413, 10, 577, 580))) == ""
    close = sheet_of(("a", 10, 10, 400, 580), ("b", 412.9, 10, 577, 580))
    assert "a and b are closer than the kerf" in faults(close)


def test_parts_outside_the_trim():
    assert "outside the trimmed sheet" in faults(sheet_of(("a", 9.9, 10, 100, 100)))
    assert "outside the trimmed sheet" in faults(sheet_of(("a", 10, 500, 100, 91)))


PINWHEEL = (
    ("a", 10, 10, 300, 100), ("b", 313, 10, 100, 300),
    ("c", 113, 313, 300, 100), ("d", 10, 113, 100, 300),
)  # fmt: skip


def test_a_pinwheel_cannot_be_sawn_from_edge_to_edge():
    assert "not to be sawn" in faults(sheet_of(*PINWHEEL), replace(SETTINGS, stages=None))


def test_stages_and_first_direction_count():
    # Columns first: a | (b over c); rows first would cut through a.
    plan = sheet_of(("a", 10, 10, 200, 580), ("b", 213, 10, 200, 200), ("c", 213, 213, 200, 377))
    crosscut = replace(SETTINGS, first=FirstCut.CROSSCUT, stages=2)
    assert faults(plan, crosscut) == ""
    assert faults(plan, replace(crosscut, first=FirstCut.ANY)) == ""
    assert "not to be sawn" in faults(plan, replace(crosscut, first=FirstCut.RIP))
    # With rips first the first stage is empty, and one more is needed.
    assert faults(plan, replace(crosscut, first=FirstCut.RIP, stages=3)) == ""
    shorter = sheet_of(("a", 10, 10, 200, 580), ("b", 213, 10, 190, 200), ("c", 213, 213, 200, 377))
    assert "not to be sawn" in faults(shorter, crosscut)
    assert faults(shorter, replace(crosscut, stages=3)) == ""


@pytest.mark.parametrize(
    ("grain", "rotated", "good"),
    [(ALONG, False, True), (ALONG, True, False), (ACROSS, False, False), (ACROSS, True, True),
     (FREE, False, True), (FREE, True, True)],
)  # fmt: skip
def test_grain(grain, rotated, good):
    part = CutPart("a", 200, 100, "ply", grain)
    dx, dy = (100, 200) if rotated else (200, 100)
    plan = Plan((SheetPlan("S1", SHEET, 3.0, (Placement("a", 10, 10, dx, dy, rotated),)),))
    assert (verify_plan(plan, [part], SETTINGS, [SHEET], cuts=False) == ()) is good


def test_rests_must_be_free_and_whole():
    plan = sheet_of(("a", 10, 10, 400, 580))
    (sheet,) = plan.sheets
    for rest, fault in (
        (Rest(413, 10, 577, 580), ""),
        (Rest(412, 10, 578, 580), "closer than the kerf"),
        (Rest(413, 10, 580, 580), "outside"),
        (Rest(413, 10, 0, 580), "empty"),
    ):
        found = faults(Plan((replace(sheet, rests=(rest,)),)))
        assert (fault in found) if fault else found == ""


def test_require_valid_raises_the_first_fault():
    with pytest.raises(LayoutError, match="part b is not on any sheet"):
        require_valid(
            sheet_of(("a", 10, 10, 100, 100)),
            [CutPart("a", 100, 100, "ply"), CutPart("b", 100, 100, "ply")],
            SETTINGS,
            [SHEET],
        )


def test_what_is_written_from_sheets_alone_is_checked_too():
    bare = sheet_of(("a", 10, 10, 400, 580), ("b", 413, 10, 577, 580))
    good = replace(bare, sheets=(sawn_anew(bare.sheets[0], SETTINGS),))
    require_sawable(good.sheets)
    for broken, fault in (
        (sheet_of(("a", 10, 10, 400, 580), ("b", 412, 10, 577, 580)), "closer than the kerf"),
        (sheet_of(*PINWHEEL), "not to be sawn"),
        (replace(good, sheets=good.sheets * 2), "placed twice"),
        (bare, "S1: no cuts are listed"),
    ):
        with pytest.raises(LayoutError, match=fault):
            require_sawable(broken.sheets)


def mutants(sheet: SheetPlan) -> Iterator[tuple[str, SheetPlan]]:
    """The sheet with one thing wrong about its cuts, each way in turn."""
    cuts = sheet.cuts
    yield "none", replace(sheet, cuts=())
    yield "the first half", replace(sheet, cuts=cuts[: len(cuts) // 2])
    for i, cut in enumerate(cuts):
        def one(why: str, *new: Cut, i: int = i) -> tuple[str, SheetPlan]:
            return f"cut {i + 1}: {why}", replace(sheet, cuts=(*cuts[:i], *new, *cuts[i + 1:]))

        yield one("left out")
        numbered = (replace(c, number=n) for n, c in enumerate((*cuts[:i], *cuts[i + 1:]), 1))
        yield f"cut {i + 1}: left out, the others numbered anew", replace(
            sheet, cuts=tuple(numbered))
        yield one("twice", cut, cut)
        yield one("the fence off", replace(cut, fence=cut.fence + 1.0))
        along = {"y0": cut.y0 + 1.0, "y1": cut.y1 + 1.0} if cut.rip else {
            "x0": cut.x0 + 1.0, "x1": cut.x1 + 1.0}
        yield one("the line off", replace(cut, **along))
        yield one("fence and line off", replace(cut, fence=cut.fence + 1.0, **along))
        yield one("the other way", replace(cut, rip=not cut.rip))
        yield one("another piece", replace(cut, piece=f"{cut.piece}?"))
        yield one("names changed round", replace(cut, yields=cut.yields[::-1]))
        yield one("a name lost", replace(cut, yields=cut.yields[1:]))
        short = {"x1": (cut.x0 + cut.x1) / 2} if cut.rip else {"y1": (cut.y0 + cut.y1) / 2}
        yield one("not from edge to edge", replace(cut, **short))
        if i:
            order = [*cuts[: i - 1], cut, cuts[i - 1], *cuts[i + 1:]]
            yield f"cut {i + 1}: too early", replace(sheet, cuts=tuple(order))


@pytest.mark.parametrize("seed", range(4))
def test_nothing_is_written_from_cuts_that_do_not_give_the_parts(seed):
    random = Random(seed)
    parts = [
        CutPart(str(i), random.randint(80, 480), random.randint(60, 280), "ply", FREE)
        for i in range(7)
    ]
    plan = plan_sheets(parts, [SHEET], SETTINGS)
    require_sawable(plan.sheets)
    alive = [
        f"{sheet.name}, {why}" for sheet in plan.sheets for why, broken in mutants(sheet)
        if broken != sheet and sawable([broken if s is sheet else s for s in plan.sheets])
    ]
    assert alive == []


def sawable(sheets: list[SheetPlan]) -> bool:
    try:
        require_sawable(sheets)
    except LayoutError:
        return False
    return True


def test_a_sheet_without_its_cuts_is_a_fault_unless_it_is_the_part():
    parts = [CutPart("a", 400, 580, "ply")]
    plan = plan_sheets(parts, [SHEET], SETTINGS)
    bare = replace(plan, sheets=(replace(plan.sheets[0], cuts=(), rests=()),))
    assert verify_plan(bare, parts, SETTINGS, [SHEET]) == ("S1: no cuts are listed",)
    whole = [CutPart("a", 1000, 600, "ply")]
    untrimmed = replace(SHEET, trim=0)
    plan = plan_sheets(whole, [untrimmed], SETTINGS)
    assert plan.sheets[0].cuts == ()
    assert verify_plan(plan, whole, SETTINGS, [untrimmed]) == ()


def test_a_bound_above_the_sheets_is_a_fault():
    plan = sheet_of(("a", 10, 10, 100, 100))
    assert "bound" in faults(replace(plan, bound={"ply": 2}))


def _mutate(plan: Plan, random: Random) -> tuple[str, Plan]:
    """Break a good plan in one way, by more than any tolerance."""
    index = random.randrange(len(plan.sheets))
    sheet = plan.sheets[index]
    placed = list(sheet.placements)
    rests = list(sheet.rests)
    cuts = list(sheet.cuts)
    at = random.randrange(len(placed))
    cut = random.randrange(len(cuts))
    old = placed[at]
    by = random.choice([-1, 1]) * random.choice([0.01, 0.5, 3.0, 40.0])
    kind = random.choice(
        ["move x", "move y", "grow", "turn", "lose", "double", "rename", "steal",
         "drop cut", "swap cuts", "fence", "line", "yield", "rest", "kerf", "sheet",
         "bound", "name", "overdraw"]
    )  # fmt: skip
    if kind == "move x":
        placed[at] = replace(old, x=old.x + by)
    elif kind == "move y":
        placed[at] = replace(old, y=old.y + by)
    elif kind == "grow":
        placed[at] = replace(old, dx=old.dx + by)
    elif kind == "turn":
        placed[at] = replace(old, rotated=not old.rotated)
    elif kind == "lose":
        del placed[at]
    elif kind == "double":
        placed.append(old)
    elif kind == "rename":
        placed[at] = replace(old, part="stranger")
    elif kind == "steal":
        other = random.randrange(len(plan.sheets) - 1)
        other += other >= index
        placed[at] = replace(old, part=plan.sheets[other].placements[0].part)
    elif kind == "drop cut":
        del cuts[cut]
    elif kind == "swap cuts":
        other = random.randrange(len(cuts) - 1)
        other += other >= cut
        cuts[cut], cuts[other] = cuts[other], cuts[cut]
    elif kind == "fence":
        cuts[cut] = replace(cuts[cut], fence=cuts[cut].fence + by)
    elif kind == "line":
        moved = {"y0": cuts[cut].y0 + by, "y1": cuts[cut].y1 + by}
        if not cuts[cut].rip:
            moved = {"x0": cuts[cut].x0 + by, "x1": cuts[cut].x1 + by}
        cuts[cut] = replace(cuts[cut], **moved)
    elif kind == "yield":
        cuts[cut] = replace(cuts[cut], yields=("stranger", *cuts[cut].yields[1:]))
    elif kind == "rest":
        rests[0] = replace(rests[0], dx=rests[0].dx + abs(by))
    elif kind == "kerf":
        return kind, _swap(plan, index, replace(sheet, kerf=2.5))
    elif kind == "sheet":
        stretched = replace(sheet.sheet, length=sheet.sheet.length + abs(by))
        return kind, _swap(plan, index, replace(sheet, sheet=stretched))
    elif kind == "bound":
        return kind, replace(plan, bound={"ply": len(plan.sheets) + 1})
    elif kind == "name":
        other = plan.sheets[index - 1]
        return kind, _swap(plan, index, replace(sheet, name=other.name))
    else:
        return kind, replace(plan, sheets=plan.sheets * 4)
    return kind, _swap(
        plan, index,
        replace(sheet, placements=tuple(placed), rests=tuple(rests), cuts=tuple(cuts)),
    )  # fmt: skip


def _swap(plan: Plan, index: int, sheet: SheetPlan) -> Plan:
    sheets = list(plan.sheets)
    sheets[index] = sheet
    return replace(plan, sheets=tuple(sheets))


def test_five_hundred_broken_plans_are_all_caught():
    random = Random(7)
    parts = [
        CutPart(f"p{n}", 90 + 37 * (n % 9), 61 + 23 * (n % 7), "ply",
                random.choice(list(GrainOnSheet)))
        for n in range(36)
    ]  # fmt: skip
    good = plan_sheets(parts, [SHEET], SETTINGS)
    assert len(good.sheets) in (3, 4, 5)
    assert all(sheet.rests and sheet.cuts for sheet in good.sheets)
    assert verify_plan(good, parts, SETTINGS, [SHEET]) == ()
    missed = []
    for _ in range(500):
        kind, broken = _mutate(good, random)
        if broken != good and not verify_plan(broken, parts, SETTINGS, [SHEET]):
            missed.append(kind)
    assert missed == []
