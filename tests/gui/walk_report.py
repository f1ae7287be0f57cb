"""What random walks say in FreeCAD's report view as they go, read again outside of it."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from tests.gui.harness import GuiRun, error_lines

REPORT = "walk "
"""How a line of the report view begins that tells of walks."""
TAKEN_BACK = " (others could not be built then, taken back)"
"""What a step ends with that took from others what they need, a place to stand or the room:
FreeCAD had to say so."""


@dataclass
class Told:
    """What the report view told of a walk: its last step, its errors by the number of the
    step, where the document was not what it had been, and, once it has ended, how many steps
    were undone and the processor's seconds."""

    step: str = "it did not begin"
    errors: dict[str, list[str]] = field(default_factory=dict)
    wrong: list[str] = field(default_factory=list)
    ended: tuple[int, float] | None = None


def told_of(run: GuiRun) -> dict[int, Told]:
    """What a run told of its walks, by their seeds, however FreeCAD ended."""
    # what stands between two lines of the walks was said in the step that the first names
    pieces = re.split(
        rf"^Msg: {REPORT}(\d+) (step \d+|wrong|ended) (.*)\n", run.report, flags=re.MULTILINE)
    walks: dict[int, Told] = {}
    for seed, number, words, others in zip(*[iter(pieces[1:])] * 4, strict=True):
        walk = walks.setdefault(int(seed), Told())
        if number == "ended":
            undone, seconds = words.split()
            walk.ended = int(undone), float(seconds)
        elif number == "wrong":
            walk.wrong.append(words)
        else:
            walk.step = f"{number} {words}"
        errors = walk.errors.setdefault(number, [])
        errors += error_lines(others)
        raised = [line for line in errors if line.startswith("<class")]
        if TAKEN_BACK in words and raised and all("ClosetError" in line for line in raised):
            errors.clear()
    return walks
