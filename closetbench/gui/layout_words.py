"""What the panel of a cut layout says about its plans."""

from __future__ import annotations

from collections import Counter

from closetbench.core.errors import ClosetError, LayoutError
from closetbench.core.materials import Catalogue
from closetbench.gui import units
from closetbench.gui.qt import translate
from closetbench.shop.buying import title_of
from closetbench.shop.cutting_order import board_split
from closetbench.stock.length_plan import LengthPlan
from closetbench.stock.plan import Plan, Proof, SheetPlan
from closetbench.stock.tools import Shop

CONTEXT = "Closetbench_Layout"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


def sheets_line(plan: Plan, key: str, catalogue: Catalogue) -> str:
    """How many sheets of a material the plan takes, and whether fewer would do."""
    sheets = plan.sheets_of(key)
    whole = sum(s.sheet.length * s.sheet.width for s in sheets)
    used = sum(s.used_area for s in sheets) / whole if whole else 0.0
    proved = {
        Proof.FEWEST: _tr("no plan needs fewer"),
        Proof.CHEAPEST: _tr("no plan buys less"),
        Proof.NONE: _tr("not proved: at least {}").format(plan.bound[key]),
    }[plan.proof_of(key)]
    text = _tr("{}: 1 sheet, yield {:.0%} ({})") if len(sheets) == 1 else _tr(
        "{}: {count} sheets, yield {:.0%} ({})")
    return text.format(title_of(key, catalogue), used, proved, count=len(sheets))


def lengths_line(plan: LengthPlan, key: str, catalogue: Catalogue) -> str:
    """Which boards or bars of a material the plan takes."""
    counts = Counter(bar.stock.length for bar in plan.bars_of(key))
    pieces = ", ".join(
        _tr("{} of {}").format(n, units.shown(length)) for length, n in counts.items())
    if not plan.proved[key]:
        proved = _tr("a cheaper one may exist")
    elif key in plan.unpriced:
        proved = _tr("no choice takes less length; prices are lacking")
    else:
        proved = _tr("no choice costs less")
    return _tr("{}, by length: {} ({})").format(title_of(key, catalogue), pieces, proved)


def why_not(error: ClosetError) -> str:
    """Why a part may not lie somewhere: a fault of the plan speaks for itself."""
    fault = isinstance(error, LayoutError) and error.prop == "plan"
    return units.explained(str(error.value) if fault else str(error))


def split_line(sheet: SheetPlan, catalogue: Catalogue, shop: Shop) -> str:
    """How many cuts of a sheet are the store's, and what is doubtful about that."""
    split = board_split(sheet, catalogue, shop)
    lines = [_tr("Cuts: {} at the store, {} at home").format(len(split.store), len(split.home))]
    lines += [units.explained(f"{f.message} ({f.value}): {f.fix}" if f.value else
                              f"{f.message}: {f.fix}") for f in split.findings]
    return "\n".join(lines)
