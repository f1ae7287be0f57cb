"""Doors: sizes, borings, number of hinges, what is refused, and what they swing into."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest

from closetbench.core.doors import DoorsSpec, Hinged
from closetbench.core.drawers import DrawersSpec
from closetbench.core.errors import ClosetError
from closetbench.core.figures import GRAVITY
from closetbench.core.findings import Severity
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.handling import part_weight
from closetbench.core.inside import Spot
from closetbench.core.meeting import free_angle, meeting_findings
from closetbench.core.moves import Swing, Turn
from closetbench.core.panel import Box, Face
from closetbench.core.parts import Role
from closetbench.core.specs import BaySpec
from tests.core.inside_case import CARCASS, CATALOGUE, closet, component, parts, rules
from tests.core.solids import clashes

LOW = Spot("A", 1, 1)


def leaves(built):
    return parts(built, Role.DOOR)


def cups(part):
    """Middles of the borings in the closet's frame."""
    (row,) = [h for h in part.panel.holes if h.name == "hinge cup"]
    return row, [part.place.point(x, y, 0.0) for x, y in row.centres()]


def test_full_overlay_door_by_hand():
    """Opening 600 wide and 931.. high: side 18 mm, divider shared; gap 3 mm."""
    built = closet(DoorsSpec("D", LOW))
    (door,) = leaves(built)
    box, bay = door.box(), built.components[0].bays[0].space
    assert (box.x0, box.x1) == (pytest.approx(1.5), pytest.approx(18 + 600 + 7.5))
    assert box.z0 == pytest.approx(bay.z0 - 16.5)
    assert (box.y0, box.y1) == (pytest.approx(-18), pytest.approx(0))
    row, at = cups(door)
    assert (row.diameter, row.depth, row.face) == (35.0, 12.5, Face.LOWER)
    # the boring's edge is 4 mm from the hinged edge
    assert {round(p[0] - box.x0, 6) for p in at} == {4 + 17.5}
    assert at[0][2] - box.z0 == pytest.approx(100)
    assert box.z1 - at[-1][2] == pytest.approx(100)
    assert clashes(built.parts) == []
    assert not rules(built.findings, "D") & {"parts-overlap", "swing-blocked"}


@pytest.mark.parametrize("hinged", Hinged)
@pytest.mark.parametrize("kind", [FrontKind.INSET, FrontKind.HALF, FrontKind.FULL])
def test_borings_lie_at_the_hinged_edge_and_the_pull_at_the_other(hinged, kind):
    built = closet(DoorsSpec("D", LOW, hinged=hinged, front=FrontSpec(kind)))
    (door,) = leaves(built)
    box = door.box()
    _, at = cups(door)
    pull = next(h for h in door.panel.holes if h.name == "pull")
    (x, y), = pull.centres()
    pull_at = door.place.point(x, y, 0.0)
    near, far = (box.x0, box.x1) if hinged is Hinged.LEFT else (box.x1, box.x0)
    assert all(abs(p[0] - near) == pytest.approx(21.5) for p in at)
    assert abs(pull_at[0] - far) == pytest.approx(40)


def test_inset_pair_has_even_reveals():
    built = closet(DoorsSpec("D", LOW, leaves=2, front=FrontSpec(FrontKind.INSET, gap=2.0)))
    left, right = (p.box() for p in leaves(built))
    bay = built.components[0].bays[0].space
    shelf = next(p.box() for p in built.parts if p.role is Role.FIXED_SHELF)
    gaps = (left.x0 - bay.x0, right.x0 - left.x1, bay.x1 - right.x1, left.z0 - bay.z0,
            shelf.z0 - left.z1)
    assert gaps == pytest.approx((2.0,) * 5)
    assert left.x1 - left.x0 == pytest.approx(297.0)
    assert left.y0 == pytest.approx(bay.y0)
    # the leaves of a pair are mirror images: one turned end for end is the other
    assert leaves(built)[0].panel.holes != leaves(built)[1].panel.holes


