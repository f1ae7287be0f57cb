"""Makes ``import FreeCAD`` work under plain pytest, and decides what its absence means."""

from __future__ import annotations

import os
import sys
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

from closetbench import host

ROOT = Path(__file__).resolve().parent.parent
REQUIRED = os.environ.get("CLOSETBENCH_REQUIRE_FREECAD") == "1"

# A verdict that depends neither on chance nor on how busy the machine is.
settings.register_profile(
    "closetbench",
    derandomize=True,
    database=None,
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow],
)
settings.load_profile("closetbench")

try:
    host.import_freecad()
    MISSING = ""
except host.HostError as error:
    MISSING = str(error)


def pytest_report_header() -> str:
    if MISSING:
        return f"FreeCAD: none ({MISSING})"
    freecad = sys.modules["FreeCAD"]
    return f"FreeCAD: {'.'.join(freecad.Version()[:3])} from {freecad.getHomePath()}"


def pytest_sessionstart() -> None:
    if MISSING and REQUIRED:
        pytest.exit(f"these tests must not run without FreeCAD: {MISSING}", returncode=3)


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    if MISSING:
        skip = pytest.mark.skip(reason=f"no FreeCAD on this machine: {MISSING}")
        for item in items:
            if item.get_closest_marker("freecad") or item.get_closest_marker("gui"):
                item.add_marker(skip)


@pytest.fixture(scope="session")
def root() -> Path:
    """The folder of the checkout."""
    return ROOT


@pytest.fixture
def doc():
    """A new FreeCAD document with undo switched on, closed after the test."""
    freecad = host.import_freecad()
    document = freecad.newDocument("Test")
    document.UndoMode = 1
    yield document
    freecad.closeDocument(document.Name)
