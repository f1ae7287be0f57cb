"""A hundred random sequences of fifty edits, each undone and redone, in FreeCAD's windows.

Needs Xvfb and FreeCAD (``tools/setup.sh screen``; on another FreeCAD
``tools/hosts.sh run HOST python3 benchmarks/undo_walks.py``). A line for every walk: its seed,
how many steps of undo it came to, the processor's seconds, and where the document was not what
it had been. Ends with 1 if that or an error happened in any. ``--from SEED`` and ``--walks N``
walk others, or go on where a run was stopped.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from tests.gui import harness  # noqa: E402
from tests.gui.walk_report import Told, told_of  # noqa: E402

SCRIPT = ROOT / "tests" / "gui" / "scripts" / "undoing.py"
STEPS, AT_ONCE, PATIENCE = 50, 10, 120.0
"""Steps of a walk, walks in one FreeCAD, and seconds that a walk may take."""


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
            if any(walk.errors.values()) or walk.ended is None or walk.wrong:
                wrong.append(seed)
            if walk.ended is None:  # the next FreeCAD goes on after it
                break
    print(f"{len(wrong)} of {wanted.walks} walks wrong" + (f": {wrong}" if wrong else ""))
    return 1 if wrong else 0


def say(run: harness.GuiRun, seed: int, walk: Told) -> None:
    """Print a walk's line, and lines below it for what went wrong."""
    errors = [f"in {at}: {line}" for at, lines in walk.errors.items() for line in lines]
    if walk.ended is None:
        how = "was killed" if run.status is None else f"ended with {run.status}"
        print(f"FreeCAD {run.version}  walk {seed:>4}: FreeCAD {how} in {walk.step}")
        lines = [*run.failures, *errors, *run.output.splitlines()[-30:]]
    else:
        lines = [*walk.wrong, *errors]
        print(f"FreeCAD {run.version}  walk {seed:>4}: {walk.ended[0]:>3} steps to undo, "
              f"{walk.ended[1]:>5} s  {'WRONG' if lines else 'equal'}")
    for line in lines[:40]:
        print(f"    {line}")
    sys.stdout.flush()


if __name__ == "__main__":
    sys.exit(main())
