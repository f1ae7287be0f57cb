"""Holes for the plates of hinges, in the sides that doors hang on.

37 mm from the front edge, two holes 32 mm apart about the height of the cup: common practice,
no published source.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.bench import BenchSpec
from closetbench.core.doors import DoorsSpec, Hinged
from closetbench.core.errors import CatalogueError
from closetbench.core.face_frame import FaceFrameSpec
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.parts import Role
from closetbench.core.specs import BackKind, BackSpec, BaySpec, CarcassSpec
from tests.core.inside_case import CARCASS, CATALOGUE, closet, component, parts, rules

LOW = Spot("A", 1, 1)
OPEN = CarcassSpec(
    "A", "mdf18", bays=(BaySpec(width=500.0), BaySpec(width=500.0), BaySpec()),
    back=BackSpec(BackKind.PANEL, "hardboard3"),
)
CUT_SHORT = 900.0


def holes(built, part, name="hinge plate"):
    """Middles of a part's holes of a name in the closet's frame, and their rows."""
    found = component(built, "A").parts
    item = next(p for p in found if p.name == part)
    rows = [r for r in item.panel.holes if r.name == name]
    return rows, sorted(
        tuple(round(v, 6) for v in item.place.point(x, y, 0.0)[1:])
        for r in rows for x, y in r.centres()
    )


def cup_heights(built, name="D"):
    return sorted(
        round(p.place.point(x, y, 0.0)[2], 6)
        for p in parts(built, Role.DOOR, name) for r in p.panel.holes if r.name == "hinge cup"
        for x, y in r.centres()
    )


@pytest.mark.parametrize("kind", [FrontKind.INSET, FrontKind.HALF, FrontKind.FULL])
@pytest.mark.parametrize("hinged", Hinged)
def test_plates_lie_behind_the_cups(kind, hinged):
    built = closet(DoorsSpec("D", LOW, hinged=hinged, front=FrontSpec(kind)))
    front = component(built, "A").box.y0
    inset = 18.0 if kind is FrontKind.INSET else 0.0
    side, other = ("left side", "divider 1")
    if hinged is Hinged.RIGHT:
        side, other = other, side
    rows, at = holes(built, side)
    assert at == [
        (front + inset + 37.0, pytest.approx(z + d)) for z in cup_heights(built) for d in (-16, 16)
    ]
    assert {(r.diameter, r.depth) for r in rows} == {(5.0, 10.0)}
    # they open into the bay: LOWER faces right
    assert {r.face.value for r in rows} == {"lower" if hinged is Hinged.LEFT else "upper"}
    assert holes(built, other)[1] == []
    assert "boring-blocked" not in rules(built.findings)


def test_cups_and_plates_follow_a_row_of_shelf_pins():
    """A plate then sits on two holes that are there, so none is drilled beside them."""
    carcass = replace(CARCASS, bays=(BaySpec(width=600.0, adjustable=3), BaySpec()))
    built = closet(DoorsSpec("D", LOW, front=FrontSpec(FrontKind.FULL)), carcass=carcass)
    pins = holes(built, "left side", "shelf pins")[1]
    front = component(built, "A").box.y0
    grid = {z for y, z in pins if y == front + 37.0}
    plates = holes(built, "left side")[1]
    wanted = {round(z + d, 6) for z in cup_heights(built) for d in (-16, 16)}
    assert wanted <= grid | {z for _, z in plates}
    assert wanted & grid
    assert all(min((z - g) % 32 for g in grid) < 1e-6 for z in wanted)
    door = parts(built, Role.DOOR)[0].box()
    assert all(z - door.z0 >= 84 - 1e-6 for z in cup_heights(built)[:1])
    assert "boring-blocked" not in rules(built.findings)


@pytest.mark.parametrize("height", [1000.0, 1240.0, 1411.0, 1777.0])
def test_uneven_cups_are_still_where_their_plates_are(height):
    carcass = replace(CARCASS, bays=(BaySpec(width=400.0, adjustable=3), BaySpec()))
    built = closet(DoorsSpec("D", Spot("A", 1, 1, height=height)), carcass=carcass)
    heights = cup_heights(built)
    assert len(heights) >= 3
    there = {z for _, z in (*holes(built, "left side")[1],
                            *holes(built, "left side", "shelf pins")[1])}
    assert {round(z + d, 6) for z in heights for d in (-16, 16)} <= there


def test_doors_on_both_sides_of_a_divider_share_holes_right_through():
    doors = [
        DoorsSpec("D", Spot("A", 1, height=CUT_SHORT), hinged=Hinged.RIGHT),
        DoorsSpec("E", Spot("A", 2, height=CUT_SHORT), hinged=Hinged.LEFT),
    ]
    built = closet(*doors, carcass=OPEN, width=1600.0)
    assert cup_heights(built) == cup_heights(built, "E")
    rows, at = holes(built, "divider 1")
    assert {r.depth for r in rows} == {18.0}
    assert len(at) == 2 * len(cup_heights(built)) == len(set(at))
    apart = closet(doors[0], replace(doors[1], spot=Spot("A", 2, start=8.0, height=CUT_SHORT)),
                   carcass=OPEN, width=1600.0)
    assert {r.depth for r in holes(apart, "divider 1")[0]} == {10.0}
    assert "boring-blocked" not in rules(apart.findings)


def test_pins_of_the_next_bay_share_their_holes_with_plates():
    bays = (BaySpec(width=500.0), BaySpec(width=500.0, adjustable=2), BaySpec())
    built = closet(
        DoorsSpec("D", Spot("A", 1), leaves=2), carcass=replace(OPEN, bays=bays), width=1600.0)
    assert "boring-blocked" not in rules(built.findings)
    item = next(p for p in component(built, "A").parts if p.name == "divider 1")
    centres = [c for r in item.panel.holes for c in r.centres()]
    assert len(centres) == len(set(centres))
    # every pin hole of the second bay is still there, by its place
    alone = closet(carcass=replace(OPEN, bays=bays), width=1600.0)
    pins = holes(alone, "divider 1", "shelf pins")[1]
    assert set(pins) <= set(holes(built, "divider 1", "shelf pins")[1]) | set(
        holes(built, "divider 1")[1])


def test_a_shelf_in_the_way_is_named():
    """The groove of a shelf on the divider's other face leaves too little under the holes."""
    wanted = closet(DoorsSpec("D", Spot("A", 1), leaves=2), carcass=OPEN, width=1600.0)
    z = cup_heights(wanted)[0] + 16.0
    floor = component(wanted, "A").bays[0].space.z0
    bays = (BaySpec(width=500.0), BaySpec(width=500.0, heights=(z - floor - 9.0,)), BaySpec())
    built = closet(
        DoorsSpec("D", Spot("A", 1), leaves=2), carcass=replace(OPEN, bays=bays), width=1600.0)
    (found,) = [f for f in built.findings if f.rule == "boring-blocked"]
    assert found.subject == "D"
    assert found.parts == ("A: divider 1",)
    assert "bay 2 shelf 1" in found.message


