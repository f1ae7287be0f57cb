"""Random edits by commands and panels, all undone and all redone.

A share of them, each repeatable by its seed; ``benchmarks/undo_walks.py`` walks a hundred.
"""

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.once]

SEEDS, STEPS = (5, 22), 50


def test_random_edits_undone_and_redone(gui):
    run = gui("undoing.py", seeds=SEEDS, steps=STEPS, timeout=900)
    assert [walk["seed"] for walk in run.records["walks"]] == list(SEEDS)
    assert sum(walk["undo"] for walk in run.records["walks"]) > 20
