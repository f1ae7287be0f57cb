"""Files that outlive the add-on, names that never change, and what importing costs."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
import xml.etree.ElementTree as ET
import zipfile
from pathlib import Path

import FreeCAD
import pytest

from closetbench import host
from closetbench.model.base import SCHEMA, TAG, class_of
from closetbench.model.bill import Bill
from closetbench.model.bill_sheet import BillSheet
from closetbench.model.bridge import carcasses_in, closet_of, design_of
from closetbench.model.carcass import Bay, Carcass
from closetbench.model.closet import Closet
from closetbench.model.contents import CONTENTS
from closetbench.model.layout import CutLayout
from closetbench.model.loose import Bar, ExistingPiece
from closetbench.model.make import closet_from_design, make_bill, make_layout
from closetbench.model.offcuts import Offcuts
from closetbench.model.panel import GroovedPanel
from closetbench.model.part import ClosetPart
from closetbench.model.survey import Survey

pytestmark = pytest.mark.freecad

CLASSES = (
    Bar, Bay, Bill, BillSheet, Carcass, Closet, ClosetPart, CutLayout, ExistingPiece, GroovedPanel,
    Offcuts, Survey,
    *CONTENTS.values(),
)

WITHOUT = """
import json, sys
sys.path.append(sys.argv[1])
import FreeCAD
try:
    import closetbench
    found = True
except ImportError:
    found = False
