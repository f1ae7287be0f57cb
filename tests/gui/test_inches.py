"""The panels in inches, a single panel, and a file made without windows."""

import pytest

pytestmark = pytest.mark.gui


def test_inches_panels_and_headless_files(gui):
    run = gui("inches.py", timeout=150)
    assert run.checks > 40
