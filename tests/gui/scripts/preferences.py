"""What is set among FreeCAD's preferences is what a new layout and a new closet start with;
what was last accepted is what a new component starts with, in another session too."""

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


def started(hands, width):
    """A closet of given sizes in a document of its own."""
    FreeCAD.newDocument("Other")
    hands.run("Closetbench_Start")
    hands.type("width", width)
    hands.ok()


def remembered(gui, hands):
    """Accept a carcass, drawers and a panel that are not as they come."""
    def remember(dialog, form):
        box = gui.find(gui.QtWidgets.QCheckBox, "remember", form)
        gui.check(not box.isChecked(), "off in this test until now")
        box.click()

    in_dialog(gui, remember)
    started(hands, "1900")
    hands.run("Closetbench_Carcass")
    hands.type("width", "1200")
    hands.type("height", "2100")
    hands.choose("material", "veneer-core plywood 18 mm")
    hands.type("base.height", "85")
    hands.choose("joint", "screws")
    hands.count("bays.0.fixed", 2)
    gui.check(hands.panel.first_error() is None, "the carcass can be built so")
    hands.ok()
    hands.run("Closetbench_Drawers")
    hands.choose("bottom", "let in under the back")
    hands.type("bottom_inset", "12")
    gui.check(hands.panel.first_error() is None, "the drawers can be built so")
    hands.ok()
    hands.run("Closetbench_Panel")
    hands.type("length", "940")
    hands.count("grooves", 3)
    hands.ok()
    gui.equal(hands.panel, None, "the panel was accepted")


def again(gui, hands):
    """Another session, another closet: narrower, lower, of one bay."""
    started(hands, "900")
    hands.run("Closetbench_Carcass")
    from closetbench.core.joinery import Joint
    from closetbench.core.specs import CarcassSpec

    spec = hands.panel.spec()
    gui.equal(spec.material, "ply18", "material as it was last")
    gui.equal((spec.base.height, spec.joint), (85.0, Joint.SCREWS), "base and joint")
    gui.equal((spec.width, spec.height, spec.x), (None, None, None), "sizes of the new place")
    gui.equal([b.fixed for b in spec.bays], [0], "bays of its own")
    gui.shot("remembered")
    hands.push_task("defaults")
    spec, plain = hands.panel.spec(), CarcassSpec("A", "melamine18")
    gui.equal(spec, plain, "what Defaults puts back")
    gui.equal(hands.text("base.height"), "80 mm", "the field follows")
    hands.cancel()
    hands.run("Closetbench_Carcass")
    gui.equal(hands.panel.spec().material, "ply18", "Cancel forgets nothing")
    hands.ok()
    hands.run("Closetbench_Drawers")
    spec = hands.panel.spec()
    gui.equal((spec.bottom.value, spec.bottom_inset), ("let in under the back", 12.0), "drawers")
    gui.check(spec.slide_length is None and spec.heights == (), "sizes of the drawers' place")
    hands.ok()
    hands.run("Closetbench_Panel")
    spec = hands.panel.spec()
    gui.equal((spec.grooves, spec.length), (3, 800.0), "a panel, but for its size")
    hands.push_task("defaults")
    hands.ok()
    hands.run("Closetbench_Panel")
    gui.equal(hands.panel.spec().grooves, 0, "defaults that were accepted are the last values")
    hands.cancel()
    # what cannot be built in the new place is not forced into it
    from closetbench.core.specs import BackSpec, BaseSpec
    from closetbench.gui import remembered as memory

    memory.keep(CarcassSpec("A", "gone from the catalogue", base=BaseSpec(height=120.0)))
    started(hands, "900")
    hands.run("Closetbench_Carcass")
    gui.equal(hands.panel.spec().material, "melamine18", "a material that is no more")
    hands.cancel()
    memory.keep(CarcassSpec("A", "ply18", back=BackSpec(cleat_height=90.0)))

    def forget(dialog, form):
        gui.shot("page remembered", dialog)
        gui.find(gui.QtWidgets.QPushButton, "forget", form).click()

    in_dialog(gui, forget)
    hands.run("Closetbench_Carcass")
    gui.equal(hands.panel.spec().material, "melamine18", "forgotten")
    hands.cancel()
    memory.keep(CarcassSpec("A", "ply18"))

    def off(dialog, form):
        gui.find(gui.QtWidgets.QCheckBox, "remember", form).click()

    in_dialog(gui, off)
    hands.run("Closetbench_Carcass")
    gui.equal(hands.panel.spec().material, "melamine18", "turned off")
    hands.choose("material", "white melamine-faced particleboard 16 mm")
    hands.ok()
    in_dialog(gui, off)
    started(hands, "900")
    hands.run("Closetbench_Carcass")
    gui.equal(hands.panel.spec().material, "ply18", "nothing was kept while it was off")
    hands.cancel()


def steps(gui):
    hands = Hands(gui)
    if gui.arguments.get("again"):
        again(gui, hands)
        yield 300
        return
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
    remembered(gui, hands)
    yield 300
