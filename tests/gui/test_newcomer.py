"""The walk of somebody who has never used the workbench."""

import csv
import io

import pytest

pytestmark = pytest.mark.gui


def test_newcomer_builds_a_closet(gui):
    run = gui("newcomer.py", timeout=300)
    assert 20 <= run.records["steps"] <= 60
    rows = list(csv.reader(io.StringIO(run.records["csv"])))
    assert sum(bool(row) for row in rows) > 30
    assert run.records["dxf"]
