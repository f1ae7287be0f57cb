"""A hundred random sequences of fifty edits, each undone and redone, in FreeCAD's windows.

Needs Xvfb and FreeCAD (``tools/setup.sh screen``). Says of every walk how long it took and
whether the start and the end came back; ends with 1 if one of them did not. ``--walks N``
walks fewer, ``--from SEED`` others.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from tests.gui import harness  # noqa: E402

SCRIPT = ROOT / "tests" / "gui" / "scripts" / "undoing.py"
STEPS, AT_ONCE, PATIENCE = 50, 5, 300.0
"""Steps of a walk, walks in one FreeCAD, and seconds that a walk may take."""


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--walks", type=int, default=100)
    parser.add_argument("--from", type=int, default=0, dest="first")
    wanted = parser.parse_args()
    wrong = 0
    seeds = list(range(wanted.first, wanted.first + wanted.walks))
    with harness.screen() as display:
        for at in range(0, len(seeds), AT_ONCE):
            some = seeds[at:at + AT_ONCE]
            with tempfile.TemporaryDirectory() as folder:
                run = harness.run(
                    SCRIPT, Path(folder), display, "undo", {"seeds": some, "steps": STEPS},
                    timeout=PATIENCE * len(some))
            for walk in run.records.get("walks", ()):
                wrong += bool(walk["wrong"])
                print(f"  walk {walk['seed']:>4}: {walk['undo']:>3} steps to undo, "
                      f"{walk['seconds']:>6} s  {'; '.join(walk['wrong']) or 'equal'}")
            if not run.finished or run.errors:
                wrong += 1
                print(f"  walks {some[0]} to {some[-1]} did not end well: "
                      f"{(*run.failures, *run.errors)[:3]}")
    print(f"{wrong} of {len(seeds)} walks wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
