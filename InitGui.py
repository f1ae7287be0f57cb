"""Registers the workbench. FreeCAD executes this file at start-up: nothing heavy in here."""


class ClosetbenchWorkbench(Workbench):
    """Delegates to closetbench.gui.workbench; its icon is the one that package.xml names.

    Its methods import for themselves: once FreeCAD has executed this file, its top-level
    names are gone.
    """

    MenuText = "Closetbench"
    ToolTip = "Fitted closets, from tape readings to parts that are cut once"

    def Initialize(self):
        from closetbench.gui import workbench

        workbench.register_commands()
        commands = []
        for name, group in workbench.toolbars().items():
            self.appendToolbar(name, group)
            commands += [*group, "Separator"]
        self.appendMenu("Closetbench", commands[:-1])

    def Activated(self):
        from closetbench.gui import guide

        guide.enter()

    def Deactivated(self):
        from closetbench.gui import guide

        guide.leave()

    def GetClassName(self):
        return "Gui::PythonWorkbench"


FreeCADGui.addWorkbench(ClosetbenchWorkbench())
