"""Pieces to be cut from boards, bars and poles, what they are cut from, and the plan."""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass(frozen=True)
class LengthNeed:
    """A piece to be cut; ``key`` is unique. Length in mm as sawn."""

    key: str
    length: float
    material: str


@dataclass(frozen=True)
class StockLength:
    """A length to be bought or at hand, in mm.

    ``trim``: taken off each end. ``quantity`` None: as many as are needed. ``cost`` each,
    None where unknown. ``defects``: (from, to) in mm from one end, such as a knot, that no
    part may hold. ``offcut``: at hand, so that it costs nothing. ``width``: a board's, mm,
    0 for bars.
    """

    key: str
    material: str
    length: float
    trim: float = 0.0
    quantity: int | None = None
    cost: float | None = None
    defects: tuple[tuple[float, float], ...] = ()
    offcut: bool = False
    width: float = 0.0


@dataclass(frozen=True)
class LengthCut:
    """A piece on a stock length: from ``start`` to ``end``, mm from the same end as defects."""

    part: str
    start: float
    end: float


@dataclass(frozen=True)
class BarPlan:
    """One stock length and its pieces in order. ``name`` is unique in the plan ("L1")."""

    name: str
    stock: StockLength
    cuts: tuple[LengthCut, ...]

    @property
    def rest(self) -> float:
        """The longest length without a defect that is left after the last piece, its kerf not
        yet taken off."""
        at = max((cut.end for cut in self.cuts), default=self.stock.trim)
        end = self.stock.length - self.stock.trim
        longest = 0.0
        for low, high in sorted(self.stock.defects):
            longest = max(longest, min(low, end) - at)
            at = max(at, high)
        return max(longest, end - at)

    @property
    def used(self) -> float:
        """Length of the parts over the stock length."""
        return sum(cut.end - cut.start for cut in self.cuts) / self.stock.length


@dataclass(frozen=True)
class LengthPlan:
    """All stock lengths to take. ``proved``: per material, that no plan costs less, or takes
    less length where the material is among the ``unpriced``, of which some stock has no price.
    """

    bars: tuple[BarPlan, ...] = ()
    proved: dict[str, bool] = field(default_factory=dict)
    unpriced: tuple[str, ...] = ()

    def bars_of(self, material: str) -> tuple[BarPlan, ...]:
        """The stock lengths of one material, in order."""
        return tuple(bar for bar in self.bars if bar.stock.material == material)

    @property
    def cost(self) -> float | None:
        """What the stock to be bought costs together; None where a price is unknown."""
        costs = [bar.stock.cost for bar in self.bars if not bar.stock.offcut]
        return None if None in costs else sum(cost for cost in costs if cost is not None)


def clear_stretches(stock: StockLength, kerf: float) -> tuple[tuple[float, float], ...]:
    """What trim and defects leave of a stock length, as (start, end) in mm.

    A cut beside a defect lies in the defect, so that one narrower than the kerf counts as
    wide as the kerf.
    """
    end = stock.length - stock.trim
    at = stock.trim
    found = []
    for low, high in sorted(stock.defects):
        widen = max(0.0, (kerf - (high - low)) / 2)
        if low - widen > at:
            found.append((at, min(low - widen, end)))
        at = max(at, high + widen)
    if at < end:
        found.append((at, end))
    return tuple((a, b) for a, b in found if b - a > 1e-6)
