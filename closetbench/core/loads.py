"""What a closet has to carry and how far it may sag, as data with sources.

Pressures in N/mm², forces in N, line loads in kg/m. The published criteria disagree
(span/144 to span/240): the user chooses one by what the shelves are for.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace
from enum import Enum

from closetbench.core.errors import ClosetError
from closetbench.core.figures import GRAVITY, POUND_FORCE, PSF


class ShelfUse(Enum):
    """What shelves are for."""

    LINEN = "linen"
    GENERAL = "general"
    BOOKS = "books"
    STIFF = "stiff"
    """As general, with the least sag that is published."""


@dataclass(frozen=True)
class Criterion:
    """A load and how far a shelf may sag under it.

    ``pressure`` N/mm² on the whole shelf, at most ``cap`` N on one shelf, and ``centre`` N
    in the middle of its span; the sag may be
    the span over ``span_over``, and at most ``most`` mm. Own weight does not count: the
    published tables and tests leave it out.
    """

    title: str
    pressure: float
    span_over: float
    source: str
    cap: float = math.inf
    most: float = math.inf
    centre: float = 0.0

    def __post_init__(self) -> None:
        for name, value, high in (
            ("load", self.pressure, 0.1), ("span over", self.span_over, 2000.0),
        ):
            if not 0 < value <= high:
                raise ClosetError(
                    self.title, name, f"{value:g}", f"must be above 0 and at most {high:g}"
                )

    def load(self, length: float, depth: float) -> float:
        """Even load on a shelf of these sides (mm), N."""
        for name, value in (("length", length), ("depth", depth)):
            if not (math.isfinite(value) and value > 0):
                raise ClosetError(
                    "shelf load", name, f"{value:g} mm", "must be above 0: a load needs an area"
                )
        return min(self.pressure * length * depth, self.cap)

    def limit(self, span: float) -> float:
        """The greatest sag over a span, mm."""
        return min(span / self.span_over, self.most)


AWS_CAP = 200 * POUND_FORCE
AWS = "Architectural Woodwork Standards, edition 1 (2009), 1.2.21"

CRITERIA: Mapping[ShelfUse, Criterion] = {
    ShelfUse.LINEN: Criterion(
        "linen and clothes", 15 * PSF, 192, "ANSI/KCMA A161.1-2012, 5.1 (as quoted)",
        most=25.4 / 4,
    ),
    ShelfUse.GENERAL: Criterion("general storage", 40 * PSF, 144, AWS, cap=AWS_CAP),
    ShelfUse.BOOKS: Criterion("books", 50 * PSF, 144, AWS, cap=AWS_CAP),
    ShelfUse.STIFF: Criterion(
        "general storage with little sag", 40 * PSF, 240,
        f"{AWS}; sag: Composite Panel Association shelving bulletin (as quoted)", cap=AWS_CAP,
    ),
}


def criterion(
    use: ShelfUse | None, load: float | None = None, span_over: float | None = None,
    centre: float | None = None,
) -> Criterion | None:
    """The criterion for a use, with the user's own load (kg/m²), sag (span over this) or
    heavy thing in the middle (kg).

    None where neither a use nor a load is given. A load without a use takes span/144.
    """
    if centre is not None and not (math.isfinite(centre) and 0 < centre <= 1000):
        raise ClosetError(
            "circumstances", "thing in the middle of a shelf", f"{centre:g} kg",
            "must be above 0 and at most 1000 kg",
        )
    if use is None and load is None:
        return None
    found = CRITERIA[use or ShelfUse.GENERAL]
    if load is not None:
        if not (math.isfinite(load) and load > 0):
            raise ClosetError("circumstances", "shelf load", f"{load:g} kg/m²", "must be above 0")
        found = replace(
            found, title="your own load", pressure=load * GRAVITY * 1e-6, cap=math.inf,
            source="load as you entered it; sag: " + found.source,
        )
    if span_over is not None:
        found = replace(
            found, span_over=span_over, most=math.inf,
            source=found.source + "; sag as you entered it",
        )
    return found if centre is None else replace(found, centre=centre * GRAVITY)


ROD_SERVICE = 30.0
"""kg/m of clothes on a rod: suits of 2 kg every 64 mm make 31 kg/m (common practice, no
published source)."""
ROD_TEST = 40.0
"""kg/m: the load that furniture tests hang on rails (EN 14749 and its like, from memory
and to be checked)."""
ROD_SPAN_OVER = 200.0
"""A rod may sag its span over this (common practice, no published source)."""
ROD_LONGEST = 1219.2
"""mm between supports at most: 48 in, Architectural Woodwork Standards, edition 1, 4.4.16."""
ROD_LEAST_WOOD, ROD_LEAST_METAL = 31.75, 26.9875
"""mm, least diameters: 1-1/4 in and 1-1/16 in, the same clause."""

CLOTHES_DENSITY = 136.16e-9
"""kg/mm³ of packed clothes: 8.5 lb/ft³, 87 FR 72598 and ASTM F2057-23."""

SITTER = 300 * POUND_FORCE
"""N for each person on a bench: the 300 lb that a stair tread must bear, International
Residential Code, Table R301.5 note c (read); no standard for built-in benches was found."""
SEAT_WIDTH = 500.0
"""mm of bench for a person (common practice, no published source)."""
SEAT_SPAN_OVER = 240.0
"""A bench may sag its span over this (common practice, no published source)."""

PIN_SOURCE = "AWS 2009 takes shelf rests of ANSI/BHMA A156.9 grade 1; ask the maker for the load"


def clothes_on_rod(piece: float, pitch: float) -> float:
    """kg/m of garments of ``piece`` kg hanging every ``pitch`` mm."""
    if not (piece > 0 and pitch > 0):
        raise ClosetError(
            "clothes", "mass and pitch", f"{piece:g} kg every {pitch:g} mm", "must be above 0"
        )
    return piece / pitch * 1000
