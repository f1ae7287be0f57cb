"""Readings, good and bad values, texts and files."""

from __future__ import annotations

import math
from dataclasses import fields, is_dataclass, replace
from fractions import Fraction

import FreeCAD
import pytest

from closetbench.core.circumstances import Circumstances
from closetbench.core.closet import ClosetDesign, build_closet
from closetbench.core.errors import CatalogueError, ClosetError, DocumentError
from closetbench.core.joinery import JoineryRules
from closetbench.core.lengths import LengthFormat
from closetbench.core.loads import ShelfUse
from closetbench.core.panel import Face, Grain, Rim
from closetbench.core.people import ChildAge
from closetbench.core.specs import BaySpec, CarcassSpec, DrillRules, PanelSpec
from closetbench.core.survey import Obstacle, OwnDoor, Reading, ReadingKind, Side, Survey, TapeClass
from closetbench.core.walls import Wall
from closetbench.model import carcass as carcass_module
from closetbench.model import panel as panel_module
from closetbench.model import survey as survey_module
from closetbench.model.base import class_of, is_invalid
from closetbench.model.bridge import (
    carcasses_in,
    catalogue_of,
    closet_of,
    component_of,
    design_of,
    spec_of,
    survey_for,
)
from closetbench.model.children import parts_of
from closetbench.model.files import write_model
from closetbench.model.make import (
    closet_from_design,
    make_carcass,
    make_closet,
    make_panel,
    write_spec,
)
from closetbench.resources import load_catalogue

pytestmark = pytest.mark.freecad


def snapshot(doc):
    """Every part with its shape's size, to see that nothing was touched."""
    return {
        o.Name: (o.Label, o.Length.Value, o.Shape.Volume, str(o.Shape.BoundBox))
        for o in doc.Objects if class_of(o) == "ClosetPart"
    }


@pytest.mark.parametrize(("name", "size", "spanning"), [
    # the readings are adjusted together, so that some of the 7 mm goes to the others
    ("DepthLeft", "EnvelopeDepth", ("Shelves: left side", "Coats: top", "Coats: divider 1")),
    ("GivenWidth", "EnvelopeWidth", ("Coats: top", "Coats: bottom", "Coats: back")),
])
def test_one_reading_by_7_mm_changes_the_same_parts_as_much(
    doc, two_carcasses, name, size, spanning
):
    square = Survey(*(1930.0,) * 6, *(2400.0,) * 4, 640.0, 640.0)
    design = replace(two_carcasses, survey=square)
    if name == "GivenWidth":
        design = replace(design, survey=None, size=(1930.0, 640.0, 2400.0))
    closet = closet_from_design(doc, design)
    survey = survey_for(closet)

    def extents():
        parts = [o for o in doc.Objects if class_of(o) == "ClosetPart"]
        return {
            o.FullName: (o.Shape.BoundBox.YLength if "Depth" in name else o.Shape.BoundBox.XLength)
            for o in parts
        }

    before, was, objects = extents(), getattr(survey, size).Value, set(doc.Objects)
    doc.openTransaction("Reading")
    setattr(survey, name, getattr(survey, name).Value - 7.0)
    doc.recompute()
    doc.commitTransaction()
    change = was - getattr(survey, size).Value
    assert change == pytest.approx(7.0, abs=1e-9 if name == "GivenWidth" else 0.5)
    assert set(doc.Objects) == objects
    shrunk = {n: before[n] - after for n, after in extents().items() if before[n] - after > 1e-6}
    assert set(spanning) <= set(shrunk)
    if name == "DepthLeft":
        assert list(shrunk.values()) == pytest.approx([change] * len(shrunk), abs=1e-3)
    else:
        # the first carcass has a width of its own; what shares a rest with others gets a share
        assert not any(n.startswith("Shelves: ") for n in shrunk)
        assert all(shrunk[n] == pytest.approx(change, abs=1e-3) for n in spanning)
        assert max(shrunk.values()) <= change + 1e-3
    assert_solids_are_the_panels(closet)
    doc.undo()
    assert extents() == before


def assert_solids_are_the_panels(closet):
    objects = {o.FullName: o for o in closet.Document.Objects if class_of(o) == "ClosetPart"}
    for part in closet_of(closet).parts:
        box, own = objects[part.full_name].Shape.BoundBox, part.box()
        assert (box.XMin, box.YMin, box.ZMin, box.XMax, box.YMax, box.ZMax) == pytest.approx(
            (own.x0, own.y0, own.z0, own.x1, own.y1, own.z1), abs=1e-3
        )
        assert objects[part.full_name].Shape.Volume == pytest.approx(part.panel.volume, rel=1e-6)


