"""Shelves with a purpose: sloped for shoes, in a corner, over the top from wall to wall."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import combinations

import pytest

from closetbench.core.conflicts import common_volume
from closetbench.core.errors import ClosetError
from closetbench.core.inside import Spot
from closetbench.core.parts import Role
from closetbench.core.shoe_shelves import ShoeShelvesSpec, slope_length
from closetbench.core.specs import BackKind, BackSpec, BaySpec
from closetbench.core.wall_shelves import (
    Corner,
    CornerShelvesSpec,
    LipSpec,
    OverShelfSpec,
)
from tests.core.inside_case import CARCASS, CATALOGUE, closet, component, parts, rules
from tests.core.solids import clashes

SHOES = ShoeShelvesSpec("S", Spot("A", 1, 1), count=3)
CORNER = CornerShelvesSpec("C", "ply18", (800.0, 1200.0))
OVER = OverShelfSpec("O", "ply18")


def clash(built):
    bodies = built.bodies
    return [
        (p.full_name, q.full_name) for p, q in combinations(bodies, 2) if common_volume(p, q) > 1
    ]


@pytest.mark.parametrize("drop", [0.0, 30.0, 80.0, 150.0])
@pytest.mark.parametrize("depth", [300.0, 400.0, 600.0])
@pytest.mark.parametrize("back", [BackKind.PANEL, BackKind.CLEATS])
def test_shoe_shelves_fill_the_depth_and_touch_nothing(drop, depth, back):
    carcass = replace(CARCASS, back=BackSpec(back))
    spec = replace(SHOES, drop=min(drop, depth / 3))
    built = closet(spec, carcass=carcass, depth=depth)
    bay = built.components[0].bays[0].space
    mine = component(built, "S").parts
    rear = min([bay.y1, *(p.box().y0 for p in built.parts if p.role is Role.CLEAT
                          and p.component == "A")])
    for part in mine:
        box = part.box()
        assert bay.y0 - 1e-6 <= box.y0
        assert box.y1 <= rear + 1e-6
        assert bay.x0 - 1e-6 <= box.x0
        assert box.x1 <= bay.x1 + 1e-6
        assert bay.z0 <= box.z0
    boxes = [p.box() for p in mine if p.role in (Role.SHOE_SHELF, Role.LIP)]
    assert min(b.y0 for b in boxes) == pytest.approx(bay.y0 + 2)
    assert max(b.y1 for b in boxes) == pytest.approx(rear - 2)
    assert clash(built) == []
    assert "parts-overlap" not in rules(built.findings)


def test_the_slope_is_what_was_asked():
    built = closet(SHOES)
    for part in parts(built, Role.SHOE_SHELF, "S"):
        p, place = part.panel, part.place
        front, back = place.point(0.0, 0.0, 0.0), place.point(0.0, p.width, 0.0)
        assert back[2] - front[2] == pytest.approx(80.0)
        assert math.dist(front, back) == pytest.approx(p.width)
        up = place.up
        assert math.hypot(*up) == pytest.approx(1.0)
        assert up[2] > 0.9
    stop, shelf = parts(built, Role.LIP, "S")[0], parts(built, Role.SHOE_SHELF, "S")[0]
    # the stop stands square on the shelf at its very front, its face to the front
    assert stop.place.point(0.0, 0.0, stop.panel.thickness) == pytest.approx(
        shelf.place.point(0.0, 0.0, shelf.panel.thickness))
    assert stop.place.across == pytest.approx(shelf.place.up)
    assert stop.place.up[1] < -0.9


def test_slope_length_by_hand():
    """Level: the depth itself. 300 mm and no thickness, falling 400: a triangle 3-4-5."""
    assert slope_length(300.0, 0.0, 50.0) == pytest.approx(300.0)
    assert slope_length(300.0, 400.0, 0.0) == pytest.approx(500.0)
    length = slope_length(400.0, 100.0, 60.0)
    assert math.sqrt(length**2 - 100**2) + 60 * 100 / length == pytest.approx(400.0)


def test_shoe_shelves_lie_evenly_with_the_same_room_above_the_last():
    built = closet(SHOES)
    fronts = [p.place.origin[2] for p in parts(built, Role.SHOE_SHELF, "S")]
    assert fronts[1] - fronts[0] == pytest.approx(fronts[2] - fronts[1])
    shelf = next(p.box() for p in built.parts if p.name == "bay 1 shelf 1")
    top = parts(built, Role.SHOE_SHELF, "S")[-1].box().z1
    assert shelf.z0 - top == pytest.approx(fronts[1] - fronts[0])


def test_a_sloped_shelf_through_a_loose_one_is_a_conflict():
    carcass = replace(CARCASS, bays=(BaySpec(600.0, adjustable=2), BaySpec()))
    built = closet(replace(SHOES, count=6), carcass=carcass)
    found = [f for f in built.findings if f.rule == "parts-overlap"]
    assert found
    assert all(f.subject.startswith("S: ") and "loose shelf" in f.message for f in found)


def test_common_volume_of_a_tilted_board_by_hand():
    """A board through the middle of another at right angles to its edges: width times both
    thicknesses over the sine of the angle between them."""
    built = closet(SHOES)
    (sloped, *_) = parts(built, Role.SHOE_SHELF, "S")
    level = next(p for p in built.parts if p.name == "bay 1 shelf 1")
    box, flat = sloped.box(), level.box()
    moved = replace(level, place=level.place.moved(
        0.0, 0.0, (box.z0 + box.z1) / 2 - (flat.z0 + flat.z1) / 2))
    sine = 80.0 / sloped.panel.width
    assert common_volume(moved, sloped) == pytest.approx(
        sloped.panel.length * 18.0 * 18.0 / sine, rel=1e-6)
    assert common_volume(sloped, moved) == pytest.approx(common_volume(moved, sloped))


def test_corner_shelves_by_hand():
    for corner in Corner:
        built = closet(replace(CORNER, corner=corner), carcass=None)
        shelf = parts(built, Role.CORNER_SHELF, "C")[0]
        box = shelf.box()
        assert (box.x1 - box.x0, box.y1 - box.y0, box.z0) == pytest.approx((600, 500, 800))
        assert box.y1 == pytest.approx(600)
        assert (box.x0 if corner is Corner.LEFT else 1300 - box.x1) == pytest.approx(0)
        # an L: both legs are 300 mm deep
        assert shelf.panel.volume == pytest.approx((600 * 300 + 200 * 300) * 18)
        assert clashes(built.parts) == []
        cleats = parts(built, Role.CLEAT, "C")
        assert len(cleats) == 4
        assert all(
            p.box().z1 == pytest.approx(q.box().z0) for p, q in zip(
                cleats[:2], [shelf, shelf], strict=True))
    square = replace(CORNER, along_back=300.0, along_side=300.0)
    shelf = parts(closet(square, carcass=None), Role.CORNER_SHELF, "C")[0]
    assert shelf.panel.notches == ()


def test_a_corner_shelf_where_a_carcass_stands_is_a_conflict():
    built = closet(CORNER)
    assert "parts-overlap" in rules(built.findings, "C")


def test_over_the_top_from_wall_to_wall():
    carcass = replace(CARCASS, width=900.0, height=1900.0, bays=(BaySpec(),))
    built = closet(OVER, carcass=carcass)
    (shelf,) = parts(built, Role.OVER_SHELF, "O")
    box = shelf.box()
    assert (box.x0, box.x1, box.z0) == pytest.approx((0, 1300, 1900))
    cleats = {p.name: p.box() for p in parts(built, Role.CLEAT, "O")}
    # only where no carcass carries it
    assert set(cleats) == {"back cleat 1", "right cleat"}
    assert (cleats["back cleat 1"].x0, cleats["back cleat 1"].x1) == pytest.approx((900, 1300))
    assert clashes(built.parts) == []


def test_pieces_meet_over_an_upright():
    carcass = replace(CARCASS, height=1900.0)
    built = closet(replace(OVER, pieces=2), carcass=carcass)
    first, second = (p.box() for p in parts(built, Role.OVER_SHELF, "O"))
    divider = next(p.box() for p in built.parts if p.role is Role.DIVIDER)
    assert first.x1 == second.x0 == pytest.approx((divider.x0 + divider.x1) / 2)
    assert "joint-in-the-air" not in rules(built.findings)
    high = closet(replace(OVER, pieces=2, height=1970.0), carcass=carcass)
    assert "joint-in-the-air" in rules(high.findings, "O")


def test_a_lip_takes_its_thickness_off_the_shelf():
    carcass = replace(CARCASS, height=1900.0, depth=400.0)
    built = closet(replace(OVER, depth=500.0, lip=LipSpec(45.0, "pine_1x4")), carcass=carcass)
    (shelf,), (lip,) = parts(built, Role.OVER_SHELF, "O"), parts(built, Role.LIP, "O")
    assert shelf.panel.width + lip.panel.thickness == pytest.approx(500)
    assert lip.box().z1 == pytest.approx(shelf.box().z1)
    assert lip.box().z1 - lip.box().z0 == pytest.approx(45)
    assert shelf.panel.bands == ()
    assert clashes(built.parts) == []
    for need in built.hardware:
        CATALOGUE.item(need.key)


@pytest.mark.parametrize(
    ("spec", "message"),
    [
        (replace(SHOES, count=0), r"number of shelves is 0; must be 1 or more"),
        (replace(SHOES, count=9), r"height for each shelf is \d+.* mm; must be at least 150"),
        (replace(SHOES, drop=400.0), r"S in A, bay 1: drop is 400 mm; must be 0 to 2\d\d"),
        (replace(SHOES, stop=5.0), r"height of the stop is 5 mm; must be 10 to 150"),
        (replace(CORNER, along_back=1500.0), r"length along the back is 1500 mm; must be 100 to"),
        (replace(CORNER, depth_back=600.0), r"depth along the back is 600 mm; must be 50 to 500"),
        (replace(CORNER, heights=()), r"heights is none; must be given"),
        (replace(CORNER, heights=(800.0, 830.0)), r"shelf 2: height is 830 mm; must be 868 to"),
        (replace(OVER, height=1990.0), r"O: height is 1990 mm; must be 60 to 1982"),
        (replace(OVER, height=1950.0, lip=LipSpec(10.0)), r"height of the lip is 10 mm; must"),
        (replace(OVER, height=1950.0, pieces=0), r"pieces is 0; must be 1 to 10"),
        (replace(OVER, height=1950.0, x1=50.0), r"right end is 50 mm; must be 100 to 1300"),
        (replace(OVER, height=1950.0, depth=700.0), r"depth is 700 mm; must be 78 to 600"),
    ],
)
def test_what_is_refused_names_value_and_limit(spec, message):
    with pytest.raises(ClosetError, match=message):
        closet(spec)


def test_a_shelf_on_nothing_is_refused():
    with pytest.raises(ClosetError, match=r"O: height is none; must be given where no carcass"):
        closet(OVER, carcass=None)
