"""The findings of a closet, the dangers before an export, and the sheet to measure with."""

import FreeCAD
import FreeCADGui

from closetbench.core.findings import Severity
from closetbench.model import bridge
from closetbench.model.base import class_of
from tests.gui.hands import Hands


def steps(gui):
    hands = Hands(gui)
    for command in ("Checks", "SurveySheet"):
        hands.expect_message("start one first", lambda c=command: hands.run(f"Closetbench_{c}"))
    hands.run("Closetbench_BoxRoom")
    forget(hands)
    if gui.arguments["look"]:
        look(gui, hands)
        return
    yield from findings(gui, hands)
    yield from pointing(gui, hands)
    yield from filtering(gui, hands)
    yield from exported(gui, hands)
    yield from put_right(gui, hands)
    yield from broken(gui, hands)
    yield from sheet(gui, hands)


def forget(hands):
    """As if nobody had told the checks anything."""
    (closet,) = hands.ours("Closet")
    hands.doc.openTransaction("Forget")
    closet.Circumstances = "{}"
    hands.doc.recompute()
    hands.doc.commitTransaction()


def look(gui, hands):
    hands.run("Closetbench_Checks")
    row_of(hands, "tipping").click()
    gui.shot("checks")
    hands.close()
    hands.run("Closetbench_Dxf")
    gui.shot("dangers")
    hands.cancel()


class Row:
    """A row of the findings table."""

    def __init__(self, hands, at) -> None:
        self.hands, self.table, self.at = hands, hands.panel.table, at
        self.finding = self.table.rows[at]

    def click(self) -> None:
        self.table.selectRow(self.at)
        self.hands.wait(200)

    def double_click(self) -> None:
        self.click()
        self.table.itemDoubleClicked.emit(self.table.item(self.at, 0))
        self.hands.wait(900)


def row_of(hands, rule):
    for at, finding in enumerate(hands.panel.table.rows):
        if finding.rule == rule:
            return Row(hands, at)
    raise AssertionError(f"no finding {rule}")


def selected(hands):
    return FreeCADGui.Selection.getSelection(hands.doc.Name)


def dangers(hands):
    (closet,) = hands.ours("Closet")
    return [f for f in bridge.closet_of(closet).findings if f.severity is Severity.DANGER]


def findings(gui, hands):
    (closet,) = hands.ours("Closet")
    hands.run("Closetbench_Checks")
    table = hands.panel.table
    every = bridge.closet_of(closet).findings
    gui.equal(table.rowCount(), len(every), "a row for each finding")
    count = len(dangers(hands))
    gui.check(count > 1, f"the example has dangers: {count}")
    gui.equal([f.severity for f in table.rows[:count]], [Severity.DANGER] * count, "on top")
    gui.check(table.rows[-1].severity is Severity.NOTE, "notes at the bottom")
    gui.check(hands.said("banner").startswith(f"{count} dangers, "), hands.said("banner"))
    first = [table.item(0, c).text() for c in range(8)]
    gui.equal(first[0], "danger", "severity")
    gui.check(all(first), f"part, finding, value, limit, what to do, spread, source: {first}")
    gui.check("professional" in hands.said("caution"), "the caution stands there")
    gui.shot("checks")
    yield


def pointing(gui, hands):
    before = hands.state()
    row = row_of(hands, "tipping")
    row.click()
    labels = {o.Label for o in selected(hands)}
    gui.check(row.finding.subject in labels and len(labels) > 2, f"it and its parts: {labels}")
    said = hands.panel.detail.toPlainText()
    gui.check(f"What to do: {row.finding.fix}" in said, f"what to do is said: {said}")
    gui.check(f"Source: {row.finding.source}" in said, "where it comes from is said")
    gui.shot("danger")
    row = row_of(hands, "awkward-part")
    row.click()
    names = {f"{o.Component.Label}: {o.PartName}" for o in selected(hands)}
    gui.check(len(names) > 1, f"several parts: {names}")
    gui.equal(names, set(row.finding.parts), "the parts that a finding names")
    row_of(hands, "rod-sag").click()
    (rod,) = selected(hands)
    gui.equal(rod.PartName, "rod", "a rod")
    row_of(hands, "heavy-sheet").click()
    gui.equal({o.Material for o in selected(hands)}, {"ply18"}, "parts of a board")
    row_of(hands, "wires").click()
    gui.equal(selected(hands), hands.ours("Survey"), "what is about the wall shows the survey")
    row_of(hands, "children-unknown").click()
    gui.equal(selected(hands), [], "children are no object")
    gui.check("children" in hands.panel.detail.toPlainText(), "but what is said of them is shown")
    hands.push("larger")
    window = gui.find(gui.QtWidgets.QDialog, "ClosetbenchLarger")
    larger = gui.find(gui.QtWidgets.QTableWidget, "findings table", window)
    gui.equal(larger.rowCount(), hands.panel.table.rowCount(), "rows of the larger table")
    larger.selectRow(0)
    said = hands.panel.detail.toPlainText()
    gui.check(larger.rows[0].message in said, "it points too")
    gui.shot("larger")
    window.close()
    hands.wait(200)
    hands.close()
    gui.equal(hands.panel, None, "panel after closing")
    hands.unchanged(before, "looking at the checks")
    yield


