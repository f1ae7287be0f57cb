"""Handles in the 3D view: taken with the mouse, they change the fields of the open panel."""

import contextlib
import subprocess

import FreeCAD
import FreeCADGui

from tests.gui.hands import Hands

VIEW = "User parameter:BaseApp/Preferences/View"


def steps(gui):
    hands = Hands(gui)
    hands.run("Closetbench_Start")
    hands.choose("by_readings", "follows from readings in the room")
    hands.ok()
    hands.run("Closetbench_Carcass")
    hands.type("width", "1100")
    hands.type("depth", "500")
    hands.push("add bay")
    hands.push("add bay")
    hands.ok()
    # once its dock has its width, the view has its own
    yield 300
    FreeCADGui.ActiveDocument.ActiveView.fitAll()
    yield from outer(gui, hands)
    yield from by_the_pointer(gui, hands)
    yield from refused(gui, hands)
    yield from dividers(gui, hands)
    yield from cancelled(gui, hands)
    yield from locked(gui, hands)
    yield from inches(gui, hands)
    yield from grounds(gui, hands)
    yield from saved(gui, hands)
    yield from single_panel(gui, hands)


def ends(hands, key, dx, dy):
    """A handle's middle, and so many pixels from there."""
    handles = hands.panel.handles
    start = handles.where(key)
    if start is None:
        raise AssertionError(f"no handle {key}")
    return handles.viewport, start, start + hands.gui.QtCore.QPoint(dx, dy)


def drag(hands, key, dx, dy=0, let_go=True):
    port, start, end = ends(hands, key, dx, dy)
    hands.drag(port, start, end, let_go)
    hands.wait(300)


def handles_in(hands):
    """Roots of handles in the scene."""
    from pivy import coin

    search = coin.SoSearchAction()
    search.setName("Closetbench_Handles")
    search.setInterest(coin.SoSearchAction.ALL)
    search.setSearchingAll(True)
    search.apply(FreeCADGui.ActiveDocument.ActiveView.getSceneGraph())
    return search.getPaths().getLength()


def outer(gui, hands):
    (carcass,) = hands.ours("Carcass")
    gui.equal(handles_in(hands), 0, "handles without a panel")
    before = hands.state()
    hands.open(carcass)
    yield 300
    gui.equal(handles_in(hands), 1, "handles of an open panel")
    gui.shot("handles")
    port, at, _ = ends(hands, "width", 0, 0)
    hands.hover(port, at)
    gui.shot("hovered")
    drag(hands, "width", -60, let_go=False)
    width = carcass.Width.Value
    gui.check(600 < width < 1090 and width == round(width), f"whole millimetres, live: {width}")
    gui.equal(hands.text("width"), f"{width:g} mm", "the field")
    gui.close(carcass.OuterWidth.Value, width, "what is built")
    gui.shot("dragging")
    held = hands.panel.handles.where("width")
    gui.check(abs(held.x() - (at.x() - 60)) < 4, f"it stays under the mouse: {at} {held}")
    hands.let_go(port, held)
    yield 200
    height = carcass.OuterHeight.Value
    drag(hands, "height", 0, 40)
    gui.check(carcass.OuterHeight.Value < height - 20, "the height")
    camera = FreeCADGui.ActiveDocument.ActiveView.getCamera()
    rotation = FreeCADGui.ActiveDocument.ActiveView.getCameraOrientation()
    FreeCADGui.ActiveDocument.ActiveView.viewFront()
    # later versions turn there slowly
    for _ in range(20):
        yield 200
        if hands.panel.handles.where("depth") is None:
            break
    gui.equal(hands.panel.handles.where("depth"), None, "seen from its end, there is none")
    FreeCADGui.ActiveDocument.ActiveView.viewRight()
    for _ in range(20):
        yield 200
        if hands.panel.handles.where("width") is None:
            break
    yield 600
    FreeCADGui.ActiveDocument.ActiveView.fitAll()
    yield 600
    drag(hands, "depth", 30)
    gui.check(carcass.OuterDepth.Value < 495, f"the depth: {carcass.OuterDepth.Value}")
    gui.equal(hands.text("depth"), f"{carcass.Depth.Value:g} mm", "its field")
    FreeCADGui.ActiveDocument.ActiveView.setCamera(camera)
    yield 300
    gui.check(rotation.isSame(
        FreeCADGui.ActiveDocument.ActiveView.getCameraOrientation(), 1e-5), "the camera stands")
    hands.ok()
    gui.equal(hands.panel, None, "panel after OK")
    gui.equal(handles_in(hands), 0, "handles after OK")
    gui.equal(len(hands.doc.UndoNames), len(before["undo"]) + 1, "one undo step")
    hands.doc.undo()
    yield 300
    hands.doc.recompute()
    gui.equal((carcass.Width.Value, carcass.Depth.Value), (1100, 500), "after undo")


