"""Bill, spreadsheet and drawing page in another language."""

import FreeCADGui

from closetbench.languages import language
from closetbench.shop.tables import TOTAL
from tests.gui.hands import Hands


def steps(gui):
    code, name = gui.arguments["language"], gui.arguments["name"]
    words = language(code)
    hands = Hands(gui)
    FreeCADGui.setLocale(name)
    yield 500
    hands.run("Closetbench_BoxRoom")
    yield 300
    hands.run("Closetbench_Bill")
    tabs = gui.find(gui.QtWidgets.QTabWidget, "bill")
    names = [tabs.tabText(i) for i in range(tabs.count())]
    gui.equal(names[0], words("Parts"), "first table")
    gui.check(words("Purchases") in names, f"tables {names}")
    grid = tabs.widget(0).findChild(gui.QtWidgets.QTableWidget)
    gui.equal(grid.horizontalHeaderItem(10).text(), words("cut length mm"), "a head")
    gui.shot(f"{code}-bill")
    hands.type("file", str(gui.folder / "bill.csv"))
    hands.ok()
    yield 300
    text = (gui.folder / "bill.csv").read_text(encoding="utf-8-sig")
    gui.check('"cut length mm"' in text, "the file keeps its heads")
    gui.check(f"cut length mm = {words('cut length mm')}" in text, "and says what they mean")
    gui.check(words("Saw to the cut size; the finished size has the edge bands on, and positions "
                    "are measured from the finished rims. Columns in mm are exact, those without "
                    "are rounded.") in text, "notes")
    hands.run("Closetbench_BillSheet")
    yield 300
    if hands.panel is not None:
        hands.ok()
    yield 300
    sheet = next(o for o in hands.doc.Objects if o.TypeId == "Spreadsheet::SheetPython")
    cells = [sheet.getContents(f"A{row}").lstrip("'") for row in range(1, sheet.FilledRows + 1)]
    gui.check(words("Parts") in cells and "Parts" not in cells, f"the spreadsheet: {cells[:8]}")
    gui.check(words(TOTAL) in cells, "its sums")
    gui.check(sheet.Parts_total_weight is not None, "formulas find the sums as ever")
    gui.shot(f"{code}-spreadsheet")
    hands.run("Closetbench_Drawing")
    hands.type("file", str(gui.folder / "page.pdf"))
    hands.ok()
    for _ in range(100):
        yield 200
        if hands.panel is None:
            break
    yield 1500
    page = hands.doc.findObjects("TechDraw::DrawPage")[-1]
    gui.equal(page.Template.EditableTexts["head_1"], words("scale"), "title block")
    FreeCADGui.SendMsgToActiveView("ViewFit")
    yield 300
    gui.shot(f"{code}-page")
    FreeCADGui.setLocale("English")
    yield 300
