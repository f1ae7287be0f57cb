"""What a user waits for in FreeCAD's windows: start, preview, opening a file.

Needs Xvfb and FreeCAD (``tools/setup.sh screen``). Each figure is a median of several runs
in one FreeCAD, with a ratio to what bare FreeCAD takes for the same: only the ratios mean
anything on other machines.
"""

from __future__ import annotations

import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from tests.gui import harness  # noqa: E402

SCRIPT = Path(__file__).parent / "windows" / "speed.py"
IMPORT_GOAL, PREVIEW_GOAL, AHEAD_GOAL = 30.0, 100.0, 100.0


def main() -> None:
    with harness.screen() as display, tempfile.TemporaryDirectory() as folder:
        run = harness.run(
            SCRIPT, Path(folder), display, "speed", {"began": time.time()}, timeout=400)
    run.judge()
    told = run.records
    spent, opening = told["preview"], told["opening"]
    print(f"FreeCAD {told['version']}, medians, without a graphics card")
    _line("start of FreeCAD with the add-on, until its window stands", told["start"])
    _line("of which Init.py and InitGui.py of the add-on", told["import"],
          told["import"] / told["start"], IMPORT_GOAL)
    _line(f"a height typed in a closet of {told['parts']} parts ({told['changed']} change), "
          "until the preview is worked out", spent["worked out"],
          spent["worked out"] / spent["bare boxes"], PREVIEW_GOAL)
    _line("the same, until it is painted", spent["drawn"],
          spent["drawn"] / spent["bare boxes drawn"])
    _line("as many bare boxes that change, worked out", spent["bare boxes"])
    _line("as many bare boxes that change, painted", spent["bare boxes drawn"])
    _line("a digit typed into a reading, until residuals and annotations are painted",
          told["ahead"], goal=AHEAD_GOAL)
    _line(f"opening a file of {told['file parts']} parts", opening["opened"],
          opening["opened"] / opening["bare file"])
    _line("opening a file of the same solids without the add-on", opening["bare file"])


def _line(words: str, ms: float, ratio: float | None = None, goal: float | None = None) -> None:
    text = f"  {words:<88}{ms:>8.0f} ms"
    text += f"{ratio:>8.2f}" if ratio is not None else " " * 8
    if goal is not None:
        text += f"   goal {goal:g} ms: {'met' if ms <= goal else 'MISSED'}"
    print(text)


if __name__ == "__main__":
    main()