def filtering(gui, hands):
    hands.run("Closetbench_Checks")
    table, count = hands.panel.table, len(dangers(hands))
    hands.choose("filter", "dangers")
    gui.equal(table.rowCount(), count, "dangers alone")
    hands.choose("filter", "what is not checked")
    gui.equal({f.severity for f in table.rows}, {Severity.NOT_CHECKED}, "not checked alone")
    gui.check(f"{count} dangers" in hands.said("empty"), "hidden dangers are told")
    gui.check(f"{count} dangers" in hands.said("banner"), "and stay in the banner")
    gui.shot("filtered")
    hands.choose("filter", "dangers and warnings")
    gui.equal(hands.said("empty"), "", "nothing to tell when dangers are shown")
    # nothing to show
    panel = hands.panel
    kept, panel._findings = panel._findings, panel._findings[-1:]
    hands.choose("filter", "dangers")
    gui.check(hands.said("empty").startswith("Nothing of this kind"), "an empty choice says so")
    panel._findings = ()
    hands.choose("filter", "everything")
    gui.equal(hands.said("empty"), "Nothing was found.", "no findings at all")
    gui.check(not table.isVisible(), "no empty table")
    gui.shot("empty")
    panel._findings = kept
    hands.close()
    yield


def exported(gui, hands):
    found = dangers(hands)
    said = f"; dangers in this closet: {len(found)}, see"
    for command, field, path in (("Dxf", "folder", gui.folder / "drawings"),
                                 ("Bill", "file", gui.folder / "bill.csv")):
        hands.run(f"Closetbench_{command}")
        shown(gui, hands, found)
        gui.shot(command.lower())
        hands.type(field, str(path))
        hands.ok()
        gui.equal(hands.panel, None, "nothing is blocked")
        bar = gui.window.statusBar()
        for _ in range(20):
            if said in bar.currentMessage():
                break
            hands.wait(100)
        message = bar.currentMessage()
        gui.check(said in message and str(path) in message, f"{command}: {message}")
    top = (gui.folder / "bill.csv").read_text(encoding="utf-8-sig").splitlines()
    gui.equal([line.startswith('"DANGER"') for line in top[2:len(found) + 3]],
              [True] * len(found) + [False], "the bill repeats them at its top")
    gui.check(top[1].startswith(f'"{len(found)} DANGERS: '), f"and counts them: {top[1]}")
    hands.run("Closetbench_Layout")
    shown(gui, hands, found)
    gui.shot("layout")
    hands.cancel()
    hands.doc.undo()
    hands.doc.recompute()
    yield


def shown(gui, hands, found):
    text = hands.said("dangers")
    gui.check(f"{len(found)} dangers" in text and all(f.message in text for f in found),
              f"dangers before writing: {text}")
    label = gui.find(gui.QtWidgets.QLabel, "dangers", hands.panel.form[0])
    gui.check(label.isVisible(), "where they cannot be missed")


