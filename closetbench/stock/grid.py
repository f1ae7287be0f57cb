"""Exact whole numbers for the search: millimetres in, steps of one common measure out.

Every part and every sheet is enlarged by one kerf; rectangles that then touch lie one
kerf apart on the real sheet, and a guillotine plan needs no further account of the kerf.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, floor, gcd

from closetbench.stock.checks import lies
from closetbench.stock.plan import CutPart, StockSheet

PER_MM = 1_000_000
"""Nanometres in a millimetre. 1/64 in (0.396875 mm) is a whole number of them."""
_SLIP = 0.01  # of a nanometre: what double precision may lose on a length of 10 m


def up(length: float) -> int:
    """Millimetres in whole nanometres, rounded up."""
    return ceil(length * PER_MM - _SLIP)


def down(length: float) -> int:
    """Millimetres in whole nanometres, rounded down."""
    return floor(length * PER_MM + _SLIP)


@dataclass(frozen=True)
class Item:
    """A part as the search sees it: ways to lie as (dx, dy, rotated) in steps, kerf added."""

    ways: tuple[tuple[float, float, bool], ...]
    area: float


@dataclass(frozen=True)
class Kind:
    """A kind of sheet as the search sees it: usable size in steps, kerf added.

    ``cost`` is what the search makes least; ``quantity`` how many there are.
    """

    width: float
    height: float
    cost: float
    quantity: int

    def takes(self, item: Item) -> bool:
        """Whether an item lies on an empty sheet of this kind, one way or the other."""
        return any(x <= self.width and y <= self.height for x, y, _ in item.ways)


@dataclass(frozen=True)
class Grid:
    """One material in steps of ``step`` nanometres; ``kerf`` in nanometres.

    Steps are whole numbers held as floats, which are exact to 2**53 and multiply fastest.
    ``tight``: the sizes of the sheets less what no sum of parts can reach.
    """

    step: int
    kerf: int
    items: tuple[Item, ...]
    sizes: tuple[tuple[float, float], ...]
    tight: tuple[tuple[float, float], ...]


def make_grid(parts: Sequence[CutPart], sheets: Sequence[StockSheet], kerf: float) -> Grid:
    """Parts and sheets in steps of their greatest common measure.

    Parts and kerf are rounded up to a whole nanometre and sheets down, so that a plan
    never makes a part too small.
    """
    blade = up(kerf)
    ways = [
        [(up(dx) + blade, up(dy) + blade, turned) for dx, dy, turned in lies(part)]
        for part in parts
    ]
    usable = [
        tuple(down(side) - 2 * up(sheet.trim) + blade for side in (sheet.length, sheet.width))
        for sheet in sheets
    ]
    common = gcd(*(side for each in ways for way in each for side in way[:2]))
    step = gcd(common, *(side for size in usable for side in size))
    items = []
    for each in ways:
        steps = tuple((float(x // step), float(y // step), turned) for x, y, turned in each)
        items.append(Item(steps, steps[0][0] * steps[0][1]))
    return Grid(
        step,
        blade,
        tuple(items),
        tuple((float(x // step), float(y // step)) for x, y in usable),
        tuple((float(x // common * common // step), float(y // common * common // step))
              for x, y in usable),
    )  # fmt: skip
