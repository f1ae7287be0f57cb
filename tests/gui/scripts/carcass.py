"""Starting a closet, surveying it, and putting carcasses with bays into it."""

import FreeCAD
import FreeCADGui

from tests.gui.hands import Hands


def steps(gui):
    hands = Hands(gui)
    yield from starting(gui, hands)
    yield from surveying(gui, hands)
    yield from adding_carcass(gui, hands)
    yield from wrong_values(gui, hands)
    yield from bays(gui, hands)
    yield from typing_on(gui, hands)
    yield from undoing(gui, hands)
    yield from second_carcass(gui, hands)
    yield from deleting(gui, hands)
    yield from reopening(gui, hands)
    yield from by_mouse(gui, hands)


def starting(gui, hands):
    # nothing there yet: commands say what to do
    for command, part in (
        ("Closetbench_Survey", "start one first"),
        ("Closetbench_Carcass", "start one first"),
        ("Closetbench_Bay", "add one first"),
        ("Closetbench_Layout", "start one first"),
        ("Closetbench_Dxf", "start one first"),
        ("Closetbench_Bill", "start one first"),
    ):
        hands.expect_message(part, lambda command=command: FreeCADGui.runCommand(command))
    # Cancel takes away even the document that was made for it
    hands.run("Closetbench_Start")
    gui.check(hands.panel is not None, "the panel is open")
    hands.cancel()
    yield 200
    gui.equal(list(FreeCAD.listDocuments()), [], "documents after Cancel")
    hands.click("Start a closet")
    gui.equal(hands.panel.first_field().name, "name", "first field")
    hands.type("name", "Landing")
    hands.choose("by_readings", "has sizes that I give")
    hands.type("width", "1.4 m")
    gui.equal(hands.text("width"), "1400 mm", "width as shown")
    gui.check("1400 mm wide" in hands.said("summary"), f"summary: {hands.said('summary')}")
    gui.shot("start")
    hands.ok()
    gui.equal(hands.panel, None, "panel after OK")
    gui.equal(hands.doc.UndoNames, ["Start a closet"], "undo steps")
    (closet,) = hands.ours("Closet")
    (survey,) = hands.ours("Survey")
    gui.equal(closet.Label, "Landing", "label")
    gui.close(survey.EnvelopeWidth.Value, 1400, "envelope width")
    yield


def surveying(gui, hands):
    (survey,) = hands.ours("Survey")
    hands.run("Closetbench_Survey")
    hands.choose("by_readings", "follows from readings in the room")
    gui.equal(hands.text("survey.width_back_mid"), "1400 mm", "reading to begin with")
    hands.type("survey.width_back_mid", "1388.5")
    hands.type("survey.rise_front", "-4 mm")
    hands.type("survey.lean_right_front", "0")
    hands.type("survey.diagonal_to_right", "1523")
    hands.type("survey.diagonal_to_left", "1523")
    hands.widget("survey.width_back_mid").setFocus()
    hands.panel.reveal(hands.widget("survey.width_back_mid"))
    yield 200
    gui.equal(hands.panel.sketch.shown, "width_back_mid", "reading that the sketch points out")
    gui.check("tape level" in hands.said("reading hint"), "hint for the reading")
    gui.check("Gap at the left" in hands.said("gaps"), "gaps are listed")
    gui.shot("survey")
    # a slip: nothing is lost, nothing is written
    hands.type("survey.height_back_left", "2400 x")
    gui.check("no unit" in hands.error("survey.height_back_left"),
              f"error: {hands.error('survey.height_back_left')}")
    gui.equal(hands.text("survey.height_back_left"), "2400 x", "the slip stays in the field")
    hands.ok()
    gui.check(hands.panel is not None, "OK is refused while a field is wrong")
    gui.shot("survey-error")
    hands.type("survey.height_back_left", "94 1/2 in")
    gui.equal(hands.error("survey.height_back_left"), "", "the error is gone")
    hands.ok()
    gui.equal(hands.panel, None, "panel after OK")
    gui.equal(survey.Source, "readings", "source")
    gui.close(survey.WidthBackMid.Value, 1388.5, "reading")
    gui.close(survey.HeightBackLeft.Value, 94.5 * 25.4, "reading in inches")
    gui.close(survey.RiseFront.Value, -4, "reading below 0")
    gui.check(survey.EnvelopeWidth.Value < 1388.5, "the envelope follows the readings")
    gui.equal(len(hands.doc.UndoNames), 2, "undo steps")
    before = hands.state()
    hands.open(survey)
    hands.type("survey.width_back_mid", "1300")
    hands.cancel()
    hands.unchanged(before, "Cancel of the survey")
    yield


