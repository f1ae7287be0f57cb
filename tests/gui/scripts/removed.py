"""FreeCAD with the add-on, and then the same home without it."""

from __future__ import annotations

from pathlib import Path

import FreeCAD
import FreeCADGui


def steps(gui):
    path = Path(gui.arguments["file"])
    general = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/General")
    if gui.arguments["there"]:
        from tests.gui.hands import Hands

        hands = Hands(gui)
        general.SetString("AutoloadModule", "ClosetbenchWorkbench")
        hands.small_closet()
        hands.doc.saveAs(str(path))
        gui.record("volumes", volumes())
        yield
        return

    yield 500
    gui.check("ClosetbenchWorkbench" not in FreeCADGui.listWorkbenches(), "it is gone")
    gui.check("closetbench" not in FreeCAD.__unit_test__, "its tests too")
    try:
        import closetbench
    except ImportError:
        closetbench = None
    gui.check(closetbench is None, "it cannot be imported")
    window = FreeCADGui.getMainWindow()
    left = [
        w.objectName() for kind in (gui.QtWidgets.QToolBar, gui.QtWidgets.QDockWidget)
        for w in window.findChildren(kind)
        if "closet" in (w.objectName() + w.windowTitle()).lower()
    ]
    gui.equal(left, [], "bars and docks left behind")
    gui.record("active", FreeCADGui.activeWorkbench().name())
    gui.record("preferences", groups(FreeCAD.ParamGet("User parameter:BaseApp"), "BaseApp"))
    gui.shot("without")
    yield
    # the file is whole without it
    FreeCAD.Console.PrintMessage("-- the file is opened\n")
    FreeCAD.openDocument(str(path))
    yield 500
    gui.record("volumes", volumes())
    FreeCAD.ActiveDocument.recompute()
    gui.record("recomputed", volumes())
    gui.shot("file")
    yield


def volumes() -> dict:
    """The volumes of all solids in the document."""
    return {
        o.Name: round(o.Shape.Volume, 2) for o in FreeCAD.ActiveDocument.Objects
        if hasattr(o, "Shape") and not o.Shape.isNull() and o.Shape.Solids
    }


def groups(group, path: str) -> list:
    """Groups of settings with our name."""
    found = []
    for name in group.GetGroups():
        inner = f"{path}/{name}"
        if "closet" in name.lower():
            found.append(inner)
        found += groups(group.GetGroup(name), inner)
    return found
