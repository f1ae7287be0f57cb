"""Drawers, doors, rods, existing pieces and whatever else stands in carcasses, as objects."""

from __future__ import annotations

from dataclasses import MISSING, fields, replace
from typing import get_args

import pytest

from closetbench.core.bench import BenchSpec
from closetbench.core.bodies import LengthPart
from closetbench.core.closet import ClosetDesign, Spec
from closetbench.core.doors import DoorsSpec
from closetbench.core.drawers import DrawersSpec
from closetbench.core.envelope import Clearances
from closetbench.core.errors import ClosetError
from closetbench.core.existing import ExistingSpec, Flank, ScrewPoint
from closetbench.core.face_frame import FaceFrameSpec, FrameJoint
from closetbench.core.fillers import Cover, FillersSpec
from closetbench.core.fronts import FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.rods import RodsSpec
from closetbench.core.specs import BaseKind, BaseSpec, BaySpec, CarcassSpec, LipSpec, PanelSpec
from closetbench.model.base import class_of, is_invalid
from closetbench.model.bridge import carcasses_in, chain_of, closet_of, design_of, spec_of
from closetbench.model.children import BODIES, claimed, delete_with, parts_of
from closetbench.model.contents import CONTENTS
from closetbench.model.make import closet_from_design, make_content, write_spec
from closetbench.model.spec_table import field_texts

pytestmark = pytest.mark.freecad

LEFT = CarcassSpec(
    "Left", "ply18", width=1000.0, bays=(BaySpec(fixed=1), BaySpec()),
    base=BaseSpec(BaseKind.TOE_KICK), shelf_lip=LipSpec(40.0, "mdf18"),
)
RIGHT = CarcassSpec("Right", "melamine18", width=1200.0, bays=(BaySpec(), BaySpec(), BaySpec()))
CHEST = ExistingSpec(
    "Chest", Spot("Right", 1), 400.0, 500.0, 400.0, weight=20.0, drawers=2, travel=300.0,
    screws=(ScrewPoint(Flank.LEFT, 50.0, 100.0),),
)
SKEWED = FrontSpec(pull_spacing=96.0, lean_left=-3.0, lean_right=2.0, rise_above=4.0)
DESIGN = ClosetDesign("Full", size=(3600.0, 650.0, 2400.0), components=(
    LEFT, RIGHT, FaceFrameSpec("Frame", "Left", joint=FrameJoint.DOWEL),
    DrawersSpec("Bank", Spot("Right", 2, height=600.0), count=3, heights=(200.0, 0.0, 180.0),
                front=SKEWED),
    DoorsSpec("Door", Spot("Left", 2)), RodsSpec("Rod", Spot("Left", 1)), CHEST,
    BenchSpec("Seat", None, width=900.0), DrawersSpec("Pull-out", Spot("Seat")),
))


@pytest.fixture
def closet(doc):
    doc.openTransaction("Closet")
    made = closet_from_design(doc, DESIGN)
    doc.commitTransaction()
    return made


def check(closet):
    """Every body of the core has its object, of the right kind, and no object is left over."""
    doc, built = closet.Document, closet_of(closet)
    objects = {o.FullName: o for o in doc.Objects if class_of(o) in BODIES}
    assert sorted(objects) == sorted(b.full_name for b in built.bodies)
    for body in built.bodies:
        obj, own = objects[body.full_name], body.box()
        box = obj.Shape.BoundBox
        assert obj.Shape.isValid()
        assert (box.XMin, box.YMin, box.ZMin, box.XMax, box.YMax, box.ZMax) == pytest.approx(
            (own.x0, own.y0, own.z0, own.x1, own.y1, own.z1), abs=1e-3
        )
        assert obj.Role == body.role.value
    for part in built.parts:
        assert objects[part.full_name].Shape.Volume == pytest.approx(part.panel.volume, rel=1e-6)
    return objects


def step(doc, change):
    doc.openTransaction("Step")
    change()
    doc.recompute()
    doc.commitTransaction()


def by_label(doc, label):
    return doc.getObjectsByLabel(label)[0]


