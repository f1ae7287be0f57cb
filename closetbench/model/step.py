"""Parts as a STEP file, each a solid with its name."""

from __future__ import annotations

import contextlib
import secrets
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

import FreeCAD

from closetbench.core.errors import DocumentError
from closetbench.model.base import class_of
from closetbench.model.children import BODIES, parts_of
from closetbench.stock.atomic import write_bytes_atomically

ENDINGS = (".step", ".stp")
_PREFERENCES = "User parameter:BaseApp/Preferences/Mod/Import"
_WANTED = {"ExportHiddenObject": True, "ExportKeepPlacement": True}
"""Preferences of FreeCAD's that leave parts out, or put a single one to the origin."""
_LAST = b"END-ISO-10303-21;"
"""What a whole file ends in; ISO 10303-21, clause 5."""


@contextlib.contextmanager
def _preferences() -> Iterator[None]:
    """FreeCAD's preferences as they have to be for a moment; then the user's again."""
    group = FreeCAD.ParamGet(_PREFERENCES)
    had = {text.split(" = ")[0] for text in group.GetBools() or ()}
    before = {name: group.GetBool(name) for name in _WANTED}
    for name, value in _WANTED.items():
        group.SetBool(name, value)
    try:
        yield
    finally:
        for name, value in before.items():
            if name in had:
                group.SetBool(name, value)
            else:
                group.RemBool(name)


def bodies_in(objects: Sequence[Any]) -> list[Any]:
    """The parts among objects, and those of the components and closets among them, each
    once and in the tree's order."""
    found: dict[str, Any] = {}
    for obj in objects:
        kind = class_of(obj)
        if kind == "Closet":
            own = bodies_in(obj.Group)
        elif kind in (*BODIES, "GroovedPanel"):
            own = [obj]
        else:
            own = parts_of(obj)
        found |= {o.Name: o for o in own if not o.Shape.isNull()}
    return list(found.values())


def write_step(path: str | Path, objects: Sequence[Any], exporter: Any = None) -> Path:
    """Write the parts among ``objects`` where they stand, in mm, whole or not at all.

    ``exporter``: a module with FreeCAD's ``export``; by default that without colours. Raises
    ``DocumentError`` for nothing to write, another ending, or where it cannot be written.
    """
    target = Path(path)
    bodies = bodies_in(objects)
    if not bodies:
        raise DocumentError("STEP file", "parts", 0, "there is nothing to write yet")
    if target.suffix.lower() not in ENDINGS:
        raise DocumentError(
            "STEP file", "file", target, f"the name must end in {' or '.join(ENDINGS)}")
    if exporter is None:
        import Import

        exporter = Import
    # FreeCAD writes by name and says little where it fails: beside first, and looked at
    beside = target.with_name(f".{secrets.token_hex(4)}.step")
    try:
        with _preferences():
            exporter.export(bodies, str(beside))
        data = beside.read_bytes()
    except Exception as error:
        raise DocumentError(
            "STEP file", "file", target,
            f"it cannot be written ({error}); see whether the folder is there and may be written "
            "to") from error
    finally:
        beside.unlink(missing_ok=True)
    if not data.rstrip().endswith(_LAST):
        raise DocumentError("STEP file", "file", target, "FreeCAD wrote only part of it")
    return write_bytes_atomically(target, data, "STEP file")
