"""Between the sheets and the rest of FreeCAD: what is chosen here is chosen there."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCADGui

from closetbench.core.errors import ClosetError
from closetbench.model import bridge
from closetbench.model.base import class_of
from closetbench.model.children import BODIES, parts_of
from closetbench.model.layout import cutting_of, faces_of


def objects_by_part(closet: Any) -> dict[str, Any]:
    """The objects of the closet's parts, by the parts' full names."""
    found: dict[str, Any] = {}
    for component in bridge.components_in(closet):
        if class_of(component) == "GroovedPanel":
            try:
                parts = bridge.component_of(component).parts
            except ClosetError:
                continue
            found.update((part.full_name, component) for part in parts)
        else:
            found.update((o.FullName, o) for o in parts_of(component))
    return found


def part_of_face(layout: Any, name: str) -> str:
    """The part whose face of the layout's drawing is named ("Face7"); empty for none."""
    cutting = cutting_of(layout)
    if cutting is None or not name.startswith("Face"):
        return ""
    faces = faces_of(cutting.sheets, cutting.lengths)
    number = int(name.removeprefix("Face"))
    kind, key = faces[number - 1] if number <= len(faces) else ("", "")
    return key if kind == "part" else ""


def select(obj: Any) -> None:
    """Make an object the only one that is selected, in the tree and in the 3D view."""
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(obj)


class SelectionWatch:
    """Tells which part was selected elsewhere: its object, or its face on the drawing.

    FreeCAD calls the methods by their names.
    """

    def __init__(self, layout: Any, tell: Callable[[str], None]) -> None:
        self._layout, self._tell = layout, tell
        FreeCADGui.Selection.addObserver(self)

    def stop(self) -> None:
        """Watch no longer."""
        FreeCADGui.Selection.removeObserver(self)

    def addSelection(self, doc: str, name: str, sub: str, at: Any) -> None:  # noqa: N802
        if doc != self._layout.Document.Name:
            return
        obj = self._layout.Document.getObject(name)
        if obj is None:
            return
        if obj == self._layout:
            key = part_of_face(obj, sub)
        elif class_of(obj) in BODIES:
            key = obj.FullName
        else:
            known = objects_by_part(self._layout.Closet)
            key = next((k for k, o in known.items() if o == obj), "")
        if key:
            self._tell(key)
