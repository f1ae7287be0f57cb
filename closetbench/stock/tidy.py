"""Simpler cutting on the sheets already found: fewer cuts, less sawing, a larger offcut."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from random import Random

from closetbench.stock.clock import Clock, Stop
from closetbench.stock.grid import Grid
from closetbench.stock.plan import CutWeights, SearchEnd
from closetbench.stock.search import Search
from closetbench.stock.trees import Node, Tree, keep

_LATENESS = 200
_MANY_PARTS = 60  # of more than these, less is taken out at once: it takes longer to put back
_RUIN_FEW = (3, 0.5)
_RUIN_MANY = (2, 0.25)
"""At most so many sheets at once, and of each at most this share of its nodes."""
_NEVER = float("-inf")


@dataclass(frozen=True)
class _Score:
    """What a sheet adds: ``sawing`` in points, ``offcut`` its largest rest in m²."""

    sawing: float
    offcut: float


def tidy(search: Search, grid: Grid, weights: CutWeights, seed: int, clock: Clock) -> SearchEnd:
    """Better the search's best set of sheets by ruin and recreate until the clock ends it.

    Every state holds all items on the same sheets; the value made least is the weighted
    sum of cuts and metres sawn less the weighted largest offcut. A sheet that is emptied
    on the way is given back.
    """
    if search.best is None or not any((weights.cuts, weights.length, weights.offcut)):
        return SearchEnd.BUDGET
    work = _Tidy(search, grid, weights, Random(seed))
    try:
        while True:
            work.step(clock)
    except Stop as stop:
        search.best = work.result()
        search.cost = sum(search.kinds[tree.kind].cost for tree in search.best)
        return stop.end


class _Tidy:
    def __init__(self, search: Search, grid: Grid, weights: CutWeights, random: Random) -> None:
        self.search = search
        self.forest = search.forest
        self.random = random.random
        self.weights = weights
        self.metres = grid.step * 1e-9
        self.kerf = grid.kerf / grid.step
        self.forest.plant(search.best or ())
        self.scores = {root: self._score(root) for root in self.forest.roots}
        self.kept = {root: keep(root) for root in self.forest.roots}
        self.changed: set[Node] = set()
        self.value = self.best = self._value(self.scores.values())
        self.history = [self.value] * _LATENESS
        self.steps = 0
        self.most = _RUIN_MANY if len(search.items) > _MANY_PARTS else _RUIN_FEW

    def result(self) -> tuple[Tree, ...]:
        """The best sheets seen, without any that were emptied."""
        return tuple(tree for tree in self.kept.values() if tree.kids)

    def step(self, clock: Clock) -> None:
        """Ruin a little, recreate, and stay there if that is no worse than some time ago."""
        forest, random, search = self.forest, self.random, self.search
        before = forest.work
        forest.begin()
        out: list[int] = []
        self._ruin(out)
        rank = search.ranks[int(random() * random() * len(search.ranks))]
        noise = len(rank) * 0.3 * random()
        turn = {item: rank[item] + noise * random() for item in out}
        out.sort(key=turn.__getitem__)
        column, row = 8.0 * random(), 8.0 * random()
        one_way = random() if random() < 0.4 else 0.0
        left = search.place(out, column, row, one_way, _NEVER, _NEVER)
        slot = self.steps % _LATENESS
        self.steps += 1
        if left is None or not self._accept(max(self.value, self.history[slot])):
            forest.undo()
        self.history[slot] = self.value
        clock.tick(forest.work - before + 300 + len(forest.roots))

    def _accept(self, limit: float) -> bool:
        scores = self.scores
        touched = {_root(entry[0]) for entry in self.forest.log}
        old = {root: scores[root] for root in touched}
        scores.update((root, self._score(root)) for root in touched)
        value = self._value(scores.values())
        if value > limit + 1e-9:
            scores.update(old)
            return False
        self.value = value
        self.changed |= touched
        if value < self.best - 1e-9:
            self.best = value
            self.kept.update((root, keep(root)) for root in self.changed)
            self.changed.clear()
        return True

    def _ruin(self, out: list[int]) -> None:
        forest, random = self.forest, self.random
        roots = forest.roots
        most_sheets, most_share = self.most
        share = random()
        for _ in range(1 + int(random() * most_sheets)):
            if random() < 0.2:
                root = max(roots, key=lambda r: self.scores[r].offcut)
            else:
                root = roots[int(random() * len(roots))]
            if share < 0.3:
                for kid in root.kids[:]:
                    forest.ruin(kid, out)
            else:
                for kid in _some(root, share * most_share, random):
                    forest.ruin(kid, out)

    def _value(self, scores: Iterable[_Score]) -> float:
        sawing = 0.0
        offcut = 0.0
        for score in scores:
            sawing += score.sawing
            if score.offcut > offcut:
                offcut = score.offcut
        return sawing - self.weights.offcut * offcut

    def _score(self, root: Node) -> _Score:
        cuts = 0
        length = 0.0
        offcut = 0.0
        nodes = [root]
        kerf = self.kerf
        while nodes:
            node = nodes.pop()
            if node.item >= 0:
                continue
            cross = (node.height if node.along else node.width) - kerf
            here = len(node.kids)
            if node.slack == 0.0:
                here -= 1
            elif node.slack > kerf:
                area = (node.slack - kerf) * cross
                if area > offcut:
                    offcut = area
            cuts += here
            length += here * cross
            nodes += node.kids
        metres = self.metres
        return _Score(
            self.weights.cuts * cuts + self.weights.length * length * metres,
            offcut * metres * metres,
        )


def _root(node: Node) -> Node:
    while node.parent is not None:
        node = node.parent
    return node


def _some(root: Node, share: float, random: Callable[[], float]) -> list[Node]:
    """Some nodes of a sheet, none inside another."""
    taken = []
    nodes = [root]
    while nodes:
        node = nodes.pop()
        for kid in node.kids:
            if random() < share:
                taken.append(kid)
            else:
                nodes.append(kid)
    return taken
