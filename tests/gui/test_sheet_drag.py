"""Parts dragged on the drawing of a cut layout, in FreeCAD's 3D view."""

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.ends]


def test_parts_are_dragged_between_sheets(gui):
    run = gui("sheet_drag.py", timeout=200)
    assert run.checks > 30
