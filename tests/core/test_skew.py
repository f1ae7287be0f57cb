"""Inset fronts and doors in an opening out of square: even reveals, machining that follows."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from closetbench.core.bench import BenchSpec
from closetbench.core.doors import DoorsSpec, Hinged
from closetbench.core.drawers import DrawersSpec
from closetbench.core.errors import ClosetError
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.panel import Face
from closetbench.core.parts import Role
from tests.core.inside_case import closet, component, parts, rules

SPOT = Spot("A", 1, 1)
GAP = 3.0
leans = st.floats(-8.0, 8.0)


def opening(built):
    """The opening's box as drawn: bay 1 up to its shelf."""
    bay = component(built, "A").bays[0].space
    shelf = next(p.box() for p in component(built, "A").parts if p.role is Role.FIXED_SHELF)
    return bay.x0, bay.x1, bay.z0, shelf.z0


def edges(front, built):
    """The four edges of the opening as measured, as functions."""
    x0, x1, z0, z1 = opening(built)
    return (
        lambda z: x0 + front.lean_left * (z - z0) / (z1 - z0),
        lambda z: x1 + front.lean_right * (z - z0) / (z1 - z0),
        lambda x: z0 + front.rise_below * (x - x0) / (x1 - x0),
        lambda x: z1 + front.rise_above * (x - x0) / (x1 - x0),
    )


def corners(part):
    """Lower left, lower right, upper right, upper left in (x, z)."""
    at = [part.place.point(x, y, 0.0) for x, y in part.panel.outline()]
    points = [(p[0], p[2]) for p in at]
    middle = [sum(v) / 4 for v in zip(*points, strict=True)]
    return sorted(points, key=lambda p: math.atan2(p[1] - middle[1], p[0] - middle[0]))


@settings(max_examples=60, deadline=None)
@given(leans, leans, leans, leans, st.integers(1, 4))
def test_reveals_of_a_bank_are_even_whatever_the_opening(left, right, below, above, count):
    front = FrontSpec(
        gap=GAP, lean_left=left, lean_right=right, rise_below=below, rise_above=above)
    built = closet(DrawersSpec("D", SPOT, count=count, front=front))
    at_left, at_right, low, high = edges(front, built)
    fronts = [corners(p) for p in parts(built, Role.FRONT)]
    for (a, b, c, d) in fronts:
        for x, z in (a, d):
            assert x - at_left(z) == pytest.approx(GAP, abs=1e-6)
        for x, z in (b, c):
            assert at_right(z) - x == pytest.approx(GAP, abs=1e-6)
    for x, z in fronts[0][:2]:
        assert z - low(x) == pytest.approx(GAP, abs=1e-6)
    for x, z in fronts[-1][2:]:
        assert high(x) - z == pytest.approx(GAP, abs=1e-6)
    for under, over in pairwise(fronts):
        # at either side; the ends of two fronts that lean differ by less than a hundredth
        assert over[0][1] - under[3][1] == pytest.approx(GAP, abs=0.01)
        assert over[1][1] - under[2][1] == pytest.approx(GAP, abs=0.01)
    assert not rules(built.findings) & {"parts-overlap", "pull-blocked"}
    assert any(v != 0 for v in (left, right, below, above)) == (
        "tapered-fronts" in rules(built.findings))


@settings(max_examples=40, deadline=None)
@given(leans, leans, leans, leans)
def test_boxes_behind_stay_square_and_clear_of_the_leaning_sides(left, right, below, above):
    front = FrontSpec(lean_left=left, lean_right=right, rise_below=below, rise_above=above)
    built = closet(DrawersSpec("D", SPOT, count=2, front=front))
    at_left, at_right, low, high = edges(front, built)
    for part in parts(built, Role.BOX_SIDE):
        assert not part.panel.tapers
        b = part.box()
        for z in (b.z0, b.z1):
            assert b.x0 - at_left(z) > 12.7 - 1e-6
            assert at_right(z) - b.x1 > 12.7 - 1e-6
        for x in (b.x0, b.x1):
            assert b.z0 > low(x)
            assert b.z1 < high(x)


@settings(max_examples=40, deadline=None)
@given(leans, leans, leans, leans, st.sampled_from(Hinged), st.integers(1, 2))
def test_doors_fit_with_even_gaps_and_cups_follow_the_edge(
    left, right, below, above, hinged, leaves
):
    front = FrontSpec(
        FrontKind.INSET, gap=2.0, lean_left=left, lean_right=right, rise_below=below,
        rise_above=above,
    )
    built = closet(DoorsSpec("D", SPOT, leaves, hinged, front))
    at_left, at_right, low, high = edges(front, built)
    doors = parts(built, Role.DOOR)
    first, last = corners(doors[0]), corners(doors[-1])
    for x, z in (first[0], first[3]):
        assert x - at_left(z) == pytest.approx(2.0, abs=1e-6)
    for x, z in last[1:3]:
        assert at_right(z) - x == pytest.approx(2.0, abs=1e-6)
    for a, b, c, d in map(corners, doors):
        assert all(z - low(x) == pytest.approx(2.0, abs=1e-6) for x, z in (a, b))
        assert all(high(x) - z == pytest.approx(2.0, abs=1e-6) for x, z in (c, d))
    if leaves == 2:
        assert last[0][0] - first[1][0] == pytest.approx(2.0, abs=0.02)
        assert last[3][0] - first[2][0] == pytest.approx(2.0, abs=0.02)
    for door in doors:
        side = Hinged.LEFT if "left" in door.name else Hinged.RIGHT
        side = hinged if leaves == 1 else side
        a, b, c, d = corners(door)
        (x0, z0), (x1, z1) = (a, d) if side is Hinged.LEFT else (b, c)
        for row in door.panel.holes:
            if row.name != "hinge cup":
                continue
            for u, v in row.centres():
                x, _, z = door.place.point(u, v, 0.0)
                edge = x0 + (x1 - x0) * (z - z0) / (z1 - z0)
                assert abs(x - edge) == pytest.approx(4.0 + 17.5, abs=1e-6)


