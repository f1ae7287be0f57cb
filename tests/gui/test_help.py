"""The help window, and how one comes to it."""

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.once]


def test_help(gui):
    run = gui("help.py", timeout=240)
    assert run.checks > 60


def test_whats_this_speaks_the_language(gui):
    gui("whats_this.py", first=True)
    run = gui("whats_this.py", first=False)
    assert run.checks > 20
