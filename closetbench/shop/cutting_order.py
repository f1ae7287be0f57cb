"""The cutting order on paper: every sheet's cuts in the order sawn, store first, then home."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from closetbench.core.lengths import LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.shop.atomic import write_text_atomically
from closetbench.shop.report import finding_lines
from closetbench.stock.advice import strip_advice, strip_findings
from closetbench.stock.plan import CutPart, CutSettings, Plan, SheetPlan, StockSheet
from closetbench.stock.tools import TOOLS, ToolCut, split_cuts

CARE = (
    "Support the sheet on both sides of the cut, clamp the straightedge, set the blade just "
    "through; eyes, ears and lungs protected; the saw's own manual goes before this list. Mark a "
    "part from the one it must meet wherever you can, and check the first cut before the others."
)


def cutting_order_lines(
    plan: Plan, parts: Sequence[CutPart], stock: Sequence[StockSheet], settings: CutSettings,
    catalogue: Catalogue, form: LengthFormat,
) -> list[str]:
    """The whole order as lines of text, lengths as the user reads them.

    A fence dimension is the size that stays between fence and blade. Cuts on a whole sheet
    are the store's where its saw can make them. Advice on strip widths stands where a little
    less depth saves a sheet.
    """
    lines = [CARE]
    for sheet in plan.sheets:
        lines += ["", *_sheet_lines(sheet, catalogue, form)]
    gains = [a for a in strip_advice(parts, stock, settings.kerf) if a.sheets_slimmer < a.sheets]
    if gains:
        advice = strip_findings(gains, settings.kerf, form.text)
        lines += ["", "strip widths"]
        lines += [f"  {text}" for finding in advice for text in finding_lines(finding)]
    return lines


def _sheet_lines(sheet: SheetPlan, catalogue: Catalogue, form: LengthFormat) -> list[str]:
    raw = sheet.sheet
    title = catalogue.material(raw.material).title
    lines = [
        f"{sheet.name}  {title}, {form.text(raw.length)} x {form.text(raw.width)}, "
        f"{sheet.yield_fraction:.0%} used"
    ]
    split = split_cuts(sheet, TOOLS)
    for where, cuts in (("at the store", split.store), ("at home", split.home)):
        if cuts:
            lines.append(f"  {where}")
            lines += [f"    {_cut_words(cut, form)}" for cut in cuts]
    lines += [
        f"    cut {cut.number} on {cut.piece}: none of these saws can make it"
        for cut in split.impossible
    ]
    for finding in split.findings:
        lines += [f"  {text}" for text in finding_lines(finding)]
    return lines


def _cut_words(made: ToolCut, form: LengthFormat) -> str:
    cut = made.cut
    direction = "rip" if cut.rip else "crosscut"
    gives = " | ".join(cut.yields)
    return (
        f"{cut.number:>3}  {direction:<8} {cut.piece:<12} fence {form.text(cut.fence):<12} "
        f"{made.tool.name}: {gives}"
    )


def write_cutting_order(
    path: Path, plan: Plan, parts: Sequence[CutPart], stock: Sequence[StockSheet],
    settings: CutSettings, catalogue: Catalogue, form: LengthFormat,
) -> Path:
    """Write the order as text; ``DocumentError`` where that cannot be done."""
    lines = cutting_order_lines(plan, parts, stock, settings, catalogue, form)
    return write_text_atomically(path, "\n".join([*lines, ""]), "cutting order")
