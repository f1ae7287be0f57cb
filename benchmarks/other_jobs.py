"""Invented jobs that nothing was tuned on: any number, each from its seed.

Closets of one to five carcasses, or odd lists of random sizes and single parts; sheet
sizes, prices, offcuts, grain, kerf, trim, first cut and stages all vary.
"""

from __future__ import annotations

from dataclasses import dataclass
from random import Random

from closetbench.stock.plan import CutPart, CutSettings, FirstCut, GrainOnSheet, StockSheet

_SIZES = ((2440, 1220), (2465, 1245), (2500, 1250), (2800, 2070), (3050, 1525), (1525, 1525))
_GRAINS = (GrainOnSheet.ALONG, GrainOnSheet.FREE)


@dataclass(frozen=True)
class Job:
    """Parts, sheets and what the saw allows."""

    parts: tuple[CutPart, ...]
    stock: tuple[StockSheet, ...]
    settings: CutSettings


def plain_job(seed: int) -> Job:
    """Like the jobs that lie here: one size of sheet, 3.2 mm kerf, rips first, four stages."""
    random = Random(seed)
    parts = _closet(random, 1 + seed % 5)
    length, width = random.choice(_SIZES[:2])
    trim = random.choice((5.0, 6.0, 8.0, 10.0))
    materials = dict.fromkeys(part.material for part in parts)
    stock = tuple(StockSheet(m, m, length, width, trim) for m in materials)
    return Job(parts, stock, CutSettings())


def any_job(seed: int) -> Job:
    """Everything varies; every part fits the first sheet of its material."""
    random = Random(seed)
    if seed % 3:
        parts = _closet(random, 1 + seed % 4)
    else:
        parts = _odd(random, random.choice((1, 2, 5, 17, 60, 150, 400)))
    stock: list[StockSheet] = []
    priced = random.random() < 0.5
    for material in dict.fromkeys(part.material for part in parts):
        trim = random.choice((0.0, 3.0, 5.0, 6.35, 12.0))
        for number in range(random.choice((1, 1, 2, 3))):
            length, width = _SIZES[random.randrange(5)] if number else random.choice(_SIZES[2:5])
            cost = round(length * width / 1e6 * random.uniform(9, 14), 2) if priced else None
            stock.append(StockSheet(f"{material} {number}", material, length, width, trim, None,
                                    cost))  # fmt: skip
        for number in range(random.choice((0, 0, 1, 4))):
            stock.append(StockSheet(
                f"{material} left {number}", material, random.randint(200, 1800),
                random.randint(150, 1100), random.choice((0.0, 2.0)), 1, None, True,
            ))  # fmt: skip
    return Job(
        parts,
        tuple(stock),
        CutSettings(
            kerf=random.choice((0.0, 1.2, 2.4, 3.0, 3.175, 3.2, 4.4, 6.0)),
            stages=random.choice((None, 4, 3, 2)),
            first=random.choice(tuple(FirstCut)),
        ),
    )


def _odd(random: Random, count: int) -> tuple[CutPart, ...]:
    """Sizes with no system at all, some in fractions of an inch."""
    parts = []
    for number in range(count):
        length = round(random.triangular(40, 2300, 400), random.choice((0, 0, 1)))
        width = round(random.triangular(25, 1150, 250), 1)
        if random.random() < 0.3:
            length, width = (round(side / 25.4 * 16) * 25.4 / 16 for side in (length, width))
        # across the sheet a long part would not lie
        grain = random.choice(tuple(GrainOnSheet) if length < 1150 else _GRAINS)
        parts.append(CutPart(f"p{number}", length, width, random.choice("ab"), grain))
    return tuple(parts)


def _closet(random: Random, carcasses: int) -> tuple[CutPart, ...]:
    parts: list[CutPart] = []
    grained = random.random() < 0.4

    def add(length: float, width: float, count: int, material: str, shows: bool) -> None:
        grain = GrainOnSheet.ALONG if grained and shows else GrainOnSheet.FREE
        for _ in range(count):
            parts.append(CutPart(f"p{len(parts)}", length, width, material, grain))

    for _ in range(carcasses):
        height = random.choice((1800, 2000, 2080, 2100, 2320, 2360))
        depth = random.choice((300, 350, 400, 450, 550, 590, 600))
        bays = random.randint(1, 5)
        add(height, depth, bays + 1, "18", True)
        for _ in range(bays):
            width = random.choice((264, 382, 400, 464, 514, 582, 600, 682, 732, 896, 982))
            add(width, depth, 2, "18", True)
            add(width, depth - 2, random.randint(0, 3), "18", True)
            add(width - 2, depth - random.choice((10, 20)), random.randint(0, 5), "18", True)
            drawers = random.choice((0, 0, 2, 3, 4))
            front = random.choice((140, 180, 200, 250))
            add(width - 4, front, drawers, "18", True)
            add(depth - 50, front - 40, 2 * drawers, "12", False)
            add(width - 50, front - 40, 2 * drawers, "12", False)
            add(width - 38, depth - 50, drawers, "6", False)
            add(width, random.choice((60, 80, 100)), random.randint(0, 2), "18", True)
            add(height, width, random.random() < 0.5, "6", True)
        add(height, random.choice((30, 50, 80)), random.randint(0, 2), "18", True)
    return tuple(parts)
