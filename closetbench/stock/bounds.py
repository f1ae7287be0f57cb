"""Proved least numbers of sheets, by dual feasible functions.

Fekete and Schepers, "New classes of fast lower bounds for bin packing problems",
Mathematical Programming 91 (2001), and "A general framework for bounds for
higher-dimensional orthogonal packing problems", Mathematical Methods of Operations
Research 60 (2004): where f and g are dual feasible, the sum of f(width) g(height) over
the parts is at most the number of sheets. A part that may be turned counts with the
smaller of its two products. The third family is by Carlier, Clautiaux and Moukrim,
"New reduction procedures and lower bounds for the two-dimensional bin packing problem
with fixed orientation", Computers and Operations Research 34 (2007).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from math import ceil
from typing import Any

import numpy as np

from closetbench.stock.grid import Item, Kind

_MOST_MARKS = 160
_MOST_PRODUCTS = 4e7
"""Of functions of widths, of heights and parts, all against all; a tenth of a second."""
_FUNCTIONS_EACH = 3  # for a mark
_EASE = 1e-9


def least_sheets(items: Sequence[Item], kinds: Sequence[Kind]) -> int:
    """A number of sheets below which no plan can be, 0 for no items.

    With several kinds of sheet each is taken as large as the largest in width and
    height; besides, the largest sheets are counted up to the area of the items.
    """
    if not items:
        return 0
    width = max(kind.width for kind in kinds)
    height = max(kind.height for kind in kinds)
    return max(_by_area(items, kinds), _by_functions(items, width, height))


def least_cost(items: Sequence[Item], kinds: Sequence[Kind], sheets: int) -> float:
    """A cost below which no plan can be, given a proved least number of sheets.

    The area at the best price per area, and the least sheets at the lowest price each;
    where only one kind costs anything, its sheets are whole. Items that lie on no kind
    that is free need sheets that are not, whatever the other items do.
    """
    area = sum(item.area for item in items)
    spent = 0.0
    left = area
    for kind in sorted(kinds, key=lambda k: k.cost / (k.width * k.height)):
        each = kind.width * kind.height
        count = min(left / each, float(kind.quantity))
        spent += count * kind.cost
        left -= count * each
        if left <= 0.0:
            break
    costs = sorted((kind.cost, kind.quantity) for kind in kinds)
    by_count = 0.0
    for cost, quantity in costs:
        take = min(sheets, quantity)
        by_count += take * cost
        sheets -= take
    least = max(spent, by_count)
    paid = [cost for cost, _ in costs if cost > 0.0]
    if len(paid) == 1:
        least = max(least, ceil(least / paid[0] - _EASE) * paid[0])
    free = [kind for kind in kinds if kind.cost == 0.0]
    dear = [kind for kind in kinds if kind.cost > 0.0]
    if free and dear:
        bound = [item for item in items if not any(kind.takes(item) for kind in free)]
        least = max(least, least_cost(bound, dear, least_sheets(bound, dear)))
    return least


def _by_area(items: Sequence[Item], kinds: Sequence[Kind]) -> int:
    left = sum(item.area for item in items)
    count = 0
    for kind in sorted(kinds, key=lambda k: -k.width * k.height):
        each = kind.width * kind.height
        need = ceil(left / each - _EASE)
        if need <= kind.quantity:
            return count + need
        count += kind.quantity
        left -= kind.quantity * each
    return count


def _by_functions(items: Sequence[Item], width: float, height: float) -> int:
    sizes = Counter(item.ways for item in items)
    first = [ways[0] for ways in sizes]
    last = [ways[-1] for ways in sizes]
    number = np.array(list(sizes.values()), dtype=float)
    across = _functions([w[0] for w in first], [w[0] for w in last], width)
    up = _functions([w[1] for w in first], [w[1] for w in last], height)
    fits = [np.array([w[0] <= width and w[1] <= height for w in side]) for side in (first, last)]
    best = 0.0
    for f_first, f_last in across:
        product = np.minimum(
            np.where(fits[0], f_first * up[:, 0], np.inf),
            np.where(fits[1], f_last * up[:, 1], np.inf),
        )
        best = max(best, float((product @ number).max()))
    return ceil(best - 1e-6)


def dual_feasible(sides: list[float], full: float) -> Any:
    """Values of many dual feasible functions, each once: an array [function, side]."""
    return np.unique(_functions(sides, sides, full)[:, 0], axis=0)


def _functions(first: list[float], last: list[float], full: float) -> Any:
    """Values of many dual feasible functions: an array [function, way, part]."""
    sides = np.array([first, last])
    share = sides / full
    rows = [share]
    for k in range(1, 6):
        scaled = share * (k + 1)
        whole = np.abs(scaled - np.rint(scaled)) < 1e-9
        rows.append(np.where(whole, share, np.floor(scaled) / k))
    marks = sorted({side for side in (*first, *last) if side <= full / 2})
    marks += sorted({full - side for side in (*first, *last) if full / 2 < side < full})
    marks = sorted(set(marks))
    most = min(_MOST_MARKS, int((_MOST_PRODUCTS / len(first)) ** 0.5 / _FUNCTIONS_EACH))
    if len(marks) > most:
        keep = np.linspace(0, len(marks) - 1, most).round().astype(int)
        marks = [marks[i] for i in sorted(set(keep.tolist()))]
    for mark in marks:
        rows.append(np.where(sides > full - mark, 1.0, np.where(sides >= mark, share, 0.0)))
        fold = np.floor(full / mark)
        if fold >= 2:
            low = np.floor(sides / mark)
            high = fold - np.floor((full - sides) / mark)
            middle = fold / 2
            half = np.where(sides > full / 2, high, np.where(sides == full / 2, middle, low))
            rows.append(half / fold)
            rounded = 1.0 - np.floor((full - sides) / mark) / fold
            rows.append(
                np.where(
                    sides > full / 2,
                    rounded,
                    np.where(sides < mark, 0.0, np.where(sides == full / 2, 0.5, 1.0 / fold)),
                )
            )
    return np.array(rows)
