"""Lists of records and keys in the panels: an existing piece's screws and kept panels, the
mouldings of fillers; lips and bands of shelves, fronts in an opening out of square."""

import FreeCADGui

from closetbench.model.bridge import spec_of
from closetbench.model.children import parts_of
from tests.gui.hands import Hands


def steps(gui):
    hands = Hands(gui)
    hands.run("Closetbench_Start")
    hands.choose("by_readings", "has sizes that I give")
    hands.type("width", "2600")
    hands.choose("by_readings", "follows from readings in the room")
    hands.ok()
    hands.run("Closetbench_Carcass")
    hands.type("width", "1000")
    hands.type("height", "2100")
    hands.ok()
    yield from piece(gui, hands)
    yield from keys(gui, hands)
    yield from shelves(gui, hands)
    yield from skewed(gui, hands)


def piece(gui, hands):
    hands.run("Closetbench_Existing")
    (chest,) = hands.ours("Existing")
    hands.type("height_left", "600")
    hands.push("fold Screws")
    hands.push("add screws")
    gui.equal(len(spec_of(chest).screws), 1, "a screw point more")
    hands.type("screws.0.from_front", "70")
    hands.choose("screws.0.side", "right")
    hands.type("screws.0.from_floor", "9000")
    gui.check("must be" in hands.error("screws.0.from_floor"), "a point above the piece is refused")
    hands.type("screws.0.from_floor", "150")
    gui.equal(hands.error("screws.0.from_floor"), "", "within it is not")
    hands.push("add screws")
    point = spec_of(chest).screws[0]
    gui.equal((point.side.value, point.from_front, point.from_floor), ("right", 70.0, 150.0),
              "the first point")
    hands.push("fold Kept")
    hands.push("add kept")
    hands.type("kept.0.name", "top")
    hands.type("kept.0.length", "700")
    hands.tick("kept.0.grained", False)
    yield 300
    field = area = hands.widget("kept.0.grained")
    while not isinstance(area, gui.QtWidgets.QScrollArea):
        area = area.parentWidget()
    area.ensureWidgetVisible(field)
    yield 200
    gui.shot("lists")
    hands.push("remove Screws 2")
    hands.ok()
    spec = spec_of(chest)
    gui.equal([s.from_front for s in spec.screws], [70.0], "the second point is gone")
    gui.equal([(k.name, k.length, k.grained) for k in spec.kept], [("top", 700.0, False)],
              "the kept panel")
    gui.equal(hands.doc.UndoNames[0], "Existing piece", "one undo step")
    hands.open(chest)
    before = hands.state()
    hands.push("fold Screws")
    hands.push("add screws")
    hands.cancel()
    hands.unchanged(before, "Cancel after adding to a list")
    yield 50


def keys(gui, hands):
    hands.run("Closetbench_Fillers")
    (fillers,) = hands.ours("Fillers")
    offered = list(hands.widget("mouldings").findChildren(gui.QtWidgets.QCheckBox))
    gui.equal(len(offered), 3, "flat mouldings")
    hands.tick("mouldings scribe_20", False)
    gui.equal(spec_of(fillers).mouldings, ("scribe_32", "scribe_45"), "mouldings that are left")
    hands.tick("rounds quarter_round_12", False)
    gui.equal(spec_of(fillers).rounds, ("quarter_round_19",), "quarter rounds that are left")
    gui.shot("mouldings")
    hands.ok()
    yield 50


def shelves(gui, hands):
    carcass = hands.ours("Carcass")[0]
    hands.open(carcass)
    hands.count("bays.0.adjustable", 1)
    hands.type("shelf_lip.height", "10")
    gui.check("must be" in hands.error("shelf_lip.height"), "a lip lower than the shelf is refused")
    hands.type("shelf_lip.height", "40")
    gui.equal(hands.error("shelf_lip.height"), "", "a higher one is not")
    hands.ok()
    lips = [o for o in parts_of(carcass) if o.Role == "front lip"]
    gui.check(lips, "lips are parts")
    gui.equal({o.Shape.BoundBox.ZLength for o in lips} == {40.0}, True, "40 mm high")
    yield 50


def skewed(gui, hands):
    hands.run("Closetbench_Carcass")
    hands.type("width", "600")
    hands.type("height", "900")
    hands.ok()
    second = hands.ours("Carcass")[1]
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(second)
    hands.run("Closetbench_Drawers")
    (drawers,) = hands.ours("Drawers")
    hands.count("count", 3)
    hands.type("front.lean_left", "-4")
    gui.equal(hands.error("front.lean_left"), "", "a lean to the left is taken")
    hands.type("front.pull_spacing", "96")
    gui.equal(drawers.FrontLeanLeft.Value, -4.0, "the property")
    hands.choose("front.kind", "full overlay")
    gui.check("overlay" in hands.error("front.kind"), "an overlay in such an opening is refused")
    hands.choose("front.kind", "inset")
    hands.ok()
    gui.check("tapered" in " ".join(drawers.Findings), "the finding")
    gui.shot("skewed")
    gui.view_shot("skewed-view")
    yield 50
