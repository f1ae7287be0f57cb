"""The steps of the work beside the 3D view: what is done, what is next, what is wrong.

It reads the document and never changes it; a click opens the command of a step.
"""

from __future__ import annotations

from typing import Any

import FreeCAD
import FreeCADGui

from closetbench.core.progress import Step, StepKey, StepState, steps
from closetbench.gui import guide_words, palette
from closetbench.gui.qt import QtCore, QtGui, QtWidgets, icon, translate
from closetbench.model.progress import closet_in_view, facts_of

CONTEXT = "Closetbench_Guide"
NAME = "ClosetbenchGuide"
PREFERENCES = "User parameter:BaseApp/Preferences/Mod/Closetbench"
SOON = 150
"""ms without a change of a document until the steps are shown afresh, twice that at most."""
WIDTH = 250
_LEVEL = int(QtCore.Qt.AlignLeft) | int(QtCore.Qt.AlignVCenter)
_WRAPPED = int(QtCore.Qt.TextWordWrap)
_ICONS = {
    StepKey.ROOM: "survey", StepKey.CARCASS: "carcass", StepKey.COMPONENTS: "drawers",
    StepKey.CHECKS: "checks", StepKey.LAYOUT: "layout", StepKey.PAPERS: "bill",
}


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


def toggle() -> None:
    """Show the panel, or close it; remembered."""
    dock = _dock()
    if dock is not None and dock.isVisible():
        dock.close()
    else:
        _remember(True)
        _shown()


def enter() -> None:
    """Our workbench was chosen: show the panel unless the user has closed it."""
    if FreeCAD.ParamGet(PREFERENCES).GetBool("ShowSteps", True):
        _shown()


def leave() -> None:
    """Another workbench was chosen: the panel goes, which is no wish of the user's."""
    dock = _dock()
    if dock is not None:
        dock.hide()


def _dock() -> GuideDock | None:
    return FreeCADGui.getMainWindow().findChild(GuideDock, NAME)


def _shown() -> None:
    window = FreeCADGui.getMainWindow()
    dock = _dock()
    if dock is None:
        dock = GuideDock(window)
        window.addDockWidget(QtCore.Qt.RightDockWidgetArea, dock)
        window.resizeDocks([dock], [WIDTH], QtCore.Qt.Horizontal)
    dock.show()
    dock.refresh()


def _remember(shown: bool) -> None:
    FreeCAD.ParamGet(PREFERENCES).SetBool("ShowSteps", shown)


