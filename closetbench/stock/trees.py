"""Cutting trees: sheets as nested rows and columns, changed and put back fast.

A node is a rectangle. Its kids lie side by side along x (``along``) or are stacked along
y, each over the node's whole other extent; what is left over is its slack. The order of
the kids does not matter, so all slack of a node is one rectangle. A leaf is a part.
Lengths are grid steps with the kerf added (see ``grid``).
"""

from __future__ import annotations

from bisect import bisect_left, insort
from collections.abc import Sequence
from dataclasses import dataclass
from operator import length_hint

from closetbench.stock.grid import Item, Kind

NO_LIMIT = 1_000_000
"""Stages when there is no limit."""


class Node:
    """One rectangle of a cutting tree; ``item`` is -1 unless it is a part.

    ``level`` is the stage that cuts its kids apart; ``turned`` how a part lies;
    ``kind`` is the kind of sheet where the node is a whole one, else -1.
    """

    __slots__ = (
        "along", "free", "height", "item", "kids", "kind", "level", "parent", "slack",
        "turned", "width",
    )  # fmt: skip

    def __init__(
        self, parent: Node | None, along: bool, width: float, height: float,
        level: int, slack: float,
    ) -> None:  # fmt: skip
        self.parent = parent
        self.along = along
        self.width = width
        self.height = height
        self.level = level
        self.slack = slack
        self.kids: list[Node] = []
        self.item = -1
        self.turned = False
        self.kind = -1
        self.free: Free | None = None


@dataclass(frozen=True)
class Tree:
    """A node put by: a value that nothing changes any more."""

    width: float
    height: float
    along: bool
    slack: float
    kids: tuple[Tree, ...] = ()
    item: int = -1
    turned: bool = False
    kind: int = -1


def keep(node: Node) -> Tree:
    """A node and all below it as a value."""
    return Tree(
        node.width, node.height, node.along, node.slack,
        tuple(keep(kid) for kid in node.kids), node.item, node.turned, node.kind,
    )  # fmt: skip


Free = tuple[float, int, float, float, bool, bool, Node]
"""A slack: area, serial number, width, height, columns allowed, rows allowed, node."""
Place = tuple[Node, float, float, bool, bool]
"""Where an item may go: node, dx, dy, turned, column first."""


