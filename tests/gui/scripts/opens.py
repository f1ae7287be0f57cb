"""What opens: swept space, red where it hits."""

import FreeCADGui

from tests.gui.hands import Hands


def steps(gui):
    hands = Hands(gui)
    hands.run("Closetbench_BoxRoom")
    FreeCADGui.Selection.clearSelection()
    before = hands.state()
    hands.run("Closetbench_Opens")
    panel = hands.panel
    gui.check("freely" in hands.said("verdict"), hands.said("verdict"))
    names = [s.name for s in panel.shown]
    gui.equal(names, ["Boots pull-out: drawer", "Plan chest: drawers"], "what opens")
    gui.shot("free")
    panel.table.selectRow(0)
    gui.equal([s.name for s in panel.shown], names[:1], "one chosen")
    hands.push("all")
    gui.equal(len(panel.shown), 2, "all again")
    hands.close()
    hands.unchanged(before, "looking")
    # an opening that begins further right: its return stands in the chest's way
    (survey,) = hands.ours("Survey")
    hands.open(survey)
    hands.type("survey.opening_width", "1363")
    hands.type("survey.return_left", "186")
    hands.ok()
    hands.run("Closetbench_Opens")
    panel = hands.panel
    gui.check("1 of 2" in hands.said("verdict"), hands.said("verdict"))
    chest = next(s for s in panel.sweeps if s.name == "Plan chest: drawers")
    gui.equal(chest.blockers, ("the left return",), "in the way")
    gui.check(chest.hits and chest.findings, "hits, and what the closet says")
    gui.shot("hits")
    hands.close()
    FreeCADGui.Selection.addSelection(hands.doc.Name, hands.ours("Drawers")[0].Name)
    hands.run("Closetbench_Opens")
    gui.equal([s.name for s in hands.panel.shown], names[:1], "what is selected")
    hands.close()
    yield 100
