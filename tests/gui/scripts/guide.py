"""The panel of the steps: by the mouse, live, closed and remembered."""

import FreeCAD
import FreeCADGui

from tests.gui.hands import WORKBENCH, Hands


def steps(gui):
    hands = Hands(gui)
    from closetbench.core.progress import StepKey, StepState

    def dock():
        return gui.find(gui.QtWidgets.QDockWidget, "ClosetbenchGuide")

    def state(key):
        return dock().lines[key].step.state

    if gui.arguments.get("dark"):
        hands.run("Closetbench_BoxRoom")
        yield 1500
        from closetbench.gui import palette

        gui.check(palette.is_dark(dock().head), "the theme is dark")
        gui.shot("dark")
        return
    if gui.arguments.get("again"):
        gui.check(dock() is None or not dock().isVisible(), "it stays closed in a new session")
        hands.click("Steps of the work")
        yield 300
        gui.check(dock().isVisible(), "the button brings it back")
        return

    gui.check(dock() is not None and dock().isVisible(), "the panel is there to begin with")
    gui.equal(state(StepKey.ROOM), StepState.NEXT, "the room comes first")
    gui.equal(state(StepKey.CARCASS), StepState.WAITING, "carcasses wait for it")
    gui.check("Examples" in dock().examples.text(), "examples are offered")
    gui.shot("empty")
    hands.click_on(dock().lines[StepKey.ROOM])
    yield 400
    if not gui.check(hands.panel is not None, "a click starts a closet"):
        return
    hands.expect_message("Another task", lambda: hands.click_on(dock().lines[StepKey.CARCASS]))
    hands.ok()
    yield 500
    gui.equal(state(StepKey.ROOM), StepState.DONE, "the room is done")
    gui.equal(state(StepKey.CARCASS), StepState.NEXT, "a carcass is next")
    hands.click_on(dock().lines[StepKey.CARCASS])
    yield 400
    hands.ok()
    yield 600
    gui.equal(state(StepKey.COMPONENTS), StepState.NEXT, "components are next")
    hands.click_on(dock().lines[StepKey.COMPONENTS])
    yield 300
    menu = gui.QtWidgets.QApplication.activePopupWidget()
    if gui.check(menu is not None, "what to put in is asked"):
        texts = [a.text() for a in menu.actions()]
        gui.check(len(texts) == 10 and "Hanging rod…" in texts, f"all kinds: {texts}")
        gui.shot("menu")
        menu.close()
    hands.run("Closetbench_Rods")
    hands.ok()
    yield 600
    gui.equal(state(StepKey.LAYOUT), StepState.NEXT, "the layout is next")
    gui.check(state(StepKey.CHECKS) in (StepState.LOOK, StepState.WRONG), "there is to look at")
    # what is wrong is counted, and comes by itself
    hands.click_on(dock().lines[StepKey.LAYOUT])
    yield 400
    hands.push("plan")
    yield 1500
    hands.ok()
    yield 600
    gui.equal(state(StepKey.LAYOUT), StepState.DONE, "the sheets are planned")
    gui.equal(state(StepKey.PAPERS), StepState.NEXT, "the bill is next")
    hands.open(hands.ours("Carcass")[0])
    hands.count("bays.0.fixed", 3)
    hands.ok()
    yield 600
    line = dock().lines[StepKey.LAYOUT]
    gui.equal((line.step.state, line.step.count), (StepState.WRONG, 1), "the plan is out of date")
    gui.shot("wrong")
    FreeCADGui.runCommand("Std_Undo")
    hands.doc.recompute()
    yield 600
    gui.equal(state(StepKey.LAYOUT), StepState.DONE, "undone")
    # a change that nothing is recomputed for is seen too
    (closet,) = hands.ours("Closet")
    closet.Label = "Linen"
    yield 600
    gui.check("Linen" in dock().head.text(), dock().head.text())
    # another workbench has no use for it, and ours has it again
    FreeCADGui.activateWorkbench("PartWorkbench")
    yield 200
    gui.check(not dock().isVisible(), "hidden beside another workbench")
    FreeCADGui.activateWorkbench(WORKBENCH)
    yield 300
    gui.check(dock().isVisible(), "and back")
    FreeCAD.closeDocument(hands.doc.Name)
    yield 600
    gui.equal(state(StepKey.ROOM), StepState.NEXT, "no document: the room again")
    hands.run("Closetbench_BoxRoom")
    yield 1500
    gui.equal(state(StepKey.CARCASS), StepState.DONE, "the example is told of")
    gui.shot("example")
    hands.click("Steps of the work")
    yield 200
    gui.check(not dock().isVisible(), "the button closes it")
