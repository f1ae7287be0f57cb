"""Parts of a cut layout dragged with the mouse in the 3D view, to other places and sheets."""

import subprocess

import FreeCAD
import FreeCADGui

from closetbench.core.closet import ClosetDesign
from closetbench.core.specs import BaySpec, CarcassSpec
from closetbench.model.layout import corners_of, plan_of
from closetbench.model.make import closet_from_design, make_layout
from closetbench.stock.plan import CutSettings
from tests.gui.hands import Hands


def steps(gui):
    hands = Hands(gui)
    yield from made(gui, hands)
    yield from looked_at(gui, hands)
    yield from to_another_sheet(gui, hands)
    yield from refused(gui, hands)
    yield from given_up(gui, hands)
    yield from by_the_pointer(gui, hands)
    yield from aslant(gui, hands)
    yield from out_of_date(gui, hands)


def made(gui, hands):
    doc = FreeCAD.newDocument("Drag")
    specs = (CarcassSpec("Case", "ply18", width=900.0, depth=407.0, bays=(BaySpec(fixed=4),)),)
    closet = closet_from_design(
        doc, ClosetDesign("One case", size=(950.0, 620.0, 2300.0), components=specs))
    make_layout(doc, closet, CutSettings(seconds=0.1, tidy=0.1))
    doc.recompute()
    (cut,) = hands.ours("CutLayout")
    cut.Update = True
    doc.recompute()
    doc.clearUndos()
    yield 300


def look(hands):
    (cut,) = hands.ours("CutLayout")
    view = FreeCADGui.ActiveDocument.ActiveView
    view.viewTop()
    hands.wait(900)
    for obj in hands.doc.Objects:
        if obj != cut and obj.ViewObject is not None:
            obj.ViewObject.Visibility = False
    hands.wait(200)
    view.fitAll()
    hands.wait(600)


def room_for(plan, part):
    """A sheet of the part's material that it is not on, and the largest rest that takes it."""
    home = next(s for s in plan.sheets for p in s.placements if p == part)
    found = [
        (r.dx * r.dy, s, r) for s in plan.sheets if s is not home
        and s.sheet.material == home.sheet.material for r in s.rests
        if r.dx >= part.dx + 20 and r.dy >= part.dy + 20
    ]
    return max(found, key=lambda f: f[0])[1:] if found else None


def movable(gui, plan):
    """A part that has room on another sheet, that sheet and its rest."""
    for sheet in plan.sheets:
        for part in sheet.placements:
            room = room_for(plan, part)
            if room is not None:
                return part, *room
    raise AssertionError("no part has room on another sheet")


def ends(cut, drag, part, sheet, rest, at=(0.5, 0.5)):
    """Where a part is taken, and where that point is once it lies in a rest's corner."""
    plan = plan_of(cut)
    x0, y0 = dict(zip((s.name for s in plan.sheets), corners_of(plan), strict=True))[sheet.name]
    end = drag.point(x0 + rest.x + at[0] * part.dx, y0 + rest.y + at[1] * part.dy)
    return drag.where(part.part, at), end


def lies(cut, key):
    return next(
        (s, p) for s in plan_of(cut).sheets for p in s.placements if p.part == key)


def looked_at(gui, hands):
    (cut,) = hands.ours("CutLayout")
    look(hands)
    hands.open(cut)
    look(hands)
    drag = hands.panel.sheet_drag
    part = plan_of(cut).sheets[-1].placements[0]
    at = drag.where(part.part)
    hands.hover(drag.viewport, at)
    gui.equal(drag.viewport.cursor().shape(), gui.QtCore.Qt.PointingHandCursor, "the pointer")
    kept = cut.PlanJson
    hands.drag(drag.viewport, at, at, moves=1)
    hands.wait(300)
    (chosen,) = FreeCADGui.Selection.getSelection(hands.doc.Name)
    gui.equal(chosen.FullName, part.part, "a click selects the part")
    gui.equal(hands.panel.sheets.drawing.chosen, part.part, "and marks it on its sheet")
    gui.equal(hands.panel.sheets.index, len(plan_of(cut).sheets) - 1, "which is shown")
    gui.equal(cut.PlanJson, kept, "a click moves nothing")
    yield


