"""From nothing to a closet with carcasses, by commands and task panels."""

import pytest

pytestmark = pytest.mark.gui


def test_closet_by_its_panels(gui):
    run = gui("carcass.py", timeout=150)
    assert run.checks > 60
    assert run.records["parts"] > 10
