"""What a user waits for in FreeCAD's windows; started by bench_gui.py."""

import statistics
import sys
import time

import FreeCAD
import FreeCADGui

from tests.gui.hands import Hands

REPEATS = 9
CARCASS = """
[[carcass]]
name = "{}"
material = "ply18"
width = 700
back = {{ kind = "panel" }}
bay = [{{ fixed = 5 }}, {{ fixed = 3, adjustable = 1 }}]
"""
CLOSET = "[job]\nname = 'Bench'\nunit = 'mm'\n[size]\nwidth = 7200\ndepth = 600\nheight = 2400\n"


def median(run):
    times = []
    for i in range(REPEATS):
        start = time.perf_counter()
        run(i)
        times.append(1000 * (time.perf_counter() - start))
    return statistics.median(times)


def drawn():
    """Whatever waits to be painted is painted."""
    FreeCADGui.updateGui()


def closet_of(carcasses):
    from closetbench.job import parse_job
    from closetbench.model.make import closet_from_design

    text = CLOSET + "".join(CARCASS.format(f"Case {i}") for i in range(carcasses))
    job = parse_job(text, "bench", None)
    doc = FreeCAD.newDocument("Bench")
    doc.UndoMode = 1
    closet_from_design(doc, job.design)
    doc.recompute()
    drawn()
    return doc


def steps(gui):
    gui.record("version", ".".join(FreeCAD.Version()[:3]))
    gui.record("start", 1000 * (time.time() - gui.arguments["began"]))
    gui.record("import", register(gui))
    hands = Hands(gui)
    yield 500
    preview(gui, hands)
    yield 300
    looking_ahead(gui, hands)
    yield 300
    opening(gui)
    yield 300


def register(gui):
    """Executing Init.py and InitGui.py with nothing of the add-on loaded yet."""
    sources = [
        compile((gui.root / name).read_text(encoding="utf-8"), name, "exec")
        for name in ("Init.py", "InitGui.py")
    ]
    gui_names = {"FreeCADGui": FreeCADGui, "Workbench": FreeCADGui.Workbench}

    def run(_):
        for name in [n for n in sys.modules if n.split(".")[0] == "closetbench"]:
            del sys.modules[name]
        for source in sources:
            exec(source, dict(gui_names))

    before = {n: m for n, m in sys.modules.items() if n.split(".")[0] == "closetbench"}
    FreeCADGui.removeWorkbench("ClosetbenchWorkbench")

    def once(i):
        if i:
            FreeCADGui.removeWorkbench("ClosetbenchWorkbench")
        run(i)

    found = median(once)
    for name in [n for n in sys.modules if n.split(".")[0] == "closetbench"]:
        del sys.modules[name]
    sys.modules.update(before)
    return found


def looking_ahead(gui, hands):
    """A digit typed into a reading, until residuals and annotations show what it makes."""
    hands.run("Closetbench_BoxRoom")
    doc = FreeCAD.ActiveDocument
    (survey,) = hands.ours("Survey")
    hands.open(survey)
    panel, line = hands.panel, hands.widget("survey.width_front_low")

    def type_digit(i):
        line.setText(str(1925 + i))
        panel._typing(next(f for f in panel.fields if f.widget is line))
        panel._look_ahead()
        drawn()

    gui.record("ahead", median(type_digit))
    hands.cancel()
    FreeCAD.closeDocument(doc.Name)


def preview(gui, hands):
    doc = closet_of(3)
    parts = [o for o in doc.Objects if hasattr(o, "Fingerprint")]
    gui.record("parts", len(parts))
    (carcass,) = [o for o in doc.Objects if o.Label == "Case 1"]
    before = {o.Name: o.Fingerprint for o in parts}
    hands.open(carcass)
    line = hands.widget("height")
    spent = {}

    def type_height(i):
        line.setText(str(2300 - i))
        hands.panel.fields[[f.name for f in hands.panel.fields].index("height")].commit()
        hands.panel.preview()

    def and_draw(i):
        type_height(20 + i)
        drawn()

    spent["worked out"] = median(type_height)
    spent["drawn"] = median(and_draw)
    gui.record("changed", sum(o.Fingerprint != before[o.Name] for o in parts))
    hands.cancel()
    bare = FreeCAD.newDocument("Bare")
    boxes = [bare.addObject("Part::Box", "Box") for _ in parts]
    shapes = [o.Shape.copy() for o in parts]
    features = [bare.addObject("Part::Feature", "Feature") for _ in parts]
    bare.recompute()

    def grow(i):
        for box in boxes:
            box.Length = 100 + i
        bare.recompute()

    def put(i):
        for feature, shape in zip(features, shapes, strict=True):
            feature.Shape = shape
        bare.recompute()

    spent["bare boxes"] = median(grow)
    spent["bare boxes drawn"] = median(lambda i: (grow(50 + i), drawn()))
    gui.record("preview", spent)
    FreeCAD.closeDocument(bare.Name)
    FreeCAD.closeDocument(doc.Name)


def opening(gui):
    doc = closet_of(10)
    parts = [o for o in doc.Objects if hasattr(o, "Fingerprint")]
    extra = FreeCAD.newDocument("BareFile")
    for part in parts:
        extra.addObject("Part::Feature", part.Name).Shape = part.Shape.copy()
    extra.recompute()
    spent = {}
    for document, key in ((doc, "opened"), (extra, "bare file")):
        path = str(gui.folder / f"{key}.FCStd")
        document.saveAs(path)
        FreeCAD.closeDocument(document.Name)
        times = []
        for _ in range(REPEATS):
            start = time.perf_counter()
            again = FreeCAD.openDocument(path)
            drawn()
            times.append(1000 * (time.perf_counter() - start))
            FreeCAD.closeDocument(again.Name)
        spent[key] = statistics.median(times)
    gui.record("file parts", len(parts))
    gui.record("opening", spent)


