"""Which panel edits which object."""

from __future__ import annotations

import importlib
from typing import Any

from closetbench.gui.qt import translate
from closetbench.gui.task import TaskPanel
from closetbench.model.base import class_of
from closetbench.model.children import BODIES
from closetbench.model.contents import CONTENTS

CONTEXT = "Closetbench"

_PANELS = {
    "Closet": ("closet_panel", "ClosetPanel"),
    "Survey": ("survey_panel", "SurveyPanel"),
    "Carcass": ("carcass_panel", "CarcassPanel"),
    "GroovedPanel": ("grooved_panel", "GroovedPanelPanel"),
    "CutLayout": ("layout_panel", "LayoutPanel"),
    "Bill": ("bill_panel", "BillPanel"),
    "Offcuts": ("offcuts_panel", "OffcutsPanel"),
}


def panel_class(kind: str) -> type[TaskPanel]:
    """The panel of a class of objects; imported only now."""
    module, name = _PANELS.get(kind, ("content_panel", "ContentPanel"))
    return getattr(importlib.import_module(f"closetbench.gui.{module}"), name)


def edited_with(obj: Any) -> Any:
    """The object whose panel edits ``obj``: for a part its component, for a bay its carcass,
    else itself."""
    kind = class_of(obj)
    if kind in BODIES:
        return obj.Component
    if kind == "Bay":
        return next((o for o in obj.InList if class_of(o) == "Carcass"), None)
    return obj if kind in _PANELS or kind in CONTENTS else None


def open_for(obj: Any) -> bool:
    """Open the panel that edits an object; whether there is one."""
    target = edited_with(obj)
    if target is None:
        return False
    return _make(target).start()


def show_for(obj: Any) -> bool:
    """Show the panel because FreeCAD has entered the object's edit mode."""
    panel = TaskPanel.current
    if panel is not None and panel.obj == obj:
        panel.show()
        return True
    target = edited_with(obj)
    return target is not None and _make(target).start(editing=True)


def hide_for(obj: Any) -> None:
    """FreeCAD has left the object's edit mode."""
    panel = TaskPanel.current
    if panel is not None and panel.obj == obj:
        panel.left_by_host()


def _make(obj: Any) -> TaskPanel:
    title = translate(CONTEXT, "Edit {}").format(obj.Label)
    return panel_class(class_of(obj))(obj.Document, title, obj)
