"""From cutting trees to panels, parts and offcuts on the raw sheet.

Corners are added up in whole nanometres and turned into millimetres once.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from closetbench.stock.grid import PER_MM, Grid, down, up
from closetbench.stock.plan import CutPart, Placement, Rest, StockSheet
from closetbench.stock.trees import Tree


@dataclass(frozen=True)
class Panel:
    """A rectangle that the saw makes: corners in nanometres on the raw sheet.

    ``kids`` are cut off from the low edge on, side by side along x (``along``) or up y;
    ``rest`` is what is then left of it. ``placement`` only where it is a part.
    """

    x0: int
    y0: int
    x1: int
    y1: int
    along: bool
    kids: tuple[Panel, ...] = ()
    rest: Rest | None = None
    placement: Placement | None = None

    def below(self) -> Iterator[Panel]:
        """The panel itself and all that is cut from it, in order."""
        yield self
        for kid in self.kids:
            yield from kid.below()


def lay_out(tree: Tree, grid: Grid, parts: Sequence[CutPart], sheet: StockSheet) -> Panel:
    """A cutting tree as panels, on one sheet inside its trim."""

    def walk(node: Tree, x0: int, y0: int, x1: int, y1: int) -> Panel:
        if node.item >= 0:
            part = parts[node.item]
            dx, dy = (part.width, part.length) if node.turned else (part.length, part.width)
            placement = Placement(part.key, x0 / PER_MM, y0 / PER_MM, dx, dy, node.turned)
            return Panel(x0, y0, x1, y1, node.along, placement=placement)
        kids = []
        low = 0
        for kid in _ordered(node):
            high = low + int(kid.width if node.along else kid.height) * grid.step - grid.kerf
            if node.along:
                kids.append(walk(kid, x0 + low, y0, x0 + high, y1))
            else:
                kids.append(walk(kid, x0, y0 + low, x1, y0 + high))
            low = high + grid.kerf
        rest = None
        if node.slack > 0.0:
            rest = _rest(x0 + low, y0, x1, y1) if node.along else _rest(x0, y0 + low, x1, y1)
        return Panel(x0, y0, x1, y1, node.along, tuple(kids), rest)

    trim = up(sheet.trim)
    return walk(tree, trim, trim, down(sheet.length) - trim, down(sheet.width) - trim)


def placements_of(panel: Panel) -> tuple[Placement, ...]:
    """All parts of a panel, in the order in which they are cut off."""
    return tuple(p.placement for p in panel.below() if p.placement is not None)


def rests_of(panel: Panel) -> tuple[Rest, ...]:
    """All that a panel leaves, the largest first; whether it is of use is for others to say."""
    rests = [p.rest for p in panel.below() if p.rest is not None]
    return tuple(sorted(rests, key=lambda rest: (-rest.dx * rest.dy, rest.x, rest.y)))


def _rest(x0: int, y0: int, x1: int, y1: int) -> Rest | None:
    dx, dy = x1 - x0, y1 - y0
    if dx <= 0 or dy <= 0:
        return None
    return Rest(x0 / PER_MM, y0 / PER_MM, dx / PER_MM, dy / PER_MM)


def _ordered(node: Tree) -> list[Tree]:
    """Kids as they are cut: like beside like, so that the fence moves least; largest first."""

    def key(kid: Tree) -> tuple[float, bool, int]:
        return (-(kid.width if node.along else kid.height), kid.item < 0, kid.item)

    return sorted(node.kids, key=key)
