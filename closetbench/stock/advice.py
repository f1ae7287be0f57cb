"""Strip-width advice: how many strips of a depth a sheet gives, and what one more would take.

n strips from a usable width need n depths and n - 1 kerfs, so n = floor((usable + kerf) /
(depth + kerf)), and n strips are to be had up to a depth of (usable + kerf) / n - kerf.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import ceil, floor

from closetbench.core.findings import Finding, Severity
from closetbench.stock.checks import millimetres
from closetbench.stock.plan import CutPart, GrainOnSheet, StockSheet

_EASE = 1e-6


@dataclass(frozen=True)
class StripAdvice:
    """Strips of one depth along one sheet; lengths in mm.

    ``strips``: how many a sheet gives; ``rest``: the width left after the last cut;
    ``slimmer``: the largest depth at which it gives one strip more. ``needed``: strips
    for all the parts of this depth; ``sheets`` and ``sheets_slimmer``: sheets for so many
    strips, nothing else being cut from them; ``parts``: the keys of these parts.
    """

    sheet: StockSheet
    depth: float
    strips: int
    rest: float
    slimmer: float
    needed: int
    sheets: int
    sheets_slimmer: int
    parts: tuple[str, ...]

    @property
    def saving(self) -> float:
        """By how much the depth must shrink for one strip more, in mm."""
        return self.depth - self.slimmer


def strips_of(sheet: StockSheet, depth: float, kerf: float) -> tuple[int, float, float]:
    """Strips along a sheet, the width left after the last cut, and the depth for one more."""
    usable = sheet.width - 2 * sheet.trim
    count = floor((usable + kerf + _EASE) / (depth + kerf))
    rest = max(0.0, usable - count * (depth + kerf))
    return count, rest, (usable + kerf) / (count + 1) - kerf


def strip_advice(
    parts: Sequence[CutPart],
    stock: Sequence[StockSheet],
    kerf: float,
    within: float = 15.0,
) -> tuple[StripAdvice, ...]:
    """Depths at which up to ``within`` mm less would give one strip more from a sheet.

    A part's depth is its width, its length running along the sheet; parts whose grain
    runs across are left out. Only sheets to be bought count, the nearest miss first.
    """
    found = []
    for sheet in stock:
        if sheet.offcut:
            continue
        by_depth: dict[float, list[CutPart]] = {}
        for part in parts:
            if part.material == sheet.material and part.grain is not GrainOnSheet.ACROSS:
                by_depth.setdefault(part.width, []).append(part)
        usable = sheet.length - 2 * sheet.trim
        for depth, mine in by_depth.items():
            if max(part.length for part in mine) > usable + _EASE:
                continue
            strips, rest, slimmer = strips_of(sheet, depth, kerf)
            if strips < 1 or not 0 < depth - slimmer <= within:
                continue
            needed = _strips_for([part.length for part in mine], usable, kerf)
            found.append(
                StripAdvice(
                    sheet, depth, strips, rest, slimmer, needed,
                    ceil(needed / strips), ceil(needed / (strips + 1)),
                    tuple(part.key for part in mine),
                )
            )  # fmt: skip
    return tuple(sorted(found, key=lambda advice: (advice.saving, advice.sheet.key)))


def strip_findings(
    advice: Sequence[StripAdvice], kerf: float, length: Callable[[float], str] = millimetres
) -> tuple[Finding, ...]:
    """The advice in words; ``length`` prints a length as the user wants it."""
    findings = []
    for each in advice:
        slimmer = floor(each.slimmer * 10) / 10
        strips = f"{each.strips} strips" if each.strips > 1 else "1 strip"
        lost = ""
        if each.rest + kerf + _EASE >= each.depth - kerf * each.strips:
            lost = ": the kerf takes the next one"
        gain = ""
        if each.sheets_slimmer < each.sheets:
            gain = (
                f"; {each.needed} strips then need {each.sheets_slimmer} sheets, not {each.sheets}"
            )
        findings.append(
            Finding(
                Severity.NOTE,
                f"parts {length(each.depth)} wide, {each.sheet.material}",
                "strip-width",
                f"sheet {each.sheet.key}, {length(each.sheet.width)} wide, gives {strips} "
                f"of {length(each.depth)} and {length(each.rest)} "
                f"are left{lost}; at {length(slimmer)} or less it gives {each.strips + 1}{gain}",
                f"{each.strips + 1} strips need {each.strips + 1} widths and {each.strips} kerfs",
                length(each.depth),
                length(slimmer),
                f"make them {length(slimmer)} wide or less",
                parts=each.parts,
            )
        )
    return tuple(findings)


def strip_gains(
    parts: Sequence[CutPart], stock: Sequence[StockSheet], kerf: float,
    length: Callable[[float], str] = millimetres,
) -> tuple[Finding, ...]:
    """The advice in words where it saves a sheet."""
    gains = [a for a in strip_advice(parts, stock, kerf) if a.sheets_slimmer < a.sheets]
    return strip_findings(gains, kerf, length)


def _strips_for(lengths: Sequence[float], usable: float, kerf: float) -> int:
    """Strips for so many lengths end to end, the longest first into the first that takes it."""
    left: list[float] = []
    for length in sorted(lengths, reverse=True):
        for index, free in enumerate(left):
            if length <= free + _EASE:
                left[index] = free - length - kerf
                break
        else:
            left.append(usable - length - kerf)
    return len(left)
