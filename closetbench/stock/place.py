"""From cutting trees to parts and offcuts in millimetres on the raw sheet."""

from __future__ import annotations

from collections.abc import Sequence

from closetbench.stock.grid import Grid
from closetbench.stock.plan import CutPart, Placement, Rest, StockSheet
from closetbench.stock.trees import Tree

_LEAST_REST = 1e-3
"""mm: thinner is no rectangle, only what rounding leaves."""


def ordered(tree: Tree) -> tuple[Tree, ...]:
    """The kids of a node as they are cut: the largest first, like beside like."""

    def key(kid: Tree) -> tuple[float, bool, int]:
        return (-(kid.width if tree.along else kid.height), kid.item < 0, kid.item)

    return tuple(sorted(tree.kids, key=key))


def lay_out(
    tree: Tree, grid: Grid, parts: Sequence[CutPart], sheet: StockSheet
) -> tuple[tuple[Placement, ...], tuple[Rest, ...]]:
    """The placements and rests of one sheet, from its corner outwards.

    Rests are all that is left over, the largest first; usable or not is for others to say.
    """
    placements: list[Placement] = []
    rests: list[Rest] = []
    far_x, far_y = sheet.length - sheet.trim, sheet.width - sheet.trim

    def add_rest(x: float, y: float, x_end: float, y_end: float) -> None:
        dx, dy = min(x_end, far_x) - x, min(y_end, far_y) - y
        if dx > _LEAST_REST and dy > _LEAST_REST:
            rests.append(Rest(x, y, dx, dy))

    def walk(node: Tree, x0: float, y0: float, x1: float, y1: float) -> None:
        """Walk a node whose rectangle in mm, without its kerf, is given."""
        if node.item >= 0:
            part = parts[node.item]
            dx, dy = (part.width, part.length) if node.turned else (part.length, part.width)
            placements.append(Placement(part.key, x0, y0, dx, dy, node.turned))
            return
        at = 0.0
        for kid in ordered(node):
            size = kid.width if node.along else kid.height
            low, high = at * grid.step, (at + size) * grid.step - grid.kerf
            if node.along:
                walk(kid, x0 + low, y0, x0 + high, y1)
            else:
                walk(kid, x0, y0 + low, x1, y0 + high)
            at += size
        if node.slack > 0.0:
            if node.along:
                add_rest(x0 + at * grid.step, y0, x1, y1)
            else:
                add_rest(x0, y0 + at * grid.step, x1, y1)

    walk(tree, sheet.trim, sheet.trim, far_x, far_y)
    rests.sort(key=lambda rest: (-rest.dx * rest.dy, rest.x, rest.y))
    return tuple(placements), tuple(rests)