BAD = [
    ("Width", 50.0, ("width", "50 mm")),
    ("Height", 9999.0, ("height", "9999 mm")),
    ("Depth", 5.0, ("depth", "5 mm")),
    ("BayCount", 0, ("bays", "0")),
    ("BayCount", -2, ("bays", "0")),
    ("Material", "cardboard", ("material", "cardboard")),
    ("Band", "gold", ("band", "gold")),
    ("GrooveDepth", 15.0, ("groove depth", "15 mm")),
    ("DepthFraction", 0.9, ("fraction", "0.9")),
    ("PinDiameter", 0.0, ("diameter", "0 mm")),
    ("BaseHeight", 5000.0, ("", "5000 mm")),
]


@pytest.mark.parametrize(("name", "value", "words"), BAD)
def test_a_bad_value_is_named_and_changes_nothing(doc, two_carcasses, name, value, words):
    closet = closet_from_design(doc, two_carcasses)
    carcass = carcasses_in(closet)[0]
    before, good = snapshot(doc), getattr(carcass, name)
    doc.openTransaction("Bad")
    setattr(carcass, name, value)
    doc.recompute()
    doc.commitTransaction()
    assert is_invalid(carcass)
    message = carcass.getStatusString()
    assert carcass.Label in message
    for word in words:
        assert word in message
    assert snapshot(doc) == before
    doc.openTransaction("Good")
    setattr(carcass, name, good)
    doc.recompute()
    doc.commitTransaction()
    assert not is_invalid(carcass)
    assert snapshot(doc) == before
    assert all("Up-to-date" in o.State for o in doc.Objects)


def test_a_bad_bay_and_a_bad_reading_are_named(doc, two_carcasses):
    closet = closet_from_design(doc, two_carcasses)
    carcass, survey = carcasses_in(closet)[0], survey_for(closet)
    before = snapshot(doc)
    carcass.BayList[0].FixedShelves = 400
    doc.recompute()
    assert "fixed shelves" in carcass.getStatusString()
    carcass.BayList[0].FixedShelves = 3
    survey.DepthLeft = 0
    doc.recompute()
    assert is_invalid(survey)
    assert "depth along the left wall" in survey.getStatusString()
    assert snapshot(doc) == before
    survey.DepthLeft = two_carcasses.survey.depth_left
    doc.recompute()
    assert snapshot(doc) == before
    assert design_of(closet) == two_carcasses


def test_circumstances_come_back(doc, two_carcasses):
    known = Circumstances(
        shelf_use=ShelfUse.BOOKS, damp=False, wall=Wall(stud_spacing=400.0, first_stud=0.0),
        children=tuple(ChildAge)[:1],
        light_clearance=0.0,
    )
    design = replace(two_carcasses, circumstances=known)
    closet = closet_from_design(doc, design)
    assert design_of(closet) == design
    assert list(closet.Findings) == [
        f"{f.subject}: {f.message}" for f in build_closet(design, load_catalogue()).findings
    ]
    closet.Circumstances = '{"damp": true, "ghosts": 3}'
    doc.recompute()
    assert "circumstances" in closet.getStatusString()
    closet.Circumstances = "{}"
    doc.recompute()
    assert not is_invalid(closet)


def test_an_extra_reading_that_says_nothing_is_named(doc, two_carcasses):
    survey = survey_for(closet_from_design(doc, two_carcasses))
    survey.ExtraReadings = ['{"kind": "smell", "value": 3}']
    doc.recompute()
    assert "extra readings: line 1" in survey.getStatusString()
    survey.ExtraReadings = []
    doc.recompute()
    assert not is_invalid(survey)


def test_an_error_that_is_undone_leaves_no_trace(doc, two_carcasses):
    closet = closet_from_design(doc, two_carcasses)
    before, names = snapshot(doc), sorted(o.Name for o in doc.Objects)
    doc.openTransaction("Bad")
    carcasses_in(closet)[0].Width = 50.0
    doc.recompute()
    doc.abortTransaction()
    doc.recompute()
    assert snapshot(doc) == before
    assert sorted(o.Name for o in doc.Objects) == names
    assert all("Up-to-date" in o.State for o in doc.Objects)


def every_field(record, prefix=""):
    for item in fields(record):
        value = getattr(record, item.name)
        if is_dataclass(value):
            yield from every_field(value, f"{prefix}{item.name}.")
        else:
            yield prefix + item.name


