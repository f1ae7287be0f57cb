"""Random edits, all undone and all redone: the start and the end again."""

import time

import FreeCAD
import FreeCADGui

from tests.gui.hands import WORKBENCH
from tests.gui.walk import Walk


def steps(gui):
    # FreeCAD keeps 20 steps unless told
    FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Document").SetInt("MaxUndoSize", 1000)
    FreeCADGui.activateWorkbench(WORKBENCH)
    from closetbench.gui import guide

    guide.leave()
    told = []
    for seed in gui.arguments["seeds"]:
        began = time.perf_counter()
        walk = Walk(gui, seed)
        wrong = walk.run(gui.arguments["steps"])
        took = time.perf_counter() - began
        gui.check(not wrong, f"walk {seed}: {wrong}; it went {walk.log}")
        told.append({"seed": seed, "undo": walk.undo_steps, "seconds": round(took, 1),
                     "wrong": wrong, "log": walk.log})
        yield
    gui.record("walks", told)