class GuideDock(QtWidgets.QDockWidget):
    """The panel; it watches the documents while it is there."""

    def __init__(self, window: QtWidgets.QMainWindow) -> None:
        super().__init__(_tr("Steps"), window)
        self.setObjectName(NAME)
        self._soon = QtCore.QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(SOON)
        self._soon.timeout.connect(self._paused)
        self._waits = self._more = False
        inner = QtWidgets.QWidget()
        column = QtWidgets.QVBoxLayout(inner)
        column.setContentsMargins(6, 6, 6, 6)
        column.setSpacing(2)
        self.head = QtWidgets.QLabel()
        self.head.setObjectName("guide head")
        self.head.setWordWrap(True)
        column.addWidget(self.head)
        self.lines = {key: _Line(key) for key in StepKey}
        for line in self.lines.values():
            column.addWidget(line)
        self.examples = QtWidgets.QLabel()
        self.examples.setObjectName("guide examples")
        self.examples.setWordWrap(True)
        self.examples.linkActivated.connect(run_command)
        column.addSpacing(6)
        column.addWidget(self.examples)
        column.addStretch(1)
        area = QtWidgets.QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QtWidgets.QFrame.NoFrame)
        area.setHorizontalScrollBarPolicy(QtCore.Qt.ScrollBarAlwaysOff)
        area.setWidget(inner)
        self.setWidget(area)
        self._watch = _Watch(self)
        FreeCAD.addDocumentObserver(self._watch)
        FreeCADGui.Selection.addObserver(self._watch)

    def closeEvent(self, event: QtGui.QCloseEvent) -> None:  # noqa: N802
        """The user has closed it, and FreeCAD going down has not."""
        if FreeCADGui.getMainWindow().isVisible():
            _remember(False)
        super().closeEvent(event)

    def refresh_soon(self) -> None:
        """Show the steps afresh once the changes pause.

        A recompute or a file that is opened calls this thousands of times: while the timer
        runs there is only noted that there was more.
        """
        if self._waits:
            self._more = True
        elif self.isVisible():
            self._waits = True
            self._soon.start()

    def _paused(self) -> None:
        self._waits = False
        if self._more:
            self._more = False
            self.refresh_soon()
        else:
            self.refresh()

    def refresh(self) -> None:
        """Show the steps of the closet that is selected, or of the first one."""
        doc = FreeCAD.ActiveDocument
        if doc is not None and (doc.Recomputing or doc.Restoring):
            self.refresh_soon()
            return
        from closetbench.gui.commands.base import chosen

        closet = closet_in_view(doc, chosen("Closet") if doc is not None else None)
        if closet is not None and "Touched" in closet.State and doc.HasPendingTransaction:
            # somebody is typing: the preview comes first
            self.refresh_soon()
            return
        self.show_steps(steps(facts_of(doc, closet)), closet.Label if closet else "")

    def show_steps(self, found: tuple[Step, ...], name: str) -> None:
        """Show these, in the language that FreeCAD has by now."""
        self.setWindowTitle(_tr("Steps"))
        if name:
            self.head.setText(f"<b>{guide_words.safe(name)}</b>")
        else:
            self.head.setText(_tr("Start a closet, or look at an example first."))
        for step in found:
            self.lines[step.key].say(step)
        colour = palette.accent(self).name()
        self.examples.setText(_tr("Examples: {} and {}").format(
            *(f'<a style="color:{colour}" href="{command}">{guide_words.safe(text)}</a>'
              for command, text in (
                  ("Closetbench_BoxRoom", _tr("box room (mm)")),
                  ("Closetbench_Porch", _tr("porch (inches)"))))))

    def changeEvent(self, event: QtCore.QEvent) -> None:  # noqa: N802
        """Another theme or language: colours and words are chosen afresh."""
        if event.type() in (QtCore.QEvent.StyleChange, QtCore.QEvent.LanguageChange):
            self.refresh_soon()
        super().changeEvent(event)


def run_command(name: str) -> None:
    """Run one of our commands; where a task is open, say so."""
    if FreeCADGui.Control.activeDialog():
        from closetbench.gui.task import tell

        tell(_tr("Steps"), translate(
            "Closetbench", "Another task is open: finish it with OK or Cancel first."))
        return
    FreeCADGui.runCommand(name)


