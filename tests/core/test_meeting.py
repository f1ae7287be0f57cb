"""Doors, drawers and frames in a closet whose opening is narrower than the room behind it."""

from __future__ import annotations

import math
import random
from dataclasses import replace

import pytest

from closetbench.core import convex
from closetbench.core.closet import Closet, ClosetDesign, build_closet
from closetbench.core.doors import DoorsSpec, Hinged
from closetbench.core.drawers import DrawersSpec
from closetbench.core.face_frame import FaceFrameSpec
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.meeting import room_blocks
from closetbench.core.panel import Box
from closetbench.core.parts import Place
from closetbench.core.specs import BaySpec, CarcassSpec, PanelSpec
from closetbench.core.survey import OwnDoor
from tests.core.inside_case import CATALOGUE, rules
from tests.core.rooms import TrueRoom

SURVEY = replace(
    TrueRoom().survey(), opening_width=1500.0, return_left=250.0, return_right=150.0,
    jamb_depth=115.0, opening_height=2050.0,
)
CARCASS = CarcassSpec("A", "mdf18", bays=(BaySpec(450.0), BaySpec(), BaySpec(450.0)))


def built(*specs, carcass: CarcassSpec = CARCASS) -> Closet:
    return build_closet(ClosetDesign("c", SURVEY, components=(carcass, *specs)), CATALOGUE)


def test_the_walls_beside_and_above_the_opening():
    found = built()
    left, right, above = (box for _, box in room_blocks(found.room, found.envelope))
    x0 = found.envelope.x0
    assert left.x1 == pytest.approx(250 - x0, abs=1.0)
    assert right.x0 == pytest.approx(1750 - x0, abs=1.0)
    assert above.z0 == pytest.approx(2050 - found.envelope.z0, abs=1.0)
    assert (left.y0, left.y1) == (pytest.approx(-115), pytest.approx(0, abs=1e-6))
    assert room_blocks(None, found.envelope) == ()


def test_a_drawer_behind_a_return_cannot_come_out():
    spots = [Spot("A", bay, 1, 0.0, 400.0) for bay in (1, 2, 3)]
    found = built(*(
        DrawersSpec(f"bank {i}", spot, count=2) for i, spot in enumerate(spots, 1)
    ))
    stopped = {f.subject: f.message for f in found.findings if f.rule == "pull-blocked"}
    assert set(stopped) == {f"bank {i}: drawer {k}" for i in (1, 3) for k in (1, 2)}
    assert "the left return" in stopped["bank 1: drawer 1"]
    assert "the right return" in stopped["bank 3: drawer 2"]


def test_doors_that_hit_the_returns_or_the_lintel_are_named():
    """Bay 3 reaches 150 mm behind the right return: its door hits the return either way. Those
    of bay 2 swing free, but not where they reach above the opening."""
    inset = FrontSpec(FrontKind.INSET)
    found = built(
        DoorsSpec("low", Spot("A", 2, height=1500.0), leaves=2, front=inset),
        DoorsSpec("high", Spot("A", 2, start=1500.0), front=inset),
        DoorsSpec("right", Spot("A", 3, height=1500.0), hinged=Hinged.LEFT, front=inset),
    )
    blocked = {f.subject: f for f in found.findings if f.rule == "swing-blocked"}
    assert set(blocked) == {"right: door", "high: door"}
    assert blocked["high: door"].parts == ("the wall above the opening",)
    assert blocked["right: door"].parts == ("the right return",)


