"""Whether pieces go in; paths are followed step by step through the walls as they are."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise, product

import numpy as np
import pytest

from closetbench.core.access import Entrance, Piece, Pose, entrance, way_in
from closetbench.core.component import Component
from closetbench.core.envelope import Clearances, fit_envelope
from closetbench.core.findings import Severity
from closetbench.core.goes_in import access_findings
from closetbench.core.moves import Pull
from closetbench.core.panel import Box, Panel
from closetbench.core.parts import FACING, STANDING_ACROSS, Part, Place, Role
from closetbench.core.room import Opening, Room
from closetbench.core.surfaces import Surface
from closetbench.core.survey import Obstacle
from closetbench.core.turning import Slot, carry_through, largest_that, turns_within

WAY = Entrance(Box(0.0, 0.0, 0.0, 1930.0, 640.0, 2410.0), 205.0, 1725.0, 2030.0, 135.0, 2410.0)


def piece(dx: float, dy: float, dz: float, x: float = 0.0, y: float = 0.0, z: float = 0.0,
          parts: bool = False) -> Piece:
    return Piece("piece", Box(x, y, z, x + dx, y + dy, z + dz), parts)


def turned(pose: Pose) -> np.ndarray:
    """Points all over a piece at a pose."""
    grid = np.array(list(product(np.linspace(-0.5, 0.5, 9), repeat=3))) * np.array(pose.size)
    a = math.radians(pose.angle)
    c, s = math.cos(a), math.sin(a)
    matrix = {
        "x": [[1, 0, 0], [0, c, -s], [0, s, c]], "y": [[c, 0, s], [0, 1, 0], [-s, 0, c]],
        "z": [[c, -s, 0], [s, c, 0], [0, 0, 1]],
    }[pose.axis]
    return grid @ np.array(matrix, dtype=float).T + np.array(pose.centre)


def deepest_hit(points: np.ndarray, way: Entrance) -> float:
    """How deep the deepest of the points lies in a wall, 0 where none does."""
    x, y, z = points.T
    box = way.inside
    inside = np.maximum.reduce([box.x0 - x, x - box.x1, y - box.y1, box.z0 - z, z - box.z1])
    before = np.maximum(box.z0 - z, z - way.ceiling)
    jambs = np.maximum.reduce([way.jamb0 - x, x - way.jamb1, z - way.head, box.z0 - z])
    # in the wall, the way out may also be to its faces
    wall = np.minimum(jambs, np.minimum(-y, y + way.thick))
    hit = np.where(y > 0, inside, np.where(y < -way.thick, before, wall))
    return max(0.0, float(hit.max()))


def between(a: Pose, b: Pose, share: float) -> Pose:
    if a.size != b.size:
        return a if share < 1 else b
    centre = tuple(p + share * (q - p) for p, q in zip(a.centre, b.centre, strict=True))
    axis = a.axis if a.angle else b.axis
    assert a.axis == b.axis or 0.0 in (a.angle, b.angle)
    return Pose(centre, a.size, axis, a.angle + share * (b.angle - a.angle))  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("what", "words"),
    [
        (piece(560.0, 400.0, 700.0, 900.0, 200.0), "straight through the opening"),
        (piece(980.0, 450.0, 2000.0, 0.0, 190.0), "straight through the opening"),
        (piece(1900.0, 560.0, 18.0, 10.0, 60.0, 2300.0),
         "turned in the opening and set upright behind it"),
        (piece(18.0, 560.0, 2389.0, 0.0, 80.0), None),
        (piece(980.0, 3.0, 2300.0, 0.0, 630.0), None),
        (piece(1600.0, 300.0, 1300.0, 100.0, 300.0), "turned past the jambs"),
        (piece(420.0, 640.0, 904.0, 700.0), "straight through the opening"),
        (piece(400.0, 300.0, 2300.0, 800.0, 300.0), "tilted under the lintel"),
    ],
)
def test_way_in_leads_to_the_place_and_touches_nothing(what: Piece, words: str | None) -> None:
    found = way_in(what, WAY)
    assert found.passes
    if words is not None:
        assert found.how == words
    first, last = found.path[0], found.path[-1]
    assert turned(first)[:, 1].max() <= -WAY.thick + 1e-6
    assert last.angle == 0.0
    assert last.size == pytest.approx(what.size)
    b = what.box
    assert last.centre == pytest.approx(
        ((b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2, (b.z0 + b.z1) / 2)
    )
    for a, b_ in pairwise(found.path):
        for share in (0.0, 0.25, 0.5, 0.75, 1.0):
            # a turn in steps of 5 degrees cuts the curve of the centre a little
            assert deepest_hit(turned(between(a, b_, share)), WAY) < 2.0
    assert found.searched == (10.0 if found.how.split(",")[0] in (
        "turned past the jambs", "tilted under the lintel") else 0.0)


def test_tall_carcass_is_named_with_what_would_let_it_in() -> None:
    found = way_in(piece(980.0, 450.0, 2389.0, 0.0, 190.0, parts=True), WAY)
    assert not found.passes
    assert found.remedy.startswith("assemble it inside; or make its height ")
    assert "its diagonal of 2431 mm does not go up under 2410 mm" in found.remedy
    less = float(found.remedy.split("make its height ")[1].split()[0])
    assert way_in(piece(980.0, 450.0, 2389.0 - less - 5.0, 0.0, 190.0), WAY).passes
    assert way_in(piece(980.0, 450.0, 2389.0, 0.0, 190.0), WAY, advise=False).remedy == ""


def test_wide_box_would_have_to_be_split() -> None:
    deep = Entrance(Box(0.0, 0.0, 0.0, 3000.0, 640.0, 2410.0), 205.0, 1005.0, 2030.0, 135.0, 2410)
    found = way_in(piece(2900.0, 500.0, 700.0), deep)
    assert not found.passes
    assert found.remedy.startswith("split its width into pieces of ")
    fits = float(found.remedy.split("pieces of ")[1].split()[0])
    assert way_in(piece(fits - 1.0, 500.0, 700.0), deep).passes


def test_what_is_larger_than_the_closet_never_goes_in() -> None:
    found = way_in(piece(100.0, 650.0, 100.0), WAY)
    assert (found.passes, found.how) == (False, "it is larger than the closet inside")


def test_turning_inside_needs_the_diagonal_only_where_it_is_passed() -> None:
    assert turns_within(300.0, 400.0, 500.0, 500.0)
    assert not turns_within(300.0, 400.0, 499.0, 500.0)
    assert turns_within(300.0, 400.0, 499.0, 500.0, 0.0, 0.1)
    assert turns_within(300.0, 400.0, 450.0, 400.0, 0.0, 0.0)


def test_a_narrower_gap_never_helps() -> None:
    passes = [
        carry_through(Slot(0.0, gap, 120.0, -200.0, 1730.0, 640.0), 1500.0, 300.0) is not None
        for gap in (900.0, 1100.0, 1300.0, 1500.0)
    ]
    assert passes == sorted(passes)
    assert passes[-1]


def test_largest_that_passes() -> None:
    assert largest_that(lambda v: v < 740.0, 0.0, 1000.0, 1.0) == pytest.approx(740.0, abs=1.0)
    assert largest_that(lambda v: False, 10.0, 100.0, 1.0) == 0.0


ROOM = Room(
    Surface.plane(0.0), Surface.plane(1930.0), Surface.plane(640.0), Surface.plane(0.0),
    Surface.plane(2410.0), opening=Opening(205.0, 1725.0, 2030.0, 120.0, 70.0, 15.0),
    baseboard=(90.0, 12.0),
)


def test_entrance_counts_baseboard_and_casing() -> None:
    box = fit_envelope(ROOM, Clearances())
    way = entrance(ROOM, box)
    assert way is not None
    # in the closet's frame, whose origin is the envelope's: 12 + 5 mm right of the wall
    assert (way.inside.x0, way.inside.x1) == pytest.approx((-5.0, 1930.0 - 24.0 - 5.0))
    assert (way.jamb0, way.jamb1) == pytest.approx((205.0 - 17.0, 1725.0 - 17.0))
    assert (way.thick, way.head, way.size[1]) == pytest.approx((135.0, 2030.0, 628.0))
    assert entrance(replace(ROOM, opening=None), box) is None


def component(name: str, *boards: tuple[str, float, float, Place]) -> Component:
    parts = tuple(
        Part(n, name, Role.SIDE, Panel(length, width, 18.0, "ply18"), place)
        for n, length, width, place in boards
    )
    boxes = [p.box() for p in parts]
    return Component(name, parts, Box(
        min(b.x0 for b in boxes), min(b.y0 for b in boxes), min(b.z0 for b in boxes),
        max(b.x1 for b in boxes), max(b.y1 for b in boxes), max(b.z1 for b in boxes),
    ))


def test_what_only_just_goes_through_is_not_carried_through() -> None:
    """The opening is 1,520 mm wide: 3 mm are kept at each jamb."""
    assert way_in(piece(1514.0, 300.0, 1900.0, 200.0), WAY).how.startswith("straight")
    assert not way_in(piece(1516.0, 300.0, 1900.0, 200.0), WAY).how.startswith("straight")


def test_findings_name_what_must_be_assembled_inside_and_what_never_goes_in() -> None:
    box = fit_envelope(ROOM, Clearances())
    tall = component(
        "tall", ("left", 2380.0, 450.0, Place((18.0, 0.0, 0.0), *STANDING_ACROSS)),
        ("right", 2380.0, 450.0, Place((980.0, 0.0, 0.0), *STANDING_ACROSS)),
    )
    low = component("low", ("back", 500.0, 700.0, Place((1000.0, 400.0, 0.0), *FACING)))
    found, ways = access_findings((tall, low), ROOM, box)
    assert [f.rule for f in found] == ["assemble-inside"]
    assert found[0].subject == "tall"
    assert [w.piece.name for w in ways] == ["tall", "tall: left", "tall: right", "low"]
    assert [w.passes for w in ways] == [False, True, True, True]
    narrow = replace(ROOM, opening=Opening(205.0, 500.0, 600.0, 120.0))
    found, _ = access_findings((tall, low), narrow, box)
    assert {f.rule for f in found} == {"does-not-go-in"}
    assert {f.subject for f in found} == {"tall: left", "tall: right"}
    assert access_findings((tall, low), replace(ROOM, opening=None), box) == ([], ())
    pipe = replace(ROOM, obstacles=(Obstacle("pipe", 0.0, 0.0, 0.0, 40.0, 40.0, 2400.0),))
    assert [(f.rule, f.severity) for f in access_findings((low,), pipe, box)[0]] == [
        ("ways-past-obstacles", Severity.NOT_CHECKED)]
    ahead = component("single", ("panel", 3000.0, 900.0, Place((0.0, -900.0, 0.0), *FACING)))
    trim = component("trim", ("left", 2420.0, 20.0, Place((0.0, 0.0, 0.0), *STANDING_ACROSS)))
    trim = replace(trim, parts=tuple(replace(p, role=Role.MOULDING) for p in trim.parts))
    assert access_findings((ahead, trim), ROOM, box) == ([], ())


def test_drawers_go_in_one_by_one_and_in_parts_only_where_they_must() -> None:
    box = fit_envelope(ROOM, Clearances())
    names = [f"{n} {side}" for n in (1, 2) for side in ("left", "right", "front")]
    bank = component("bank", *(
        (n, 300.0, 450.0, Place((20.0 + 700.0 * ("right" in n), 0.0, 400.0 * (n[0] == "2")),
                                *STANDING_ACROSS))
        for n in names
    ))
    bank = replace(
        bank,
        parts=tuple(replace(p, role=Role.FRONT) if "front" in p.name else p for p in bank.parts),
        moves=tuple(
            Pull(f"drawer {n}", frozenset(x for x in names if x[0] == n), (), 400.0)
            for n in "12"
        ),
    )
    found, ways = access_findings((bank,), ROOM, box)
    assert found == []
    assert [w.piece.name for w in ways] == [
        "bank: drawer 1", "bank: drawer 2", "bank: 1 front", "bank: 2 front"]
    narrow = replace(ROOM, opening=Opening(205.0, 400.0, 2000.0, 120.0))
    found, ways = access_findings((bank,), narrow, box)
    assert [(f.rule, f.subject) for f in found] == [
        ("assemble-inside", "bank: drawer 1"), ("assemble-inside", "bank: drawer 2")]
    assert "bank: 1 left" in {w.piece.name for w in ways if w.passes}
