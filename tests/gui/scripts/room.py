"""The surveyed room in the 3D view, and what the readings say of each other."""

import FreeCAD
import FreeCADGui
from pivy import coin

from closetbench.core.reading_lines import Trust, trust
from tests.gui.hands import Hands


def steps(gui):
    hands = Hands(gui)
    what = gui.arguments["what"]
    hands.small_closet() if what == "small" else hands.run("Closetbench_BoxRoom")
    parts = {
        "seen": (shown, judged), "kept": (kept,),
        "small": (switched, given_sizes),
    }
    for part in parts[what]:
        yield from part(gui, hands)


def switches(survey):
    """What of the room can be seen now, by the name of the property."""
    room = survey.ViewObject.Proxy.room
    whole = room._all.whichChild.getValue() == coin.SO_SWITCH_ALL
    return {
        name for name, switch in room._kinds.items()
        if whole and switch.whichChild.getValue() == coin.SO_SWITCH_ALL
        and switch.getNumChildren()
    }


def annotations(survey):
    """What is said of the readings in the 3D view, and on what ground."""
    search = coin.SoSearchAction()
    search.setType(coin.SoType.fromName("SoFrameLabel"))
    search.setInterest(coin.SoSearchAction.ALL)
    search.setSearchingAll(True)
    search.apply(survey.ViewObject.Proxy.room._kinds["ShowReadings"])
    paths = search.getPaths()
    nodes = [paths[i].getTail() for i in range(paths.getLength())]
    return sorted(
        (node.string[0].getString(),
         tuple(round(c, 3) for c in node.getField("backgroundColor").getValue().getValue()))
        for node in nodes)


def node_count(survey):
    root = survey.ViewObject.RootNode
    return sum(
        root.getChild(i).getName().getString() == "ClosetbenchRoom"
        for i in range(root.getNumChildren()))


def shown(gui, hands):
    (survey,) = hands.ours("Survey")
    usual = {"ShowWalls", "ShowFloor", "ShowFront", "ShowTrim", "ShowDeadSpace"}
    gui.equal(switches(survey), usual, "seen at first")
    gui.shot("closed")
    survey.ViewObject.ShowCeiling = True
    survey.ViewObject.ShowFront = False
    gui.equal(switches(survey), usual - {"ShowFront"} | {"ShowCeiling"}, "seen as chosen")
    survey.ViewObject.Visibility = False
    gui.equal(switches(survey), set(), "nothing of a survey that is hidden")
    survey.ViewObject.Visibility = True
    survey.ViewObject.ShowCeiling = False
    survey.ViewObject.ShowFront = True
    gui.equal(switches(survey), usual, "seen as at first")
    # the mouse goes through all of it: what is under the middle of the opening is a part
    view = FreeCADGui.ActiveDocument.ActiveView
    view.viewFront()
    view.fitAll()
    yield 300
    size = view.getSize()
    found = [
        view.getObjectInfo((int(size[0] * x), int(size[1] * y)))
        for x in (0.45, 0.5, 0.55) for y in (0.3, 0.5, 0.7)
    ]
    names = {info["Object"] for info in found if info}
    gui.check(names and survey.Name not in names, f"under the mouse: {names}")


def judged(gui, hands):
    """The table and the annotations follow what is typed, before it is entered; nothing is
    recomputed meanwhile."""
    (survey,) = hands.ours("Survey")
    from closetbench.gui import palette
    from closetbench.gui.looking import show_all
    from tests.gui.scripts.survey import scroll_to

    show_all()
    hands.open(survey)
    panel = hands.panel
    gui.check("ShowReadings" in switches(survey), "readings show while the panel is open")
    before = annotations(survey)
    gui.equal(len(before), 28, "readings in the view")
    gui.equal(panel.table.rowCount(), 28, "readings in the table")
    gui.check("lean of the back wall" in hands.said("verdict"), hands.said("verdict"))
    gui.shot("readings")
    hands.type("survey.width_front_mid", "1964", enter=False)
    hands.wait(400)
    rows = {r.key: r for r in panel.table.rows}
    wrong = [k for k, r in rows.items() if trust(r) is Trust.WRONG]
    gui.equal(wrong, ["width_front_mid"], "the wrong reading")
    gui.close(rows["width_front_mid"].adjusted, 1933.5, "what was expected", 1.5)
    gui.check("width at the front, middle" in hands.said("verdict"), hands.said("verdict"))
    gui.close(survey.WidthFrontMid.Value, 1934, "the document, before it is entered")
    after = annotations(survey)
    gui.equal(len(after), 28, "readings in the view, one of them wrong")
    (told,) = [(text, ground) for text, ground in after if "1964" in text]
    gui.check("expected" in told[0], f"the wrong one says so: {told}")
    gui.equal(told[1], palette.TRUST[Trust.WRONG], "its ground")
    scroll_to(panel.table)
    gui.shot("wrong")
    # a row leads to its field
    at = [r.key for r in panel.table.rows].index("lean_left_back")
    panel.table.itemClicked.emit(panel.table.item(at, 0))
    hands.wait(100)
    gui.check(hands.widget("survey.lean_left_back").hasFocus(), "the cursor is in the field")
    hands.cancel()
    gui.check("ShowReadings" not in switches(survey), "readings go with the panel")
    gui.close(survey.WidthFrontMid.Value, 1934, "width after Cancel")
    gui.equal(annotations(survey), before, "readings in the view after Cancel")
    yield


