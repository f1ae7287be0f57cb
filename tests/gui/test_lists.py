"""Lists and their cards, lips, fronts out of square, in the panels."""

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.once]


def test_lists(gui):
    run = gui("lists.py", timeout=150)
    assert run.checks > 20
