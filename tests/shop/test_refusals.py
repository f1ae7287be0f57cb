"""Nothing is written from a plan that cannot be sawn, whoever made it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest

from closetbench.core.errors import LayoutError
from closetbench.core.lengths import MILLIMETRES
from closetbench.shop import bill, cutting_pages, dxf, sheets
from closetbench.shop.cutting_order import write_cutting_order
from closetbench.stock.from_parts import cut_parts, stock_sheets
from closetbench.stock.plan import Plan
from closetbench.stock.tools import Shop
from tests.shop import samples

PARTS = samples.closet()
CATALOGUE = samples.catalogue()


def broken() -> Plan:
    """A good plan but for one part, which lies a quarter of a millimetre off."""
    good = samples.plan(PARTS)
    first = good.sheets[0]
    shifted = replace(first.placements[1], x=first.placements[1].x - 0.25)
    placed = (first.placements[0], shifted, *first.placements[2:])
    return replace(good, sheets=(replace(first, placements=placed), *good.sheets[1:]))


WRITERS: dict[str, Callable[[Plan, Path], object]] = {
    "layout.dxf": lambda plan, path: dxf.layout_dxf(plan, PARTS, path),
    "S1.dxf": lambda plan, path: dxf.sheet_dxf(plan.sheets[0], PARTS, path),
    "sheets": lambda plan, path: dxf.sheet_files(plan, PARTS, path),
    "sheets.png": lambda plan, path: sheets.write_sheets(path, plan, PARTS, "x"),
    "pages": lambda plan, path: cutting_pages.write_cutting_pages(
        path, plan, PARTS, CATALOGUE, MILLIMETRES, Shop()),
    "cutting.txt": lambda plan, path: write_cutting_order(
        path, plan, cut_parts(PARTS, CATALOGUE),
        stock_sheets(CATALOGUE, ["ply18", "mdf12"]), samples.SAW, CATALOGUE, MILLIMETRES),
    "bill.csv": lambda plan, path: bill.save_bill(
        path, bill.Bill("x", tuple(PARTS), CATALOGUE, plan)),
}


@pytest.mark.parametrize("name", WRITERS)
def test_a_part_out_of_its_place_is_refused_and_nothing_written(name: str, tmp_path: Path):
    with pytest.raises(LayoutError, match="the plan must not be used"):
        WRITERS[name](broken(), tmp_path / name)
    assert list(tmp_path.iterdir()) == []
