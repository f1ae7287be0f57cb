"""The tree holds exactly the bays and parts that the parameters say, through undo and files."""

from __future__ import annotations

import FreeCAD
import pytest

from closetbench.core.specs import BaySpec, CarcassSpec
from closetbench.model.base import class_of
from closetbench.model.bridge import carcasses_in, closet_of, design_of, survey_for
from closetbench.model.children import claimed, delete_with, parts_of
from closetbench.model.draft import drafting, finish
from closetbench.model.make import closet_from_design, make_bill, make_carcass, make_layout
from closetbench.model.properties import put

pytestmark = pytest.mark.freecad


@pytest.fixture
def closet(doc, two_carcasses):
    doc.openTransaction("Closet")
    made = closet_from_design(doc, two_carcasses)
    doc.commitTransaction()
    return made


def check(closet):
    """Compare the whole tree with what the properties come to in the core."""
    doc = closet.Document
    built = closet_of(closet)
    expected = {p.full_name: p for p in built.parts}
    objects = {o.FullName: o for o in doc.Objects if class_of(o) == "ClosetPart"}
    assert sorted(objects) == sorted(expected)
    for name, part in expected.items():
        obj, box, own = objects[name], objects[name].Shape.BoundBox, part.box()
        assert (box.XMin, box.YMin, box.ZMin, box.XMax, box.YMax, box.ZMax) == pytest.approx(
            (own.x0, own.y0, own.z0, own.x1, own.y1, own.z1), abs=1e-3
        )
        assert obj.Shape.Volume == pytest.approx(part.panel.volume, rel=1e-6)
        assert (obj.Length.Value, obj.Width.Value, obj.Thickness.Value) == (
            part.panel.length, part.panel.width, part.panel.thickness
        )
        assert (obj.CutLength.Value, obj.CutWidth.Value) == (
            part.panel.cut_length, part.panel.cut_width
        )
    bays = [o for o in doc.Objects if class_of(o) == "Bay"]
    carcasses = carcasses_in(closet)
    assert len(bays) == sum(c.BayCount for c in carcasses)
    assert {b.Name for c in carcasses for b in c.BayList} == {b.Name for b in bays}
    held = {o.Name for o in closet.Group}
    assert held >= {o.Name for o in (*bays, *carcasses)}
    assert held.isdisjoint(o.Name for o in objects.values())
    for carcass in carcasses:
        names = [o.PartName for o in parts_of(carcass)]
        component = next(c for c in built.components if c.name == carcass.Label)
        assert names == [p.name for p in component.parts]


def step(doc, name, change):
    """One change by the user: a transaction with a recompute in it."""
    doc.openTransaction(name)
    change()
    doc.recompute()
    doc.commitTransaction()


def names(doc):
    return sorted(o.Name for o in doc.Objects)


def test_a_new_closet_is_what_its_design_says(closet, two_carcasses):
    check(closet)
    assert design_of(closet) == two_carcasses
    assert closet.PartCount == len(closet_of(closet).parts)
    assert not closet.Document.Objects[0].MustExecute
    assert all("Up-to-date" in o.State for o in closet.Document.Objects)


def test_shelves_from_three_to_five_and_back(closet, doc, reopen):
    carcass = carcasses_in(closet)[0]
    bay = carcass.BayList[0]
    before = names(doc)
    undos = doc.UndoCount
    step(doc, "Shelves", lambda: setattr(bay, "FixedShelves", 5))
    assert doc.UndoCount == undos + 1
    check(closet)
    after = names(doc)
    assert len(after) == len(before) + 2

    doc.undo()
    assert (bay.FixedShelves, names(doc)) == (3, before)
    check(closet)
    doc.recompute()
    assert names(doc) == before
    check(closet)

    doc.redo()
    assert (bay.FixedShelves, names(doc)) == (5, after)
    check(closet)
    doc.recompute()
    check(closet)

    again = reopen(doc).getObject(closet.Name)
    check(again)
    bay = carcasses_in(again)[0].BayList[0]
    step(again.Document, "Shelves", lambda: setattr(bay, "FixedShelves", 2))
    check(again)
    again.Document.undo()
    check(again)
    assert names(again.Document) == after


def test_the_property_editors_own_transaction_takes_the_children_along(closet, doc):
    bay = carcasses_in(closet)[0].BayList[0]
    before, undos = names(doc), doc.UndoCount
    # what the property editor does: a transaction of the application, not of the document
    FreeCAD.setActiveTransaction("Edit FixedShelves")
    bay.FixedShelves = 5
    doc.recompute()
    FreeCAD.closeActiveTransaction()
    assert doc.UndoCount == undos + 1
    check(closet)
    doc.undo()
    assert (bay.FixedShelves, names(doc)) == (3, before)
    check(closet)