def test_a_front_by_hand():
    """The opening's right edge leans 6 mm outwards: the front is a trapezium, 6 mm wider at the
    top over the opening's height, and its band and saw cut follow."""
    built = closet(DrawersSpec("D", SPOT, front=FrontSpec(lean_right=6.0, material="melamine_3_4")))
    panel = parts(built, Role.FRONT)[0].panel
    z0, z1 = opening(built)[2:]
    (taper,) = panel.tapers
    share = (z1 - z0 - 2 * GAP) / (z1 - z0)
    assert taper.rim.value == "end"
    assert taper.first - taper.last == pytest.approx(6.0 * share)
    assert taper.last == pytest.approx(0.0, abs=1e-9)
    assert panel.length == pytest.approx(594.0 + 6.0 * (1 + share) / 2)
    assert len(panel.bands) == 4
    thick = panel.bands[0].thickness
    ring = panel.cut_outline()
    assert ring[1][0] == pytest.approx(panel.outline()[1][0] - thick, abs=0.02)


@pytest.mark.parametrize("sense", [1.0, -1.0])
def test_a_tapered_front_overlaps_its_opening_alone(sense):
    """As far as it may be out of square; a bench behind a door is still a conflict."""
    front = FrontSpec(lean_left=-30.0 * sense, lean_right=30.0, rise_below=-30.0, rise_above=30.0)
    assert "parts-overlap" not in rules(
        closet(DrawersSpec("D", SPOT, 2, front=front)).findings)
    built = closet(BenchSpec("B", SPOT, height=300.0), DoorsSpec("D", SPOT, front=front))
    named = {(f.subject, f.parts) for f in built.findings if f.rule == "parts-overlap"}
    assert ("D: door", ("B: top",)) in named or ("B: top", ("D: door",)) in named


def test_square_fronts_have_no_tapers():
    built = closet(DrawersSpec("D", SPOT, count=3), DoorsSpec("E", Spot("A", 2, 1), leaves=2))
    assert not any(p.panel.tapers for p in built.parts)


def test_pulls_with_two_holes():
    front = FrontSpec(pulls=2, pull_spacing=96.0)
    built = closet(DrawersSpec("D", SPOT, front=front), DoorsSpec(
        "E", Spot("A", 2, 1), leaves=2, front=FrontSpec(FrontKind.FULL, pull_spacing=128.0)))
    panel = parts(built, Role.FRONT)[0].panel
    xs = sorted(x for row in panel.holes for x, _ in row.centres())
    assert xs == pytest.approx([
        148.5 - 48, 148.5 + 48, 445.5 - 48, 445.5 + 48])
    assert {y for row in panel.holes for _, y in row.centres()} == {panel.width / 2}
    for door in parts(built, Role.DOOR, "E"):
        (row,) = [r for r in door.panel.holes if r.name == "pull"]
        (u, _), (w, _) = row.centres()
        assert w - u == pytest.approx(128.0), "upright on a door"
        assert row.face is Face.UPPER


@pytest.mark.parametrize(
    ("front", "message"),
    [
        (FrontSpec(lean_left=31.0), r"lean of the left edge is 31 mm; must be -30 to 30 mm"),
        (FrontSpec(rise_above=-40.0), r"rise of the upper edge is -40 mm; must be -30 to 30"),
        (FrontSpec(FrontKind.FULL, lean_right=2.0),
         r"lean of the opening is full overlay; must be 0 unless fronts are inset"),
        (FrontSpec(pull_spacing=5.0), r"distance of a pull's holes is 5 mm; must be 20 to 600"),
        (FrontSpec(pull_spacing=599.0), r"holes for pull: position is .* must leave the hole"),
    ],
)
def test_what_is_refused_names_value_and_limit(front, message):
    for spec in (DrawersSpec("D", SPOT, front=front), DoorsSpec("D", SPOT, front=replace(
            front, kind=FrontKind.FULL if front.kind is FrontKind.FULL else FrontKind.INSET))):
        if isinstance(spec, DoorsSpec) and front.pull_spacing > 500:
            continue
        with pytest.raises(ClosetError, match=message):
            closet(spec)
