"""The workbench is listed, and activating it fills menus and toolbars."""

import sys

import FreeCADGui

NAME = "ClosetbenchWorkbench"
HEAVY = {"ezdxf", "matplotlib", "openpyxl", "scipy", "shapely", "networkx"}


def steps(gui):
    gui.check(NAME in FreeCADGui.listWorkbenches(), "the workbench is listed")
    loaded = [name for name in sys.modules if name.startswith("closetbench.gui")]
    gui.equal(loaded, [], "modules of ours that FreeCAD's start imports")
    before = set(sys.modules)
    FreeCADGui.activateWorkbench(NAME)
    yield 300
    gui.equal(HEAVY & (set(sys.modules) - before), set(), "heavy imports of the activation")
    active = FreeCADGui.activeWorkbench()
    gui.equal(active.name(), NAME, "active workbench")

    from closetbench.gui import workbench

    toolbars = workbench.toolbars()
    gui.check(toolbars, "the workbench has toolbars")
    known = set(FreeCADGui.listCommands())
    for toolbar, commands in toolbars.items():
        shown = gui.find(gui.QtWidgets.QToolBar, toolbar)
        if gui.check(shown is not None and shown.isVisible(), f"toolbar {toolbar} is on screen"):
            gui.check(shown.actions(), f"toolbar {toolbar} has buttons")
        for command in commands:
            gui.check(command in known or command == "Separator", f"{command} is a command")
    menus = [action.text().replace("&", "") for action in gui.window.menuBar().actions()]
    gui.check("Closetbench" in menus, f"the menu is in the menu bar: {menus}")
    gui.record("workbenches", sorted(FreeCADGui.listWorkbenches()))
    gui.shot("window")
