"""The command ``layout``: a plain part list in, checked plans of sheets and lengths out."""

from __future__ import annotations

import argparse
import json
import sys
from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict
from functools import partial
from pathlib import Path
from typing import Any

from closetbench.core.errors import ClosetError, LayoutError
from closetbench.core.lengths import UNITS, read_length
from closetbench.stock.atomic import write_text_atomically
from closetbench.stock.length_plan import LengthPlan, StockLength
from closetbench.stock.lengths import plan_lengths
from closetbench.stock.part_lists import PartList, read_part_list
from closetbench.stock.plan import CutSettings, FirstCut, Plan, SearchEnd, StockSheet
from closetbench.stock.sheets import plan_sheets

_ENDS = {
    SearchEnd.PROVED: "no plan buys less",
    SearchEnd.BUDGET: "at least {bound} are needed",
    SearchEnd.CLOCK: "at least {bound} are needed; the machine is slow, run again to compare",
    SearchEnd.CANCELLED: "stopped early; at least {bound} are needed",
}


def layout_command(
    argv: Sequence[str], languages: Sequence[str] = (),
    tell: Callable[[str, str], str] = lambda code, text: text,
) -> int:
    """Plan the sheets of a part list; 0 when the plan was written, 1 with a message if not.

    ``languages``: codes of those besides English that the summary may be in; ``tell`` says a
    text in one of them.
    """
    options = _parser(languages).parse_args(list(argv))
    try:
        given = _lengths(options)
        listed = read_part_list(options.parts, options.unit, {each.material for each in given})
        settings = _settings(options, listed)
        stock = _stock(options, listed)
        plan = plan_sheets(listed.parts, stock, settings)
        lengths = plan_lengths(listed.pieces, [*listed.lengths, *given], settings.kerf)
        data = plan_as_json(plan, settings, listed.ids)
        if listed.pieces:
            data |= lengths_as_json(lengths, settings.kerf, listed.ids)
        text = json.dumps(data, indent=1, ensure_ascii=False)
        if options.out is None:
            sys.stdout.write(text + "\n")
        else:
            write_text_atomically(options.out, text + "\n", "plan")
            say = partial(tell, options.language)
            told = filter(None, (summary(plan, say), lengths_summary(lengths, say)))
            sys.stdout.write("\n".join(told) + "\n")
    except ClosetError as error:
        sys.stderr.write(f"closetbench: {error}\n")
        return 1
    return 0


def plan_as_json(
    plan: Plan, settings: CutSettings, ids: Mapping[str, str] | None = None
) -> dict[str, Any]:
    """A plan as plain data for JSON, lengths in mm.

    ``ids``: the part that each piece is one of, where that is not its key. The cuts name
    pieces.
    """
    ids = ids or {}
    return {
        "sheets": [
            {
                "name": sheet.name,
                "sheet": sheet.sheet.key,
                "material": sheet.sheet.material,
                "length": sheet.sheet.length,
                "width": sheet.sheet.width,
                "trim": sheet.sheet.trim,
                "kerf": sheet.kerf,
                **({"cut_from": asdict(sheet.sheet.cut_from)} if sheet.sheet.cut_from else {}),
                "placements": [
                    {
                        **asdict(placed),
                        "part": ids.get(placed.part, placed.part),
                        "piece": placed.part,
                    }
                    for placed in sheet.placements
                ],
                "rests": [asdict(rest) for rest in sheet.rests],
                "cuts": [asdict(cut) for cut in sheet.cuts],
            }
            for sheet in plan.sheets
        ],
        "bound": dict(plan.bound),
        "ended": {material: end.value for material, end in plan.ended.items()},
        "settings": {
            "kerf": settings.kerf,
            "stages": settings.stages,
            "first": settings.first.value,
            "seconds": settings.seconds,
            "tidy": settings.tidy,
            "seed": settings.seed,
        },
    }


def lengths_as_json(
    plan: LengthPlan, kerf: float, ids: Mapping[str, str] | None = None
) -> dict[str, Any]:
    """A plan of lengths as plain data for JSON, mm from one end; ``proved``: per material, that
    no plan costs less, or takes less length where prices are lacking."""
    ids = ids or {}
    return {
        "lengths": [
            {
                "name": bar.name,
                "stock": bar.stock.key,
                "material": bar.stock.material,
                "length": bar.stock.length,
                "trim": bar.stock.trim,
                "kerf": kerf,
                "cuts": [
                    {"part": ids.get(c.part, c.part), "piece": c.part, "start": c.start,
                     "end": c.end}
                    for c in bar.cuts
                ],
                "rest": bar.rest,
            }
            for bar in plan.bars
        ],
        "proved": dict(plan.proved),
    }


def lengths_summary(plan: LengthPlan, say: Callable[[str], str] = str) -> str:
    """What a plan of lengths takes, a line for each material, as ``say`` puts it."""
    lines = []
    for material, sure in plan.proved.items():
        bars = plan.bars_of(material)
        counts = Counter(f"{bar.stock.length:g} mm" for bar in bars)
        what = ", ".join(f"{n} of {length}" for length, n in counts.items())
        used = sum(b.used * b.stock.length for b in bars) / sum(b.stock.length for b in bars)
        short = material in plan.unpriced
        least = "no plan takes less length; prices are lacking" if short else "no plan costs less"
        end = least if sure else "a cheaper plan may exist"
        lines.append(f"{material}: " + say(f"{what} ({end}), {used:.1%} used"))
    return "\n".join(lines)


