"""What is cut from boards of their own width, mouldings, bars and rolls of edge band.

A material is planned by length where no two of its pieces could lie side by side on any
board that it is sold as: each piece takes the whole width then, and the plan of lengths is
the plan of the boards. Other boards are planned as narrow sheets.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from closetbench.core.bars import KERF as BAR_KERF
from closetbench.core.bodies import LengthPart
from closetbench.core.errors import CatalogueError
from closetbench.core.materials import Catalogue, Material
from closetbench.core.panel import Grain
from closetbench.core.parts import Part
from closetbench.core.trim import trim_cuts
from closetbench.stock.length_plan import LengthNeed, LengthPlan, StockLength
from closetbench.stock.lengths import plan_lengths

BAND_OVERHANG = 20.0
"""mm that a strip of edge band is cut longer than its rim, trimmed off once it is glued on:
common practice, no published source."""


def by_length(parts: Sequence[Part], catalogue: Catalogue, kerf: float) -> tuple[str, ...]:
    """The materials of which every piece takes a board's whole width; keys, as parts come."""
    found = []
    for key in dict.fromkeys(part.panel.material for part in parts):
        board = catalogue.material(key)
        if board.by_length and _whole_width(
            [p for p in parts if p.panel.material == key], board, kerf
        ):
            found.append(key)
    return tuple(found)


def _whole_width(mine: Sequence[Part], board: Material, kerf: float) -> bool:
    if any(p.panel.grain is not Grain.LENGTH for p in mine):
        return False
    widths = sorted(p.panel.cut_width for p in mine)
    two = sum(widths[:2]) + kerf if len(widths) > 1 else float("inf")
    return all(widths[-1] <= s.width + 1e-6 and s.width < two for s in board.sheets)


def sheet_parts(parts: Sequence[Part], catalogue: Catalogue, kerf: float) -> tuple[Part, ...]:
    """The parts that sheets are planned for: those that are not cut by length."""
    lengths = by_length(parts, catalogue, kerf)
    return tuple(p for p in parts if p.panel.material not in lengths)


def length_needs(
    parts: Sequence[Part], bars: Iterable[LengthPart], catalogue: Catalogue, kerf: float
) -> tuple[LengthNeed, ...]:
    """The pieces to crosscut, by full name: boards as sawn, mouldings with what their mitres
    and the trying take, rods. ``CatalogueError`` where a bar has the key of a board."""
    keys = by_length(parts, catalogue, kerf)
    mitred = {cut.name: cut.stock for cut in trim_cuts(parts)}
    needs = [
        LengthNeed(p.full_name, mitred.get(p.full_name, p.panel.cut_length), p.panel.material)
        for p in parts if p.panel.material in keys
    ]
    for rod in bars:
        if rod.stock in catalogue.materials:
            raise CatalogueError(
                "catalogue", "bar", rod.stock, "is a board's key too; give the bar another"
            )
        needs.append(LengthNeed(rod.full_name, rod.length, rod.stock))
    return tuple(needs)


def stock_lengths(
    catalogue: Catalogue, keys: Iterable[str], at_hand: Sequence[StockLength] = ()
) -> tuple[StockLength, ...]:
    """Every length that boards and bars of these keys are sold in, after those at hand.

    A board at hand counts only where it is as wide as one that is sold.
    """
    wanted = tuple(dict.fromkeys(keys))
    found = [
        each for each in at_hand
        if each.material in wanted and each.width >= _narrowest(catalogue, each.material) - 1e-6
    ]
    for key in wanted:
        if key in catalogue.bars:
            bar = catalogue.bar(key)
            item = catalogue.item(bar.bar)
            cost = None if item.cost is None else item.cost / item.pack
            found += [
                StockLength(f"{key} {length:g}", key, length, cost=each)
                for length, each in (
                    (bar.length, cost), *((one.length, one.cost) for one in bar.lengths))
            ]
            continue
        board = catalogue.material(key)
        found += [
            StockLength(
                f"{key} {s.length:g}x{s.width:g}", key, s.length, board.trim, None, s.cost,
                width=s.width,
            )
            for s in board.sheets
        ]
    return tuple(found)


def plan_of_lengths(
    needs: Sequence[LengthNeed], stock: Sequence[StockLength], catalogue: Catalogue, kerf: float
) -> LengthPlan:
    """The cheapest lengths for all pieces, boards sawn with ``kerf``, bars with their own."""
    bars = tuple(n for n in needs if n.material in catalogue.bars)
    boards = tuple(n for n in needs if n.material not in catalogue.bars)
    return _joined(
        plan_lengths(boards, stock, kerf), plan_lengths(bars, stock, BAR_KERF)
    )


def _joined(*plans: LengthPlan) -> LengthPlan:
    bars = [bar for plan in plans for bar in plan.bars]
    return LengthPlan(
        tuple(replace(bar, name=f"L{n}") for n, bar in enumerate(bars, 1)),
        {key: sure for plan in plans for key, sure in plan.proved.items()},
        tuple(key for plan in plans for key in plan.unpriced),
    )


def band_rolls(runs: Sequence[float], key: str, catalogue: Catalogue) -> LengthPlan:
    """Whole rolls of an edge band for rims of these lengths, the overhang added to each."""
    needs = [LengthNeed(str(n), run + BAND_OVERHANG, key) for n, run in enumerate(runs)]
    rolls = [
        StockLength(f"{key} {roll.length:g}", key, roll.length, cost=roll.cost)
        for roll in catalogue.band(key).rolls
    ]
    return plan_lengths(needs, rolls, 0.0)


def _narrowest(catalogue: Catalogue, key: str) -> float:
    if key in catalogue.bars:
        return 0.0
    return min((s.width for s in catalogue.material(key).sheets), default=0.0)
