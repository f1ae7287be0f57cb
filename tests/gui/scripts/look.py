"""The example looked at: colours, pulled apart, cut open, kinds hidden, names; pictures."""

import FreeCADGui

from tests.gui.hands import Hands


def steps(gui):
    hands = Hands(gui)
    hands.run("Closetbench_BoxRoom")
    yield 300
    gui.view_shot("colours")
    yield from colours(gui, hands)
    yield from kept_colours(gui, hands)
    yield from apart(gui, hands)
    yield from open_up(gui, hands)
    yield from kinds(gui, hands)
    yield from follows(gui, hands)
    yield from pictures(gui, hands)


def scene():
    """Nodes in the scene, which have to be as many again in the end."""
    view = FreeCADGui.ActiveDocument.ActiveView
    doc = FreeCADGui.ActiveDocument.Document
    parts = [o for o in doc.Objects if hasattr(o, "PartName")]
    return view.getSceneGraph().getNumChildren(), [
        o.ViewObject.RootNode.getNumChildren() for o in parts]


def colours(gui, hands):
    from closetbench.gui import face_colours

    for obj in hands.ours("ClosetPart"):
        faces = zip(obj.Shape.Faces, obj.ViewObject.DiffuseColor, strict=False)
        _, largest = max(faces, key=lambda pair: pair[0].Area)
        gui.check(
            all(abs(a - b) < 0.01 for a, b in zip(
                largest, face_colours.by_material(obj), strict=False)),
            f"the face of {obj.Label} in the colour of its board")
    side = next(o for o in hands.ours("ClosetPart") if o.Role == "side")
    shown = {tuple(round(c, 3) for c in colour[:3]) for colour in side.ViewObject.DiffuseColor}
    gui.check(len(shown) == 3, f"board, bands and grooves in colours of their own: {shown}")
    yield


def kept_colours(gui, hands):
    """A file has the colours of what it holds, also when it is saved at once after a change;
    they come back with it, and so does what the user has coloured."""
    from closetbench.gui import face_colours

    def parts():
        return {o.Name: o for o in hands.ours("ClosetPart")}

    def shown(obj):
        return [colour[:3] for colour in obj.ViewObject.DiffuseColor]

    def alike(one, other):
        # a file has eight bits for each
        return len(one) == len(other) and all(
            abs(a - b) < 0.01 for p, q in zip(one, other, strict=True)
            for a, b in zip(p, q, strict=True))

    side = next(o for o in parts().values() if o.Role == "side")
    mine = next(o for o in parts().values() if o.Role == "top")
    mine.ViewObject.ShapeColor = (0.2, 0.4, 0.8)
    was = shown(side)
    carcass = side.Component
    hands.doc.openTransaction("Band")
    carcass.Band = ""
    hands.doc.recompute()
    hands.doc.commitTransaction()
    names, path = (side.Name, mine.Name), gui.folder / "colours.FCStd"
    hands.reopen(path)
    side, mine = (parts()[name] for name in names)
    gui.check(not alike(shown(side), was), "the band's colour has gone with the band")
    gui.check(any(alike([c], [(0.2, 0.4, 0.8)]) for c in shown(mine)), "the user's colour")
    for obj in parts().values():
        before = shown(obj)
        face_colours.show(obj)
        gui.check(alike(shown(obj), before), f"colours of {obj.Label} out of the file")
    hands.doc.openTransaction("Band")
    parts()[names[0]].Component.Band = "auto"
    hands.doc.recompute()
    hands.doc.commitTransaction()
    yield 200
    gui.check(alike(shown(side), was), "coloured again with the band")