def summary(plan: Plan, say: Callable[[str], str] = str) -> str:
    """What a plan takes, a line for each material, as ``say`` puts it."""
    lines = []
    for material, bound in plan.bound.items():
        sheets = plan.sheets_of(material)
        area = sum(sheet.sheet.length * sheet.sheet.width for sheet in sheets)
        used = sum(sheet.used_area for sheet in sheets) / area
        cuts = sum(len(sheet.cuts) for sheet in sheets)
        count = f"{len(sheets)} sheet{'s' if len(sheets) != 1 else ''}"
        end = _ENDS[plan.ended[material]].format(bound=bound)
        lines.append(f"{material}: " + say(f"{count} ({end}), {used:.1%} used, {cuts} cuts"))
    return "\n".join(lines)


def _parser(languages: Sequence[str]) -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python3 -m closetbench layout",
        description="Plan which sheets to take for a list of parts, and how to cut them.",
    )
    parser.add_argument("parts", type=Path, help="the part list, JSON or CSV")
    parser.add_argument("--out", type=Path, help="the plan to write, JSON; else it is printed")
    parser.add_argument(
        "--language", choices=("en", *languages), default="en",
        help="that the summary is written in",
    )
    parser.add_argument("--seconds", type=float, default=1.0, help="search, for each material")
    parser.add_argument(
        "--tidy", type=float, help="seconds more for simpler cutting (as --seconds)"
    )
    parser.add_argument("--seed", type=int, default=1, help="the same seed, the same plan")
    parser.add_argument("--first", choices=[first.value for first in FirstCut], default="rip")
    parser.add_argument("--stages", default="4", help="2 or more, or none for no limit")
    parser.add_argument("--kerf", help="takes the place of the list's own")
    parser.add_argument("--trim", help="of the sheets given here")
    parser.add_argument("--unit", choices=list(UNITS), default="mm", help="of bare lengths")
    for option, what in (("--sheet", "sheets that can be bought"), ("--offcut", "one at hand")):
        parser.add_argument(
            option, action="append", default=[], metavar="MATERIAL=LENGTHxWIDTH[@COST]",
            help=f"{what}; may come again",
        )  # fmt: skip
    parser.add_argument(
        "--length", action="append", default=[], metavar="MATERIAL=LENGTH[@COST]",
        help="boards or bars that can be bought, whose parts have no width; may come again",
    )
    return parser


def _settings(options: argparse.Namespace, listed: PartList) -> CutSettings:
    kerf = CutSettings().kerf if listed.kerf is None else listed.kerf
    if options.kerf is not None:
        kerf = _option_length(options, "kerf", options.kerf)
    stages = options.stages.strip().lower()
    if stages != "none" and not (stages.isascii() and stages.isdigit()):
        raise LayoutError("option --stages", "value", stages, "must be a number or none")
    return CutSettings(
        kerf=kerf,
        stages=None if stages == "none" else int(stages),
        first=FirstCut(options.first),
        seconds=options.seconds,
        seed=options.seed,
        tidy=options.seconds if options.tidy is None else options.tidy,
    )


def _lengths(options: argparse.Namespace) -> list[StockLength]:
    found = []
    for text in options.length:
        material, equals, size = text.rpartition("=")
        size, _, cost = size.partition("@")
        if not (material and equals and size):
            raise LayoutError("option --length", "value", text, "must be MATERIAL=LENGTH[@COST]")
        length = read_length(size, options.unit, subject="option --length", prop="length")
        found.append(StockLength(
            f"{material} {size}", material, length, cost=_price("option --length", cost)))
    return found


def _price(option: str, cost: str) -> float | None:
    try:
        return float(cost) if cost else None
    except ValueError:
        raise LayoutError(option, "cost", cost, "must be a number") from None


def _stock(options: argparse.Namespace, listed: PartList) -> list[StockSheet]:
    trim = 0.0 if options.trim is None else _option_length(options, "trim", options.trim)
    stock = list(listed.sheets)
    for offcut, texts in ((False, options.sheet), (True, options.offcut)):
        for number, text in enumerate(texts, 1):
            option = "option --offcut" if offcut else "option --sheet"
            material, equals, size = text.rpartition("=")
            size, _, cost = size.partition("@")
            length, by, width = size.lower().partition("x")
            if not (material and equals and by):
                raise LayoutError(option, "value", text, "must be MATERIAL=LENGTHxWIDTH[@COST]")
            price = _price(option, cost)
            stock.append(
                StockSheet(
                    f"{material} {size}" + f" offcut {number}" * offcut,
                    material,
                    read_length(length, options.unit, subject=option, prop="length"),
                    read_length(width, options.unit, subject=option, prop="width"),
                    0.0 if offcut else trim,
                    1 if offcut else None,
                    price,
                    offcut,
                )
            )
    return stock


def _option_length(options: argparse.Namespace, prop: str, text: str) -> float:
    return read_length(
        text, options.unit, allow_negative=True, subject=f"option --{prop}", prop="length"
    )
