"""Parts as STEP."""

from __future__ import annotations

import re

import FreeCAD
import Part
import pytest

from closetbench.core.closet import ClosetDesign
from closetbench.core.errors import DocumentError
from closetbench.core.specs import BaySpec, CarcassSpec
from closetbench.model.base import ours
from closetbench.model.make import closet_from_design, make_closet
from closetbench.model.step import _PREFERENCES, bodies_in, write_step

pytestmark = pytest.mark.freecad


@pytest.fixture
def closet(doc):
    spec = CarcassSpec("Case", "ply18", width=800.0, bays=(BaySpec(fixed=2),))
    return closet_from_design(
        doc, ClosetDesign("Small", size=(1000.0, 500.0, 1500.0), components=(spec,)))


def test_solids_come_back_with_their_names(doc, closet, tmp_path):
    parts = list(ours(doc, "ClosetPart"))
    assert bodies_in([closet]) == bodies_in([*closet.Group, *parts])
    path = write_step(tmp_path / "small.step", [closet])
    shape = Part.Shape()
    shape.read(str(path))
    assert len(shape.Solids) == len(parts)
    assert shape.Volume == pytest.approx(sum(p.Shape.Volume for p in parts), rel=1e-6)
    text = path.read_text(encoding="utf-8", errors="replace")
    # ISO 10303-21: names are the first attribute of a PRODUCT
    names = set(re.findall(r"PRODUCT\('([^']*)'", text))
    assert {p.Label for p in parts} <= names
    assert [p.name for p in tmp_path.iterdir()] == ["small.step"]


def test_selected_parts_alone(doc, closet, tmp_path):
    group = FreeCAD.ParamGet(_PREFERENCES)
    group.SetBool("ExportKeepPlacement", False)
    group.RemBool("ExportHiddenObject")
    side = next(p for p in ours(doc, "ClosetPart") if p.Role == "side")
    shape = Part.Shape()
    shape.read(str(write_step(tmp_path / "side.stp", [side, side])))
    box, own = shape.BoundBox, side.Shape.BoundBox
    assert (box.XMin, box.ZMax) == pytest.approx((own.XMin, own.ZMax))
    assert not group.GetBool("ExportKeepPlacement", True)
    assert group.GetBool("ExportHiddenObject", True)
    assert not group.GetBool("ExportHiddenObject", False)


def test_whole_or_not_at_all(doc, closet, tmp_path):
    (tmp_path / "old.step").write_text("old", encoding="utf-8")

    class Half:
        @staticmethod
        def export(objects, path):
            with open(path, "w", encoding="utf-8") as stream:
                stream.write("ISO-10303-21;\nHEADER;")

    with pytest.raises(DocumentError, match="only part"):
        write_step(tmp_path / "old.step", [closet], Half)
    with pytest.raises(DocumentError, match="cannot be written"):
        write_step(tmp_path / "none" / "old.step", [closet])
    with pytest.raises(DocumentError, match=r"end in \.step"):
        write_step(tmp_path / "old.txt", [closet])
    with pytest.raises(DocumentError, match="nothing to write"):
        write_step(tmp_path / "old.step", [make_closet(doc)])
    assert [(p.name, p.read_text(encoding="utf-8")) for p in tmp_path.iterdir()] == [
        ("old.step", "old")]
