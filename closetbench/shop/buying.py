"""What a bill says of the purchases: sheets, boards, bars, edge band, hardware."""

from __future__ import annotations

import math
from collections import Counter, defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

from closetbench.core.bars import SAME
from closetbench.core.bodies import LengthPart
from closetbench.core.lengths import LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.parts import HardwareNeed, Part
from closetbench.core.rods_strength import bar_weight
from closetbench.shop.csv_text import Cell
from closetbench.shop.language import Words, mark, plain
from closetbench.shop.lay import lay
from closetbench.stock.from_lengths import band_rolls
from closetbench.stock.length_plan import LengthPlan, StockLength
from closetbench.stock.plan import Plan
from closetbench.stock.purchase import SpareRule, WayToBuy, to_buy

BAND_WASTE = 0.10
"""What edge band is bought over the length of the rims, for overhang and mistakes: one
tenth is common practice, no published source."""
SO_MANY = mark("{1} of {0}")
"""So many of a size; a page's number of so many is another text in other languages."""
_UNPLANNED = mark("not planned yet: plan the cutting to know how many")


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
    plan: Plan | None, parts: Sequence[Part], catalogue: Catalogue, form: LengthFormat,
    spare: SpareRule | None = None, by_length: Sequence[str] = (), words: Words = plain,
) -> tuple[Purchase, ...]:
    """The offcuts that a plan takes, then its sheets by material and size, with spares by the
    rule. Materials that no sheet has come last, with a count of 0 and a note, so
    that nobody takes the list for complete; ``by_length``: those that have no sheets."""
    out = []
    for one in plan.sheets if plan else ():
        if one.sheet.offcut:
            material = catalogue.material(one.sheet.material)
            whole = one.sheet.cut_from or one.sheet
            length, width = whole.length, whole.width
            out.append(Purchase(
                words("offcut"), words(material.title),
                f"{form.text(length)} x {form.text(width)}", 1, words("piece"), None,
                material.weight(length, width), words("at hand: {0}", one.sheet.key), True,
            ))
    for item in to_buy(plan or Plan(()), catalogue.materials, spare):
        sheet, material = item.sheet, catalogue.material(item.sheet.material)
        out.append(Purchase(
            words("board") if material.by_length else words("sheet"), words(material.title),
            f"{form.text(sheet.length)} x {form.text(sheet.width)}",
            item.count, words("piece"), sheet.cost, item.weight,
            words("{0} by the plan, {1} to spare", item.planned, item.spare)
            if item.spare else "",
        ))
    planned = {sheet.sheet.material for sheet in plan.sheets} if plan else set()
    for key in dict.fromkeys(p.panel.material for p in parts):
        if key not in planned and key not in by_length:
            out.append(Purchase(
                words("sheet"), words(catalogue.material(key).title), "", 0, words("piece"),
                note=words(_UNPLANNED)))
    return tuple(out)


def length_purchases(
    plan: LengthPlan | None, bars: Sequence[LengthPart], catalogue: Catalogue, form: LengthFormat,
    words: Words = plain,
) -> tuple[Purchase, ...]:
    """The boards and bars of a plan by material and length, then the offcuts that it takes.
    Without a plan the bars come with a count of 0 and a note."""
    if plan is None:
        keys = dict.fromkeys(bar.stock for bar in bars)
        return tuple(
            Purchase(words("bar"), words(catalogue.bar(k).title), "", 0, words("piece"),
                     note=words(_UNPLANNED)) for k in keys
        )
    out = []
    bought = Counter(bar.stock for bar in plan.bars if not bar.stock.offcut)
    for stock, count in bought.items():
        sure = "" if plan.proved[stock.material] else words("a plan with less may be possible")
        if stock.material in catalogue.bars:
            out.append(_bars(stock, count, sure, catalogue, form, words))
            continue
        board = catalogue.material(stock.material)
        out.append(Purchase(
            words("board"), words(board.title),
            f"{form.text(stock.length)} x {form.text(stock.width)}", count,
            words("piece"), stock.cost, count * board.weight(stock.length, stock.width), sure,
        ))
    for one in (bar.stock for bar in plan.bars if bar.stock.offcut):
        title = (
            catalogue.bar(one.material).title if one.material in catalogue.bars
            else catalogue.material(one.material).title
        )
        out.append(Purchase(
            words("offcut"), words(title), form.text(one.length), 1, words("piece"), None, None,
            words("at hand: {0}", one.key), True))
    return tuple(out)


def _bars(
    stock: StockLength, count: int, sure: str, catalogue: Catalogue, form: LengthFormat,
    words: Words,
) -> Purchase:
    """Bars of one length; the length that is the class's own comes in packs."""
    bar = catalogue.bar(stock.material)
    item = catalogue.item(bar.bar)
    size, each = form.text(stock.length), bar_weight(bar, stock.length)
    if abs(stock.length - bar.length) >= SAME:
        return Purchase(
            words("bar"), words(bar.title), size, count, words("piece"), stock.cost,
            count * each, sure,
        )
    packs, unit, note = math.ceil(count / item.pack), words("piece"), sure
    if item.pack > 1:
        unit = words("pack of {0}", item.pack)
        note = "; ".join(filter(None, (words("{0} needed", count), sure)))
    return Purchase(
        words("bar"), words(item.title), size, packs, unit, item.cost, packs * item.pack * each,
        note,
    )


