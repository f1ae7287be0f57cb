"""What a reading constrains: two spots of the room, and what was measured between them.

A spot is three coordinates, each a number or a surface of the room that it lies on. Spots
are level or plumb with each other as the reading was taken, so their numbers need only be
rough: the surfaces are nearly flat there.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace
from enum import IntEnum

from closetbench.core.survey import (
    OPENING_NAMES,
    READING_NAMES,
    Reading,
    ReadingKind,
    Side,
    Survey,
    TapeClass,
)


class On(IntEnum):
    """A surface of the room, in the order of its coefficients."""

    LEFT = 0
    RIGHT = 1
    BACK = 2
    FLOOR = 3
    CEILING = 4
    JAMB_LEFT = 5
    JAMB_RIGHT = 6
    LINTEL = 7
    START = 8
    """No surface: the coordinate of the reading's other end, plumb above or level with it."""


Spot = tuple[float | On, float | On, float | On]

OPENING_ALONG = 0.5
"""Where along the opening its height is taken to be read, as a share of the width."""


@dataclass(frozen=True)
class Observation:
    """A reading with its two spots and its weight.

    ``axis`` None: the distance between the spots; else the coordinate of ``end`` less that
    of ``start``, times ``sign``. ``sd``: standard deviation in mm of what is this reading's
    own; ``common``: of what is the tape's and so the same in every reading.
    """

    key: str
    name: str
    value: float
    start: Spot
    end: Spot
    sd: float
    common: float = 0.0
    axis: int | None = None
    sign: float = 1.0


@dataclass(frozen=True)
class Places:
    """The rough places of the corners, at which the usual readings are taken."""

    width: float
    depth: float
    height: float
    low: float
    mid: float
    high: float


def places(survey: Survey) -> Places:
    """Rough places from the readings themselves; medians, so that no blunder moves them."""
    widths = sorted(getattr(survey, n) for n in READING_NAMES if n.startswith("width_"))
    heights = sorted(getattr(survey, n) for n in READING_NAMES if n.startswith("height_"))
    return Places(
        (widths[2] + widths[3]) / 2, (survey.depth_left + survey.depth_right) / 2,
        (heights[1] + heights[2]) / 2, *survey.levels,
    )


def reading_sd(resolution: float) -> float:
    """Standard deviation of reading to the nearest step: even over the step (JCGM 100:2008,
    4.3.7)."""
    return resolution / math.sqrt(12.0)


def tape_sd(tape: TapeClass, length: float) -> float:
    """Standard deviation of a tape's error: even within the greatest permissible one."""
    return tape.error(length) / math.sqrt(3.0)


def observations(survey: Survey) -> tuple[Observation, ...]:
    """Every reading of a survey that was taken."""
    at = places(survey)
    found = [
        one for name in READING_NAMES
        if (one := usual(survey, at, name, getattr(survey, name))) is not None
    ]
    found += [
        one for name in OPENING_NAMES
        if (one := _opening(survey, at, name, getattr(survey, name))) is not None
    ]
    found += [_extra(survey, at, i, r) for i, r in enumerate(survey.extras, 1)]
    return tuple(found)


def recommended(survey: Survey) -> tuple[Reading, ...]:
    """The readings that make a room fully measured: with these any single blunder shows, and
    so does any bow or twist that ``room_model`` knows.

    The values are rough ones. What the survey has already is left out.
    """
    at = places(survey)
    # whole millimetres are easier to find on the wall
    at = replace(at, width=round(at.width), depth=round(at.depth), height=round(at.height))
    wanted = [*_checks(at), *_bows(at), *_of_opening(survey, at)]
    return tuple(r for r in wanted if not any(_same_place(r, e) for e in survey.extras))


