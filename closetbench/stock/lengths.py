"""Cutting lengths from boards, tubes and poles: which to buy, and what to cut from each.

One-dimensional cutting stock with kerf, several stock lengths and defects, solved exactly
while there are not too many ways to fill a stock length: all fillings to which nothing
more can be added are listed, and an integer program chooses among them. Where there are
too many, only those are made that the prices of a linear program ask for (Gilmore and
Gomory, "A linear programming approach to the cutting-stock problem", Operations Research
9, 1961), and the plan may take one length more than the least. More sizes than that is quick for
are cut the longest first; no plan is worse than that one.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil
from typing import Any

import numpy as np

from closetbench.core.errors import LayoutError
from closetbench.stock.grid import PER_MM, down, up
from closetbench.stock.knapsack import fullest
from closetbench.stock.length_checks import check_lengths, require_valid_lengths
from closetbench.stock.length_plan import (
    BarPlan,
    LengthCut,
    LengthNeed,
    LengthPlan,
    StockLength,
    clear_stretches,
)

_MOST_FILLINGS = 3000
_ROUNDS = 200
_MOST_SIZES = 120
"""Beyond so many sizes the prices take too many rounds."""
_FINENESS = 10_000
_SECONDS = 10.0
_PIECE_PENALTY = 1e-5
"""Of the dearest stock: between plans of equal cost, that with fewer pieces is better."""


def plan_lengths(
    needs: Sequence[LengthNeed], stock: Sequence[StockLength], kerf: float
) -> LengthPlan:
    """Plan the cheapest stock lengths that give all pieces.

    Where a stock of a material has no price, all of that material cost their length. The plan is
    verified. Raises LayoutError where input contradicts itself or the stock does not suffice.
    """
    check_lengths(needs, stock, kerf)
    bars: list[BarPlan] = []
    proved: dict[str, bool] = {}
    for material in dict.fromkeys(need.material for need in needs):
        mine = [need for need in needs if need.material == material]
        group = [s for s in stock if s.material == material and s.quantity != 0]
        filled, sure = _Material(mine, group, kerf).solve()
        proved[material] = sure
        filled.sort(key=lambda pair: (pair[0].key, -sum(c.end - c.start for c in pair[1])))
        bars += [
            BarPlan(f"L{n}", each, tuple(cuts))
            for n, (each, cuts) in enumerate(filled, len(bars) + 1)
        ]
    short = tuple(dict.fromkeys(
        s.material for s in stock
        if s.material in proved and s.cost is None and not s.offcut and s.quantity != 0
    ))
    plan = LengthPlan(tuple(bars), proved, short)
    require_valid_lengths(plan, needs, stock, kerf)
    return plan


@dataclass(frozen=True)
class _Column:
    """A filling of one stretch of a kind of stock: how many of each size."""

    kind: int
    place: int
    filling: tuple[int, ...]


class _Material:
    """All needs and stock of one material, in nanometres."""

    def __init__(
        self, needs: Sequence[LengthNeed], stock: Sequence[StockLength], kerf: float
    ) -> None:
        self.needs = needs
        self.stock = stock
        self.kerf = up(kerf)
        counted = Counter(up(need.length) for need in needs)
        self.sizes = sorted(counted, reverse=True)
        self.demand = [counted[size] for size in self.sizes]
        self.stretches = [
            [(up(a), down(b)) for a, b in clear_stretches(each, kerf)] for each in stock
        ]
        priced = all(s.cost is not None or s.offcut for s in stock)
        self.costs = [
            0.0 if s.offcut else float(s.cost or 0.0) if priced else s.length / 1000 for s in stock
        ]

    def solve(self) -> tuple[list[tuple[StockLength, list[LengthCut]]], bool]:
        """The stock lengths with their pieces, and whether they are sure to cost least."""
        alone = self._one_alone()
        if alone is not None:
            return self._deal(*alone), True
        simple = self._longest_first()
        if len(self.sizes) > _MOST_SIZES and simple is not None:
            return self._deal(*simple), self._costs_least(simple[0])
        columns: list[_Column] = []
        whole = True
        for kind, stretches in enumerate(self.stretches):
            for place, (low, high) in enumerate(stretches):
                fillings, complete = self._fillings(high - low)
                whole &= complete
                columns += [_Column(kind, place, filling) for filling in fillings]
        if not whole:
            if simple is not None and self._costs_least(simple[0]):
                return self._deal(*simple), True
            columns = self._generated()
        found = self._program(columns)
        if simple is not None and (found is None or self._cost(simple[0]) < self._cost(found[0])):
            return self._deal(*simple), False
        if found is None:
            raise self._too_little()
        bars, used, optimal = found
        return self._deal(bars, used), whole and optimal

    def _cost(self, bars: Sequence[int]) -> float:
        return sum(n * cost for n, cost in zip(bars, self.costs, strict=True))

    def _costs_least(self, bars: Sequence[int]) -> bool:
        """Whether these cost no more than the cheapest stock that is long enough all together."""
        from scipy.optimize import Bounds, LinearConstraint, milp

        total = sum((size + self.kerf) * n for size, n in zip(self.sizes, self.demand, strict=True))
        # shares of the whole keep the numbers near 1
        room = [sum(b - a + self.kerf for a, b in each) / total for each in self.stretches]
        most = [np.inf if s.quantity is None else float(s.quantity) for s in self.stock]
        answer = milp(
            np.array(self.costs), integrality=np.ones(len(room)), bounds=Bounds(0, most),
            constraints=LinearConstraint(np.array([room]), lb=1.0 - 1e-9, ub=np.inf),
            options={"time_limit": 1.0, "mip_rel_gap": 0.0},
        )
        return answer.status == 0 and self._cost(bars) <= float(answer.fun) + 1e-6

    def _longest_first(self) -> tuple[list[int], dict[_Column, int]] | None:
        """Each length filled with the longest pieces that still go in, those at hand first,
        then one kind that is bought, then what else is needed; the cheapest of these."""
        kinds = range(len(self.stock))
        at_hand = [k for k in kinds if self.stock[k].offcut]
        bought = [k for k in kinds if k not in at_hand]
        by_length = sorted(bought, key=lambda k: -self.stock[k].length)
        found = [
            self._filled([*at_hand, *first, *(k for k in by_length if k not in first)])
            for first in ([k] for k in bought)
        ] or [self._filled(at_hand)]
        whole = [each for each in found if each is not None]
        return min(whole, key=lambda each: self._cost(each[0]), default=None)

    def _filled(self, kinds: Sequence[int]) -> tuple[list[int], dict[_Column, int]] | None:
        """Kinds of stock filled in this order; None where they do not suffice."""
        waiting, bars = list(self.demand), [0] * len(self.stock)
        used: Counter[_Column] = Counter()
        for kind in kinds:
            quantity = self.stock[kind].quantity
            while any(waiting) and (quantity is None or bars[kind] < quantity):
                fillings = [self._fill(waiting, high - low) for low, high in self.stretches[kind]]
                if not any(map(any, fillings)):
                    break
                bars[kind] += 1
                used.update(
                    _Column(kind, place, filling)
                    for place, filling in enumerate(fillings) if any(filling)
                )
        return None if any(waiting) else (bars, dict(used))

    def _fill(self, waiting: list[int], length: int) -> tuple[int, ...]:
        """The longest pieces waiting that go into a stretch one after the other; they are
        taken away."""
        left, filling = length + self.kerf, [0] * len(self.sizes)
        for index, size in enumerate(self.sizes):
            take = min(waiting[index], left // (size + self.kerf))
            if take:
                filling[index] = take
                waiting[index] -= take
                left -= take * (size + self.kerf)
        return tuple(filling)

    def _one_alone(self) -> tuple[list[int], dict[_Column, int]] | None:
        """One length of the cheapest kind, where all pieces go into a stretch of it."""
        least = min(self.costs)
        kinds = [kind for kind, cost in enumerate(self.costs) if cost == least]
        total = sum((size + self.kerf) * n for size, n in zip(self.sizes, self.demand, strict=True))
        for kind in sorted(kinds, key=lambda k: self.stock[k].length):
            for place, (low, high) in enumerate(self.stretches[kind]):
                if total <= high - low + self.kerf:
                    bars = [int(k == kind) for k in range(len(self.stock))]
                    return bars, {_Column(kind, place, tuple(self.demand)): 1}
        return None

    def _program(
        self, columns: Sequence[_Column]
    ) -> tuple[list[int], dict[_Column, int], bool] | None:
        """The cheapest choice among fillings: bars of each kind, uses of each, if the best.
        None where none was found."""
        from scipy.optimize import Bounds, LinearConstraint, milp

        kinds = len(self.stock)
        gives, within = self._matrices(columns)
        most = [float(min(len(self.needs), s.quantity or len(self.needs))) for s in self.stock]
        answer = milp(
            np.array(self._prices() + [0.0] * len(columns)),
            constraints=[
                LinearConstraint(gives, lb=self.demand, ub=np.inf),
                LinearConstraint(within, lb=-np.inf, ub=0.0),
            ],
            integrality=np.ones(kinds + len(columns)),
            bounds=Bounds(0, most + [np.inf] * len(columns)),
            options={"time_limit": _SECONDS, "mip_rel_gap": 0.0},
        )
        if answer.x is None:
            return None
        chosen = np.rint(answer.x).astype(int).tolist()
        used = {column: n for column, n in zip(columns, chosen[kinds:], strict=True) if n}
        return chosen[:kinds], used, answer.status == 0

    def _prices(self) -> list[float]:
        dearest = max(self.costs) or 1.0
        return [cost + _PIECE_PENALTY * dearest for cost in self.costs]

    def _matrices(self, columns: Sequence[_Column]) -> tuple[Any, Any]:
        """Rows of sizes given, and of stretches filled less stock taken."""
        kinds = len(self.stock)
        stretches = [(k, p) for k, each in enumerate(self.stretches) for p in range(len(each))]
        rows = {stretch: row for row, stretch in enumerate(stretches)}
        gives = np.zeros((len(self.sizes), kinds + len(columns)))
        within = np.zeros((len(rows), kinds + len(columns)))
        for (kind, _), row in rows.items():
            within[row, kind] = -1.0
        for index, column in enumerate(columns, kinds):
            gives[:, index] = column.filling
            within[rows[column.kind, column.place], index] = 1.0
        return gives, within

    def _generated(self) -> list[_Column]:
        """Fillings that the prices of a linear program ask for, one kind after the other."""
        from scipy.optimize import linprog

        columns = self._one_size_each()
        kinds = len(self.stock)
        for _ in range(_ROUNDS):
            gives, within = self._matrices(columns)
            answer = linprog(
                np.array(self._prices() + [0.0] * len(columns)),
                A_ub=np.vstack([-gives, within]),
                b_ub=np.concatenate([-np.array(self.demand, dtype=float), np.zeros(len(within))]),
                bounds=[(0, s.quantity) for s in self.stock] + [(0, None)] * len(columns),
                method="highs",
            )
            if not answer.success:
                break
            duals = -answer.ineqlin.marginals
            worth = duals[: len(self.sizes)].tolist()
            fresh = []
            row = len(self.sizes)
            for kind in range(kinds):
                for place, (low, high) in enumerate(self.stretches[kind]):
                    gain, filling = self._worth_most(worth, high - low)
                    if gain > duals[row] + 1e-7:
                        fresh.append(_Column(kind, place, tuple(filling)))
                    row += 1
            fresh = [column for column in fresh if column not in columns]
            if not fresh:
                break
            columns += fresh
        return columns

    def _one_size_each(self) -> list[_Column]:
        found = []
        for kind, stretches in enumerate(self.stretches):
            for place, (low, high) in enumerate(stretches):
                for i, size in enumerate(self.sizes):
                    count = min(self.demand[i], (high - low + self.kerf) // (size + self.kerf))
                    if count:
                        filling = [0] * len(self.sizes)
                        filling[i] = count
                        found.append(_Column(kind, place, tuple(filling)))
        return found

    def _worth_most(self, worth: list[float], length: int) -> tuple[float, list[int]]:
        """The filling worth most, with sizes rounded up to a ten-thousandth of the stretch."""
        room = length + self.kerf
        step = ceil(room / _FINENESS)
        steps = [ceil((size + self.kerf) / step) for size in self.sizes]
        return fullest(worth, steps, self.demand, room // step)

    def _fillings(self, length: int) -> tuple[list[tuple[int, ...]], bool]:
        """Numbers of each size that fill a stretch so that nothing more goes in.

        Stops when there are too many; the second value says whether all are there.
        """
        found: list[tuple[int, ...]] = []
        room = length + self.kerf
        smallest = self.sizes[-1] + self.kerf
        counts = [0] * len(self.sizes)

        def fill(index: int, left: int) -> bool:
            if len(found) >= _MOST_FILLINGS:
                return False
            if index == len(self.sizes) or left < smallest:
                if any(counts) and not any(
                    self.sizes[i] + self.kerf <= left and counts[i] < self.demand[i]
                    for i in range(len(self.sizes))
                ):
                    found.append(tuple(counts))
                return True
            each = self.sizes[index] + self.kerf
            complete = True
            for count in range(min(self.demand[index], left // each), -1, -1):
                counts[index] = count
                complete &= fill(index + 1, left - count * each)
            counts[index] = 0
            return complete

        return found, fill(0, room)

    def _deal(
        self, bars: list[int], used: dict[_Column, int]
    ) -> list[tuple[StockLength, list[LengthCut]]]:
        """Give each filling its pieces by name; fillings may hold more than is needed."""
        waiting = {size: [n.key for n in self.needs if up(n.length) == size] for size in self.sizes}
        exact = {need.key: need.length for need in self.needs}
        dealt = []
        for kind, count in enumerate(bars):
            places: list[list[tuple[int, ...]]] = [[] for _ in self.stretches[kind]]
            for column, times in used.items():
                if column.kind == kind:
                    places[column.place] += [column.filling] * times
            for number in range(count):
                cuts = []
                for (low, _), fillings in zip(self.stretches[kind], places, strict=True):
                    at = low
                    for size, take in zip(
                        self.sizes, fillings[number] if number < len(fillings) else (), strict=False
                    ):
                        for _ in range(min(take, len(waiting[size]))):
                            key = waiting[size].pop(0)
                            start = at / PER_MM
                            cuts.append(LengthCut(key, start, start + exact[key]))
                            at += size + self.kerf
                if cuts:
                    dealt.append((self.stock[kind], cuts))
        return dealt

    def _too_little(self) -> LayoutError:
        have = ", ".join(f"{s.quantity} of {s.key}" for s in self.stock)
        total = sum(need.length for need in self.needs) / 1000
        return LayoutError(
            f"material {self.needs[0].material}", "stock lengths", have,
            f"they do not give {len(self.needs)} pieces of {total:.2f} m in all; add some",
        )  # fmt: skip


def least_count(needs: Sequence[LengthNeed], length: float, kerf: float) -> int:
    """Stock of one length that so many pieces need at least, by their sum alone."""
    total = sum(need.length + kerf for need in needs)
    return ceil(total / (length + kerf) - 1e-9)
