"""The drawings of the survey sheet: four views with the numbered lines that are measured."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from closetbench.core.survey_sheet import Blank, Point, SurveySheet, View
from closetbench.shop.language import Words
from closetbench.shop.page import INK, PAPER, Page, fitting_size

WHITE = "#ffffff"
GREY = "#6b655c"
"""Small print that is still read on paper."""
WALL = "#d9d5cd"
READ = "#2f5f85"
"""Lines that are measured."""
MARK = 0.072
"""Radius of a number's circle, inches."""
LANE, TICK = 0.11, 0.035
"""A reading along a wall is drawn so far inside it, the next so far again; half its ends."""
NEAR = 30.0
"""mm: nearer to a wall than this a reading counts as along it."""
LABEL, BETWEEN = 0.22, 0.4
"""Inches over a view for its name, and between two views."""
PLAN_SHARE = 0.3
"""Of the drawings' height, what the view from above may take."""
_SIDE_BY_SIDE = (View.FRONT, View.REAR, View.SIDE)

Line = tuple[Point, Point]


@dataclass(frozen=True)
class _Frame:
    """A view on the page: the closet's millimetres to inches."""

    x: float
    y: float
    scale: float
    size: Point

    def __call__(self, p: Point) -> Point:
        return self.x + self.scale * p[0], self.y + self.scale * p[1]

    @property
    def middle(self) -> float:
        return self.x + self.scale * self.size[0] / 2

    @property
    def top(self) -> float:
        return self.y + self.scale * self.size[1]


def draw_views(page: Page, sheet: SurveySheet, left: float, right: float, low: float,
               high: float) -> None:
    """The view from above on top, below it the others side by side, all that at one scale."""
    frames = _frames(sheet, left, right, low, high)
    side = frames[View.SIDE]
    # half of what parts two views is left at the right edge
    gap = 2 * (right - side.x - side.scale * side.size[0])
    for view, frame in frames.items():
        blanks = [b for b in sheet.blanks if b.view is view]
        name = _name(view, blanks, sheet, page.words)
        room = right - left if view is View.PLAN else (
            frame.scale * frame.size[0] + gap - 0.08)
        page.text((frame.middle, frame.top + 0.12), name, fitting_size([name], room, 0.2, 7.5),
                  GREY)
        _walls(page, sheet, view, frame)
        _measured(page, blanks, frame)


def _frames(sheet: SurveySheet, left: float, right: float, low: float, high: float) -> dict[
    View, _Frame
]:
    whole, tall = right - left, high - low
    wide, deep, up = sheet.width, sheet.depth, sheet.height
    room = (1 - PLAN_SHARE) * tall - LABEL - 0.1
    scale = min((whole - 3 * BETWEEN) / (2 * wide + deep), room / up)
    # what the elevations do not need is the plan's
    above = low + scale * up + LABEL + 0.2
    plan = min((whole - 0.4) / wide, (high - above - LABEL) / deep, 1.6 * scale)
    frames = {View.PLAN: _Frame((left + right - plan * wide) / 2, above, plan, (wide, deep))}
    gap = (whole - scale * (2 * wide + deep)) / 3
    x = left + gap / 2
    for view in _SIDE_BY_SIDE:
        across = deep if view is View.SIDE else wide
        frames[view] = _Frame(x, low, scale, (across, up))
        x += scale * across + gap
    return frames


def _name(view: View, blanks: Sequence[Blank], sheet: SurveySheet, words: Words) -> str:
    """The view's name, and what in it lies where it does not show."""
    name: str = words(view.value)
    if view is View.SIDE:
        return words("{0}, front at the left", name)
    upper = [
        str(b.number) for b in blanks
        if b.reading is not None and (b.reading.z or 0.0) > sheet.height / 2
    ]
    if view is not View.PLAN or not upper:
        return name
    return words("{0}; {1} at the high level", name, words(" and ").join(upper))


def _walls(page: Page, sheet: SurveySheet, view: View, frame: _Frame) -> None:
    w, h = frame.size
    corners = [frame(p) for p in ((0.0, 0.0), (w, 0.0), (w, h), (0.0, h))]
    page.shape(corners, "none", INK, 1.0)
    if sheet.opening is None:
        return
    x0, x1, head = sheet.opening
    if view is View.PLAN:
        page.line((frame((x0, 0.0)), frame((x1, 0.0))), WHITE, 1.6)
        for a, b in ((0.0, x0), (x1, w)):
            (ax, ay), (bx, _) = frame((a, 0.0)), frame((b, 0.0))
            page.shape(((ax, ay), (bx, ay), (bx, ay - 0.08), (ax, ay - 0.08)), WALL, INK, 0.5)
    elif view is View.FRONT:
        ring = [frame(p) for p in ((x0, 0.0), (x0, head), (x1, head), (x1, 0.0))]
        page.line(ring, GREY, 0.7, (1.0, 1.5))


