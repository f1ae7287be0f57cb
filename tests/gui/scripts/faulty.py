"""Goes wrong in every way that the harness has to notice, each once."""

import FreeCAD
import FreeCADGui


class Raises:
    def GetResources(self):
        return {"MenuText": "Raises", "ToolTip": "Raises"}

    def Activated(self):
        raise RuntimeError("raised in a command")


def raise_in_slot():
    raise RuntimeError("raised in a slot")


def steps(gui):
    gui.equal(1 + 1, 3, "a sum")
    FreeCAD.Console.PrintError("told as an error\n")
    FreeCAD.Console.PrintWarning("told as a warning\n")
    FreeCADGui.addCommand("Test_Raises", Raises())
    FreeCADGui.runCommand("Test_Raises")
    yield
    gui.QtCore.QTimer.singleShot(0, raise_in_slot)
    yield 200
    gui.later(0, lambda: gui.check(False, "asked later"))
    yield 200
    gui.patience = 2
    box = gui.QtWidgets.QMessageBox(gui.window)
    box.setWindowTitle("Question")
    box.setText("asked of nobody")
    box.exec_() if hasattr(box, "exec_") else box.exec()
    raise RuntimeError("raised in a step")
