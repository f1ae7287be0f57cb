"""The panels can be read on a dark theme; the pictures are for looking at."""

import pytest

pytestmark = pytest.mark.gui


def test_dark_theme(gui):
    gui("dark.py", choose=True)
    run = gui("dark.py", choose=False)
    assert set(run.shots) == {"survey", "carcass", "layout", "offcuts", "panel", "help"}
