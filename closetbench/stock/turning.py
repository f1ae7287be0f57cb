"""Proofs of a least number of sheets for parts that may be turned, by many pairs of scales.

A plan that escapes one pair of conservative scales (see ``scales``) by turning some parts
may be caught by another: a linear program asks for the mix of ways to lie that needs the
fewest sheets by all pairs so far, and the next pair is sought against that mix, one
direction in turn with the other held. Its prices weigh the pairs; by their weighted mean a
part counts with the lesser of its ways, which is a proof for any weights.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from math import ceil, floor
from typing import Any

import numpy as np

from closetbench.stock.bounds import dual_feasible
from closetbench.stock.grid import Item

_FINENESS = 12_000
"""Steps of a sheet's side in the search for sets that fit; sizes are rounded down to one."""
_SAFETY = 1e-6
_GAIN = 1e-4  # of a sheet: less is not worth another pair of scales
_WAYS = 40  # for a program that counts as one; larger ones count as their size squared
_PAIRS_AT_ONCE = 6
_STARTS = 3
_TURNS = 4
_MOST_PAIRS = 120  # held at once; those that do not bind are dropped beyond it
_HOPE = 0.25
"""Of a sheet: how much scales made to measure have been seen to add to ready-made ones."""


def sharpen_turning(
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
    programs = int(programs * min(1.0, (_WAYS / len({way for i in items for way in i.ways})) ** 2))
    if programs == 0:
        return bound
    ways = _Ways(items, width, height)
    budget = _Budget(programs, going)
    while budget.goes_on():
        value, lying = ways.fewest(budget)
        bound = max(bound, ceil(value - _SAFETY))
        if bound >= enough:
            break
        if ways.add_functions(lying, value):
            continue
        if value < enough - 1 - _HOPE or not ways.add_scales(lying, value, budget):
            break
    return bound


class _Budget:
    """How many linear programs are left."""

    def __init__(self, programs: int, going: Callable[[], bool]) -> None:
        self.left = programs
        self.going = going

    def goes_on(self) -> bool:
        """Whether there may be one more."""
        return self.left > 0 and self.going()


class _Ways:
    """Every way in which a kind of part may lie, and the pairs of scales found so far."""

    def __init__(self, items: Sequence[Item], width: float, height: float) -> None:
        sizes = Counter(item.ways for item in items)
        lies = [
            (kind, x, y)
            for kind, each in enumerate(sizes)
            for x, y, _ in each
            if x <= width and y <= height
        ]
        self.number = np.array(list(sizes.values()), dtype=float)
        self.kind = np.array([kind for kind, _, _ in lies])
        xs, ys = [x for _, x, _ in lies], [y for _, _, y in lies]
        most = self.number[self.kind].astype(int).tolist()
        self.sides = (_Side(xs, most, width), _Side(ys, most, height))
        self.functions = [dual_feasible(xs, width), dual_feasible(ys, height)]
        self.pairs = [np.array(xs) / width * (np.array(ys) / height)]
        self.each_kind = np.zeros((len(sizes), len(lies)))
        self.each_kind[self.kind, np.arange(len(lies))] = 1.0

    def fewest(self, budget: _Budget) -> tuple[float, Any]:
        """Sheets needed by all pairs, and how many of each kind lie which way to need them."""
        from scipy.optimize import linprog  # half a second to import, and seldom needed

        budget.left -= 1
        pairs, ways = np.array(self.pairs), len(self.kind)
        answer = linprog(
            np.append(np.zeros(ways), 1.0),
            A_ub=np.hstack([pairs, -np.ones((len(pairs), 1))]),
            b_ub=np.zeros(len(pairs)),
            A_eq=np.hstack([self.each_kind, np.zeros((len(self.each_kind), 1))]),
            b_eq=self.number,
            bounds=(0.0, None),
            method="highs",
        )
        if not answer.success:
            budget.left = 0
            return 0.0, np.zeros(ways)
        weights = np.clip(-answer.ineqlin.marginals, 0.0, None)
        mean = weights @ pairs / max(float(weights.sum()), _SAFETY)
        least = np.full(len(self.number), np.inf)
        np.minimum.at(least, self.kind, mean)
        if len(self.pairs) > _MOST_PAIRS:
            recent = len(self.pairs) - _MOST_PAIRS // 3
            self.pairs = [
                pair
                for i, pair in enumerate(self.pairs)
                if i >= recent or weights[i] > _SAFETY
            ]
        return float(least @ self.number), answer.x[:ways]

    def add_functions(self, lying: Any, value: float) -> bool:
        """Add the pairs of ready-made functions that ask for more sheets than ``value``."""
        across, up = self.functions
        chosen, worth = self._best_partners(lying)
        order = np.argsort(-worth, kind="stable")[:_PAIRS_AT_ONCE]
        found = [across[i] * up[chosen[i]] for i in order if worth[i] > value + _GAIN]
        self.pairs += found
        return bool(found)

    def add_scales(self, lying: Any, value: float, budget: _Budget) -> bool:
        """Add pairs of scales made for this mix; whether any asks for more than ``value``."""
        across, up = self.functions
        chosen, worth = self._best_partners(lying)
        found = False
        for start in np.argsort(-worth, kind="stable")[:_STARTS]:
            pair = [across[start], up[chosen[start]]]
            last = 0.0
            for turn in range(_TURNS):
                axis = turn % 2
                pair[axis] = self.sides[axis].best(lying * pair[1 - axis], budget)
                reached = float(lying @ (pair[0] * pair[1]))
                if reached < last + _GAIN:
                    break
                last = reached
            if last > value + _GAIN:
                self.pairs.append(pair[0] * pair[1])
                found = True
            if budget.left <= 0:
                break
        return found

    def _best_partners(self, lying: Any) -> tuple[Any, Any]:
        across, up = self.functions
        products = (across * lying) @ up.T
        chosen = products.argmax(axis=1)
        return chosen, products[np.arange(len(products)), chosen]


class _Side:
    """The scales of one direction; a value for each way to lie."""

    def __init__(self, lengths: list[float], most: list[int], full: float) -> None:
        sizes, index = np.unique(np.array(lengths), return_inverse=True)
        self.index = index
        self.share = sizes / full
        self.fineness = floor(min(float(_FINENESS), full))
        scale = min(float(_FINENESS), full) / full
        self.steps = [floor(size * scale + 1e-9) for size in sizes.tolist()]
        counts = np.zeros(len(sizes), dtype=int)
        np.add.at(counts, index, most)
        self.most = np.minimum(counts, np.floor(full / sizes).astype(int)).tolist()
        self.sets: list[list[int]] = []

    def best(self, gains: Any, budget: _Budget) -> Any:
        """The scale that makes the sum of its values x ``gains`` most, as far as found."""
        from scipy.optimize import linprog

        from closetbench.stock.knapsack import fullest

        gain = np.bincount(self.index, weights=gains, minlength=len(self.share))
        found, value = self.share, float(gain @ self.share)
        while budget.goes_on():
            budget.left -= 1
            answer = linprog(
                -gain,
                A_ub=np.array(self.sets, dtype=float) if self.sets else None,
                b_ub=np.ones(len(self.sets)) if self.sets else None,
                bounds=(0.0, 1.0),
                method="highs",
            )
            if not answer.success:
                break
            scale = np.clip(answer.x, 0.0, 1.0)
            worth, chosen = fullest(scale.tolist(), self.steps, self.most, self.fineness)
            scale = scale / max(worth, 1.0)
            reached = float(gain @ scale)
            if reached > value:
                found, value = scale, reached
            if worth <= 1.0 + _SAFETY:
                break
            self.sets.append(chosen)
        return found[self.index]
