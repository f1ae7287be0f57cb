"""The checks, the dangers before an export and the survey sheet, by commands and panels."""

import pytest

pytestmark = pytest.mark.gui


def test_checks(gui):
    run = gui("checks.py", look=False, timeout=300)
    assert run.checks > 80


@pytest.mark.once
def test_checks_on_a_dark_theme(gui):
    gui("dark.py", choose=True)
    run = gui("checks.py", look=True)
    assert set(run.shots) == {"checks", "dangers"}
