"""The survey sheet on paper: drawings of the closet with numbered readings, and blanks.

One portrait page, A4, as PDF, SVG or PNG. Every blank has its key in the job file and the
name of its property in FreeCAD beneath its name.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.core.survey_sheet import LEVEL_FIRST, Blank, Point, SurveySheet, View
from closetbench.shop.page import FAINT, INK, PAPER, Page, check_ending, fitting_size

SUBJECT = "survey sheet"
WIDTH, HEIGHT = 210 / 25.4, 297 / 25.4
EDGE = 0.4
ROW = 0.215
COLUMNS = 2
MARK = 0.066
"""Radius of a number's circle, inches."""
WALL = "#cfc8bb"
READ = "#3d6b8f"
"""Lines that are measured."""


def write_survey_sheet(
    sheet: SurveySheet, path: str | Path, form: LengthFormat = MILLIMETRES
) -> Path:
    """Draw the sheet; lengths that were read already are printed as ``form`` says.

    Raises ``DocumentError`` for an ending that is no picture's and where the file cannot be
    written.
    """
    check_ending(path, SUBJECT)
    page = Page(WIDTH, HEIGHT, SUBJECT)
    page.text((EDGE, HEIGHT - 0.45), f"Survey: {sheet.title}", 13.0, align="left", bold=True)
    page.text(
        (EDGE, HEIGHT - 0.68),
        f"First {LEVEL_FIRST}: {', '.join(form.text(v) for v in sheet.levels)}.",
        7.0, FAINT, align="left",
    )
    page.text(
        (EDGE, HEIGHT - 0.83),
        "Then take the readings in the order of their numbers; read each to the tape's nearest "
        "step, and write down what you read, not what you expect.",
        7.0, FAINT, align="left",
    )
    rows = math.ceil(len(sheet.blanks) / COLUMNS)
    top = EDGE + rows * ROW + 0.25
    _drawings(page, sheet, top + 0.1, HEIGHT - 1.0)
    _table(page, sheet, rows, top, form)
    return page.write(path)


@dataclass(frozen=True)
class _Frame:
    """A view on the page: the closet's millimetres to inches."""

    x: float
    y: float
    scale: float

    def __call__(self, p: Point) -> Point:
        return self.x + self.scale * p[0], self.y + self.scale * p[1]


def _drawings(page: Page, sheet: SurveySheet, low: float, high: float) -> None:
    """The four views, two beside two, all at one scale per row."""
    half_w, half_h = (WIDTH - 2 * EDGE) / 2, (high - low) / 2
    sizes = {
        View.PLAN: (sheet.width, sheet.depth), View.FRONT: (sheet.width, sheet.height),
        View.REAR: (sheet.width, sheet.height), View.SIDE: (sheet.depth, sheet.height),
    }
    cells = {
        View.PLAN: (0, 1), View.SIDE: (1, 1), View.FRONT: (0, 0), View.REAR: (1, 0),
    }
    for view, (column, row) in cells.items():
        w, h = sizes[view]
        scale = min((half_w - 0.55) / w, (half_h - 0.5) / h)
        x = EDGE + column * half_w + (half_w - scale * w) / 2
        y = low + row * half_h + (half_h - 0.2 - scale * h) / 2
        frame = _Frame(x, y, scale)
        page.text((EDGE + (column + 0.5) * half_w, low + (row + 1) * half_h - 0.08), view.value,
                  8.0, FAINT)
        _walls(page, sheet, view, frame, (w, h))
        _measured(page, [b for b in sheet.blanks if b.view is view], frame)


def _walls(page: Page, sheet: SurveySheet, view: View, frame: _Frame, size: Point) -> None:
    w, h = size
    corners = [frame(p) for p in ((0.0, 0.0), (w, 0.0), (w, h), (0.0, h))]
    page.shape(corners, "none", INK, 1.0)
    if sheet.opening is None:
        return
    x0, x1, head = sheet.opening
    if view is View.PLAN:
        for a, b in ((0.0, x0), (x1, w)):
            (ax, ay), (bx, _) = frame((a, 0.0)), frame((b, 0.0))
            page.shape(((ax, ay), (bx, ay), (bx, ay - 0.07), (ax, ay - 0.07)), WALL, INK, 0.5)
        page.line((frame((x0, 0.0)), frame((x1, 0.0))), PAPER, 1.6)
    elif view is View.FRONT:
        ring = [frame(p) for p in ((x0, 0.0), (x0, head), (x1, head), (x1, 0.0))]
        page.line(ring, FAINT, 0.7, (3.0, 2.0))


def _measured(page: Page, blanks: Sequence[Blank], frame: _Frame) -> None:
    """The measured lines with their numbers, none upon another where it can be helped."""
    taken: list[Point] = []
    for blank in blanks:
        a, b = frame(blank.start), frame(blank.end)
        page.line((a, b), READ, 0.6, (4.0, 2.0))
    for blank in blanks:
        a, b = frame(blank.start), frame(blank.end)
        at = _free_spot(a, b, taken)
        taken.append(at)
        page.circle(at, MARK, PAPER, READ)
        page.text(at, str(blank.number), 5.5, READ)


def _free_spot(a: Point, b: Point, taken: Sequence[Point]) -> Point:
    """A point along the line that keeps clear of the numbers there, else the clearest."""
    shares = [0.5 + s * k / 40 for k in range(18) for s in (1, -1)]
    spots = [(a[0] + s * (b[0] - a[0]), a[1] + s * (b[1] - a[1])) for s in shares]

    def clear(p: Point) -> float:
        return min((math.dist(p, q) for q in taken), default=math.inf)

    free = next((p for p in spots if clear(p) > 2.2 * MARK), None)
    return free if free is not None else max(spots, key=clear)


def _table(page: Page, sheet: SurveySheet, rows: int, top: float, form: LengthFormat) -> None:
    width = (WIDTH - 2 * EDGE) / COLUMNS
    for i, blank in enumerate(sheet.blanks):
        column, row = divmod(i, rows)
        x, y = EDGE + column * width, top - 0.2 - row * ROW
        page.text((x + 0.1, y), str(blank.number), 7.0, READ, bold=True)
        line = width - 1.15
        page.text((x + 0.25, y + 0.045), blank.name,
                  fitting_size([blank.name], line - 0.3, 0.12, 6.8), align="left")
        below = f"{blank.key}  ·  {blank.prop}" + (f"  ·  {blank.how}" if blank.how else "")
        page.text((x + 0.25, y - 0.05), below,
                  fitting_size([below], line - 0.3, 0.1, 4.8), FAINT, align="left")
        page.line(((x + line, y - 0.07), (x + width - 0.15, y - 0.07)), INK, 0.5)
        if blank.value is not None:
            page.text((x + width - 0.2, y + 0.01), form.text(blank.value), 7.0, align="right")
    page.text(
        (EDGE, EDGE - 0.12),
        "A reading at a return or behind a baseboard is taken above it. Doubtful readings are "
        "found when all of them are entered; a reading taken twice by two people is found sooner.",
        5.5, FAINT, align="left",
    )
