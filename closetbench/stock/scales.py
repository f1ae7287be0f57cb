"""Sharper proofs of a least number of sheets: conservative scales found by linear programs.

Widths and heights are given new values such that whatever lies side by side on a sheet
still adds up to at most 1, and likewise what lies on top of each other; the sum of
width x height over the parts is then at most the number of sheets (Fekete and Schepers,
2004, as in ``bounds``). With the scale of one direction held, the best of the other is a
linear program with one row for each set that fits side by side; sets are added while one
breaks the scale. The two directions are improved in turn (Belov, Kartak, Rohling and
Scheithauer, "Conservative scales in packing problems", OR Spectrum 35, 2013).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from math import ceil, floor
from typing import Any

import numpy as np

from closetbench.stock.grid import Item
from closetbench.stock.knapsack import fullest

_FINENESS = 12_000
"""Steps of a sheet's side in the search for sets that fit; sizes are rounded down to one."""
_KINDS = 250  # for a program that counts as one; larger ones count as their size squared
_SAFETY = 1e-6
_HOPES = (0.8, 0.6, 0.05, 0.05, 0.02, 0.02)
"""By turn: how much of a sheet the next directions have been seen to add to one's optimum."""


def sharpen(
    items: Sequence[Item],
    width: float,
    height: float,
    bound: int,
    enough: int,
    programs: int,
    going: Callable[[], bool],
) -> int:
    """A proved least number of sheets of one size, at least ``bound``.

    Ends at ``enough``, the number that a plan has reached, or where that is out of reach,
    after so many linear ``programs``, or when ``going`` says no.
    """
    sizes = Counter(item.ways for item in items)
    programs = int(programs * min(1.0, (_KINDS / len(sizes)) ** 2))
    if programs == 0:
        return bound
    full = (width, height)
    ways = [
        [(x, y) for x, y, _ in each if x <= width and y <= height] for each in sizes
    ]  # fmt: skip
    side = [_Side(ways, list(sizes.values()), axis, full[axis]) for axis in (0, 1)]
    scale = {y: y / height for each in ways for _, y in each}
    last = 0.0
    for turn, hope in enumerate(_HOPES):
        at = side[turn % 2]
        value, scale = at.best(scale, enough - 1 - hope, programs, going)
        programs -= at.programs
        bound = max(bound, ceil(value - _SAFETY))
        if bound >= enough or programs <= 0 or at.hopeless or value < last + 1e-4:
            break
        last = value
    return bound


class _Side:
    """The scale of one direction: axis 0 along the width, 1 along the height."""

    def __init__(
        self, ways: list[list[tuple[float, float]]], number: list[int], axis: int, full: float
    ) -> None:
        self.ways = ways
        self.number = np.array(number, dtype=float)
        self.axis = axis
        self.sizes = sorted({way[axis] for each in ways for way in each})
        self.index = {size: i for i, size in enumerate(self.sizes)}
        fineness = min(float(_FINENESS), full)
        self.fineness = floor(fineness)
        self.steps = [floor(size * fineness / full + 1e-9) for size in self.sizes]
        most = [0] * len(self.sizes)
        for each, count in zip(ways, number, strict=True):
            for size in {way[axis] for way in each}:
                most[self.index[size]] += count
        self.most = [
            min(count, floor(full / size)) for count, size in zip(most, self.sizes, strict=True)
        ]
        self.sets: list[Any] = []
        self.programs = 0
        self.hopeless = False

    def best(
        self,
        other: dict[float, float],
        target: float,
        programs: int,
        going: Callable[[], bool],
    ) -> tuple[float, dict[float, float]]:
        """The best sum with the other direction's scale, and the scale that gives it.

        ``hopeless`` is set where the best is sure to stay below ``target``.
        """
        from scipy.optimize import linprog  # half a second to import, and seldom needed

        scales, kinds = len(self.sizes), len(self.ways)
        rows = []
        for kind, each in enumerate(self.ways):
            for way in each:
                row = np.zeros(scales + kinds)
                row[scales + kind] = 1.0
                row[self.index[way[self.axis]]] = -other[way[1 - self.axis]]
                rows.append(row)
        products = len(rows)
        gain = np.concatenate([np.zeros(scales), -self.number])
        limits = [(0.0, 1.0)] * scales + [(0.0, None)] * kinds
        value, found = 0.0, np.zeros(scales)
        self.programs = 0
        while self.programs < programs and going():
            self.programs += 1
            answer = linprog(
                gain,
                A_ub=np.array(rows + self.sets),
                b_ub=[0.0] * products + [1.0] * len(self.sets),
                bounds=limits,
                method="highs",
            )
            if not answer.success:
                break
            self.hopeless = -answer.fun < target
            if self.hopeless:
                break
            scale = np.clip(answer.x[:scales], 0.0, 1.0)
            worth, chosen = fullest(scale.tolist(), self.steps, self.most, self.fineness)
            worth = max(worth, 1.0)
            reached = self._sum(scale / worth, other)
            if reached > value:
                value, found = reached, scale / worth
            if worth <= 1.0 + _SAFETY:
                break
            row = np.zeros(scales + kinds)
            row[:scales] = chosen
            self.sets.append(row)
        return value, dict(zip(self.sizes, found.tolist(), strict=True))

    def _sum(self, scale: Any, other: dict[float, float]) -> float:
        total = 0.0
        for each, count in zip(self.ways, self.number, strict=True):
            least = min(scale[self.index[w[self.axis]]] * other[w[1 - self.axis]] for w in each)
            total += float(count * least)
        return total
