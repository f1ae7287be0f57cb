"""The readings taken in a closet, as they were read.

Facing the closet: x to the right, y into the depth from the plumb plane of the front,
z up. "Front" readings are taken just inside that plane, "back" readings at the rear
wall, from corner to corner. Widths are taken level at three heights (``levels``), depths
and diagonals at the lowest of them, heights plumb in the corners. All lengths in mm. A
reading that was not taken is None.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum
from statistics import median

from closetbench.core.errors import SurveyError

READING_NAMES = {
    "width_front_low": "width at the front, low",
    "width_front_mid": "width at the front, middle",
    "width_front_high": "width at the front, high",
    "width_back_low": "width at the back, low",
    "width_back_mid": "width at the back, middle",
    "width_back_high": "width at the back, high",
    "height_front_left": "height at the front left",
    "height_front_right": "height at the front right",
    "height_back_left": "height at the back left",
    "height_back_right": "height at the back right",
    "depth_left": "depth along the left wall",
    "depth_right": "depth along the right wall",
    "diagonal_to_right": "diagonal from front left to back right",
    "diagonal_to_left": "diagonal from front right to back left",
    "lean_left_front": "lean of the left wall at the front",
    "lean_left_back": "lean of the left wall at the back",
    "lean_right_front": "lean of the right wall at the front",
    "lean_right_back": "lean of the right wall at the back",
    "lean_back_left": "lean of the back wall at the left",
    "lean_back_right": "lean of the back wall at the right",
    "rise_front": "rise of the floor from left to right at the front",
    "rise_back": "rise of the floor from left to right at the back",
    "rise_left": "rise of the floor from front to back at the left",
}
"""Every reading with its name as the user reads it."""


OPENING_NAMES = {
    "opening_width": "width of the opening",
    "opening_height": "height of the opening",
    "lintel": "height of the wall over the opening",
    "return_left": "return at the left of the opening",
    "return_right": "return at the right of the opening",
}
"""The readings of the opening: all are taken just inside the front."""

TRIM_NAMES = {
    "jamb_depth": "thickness of the wall at the opening",
    "baseboard_height": "height of the baseboard",
    "baseboard_thickness": "thickness of the baseboard",
    "casing_width": "width of the casing",
    "casing_thickness": "thickness of the casing",
    "door_thickness": "thickness of the closet's own door",
}
"""What stands around the opening and along the floor; these are taken at their word."""


class TapeClass(Enum):
    """Accuracy class of a tape: directive 2014/32/EU, Annex X, chapter I, material measures.

    Greatest permissible error: a + b L in mm, L in metres taken up to the next whole one,
    and c more where the tape's own end or hook is the start.
    """

    I = "I"  # noqa: E741
    II = "II"
    III = "III"

    def error(self, length: float) -> float:
        """Greatest permissible error of a length in mm read from the tape's hook, mm."""
        a, b, c = {"I": (0.1, 0.1, 0.1), "II": (0.3, 0.2, 0.2), "III": (0.6, 0.4, 0.3)}[self.value]
        return a + b * math.ceil(length / 1000.0 - 1e-9) + c


class Side(Enum):
    """A wall that a reading belongs to."""

    LEFT = "left"
    RIGHT = "right"
    BACK = "back"


class OwnDoor(Enum):
    """What closes the opening, as one faces the closet."""

    NONE = "none"
    LEFT = "hinged at the left"
    RIGHT = "hinged at the right"
    PAIR = "a pair, hinged at both sides"
    SLIDING = "two sliding panels"


class ReadingKind(Enum):
    """What an extra reading measures, and which places it needs.

    ``WIDTH``: wall to wall at y and z. ``DEPTH``: from the front to the rear wall at x and
    z. ``HEIGHT``: floor to ceiling at x and y. ``PLAN_DIAGONAL``: at height z from a front
    corner to the rear corner at ``side``. ``ELEVATION_DIAGONAL``: at depth y from a floor
    corner to the ceiling corner at ``side``. ``LEAN``: plumb offset of the wall at ``side``
    between z and z2, at y (side walls) or x (rear wall), positive where it leans into the
    closet on its way up. ``RISE``: level offset of the floor from (x, y) to (x2, y2).
    ``OPENING_WIDTH``: jamb to jamb at z. ``OPENING_HEIGHT``: floor to lintel at x, ``LINTEL``
    from there to the ceiling inside. ``RETURN``: from the side wall at ``side`` to the jamb at z.
    Where y may be left out, that is the rear wall or its corner.
    """

    WIDTH = "width"
    DEPTH = "depth"
    HEIGHT = "height"
    PLAN_DIAGONAL = "diagonal in plan"
    ELEVATION_DIAGONAL = "diagonal in elevation"
    LEAN = "lean"
    RISE = "rise"
    OPENING_WIDTH = "width of the opening"
    OPENING_HEIGHT = "height of the opening"
    LINTEL = "height over the opening"
    RETURN = "return beside the opening"


