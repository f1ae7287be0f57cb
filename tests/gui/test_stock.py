"""Sheets by hand, offcuts at hand, less depth by one click, in FreeCAD's windows."""

import pytest

pytestmark = pytest.mark.gui


def test_sheets_offcuts_and_depths_by_hand(gui):
    run = gui("stock.py", timeout=200)
    assert run.checks > 40
    assert run.shots["drawing"].stat().st_size > 5_000
