"""Finding FreeCAD from a plain Python."""

from __future__ import annotations

import importlib.machinery
import sys
from pathlib import Path

import pytest

from closetbench import host

LIBRARY = f"FreeCAD{importlib.machinery.EXTENSION_SUFFIXES[0]}"


@pytest.fixture
def nothing_there(monkeypatch, tmp_path) -> Path:
    """A machine without FreeCAD, but for what the test puts into the folder given back."""
    monkeypatch.delitem(sys.modules, "FreeCAD", raising=False)
    monkeypatch.delenv(host.LIBRARY_VARIABLE, raising=False)
    monkeypatch.setattr(sys, "path", [str(tmp_path)])
    monkeypatch.setattr(host, "_candidates", lambda: iter([tmp_path]))
    return tmp_path


@pytest.mark.freecad
def test_freecad_is_found_and_imported():
    library = host.find_freecad()
    assert library is not None
    assert host.import_freecad().Version()[0].isdigit()


def test_variable_goes_first(monkeypatch, tmp_path):
    (tmp_path / LIBRARY).touch()
    monkeypatch.setenv(host.LIBRARY_VARIABLE, str(tmp_path))
    assert host.find_freecad() == tmp_path


def test_absence_is_told(nothing_there):
    assert host.find_freecad() is None
    with pytest.raises(host.HostError, match=r"FreeCAD: .*not found; install FreeCAD or set"):
        host.import_freecad()


def test_library_of_another_python_is_told(nothing_there):
    (nothing_there / LIBRARY).write_text("not a library", encoding="utf-8")
    with pytest.raises(host.HostError) as failure:
        host.import_freecad()
    assert failure.value.value == nothing_there
    assert f"Python {sys.version_info.major}.{sys.version_info.minor}" in failure.value.limit