def _measured(page: Page, blanks: Sequence[Blank], frame: _Frame) -> None:
    """The measured lines with their numbers, each where it is plain which line it is on."""
    lines = list(_lines(blanks, frame))
    for (a, b), blank in zip(lines, blanks, strict=True):
        page.line((a, b), READ, 0.6, (4.0, 2.0))
        if not _slanted(blank):
            for end in (a, b):
                _tick(page, end, upright=abs(b[1] - a[1]) < abs(b[0] - a[0]))
    taken: list[Point] = []
    for line, blank in zip(lines, blanks, strict=True):
        at = _free_spot(line, [o for o in lines if not _along(line, o)], taken)
        taken.append(at)
        page.circle(at, MARK, PAPER, READ)
        page.text(at, str(blank.number), 5.8, READ)


def _slanted(blank: Blank) -> bool:
    (ax, ay), (bx, by) = blank.start, blank.end
    return abs(ax - bx) > 1e-6 and abs(ay - by) > 1e-6


def _tick(page: Page, at: Point, upright: bool) -> None:
    dx, dy = (0.0, TICK) if upright else (TICK, 0.0)
    page.line(((at[0] - dx, at[1] - dy), (at[0] + dx, at[1] + dy)), READ, 0.8)


def _lines(blanks: Sequence[Blank], frame: _Frame) -> Iterator[Line]:
    """The lines on paper; those along a wall lie inside it, none upon another, and those along
    the floor below it, where no low reading lies."""
    lanes: dict[tuple[int, bool], list[tuple[float, float]]] = {}
    for blank in blanks:
        a, b = frame(blank.start), frame(blank.end)
        for axis in (0, 1):
            place, edge = blank.start[axis], frame.size[axis]
            if place == blank.end[axis] and (place < NEAR or place > edge - NEAR):
                other = 1 - axis
                reach = min(a[other], b[other]) + 0.01, max(a[other], b[other]) - 0.01
                others = lanes.setdefault((axis, place < NEAR), [])
                lane = 1 + sum(lo < reach[1] and reach[0] < hi for lo, hi in others)
                others.append(reach)
                floor = blank.view is not View.PLAN and axis == 1 and place < NEAR
                shift = LANE * lane * (1 if place < NEAR and not floor else -1)
                a, b = _moved(a, axis, shift), _moved(b, axis, shift)
                break
        yield a, b


def _moved(p: Point, axis: int, shift: float) -> Point:
    return (p[0] + shift, p[1]) if axis == 0 else (p[0], p[1] + shift)


def _along(one: Line, other: Line) -> bool:
    """Whether two lines lie on one another, as they do for readings one above the other."""
    return max(_distance(p, other) for p in one) < 0.03 or (
        max(_distance(p, one) for p in other) < 0.03)


def _distance(p: Point, line: Line) -> float:
    (ax, ay), (bx, by) = line
    length = (bx - ax) ** 2 + (by - ay) ** 2
    along = ((p[0] - ax) * (bx - ax) + (p[1] - ay) * (by - ay)) / length if length > 0 else 0.0
    share = min(1.0, max(0.0, along))
    return math.dist(p, (ax + share * (bx - ax), ay + share * (by - ay)))


def _free_spot(line: Line, others: Sequence[Line], taken: Sequence[Point]) -> Point:
    """A point of the line that is clear of other lines and of the numbers there, as near its
    middle as may be; else the clearest."""
    a, b = line
    shares = [0.5 + s * k / 50 for k in range(22) for s in (1, -1)]
    spots = [(a[0] + s * (b[0] - a[0]), a[1] + s * (b[1] - a[1])) for s in shares]

    def clear(p: Point) -> float:
        numbers = min((math.dist(p, q) / (2.3 * MARK) for q in taken), default=1.0)
        lines = min((_distance(p, o) / (1.4 * MARK) for o in others), default=1.0)
        return min(numbers, lines, 1.0)

    return max(spots, key=clear)
