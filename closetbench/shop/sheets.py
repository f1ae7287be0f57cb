"""Pictures of the cutting: every sheet with its parts, offcuts and kerfs."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Sequence
from pathlib import Path

from closetbench.core.errors import DocumentError
from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Point
from closetbench.core.parts import Part
from closetbench.shop.colours import BAND, role_colour, shaded
from closetbench.shop.language import Words, mark, plain
from closetbench.shop.lay import LaidPart, Side, lay_sheet
from closetbench.shop.page import FAINT, INK, LINE, Page, check_ending, fitting_size, text_width
from closetbench.shop.words import fit_text, sound_words
from closetbench.stock.plan import Plan, SheetPlan
from closetbench.stock.verify import require_sawable

_WASTE = "#ece7dd"
_OFFCUT = "#f7f4ec"
_KERF = "#8c3b37"
_COLUMN = 7.4
_MARGIN = 0.45
_HEAD = 1.05
_FOOT = 0.7
_GAP = 0.35
_LEAST_TEXT = 3.2
_MOST_TEXT = 9.0
_SMALL_TEXT = 5.0
_SUBJECT = "sheet layout"
_KEYS = mark((
    "offcut", "waste", "kerf", "edge to be banded", "groove in the underside", "arrow: grain"))
_KEY_GAPS = 3 * 0.5 + 2 * 0.53
"""Inches beside the words of the key: its swatches and what parts them."""


def sheets_page(
    plan: Plan, parts: Sequence[Part], title: str, form: LengthFormat = MILLIMETRES,
    catalogue: Catalogue | None = None, words: Words = plain,
) -> Page:
    """All sheets of a plan on one page, at one scale; two side by side from the third on.

    ``catalogue``: where the materials' titles come from; without it their keys stand.
    Raises ``LayoutError`` for a plan that cannot be sawn and ``DocumentError`` when plan and
    parts do not belong together.
    """
    if not plan.sheets:
        raise DocumentError(_SUBJECT, "number of sheets", 0, "plan the cutting first")
    require_sawable(plan.sheets)
    laid = [lay_sheet(s, parts, _SUBJECT) for s in plan.sheets]
    columns = 1 if len(plan.sheets) <= 2 else 2
    scale = _COLUMN / max(s.sheet.length for s in plan.sheets)
    rows = [plan.sheets[i:i + columns] for i in range(0, len(plan.sheets), columns)]
    heights = [max(s.sheet.width for s in row) * scale + 0.42 for row in rows]
    width = 2 * _MARGIN + columns * _COLUMN + (columns - 1) * _GAP
    height = _HEAD + sum(heights) + _GAP * (len(rows) - 1) + _FOOT
    page = Page(width, height, _SUBJECT, words=words)
    page.text((_MARGIN, height - 0.42), title, 14.0, align="left", bold=True)
    below = _summary(plan, words)
    size = fitting_size([below], width - 2 * _MARGIN, 0.3, 8.5)
    page.text((_MARGIN, height - 0.7), below, size, FAINT, align="left")
    counts = Counter(p.name for p in parts)
    clear_names = {name for name, count in counts.items() if count == 1}
    top = height - _HEAD
    here = iter(zip(plan.sheets, laid, strict=True))
    for row, tall in zip(rows, heights, strict=True):
        for column in range(len(row)):
            sheet, on_it = next(here)
            x = _MARGIN + column * (_COLUMN + _GAP)
            SheetDrawing(page, sheet, on_it, x, top, scale, form, clear_names).draw(catalogue)
        top -= tall + _GAP
    _legend(page)
    return page


def write_sheets(
    path: str | Path, plan: Plan, parts: Sequence[Part], title: str,
    form: LengthFormat = MILLIMETRES, catalogue: Catalogue | None = None, words: Words = plain,
) -> Path:
    """Save the sheets as PNG, SVG or PDF, by the ending of the name."""
    check_ending(path, _SUBJECT)
    return sheets_page(plan, parts, title, form, catalogue, words).write(path)


def _summary(plan: Plan, words: Words) -> str:
    count = len(plan.sheets)
    used = sum(s.used_area for s in plan.sheets)
    whole = sum(s.sheet.length * s.sheet.width for s in plan.sheets)
    sheets = words("{0} sheets", count) if count > 1 else words("1 sheet")
    return words(
        "{0}, parts take {1} of {2} m²; parts lie as they are sawn, the machined face up",
        sheets, f"{used / whole:.0%}", f"{whole / 1e6:.2f}")


class SheetDrawing:
    """One sheet being drawn, its upper left corner (with the heading) at (left, top)."""

    def __init__(
        self, page: Page, sheet: SheetPlan, laid: Sequence[LaidPart], left: float, top: float,
        scale: float, form: LengthFormat, clear_names: Collection[str],
    ) -> None:
        self.clear_names = clear_names
        self.page, self.sheet, self.laid, self.form = page, sheet, laid, form
        self.left, self.top, self.scale = left, top, scale
        self.low = top - 0.42 - sheet.sheet.width * scale + 0.12

    def at(self, p: Point) -> Point:
        return self.left + p[0] * self.scale, self.low + p[1] * self.scale

    def box(self, x: float, y: float, dx: float, dy: float) -> list[Point]:
        return [self.at(p) for p in ((x, y), (x + dx, y), (x + dx, y + dy), (x, y + dy))]

    def draw(self, catalogue: Catalogue | None) -> None:
        stock = self.sheet.sheet
        tell = self.page.words
        material = tell(catalogue.material(stock.material).title) if catalogue else stock.material
        size = f"{self.form.text(stock.length)} x {self.form.text(stock.width)}"
        bits = [material, size, tell("kerf {0}", fit_text(self.sheet.kerf, self.form)),
                tell("{0} used", f"{self.sheet.yield_fraction:.0%}")]
        if stock.offcut:
            bits.insert(1, tell("offcut {0}", stock.key))
        if stock.cut_from is not None:
            bits.append(sound_words(stock.cut_from, self.form, tell))
        self.page.text((self.left, self.top - 0.1), self.sheet.name, 11.0, align="left", bold=True)
        x = self.left + text_width(self.sheet.name, 11.0, bold=True) + 0.15
        room = stock.length * self.scale - (x - self.left)
        words = ", ".join(bits)
        self.page.text((x, self.top - 0.1), words, fitting_size([words], room, 0.3, 8.5), INK,
                       align="left")
        self.page.shape(self.box(0.0, 0.0, stock.length, stock.width), _WASTE, INK, 1.0)
        for rest in self.sheet.rests:
            self.rest(rest.x, rest.y, rest.dx, rest.dy)
        self.kerfs()
        for part in self.laid:
            self.part(part)

    def rest(self, x: float, y: float, dx: float, dy: float) -> None:
        page = self.page
        page.shape(self.box(x, y, dx, dy), _OFFCUT, "#cfc6b4", 0.5, hatch="////")
        words = page.words("offcut {0}", f"{self.form.text(dx)} x {self.form.text(dy)}")
        upright = dy > dx
        long, short = max(dx, dy) * self.scale, min(dx, dy) * self.scale
        size = fitting_size([words], 0.9 * long, 0.8 * short, 7.5)
        if size < _LEAST_TEXT:
            return
        cx, cy = self.at((x + dx / 2, y + dy / 2))
        w, h = text_width(words, size) / 2 + 0.05, size / 72 * 0.75
        if upright:
            w, h = h, w
        ring = [(cx - w, cy - h), (cx + w, cy - h), (cx + w, cy + h), (cx - w, cy + h)]
        page.shape(ring, _OFFCUT)
        page.text((cx, cy), words, size, FAINT, turn=90.0 if upright else 0.0)

    def kerfs(self) -> None:
        half = self.sheet.kerf / 2
        for cut in self.sheet.cuts:
            dx, dy = (0.0, half) if cut.rip else (half, 0.0)
            x, y = min(cut.x0, cut.x1) - dx, min(cut.y0, cut.y1) - dy
            ring = self.box(x, y, abs(cut.x1 - cut.x0) + 2 * dx, abs(cut.y1 - cut.y0) + 2 * dy)
            self.page.shape(ring, _KERF)

    def part(self, laid: LaidPart) -> None:
        page = self.page
        fill = shaded(role_colour(laid.part.role), 1.25)
        page.shape([self.at(p) for p in laid.outline], fill, INK, 0.45)
        for trace in laid.traces:
            under = trace.side is Side.UNDER
            ring = [self.at(p) for p in trace.points]
            if under:
                page.line([*ring, ring[0]], shaded(fill, 0.55), 0.5, (3.0, 2.0))
            else:
                page.shape(ring, shaded(fill, 0.72), shaded(fill, 0.5), 0.3)
        for drill in laid.drills:
            colour = shaded(fill, 0.62 if drill.side is Side.UNDER else 0.3)
            page.circle(self.at(drill.centre), drill.diameter / 2 * self.scale, colour)
        for band in laid.bands:
            ix, iy = band.inward
            inset = 0.014 / self.scale
            page.line([self.at((x + ix * inset, y + iy * inset)) for x, y in
                       (band.start, band.end)], BAND, 1.6)
        self.words(laid)

    def words(self, laid: LaidPart) -> None:
        """Name, size and grain, in the lines that come out largest beside the grooves."""
        part = laid.part
        size = (f"{self.form.text(part.panel.cut_length)} x "
                f"{self.form.text(part.panel.cut_width)}")
        x0, y0, x1, y1 = (v * self.scale for v in laid.word_room())
        long, short = (y1 - y0, x1 - x0) if laid.upright else (x1 - x0, y1 - y0)
        arrow = 0.0 if laid.grain is None else 1.0
        ways: list[tuple[str, ...]] = [
            (part.full_name, size), (f"{part.component}:", part.name, size),
            (f"{part.full_name}, {size}",),
        ]
        points, lines = self.largest(ways, long, short, arrow)
        if points < _SMALL_TEXT and part.name in self.clear_names:
            ways = [lines, (part.name, size), (f"{part.name}, {size}",)]
            points, lines = self.largest(ways, long, short, arrow)
        middle = (self.left + (x0 + x1) / 2, self.low + (y0 + y1) / 2)
        if len(lines) == 1:
            self.alone(laid, lines[0], points, middle, long)
        else:
            self.stacked(laid, lines, points, middle, long)

    def largest(
        self, ways: Sequence[tuple[str, ...]], long: float, short: float, arrow: float
    ) -> tuple[float, tuple[str, ...]]:
        """The way of setting the words that allows the largest, and how large, in points."""
        best: tuple[float, tuple[str, ...]] = (0.0, ways[0])
        for lines in ways:
            alone = len(lines) == 1
            points = fitting_size(
                lines, 0.92 * long - (0.3 * arrow if alone else 0.0), 0.94 * short, _MOST_TEXT,
                bold=not alone, lines=len(lines) + (0.0 if alone else arrow),
            )
            if points > best[0] + 0.2:
                best = points, lines
        return best

    def alone(
        self, laid: LaidPart, line: str, points: float, middle: Point, long: float
    ) -> None:
        """One line of words with the arrow behind it."""
        self.page.text(middle, line, points, turn=90.0 if laid.upright else 0.0)
        wide = text_width(line, points)
        room = (long - wide) / 2
        self.grain(laid, _beside(laid, middle, 0.0, (wide + room) / 2), min(0.3 * room, 0.2),
                   0.4 * points / 72)

    def stacked(
        self, laid: LaidPart, lines: Sequence[str], points: float, middle: Point, long: float
    ) -> None:
        """Lines of words, the last the size, with the arrow under them."""
        step = points * LINE / 72
        count = len(lines) + (0 if laid.grain is None else 1)
        for i, line in enumerate(lines):
            lift = step * ((count - 1) / 2 - i)
            self.page.text(
                _beside(laid, middle, lift), line, points,
                turn=90.0 if laid.upright else 0.0, bold=line is not lines[-1],
            )
        at = _beside(laid, middle, -step * (count - 1) / 2)
        self.grain(laid, at, min(3.5 * step, 0.4 * long), 0.35 * step)

    def grain(self, laid: LaidPart, middle: Point, along: float, across: float) -> None:
        """A double arrow with the grain; as long as there is room in its direction."""
        if laid.grain is None:
            return
        gx, gy = abs(laid.grain[0]), abs(laid.grain[1])
        half = along if (gy > 0.5) == laid.upright else across
        barb = min(0.045, 0.6 * half)
        cx, cy = middle
        self.page.line(((cx - half * gx, cy - half * gy), (cx + half * gx, cy + half * gy)),
                       INK, 0.6)
        for sign in (-1.0, 1.0):
            tip = (cx + sign * half * gx, cy + sign * half * gy)
            tails = [
                (tip[0] - sign * barb * gx + s * barb * 0.5 * gy,
                 tip[1] - sign * barb * gy + s * barb * 0.5 * gx) for s in (-1.0, 1.0)
            ]
            self.page.shape([tip, *tails], INK)


def _beside(laid: LaidPart, middle: Point, lift: float, shift: float = 0.0) -> Point:
    """A point over (``lift``) and along (``shift``) the words of a part."""
    x, y = middle
    return (x - lift, y + shift) if laid.upright else (x + shift, y + lift)


def _legend(page: Page) -> None:
    """What the colours and lines mean, on one line as large as it fits."""
    told = [page.words(text) for text in _KEYS]
    room = page.width - 2 * _MARGIN - _KEY_GAPS
    size = fitting_size(["".join(told)], room, 0.3, 8.0)
    x, y = _MARGIN, 0.3
    for words, fill, hatch in zip(told, (_OFFCUT, _WASTE, _KERF), ("////", "", ""), strict=False):
        ring = ((x, y), (x + 0.22, y), (x + 0.22, y + 0.13), (x, y + 0.13))
        page.shape(ring, fill, INK if not hatch else "#b9ae98", 0.4, hatch)
        page.text((x + 0.28, y + 0.065), words, size, align="left")
        x += 0.5 + text_width(words, size)
    for words, colour, width, dashes in zip(
        told[3:], (BAND, FAINT), (1.6, 0.7), (None, (3.0, 2.0)), strict=False
    ):
        page.line(((x, y + 0.065), (x + 0.25, y + 0.065)), colour, width, dashes)
        page.text((x + 0.31, y + 0.065), words, size, align="left")
        x += 0.53 + text_width(words, size)
    page.text((x, y + 0.065), told[-1], size, align="left")
