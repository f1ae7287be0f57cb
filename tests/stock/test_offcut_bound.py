"""The bound that the benchmark sets the largest offcuts beside: by hand, and against plans."""

from __future__ import annotations

import sys
from dataclasses import replace
from pathlib import Path

import pytest

from closetbench.stock.plan import CutPart, GrainOnSheet, StockSheet
from closetbench.stock.sheets import plan_sheets

sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "benchmarks"))

from offcut_bound import most_offcut
from other_jobs import plain_job

SHEET = StockSheet("full", "ply", 2400, 1200)
STEP = 1.005  # the lattice leaves a little


def long_parts(count: int) -> list[CutPart]:
    return [CutPart(f"{i}", 1300, 700, "ply", GrainOnSheet.ALONG) for i in range(count)]


def test_one_part_on_each_sheet_leaves_the_strip_beside_it():
    # Two do not fit side by side (2 x 1300 > 2400) nor stacked (2 x 700 > 1200), so either
    # sheet holds one: 1100 x 1200 is left beside it, 2400 x 500 below, all less the kerf.
    for kerf, left in ((0.0, 1100 * 1200), (4.0, 1096 * 1200)):
        most = most_offcut(long_parts(2), SHEET, kerf, 2)
        assert left <= most * 1e6 <= left * STEP


def test_a_sheet_to_spare_is_an_offcut_whole():
    assert most_offcut(long_parts(2), SHEET, 0.0, 3) == pytest.approx(2.88, rel=1e-9)


def test_full_sheets_leave_nothing():
    parts = [CutPart(f"{i}", 1200, 1200, "ply") for i in range(4)]
    assert most_offcut(parts, SHEET, 0.0, 2) == 0.0


def test_area_alone_bounds_where_parts_are_small():
    # 2.88 m² less 20 parts of 0.1 m² is 0.88 m²; the squarest of that is 938 mm a side.
    parts = [CutPart(f"{i}", 400, 250, "ply") for i in range(20)]
    assert most_offcut(parts, SHEET, 0.0, 1) == pytest.approx(0.88)


@pytest.mark.parametrize("seed", [3])
def test_no_plan_leaves_more(seed, monkeypatch):
    monkeypatch.setattr("offcut_bound._STEPS", 12)  # coarser, so the bound is higher
    job = plain_job(seed)
    settings = replace(job.settings, seconds=0.02, tidy=0.05)
    plan = plan_sheets(job.parts, job.stock, settings)
    for material in plan.bound:
        mine = plan.sheets_of(material)
        reached = max(rest.dx * rest.dy for sheet in mine for rest in sheet.rests) / 1e6
        parts = [part for part in job.parts if part.material == material]
        assert 0 < reached <= most_offcut(parts, mine[0].sheet, settings.kerf, len(mine)) + 1e-9
