"""The cutting order on paper: every sheet's cuts in the order sawn, store first, then home."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path

from closetbench.core.findings import Finding
from closetbench.core.lengths import LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Panel
from closetbench.core.parts import Part
from closetbench.shop.buying import title_of
from closetbench.shop.report import danger_lines, finding_lines
from closetbench.shop.words import fit_text, sound_words
from closetbench.stock.advice import strip_gains
from closetbench.stock.atomic import write_text_atomically
from closetbench.stock.length_checks import require_cuttable
from closetbench.stock.length_plan import BarPlan, LengthPlan
from closetbench.stock.plan import (
    Cut,
    CutFrom,
    CutPart,
    CutSettings,
    Plan,
    SheetPlan,
    StockSheet,
)
from closetbench.stock.tools import Carry, CutSplit, Shop, ToolCut, Where, split_cuts
from closetbench.stock.verify import require_valid

CARE = (
    "Support the sheet on both sides of the cut, clamp the straightedge, set the blade just "
    "through; eyes, ears and lungs protected; the saw's own manual goes before this list. Mark a "
    "part from the one it must meet wherever you can, and check the first cut before the others."
)
FENCE = (
    "Each cut: its number, as on the picture of the sheet; the piece that is sawn; the fence, "
    "which is what stays between fence (or straightedge) and blade; what lies at the fence after "
    "the cut, and what is left."
)
LENGTHS = (
    "One piece after the other from the same end; mark each one after the cut before it, then "
    "the kerf needs no arithmetic."
)
BY_HAND = "hand saw or mitre saw"
RIP_AWAY = 0.05
"""mm: a board that is wider by no more than that is not ripped."""


def cutting_order_lines(
    plan: Plan, parts: Sequence[CutPart], stock: Sequence[StockSheet], settings: CutSettings,
    catalogue: Catalogue, form: LengthFormat, shop: Shop | None = None,
    lengths: LengthPlan | None = None, sawn: Sequence[Part] = (),
    findings: Iterable[Finding] = (),
) -> list[str]:
    """The whole order as lines of text, lengths as the user reads them.

    A fence dimension is the size that stays between fence and blade. ``shop``: who cuts
    what; ``lengths``: the boards and bars, ``sawn`` the parts among which are theirs. The dangers
    among the ``findings`` stand on top. Advice on strip widths stands where a little less depth
    saves a sheet.
    """
    require_valid(plan, parts, settings, stock)
    require_cuttable(lengths or LengthPlan())
    shop = shop or Shop()
    dangers = danger_lines(findings)
    lines = [*dangers, *([""] if dangers else []), CARE]
    if plan.sheets:
        lines += ["", FENCE]
    for sheet in plan.sheets:
        lines += ["", *_sheet_lines(sheet, catalogue, form, shop)]
    if lengths is not None and lengths.bars:
        lines += ["", "by length", f"  {LENGTHS}"]
        panels = {p.full_name: p.panel for p in sawn}
        lines += [text for bar in lengths.bars for text in _bar_lines(bar, panels, catalogue, form)]
    advice = strip_gains(parts, stock, settings.kerf, form.text)
    if advice:
        lines += ["", "strip widths"]
        lines += [f"  {text}" for finding in advice for text in finding_lines(finding)]
    return lines


def board_split(sheet: SheetPlan, catalogue: Catalogue, shop: Shop) -> CutSplit:
    """The cuts of a sheet shared out as the shop says, no piece too much for one person."""
    board = catalogue.material(sheet.sheet.material)
    # an offcut is at home already
    tools = [t for t in shop.tools if t.where is Where.HOME or not sheet.sheet.offcut]
    return split_cuts(sheet, tools, shop.most, Carry(board.weight(1000.0, 1000.0)))


def _sheet_lines(
    sheet: SheetPlan, catalogue: Catalogue, form: LengthFormat, shop: Shop
) -> list[str]:
    raw = sheet.sheet
    board = catalogue.material(raw.material)
    from_rack = f", offcut {raw.key}" if raw.offcut else ""
    lines = [
        f"{sheet.name}  {board.title}{from_rack}, {form.text(raw.length)} x "
        f"{form.text(raw.width)}, {sheet.yield_fraction:.0%} used"
    ]
    if raw.cut_from is not None:
        lines += _sound_lines(raw, raw.cut_from, form)
    split = board_split(sheet, catalogue, shop)
    if split.store:
        lines.append(f"  at the store: {_saws(split.store, form)}")
        several = len({made.tool.key for made in split.store}) > 1
        lines += _table([(m.cut, m.tool.name if several else "") for m in split.store], form)
        kept = [name for name in split.carried if " trim " not in name]
        lines.append(f"    take home: {' | '.join(kept)}")
    at_home = sorted(
        [*((m.cut, m.tool.name) for m in split.home), *((c, BY_HAND) for c in split.impossible)],
        key=lambda pair: pair[0].number,
    )
    if at_home:
        saws = _saws(split.home, form) if split.home else BY_HAND
        lines.append(f"  at home: {saws}")
        several = len({tool for _, tool in at_home}) > 1
        lines += _table([(cut, tool if several else "") for cut, tool in at_home], form)
    if split.impossible:
        lines.append(f"    {BY_HAND}: the piece clamped; none of the saws can hold or reach it")
    if sheet.rests:
        largest = max(sheet.rests, key=lambda r: r.dx * r.dy)
        lines.append(f"  left whole: {form.text(largest.dx)} x {form.text(largest.dy)}"
                     f"{f', and {len(sheet.rests) - 1} smaller' if len(sheet.rests) > 1 else ''}")
    for finding in (f for f in split.findings if f.rule != "no-tool-for-cut"):
        lines += [f"  {text}" for text in finding_lines(finding)]
    return lines


def _sound_lines(raw: StockSheet, whole: CutFrom, form: LengthFormat) -> list[str]:
    """The cuts that free the sound part of a damaged offcut, its ends first, as
    ``stock.sound.around`` reckons; none where it reaches to the edge."""
    places = [
        f"{cut} at {form.text(at)}"
        for cut, low, high, full in (
            ("crosscut", whole.x, whole.x + raw.length, whole.length),
            ("rip", whole.y, whole.y + raw.width, whole.width),
        )
        for at, there in ((low, low > 0), (high, high < full)) if there
    ]
    return [
        f"  {sound_words(whole, form)}",
        f"  cut it out first, the saw on the damaged side: {', '.join(places)}, from the corner "
        "that the defects are measured from; the sizes below are of the sound part",
    ]


def _saws(cuts: Sequence[ToolCut], form: LengthFormat) -> str:
    words = []
    for tool in dict.fromkeys(made.tool for made in cuts):
        rough = (
            f"; rough, off by up to {fit_text(tool.tolerance, form)}: measure the first strip "
            "before the next is cut" if tool.rough else ""
        )
        words.append(f"{tool.name} (kerf {fit_text(tool.kerf, form)}{rough})")
    return ", ".join(words)


def cut_row(cut: Cut, form: LengthFormat) -> tuple[str, str, str, str, str, str]:
    """One cut in words: number, direction, piece, fence, what lies at the fence, what is left."""
    at_fence, *rest = cut.yields or ("",)
    return (
        str(cut.number), "rip" if cut.rip else "crosscut", cut.piece, form.text(cut.fence),
        at_fence, rest[0] if rest else "nothing",
    )


HEADS = ("no.", "cut", "piece", "fence", "at the fence then", "left")


def _table(cuts: Sequence[tuple[Cut, str]], form: LengthFormat) -> list[str]:
    """Cuts under each other, the saw behind each where one is named."""
    rows = [HEADS, *(cut_row(cut, form) for cut, _ in cuts)]
    named = any(tool for _, tool in cuts)
    tools = ["saw" if named else "", *(tool for _, tool in cuts)]
    widths = [max(len(row[i]) for row in rows) for i in range(len(HEADS))]
    lines = []
    for row, tool in zip(rows, tools, strict=True):
        cells = [row[0].rjust(widths[0]), *(
            cell.ljust(width) for cell, width in zip(row[1:], widths[1:], strict=True)
        )]
        lines.append("    " + "  ".join([*cells, tool]).rstrip())
    return lines


def _bar_lines(
    bar: BarPlan, panels: Mapping[str, Panel], catalogue: Catalogue, form: LengthFormat
) -> list[str]:
    stock = bar.stock
    wide = f" x {form.text(stock.width)}" if stock.width else ""
    at_hand = f", offcut {stock.key}" if stock.offcut else ""
    trim = f", {form.text(stock.trim)} off each end first" if stock.trim else ""
    lines = [
        f"  {bar.name}  {title_of(stock.material, catalogue)}{at_hand}, "
        f"{form.text(stock.length)}{wide}{trim}"
    ]
    if stock.defects:
        lines.append("         keep clear of what is damaged, "
                     + ", ".join(f"{form.text(a)} to {form.text(b)}" for a, b in stock.defects)
                     + ": all from the same end")
    for number, cut in enumerate(bar.cuts, 1):
        notes = [f"from {form.text(cut.start)} on"] if stock.defects else []
        panel = panels.get(cut.part)
        if panel is not None and stock.width - panel.cut_width > RIP_AWAY:
            notes.append(f"rip to {form.text(panel.cut_width)}")
        mitres = [t.rim.value for t in panel.tapers if t.rim.is_end] if panel else []
        if mitres:
            notes.append(f"allows for the mitre at its {' and '.join(mitres)}: mark the long "
                         f"point, {form.text(panel.cut_length if panel else 0.0)}, at the wall")
        lines.append(
            f"    {number:>3}  crosscut {form.text(cut.end - cut.start):<11} {cut.part}"
            f"{'   ' + '; '.join(notes) if notes else ''}"
        )
    lines.append(f"         left: {form.text(bar.rest)}")
    return lines


def write_cutting_order(
    path: Path, plan: Plan, parts: Sequence[CutPart], stock: Sequence[StockSheet],
    settings: CutSettings, catalogue: Catalogue, form: LengthFormat, shop: Shop | None = None,
    lengths: LengthPlan | None = None, sawn: Sequence[Part] = (),
    findings: Iterable[Finding] = (),
) -> Path:
    """Write the order as text; ``DocumentError`` where that cannot be done."""
    lines = cutting_order_lines(
        plan, parts, stock, settings, catalogue, form, shop, lengths, sawn, findings
    )
    return write_text_atomically(path, "\n".join([*lines, ""]), "cutting order")
