"""The readings taken in a closet, as they were read.

Facing the closet: x to the right, y into the depth from the plumb plane of the front,
z up. "Front" readings are taken just inside that plane, "back" readings at the rear
wall, from corner to corner. Widths are taken level at three heights (``levels``), depths
and diagonals at the lowest of them, heights plumb in the corners. All lengths in mm. A
reading that was not taken is None.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, fields

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


@dataclass(frozen=True)
class Survey:
    """One closet's readings.

    ``lean_*``: plumb offset of a wall between the low and the high level, positive
    where the wall leans into the closet on its way up. ``rise_*``: level offset of the
    floor, positive where it rises. ``levels``: heights at which low, middle and high were
    read, above the floor in the front left corner (carry them round with a level).
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

    def __post_init__(self) -> None:
        for item in fields(self):
            value = getattr(self, item.name)
            if item.name == "levels" or value is None:
                continue
            signed = item.name.startswith(("lean", "rise"))
            if not math.isfinite(value) or (not signed and value <= 0):
                raise SurveyError(
                    "survey", READING_NAMES[item.name], f"{value:g} mm", "must be above 0 mm"
                )
            if signed and abs(value) > 300.0:
                raise SurveyError(
                    "survey", READING_NAMES[item.name], f"{value:g} mm",
                    "must lie within 300 mm either way; enter the offset, not the distance",
                )
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