def switched(gui, hands):
    """Show and hide from the panel; Cancel takes that back, OK keeps it. One undo step for
    all that follows from readings."""
    (survey,) = hands.ours("Survey")
    width = survey.EnvelopeWidth.Value
    hands.open(survey)
    hands.type("survey.width_front_mid", "1230")
    rows = {r.key: r for r in hands.panel.table.rows}
    gui.check(trust(rows["width_front_mid"]) is Trust.WRONG, "entered, and still wrong")
    hands.cancel()
    gui.close(survey.WidthFrontMid.Value, 1200, "width after Cancel")
    gui.close(survey.EnvelopeWidth.Value, width, "envelope after Cancel")
    hands.open(survey)
    hands.tick("ShowWalls", False)
    hands.tick("ShowReadings")
    gui.check("ShowWalls" not in switches(survey), "walls hidden by the panel")
    hands.cancel()
    gui.check("ShowWalls" in switches(survey), "walls after Cancel")
    hands.open(survey)
    hands.tick("ShowReadings")
    hands.ok()
    gui.check("ShowReadings" in switches(survey), "readings stay after OK")
    steps = len(hands.doc.UndoNames)
    parts = len(hands.ours("ClosetPart"))
    hands.open(survey)
    hands.type("survey.width_front_low", "1196")
    hands.type("survey.height_back_left", "2398")
    hands.ok()
    gui.equal(len(hands.doc.UndoNames), steps + 1, "undo steps")
    gui.check(survey.EnvelopeWidth.Value < width, "the envelope followed")
    hands.doc.undo()
    hands.wait(250)
    gui.close(survey.EnvelopeWidth.Value, width, "envelope after undo")
    gui.equal(len(hands.ours("ClosetPart")), parts, "parts after undo")
    yield


def kept(gui, hands):
    """Saved and opened again, the room is drawn anew and hidden as it was."""
    (survey,) = hands.ours("Survey")
    survey.ViewObject.ShowWalls = False
    before = switches(survey)
    path = gui.folder / "room.FCStd"
    hands.reopen(path)
    (survey,) = hands.ours("Survey")
    gui.equal(switches(survey), before, "seen after opening again")
    gui.equal(node_count(survey), 1, "roots in the view")
    # a proxy that was lost is given back: the room comes once
    survey.ViewObject.Proxy = None
    survey.Proxy = None
    from closetbench.model import base

    base.rebind(survey)
    hands.doc.recompute()
    yield 200
    gui.equal(node_count(survey), 1, "roots after the proxy came back")
    gui.equal(switches(survey), before, "seen after the proxy came back")
    # deleted and undone
    doc = hands.doc
    doc.openTransaction("Delete")
    doc.removeObject(survey.Name)
    doc.commitTransaction()
    doc.undo()
    yield 200
    (survey,) = hands.ours("Survey")
    gui.equal(node_count(survey), 1, "roots after undo of a deletion")
    gui.equal(switches(survey), before, "seen after undo of a deletion")
    FreeCAD.closeDocument(doc.Name)
    yield 100


def given_sizes(gui, hands):
    """Without readings there is no room to see; with obstacles they are seen."""
    (survey,) = hands.ours("Survey")
    gui.check("ShowWalls" in switches(survey), "the walls of a plain room")
    hands.open(survey)
    hands.push("fold Obstacles")
    hands.push("add obstacles")
    hands.type("survey.obstacles.0.name", "pipe")
    hands.type("survey.obstacles.0.z1", "2300")
    hands.type("survey.obstacles.0.x1", "60")
    gui.check("ShowObstacles" in switches(survey), "the pipe is seen")
    gui.shot("obstacle")
    hands.choose("by_readings", "has sizes that I give")
    gui.equal(switches(survey), set(), "no readings, no room")
    gui.check(hands.panel.judged.isHidden(), "no readings, no table")
    hands.cancel()
    yield 100
