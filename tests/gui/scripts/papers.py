"""The example closet: its layout, its drawings, its bill, its settings."""

import time

import FreeCAD
import FreeCADGui

from closetbench.stock import purchase
from closetbench.stock.plan import PlanProgress
from tests.gui.hands import Hands


class Slowly:
    """A planner that takes ten seconds over it, unless it is stopped."""

    def __init__(self, planner) -> None:
        self.planner = planner
        self.stopped = False

    def __call__(self, parts, stock, settings, progress=None):
        for turn in range(500 if progress else 0):
            if not progress(PlanProgress("ply18", turn / 500, 6, 5)):
                self.stopped = True
                break
            time.sleep(0.02)
        return self.planner(parts, stock, settings)


def steps(gui):
    hands = Hands(gui)
    yield from example(gui, hands)
    yield from layout(gui, hands)
    yield from drawings(gui, hands)
    yield from bill(gui, hands)
    yield from settings(gui, hands)
    yield from saved(gui, hands)


def example(gui, hands):
    hands.run("Closetbench_BoxRoom")
    gui.equal(len(hands.doc.UndoNames), 1, "undo steps of the example")
    (closet,) = hands.ours("Closet")
    gui.equal(list(hands.tree()), [closet.Label], "what stands at the root of the tree")
    gui.check(closet.PartCount > 30, f"parts: {closet.PartCount}")
    gui.equal([o.Label for o in hands.doc.Objects if not o.isValid()], [], "invalid objects")
    gui.shot("example")
    gui.view_shot("view")
    yield


def layout(gui, hands):
    before = hands.state()
    hands.run("Closetbench_Layout")
    gui.check("Not planned" in hands.said("summary"), "not planned yet")
    hands.type("settings.kerf", "1/8 in")
    gui.equal(hands.text("settings.kerf"), "3.175 mm", "kerf")
    hands.type("settings.kerf", "-3")
    gui.check("negative" in hands.error("settings.kerf"), "a kerf below 0 is refused")
    hands.type("settings.kerf", "3.2")
    hands.push("fold How long to search, per material")
    hands.type("settings.seconds", "0.1 s")
    hands.type("settings.tidy", "0.1")
    hands.push("plan")
    yield 300
    said = hands.said("summary")
    gui.check("yield" in said, f"summary: {said}")
    gui.check("S1" in hands.said("sheet caption"), "the first sheet is shown")
    gui.shot("layout")
    hands.cancel()
    hands.unchanged(before, "Cancel of the layout")
    hands.run("Closetbench_Dxf")
    gui.check("not planned" in hands.said("why"), "drawings of sheets need a plan")
    gui.check(not hands.widget("layout").isEnabled(), "no drawing of a layout without a plan")
    hands.cancel()
    # OK makes the plan that is not there yet; a long search can be stopped
    hands.run("Closetbench_Layout")
    panel = hands.panel
    slow = Slowly(purchase.plan_sheets)
    purchase.plan_sheets = slow

    def stop() -> None:
        gui.check(panel.bar.isVisible() and panel.bar.value() > 0, "progress is shown")
        gui.check("6 sheets so far" in hands.said("planning"), hands.said("planning"))
        gui.check(not hands.widget("settings.kerf").isEnabled(), "fields rest while it searches")
        gui.shot("planning")
        panel.reject()
        gui.check(hands.panel is panel, "Escape stops the search, not the panel")

    gui.later(900, stop)
    hands.ok()
    yield 300
    purchase.plan_sheets = slow.planner
    gui.check(slow.stopped, "the search was stopped")
    gui.equal(hands.panel, None, "panel after OK")
    (cut,) = hands.ours("CutLayout")
    gui.check(cut.Sheets >= 3 and not cut.OutOfDate, f"{cut.Sheets} sheets planned")
    gui.equal(len(hands.doc.UndoNames), 2, "undo steps")
    gui.record("sheets", cut.Sheets)


