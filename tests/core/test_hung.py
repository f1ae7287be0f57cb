"""Doors on their hinges, face frames on their nails, shoe shelves on their cleats."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.circumstances import Circumstances
from closetbench.core.doors import DoorsSpec
from closetbench.core.face_frame import FaceFrameSpec
from closetbench.core.figures import GRAVITY
from closetbench.core.findings import Severity
from closetbench.core.fixings import particleboard_withdrawal
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.hung import PLATE_SCREWS, RACKING, RACKING_ARM, door_findings
from closetbench.core.inside import Spot
from closetbench.core.loads import ShelfUse
from closetbench.core.panel import Run
from closetbench.core.parts import Role
from closetbench.core.people import Light
from closetbench.core.shoe_shelves import ShoeShelvesSpec
from closetbench.core.specs import CarcassSpec
from closetbench.core.walls import Wall, WallKind
from tests.core.wooden import CATALOGUE, FIGURES, built, checked, only, rules

KNOWN = Circumstances(
    ShelfUse.LINEN, damp=False, wall=Wall(WallKind.WOOD_STUDS, 406.4, 100.0, 12.7), children=(),
    old_paint=False, outlets=False, light=Light.NONE,
)
SIZE = (900.0, 500.0, 1200.0)
MELAMINE = CarcassSpec("case", "melamine18", height=1100.0)
PLY = replace(MELAMINE, material="ply18")
DOORS = DoorsSpec("doors", Spot("case"), leaves=2, front=FrontSpec(FrontKind.FULL))


def test_the_pull_on_the_top_hinge_by_hand() -> None:
    closet = built(MELAMINE, DOORS, size=SIZE, circumstances=KNOWN)
    said = only(checked(closet), "hinge-screws")
    leaf = next(p for p in closet.parts if p.role is Role.DOOR)
    cups = next(h for h in leaf.panel.holes if h.name == "hinge cup")
    assert cups.run is Run.LENGTH
    mass = leaf.panel.volume * 660e-9
    apart = cups.pitch * (cups.count - 1)
    pull = mass * GRAVITY * leaf.panel.width / 2 / apart
    assert said.value == f"{pull:.0f} N"
    assert f"{pull + RACKING * RACKING_ARM / apart:.0f} N" in said.message
    # 3.5 x 16 screws, 14.5 mm of them in particleboard of 660/1.08, over 5.5
    hold = PLATE_SCREWS * particleboard_withdrawal(0.66 / 1.08, 3.5, 14.5) / (15_700 / 2_850)
    assert said.limit == f"{hold:.0f} N"
    assert said.severity is Severity.NOTE
    assert said.parts == ("doors: left door", "doors: right door")
    assert "by the density" in said.spread


def test_hinges_close_together_are_torn_out_by_somebody_leaning_on_the_door() -> None:
    closet = built(MELAMINE, DOORS, size=SIZE, circumstances=KNOWN)
    doors = next(c for c in closet.components if c.name == "doors")
    leaf = doors.parts[0]
    tight = tuple(replace(h, pitch=20.0) if h.name == "hinge cup" else h for h in leaf.panel.holes)
    moved = replace(doors, parts=(replace(leaf, panel=replace(leaf.panel, holes=tight)),))
    (torn,) = door_findings(moved, "melamine18", CATALOGUE, FIGURES)
    assert torn.severity is Severity.WARNING
    assert "works loose" in torn.message


def test_doors_before_a_face_frame_hang_on_its_board() -> None:
    inset = replace(DOORS, front=FrontSpec(FrontKind.INSET))
    frame = FaceFrameSpec("frame", "case")
    said = only(
        checked(built(MELAMINE, frame, inset, size=SIZE, circumstances=KNOWN)), "hinge-screws")
    # the leaves are of the carcass's particleboard, which holds less than the pine of the frame
    pine = replace(inset, front=FrontSpec(FrontKind.INSET, material="pine_glued18"))
    wood = only(
        checked(built(MELAMINE, frame, pine, size=SIZE, circumstances=KNOWN)), "hinge-screws")
    assert "particleboard" in said.source
    assert "particleboard" not in wood.source


def test_screws_in_hardboard_are_not_checked() -> None:
    closet = built(MELAMINE, DOORS, size=SIZE, circumstances=KNOWN)
    doors = next(c for c in closet.components if c.name == "doors")
    (said,) = door_findings(doors, "hardboard6", CATALOGUE, FIGURES)
    assert said.severity is Severity.NOT_CHECKED


def test_a_face_frame_hangs_on_its_nails() -> None:
    frame = FaceFrameSpec("frame", "case")
    held = only(checked(built(PLY, frame, size=SIZE, circumstances=KNOWN)), "frame-nails")
    assert held.severity is Severity.NOTE
    assert "glue it on where doors hang" in held.message
    said = only(checked(built(MELAMINE, frame, size=SIZE, circumstances=KNOWN)), "frame-nails")
    assert said.severity is Severity.NOT_CHECKED


def test_shoe_shelves_are_checked_with_the_screws_of_their_cleats() -> None:
    shoes = ShoeShelvesSpec("shoes", Spot("case"))
    found = [
        f for f in checked(built(PLY, shoes, size=SIZE, circumstances=KNOWN))
        if f.subject.startswith("shoes")
    ]
    assert rules(found) == ["shelf-sag", "shelf-fixing"]
    assert found[0].parts == ("shoes: shelf 1", "shoes: shelf 2")
    # 864 mm between the sides, less the play and half of each cleat
    assert found[0].limit == f"{(864 - 3 - 18) / 192:.1f} mm"
    assert found[1].severity is Severity.WARNING
    assert "no load is published" in found[1].message
    damp = replace(KNOWN, damp=True)
    wet = checked(built(
        MELAMINE, replace(shoes, material="mdf18"), size=SIZE, circumstances=damp), damp)
    assert only(wet, "shelf-damp", "shoes: shelf 1")


def test_nothing_that_is_built_goes_without_a_word() -> None:
    every = (
        PLY, FaceFrameSpec("frame", "case"), ShoeShelvesSpec("shoes", Spot("case")),
        replace(DOORS, front=FrontSpec(FrontKind.INSET)),
    )
    found = checked(built(*every, size=SIZE, circumstances=KNOWN))
    assert "component-not-checked" not in rules(found)


@pytest.mark.parametrize("kind", [FrontKind.INSET, FrontKind.FULL])
def test_inset_and_overlay_doors_alike(kind: FrontKind) -> None:
    doors = replace(DOORS, front=FrontSpec(kind))
    assert only(checked(built(PLY, doors, size=SIZE, circumstances=KNOWN)), "hinge-screws")
