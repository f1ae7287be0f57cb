"""Saying what was done where FreeCAD says such things."""

from __future__ import annotations

import FreeCAD
import FreeCADGui


def report(text: str) -> None:
    """A line in the report view, and for a while in the status bar."""
    FreeCAD.Console.PrintMessage(text + "\n")
    FreeCADGui.getMainWindow().statusBar().showMessage(text, 8000)
