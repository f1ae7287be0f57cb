"""Figures of the checks as the user reads them: lengths, sags, masses and forces.

Takes mm, kg, N and N/mm²; a user who works in inches reads pounds and pounds per foot.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from closetbench.core.lengths import MILLIMETRES, LengthFormat

GRAVITY = 9.80665
"""Standard acceleration of free fall, m/s², so N per kg."""
POUND = 0.45359237
"""kg, exactly."""
POUND_FORCE = POUND * GRAVITY
"""N."""
PSF = POUND_FORCE / 304.8**2
"""One pound per square foot in N/mm²."""
PSI = POUND_FORCE / 25.4**2
"""One pound per square inch in N/mm²."""


@dataclass(frozen=True)
class Figures:
    """Prints figures in the user's units; ``lengths`` decides between metric and inches."""

    lengths: LengthFormat = MILLIMETRES

    @property
    def inches(self) -> bool:
        """Whether the user reads inches and pounds."""
        return self.lengths.unit == "in"

    @property
    def fine(self) -> LengthFormat:
        """For thicknesses by caliper: 0.01 mm or 0.001 in."""
        if self.inches:
            return LengthFormat("in", Fraction(1, 1000))
        return LengthFormat("mm", Fraction(1, 100))

    def length(self, mm: float) -> str:
        """A length to the user's own step."""
        return self.lengths.text(mm)

    def small(self, mm: float) -> str:
        """A sag or a gap: finer than a tape's step, 0.1 mm or 0.01 in."""
        return f'{mm / 25.4:.2f}"' if self.inches else f"{mm:.1f} mm"

    def small_range(self, low: float, high: float) -> str:
        """Two sags, the lesser first."""
        return f"{self.small(min(low, high))} to {self.small(max(low, high))}"

    def area(self, mm2: float) -> str:
        """An area, given in mm²."""
        return f"{mm2 / 304.8**2:.0f} ft²" if self.inches else f"{mm2 / 1e6:.1f} m²"

    def volume(self, litres: float) -> str:
        """A volume, given in litres."""
        return f"{litres / 28.316846592:.1f} ft³" if self.inches else f"{litres:.0f} litres"

    def mass(self, kg: float) -> str:
        """A mass."""
        return f"{kg / POUND:.0f} lb" if self.inches else f"{kg:.1f} kg"

    def force(self, newton: float) -> str:
        """A force."""
        return f"{newton / POUND_FORCE:.0f} lbf" if self.inches else f"{newton:.0f} N"

    def on_area(self, pressure: float) -> str:
        """A load on an area, given in N/mm²."""
        if self.inches:
            return f"{pressure / PSF:.0f} lb/ft²"
        return f"{pressure * 1e6 / GRAVITY:.0f} kg/m²"

    def on_length(self, kg_per_m: float) -> str:
        """A load on a length, given in kg/m."""
        if self.inches:
            return f"{kg_per_m * 0.3048 / POUND:.0f} lb/ft"
        return f"{kg_per_m:.0f} kg/m"

    def stress(self, value: float) -> str:
        """A stress, given in N/mm²."""
        return f"{value / PSI:.0f} psi" if self.inches else f"{value:.1f} N/mm²"

    def moment(self, value: float) -> str:
        """A moment, given in N·mm."""
        if self.inches:
            return f"{value / (POUND_FORCE * 304.8):.0f} lbf·ft"
        return f"{value / 1000:.0f} N·m"
