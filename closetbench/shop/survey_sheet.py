"""The survey sheet on paper: drawings of the closet with numbered readings, and blanks.

Portrait pages, A4, as PDF, SVG or PNG: one for the usual readings, then those that are taken
elsewhere, each page with the drawings of its own. Every blank has its key in the job file and
the name of its property in FreeCAD beneath its name.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.core.survey import Reading
from closetbench.core.survey_sheet import LEVEL_FIRST, Blank, Size, SurveySheet
from closetbench.shop.language import Words, mark, plain
from closetbench.shop.page import INK, Page, check_ending, fitting_size, text_width, write_pages
from closetbench.shop.survey_views import GREY, READ, WHITE, draw_views

SUBJECT = "survey sheet"
WIDTH, HEIGHT = 210 / 25.4, 297 / 25.4
EDGE = 0.45
HEAD = 1.22
"""Inches from the top of the page to the drawings."""
ROW, EXTRA_ROW, LEAST_DRAWN = 0.238, 0.335, 3.0
"""Inches: of a reading's row, of one that has its place too, of the drawings at least."""
COLUMNS = 2
BLANK = 0.95
"""Length of a blank, inches."""
OBSTACLES = 3
"""Rows for what must stay clear."""
MOST_EXTRAS = 28
"""Readings taken elsewhere on one page."""
TABLES = mark("under each name: key in the job file  ·  property of the survey in FreeCAD")
EXTRAS = mark(
    "under each name: a table [[survey.extra]] in the job file  ·  a line of the survey's "
    "ExtraReadings in FreeCAD, “Readings taken elsewhere” in its panel"
)
FOOT = mark(
    "A reading at a return or behind a baseboard is taken above it. Doubtful readings are found "
    "when all of them are entered; a reading taken twice by two people is found sooner."
)


def write_survey_sheet(
    sheet: SurveySheet, path: str | Path, form: LengthFormat = MILLIMETRES,
    words: Words = plain,
) -> tuple[Path, ...]:
    """Draw the sheet; lengths that were read already are printed as ``form`` says.

    A PDF holds all its pages; of pictures there is one for each. Raises ``DocumentError`` for
    an ending that is no picture's and where a file cannot be written.
    """
    check_ending(path, SUBJECT)
    usual = [b for b in sheet.blanks if b.reading is None]
    others = [b for b in sheet.blanks if b.reading is not None]
    rest = [others[i:i + MOST_EXTRAS] for i in range(0, len(others), MOST_EXTRAS)]
    sheets = [
        replace(sheet, blanks=tuple(blanks), trim=() if n else sheet.trim)
        for n, blanks in enumerate([usual, *rest])
    ]
    return write_pages(
        [_page(one, n, len(sheets), form, words) for n, one in enumerate(sheets, 1)], path)


def _page(
    sheet: SurveySheet, number: int, count: int, form: LengthFormat, words: Words
) -> Page:
    page = Page(WIDTH, HEIGHT, SUBJECT, WHITE, words)
    _head(page, sheet, words("{0} of {1}", number, count), form)
    low = EDGE + 0.12
    if number == 1:
        low = _obstacles(page, low) + 0.1
    top = _table(page, sheet, low, form)
    below = words(TABLES if number == 1 else EXTRAS)
    page.text((EDGE, top + 0.1), below, fitting_size([below], WIDTH - 2 * EDGE, 0.12, 6.3), GREY,
              align="left")
    draw_views(page, sheet, EDGE, WIDTH - EDGE, top + 0.42, HEIGHT - HEAD)
    page.paragraph((EDGE, EDGE - 0.14), words(FOOT), WIDTH - 2 * EDGE, 0.25, 6.3, GREY)
    return page


def _head(page: Page, sheet: SurveySheet, number: str, form: LengthFormat) -> None:
    title = page.words("Survey: {0}", sheet.title)
    page.text((WIDTH - EDGE, HEIGHT - 0.28), number, 7.0, GREY, align="right")
    room = WIDTH - 2 * EDGE - 3.0
    page.text((EDGE, HEIGHT - 0.5), title, fitting_size([title], room, 0.3, 13.0, True),
              align="left", bold=True)
    x = WIDTH - EDGE - 2.9
    for text, start, end in (
        (page.words("date"), 0.0, 1.03), (page.words("by"), 1.0, 1.92),
        (page.words("unit"), 1.95, 2.9),
    ):
        page.text((x + start, HEIGHT - 0.5), text, 7.0, GREY, align="left")
        ruled = max(x + start + 0.22, x + start + text_width(text, 7.0) + 0.04)
        page.line(((ruled, HEIGHT - 0.56), (x + end - 0.06, HEIGHT - 0.56)), INK, 0.5)
    for k, line in enumerate((
        page.words("First {0}: {1}.", page.words(LEVEL_FIRST),
                   ", ".join(form.text(v) for v in sheet.levels)),
        page.words(
            "Then take the readings in the order of their numbers; read each to the tape's nearest "
            "step, and write down what you read, not what you expect."),
        page.words(
            "± Lean, from the low to the high level: + where the wall comes into the closet on its "
            "way up. Rise: + where the floor goes up on the way named."),
    )):
        page.text((EDGE, HEIGHT - 0.75 - 0.145 * k), line,
                  fitting_size([line], WIDTH - 2 * EDGE, 0.14, 7.4), align="left")


