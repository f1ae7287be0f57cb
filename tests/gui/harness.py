"""Starts a whole FreeCAD on a virtual screen, lets a script drive it, and judges the run.

A script is a Python file with a function ``steps(gui)``. Each ``yield`` in it gives the
event loop a turn (``yield 300``: of so many milliseconds). ``gui`` is the
``harness_inside.Driver``: checks, records, screenshots. FreeCAD gets a home folder of
its own, in which the checkout is linked as an add-on, and is killed when its time is up.
"""

from __future__ import annotations

import contextlib
import json
import os
import re
import signal
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from closetbench import host

ROOT = Path(__file__).resolve().parent.parent.parent
BUILD = Path(os.environ.get("CLOSETBENCH_BUILD", ROOT / "build"))
INSIDE = Path(__file__).with_name("harness_inside.py")
MODULE = "ClosetBench"

# Parameters that keep FreeCAD from greeting, asking or looking things up on the network, and
# one closet of a script from starting as the one before it.
PARAMETERS = """<?xml version="1.0" encoding="UTF-8" standalone="no" ?>
<FCParameters><FCParamGroup Name="Root"><FCParamGroup Name="BaseApp">
<FCParamGroup Name="Preferences">
  <FCParamGroup Name="General"><FCText Name="AutoloadModule">PartWorkbench</FCText></FCParamGroup>
  <FCParamGroup Name="MainWindow"><FCInt Name="ShowSplasher" Value="0"/></FCParamGroup>
  <FCParamGroup Name="Mod"><FCParamGroup Name="Start">
    <FCBool Name="ShowOnStartup" Value="0"/><FCBool Name="FirstStart2024" Value="0"/>
  </FCParamGroup><FCParamGroup Name="Closetbench">
    <FCBool Name="RememberValues" Value="0"/>
  </FCParamGroup></FCParamGroup>
  <FCParamGroup Name="View"><FCBool Name="ShowNaviCube" Value="0"/></FCParamGroup>
</FCParamGroup>
</FCParamGroup></FCParamGroup></FCParameters>
"""

ASK_FOLDERS = """
import json, FreeCAD
print(json.dumps({
    "version": FreeCAD.Version()[:2],
    "data": FreeCAD.getUserAppDataDir(),
    "parameters": FreeCAD.ConfigGet("UserParameter"),
}))
"""


class GuiError(AssertionError):
    """A run in which FreeCAD, the add-on or a check failed."""


@dataclass(frozen=True)
class GuiRun:
    """What a run left behind.

    ``records``: what the script recorded, by name. ``failures``: failed checks and
    exceptions. ``errors``: the error lines of FreeCAD's report view. ``report``: all of
    its lines, with their kinds. ``shots``: screenshots by name. ``status``: FreeCAD's
    exit status, None where it had to be killed.
    """

    version: str
    records: dict[str, Any]
    checks: int
    failures: tuple[str, ...]
    errors: tuple[str, ...]
    report: str
    output: str
    shots: dict[str, Path]
    status: int | None
    finished: bool

    def judge(self) -> None:
        """Raise GuiError unless the script ran to its end and nothing went wrong."""
        __tracebackhide__ = True
        wrong = list(self.failures) + [f"report view: {line}" for line in self.errors[:40]]
        if not self.finished or self.status != 0:
            ending = "was killed" if self.status is None else f"ended with {self.status}"
            when = "after" if self.finished else "before"
            wrong.insert(0, f"FreeCAD {ending} {when} the script's end")
        if wrong:
            lines = self.output.splitlines()
            crashes = [i for i, line in enumerate(lines) if line.startswith("Fatal Python")]
            told = lines[crashes[0] if crashes else -30 :][:30]
            raise GuiError("\n".join([*wrong, f"-- output of FreeCAD {self.version}", *told]))


@contextlib.contextmanager
def screen(size: str = "1600x1000x24") -> Iterator[str]:
    """A virtual screen; gives its DISPLAY. The server picks a number that is free."""
    read, write = os.pipe()
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(write), "-screen", "0", size, "-nolisten", "tcp"],
        pass_fds=[write],
        stdin=subprocess.DEVNULL,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    os.close(write)
    try:
        with os.fdopen(read) as answer:
            number = answer.readline().strip()
        if not number:
            raise GuiError(f"Xvfb did not start (status {server.wait(10)})")
        yield f":{number}"
    finally:
        server.terminate()
        server.wait(10)


