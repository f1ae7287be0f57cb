"""The library of material cards that ships with the package, made known to FreeCAD.

FreeCAD 1.0 and later look for cards in the folders that its user parameters name, once in a
session, with the first object that has a shape. Imported at start-up: nothing heavy in here.
"""

from __future__ import annotations

import importlib.util
import os

import FreeCAD

NAME = "Closetbench"
_PACKAGE = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))  # pathlib takes 5 ms
_RESOURCES = os.path.join(os.path.dirname(_PACKAGE), "resources")
FOLDER = os.path.join(_RESOURCES, "materials")
_ICON = os.path.join(_RESOURCES, "icons", "closetbench.svg")
MODULES = "User parameter:BaseApp/Preferences/Mod/Material/Resources/Modules"


def has_cards() -> bool:
    """Whether this FreeCAD has cards on shapes: 0.20 has not."""
    return importlib.util.find_spec("Materials") is not None


def register() -> None:
    """Name our folder in FreeCAD's user parameters; where it is named already, do nothing."""
    if not has_cards():
        return
    group = FreeCAD.ParamGet(f"{MODULES}/{NAME}")
    for key, value in (("ModuleDir", FOLDER), ("ModuleIcon", _ICON)):
        if group.GetString(key) != value:
            group.SetString(key, value)
    if not group.GetBool("ModuleReadOnly"):
        group.SetBool("ModuleReadOnly", True)
