"""Sheets, offcuts and depths by hand: clicking, moving, turning, listing, one-click advice."""

import FreeCAD
import FreeCADGui

from closetbench.core.closet import ClosetDesign
from closetbench.core.inside import Spot
from closetbench.core.rods import RodRun, RodsSpec
from closetbench.core.specs import BaySpec, CarcassSpec
from closetbench.model.layout import faces_of, lengths_of, plan_of
from closetbench.model.make import closet_from_design, make_layout
from closetbench.model.offcuts import offcuts_of
from closetbench.stock.plan import CutFrom, CutSettings
from closetbench.stock.sound import Defect
from tests.gui.hands import Hands

DEPTH = 407.0
"""mm: two strips from a sheet of 1,220 mm less its trim, where 402 would give three."""


def steps(gui):
    hands = Hands(gui)
    yield from made(gui, hands)
    yield from clicked(gui, hands)
    yield from moved(gui, hands)
    yield from offcuts(gui, hands)
    yield from depths(gui, hands)
    yield from bill(gui, hands)


def made(gui, hands):
    doc = FreeCAD.newDocument("Stock")
    specs = (
        CarcassSpec("Left", "ply18", width=900.0, depth=DEPTH, bays=(BaySpec(fixed=4),)),
        CarcassSpec("Right", "ply18", width=900.0, depth=DEPTH, bays=(BaySpec(fixed=1),)),
        RodsSpec("Rod", Spot("Right", 1, 2), run=RodRun.ALONG),
    )
    closet = closet_from_design(
        doc, ClosetDesign("Two cases", size=(1850.0, 620.0, 2300.0), components=specs))
    make_layout(doc, closet, CutSettings(seconds=0.1, tidy=0.1))
    doc.recompute()
    doc.clearUndos()
    hands.run("Closetbench_Layout")
    hands.push("plan")
    yield 300
    hands.ok()
    (cut,) = hands.ours("CutLayout")
    gui.check(cut.Sheets > 1 and cut.Lengths == 1, f"{cut.Sheets} sheets, {cut.Lengths} bars")
    colours = {tuple(round(v, 2) for v in c[:3]) for c in cut.ViewObject.DiffuseColor}
    gui.check(len(colours) > 1, f"colours of boards and rests: {colours}")
    FreeCADGui.SendMsgToActiveView("ViewFit")
    yield 200
    gui.view_shot("drawing")


def _part_on(panel):
    """A part on the sheet that is shown."""
    return panel.sheets.sheet.placements[0].part


def _shot(gui, hands, name):
    """A screenshot with the sheet in sight."""
    area = hands.panel.sheets.parentWidget()
    while area is not None and not isinstance(area, gui.QtWidgets.QScrollArea):
        area = area.parentWidget()
    if area is not None:
        area.ensureWidgetVisible(hands.panel.split, 0, 200)
    hands.wait(100)
    gui.shot(name)


def _mouse(gui, widget, kind, at, buttons):
    core, left = gui.QtCore, gui.QtCore.Qt.LeftButton
    where = core.QPointF(at), core.QPointF(widget.mapToGlobal(at))
    none = core.Qt.NoButton
    event = gui.QtGui.QMouseEvent(
        kind, *where, none if kind == core.QEvent.MouseMove else left, left if buttons else none,
        core.Qt.NoModifier)
    core.QCoreApplication.sendEvent(widget, event)


def _drag(gui, hands, key, dx, dy):
    """Press on a part, move by px, let go."""
    drawing = hands.panel.sheets.drawing
    kinds = gui.QtCore.QEvent
    at = drawing.middle_of(key)
    to = at + gui.QtCore.QPoint(dx, dy)
    _mouse(gui, drawing, kinds.MouseButtonPress, at, True)
    for step in (0.3, 0.7, 1.0):
        here = at + gui.QtCore.QPoint(round(dx * step), round(dy * step))
        _mouse(gui, drawing, kinds.MouseMove, here, True)
    if dx or dy:
        _shot(gui, hands, "dragging")
    _mouse(gui, drawing, kinds.MouseButtonRelease, to, False)
    hands.wait(300)


def clicked(gui, hands):
    (cut,) = hands.ours("CutLayout")
    hands.open(cut)
    panel = hands.panel
    gui.check("by length: 1 of" in hands.said("summary"), hands.said("summary"))
    gui.check("at the store" in hands.said("split"), hands.said("split"))
    key = _part_on(panel)
    _drag(gui, hands, key, 0, 0)
    (chosen,) = FreeCADGui.Selection.getSelection(hands.doc.Name)
    gui.equal(chosen.FullName, key, "a click on the sheet selects the part")
    gui.check(key in hands.said("chosen"), hands.said("chosen"))
    _shot(gui, hands, "chosen")
    # the other way round: the object, then its face on the drawing
    last = panel.sheets._plan.sheets[-1].placements[-1].part
    other = next(o for o in hands.ours("ClosetPart") if o.FullName == last)
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(other)
    hands.wait(100)
    gui.equal(panel.sheets.drawing.chosen, last, "an object selected elsewhere")
    gui.equal(panel.sheets.index, len(plan_of(cut).sheets) - 1, "its sheet is shown")
    faces = faces_of(plan_of(cut), lengths_of(cut))
    number = faces.index(("part", key)) + 1
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(cut, f"Face{number}")
    hands.wait(100)
    gui.equal(panel.sheets.drawing.chosen, key, "a face of the drawing")
    hands.cancel()
    yield