def environment(home: Path, display: str) -> dict[str, str]:
    """FreeCAD's environment: nothing of the user's settings, no hardware."""
    kept = {key: text for key, text in os.environ.items() if not key.startswith(("XDG_", "QT_"))}
    runtime = home / "runtime"
    runtime.mkdir(mode=0o700, parents=True, exist_ok=True)
    return kept | {
        "HOME": str(home),
        "DISPLAY": display,
        "XDG_RUNTIME_DIR": str(runtime),
        "LC_ALL": "C.UTF-8",
        "LIBGL_ALWAYS_SOFTWARE": "1",
        "QTWEBENGINE_DISABLE_SANDBOX": "1",
        "PYTHONDONTWRITEBYTECODE": "1",
    }


def furnish(home: Path, env: dict[str, str]) -> str:
    """Link the add-on into the home folder, write the parameters; FreeCAD's version."""
    library = host.find_freecad()
    if library is None:
        raise GuiError("no FreeCAD on this machine")
    answer = subprocess.run(
        [sys.executable, "-c", ASK_FOLDERS],
        env=env | {"PYTHONPATH": str(library)},
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    )
    told = json.loads(answer.stdout.splitlines()[-1])
    modules = Path(told["data"]) / "Mod"
    if not modules.is_relative_to(home):
        raise GuiError(f"FreeCAD would use {modules}, which is outside the test's {home}")
    modules.mkdir(parents=True, exist_ok=True)
    link = modules / MODULE
    if not link.is_symlink():
        link.symlink_to(ROOT, target_is_directory=True)
    parameters = Path(told["parameters"])
    parameters.parent.mkdir(parents=True, exist_ok=True)
    if not parameters.exists():
        parameters.write_text(PARAMETERS, encoding="utf-8")
    return ".".join(told["version"])


def run(
    script: Path,
    folder: Path,
    display: str,
    name: str,
    arguments: dict[str, Any] | None = None,
    timeout: float = 120,
) -> GuiRun:
    """Let ``script`` drive a FreeCAD on ``display``.

    ``folder``: for the home and the results; used again, it keeps FreeCAD's settings.
    ``name``: prefix of the screenshots. ``arguments``: handed to the script, JSON only.
    """
    home = folder / "home"
    env = environment(home, display)
    version = furnish(home, env)
    shots = BUILD / "screenshots" / version
    shots.mkdir(parents=True, exist_ok=True)
    log, result, output = folder / "report.log", folder / "result.json", folder / "output.txt"
    for old in (log, result):
        old.unlink(missing_ok=True)
    task = {
        "script": str(script),
        "root": str(ROOT),
        "result": str(result),
        "shots": str(shots / name),
        "arguments": arguments or {},
        "folder": str(folder),
    }
    (folder / "task.json").write_text(json.dumps(task), encoding="utf-8")
    env["CLOSETBENCH_GUI_TASK"] = str(folder / "task.json")
    status: int | None
    with output.open("w", encoding="utf-8") as sink:
        process = subprocess.Popen(
            # FreeCAD 0.20 crashes on an option before the script's name.
            ["freecad", str(INSIDE), "--log-file", str(log)],
            env=env,
            cwd=folder,
            stdin=subprocess.DEVNULL,
            stdout=sink,
            stderr=subprocess.STDOUT,
            start_new_session=True,
        )
        try:
            status = process.wait(timeout)
        except subprocess.TimeoutExpired:
            status = None
        finally:
            with contextlib.suppress(ProcessLookupError):
                os.killpg(process.pid, signal.SIGKILL)
            process.wait()
    told = json.loads(result.read_text(encoding="utf-8")) if result.exists() else {}
    report = log.read_text(encoding="utf-8", errors="replace") if log.exists() else ""
    return GuiRun(
        version=version,
        records=told.get("records", {}),
        checks=told.get("checks", 0),
        failures=tuple(told.get("failures", ())),
        errors=error_lines(report),
        report=report,
        output=output.read_text(encoding="utf-8", errors="replace"),
        shots={key: Path(path) for key, path in told.get("shots", {}).items()},
        status=status,
        finished=told.get("finished", False),
    )


def error_lines(report: str) -> tuple[str, ...]:
    """What FreeCAD's log holds of the report view's errors, tracebacks whole."""
    lines = []
    inside = False
    for line in report.splitlines():
        kind = re.match(r"(Err|Wrn|Msg|Log|Critical|Not): ?", line)
        if kind:
            inside = kind.group(1) in ("Err", "Critical")
        if inside and line.strip():
            lines.append(line.replace("Err: ", ""))
    return tuple(lines)
