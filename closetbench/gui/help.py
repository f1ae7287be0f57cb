"""The window that shows the help pages."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import FreeCADGui

from closetbench.gui import palette
from closetbench.gui.commands.base import mark
from closetbench.gui.help_pages import INDEX, page_file
from closetbench.gui.qt import QtCore, QtGui, QtWidgets, icon, translate

CONTEXT = "Closetbench_Help"
_BACK = mark("Closetbench_Help", "Back")
"""To the page before; elsewhere the word is a panel's."""
NAME = "ClosetbenchHelpWindow"
_SIZE = (680, 720)


def show(name: str = INDEX) -> HelpWindow:
    """Show a page, in the window that is open if there is one."""
    main = FreeCADGui.getMainWindow()
    window = main.findChild(HelpWindow, NAME) or HelpWindow(main)
    window.go(name)
    window.show()
    window.raise_()
    return window


class HelpWindow(QtWidgets.QDialog):
    """The pages, beside FreeCAD's window; it stays open while a task goes on."""

    def __init__(self, main: QtWidgets.QWidget) -> None:
        super().__init__(main)
        self.setObjectName(NAME)
        self.setAttribute(QtCore.Qt.WA_DeleteOnClose)
        self.setWindowIcon(icon("help"))
        self.pages = QtWidgets.QTextBrowser()
        self.pages.setOpenExternalLinks(True)
        self.pages.setFrameShape(QtWidgets.QFrame.NoFrame)
        self.pages.document().setDocumentMargin(14)
        self.pages.sourceChanged.connect(self._dress)
        row = QtWidgets.QHBoxLayout()
        self.back = self._button("back", self.pages.backward)
        self.contents = self._button("contents", lambda: self.go(INDEX))
        self.back.setEnabled(False)
        self.pages.backwardAvailable.connect(self.back.setEnabled)
        for button in (self.back, self.contents):
            row.addWidget(button)
        row.addStretch(1)
        column = QtWidgets.QVBoxLayout(self)
        column.setContentsMargins(6, 6, 6, 6)
        column.addLayout(row)
        column.addWidget(self.pages)
        self._name_all()
        self.resize(*_SIZE)
        # beside the task panel, which stands at the left of FreeCAD's window
        corner = main.geometry().topRight()
        self.move(max(corner.x() - _SIZE[0] - 20, 0), corner.y() + 80)

    def _name_all(self) -> None:
        """The title and the buttons, in the language that FreeCAD speaks now."""
        self.setWindowTitle(translate(CONTEXT, "Closetbench help"))
        self.back.setText(translate(CONTEXT, _BACK))
        self.contents.setText(translate(CONTEXT, "All pages"))

    def _button(self, name: str, act: Callable[[], object]) -> QtWidgets.QPushButton:
        button = QtWidgets.QPushButton()
        button.setObjectName(f"help {name}")
        button.setAutoDefault(False)
        button.clicked.connect(lambda: act())  # noqa: PLW0108 - without Qt's argument
        return button

    def go(self, name: str) -> None:
        """Show a page."""
        self.pages.setSource(QtCore.QUrl.fromLocalFile(str(page_file(name))))

    def showEvent(self, event: QtGui.QShowEvent) -> None:  # noqa: N802
        """Only a window that is shown knows its theme."""
        super().showEvent(event)
        self._dress()

    def changeEvent(self, event: QtCore.QEvent) -> None:  # noqa: N802
        """Another theme: the page is dressed afresh. Another language: it is shown in that."""
        if event.type() == QtCore.QEvent.StyleChange:
            QtCore.QTimer.singleShot(0, self._dress)
        elif event.type() == QtCore.QEvent.LanguageChange:
            QtCore.QTimer.singleShot(0, self._speak)
        super().changeEvent(event)

    def _speak(self) -> None:
        self._name_all()
        self.go(Path(self.pages.source().toLocalFile()).stem)

    def _dress(self) -> None:
        """Links in a colour that can be read on the theme: Qt takes one without asking it."""
        link = QtGui.QTextCharFormat()
        link.setForeground(palette.accent(self.pages))
        link.setFontUnderline(True)
        cursor = QtGui.QTextCursor(self.pages.document())
        for start, length in self._anchors():
            cursor.setPosition(start)
            cursor.setPosition(start + length, QtGui.QTextCursor.KeepAnchor)
            cursor.mergeCharFormat(link)

    def _anchors(self) -> list[tuple[int, int]]:
        found = []
        block = self.pages.document().begin()
        while block.isValid():
            pieces = block.begin()
            while not pieces.atEnd():
                piece = pieces.fragment()
                if piece.charFormat().isAnchor():
                    found.append((piece.position(), piece.length()))
                pieces += 1
            block = block.next()
        return found