def _checks(at: Places) -> list[Reading]:
    """What checks the usual readings."""
    flat, steep = math.hypot(at.width, at.depth), math.hypot(at.width, at.height)
    corner = min(60.0, at.width / 4)
    kind = ReadingKind
    return [
        Reading(kind.DEPTH, at.depth, x=corner, z=at.high,
                label="depth near the left wall, high"),
        Reading(kind.DEPTH, at.depth, x=at.width - corner, z=at.high,
                label="depth near the right wall, high"),
        Reading(kind.PLAN_DIAGONAL, flat, z=at.high, side=Side.RIGHT,
                label="diagonal from front left to back right, high"),
        Reading(kind.PLAN_DIAGONAL, flat, z=at.high, side=Side.LEFT,
                label="diagonal from front right to back left, high"),
        Reading(kind.ELEVATION_DIAGONAL, steep, y=0.0, side=Side.RIGHT,
                label="diagonal at the front, rising to the right"),
        Reading(kind.ELEVATION_DIAGONAL, steep, y=0.0, side=Side.LEFT,
                label="diagonal at the front, rising to the left"),
        Reading(kind.ELEVATION_DIAGONAL, steep, side=Side.RIGHT,
                label="diagonal at the back, rising to the right"),
        Reading(kind.ELEVATION_DIAGONAL, steep, side=Side.LEFT,
                label="diagonal at the back, rising to the left"),
        Reading(kind.RISE, 0.0, x=at.width, y=0.0, x2=at.width, y2=at.depth,
                label="rise of the floor from front to back at the right"),
        Reading(kind.RISE, 0.0, x=0.0, y=0.0, x2=at.width, y2=at.depth,
                label="rise of the floor from front left to back right"),
    ]


def _bows(at: Places) -> list[Reading]:
    """What shows a bow half way along or half way up, each twice."""
    kind, half = ReadingKind, round(at.width / 2)
    return [
        Reading(kind.LEAN, 0.0, y=0.0, z=at.low, z2=at.mid, side=Side.LEFT,
                label="lean of the left wall at the front, half way up"),
        Reading(kind.LEAN, 0.0, y=0.0, z=at.low, z2=at.mid, side=Side.RIGHT,
                label="lean of the right wall at the front, half way up"),
        Reading(kind.LEAN, 0.0, x=0.0, z=at.low, z2=at.mid, side=Side.BACK,
                label="lean of the back wall at the left, half way up"),
        Reading(kind.LEAN, 0.0, x=at.width, z=at.low, z2=at.mid, side=Side.BACK,
                label="lean of the back wall at the right, half way up"),
        Reading(kind.DEPTH, at.depth, x=half, z=at.low, label="depth in the middle, low"),
        Reading(kind.DEPTH, at.depth, x=half, z=at.high, label="depth in the middle, high"),
        Reading(kind.HEIGHT, at.height, x=half, y=0.0, label="height at the front, in the middle"),
        Reading(kind.HEIGHT, at.height, x=half, y=at.depth,
                label="height at the back, in the middle"),
        Reading(kind.RISE, 0.0, x=0.0, y=0.0, x2=half, y2=0.0,
                label="rise of the floor from left to the middle at the front"),
        Reading(kind.RISE, 0.0, x=0.0, y=at.depth, x2=half, y2=at.depth,
                label="rise of the floor from left to the middle at the back"),
    ]


def _of_opening(survey: Survey, at: Places) -> list[Reading]:
    """What checks the readings of an opening, which else only check each other."""
    s, kind, found = survey, ReadingKind, []
    if s.opening_width is not None and s.return_left is not None:
        high = round(0.9 * min(s.opening_height or at.height, at.height))
        found += [
            Reading(kind.OPENING_WIDTH, s.opening_width, z=high,
                    label="width of the opening, high"),
            Reading(kind.RETURN, s.return_left, z=high, side=Side.LEFT,
                    label="return at the left of the opening, high"),
        ]
    if s.opening_height is not None:
        left = 0.0 if s.return_left is None else round(s.return_left)
        found.append(Reading(kind.OPENING_HEIGHT, s.opening_height, x=left,
                             label="height of the opening at the left jamb"))
    return found


