"""The bill as a spreadsheet, and parts as STEP, by their commands."""

import FreeCADGui
import Part

from tests.gui.hands import Hands


def steps(gui):
    hands = Hands(gui)
    hands.small_closet()
    yield 200
    yield from spreadsheet(gui, hands)
    yield from solids(gui, hands)


def spreadsheet(gui, hands):
    before = len(hands.doc.UndoNames)
    hands.click("Bill as a spreadsheet")
    yield 500
    (sheet,) = hands.ours("BillSheet")
    gui.equal(len(hands.doc.UndoNames), before + 1, "one undo step")
    gui.check(sheet.isValid(), "the sheet is valid")
    gui.check(sheet.Parts_total_count > 3, f"parts: {sheet.Parts_total_count}")
    shown = [w.windowTitle() for w in gui.window.findChildren(gui.QtWidgets.QMdiSubWindow)]
    gui.check(any(sheet.Label in title for title in shown), f"the spreadsheet is shown: {shown}")
    gui.shot("spreadsheet")
    count = sheet.Parts_total_count
    (carcass,) = hands.ours("Carcass")
    hands.open(carcass)
    hands.count("bays.0.fixed", hands.panel.spec().bays[0].fixed + 2)
    hands.ok()
    yield 300
    gui.equal(sheet.Parts_total_count, count + 2, "it follows a panel")
    FreeCADGui.runCommand("Std_Undo")
    yield 300
    gui.equal(sheet.Parts_total_count, count, "and undo")
    hands.run("Closetbench_BillSheet")
    gui.equal(len(hands.ours("BillSheet")), 1, "there is one")
    FreeCADGui.runCommand("Std_Undo")
    yield 300
    gui.equal(hands.ours("BillSheet"), [], "undone")
    FreeCADGui.runCommand("Std_Redo")
    yield 300
    (sheet,) = hands.ours("BillSheet")
    gui.equal(sheet.Parts_total_count, count, "done again")
    doc = hands.reopen(gui.folder / "bill.FCStd")
    yield 300
    (sheet,) = hands.ours("BillSheet")
    gui.equal(sheet.Parts_total_count, count, "after opening again")
    bill = hands.ours("Bill")[0]
    FreeCADGui.Selection.clearSelection()
    for obj in (bill, sheet):
        FreeCADGui.Selection.addSelection(obj)
    FreeCADGui.runCommand("Std_Delete")
    yield 300
    gui.equal([hands.ours("Bill"), hands.ours("BillSheet")], [[], []], "both are deleted")
    doc.recompute()


def solids(gui, hands):
    before = hands.state()
    parts = hands.ours("ClosetPart")
    FreeCADGui.Selection.clearSelection()
    hands.click("Export STEP")
    path = gui.folder / "closet.step"
    hands.type("file", str(path))
    gui.check(str(len(parts)) in hands.said("count"), hands.said("count"))
    gui.shot("step")
    hands.ok()
    gui.equal(hands.panel, None, "panel after OK")
    shape = Part.Shape()
    shape.read(str(path))
    gui.equal(len(shape.Solids), len(parts), "solids")
    FreeCADGui.Selection.addSelection(parts[0])
    hands.run("Closetbench_Step")
    gui.equal(hands.widget("which").currentText(), "what is selected", "what is selected")
    hands.type("file", str(gui.folder / "none" / "one.step"))
    hands.expect_message("cannot be written", hands.ok)
    hands.type("file", str(gui.folder / "one.step"))
    hands.ok()
    one = Part.Shape()
    one.read(str(gui.folder / "one.step"))
    box, own = one.BoundBox, parts[0].Shape.BoundBox
    gui.close(box.ZMax, own.ZMax, "where it stands", 1e-3)
    gui.close(box.XMin, own.XMin, "where it stands", 1e-3)
    hands.unchanged(before, "export of solids")
    yield
