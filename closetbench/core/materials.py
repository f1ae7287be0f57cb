"""Boards, edge bands and hardware, and the catalogue they come from.

Lengths in mm, densities in kg/m³, stiffness (bending E) in N/mm², masses in kg. A
catalogue is TOML text; a user's file laid over ours changes whole entries or single
fields (``[material.ply18]`` with ``measured = 17.6`` alone is enough).
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from enum import Enum
from fractions import Fraction
from typing import TypeVar

from closetbench.core import catalogue_fields as cf
from closetbench.core.bars import BarClass
from closetbench.core.errors import CatalogueError
from closetbench.core.findings import Finding, Severity
from closetbench.core.hinges import HingeClass
from closetbench.core.lengths import INCH, LengthFormat
from closetbench.core.slides import SlideClass

HUNDREDTHS = LengthFormat("mm", Fraction(1, 100))
INVENTED_CURRENCY = "cu"
"""The currency of the shipped catalogue, whose prices are invented."""
WIDEST_BOARD = float(Fraction(45, 4) * INCH)
"""Widest dressed board, 1x12 or 2x12, 11-1/4 in (PS 20-20): wider lumber is sold as a panel."""
READING_MARGIN = 0.5
"""How far beyond the published tolerance a measured thickness is still believed, mm
(a caliper reading and a bad batch; common practice, no published source)."""


class MaterialKind(Enum):
    """What a board is made of. In a catalogue: the name in small letters ("mdf")."""

    MELAMINE = "melamine-faced particleboard"
    MDF = "MDF"
    PLYWOOD = "veneer-core plywood"
    HARDBOARD = "hardboard"
    LUMBER = "solid lumber"


def thickness_limits(kind: MaterialKind, nominal: float) -> tuple[float, float, str]:
    """Thinnest and thickest board that may be sold as ``nominal``, mm, and who says so.

    Where North American and European standards differ, the wider of the two.
    """
    if kind is MaterialKind.MELAMINE:
        less, more = (0.3, 0.5) if nominal <= 20 else (0.5, 0.5)
        source = "EN 14322 (from memory)"
    elif kind is MaterialKind.MDF:
        less = more = 0.2 if nominal <= 19 else 0.3
        source = "EN 622-1, MDF (from memory)"
    elif kind is MaterialKind.HARDBOARD:
        less = more = 0.3 if nominal <= 3.5 else 0.5 if nominal <= 5.5 else 0.7
        source = "EN 622-1, hardboard (from memory)"
    elif kind is MaterialKind.PLYWOOD:
        unsanded = float(INCH / 32) if nominal <= float(INCH * 13 / 16) else 0.05 * nominal
        less = max(unsanded, 0.4 + 0.03 * nominal)
        more = max(unsanded, 0.2 + 0.03 * nominal)
        source = "PS 1-19, unsanded, and EN 315, sanded"
    else:
        less, more = (1.0, float(INCH / 16)) if nominal <= 100 else (1.5, float(INCH / 16))
        source = "EN 336 class 2, and PS 20-20 for green lumber"
    return nominal - less, nominal + more, source


@dataclass(frozen=True)
class SheetSize:
    """A size that a material is sold in, mm; grain, if any, runs along the length.

    For boards: the piece's length and its dressed width. ``cost`` is per piece.
    """

    length: float
    width: float
    cost: float | None = None

    def __post_init__(self) -> None:
        cf.check_within("sheet size", "length", self.length, 50, 20_000, "mm")
        cf.check_within("sheet size", "width", self.width, 5, 10_000, "mm")
        cf.check_cost("sheet size", "cost", self.cost)


@dataclass(frozen=True)
class Material:
    """A board as the shop knows it. Raises CatalogueError where the values cannot be.

    ``nominal``: thickness as sold (for lumber: dressed); ``measured``: by caliper, None
    where nobody has. ``e_along``/``e_across``: bending stiffness along and across the
    length of a sheet. ``trim``: mm off each edge of a sheet before any part is cut; off
    each end only where the material is planned by length. ``band``: key of its usual edge
    band, "" for none; ``needs_band``: a bare edge is no finished edge. ``source``: where
    density and stiffness come from.
    """

    key: str
    title: str
    kind: MaterialKind
    nominal: float
    measured: float | None
    grained: bool
    density: float
    e_along: float
    e_across: float
    sheets: tuple[SheetSize, ...]
    trim: float
    band: str
    needs_band: bool
    source: str

    def __post_init__(self) -> None:
        _named(self.key, self.title)
        cf.check_within(self.key, "nominal", self.nominal, 0.5, 150, "mm")
        cf.check_within(self.key, "density", self.density, 50, 3_000, "kg/m³")
        cf.check_within(self.key, "e_along", self.e_along, 10, 300_000, "N/mm²")
        cf.check_within(self.key, "e_across", self.e_across, 10, 300_000, "N/mm²")
        cf.check_within(self.key, "trim", self.trim, 0, 100, "mm")
        for sheet in self.sheets:
            if 2 * self.trim >= (sheet.length if self.by_length else sheet.width):
                size = f"{sheet.length:g} x {sheet.width:g} mm"
                limit = f"must leave something of the sheet of {size}"
                raise CatalogueError(self.key, "trim", f"{self.trim:g} mm", limit)
        if self.measured is not None:
            low, high, source = thickness_limits(self.kind, self.nominal)
            low, high = max(low - READING_MARGIN, 0.1), high + READING_MARGIN
            if not low - 1e-9 <= self.measured <= high + 1e-9:
                raise CatalogueError(
                    self.key,
                    "measured",
                    f"{self.measured:g} mm",
                    f"{self.kind.value} of nominal {_mm(self.nominal)} measures {_mm(low)} to "
                    f"{_mm(high)} ({source}, and {_mm(READING_MARGIN)} for the reading); measure "
                    "again, or enter the board as a material of its own with its own nominal",
                )

    @property
    def thickness(self) -> float:
        """Measured, else nominal, mm."""
        return self.nominal if self.measured is None else self.measured

    @property
    def by_length(self) -> bool:
        """Whether pieces are crosscut from boards of their own width, not from sheets."""
        return (
            self.kind is MaterialKind.LUMBER
            and bool(self.sheets)
            and all(s.width <= WIDEST_BOARD + 0.5 for s in self.sheets)
        )

    def weight(self, length: float, width: float) -> float:
        """Mass in kg of a rectangle of this board, sides in mm."""
        return length * width * self.thickness * self.density * 1e-9

    def with_measured(self, value: float) -> Material:
        """The same board with its measured thickness; CatalogueError where not believable."""
        return replace(self, measured=value)

    def findings(self, form: LengthFormat = HUNDREDTHS) -> tuple[Finding, ...]:
        """Doubts about the thickness; lengths in the texts as ``form`` prints them."""
        low, high, source = thickness_limits(self.kind, self.nominal)
        span = f"{form.text(low)} to {form.text(high)}"
        if self.measured is None:
            rule, value = "thickness-not-measured", form.text(self.nominal)
            message = (
                f"sizes and grooves use the nominal {value}, but boards sold as that may be "
                f"{span}: measure the sheets before cutting and enter the thickness"
            )
        elif not low - 1e-9 <= self.measured <= high + 1e-9:
            rule, value = "thickness-out-of-tolerance", form.text(self.measured)
            message = f"measures {value}, outside the {span} of its standard: measure again"
        else:
            return ()
        return (Finding(Severity.WARNING, self.title, rule, message, source, value, span),)


@dataclass(frozen=True)
class BandRoll:
    """A roll that an edge band is sold in: its length in mm, and its cost."""

    length: float
    cost: float | None = None

    def __post_init__(self) -> None:
        cf.check_within("roll", "length", self.length, 500, 500_000, "mm")
        cf.check_cost("roll", "cost", self.cost)


@dataclass(frozen=True)
class EdgeBand:
    """An edge band: thickness and width in mm, cost per metre; ``rolls`` where it is sold in
    whole ones only."""

    key: str
    title: str
    thickness: float
    width: float
    cost_per_m: float | None = None
    rolls: tuple[BandRoll, ...] = ()

    def __post_init__(self) -> None:
        _named(self.key, self.title)
        cf.check_within(self.key, "thickness", self.thickness, 0.1, 25, "mm")
        cf.check_within(self.key, "width", self.width, 5, 200, "mm")
        cf.check_cost(self.key, "cost_per_m", self.cost_per_m)


@dataclass(frozen=True)
class HardwareItem:
    """A bought piece: ``pack`` pieces are sold together for ``cost``."""

    key: str
    title: str
    pack: int
    cost: float | None = None

    def __post_init__(self) -> None:
        _named(self.key, self.title)
        cf.check_within(self.key, "pack", self.pack, 1, 100_000, "pieces")
        cf.check_cost(self.key, "cost", self.cost)


_E = TypeVar("_E", Material, EdgeBand, HardwareItem, SlideClass, HingeClass, BarClass)


@dataclass(frozen=True)
class Catalogue:
    """Everything that can be bought, by key, with prices in ``currency``."""

    materials: Mapping[str, Material] = field(default_factory=dict)
    bands: Mapping[str, EdgeBand] = field(default_factory=dict)
    hardware: Mapping[str, HardwareItem] = field(default_factory=dict)
    currency: str = ""
    slides: Mapping[str, SlideClass] = field(default_factory=dict)
    hinges: Mapping[str, HingeClass] = field(default_factory=dict)
    bars: Mapping[str, BarClass] = field(default_factory=dict)

    def material(self, key: str, subject: str = "catalogue") -> Material:
        """The material of that key; CatalogueError about ``subject`` where there is none."""
        return _look_up(self.materials, key, subject, "material")

    def band(self, key: str, subject: str = "catalogue") -> EdgeBand:
        """The edge band of that key; CatalogueError about ``subject`` where there is none."""
        return _look_up(self.bands, key, subject, "band")

    def item(self, key: str, subject: str = "catalogue") -> HardwareItem:
        """The hardware of that key; CatalogueError about ``subject`` where there is none."""
        return _look_up(self.hardware, key, subject, "hardware")

    def slide(self, key: str, subject: str = "catalogue") -> SlideClass:
        """The slide class of that key; CatalogueError about ``subject`` where there is none."""
        return _look_up(self.slides, key, subject, "slide")

    def hinge(self, key: str, subject: str = "catalogue") -> HingeClass:
        """The hinge class of that key; CatalogueError about ``subject`` where there is none."""
        return _look_up(self.hinges, key, subject, "hinge")

    def bar(self, key: str, subject: str = "catalogue") -> BarClass:
        """The class of bar of that key; CatalogueError about ``subject`` where there is none."""
        return _look_up(self.bars, key, subject, "bar")

    def merged(self, over: Catalogue) -> Catalogue:
        """This catalogue with the entries of ``over`` added or put in their place.

        Where ``over`` has another currency, what is left of this one loses its prices:
        sums in two currencies would be wrong.
        """
        base = self.unpriced() if over.currency not in ("", self.currency) else self
        return Catalogue(
            {**base.materials, **over.materials},
            {**base.bands, **over.bands},
            {**base.hardware, **over.hardware},
            over.currency or base.currency,
            {**base.slides, **over.slides},
            {**base.hinges, **over.hinges},
            {**base.bars, **over.bars},
        )

    def unpriced(self) -> Catalogue:
        """The same without any price."""
        return Catalogue(
            {
                k: replace(m, sheets=tuple(replace(s, cost=None) for s in m.sheets))
                for k, m in self.materials.items()
            },
            {
                k: replace(b, cost_per_m=None, rolls=tuple(replace(r, cost=None) for r in b.rolls))
                for k, b in self.bands.items()
            },
            {k: replace(h, cost=None) for k, h in self.hardware.items()},
            self.currency,
            self.slides,
            self.hinges,
            {
                k: replace(b, lengths=tuple(replace(one, cost=None) for one in b.lengths))
                for k, b in self.bars.items()
            },
        )

    def findings(self) -> tuple[Finding, ...]:
        """A note where the prices are the invented ones that the catalogue ships with."""
        if self.currency != INVENTED_CURRENCY:
            return ()
        message = "prices are invented: enter your own, with their currency, in your catalogue"
        return (Finding(Severity.NOTE, "catalogue", "invented-prices", message),)


def _look_up(known: Mapping[str, _E], key: str, subject: str, what: str) -> _E:
    if key not in known:
        limit = f"is not in the catalogue; {cf.nearest(key, known)}"
        raise CatalogueError(subject, what, key or "empty", limit)
    return known[key]


def _named(key: str, title: str) -> None:
    if not re.fullmatch(r"[A-Za-z0-9_-]+", key):
        raise CatalogueError(key or "entry", "key", key, "must be letters, digits, - and _ only")
    if not title.strip():
        raise CatalogueError(key, "title", "empty", "must say what it is")


def _mm(value: float) -> str:
    return HUNDREDTHS.text(value)