def _table(page: Page, sheet: SurveySheet, low: float, form: LengthFormat) -> float:
    """The blanks in columns from ``low`` up; where their top is, inches."""
    rows: list[Blank | Size] = [*sheet.blanks, *sheet.trim]
    heights = [EXTRA_ROW if isinstance(r, Blank) and r.reading else ROW for r in rows]
    room = HEIGHT - HEAD - LEAST_DRAWN - 0.42 - low
    columns = _columns(heights)
    tall = max(sum(heights[i] for i in column) for column in columns)
    squeeze = min(1.0, room / tall)
    top = low + squeeze * tall
    width = (WIDTH - 2 * EDGE) / COLUMNS
    for c, column in enumerate(columns):
        y = top
        for i in column:
            _row(page, rows[i], EDGE + c * width, y - 0.1, width - 0.15, form)
            y -= squeeze * heights[i]
    return top


def _columns(heights: Sequence[float]) -> list[list[int]]:
    """Which rows stand in which column, so that no column is much taller than another."""
    share, filled = sum(heights) / COLUMNS, 0.0
    columns: list[list[int]] = [[] for _ in range(COLUMNS)]
    for i, height in enumerate(heights):
        columns[min(COLUMNS - 1, int((filled + height / 2) / share))].append(i)
        filled += height
    return columns


def _row(
    page: Page, row: Blank | Size, x: float, y: float, width: float, form: LengthFormat
) -> None:
    line = width - BLANK
    room = line - 0.42
    if isinstance(row, Blank):
        page.text((x + 0.1, y), str(row.number), 8.0, READ, bold=True)
        if row.how:
            page.text((x + line - 0.06, y - 0.02), "±", 7.5, GREY)
    name = page.words(row.name)
    page.text((x + 0.27, y + 0.035), name, fitting_size([name], room, 0.15, 7.9), align="left")
    below = f"{row.key}  ·  {row.prop}"
    page.text((x + 0.27, y - 0.075), below, fitting_size([below], room, 0.12, 6.3), GREY,
              align="left")
    if isinstance(row, Blank) and row.reading is not None:
        place = _place(row.reading, form)
        page.text((x + 0.27, y - 0.175), place, fitting_size([place], width - 0.3, 0.12, 6.3),
                  GREY, align="left")
    page.line(((x + line, y - 0.085), (x + width, y - 0.085)), INK, 0.5)
    if row.value is not None:
        page.text((x + width - 0.05, y), form.text(row.value), 7.4, align="right")


def _place(r: Reading, form: LengthFormat) -> str:
    """What a table of the job file says of the place, with its unit."""
    found = [f'kind = "{r.kind.value}"']
    for key in ("x", "y", "z", "x2", "y2", "z2"):
        value = getattr(r, key)
        if value is not None:
            text = form.text(value)
            found.append(f"{key} = '{text}'" if '"' in text else f'{key} = "{text}"')
    if r.side is not None:
        found.append(f'side = "{r.side.value}"')
    return ", ".join(found)


def _obstacles(page: Page, low: float) -> float:
    """Blanks for what must stay clear, from ``low`` up; where their top is."""
    y = low
    for _ in range(OBSTACLES):
        name = page.words("name")
        page.text((EDGE, y + 0.03), name, 6.2, GREY, align="left")
        start = EDGE + max(0.3, text_width(name, 6.2) + 0.05)
        page.line(((start, y), (EDGE + 1.85, y)), INK, 0.5)
        for k, key in enumerate(("x0", "x1", "y0", "y1", "z0", "z1")):
            x = EDGE + 2.0 + 0.9 * k
            page.text((x, y + 0.03), key, 6.2, GREY, align="left")
            page.line(((x + 0.17, y), (x + 0.8, y)), INK, 0.5)
        y += 0.22
    clear = page.words(
        "What must stay clear (pipe, socket, beam), from the front left corner: x to the right, "
        "y into the depth, z up  ·  [[survey.obstacle]]  ·  Obstacles")
    page.text((EDGE, y + 0.04), clear, fitting_size([clear], WIDTH - 2 * EDGE, 0.12, 6.4),
              align="left")
    return y + 0.12
