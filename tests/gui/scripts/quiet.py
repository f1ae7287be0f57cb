"""Every panel of ours is opened and left again; the test looks for what was said meanwhile."""

from __future__ import annotations

import io
import unittest

import FreeCAD
import FreeCADGui

from tests.gui.hands import Hands


def steps(gui):
    from closetbench.gui import workbench

    hands = Hands(gui)
    hands.run("Closetbench_BoxRoom")
    yield 300
    names = [n for group in workbench.toolbars().values() for n in group]
    names += [f"Closetbench_{k}" for k in (
        "Drawers", "Doors", "Rods", "ShoeShelves", "Existing", "FaceFrame", "Bench",
        "CornerShelves", "OverShelf", "Fillers")]
    opened = []
    for name in names:
        if name in gui.arguments["without_panels"]:
            continue
        hands.gui.later(900, lambda: answer(gui))
        hands.run(name)
        yield 100
        if hands.panel is not None:
            opened.append(name)
            hands.panel.reject()
        yield 100
    seen = set()
    for obj in list(hands.doc.Objects):
        proxy = getattr(obj.ViewObject, "Proxy", None)
        kind = type(obj.Proxy).__name__
        if proxy is None or kind in seen or not hasattr(proxy, "doubleClicked"):
            continue
        seen.add(kind)
        hands.open(obj)
        if hands.panel is not None:
            opened.append(kind)
            hands.panel.reject()
        yield 100
    gui.record("opened", opened)
    FreeCADGui.activateWorkbench("PartWorkbench")
    yield 300
    FreeCADGui.activateWorkbench("ClosetbenchWorkbench")
    yield 300

    # the tests that FreeCAD's workbench Test lists, with its windows there
    name = "closetbench.selftest"
    gui.check(name in FreeCAD.__unit_test__, "our tests are in FreeCAD's list")
    suite = unittest.defaultTestLoader.loadTestsFromName(name)
    said = io.StringIO()
    result = unittest.TextTestRunner(stream=said).run(suite)
    gui.check(result.wasSuccessful(), said.getvalue())
    gui.equal(result.testsRun, 4, "tests run")


def answer(gui):
    """A message that a command needs something first is read and closed."""
    box = gui.QtWidgets.QApplication.activeModalWidget()
    if box is not None:
        box.close()
