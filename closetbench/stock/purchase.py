"""What to buy: each size alone or sizes mixed, with and without the offcuts at hand.

The search takes sheets of all sizes together; each size alone is searched too, since that is
a smaller question, and the cheapest of all these plans is taken.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from math import ceil

from closetbench.core.errors import LayoutError
from closetbench.core.materials import Material
from closetbench.stock.plan import (
    CutPart,
    CutSettings,
    Plan,
    PlanProgress,
    SearchEnd,
    StockSheet,
)
from closetbench.stock.sheets import plan_sheets

_LONGEST = 1.0
"""Seconds at most for each way to buy that is compared."""


@dataclass(frozen=True)
class SpareRule:
    """Sheets to buy over the plan, per material: one for each ``per`` begun, where it takes
    more than ``above``; 0 for ``per``: none. One in ten is common practice, no published source.
    """

    per: int = 0
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

    @property
    def proved(self) -> bool:
        """Whether no plan from these sheets costs less."""
        return self.plan.ended.get(self.material) is SearchEnd.PROVED


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


def plan_purchase(
    parts: Sequence[CutPart], stock: Sequence[StockSheet], settings: CutSettings,
    progress: Callable[[PlanProgress], bool] | None = None,
) -> tuple[Plan, tuple[WayToBuy, ...]]:
    """The plan of all parts that costs least, and the ways to buy that it was chosen from.

    Errors as for ``plan_sheets``. Where the search was cancelled no ways are compared.
    """
    plan = plan_sheets(parts, stock, settings, progress)
    if SearchEnd.CANCELLED in plan.ended.values():
        return plan, ()
    ways = ways_to_buy(parts, stock, settings, plan, progress)
    barred: set[str] = set()
    for material in plan.ended:
        mine = [way for way in ways if way.material == material]
        own = _way(material, (), True, _of_material(plan, material))
        if mine and mine[0].offcuts and _worth(mine[0], mine) < _worth(own, mine):
            barred |= {
                s.key for s in stock
                if s.material == material and not s.offcut and s.key not in mine[0].sizes
            }
    if barred:
        plan = plan_sheets(parts, [s for s in stock if s.key not in barred], settings, progress)
    return plan, ways


def ways_to_buy(
    parts: Sequence[CutPart], stock: Sequence[StockSheet], settings: CutSettings,
    known: Plan | None = None,
    progress: Callable[[PlanProgress], bool] | None = None,
) -> tuple[WayToBuy, ...]:
    """For each material: every size alone, and all mixed, with and without offcuts.

    The cheapest way of each material comes first (by area where a price is unknown), that
    of fewer sheets before others. Sizes that cannot give all parts alone are left out, and
    so are materials of one size without offcuts: there is nothing to choose. ``known``: a
    plan from the whole stock, which is not searched again then. A way without any offcut at
    hand counts as one with. Once ``progress`` says no, materials not compared as yet are left
    out.
    """
    brief = replace(settings, tidy=0.0, seconds=min(settings.seconds, _LONGEST))
    ways: list[WayToBuy] = []
    for material in dict.fromkeys(part.material for part in parts):
        mine = [part for part in parts if part.material == material]
        sold = [s for s in stock if s.material == material and not s.offcut and s.quantity != 0]
        at_hand = [s for s in stock if s.material == material and s.offcut and s.quantity != 0]
        if len(sold) + len(at_hand) < 2:
            continue
        choices = [[sheet] for sheet in sold]
        if len(sold) > 1:
            choices.append(sold)
        found = []
        for choice in choices:
            for offcuts in [[], at_hand] if at_hand else [[]]:
                whole = len(choice) == len(sold) and len(offcuts) == len(at_hand)
                try:
                    plan = (
                        _of_material(known, material) if known is not None and whole
                        else plan_sheets(mine, [*choice, *offcuts], brief, progress)
                    )
                except LayoutError:
                    continue
                if plan.ended[material] is SearchEnd.CANCELLED:
                    return tuple(ways)
                found.append(_way(material, choice, not at_hand or bool(offcuts), plan))
        ways += sorted(found, key=lambda way: (_worth(way, found), len(way.plan.sheets)))
    return tuple(ways)


def _worth(way: WayToBuy, among: Sequence[WayToBuy]) -> float:
    """What a way is compared by: its cost, or its area where a price is unknown."""
    return way.area if any(w.cost is None for w in among) else way.cost or 0.0


def _of_material(plan: Plan, material: str) -> Plan:
    return Plan(
        plan.sheets_of(material),
        {material: plan.bound[material]},
        {material: plan.ended[material]},
        plan.repeatable,
    )


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
