"""The cutting order on paper: every sheet's cuts in the order sawn, store first, then home."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path

from closetbench.core.findings import Finding
from closetbench.core.lengths import LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Panel
from closetbench.core.parts import Part
from closetbench.shop.buying import title_of
from closetbench.shop.language import Words, mark, plain
from closetbench.shop.report import danger_lines, finding_lines
from closetbench.shop.words import fit_text, sound_words
from closetbench.stock.advice import strip_gains
from closetbench.stock.atomic import write_text_atomically
from closetbench.stock.carry import Carry
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
from closetbench.stock.tools import CutSplit, Shop, ToolCut, Where, split_cuts
from closetbench.stock.verify import require_valid

CARE = mark(
    "Support the sheet on both sides of the cut, clamp the straightedge, set the blade just "
    "through; eyes, ears and lungs protected; the saw's own manual goes before this list. Mark a "
    "part from the one it must meet wherever you can, and check the first cut before the others."
)
FENCE = mark(
    "Each cut: its number, as on the picture of the sheet; the piece that is sawn; the fence, "
    "which is what stays between fence (or straightedge) and blade; what lies at the fence after "
    "the cut, and what is left."
)
LENGTHS = mark(
    "One piece after the other from the same end; mark each one after the cut before it, then "
    "the kerf needs no arithmetic."
)
BY_HAND = mark("hand saw or mitre saw")
_MITRE = mark({
    "start": "allows for the mitre at its start: mark the long point, {0}, at the wall",
    "end": "allows for the mitre at its end: mark the long point, {0}, at the wall",
    "both": "allows for the mitre at its start and end: mark the long point, {0}, at the wall",
})
_TRIM, _REST = re.compile(r"([^:]+) trim (\d)"), re.compile(r"([^:]+) rest")
"""What is sawn off the edges, and what is left of a piece, as the plan calls them."""
RIP_AWAY = 0.05
"""mm: a board that is wider by no more than that is not ripped."""


def cutting_order_lines(
    plan: Plan, parts: Sequence[CutPart], stock: Sequence[StockSheet], settings: CutSettings,
    catalogue: Catalogue, form: LengthFormat, shop: Shop | None = None,
    lengths: LengthPlan | None = None, sawn: Sequence[Part] = (),
    findings: Iterable[Finding] = (), words: Words = plain,
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
    dangers = danger_lines(findings, words)
    lines = [*dangers, *([""] if dangers else []), words(CARE)]
    if plan.sheets:
        lines += ["", words(FENCE)]
    for sheet in plan.sheets:
        lines += ["", *_sheet_lines(sheet, catalogue, form, shop, words)]
    if lengths is not None and lengths.bars:
        lines += ["", words("by length"), f"  {words(LENGTHS)}"]
        panels = {p.full_name: p.panel for p in sawn}
        lines += [
            text for bar in lengths.bars
            for text in _bar_lines(bar, panels, catalogue, form, words)
        ]
    advice = strip_gains(parts, stock, settings.kerf, form.text)
    if advice:
        lines += ["", words("strip widths")]
        lines += [f"  {text}" for finding in advice for text in finding_lines(finding, words)]
    return lines


def board_split(sheet: SheetPlan, catalogue: Catalogue, shop: Shop) -> CutSplit:
    """The cuts of a sheet shared out as the shop says, no piece too much for one person."""
    board = catalogue.material(sheet.sheet.material)
    # an offcut is at home already
    tools = [t for t in shop.tools if t.where is Where.HOME or not sheet.sheet.offcut]
    return split_cuts(sheet, tools, shop.most, Carry(board.weight(1000.0, 1000.0)))


def _sheet_lines(
    sheet: SheetPlan, catalogue: Catalogue, form: LengthFormat, shop: Shop, words: Words
) -> list[str]:
    raw = sheet.sheet
    board = catalogue.material(raw.material)
    told = [
        words(board.title), *([words("offcut {0}", raw.key)] if raw.offcut else ()),
        f"{form.text(raw.length)} x {form.text(raw.width)}",
        words("{0} used", f"{sheet.yield_fraction:.0%}"),
    ]
    lines = [f"{sheet.name}  {', '.join(told)}"]
    if raw.cut_from is not None:
        lines += _sound_lines(raw, raw.cut_from, form, words)
    split = board_split(sheet, catalogue, shop)
    if split.store:
        saws = _saws(split.store, form, words)
        lines.append("  " + words("{0}: {1}", words("at the store"), saws))
        several = len({made.tool.key for made in split.store}) > 1
        lines += _table(
            [(m.as_sawn, words(m.tool.name) if several else "") for m in split.store], form, words)
        larger = ", ".join(m.larger for m in split.store if m.over)
        if larger:
            lines.append("    " + words(
                "left larger on purpose, the other side smaller by that: {0}", larger))
        kept = [name for name in split.carried if " trim " not in name]
        pieces = " | ".join(piece_words(name, words) for name in kept)
        lines.append("    " + words("{0}: {1}", words("take home"), pieces))
    at_home = sorted(
        [*((m.cut, words(m.tool.name)) for m in split.home),
         *((c, words(BY_HAND)) for c in split.impossible)],
        key=lambda pair: pair[0].number,
    )
    if at_home or split.to_size:
        saws = _saws(split.home, form, words) if split.home else words(BY_HAND)
        lines.append("  " + words("{0}: {1}", words("at home"), saws))
        lines += [f"    {text}" for text in size_words(split, form, words)]
        several = len({tool for _, tool in at_home}) > 1
        lines += _table([(cut, tool if several else "") for cut, tool in at_home], form, words)
    if split.impossible:
        none = words("the piece clamped; none of the saws can hold or reach it")
        lines.append("    " + words("{0}: {1}", words(BY_HAND), none))
    if sheet.rests:
        largest = max(sheet.rests, key=lambda r: r.dx * r.dy)
        size = f"{form.text(largest.dx)} x {form.text(largest.dy)}"
        lines.append("  " + (
            words("left whole: {0}, and {1} smaller", size, len(sheet.rests) - 1)
            if len(sheet.rests) > 1 else words("left whole: {0}", size)))
    for finding in (f for f in split.findings if f.rule != "no-tool-for-cut"):
        lines += [f"  {text}" for text in finding_lines(finding, words)]
    return lines


def size_words(split: CutSplit, form: LengthFormat, words: Words) -> list[str]:
    """What is brought to its size at home, since the store's saw is rough; none or one line."""
    sizes = [
        words("{0}: rip to {1}", name, form.text(size)) if rip
        else words("{0}: crosscut to {1}", name, form.text(size))
        for name, rip, size in split.to_size
    ]
    return [words("bring to size first: {0}", "; ".join(sizes))] if sizes else []


