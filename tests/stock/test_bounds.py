"""Lower bounds: never above what brute force needs, and sharp where it is known."""

from __future__ import annotations

from itertools import product
from pathlib import Path
from random import Random

import numpy as np
import pytest

from closetbench.stock.bounds import _functions, least_cost, least_sheets
from closetbench.stock.grid import Item, Kind, make_grid
from closetbench.stock.part_lists import read_part_list
from closetbench.stock.scales import sharpen
from closetbench.stock.turning import sharpen_turning

JOBS = Path(__file__).parents[2] / "benchmarks" / "jobs"


def item(x: float, y: float, turns: bool = True) -> Item:
    ways = ((x, y, False), (y, x, True)) if turns and x != y else ((x, y, False),)
    return Item(ways, x * y)


def fits_one(sizes: list[tuple[int, int]], width: int, height: int) -> bool:
    """Whether rectangles fit a sheet without overlap, by trying every place on the grid."""
    order = sorted(sizes, key=lambda s: -s[0] * s[1])
    taken = np.zeros((width, height), dtype=bool)

    def put(index: int) -> bool:
        if index == len(order):
            return True
        for dx, dy in {order[index], order[index][::-1]}:
            for x, y in product(range(width - dx + 1), range(height - dy + 1)):
                if not taken[x : x + dx, y : y + dy].any():
                    taken[x : x + dx, y : y + dy] = True
                    if put(index + 1):
                        return True
                    taken[x : x + dx, y : y + dy] = False
        return False

    return put(0)


def sheets_needed(sizes: list[tuple[int, int]], width: int, height: int) -> int:
    """The least number of sheets by trying every way to deal the rectangles out."""
    best = len(sizes)

    def deal(index: int, sheets: list[list[tuple[int, int]]]) -> None:
        nonlocal best
        if len(sheets) >= best:
            return
        if index == len(sizes):
            best = len(sheets)
            return
        for sheet in sheets:
            sheet.append(sizes[index])
            if fits_one(sheet, width, height):
                deal(index + 1, sheets)
            sheet.pop()
        deal(index + 1, [*sheets, [sizes[index]]])

    deal(0, [])
    return best


@pytest.mark.parametrize("seed", range(25))
def test_no_bound_is_above_what_brute_force_needs(seed):
    random = Random(seed)
    width, height = random.randint(4, 7), random.randint(3, 6)
    sizes = [
        (random.randint(1, min(width, height)), random.randint(1, min(width, height)))
        for _ in range(random.randint(3, 5))
    ]
    needed = sheets_needed(sizes, width, height)
    items = [item(float(x), float(y)) for x, y in sizes]
    bound = least_sheets(items, [Kind(float(width), float(height), 1.0, 100)])
    assert 1 <= bound <= needed
    sharp = sharpen(items, float(width), float(height), bound, needed + 1, 200, lambda: True)
    assert bound <= sharp <= needed
    turning = sharpen_turning(items, float(width), float(height), bound, needed + 1, 200,
                              lambda: True)  # fmt: skip
    assert bound <= turning <= needed


def test_every_function_is_dual_feasible():
    """No set of sizes that fits the full length is worth more than 1."""
    full = 30
    sizes = list(range(1, full + 1))
    rows = _functions([float(s) for s in sizes], [float(s) for s in sizes], float(full))[:, 0]
    worth = np.zeros((len(rows), full + 1))
    for size in sizes:
        for length in range(size, full + 1):
            worth[:, length] = np.maximum(
                worth[:, length], worth[:, length - size] + rows[:, size - 1]
            )
    assert worth.max() <= 1 + 1e-9


def test_parts_of_more_than_half_need_a_sheet_each():
    # Nine squares of 51 on sheets of 100: area says 3, but no two fit side by side.
    items = [item(51.0, 51.0)] * 9
    assert least_sheets(items, [Kind(100.0, 100.0, 1.0, 100)]) == 9


def test_parts_of_more_than_a_third_with_grain():
    # 34 of 100: two side by side, two on top of each other.
    items = [item(34.0, 34.0, turns=False)] * 9
    assert least_sheets(items, [Kind(100.0, 100.0, 1.0, 100)]) == 3


def test_conservative_scales_prove_what_no_pair_of_functions_does():
    # Five of 40 x 25 have less area than 100 x 60, yet 40s and 25s leave 10 to 20 over
    # whichever way they are mixed, along and across.
    items = [item(40.0, 25.0)] * 5
    assert least_sheets(items, [Kind(100.0, 60.0, 1.0, 100)]) == 1
    assert sharpen(items, 100.0, 60.0, 1, 2, 200, lambda: True) == 2
    assert sharpen(items, 100.0, 60.0, 1, 2, 200, lambda: False) == 1


def test_turning_that_escapes_each_pair_of_scales_alone_is_caught_by_several():
    """One group of an invented job: each pair of functions is met by turning some parts."""
    listed = read_part_list(JOBS / "job_33.json")
    grid = make_grid(
        [part for part in listed.parts if part.material == "6"],
        [sheet for sheet in listed.sheets if sheet.material == "6"],
        3.2,
    )
    (width, height), = grid.tight
    assert least_sheets(grid.items, [Kind(width, height, 1.0, 100)]) == 4
    assert sharpen(grid.items, width, height, 4, 5, 400, lambda: True) == 4
    assert sharpen_turning(grid.items, width, height, 4, 5, 400, lambda: True) == 5


def test_several_kinds_are_counted_by_area_largest_first():
    items = [item(10.0, 10.0)] * 30
    kinds = [Kind(50.0, 20.0, 1.0, 2), Kind(10.0, 10.0, 0.2, 100)]
    assert least_sheets(items, kinds) == 12
    assert least_cost(items, kinds, 12) == pytest.approx(1.0 * 2 + 0.2 * 10)


def test_free_offcuts_lower_the_least_cost_to_whole_bought_sheets():
    items = [item(10.0, 10.0)] * 30
    kinds = [Kind(50.0, 20.0, 1.0, 100), Kind(50.0, 10.0, 0.0, 1)]
    assert least_cost(items, kinds, 3) == 3.0


def test_items_that_lie_on_no_offcut_need_bought_sheets():
    items = [item(45.0, 15.0), item(10.0, 10.0)]
    kinds = [Kind(50.0, 20.0, 1.0, 100), Kind(40.0, 40.0, 0.0, 5)]
    assert least_cost(items, kinds, 1) == 1.0
    assert least_cost(items[1:], kinds, 1) == 0.0