class _Line(QtWidgets.QToolButton):
    """One step: its state as a mark, its name, and in words how far it is."""

    def __init__(self, key: StepKey) -> None:
        super().__init__()
        self.key = key
        self.step = Step(key, StepState.WAITING, guide_words.START)
        self.setObjectName(f"guide {key.value}")
        self.setAutoRaise(True)
        self.setSizePolicy(QtWidgets.QSizePolicy.Expanding, QtWidgets.QSizePolicy.Minimum)
        self.setFocusPolicy(QtCore.Qt.StrongFocus)
        self.clicked.connect(self._clicked)
        self.setContextMenuPolicy(QtCore.Qt.CustomContextMenu)
        self.customContextMenuRequested.connect(lambda _: self._menu())

    def say(self, step: Step) -> None:
        """Show a step's state."""
        self.step = step
        title, words = guide_words.title(step.key), guide_words.words(step)
        self.setAccessibleName(f"{title}: {words}")
        self.setText(f"{title}\n{words}")
        self.setToolTip(guide_words.tip(step))
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QtCore.QSize:  # noqa: N802
        """As high as its two texts, the lower one in as many lines as it takes."""
        width = max(self.width(), 200)
        return QtCore.QSize(200, self._height(width))

    def minimumSizeHint(self) -> QtCore.QSize:  # noqa: N802
        """As narrow as the dock may become."""
        return QtCore.QSize(120, self._height(max(self.width(), 120)))

    def resizeEvent(self, event: QtGui.QResizeEvent) -> None:  # noqa: N802
        """Another width takes other lines."""
        super().resizeEvent(event)
        self.updateGeometry()

    def _height(self, width: int) -> int:
        metrics = self.fontMetrics()
        box = metrics.boundingRect(
            QtCore.QRect(0, 0, width - 52, 1000), _WRAPPED,
            guide_words.words(self.step))
        return metrics.height() + box.height() + 10

    def paintEvent(self, event: QtGui.QPaintEvent) -> None:  # noqa: N802
        """The ground that a tool button has under the pointer, the mark and the words."""
        painter = QtWidgets.QStylePainter(self)
        option = QtWidgets.QStyleOptionToolButton()
        self.initStyleOption(option)
        option.text = ""
        option.icon = QtGui.QIcon()
        painter.drawComplexControl(QtWidgets.QStyle.CC_ToolButton, option)
        painter.setRenderHint(QtGui.QPainter.Antialiasing)
        waiting = self.step.state is StepState.WAITING
        metrics = self.fontMetrics()
        guide_words.draw_mark(painter, self, QtCore.QPointF(13, 5 + metrics.height() / 2),
                              self.step.state)
        painter.setOpacity(0.45 if waiting else 1.0)
        painter.drawPixmap(self.width() - 24, 5, icon(_ICONS[self.key]).pixmap(18, 18))
        painter.setOpacity(1.0)
        font = QtGui.QFont(self.font())
        font.setBold(self.step.state in (StepState.NEXT, StepState.WRONG))
        painter.setFont(font)
        painter.setPen(palette.ink(self, 0.6 if waiting else 1.0))
        painter.drawText(
            QtCore.QRect(28, 5, self.width() - 54, metrics.height()),
            _LEVEL, guide_words.title(self.key))
        painter.setFont(self.font())
        painter.setPen(guide_words.colour(self, self.step.state))
        painter.drawText(
            QtCore.QRect(28, 5 + metrics.height(), self.width() - 52, 1000),
            _WRAPPED, guide_words.words(self.step))

    def _clicked(self) -> None:
        command = guide_words.command(self.step)
        if command:
            run_command(command)
        else:
            self._menu()

    def _menu(self) -> None:
        """The commands of the step, to choose from."""
        menu = QtWidgets.QMenu(self)
        menu.setObjectName("guide menu")
        for name in guide_words.commands(self.step):
            text, picture = guide_words.command_text(name)
            action = menu.addAction(icon(picture), text)
            action.setData(name)
            action.triggered.connect(lambda _=False, name=name: run_command(name))
        menu.popup(self.mapToGlobal(QtCore.QPoint(0, self.height())))


class _Watch:
    """FreeCAD tells it of every change; it keeps none of the objects."""

    def __init__(self, dock: GuideDock) -> None:
        self._dock = dock

    def _changed(self, *_: Any) -> None:
        self._dock.refresh_soon()

    def slotChangedObject(self, obj: Any, prop: str) -> None:  # noqa: N802
        self._changed()

    slotCreatedObject = slotDeletedObject = _changed  # noqa: N815
    slotActivateDocument = slotCreatedDocument = slotDeletedDocument = _changed  # noqa: N815
    slotRecomputedDocument = slotUndoDocument = slotRedoDocument = _changed  # noqa: N815
    slotCommitTransaction = slotAbortTransaction = _changed  # noqa: N815
    addSelection = clearSelection = setSelection = _changed  # noqa: N815