def apart(gui, hands):
    before, nodes = hands.state(), scene()
    hands.click("Look inside")
    gui.check(hands.panel is not None, "the panel opens")
    side = next(o for o in hands.ours("ClosetPart") if o.Role == "side")
    at = side.Placement.Base.x
    hands.panel.apart.put(1.0)
    yield 100
    hands.tick("turns", False)
    FreeCADGui.ActiveDocument.ActiveView.fitAll()
    yield 200
    gui.shot("apart")
    gui.equal(side.Placement.Base.x, at, "the part itself stays")
    hands.tick("turns")
    hands.panel.apart.put(0.6)
    gui.check("Step" in hands.said("now"), hands.said("now"))
    gui.shot("half way")
    hands.panel.apart.put(1.0)
    hands.push("play apart")
    gui.check(hands.panel.apart.playing, "it plays")
    for _ in range(50):
        yield 200
        if hands.panel.apart.share < 0.95:
            break
    gui.check(hands.panel.apart.share < 0.95, "back from apart to together")
    hands.push("play apart")
    gui.check(not hands.panel.apart.playing, "and stops")
    hands.panel.apart.put(1.0)
    hands.close()
    gui.equal(hands.panel, None, "panel after Close")
    gui.equal(scene(), nodes, "nodes in the scene")
    hands.unchanged(before, "pulling apart")
    FreeCADGui.ActiveDocument.ActiveView.fitAll()
    yield


def open_up(gui, hands):
    nodes = scene()
    hands.run("Closetbench_Look")
    hands.choose("cut", "cut from the left")
    hands.panel.where.put(0.35)
    yield 100
    gui.check("behind" in hands.said("where text"), hands.said("where text"))
    gui.shot("cut")
    hands.choose("cut", "cut from the front")
    hands.panel.where.put(0.4)
    yield 100
    gui.view_shot("cut from the front")
    hands.choose("cut", "cut from above")
    hands.panel.where.put(0.6)
    yield 100
    gui.view_shot("cut from above")
    hands.choose("cut", "whole")
    gui.equal(hands.said("where text"), "", "whole again")
    hands.close()
    gui.equal(scene(), nodes, "nodes in the scene")
    yield


def kinds(gui, hands):
    hands.run("Closetbench_Look")
    fronts = [o for o in hands.ours("ClosetPart") if o.Role in ("front", "door")]
    gui.check(fronts, "there are fronts")
    hands.tick("show fronts", False)
    hands.tick("show carcass", False)
    gui.check(not any(o.ViewObject.Visibility for o in fronts), "the fronts are hidden")
    hands.tick("labels")
    yield 100
    gui.shot("hidden and named")
    hands.push("everything")
    gui.check(all(o.ViewObject.Visibility for o in fronts), "the fronts are back")
    yield 100
    gui.check("left out" in hands.said("left out"), hands.said("left out"))
    gui.shot("named")
    hands.panel.apart.put(1.0)
    FreeCADGui.ActiveDocument.ActiveView.fitAll()
    yield 800
    gui.shot("named apart")
    hands.close()
    yield


def follows(gui, hands):
    """The closet changes under the open panel; undo too."""
    nodes = scene()
    hands.run("Closetbench_Look")
    hands.panel.apart.put(1.0)
    bay = hands.ours("Bay")[-1]
    hands.doc.openTransaction("Shelves")
    bay.FixedShelves = bay.FixedShelves + 1
    hands.doc.recompute()
    hands.doc.commitTransaction()
    yield 200
    gui.equal(
        len(hands.panel.stage.parts),
        len(hands.ours("ClosetPart")) + len(hands.ours("Bar")) + len(hands.ours("ExistingPiece")),
        "parts on the stage")
    FreeCADGui.runCommand("Std_Undo")
    yield 300
    gui.equal(hands.panel, None, "undo closes the panel")
    gui.equal(scene(), nodes, "nodes in the scene")


def pictures(gui, hands):
    hands.doc.recompute()
    before = hands.state()
    hands.click("Save pictures")
    folder = gui.folder / "pictures"
    hands.type("folder", str(folder))
    gui.check("front.png" in hands.said("files"), hands.said("files"))
    gui.check(not hands.widget("sheets").isEnabled(), "no sheets before they are planned")
    gui.shot("pictures")
    hands.ok()
    yield 300
    gui.equal(hands.panel, None, "panel after OK")
    names = sorted(p.name.rpartition("-")[2] for p in folder.iterdir())
    gui.equal(names, ["exploded.png", "front.png", "plan.png", "view.png"], "pictures")
    hands.unchanged(before, "saving pictures")
    hands.run("Closetbench_Pictures")
    for kind in ("front", "plan", "view", "exploded"):
        hands.tick(kind, False)
    hands.expect_message("tick one", hands.ok)
    hands.cancel()
    yield