def _sound_lines(
    raw: StockSheet, whole: CutFrom, form: LengthFormat, words: Words
) -> list[str]:
    """The cuts that free the sound part of a damaged offcut, its ends first, as
    ``stock.sound.around`` reckons; none where it reaches to the edge."""
    places = [
        words("{0} at {1}", cut, form.text(at))
        for cut, low, high, full in (
            (words("crosscut"), whole.x, whole.x + raw.length, whole.length),
            (words("rip"), whole.y, whole.y + raw.width, whole.width),
        )
        for at, there in ((low, low > 0), (high, high < full)) if there
    ]
    return [
        f"  {sound_words(whole, form, words)}",
        "  " + words(
            "cut it out first, the saw on the damaged side: {0}, from the corner that the "
            "defects are measured from; the sizes below are of the sound part",
            ", ".join(places)),
    ]


def _saws(cuts: Sequence[ToolCut], form: LengthFormat, words: Words) -> str:
    saws = []
    for tool in dict.fromkeys(made.tool for made in cuts):
        about = words("kerf {0}", fit_text(tool.kerf, form))
        if tool.rough:
            about += "; " + words(
                "rough, off by up to {0}: measure the first strip before the next is cut",
                fit_text(tool.tolerance, form))
        saws.append(f"{words(tool.name)} ({about})")
    return ", ".join(saws)