def drawings(gui, hands):
    before = hands.state()
    hands.click("Export DXF")
    hands.type("folder", str(gui.folder / "drawings"))
    hands.tick("sheets")
    hands.tick("parts")
    hands.tick("cutting")
    gui.check("parts/" in hands.said("files"), "what will be written")
    gui.shot("dxf")
    hands.ok()
    gui.equal(hands.panel, None, "panel after OK")
    (cut,) = hands.ours("CutLayout")
    folder = gui.folder / "drawings"
    gui.equal(len(list(folder.glob("*.dxf"))), 1, "layout drawings")
    gui.equal(len(list((folder / "sheets").glob("*.dxf"))), cut.Sheets, "drawings of sheets")
    gui.equal(len(list((folder / "parts").glob("*.dxf"))), len(hands.ours("ClosetPart")),
              "drawings of parts")
    gui.equal(len(list((folder / "cutting").glob("*.png"))), cut.Sheets, "pages for the saw")
    gui.check("at the fence then" in (folder / "cutting.txt").read_text(encoding="utf-8"),
              "the cutting order")
    hands.unchanged(before, "export of drawings")
    # a folder that cannot be made is said, and the panel stays
    (gui.folder / "file").write_text("in the way", encoding="utf-8")
    hands.run("Closetbench_Dxf")
    hands.type("folder", str(gui.folder / "file"))
    hands.expect_message("cannot be made", hands.ok)
    gui.check(hands.panel is not None, "the panel stays")
    hands.cancel()
    yield


def bill(gui, hands):
    before = hands.state()
    hands.run("Closetbench_Bill")
    gui.equal(hands.panel.tabs.tabText(0), "Parts", "first table")
    hands.type("bit", "500")
    gui.check("1 to 60" in hands.error("bit"), "a bit that wide is refused")
    hands.type("bit", "12")
    path = gui.folder / "bill.csv"
    hands.type("file", str(path))
    gui.shot("bill")
    hands.cancel()
    hands.unchanged(before, "Cancel of the bill")
    gui.check(not path.exists(), "Cancel writes nothing")
    hands.click("Bill of materials")
    hands.type("bit", "12")
    hands.type("file", str(path))
    hands.ok()
    text = path.read_text(encoding="utf-8-sig")
    gui.check("Purchases" in text and "Craft" in text, "the bill is written")
    (made,) = hands.ours("Bill")
    gui.check(not made.OutOfDate and len(made.Lines) > 20, "the lines are kept")
    hands.open(made)
    gui.check(hands.panel.obj == made, "the bill opens again")
    hands.cancel()
    yield


def settings(gui, hands):
    (closet,) = hands.ours("Closet")
    hands.open(closet)
    gui.equal(hands.text("measured.ply18"), "17.6 mm", "measured thickness")
    hands.type("measured.ply18", "9")
    gui.check(hands.error("measured.ply18"), "a thickness beyond belief is refused")
    hands.type("measured.ply18", "17.9")
    side = next(o for o in hands.ours("ClosetPart") if o.Role == "side")
    gui.close(side.Thickness.Value, 17.9, "parts follow the measured thickness")
    hands.push("fold Loads, wall, damp, children, light")
    findings = hands.said("findings")
    hands.choose("circumstances.shelf_use", "books")
    hands.choose("circumstances.wall.kind", "wood studs")
    hands.type("circumstances.wall.stud_spacing", "405")
    hands.tick("circumstances.children 5 to 8")
    gui.check("books" in closet.Circumstances and "5 to 8" in closet.Circumstances,
              f"circumstances: {closet.Circumstances}")
    gui.check(hands.said("findings") != findings, "findings follow the circumstances")
    hands.type("circumstances.wall.stud_spacing", "5")
    gui.check("200" in hands.error("circumstances.wall.stud_spacing"), "studs that close")
    hands.type("circumstances.wall.stud_spacing", "405")
    hands.type("catalogue", str(gui.folder / "none.toml"))
    gui.check(hands.error("catalogue"), "a catalogue that is not there is refused")
    gui.shot("closet")
    hands.cancel()
    gui.close(side.Thickness.Value, 17.6, "thickness after Cancel")
    hands.open(closet)
    hands.type("measured.ply18", "17.9")
    hands.ok()
    (cut,) = hands.ours("CutLayout")
    (made,) = hands.ours("Bill")
    gui.check(cut.OutOfDate and made.OutOfDate, "layout and bill say that they are out of date")
    hands.open(cut)
    gui.check("Out of date" in hands.said("error out of date"), "so does the panel")
    hands.cancel()
    yield


def saved(gui, hands):
    hands.reopen(gui.folder / "example.FCStd")
    (cut,) = hands.ours("CutLayout")
    gui.equal(list(hands.tree()), [hands.ours("Closet")[0].Label], "root of the tree")
    hands.open(cut)
    gui.check("S1" in hands.said("sheet caption"), "the plan is kept in the file")
    hands.cancel()
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(hands.ours("Closet")[0])
    FreeCADGui.runCommand("Std_Delete")
    yield 300
    gui.equal([o.Name for o in hands.doc.Objects], [], "objects after the closet is deleted")
    FreeCADGui.runCommand("Std_Undo")
    yield 300
    gui.check(len(hands.ours("ClosetPart")) > 30, "undo brings all of it back")
    FreeCAD.closeDocument(hands.doc.Name)
