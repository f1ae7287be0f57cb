"""How long all checks of a closet of 200 parts take (aim: under 100 ms)."""

from __future__ import annotations

import sys
from pathlib import Path
from statistics import median
from time import perf_counter

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from closetbench.core.checks import run_checks
from closetbench.core.circumstances import Circumstances
from closetbench.core.closet import ClosetDesign, build_closet
from closetbench.core.loads import ShelfUse
from closetbench.core.people import ChildAge
from closetbench.core.specs import BaySpec, CarcassSpec, LipSpec
from closetbench.core.walls import Wall, WallKind
from closetbench.resources import load_catalogue

RUNS = 15
KNOWN = Circumstances(
    ShelfUse.BOOKS, damp=False, wall=Wall(WallKind.WOOD_STUDS, 406.4, 100.0, 12.7),
    children=(ChildAge.THREE_TO_FOUR,),
)


def closet(material: str, lip: float = 0.0) -> ClosetDesign:
    """Six carcasses with shelves of many widths: 200 parts and more."""
    carcasses = tuple(
        CarcassSpec(
            f"case {i}", material, width=2000.0, shelf_lip=LipSpec(lip),
            bays=tuple(
                BaySpec(width=300.0 + 40.0 * i + 7.0 * b if b < 2 else None, fixed=4, adjustable=2)
                for b in range(3)
            ),
        )
        for i in range(6)
    )
    return ClosetDesign("big", size=(12000.0, 500.0, 2400.0), components=carcasses)


def main() -> None:
    """Print the median time of all checks, where shelves pass and where each needs remedies."""
    catalogue = load_catalogue()
    for title, material, lip in (
        ("birch plywood", "birch18", 0.0), ("melamine", "melamine18", 0.0),
        ("melamine with lips", "melamine18", 30.0),
    ):
        built = build_closet(closet(material, lip), catalogue)
        times = []
        for _ in range(RUNS):
            began = perf_counter()
            checked = run_checks(built, catalogue, KNOWN)
            times.append(perf_counter() - began)
        print(
            f"all checks, {len(built.parts)} parts of {title}: {1000 * median(times):.1f} ms "
            f"(median of {RUNS}), {len(checked.findings)} findings"
        )


if __name__ == "__main__":
    main()