def adding_carcass(gui, hands):
    before = hands.state()
    hands.run("Closetbench_Carcass")
    gui.check(len(hands.ours("ClosetPart")) > 4, "the preview has parts")
    hands.type("width", "900")
    gui.close(hands.ours("Carcass")[0].OuterWidth.Value, 900, "width in the preview")
    hands.cancel()
    hands.unchanged(before, "Cancel of a new carcass")
    hands.click("Carcass")
    hands.choose("material", "veneer-core plywood 18 mm")
    hands.type("width", "900")
    hands.choose("base.kind", "toe kick")
    gui.check(not hands.widget("base.spacing").isEnabled(), "no cross members in a toe kick")
    hands.choose("back.kind", "panel")
    gui.check(hands.widget("back.inset").isEnabled(), "a panel has an inset")
    # Enter in a field that has not changed is OK
    line = hands.widget("width")
    line.setFocus()
    hands.key(line, hands.Qt.Key_Return, "\r")
    yield 400
    gui.equal(hands.panel, None, "panel after Enter")
    gui.equal(hands.doc.UndoNames[0], "Carcass", "undo step")
    (carcass,) = hands.ours("Carcass")
    gui.close(carcass.OuterWidth.Value, 900, "width")
    gui.equal(carcass.BaseKind, "toe kick", "base")


def wrong_values(gui, hands):
    (carcass,) = hands.ours("Carcass")
    before = hands.state()
    hands.open(carcass)
    hands.type("width", "50")
    said = hands.error("width")
    gui.check("must be" in said and "mm" in said, f"error beside the width: {said!r}")
    gui.close(carcass.OuterWidth.Value, 900, "the object keeps what can be built")
    gui.shot("carcass-error")
    hands.ok()
    gui.check(hands.panel is not None, "OK is refused")
    # what is wrong because of two fields is right once either is
    hands.type("width", "900")
    gui.equal(hands.error("width"), "", "the error is gone")
    hands.type("base.height", "5000")
    gui.check(hands.error("base.height"), "a base too high is refused")
    # Escape is Cancel
    hands.key(hands.widget("width"), hands.Qt.Key_Escape)
    yield 300
    gui.equal(hands.panel, None, "panel after Escape")
    hands.unchanged(before, "Escape")


def bays(gui, hands):
    (carcass,) = hands.ours("Carcass")
    FreeCADGui.Selection.clearSelection()
    hands.run("Closetbench_Bay")
    gui.equal(hands.doc.UndoNames[0], "Add a bay", "undo step")
    gui.equal(len(carcass.BayList), 2, "bays")
    hands.open(carcass.BayList[0])
    gui.check(hands.panel is not None and hands.panel.obj == carcass, "a bay opens its carcass")
    hands.type("bays.0.width", "300")
    hands.count("bays.1.fixed", 3)
    hands.type("bays.0.heights", "400; 900")
    gui.equal(hands.widget("bays.0.fixed").value(), 2, "two heights are two shelves")
    hands.count("bays.0.adjustable", 2)
    gui.shot("carcass")
    hands.push("add bay")
    gui.equal(len(carcass.BayList), 3, "bays in the preview")
    hands.type("bays.2.width", "60")
    gui.check(hands.error("bays.2.width"), "a bay too narrow is refused")
    hands.type("bays.2.width", "200")
    hands.push("remove bay 3")
    gui.equal(len(carcass.BayList), 2, "bays once one is removed")
    hands.ok()
    gui.equal(hands.panel, None, "panel after OK")
    gui.close(carcass.BayList[0].Width.Value, 300, "width of the bay")
    gui.equal(list(carcass.BayList[0].ShelfHeights), [400.0, 900.0], "heights")
    names = [o.PartName for o in hands.ours("ClosetPart")]
    gui.check(any("shelf" in n for n in names), f"shelves among {names}")
    gui.record("parts", len(names))
    yield