class Forest:
    """The sheets in work: insertion, ruin and undo, with the slacks at hand for search.

    ``first``: the first cuts run along x (rows, True), across (columns, False) or either
    way (None). ``frees`` are the slacks that could take anything, by area. ``squares`` is
    the sum of their squared areas. ``work`` counts what was done, in steps of about 0.1 µs:
    a measure of time that no machine changes.
    """

    def __init__(
        self, items: Sequence[Item], kinds: Sequence[Kind], first: bool | None, stages: int | None
    ) -> None:
        self.items = items
        self.kinds = kinds
        self.first = first
        self.stages = NO_LIMIT if stages is None else stages
        self.norm = max(kind.width * kind.height for kind in kinds)
        self.least_x = min(way[0] for item in items for way in item.ways)
        self.least_y = min(way[1] for item in items for way in item.ways)
        self.roots: list[Node] = []
        self.used = [0] * len(kinds)
        self.cost = 0.0
        self.leaf: list[Node | None] = [None] * len(items)
        self.frees: list[Free] = []
        self.serial = 0
        self.squares = 0.0
        self.work = 0
        self.log: list[tuple[Node, list[Node], float, bool, Free | None]] = []
        self.moved: list[tuple[int, Node | None]] = []
        self._roots_before = self.roots
        self._used_before = self.used
        self._frees_before = self.frees
        self._totals_before = (0.0, 0.0)

    def open(self, kind: int, along: bool | None = None) -> Node:
        """Add an empty sheet of a kind; ``along`` chooses where either way is allowed."""
        of = self.kinds[kind]
        if self.first is not None:
            along = not self.first
        elif along is None:
            along = True
        slack = of.width if along else of.height
        root = Node(None, along, of.width, of.height, 1, slack)
        root.kind = kind
        self.roots.append(root)
        self.used[kind] += 1
        self.cost += of.cost
        self.set_free(root)
        return root

    def set_free(self, node: Node) -> None:
        """Bring the slack of a node up to date in the list of slacks."""
        frees = self.frees
        old = node.free
        if old is not None:
            self.squares -= old[0] * old[0]
            del frees[bisect_left(frees, old)]
        slack = node.slack
        if node.along:
            width, height = slack, node.height
        else:
            width, height = node.width, slack
        if width < self.least_x or height < self.least_y:
            node.free = None
            return
        area = width * height
        self.squares += area * area
        room = self.stages - node.level
        if node.parent is None and not node.kids and self.first is None:
            columns = rows = room >= 1
        elif node.along:
            columns = room >= 1
            rows = room >= 2
        else:
            columns = room >= 2
            rows = room >= 1
        self.serial += 1
        node.free = free = (area, self.serial, width, height, columns, rows, node)
        insort(frees, free)

    def find(
        self,
        ways: Sequence[tuple[float, float, bool]],
        size: float,
        column_bias: float,
        row_bias: float,
    ) -> Place | None:
        """The place for an item that spoils the slacks least; None where none is left.

        Spoiled: the squared area of the slack less those of the two it leaves, which is
        ``size`` (2 area - size) + 2 x the product of the two; that product is weighed by
        the bias of the direction that is cut first. Slacks are tried from the smallest.
        """
        frees = self.frees
        least = 1e300
        best: Place | None = None
        start = bisect_left(frees, (size,))
        tried = iter(frees[start:])
        for area, _, width, height, columns, rows, node in tried:
            base = size * (area + area - size)
            if base >= least:
                break
            for dx, dy, turned in ways:
                if dx <= width and dy <= height:
                    over_x = width - dx
                    over_y = height - dy
                    product = over_x * over_y
                    if columns or (over_y == 0.0 and node.along):
                        loss = base + product * dx * height * column_bias
                        if loss < least:
                            least = loss
                            best = (node, dx, dy, turned, True)
                    if rows or (over_x == 0.0 and not node.along):
                        loss = base + product * dy * width * row_bias
                        if loss < least:
                            least = loss
                            best = (node, dx, dy, turned, False)
        self.work += 20 + len(frees) - start - length_hint(tried)
        return best

    def insert(self, item: int, place: Place) -> None:
        """Put an item where ``find`` said."""
        node, dx, dy, turned, column = place
        self.work += 40
        self.log.append((node, node.kids[:], node.slack, node.along, node.free))
        self.moved.append((item, None))
        if node.parent is None and not node.kids and self.first is None:
            node.along = column
            node.slack = node.width if column else node.height
        along = node.along
        size, cross, full = (dx, dy, node.height) if along else (dy, dx, node.width)
        leaf = Node(node, along, dx, dy, node.level, 0.0)
        leaf.item = item
        leaf.turned = turned
        self.leaf[item] = leaf
        if cross == full:
            node.kids.append(leaf)
            node.slack -= size
        elif column is along:
            wide, high = (dx, full) if along else (full, dy)
            kid = Node(node, not along, wide, high, node.level + 1, full - cross)
            kid.kids.append(leaf)
            leaf.parent = kid
            node.kids.append(kid)
            node.slack -= size
            self.set_free(kid)
        else:
            slack = node.slack
            wide, high = (slack, full) if along else (full, slack)
            kid = Node(node, not along, wide, high, node.level + 1, full - cross)
            node.kids.append(kid)
            node.slack = 0.0
            if size == slack:
                kid.kids.append(leaf)
                leaf.parent = kid
            else:
                wide, high = (slack, cross) if along else (cross, slack)
                inner = Node(kid, along, wide, high, node.level + 2, slack - size)
                inner.kids.append(leaf)
                leaf.parent = inner
                kid.kids.append(inner)
                self.set_free(inner)
            self.set_free(kid)
        self.set_free(node)

    def ruin(self, node: Node, out: list[int]) -> None:
        """Take a node out of its sheet; the items that lay there are added to ``out``."""
        parent = node.parent
        if parent is None:
            return
        self.work += 40
        while len(parent.kids) == 1 and parent.parent is not None:
            node, parent = parent, parent.parent
        self.log.append((parent, parent.kids[:], parent.slack, parent.along, parent.free))
        parent.kids.remove(node)
        parent.slack += node.width if parent.along else node.height
        self._forget(node, out)
        self.set_free(parent)

    def _forget(self, node: Node, out: list[int]) -> None:
        if node.item >= 0:
            out.append(node.item)
            self.moved.append((node.item, node))
            self.leaf[node.item] = None
            return
        free = node.free
        if free is not None:
            self.squares -= free[0] * free[0]
            del self.frees[bisect_left(self.frees, free)]
        for kid in node.kids:
            self._forget(kid, out)

    def drop(self, root: Node, out: list[int]) -> None:
        """Give a whole sheet back; its items are added to ``out``."""
        self._forget(root, out)
        self.roots.remove(root)
        self.used[root.kind] -= 1
        self.cost -= self.kinds[root.kind].cost

    def begin(self) -> None:
        """Mark the state that ``undo`` goes back to."""
        self.log = []
        self.moved = []
        self._roots_before = self.roots[:]
        self._used_before = self.used[:]
        self._frees_before = self.frees[:]
        self._totals_before = (self.squares, self.cost)

    def undo(self) -> None:
        """Go back to the state at ``begin``."""
        for node, kids, slack, along, free in reversed(self.log):
            node.free = free
            node.kids = kids
            node.slack = slack
            node.along = along
        for item, leaf in reversed(self.moved):
            self.leaf[item] = leaf
        self.roots = self._roots_before
        self.used = self._used_before
        self.frees = self._frees_before
        self.squares, self.cost = self._totals_before

    def plant(self, trees: Sequence[Tree]) -> None:
        """Start from sheets put by with ``keep``."""
        self.roots = []
        self.used = [0] * len(self.kinds)
        self.cost = 0.0
        self.leaf = [None] * len(self.items)
        self.frees = []
        self.squares = 0.0
        for tree in trees:
            root = self._grow(tree, None, 1)
            root.kind = tree.kind
            self.roots.append(root)
            self.used[tree.kind] += 1
            self.cost += self.kinds[tree.kind].cost
        self.begin()

    def _grow(self, tree: Tree, parent: Node | None, level: int) -> Node:
        node = Node(parent, tree.along, tree.width, tree.height, level, tree.slack)
        node.item = tree.item
        node.turned = tree.turned
        if tree.item >= 0:
            self.leaf[tree.item] = node
        else:
            node.kids = [self._grow(kid, node, level + 1) for kid in tree.kids]
            self.set_free(node)
        return node
