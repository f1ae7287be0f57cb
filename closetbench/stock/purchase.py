"""What to buy: each size alone or sizes mixed, with and without the offcuts at hand."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import ceil

from closetbench.core.errors import LayoutError
from closetbench.core.materials import Material
from closetbench.stock.plan import CutPart, CutSettings, Plan, StockSheet
from closetbench.stock.sheets import plan_sheets


@dataclass(frozen=True)
class SpareRule:
    """Sheets to buy over the plan, per material: one for each ``per`` begun, from ``above``
    sheets on. Common practice, no published source; 0 for ``per``: none.
    """

    per: int = 10
    above: int = 4

    def spares(self, sheets: int) -> int:
        """Spare sheets for so many planned ones."""
        return ceil(sheets / self.per) if self.per and sheets > self.above else 0


@dataclass(frozen=True)
class ToBuy:
    """Sheets of one kind: those that the plan cuts, and spares. ``weight``: of all, kg."""

    sheet: StockSheet
    planned: int
    spare: int
    weight: float | None

    @property
    def count(self) -> int:
        """How many to buy."""
        return self.planned + self.spare

    @property
    def cost(self) -> float | None:
        """What they cost together; None where the price is unknown."""
        return None if self.sheet.cost is None else self.count * self.sheet.cost


@dataclass(frozen=True)
class WayToBuy:
    """One way to buy one material. ``sizes``: keys of the sheets that it may take.

    ``area``: of the sheets bought, m²; ``cost``: theirs without spares, None where a price
    is unknown.
    """

    material: str
    sizes: tuple[str, ...]
    offcuts: bool
    plan: Plan
    area: float
    cost: float | None


def to_buy(
    plan: Plan, materials: Mapping[str, Material] | None = None, rule: SpareRule | None = None
) -> tuple[ToBuy, ...]:
    """The sheets of a plan that are not at hand, in its order, with spares by the rule.

    Spares are of the size of which the plan takes most. ``materials``: by key, for the
    weight.
    """
    counts = Counter(sheet.sheet for sheet in plan.sheets if not sheet.sheet.offcut)
    by_material: dict[str, list[StockSheet]] = {}
    for sheet in counts:
        by_material.setdefault(sheet.material, []).append(sheet)
    found = []
    for material, sheets in by_material.items():
        spares = rule.spares(sum(counts[sheet] for sheet in sheets)) if rule else 0
        commonest = max(sheets, key=lambda sheet: counts[sheet])
        board = (materials or {}).get(material)
        for sheet in sheets:
            spare = spares if sheet == commonest else 0
            each = board.weight(sheet.length, sheet.width) if board else None
            found.append(
                ToBuy(
                    sheet, counts[sheet], spare,
                    None if each is None else each * (counts[sheet] + spare),
                )
            )  # fmt: skip
    return tuple(found)


def ways_to_buy(
    parts: Sequence[CutPart], stock: Sequence[StockSheet], settings: CutSettings
) -> tuple[WayToBuy, ...]:
    """For each material: every size alone, and all mixed, with and without offcuts.

    The cheapest way of each material comes first (by area where a price is unknown), that
    of fewer sheets before others. Sizes that cannot give all parts alone are left out.
    """
    ways = []
    for material in dict.fromkeys(part.material for part in parts):
        mine = [part for part in parts if part.material == material]
        sold = [s for s in stock if s.material == material and not s.offcut and s.quantity != 0]
        at_hand = [s for s in stock if s.material == material and s.offcut and s.quantity != 0]
        choices = [[sheet] for sheet in sold]
        if len(sold) > 1:
            choices.append(sold)
        found = []
        for choice in choices:
            for offcuts in [[], at_hand] if at_hand else [[]]:
                try:
                    plan = plan_sheets(mine, [*choice, *offcuts], settings)
                except LayoutError:
                    continue
                found.append(_way(material, choice, bool(offcuts), plan))
        ways += sorted(
            found,
            key=lambda way: (
                way.area if any(w.cost is None for w in found) else way.cost or 0.0,
                len(way.plan.sheets),
            ),
        )
    return tuple(ways)


def _way(material: str, choice: Sequence[StockSheet], offcuts: bool, plan: Plan) -> WayToBuy:
    bought = [sheet.sheet for sheet in plan.sheets if not sheet.sheet.offcut]
    costs = [sheet.cost for sheet in bought]
    return WayToBuy(
        material,
        tuple(sheet.key for sheet in choice),
        offcuts,
        plan,
        sum(sheet.length * sheet.width for sheet in bought) / 1e6,
        None if None in costs else sum(cost for cost in costs if cost is not None),
    )
