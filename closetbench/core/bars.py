"""Classes of bar that hanging rods are cut from, with the fittings that hold them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from closetbench.core import catalogue_fields as cf
from closetbench.core.errors import CatalogueError

KINDS = ("steel tube", "aluminium tube", "pine pole", "oak pole")
"""What a bar may be made of."""


SOLD = (100.0, 10_000.0)
"""mm: the shortest and the longest that a bar may be sold in."""
SAME = 1.0
"""mm: lengths that differ by less are one length."""


@dataclass(frozen=True)
class BarLength:
    """A length that bars are sold in, mm, and what one costs."""

    length: float
    cost: float | None = None

    def __post_init__(self) -> None:
        cf.check_within("bar", "length", self.length, *SOLD, "mm")
        cf.check_cost("bar", "cost", self.cost)


@dataclass(frozen=True)
class BarClass:
    """A bar of round section. Lengths in mm.

    ``kind``: one of ``KINDS``; ``wall`` of a tube, 0 for a solid pole. ``bar``: hardware key
    of one bar ``length`` long; ``lengths``: others that it is sold in, each with its price.
    ``socket``, ``flange``: hardware keys of the fitting for one end, open at the top and closed
    around; ``hanger``: of a bracket that hangs it under a panel, its middle ``drop`` below.
    ``end_gap``: what is left free at each end.
    """

    key: str
    title: str
    kind: str
    diameter: float
    wall: float
    length: float
    bar: str
    socket: str
    flange: str
    hanger: str
    drop: float
    end_gap: float
    source: str
    lengths: tuple[BarLength, ...] = ()

    def __post_init__(self) -> None:
        if self.kind not in KINDS:
            raise CatalogueError(
                self.key, "kind", self.kind, f"must be one of {', '.join(KINDS)}"
            )
        for name, low, high in (
            ("diameter", 5.0, 100.0), ("wall", 0.0, 20.0), ("length", *SOLD),
            ("drop", 10.0, 500.0), ("end_gap", 0.0, 20.0),
        ):
            cf.check_within(self.key, name, getattr(self, name), low, high, "mm")
        if self.kind.endswith("tube") and not 0 < 2 * self.wall < self.diameter:
            raise CatalogueError(
                self.key, "wall", f"{self.wall:g} mm",
                f"must be above 0 and below half of the {self.diameter:g} mm of a tube",
            )
        sold = [self.length, *(each.length for each in self.lengths)]
        for number, length in enumerate(sold):
            if any(abs(length - other) < SAME for other in sold[:number]):
                raise CatalogueError(
                    self.key, "lengths", f"{length:g} mm", "is there twice; give it once"
                )


KERF = 3.0
"""Width of a saw cut through a bar, mm: common practice, no published source."""

BAR_FIELDS: Mapping[str, cf.FieldReader] = {
    **dict.fromkeys(
        ("title", "kind", "bar", "socket", "flange", "hanger", "source"), cf.read_text),
    **dict.fromkeys(("diameter", "wall", "length", "drop", "end_gap"), cf.read_mm),
}
"""Readers of a [bar.KEY] table."""

BAR_DEFAULTS: Mapping[str, object] = {"wall": 0.0, "drop": 60.0, "end_gap": 1.5}
"""What a new class need not state."""
