"""FreeCAD started in German: What's This has the German pages. Run twice: the first run sets it."""

from __future__ import annotations

import FreeCAD
import FreeCADGui

from tests.gui.hands import Hands


def steps(gui):
    from closetbench.gui import workbench
    from closetbench.gui.help_pages import FOLDER

    if gui.arguments["first"]:
        general = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/General")
        general.SetString("Language", "German")
        FreeCAD.saveParameter()
        return
    Hands(gui)
    gui.equal(FreeCADGui.getLocale(), "German", "language")
    for names in workbench.toolbars().values():
        for name in names:
            page = FOLDER / "de" / f"{name.removeprefix('Closetbench_')}.md"
            info = FreeCADGui.Command.get(name).getInfo()
            gui.equal(info["whatsThis"], page.as_uri(), f"What's This of {name}")
    yield
