"""Saying what was done where FreeCAD says such things."""

from __future__ import annotations

import FreeCAD
import FreeCADGui

from closetbench.gui.qt import QtCore


def report(text: str) -> None:
    """A line in the report view, and for a while in the status bar."""
    FreeCAD.Console.PrintMessage(text + "\n")
    bar = FreeCADGui.getMainWindow().statusBar()
    # FreeCAD has yet to show there what was printed before
    QtCore.QTimer.singleShot(0, lambda: bar.showMessage(text, 8000))
