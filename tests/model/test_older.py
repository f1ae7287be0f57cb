"""Files of an older version: opened, brought up to date, the same closet as before.

``tests/data`` holds both examples as they were written on FreeCAD 0.20 by the version of
2026-11-25, 12:20 (59f8904), with a cut layout and a bill. Files are added, never replaced.
"""

from __future__ import annotations

import shutil
from pathlib import Path

import FreeCAD
import pytest

from closetbench.model.base import SCHEMA, TAG, class_of
from closetbench.model.bridge import closet_of, design_of
from closetbench.model.layout import plan_of

pytestmark = pytest.mark.freecad

FILES = sorted((Path(__file__).resolve().parents[1] / "data").glob("*.FCStd"))
PARTS = {"box-room": 56, "porch-closet": 46}
SIZES = ("Length", "Width", "Thickness", "CutLength", "CutWidth")
BY_NEW_RULES = {"Frame: left stile"}
"""Parts that later rules make otherwise: a stile to the wall is tapered as the gap is."""


@pytest.fixture(params=FILES, ids=lambda path: path.stem)
def older(request, tmp_path):
    """A copy of an older file, opened."""
    path = tmp_path / request.param.name
    shutil.copy(request.param, path)
    doc = FreeCAD.openDocument(str(path))
    doc.UndoMode = 1
    yield doc
    FreeCAD.closeDocument(doc.Name)


def one(doc, kind):
    (found,) = (o for o in doc.Objects if class_of(o) == kind)
    return found


def parts(doc):
    return {o.FullName: o for o in doc.Objects if class_of(o) == "ClosetPart"}


def sizes(doc):
    return {
        n: [round(getattr(o, s).Value, 6) for s in SIZES] for n, o in parts(doc).items()
        if n not in BY_NEW_RULES
    }


def solids(doc):
    return {
        n: (o.Shape.Volume, *o.Placement.Base)
        for n, o in parts(doc).items() if n not in BY_NEW_RULES
    }


def assert_same_solids(now, before):
    """The same places; volumes but for a groove that stops a little earlier or later."""
    assert set(now) == set(before)
    for name, (volume, *at) in before.items():
        assert now[name][0] == pytest.approx(volume, rel=5e-4), name
        assert now[name][1:] == pytest.approx(tuple(at), abs=1e-3), name


def make_all_anew(doc):
    for obj in doc.Objects:
        obj.touch()
    doc.recompute()


def test_there_are_older_files():
    assert {path.stem for path in FILES} == set(PARTS)
    assert all(path.stat().st_size < 1_000_000 for path in FILES)


def test_it_opens_with_all_that_objects_have_today(older):
    for obj in older.Objects:
        proxy = obj.Proxy
        assert type(proxy).__name__ == class_of(obj)
        assert getattr(obj, TAG) == f"{type(proxy).__module__}.{type(proxy).__name__}"
        assert getattr(obj, SCHEMA) == type(proxy).schema
        assert {p.name for p in proxy.properties} <= set(obj.PropertiesList)
        # some FreeCADs take an object with new properties for changed, and work it out anew
        assert "Invalid" not in obj.State, obj.Label


def test_it_is_the_same_closet_once_all_is_worked_out_anew(older):
    design, before, shapes = design_of(one(older, "Closet")), sizes(older), solids(older)
    names = set(parts(older))
    assert len(names) == PARTS[Path(older.FileName).stem]
    make_all_anew(older)
    assert [o.Label for o in older.Objects if "Invalid" in o.State] == []
    assert design_of(one(older, "Closet")) == design
    assert sizes(older) == before
    assert_same_solids(solids(older), shapes)
    built = closet_of(one(older, "Closet"))
    assert names == set(parts(older)) == {p.full_name for p in (*built.parts, *built.reused)}


def test_its_plan_and_its_bill_can_be_made_anew(older):
    layout, bill = one(older, "CutLayout"), one(older, "Bill")
    assert plan_of(layout) is not None
    assert bill.Lines
    make_all_anew(older)
    layout.Seconds = layout.Tidy = 0.01
    layout.Update = bill.Update = True
    older.recompute()
    older.recompute()
    assert (layout.OutOfDate, bill.OutOfDate) == (False, False)
    assert all(sheet.placements for sheet in plan_of(layout).sheets)


def test_saved_by_this_version_it_opens_again(older, reopen):
    make_all_anew(older)
    before, design = solids(older), design_of(one(older, "Closet"))
    again = reopen(older)
    assert_same_solids(solids(again), before)
    assert design_of(one(again, "Closet")) == design
    for obj in again.Objects:
        assert "Touched" not in obj.State


def test_a_change_in_it_is_one_step(older):
    make_all_anew(older)
    before = sizes(older)
    bay = next(o for o in older.Objects if class_of(o) == "Bay")
    older.openTransaction("Shelves")
    bay.AdjustableShelves += 1
    older.recompute()
    older.commitTransaction()
    assert [o.Label for o in older.Objects if "Invalid" in o.State] == []
    older.undo()
    older.recompute()
    assert sizes(older) == before