@pytest.mark.parametrize(
    ("height", "hinges"), [(700.0, 2), (1500.0, 3), (1900.0, 4), (2300.0, 5)]
)
def test_number_of_hinges_by_height(height, hinges):
    """Two to 900 mm, then one more to 1600, 2000 and 2400 mm: common practice, no published
    source."""
    carcass = replace(CARCASS, bays=(BaySpec(width=300.0), BaySpec()))
    built = closet(
        DoorsSpec("D", Spot("A", 1, 1, height=height), front=FrontSpec(FrontKind.INSET)),
        carcass=carcass, height=2500.0,
    )
    (door,) = leaves(built)
    row, at = cups(door)
    assert row.count == hinges
    assert {n.key: n.count for n in component(built, "D").hardware}["hinge_35"] == hinges
    gaps = [b[2] - a[2] for a, b in pairwise(at)]
    assert max(gaps) == pytest.approx(min(gaps))


def test_a_heavy_leaf_takes_more_hinges():
    hinge = CATALOGUE.hinges["concealed_110"]
    assert [hinge.count(800, w, "x") for w in (5, 11, 16, 21)] == [2, 3, 4, 5]
    with pytest.raises(ClosetError, match=r"weight of a door is 30\.0 kg; must be at most 22 kg"):
        hinge.count(800, 30, "x")


def test_pull_lies_at_a_metre_where_the_leaf_reaches():
    tall = closet(
        DoorsSpec("D", Spot("A", 1, 1)), carcass=replace(CARCASS, bays=(BaySpec(600.0), BaySpec()))
    )
    low = closet(DoorsSpec("D", Spot("A", 1, 1, height=500.0)))
    for built, z in ((tall, 1000.0), (low, leaves(low)[0].box().z1 - 60)):
        (door,) = leaves(built)
        pull = next(h for h in door.panel.holes if h.name == "pull")
        assert door.place.point(*pull.centres()[0], 0.0)[2] == pytest.approx(z)


def test_a_door_before_drawers_is_named_with_them():
    inset = DrawersSpec("P", LOW, front=FrontSpec(FrontKind.NONE), count=2)
    built = closet(inset, DoorsSpec("D", LOW))
    found = [f for f in built.findings if f.rule == "pull-behind-door"]
    assert {f.subject for f in found} == {"P: drawer 1", "P: drawer 2"}
    assert all("D: door" in f.message for f in found)
    # the leaf, turned about its outer front edge, stands 1.5 mm inside; the box lies 13.1 mm in
    assert {f.severity for f in found} == {Severity.NOTE}
    behind = closet(inset, DoorsSpec("D", LOW, front=FrontSpec(FrontKind.INSET)))
    assert rules(behind.findings, "P: drawer 1") >= {"parts-overlap"} or [
        f for f in behind.findings if f.rule == "parts-overlap"]


def test_an_inset_door_stands_in_the_way_of_the_pull_out_behind_it():
    carcass = replace(CARCASS, bays=(BaySpec(width=600.0), BaySpec()))
    shelf = DrawersSpec("P", Spot("A", 1, 1, 300.0, 200.0), front=FrontSpec(FrontKind.NONE))
    door = DoorsSpec("D", Spot("A", 1, 1), front=FrontSpec(FrontKind.INSET))
    built = closet(shelf, door, carcass=carcass)
    (found,) = [f for f in built.findings if f.rule == "pull-behind-door"]
    assert found.severity is Severity.WARNING
    assert found.parts == ("D: door",)


def test_doors_hinged_side_by_side_cannot_both_stand_open():
    built = closet(
        DoorsSpec("D", LOW, hinged=Hinged.RIGHT, front=FrontSpec(FrontKind.INSET, gap=1.0)),
        DoorsSpec("E", Spot("A", 2, 1), front=FrontSpec(FrontKind.FULL)),
    )
    assert "doors-meet" not in rules(built.findings)
    swing = Swing("a", frozenset({"a"}), Box(0, -18, 0, 400, 0, 900), Turn.RIGHT, 110)
    wall = ("a wall", Box(402, -2000, 0, 500, -10, 900))
    assert free_angle(swing, [], [wall]) == (pytest.approx(90), "a wall")


def test_free_angle_by_hand():
    """The front of a leaf 400 mm wide meets the corner of a post 210 mm across and 200 mm out
    at atan(200/210) = 43.6 degrees; its tip meets a wall 200 mm out at asin(200/400) = 30."""
    swing = Swing("a", frozenset({"a"}), Box(0, 0, 0, 400, 18, 900), Turn.LEFT, 110)
    post = ("b", Box(190, -600, 0, 210, -200, 900))
    assert free_angle(swing, [], [post]) == (43, "b")
    wall = ("c", Box(-600, -600, 0, 600, -200, 900))
    assert free_angle(swing, [], [wall]) == (30, "c")
    above = ("b", Box(190, -600, 950, 600, -200, 1000))
    assert free_angle(swing, [], [above]) == (110, "")
    lid = Swing("l", frozenset({"l"}), Box(0, 0, 400, 900, 300, 420), Turn.UP, 95)
    shelf = ("s", Box(0, 100, 550, 900, 300, 570))
    # the upper face meets the shelf's front lower corner, 200 mm ahead and 130 mm up
    assert free_angle(lid, [], [shelf]) == (33, "s")


