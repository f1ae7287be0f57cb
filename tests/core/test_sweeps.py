"""The space that drawers and doors pass through, and where they hit."""

import math
from dataclasses import replace

import pytest

from closetbench.core.closet import build_closet
from closetbench.core.convex import volume
from closetbench.core.sweeps import sweeps
from closetbench.job import read_job
from closetbench.resources import RESOURCES


@pytest.fixture(scope="module")
def box_room():
    job = read_job(RESOURCES / "examples" / "box-room.toml")
    return build_closet(job.design, job.catalogue())


def test_a_free_drawer_sweeps_its_boxes_and_travel(box_room):
    found = {s.name: s for s in sweeps(box_room)}
    drawer = found["Boots pull-out: drawer"]
    move = next(m for c in box_room.components if c.name == "Boots pull-out" for m in c.moves)
    assert (drawer.reach, drawer.hits, drawer.turns) == (move.travel, (), False)
    for solid, box in zip(drawer.solids, move.boxes, strict=True):
        wide, high = box.x1 - box.x0, box.z1 - box.z0
        assert volume(solid) == pytest.approx(wide * high * (box.y1 - box.y0 + move.travel))


def test_a_drawer_behind_the_return_hits_it(box_room):
    opening = replace(box_room.room.opening, x0=1100.0)
    narrow = replace(box_room, room=replace(box_room.room, opening=opening))
    drawer = next(s for s in sweeps(narrow) if s.name == "Boots pull-out: drawer")
    assert drawer.blockers == ("the left return",)
    assert drawer.hits
    assert all(volume(h) > 0 for h in drawer.hits)
    assert not drawer.findings  # those were made before the opening was


def test_doors_sweep_a_sector():
    job = read_job(RESOURCES / "examples" / "porch-closet.toml")
    closet = build_closet(job.design, job.catalogue())
    leaves = [(c, m) for c in closet.components for m in c.moves if hasattr(m, "turn")]
    if not leaves:
        pytest.fail("the porch closet has doors")
    found = {s.name: s for s in sweeps(closet)}
    for component, leaf in leaves:
        sweep = found[f"{component.name}: {leaf.name}"]
        assert sweep.turns
        b = leaf.box
        wide, high = b.x1 - b.x0, b.z1 - b.z0
        sector = math.radians(sweep.reach) / 2 * wide**2 * high
        # wedges are a little less than the sector that they stand for
        assert sum(volume(s) for s in sweep.solids) == pytest.approx(sector, rel=0.01)
