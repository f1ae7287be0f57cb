"""Lengths dragged in the 3D view with the mouse."""

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.ends]


def test_handles_in_the_view(gui):
    run = gui("handles.py", timeout=240)
    assert run.checks > 35
