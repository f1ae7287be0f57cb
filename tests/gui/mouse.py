"""A person with a mouse and a keyboard, for the scripts in this folder.

Everything goes through events on the widgets that are on screen; nothing is called by its
name in the program. ``did`` counts what a person would do: a click, a text typed, a choice.
"""

from __future__ import annotations

from typing import Any


class Mouse:
    """``gui``: the harness's driver."""

    def __init__(self, gui: Any) -> None:
        self.gui = gui
        self.Qt = gui.QtCore.Qt
        self.did: list[str] = []

    # -- the mouse

    def press(self, widget: Any, at: Any = None, right: bool = False, what: str = "") -> None:
        """Click a widget that can be seen, in its middle unless said."""
        if not self.gui.check(widget is not None and widget.isVisible(), f"to click: {what}"):
            return
        self._bring(widget)
        at = at or widget.rect().center()
        button = self.Qt.RightButton if right else self.Qt.LeftButton
        kinds = self.gui.QtCore.QEvent
        for kind, held in (
            (kinds.MouseButtonPress, button), (kinds.MouseButtonRelease, self.Qt.NoButton),
        ):
            event = self.gui.QtGui.QMouseEvent(
                kind, self.gui.QtCore.QPointF(at),
                self.gui.QtCore.QPointF(widget.mapToGlobal(at)), button, held, self.Qt.NoModifier)
            self.gui.QtCore.QCoreApplication.postEvent(widget, event)
        if right:
            event = self.gui.QtGui.QContextMenuEvent(
                self.gui.QtGui.QContextMenuEvent.Mouse, at, widget.mapToGlobal(at))
            self.gui.QtCore.QCoreApplication.postEvent(widget, event)
        self.did.append(what or widget.objectName())
        self.gui.settle(250)

    def tool(self, text: str) -> None:
        """Click a button of a toolbar by its text."""
        for button in self.gui.window.findChildren(self.gui.QtWidgets.QToolButton):
            action = button.defaultAction()
            words = action.text().replace("&", "") if action is not None else ""
            if words == text and button.isVisible():
                self.press(button, what=text)
                return
        self.gui.fail(f"no button {text} on screen")

    def entry(self, text: str) -> None:
        """Click an entry of the menu that is open."""
        menu = self.gui.QtWidgets.QApplication.activePopupWidget()
        actions = [] if menu is None else menu.actions()
        found = next((a for a in actions if a.text().replace("&", "") == text), None)
        if self.gui.check(found is not None, f"menu entry {text}: {[a.text() for a in actions]}"):
            self.press(menu, menu.actionGeometry(found).center(), what=text)

    def choose(self, combo: Any, text: str, what: str = "") -> None:
        """Open a combo box by the mouse and click one of its entries."""
        index = combo.findText(text)
        if not self.gui.check(index >= 0, f"{what} offers {text}"):
            return
        self.press(combo, what=f"{what or combo.objectName()}: {text}")
        view = combo.view()
        place = view.model().index(index, combo.modelColumn(), view.rootIndex())
        view.scrollTo(place)
        self.gui.settle(100)
        self._click_view(view, place)

    def _click_view(self, view: Any, place: Any) -> None:
        at = view.visualRect(place).center()
        kinds, left = self.gui.QtCore.QEvent, self.Qt.LeftButton
        where = self.gui.QtCore.QPointF(at), self.gui.QtCore.QPointF(
            view.viewport().mapToGlobal(at))
        for kind, button, held in (
            (kinds.MouseMove, self.Qt.NoButton, self.Qt.NoButton),
            (kinds.MouseButtonPress, left, left),
            (kinds.MouseButtonRelease, left, self.Qt.NoButton),
        ):
            event = self.gui.QtGui.QMouseEvent(kind, *where, button, held, self.Qt.NoModifier)
            self.gui.QtCore.QCoreApplication.sendEvent(view.viewport(), event)
            # a popup takes a release soon after it was opened for the end of the first click
            self.gui.settle(450 if kind == kinds.MouseMove else 30)
        self.gui.settle(200)

    # -- the keyboard

    def type(self, name: str, text: str, enter: bool = True) -> None:
        """Click a field, mark what is in it, type over it, leave it by Tab or by Enter."""
        line = self._field(name)
        if line is None:
            return
        self.press(line, what=f"{name}: {text}")
        self._key(line, self.Qt.Key_A, "", self.Qt.ControlModifier)
        for char in text:
            self._key(line, 0, char)
        self._key(line, self.Qt.Key_Return if enter else self.Qt.Key_Tab, "\r" if enter else "\t")
        self.gui.settle(250)

    def up(self, name: str, times: int) -> None:
        """Click a box with a number and raise it by the arrow key."""
        box = self._field(name)
        if box is None:
            return
        self.press(box, self.gui.QtCore.QPoint(8, box.height() // 2), what=f"{name}: +{times}")
        for _ in range(times):
            self._key(box, self.Qt.Key_Up, "")
        self.gui.settle(250)

    def _key(self, widget: Any, key: Any, text: str, modifiers: Any = None) -> None:
        core = self.gui.QtCore
        for kind in (core.QEvent.KeyPress, core.QEvent.KeyRelease):
            event = self.gui.QtGui.QKeyEvent(
                kind, key or self.Qt.Key_X, modifiers or self.Qt.NoModifier, text)
            core.QCoreApplication.sendEvent(widget, event)
        self.gui.settle(15)

    # -- what is on screen

    def find(self, kind: str, name: str) -> Any:
        """The visible widget of a class and object name, None where there is none."""
        found = self.gui.window.findChildren(getattr(self.gui.QtWidgets, kind), name)
        return next((w for w in found if w.isVisible()), None)

    def wait_for(self, name: str, *kinds: str) -> Any:
        """The widget once it is on screen, as a person waits for it."""
        for _ in range(30):
            found = [w for w in (self.find(kind, name) for kind in kinds) if w is not None]
            if found:
                return found[0]
            self.gui.settle(100)
        self.gui.fail(f"no {name} on screen")
        return None

    def _field(self, name: str) -> Any:
        return self.wait_for(name, "QLineEdit", "QSpinBox", "QComboBox", "QCheckBox")

    def pick(self, name: str, text: str) -> None:
        """Choose in the combo box of that name."""
        combo = self._field(name)
        if combo is not None:
            self.choose(combo, text, name)

    def push(self, name: str) -> None:
        """Click a button of the task panel by its object name."""
        self.press(self.wait_for(name, "QAbstractButton"), what=name)

    def ok(self) -> None:
        """Click OK."""
        self._close(self.gui.QtWidgets.QDialogButtonBox.Ok, "OK")

    def close(self) -> None:
        """Click Close."""
        self._close(self.gui.QtWidgets.QDialogButtonBox.Close, "Close")

    def _close(self, which: Any, what: str) -> None:
        boxes = self.gui.window.findChildren(self.gui.QtWidgets.QDialogButtonBox)
        buttons = [b.button(which) for b in boxes if b.isVisible()]
        self.press(next((b for b in buttons if b is not None), None), what=what)
        self.gui.settle(600)

    def _bring(self, widget: Any) -> None:
        """Scroll to it, as the wheel would."""
        above = widget.parentWidget()
        while above is not None:
            if isinstance(above, self.gui.QtWidgets.QScrollArea):
                above.ensureWidgetVisible(widget)
            above = above.parentWidget()
        self.gui.settle(60)