def to_another_sheet(gui, hands):
    (cut,) = hands.ours("CutLayout")
    drag, kept = hands.panel.sheet_drag, cut.PlanJson
    part, sheet, rest = movable(gui, plan_of(cut))
    start, end = ends(cut, drag, part, sheet, rest)
    gui.shot("before")
    hands.drag(drag.viewport, start, end, let_go=False)
    hands.wait(300)
    gui.equal(cut.PlanJson, kept, "nothing is moved before it is dropped")
    gui.shot("dragging")
    hands.let_go(drag.viewport, end)
    hands.wait(500)
    gui.equal(hands.said("error verdict"), "", "the verdict")
    there, placed = lies(cut, part.part)
    gui.equal(there.name, sheet.name, "the sheet that it lies on")
    # against the corner of the rest: to neighbours a kerf, or the trimmed edge
    gui.close(placed.x, rest.x, "it snapped along the sheet")
    gui.close(placed.y, rest.y, "it snapped across the sheet")
    gui.check(cut.ByHand and not cut.OutOfDate, "moved by hand, and the plan holds")
    gui.check(all(s.cuts for s in plan_of(cut).sheets), "every sheet has its cuts")
    gui.equal(hands.panel.sheets.sheet.name, sheet.name, "the panel shows that sheet")
    gui.shot("dropped")
    steps_before = len(hands.doc.UndoNames)
    hands.ok()
    gui.equal(len(hands.doc.UndoNames), max(1, steps_before), "one undo step")
    hands.doc.undo()
    hands.wait(300)
    gui.equal(cut.PlanJson, kept, "the plan after one undo")
    hands.doc.redo()
    hands.wait(300)
    gui.equal(lies(cut, part.part)[0].name, sheet.name, "and after redo")
    hands.doc.undo()
    hands.doc.recompute()
    hands.wait(300)
    yield


def refused(gui, hands):
    (cut,) = hands.ours("CutLayout")
    before, kept = hands.state(), cut.PlanJson
    hands.open(cut)
    look(hands)
    drag = hands.panel.sheet_drag
    plan = plan_of(cut)
    one, other = plan.sheets[0].placements[0], plan.sheets[-1].placements[-1]
    hands.drag(drag.viewport, drag.where(one.part), drag.where(other.part), let_go=False)
    hands.wait(200)
    gui.shot("refused")
    hands.let_go(drag.viewport, drag.where(other.part))
    hands.wait(400)
    gui.check("closer than the kerf" in hands.said("error verdict"), hands.said("error verdict"))
    gui.equal(cut.PlanJson, kept, "the plan after a place that is taken")
    away = drag.point(-300.0, -300.0)
    hands.drag(drag.viewport, drag.where(one.part), away)
    hands.wait(400)
    gui.check("there is no sheet" in hands.said("error verdict"), hands.said("error verdict"))
    gui.equal(cut.PlanJson, kept, "the plan after a drop beside the sheets")
    part, sheet, rest = movable(gui, plan)
    hands.drag(drag.viewport, *ends(cut, drag, part, sheet, rest))
    hands.wait(500)
    gui.check(cut.PlanJson != kept, "moved")
    hands.cancel()
    hands.unchanged(before, "Cancel after a drag")
    yield


def given_up(gui, hands):
    (cut,) = hands.ours("CutLayout")
    kept = cut.PlanJson
    hands.open(cut)
    look(hands)
    drag = hands.panel.sheet_drag
    part, sheet, rest = movable(gui, plan_of(cut))
    start, end = ends(cut, drag, part, sheet, rest)
    hands.drag(drag.viewport, start, end, let_go=False)
    core = gui.QtCore
    focus = gui.QtWidgets.QApplication.focusWidget() or drag.viewport
    for kind in (core.QEvent.ShortcutOverride, core.QEvent.KeyPress, core.QEvent.KeyRelease):
        core.QCoreApplication.sendEvent(focus, gui.QtGui.QKeyEvent(
            kind, core.Qt.Key_Escape, core.Qt.NoModifier))
    hands.wait(300)
    gui.check(hands.panel is not None, "Escape leaves the panel open")
    gui.equal(drag._root.getNumChildren(), 1, "nothing hangs from the mouse any more")
    hands.let_go(drag.viewport, end)
    hands.wait(400)
    gui.equal(cut.PlanJson, kept, "the plan after Escape")
    gui.check(not drag.held, "nothing is held")
    hands.cancel()
    yield