def piece_words(name: str, words: Words) -> str:
    """What a piece is called: parts and strips by their names, what is left over in words."""
    trim, rest = _TRIM.fullmatch(name), _REST.fullmatch(name)
    if trim is not None:
        return words("{0} trim {1}", *trim.groups())
    return words("{0} rest", rest[1]) if rest is not None else name


def cut_row(
    cut: Cut, form: LengthFormat, words: Words = plain
) -> tuple[str, str, str, str, str, str]:
    """One cut in words: number, direction, piece, fence, what lies at the fence, what is left."""
    at_fence, *rest = cut.yields or ("",)
    return (
        str(cut.number), words("rip") if cut.rip else words("crosscut"),
        piece_words(cut.piece, words), form.text(cut.fence), piece_words(at_fence, words),
        piece_words(rest[0], words) if rest else words("nothing"),
    )


HEADS = mark(("no.", "cut", "piece", "fence", "at the fence then", "left"))


def _table(cuts: Sequence[tuple[Cut, str]], form: LengthFormat, words: Words) -> list[str]:
    """Cuts under each other, the saw behind each where one is named."""
    rows = [tuple(map(words, HEADS)), *(cut_row(cut, form, words) for cut, _ in cuts)]
    named = any(tool for _, tool in cuts)
    tools = [words("saw") if named else "", *(tool for _, tool in cuts)]
    widths = [max(len(row[i]) for row in rows) for i in range(len(HEADS))]
    lines = []
    for row, tool in zip(rows, tools, strict=True):
        cells = [row[0].rjust(widths[0]), *(
            cell.ljust(width) for cell, width in zip(row[1:], widths[1:], strict=True)
        )]
        lines.append("    " + "  ".join([*cells, tool]).rstrip())
    return lines


def _bar_lines(
    bar: BarPlan, panels: Mapping[str, Panel], catalogue: Catalogue, form: LengthFormat,
    words: Words,
) -> list[str]:
    stock = bar.stock
    wide = f" x {form.text(stock.width)}" if stock.width else ""
    told = [
        words(title_of(stock.material, catalogue)),
        *([words("offcut {0}", stock.key)] if stock.offcut else ()),
        f"{form.text(stock.length)}{wide}",
        *([words("{0} off each end first", form.text(stock.trim))] if stock.trim else ()),
    ]
    lines = [f"  {bar.name}  {', '.join(told)}"]
    crosscut = words("crosscut")
    if stock.defects:
        places = ", ".join(
            words("{0} to {1}", form.text(a), form.text(b)) for a, b in stock.defects)
        lines.append("         " + words(
            "keep clear of what is damaged, {0}: all from the same end", places))
    for number, cut in enumerate(bar.cuts, 1):
        notes = [words("from {0} on", form.text(cut.start))] if stock.defects else []
        panel = panels.get(cut.part)
        if panel is not None and stock.width - panel.cut_width > RIP_AWAY:
            notes.append(words("rip to {0}", form.text(panel.cut_width)))
        mitres = [t.rim.value for t in panel.tapers if t.rim.is_end] if panel else []
        if mitres:
            where = mitres[0] if len(mitres) == 1 else "both"
            notes.append(words(_MITRE[where], form.text(panel.cut_length if panel else 0.0)))
        lines.append(
            f"    {number:>3}  {crosscut} {form.text(cut.end - cut.start):<11} {cut.part}"
            f"{'   ' + '; '.join(notes) if notes else ''}"
        )
    lines.append("         " + words("left: {0}", form.text(bar.rest)))
    return lines


def write_cutting_order(
    path: Path, plan: Plan, parts: Sequence[CutPart], stock: Sequence[StockSheet],
    settings: CutSettings, catalogue: Catalogue, form: LengthFormat, shop: Shop | None = None,
    lengths: LengthPlan | None = None, sawn: Sequence[Part] = (),
    findings: Iterable[Finding] = (), words: Words = plain,
) -> Path:
    """Write the order as text; ``DocumentError`` where that cannot be done."""
    lines = cutting_order_lines(
        plan, parts, stock, settings, catalogue, form, shop, lengths, sawn, findings, words
    )
    return write_text_atomically(path, "\n".join([*lines, ""]), "cutting order")
