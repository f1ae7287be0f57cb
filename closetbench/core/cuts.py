"""What is cut into a panel and put on it: grooves, holes, notches, bands.

Positions are in the panel's own frame, see ``panel``.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

Point = tuple[float, float]


class Face(Enum):
    """One of the two large faces."""

    UPPER = "upper"
    LOWER = "lower"

    @property
    def other(self) -> Face:
        """The opposite face."""
        return Face.LOWER if self is Face.UPPER else Face.UPPER


class Rim(Enum):
    """One of the four narrow sides."""

    FRONT = "front"
    REAR = "rear"
    START = "start"
    END = "end"

    @property
    def is_end(self) -> bool:
        """Whether it is an end (x = 0 or x = length) and not a long edge."""
        return self in (Rim.START, Rim.END)

    @property
    def opposite(self) -> Rim:
        """The side across the panel."""
        return _OPPOSITE[self]


_OPPOSITE = {Rim.FRONT: Rim.REAR, Rim.REAR: Rim.FRONT, Rim.START: Rim.END, Rim.END: Rim.START}


class Run(Enum):
    """The direction in which a groove or a drilled row runs."""

    LENGTH = "along the length"
    WIDTH = "across the width"


class Section(Enum):
    """The shape of a board across its length."""

    FLAT = "flat"
    QUARTER_ROUND = "quarter round"
    """A quarter of a round bar about the rim FRONT of the face LOWER, as wide as thick."""


class Grain(Enum):
    """Where the grain of a panel runs."""

    LENGTH = "length"
    WIDTH = "width"
    NONE = "none"


@dataclass(frozen=True)
class Groove:
    """A groove (across the grain the trade says dado), or a rabbet where it meets a rim.

    ``offset``: from the rim ``measured_from`` to the nearer wall of the groove; 0 makes
    it a rabbet. It runs at right angles to that measure: measured from an end it runs
    across the width, measured from an edge along the length. ``stop_first`` and
    ``stop_last`` are how far it stays away from the rims it runs between (FRONT and
    REAR, or START and END); 0 runs through. ``name`` says what goes in.
    """

    name: str
    face: Face
    measured_from: Rim
    offset: float
    width: float
    depth: float
    stop_first: float = 0.0
    stop_last: float = 0.0

    @property
    def run(self) -> Run:
        """The direction in which it runs."""
        return Run.WIDTH if self.measured_from.is_end else Run.LENGTH

    @property
    def is_rabbet(self) -> bool:
        """Whether it lies open at the rim it is measured from."""
        return self.offset == 0.0

    @property
    def is_through(self) -> bool:
        """Whether it runs from rim to rim."""
        return self.stop_first == 0.0 and self.stop_last == 0.0


@dataclass(frozen=True)
class HoleRow:
    """A row of equal holes: the first at (x, y), the others ``pitch`` apart.

    ``depth`` equal to the panel's thickness drills through.
    """

    name: str
    face: Face
    x: float
    y: float
    diameter: float
    depth: float
    count: int = 1
    pitch: float = 32.0
    run: Run = Run.LENGTH

    def centres(self) -> tuple[Point, ...]:
        """The centres of the holes in the panel's frame."""
        dx, dy = (self.pitch, 0.0) if self.run is Run.LENGTH else (0.0, self.pitch)
        return tuple((self.x + i * dx, self.y + i * dy) for i in range(self.count))


@dataclass(frozen=True)
class Notch:
    """A rectangle cut out of a corner, ``dx`` along the length and ``dy`` along the width."""

    end: Rim
    edge: Rim
    dx: float
    dy: float


@dataclass(frozen=True)
class Band:
    """An edge band on one rim: key in the catalogue and thickness in mm."""

    rim: Rim
    key: str
    thickness: float


@dataclass(frozen=True)
class RimHole:
    """A hole drilled square into a rim, as for a dowel.

    ``at``: along the rim, from START on a long edge and from FRONT on an end; ``level``: of
    its middle above the LOWER face.
    """

    name: str
    rim: Rim
    at: float
    level: float
    diameter: float
    depth: float


@dataclass(frozen=True)
class Pocket:
    """A slanted hole from a face out through a rim, for a pocket screw; ``at`` as in
    ``RimHole``. A jig sets its slope and depth by the board's thickness: its place is all
    that is told, and the solid stays whole.
    """

    name: str
    face: Face
    rim: Rim
    at: float
