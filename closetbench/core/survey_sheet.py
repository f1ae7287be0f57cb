"""The survey sheet: which readings to take, in which order, and where each is entered.

Only data; ``shop.survey_sheet`` draws it. Views are seen as one stands: the plan from above,
front and rear elevation facing the closet, the side facing the left wall. Places are
millimetres of the closet at hand, so the sheet looks like it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import Enum

from closetbench.core.lengths import LengthFormat
from closetbench.core.readings import Places, places, recommended
from closetbench.core.survey import (
    OPENING_NAMES,
    READING_NAMES,
    TRIM_NAMES,
    Reading,
    ReadingKind,
    Side,
    Survey,
)


class View(Enum):
    """A drawing of the sheet; the coordinates that it shows."""

    PLAN = "from above"
    FRONT = "just inside the front"
    REAR = "at the rear wall"
    SIDE = "from the side"


Point = tuple[float, float]


@dataclass(frozen=True)
class Blank:
    """One reading to take: its number in the order of work, its name, where it is entered in
    a job file (``key``) and in FreeCAD (``prop``), what was read if it was, and the line
    that it measures in its view. ``how``: which way is positive; ``reading``: one taken
    elsewhere, with its place."""

    number: int
    name: str
    key: str
    prop: str
    view: View
    start: Point
    end: Point
    value: float | None = None
    how: str = ""
    reading: Reading | None = None


@dataclass(frozen=True)
class Size:
    """A size of what stands around the opening, taken at its word: no number, no drawing."""

    name: str
    key: str
    prop: str
    value: float | None = None


@dataclass(frozen=True)
class SurveySheet:
    """The sheet for a closet of these sizes; ``opening`` as x0, x1 and head, None unknown."""

    title: str
    width: float
    depth: float
    height: float
    levels: tuple[float, float, float]
    opening: tuple[float, float, float] | None
    blanks: tuple[Blank, ...]
    trim: tuple[Size, ...] = ()


ORDER = (
    "rise_front", "rise_left", "rise_back",
    "width_front_low", "width_front_mid", "width_front_high",
    "width_back_low", "width_back_mid", "width_back_high",
    "depth_left", "depth_right", "diagonal_to_right", "diagonal_to_left",
    "height_front_left", "height_front_right", "height_back_left", "height_back_right",
    "lean_left_front", "lean_left_back", "lean_right_front", "lean_right_back",
    "lean_back_left", "lean_back_right",
)
"""The usual readings as the work goes: level first, since the levels are carried round with
it; then across, along, up, and last the plumb line."""

LEVEL_FIRST = (
    "mark the low, middle and high level all round with the level, from the floor in the front "
    "left corner"
)


_ABOVE_FLOOR, _BELOW_CEILING = 0.05, 0.9
"""Where the low and the high level go in a closet of rough sizes, by its height."""


def rough_survey(size: tuple[float, float, float], step: float = 10.0) -> Survey:
    """The readings that a closet of this width, depth and height, mm, would have were it true:
    enough to draw the sheet for one that nobody has measured yet. Its levels, which have to be
    marked, are multiples of ``step`` mm where that leaves three of them."""
    width, depth, height = size
    shares = (_ABOVE_FLOOR, 0.5, _BELOW_CEILING)
    low, mid, high = (step * round(share * height / step) for share in shares)
    if not 0 < low < mid < high < height:
        low, mid, high = (share * height for share in shares)
    return Survey(
        width, width, width, width, width, width, height, height, height, height, depth, depth,
        levels=(low, mid, high),
    )


def level_step(form: LengthFormat) -> float:
    """Whole centimetres or whole inches, mm, by what the user reads."""
    return 25.4 if form.style in ("in", "in-frac", "ft-in") else 10.0


def property_name(key: str) -> str:
    """``width_front_low`` as ``WidthFrontLow``, the name of its property in FreeCAD."""
    return "".join(word.capitalize() for word in key.split("_"))


def survey_sheet(
    title: str, survey: Survey, *, blank: bool = False, full: bool = True
) -> SurveySheet:
    """The sheet for a closet; ``survey`` may hold rough sizes only.

    ``blank`` leaves the readings out, so that the closet is measured afresh; ``full`` adds
    the readings that let any wrong one be found.
    """
    at = places(survey)
    opening = None
    if survey.opening_width is not None:
        x0 = survey.return_left
        if x0 is None:
            x0 = (at.width - survey.opening_width) / 2
        opening = (x0, x0 + survey.opening_width, survey.opening_height or at.height)
    items = list(_usual(survey, at)) + list(_opening(survey, at))
    extras = survey.extras + (recommended(survey) if full else ())
    for i, reading in enumerate(extras, 1):
        taken = reading.value if i <= len(survey.extras) else None
        items.append(_extra(reading, at, taken, opening))
    blanks = tuple(
        replace(b, number=n, value=None if blank else b.value) for n, b in enumerate(items, 1)
    )
    return SurveySheet(
        title, at.width, at.depth, at.height, survey.levels, opening, blanks,
        tuple(_trim(survey, blank)),
    )


def _usual(survey: Survey, at: Places) -> Iterator[Blank]:
    levels = {"low": at.low, "mid": at.mid, "high": at.high}
    for name in ORDER:
        kind, *where = name.split("_")
        right = "right" in where
        x = at.width if right else 0.0
        how = ""
        if kind == "width":
            view = View.FRONT if where[0] == "front" else View.REAR
            z = levels[where[1]]
            line = (0.0, z), (at.width, z)
        elif kind == "height":
            view = View.FRONT if where[0] == "front" else View.REAR
            line = (x, 0.0), (x, at.height)
        elif kind == "depth":
            view, line = View.PLAN, ((x, 0.0), (x, at.depth))
        elif kind == "diagonal":
            view, line = View.PLAN, ((at.width - x, 0.0), (x, at.depth))
        elif kind == "lean":
            how = "+ into the closet on its way up"
            if where[0] == "back":
                view, line = View.SIDE, ((at.depth, at.low), (at.depth, at.high))
            else:
                view = View.FRONT if where[1] == "front" else View.REAR
                x = at.width if where[0] == "right" else 0.0
                line = (x, at.low), (x, at.high)
        else:
            how = "+ where it rises"
            if where[0] == "left":
                view, line = View.SIDE, ((0.0, 0.0), (at.depth, 0.0))
            else:
                view = View.FRONT if where[0] == "front" else View.REAR
                line = (0.0, 0.0), (at.width, 0.0)
        yield Blank(0, READING_NAMES[name], name, property_name(name), view, *line,
                    getattr(survey, name), how)


def _opening(survey: Survey, at: Places) -> Iterator[Blank]:
    wide = survey.opening_width or 0.8 * at.width
    x0 = (at.width - wide) / 2 if survey.return_left is None else survey.return_left
    x1, head = x0 + wide, survey.opening_height or 0.85 * at.height
    middle = (x0 + x1) / 2
    lines: dict[str, tuple[View, Point, Point]] = {
        "opening_width": (View.PLAN, (x0, 0.0), (x1, 0.0)),
        "return_left": (View.PLAN, (0.0, 0.0), (x0, 0.0)),
        "return_right": (View.PLAN, (x1, 0.0), (at.width, 0.0)),
        "opening_height": (View.FRONT, (middle, 0.0), (middle, head)),
        "lintel": (View.FRONT, (middle, head), (middle, at.height)),
    }
    for name, words in OPENING_NAMES.items():
        yield Blank(0, words, name, property_name(name), *lines[name], getattr(survey, name))


def _of_opening(
    r: Reading, at: Places, opening: tuple[float, float, float]
) -> tuple[Point, Point]:
    x0, x1, head = opening
    x, z = r.x or 0.0, r.z or 0.0
    if r.kind is ReadingKind.OPENING_WIDTH:
        return (x0, z), (x1, z)
    if r.kind is ReadingKind.RETURN:
        return ((0.0, z), (x0, z)) if r.side is Side.LEFT else ((x1, z), (at.width, z))
    if r.kind is ReadingKind.OPENING_HEIGHT:
        return (x, 0.0), (x, head)
    return (x, head), (x, at.height)


def _trim(survey: Survey, blank: bool) -> Iterator[Size]:
    for name, words in TRIM_NAMES.items():
        value = getattr(survey, name)
        unread = blank or value == getattr(Survey, name)
        yield Size(words, name, property_name(name), None if unread else value)


def _extra(
    r: Reading, at: Places, taken: float | None, opening: tuple[float, float, float] | None
) -> Blank:
    kind = ReadingKind
    x = r.x if r.x is not None else at.width if r.side is Side.RIGHT else 0.0
    y = at.depth if r.y is None else r.y
    z = r.z or 0.0
    rear = y > at.depth / 2
    level = View.REAR if rear else View.FRONT
    to = at.width if r.side is Side.RIGHT else 0.0
    how = ""
    if r.kind is kind.WIDTH:
        view, line = level, ((0.0, z), (at.width, z))
    elif r.kind is kind.HEIGHT:
        view, line = level, ((x, 0.0), (x, at.height))
    elif r.kind is kind.ELEVATION_DIAGONAL:
        view, line = level, ((at.width - to, 0.0), (to, at.height))
    elif r.kind is kind.DEPTH:
        view, line = View.SIDE, ((0.0, z), (at.depth, z))
    elif r.kind is kind.PLAN_DIAGONAL:
        view, line = View.PLAN, ((at.width - to, 0.0), (to, at.depth))
    elif r.kind is kind.LEAN:
        how = "+ inward"
        if r.side is Side.BACK:
            view, line = View.SIDE, ((at.depth, z), (at.depth, r.z2 or 0.0))
        else:
            view, line = level, ((to, z), (to, r.z2 or 0.0))
    elif r.kind is kind.RISE:
        how = "+ where it rises"
        view, line = View.PLAN, ((x, y), (r.x2 or 0.0, r.y2 or 0.0))
    else:
        view, line = View.FRONT, _of_opening(r, at, opening or (0.1 * at.width, 0.9 * at.width,
                                                               0.85 * at.height))
    return Blank(0, r.name, "extra", "ExtraReadings", view, *line, taken, how, r)
