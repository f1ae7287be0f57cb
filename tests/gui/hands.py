"""What a user does with FreeCAD's windows, for the scripts in this folder."""

from __future__ import annotations

from pathlib import Path

import FreeCAD
import FreeCADGui

from tests.gui.snapshots import plain

NOT_VALUES = ("Shape", "Proxy", "ExpressionEngine", "ShapeMaterial", "_Part_ShapeCache")
"""Properties that read differently at every look, or that FreeCAD keeps for itself."""
WORKBENCH = "ClosetbenchWorkbench"


class Hands:
    """Runs commands, fills fields and presses buttons. ``gui``: the harness's driver."""

    def __init__(self, gui) -> None:
        self.gui = gui
        self.Qt = gui.QtCore.Qt
        FreeCADGui.activateWorkbench(WORKBENCH)
        self.wait(200)

    @property
    def doc(self):
        return FreeCAD.ActiveDocument

    def wait(self, milliseconds: int = 60) -> None:
        self.gui.settle(milliseconds)

    def run(self, command: str) -> None:
        """Run a command the way its menu entry does."""
        FreeCADGui.runCommand(command)
        self.wait(300)

    def small_closet(self) -> None:
        """A closet of one carcass, in a document of its own."""
        self.run("Closetbench_Start")
        self.choose("by_readings", "follows from readings in the room")
        self.ok()
        self.run("Closetbench_Carcass")
        self.ok()

    def click(self, text: str) -> None:
        """Click the button of a toolbar of ours."""
        from closetbench.gui import workbench

        for name in workbench.toolbars():
            bar = self.gui.find(self.gui.QtWidgets.QToolBar, name)
            for action in bar.actions():
                if action.text().replace("&", "").startswith(text):
                    action.trigger()
                    self.wait(300)
                    return
        self.gui.fail(f"no button {text}")

    def open(self, obj) -> None:
        """What a double click on the object in the tree does."""
        obj.ViewObject.Proxy.doubleClicked(obj.ViewObject)
        self.wait(300)

    def double_click(self, label: str) -> None:
        """Double-click an item of the model tree with the mouse."""
        for tree in self.gui.window.findChildren(self.gui.QtWidgets.QTreeWidget):
            flags = self.Qt.MatchExactly | self.Qt.MatchRecursive
            for item in tree.findItems(label, flags, 0):
                tree.scrollToItem(item)
                self.wait(100)
                at = tree.visualItemRect(item).center()
                self._mouse(tree.viewport(), at)
                return
        self.gui.fail(f"no {label} in the tree")

    def click_on(self, widget, at=None) -> None:
        """Click a widget with the mouse, in its middle unless said."""
        self._mouse(widget, at or widget.rect().center(), twice=False)

    def drag(self, widget, start, end, let_go: bool = True, moves: int = 6) -> None:
        """Press the left button at a point of a widget, move to another, let go there."""
        kinds, left = self.gui.QtCore.QEvent, self.Qt.LeftButton
        self.hover(widget, start)
        self._event(widget, kinds.MouseButtonPress, start, left, left)
        for i in range(1, moves + 1):
            at = start + (end - start) * (i / moves)
            self._event(widget, kinds.MouseMove, at, self.Qt.NoButton, left)
            self.wait(30)
        if let_go:
            self.let_go(widget, end)

    def hover(self, widget, at) -> None:
        """Move the mouse to a point of a widget."""
        none = self.Qt.NoButton
        self._event(widget, self.gui.QtCore.QEvent.MouseMove, at, none, none)

    def let_go(self, widget, at) -> None:
        """Let the left button go."""
        kinds, qt = self.gui.QtCore.QEvent, self.Qt
        self._event(widget, kinds.MouseButtonRelease, at, qt.LeftButton, qt.NoButton)

    def _event(self, widget, kind, at, button, buttons) -> None:
        core = self.gui.QtCore
        where = core.QPointF(at), core.QPointF(widget.mapToGlobal(at))
        event = self.gui.QtGui.QMouseEvent(kind, *where, button, buttons, self.Qt.NoModifier)
        core.QCoreApplication.sendEvent(widget, event)

    def _mouse(self, widget, at, twice: bool = True) -> None:
        kinds, left, none = self.gui.QtCore.QEvent, self.Qt.LeftButton, self.Qt.NoButton
        once = (kinds.MouseButtonPress, left), (kinds.MouseButtonRelease, none)
        again = (kinds.MouseButtonDblClick, left), (kinds.MouseButtonRelease, none)
        for kind, buttons in (*once, *(again if twice else ())):
            self._event(widget, kind, at, left, buttons)
        self.wait(400)

    # -- the task panel

    @property
    def panel(self):
        from closetbench.gui.task import TaskPanel

        return TaskPanel.current

    def widget(self, name: str):
        field = next((f for f in self.panel.fields if f.name == name), None)
        if field is None:
            raise AssertionError(f"no field {name}: {[f.name for f in self.panel.fields]}")
        return field.widget

    def type(self, name: str, text: str, enter: bool = True) -> None:
        """Type into a field in place of what is there, then press Enter (or leave it)."""
        line = self.widget(name)
        self.panel.reveal(line)
        line.setFocus()
        line.selectAll()
        if not text:
            self.key(line, self.Qt.Key_Delete)
        for char in text:
            self.key(line, 0, char)
        self.gui.equal(line.text(), text, f"typed into {name}")
        if enter:
            self.key(line, self.Qt.Key_Return, "\r")
        self.wait(190)

    def choose(self, name: str, text: str) -> None:
        """Choose an entry of a combo box by its text."""
        combo = self.widget(name)
        index = combo.findText(text)
        self.gui.check(index >= 0, f"{name} offers {text}")
        combo.setCurrentIndex(index)
        self.wait(190)

    def count(self, name: str, value: int) -> None:
        """Set a spin box."""
        self.widget(name).setValue(value)
        self.wait(190)

    def tick(self, name: str, ticked: bool = True) -> None:
        """Tick a box of the panel by its object name."""
        box = self.button(name)
        if box.isChecked() != ticked:
            box.click()
        self.wait(190)

    def button(self, name: str):
        found = [
            w for form in self.panel.form
            for w in [form.findChild(self.gui.QtWidgets.QAbstractButton, name)] if w is not None
        ]
        if not found:
            raise AssertionError(f"no button {name}")
        return found[0]

    def push(self, name: str) -> None:
        """Click a button of the panel by its object name."""
        self.button(name).click()
        self.wait(190)

    def push_task(self, name: str) -> None:
        """Click a button beside OK and Cancel by its object name."""
        self.gui.find(self.gui.QtWidgets.QPushButton, name).click()
        self.wait(190)

    def text(self, name: str) -> str:
        """What a field shows."""
        return self.widget(name).text()

    def said(self, name: str) -> str:
        """The text of a label in the panel by its object name."""
        for form in self.panel.form:
            label = form.findChild(self.gui.QtWidgets.QLabel, name)
            if label is not None:
                return label.text()
        raise AssertionError(f"no label {name}")

    def error(self, name: str) -> str:
        """What is said beside a field, if that can be seen."""
        for form in self.panel.forms:
            for field in form.fields:
                if field.name == name:
                    label = form.findChild(self.gui.QtWidgets.QLabel, f"error {name}")
                    return label.text() if label.isVisible() else ""
        raise AssertionError(f"no field {name}")

    def ok(self) -> None:
        self._press(self.gui.QtWidgets.QDialogButtonBox.Ok)

    def cancel(self) -> None:
        self._press(self.gui.QtWidgets.QDialogButtonBox.Cancel)

    def close(self) -> None:
        """Close a panel that only shows something."""
        self._press(self.gui.QtWidgets.QDialogButtonBox.Close)

    def _press(self, which) -> None:
        panel = self.panel
        panel.press(which)
        self.wait(300)
        # a preview that was on its way goes first, and may take long on a busy machine
        refusable = which == self.gui.QtWidgets.QDialogButtonBox.Ok
        for _ in range(20 if refusable else 100):
            if not panel.is_open or (refusable and panel.first_error() is not None):
                break
            self.wait(50)

    def key(self, widget, key, text: str = "", modifiers=None) -> None:
        """A key, pressed and let go, if the widget outlives the first."""
        core, qt = self.gui.QtCore, self.Qt
        alive = []
        widget.destroyed.connect(lambda *_: alive.append(False))
        kinds = (core.QEvent.KeyPress, core.QEvent.KeyRelease)
        for kind in kinds:
            if not alive:
                event = self.gui.QtGui.QKeyEvent(
                    kind, key or qt.Key_A, modifiers or qt.NoModifier, text)
                core.QCoreApplication.sendEvent(widget, event)

    def tree(self) -> dict:
        """What the model tree shows of the document: texts, each with what is under it."""
        found = self.gui.window.findChildren(self.gui.QtWidgets.QTreeWidget)

        def under(item) -> dict:
            return {item.child(i).text(0): under(item.child(i)) for i in range(item.childCount())}

        for widget in found:
            roots = [widget.topLevelItem(i) for i in range(widget.topLevelItemCount())]
            for root in roots:
                for item in [root, *(root.child(i) for i in range(root.childCount()))]:
                    if item.text(0) == self.doc.Label:
                        return under(item)
        raise AssertionError("the document is not in the tree")

    # -- dialogs and documents

    def expect_message(self, part: str, act) -> None:
        """Do something that opens a message box, see that it says ``part``, and close it."""
        seen = []

        def answer() -> None:
            box = self.gui.QtWidgets.QApplication.activeModalWidget()
            if box is None:
                return
            seen.append(box.text())
            box.close()

        self.gui.later(400, answer)
        act()
        self.wait(500)
        self.gui.check(
            seen and part in seen[0], f"a message that says {part!r}: {seen}")

    def state(self) -> dict:
        """What Cancel has to leave as it was."""
        doc = self.doc
        return {
            "objects": [o.Name for o in doc.Objects],
            "labels": [o.Label for o in doc.Objects],
            "undo": list(doc.UndoNames),
            "touched": [o.Name for o in doc.Objects if "Touched" in o.State],
            "values": [
                [o.Name, p, plain(o.getPropertyByName(p))]
                for o in doc.Objects for p in o.PropertiesList
                if p not in NOT_VALUES
            ],
        }

    def unchanged(self, before: dict, what: str) -> None:
        """See that the document is as it was."""
        after = self.state()
        for key, value in before.items():
            if key == "values" and after[key] != value:
                other = [v for v in after[key] if v not in value][:3]
                self.gui.fail(f"{what}: {other} was otherwise before")
            else:
                self.gui.equal(after[key], value, f"{what}: {key}")

    def reopen(self, path: Path):
        """Save the document, close it and open it again."""
        self.doc.saveAs(str(path))
        FreeCAD.closeDocument(self.doc.Name)
        self.wait(200)
        doc = FreeCAD.openDocument(str(path))
        self.wait(300)
        return doc

    def ours(self, kind: str) -> list:
        from closetbench.model.base import class_of

        return [o for o in self.doc.Objects if class_of(o) == kind]
