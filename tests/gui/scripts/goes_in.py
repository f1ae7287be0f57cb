"""Does it go in: the answers, the path played, and a document that stays as it is."""

import FreeCAD
import FreeCADGui

from tests.gui.hands import Hands


def steps(gui):
    hands = Hands(gui)
    hands.expect_message("start one first", lambda: hands.run("Closetbench_GoesIn"))
    hands.small_closet()
    hands.expect_message("must be measured", lambda: hands.run("Closetbench_GoesIn"))
    gui.equal(hands.panel, None, "no panel without an opening")
    FreeCAD.closeDocument(hands.doc.Name)
    hands.run("Closetbench_BoxRoom")
    yield from answers(gui, hands)
    yield from selected(gui, hands)
    yield from gone(gui, hands)


def rows(panel):
    return {panel.table.item(i, 0).text(): panel.table.item(i, 1).text()
            for i in range(panel.table.rowCount())}


def choose(hands, name):
    panel = hands.panel
    panel.table.selectRow([x.piece.name for x in panel.rows].index(name))
    hands.wait(200)


def where(panel):
    """Where the ghost's matrix puts the middle of the piece."""
    m = panel._ghost._move.matrix.getValue()
    s = panel._ghost._stood
    return [sum(s[k] * m[k][i] for k in range(3)) + m[3][i] for i in range(3)]


def answers(gui, hands):
    before = hands.state()
    FreeCADGui.Selection.clearSelection()
    seen = {o.Name: o.ViewObject.Visibility for o in hands.doc.Objects}
    hands.run("Closetbench_GoesIn")
    panel = hands.panel
    for _ in range(100):
        if len(panel.answers) == len(panel.loads):
            break
        yield 100
    gui.equal(len(panel.answers), len(panel.loads), "answers")
    said = rows(panel)
    gui.check(said["Plan chest"].startswith("✓"), f"{said}")
    gui.check(said["Craft"].startswith("✗"), f"{said}")
    choose(hands, "Craft")
    gui.check("assemble it inside" in hands.said("answer"), hands.said("answer"))
    gui.check("10 mm" in hands.said("answer"), "the search says its step")
    gui.check(not panel.slider.isEnabled(), "nothing to play")
    gui.shot("stuck")
    hands.choose("filter", "everything, each part too")
    choose(hands, "Craft: left side")
    gui.check("Exact" in hands.said("answer"), hands.said("answer"))
    gui.check(panel.slider.maximum() > 20, f"positions: {panel.slider.maximum()}")
    first = where(panel)
    gui.check(first[1] < -panel._way.thick, f"starts before the opening: {first}")
    panel.slider.setValue(panel.slider.maximum() // 2)
    yield 100
    gui.shot("on the way")
    hands.push("on")
    gui.equal(panel.slider.value(), panel.slider.maximum() // 2 + 1, "one step on")
    hands.push("back")
    hands.push("back")
    gui.equal(panel.slider.value(), panel.slider.maximum() // 2 - 1, "two steps back")
    panel.slider.setValue(panel.slider.maximum() - 4)
    hands.push("play")
    for _ in range(40):
        if not panel._clock.isActive():
            break
        yield 100
    gui.equal(panel.slider.value(), panel.slider.maximum(), "played to the end")
    side = next(o for o in hands.ours("ClosetPart") if o.Label.endswith("left side")
                or (o.PartName == "left side" and o.Component.Label == "Craft"))
    middle = side.Shape.BoundBox.Center
    for a, b in zip(where(panel), middle, strict=True):
        gui.close(a, b, "the ghost ends where the part stands", 0.5)
    hidden = [o.Name for o in panel.bodies() if o.ViewObject.SwitchNode.whichChild.getValue() < 0]
    gui.equal(len(hidden), len(panel.bodies()), "parts out of the view")
    hands.tick("alone", False)
    hidden = [o.Name for o in panel.bodies() if o.ViewObject.SwitchNode.whichChild.getValue() < 0]
    gui.equal(len(hidden), 1, "only the part itself is out of the view")
    hands.choose("filter", "what does not go in")
    gui.check(
        "Coats and boots" in rows(panel) and "Plan chest" not in rows(panel), f"{rows(panel)}")
    hands.close()
    gui.equal(hands.panel, None, "panel after Close")
    hands.unchanged(before, "looking")
    now = {o.Name: o.ViewObject.Visibility for o in hands.doc.Objects}
    gui.equal(now, seen, "visibility")
    switches = [o.ViewObject.SwitchNode for o in hands.ours("ClosetPart")]
    gui.check(all(s.whichChild.getValue() >= 0 for s in switches), "no part is still hidden")
    (survey,) = hands.ours("Survey")
    root = survey.ViewObject.RootNode
    names = [root.getChild(i).getName().getString() for i in range(root.getNumChildren())]
    gui.check("ClosetbenchLooking" not in names, f"{names}")


def selected(gui, hands):
    part = next(o for o in hands.ours("ClosetPart") if o.PartName == "divider 1")
    for objects, wanted in (
        ([part], {"Coats and boots: divider 1"}),
        (hands.ours("Drawers"), {"Boots pull-out: drawer"}),
        (hands.ours("ExistingPiece"), {"Plan chest"}),
        (hands.ours("Bench"), {"Boots bench"}),
    ):
        FreeCADGui.Selection.clearSelection()
        for obj in objects:
            FreeCADGui.Selection.addSelection(hands.doc.Name, obj.Name)
        hands.run("Closetbench_GoesIn")
        shown = set(rows(hands.panel))
        gui.check(wanted <= shown, f"{wanted} of {shown}")
        gui.check("Craft" not in shown, f"no others: {shown}")
        hands.close()
    FreeCADGui.Selection.clearSelection()
    yield 100


def gone(gui, hands):
    """The document is closed, or undone, under the panel."""
    doc = hands.doc
    hands.run("Closetbench_GoesIn")
    doc.undo()
    yield 400
    gui.equal(hands.panel, None, "panel after undo")
    doc.redo()
    yield 300
    hands.run("Closetbench_GoesIn")
    FreeCAD.closeDocument(doc.Name)
    yield 400
    gui.equal(hands.panel, None, "panel after the document is closed")
