"""What is painted last at a point is what stands nearest to the viewer there."""

from __future__ import annotations

import math
import random
from itertools import pairwise

import pytest

from closetbench.core.bodies import LengthPart, Piece
from closetbench.core.convex import cross, dot
from closetbench.core.panel import Box, Face, Groove, HoleRow, Notch, Panel, Rim, Taper
from closetbench.core.parts import (
    FACING,
    LYING,
    LYING_DEEP,
    STANDING_ACROSS,
    Part,
    Place,
    Role,
    Vector,
)
from closetbench.shop.painter import Kind, Patch, painted
from tests.shop import samples

TOWARD = (math.sin(0.5) * math.cos(0.3), -math.cos(0.5) * math.cos(0.3), math.sin(0.3))


def hit(patch: Patch, start: Vector, toward: Vector) -> float | None:
    """How far along the line of sight a patch is met; greater is nearer to the viewer."""
    way, along = patch.normal, dot(patch.normal, toward)
    reach = (dot(way, patch.ring[0]) - dot(way, start)) / along
    point = (start[0] + reach * toward[0], start[1] + reach * toward[1],
             start[2] + reach * toward[2])
    sides = []
    for a, b in pairwise((*patch.ring, patch.ring[0])):
        edge = (b[0] - a[0], b[1] - a[1], b[2] - a[2])
        out = (point[0] - a[0], point[1] - a[1], point[2] - a[2])
        sides.append(dot(cross(edge, out), way))
    return reach if min(sides) > 1e-6 or max(sides) < -1e-6 else None


def nearest_is_last(patches: list[Patch], through: list[Vector]) -> int:
    """Checks lines of sight through points; returns how many met something."""
    met = 0
    for start in through:
        hits = [(reach, i) for i, p in enumerate(patches)
                if (reach := hit(p, start, TOWARD)) is not None]
        if not hits:
            continue
        met += 1
        nearest = max(reach for reach, _ in hits)
        last = max(hits, key=lambda h: h[1])
        assert last[0] == pytest.approx(nearest, abs=1e-6)
    return met


def board(name: str, box: tuple[float, ...]) -> Part:
    x, y, z, dx, dy, dz = box
    return Part(name, "heap", Role.PANEL, Panel(dx, dy, dz, "ply"), Place((x, y, z), *LYING))


def clear(a: Box, b: Box) -> bool:
    return not a.overlaps(b)


@pytest.mark.parametrize("seed", range(6))
def test_heaps_of_boards(seed: int) -> None:
    rng = random.Random(seed)
    heap: list[Part] = []
    for i in range(60):
        new = board(str(i), (*(rng.uniform(0, 800) for _ in range(3)),
                             *(rng.choice((18.0, 100.0, 400.0)) for _ in range(3))))
        if all(clear(new.box(), old.box()) for old in heap):
            heap.append(new)
    through = [tuple(rng.uniform(0, 1000) for _ in range(3)) for _ in range(300)]
    assert nearest_is_last(painted(heap, TOWARD), through) > 100  # type: ignore[arg-type]


def test_boards_that_overlap_in_a_ring() -> None:
    """Each of the three hides a part of the next: no order of whole boards is right."""
    ring = [
        board("x", (0.0, 0.0, 0.0, 300.0, 20.0, 20.0)),
        board("y", (280.0, -280.0, 20.0, 20.0, 300.0, 20.0)),
        board("z", (20.0, -300.0, -260.0, 20.0, 20.0, 300.0)),
    ]
    rng = random.Random(7)
    through = [(rng.uniform(0, 300), rng.uniform(-300, 20), rng.uniform(-260, 40))
               for _ in range(2000)]
    assert nearest_is_last(painted(ring, TOWARD), through) > 50


def test_a_closet_with_its_tongues_in_its_grooves() -> None:
    rng = random.Random(3)
    through = [(rng.uniform(0, 1500), rng.uniform(0, 560), rng.uniform(0, 2200))
               for _ in range(800)]
    assert nearest_is_last(painted(samples.closet(), TOWARD), through) > 500


def area(patches: list[Patch], axis: int, kind: Kind = Kind.WOOD) -> float:
    total = 0.0
    for p in patches:
        if p.plane.axis == axis and p.kind is kind:
            a, b = (p.high[i] - p.low[i] for i in range(3) if i != axis)
            total += a * b
    return total


