"""Where the 3D view looks from."""

from __future__ import annotations

from typing import Any

import FreeCAD
import FreeCADGui


def show_all() -> None:
    """Look at everything from the front, from the right and above.

    Nearer to the front than FreeCAD's isometric view, so that one sees into a closet.
    """
    gui = FreeCADGui.ActiveDocument
    view = gui.ActiveView if gui is not None else None
    if hasattr(view, "setCameraOrientation"):
        around = FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), 28)
        upright = FreeCAD.Rotation(FreeCAD.Vector(1, 0, 0), 72)
        view.setCameraOrientation(around.multiply(upright))
        view.fitAll()


def open_view(obj: Any) -> None:
    """Open what FreeCAD shows of an object, a page or a table, and stay in this workbench:
    FreeCAD may go to another, where none of our buttons are."""
    bench = FreeCADGui.activeWorkbench().name()
    obj.ViewObject.doubleClicked()
    if FreeCADGui.activeWorkbench().name() != bench:
        FreeCADGui.activateWorkbench(bench)
