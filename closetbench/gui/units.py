"""Lengths as the user has set FreeCAD to show them."""

from __future__ import annotations

import re
from fractions import Fraction

import FreeCAD

from closetbench.core.figures import Figures
from closetbench.core.lengths import LengthFormat, Style
from closetbench.gui.said import said

_MM = LengthFormat("mm", Fraction(1, 10))
_FORMATS: dict[int, LengthFormat] = {
    1: LengthFormat("m", Fraction(1, 10)),
    2: LengthFormat("in-frac", Fraction(1, 16)),
    3: LengthFormat("in", Fraction(1, 1000)),
    4: LengthFormat("cm", Fraction(1, 10)),
    5: LengthFormat("ft-in", Fraction(1, 16)),
    7: LengthFormat("ft-in", Fraction(1, 16)),
    9: LengthFormat("m", Fraction(1, 10)),
}
"""By the number of FreeCAD's unit schema: its names differ from one FreeCAD to the next."""

_EXACT: dict[Style, LengthFormat] = {
    "mm": LengthFormat("mm", Fraction(1, 10**6)),
    "cm": LengthFormat("cm", Fraction(1, 10**6)),
    "m": LengthFormat("m", Fraction(1, 10**6)),
    "in": LengthFormat("in", Fraction(1, 10**6)),
    "in-frac": LengthFormat("in-frac", Fraction(1, 128)),
    "ft-in": LengthFormat("ft-in", Fraction(1, 128)),
}
TOLERANCE = 1e-6
"""mm by which a text may differ from what it stands for."""


def current_format() -> LengthFormat:
    """How lengths are to be printed, by FreeCAD's unit schema; millimetres by default."""
    return _FORMATS.get(FreeCAD.Units.getSchema(), _MM)


def step() -> float:
    """The least that a length is changed by with the mouse: 1 mm or 1/16 in, in mm."""
    return 25.4 / 16 if current_format().style in ("in", "in-frac", "ft-in") else 1.0


def shown(mm: float) -> str:
    """A length for reading only, rounded to what the shop can measure."""
    return current_format().text(mm)


def typed(mm: float) -> str:
    """A length for a field: what is stored, to the micrometre, and never a rounded fraction.

    18 mm is no fraction of an inch: it is shown as ``18 mm`` in an inch field too.
    """
    style = current_format().style
    if style in ("in-frac", "ft-in"):
        fine = _EXACT[style]
        if abs(fine.error(mm)) <= TOLERANCE:
            return fine.text(mm)
        return _stripped("mm", mm)
    return _stripped(style, mm)


def _stripped(style: Style, mm: float) -> str:
    form = _EXACT[style]
    number = form.text(mm, unit=False)
    if "." in number:
        number = number.rstrip("0").rstrip(".")
    if number == "-0":
        number = "0"
    return f'{number}"' if style == "in" else f"{number} {form.unit}"


def signed(figures: Figures, mm: float) -> str:
    """A small length with its sign and without its unit; what rounds to 0 has no sign."""
    text = figures.small(mm).removesuffix(f" {figures.lengths.unit}")
    if not text.strip("-0.,\""):
        return text.removeprefix("-")
    return text if text.startswith("-") else f"+{text}"


_MM_IN_TEXT = re.compile(r"(-?[0-9]+(?:\.[0-9]+)?)(?: (to|and|x) (-?[0-9]+(?:\.[0-9]+)?))? mm\b")


def explained(text: str) -> str:
    """A message of the core in the user's language, its millimetres in the user's unit too."""
    text = said(text)
    form = current_format()
    if form.style == "mm":
        return text

    def both(match: re.Match[str]) -> str:
        first, joint, second = match.groups()
        told = form.text(float(first))
        if second is not None:
            told += f" {joint} {form.text(float(second))}"
        return f"{match.group()} ({told})"

    return _MM_IN_TEXT.sub(both, text)