def test_every_specification_has_its_class_and_texts():
    assert {CarcassSpec, PanelSpec, *(c.spec for c in CONTENTS.values())} == set(get_args(Spec))
    for content in CONTENTS.values():
        texts = field_texts(content.spec)
        assert set(texts) | {"name"} == {f.name for f in fields(content.spec)}, content
        assert content.__doc__
        assert not [p for p in content.fields if "None" in p.text]
        names = [p.name for p in content.properties]
        assert len(names) == len(set(names))


@pytest.mark.parametrize("name", CONTENTS)
def test_every_specification_comes_back(doc, name):
    closet = closet_from_design(doc, ClosetDesign("One", size=DESIGN.size, components=(LEFT,)))
    spec = CONTENTS[name].spec
    needed = {
        f.name: {"str": "Left", "Spot": Spot("Left", 2)}.get(f.type.partition(" ")[0], 123.4)
        for f in fields(spec) if f.default is MISSING and f.default_factory is MISSING
    }
    for field in fields(spec):
        if field.name in needed and field.type.startswith("tuple"):
            needed[field.name] = (100.0, 200.5)
    given = spec(**needed | {"name": "New"})
    made = make_content(doc, closet, given)
    assert spec_of(made) == given
    assert made in closet.Group
    made.purgeTouched()
    write_spec(made, given)
    assert "Touched" not in made.State


def test_a_full_closet_is_what_its_design_says(closet, doc, reopen):
    assert design_of(closet) == DESIGN
    objects = check(closet)
    assert {class_of(o) for o in objects.values()} == set(BODIES)
    assert all("Up-to-date" in o.State for o in doc.Objects)
    shown = [o for top in claimed(closet) for o in (top, *claimed(top))]
    assert len(shown) == len({o.Name for o in shown}) == len(doc.Objects) - 1
    again = reopen(doc).getObject(closet.Name)
    assert design_of(again) == DESIGN
    check(again)
    step(again.Document, lambda: setattr(by_label(again.Document, "Bank"), "Count", 3))
    check(again)


def test_bars_and_pieces_are_solids_of_their_own(closet, doc):
    rod = next(o for o in doc.Objects if class_of(o) == "Bar")
    body = next(b for b in closet_of(closet).bodies if isinstance(b, LengthPart))
    outer, inner = body.diameter / 2, body.diameter / 2 - body.wall
    area = 3.141592653589793 * (outer**2 - (inner**2 if body.wall else 0.0))
    assert rod.Shape.Volume == pytest.approx(area * body.length, rel=1e-6)
    assert rod.Length.Value == body.length
    piece = next(o for o in doc.Objects if class_of(o) == "ExistingPiece")
    assert piece.Shape.Volume == pytest.approx(400.0 * 500.0 * 400.0, rel=1e-6)
    assert piece.Weight == 20.0


def test_fillers_are_cut_to_the_gap(doc, two_carcasses):
    design = replace(
        two_carcasses, clearances=Clearances(right=28.0),
        components=(*two_carcasses.components, FillersSpec("Fillers", right=Cover.STRIP)),
    )
    closet = closet_from_design(doc, design)
    check(closet)
    tapered = [p for p in closet_of(closet).parts if p.panel.tapers]
    assert tapered
    assert design_of(closet) == design


def test_drawers_come_and_go_with_their_number(closet, doc):
    bank = by_label(doc, "Bank")
    bank.Heights = []
    doc.recompute()
    before = sorted(o.Name for o in doc.Objects)
    each = len(parts_of(bank)) // 3
    step(doc, lambda: setattr(bank, "Count", 5))
    check(closet)
    assert len(doc.Objects) == len(before) + 2 * each
    doc.undo()
    assert sorted(o.Name for o in doc.Objects) == before
    check(closet)
    doc.redo()
    check(closet)


def test_an_existing_piece_makes_its_bay(closet, doc):
    chest, carcass = by_label(doc, "Chest"), carcasses_in(closet)[1]
    before = check(closet)
    edge = before["Right: divider 1"].Shape.BoundBox.XMin
    step(doc, lambda: setattr(chest, "WidthFrontLow", 407.0))
    objects = check(closet)
    assert objects["Right: divider 1"].Shape.BoundBox.XMin == pytest.approx(edge + 7.0, abs=1e-3)
    assert objects == before
    assert not is_invalid(carcass)
    doc.undo()
    check(closet)
    step(doc, lambda: doc.removeObject(chest.Name))
    check(closet)
    doc.undo()
    check(closet)
    assert design_of(closet) == DESIGN