def band_purchases(
    parts: Sequence[Part], catalogue: Catalogue, form: LengthFormat, waste: float = BAND_WASTE,
    words: Words = plain,
) -> tuple[Purchase, ...]:
    """Rolls of each edge band that is sold in rolls, planned strip by strip; metres of the
    others, ``waste`` included and rounded up to a tenth of a metre."""
    runs: defaultdict[str, list[float]] = defaultdict(list)
    for part in parts:
        for rim in lay(part).bands:
            runs[rim.key].append(math.dist(rim.start, rim.end))
    out: list[Purchase] = []
    for key, mine in runs.items():
        band = catalogue.band(key)
        metres = f"{sum(mine) / 1000:.2f}"
        if band.rolls:
            plan = band_rolls(mine, key, catalogue)
            for roll, count in Counter(bar.stock for bar in plan.bars).items():
                out.append(Purchase(
                    words("edge band"), words(band.title), form.text(roll.length), count,
                    words("roll"), roll.cost,
                    note=words("{0} m of rims in {1} strips", metres, len(mine)),
                ))
            continue
        bought = math.ceil(sum(mine) * (1 + waste) / 100 - 1e-6) / 10
        out.append(Purchase(
            words("edge band"), words(band.title), "", bought, "m", band.cost_per_m,
            note=words("{0} m of rims and {1} for waste", metres, f"{waste:.0%}")))
    return tuple(out)


def hardware_purchases(
    needs: Sequence[HardwareNeed], catalogue: Catalogue, words: Words = plain
) -> tuple[Purchase, ...]:
    """Packs of hardware, the needs of one item added up."""
    wanted: dict[str, list[HardwareNeed]] = {}
    for need in needs:
        wanted.setdefault(need.key, []).append(need)
    out = []
    for key, mine in wanted.items():
        item = catalogue.item(key)
        pieces = sum(need.count for need in mine)
        purposes = "; ".join(dict.fromkeys(
            words("{0} for {1}", need.count, words(need.purpose)) for need in mine))
        out.append(Purchase(
            words("hardware"), words(item.title), "", math.ceil(pieces / item.pack),
            words("pack of {0}", item.pack), item.cost,
            note=words("{0} needed: {1}", pieces, purposes),
        ))
    return tuple(out)


def way_rows(
    ways: Sequence[WayToBuy], catalogue: Catalogue, form: LengthFormat, words: Words = plain
) -> list[list[Cell]]:
    """The ways to buy each material beside each other, the cheapest first; empty for none."""
    if not ways:
        return []
    money = f" {catalogue.currency}" if catalogue.currency else ""
    rows: list[list[Cell]] = [
        [mark("Ways to buy")],
        [*mark(("material", "sizes", "offcuts used", "sheets", "bought m²")), f"cost{money}",
         *mark(("weight kg", "note"))],
    ]
    told = set()
    for way in ways:
        board = catalogue.material(way.material)
        sheets = Counter(
            f"{form.text(s.sheet.length)} x {form.text(s.sheet.width)}"
            for s in way.plan.sheets if not s.sheet.offcut
        )
        used = sum(s.sheet.offcut for s in way.plan.sheets)
        # sizes mixed may come to one of them alone, offcuts at hand to none of them used
        same = (way.material, used, tuple(sorted(sheets.items())))
        if same in told:
            continue
        told.add(same)
        rows.append([
            words(board.title),
            "; ".join(words(SO_MANY, size, n) for size, n in sheets.items())
            or words("none"),
            used or words("none"), sum(sheets.values()), way.area, way.cost,
            way.area * 1e6 * board.weight(1.0, 1.0),
            words("proved to be the cheapest of these sizes") if way.proved
            else words("best found"),
        ])
    return rows


def length_rows(
    plan: LengthPlan | None, catalogue: Catalogue, form: LengthFormat, parts: Sequence[Part],
    words: Words = plain,
) -> list[list[Cell]]:
    """How each board and bar is cut, a row each; empty for none."""
    if plan is None or not plan.bars:
        return []
    rows: list[list[Cell]] = [
        [mark("Cut by length")],
        [*mark(("name", "material", "length mm", "length", "pieces", "rest mm", "used %"))],
    ]
    panels = {p.full_name: p.panel for p in parts}
    for bar in plan.bars:
        stock = bar.stock
        pieces = []
        for cut in bar.cuts:
            told = f"{cut.part} {form.text(cut.end - cut.start)}"
            panel = panels.get(cut.part)
            if panel is not None and stock.width - panel.cut_width > 0.05:
                told += ", " + words("ripped to {0}", form.text(panel.cut_width))
            pieces.append(told)
        rows.append([
            bar.name, words(title_of(stock.material, catalogue)), stock.length,
            form.text(stock.length), "; ".join(pieces), bar.rest, 100 * bar.used,
        ])
    return rows


def title_of(key: str, catalogue: Catalogue) -> str:
    """The title of a board or a bar."""
    table = catalogue.bars if key in catalogue.bars else catalogue.materials
    return table[key].title if key in table else key
