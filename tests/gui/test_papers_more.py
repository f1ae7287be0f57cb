"""The bill as a spreadsheet, and parts as STEP."""

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.once]


def test_spreadsheet_and_solids(gui):
    run = gui("papers_more.py", timeout=240)
    assert run.checks > 20
