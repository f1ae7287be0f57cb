"""Material cards with windows there: colours stay as they were, and no file is changed by
looking at it."""

from __future__ import annotations

import FreeCAD
import FreeCADGui

from tests.gui.hands import Hands

RED = (0.8, 0.1, 0.1)
WHITE = (0.96, 0.96, 0.94)


def steps(gui):
    hands = Hands(gui)
    gui.record("registered", registered())
    hands.small_closet()
    path = str(gui.folder / "closet.FCStd")
    parts = [o for o in hands.doc.Objects if hasattr(o, "FullName") and hasattr(o, "Bands")]
    gui.check(len(parts) > 5, "parts")
    gui.record("cards", sorted({card(o) for o in parts}))
    gui.record("boards", sorted({o.Material for o in parts}))
    yield 300
    gui.shot("made")
    side = next(o for o in parts if o.Role == "side").Name
    colours = looks(hands.doc)
    hands.doc.saveAs(path)
    FreeCAD.closeDocument(hands.doc.Name)

    doc = FreeCAD.openDocument(path)
    yield 500
    for name, seen in looks(doc).items():
        gui.check(same(seen, colours[name]), f"colours of {name}: {seen}, {colours[name]}")
    gui.check(not FreeCADGui.getDocument(doc.Name).Modified, "opening it changes nothing")
    parts = [doc.getObject(name) for name in colours]
    hands.doc.getObject(side).ViewObject.ShapeColor = RED
    yield 300
    colours = looks(hands.doc)
    gui.check(alike(colours[side][0], RED), "the user's colour")
    names = {o.Name: card(o) for o in parts}
    hands.doc.saveAs(path)
    FreeCAD.closeDocument(hands.doc.Name)

    doc = FreeCAD.openDocument(path)
    yield 500
    gui.equal({name: card(doc.getObject(name)) for name in names}, names, "cards after opening")
    for name, seen in looks(doc).items():
        if name == side:  # its bands and grooves are coloured anew, the board keeps its colour
            gui.check(any(alike(one, RED) for one in seen), f"the user's colour: {seen}")
        else:
            gui.check(same(seen, colours[name]), f"colours of {name}: {seen}, {colours[name]}")
    gui.shot("opened")

    # another board: its card and its colour, taken back by undo, done again by redo
    carcass = next(o for o in doc.Objects if o.Name.startswith("Carcass"))
    before = looks(doc)
    doc.openTransaction("Board")
    carcass.Material = "melamine_3_4"
    doc.recompute()
    doc.commitTransaction()
    yield 300
    white = looks(doc)
    boards = {n: doc.getObject(n).Material for n in white}
    gui.check("melamine_3_4" in boards.values(), f"boards: {boards}")
    for name, board in boards.items():
        if board == "melamine_3_4" and name != side:
            gui.check(any(alike(one, WHITE) for one in white[name]), f"{name}: {white[name]}")
        if hasattr(doc.getObject(name), "ShapeMaterial"):
            gui.equal(card(doc.getObject(name)), board, f"card of {name}")
    gui.shot("white")
    doc.undo()
    yield 300
    after = looks(doc)
    for name, seen in before.items():
        if name != side:
            gui.check(same(after[name], seen), f"{name} undone: {after[name]} not {seen}")
    doc.redo()
    yield 300
    for name, seen in looks(doc).items():
        if name != side:
            gui.check(same(seen, white[name]), f"{name} redone: {seen} not {white[name]}")
    yield


def card(obj) -> str:
    return obj.ShapeMaterial.Name if hasattr(obj, "ShapeMaterial") else ""


def looks(doc) -> dict:
    """The colours of every part's faces."""
    return {
        o.Name: [tuple(round(part, 2) for part in colour[:3])
                 for colour in o.ViewObject.DiffuseColor]
        for o in doc.Objects if hasattr(o, "Bands") and hasattr(o, "FullName")
    }


def same(one, other) -> bool:
    return len(set(one)) == len(set(other)) and all(map(alike, one, other))


def alike(one, other) -> bool:
    return all(abs(a - b) < 0.011 for a, b in zip(one, other, strict=True))


def registered() -> dict:
    """What FreeCAD's parameters hold of our library."""
    group = FreeCAD.ParamGet(
        "User parameter:BaseApp/Preferences/Mod/Material/Resources/Modules/Closetbench")
    return {name: str(value) for _, name, value in group.GetContents() or ()}
