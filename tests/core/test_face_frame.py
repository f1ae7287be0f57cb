"""Face frames: members by hand, joints and their cut lengths, fillers taken up, openings."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import combinations

import pytest

from closetbench.core.closet import ClosetDesign, build_closet
from closetbench.core.conflicts import common_volume
from closetbench.core.doors import DoorsSpec
from closetbench.core.drawers import DrawersSpec
from closetbench.core.errors import ClosetError
from closetbench.core.face_frame import FaceFrameSpec, FrameJoint, StileEnd
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.panel import Face, Rim
from closetbench.core.parts import Role
from closetbench.core.specs import BaySpec
from tests.core.inside_case import CARCASS, CATALOGUE, closet, component, parts, rules
from tests.core.rooms import TrueRoom
from tests.core.solids import clashes

SHALLOW = replace(CARCASS, depth=550.0, bays=(BaySpec(600.0, fixed=1), BaySpec(fixed=1)))
FRAME = FaceFrameSpec("F", "A")
T = 19.05


def framed(spec: FaceFrameSpec = FRAME, *more, carcass=SHALLOW):
    return closet(spec, *more, carcass=carcass)


def named(built, name):
    return next(p for p in component(built, "F").parts if p.name == name)


def test_members_by_hand():
    """A carcass 1300 wide and 2000 high, base 80 mm, board 18 mm; divider from 618 to 636."""
    built = framed()
    sizes = {
        p.name: (p.box().x0, p.box().x1, p.box().z0, p.box().z1)
        for p in component(built, "F").parts
    }
    floor = 80.0 + 18.0
    expected = {
        "left stile": (0.0, 45.0, floor - 45, 2000.0),
        "right stile": (1255.0, 1300.0, floor - 45, 2000.0),
        "mullion 1": (607.0, 647.0, floor, 1940.0),
        "bottom rail": (45.0, 1255.0, floor - 45, floor),
        "top rail": (45.0, 1255.0, 1940.0, 2000.0),
    }
    assert set(sizes) == set(expected)
    for name, size in expected.items():
        assert sizes[name] == pytest.approx(size), name
    for part in component(built, "F").parts:
        box = part.box()
        assert (box.y0, box.y1) == (pytest.approx(50 - T), pytest.approx(50))
    assert clashes(built.parts) == []


@pytest.mark.parametrize("joint", FrameJoint)
@pytest.mark.parametrize("rail", [0.0, 30.0])
def test_members_fill_the_frame_once(joint, rail):
    """Whatever the joint, every point of the frame is covered by wood exactly once."""
    spec = replace(FRAME, joint=joint, shelf_rail=rail, overhang_top=12.0, right=StileEnd.OVERHANG)
    built = framed(spec)
    members = component(built, "F").parts
    assert [(p.name, q.name) for p, q in combinations(members, 2) if common_volume(p, q) > 1] == []
    volume = sum(p.panel.volume for p in members)
    box = component(built, "F").box
    whole = (box.x1 - box.x0) * (box.z1 - box.z0)
    bays = built.components[0].bays
    clear = [(bays[0].space.x0 + 27, 607.0), (647.0, box.x1 - 45.0)]
    high = 2000 + 12 - 60 - bays[0].space.z0
    holes = sum((b - a) * (high - rail) for a, b in clear)
    # of a dowel's two holes, 42 mm deep together
    drilled = sum(len(p.panel.rim_holes) for p in members) / 2 * 42 * math.pi * 16
    assert (drilled > 0) == (joint is FrameJoint.DOWEL)
    assert volume == pytest.approx((whole - holes) * T - drilled, rel=1e-9)
    assert clashes(built.parts) == []


def test_cut_lengths_by_joint():
    lengths = {}
    for joint in FrameJoint:
        spec = replace(FRAME, joint=joint, shelf_rail=30.0)
        built = framed(spec)
        lengths[joint] = {p.name: p.panel.cut_length for p in component(built, "F").parts}
    for joint in (FrameJoint.POCKET, FrameJoint.DOWEL):
        assert lengths[joint]["top rail"] == pytest.approx(1210)
        assert lengths[joint]["mullion 1"] == pytest.approx(1940 - 98)
        assert lengths[joint]["bay 1 rail 1"] == pytest.approx(607 - 45)
    lap = lengths[FrameJoint.HALF_LAP]
    assert lap["top rail"] == pytest.approx(1210 + 2 * 45)
    assert lap["mullion 1"] == pytest.approx(1940 - 98 + 45 + 60)
    # a shelf rail laps over the whole stile and half of the mullion
    assert lap["bay 1 rail 1"] == pytest.approx(607 - 45 + 45 + 20)
    assert all(m["left stile"] == pytest.approx(2000 - 53) for m in lengths.values())


def test_fasteners_by_joint():
    for joint, key in ((FrameJoint.POCKET, "pocket_screw_4x32"), (FrameJoint.DOWEL, "dowel_8x40")):
        built = framed(replace(FRAME, joint=joint))
        needs = {n.key: n.count for n in component(built, "F").hardware}
        # two rails and a mullion, two ends each, two in a joint
        assert needs[key] == 12
    built = framed(replace(FRAME, joint=FrameJoint.HALF_LAP))
    assert {n.key for n in component(built, "F").hardware} == {"nail_18x40"}
    for need in built.hardware:
        CATALOGUE.item(need.key)


def ends_of(part):
    """Mouth and bottom of each hole in a part's rims, in the closet's frame."""
    for hole in part.panel.rim_holes:
        box = part.panel.rim_hole_box(hole)
        low, high = (box.x0, box.y0), (box.x1, box.y1)
        axis = 0 if hole.rim.is_end else 1
        ends = []
        for end in (low, high):
            at = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2]
            at[axis] = end[axis]
            ends.append(part.place.point(*at, hole.level))
        first = hole.rim in (Rim.START, Rim.FRONT)
        yield tuple(ends if first else reversed(ends))


@pytest.mark.parametrize("mullion", [20.0, 40.0])
def test_the_two_holes_of_each_dowel_face_each_other(mullion):
    spec = replace(FRAME, joint=FrameJoint.DOWEL, shelf_rail=30.0, mullion=mullion)
    members = component(framed(spec), "F").parts
    found = {}
    for part in members:
        for mouth, bottom in ends_of(part):
            found.setdefault(tuple(round(v, 6) for v in mouth), []).append((part, bottom))
            assert mouth[1] == pytest.approx(50 - T / 2), "in the middle of the thickness"
    # two rails with two dowels at each end, two shelf rails with one, the mullion by its width
    assert len(found) == 2 * 2 * 2 + 2 * 2 + (2 if mullion < 32 else 4)
    for mouth, pair in found.items():
        (p, a), (q, b) = pair
        assert p is not q
        assert math.dist(a, b) == pytest.approx(42.0), mouth
        assert math.dist(a, mouth) + math.dist(mouth, b) == pytest.approx(42.0), "in one line"
    needs = {n.key: n.count for n in component(framed(spec), "F").hardware}
    assert needs["dowel_8x40"] == len(found)


def test_pockets_lie_in_the_rear_of_rails_and_mullions():
    members = component(framed(replace(FRAME, shelf_rail=30.0)), "F").parts
    for part in members:
        pockets = part.panel.pockets
        assert all(p.face is Face.LOWER and p.rim.is_end for p in pockets)
        width = part.panel.width
        # two in a joint 32 mm wide or wider, one in a narrower
        each = 2 if width >= 32 else 1
        assert len(pockets) == (0 if part.role is Role.STILE else 2 * each)
        assert not part.panel.rim_holes
    top = named(framed(), "top rail").panel
    assert [(p.rim, p.at, p.name) for p in top.pockets] == [
        (Rim.START, 15.0, "left stile"), (Rim.START, 45.0, "left stile"),
        (Rim.END, 15.0, "right stile"), (Rim.END, 45.0, "right stile"),
    ]


def test_rails_for_shelves_lie_level_with_their_tops():
    built = framed(replace(FRAME, shelf_rail=30.0))
    shelf = next(p.box() for p in built.parts if p.name == "bay 1 shelf 1")
    rail = named(built, "bay 1 rail 1").box()
    assert (rail.z0, rail.z1) == (pytest.approx(shelf.z1 - 30), pytest.approx(shelf.z1))


def test_end_stiles_take_up_the_gap_to_a_crooked_wall():
    survey = TrueRoom(left=(8.0, 5.0), right=(6.0, 9.0)).survey()
    design = ClosetDesign("t", survey, components=(
        replace(SHALLOW, bays=(BaySpec(), BaySpec(), BaySpec())),
        replace(FRAME, left=StileEnd.WALL, right=StileEnd.WALL),
    ))
    built = build_closet(design, CATALOGUE)
    envelope, room = built.envelope, built.room
    left, right = named(built, "left stile"), named(built, "right stile")
    assert left.box().x1 == pytest.approx(45)
    for stile, wall, edge in ((left, room.left, Rim.REAR), (right, room.right, Rim.FRONT)):
        (taper,) = stile.panel.tapers
        assert (taper.rim, taper.allowance >= FRAME.scribe) == (edge, True)
        # its corners at that edge lie on the wall, where the frame stands
        ring = stile.panel.outline()
        for x, y in ring[2:] if edge is Rim.REAR else ring[:2]:
            at = stile.place.point(x, y, 0.0)
            true = wall.at(built.components[0].box.y0 + envelope.y0, at[2] + envelope.z0)
            assert at[0] + envelope.x0 == pytest.approx(true, abs=0.3)
    assert "scribe-stile" in rules(built.findings, "F")


def test_an_overlay_covers_no_more_of_a_stile_than_lies_before_the_carcass():
    frame = replace(FRAME, left=StileEnd.WALL, stile=40.0, bottom_rail=40.0)
    drawers = DrawersSpec("D", Spot("A", 1, 1), count=2, front=FrontSpec(FrontKind.FULL))
    front = parts(framed(frame, drawers), Role.FRONT)[0].box()
    assert front.x0 == pytest.approx(1.5)


def test_an_overhang_past_the_envelope_is_named():
    built = framed(replace(FRAME, right=StileEnd.OVERHANG))
    (found,) = [f for f in built.findings if f.rule == "frame-past"]
    assert "at the right" in found.message
    assert found.value == "6.0 mm"


def test_stiles_to_the_floor():
    built = framed(replace(FRAME, to_floor=True))
    assert named(built, "left stile").box().z0 == pytest.approx(0)
    assert named(built, "bottom rail").box().z0 == pytest.approx(53)


def test_inset_drawers_sit_in_the_frame_with_even_reveals():
    built = framed(
        replace(FRAME, shelf_rail=30.0),
        DrawersSpec("D", Spot("A", 1, 1), count=2, front=FrontSpec(gap=2.0)),
    )
    low, high = (p.box() for p in parts(built, Role.FRONT))
    rail = named(built, "bay 1 rail 1").box()
    assert low.x0 - 45.0 == pytest.approx(2.0)
    assert 607.0 - low.x1 == pytest.approx(2.0)
    assert low.z0 - 98.0 == pytest.approx(2.0)
    assert rail.z0 - high.z1 == pytest.approx(2.0)
    assert low.y0 == pytest.approx(50 - T)
    left, right = (p.box() for p in parts(built, Role.BOX_SIDE)[:2])
    # 12.7 + 0.4 mm to the frame's edges, so that the box passes between them
    assert left.x0 - 45.0 == pytest.approx(13.1)
    assert 607.0 - right.x1 == pytest.approx(13.1)
    (note,) = [f for f in built.findings if f.rule == "slide-packing"]
    assert "27.0 mm at the left" in note.message
    assert "11.0 mm at the right" in note.message
    assert not rules(built.findings, "D") & {"parts-overlap", "pull-blocked"}


def test_a_door_laps_over_the_frame_as_told():
    door = DoorsSpec("D", Spot("A", 1, 1), front=FrontSpec(FrontKind.FULL, lap=12.7))
    built = framed(replace(FRAME, shelf_rail=30.0), door)
    box = parts(built, Role.DOOR)[0].box()
    assert (box.x0, box.x1) == (pytest.approx(45 - 12.7), pytest.approx(607 + 12.7))
    assert box.y1 == pytest.approx(50 - T)
    with pytest.raises(ClosetError, match=r"overlay at the left is 43\.5 mm; must be 0 to 19 mm"):
        framed(FRAME, replace(door, front=FrontSpec(FrontKind.FULL)))


def test_the_frame_in_a_full_depth_closet_stands_proud():
    built = framed(carcass=replace(SHALLOW, depth=None))
    assert "frame-proud" in rules(built.findings, "F")
    assert "frame-proud" not in rules(framed().findings, "F")


@pytest.mark.parametrize(
    ("spec", "message"),
    [
        (replace(FRAME, carcass="B"), r"F: carcass is 'B'; must be one of A"),
        (replace(FRAME, stile=15.0), r"width of the stiles is 15 mm; must be 20 to 218 mm"),
        (replace(FRAME, mullion=10.0), r"width of the mullions is 10 mm; must be 20 to 300"),
        (replace(FRAME, bottom_rail=120.0), r"height of the bottom rail is 120 mm; must be 20 to"),
        (replace(FRAME, top_rail=900.0), r"height of the top rail is 900 mm; must be 20 to 500"),
        (replace(FRAME, shelf_rail=5.0), r"height of the shelf rails is 5 mm; must be 20"),
        (replace(FRAME, overhang=40.0), r"overhang is 40 mm; must be 0 to 27 mm"),
        (replace(FRAME, scribe=-1.0), r"scribe allowance is -1 mm; must be 0 to 100"),
        (replace(FRAME, stile=120.0), r"left stile: width is 120 mm; must be 0 to 88\.9 mm from"),
        (replace(FRAME, material="oak"), r"material is oak; is not in the catalogue"),
    ],
)
def test_what_is_refused_names_value_and_limit(spec, message):
    with pytest.raises(ClosetError, match=message):
        framed(spec)
