"""What one person can take home from the store."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from closetbench.core.findings import Finding, Severity
from closetbench.core.handling import LARGE, LOAD_CONSTANT, LONG
from closetbench.stock.checks import millimetres


@dataclass(frozen=True)
class Carry:
    """What one person can take home: ``density`` of the board in kg/m²; a piece may weigh
    ``most`` kg, and be longer than ``longest`` mm only if it is no larger than ``largest`` mm².
    """

    density: float
    most: float = LOAD_CONSTANT
    longest: float = LONG
    largest: float = LARGE

    def mass(self, length: float, width: float) -> float:
        """kg of a rectangle, sides in mm."""
        return length * width * 1e-6 * self.density

    def too_much(self, length: float, width: float) -> bool:
        """Whether it takes more than one person."""
        large = max(length, width) > self.longest and length * width > self.largest
        return large or self.mass(length, width) > self.most


def too_much(
    sheet: str, carried: Mapping[str, tuple[float, float]], carry: Carry
) -> tuple[Finding, ...]:
    """A finding where pieces carried home, their sides by name, are too much for one."""
    heavy = [name for name, size in carried.items() if carry.too_much(*size)]
    if not heavy:
        return ()
    mass = max(carry.mass(*carried[name]) for name in heavy)
    # what is left over needs no more cuts, but somebody has to carry it all the same
    left_over = all(name.endswith(" rest") for name in heavy)
    return (
        Finding(
            Severity.NOTE if left_over else Severity.WARNING,
            f"sheet {sheet}",
            "piece-takes-two",
            f"{heavy[0]} as carried from the store is too heavy, or too long and wide, for one "
            "person" if len(heavy) == 1 else
            f"{', '.join(heavy)} as carried from the store are too heavy, or too long and wide, "
            "for one person",
            "NIOSH 94-110, load constant; size: common practice, no published source",
            f"{mass:.1f} kg",
            f"{carry.most:g} kg, or {carry.largest / 1e6:g} m² over {millimetres(carry.longest)}",
            "have it halved at the store" if left_over
            else "take a second person along, or let the store cut more",
        ),
    )
