"""Runs inside FreeCAD: drives one test script through the event loop (see harness.py)."""

from __future__ import annotations

import faulthandler
import json
import os
import runpy
import sys
import traceback
from pathlib import Path

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

try:
    from PySide import QtWidgets
except ImportError:  # FreeCAD 0.20 has the widgets in QtGui
    QtWidgets = QtGui


class Driver:
    """What a script gets to work with.

    ``arguments``: what the test handed over; ``folder``: a folder of the test for files;
    ``root``: the checkout; ``QtCore``, ``QtGui``, ``QtWidgets``: the same names on every
    FreeCAD; ``patience``: seconds that a modal dialog may stay open.
    """

    patience = 10
    QtCore = QtCore
    QtGui = QtGui
    QtWidgets = QtWidgets

    def __init__(self, task: dict) -> None:
        self._unanswered = 0
        self.arguments = task["arguments"]
        self.folder = Path(task["folder"])
        self.root = Path(task["root"])
        self._task = task
        self._result = {
            "records": {}, "checks": 0, "failures": [], "shots": {}, "finished": False,
        }  # fmt: skip

    @property
    def window(self) -> QtWidgets.QMainWindow:
        return FreeCADGui.getMainWindow()

    def check(self, condition: object, what: str) -> bool:
        """Note a failure unless ``condition`` holds; the script goes on either way."""
        self._result["checks"] += 1
        if not condition:
            self.fail(what)
        return bool(condition)

    def equal(self, got: object, wanted: object, what: str) -> bool:
        return self.check(got == wanted, f"{what}: got {got!r}, wanted {wanted!r}")

    def close(self, got: float, wanted: float, what: str, tolerance: float = 1e-6) -> bool:
        return self.check(abs(got - wanted) <= tolerance, f"{what}: got {got}, wanted {wanted}")

    def fail(self, what: str) -> None:
        self._result["failures"].append(what)

    def record(self, name: str, value: object) -> None:
        """Hand a value (JSON only) to the test."""
        self._result["records"][name] = value

    def shot(self, name: str, widget: QtWidgets.QWidget | None = None) -> None:
        """Save a picture of the whole screen, or of one widget.

        Not ``grab`` for the whole: with Qt 5 that leaves 3D views blank.
        """
        self.settle()
        screen = QtGui.QGuiApplication.primaryScreen()
        pixmap = screen.grabWindow(0) if widget is None else widget.grab()
        self._saved(name, pixmap.save)

    def view_shot(self, name: str, width: int = 1200, height: int = 900) -> None:
        """Save a picture of the active document's 3D view."""
        view = FreeCADGui.ActiveDocument.ActiveView
        self._saved(name, lambda path: view.saveImage(path, width, height, "White"))

    def later(self, milliseconds: int, function) -> None:
        """Call ``function`` from the event loop: the way to answer a modal dialog."""

        def call() -> None:
            try:
                function()
            except Exception:
                self.fail(traceback.format_exc())

        QtCore.QTimer.singleShot(milliseconds, call)

    def find(self, kind: type, name: str = "", within: QtWidgets.QWidget | None = None):
        """The child widget of that class and object name, None where there is none."""
        return (within or self.window).findChild(kind, name)

    def settle(self, milliseconds: int = 50) -> None:
        """Handle what waits in the event loop, for at least so long."""
        loop = QtCore.QEventLoop()
        QtCore.QTimer.singleShot(milliseconds, loop.quit)
        (loop.exec if hasattr(loop, "exec") else loop.exec_)()

    def watch(self) -> None:
        """Close a modal dialog that nobody answers, and tell what it said.

        FreeCAD itself opens one when a workbench or a command fails; the run would stand
        still until its time is up.
        """
        modal = QtWidgets.QApplication.activeModalWidget()
        self._unanswered = self._unanswered + 1 if modal is not None else 0
        if self._unanswered > self.patience:
            self._unanswered = 0
            text = modal.text() if isinstance(modal, QtWidgets.QMessageBox) else ""
            self.fail(f"nobody answered the dialog {modal.windowTitle()!r} {text}".rstrip())
            self.shot("unanswered", modal)
            modal.close()
        QtCore.QTimer.singleShot(1000, self.watch)

    def _saved(self, name: str, save) -> None:
        path = f"{self._task['shots']}-{name}.png"
        Path(path).unlink(missing_ok=True)
        save(path)
        if self.check(Path(path).is_file(), f"screenshot {name} was not written"):
            self._result["shots"][name] = path

    def run(self) -> None:
        """Start the script; called once the main window stands."""
        try:
            steps = runpy.run_path(self._task["script"])["steps"](self)
        except Exception:
            self._end(traceback.format_exc())
            return
        self._advance(steps)

    def _advance(self, steps) -> None:
        # on a busy machine a recompute takes long, and FreeCAD lets timers in meanwhile
        if any(doc.Recomputing for doc in FreeCAD.listDocuments().values()):
            QtCore.QTimer.singleShot(50, lambda: self._advance(steps))
            return
        try:
            pause = next(steps)
        except StopIteration:
            self._end()
        except Exception:
            self._end(traceback.format_exc())
        else:
            QtCore.QTimer.singleShot(int(pause or 0), lambda: self._advance(steps))

    def _end(self, failure: str = "") -> None:
        if failure:
            self.fail(failure)
        self._result["finished"] = not failure
        beside = Path(self._task["result"] + ".part")
        beside.write_text(json.dumps(self._result), encoding="utf-8")
        beside.replace(self._task["result"])
        try:
            if FreeCADGui.Control.activeDialog():
                FreeCADGui.Control.closeDialog()
            for name in list(FreeCAD.listDocuments()):
                FreeCAD.closeDocument(name)
        finally:
            QtCore.QTimer.singleShot(0, QtWidgets.QApplication.instance().quit)


def start() -> None:
    """Wait for the main window, then run the script that the environment names."""
    window = FreeCADGui.getMainWindow()
    if window is None or not window.isVisible():
        QtCore.QTimer.singleShot(100, start)
        return
    for name, shown in (("Combo View", True), ("Python console", False)):
        dock = window.findChild(QtWidgets.QDockWidget, name)
        if dock is not None:
            dock.setVisible(shown)
    task = json.loads(Path(os.environ["CLOSETBENCH_GUI_TASK"]).read_text(encoding="utf-8"))
    sys.closetbench_driver = driver = Driver(task)
    driver.watch()
    driver.run()


# FreeCAD may go through a script a second time.
if not hasattr(sys, "closetbench_driver"):
    sys.closetbench_driver = None
    faulthandler.enable(2)  # a crash tells where Python was; it ends up in the run's output
    QtCore.QTimer.singleShot(500, start)
