"""What all commands share."""

from __future__ import annotations

from typing import Any

import FreeCAD
import FreeCADGui

from closetbench.gui.help_pages import page_url
from closetbench.gui.qt import icon_file, translate

mark = FreeCAD.Qt.QT_TRANSLATE_NOOP


class Command:
    """A command of ours. FreeCAD translates ``text`` and ``tip`` in the context ``name``."""

    name = ""
    text = ""
    tip = ""
    icon = ""
    accel = ""

    def GetResources(self) -> dict[str, str]:  # noqa: N802
        """What FreeCAD shows in menus, toolbars and the status bar."""
        shown = {
            "MenuText": self.text,
            "ToolTip": self.tip,
            "StatusTip": self.tip,
            "WhatsThis": page_url(self.name),
            "Pixmap": icon_file(self.icon),
        }
        return shown | ({"Accel": self.accel} if self.accel else {})

    def CmdHelpURL(self) -> str:  # noqa: N802
        """The command's page of help."""
        return page_url(self.name)

    def IsActive(self) -> bool:  # noqa: N802
        """Usable while no task panel is open; what else is needed is said when it runs."""
        return not FreeCADGui.Control.activeDialog()

    def Activated(self, index: int = 0) -> None:  # noqa: N802
        """Run the command; what is in its way is said in words."""
        from closetbench.core.errors import ClosetError
        from closetbench.gui.task import tell
        from closetbench.gui.units import explained

        try:
            self.run()
        except ClosetError as error:
            tell(self.title, explained(str(error)))

    def run(self) -> None:
        """What the command does; ``ClosetError`` is told to the user."""
        raise NotImplementedError

    @property
    def title(self) -> str:
        """The command's name as the user reads it, which is also that of the undo step."""
        return translate(self.name, self.text).rstrip("….")

    def ask_for(self, text: str, context: str = "") -> None:
        """Say what has to be there first; ``context`` of the text, else that of the command."""
        from closetbench.gui.task import tell

        tell(self.title, translate(context or self.name, text))


def document_or_new() -> tuple[Any, bool]:
    """The active document, or a new one; whether it is new."""
    doc = FreeCAD.ActiveDocument
    return (doc, False) if doc is not None else (FreeCAD.newDocument(), True)


def chosen(kind: str) -> Any:
    """The object of a class that the user means: the selected one, the one that a selected
    object belongs to, or the only one in the document; None where that is not clear."""
    from closetbench.gui.panels import edited_with
    from closetbench.model.base import class_of, ours
    from closetbench.model.bridge import closet_for

    doc = FreeCAD.ActiveDocument
    if doc is None:
        return None
    for obj in FreeCADGui.Selection.getSelection(doc.Name):
        target = edited_with(obj)
        for candidate in (obj, target, closet_of(obj), closet_for(target or obj)):
            if candidate is not None and class_of(candidate) == kind:
                return candidate
    found = list(ours(doc, kind))
    return found[0] if len(found) == 1 else None


def closet_of(obj: Any) -> Any:
    """The closet that a layout or a bill is of."""
    return getattr(obj, "Closet", None)


def there_are(kind: str) -> bool:
    """Whether the active document has objects of a class."""
    from closetbench.model.base import ours

    doc = FreeCAD.ActiveDocument
    return doc is not None and any(True for _ in ours(doc, kind))
