"""Everything that goes into and beside carcasses, by its command and its panel."""

from pathlib import Path

import FreeCADGui

from closetbench.gui.qt import icon_file
from closetbench.gui.view_providers import ICONS
from closetbench.model.children import parts_of
from closetbench.model.contents import CONTENTS
from tests.gui.hands import Hands

KINDS = (
    "Drawers", "Doors", "Rods", "ShoeShelves", "Existing", "FaceFrame", "Bench", "CornerShelves",
    "OverShelf", "Fillers",
)


def steps(gui):
    hands = Hands(gui)
    hands.run("Closetbench_Start")
    hands.choose("by_readings", "has sizes that I give")
    hands.type("width", "2600")
    hands.choose("by_readings", "follows from readings in the room")
    hands.ok()
    gui.equal(set(KINDS), set(CONTENTS), "every content has its command")
    for kind in (*KINDS, "Bar", "ExistingPiece"):
        gui.check(ICONS[kind] and Path(icon_file(ICONS[kind])).is_file(), f"icon of {kind}")
    hands.expect_message("add a carcass", lambda: hands.run("Closetbench_Drawers"))
    hands.run("Closetbench_Carcass")
    hands.type("width", "1000")
    hands.type("height", "2100")
    hands.ok()
    hands.run("Closetbench_Carcass")
    hands.type("width", "900")
    hands.type("height", "2100")
    hands.ok()
    yield from every_kind(gui, hands)
    yield from one_closely(gui, hands)


def every_kind(gui, hands):
    for kind in KINDS:
        before = hands.state()
        hands.run(f"Closetbench_{kind}")
        if not gui.check(hands.panel is not None, f"{kind}: the panel is open"):
            continue
        (made,) = hands.ours(kind)
        gui.check(parts_of(made), f"{kind}: it has parts")
        gui.check(made.ViewObject.isVisible(), f"{kind}: it is not greyed out")
        gui.shot(kind.lower())
        hands.cancel()
        hands.unchanged(before, f"Cancel of {kind}")
        yield 50


def one_closely(gui, hands):
    second = hands.ours("Carcass")[1]
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(second)
    hands.run("Closetbench_Drawers")
    (drawers,) = hands.ours("Drawers")
    gui.equal(drawers.Host, second, "drawers go into the selected carcass")
    hands.type("name", "Linen")
    hands.count("count", 4)
    hands.type("spot.height", "50")
    gui.check(hands.error("spot.height"), "four drawers in 50 mm are refused")
    hands.type("spot.height", "700")
    gui.equal(hands.error("spot.height"), "", "in 700 mm they are not")
    hands.choose("front.kind", "full overlay")
    gui.check(len([o for o in hands.ours("ClosetPart") if o.Component == drawers]) >= 20,
              "each drawer has its parts")
    hands.ok()
    gui.equal(hands.doc.UndoNames[0], "Drawers", "undo step")
    gui.equal(drawers.Label, "Linen", "name")
    # who stands in a carcass keeps standing there when it gets another name
    hands.open(second)
    hands.type("name", "Tall")
    gui.equal(hands.error("name"), "", "a carcass with contents can be renamed")
    hands.ok()
    gui.check("Linen" in hands.tree()[hands.ours("Closet")[0].Label], "drawers in the tree")
    part = next(o for o in hands.ours("ClosetPart") if o.Component == drawers)
    hands.open(part)
    gui.equal(hands.panel.obj, drawers, "a part opens the panel of its component")
    hands.cancel()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(drawers)
    FreeCADGui.runCommand("Std_Delete")
    yield 300
    gui.equal(hands.ours("Drawers"), [], "drawers after Delete")
    FreeCADGui.runCommand("Std_Undo")
    yield 300
    hands.doc.recompute()
    gui.equal(len(hands.ours("Drawers")), 1, "drawers after undo")
    hands.run("Closetbench_BoxRoom")
    gui.equal([o.Label for o in hands.doc.Objects if not o.isValid()], [], "invalid objects")
    gui.shot("example")
    gui.view_shot("view")
    yield from as_the_last(gui, hands)


def as_the_last(gui, hands):
    """What was chosen once is there the next time; the sketch shows the length in hand."""
    hands.run("Closetbench_BoxRoom")
    hands.run("Closetbench_Start")
    hands.type("width", "2600")
    hands.ok()
    hands.run("Closetbench_Carcass")
    hands.type("width", "1000")
    hands.choose("material", "veneer-core plywood 18 mm")
    hands.choose("joint", "screws")
    hands.choose("top", hands.widget("top").itemText(1))
    hands.ok()
    hands.run("Closetbench_Carcass")
    gui.equal(hands.widget("material").currentText(), "veneer-core plywood 18 mm", "board")
    gui.equal(hands.widget("joint").currentText(), "screws", "joint as the last carcass")
    hands.widget("base.setback").setFocus()
    yield 100
    gui.equal(hands.panel.sketch.shown, "base.setback", "length that the sketch points out")
    gui.shot("carcass_sketch")
    hands.ok()
    hands.run("Closetbench_Doors")
    hands.choose("front.kind", "inset")
    hands.ok()
    hands.run("Closetbench_Doors")
    gui.equal(hands.widget("front.kind").currentText(), "inset", "front as the last doors")
    hands.widget("pull_height").setFocus()
    yield 100
    gui.equal(hands.panel.sketch.shown, "pull_height", "length that the sketch points out")
    gui.shot("doors-sketch")
    hands.cancel()
