"""Our page among FreeCAD's preferences."""

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.once]


def test_preferences(gui):
    run = gui("preferences.py", timeout=150)
    assert run.checks > 10