def by_the_pointer(gui, hands):
    """The screen's own pointer, moved from outside: nothing of Qt is made up here."""
    (carcass,) = hands.ours("Carcass")
    hands.open(carcass)
    yield 300
    camera = FreeCADGui.ActiveDocument.ActiveView.getCameraNode()
    stood = camera.position.getValue().getValue(), camera.orientation.getValue().getValue()
    selected = FreeCADGui.Selection.getSelection()
    port, start, end = ends(hands, "width", -50, 0)
    for act in (("mousemove", start), ("mousedown", "1"), ("mousemove", (start + end) / 2),
                ("mousemove", end), ("mouseup", "1")):
        where = act[1]
        if not isinstance(where, str):
            at = gui.QtCore.QPointF(port.mapToGlobal(where)) * port.devicePixelRatioF()
            act = act[0], str(round(at.x())), str(round(at.y()))
        subprocess.run(["xdotool", *act], check=True)
        yield 400
    width = carcass.Width.Value
    gui.check(600 < width < 1090, f"width by the pointer: {width}")
    stands = camera.position.getValue().getValue(), camera.orientation.getValue().getValue()
    gui.equal(stands, stood, "the view stands still")
    gui.equal(FreeCADGui.Selection.getSelection(), selected, "nothing else is selected")
    hands.cancel()
    gui.close(carcass.Width.Value, 1100, "after Cancel")


def refused(gui, hands):
    (carcass,) = hands.ours("Carcass")
    hands.open(carcass)
    yield 300
    port, _, far = ends(hands, "width", -500, 0)
    drag(hands, "width", -500, let_go=False)
    good = carcass.Width.Value
    gui.check(hands.error("width") or hands.error("bays.0.width"), "it is said what is wrong")
    gui.equal(hands.text("width"), f"{good:g} mm", "the field has the last good value")
    gui.shot("refused")
    hands.let_go(port, far)
    yield 200
    gui.check(hands.error("width"), "it is still said")
    drag(hands, "width", 30)
    gui.equal(hands.error("width"), "", "until there is a good value")
    gui.check(carcass.Width.Value > good, f"it is dragged on: {carcass.Width.Value}")
    drag(hands, "width", -500)
    good = carcass.Width.Value
    hands.ok()
    gui.equal(hands.panel, None, "OK takes the last good value")
    gui.equal(carcass.Width.Value, good, "width")
    FreeCADGui.runCommand("Std_Undo")
    yield 300
    hands.doc.recompute()


def dividers(gui, hands):
    (carcass,) = hands.ours("Carcass")
    hands.open(carcass)
    yield 300
    drag(hands, "divider 1", -40)
    first = carcass.BayList[0].Width.Value
    gui.check(100 < first < 330 and first == round(first), f"the bay on its left: {first}")
    gui.equal(hands.text("bays.0.width"), f"{first:g} mm", "its field")
    gui.equal(carcass.BayList[2].Width.Value, 0, "the others share")
    drag(hands, "divider 2", 25)
    widths = [bay.Width.Value for bay in carcass.BayList]
    gui.check(widths[0] == first and sum(w > 0 for w in widths) == 2, f"widths {widths}")
    gui.shot("dividers")
    hands.ok()
    gui.check(all(o.isValid() for o in hands.doc.Objects), "all is built")
    yield