_NEEDED = {
    ReadingKind.WIDTH: ("z",),
    ReadingKind.DEPTH: ("x", "z"),
    ReadingKind.HEIGHT: ("x", "y"),
    ReadingKind.PLAN_DIAGONAL: ("z", "side"),
    ReadingKind.ELEVATION_DIAGONAL: ("side",),
    ReadingKind.LEAN: ("side", "z", "z2"),
    ReadingKind.RISE: ("x", "y", "x2", "y2"),
    ReadingKind.OPENING_WIDTH: ("z",),
    ReadingKind.OPENING_HEIGHT: ("x",),
    ReadingKind.LINTEL: ("x",),
    ReadingKind.RETURN: ("side", "z"),
}


@dataclass(frozen=True)
class Reading:
    """A reading beyond the usual ones, taken anywhere; see ``ReadingKind`` for the places.

    Places are in the room's frame, from the front left corner: rough is good enough, since
    the walls are nearly straight. ``label`` is what the user calls it.
    """

    kind: ReadingKind
    value: float
    x: float | None = None
    y: float | None = None
    z: float | None = None
    x2: float | None = None
    y2: float | None = None
    z2: float | None = None
    side: Side | None = None
    label: str = ""

    @property
    def name(self) -> str:
        """Label, or kind with its place."""
        if self.label:
            return self.label
        what = self.kind.value
        if self.side is not None:
            what += f" of the {self.side.value} wall" if self.kind is ReadingKind.LEAN else (
                f", {self.side.value}" if self.kind is ReadingKind.RETURN else
                f" to the {self.side.value}")
        places = [f"{k} {v:g}" for k in ("x", "y", "z", "x2", "y2", "z2")
                  if (v := getattr(self, k)) is not None]
        return f"{what} at {', '.join(places)}" if places else what

    def __post_init__(self) -> None:
        missing = [k for k in _NEEDED[self.kind] if getattr(self, k) is None]
        if self.kind is ReadingKind.LEAN and self.side is Side.BACK and self.x is None:
            missing.append("x")
        if missing:
            raise SurveyError(
                "survey", f"place of the {self.name}", "missing",
                f"must say where it was read: {', '.join(missing)}",
            )
        ends = (ReadingKind.PLAN_DIAGONAL, ReadingKind.ELEVATION_DIAGONAL, ReadingKind.RETURN)
        if self.kind in ends and self.side is Side.BACK:
            raise SurveyError("survey", self.name, "back", "must end at the left or at the right")
        _check_value(self.name, self.value, self.kind in (ReadingKind.LEAN, ReadingKind.RISE))


@dataclass(frozen=True)
class Obstacle:
    """A box in the room's frame that must stay clear: a pipe, a socket, a beam."""

    name: str
    x0: float
    y0: float
    z0: float
    x1: float
    y1: float
    z1: float

    def __post_init__(self) -> None:
        for axis in "xyz":
            low, high = getattr(self, f"{axis}0"), getattr(self, f"{axis}1")
            if not (math.isfinite(low) and math.isfinite(high) and low < high):
                raise SurveyError(
                    self.name, f"{axis}0 and {axis}1", f"{low:g} and {high:g} mm",
                    "must be lengths from the front left corner, the first below the second",
                )


