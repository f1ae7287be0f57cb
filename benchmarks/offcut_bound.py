"""An offcut that no plan on so many sheets can exceed, to set what was reached beside.

The offcut is a part more: whatever proves that the parts with it need another sheet proves
that it is too large. Proofs are by dual feasible functions (see closetbench.stock.bounds),
with the kerf added to parts, offcut and sheet. Widths and heights of the offcut are tried on
a lattice, made finer where it matters. Where one is refused, so is all that is as wide and
as high, which leaves the rectangles up to the next step beyond those allowed. A saw can do
less than that: the number of stages is left out of account.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from math import sqrt
from typing import Any

import numpy as np

from closetbench.stock.bounds import dual_feasible
from closetbench.stock.grid import Grid, make_grid
from closetbench.stock.plan import CutPart, StockSheet

_STEPS = 48
_ROUNDS = 3
_FINER = 4
_SLIP = 1e-6  # of a sheet: what the sums may lose


def most_offcut(
    parts: Sequence[CutPart], sheet: StockSheet, kerf: float, sheets: int
) -> float:
    """No plan of the parts on so many of the sheets leaves a larger offcut; in m²."""
    grid = make_grid(parts, [sheet], kerf)
    blade = grid.kerf / grid.step
    most = _by_area(grid, blade, sheets)
    if most > 0.0:
        most = min(most, _by_functions(grid, blade, sheets))
    return most * (grid.step * 1e-9) ** 2


def _by_area(grid: Grid, blade: float, sheets: int) -> float:
    """The squarest rectangle of all the area that is left, in steps squared."""
    low, high = sorted(grid.sizes[0])
    free = max(0.0, sheets * low * high - sum(item.area for item in grid.items))
    side = min(low, sqrt(free))
    other = min(high, free / side) if side else 0.0
    return max(0.0, side - blade) * max(0.0, other - blade)


def _by_functions(grid: Grid, blade: float, sheets: int) -> float:
    lattice = [np.linspace(0.0, side, _STEPS + 1) for side in grid.sizes[0]]
    most = np.inf
    for _ in range(_ROUNDS):
        allowed = _allowed(grid, lattice, sheets)
        beyond = [np.append(side[1:], side[-1]) for side in lattice]
        areas = _areas(beyond, blade)
        most = min(most, areas[allowed].max(initial=0.0))
        # finer only where an allowed rectangle may grow beyond all that are allowed as they are
        open_ = allowed & (areas > _areas(lattice, blade)[allowed].max(initial=0.0))
        for axis, side in enumerate(lattice):
            at = np.flatnonzero(open_.any(axis=1 - axis))
            more = [side[at] + (beyond[axis][at] - side[at]) * i / _FINER for i in range(1, _FINER)]
            lattice[axis] = np.unique(np.concatenate([side, *more]))
    return float(most)


def _areas(sides: Sequence[Any], blade: float) -> Any:
    return np.maximum(sides[0] - blade, 0.0)[:, None] * np.maximum(sides[1] - blade, 0.0)


def _allowed(grid: Grid, lattice: Sequence[Any], sheets: int) -> Any:
    """Which rectangles nothing proves too large beside the parts: an array [width, height]."""
    full = grid.sizes[0]
    counts = Counter(item.ways for item in grid.items)
    number = np.array(list(counts.values()), dtype=float)
    ways = [[each[0] for each in counts], [each[-1] for each in counts]]
    fits = [[x <= full[0] and y <= full[1] for x, y, _ in lying] for lying in ways]
    kinds = len(counts)
    # the same functions for the first way of each part, for its last, and for the lattice;
    # nothing is as low as 0, which every function leaves at 0
    across, up = (
        dual_feasible(
            [way[axis] for lying in ways for way in lying] + lattice[axis][1:].tolist(), full[axis]
        )
        for axis in (0, 1)
    )
    allowed = np.ones((len(lattice[0]), len(lattice[1])), dtype=bool)
    heights = up[:, 2 * kinds :]
    for function in across:
        needed = np.minimum(*(
            np.where(fit, function[at : at + kinds] * up[:, at : at + kinds], np.inf)
            for at, fit in zip((0, kinds), fits, strict=True)
        ))  # fmt: skip
        left = sheets + _SLIP - needed @ number
        most = np.min(
            left[:, None] / np.maximum(heights, 1e-12), axis=0, where=heights > 0.0,
            initial=np.inf,
        )  # fmt: skip
        allowed[1:, 1:] &= function[2 * kinds :, None] <= most
    return allowed
