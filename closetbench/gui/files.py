"""Choosing files and folders: a line that takes a path, and a button that asks for one."""

from __future__ import annotations

from pathlib import Path

import FreeCAD

from closetbench.gui.fields import TextField
from closetbench.gui.qt import QtWidgets, translate

CONTEXT = "Closetbench"


class PathField(TextField):
    """A path. ``filter``: of the files to choose among, or "folder"; ``save``: the file is
    to be written."""

    def __init__(
        self, name: str, hint: str, title: str, filter: str = "folder", save: bool = False
    ) -> None:
        super().__init__(name, hint)
        self._title, self._filter, self._save = title, filter, save
        self.box = QtWidgets.QWidget()
        layout = QtWidgets.QHBoxLayout(self.box)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        layout.addWidget(self.line, 1)
        button = QtWidgets.QToolButton()
        button.setText("…")
        button.setObjectName(f"browse {name}")
        button.setToolTip(translate(CONTEXT, "Choose"))
        button.clicked.connect(self.ask)
        layout.addWidget(button)

    @property
    def shown(self) -> QtWidgets.QWidget:
        return self.box

    def ask(self) -> None:
        """Ask for a path in FreeCAD's window; nothing changes if it is given up."""
        parent = self.line.window()
        start = self.line.text() or str(home_folder())
        if self._filter == "folder":
            path = QtWidgets.QFileDialog.getExistingDirectory(parent, self._title, start)
        elif self._save:
            path, _ = QtWidgets.QFileDialog.getSaveFileName(
                parent, self._title, start, self._filter)
        else:
            path, _ = QtWidgets.QFileDialog.getOpenFileName(
                parent, self._title, start, self._filter)
        if path:
            self.line.setText(path)
            self.commit()


def home_folder() -> Path:
    """Where papers go unless said otherwise: beside the document, else the user's home."""
    doc = FreeCAD.ActiveDocument
    if doc is not None and doc.FileName:
        return Path(doc.FileName).parent
    return Path.home()


def file_stem(label: str) -> str:
    """A closet's name as the start of a file's name."""
    from closetbench.shop.dxf import file_names

    return file_names([label], "")[0]
