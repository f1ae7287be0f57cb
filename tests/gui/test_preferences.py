"""Our page among FreeCAD's preferences."""

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.once]


def test_preferences(gui):
    run = gui("preferences.py", timeout=250)
    assert run.checks > 14
    # another session, with the settings that this one left
    assert gui("preferences.py", timeout=250, again=True).checks > 14