def test_every_field_has_a_property():
    own = {p.field for p in carcass_module.FIELDS}
    assert own | {"name", "bays"} == set(every_field(CarcassSpec("A", "m")))
    assert {p.field for p in carcass_module.BAYS} == set(every_field(BaySpec()))
    panel = {p.field for p in panel_module.FIELDS}
    assert panel | {"name", "rabbets", "bands", "rules.depth"} == set(
        every_field(PanelSpec("A", "m", 1, 1)))
    readings = {p.field for p in survey_module.READINGS if p.field}
    assert readings | {*survey_module.MAYBE_READ, "levels"} == {f.name for f in fields(Survey)}
    site = {f.name for f in fields(ClosetDesign)}
    assert site == {
        "name", "survey", "clearances", "size", "depth_limit", "components", "circumstances",
        "objective",
    }


def test_odd_values_come_back_exactly(doc, readings):
    survey = replace(
        readings, lean_right_front=0.0, lean_right_back=-2.5, diagonal_to_left=2031.0,
        diagonal_to_right=2036.7375, levels=(90.0, 1111.1, 2100.0), opening_width=1520.4,
        jamb_depth=0.0, tape=TapeClass.I, resolution=0.5, level_error=0.0, door=OwnDoor.RIGHT,
        door_thickness=33.3, door_opens=101.5,
        extras=(
            Reading(ReadingKind.WIDTH, 1929.5, z=700.0),
            Reading(ReadingKind.LEAN, -3.0, y=300.0, z=100.0, z2=2000.0, side=Side.LEFT, label="Ü"),
        ),
        obstacles=(Obstacle("pipe", 0.0, 500.0, 0.0, 60.0, 640.0, 2400.0),),
    )
    spec = CarcassSpec(
        "Odd", "ply18", width=600.1 / 3, height=1836.7375, x=12.7 * 3, against_back=False,
        bays=(BaySpec(heights=(300.05, 700.0)), BaySpec(width=71.3125)), band="",
        groove_stop=0.0, rules=JoineryRules(depth=5.3, fit=0.15), drill=DrillRules(play=2.2),
    )
    panel = PanelSpec(
        "Single", "birch18", 812.8, 304.8, Grain.WIDTH, "ply18", Face.LOWER, Rim.END, 2,
        80.0, 200.0, 5.5, 12.0, 0.0, (Rim.REAR,), (Rim.FRONT, Rim.END), None,
    )
    closet = make_closet(doc, "Odds")
    write_spec(survey_for(closet), replace(spec_of(survey_for(closet)), survey=survey, size=None))
    made = make_carcass(doc, closet, spec), make_panel(doc, closet, panel)
    assert spec_of(survey_for(closet)).survey == survey
    assert (spec_of(made[0]), spec_of(made[1])) == (spec, panel)
    made[0].purgeTouched()
    write_spec(made[0], spec)
    assert "Touched" not in made[0].State


def test_a_field_that_was_not_touched_is_not_written_back(doc, two_carcasses):
    closet = closet_from_design(doc, two_carcasses)
    carcass = carcasses_in(closet)[0]
    carcass.setExpression("Depth", "500 mm + 1 mm / 3")
    doc.recompute()
    write_spec(carcass, replace(spec_of(carcass), width=880.0))
    assert carcass.ExpressionEngine == [("Depth", carcass.ExpressionEngine[0][1])]
    doc.recompute()
    assert carcass.OuterDepth.Value == pytest.approx(500 + 1 / 3, abs=1e-9)
    assert carcass.OuterWidth.Value == pytest.approx(880.0)


def test_a_single_panel_needs_no_closet(doc):
    panel = make_panel(doc, None, PanelSpec("Side", "ply18", 700.0, 300.0, grooves=2))
    panel.Placement.Base = FreeCAD.Vector(100, 200, 300)
    doc.recompute()
    expected = component_of(panel).parts[0].panel
    assert panel.Shape.Volume == pytest.approx(expected.volume, rel=1e-6)
    assert panel.Shape.BoundBox.XMin == pytest.approx(100.0)
    assert panel.Weight == pytest.approx(
        expected.volume * load_catalogue().material("ply18").density * 1e-9)
    assert "groove for panel 1" in panel.Machining
    panel.Grooves = 99
    doc.recompute()
    assert is_invalid(panel)
    assert panel.Shape.Volume == pytest.approx(expected.volume, rel=1e-6)


def test_parts_follow_the_surveys_placement(doc, two_carcasses):
    closet = closet_from_design(doc, two_carcasses)
    survey = survey_for(closet)
    at = FreeCAD.Placement(
        FreeCAD.Vector(1000, -500, 20), FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), 90))
    before = {o.Name: o.Placement for o in doc.Objects if class_of(o) == "ClosetPart"}
    survey.Placement = at
    doc.recompute()
    for name, place in before.items():
        assert same(doc.getObject(name).Placement, at.multiply(place))
    assert survey.Shape.BoundBox.XMax <= 1000 + 50
    assert same(survey.Placement, at)


