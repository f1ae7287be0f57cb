"""The add-on's own tests, run the way FreeCAD runs those of its parts."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys

import pytest

pytestmark = pytest.mark.freecad


def test_freecad_runs_our_tests(root, tmp_path):
    """``freecadcmd -t``, with the add-on linked where add-ons belong."""
    home = tmp_path / "home"
    env = {k: v for k, v in os.environ.items() if not k.startswith("XDG_")} | {
        "HOME": str(home), "LC_ALL": "C.UTF-8", "PYTHONDONTWRITEBYTECODE": "1"}
    ask = (
        "import sys; sys.path.insert(0, sys.argv[1]); from closetbench.host import import_freecad;"
        "print(import_freecad().getUserAppDataDir())")
    told = subprocess.run(
        [sys.executable, "-c", ask, str(root)], env=env, capture_output=True, text=True,
        check=True, timeout=120)
    modules = os.path.join(told.stdout.strip().splitlines()[-1], "Mod")
    assert modules.startswith(str(home))
    os.makedirs(modules)
    os.symlink(root, os.path.join(modules, "ClosetBench"))
    command = shutil.which("freecadcmd") or shutil.which("FreeCADCmd")
    done = subprocess.run(
        [command, "-t", "closetbench.selftest"], env=env, stdin=subprocess.DEVNULL,
        capture_output=True, text=True, check=False, timeout=240, cwd=tmp_path)
    said = done.stdout + done.stderr
    assert done.returncode == 0, said
    assert "Ran 4 tests" in said, said
    assert "OK" in said, said


def test_they_are_in_the_list_of_freecads_tests(root):
    code = (
        "import sys; sys.path.insert(0, sys.argv[1]); from closetbench.host import import_freecad;"
        "F = import_freecad(); exec(open(sys.argv[1] + '/Init.py', encoding='utf-8').read());"
        "import unittest;"
        "suite = unittest.defaultTestLoader.loadTestsFromName(F.__unit_test__[-1]);"
        "print(suite.countTestCases())")
    done = subprocess.run(
        [sys.executable, "-c", code, str(root)], capture_output=True, text=True, check=False,
        timeout=120)
    assert done.returncode == 0, done.stderr
    assert done.stdout.strip().splitlines()[-1] == "4"
