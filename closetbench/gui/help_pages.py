"""Where the help pages are. Nothing heavy is imported here: every command asks for its page."""

from __future__ import annotations

from pathlib import Path

import FreeCADGui

from closetbench.gui.qt import RESOURCES

FOLDER = RESOURCES / "help"
"""The English pages; beside them a folder for each language, named as FreeCAD names it."""
INDEX = "index"


def page_file(name: str) -> Path:
    """The page of a command or of an object's class, the index where there is none: in the
    language that FreeCAD speaks now, in English where that has no such page."""
    language = FreeCADGui.supportedLocales().get(FreeCADGui.getLocale())
    folders = (FOLDER / language, FOLDER) if language else (FOLDER,)
    for page in (name.removeprefix("Closetbench_"), INDEX):
        for folder in folders:
            path = folder / f"{page}.md"
            if path.is_file():
                return path
    raise FileNotFoundError(FOLDER / f"{INDEX}.md")


def page_url(name: str) -> str:
    """The page's address for FreeCAD's own help: What's This takes it in place of a text,
    and FreeCAD 1.0 and later show it with their module Help."""
    return page_file(name).as_uri()
