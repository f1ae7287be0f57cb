"""What a bill says of the parts, as values: equal ones together, set-ups of the router."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

from closetbench.core.closet import part_weight
from closetbench.core.joinery import router_passes
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Groove
from closetbench.core.parts import Part
from closetbench.shop.language import mark


@dataclass(frozen=True)
class PartLine:
    """Equal parts. ``weight``: of one finished part, kg."""

    parts: tuple[Part, ...]
    weight: float

    @property
    def components(self) -> str:
        """The components that the parts belong to."""
        return "; ".join(dict.fromkeys(p.component for p in self.parts))

    @property
    def names(self) -> str:
        """The parts' names, with their components where these are several."""
        several = len({p.component for p in self.parts}) > 1
        return "; ".join(p.full_name if several else p.name for p in self.parts)


def part_lines(parts: Sequence[Part], catalogue: Catalogue) -> tuple[PartLine, ...]:
    """Equal parts together, in the order of the first of each. A mirror image is another."""
    groups: dict[tuple[object, ...], list[Part]] = {}
    for part in parts:
        groups.setdefault(part.panel.shape_key(), []).append(part)
    return tuple(
        PartLine(tuple(group), part_weight(group[0], catalogue)) for group in groups.values()
    )


TOO_WIDE = mark("the bit is wider than the groove: take one of at most {0} mm")


@dataclass(frozen=True)
class SetUp:
    """One setting of the router: all grooves of one width and depth.

    ``passes``: where the near side of the bit runs, mm from the near wall; empty without
    a bit or where it does not fit, and then ``note`` says why.
    """

    rabbet: bool
    width: float
    depth: float
    grooves: int
    parts: int
    bit: float | None
    passes: tuple[float, ...] = ()
    note: str = ""


def set_ups(parts: Sequence[Part], bit: float | None = None) -> tuple[SetUp, ...]:
    """The settings that the grooves of all parts need, narrow before wide.

    Raises ``ClosetError`` for a ``bit`` of no width.
    """
    found: defaultdict[tuple[bool, float, float], list[str]] = defaultdict(list)
    for part in parts:
        for groove in part.panel.grooves:
            found[_setting(groove)].append(part.full_name)
    return tuple(
        _set_up(*setting, names, bit) for setting, names in sorted(found.items())
    )


def _setting(groove: Groove) -> tuple[bool, float, float]:
    return groove.is_rabbet, round(groove.width, 3), round(groove.depth, 3)


def _set_up(
    rabbet: bool, width: float, depth: float, names: Sequence[str], bit: float | None
) -> SetUp:
    count, parts = len(names), len(set(names))
    if bit is None:
        return SetUp(rabbet, width, depth, count, parts, None, note=mark("no bit chosen"))
    if rabbet and bit > width:
        return SetUp(rabbet, width, depth, count, parts, bit, (width - bit,),
                     mark("the bit stands over the rim"))
    if bit > width:
        note = TOO_WIDE.format(f"{width:g}")
        return SetUp(rabbet, width, depth, count, parts, bit, note=note)
    return SetUp(rabbet, width, depth, count, parts, bit, router_passes(width, bit))