def bored(hands):
    """The number of holes in the sides."""
    sides = [o for o in hands.ours("ClosetPart") if o.Role == "side"]
    faces = [f for side in sides for f in side.Shape.Faces]
    return sum(f.Surface.TypeId == "Part::GeomCylinder" for f in faces)


class Looked:
    """Counts recomputes of a document and paintings of a view of it."""

    def __init__(self, gui, doc, port):
        self.doc, self.recomputes, self.paints, self.half_done = doc, 0, 0, 0
        looked, kinds = self, gui.QtCore.QEvent

        class Watch(gui.QtCore.QObject):
            def eventFilter(self, watched, event):
                if event.type() == kinds.Paint and watched is port:
                    looked.paints += 1
                    looked.half_done += bool(doc.Recomputing)
                return False

        self.port, self.watch = port, Watch()
        port.installEventFilter(self.watch)
        FreeCAD.addDocumentObserver(self)

    def slotRecomputedDocument(self, doc):
        self.recomputes += doc == self.doc

    def close(self):
        self.port.removeEventFilter(self.watch)
        FreeCAD.removeDocumentObserver(self)


def typing_on(gui, hands):
    """The preview leaves holes out at first; a pause, or OK, brings them."""
    (carcass,) = hands.ours("Carcass")
    before, steps = bored(hands), len(hands.doc.UndoNames)
    gui.check(before > 20, f"holes for shelf pins: {before}")
    hands.open(carcass)
    port = FreeCADGui.ActiveDocument.ActiveView.graphicsView().viewport()
    looked = Looked(gui, hands.doc, port)
    hands.type("height", "2280")
    gui.close(carcass.OuterHeight.Value, 2280, "height in the preview")
    gui.equal(looked.recomputes, 1, "recomputes for one height")
    for _ in range(40):
        if not looked.paints:
            yield 50
    gui.check(port.updatesEnabled() and looked.paints, "the view is painted after the preview")
    gui.equal(looked.half_done, 0, "paintings of what is half worked out")
    looked.close()
    yield 1200
    gui.check(bored(hands) > 20, "holes after a pause")
    hands.type("height", "2270")
    hands.ok()
    gui.check(bored(hands) > 20, "holes after OK")
    gui.equal(len(hands.doc.UndoNames), steps + 1, "undo steps")
    hands.doc.undo()
    yield 300
    gui.equal(bored(hands), before, "holes after undo")


def undoing(gui, hands):
    doc = hands.doc
    after = hands.state()
    steps = len(doc.UndoNames)
    for _ in range(2):
        FreeCADGui.runCommand("Std_Undo")
        yield 200
    gui.equal(len(hands.ours("Carcass")[0].BayList), 1, "bays after two undos")
    for _ in range(2):
        FreeCADGui.runCommand("Std_Redo")
        yield 200
    gui.equal(len(doc.UndoNames), steps, "undo steps after redo")
    gui.equal(hands.state()["objects"], after["objects"], "objects after redo")
    # undo while a panel is open closes it
    (carcass,) = hands.ours("Carcass")
    hands.open(carcass)
    hands.type("height", "2000")
    doc.undo()
    yield 400
    gui.equal(hands.panel, None, "panel after undo")
    gui.check(not FreeCADGui.Control.activeDialog(), "no dialog after undo")
    gui.check(carcass.Height.Value == 0, "the change is undone")
    # and FreeCAD can edit it again
    hands.open(carcass)
    gui.check(hands.panel is not None, "the panel opens again")
    hands.cancel()


