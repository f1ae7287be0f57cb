"""The example's page of drawings: made, printed, out of date, made again, undone."""

import FreeCADGui

from tests.gui.hands import Hands


def steps(gui):
    hands = Hands(gui)
    hands.run("Closetbench_BoxRoom" if gui.arguments["metric"] else "Closetbench_Porch")
    yield 300
    yield from made(gui, hands)
    yield from again(gui, hands)


def page(hands):
    found = hands.doc.findObjects("TechDraw::DrawPage")
    return found[-1] if found else None


def made(gui, hands):
    before = hands.state()
    hands.run("Closetbench_Drawing")
    gui.check("1 :" in hands.said("scale"), hands.said("scale"))
    gui.shot("panel")
    hands.cancel()
    hands.unchanged(before, "Cancel of the drawing")
    hands.click("Drawing page")
    hands.type("by", "A. Maker")
    hands.type("file", str(gui.folder / "page.pdf"))
    hands.ok()
    for _ in range(100):
        yield 200
        if hands.panel is None:
            break
    gui.equal(hands.panel, None, "panel after OK")
    gui.equal(len(hands.doc.UndoNames), 2, f"undo steps {hands.doc.UndoNames}")
    yield 1500
    sheet = page(hands)
    gui.check((gui.folder / "page.pdf").stat().st_size > 5000, "the PDF")
    gui.check((gui.folder / "page.pdf").read_bytes().startswith(b"%PDF"), "a PDF")
    kinds = [v.TypeId for v in sheet.Views]
    gui.equal(kinds.count("TechDraw::DrawViewSection"), 1, "sections")
    gui.check(kinds.count("TechDraw::DrawViewDimension") > 10, f"sizes: {kinds}")
    for view in sheet.Views:
        if view.TypeId == "TechDraw::DrawViewDimension" and gui.arguments["metric"]:
            gui.close(view.getRawValue(), float(view.FormatSpec), view.Name, 0.51)
    wrong = [o.Name for o in hands.doc.Objects if not o.isValid()]
    gui.equal(wrong, [], "invalid objects")
    gui.equal(sheet.Template.EditableTexts["value_5"], "A. Maker", "drawn by")
    FreeCADGui.SendMsgToActiveView("ViewFit")
    yield 300
    gui.shot("page")
    import TechDrawGui

    TechDrawGui.exportPageAsSvg(sheet, str(gui.folder / "page.svg"))
    drawn = (gui.folder / "page.svg").read_text(encoding="utf-8")
    lines = [line for line in drawn.splitlines() if "stroke-dasharray" in line]
    gui.check(lines, "the marks of sections")
    gui.equal([x for x in lines if 'stroke-opacity="0"' in x], [], "lines that nobody sees")
    yield


def again(gui, hands):
    sheet = page(hands)
    gui.equal(sheet.Template.EditableTexts["status"], "", "it is current")
    hands.doc.recompute()
    gui.equal(sheet.Template.EditableTexts["status"], "", "it stays so")
    bay = hands.ours("Bay")[1 if gui.arguments["metric"] else 0]
    hands.doc.openTransaction("Bay")
    bay.ShelfHeights = [1250.0, 1600.0]
    hands.doc.recompute()
    hands.doc.commitTransaction()
    yield 300
    gui.check("OUT OF DATE" in sheet.Template.EditableTexts["status"], "it says so")
    hands.run("Closetbench_Drawing")
    hands.choose("paper", "A4")
    hands.tick("plan", False)
    hands.count("sections", 0)
    hands.ok()
    for _ in range(100):
        yield 200
        if hands.panel is None:
            break
    gui.equal(len(hands.doc.findObjects("TechDraw::DrawPage")), 2, "pages")
    gui.check("OUT OF DATE" in sheet.Template.EditableTexts["status"], "the old one still says so")
    gui.equal(page(hands).Template.EditableTexts["status"], "", "it is current again")
    gui.equal(page(hands).Template.EditableTexts["value_5"], "A. Maker", "the name is kept")
    yield 1500
    FreeCADGui.SendMsgToActiveView("ViewFit")
    yield 300
    gui.shot("small page")
    hands.doc.undo()
    yield 300
    gui.equal(len(hands.doc.findObjects("TechDraw::DrawPage")), 1, "pages after undo")
    hands.doc.redo()
    yield 1000
    gui.equal(len(hands.doc.findObjects("TechDraw::DrawPage")), 2, "pages after redo")
    for _ in range(3):
        hands.doc.undo()
        yield 300
    gui.equal(page(hands), None, "undone")
    left = [o.Name for o in hands.doc.Objects if o.TypeId.startswith("TechDraw")]
    gui.equal(left, [], "left of the page")