def test_sides_are_drilled_for_the_doors_that_hang_on_them(closet, doc):
    """Doors come after the carcass, and yet change its parts: with them, in the same undo step."""
    made = DoorsSpec("More", Spot("Right", 3, height=800.0))
    before = check(closet)
    side = before["Right: divider 2"]
    whole = side.Shape.Volume
    step(doc, lambda: make_content(doc, closet, made))
    check(closet)
    drilled = side.Shape.Volume
    assert drilled < whole - 100.0
    door = by_label(doc, "More")
    held = side.Machining
    assert "hinge plate" in held
    step(doc, lambda: setattr(door, "SpotHeight", 760.0))
    check(closet)
    assert side.Machining != held
    step(doc, lambda: setattr(door, "Hinged", "right"))
    check(closet)
    assert side.Shape.Volume == pytest.approx(whole)
    doc.undo()
    doc.undo()
    check(closet)
    assert side.Machining == held
    step(doc, lambda: delete_with(door))
    step(doc, lambda: doc.removeObject(door.Name))
    check(closet)
    assert side.Shape.Volume == pytest.approx(whole)


def test_contents_follow_their_host(closet, doc):
    carcass = carcasses_in(closet)[1]
    step(doc, lambda: setattr(carcass, "Label", "Chests"))
    inside = [s for s in design_of(closet).components if s.name in ("Bank", "Chest")]
    assert {s.spot.carcass for s in inside} == {"Chests"}
    check(closet)
    # drawers stay in their bay when another one at its left goes
    middle = carcass.BayList[1]
    step(doc, lambda: doc.removeObject(by_label(doc, "Chest").Name))
    step(doc, lambda: doc.removeObject(carcass.BayList[0].Name))
    bank = by_label(doc, "Bank")
    assert bank.Bay is middle
    assert next(s for s in design_of(closet).components if s.name == "Bank").spot.bay == 1
    check(closet)
    step(doc, lambda: setattr(bank, "Bay", None))
    assert next(s for s in design_of(closet).components if s.name == "Bank").spot.bay == 2
    check(closet)


def test_what_cannot_stand_there_is_named_and_the_rest_stays(closet, doc):
    before = {n: str(o.Shape.BoundBox) for n, o in check(closet).items()}
    bank = by_label(doc, "Bank")
    step(doc, lambda: setattr(bank, "SpotHeight", 9000.0))
    assert is_invalid(bank)
    assert "Bank" in bank.getStatusString()
    assert not any(is_invalid(c) for c in carcasses_in(closet))
    objects = {o.FullName: o for o in doc.Objects if class_of(o) in BODIES}
    assert {n: str(o.Shape.BoundBox) for n, o in objects.items()} == before
    step(doc, lambda: setattr(bank, "SpotHeight", 600.0))
    check(closet)
    step(doc, lambda: setattr(bank, "Host", None))
    assert "carcass" in bank.getStatusString()
    step(doc, lambda: delete_with(bank))
    step(doc, lambda: doc.removeObject(bank.Name))
    check(closet)


def test_a_bench_may_stand_free_or_in_a_carcass(closet, doc):
    seat = by_label(doc, "Seat")
    assert (seat.Host, seat.XByRule) == (None, True)
    spec = replace(DESIGN.components[-2], x=0.0)
    write_spec(seat, spec)
    assert (seat.XByRule, seat.X.Value) == (False, 0.0)
    assert design_of(closet).components[-2] == spec
    spec = replace(spec, spot=Spot("Right", 3), x=None, width=None)
    step(doc, lambda: write_spec(seat, spec))
    assert seat.Host is carcasses_in(closet)[1]
    assert design_of(closet).components[-2] == spec
    check(closet)


def test_a_value_that_would_not_come_back_is_refused(closet, doc):
    spec = DrawersSpec("More", Spot("Left", 1, height=300.0), slide_length=0.0)
    before = len(doc.Objects)
    with pytest.raises(ClosetError, match="slide_length"):
        make_content(doc, closet, spec)
    assert len(doc.Objects) == before + 1


def test_components_are_built_in_the_cores_order(closet):
    assert [o.Label for o in chain_of(closet)][:3] == ["Left", "Right", "Frame"]
    for before, after in zip(chain_of(closet), chain_of(closet)[1:], strict=False):
        assert after.After is before