def _same_place(a: Reading, b: Reading, within: float = 150.0) -> bool:
    if a.kind is not b.kind or a.side is not b.side:
        return False
    for name in ("x", "y", "z", "x2", "y2", "z2"):
        p, q = getattr(a, name), getattr(b, name)
        if (p is None) != (q is None) or (p is not None and abs(p - q) > within):
            return False
    return True


def candidates(survey: Survey) -> tuple[Observation, ...]:
    """The readings that were not taken: the usual ones, then the recommended ones."""
    at = places(survey)
    rough = {"diagonal": math.hypot(at.width, at.depth)}
    found = [
        one for name in READING_NAMES if getattr(survey, name) is None
        and (one := usual(survey, at, name, rough.get(name.split("_")[0], 0.0))) is not None
    ]
    start = len(survey.extras) + 1
    found += [_extra(survey, at, i, r) for i, r in enumerate(recommended(survey), start)]
    return tuple(found)


def usual(survey: Survey, at: Places, name: str, value: float | None) -> Observation | None:
    """A usual reading by its name in ``Survey``; None where it was not taken."""
    if value is None:
        return None
    kind, *where = name.split("_")
    y: float | On = On.BACK if "back" in where else 0.0
    x = On.RIGHT if "right" in where else On.LEFT
    words = READING_NAMES[name]
    if kind == "width":
        z = {"low": at.low, "mid": at.mid, "high": at.high}[where[1]]
        return _tape(survey, name, words, value, (On.LEFT, y, z), (On.RIGHT, y, z))
    if kind == "height":
        return _plumb_height(survey, name, words, value, x, On.BACK if where[0] == "back" else 0.0)
    if kind == "depth":
        return _tape(survey, name, words, value, (x, 0.0, at.low), (x, On.BACK, at.low))
    if kind == "diagonal":
        start = On.LEFT if x is On.RIGHT else On.RIGHT
        return _tape(survey, name, words, value, (start, 0.0, at.low), (x, On.BACK, at.low))
    if kind == "lean":
        side = Side(where[0])
        across = _rough(at, where[1]) if side is Side.BACK else (
            at.depth if where[1] == "back" else 0.0)
        return _lean(survey, name, words, value, side, across, at.low, at.high)
    length = at.depth if where[0] == "left" else at.width
    ends: tuple[Spot, Spot] = {
        "front": ((On.LEFT, 0.0, On.FLOOR), (On.RIGHT, 0.0, On.FLOOR)),
        "back": ((On.LEFT, On.BACK, On.FLOOR), (On.RIGHT, On.BACK, On.FLOOR)),
        "left": ((On.LEFT, 0.0, On.FLOOR), (On.LEFT, On.BACK, On.FLOOR)),
    }[where[0]]
    return _rise(survey, name, words, value, ends, length)


def _rough(at: Places, side: str) -> float:
    return at.width if side == "right" else 0.0


def _opening(survey: Survey, at: Places, name: str, value: float | None) -> Observation | None:
    if value is None:
        return None
    x, z = at.width * OPENING_ALONG, at.mid
    start, end = {
        "opening_width": ((On.JAMB_LEFT, 0.0, z), (On.JAMB_RIGHT, 0.0, z)),
        "return_left": ((On.LEFT, 0.0, z), (On.JAMB_LEFT, 0.0, z)),
        "return_right": ((On.JAMB_RIGHT, 0.0, z), (On.RIGHT, 0.0, z)),
        "opening_height": ((x, 0.0, On.FLOOR), (x, 0.0, On.LINTEL)),
        "lintel": ((x, 0.0, On.LINTEL), (x, 0.0, On.CEILING)),
    }[name]
    return _tape(survey, name, OPENING_NAMES[name], value, start, end)