def test_it_works_where_undo_is_off(two_carcasses):
    doc = FreeCAD.newDocument("Headless", hidden=True)
    try:
        made = closet_from_design(doc, two_carcasses)
        carcasses_in(made)[0].BayCount = 2
        doc.recompute()
        check(made)
        carcasses_in(made)[0].BayCount = 1
        doc.recompute()
        check(made)
    finally:
        FreeCAD.closeDocument(doc.Name)


def test_bays_come_and_go_with_their_number(closet, doc):
    carcass = carcasses_in(closet)[0]
    first = carcass.BayList[0]
    before = names(doc)
    step(doc, "Bays", lambda: setattr(carcass, "BayCount", 3))
    check(closet)
    assert [b.FixedShelves for b in carcass.BayList] == [3, 0, 0]
    assert carcass.BayList[0] is first
    step(doc, "Shelf", lambda: setattr(carcass.BayList[2], "FixedShelves", 2))
    check(closet)
    step(doc, "Bays", lambda: setattr(carcass, "BayCount", 2))
    check(closet)
    for _ in range(3):
        doc.undo()
        check(closet)
    assert names(doc) == before
    for _ in range(3):
        doc.redo()
        check(closet)


def test_a_bay_deleted_by_hand_is_one_bay_less(closet, doc):
    carcass = carcasses_in(closet)[1]
    left, right = carcass.BayList
    step(doc, "Delete", lambda: doc.removeObject(left.Name))
    assert (carcass.BayCount, list(carcass.BayList)) == (1, [right])
    check(closet)
    doc.undo()
    assert carcass.BayCount == 2
    check(closet)
    doc.redo()
    check(closet)


def test_a_part_deleted_by_hand_comes_back(closet, doc):
    part = parts_of(carcasses_in(closet)[0])[0]
    step(doc, "Delete", lambda: doc.removeObject(part.Name))
    check(closet)


def test_a_pasted_copy_of_a_part_goes_again(closet, doc):
    part = parts_of(carcasses_in(closet)[0])[0]
    step(doc, "Copy", lambda: doc.copyObject(part, False))
    assert part.Name in names(doc)
    check(closet)


def test_unchanged_parts_stay_the_same_objects(closet, doc):
    carcass = carcasses_in(closet)[0]
    shelf = next(o for o in parts_of(carcass) if o.PartName == "bay 1 shelf 2")
    shelf.Label = "the good shelf"
    step(doc, "Shelves", lambda: setattr(carcass.BayList[0], "FixedShelves", 5))
    assert shelf in parts_of(carcass)
    assert shelf.Label == "the good shelf"
    marks = {o.Name: o.Shape.hashCode() for o in parts_of(carcasses_in(closet)[1])}
    step(doc, "Shelves", lambda: setattr(carcass.BayList[0], "FixedShelves", 4))
    assert {o.Name: o.Shape.hashCode() for o in parts_of(carcasses_in(closet)[1])} == marks


def test_a_carcass_renamed_renames_its_parts(closet, doc):
    carcass = carcasses_in(closet)[0]
    step(doc, "Name", lambda: setattr(carcass, "Label", "Books"))
    check(closet)
    assert all(o.Label.startswith("Books: ") for o in parts_of(carcass))


def test_deleting_a_carcass_takes_its_children_along(closet, doc):
    first, second = carcasses_in(closet)
    before = names(doc)

    def delete():
        delete_with(first)
        doc.removeObject(first.Name)

    step(doc, "Delete", delete)
    assert second.After is None
    assert second.LeftAt.Value == 0.0
    check(closet)
    doc.undo()
    assert names(doc) == before
    assert second.After is first
    check(closet)
    # without the help of a view provider the next recompute clears up
    step(doc, "Delete", lambda: doc.removeObject(first.Name))
    check(closet)
    doc.undo()
    assert names(doc) == before
    check(closet)


