"""A hundred random sequences of fifty edits, each undone and redone, in FreeCAD's windows.

Needs Xvfb and FreeCAD (``tools/setup.sh screen``; on another FreeCAD
``tools/hosts.sh run HOST python3 benchmarks/undo_walks.py``). A line for every walk: its seed,
how many steps of undo it came to, the processor's seconds, and where the document was not what
it had been. Ends with 1 if that or an error happened in any. ``--from SEED`` and ``--walks N``
walk others, or go on where a run was stopped.
"""

from __future__ import annotations

import argparse
import json
import re
import sys
import tempfile
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from tests.gui import harness  # noqa: E402

SCRIPT = ROOT / "tests" / "gui" / "scripts" / "undoing.py"
STEPS, AT_ONCE, PATIENCE = 50, 10, 120.0
"""Steps of a walk, walks in one FreeCAD, and seconds that a walk may take."""


@dataclass
class Told:
    """What the report view told of a walk: its last step, its errors, and how it ended."""

    step: str = "it did not begin"
    errors: list[str] = field(default_factory=list)
    end: dict[str, Any] | None = None


def told_of(run: harness.GuiRun) -> dict[int, Told]:
    """What a run told of its walks, by their seeds, however FreeCAD ended."""
    # the words between two lines of the walks are FreeCAD's or the add-on's in that step
    pieces = re.split(r"^Msg: walk (\d+) (ended )?(.*)\n", run.report, flags=re.MULTILINE)
    walks: dict[int, Told] = {}
    for seed, ended, words, others in zip(*[iter(pieces[1:])] * 4, strict=True):
        walk = walks.setdefault(int(seed), Told())
        if ended:
            walk.end = json.loads(words)
        else:
            walk.step = words
        walk.errors += [f"in {walk.step}: {line}" for line in harness.error_lines(others)]
    return walks


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--walks", type=int, default=100)
    parser.add_argument("--from", type=int, default=0, dest="first")
    wanted = parser.parse_args()
    wrong: list[int] = []
    left = list(range(wanted.first, wanted.first + wanted.walks))
    while left:
        some = left[:AT_ONCE]
        with harness.screen() as display, tempfile.TemporaryDirectory() as folder:
            run = harness.run(
                SCRIPT, Path(folder), display, "undo", {"seeds": some, "steps": STEPS},
                timeout=PATIENCE * len(some))
        told = told_of(run)
        for seed in some:
            walk = told.get(seed, Told())
            left.remove(seed)
            say(run, seed, walk)
            if walk.errors or walk.end is None or walk.end["wrong"]:
                wrong.append(seed)
            if walk.end is None:  # the next FreeCAD goes on after it
                break
    print(f"{len(wrong)} of {wanted.walks} walks wrong" + (f": {wrong}" if wrong else ""))
    return 1 if wrong else 0


def say(run: harness.GuiRun, seed: int, walk: Told) -> None:
    """Print a walk's line, and lines below it for what went wrong."""
    if walk.end is None:
        how = "was killed" if run.status is None else f"ended with {run.status}"
        print(f"FreeCAD {run.version}  walk {seed:>4}: FreeCAD {how} in {walk.step}")
        lines = [*run.failures, *walk.errors, *run.output.splitlines()[-30:]]
    else:
        lines = [*walk.end["wrong"], *walk.errors]
        print(f"FreeCAD {run.version}  walk {seed:>4}: {walk.end['undo']:>3} steps to undo, "
              f"{walk.end['seconds']:>5} s  {'WRONG' if lines else 'equal'}")
    for line in lines[:40]:
        print(f"    {line}")
    sys.stdout.flush()


if __name__ == "__main__":
    sys.exit(main())