def by_the_pointer(gui, hands):
    """The screen's own pointer and keyboard, from outside: nothing of Qt is made up here."""
    (cut,) = hands.ours("CutLayout")
    kept = cut.PlanJson
    hands.open(cut)
    look(hands)
    drag = hands.panel.sheet_drag
    camera = FreeCADGui.ActiveDocument.ActiveView.getCameraNode()
    stood = camera.position.getValue().getValue()
    part, sheet, rest = movable(gui, plan_of(cut))
    start, end = ends(cut, drag, part, sheet, rest)
    middle = (start + end) / 2

    def act(*words):
        subprocess.run(["xdotool", *words], check=True)
        hands.wait(200)

    def go(to):
        at = gui.QtCore.QPointF(drag.viewport.mapToGlobal(to)) * drag.viewport.devicePixelRatioF()
        act("mousemove", str(round(at.x())), str(round(at.y())))

    for escape in (True, False):
        go(start)
        act("mousedown", "1")
        go(middle)
        go(end)
        if escape:
            act("key", "Escape")
        act("mouseup", "1")
        yield 400
        gui.check(hands.panel is not None, "the panel is open")
        gui.equal(cut.PlanJson == kept, escape, f"moved, Escape pressed: {escape}")
    gui.equal(lies(cut, part.part)[0].name, sheet.name, "the sheet that it lies on")
    gui.equal(camera.position.getValue().getValue(), stood, "the camera")
    hands.cancel()
    yield 200
    gui.equal(cut.PlanJson, kept, "the plan after Cancel")


def aslant(gui, hands):
    """Seen from a corner, in perspective, the layout turned and moved: under the mouse still."""
    (cut,) = hands.ours("CutLayout")
    hands.open(cut)
    view = FreeCADGui.ActiveDocument.ActiveView
    stood = cut.Placement
    cut.Placement = FreeCAD.Placement(
        FreeCAD.Vector(300, -900, 150), FreeCAD.Rotation(FreeCAD.Vector(0.2, 0, 1), 25))
    kind = view.getCameraType()
    view.setCameraType("Perspective")
    view.viewIsometric()
    hands.wait(900)
    view.fitAll()
    hands.wait(600)
    drag = hands.panel.sheet_drag
    part, sheet, rest = movable(gui, plan_of(cut))
    hands.drag(drag.viewport, *ends(cut, drag, part, sheet, rest))
    hands.wait(400)
    gui.shot("aslant")
    there, placed = lies(cut, part.part)
    gui.equal((there.name, round(placed.x, 3), round(placed.y, 3)),
              (sheet.name, round(rest.x, 3), round(rest.y, 3)), "moved in a slanting view")
    view.setCameraType(kind)
    cut.Placement = stood
    hands.cancel()
    yield 200


def out_of_date(gui, hands):
    (cut,) = hands.ours("CutLayout")
    hands.open(cut)
    look(hands)
    kept, drag = cut.PlanJson, hands.panel.sheet_drag
    part, sheet, rest = movable(gui, plan_of(cut))
    hands.type("settings.kerf", "5 mm")
    hands.wait(300)
    hands.drag(drag.viewport, *ends(cut, drag, part, sheet, rest))
    hands.wait(400)
    gui.check("plan the sheets again first" in hands.said("error verdict"),
              hands.said("error verdict"))
    gui.equal(cut.PlanJson, kept, "a plan that is out of date")
    hands.cancel()
    gui.equal(drag.viewport, None, "the mouse is FreeCAD's again")
    yield