def moved(gui, hands):
    (cut,) = hands.ours("CutLayout")
    before, kept = hands.state(), cut.PlanJson
    hands.open(cut)
    panel = hands.panel
    while panel.sheets.sheet.yield_fraction > 0.75 and panel.sheets.index < cut.Sheets - 1:
        panel.sheets.turn(1)
    key = _part_on(panel)
    _drag(gui, hands, key, 0, -2000)
    gui.check("outside" in hands.said("error verdict"), hands.said("error verdict"))
    gui.equal(cut.PlanJson, kept, "the plan after a move that is refused")
    _shot(gui, hands, "refused")
    # the last sheet has room: its last part goes to the far corner
    panel.sheets.turn(cut.Sheets - 1 - panel.sheets.index)
    key = panel.sheets.sheet.placements[-1].part
    scale = panel.sheets.drawing._frame()[2]
    raw = panel.sheets.sheet.sheet
    placed = next(p for p in panel.sheets.sheet.placements if p.part == key)
    dx = round((raw.length - raw.trim - placed.dx - placed.x) * scale)
    dy = -round((raw.width - raw.trim - placed.dy - placed.y) * scale)
    _drag(gui, hands, key, dx, dy)
    gui.equal(hands.said("error verdict"), "", "a move that holds")
    gui.check(cut.PlanJson != kept and cut.ByHand, "the plan has changed")
    now = next(p for s in plan_of(cut).sheets for p in s.placements if p.part == key)
    gui.close(now.x, raw.length - raw.trim - placed.dx, "it snapped to the edge")
    gui.check("moved by hand" in hands.said("summary"), hands.said("summary"))
    _shot(gui, hands, "moved")
    hands.cancel()
    hands.unchanged(before, "Cancel of moves")
    hands.open(cut)
    hands.panel.move(key, now.x, now.y)
    steps_before = len(hands.doc.UndoNames)
    hands.ok()
    gui.check(cut.ByHand and not cut.OutOfDate, "kept with OK")
    hands.doc.undo()
    hands.wait(200)
    gui.equal(cut.PlanJson, kept, "the plan after one undo")
    gui.check(len(hands.doc.UndoNames) <= steps_before, "one undo step")
    yield


def offcuts(gui, hands):
    hands.click("Offcuts at hand")
    (hand,) = hands.ours("Offcuts")
    (cut,) = hands.ours("CutLayout")
    hands.push("add")
    table = hands.panel.table
    table.item(0, 0).setText("shed 1")
    table.item(0, 2).setText("1400")
    table.item(0, 3).setText("410 mm")
    table.item(0, 5).setText("rack, left")
    hands.wait(200)
    (offcut,) = offcuts_of(hand)
    gui.equal((offcut.key, offcut.length, offcut.width, offcut.place),
              ("shed 1", 1400.0, 410.0, "rack, left"), "what was typed")
    table.item(0, 2).setText("long")
    gui.check(hands.said("error offcuts"), "a length that is none is refused")
    table.item(0, 2).setText("1400")
    hands.push("add")
    gui.equal(table.rowCount(), 2, "lines")
    table.selectRow(1)
    hands.push("remove")
    gui.equal([o.key for o in offcuts_of(hand)], ["shed 1"], "after one was removed")
    damaged(gui, hands)
    path = gui.folder / "offcuts.toml"
    hands.panel.write(path)
    gui.check("rack, left" in path.read_text(encoding="utf-8"), "the file is written")
    gui.shot("offcuts")
    hands.ok()
    gui.equal(cut.Offcuts, hand, "the layout takes them")
    gui.check(cut.OutOfDate, "and is out of date")
    hands.open(cut)
    gui.check("Out of date" in hands.said("error out of date"), "the panel says so")
    hands.push("plan")
    yield 300
    hands.ok()
    (used,) = (s.sheet for s in plan_of(cut).sheets if s.sheet.key == "shed 1")
    gui.equal((used.length, used.width), (1340.0, 410.0), "the sound part of the offcut is used")
    gui.equal(used.cut_from, CutFrom(1400.0, 410.0, 60.0, 0.0), "and where it lies on it")
    gui.equal(offcuts_of(hand)[0].reserved, "Two cases", "and kept for the job")
    hands.open(hand)
    gui.equal(hands.panel.table.item(0, 7).text(), "Two cases", "as the table says")
    before = hands.state()
    hands.push(f"cut {cut.Name}")
    gui.check("shed 1" not in {o.key for o in offcuts_of(hand)}, "cut: it is gone")
    gui.check(len(offcuts_of(hand)) > 1, "cut: what is left is in")
    gui.shot("left")
    hands.cancel()
    hands.unchanged(before, "Cancel of a cut job")
    hands.open(hand)
    hands.panel.read(path)
    gui.equal(len(offcuts_of(hand)), 1, "read from the file")
    hands.cancel()
    yield


