"""Classes of hinges for doors inside a closet: how they are bored for, how many it takes."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from closetbench.core import catalogue_fields as cf
from closetbench.core.errors import CatalogueError, ClosetError

CUPS = "hinge cup"
"""What the borings in a leaf are called."""


@dataclass(frozen=True)
class HingeClass:
    """What one class of concealed hinge asks for. Lengths in mm, weights in kg.

    ``cup``: diameter of the boring, ``cup_depth`` its depth, ``cup_edge`` from the door's
    edge to the boring's; ``ends``: from the ends of the leaf to the first and last cup.
    ``least_thickness``/``most_thickness`` of a door; ``most_lap``: how far the door may lap
    over the side; ``opens``: degrees. ``heights`` and ``weights``: the highest and heaviest
    leaf on two hinges, on three, and so on; ``widest`` leaf. ``item``: key of the hardware.
    Plates are screwed to two holes ``plate_pitch`` apart about the height of the cup's middle,
    ``plate_front`` from the front edge of the side, of an inset door from the rear of the door:
    ``plate_hole`` across and ``plate_depth`` deep (37 mm on a pitch of 32: common practice, no
    published source).
    """

    key: str
    title: str
    cup: float
    cup_depth: float
    cup_edge: float
    ends: float
    least_thickness: float
    most_thickness: float
    most_lap: float
    opens: float
    heights: tuple[float, ...]
    weights: tuple[float, ...]
    widest: float
    item: str
    source: str
    plate_front: float = 37.0
    plate_pitch: float = 32.0
    plate_hole: float = 5.0
    plate_depth: float = 10.0

    def __post_init__(self) -> None:
        for name, low, high in (
            ("cup", 10.0, 60.0), ("cup_depth", 5.0, 30.0), ("cup_edge", 1.0, 20.0),
            ("ends", 20.0, 300.0), ("least_thickness", 5.0, 50.0),
            ("most_thickness", 5.0, 60.0), ("most_lap", 0.0, 60.0), ("widest", 100.0, 1500.0),
            ("plate_front", 10.0, 100.0), ("plate_pitch", 10.0, 100.0),
            ("plate_hole", 1.0, 15.0), ("plate_depth", 3.0, 40.0),
        ):
            cf.check_within(self.key, name, getattr(self, name), low, high, "mm")
        cf.check_within(self.key, "opens", self.opens, 60.0, 180.0, "degrees")
        for name, steps in (("heights", self.heights), ("weights", self.weights)):
            if not steps or list(steps) != sorted(set(steps)) or steps[0] <= 0:
                raise CatalogueError(
                    self.key, name, ", ".join(f"{v:g}" for v in steps) or "empty",
                    "must be one value or more above 0, rising",
                )
        if len(self.heights) != len(self.weights):
            raise CatalogueError(
                self.key, "weights", len(self.weights), f"must be {len(self.heights)}, as heights"
            )

    def count(self, height: float, weight: float, subject: str) -> int:
        """Hinges for a leaf of this height (mm) and weight (kg), two or more.

        Raises ``ClosetError`` where the class carries no such leaf.
        """
        for prop, value, steps, unit in (
            ("height of a door", height, self.heights, "mm"),
            ("weight of a door", weight, self.weights, "kg"),
        ):
            if value > steps[-1] + 1e-6:
                raise ClosetError(
                    subject, prop, f"{value:.1f} {unit}",
                    f"must be at most {steps[-1]:g} {unit} for a {self.title}",
                )
        return 2 + max(
            next(i for i, s in enumerate(steps) if value <= s + 1e-6)
            for value, steps in ((height, self.heights), (weight, self.weights))
        )

    def positions(
        self, height: float, count: int, subject: str, row: float | None = None
    ) -> tuple[float, ...]:
        """Middles of ``count`` cups above the lower end of a leaf, evenly spread.

        ``row``: height above the lower end of a hole for shelf pins in the side, if there is
        a row of them at the plates' pitch. Cups then move by up to half the pitch, so that the
        plates sit on holes of the row.
        """
        span = height - 2 * self.ends
        if count < 2 or span / (count - 1) < self.cup + 10.0:
            raise ClosetError(
                subject, "number of hinges", count,
                f"must be 2 or more and leave {self.cup + 10:g} mm from one cup to the next in a "
                f"door {height:.1f} mm high",
            )
        even = tuple(self.ends + i * span / (count - 1) for i in range(count))
        if row is None or span / (count - 1) < self.cup + 10.0 + self.plate_pitch:
            return even
        pitch = self.plate_pitch
        first = row + pitch / 2
        return tuple(first + pitch * round((z - first) / pitch) for z in even)


def _steps(value: object, subject: str, name: str) -> tuple[float, ...]:
    if not isinstance(value, list):
        raise CatalogueError(subject, name, value, "must be a list of numbers")
    return tuple(cf.read_mm(v, subject, name) for v in value)


HINGE_FIELDS: Mapping[str, cf.FieldReader] = {
    **dict.fromkeys(("title", "item", "source"), cf.read_text),
    **dict.fromkeys(
        ("cup", "cup_depth", "cup_edge", "ends", "least_thickness", "most_thickness", "most_lap",
         "widest", "plate_front", "plate_pitch", "plate_hole", "plate_depth"), cf.read_mm,
    ),
    "opens": cf.read_number,
    **dict.fromkeys(("heights", "weights"), _steps),
}
"""Readers of a [hinge.KEY] table."""
