"""Convex solids: volumes by hand, what two share, cuts."""

from __future__ import annotations

import math
import random

import pytest

from closetbench.core import convex
from closetbench.core.panel import Box

CUBE = convex.block(convex.corners(Box(0.0, 0.0, 0.0, 10.0, 10.0, 10.0)))


def test_volume_of_a_block_and_of_a_round_bar():
    assert convex.volume(CUBE) == pytest.approx(1000.0)
    bar = convex.prism((5.0, 0.0, 3.0), (5.0, 100.0, 3.0), 10.0, sides=6)
    assert convex.volume(bar) == pytest.approx(6 * 0.5 * 100 * math.sin(math.pi / 3) * 100)
    assert {len(ring) for ring in bar} == {4, 6}


def test_every_face_looks_outwards():
    for solid in (CUBE, convex.prism((0.0, 0.0, 0.0), (0.0, 0.0, 9.0), 4.0)):
        middle = (5.0, 5.0, 5.0) if solid is CUBE else (0.0, 0.0, 4.5)
        for way, at in convex.planes(solid):
            assert convex.dot(way, middle) < at


def test_half_of_a_cube_cut_across_its_corners():
    s = math.sqrt(0.5)
    half = convex.clipped(CUBE, (s, s, 0.0), 10.0 * s)
    assert convex.volume(half) == pytest.approx(500.0)
    assert convex.volume(convex.clipped(half, (0.0, 0.0, 1.0), 2.5)) == pytest.approx(125.0)
    assert convex.clipped(CUBE, (1.0, 0.0, 0.0), -1.0) == ()
    assert convex.clipped(CUBE, (1.0, 0.0, 0.0), 10.0) == CUBE


def test_boxes_share_what_their_sides_say():
    rng = random.Random(5)

    def box() -> Box:
        low = [rng.uniform(0, 10) for _ in range(3)]
        return Box(*low, *(v + rng.uniform(1, 10) for v in low))

    for _ in range(100):
        a, b = box(), box()
        sides = [
            max(0.0, min(getattr(a, f"{k}1"), getattr(b, f"{k}1"))
                - max(getattr(a, f"{k}0"), getattr(b, f"{k}0")))
            for k in "xyz"
        ]
        shared = convex.common(*(convex.block(convex.corners(v)) for v in (a, b)))
        assert convex.volume(shared) == pytest.approx(math.prod(sides), abs=1e-6)
