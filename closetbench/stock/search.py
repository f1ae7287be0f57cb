"""Search for the cheapest set of sheets: goal-driven ruin and recreate on cutting trees.

After the idea of Gardeyn and Wauters, "A goal-driven ruin and recreate heuristic for the
2D variable-sized bin packing problem with guillotine constraints", European Journal of
Operational Research, 2022; acceptance by lateness after Burke and Bykov, "The late
acceptance hill-climbing heuristic", European Journal of Operational Research, 2017.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import log
from random import Random

from closetbench.stock.grid import Item, Kind
from closetbench.stock.plan import SearchEnd
from closetbench.stock.trees import Forest, Node, Tree, keep

WORK_PER_SECOND = 5_000_000
"""Slacks looked at in a second; set once on a machine of 2020 or so, never measured anew."""
CLOCK_FACTOR = 4.0
"""How much slower than reckoned a machine may be before the clock ends the search."""
_LATENESS = 50
_EASE = 1e-9


@dataclass(frozen=True)
class Limits:
    """What a saw allows: ``first`` True for rips first, False for crosscuts, None either."""

    first: bool | None
    stages: int | None


class Stop(Exception):
    """The search has to end; ``end`` says why."""

    def __init__(self, end: SearchEnd) -> None:
        self.end = end
        super().__init__(end.value)


class Clock:
    """Counts the work done against what is allowed; the real clock is only a guard."""

    def __init__(self, seconds: float, watch: Callable[[float], bool] | None) -> None:
        self.allowed = seconds * WORK_PER_SECOND
        self.spent = 0
        self._watch = watch
        self._deadline = time.monotonic() + 1.0 + seconds * CLOCK_FACTOR
        self._next = 0.0

    def tick(self, work: int) -> None:
        """Add work; raise Stop when the search has to end."""
        self.spent += work
        if self.spent < self._next:
            return
        self._next = self.spent + 0.02 * WORK_PER_SECOND
        if self._watch is not None and not self._watch(min(1.0, self.spent / self.allowed)):
            raise Stop(SearchEnd.CANCELLED)
        if time.monotonic() > self._deadline:
            raise Stop(SearchEnd.CLOCK)
        if self.spent >= self.allowed:
            raise Stop(SearchEnd.BUDGET)


class Search:
    """Finds ever cheaper sheets for the items of one material.

    ``best`` is the cheapest complete set so far, ``cost`` what it costs. ``least`` is a
    proved least cost: the search ends there.
    """

    def __init__(
        self, items: Sequence[Item], kinds: Sequence[Kind], limits: Limits, seed: int, least: float
    ) -> None:
        self.items = items
        self.kinds = kinds
        self.random = Random(seed).random
        self.forest = Forest(items, kinds, limits.first, limits.stages)
        self.least = least
        self.best: tuple[Tree, ...] | None = None
        self.cost = float("inf")
        sides = [item.ways[0][:2] for item in items]
        count = range(len(items))
        self.orders: list[list[int]] = [
            sorted(count, key=[(-first, -then) for first, then in size].__getitem__)
            for size in (
                [(x * y, 0.0) for x, y in sides],
                [(max(x, y), min(x, y)) for x, y in sides],
                [(min(x, y), max(x, y)) for x, y in sides],
                [(x + y, x * y) for x, y in sides],
                [(y, x) for x, y in sides],
            )
        ]
        self.ranks = [[0] * len(items) for _ in self.orders]
        for rank, order in zip(self.ranks, self.orders, strict=True):
            for place, item in enumerate(order):
                rank[item] = place

    def build(self, order: Sequence[int], column_bias: float, row_bias: float) -> list[int]:
        """Fill fresh sheets in one go; the items that no sheet was left for."""
        forest = self.forest
        forest.plant(())
        return self._place(order, column_bias, row_bias, 0.0, float("inf"))

    def _place(
        self,
        order: Sequence[int],
        column_bias: float,
        row_bias: float,
        one_way: float,
        ceiling: float,
    ) -> list[int]:
        """Insert items in order, opening sheets below the ceiling; the items left over.

        ``one_way``: how often an item may lie in only one of its ways, taken at random.
        """
        forest = self.forest
        random = self.random
        items = self.items
        left: list[int] = []
        failed: set[tuple[tuple[float, float, bool], ...]] = set()
        for item in order:
            ways = items[item].ways
            if ways in failed:
                left.append(item)
                continue
            place = None
            if one_way > 0.0 and random() < one_way and len(ways) > 1:
                way = ways[0] if random() < 0.5 else ways[1]
                place = forest.find((way,), column_bias, row_bias)
            if place is None:
                place = forest.find(ways, column_bias, row_bias)
            if place is None and self._open_for(item, ceiling):
                place = forest.find(ways, column_bias, row_bias)
            if place is None:
                failed.add(ways)
                left.append(item)
            else:
                forest.insert(item, place)
        return left

    def _open_for(self, item: int, ceiling: float) -> bool:
        """Open a sheet that takes an item and keeps the cost below the ceiling."""
        forest = self.forest
        best, least = -1, float("inf")
        for index, kind in enumerate(self.kinds):
            if forest.used[index] >= kind.quantity or forest.cost + kind.cost > ceiling - _EASE:
                continue
            if any(x <= kind.width and y <= kind.height for x, y, _ in self.items[item].ways):
                price = kind.cost / (kind.width * kind.height) * (0.5 + self.random())
                if price < least:
                    best, least = index, price
        if best < 0:
            return False
        forest.open(best, self.random() < 0.5)
        return True

    def keep_if_better(self) -> bool:
        """Put the sheets by if they hold every item at less cost than the best."""
        forest = self.forest
        if forest.cost >= self.cost - _EASE:
            return False
        roots = [root for root in forest.roots if root.kids]
        self.cost = sum(self.kinds[root.kind].cost for root in roots)
        self.best = tuple(keep(root) for root in roots)
        return True

    def start(self) -> None:
        """Find the first complete set of sheets, by the best of a few quick builds."""
        for order in self.orders:
            for column, row in ((1.0, 1.0), (1.0, 1.5), (1.5, 1.0)):
                if not self.build(order, column, row):
                    self.keep_if_better()
                if self.proved:
                    return

    @property
    def proved(self) -> bool:
        """Whether the best set costs no more than the proved least."""
        return self.best is not None and self.cost <= self.least + _EASE

    def run(self, clock: Clock) -> SearchEnd:
        """Search until the least cost is met or the clock ends it."""
        try:
            if self.best is None:
                self.start()
            while not self.proved:
                self._pursue(clock)
        except Stop as stop:
            return stop.end
        return SearchEnd.PROVED

    def _pursue(self, clock: Clock) -> None:
        """Ruin and recreate below the best cost until a complete set is found."""
        forest = self.forest
        random = self.random
        left: list[int] = []
        if self.best is None:
            left = list(self.orders[0])
            forest.plant(())
        else:
            forest.plant(self.best)
            while forest.roots and forest.cost >= self.cost - _EASE:
                forest.drop(min(forest.roots, key=self._filling), left)
        unit = 1.0 / forest.norm
        areas = [item.area * unit for item in self.items]
        left = self._place(sorted(left, key=self.ranks[0].__getitem__), 1.0, 1.0, 0.0, self.cost)
        value = sum(areas[i] for i in left) - 0.1 * forest.squares
        history = [value] * _LATENESS
        step = 0
        while left:
            work = forest.work
            forest.begin()
            before = left
            out = left[:]
            for _ in range(1 + int(random() * random() * 12)):
                self._ruin_one(out)
            rank = self.ranks[int(random() * random() * len(self.ranks))]
            noise = len(rank) * 0.2 * random()
            order = sorted(out, key=lambda i: rank[i] + noise * random())
            column = 1.0 if random() < 0.5 else 0.5 + random()
            one_way = random() if random() < 0.25 else 0.0
            left = self._place(order, column, 1.0, one_way, self.cost)
            found = sum([areas[i] for i in left]) - 0.1 * forest.squares
            slot = step % _LATENESS
            if not left or found <= value or found <= history[slot]:
                value = found
            else:
                forest.undo()
                left = before
            history[slot] = value
            step += 1
            clock.tick(forest.work - work + 10)
        self.keep_if_better()

    def _ruin_one(self, out: list[int]) -> None:
        forest = self.forest
        random = self.random
        leaf: Node | None = None
        for _ in range(8):
            leaf = forest.leaf[int(random() * len(forest.leaf))]
            if leaf is not None:
                break
        if leaf is None:
            return
        node = leaf
        while random() < 0.4 and node.parent is not None and node.parent.parent is not None:
            node = node.parent
        forest.ruin(node, out)

    def _filling(self, root: Node) -> float:
        full = root.width * root.height
        return (full - sum(self._slack_area(root))) / full

    def _slack_area(self, node: Node) -> list[float]:
        if node.item >= 0:
            return [0.0]
        own = node.slack * (node.height if node.along else node.width)
        return [own, *(area for kid in node.kids for area in self._slack_area(kid))]


def geometric(random: Callable[[], float], mean: float) -> int:
    """A whole number from 1 on, smaller ones likelier."""
    return 1 + int(-log(1.0 - random()) * (mean - 1.0)) if mean > 1.0 else 1
