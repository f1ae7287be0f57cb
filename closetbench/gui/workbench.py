"""The names of our commands and where they stand. Nothing heavy is imported here."""

from __future__ import annotations

import importlib

import FreeCAD
import FreeCADGui

from closetbench.gui.qt import ICONS, TRANSLATIONS, icon_file

# Given to FreeCAD's translation as they are: it looks them up in the context "Workbench".
_QT = FreeCAD.Qt.QT_TRANSLATE_NOOP
_CLOSET = _QT("Workbench", "Closet")
_SHOP = _QT("Workbench", "Closet shop papers")
_VIEW = _QT("Workbench", "Closet views")

MODULES = (
    "guide", "closet", "components", "contents", "papers", "checks", "room", "seeing", "help",
)
"""Modules of closetbench.gui.commands; each has a tuple COMMANDS."""


def toolbars() -> dict[str, list[str]]:
    """Our toolbars with the names of their commands, in the order of the work."""
    return {
        _CLOSET: [
            "Closetbench_Guide", "Closetbench_Start", "Closetbench_Survey",
            "Closetbench_Carcass", "Closetbench_Bay", "Closetbench_Contents", "Closetbench_Panel",
            "Closetbench_Duplicate", "Closetbench_GoesIn", "Closetbench_Opens",
            "Closetbench_Checks", "Closetbench_SurveySheet",
        ],
        _SHOP: [
            "Closetbench_Layout", "Closetbench_Offcuts", "Closetbench_Dxf", "Closetbench_Bill",
            "Closetbench_BillSheet", "Closetbench_Drawing", "Closetbench_Step",
            "Closetbench_Examples",
        ],
        _VIEW: ["Closetbench_Look", "Closetbench_Pictures", "Closetbench_Help"],
    }


def register_commands() -> None:
    """Make our commands and their translations known to FreeCAD."""
    FreeCADGui.addLanguagePath(str(TRANSLATIONS))
    FreeCADGui.updateLocale()
    FreeCADGui.addIconPath(str(ICONS))  # of the group of preferences
    from closetbench.gui import preferences

    preferences.register()
    for name in MODULES:
        module = importlib.import_module(f"closetbench.gui.commands.{name}")
        for command in module.COMMANDS:
            FreeCADGui.addCommand(command.name, command)


def icon_path() -> str:
    """The workbench's icon."""
    return icon_file("closetbench")