def second_carcass(gui, hands):
    hands.run("Closetbench_Carcass")
    gui.equal(len(hands.ours("Carcass")), 2, "carcasses")
    hands.ok()
    first, second = hands.ours("Carcass")
    gui.close(second.LeftAt.Value, 900, "it stands beside the first")
    hands.expect_message("width that leaves room", lambda: hands.run("Closetbench_Carcass"))
    # the first may not push the second out of the envelope
    hands.open(first)
    hands.type("width", "")
    gui.check(hands.error("width"), "a width that leaves the other no room is refused")
    hands.cancel()
    first.ViewObject.Visibility = False
    yield 100
    parts = [o for o in hands.ours("ClosetPart") if o.Component == first]
    gui.check(not any(o.ViewObject.Visibility for o in parts), "parts hide with the carcass")
    first.ViewObject.Visibility = True
    tree = first.ViewObject.claimChildren() if hasattr(
        first.ViewObject, "claimChildren") else first.ViewObject.Proxy.claimChildren()
    gui.equal(len(tree), len(parts) + len(first.BayList), "what the tree shows under a carcass")


def deleting(gui, hands):
    before = hands.state()["objects"]
    _, second = hands.ours("Carcass")
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(second)
    FreeCADGui.runCommand("Std_Delete")
    yield 300
    hands.doc.recompute()
    gui.equal(len(hands.ours("Carcass")), 1, "carcasses after Delete")
    gui.check(all(o.Component is not None for o in hands.ours("ClosetPart")), "no parts left over")
    FreeCADGui.runCommand("Std_Undo")
    yield 300
    gui.equal(sorted(hands.state()["objects"]), sorted(before), "objects after undo of Delete")
    hands.doc.recompute()


def reopening(gui, hands):
    def seen():
        # from 1.0 on a part's colour is that of its first face: see all of them
        return {o.FullName: (o.Length.Value, [c[:3] for c in o.ViewObject.DiffuseColor])
                for o in hands.ours("ClosetPart")}

    parts = seen()
    hands.reopen(gui.folder / "landing.FCStd")
    from closetbench.gui.view_providers import ViewProvider

    again = seen()
    gui.equal(set(again), set(parts), "parts after reopening")
    for name, (length, colours) in parts.items():
        gui.close(again[name][0], length, f"length of {name}")
        gui.equal(len(again[name][1]), len(colours), f"colours of {name}")
        gui.check(
            all(abs(a - b) < 0.01 for one, other in zip(again[name][1], colours, strict=False)
                for a, b in zip(one, other, strict=True)),
            f"colours of {name}: {again[name][1]}, were {colours}")
    for obj in hands.doc.Objects:
        gui.check(isinstance(obj.ViewObject.Proxy, ViewProvider), f"view of {obj.Label}")
    gui.equal([o.Label for o in hands.doc.Objects if "Touched" in o.State], [], "touched")
    hands.open(hands.ours("Carcass")[0])
    gui.check(hands.panel is not None, "the panel opens after reopening")
    hands.type("width", "880")
    hands.ok()
    gui.close(hands.ours("Carcass")[0].OuterWidth.Value, 880, "width after reopening")
    yield


def by_mouse(gui, hands):
    (closet,) = hands.ours("Closet")
    before = hands.state()
    hands.double_click(closet.Label)
    gui.check(hands.panel is not None and hands.panel.obj == closet, "the closet's panel opens")
    carcass = hands.ours("Carcass")[0]
    hands.expect_message("Another task", lambda: hands.open(carcass))
    hands.cancel()
    hands.unchanged(before, "Cancel after a double click")
    hands.double_click(closet.Label)
    hands.type("name", "Upstairs")
    hands.ok()
    gui.equal(closet.Label, "Upstairs", "name")
    gui.equal(len(hands.doc.UndoNames), len(before["undo"]) + 1, "undo steps")
    # a document that is closed takes its panel along
    hands.open(carcass)
    hands.type("width", "870")
    FreeCAD.closeDocument(hands.doc.Name)
    yield 400
    gui.equal(hands.panel, None, "panel after the document is closed")
    gui.check(not FreeCADGui.Control.activeDialog(), "no dialog after that")