def put_right(gui, hands):
    (closet,) = hands.ours("Closet")
    steps = len(hands.doc.UndoNames)
    # a double click opens what edits the thing that is doubted
    for rule, kind in (("tipping", "Carcass"), ("rod-sag", "Rods"), ("wall-bent", "Survey")):
        hands.run("Closetbench_Checks")
        row_of(hands, rule).double_click()
        gui.equal(class_of(hands.panel.obj), kind, f"editor of {rule}")
        hands.cancel()
    hands.run("Closetbench_Checks")
    panel = hands.panel
    row_of(hands, "dust").double_click()
    gui.check(hands.panel is panel, "nothing to edit about dust")
    row_of(hands, "light-clearance").double_click()
    field = hands.widget("circumstances.light")
    for _ in range(20):
        if field.hasFocus() and not field.visibleRegion().isEmpty():
            break
        hands.wait(100)
    gui.check(field.hasFocus(), f"the focus is at the field: {gui.window.focusWidget()}")
    gui.check(not field.visibleRegion().isEmpty(), "scrolled to the field")
    hands.cancel()
    hands.run("Closetbench_Checks")
    row_of(hands, "shelf-use").double_click()
    gui.equal(hands.panel.obj, closet, "what is not known is asked by the closet's panel")
    field = hands.widget("circumstances.shelf_use")
    gui.check(field.isVisible() and field.hasFocus(), "at its field")
    gui.shot("asked")
    hands.choose("circumstances.shelf_use", "books")
    hands.choose("circumstances.damp", "no")
    hands.ok()
    gui.equal(len(hands.doc.UndoNames), steps + 1, "one undo step")
    gui.check("shelf-use" not in rules(closet), "it is not asked for any more")
    hands.run("Closetbench_Checks")
    hands.push("known")
    gui.equal(hands.panel.obj, closet, "the button leads there too")
    hands.choose("circumstances.light", "surface, enclosed lamp or LED")
    hands.type("circumstances.light_clearance", "100")
    hands.ok()
    # what changes elsewhere shows at once, and stays
    hands.run("Closetbench_Checks")
    count = hands.panel.table.rowCount()
    hands.doc.openTransaction("Forget the light")
    closet.Circumstances = "{}"
    hands.doc.recompute()
    hands.doc.commitTransaction()
    hands.wait(300)
    gui.check(hands.panel.table.rowCount() != count, "the table follows a recompute")
    hands.close()
    gui.check("light-clearance" in rules(closet), "closing takes nothing back")
    hands.run("Closetbench_Checks")
    hands.doc.undo()
    hands.wait(400)
    gui.equal(hands.panel, None, "undo closes the panel")
    hands.doc.redo()
    hands.doc.recompute()
    yield


def rules(closet):
    return {f.rule for f in bridge.closet_of(closet).findings}


def sheet(gui, hands):
    before = hands.state()
    hands.click("Survey sheet")
    path = gui.folder / "sheet.pdf"
    hands.type("file", str(gui.folder / "sheet.txt"))
    hands.expect_message("must end in", hands.ok)
    gui.check(hands.panel is not None, "the panel stays")
    hands.type("file", str(path))
    gui.shot("sheet")
    hands.ok()
    gui.equal(hands.panel, None, "panel after OK")
    gui.equal(path.read_bytes()[:4], b"%PDF", "a PDF")
    hands.unchanged(before, "writing the sheet")
    hands.run("Closetbench_SurveySheet")
    hands.type("file", str(gui.folder / "blank.svg"))
    hands.tick("blank")
    hands.ok()
    gui.check("<svg" in (gui.folder / "blank.svg").read_text(encoding="utf-8"), "an SVG")
    FreeCAD.closeDocument(hands.doc.Name)
    # a closet of given sizes has nothing read
    hands.run("Closetbench_Start")
    hands.choose("by_readings", "has sizes that I give")
    hands.ok()
    hands.run("Closetbench_SurveySheet")
    gui.check(not hands.widget("blank").isEnabled(), "all blank, since nothing was read")
    hands.type("file", str(gui.folder / "rough.png"))
    hands.ok()
    gui.check((gui.folder / "rough.png").stat().st_size > 10_000, "a picture")
    # nothing in it, nothing to warn of
    hands.run("Closetbench_Checks")
    gui.check("danger" not in hands.said("banner"), f"no danger: {hands.said('banner')}")
    gui.shot("harmless")
    hands.close()
    FreeCAD.closeDocument(hands.doc.Name)
    yield


def broken(gui, hands):
    carcass = hands.ours("Carcass")[0]
    before = carcass.Width
    carcass.Width = 9000
    hands.run("Closetbench_Checks")
    gui.check(hands.said("empty").startswith("Nothing can be checked"), hands.said("empty"))
    gui.check("9000" in hands.said("empty"), "the reason is said")
    gui.shot("broken")
    carcass.Width = before
    hands.doc.recompute()
    hands.close()
    yield