def test_a_door_that_cannot_open_is_a_finding_that_names_what_stops_it():
    built = closet(DoorsSpec("D", LOW))
    jamb = ("the left return", Box(-500, -200, 0, 30, -20, 3000))
    (found,) = [
        f for f in meeting_findings(built.components, [jamb]) if f.rule == "swing-blocked"]
    assert found.subject == "D: door"
    assert found.parts == ("the left return",)
    assert "opens only" in found.message
    beside = ("the left return", Box(-500, -200, 0, -5, -20, 3000))
    assert not meeting_findings(built.components, [beside])


def test_a_drawer_that_cannot_come_out_is_a_finding_that_names_what_stops_it():
    built = closet(DrawersSpec("P", LOW, front=FrontSpec(FrontKind.FULL)))
    assert not meeting_findings(built.components)
    jamb = ("the left return", Box(-500, -200, 0, 10, -20, 3000))
    (found,) = meeting_findings(built.components, [jamb])
    assert (found.rule, found.subject) == ("pull-blocked", "P: drawer")
    assert "the left return" in found.message
    assert found.value == "550 mm of travel"


@pytest.mark.parametrize(
    ("spec", "message"),
    [
        (DoorsSpec("D", LOW, front=FrontSpec(FrontKind.INSET, gap=0.0)),
         r"gap around the fronts is 0 mm; must be 1 to 10 mm"),
        (DoorsSpec("D", LOW, front=FrontSpec(FrontKind.NONE)),
         r"front is none; must be inset or an overlay"),
        (DoorsSpec("D", LOW, leaves=3), r"number of leaves is 3; must be 1 or 2"),
        (DoorsSpec("D", LOW, hinges=1), r"number of hinges is 1; must be 2 or more"),
        (DoorsSpec("D", LOW, hinges=40), r"number of hinges is 40; .* leave 45 mm"),
        (DoorsSpec("D", LOW, front=FrontSpec(FrontKind.FULL, "hardboard3")),
         r"thickness of a door is 3.* mm; must be 15\.5 to 24 mm for a concealed"),
        (DoorsSpec("D", LOW, hinge="butt"), r"hinge is butt; is not in the catalogue"),
        (DoorsSpec("D", LOW, pull_height=3000.0), r"height of the pull is 3000 mm; must be"),
        (DoorsSpec("D", LOW, cup_edge=40.0), r"edge distance of the cups is 40 mm; must be 1 to"),
        (DoorsSpec("D", LOW, front=FrontSpec(FrontKind.FULL, lap=30.0)),
         r"overlay of the fronts is 30 mm; must be 0 to 16\.5 mm on a board 18 mm"),
        (DoorsSpec("D", Spot("A", 1, 1, height=90.0), front=FrontSpec(FrontKind.INSET)),
         r"height of a door is 84 mm; must be at least 100 mm"),
        (DoorsSpec("D", LOW, front=FrontSpec(FrontKind.FULL, pulls=3)),
         r"pulls is 3; must be 0 or 1"),
    ],
)
def test_what_is_refused_names_value_and_limit(spec, message):
    with pytest.raises(ClosetError, match=message):
        closet(spec)


def test_open_doors_count_when_the_carcass_tips():
    """Both leaves stand square to the front: half a leaf's width before it is their middle, and
    more where the rear is raised as on carpet."""
    def turning(*contents) -> float:
        found = [f for f in closet(*contents).findings if f.rule == "tipping"]
        return float(found[0].limit.removeprefix("turns over ").partition(" ")[0])

    doors = DoorsSpec("D", LOW, leaves=2, front=FrontSpec(FrontKind.INSET, gap=2.0))
    built = closet(doors)
    leaves = [p for c in built.components if c.name == "D" for p in c.parts]
    more = sum(
        part_weight(p, CATALOGUE) * GRAVITY * (p.box().x1 - p.box().x0) / 2000 for p in leaves)
    assert more - 1 < turning(doors) - turning() < 2 * more
