"""What a task panel has to do with FreeCAD's documents: watching them, edit mode, waiting."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from typing import TYPE_CHECKING, Any

import FreeCAD
import FreeCADGui

from closetbench.gui.qt import QtCore, QtWidgets

if TYPE_CHECKING:
    from closetbench.gui.task import TaskPanel


MARGINS = 56
"""px that FreeCAD's dock, its boxes and the scroll bar take beside a form."""
NARROWEST, WIDEST = 390, 560
"""px that the dock is made at least and at most, so that values and words are not cut off."""


class Observer:
    """Tells a panel that its document was undone, redone or closed, or its object deleted."""

    def __init__(self, panel: TaskPanel) -> None:
        self._panel = panel

    def slotUndoDocument(self, doc: Any) -> None:  # noqa: N802
        self._gone(doc == self._panel.doc)

    slotRedoDocument = slotUndoDocument  # noqa: N815
    slotDeletedDocument = slotUndoDocument  # noqa: N815

    def slotDeletedObject(self, obj: Any) -> None:  # noqa: N802
        self._gone(obj == self._panel.obj)

    def _gone(self, ours: bool) -> None:
        if ours:
            # FreeCAD is in the middle of it: close once it has done
            when_idle(self._panel.doc, self._panel.abandon)


def when_idle(doc: Any, act: Callable[[], object]) -> None:
    """Do it from the event loop, but not while a long recompute lets that in."""
    def try_it() -> None:
        if _recomputing(doc):
            QtCore.QTimer.singleShot(20, try_it)
        else:
            act()

    QtCore.QTimer.singleShot(0, try_it)


def _recomputing(doc: Any) -> bool:
    try:
        return bool(doc.Recomputing)
    except ReferenceError:  # closed meanwhile
        return False


def enter_edit(obj: Any) -> bool:
    """Enter FreeCAD's edit mode of an object, which shows the panel; whether it did."""
    gui = FreeCADGui.getDocument(obj.Document.Name)
    return bool(getattr(obj.ViewObject, "Proxy", None)) and bool(gui.setEdit(obj.Name, 0))


@contextmanager
def unpainted(doc: Any) -> Iterator[None]:
    """Keep a document's 3D views from being painted meanwhile.

    A recompute lets events in as it goes, and FreeCAD would paint what is half worked out,
    only to paint it once more a moment later.
    """
    gui = FreeCADGui.getDocument(doc.Name)
    views = gui.mdiViewsOfType("Gui::View3DInventor") if gui is not None else ()
    ports = [v.graphicsView().viewport() for v in views if hasattr(v, "graphicsView")]
    stilled = [port for port in ports if port.updatesEnabled()]
    for port in stilled:
        port.setUpdatesEnabled(False)
    try:
        yield
    finally:
        for port in stilled:
            port.setUpdatesEnabled(True)


def widen_dock(forms: Sequence[QtWidgets.QWidget]) -> None:
    """Make FreeCAD's dock as wide as a panel's forms need; they would be cut off else."""
    dock = forms[0].parentWidget()
    while dock is not None and not isinstance(dock, QtWidgets.QDockWidget):
        dock = dock.parentWidget()
    window = FreeCADGui.getMainWindow()
    # a floating dock, or one laid over the 3D view, has a width of its own
    if dock is None or dock.isFloating() or dock.parentWidget() is not window:
        return
    needed = MARGINS + max(form.minimumSizeHint().width() for form in forms)
    width = min(max(needed, NARROWEST), WIDEST)
    if dock.width() < width:
        window.resizeDocks([dock], [width], QtCore.Qt.Horizontal)


def close_document(name: str) -> None:
    """Close a document, if it is still open."""
    if name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)


def leave_edit(name: str) -> None:
    """Leave FreeCAD's edit mode, if the document is in it."""
    if name in FreeCAD.listDocuments():
        gui = FreeCADGui.getDocument(name)
        if gui is not None and gui.getInEdit() is not None:
            gui.resetEdit()
