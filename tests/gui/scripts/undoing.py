"""Random edits, all undone and all redone: the start and the end again."""

import time

import FreeCAD
import FreeCADGui

from tests.gui.hands import WORKBENCH
from tests.gui.walk import Walk, hurry
from tests.gui.walk_report import REPORT


def steps(gui):
    FreeCADGui.activateWorkbench(WORKBENCH)
    from closetbench.gui import guide

    guide.leave()
    hurry(gui)
    told = []
    for seed in gui.arguments["seeds"]:
        began = time.process_time()
        walk = Walk(gui, seed)
        wrong = walk.run(gui.arguments["steps"])
        took = time.process_time() - began
        gui.check(not wrong, f"walk {seed}: {wrong}; it went {walk.log}")
        told.append({"seed": seed, "undo": walk.undo_steps, "seconds": round(took, 1),
                     "wrong": wrong, "log": walk.log})
        # FreeCAD may end before this script does; a line of its report has an end after 4000 signs
        for line in wrong:
            FreeCAD.Console.PrintMessage(f"{REPORT}{seed} wrong {line:.2000}\n")
        FreeCAD.Console.PrintMessage(f"{REPORT}{seed} ended {walk.undo_steps} {took:.1f}\n")
        yield
    gui.record("walks", told)
