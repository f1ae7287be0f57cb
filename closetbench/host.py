"""Finding the FreeCAD of this machine from a plain Python, and what it is able to do.

Inside FreeCAD nothing here is needed; tests, the command line and benchmarks need it.
"""

from __future__ import annotations

import importlib
import importlib.machinery
import os
import shutil
import sys
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType

from closetbench.core.errors import ClosetError

LIBRARY_VARIABLE = "CLOSETBENCH_FREECAD"
"""Environment variable that names FreeCAD's library folder and goes before any search."""


class HostError(ClosetError):
    """FreeCAD is absent, or built for another Python than this one."""


def find_freecad() -> Path | None:
    """The folder that holds FreeCAD's Python modules, None where there is no FreeCAD.

    Looked for in the variable ``CLOSETBENCH_FREECAD``, on ``sys.path``, beside the
    ``freecadcmd`` on PATH, then where the systems' packages put it.
    """
    return next((folder for folder in _candidates() if _holds_freecad(folder)), None)


def import_freecad() -> ModuleType:
    """FreeCAD's module, its library folder put on ``sys.path`` first where needed.

    Raises HostError if there is none, or if it does not load into this interpreter.
    """
    if "FreeCAD" in sys.modules:
        return sys.modules["FreeCAD"]
    library = find_freecad()
    if library is None:
        raise HostError(
            "FreeCAD", "library folder", "not found", f"install FreeCAD or set {LIBRARY_VARIABLE}"
        )
    if str(library) not in sys.path:
        sys.path.append(str(library))
    try:
        return importlib.import_module("FreeCAD")
    except ImportError as error:
        raise HostError(
            "FreeCAD",
            "library folder",
            library,
            f"it does not load into Python {sys.version_info.major}.{sys.version_info.minor}"
            f" ({sys.executable}): {error}",
        ) from error


def _candidates() -> Iterator[Path]:
    named = os.environ.get(LIBRARY_VARIABLE)
    if named:
        yield Path(named)
    yield from (Path(entry) for entry in sys.path if entry)
    for command in ("freecadcmd", "FreeCADCmd", "freecad", "FreeCAD"):
        found = shutil.which(command)
        if found:
            program = Path(found).resolve()
            yield program.parent
            yield program.parent.parent / "lib"
    for prefix in ("/usr/lib/freecad-python3", "/usr/lib/freecad", "/usr/lib64/freecad"):
        yield Path(prefix, "lib")
    yield Path("/usr/local/lib")
    yield Path("/Applications/FreeCAD.app/Contents/Resources/lib")
    for base in (os.environ.get("PROGRAMFILES"), os.environ.get("LOCALAPPDATA")):
        if base:
            yield from sorted(Path(base).glob("FreeCAD*/bin"), reverse=True)


def _holds_freecad(folder: Path) -> bool:
    suffixes = importlib.machinery.EXTENSION_SUFFIXES
    return any((folder / f"FreeCAD{suffix}").is_file() for suffix in suffixes)