@dataclass(frozen=True)
class Survey:
    """One closet's readings.

    ``lean_*``: plumb offset of a wall between the low and the high level, positive
    where the wall leans into the closet on its way up. ``rise_*``: level offset of the
    floor, positive where it rises. ``levels``: heights at which low, middle and high were
    read, above the floor in the front left corner (carry them round with a level). A plumb
    or level reading of 0 counts as read.

    ``opening_height``: floor to the underside of the lintel; ``lintel``: from there to the
    ceiling inside. ``return_*``: from the side wall to the jamb. A baseboard counts as
    staying in place where both its sizes are given. ``door``: what closes the opening, flush with
    the room's side of its wall; hinged, it opens to ``door_opens`` degrees. ``tape``,
    ``resolution`` (the step to which it was read) and ``level_error`` (mm in a metre of the
    level or plumb line; 0.5 is what spirit levels are commonly sold with, no published
    source) weigh the readings.
    """

    width_front_low: float
    width_front_mid: float
    width_front_high: float
    width_back_low: float
    width_back_mid: float
    width_back_high: float
    height_front_left: float
    height_front_right: float
    height_back_left: float
    height_back_right: float
    depth_left: float
    depth_right: float
    diagonal_to_right: float | None = None
    diagonal_to_left: float | None = None
    lean_left_front: float = 0.0
    lean_left_back: float = 0.0
    lean_right_front: float | None = None
    lean_right_back: float | None = None
    lean_back_left: float = 0.0
    lean_back_right: float = 0.0
    rise_front: float = 0.0
    rise_back: float = 0.0
    rise_left: float = 0.0
    levels: tuple[float, float, float] = (100.0, 1200.0, 2200.0)
    opening_width: float | None = None
    opening_height: float | None = None
    lintel: float | None = None
    return_left: float | None = None
    return_right: float | None = None
    jamb_depth: float = 120.0
    baseboard_height: float = 0.0
    baseboard_thickness: float = 0.0
    casing_width: float = 0.0
    casing_thickness: float = 0.0
    door: OwnDoor = OwnDoor.NONE
    door_thickness: float = 35.0
    door_opens: float = 90.0
    extras: tuple[Reading, ...] = ()
    obstacles: tuple[Obstacle, ...] = ()
    tape: TapeClass = TapeClass.II
    resolution: float = 1.0
    level_error: float = 0.5

    def __post_init__(self) -> None:
        for name, words in (READING_NAMES | OPENING_NAMES).items():
            value = getattr(self, name)
            if value is not None:
                _check_value(words, value, name.startswith(("lean", "rise")))
        for name, words in TRIM_NAMES.items():
            value = getattr(self, name)
            if not 0 <= value <= 1000:
                raise SurveyError("survey", words, f"{value:g} mm", "must be 0 to 1000 mm")
        if not 30 <= self.door_opens <= 180:
            raise SurveyError(
                "survey", "angle to which the closet's own door opens", f"{self.door_opens:g}°",
                "must be 30 to 180 degrees",
            )
        if not 0.01 <= self.resolution <= 20:
            raise SurveyError(
                "survey", "resolution of the readings", f"{self.resolution:g} mm",
                "must be 0.01 to 20 mm: the step to which the tape was read",
            )
        if not 0 <= self.level_error <= 10:
            raise SurveyError(
                "survey", "error of the level", f"{self.level_error:g} mm in a metre",
                "must be 0 to 10 mm in a metre",
            )
        self._check_units()
        low, mid, high = self.levels
        if not 0 <= low < mid < high:
            raise SurveyError(
                "survey", "levels", ", ".join(f"{v:g}" for v in self.levels),
                "must be three heights above the floor, rising",
            )
        ceiling = min(self.height_front_left, self.height_front_right,
                      self.height_back_left, self.height_back_right)
        if high > ceiling:
            raise SurveyError(
                "survey", "levels", ", ".join(f"{v:g}" for v in self.levels),
                f"must lie below the ceiling, {ceiling:g} mm; enter the heights that were read",
            )
        if self.opening_width is not None:
            room = median((self.width_front_low, self.width_front_mid, self.width_front_high))
            if self.opening_width > room + 20.0:
                raise SurveyError(
                    "survey", OPENING_NAMES["opening_width"], f"{self.opening_width:g} mm",
                    f"must not be wider than the closet behind it, {room:g} mm; measure between "
                    "the jambs, and the width inside, again",
                )

    def _check_units(self) -> None:
        """Refuse a reading that is off by the factor between two units.

        Compared with its own kind: widths, heights, depths and diagonals.
        """
        for kind in ("width_", "height_", "depth_", "diagonal_"):
            values = {
                n: v for n in READING_NAMES
                if n.startswith(kind) and (v := getattr(self, n)) is not None
            }
            for name, value in values.items():
                others = [v for n, v in values.items() if n != name]
                usual = median(others) if others else value
                ratio = max(value / usual, usual / value)
                if any(abs(ratio / f - 1) < 0.04 for f in (10.0, 12.0, 25.4, 304.8, 1000.0)):
                    raise SurveyError(
                        "survey", READING_NAMES[name], f"{value:g} mm",
                        f"does not go with {usual:g} mm for the "
                        f"{'others' if len(others) > 1 else 'other'} of its kind: one was read in "
                        "another unit; write the unit behind it",
                    )


def _check_value(name: str, value: float, signed: bool) -> None:
    if not math.isfinite(value) or (not signed and value <= 0):
        raise SurveyError("survey", name, f"{value:g} mm", "must be above 0 mm")
    if signed and abs(value) > 300.0:
        raise SurveyError(
            "survey", name, f"{value:g} mm",
            "must lie within 300 mm either way; enter the offset, not the distance",
        )