def cancelled(gui, hands):
    (carcass,) = hands.ours("Carcass")
    before = hands.state()
    hands.open(carcass)
    yield 300
    drag(hands, "height", 0, 60)
    drag(hands, "divider 1", 30)
    # a click that drags nothing changes nothing
    now = hands.state()["values"]
    port, start, _ = ends(hands, "width", 0, 0)
    hands.drag(port, start, start, True)
    yield 200
    gui.equal(hands.state()["values"], now, "values after a click on a handle")
    hands.cancel()
    hands.unchanged(before, "Cancel after dragging")
    gui.equal(handles_in(hands), 0, "handles after Cancel")
    # undo under the panel takes them along
    hands.open(carcass)
    yield 300
    drag(hands, "height", 0, 60)
    hands.doc.undo()
    yield 400
    gui.equal((hands.panel, handles_in(hands)), (None, 0), "panel and handles after undo")
    hands.doc.recompute()


def locked(gui, hands):
    (carcass,) = hands.ours("Carcass")
    carcass.setExpression("Width", "1000 mm + 40 mm")
    hands.doc.recompute()
    hands.open(carcass)
    yield 300
    gui.equal(hands.panel.handles.where("width"), None, "no handle where there is a formula")
    gui.check(hands.panel.handles.where("height") is not None, "others there are")
    hands.cancel()
    carcass.setExpression("Width", None)
    hands.doc.recompute()


def inches(gui, hands):
    (carcass,) = hands.ours("Carcass")
    FreeCAD.Units.setSchema(2)
    hands.open(carcass)
    yield 300
    drag(hands, "width", -35)
    sixteenths = carcass.Width.Value / 25.4 * 16
    gui.close(sixteenths, round(sixteenths), "sixteenths of an inch", 1e-6)
    gui.check('"' in hands.text("width"), f"shown in inches: {hands.text('width')}")
    hands.cancel()
    FreeCAD.Units.setSchema(0)


def grounds(gui, hands):
    """Seen on dark and on light, and as large from near as from far."""
    (carcass,) = hands.ours("Carcass")
    hands.open(carcass)
    group = FreeCAD.ParamGet(VIEW)
    for name, colour in (("light", 0xFFFFFFFF), ("dark", 0x202024FF)):
        group.SetBool("Simple", True)
        group.SetBool("Gradient", False)
        group.SetUnsigned("BackgroundColor", colour)
        yield 300
        gui.shot(f"on-{name}")
    view = FreeCADGui.ActiveDocument.ActiveView
    far = hands.panel.handles.where("divider 1"), hands.panel.handles.where("divider 2")
    view.getCameraNode().height.setValue(view.getCameraNode().height.getValue() / 2)
    yield 400
    near = hands.panel.handles.where("divider 1"), hands.panel.handles.where("divider 2")
    gui.check(
        abs((near[1] - near[0]).x() - 2 * (far[1] - far[0]).x()) < 4, f"zoomed: {far} {near}")
    gui.shot("near")
    drag(hands, "divider 1", 20)
    hands.cancel()
    view.fitAll()
    yield 200


def saved(gui, hands):
    """Saved while they are shown, a file knows nothing of them."""
    import zipfile

    (carcass,) = hands.ours("Carcass")
    hands.open(carcass)
    yield 300
    gui.equal(handles_in(hands), 1, "they are shown")
    path = gui.folder / "shown.FCStd"
    hands.doc.saveCopy(str(path))
    with zipfile.ZipFile(path) as file:
        held = any(b"Closetbench_Handles" in file.read(n) for n in file.namelist())
    gui.check(not held, "nothing of them is saved")
    FreeCAD.closeDocument(hands.doc.Name)
    yield 500
    gui.equal(hands.panel, None, "a document that closes takes panel and handles along")


def single_panel(gui, hands):
    hands.run("Closetbench_Panel")
    yield 400
    (panel,) = hands.ours("GroovedPanel")
    FreeCADGui.ActiveDocument.ActiveView.fitAll()
    yield 300
    length, width = panel.Length.Value, panel.Width.Value
    gui.shot("panel")
    drag(hands, "length", -60, 20)
    drag(hands, "width", -30, 10)
    gui.check(panel.Length.Value != length, f"length: {panel.Length.Value}")
    gui.check(panel.Width.Value != width, f"width: {panel.Width.Value}")
    gui.equal(hands.text("length"), f"{panel.Length.Value:g} mm", "its field")
    hands.cancel()
    with contextlib.suppress(AttributeError):
        gui.equal(handles_in(hands), 0, "handles after Cancel")
