"""The outer faces of a box less other boxes, exact and without FreeCAD.

Space is divided at the sides of all boxes; between two cells of which one is full lies a
piece of the surface. Pieces in one plane that hang together make a patch.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise, product

from closetbench.core.panel import Box

Node = tuple[int, int, int]
Cell = tuple[int, int]
Lines = tuple[tuple[float, ...], ...]

SLIVER = 1e-7
"""Sides of boxes nearer to each other than this are one, mm."""


class Undecided(Exception):
    """The surface touches itself, so that it has no one set of faces."""


@dataclass(frozen=True)
class Patch:
    """A flat face across ``axis`` (0, 1, 2); ``positive``: it looks toward greater values.

    ``loops``: its boundaries as nodes of the grid, the outer one first.
    """

    axis: int
    positive: bool
    loops: tuple[tuple[Node, ...], ...]


def surface(whole: Box, boxes: Sequence[Box]) -> tuple[Lines, list[Patch]]:
    """The coordinates of the grid along each axis, and the faces of ``whole`` less ``boxes``.

    Wherever faces meet, both have the same nodes on their boundaries. Raises ``Undecided``.
    """
    lines = tuple(
        _along(getattr(whole, low), getattr(whole, high), (
            v for b in boxes for v in (getattr(b, low), getattr(b, high))
        ))
        for low, high in (("x0", "x1"), ("y0", "y1"), ("z0", "z1"))
    )
    full = _full(lines, boxes)
    traced = [
        (axis, plane, positive, _trace(cells))
        for axis in range(3)
        for (plane, positive), squares in _squares(full, axis).items()
        for cells in _connected(squares)
    ]
    corners = {
        _node(axis, plane, cell)
        for axis, plane, _, loops in traced for loop in loops for cell in _turns(loop)
    }
    return lines, [
        Patch(axis, positive, tuple(
            tuple(n for cell in loop if (n := _node(axis, plane, cell)) in corners)
            for loop in loops
        ))
        for axis, plane, positive, loops in traced
    ]


def _along(first: float, last: float, sides: Iterable[float]) -> tuple[float, ...]:
    ordered = sorted({first, last, *(min(max(v, first), last) for v in sides)})
    return (first, *(b for a, b in pairwise(ordered) if b - a > SLIVER))


def _full(lines: Lines, boxes: Sequence[Box]) -> set[Node]:
    """The cells that no box takes out."""
    middles = [[(a + b) / 2 for a, b in pairwise(axis)] for axis in lines]
    full = set(product(*(range(len(m)) for m in middles)))
    for b in boxes:
        reach = ((b.x0, b.x1), (b.y0, b.y1), (b.z0, b.z1))
        full.difference_update(product(*(
            [i for i, m in enumerate(axis) if low < m < high]
            for axis, (low, high) in zip(middles, reach, strict=True)
        )))
    return full


def _squares(full: set[Node], axis: int) -> dict[tuple[int, bool], set[Cell]]:
    """The grid's squares on the surface across ``axis``, by plane and side."""
    found: dict[tuple[int, bool], set[Cell]] = {}
    u, v = (i for i in range(3) if i != axis)
    for node in full:
        for positive in (False, True):
            beside = list(node)
            beside[axis] += 1 if positive else -1
            if tuple(beside) not in full:
                found.setdefault((node[axis] + positive, positive), set()).add((node[u], node[v]))
    return found


def _connected(squares: set[Cell]) -> list[set[Cell]]:
    left, groups = set(squares), []
    while left:
        todo, group = [left.pop()], set()
        while todo:
            i, j = todo.pop()
            group.add((i, j))
            for near in ((i - 1, j), (i + 1, j), (i, j - 1), (i, j + 1)):
                if near in left:
                    left.discard(near)
                    todo.append(near)
        groups.append(group)
    return groups


def _trace(cells: set[Cell]) -> list[list[Cell]]:
    """The boundaries of connected squares, the outer one first."""
    following: dict[Cell, Cell] = {}
    for i, j in cells:
        for beside, start, end in (
            ((i, j - 1), (i, j), (i + 1, j)),
            ((i + 1, j), (i + 1, j), (i + 1, j + 1)),
            ((i, j + 1), (i + 1, j + 1), (i, j + 1)),
            ((i - 1, j), (i, j + 1), (i, j)),
        ):
            if beside not in cells:
                if start in following:
                    raise Undecided
                following[start] = end
    loops = []
    while following:
        node, loop = min(following), []  # the least of all nodes is on the outer boundary
        while node in following:
            loop.append(node)
            node = following.pop(node)
        loops.append(loop)
    return loops


def _turns(loop: list[Cell]) -> list[Cell]:
    """Where a boundary changes its direction."""
    around = zip([loop[-1], *loop[:-1]], loop, [*loop[1:], loop[0]], strict=True)
    return [at for before, at, after in around if before[0] != after[0] and before[1] != after[1]]


def _node(axis: int, plane: int, cell: Cell) -> Node:
    u, v = cell
    return ((plane, u, v), (u, plane, v), (u, v, plane))[axis]
