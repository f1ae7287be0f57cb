"""What is painted last at a point is what stands nearest to the viewer there."""

from __future__ import annotations

import math
import random

import pytest

from closetbench.core.panel import Box, Face, Groove, Notch, Panel, Rim
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
    reach = (patch.level - start[patch.axis]) / toward[patch.axis]
    point = [s + reach * t for s, t in zip(start, toward, strict=True)]
    inside = all(
        patch.low[i] < point[i] < patch.high[i] for i in range(3) if i != patch.axis)
    return reach if inside else None


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
        if p.axis == axis and p.kind is kind:
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
    assert all(len(p.edges) == 4 for p in patches)
    low, high = patches[0].split((patches[0].axis + 1) % 3, 9.0)
    assert len(low.edges) == len(high.edges) == 3
