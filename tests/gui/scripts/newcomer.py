"""From an empty profile to DXF and CSV of a closet of one's own, by mouse and keyboard alone."""

import time

import FreeCAD

from tests.gui.mouse import Mouse


def steps(gui):
    began = time.perf_counter()
    hand = Mouse(gui)

    def line(step):
        return hand.find("QToolButton", f"guide {step}")

    # 1: the workbench
    boxes = [c for c in gui.window.findChildren(gui.QtWidgets.QComboBox)
             if c.findText("Closetbench") >= 0 and c.isVisible()]
    if not gui.check(boxes, "the workbench can be chosen"):
        return
    hand.choose(boxes[0], "Closetbench", "Workbench")
    yield 800
    if not gui.check(line("room") is not None, "the steps are on screen"):
        return
    gui.shot("1-steps")
    # 2: the room
    hand.press(line("room"), what="Room")
    yield 500
    hand.type("name", "Landing closet")
    hand.type("width", "1840")
    hand.type("depth", "590")
    hand.type("height", "2350")
    gui.shot("2-room")
    hand.ok()
    yield 800
    # 3: two carcasses
    hand.press(line("carcass"), what="Carcasses")
    yield 600
    hand.type("width", "1000")
    hand.pick("material", "veneer-core plywood 18 mm")
    hand.push("add bay")
    hand.up("bays.0.fixed", 3)
    hand.up("bays.1.fixed", 1)
    yield 900
    gui.shot("3-carcass")
    hand.ok()
    yield 800
    hand.press(line("carcass"), what="Carcasses")
    yield 600
    hand.up("bays.0.fixed", 1)
    yield 900
    hand.ok()
    yield 800
    # 4: what stands in them
    hand.press(line("components"), what="Components")
    yield 300
    gui.shot("4-components")
    hand.entry("Hanging rod…")
    yield 600
    hand.pick("spot.carcass", "B")
    yield 400
    hand.ok()
    yield 800
    hand.press(line("components"), what="Components")
    yield 300
    hand.entry("Drawers…")
    yield 600
    hand.up("spot.bay", 1)
    hand.up("count", 1)
    yield 900
    gui.shot("5-drawers")
    hand.ok()
    yield 800
    # 5: the checks
    hand.press(line("checks"), what="Checks")
    yield 900
    gui.shot("6-checks")
    hand.close()
    yield 500
    # 6: the sheets
    hand.press(line("cut layout"), what="Cut layout")
    yield 600
    hand.push("plan")
    for _ in range(120):
        yield 500
        button = hand.find("QAbstractButton", "plan")
        if button is not None and button.isEnabled():
            break
    yield 800
    gui.shot("7-layout")
    hand.ok()
    yield 900
    # 7: the bill and the drawings
    hand.press(line("bill and papers"), what="Bill and papers")
    yield 900
    csv, folder = gui.folder / "landing.csv", gui.folder / "drawings"
    hand.type("file", str(csv))
    gui.shot("8-bill")
    hand.ok()
    yield 900
    hand.press(line("bill and papers"), what="Bill and papers")
    yield 300
    hand.entry("Export DXF…")
    yield 800
    hand.type("folder", str(folder))
    gui.shot("9-dxf")
    hand.ok()
    yield 1500
    took = time.perf_counter() - began
    gui.shot("10-done")
    gui.check(csv.is_file() and "Linen" not in csv.read_text("utf-8-sig"), "the bill is there")
    found = sorted(p.name for p in folder.rglob("*.dxf")) if folder.exists() else []
    gui.check(found, f"drawings: {found}")
    doc = FreeCAD.ActiveDocument
    gui.check(doc is not None and all(o.isValid() for o in doc.Objects), "all can be built")
    from closetbench.core.progress import StepKey, StepState

    dock = hand.find("QDockWidget", "ClosetbenchGuide")
    gui.equal(dock.lines[StepKey.PAPERS].step.state, StepState.DONE, "the steps say it is done")
    gui.record("steps", len(hand.did))
    gui.record("did", hand.did)
    gui.record("seconds", round(took, 1))
    gui.record("csv", csv.read_text("utf-8-sig") if csv.is_file() else "")
    gui.record("dxf", found)
