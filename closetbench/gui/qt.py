"""Qt as FreeCAD hands it out, the same on every FreeCAD: asked for, never guessed by version."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

try:
    from PySide import QtWidgets
except ImportError:  # FreeCAD 0.20 has the widgets in QtGui
    QtWidgets = QtGui

Signal = QtCore.Signal

RESOURCES = Path(__file__).resolve().parent.parent.parent / "resources"
ICONS = RESOURCES / "icons"
TRANSLATIONS = RESOURCES / "translations"
_COMMON = "Closetbench"


def icon_file(name: str) -> str:
    """The path of one of our icons, as it is now: a saved file must not hold it."""
    return str(ICONS / f"{name}.svg")


def icon(name: str) -> QtGui.QIcon:
    """One of our icons, drawn by FreeCAD: Qt's own reader of SVG is not always installed.

    From then on FreeCAD knows the icon by its path, too.
    """
    return FreeCADGui.getIcon(icon_file(name))


def translate(context: str, text: str) -> str:
    """``text`` in the language that FreeCAD speaks: as it is called in ``context``, where
    that has a name of its own for it, else as it is called everywhere."""
    found = FreeCAD.Qt.translate(context, text)
    return FreeCAD.Qt.translate(_COMMON, text) if found == text else found


def run_modal(dialog: QtWidgets.QDialog) -> int:
    """Run a dialog until it is closed; its result."""
    return int((dialog.exec if hasattr(dialog, "exec") else dialog.exec_)())


def let_events_in() -> None:
    """Handle what waits in the event loop: repainting, a click on Stop."""
    QtCore.QCoreApplication.processEvents()


@contextmanager
def busy(shown: bool = True) -> Iterator[None]:
    """The pointer says that one has to wait."""
    if shown:
        QtWidgets.QApplication.setOverrideCursor(QtCore.Qt.WaitCursor)
    try:
        yield
    finally:
        if shown:
            QtWidgets.QApplication.restoreOverrideCursor()