def test_behind_a_face_frame_and_in_a_bench_nothing_is_drilled():
    framed = closet(
        FaceFrameSpec("F", "A"), DoorsSpec("D", LOW, front=FrontSpec(FrontKind.INSET)),
        carcass=replace(CARCASS, depth=550.0),
    )
    assert holes(framed, "left side")[1] == []
    assert "plates-on-frame" in rules(framed.findings, "D")
    bench = closet(
        BenchSpec("B", width=900.0, height=450.0),
        DoorsSpec("D", Spot("B"), leaves=2, front=FrontSpec(FrontKind.INSET, "mdf18")),
        carcass=None,
    )
    wanted = component(bench, "D").borings
    drilled = sum(len(r.centres()) for p in component(bench, "B").parts for r in p.panel.holes
                  if r.name == "hinge plate")
    blocked = [f for f in bench.findings if f.rule == "boring-blocked"]
    assert drilled + 2 * len(blocked) == 2 * len(wanted)


def test_a_class_of_ones_own_says_where_plates_are_screwed():
    own = replace(CATALOGUE.hinge("concealed_110"), plate_front=28.0, plate_depth=11.0)
    assert (own.plate_front, own.plate_pitch) == (28.0, 32.0)
    with pytest.raises(CatalogueError, match=r"plate_front is 200 mm; must be from 10 to 100 mm"):
        replace(own, plate_front=200.0)
