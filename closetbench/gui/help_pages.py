"""Where the help pages are. Nothing heavy is imported here: every command asks for its page."""

from __future__ import annotations

from pathlib import Path

from closetbench.gui.qt import RESOURCES

FOLDER = RESOURCES / "help"
INDEX = "index"


def page_file(name: str) -> Path:
    """The page of a command or of an object's class; the index where there is none."""
    path = FOLDER / f"{name.removeprefix('Closetbench_')}.md"
    return path if path.is_file() else FOLDER / f"{INDEX}.md"


def page_url(name: str) -> str:
    """The page's address for FreeCAD's own help: What's This takes it in place of a text,
    and FreeCAD 1.0 and later show it with their module Help."""
    return page_file(name).as_uri()
