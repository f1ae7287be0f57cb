"""The help window, and how one comes to it."""

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.once]


def test_help(gui):
    run = gui("help.py", timeout=240)
    assert run.checks > 60