def same(a, b):
    return pytest.approx(b.Matrix.A, abs=1e-9) == a.Matrix.A


def test_the_survey_shows_room_and_envelope(doc, readings):
    closet = make_closet(doc)
    survey = survey_for(closet)
    write_spec(survey, replace(spec_of(survey), survey=readings, size=None))
    doc.recompute()
    built = closet_of(closet)
    assert survey.EnvelopeWidth.Value == built.envelope.width
    gaps = [g.value for g in built.envelope.gaps if g.wall.value == "right"]
    assert (survey.GapRightLeast.Value, survey.GapRightMost.Value) == (min(gaps), max(gaps))
    assert len(survey.Shape.Edges) == 24
    box = survey.Shape.BoundBox
    assert box.XMin == pytest.approx(
        min(x for line in built.room.corner_lines() for x, _, _ in line) - built.envelope.x0,
        abs=1e-6)
    assert math.isclose(survey.OriginZ.Value, built.envelope.z0)


def test_texts_are_in_the_closets_unit(doc, two_carcasses):
    closet = closet_from_design(
        doc, two_carcasses, form=LengthFormat("in-frac", Fraction(1, 16)))
    part = next(o for o in parts_of(carcasses_in(closet)[0]) if o.PartName == "left side")
    assert '"' in part.Machining
    closet.LengthStyle, closet.LengthStep = "mm", "1"
    doc.recompute()
    assert '"' not in part.Machining


def test_measured_thicknesses_and_a_catalogue_of_ones_own(doc, two_carcasses, tmp_path):
    own = tmp_path / "own.toml"
    own.write_text("[material.ply18]\nmeasured = 17.4\n", encoding="utf-8")
    boards = dict(load_catalogue(own).materials)
    boards["melamine18"] = boards["melamine18"].with_measured(18.1)
    catalogue = replace(load_catalogue(own), materials=boards)
    closet = closet_from_design(doc, two_carcasses, catalogue, catalogue_file=own)
    assert catalogue_of(closet).materials == catalogue.materials
    thick = {o.Material: o.Thickness.Value for o in doc.Objects if class_of(o) == "ClosetPart"}
    assert (thick["ply18"], thick["melamine18"]) == (17.4, 18.1)
    closet.Measured = {"ply18": "17.8"}
    doc.recompute()
    thick = {o.Material: o.Thickness.Value for o in doc.Objects if class_of(o) == "ClosetPart"}
    assert (thick["ply18"], thick["melamine18"]) == (17.8, 18.0)
    closet.Measured = {"ply18": "thick"}
    with pytest.raises(ClosetError, match="thick"):
        catalogue_of(closet)
    closet.Catalogue = str(tmp_path / "gone.toml")
    with pytest.raises(CatalogueError, match="gone"):
        catalogue_of(closet)
    before = snapshot(doc)
    doc.recompute()
    assert snapshot(doc) == before


def test_a_design_that_cannot_be_built_makes_nothing(doc, two_carcasses):
    narrow = replace(two_carcasses, survey=None, size=(500.0, 600.0, 2400.0))
    with pytest.raises(ClosetError, match="width"):
        closet_from_design(doc, narrow)
    assert doc.Objects == []


def test_write_model_writes_a_file_with_solids(two_carcasses, tmp_path):
    path = write_model(two_carcasses, load_catalogue(), tmp_path / "closet.FCStd")
    assert [p.name for p in tmp_path.iterdir()] == ["closet.FCStd"]
    opened = FreeCAD.openDocument(str(path))
    try:
        parts = [o for o in opened.Objects if class_of(o) == "ClosetPart"]
        assert len(parts) == len(closet_of(opened.getObject("Closet")).parts) > 20
        assert all(o.Shape.isValid() and o.Shape.Volume > 0 for o in parts)
        assert opened.Label == "closet"
    finally:
        FreeCAD.closeDocument(opened.Name)


def test_write_model_leaves_nothing_half_done(two_carcasses, tmp_path):
    open_before = set(FreeCAD.listDocuments())
    blocked = tmp_path / "file"
    blocked.write_text("", encoding="utf-8")
    with pytest.raises(DocumentError, match="closet"):
        write_model(two_carcasses, load_catalogue(), blocked / "closet.FCStd")
    assert [p.name for p in tmp_path.iterdir()] == ["file"]
    assert set(FreeCAD.listDocuments()) == open_before
