"""The task panel that all of ours are: it owns the transaction from opening to closing.

OK commits, Cancel aborts and recomputes, so that Cancel leaves the document as it was,
undo stack included. Undo while the panel is open closes it.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from itertools import pairwise
from typing import Any, ClassVar

import FreeCAD
import FreeCADGui

from closetbench.core.errors import ClosetError
from closetbench.gui.fields import Field, TextField
from closetbench.gui.form import Fold, Form
from closetbench.gui.help_pages import INDEX, page_url
from closetbench.gui.hosting import (
    Observer,
    close_document,
    enter_edit,
    leave_edit,
    unpainted,
    when_idle,
    widen_dock,
)
from closetbench.gui.looking import show_all
from closetbench.gui.qt import QtCore, QtWidgets, busy, run_modal, translate
from closetbench.gui.units import explained
from closetbench.model import draft

CONTEXT = "Closetbench"
SOON, LATER = 40, 150
"""ms from the last change to the preview, at least and at most: the longer a preview takes,
the longer it waits for the typing to pause."""
SLOW = 100
"""ms: a preview that takes longer shows a busy sign."""
WHOLE_DELAY = 700
"""ms from a preview to the holes that it left out."""


class TaskPanel(QtCore.QObject):
    """A task panel over one document object.

    ``make`` creates the object, within the panel's transaction, where there is none yet.
    Subclasses fill ``form`` in ``build``, the boxes that FreeCAD shows one above the other,
    and may override ``refresh`` and ``finish``.
    """

    current: ClassVar[TaskPanel | None] = None
    """The panel that is open, if it is ours."""
    _closed: ClassVar[TaskPanel | None] = None
    """The one before it: what it holds must outlive FreeCAD's putting away of its widgets."""
    page = INDEX
    """The page of help, by its name."""
    only_shows = False
    """Whether there is nothing to take back: Close takes the place of OK and Cancel."""

    def __init__(
        self,
        doc: Any,
        title: str,
        obj: Any = None,
        make: Callable[[], Any] | None = None,
        new_document: bool = False,
    ) -> None:
        super().__init__()
        self.doc = doc
        self._name = doc.Name
        self._new_document = new_document
        self.title = title
        self.obj = obj
        self._forms: list[Form] = []
        self._make = make
        self.is_open = False
        self._first = False
        self._buttons: QtWidgets.QDialogButtonBox | None = None
        self._observer = Observer(self)
        self._preview = QtCore.QTimer(self)
        self._preview.setSingleShot(True)
        self._preview.timeout.connect(self.preview)
        self._took = 0.0
        self._whole = QtCore.QTimer(self)
        self._whole.setSingleShot(True)
        self._whole.setInterval(WHOLE_DELAY)
        self._whole.timeout.connect(self._make_whole)

    @property
    def form(self) -> list[Form]:
        """The boxes, as FreeCAD asks for them."""
        return self._forms

    @form.setter
    def form(self, forms: list[Form] | None) -> None:
        # FreeCAD sets None while it still has the widgets: Python's taking them away first,
        # with others in them, has crashed 1.1; FreeCAD deletes them itself a moment later
        if forms is not None:
            self._forms = forms

    # -- opening and closing

    def start(self, editing: bool = False) -> bool:
        """Open the transaction, make the object, show the panel; False if it cannot be.

        ``editing``: FreeCAD is already entering the object's edit mode.
        """
        if FreeCADGui.Control.activeDialog():
            tell(self.title, translate(
                CONTEXT, "Another task is open: finish it with OK or Cancel first."))
            return False
        self.doc.openTransaction(self.title)
        self._first = not self.doc.Objects
        try:
            if self._make is not None:
                self.obj = self._make()
                self.doc.recompute()
            self.build()
        except ClosetError as error:
            self._undo_all()
            tell(self.title, explained(str(error)))
            return False
        except Exception:
            self._undo_all()
            raise
        TaskPanel.current = self
        self.is_open = True
        FreeCAD.addDocumentObserver(self._observer)
        if editing or self.obj is None or not enter_edit(self.obj):
            self.show()
        if self._first:
            QtCore.QTimer.singleShot(0, show_all)
        return True

    def show(self) -> None:
        """Put the panel into FreeCAD's task view; called by the view provider's ``setEdit``."""
        dialog = FreeCADGui.Control.showDialog(self)
        if hasattr(dialog, "setDocumentName"):
            dialog.setDocumentName(self.doc.Name)
        self.settle()
        for fold in (f for form in self.form for f in form.findChildren(Fold)):
            fold.head.toggled.connect(self._widen_soon)
        self.refresh()
        self._widen()
        # FreeCAD puts the focus elsewhere once it has shown the panel
        QtCore.QTimer.singleShot(0, self._focus_first)

    def _widen_soon(self) -> None:
        # what a fold shows has its size only once the event is over
        QtCore.QTimer.singleShot(0, self._widen)

    def _widen(self) -> None:
        if self.is_open:
            widen_dock(self.form)

    def _focus_first(self) -> None:
        if self.is_open and self.fields:
            first = self.first_field().widget
            first.setFocus()
            if isinstance(first, QtWidgets.QLineEdit):
                first.selectAll()

    def accept(self) -> bool:
        """OK: refuse while a field is wrong, else commit."""
        for field in self.fields:
            field.commit()
        wrong = self.first_error()
        if wrong is not None:
            self.reveal(wrong.widget)
            wrong.widget.setFocus()
            return False
        try:
            self.preview_now()
            self.finish()
        except ClosetError as error:
            tell(self.title, explained(str(error)))
            return False
        self._close(self.doc.commitTransaction)
        if self._first:
            show_all()
        return True

    def reject(self) -> bool:
        """Cancel: the document is as it was; one that was opened for the panel closes."""
        self._close(self._undo_all)
        return True

    def abandon(self) -> None:
        """Close without touching the document: it was undone or closed under the panel."""
        self._close(None)

    def left_by_host(self) -> None:
        """FreeCAD has left edit mode, which commits what was done: close, keep it."""
        if self.is_open:
            when_idle(self.doc, self._keep)

    def _keep(self) -> None:
        if not self.is_open:
            return
        there = self._name in FreeCAD.listDocuments()
        if there:
            self.preview_now()
        self._close(self.doc.commitTransaction if there else None)

    def _undo_all(self) -> None:
        self.doc.abortTransaction()
        if self._new_document:
            QtCore.QTimer.singleShot(0, lambda: close_document(self._name))
        else:
            self.doc.recompute()

    def _close(self, end: Callable[[], None] | None) -> None:
        if not self.is_open:
            return
        self.is_open = False
        self._preview.stop()
        self._whole.stop()
        FreeCAD.removeDocumentObserver(self._observer)
        TaskPanel.current, TaskPanel._closed = None, self
        if end is not None:
            end()
        # a wrapper that outlives FreeCAD's buttons would be taken for the next object there
        self._buttons = None
        # the boxes are Python's: FreeCAD 1.1 has crashed while it deleted them with its own
        for field in self.fields:
            field.blockSignals(True)
        if QtCore.qVersion().startswith("6"):
            for form in self._forms:
                form.setParent(None)
        leave_edit(self._name)
        FreeCADGui.Control.closeDialog()

    # -- what subclasses give

    def build(self) -> None:
        """Make ``self.form`` from ``self.obj``."""
        raise NotImplementedError

    def refresh(self) -> None:
        """Show what follows from the values, after a recompute."""

    def finish(self) -> None:
        """Last work within the transaction; ``ClosetError`` keeps the panel open."""

    # -- fields

    @property
    def forms(self) -> list[Form]:
        """All forms, those within others too."""
        return [inner for form in self.form for inner in form.all_forms()]

    @property
    def fields(self) -> list[Field]:
        """All fields in the order of the forms."""
        return [field for form in self.form for field in form.all_fields()]

    def first_field(self) -> Field:
        """Where the focus goes when the panel opens."""
        return self.fields[0]

    def first_error(self) -> Field | None:
        """The first field under which something is said to be wrong."""
        for form in self.forms:
            for field in form.fields:
                if form.error_of(field.name):
                    return field
        return None

    def set_error(self, field: Field, text: str) -> None:
        """Say under a field what is wrong with it."""
        for form in self.forms:
            if field in form.fields:
                form.error(field.name, text)

    def reveal(self, widget: QtWidgets.QWidget) -> None:
        """Bring the tab that a widget lies on to the front, open the fold that it lies in."""
        child = widget
        while child not in self.form:
            parent = child.parentWidget()
            if isinstance(parent, QtWidgets.QStackedWidget):  # within a QTabWidget
                parent.parentWidget().setCurrentWidget(child)
            elif isinstance(parent, Fold) and child is parent.inner:
                parent.open()
            child = parent

    def preview_soon(self) -> None:
        """Recompute once the typing pauses, holes later."""
        self._whole.stop()
        self._preview.start(int(min(max(SOON, self._took), LATER)))

    def preview(self) -> None:
        """Recompute what was changed, but for holes, and show what follows."""
        if self.doc.Recomputing:  # a long recompute lets timers in
            self._preview.start(LATER)
            return
        self._preview.stop()
        began = time.perf_counter()
        with busy(self._took > SLOW), unpainted(self.doc), draft.drafting():
            self.doc.recompute()
            self.refresh()
        self._took = 1000 * (time.perf_counter() - began)
        self._whole.start()

    def _make_whole(self) -> None:
        # nothing but shapes changes: what is being typed stays alone
        if self.doc.Recomputing:
            self._whole.start()
        elif self.is_open and draft.finish(self.doc):
            self.doc.recompute()

    def preview_now(self) -> None:
        """Recompute what was changed, to the last hole, and show what follows."""
        self._preview.stop()
        self._whole.stop()
        draft.finish(self.doc)
        self.doc.recompute()
        self.refresh()

    def watch(self, field: Field) -> Field:
        """Have the Enter key in a field's editor take the value, then close with OK."""
        field.widget.installEventFilter(self)
        return field

    def eventFilter(self, watched: QtCore.QObject, event: QtCore.QEvent) -> bool:  # noqa: N802
        """Enter takes a changed value; in an unchanged field, or with Ctrl, it is OK. F1 is
        Help, ahead of FreeCAD's own."""
        if event.type() not in (QtCore.QEvent.KeyPress, QtCore.QEvent.ShortcutOverride):
            return False
        if event.key() == QtCore.Qt.Key_F1 and event.modifiers() == QtCore.Qt.NoModifier:
            if event.type() == QtCore.QEvent.ShortcutOverride:
                event.accept()
            else:
                self.helpRequested()
            return True
        if event.type() == QtCore.QEvent.ShortcutOverride:
            return False
        if event.key() not in (QtCore.Qt.Key_Return, QtCore.Qt.Key_Enter):
            return False
        field = next((f for f in self.fields if f.widget is watched), None)
        if field is None:
            return False
        taken = field.commit()
        if isinstance(field, TextField):
            field.line.selectAll()
        if not taken or event.modifiers() & QtCore.Qt.ControlModifier:
            self.press(QtWidgets.QDialogButtonBox.Ok)
        return True

    # -- FreeCAD's side of a task panel

    def getStandardButtons(self) -> int:  # noqa: N802
        """What FreeCAD asks for."""
        buttons = self.standard_buttons()
        return buttons.value if hasattr(buttons, "value") else int(buttons)

    def standard_buttons(self) -> Any:
        """OK and Cancel, or Close, and Help."""
        box = QtWidgets.QDialogButtonBox
        return (box.Close if self.only_shows else box.Ok | box.Cancel) | box.Help

    def helpRequested(self) -> None:  # noqa: N802
        """The button Help, or F1 in a field."""
        from closetbench.gui import help as window

        window.show(self.help_page())

    def help_page(self) -> str:
        """The name of the page that says what is to be done here."""
        return self.page

    def modifyStandardButtons(self, buttons: QtWidgets.QDialogButtonBox) -> None:  # noqa: N802
        """Keep the buttons, to press them by key."""
        self._buttons = buttons

    def press(self, which: Any) -> None:
        """Click OK or Cancel, once the event in hand is done with."""
        button = self._buttons.button(which) if self._buttons is not None else None
        if button is not None:
            when_idle(self.doc, button.click)

    def settle(self) -> None:
        """Put the fields into their order; called again when there are new ones."""
        for field in self.fields:
            self.watch(field).widget.setWhatsThis(page_url(self.help_page()))
        for before, after in pairwise(self.fields):
            if before.widget.window() is after.widget.window():  # Qt complains else
                QtWidgets.QWidget.setTabOrder(before.widget, after.widget)


def tell(title: str, text: str) -> None:
    """Say something in a box with one button, and wait until it is read."""
    box = QtWidgets.QMessageBox(FreeCADGui.getMainWindow())
    box.setObjectName("ClosetbenchMessage")
    box.setIcon(QtWidgets.QMessageBox.Information)
    box.setWindowTitle(title)
    box.setText(text)
    box.setStandardButtons(QtWidgets.QMessageBox.Ok)
    run_modal(box)
