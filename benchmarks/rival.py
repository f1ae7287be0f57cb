"""The free packer rectpack at its best, for the benchmark of the sheets; no part of the program.

Install it beside (pip install rectpack); without it its columns stay empty.
"""

from __future__ import annotations

import importlib.util
import itertools
from collections.abc import Sequence

from closetbench.stock.plan import CutPart, GrainOnSheet, StockSheet


def at_hand() -> bool:
    """Whether rectpack is installed."""
    return importlib.util.find_spec("rectpack") is not None


def fewest(parts: Sequence[CutPart], sheets: Sequence[StockSheet], runs: int) -> dict[str, int]:
    """The sheets that the best of its guillotine runs needs, by material."""
    import rectpack
    from rectpack import guillotine
    from rectpack.packer import PackerBBF, PackerBFF

    choices = [
        getattr(guillotine, f"Guillotine{choose}{split}")
        for choose in ("Baf", "Bssf", "Blsf")
        for split in ("Sas", "Las", "Slas", "Llas", "Maxas", "Minas")
    ]
    sorts = [
        rectpack.SORT_AREA, rectpack.SORT_LSIDE, rectpack.SORT_SSIDE, rectpack.SORT_PERI,
        rectpack.SORT_DIFF, rectpack.SORT_RATIO, rectpack.SORT_NONE,
    ]  # fmt: skip
    count: dict[str, int] = {}
    for sheet in sheets:
        mine = [part for part in parts if part.material == sheet.material]
        turning = all(part.grain is GrainOnSheet.FREE for part in mine)
        best = len(mine)
        kerf = 32
        width = round((sheet.length - 2 * sheet.trim) * 10) + kerf
        height = round((sheet.width - 2 * sheet.trim) * 10) + kerf
        combinations = itertools.product(sorts, (PackerBFF, PackerBBF), choices)
        for sort, packer_class, choice in itertools.islice(combinations, runs):
            unmerged = type(choice.__name__, (choice,), {"__init__": _without_merging(choice)})
            packer = packer_class(pack_algo=unmerged, sort_algo=sort, rotation=turning)
            for part in mine:
                across = part.grain is GrainOnSheet.ACROSS
                length, side = (part.width, part.length) if across else (part.length, part.width)
                packer.add_rect(round(length * 10) + kerf, round(side * 10) + kerf)
            packer.add_bin(width, height, count=len(mine))
            packer.pack()
            if len(packer.rect_list()) == len(mine):
                best = min(best, len(packer))
        count[sheet.material] = best
    return count


def _without_merging(choice: type):
    """Merging free rectangles breaks the guillotine rule now and then."""

    def start(self, width, height, rot=True, *args, **kwargs):
        choice.__init__(self, width, height, rot, False, *args, **kwargs)

    return start