def test_carcasses_stand_side_by_side_in_the_order_of_the_group(closet, doc):
    spec = CarcassSpec("Third", "ply18", width=300.0, height=1000.0)
    step(doc, "Width", lambda: put(carcasses_in(closet)[1], "Width", 650.0))
    step(doc, "Carcass", lambda: make_carcass(doc, closet, spec))
    check(closet)
    first, second, third = carcasses_in(closet)
    assert (second.After, third.After) == (first, second)
    assert third.LeftAt.Value == pytest.approx(900.0 + 650.0)
    step(doc, "Width", lambda: put(first, "Width", 700.0))
    assert third.LeftAt.Value == pytest.approx(700.0 + 650.0)
    check(closet)

    def to_the_front():
        closet.Group = [o for o in closet.Group if o != third] + [third]
        closet.Group = [third] + [o for o in closet.Group if o != third]

    step(doc, "Order", to_the_front)
    assert third.LeftAt.Value == 0.0
    assert first.LeftAt.Value == pytest.approx(300.0)
    check(closet)


def test_expressions_drive_bays(closet, doc):
    sheet = doc.addObject("Spreadsheet::Sheet", "Sizes")
    sheet.set("A1", "4")
    sheet.set("A2", "333 mm")
    carcass = carcasses_in(closet)[1]
    doc.recompute()
    carcass.BayList[1].setExpression("FixedShelves", "Sizes.A1")
    carcass.BayList[0].setExpression("Width", "Sizes.A2")
    doc.recompute()
    check(closet)
    assert carcass.BayList[1].FixedShelves == 4
    assert carcass.BayList[0].Width.Value == pytest.approx(333.0)
    step(doc, "Sheet", lambda: sheet.set("A1", "2"))
    check(closet)
    # a part's size can be used in turn, and is up to date after one recompute
    part = next(o for o in parts_of(carcass) if o.PartName == "bay 2 shelf 1")
    note = doc.addObject("App::FeaturePython", "Note")
    note.addProperty("App::PropertyLength", "Size", "Note", "")
    note.setExpression("Size", f"{part.Name}.Length")
    doc.recompute()
    step(doc, "Sheet", lambda: sheet.set("A2", "433 mm"))
    assert note.Size.Value == pytest.approx(part.Length.Value)
    check(closet)


def test_the_tree_shows_everything_once(closet, doc):
    layout = make_layout(doc, closet)
    bill = make_bill(doc, closet, layout)
    shown = claimed(closet)
    assert shown[0] is survey_for(closet)
    assert {layout, bill} <= set(shown)
    below = [o for o in shown for o in (o, *claimed(o))]
    assert len(below) == len({o.Name for o in below}) == len(doc.Objects) - 1


def test_two_closets_in_one_document_do_not_mix(closet, doc, two_carcasses):
    from dataclasses import replace

    other = replace(
        two_carcasses, name="Other",
        components=tuple(replace(c, name=f"{c.name} 2") for c in two_carcasses.components),
    )
    second = closet_from_design(doc, other)
    assert design_of(second) == other
    assert design_of(closet) == two_carcasses
    before = [o.Name for o in second.Group]
    step(doc, "Bays", lambda: setattr(carcasses_in(closet)[0], "BayCount", 2))
    assert [o.Name for o in second.Group] == before
    assert len([b for c in carcasses_in(closet) for b in c.BayList]) == 4


def test_a_bay_without_an_object_is_a_plain_one(closet, doc):
    carcass = carcasses_in(closet)[0]
    carcass.BayCount = 2
    assert design_of(closet).components[0].bays == (BaySpec(fixed=3), BaySpec())
    doc.recompute()
    check(closet)


def test_undo_brings_back_places_with_shapes(doc, closet):
    """Without a recompute: a thicker board moves parts and gives them other shapes."""
    def seen():
        return {
            o.Name: (str(o.Placement), str(o.Shape.Placement), round(o.Shape.Volume, 3))
            for o in doc.Objects if class_of(o) == "ClosetPart"
        }

    first = carcasses_in(closet)[0]
    before = seen()
    doc.openTransaction("board")
    first.Label = "Other"
    first.Height = first.OuterHeight.Value - 20  # moves some of them only
    doc.recompute()
    first.Material = "birch18" if first.Material == "melamine16" else "melamine16"
    with drafting():
        doc.recompute()
    finish(doc)
    doc.recompute()
    doc.commitTransaction()
    after = seen()
    assert before != after
    doc.undo()
    assert seen() == before
    doc.redo()
    assert seen() == after


def test_findings_follow_the_name_of_the_closet(closet, doc):
    old, before = closet.Label, list(closet.Findings)
    assert any(text.startswith(f"{old}: ") for text in before)
    step(doc, "Name", lambda: setattr(closet, "Label", "The box room"))
    after = list(closet.Findings)
    assert not any(text.startswith(f"{old}: ") for text in after)
    assert any(text.startswith("The box room: ") for text in after)
    doc.undo()
    assert list(closet.Findings) == before
    doc.redo()
    assert list(closet.Findings) == after
