"""Classes of drawer slides, described by what they ask of the box and the opening."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum

from closetbench.core import catalogue_fields as cf
from closetbench.core.errors import CatalogueError, ClosetError
from closetbench.core.lengths import INCH


class BoxRule(Enum):
    """From which measure the width of a drawer box follows."""

    BY_OPENING = "by the opening"
    """The box's outer width is the opening less the side clearances."""
    BY_INSIDE = "by the inside width"
    """The box's inside width is the opening less a fixed measure, whatever its sides."""


@dataclass(frozen=True)
class SlideClass:
    """What one class of slide asks for. Lengths in mm, ``load`` in kg.

    ``side``: gap on each side between box and opening (rule BY_OPENING), which may come
    out larger by ``side_over`` and smaller by ``side_under``. ``inside_less``: opening less
    inside width (rule BY_INSIDE), with the same tolerances on the whole width.
    ``thickest_side``: 0 for any. ``above``, ``below``, ``behind``: least clearance around
    the box. ``height``: of the slide's own profile, which the box's sides must cover.
    ``bottom_recess``: how far the box's bottom must lie above the lower edge of its sides.
    ``lengths``: the steps made; none for a runner cut to fit. ``extension``: travel as a
    share of the length; ``over_travel`` mm beyond it.
    """

    key: str
    title: str
    rule: BoxRule
    side: float
    side_over: float
    side_under: float
    inside_less: float
    thickest_side: float
    above: float
    below: float
    behind: float
    bottom_recess: float
    height: float
    extension: float
    over_travel: float
    load: float
    lengths: tuple[float, ...]
    source: str

    def __post_init__(self) -> None:
        for name, high in (
            ("side", 100.0), ("side_over", 5.0), ("side_under", 5.0), ("inside_less", 200.0),
            ("thickest_side", 50.0), ("above", 100.0), ("below", 100.0), ("behind", 200.0),
            ("bottom_recess", 50.0), ("height", 100.0), ("over_travel", 200.0),
        ):
            cf.check_within(self.key, name, getattr(self, name), 0.0, high, "mm")
        cf.check_within(self.key, "extension", self.extension, 0.1, 1.0, "of the length")
        cf.check_within(self.key, "load", self.load, 0.1, 500.0, "kg")
        if list(self.lengths) != sorted(set(self.lengths)) or min(self.lengths, default=1) <= 0:
            raise CatalogueError(
                self.key, "lengths", ", ".join(f"{v:g}" for v in self.lengths),
                "must be lengths above 0 mm, rising",
            )

    def outer_width(self, opening: float, side: float, subject: str) -> float:
        """Outer width of a box with sides ``side`` mm thick for a clear opening.

        The gap aims at the middle of its tolerance, so that a box made a little off
        still runs. Raises ``ClosetError`` where the sides are too thick or no box is left.
        """
        middle = (self.side_over - self.side_under) / 2
        if self.rule is BoxRule.BY_OPENING:
            width = opening - 2 * (self.side + middle)
        else:
            if self.thickest_side and side > self.thickest_side + 1e-6:
                raise ClosetError(
                    subject, "thickness of the box's sides", f"{side:g} mm",
                    f"must be at most {self.thickest_side:g} mm for a {self.title}",
                )
            width = opening - self.inside_less - middle + 2 * side
        if width < LEAST_BOX:
            raise ClosetError(
                subject, "width of the box", f"{width:.1f} mm",
                f"must be at least {LEAST_BOX:g} mm; the opening is {opening:.1f} mm wide",
            )
        return width

    def longest(self, free: float, subject: str) -> float:
        """The longest slide for a free depth, clearance behind it included."""
        room = free - self.behind
        if not self.lengths:
            fitting = room
        else:
            fitting = max((v for v in self.lengths if v <= room + 1e-6), default=0.0)
        if fitting < LEAST_BOX:
            shortest = min(self.lengths, default=LEAST_BOX)
            raise ClosetError(
                subject, "free depth", f"{free:.1f} mm",
                f"must be at least {shortest + self.behind:g} mm for the shortest slide, "
                f"{shortest:g} mm, with {self.behind:g} mm behind it",
            )
        return fitting

    def travel(self, length: float) -> float:
        """How far a slide of this length pulls out."""
        return length * self.extension + self.over_travel

    def hardware_key(self, length: float) -> str:
        """Key of a pair of this length in the catalogue's hardware."""
        inches = length / float(INCH)
        whole = abs(inches - round(inches)) < 1e-6
        return f"slide_{round(inches)}in" if whole else f"slide_{length:g}"


LEAST_BOX = 60.0
"""A drawer box smaller than this in any direction holds nothing, mm."""


def _rule(value: object, subject: str, name: str) -> BoxRule:
    try:
        return BoxRule(value)
    except ValueError:
        choices = ", ".join(rule.value for rule in BoxRule)
        raise CatalogueError(subject, name, value, f"must be one of {choices}") from None


def _lengths(value: object, subject: str, name: str) -> tuple[float, ...]:
    if not isinstance(value, list):
        raise CatalogueError(subject, name, value, "must be a list of lengths")
    return tuple(cf.read_mm(v, subject, name) for v in value)


SLIDE_FIELDS: Mapping[str, cf.FieldReader] = {
    **dict.fromkeys(("title", "source"), cf.read_text),
    "rule": _rule,
    "lengths": _lengths,
    **dict.fromkeys(
        ("side", "side_over", "side_under", "inside_less", "thickest_side", "above", "below",
         "behind", "bottom_recess", "height", "over_travel"), cf.read_mm,
    ),
    **dict.fromkeys(("extension", "load"), cf.read_number),
}
"""Readers of a [slide.KEY] table."""

SLIDE_DEFAULTS: Mapping[str, object] = {
    **dict.fromkeys(
        ("side", "side_over", "side_under", "inside_less", "thickest_side", "bottom_recess",
         "over_travel"), 0.0,
    ),
    "lengths": (),
}
"""What a new class need not state."""