def damaged(gui, hands):
    """A bad corner on the only offcut, and a length of a bar with a bad stretch."""
    (hand,) = hands.ours("Offcuts")
    table, form = hands.panel.table, hands.panel.defects
    gui.check("Nothing is damaged" in hands.said("sound"), hands.said("sound"))
    hands.push("add defect")
    gui.equal(offcuts_of(hand)[0].defects, (Defect(0.0, 50.0, 0.0, 50.0),), "one that is new")
    form.table.item(0, 1).setText("60 mm")
    form.table.item(0, 2).setText("350")
    gui.check("its start first" in hands.said("error defects"), "350 to 50 is refused")
    gui.equal(offcuts_of(hand)[0].defects[0].low, 0.0, "and changes nothing")
    form.table.item(0, 3).setText("410")
    hands.wait(200)
    gui.equal(hands.said("error defects"), "", "350 to 410 is within it")
    gui.equal(offcuts_of(hand)[0].defects, (Defect(0.0, 60.0, 350.0, 410.0),), "a bad corner")
    gui.check("1340 mm x 410 mm, from 60 mm and 0 mm on" in hands.said("sound"),
              hands.said("sound"))
    table.item(0, 3).setText("300")
    gui.check("must lie within 0 to 300 mm" in hands.said("error offcuts"),
              "a width that the place is not on")
    table.item(0, 3).setText("410 mm")
    gui.shot("damaged")
    hands.push("add")
    table.selectRow(1)
    hands.wait(100)
    table.item(1, 3).setText("")
    hands.push("add defect")
    form.table.item(0, 0).setText("200")
    form.table.item(0, 1).setText("250")
    hands.wait(200)
    gui.equal(offcuts_of(hand)[1].defects, (Defect(200.0, 250.0),), "a bad stretch of a length")
    gui.check(form.table.isColumnHidden(2), "a length has no width")
    gui.shot("damaged length")
    hands.push("remove defect")
    gui.equal(offcuts_of(hand)[1].defects, (), "taken out again")
    hands.push("remove")
    table.selectRow(0)
    hands.wait(100)
    gui.equal(form.table.rowCount(), 1, "the places of the line that is chosen")


def depths(gui, hands):
    (cut,) = hands.ours("CutLayout")
    hands.run("Closetbench_Checks")
    table = hands.panel.table
    (at,) = (i for i, f in enumerate(table.rows) if f.rule == "strip-width")
    table.selectRow(at)
    hands.wait(200)
    gui.check("gives 2 strips" in hands.panel.detail.toPlainText(), "the checks say it too")
    chosen = {f"{o.Component.Label}: {o.PartName}"
              for o in FreeCADGui.Selection.getSelection(hands.doc.Name)}
    gui.equal(chosen, set(table.rows[at].parts), "the parts of that depth")
    table.itemDoubleClicked.emit(table.item(at, 0))
    hands.wait(900)
    gui.equal(hands.panel.obj, cut, "and open the cut layout, where a button does it")
    gui.check("gives 2 strips" in hands.said("advice 1"), hands.said("advice 1"))
    _shot(gui, hands, "advice")
    hands.push("less deep 1")
    yield 400
    left = next(c for c in hands.ours("Carcass") if c.Label == "Left")
    gui.check(left.Depth.Value < DEPTH, f"less deep: {left.Depth.Value}")
    gui.check("Out of date" in hands.said("error out of date"), "to be planned again")
    gui.check(not [w for w in hands.panel.depths.findChildren(gui.QtWidgets.QPushButton)
                   if w.isVisible()], "nothing more to save")
    depth = left.Depth.Value
    hands.push("plan")
    yield 300
    hands.ok()
    gui.equal(left.Depth.Value, depth, "kept with OK")
    hands.doc.undo()
    hands.wait(300)
    gui.equal(left.Depth.Value, DEPTH, "one undo brings the depth back")
    hands.doc.redo()
    hands.doc.recompute()
    hands.wait(300)


def bill(gui, hands):
    hands.run("Closetbench_Bill")
    tabs = hands.panel.tabs
    names = [tabs.tabText(i) for i in range(tabs.count())]
    gui.check("Cut by length" in names, f"tables of the bill: {names}")
    tabs.setCurrentIndex(names.index("Purchases"))
    hands.count("spare", 1)
    gui.shot("bill")
    hands.cancel()
    yield
