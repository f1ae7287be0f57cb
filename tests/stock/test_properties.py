"""Whatever the parts, sheets and saw: a plan is valid, loses no part, and comes again."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from closetbench.core.errors import LayoutError
from closetbench.stock.plan import CutPart, CutSettings, FirstCut, GrainOnSheet, Plan, StockSheet
from closetbench.stock.sheets import plan_sheets
from closetbench.stock.verify import verify_plan

lengths = st.one_of(
    st.integers(15, 1200).map(float),
    st.integers(150, 9000).map(lambda tenths: tenths / 10),
    st.integers(20, 1500).map(lambda parts: parts * 25.4 / 32),
    st.floats(15.0, 900.0),
)
sheets = st.builds(
    StockSheet,
    key=st.just(""),
    material=st.sampled_from(["ply 18", "ply 6"]),
    length=st.sampled_from([2440.0, 96 * 25.4, 1220.0, 900.3]),
    width=st.sampled_from([1220.0, 48 * 25.4, 610.0, 333.3]),
    trim=st.sampled_from([0.0, 2.0, 6.35, 10.0]),
    quantity=st.sampled_from([None, None, 0, 1, 3]),
    cost=st.sampled_from([None, 0.0, 35.0, 60.0]),
    offcut=st.booleans(),
)
parts = st.builds(
    CutPart,
    key=st.just(""),
    length=lengths,
    width=lengths,
    material=st.sampled_from(["ply 18", "ply 18", "ply 6"]),
    grain=st.sampled_from(GrainOnSheet),
)
saws = st.builds(
    CutSettings,
    kerf=st.sampled_from([0.0, 2.4, 3.2, 3.175, 0.7]),
    stages=st.sampled_from([None, 2, 3, 4]),
    first=st.sampled_from(FirstCut),
    seconds=st.sampled_from([0.0, 0.004]),
    tidy=st.sampled_from([0.0, 0.004]),
    seed=st.integers(0, 5),
)


def keyed(values):
    return [replace(value, key=f"k{number}") for number, value in enumerate(values)]


@settings(max_examples=200, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(
    st.lists(parts, max_size=14).map(keyed),
    st.lists(sheets, min_size=1, max_size=4).map(keyed),
    saws,
)
def test_a_plan_is_valid_and_whole_or_refused(wanted, stock, saw):
    try:
        plan = plan_sheets(wanted, stock, saw)
    except LayoutError:
        return
    assert verify_plan(plan, wanted, saw, stock) == ()
    assert sorted(p.part for sheet in plan.sheets for p in sheet.placements) == sorted(
        part.key for part in wanted
    )
    assert plan == plan_sheets(wanted, stock, saw)
    assert plan.repeatable


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(st.lists(parts, min_size=4, max_size=20).map(keyed), saws)
def test_plenty_of_sheets_takes_every_part(wanted, saw):
    stock = [
        StockSheet(name, name, 2440, 1220, trim=5) for name in ("ply 18", "ply 6")
    ]  # fmt: skip
    plan = plan_sheets([replace(part, grain=GrainOnSheet.FREE) for part in wanted], stock, saw)
    assert isinstance(plan, Plan)
    assert sum(len(sheet.placements) for sheet in plan.sheets) == len(wanted)
