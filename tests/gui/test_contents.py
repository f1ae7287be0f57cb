"""Drawers, doors, rods and the like, by their commands and panels."""

import pytest

pytestmark = pytest.mark.gui


def test_contents(gui):
    run = gui("contents.py", timeout=150)
    assert run.checks > 50
