"""Random edits by commands and panels, all undone and all redone.

A share of them, each repeatable by its seed; ``benchmarks/undo_walks.py`` walks a hundred.
"""

import pytest

from tests.gui.walk_report import told_of

pytestmark = [pytest.mark.gui, pytest.mark.once]

SEEDS, STEPS = (1, 22, 25), 50


def test_random_edits_undone_and_redone(gui):
    run = gui("undoing.py", judge=False, seeds=SEEDS, steps=STEPS, timeout=900)
    told = told_of(run)
    for seed, walk in told.items():
        assert not walk.wrong, f"walk {seed}"
        assert not any(walk.errors.values()), f"walk {seed}: {walk.errors}"
    assert (run.finished, run.status, run.failures) == (True, 0, ())
    assert [(seed, walk.ended is not None) for seed, walk in told.items()] == [
        (seed, True) for seed in SEEDS]
    assert sum(walk.ended[0] for walk in told.values()) > 36