@pytest.mark.parametrize("lie", [LYING, FACING, LYING_DEEP, STANDING_ACROSS])
def test_three_faces_are_seen_with_grooves_and_notches(
    lie: tuple[Vector, Vector],
) -> None:
    grooves = tuple(
        Groove("g", face, Rim.START, 100.0, 20.0, 6.0, stop_last=50.0) for face in Face)
    panel = Panel(600.0, 300.0, 18.0, "ply", grooves=grooves,
                  notches=(Notch(Rim.END, Rim.REAR, 80.0, 40.0),))
    place = Place((5.0, 6.0, 7.0), *lie)
    patches = painted([Part("a", "b", Role.PANEL, panel, place)], TOWARD)

    def of(way: Vector) -> int:
        return max(range(3), key=lambda i: abs(way[i]))

    face, length, width = of(place.up), of(place.along), of(place.across)
    assert area(patches, face, Kind.GROOVE) == pytest.approx(20.0 * 250.0)
    assert area(patches, face) == pytest.approx(600.0 * 300.0 - 80.0 * 40.0 - 20.0 * 250.0)
    # both grooves run out at the front rim; the side seen may be that or the rear one
    front_seen = place.across[width] * TOWARD[width] < 0
    out = 2 * 20.0 * 6.0 if front_seen else 0.0
    assert area(patches, width, Kind.GROOVE) == pytest.approx(out)
    assert area(patches, width) == pytest.approx(600.0 * 18.0 - out)
    assert area(patches, length) == pytest.approx(300.0 * 18.0)


def test_edges_run_around_the_board_once() -> None:
    patches = painted([board("a", (0.0, 0.0, 0.0, 600.0, 300.0, 18.0))], TOWARD)
    assert len(patches) == 3
    assert all(p.drawn == (True,) * 4 for p in patches)
    across, along = (next(p for p in patches if p.plane.axis == i) for i in (0, 2))
    low, high = along.split(across.plane.__class__((1.0, 0.0, 0.0), 200.0, 0))
    assert sum(low.drawn) == sum(high.drawn) == 3
    assert (low.high[0], high.low[0]) == (200.0, 200.0)
    assert low.low == along.low
    assert high.high == along.high


def test_a_cut_across_a_corner_draws_no_line_of_its_own() -> None:
    (face,) = [p for p in painted([board("a", (0.0, 0.0, 0.0, 600.0, 300.0, 18.0))], TOWARD)
               if p.plane.axis == 2]
    s = math.sqrt(0.5)
    low, high = face.split(face.plane.__class__((s, s, 0.0), 100.0 * s, None))
    assert (len(low.ring), len(high.ring)) == (3, 5)
    assert (sum(low.drawn), sum(high.drawn)) == (2, 4)
    # right through two corners
    low, high = face.split(face.plane.__class__((300.0 / 671, -600.0 / 671, 0.0), 0.0, None))
    assert len(low.ring) == len(high.ring) == 3
    assert sum(low.drawn) == sum(high.drawn) == 2


def test_sloped_boards_rods_and_pieces_among_level_ones() -> None:
    c, s = math.cos(0.3), math.sin(0.3)
    slopes = [
        Part(f"slope {i}", "heap", Role.SHOE_SHELF, Panel(500.0, 300.0, 18.0, "ply"),
             Place((20.0, 10.0, 100.0 + 150.0 * i), (1.0, 0.0, 0.0), (0.0, c, s)))
        for i in range(3)
    ]
    level = [board(str(i), (0.0, 0.0, 50.0 + 500.0 * i, 540.0, 400.0, 18.0)) for i in (0, 1)]
    sides = [board(f"s{i}", (x, 0.0, 68.0, 18.0, 400.0, 482.0)) for i, x in enumerate((0, 522))]
    rod = LengthPart("rod", "heap", Role.ROD, "steel", 27.0, 1.2, (0.0, 200.0, 700.0),
                     (540.0, 200.0, 700.0))
    piece = Piece("piece", "heap", Role.EXISTING, (
        (600.0, 0.0, 0.0), (903.0, 0.0, 0.0), (905.0, 300.0, 0.0), (598.0, 296.0, 0.0),
        (601.0, 0.0, 400.0), (902.0, 0.0, 397.0), (904.0, 300.0, 396.0), (599.0, 296.0, 401.0),
    ))
    patches = painted([*slopes, *level, *sides, rod, piece], TOWARD)
    assert {p.body.name for p in patches} >= {"slope 0", "rod", "piece"}
    rng = random.Random(11)
    through = [(rng.uniform(0, 900), rng.uniform(0, 400), rng.uniform(0, 800))
               for _ in range(2000)]
    assert nearest_is_last(patches, through) > 1000


def test_a_tapered_board_is_seen_as_it_is_cut() -> None:
    panel = Panel(1000.0, 60.0, 18.0, "ply", tapers=(Taper(Rim.REAR, 5.0, 20.0),))
    part = Part("a", "b", Role.PANEL, panel, Place((0.0, 0.0, 0.0), *FACING))
    faces = [p for p in painted([part], TOWARD) if p.plane.axis == 1]
    assert len(faces) == 1
    zs = [z for _, _, z in faces[0].ring]
    assert sorted(zs) == pytest.approx([0.0, 0.0, 40.0, 55.0])


def test_holes_of_a_tapered_front_are_seen() -> None:
    pull = HoleRow("pull", Face.UPPER, 400.0, 30.0, 5.0, 18.0, 2, 96.0)
    panel = Panel(1000.0, 60.0, 18.0, "ply", tapers=(Taper(Rim.REAR, 5.0, 20.0),), holes=(pull,))
    part = Part("a", "b", Role.PANEL, panel, Place((0.0, 0.0, 0.0), *FACING))
    assert sum(p.kind is Kind.HOLE for p in painted([part], TOWARD)) == 2
