"""The panel that says what is done, what is next and what is wrong."""

import pytest

pytestmark = pytest.mark.gui


@pytest.mark.ends
def test_guide_leads_and_is_remembered(gui):
    run = gui("guide.py")
    assert run.checks >= 15
    assert gui("guide.py", again=True).checks >= 2


@pytest.mark.once
def test_guide_dark(gui):
    gui("dark.py", choose=True)
    gui("guide.py", dark=True)
