"""What is set among FreeCAD's preferences is what a new layout and a new closet start with."""

import FreeCAD
import FreeCADGui

from tests.gui.hands import Hands


def in_dialog(gui, act):
    """Open the preferences at our page, do something with its form and its buttons."""
    done = []

    def go():
        dialog = gui.QtWidgets.QApplication.activeModalWidget()
        if dialog is None:
            gui.later(300, go)
            return
        form = gui.find(gui.QtWidgets.QWidget, "form closetbench", dialog)
        if gui.check(form is not None, "the page is in the dialog"):
            act(dialog, form)
            done.append(True)
        box = dialog.findChild(gui.QtWidgets.QDialogButtonBox)
        box.button(gui.QtWidgets.QDialogButtonBox.Ok).click()

    gui.later(600, go)
    FreeCADGui.showPreferences("Closetbench", 0)
    gui.check(done, "the dialog was answered")


def steps(gui):
    hands = Hands(gui)
    own = gui.folder / "own.toml"
    own.write_text("[material.ply18]\nmeasured = 17.5\n", encoding="utf-8")

    def fill(dialog, form):
        for name, text in (("kerf", "2.4 mm"), ("seconds", "0.2"), ("catalogue", str(own))):
            line = gui.find(gui.QtWidgets.QLineEdit, name, form)
            line.setFocus()
            line.setText(text)
            line.editingFinished.emit()
        gui.find(gui.QtWidgets.QSpinBox, "stages", form).setValue(3)
        gui.shot("page", dialog)

    in_dialog(gui, fill)
    yield 300

    def see(dialog, form):
        gui.equal(gui.find(gui.QtWidgets.QLineEdit, "kerf", form).text(), "2.4 mm", "kerf kept")
        # a slip is said beside the field, and what was kept stays
        line = gui.find(gui.QtWidgets.QLineEdit, "kerf", form)
        line.setText("wide")
        line.editingFinished.emit()
        said = gui.find(gui.QtWidgets.QLabel, "error kerf", form)
        gui.check(said.text(), "what is wrong with the kerf")

    in_dialog(gui, see)
    yield 300
    hands.small_closet()
    (closet,) = hands.ours("Closet")
    gui.equal(closet.Catalogue, str(own), "catalogue of a new closet")
    hands.run("Closetbench_Layout")
    (layout,) = hands.ours("CutLayout")
    gui.close(layout.Kerf.Value, 2.4, "kerf of a new layout")
    gui.equal(layout.Stages, 3, "stages of a new layout")
    gui.close(layout.Seconds, 0.2, "seconds of a new layout")
    hands.cancel()
    gui.check(FreeCAD.ActiveDocument is not None, "the document stays")
    yield
