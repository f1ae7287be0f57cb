"""FreeCAD starts with the add-on, and the workbench can be used."""

import pytest

pytestmark = pytest.mark.gui


def test_workbench_activates(gui):
    run = gui("start.py")
    assert run.checks >= 5
    assert "ClosetbenchWorkbench" in run.records["workbenches"]
    assert run.shots["window"].stat().st_size > 10_000
    assert "Traceback" not in run.report + run.output
