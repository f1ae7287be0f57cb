"""Search for the cheapest set of sheets: goal-driven ruin and recreate on cutting trees.

After the idea of Gardeyn and Wauters, "A goal-driven ruin and recreate heuristic for the
2D variable-sized bin packing problem with guillotine constraints", European Journal of
Operational Research, 2022; acceptance by lateness after Burke and Bykov, "The late
acceptance hill-climbing heuristic", European Journal of Operational Research, 2017.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from heapq import nsmallest
from random import Random

from closetbench.stock.clock import Clock, Stop
from closetbench.stock.grid import Item, Kind
from closetbench.stock.plan import SearchEnd
from closetbench.stock.trees import Forest, Node, Tree, keep

_START_WORK = 3_000_000  # on quick builds: all of them for some hundred parts
_LATENESS = 50
_SLACK_WEIGHT = 0.03  # of the squared slacks against the area that found no place
_WHOLE_SHEETS = 0.3  # how often one or two whole sheets are ruined, not some nodes
_MOST_NODES = 12
_FEW_SHEETS = 0.4  # how often nodes are taken from one to three sheets only
_MOST_SHEETS = 3
_LIKE_SIZES = 0.3  # how often parts are taken that have a side alike
_CLIMB = 0.4  # how often the ruin takes the panel around what it was to take
_ONE_WAY = 0.25  # how often parts are held to one way of lying at random
_PATIENCE = 1000  # steps without a new least value before the search starts afresh
_FROM_ANYWHERE = 0.5  # how many of these runs take parts to be ruined from anywhere only
_NO_END = 1_000_000_000
_FRESH = 0.5  # how often it does so from empty sheets
_EASE = 1e-9
_ENDLESS = float("inf")


@dataclass(frozen=True)
class Limits:
    """What a saw allows: ``first`` True for rips first, False for crosscuts, None either."""

    first: bool | None
    stages: int | None


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
        self.cost = _ENDLESS
        self.anywhere = True
        # where any cut may follow any other, a long run from the best does better than new starts
        self.steady = len(kinds) == 1 and limits.first is None and limits.stages is None
        self._started = False
        self.areas = [item.area / self.forest.norm for item in items]
        self.slack_weight = _SLACK_WEIGHT / self.forest.norm**2
        self._near: dict[int, list[int]] = {}
        self.orders = _orders(items)
        self.ranks = [[0] * len(items) for _ in self.orders]
        for rank, order in zip(self.ranks, self.orders, strict=True):
            for place, item in enumerate(order):
                rank[item] = place

    @property
    def proved(self) -> bool:
        """Whether the best set costs no more than the proved least."""
        return self.best is not None and self.cost <= self.least + _EASE

    def run(self, clock: Clock) -> SearchEnd:
        """Search until the least cost is met or the clock ends it.

        Quick builds at the start come in any case, one at least, so that there is a set to
        give unless the stock does not suffice.
        """
        try:
            if not self._started:
                self._start(clock)
            while not self.proved:
                self._pursue(clock)
        except Stop as stop:
            return stop.end
        return SearchEnd.PROVED

    def adopt(self, trees: Sequence[Tree], kind: int) -> None:
        """Take sheets found elsewhere, all of one kind, if they cost less than the best."""
        cost = len(trees) * self.kinds[kind].cost
        if cost < self.cost - _EASE:
            self.cost = cost
            self.best = tuple(replace(tree, kind=kind) for tree in trees)

    def _start(self, clock: Clock) -> None:
        self._started = True
        work = self.forest.work
        for order in self.orders:
            for column, row in ((2.0, 2.0), (1.0, 3.0), (3.0, 1.0)):
                self.forest.plant(())
                if self.place(order, column, row, 0.0, _ENDLESS, _ENDLESS) == []:
                    self._keep_if_better()
                if self.proved:
                    return
                if self.best is not None:
                    clock.look()
                    if self.forest.work - work > _START_WORK:
                        return

    def place(
        self,
        order: Sequence[int],
        column_bias: float,
        row_bias: float,
        one_way: float,
        ceiling: float,
        limit: float,
    ) -> list[int] | None:
        """Insert items in order, opening sheets below the ceiling; the items left over.

        ``one_way``: how often an item is held to one of its ways, taken at random.
        None as soon as it is sure that the value would be above ``limit``.
        """
        forest = self.forest
        random = self.random
        items = self.items
        areas = self.areas
        weight = self.slack_weight
        left: list[int] = []
        lost = 0.0
        failed: set[tuple[tuple[float, float, bool], ...]] = set()
        for item in order:
            ways = items[item].ways
            if ways not in failed:
                size = items[item].area
                place = None
                if one_way > 0.0 and random() < one_way and len(ways) > 1:
                    way = ways[0] if random() < 0.5 else ways[1]
                    place = forest.find((way,), size, column_bias, row_bias)
                if place is None:
                    place = forest.find(ways, size, column_bias, row_bias)
                if place is None and self._open_for(item, ceiling):
                    place = forest.find(ways, size, column_bias, row_bias)
                if place is not None:
                    forest.insert(item, place)
                    continue
                failed.add(ways)
            left.append(item)
            lost += areas[item]
            if lost - weight * forest.squares > limit:
                return None
        return left

    def _open_for(self, item: int, ceiling: float) -> bool:
        """Open a sheet that takes an item and keeps the cost below the ceiling."""
        forest = self.forest
        best, least = -1, _ENDLESS
        for index, kind in enumerate(self.kinds):
            if forest.cost + kind.cost > ceiling - _EASE or forest.used[index] >= kind.quantity:
                continue
            if kind.takes(self.items[item]):
                price = kind.cost / (kind.width * kind.height) * (0.5 + self.random())
                if price < least:
                    best, least = index, price
        if best < 0:
            return False
        forest.open(best, self.random() < 0.5)
        return True

    def _keep_if_better(self) -> None:
        """Put the sheets by if they cost less than the best; they must hold every item."""
        roots = [root for root in self.forest.roots if root.kids]
        cost = sum(self.kinds[root.kind].cost for root in roots)
        if cost < self.cost - _EASE:
            self.cost = cost
            self.best = tuple(keep(root) for root in roots)

    def _pursue(self, clock: Clock) -> None:
        """Ruin and recreate below the best cost until all items have found a place.

        The value made least is the area that has none, less a little for large slacks.
        """
        forest = self.forest
        random = self.random
        left = self._below_best()
        self.anywhere = self.steady or random() < _FROM_ANYWHERE
        patience = _PATIENCE if self.anywhere else 2 * _PATIENCE
        if self.steady:
            patience = _NO_END
        value = sum([self.areas[i] for i in left]) - self.slack_weight * forest.squares
        history = [value] * _LATENESS
        least = value
        step = since = 0
        while left and since < patience:
            work = forest.work
            forest.begin()
            out = left[:]
            self._ruin(out)
            rank = self.ranks[int(random() * random() * len(self.ranks))]
            noise = len(rank) * 0.2 * random()
            turn = {item: rank[item] + noise * random() for item in out}
            out.sort(key=turn.__getitem__)
            column = row = 2.0 if random() < 0.7 else 8.0 * random()
            if random() < 0.3:
                if random() < 0.5:
                    column *= 0.3
                else:
                    row *= 0.3
            one_way = random() if random() < _ONE_WAY else 0.0
            slot = step % _LATENESS
            limit = max(value, history[slot])
            found = self.place(out, column, row, one_way, self.cost, limit)
            if found is not None:
                reached = sum([self.areas[i] for i in found]) - self.slack_weight * forest.squares
                if found and reached > limit:
                    found = None
            if found is None:
                forest.undo()
            else:
                left, value = found, reached
                if value < least - _EASE:
                    least = value
                    since = 0
            history[slot] = value
            step += 1
            since += 1
            clock.tick(forest.work - work + 100)
        if not left:
            self._keep_if_better()

    def _below_best(self) -> list[int]:
        """Start from the best set less what makes it cheaper; the items without a place.

        Every other start is a fresh one, in another order and with another mix of kinds.
        """
        forest = self.forest
        random = self.random
        left: list[int] = []
        column = row = 2.0
        if self.best is None or (not self.steady and random() < _FRESH):
            forest.plant(())
            left = list(self.orders[int(random() * len(self.orders))])
            column, row = 4.0 * random(), 4.0 * random()
        else:
            forest.plant(self.best)
            while forest.roots and forest.cost >= self.cost - _EASE:
                forest.drop(self._to_give_up(), left)
            left.sort(key=self.ranks[0].__getitem__)
        return self.place(left, column, row, 0.0, self.cost, _ENDLESS) or []

    def _to_give_up(self) -> Node:
        """The emptiest sheet; where kinds differ, one by chance, dear and empty ones likelier."""
        roots = self.forest.roots
        empty = [_slack_area(root) / (root.width * root.height) for root in roots]
        if len(self.kinds) == 1:
            return roots[max(range(len(roots)), key=empty.__getitem__)]
        chances = [
            self.random() * self.kinds[root.kind].cost * (0.1 + share)
            for root, share in zip(roots, empty, strict=True)
        ]
        return roots[max(range(len(roots)), key=chances.__getitem__)]

    def _ruin(self, out: list[int]) -> None:
        """Take some nodes, or one or two whole sheets, out of the sheets."""
        forest = self.forest
        random = self.random
        if random() < _WHOLE_SHEETS and forest.roots:
            for _ in range(1 + (random() < 0.5)):
                root = forest.roots[int(random() * len(forest.roots))]
                if len(self.kinds) > 1:
                    forest.drop(root, out)
                    if not forest.roots:
                        return
                else:
                    for kid in root.kids[:]:
                        forest.ruin(kid, out)
            return
        for item in self._picks(1 + int(random() * random() * _MOST_NODES), out):
            node = forest.leaf[item]
            if node is None:
                continue
            while random() < _CLIMB and node.parent is not None and node.parent.parent is not None:
                node = node.parent
            forest.ruin(node, out)

    def _picks(self, count: int, out: Sequence[int]) -> list[int]:
        """Items to be ruined: from a few sheets, of like size, or from anywhere."""
        random = self.random
        forest = self.forest
        items = len(forest.leaf)
        how = 1.0 if self.anywhere else random()
        if how < _FEW_SHEETS and forest.roots:
            pool: list[int] = []
            for _ in range(1 + int(random() * _MOST_SHEETS)):
                pool += items_on(forest.roots[int(random() * len(forest.roots))])
            return [pool[int(random() * len(pool))] for _ in range(count)] if pool else []
        if how < _FEW_SHEETS + _LIKE_SIZES:
            first = int(random() * items)
            if out and random() < 0.5:
                first = out[int(random() * len(out))]
            alike = self._alike(first)[: 3 * count]
            return [alike[int(random() * len(alike))] for _ in range(count)]
        return [int(random() * items) for _ in range(count)]

    def _alike(self, item: int) -> list[int]:
        """The items that have a side most like one of this item's, itself first."""
        found = self._near.get(item)
        if found is None:
            x, y, _ = self.items[item].ways[0]

            def gap(other: int) -> float:
                u, v, _ = self.items[other].ways[0]
                return min(abs(x - u), abs(x - v), abs(y - u), abs(y - v))

            found = nsmallest(3 * _MOST_NODES, range(len(self.items)), key=gap)
            self._near[item] = found
            self.forest.work += 10 * len(self.items)
        return found


def items_on(node: Node | Tree) -> list[int]:
    """The items of a node and of all below it."""
    nodes: list[Node | Tree] = [node]
    found = []
    while nodes:
        node = nodes.pop()
        if node.item >= 0:
            found.append(node.item)
        else:
            nodes += node.kids
    return found


def _slack_area(node: Node) -> float:
    if node.item >= 0:
        return 0.0
    own = node.slack * (node.height if node.along else node.width)
    return own + sum(_slack_area(kid) for kid in node.kids)


def _orders(items: Sequence[Item]) -> list[list[int]]:
    """The items in five orders in which large ones come first."""
    sides = [item.ways[0][:2] for item in items]
    measures: list[list[tuple[float, float]]] = [
        [(x * y, 0.0) for x, y in sides],
        [(max(x, y), min(x, y)) for x, y in sides],
        [(min(x, y), max(x, y)) for x, y in sides],
        [(x + y, x * y) for x, y in sides],
        [(y, x) for x, y in sides],
    ]
    return [
        sorted(range(len(items)), key=[(-major, -minor) for major, minor in sizes].__getitem__)
        for sizes in measures
    ]
