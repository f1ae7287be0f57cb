"""Paths in small steps: from before the opening to where the piece stands, never through it."""

import math
from itertools import pairwise

import pytest

from closetbench.core.access import Entrance, Piece, Pose, way_in
from closetbench.core.carried import STEP, TURN, loads_of, moved, positions
from closetbench.core.closet import build_closet
from closetbench.core.convex import corners
from closetbench.core.panel import Box
from closetbench.job import read_job
from closetbench.resources import RESOURCES

WAY = Entrance(Box(0.0, 0.0, 0.0, 1900.0, 640.0, 2400.0), 200.0, 1600.0, 2000.0, 120.0, 2400.0)


def piece(x, y, z, at=(300.0, 20.0, 100.0)):
    a, b, c = at
    return Piece("piece", Box(a, b, c, a + x, b + y, c + z))


def centre(box):
    return (box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2, (box.z0 + box.z1) / 2


PIECES = {
    "straight": piece(800.0, 400.0, 600.0),
    "tall": piece(400.0, 18.0, 2200.0),
    "shelf": piece(1700.0, 400.0, 18.0, (100.0, 20.0, 900.0)),
    "side": piece(18.0, 580.0, 2250.0),
    "back": piece(900.0, 6.0, 2300.0, (300.0, 600.0, 20.0)),
}


@pytest.mark.parametrize("name", PIECES)
def test_a_path_ends_as_the_piece_stands(name):
    one = PIECES[name]
    found = way_in(one, WAY)
    assert found.passes, found
    steps = positions(found.path)
    stood = centre(one.box)
    for corner in corners(one.box):
        assert moved(steps[-1], corner, stood) == pytest.approx(corner, abs=1e-9)
    # before the opening, the whole of it
    assert max(moved(steps[0], c, stood)[1] for c in corners(one.box)) <= -WAY.thick + 1e-6


@pytest.mark.parametrize("name", PIECES)
def test_no_step_is_longer_than_said(name):
    one = PIECES[name]
    steps = positions(way_in(one, WAY).path)
    stood = centre(one.box)
    reach = math.dist(stood, (one.box.x0, one.box.y0, one.box.z0))
    most = STEP + 2 * reach * math.sin(math.radians(TURN) / 2) + 1e-6
    for a, b in pairwise(steps):
        for corner in corners(one.box):
            assert math.dist(moved(a, corner, stood), moved(b, corner, stood)) <= most


@pytest.mark.parametrize("name", PIECES)
def test_nothing_passes_through_the_front_wall_beside_the_opening(name):
    one = PIECES[name]
    stood = centre(one.box)
    for at in positions(way_in(one, WAY).path):
        places = (moved(at, c, stood) for c in corners(one.box))
        for x, _, z in (p for p in places if -WAY.thick + 1 < p[1] < -1):
            assert WAY.jamb0 - 1 <= x <= WAY.jamb1 + 1
            assert -1 <= z <= WAY.head + 1


def test_the_pose_and_the_turned_piece_fill_the_same_box():
    one = PIECES["tall"]
    stood = centre(one.box)
    for at in positions(way_in(one, WAY).path):
        if at.pose.angle == 0.0:
            found = [moved(at, c, stood) for c in corners(one.box)]
            spread = [max(p[k] for p in found) - min(p[k] for p in found) for k in range(3)]
            assert spread == pytest.approx(at.pose.size)


def test_a_change_of_axis_goes_by_the_way_between():
    path = (Pose((0, 0, 0), (100, 10, 50), "z", 30.0), Pose((0, 0, 0), (100, 10, 50), "x", 0.0),
            Pose((0, 0, 0), (100, 10, 50), "x", 9.0))
    assert [(p.pose.axis, round(p.pose.angle, 6)) for p in positions(path)][-4:] == [
        ("z", 0.0), ("x", 3.0), ("x", 6.0), ("x", 9.0)]


def test_no_path_no_positions():
    assert positions(()) == ()


def test_everything_that_is_carried_is_asked_for():
    job = read_job(RESOURCES / "examples" / "box-room.toml")
    closet = build_closet(job.design, job.catalogue())
    loads = loads_of(closet)
    names = [load.piece.name for load in loads]
    assert len(set(names)) == len(names)
    # fillers are cut where they go; drawers stand each for itself
    assert {load.piece.name for load in loads if load.whole} == {
        c.name for c in closet.components} - {"Fillers", "Boots pull-out"} | {
        "Boots pull-out: drawer"}
    assert "Boots pull-out: drawer front" in names
    drawer = next(x for x in loads if x.piece.name == "Boots pull-out: drawer")
    assert drawer.bodies == {
        "drawer back", "drawer bottom", "drawer box front", "drawer left side",
        "drawer right side"}
    assert "Craft: left side" in names
    # one part alone is the component itself
    assert [n for n in names if n.startswith("Plan chest")] == ["Plan chest"]