def _extra(survey: Survey, at: Places, number: int, r: Reading) -> Observation:
    key, name = f"extra {number}", r.name
    y: float | On = On.BACK if r.y is None else r.y
    z = 0.0 if r.z is None else r.z
    x = 0.0 if r.x is None else r.x
    to_right = r.side is Side.RIGHT
    sides = (On.LEFT, On.RIGHT) if to_right else (On.RIGHT, On.LEFT)
    if r.kind is ReadingKind.WIDTH:
        return _tape(survey, key, name, r.value, (On.LEFT, y, z), (On.RIGHT, y, z))
    if r.kind is ReadingKind.DEPTH:
        return _tape(survey, key, name, r.value, (x, 0.0, z), (x, On.BACK, z))
    if r.kind is ReadingKind.HEIGHT:
        return _plumb_height(survey, key, name, r.value, x, r.y or 0.0)
    if r.kind is ReadingKind.PLAN_DIAGONAL:
        return _tape(survey, key, name, r.value, (sides[0], 0.0, z), (sides[1], On.BACK, z))
    if r.kind is ReadingKind.ELEVATION_DIAGONAL:
        return _tape(
            survey, key, name, r.value, (sides[0], y, On.FLOOR), (sides[1], y, On.CEILING)
        )
    if r.kind is ReadingKind.LEAN:
        assert r.side is not None
        across = x if r.side is Side.BACK else at.depth if r.y is None else r.y
        return _lean(survey, key, name, r.value, r.side, across, z, r.z2 or 0.0)
    if r.kind in _OF_OPENING:
        return _tape(survey, key, name, r.value, *_OF_OPENING[r.kind](r, x, z))
    a, b = (x, r.y or 0.0), (r.x2 or 0.0, r.y2 or 0.0)
    return _rise(survey, key, name, r.value, ((*a, On.FLOOR), (*b, On.FLOOR)), math.dist(a, b))


_OF_OPENING: dict[ReadingKind, Callable[[Reading, float, float], tuple[Spot, Spot]]] = {
    ReadingKind.OPENING_WIDTH: lambda r, x, z: ((On.JAMB_LEFT, 0.0, z), (On.JAMB_RIGHT, 0.0, z)),
    ReadingKind.RETURN: lambda r, x, z: (
        ((On.LEFT, 0.0, z), (On.JAMB_LEFT, 0.0, z)) if r.side is Side.LEFT
        else ((On.JAMB_RIGHT, 0.0, z), (On.RIGHT, 0.0, z))),
    ReadingKind.OPENING_HEIGHT: lambda r, x, z: ((x, 0.0, On.FLOOR), (x, 0.0, On.LINTEL)),
    ReadingKind.LINTEL: lambda r, x, z: ((x, 0.0, On.LINTEL), (x, 0.0, On.CEILING)),
}


def _tape(
    survey: Survey, key: str, name: str, value: float, start: Spot, end: Spot
) -> Observation:
    # One tape errs alike in every reading; how much of its error that is, nobody knows. So
    # the whole of it counts as the reading's own, and half of its variance once more in common.
    error = tape_sd(survey.tape, value)
    own = math.hypot(error, reading_sd(survey.resolution))
    return Observation(key, name, value, start, end, own, error / math.sqrt(2.0))


def _plumb_height(
    survey: Survey, key: str, name: str, value: float, x: float | On, y: float | On
) -> Observation:
    return _tape(
        survey, key, name, value, (x, y, On.FLOOR), (On.START, On.START, On.CEILING)
    )


def _lean(
    survey: Survey, key: str, name: str, value: float, side: Side, across: float, z: float,
    z2: float,
) -> Observation:
    def spot(height: float) -> Spot:
        if side is Side.BACK:
            return across, On.BACK, height
        return On.LEFT if side is Side.LEFT else On.RIGHT, across, height

    return Observation(
        key, name, value, spot(z), spot(z2), _level_sd(survey, abs(z2 - z)),
        axis=1 if side is Side.BACK else 0, sign=1.0 if side is Side.LEFT else -1.0,
    )


def _rise(
    survey: Survey, key: str, name: str, value: float, ends: tuple[Spot, Spot], length: float
) -> Observation:
    return Observation(key, name, value, *ends, _level_sd(survey, length), axis=2)


def _level_sd(survey: Survey, length: float) -> float:
    own = survey.level_error * length / 1000.0 / math.sqrt(3.0)
    return math.hypot(own, reading_sd(survey.resolution))
