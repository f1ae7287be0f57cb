"""All cutting of a closet at once: what it needs, what there is, and the plans for it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from closetbench.core.bars import KERF as BAR_KERF
from closetbench.core.bodies import LengthPart
from closetbench.core.materials import Catalogue
from closetbench.core.parts import Part
from closetbench.stock.from_lengths import (
    length_needs,
    plan_of_lengths,
    sheet_parts,
    stock_lengths,
)
from closetbench.stock.from_parts import cut_parts, stock_sheets
from closetbench.stock.length_plan import LengthNeed, LengthPlan, StockLength
from closetbench.stock.offcuts import Offcut, after_cutting, offcuts_as_lengths, offcuts_as_stock
from closetbench.stock.plan import CutPart, CutSettings, Plan, PlanProgress, StockSheet
from closetbench.stock.purchase import WayToBuy, plan_purchase
from closetbench.stock.verify import require_valid


@dataclass(frozen=True)
class Needs:
    """What is to be cut and what it may be cut from: sheets, and boards and bars by length."""

    parts: tuple[CutPart, ...]
    sheets: tuple[StockSheet, ...]
    pieces: tuple[LengthNeed, ...]
    lengths: tuple[StockLength, ...]


@dataclass(frozen=True)
class Cutting:
    """The plans, and the ways to buy sheets that were compared."""

    sheets: Plan
    lengths: LengthPlan
    ways: tuple[WayToBuy, ...] = ()


def needs_of(
    parts: Sequence[Part], bars: Sequence[LengthPart], catalogue: Catalogue, kerf: float,
    trim: float | None = None, offcuts: Sequence[Offcut] = (), job: str = "",
) -> Needs:
    """What a closet needs. ``trim`` in the place of the materials' own; ``offcuts`` at hand,
    of which those kept for another job than ``job`` are left alone.

    Raises ``CatalogueError`` for a material or bar that the catalogue does not have.
    """
    mine = sheet_parts(parts, catalogue, kerf)
    pieces = length_needs(parts, bars, catalogue, kerf)
    return Needs(
        cut_parts(mine, catalogue),
        stock_sheets(
            catalogue, (p.panel.material for p in mine), offcuts_as_stock(offcuts, job), trim),
        pieces,
        stock_lengths(
            catalogue, (n.material for n in pieces), offcuts_as_lengths(offcuts, job)),
    )


def plan_cutting(
    needs: Needs, settings: CutSettings, catalogue: Catalogue,
    progress: Callable[[PlanProgress], bool] | None = None,
) -> Cutting:
    """The cheapest plans found, those of sheets verified. ``LayoutError`` where there is none."""
    plan, ways = plan_purchase(needs.parts, needs.sheets, settings, progress)
    require_valid(plan, needs.parts, settings, needs.sheets)
    return Cutting(
        plan, plan_of_lengths(needs.pieces, needs.lengths, catalogue, settings.kerf), ways
    )


def offcuts_after(
    offcuts: Sequence[Offcut], cutting: Cutting, job: str
) -> tuple[Offcut, ...]:
    """The offcuts at hand once all is cut. ``LayoutError`` where one taken is not there."""
    return after_cutting(offcuts, cutting.sheets, job, cutting.lengths, BAR_KERF)
