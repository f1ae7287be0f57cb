"""The cutting order as pages for the wall by the saw: each sheet with its cuts numbered, and
the list of the cuts beside it."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from closetbench.core.errors import DocumentError
from closetbench.core.lengths import LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.parts import Part
from closetbench.shop.cutting_order import CARE, HEADS, board_split, cut_row, size_words
from closetbench.shop.language import Words, mark, plain
from closetbench.shop.lay import lay_sheet
from closetbench.shop.page import FAINT, INK, PAPER, Page, check_ending, fitting_size, text_width
from closetbench.shop.sheets import SheetDrawing
from closetbench.stock.plan import Cut, Plan, SheetPlan
from closetbench.stock.tools import Shop
from closetbench.stock.verify import require_sawable

_SUBJECT = "cutting pages"
_WIDTH = 11.0
_MARGIN = 0.5
_LINE = 0.2
_KEY = mark(
    "blue: at the store; red: at home; fence: what stays between fence or straightedge and blade"
)
_STORE, _HOME = "#1f5f8b", "#8c3b37"
_TURNS = (0.06, 0.94, 0.13, 0.87, 0.22, 0.78, 0.5)
"""Where along its cut a number may stand, so that numbers of crossing cuts stay apart."""


def cutting_page(
    sheet: SheetPlan, parts: Sequence[Part], catalogue: Catalogue, form: LengthFormat, shop: Shop,
    words: Words = plain,
) -> Page:
    """One sheet: the picture with each cut numbered where it runs, the cuts in order under it,
    those of the store apart from those at home by colour and words."""
    laid = lay_sheet(sheet, parts, _SUBJECT)
    scale = (_WIDTH - 2 * _MARGIN) / sheet.sheet.length
    split = board_split(sheet, catalogue, shop)
    store = {made.cut.number for made in split.store}
    sawn = {made.cut.number: made.as_sawn for made in (*split.store, *split.home)}
    cuts = [sawn.get(cut.number, cut) for cut in sheet.cuts]
    half = -(-len(cuts) // 2)
    drawn = sheet.sheet.width * scale + 0.42
    height = 0.55 + drawn + 0.35 + (half + 2) * _LINE + 0.75
    page = Page(_WIDTH, height, _SUBJECT, words=words)
    top = height - 0.3
    drawing = SheetDrawing(page, sheet, laid, _MARGIN, top, scale, form, ())
    drawing.draw(catalogue)
    placed: list[tuple[float, float]] = []
    for cut in sheet.cuts:
        at = _free(cut, drawing, placed)
        placed.append(at)
        colour = _STORE if cut.number in store else _HOME
        page.circle(at, 0.1, PAPER, colour)
        page.text(at, str(cut.number), 7.0, colour, bold=True)
    y = top - drawn - 0.25
    _list(page, cuts, store, form, y, half)
    for line in size_words(split, form, words):
        page.text((_MARGIN, 0.64), line, fitting_size([line], _WIDTH - 2 * _MARGIN, 0.3, 7.5),
                  _HOME, align="left")
    page.text((_MARGIN, 0.5), words(_KEY), 7.5, INK, align="left")
    page.paragraph((_MARGIN, 0.25), words(CARE), _WIDTH - 2 * _MARGIN, 0.3, 6.5)
    return page


def write_cutting_pages(
    folder: Path, plan: Plan, parts: Sequence[Part], catalogue: Catalogue, form: LengthFormat,
    shop: Shop, ending: str = ".png", words: Words = plain,
) -> tuple[Path, ...]:
    """A picture for each sheet, ``S1.png`` and so on. ``ending``: .png, .svg or .pdf.

    Raises ``DocumentError`` where one cannot be made or written, ``LayoutError`` for a plan
    that cannot be sawn.
    """
    check_ending(f"page{ending}", _SUBJECT)
    require_sawable(plan.sheets)
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise DocumentError(
            _SUBJECT, "folder", str(folder), f"cannot be made: {error.strerror or error}"
        ) from error
    return tuple(
        cutting_page(sheet, parts, catalogue, form, shop, words).write(
            folder / f"{sheet.name}{ending}")
        for sheet in plan.sheets
    )


def _free(
    cut: Cut, drawing: SheetDrawing, placed: Sequence[tuple[float, float]]
) -> tuple[float, float]:
    """Where the number of a cut stands: on its line, as far from other numbers as can be."""
    (ax, ay), (bx, by) = drawing.at((cut.x0, cut.y0)), drawing.at((cut.x1, cut.y1))
    spots = [(ax + t * (bx - ax), ay + t * (by - ay)) for t in _TURNS]

    def room(spot: tuple[float, float]) -> float:
        return min(
            (abs(spot[0] - x) + abs(spot[1] - y) for x, y in placed), default=9.0)

    return next((s for s in spots if room(s) > 0.28), max(spots, key=room))


def _list(
    page: Page, cuts: Sequence[Cut], store: set[int], form: LengthFormat, top: float, half: int
) -> None:
    """The cuts in two columns, every row in the colour of who makes it."""
    wide = (_WIDTH - 2 * _MARGIN - 0.3) / 2
    for column in range(2):
        mine = cuts[column * half:(column + 1) * half]
        if not mine:
            continue
        rows = [
            tuple(map(page.words, HEADS)), *(cut_row(cut, form, page.words) for cut in mine)]
        size = 7.5
        needed = [max(text_width(row[i], size) for row in rows) + 0.12 for i in range(len(HEADS))]
        size *= min(1.0, wide / sum(needed))
        starts = [sum(needed[:i]) * size / 7.5 for i in range(len(HEADS))]
        left = _MARGIN + column * (wide + 0.3)
        for line, row in enumerate(rows):
            colour = FAINT if line == 0 else _STORE if mine[line - 1].number in store else _HOME
            for start, cell in zip(starts, row, strict=True):
                page.text((left + start, top - line * _LINE), cell, size, colour, align="left")
