"""Inches, single panels, and documents that were made without windows."""

import FreeCAD
import FreeCADGui

from tests.gui.hands import Hands

BUILDING_US = 5


def steps(gui):
    FreeCAD.Units.setSchema(BUILDING_US)
    hands = Hands(gui)
    yield from porch(gui, hands)
    yield from panel(gui, hands)
    yield from headless(gui, hands)
    FreeCAD.Units.setSchema(0)


def porch(gui, hands):
    hands.run("Closetbench_Porch")
    if hasattr(hands.doc, "UnitSystem"):
        # a document has a unit system of its own, which FreeCAD switches to
        FreeCAD.Units.setSchema(BUILDING_US)
    (survey,) = hands.ours("Survey")
    before = hands.state()
    hands.open(survey)
    shown = hands.text("survey.depth_left")
    gui.equal(shown, "2' 0 1/4\"", "a reading in feet and inches")
    hands.panel.reveal(hands.widget("survey.depth_left"))
    gui.shot("survey")
    hands.type("survey.depth_left", "24 5/16")
    gui.close(survey.DepthLeft.Value, 24.3125 * 25.4, "a bare number is in inches")
    hands.cancel()
    hands.unchanged(before, "Cancel")
    (carcass,) = hands.ours("Carcass")
    hands.open(carcass)
    gui.equal(hands.text("depth"), "1' 10 1/8\"", "depth")
    hands.type("width", "1/2")
    said = hands.error("width")
    gui.check("mm (" in said and '"' in said, f"limits are said in inches too: {said}")
    hands.type("width", "18 mm 3")
    gui.check(hands.error("width"), "nonsense is refused")
    gui.shot("carcass")
    hands.cancel()
    yield


def panel(gui, hands):
    FreeCAD.Units.setSchema(0)
    FreeCAD.closeDocument(hands.doc.Name)
    hands.wait(200)
    hands.click("Grooved panel")
    gui.check(hands.doc is not None, "a document is made for the panel")
    hands.type("name", "Upright")
    hands.choose("material", "veneer-core plywood 18 mm")
    hands.type("length", "6' 1/4")
    gui.equal(hands.text("length"), "1835.15 mm", "length in millimetres")
    hands.type("width", "400")
    hands.count("grooves", 4)
    hands.type("spacing", "400")
    hands.tick("bands front")
    hands.tick("rabbets start")
    hands.type("depth", "15")
    gui.check("at most" in hands.error("depth"), "a groove too deep is refused")
    hands.type("depth", "6")
    hands.type("spacing", "10")
    gui.check("groove" in hands.error("spacing"), "grooves that run into each other")
    hands.type("spacing", "420")
    gui.equal(hands.error("spacing"), "", "the error is gone")
    gui.check("Saw:" in hands.said("summary"), "cut size")
    gui.shot("panel")
    hands.ok()
    (made,) = hands.ours("GroovedPanel")
    gui.equal(made.Label, "Upright", "label")
    gui.close(made.Length.Value, 1835.15, "length")
    gui.check(made.Shape.isValid() and len(made.Shape.Solids) == 1, "one valid solid")
    gui.equal(made.MeasuredFrom, "start", "a field that was not touched")
    made.setExpression("Width", "250 mm + 50 mm")
    hands.doc.recompute()
    before = hands.state()
    hands.open(made)
    gui.check(not hands.widget("width").isEnabled(), "a field that follows a formula is locked")
    gui.check("formula 250" in hands.widget("width").toolTip(), "and says which")
    hands.type("length", "1800")
    hands.ok()
    gui.check(made.ExpressionEngine, "a formula stays where its field was not touched")
    gui.close(made.Width.Value, 300, "width by formula")
    hands.doc.undo()
    yield 200
    gui.equal(hands.state()["labels"], before["labels"], "labels after undo")
    gui.close(made.Length.Value, 1835.15, "length after undo")


def headless(gui, hands):
    """A file that knows nothing of view providers gets them when it is opened."""
    path = gui.folder / "headless.FCStd"
    import subprocess
    import sys
    import textwrap

    code = textwrap.dedent(f"""
        import sys
        sys.path.insert(0, {str(gui.root)!r})
        from pathlib import Path
        from closetbench import host
        host.import_freecad()
        from closetbench.job import read_job
        from closetbench.model.files import write_model
        job = read_job(Path({str(gui.root / "resources/examples/porch-closet.toml")!r}))
        write_model(job.design, job.catalogue(), Path({str(path)!r}), form=job.lengths)
    """)
    python = "/usr/bin/python3" if "reecad" in sys.executable.lower() else sys.executable
    subprocess.run([python, "-c", code], check=True, capture_output=True, timeout=60)
    FreeCAD.openDocument(str(path))
    yield 500
    from closetbench.gui.view_providers import ViewProvider

    for obj in hands.doc.Objects:
        gui.check(isinstance(obj.ViewObject.Proxy, ViewProvider), f"view of {obj.Label}")
    gui.equal(list(hands.tree()), [hands.ours("Closet")[0].Label], "root of the tree")
    colours = {tuple(round(c, 2) for c in o.ViewObject.ShapeColor[:3])
               for o in hands.ours("ClosetPart")}
    gui.check((0.8, 0.8, 0.8) not in colours, f"boards are coloured: {colours}")
    (carcass,) = hands.ours("Carcass")
    gui.check(carcass.ViewObject.isVisible(), "a carcass is not greyed out")
    # FreeCAD's own way into edit mode
    FreeCADGui.ActiveDocument.setEdit(carcass.Name, 0)
    yield 300
    gui.check(hands.panel is not None and hands.panel.obj == carcass, "edit mode opens the panel")
    FreeCADGui.ActiveDocument.resetEdit()
    yield 300
    gui.equal(hands.panel, None, "leaving edit mode closes it")
    gui.check(not FreeCADGui.Control.activeDialog(), "no dialog is left")
    FreeCADGui.activateWorkbench("ClosetbenchWorkbench")
    gui.shot("headless")
