"""Editing afterwards: every object by a double click, copies, another bay, formulas that stay."""

import FreeCADGui

from tests.gui.hands import Hands


def steps(gui):
    hands = Hands(gui)
    hands.run("Closetbench_Start")
    hands.type("width", "2600")
    hands.ok()
    hands.run("Closetbench_Carcass")
    hands.type("width", "1200")
    hands.push("add bay")
    hands.ok()
    hands.run("Closetbench_Rods")
    hands.ok()
    yield from copying(gui, hands)
    yield from pasting(gui, hands)
    yield from moving(gui, hands)
    yield from formulas(gui, hands)
    yield from opening(gui, hands)


def select(obj):
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(obj)


def formula(obj):
    return dict(obj.ExpressionEngine).get("BaseHeight", "").replace(" ", "")


def copying(gui, hands):
    (rods,) = hands.ours("Rods")
    before = hands.state()
    select(rods)
    hands.click("Duplicate")
    first, second = hands.ours("Rods")
    gui.equal((first.SpotBay, second.SpotBay), (1, 2), "the copy stands in the next bay")
    gui.check(second.isValid() and second.OuterWidth.Value > 100, "it is built")
    gui.equal(hands.doc.UndoNames[0], "Duplicate", "undo step")
    FreeCADGui.runCommand("Std_Undo")
    yield 300
    hands.doc.recompute()
    gui.equal(hands.state()["objects"], before["objects"], "objects after undo")
    FreeCADGui.runCommand("Std_Redo")
    yield 300
    select(hands.ours("Carcass")[0])
    hands.click("Duplicate")
    _, two = hands.ours("Carcass")
    gui.equal((two.Label, two.OuterWidth.Value), ("B", 1200), "a carcass beside the first")
    gui.equal(len(hands.ours("Rods")), 4, "with what is in it")
    gui.check(all(o.isValid() for o in hands.doc.Objects), "all can be built")
    gui.shot("duplicated")
    FreeCADGui.runCommand("Std_Undo")
    yield 300
    hands.doc.recompute()
    gui.equal(len(hands.ours("Carcass")), 1, "one step took all of it away")
    FreeCADGui.runCommand("Std_Undo")
    yield 300
    hands.doc.recompute()
    hands.expect_message(
        "Select the carcass", lambda: (FreeCADGui.Selection.clearSelection(),
                                       FreeCADGui.runCommand("Closetbench_Duplicate")))


def pasting(gui, hands):
    for commands in (("Std_Copy", "Std_Paste"), ("Std_DuplicateSelection",)):
        select(hands.ours("Rods")[0])
        before = hands.state()

        def answer():
            box = gui.QtWidgets.QApplication.activeModalWidget()
            if box is not None:  # what FreeCAD would copy along
                box.accept()

        for command in commands:
            gui.later(500, answer)
            FreeCADGui.runCommand(command)
            yield 900
        rods = hands.ours("Rods")
        gui.equal(len(rods), 2, f"{commands}: rods")
        gui.equal(len(hands.ours("Carcass")), 1, f"{commands}: carcasses")
        gui.equal(len(hands.ours("Survey")), 1, f"{commands}: surveys")
        gui.check(rods[1].isValid() and rods[1].PartCount >= 0, "the pasted one is built")
        gui.check([o for o in hands.doc.Objects if getattr(o, "Component", None) == rods[1]],
                  f"{commands}: it has parts")
        gui.equal(rods[1].Host, hands.ours("Carcass")[0], "it stands in the same carcass")
        gui.equal(rods[1].SpotBay, 2, "in the next bay")
        gui.equal(len(hands.doc.UndoNames), len(before["undo"]) + 1, "one undo step")
        FreeCADGui.runCommand("Std_Undo")
        yield 300
        hands.doc.recompute()
        gui.equal(hands.state()["objects"], before["objects"], f"{commands}: after undo")
        FreeCADGui.runCommand("Std_Redo")
        yield 300
        hands.doc.recompute()
        gui.equal(len(hands.ours("Rods")), 2, f"{commands}: after redo")
        FreeCADGui.runCommand("Std_Undo")
        yield 300
        hands.doc.recompute()


def moving(gui, hands):
    (rods,) = hands.ours("Rods")
    left = rods.LeftAt.Value
    hands.double_click(rods.Label)
    if not gui.check(hands.panel is not None and hands.panel.obj == rods, "its panel opens"):
        return
    hands.count("spot.bay", 2)
    hands.ok()
    gui.check(rods.LeftAt.Value > left + 300, "it stands in the other bay")
    gui.equal(rods.Bay, hands.ours("Carcass")[0].BayList[1], "and is linked to it")
    # dragged in the tree: what FreeCAD asks and does then
    (closet,), first = hands.ours("Closet"), hands.ours("Carcass")[0].BayList[0]
    gui.check(closet.ViewObject.canDragObject(rods), "a component can be dragged")
    gui.check(not closet.ViewObject.canDragObject(hands.ours("Survey")[0]), "a survey cannot")
    gui.check(first.ViewObject.canDropObject(rods), "onto a bay")
    gui.check(not first.ViewObject.canDropObject(hands.ours("Survey")[0]), "not so a survey")
    hands.doc.openTransaction("Drop object")
    closet.ViewObject.dragObject(rods)
    first.ViewObject.dropObject(rods)
    hands.doc.commitTransaction()
    gui.check(rods in closet.Group, "it stays in the closet")
    gui.equal((rods.Bay, rods.SpotBay), (first, 1), "it stands in the bay that it was dropped on")
    gui.close(rods.LeftAt.Value, left, "where it was", 1e-3)
    hands.doc.undo()
    hands.doc.recompute()
    gui.equal(rods.SpotBay, 2, "one step back")
    yield


def formulas(gui, hands):
    (carcass,) = hands.ours("Carcass")
    carcass.setExpression("BaseHeight", "40 mm + 50 mm")
    hands.doc.recompute()
    hands.open(carcass)
    gui.check(not hands.widget("base.height").isEnabled(), "a formula's field is locked")
    hands.type("width", "1100")
    hands.ok()
    gui.equal(formula(carcass), "40mm+50mm", "it stays")
    gui.close(carcass.BaseHeight.Value, 90, "and counts")
    select(carcass)
    hands.click("Duplicate")
    copy = hands.ours("Carcass")[1]
    gui.equal(formula(copy), "40mm+50mm", "a copy has it too")
    yield


def opening(gui, hands):
    """A double click on whatever is in the tree opens a panel."""
    seen = set()
    from closetbench.model.base import class_of

    for obj in list(hands.doc.Objects):
        kind = class_of(obj)
        if kind and kind not in seen:
            seen.add(kind)
            hands.open(obj)
            if gui.check(hands.panel is not None, f"{kind}: a panel opens"):
                hands.cancel()
            yield
    gui.check({"Closet", "Survey", "Carcass", "Bay", "Rods", "ClosetPart", "Bar"} <= seen,
              f"kinds that were opened: {seen}")
