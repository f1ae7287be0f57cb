"""Takes offcuts at hand into use before whole sheets, where the search had no need of them.

The search takes an offcut where that saves a sheet. An offcut beside it would lie about,
while small parts are cut out of a new sheet: common practice, no published source, is to
cut what fits from what is there first, so that the new sheet's rest is the larger.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from closetbench.stock.search import Search, items_on
from closetbench.stock.trees import Forest, Tree, keep

_BIASES = ((2.0, 2.0), (1.0, 3.0), (3.0, 1.0))


def fill_offcuts(search: Search, free: Sequence[int]) -> tuple[Tree, ...]:
    """Move parts of the best set from other sheets to offcuts that it left unused.

    ``free``: the indices of the search's kinds that cost nothing. The largest offcut comes
    first and takes the parts of the emptiest sheet before others, or whatever parts cover
    more of it. The offcuts filled are returned, and leave the search's best set with the
    parts that remain; a sheet that is emptied by it is given back.
    """
    filled: list[Tree] = []
    for index in sorted(free, key=lambda i: -search.kinds[i].width * search.kinds[i].height):
        used = sum(tree.kind == index for tree in search.best or ())
        for _ in range(search.kinds[index].quantity - used):
            tree = _fullest(search, index, set(free))
            if tree is None:
                break
            filled.append(tree)
            _take_out(search, set(items_on(tree)))
    return tuple(filled)


def _fullest(search: Search, index: int, free: set[int]) -> Tree | None:
    """An offcut of this kind with as much on it as parts of bought sheets can cover."""
    bought = [tree for tree in search.best or () if tree.kind not in free]
    bought.sort(key=lambda tree: _covered(search, tree) / (tree.width * tree.height))
    emptiest = [item for tree in bought for item in _by_area(search, items_on(tree))]
    best: Tree | None = None
    most = 0.0
    for order in (emptiest, _by_area(search, emptiest)):
        for column, row in _BIASES:
            tree = _laid(search, index, order, column, row)
            if _covered(search, tree) > most:
                best, most = tree, _covered(search, tree)
    return best


def _laid(
    search: Search, index: int, order: Sequence[int], column: float, row: float
) -> Tree:
    """The parts in this order laid on one offcut, as far as they fit."""
    limits = search.forest
    forest = Forest(search.items, [search.kinds[index]], limits.first, limits.stages)
    root = forest.open(0)
    failed = set()
    for item in order:
        ways, size = search.items[item].ways, search.items[item].area
        if ways in failed:
            continue
        place = forest.find(ways, size, column, row)
        if place is None:
            failed.add(ways)
        else:
            forest.insert(item, place)
    return replace(keep(root), kind=index)


def _take_out(search: Search, items: set[int]) -> None:
    """Take parts off the sheets of the best set."""
    forest = search.forest
    forest.plant(search.best or ())
    for item in items:
        node = forest.leaf[item]
        if node is not None:
            forest.ruin(node, [])
    search.best = tuple(keep(root) for root in forest.roots if root.kids)
    search.cost = sum(search.kinds[tree.kind].cost for tree in search.best)


def _by_area(search: Search, items: Sequence[int]) -> list[int]:
    return sorted(items, key=lambda item: (-search.items[item].area, item))


def _covered(search: Search, tree: Tree) -> float:
    return sum(search.items[item].area for item in items_on(tree))
