"""Fixtures of the tests that drive FreeCAD's windows."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from tests.gui import harness


@pytest.fixture(scope="session")
def display():
    """A virtual screen that the GUI tests share."""
    with harness.screen() as name:
        yield name


@pytest.fixture
def gui(
    display: str, tmp_path: Path, request: pytest.FixtureRequest
) -> Callable[..., harness.GuiRun]:
    """``gui("script.py", key=value…)`` runs tests/gui/scripts/script.py in FreeCAD.

    Fails the test if a check failed, an exception was raised or the report view shows an
    error; ``judge=False`` leaves that to the test. Called again in the same test, FreeCAD
    starts with the settings that the run before left.
    """

    def run(script: str, judge: bool = True, timeout: float = 120, **arguments: Any):
        __tracebackhide__ = True
        name = re.sub(r"\W+", "-", request.node.name.removeprefix("test_")).strip("-")
        path = Path(__file__).parent / "scripts" / script
        result = harness.run(path, tmp_path, display, name, arguments, timeout)
        if judge:
            result.judge()
        return result

    return run
