"""What a bill says, as values: equal parts, purchases, set-ups of the router."""

from __future__ import annotations

import math
from collections import Counter, defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

from closetbench.core.closet import part_weight
from closetbench.core.joinery import router_passes
from closetbench.core.lengths import LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Groove
from closetbench.core.parts import HardwareNeed, Part
from closetbench.shop.lay import lay
from closetbench.stock.plan import Plan, StockSheet

BAND_WASTE = 0.10
"""What edge band is bought over the length of the rims, for overhang and mistakes: one
tenth is common practice, no published source."""


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


@dataclass(frozen=True)
class Purchase:
    """One thing to buy, or to fetch where ``at_hand``. ``count`` is in ``unit``; ``cost``
    each, None where unknown; ``weight`` of all in kg, None where it does not matter."""

    kind: str
    title: str
    size: str
    count: float
    unit: str
    cost: float | None = None
    weight: float | None = None
    note: str = ""
    at_hand: bool = False

    @property
    def total(self) -> float | None:
        """What all of it costs; nothing for what is at hand, None where unknown."""
        if self.at_hand:
            return 0.0
        return None if self.cost is None else self.count * self.cost


def sheet_purchases(
    plan: Plan | None, parts: Sequence[Part], catalogue: Catalogue, form: LengthFormat
) -> tuple[Purchase, ...]:
    """The sheets of a plan by material and size; materials that no sheet has come last,
    with a count of 0 and a note, so that nobody takes the list for complete."""
    sheets: Counter[tuple[str, float, float, float | None, bool, str]] = Counter()
    for sheet in plan.sheets if plan else ():
        sheets[_sheet_group(sheet.sheet)] += 1
    out = []
    for (key, length, width, cost, offcut, name), count in sheets.items():
        material = catalogue.material(key)
        out.append(Purchase(
            "offcut" if offcut else "board" if material.by_length else "sheet",
            material.title,
            f"{form.text(length)} x {form.text(width)}",
            count, "piece", cost, count * material.weight(length, width),
            f"at hand: {name}" if offcut else "", offcut,
        ))
    planned = {key for key, *_ in sheets}
    for key in dict.fromkeys(p.panel.material for p in parts):
        if key not in planned:
            out.append(Purchase(
                "sheet", catalogue.material(key).title, "", 0, "piece",
                note="not planned yet: plan the cutting to know how many",
            ))
    return tuple(out)


def _sheet_group(stock: StockSheet) -> tuple[str, float, float, float | None, bool, str]:
    name = stock.key if stock.offcut else ""
    return stock.material, stock.length, stock.width, stock.cost, stock.offcut, name


def band_purchases(
    parts: Sequence[Part], catalogue: Catalogue, waste: float = BAND_WASTE
) -> tuple[Purchase, ...]:
    """Metres of each edge band, ``waste`` included and rounded up to a tenth of a metre."""
    runs: defaultdict[str, float] = defaultdict(float)
    for part in parts:
        for mark in lay(part).bands:
            runs[mark.key] += math.dist(mark.start, mark.end)
    return tuple(
        Purchase(
            "edge band", catalogue.band(key).title, "",
            math.ceil(run * (1 + waste) / 100 - 1e-6) / 10, "m",
            catalogue.band(key).cost_per_m,
            note=f"{run / 1000:.2f} m of rims and {waste:.0%} for waste",
        )
        for key, run in runs.items()
    )


def hardware_purchases(
    needs: Sequence[HardwareNeed], catalogue: Catalogue
) -> tuple[Purchase, ...]:
    """Packs of hardware, the needs of one item added up."""
    wanted: dict[str, list[HardwareNeed]] = {}
    for need in needs:
        wanted.setdefault(need.key, []).append(need)
    out = []
    for key, mine in wanted.items():
        item = catalogue.item(key)
        pieces = sum(need.count for need in mine)
        purposes = "; ".join(dict.fromkeys(f"{need.count} for {need.purpose}" for need in mine))
        out.append(Purchase(
            "hardware", item.title, "", math.ceil(pieces / item.pack), f"pack of {item.pack}",
            item.cost, note=f"{pieces} needed: {purposes}",
        ))
    return tuple(out)


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
        return SetUp(rabbet, width, depth, count, parts, None, note="no bit chosen")
    if rabbet and bit > width:
        return SetUp(rabbet, width, depth, count, parts, bit, (width - bit,),
                     "the bit stands over the rim")
    if bit > width:
        note = f"the bit is wider than the groove: take one of at most {width:g} mm"
        return SetUp(rabbet, width, depth, count, parts, bit, note=note)
    return SetUp(rabbet, width, depth, count, parts, bit, router_passes(width, bit))