def test_the_closets_own_door_stands_in_the_way_as_far_as_it_opens():
    """At 90 degrees a leaf 40 mm thick stands 245 to 285 mm from the envelope's left, clear of
    drawers that begin at 486 mm; at 60 degrees it covers half of the opening, so that they hit
    it. Sliding panels always stand in the middle."""
    def said(door: OwnDoor, opens: float, *specs) -> set[tuple[str, str, tuple[str, ...]]]:
        survey = replace(SURVEY, door=door, door_thickness=40.0, door_opens=opens)
        found = build_closet(ClosetDesign("c", survey, components=(CARCASS, *specs)), CATALOGUE)
        return {(f.subject, f.rule, f.parts) for f in found.findings if f.rule in (
            "pull-blocked", "swing-blocked")}

    low = DrawersSpec("low", Spot("A", 2, height=400.0))
    open_ = ("the closet's own door, open",)
    assert said(OwnDoor.NONE, 90.0, low) == set()
    assert said(OwnDoor.LEFT, 90.0, low) == said(OwnDoor.PAIR, 120.0, low) == set()
    assert said(OwnDoor.LEFT, 60.0, low) == {("low: drawer", "pull-blocked", open_)}
    assert said(OwnDoor.SLIDING, 90.0, low) == {
        ("low: drawer", "pull-blocked", ("the middle of the closet's sliding panels",))}
    # where the envelope begins 5 mm from the wall, a drawer just inside the jamb hits the leaf
    near = CarcassSpec("A", "mdf18", bays=(BaySpec(230.0), BaySpec(450.0), BaySpec()))
    survey = replace(SURVEY, door=OwnDoor.LEFT, door_thickness=40.0)
    for door, stopped in ((OwnDoor.LEFT, True), (OwnDoor.RIGHT, False)):
        found = build_closet(ClosetDesign(
            "c", replace(survey, door=door), components=(near, low)), CATALOGUE)
        hit = [f for f in found.findings if f.rule == "pull-blocked"]
        assert [f.parts for f in hit] == [open_] * stopped


def test_a_drawer_that_just_clears_a_jamb_is_doubted():
    """The front of bay 1 begins at the bay's left edge and the gap of 3 mm; the return ends 245 mm
    from the envelope's left."""
    for x, rules_ in ((228.0, {"pull-close"}), (240.0, set()), (220.0, {"pull-blocked"})):
        found = built(DrawersSpec("low", Spot("A", 1, height=400.0)),
                      carcass=CarcassSpec("A", "mdf18", width=600.0, x=x))
        said = {f.rule for f in found.findings if f.rule.startswith("pull")}
        assert said == rules_, x


def test_a_leaf_of_the_closets_own_door_by_hand():
    survey = replace(SURVEY, door=OwnDoor.RIGHT, door_thickness=40.0)
    found = build_closet(ClosetDesign("c", survey, components=(CARCASS,)), CATALOGUE)
    leaf = dict(room_blocks(found.room, found.envelope))["the closet's own door, open"]
    right = 1750.0 - found.envelope.x0
    assert (leaf.x0, leaf.x1) == pytest.approx((right - 40.0, right), abs=1.0)
    assert (leaf.y0, leaf.y1) == pytest.approx((-115.0 - 1500.0, -115.0), abs=1.0)


def test_a_frame_in_front_of_the_envelope_stands_in_the_returns():
    found = built(FaceFrameSpec("F", "A"), PanelSpec("loose", "mdf18", 1900.0, 400.0))
    walls = [f for f in found.findings if f.rule == "in-the-wall"]
    assert {f.subject for f in walls} >= {"F: left stile", "F: right stile", "F: top rail"}
    assert not [f for f in walls if f.subject.startswith("loose")]
    shallow = built(FaceFrameSpec("F", "A"), carcass=replace(CARCASS, depth=560.0))
    assert "in-the-wall" not in rules(shallow.findings)


def test_the_box_around_a_turned_place_is_that_of_its_corners():
    rng = random.Random(2)
    for _ in range(200):
        a, b = rng.uniform(0, 2 * math.pi), rng.uniform(-1.5, 1.5)
        along = (math.cos(a) * math.cos(b), math.sin(a) * math.cos(b), math.sin(b))
        across = (-math.sin(a), math.cos(a), 0.0)
        place = Place((rng.uniform(-9, 9), rng.uniform(-9, 9), rng.uniform(-9, 9)), along, across)
        low = [rng.uniform(-50, 50) for _ in range(3)]
        box = Box(*low, *(v + rng.uniform(1, 90) for v in low))
        points = [place.point(*p) for p in convex.corners(box)]
        around = place.box(box)
        for i, (least, most) in enumerate(
            ((around.x0, around.x1), (around.y0, around.y1), (around.z0, around.z1))
        ):
            assert least == pytest.approx(min(p[i] for p in points))
            assert most == pytest.approx(max(p[i] for p in points))
        assert not place.is_level
    assert Place((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), (-1.0, 0.0, 0.0)).is_level
