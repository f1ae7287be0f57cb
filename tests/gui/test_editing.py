"""Editing afterwards, by double click, copy and paste."""

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.ends]


def test_editing_and_copying(gui):
    run = gui("editing.py", timeout=240)
    assert run.checks >= 30