doc = FreeCAD.openDocument(sys.argv[2])
doc.recompute()
state = {
    o.Name: [o.Proxy is None, round(o.Shape.Volume, 3) if hasattr(o, "Shape") else None]
    for o in doc.Objects
}
doc.saveAs(sys.argv[3])
print(json.dumps([found, state]))
sys.stdout.flush()
import os
os._exit(0)  # FreeCAD's own end may crash once the modules of a file are gone
"""


def plain_python(script: str, *arguments: object) -> str:
    """Run a script where the package cannot be imported; what it printed last."""
    env = {k: v for k, v in os.environ.items() if k not in ("PYTHONPATH", "PYTHONSTARTUP")}
    done = subprocess.run(
        [sys.executable, "-c", script, *map(str, arguments)], capture_output=True, text=True,
        cwd="/", env=env, timeout=120, check=False,
    )
    assert done.returncode == 0, done.stderr
    return done.stdout.strip().splitlines()[-1]


_DIGITS = re.compile(r"-?\d+\.\d+(?:e-?\d+)?")


def kept_values(path: Path) -> dict[tuple[str, str], str]:
    """What a file holds of every property but proxies, which the add-on gives back, and
    shapes, which lie in files of their own."""
    with zipfile.ZipFile(path) as archive:
        data = ET.fromstring(archive.read("Document.xml")).find("ObjectData")
    return {
        (obj.get("name"), prop.get("name")): _DIGITS.sub(
            lambda found: f"{float(found[0]):.9f}",
            ET.canonicalize(ET.tostring(prop, encoding="unicode"), strip_text=True))
        for obj in data.findall("Object") for prop in obj.iter("Property")
        if prop.get("name") not in ("Proxy", "Shape")
    }


def test_a_file_saved_without_the_add_on_can_be_edited_again(doc, two_carcasses, tmp_path):
    closet = closet_from_design(doc, two_carcasses)
    layout = make_layout(doc, closet)
    layout.Seconds = layout.Tidy = 0.01
    make_bill(doc, closet, layout)
    layout.Update = True
    doc.recompute()
    before = {o.Name: round(o.Shape.Volume, 3) for o in doc.Objects if hasattr(o, "Shape")}
    made, without = tmp_path / "made.FCStd", tmp_path / "without.FCStd"
    doc.saveCopy(str(made))

    found, state = json.loads(plain_python(WITHOUT, host.find_freecad(), made, without))
    assert not found
    assert all(lost for lost, _ in state.values())
    assert {n: v for n, (_, v) in state.items() if v is not None} == before
    assert kept_values(without) == kept_values(made)

    opened = FreeCAD.openDocument(str(without))
    try:
        assert [o.Name for o in opened.Objects if o.Proxy is None] == []
        again = opened.getObject(closet.Name)
        assert design_of(again) == two_carcasses
        opened.recompute()
        assert {
            o.Name: round(o.Shape.Volume, 3) for o in opened.Objects if hasattr(o, "Shape")
        } == before
        opened.UndoMode = 1
        opened.openTransaction("Shelves")
        carcasses_in(again)[0].BayList[0].FixedShelves = 5
        opened.recompute()
        opened.commitTransaction()
        parts = {o.FullName for o in opened.Objects if class_of(o) == "ClosetPart"}
        assert parts == {p.full_name for p in closet_of(again).parts}
        assert "Shelves: bay 1 shelf 5" in parts
        opened.undo()
        assert len([o for o in opened.Objects if class_of(o) == "ClosetPart"]) == len(parts) - 2
    finally:
        FreeCAD.closeDocument(opened.Name)


def test_a_file_opens_with_live_proxies(doc, two_carcasses, reopen):
    closet = closet_from_design(doc, two_carcasses)
    make_layout(doc, closet)
    doc.recompute()
    opened = reopen(doc)
    for obj in opened.Objects:
        assert type(obj.Proxy).__name__ == class_of(obj)
        assert "Touched" not in obj.State, obj.Name
    assert design_of(opened.getObject(closet.Name)) == two_carcasses


def test_a_class_of_a_later_version_is_left_alone(doc, two_carcasses):
    closet = closet_from_design(doc, two_carcasses)
    part = next(o for o in doc.Objects if class_of(o) == "ClosetPart")
    setattr(part, TAG, "closetbench.model.part.Hologram")
    part.Proxy = None
    volume = part.Shape.Volume
    doc.recompute()
    assert part.Proxy is None
    assert part.Shape.Volume == volume
    assert closet.Name in [o.Name for o in doc.Objects]


def test_properties_that_an_older_version_lacked_are_added(doc, two_carcasses, reopen):
    closet = closet_from_design(doc, two_carcasses)
    carcass = carcasses_in(closet)[0]
    carcass.removeProperty("CleatHeight")
    carcass.removeProperty("PinPlay")
    opened = reopen(doc)
    carcass = opened.getObject(carcass.Name)
    spec = design_of(opened.getObject(closet.Name)).components[0]
    assert (carcass.CleatHeight.Value, carcass.PinPlay.Value) == (
        spec.back.cleat_height, spec.drill.play
    ) == (90.0, 3.0)
    opened.recompute()
    assert "Up-to-date" in carcass.State


def test_nothing_is_pickled_into_the_file(doc, two_carcasses):
    closet_from_design(doc, two_carcasses)
    for obj in doc.Objects:
        for method in ("__getstate__", "dumps"):
            assert getattr(obj.Proxy, method)() is None
        assert getattr(obj, SCHEMA) == 1


def test_class_paths_and_property_names_are_frozen():
    """Add to the list, never take from it: users' files and expressions hold these names."""
    now = {
        f"{c.__module__}.{c.__name__}": sorted(p.name for p in c.properties) for c in CLASSES
    }
    frozen = json.loads(Path(__file__).with_name("frozen.json").read_text(encoding="utf-8"))
    assert now.keys() >= frozen.keys()
    for path, names in frozen.items():
        assert set(now[path]) >= set(names), path


def test_every_property_has_a_group_and_a_text():
    for kind in CLASSES:
        for prop in kind.properties:
            assert len(prop.text) > 8, prop
            assert prop.text[0].isupper() or prop.text[0].isdigit(), prop
            assert prop.group, prop


def test_the_observer_imports_nothing_heavy():
    root = Path(__file__).resolve().parents[2]
    script = (
        "import sys; sys.path[:0] = sys.argv[1:]; import FreeCAD; before = set(sys.modules);"
        "from closetbench.model import card_library, watch; watch.install(); watch.install();"
        "card_library.register();"
        "new = set(sys.modules) - before;"
        "print(sorted(m for m in new if m.startswith(('closetbench', 'Part', 'numpy'))))"
    )
    loaded = plain_python(script, root, host.find_freecad())
    assert loaded == str([
        "closetbench", "closetbench.model", "closetbench.model.card_library",
        "closetbench.model.watch",
    ])
