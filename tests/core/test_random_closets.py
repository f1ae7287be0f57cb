"""What must hold for every closet, whatever is in it; and what new sizes may change."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from closetbench.core.closet import Closet, ClosetDesign, build_closet
from closetbench.core.joinery import Joint, check_panel
from closetbench.core.panel import Box, Face
from closetbench.core.parts import Part, Role
from closetbench.core.specs import (
    BackKind,
    BackSpec,
    BaseKind,
    BaseSpec,
    BaySpec,
    CarcassSpec,
    TopKind,
)
from closetbench.core.survey import Survey
from tests.core import solids
from tests.core.boards import CATALOGUE, closet
from tests.core.designs import closets

pytestmark = pytest.mark.once


def specs(found: Closet) -> dict[str, CarcassSpec]:
    return {s.name: s for s in found.design.components if isinstance(s, CarcassSpec)}


def by_name(found: Closet) -> dict[str, Part]:
    return {p.full_name: p for p in found.parts}


def inside(inner: Box, outer: Box) -> bool:
    return (
        min(inner.x0 - outer.x0, inner.y0 - outer.y0, inner.z0 - outer.z0) > -1e-6
        and min(outer.x1 - inner.x1, outer.y1 - inner.y1, outer.z1 - inner.z1) > -1e-6
    )


def no_two_parts_share_wood(found: Closet) -> None:
    assert solids.clashes(found.parts) == []


def parts_lie_in_their_carcass_and_that_in_the_envelope(found: Closet) -> None:
    envelope = found.envelope
    whole = Box(0.0, 0.0, 0.0, envelope.width, envelope.depth, envelope.height)
    for component in found.components:
        assert inside(component.box, whole)
        for item in component.parts:
            assert inside(item.box(), component.box), item.full_name
            # what is drawn and what is checked for clashes is all inside the board
            body = item.box()
            assert all(inside(cut, body) for cut in solids.part_cuts(item)), item.full_name
    assert len(by_name(found)) == len(found.parts)


def every_part_can_be_sawn_and_machined(found: Closet) -> None:
    for item in found.parts:
        panel = item.panel
        assert min(panel.cut_length, panel.cut_width, panel.thickness) > 10 or (
            item.role is Role.BACK and panel.thickness > 3
        )
        assert panel.thickness == CATALOGUE.material(panel.material).thickness
        check_panel(panel, item.full_name, specs(found)[item.component].rules)
        assert 0 < panel.volume <= panel.length * panel.width * panel.thickness
        assert panel.volume == pytest.approx(solids.volume(panel), rel=1e-9)


def housings(found: Closet) -> list[tuple[Part, Part, str]]:
    """Every tongue: the part that enters, the part with the groove, the groove's name."""
    parts, pairs = by_name(found), []
    for item in found.parts:
        head = f"{item.component}: "
        last = len(specs(found)[item.component].bays)

        def vertical(i: int, head: str = head, last: int = last) -> Part:
            name = {0: "left side", last: "right side"}.get(i, f"divider {i}")
            return parts[head + name]

        spec = specs(found)[item.component]
        if item.role is Role.FIXED_SHELF and spec.shelf_joint is Joint.GROOVE:
            bay = int(item.name.split()[1])
            pairs += [(item, vertical(bay - 1), item.name), (item, vertical(bay), item.name)]
        if spec.joint is Joint.GROOVE and (
            item.role is Role.BOTTOM or (item.role is Role.TOP and spec.top is TopKind.BETWEEN)
        ):
            pairs += [(item, vertical(0), item.name), (item, vertical(last), item.name)]
            pairs += [(vertical(i), item, vertical(i).name) for i in range(1, last)]
    return pairs


def every_tongue_has_its_clearances(found: Closet) -> None:
    for tongue, housing, name in housings(found):
        rules = specs(found)[tongue.component].rules
        (cut,) = [g for g in housing.panel.grooves if g.name == name]
        hole, board = housing.place.box(housing.panel.groove_box(cut)), tongue.box()
        # along the tongue: from its end to the bottom of the groove
        standing = tongue.role is Role.DIVIDER
        axis = ("z0", "z1") if standing else ("x0", "x1")
        ends = [abs(getattr(board, a) - getattr(hole, a)) for a in axis]
        assert min(ends) == pytest.approx(rules.end_clearance, abs=1e-6)
        # across it: seated on the wall that carries or places it, the fit on the other side
        across = ("x0", "x1") if standing else ("z0", "z1")
        low, high = (getattr(board, a) - getattr(hole, a) for a in across)
        fit = 0.0 if cut.is_rabbet else rules.fit
        assert (low, high) == pytest.approx((0.0, -fit), abs=1e-6)
        # in front: the notch hides the stop, behind: the groove is open, the board slides in
        front = hole.y0 - housing.box().y0
        notches = [n.dy for n in tongue.panel.notches]
        assert front == cut.stop_first
        if front:
            assert notches
            assert set(notches) == {front + rules.end_clearance}
        assert hole.y1 == pytest.approx(housing.box().y1)
        assert board.y1 <= hole.y1 + 1e-6


def every_loose_shelf_lies_on_four_pins(found: Closet) -> None:
    parts = by_name(found)
    for item in found.parts:
        if item.role is not Role.ADJUSTABLE_SHELF:
            continue
        spec, board = specs(found)[item.component], item.box()
        bay, last = int(item.name.split()[1]), len(spec.bays)
        walls = [
            {0: "left side", last: "right side"}.get(i, f"divider {i}") for i in (bay - 1, bay)
        ]
        for wall, face in zip(walls, (Face.LOWER, Face.UPPER), strict=True):
            upright = parts[f"{item.component}: {wall}"]
            centres = [
                upright.place.point(x, y, 0.0)
                for row in upright.panel.holes for x, y in row.centres()
                if row.face is face or row.depth >= upright.panel.thickness
            ]
            under = [
                c for c in centres
                if abs(c[2] + spec.drill.diameter / 2 - board.z0) < 1e-6
                and board.y0 < c[1] < board.y1
            ]
            assert len(under) == 2, (item.full_name, wall)


def bays_are_clear_but_for_what_hangs_in_them(found: Closet) -> None:
    hanging = {Role.FIXED_SHELF, Role.ADJUSTABLE_SHELF, Role.CLEAT}
    for component in found.components:
        spec = specs(found)[component.name]
        assert len(component.bays) == len(spec.bays)
        for bay, wish in zip(component.bays, spec.bays, strict=True):
            if wish.width is not None:
                assert bay.space.x1 - bay.space.x0 == pytest.approx(wish.width, abs=1e-9)
            for item in component.parts:
                if item.role not in hanging:
                    assert not item.box().overlaps(bay.space), item.full_name


UP, LEFT, RIGHT, FRONT, REAR = "z1", "x0", "x1", "y0", "y1"


def turn(item: Part) -> tuple[int, str]:
    """When a part is put in, and from where it comes."""
    simple = {
        Role.BASE_FRAME: (0, UP), Role.BOTTOM: (1, UP), Role.DIVIDER: (2, UP),
        Role.SIDE: (3, LEFT if item.name == "left side" else RIGHT),
        Role.TOE_KICK: (4, FRONT if item.name.startswith("front") else REAR),
        Role.FIXED_SHELF: (6, REAR), Role.BACK: (8, UP), Role.TOP: (9, UP),
        Role.ADJUSTABLE_SHELF: (10, FRONT),
    }
    if item.role is Role.CLEAT:
        return (5, FRONT) if "end cleat" in item.name else (7, REAR)
    return simple[item.role]


def way(box: Box, origin: str) -> Box:
    """The box with the way that it comes."""
    far = getattr(box, origin) + (5000.0 if origin.endswith("1") else -5000.0)
    return replace(box, **{origin: far})


def every_part_can_be_put_in(found: Closet) -> None:
    """Bottom, dividers from above, sides, shelves from the rear, back and top from above."""
    for component in found.components:
        placed: list[tuple[Part, Box]] = []
        for item in sorted(component.parts, key=lambda p: turn(p)[0]):
            _, origin = turn(item)
            box = item.box()
            path, wood = way(box, origin), [way(c, origin) for c in solids.part_cells(item)]
            for other, stands in placed:
                if stands.overlaps(path):
                    hit = any(
                        a.overlaps(b) for a in solids.part_cells(other) for b in wood
                    )
                    assert not hit, f"{item.full_name} past {other.name}"
            placed.append((item, box))


@settings(max_examples=220)
@given(closets())
def test_every_closet_is_sound(found: Closet) -> None:
    parts_lie_in_their_carcass_and_that_in_the_envelope(found)
    every_part_can_be_sawn_and_machined(found)
    no_two_parts_share_wood(found)
    every_tongue_has_its_clearances(found)
    every_loose_shelf_lies_on_four_pins(found)
    bays_are_clear_but_for_what_hangs_in_them(found)
    every_part_can_be_put_in(found)


REMEASURED = CarcassSpec(
    "A", "ply", bays=(BaySpec(300.0, 0, (250.0, 700.0)), BaySpec(None, 0, (400.0,))),
    base=BaseSpec(BaseKind.TOE_KICK), against_back=False,
)

choices = st.fixed_dictionaries({
    "joint": st.sampled_from([Joint.GROOVE, Joint.SCREWS]),
    "shelf_joint": st.sampled_from(Joint),
    "top": st.sampled_from(TopKind),
    "back": st.sampled_from([
        BackSpec(), BackSpec(BackKind.NONE), BackSpec(BackKind.PANEL, "hard"),
        BackSpec(BackKind.PANEL, "ply6"),
    ]),
    "base": st.builds(BaseSpec, st.sampled_from(BaseKind), spacing=st.just(1200.0)),
    "groove_stop": st.sampled_from([None, 0.0, 12.0]),
})
sizes = st.tuples(st.integers(900, 1100), st.integers(300, 600), st.integers(1200, 1500))
Change = tuple[float, float, float, float, float]
BY = 7.0


def changes(before: Closet, after: Closet) -> dict[str, Change]:
    """How far each part's low corner moved and how much longer and wider it became.

    Nothing else about it may have changed.
    """
    old, new = by_name(before), by_name(after)
    assert list(old) == list(new)
    found = {}
    for name, was in old.items():
        now = new[name]
        grown = replace(was.panel, length=now.panel.length, width=now.panel.width)
        assert grown.shape_key() == now.panel.shape_key(), name
        assert now.place.along == was.place.along
        a, b = was.box(), now.box()
        found[name.removeprefix("A: ")] = tuple(
            round(v, 6) + 0.0 for v in (
                b.x0 - a.x0, b.y0 - a.y0, b.z0 - a.z0,
                now.panel.length - was.panel.length, now.panel.width - was.panel.width,
            )
        )
    return found  # type: ignore[return-value]


def remeasured(
    spec: CarcassSpec, size: tuple[float, float, float], axis: int
) -> tuple[Closet, dict[str, Change]]:
    larger = tuple(v + (BY if i == axis else 0.0) for i, v in enumerate(size))
    before = closet(spec, size=size)
    return before, changes(before, closet(spec, size=larger))  # type: ignore[arg-type]


STILL: Change = (0.0, 0.0, 0.0, 0.0, 0.0)
LONGER: Change = (0.0, 0.0, 0.0, BY, 0.0)
WIDER: Change = (0.0, 0.0, 0.0, 0.0, BY)


@settings(max_examples=100)
@given(choices, sizes)
def test_wider_by_seven_moves_the_right_side_and_lengthens_what_reaches_it(
    chosen: dict[str, object], size: tuple[float, float, float]
) -> None:
    before, found = remeasured(replace(REMEASURED, **chosen), size, 0)  # type: ignore[arg-type]
    upright = {n for n, p in by_name(before).items() if p.role is Role.BACK
               and p.place.along == (0.0, 0.0, 1.0)}
    for name, change in found.items():
        if name in ("right side", "bay 2 shelf 1 right end cleat", "base cross member 2"):
            assert change == (BY, 0, 0, 0, 0), name
        elif f"A: {name}" in upright:
            assert change == WIDER, name
        elif name in ("left side", "divider 1", "base cross member 1") or "bay 1" in name or (
            name == "bay 2 shelf 1 left end cleat"
        ):
            assert change == STILL, name
        else:
            assert change == LONGER, name


@settings(max_examples=100)
@given(choices, sizes)
def test_higher_by_seven_lifts_the_top_and_lengthens_what_stands(
    chosen: dict[str, object], size: tuple[float, float, float]
) -> None:
    before, found = remeasured(replace(REMEASURED, **chosen), size, 2)  # type: ignore[arg-type]
    for name, change in found.items():
        role = by_name(before)[f"A: {name}"].role
        if role is Role.TOP or name.endswith("top cleat"):
            assert change == (0, 0, BY, 0, 0), name
        elif role is Role.BACK:
            assert change in (LONGER, WIDER), name
        elif role in (Role.SIDE, Role.DIVIDER):
            assert change == LONGER, name
        else:
            assert change == STILL, name


@settings(max_examples=100)
@given(choices, sizes)
def test_deeper_by_seven_moves_the_rear_and_widens_what_reaches_it(
    chosen: dict[str, object], size: tuple[float, float, float]
) -> None:
    before, found = remeasured(replace(REMEASURED, **chosen), size, 1)  # type: ignore[arg-type]
    rear = {Role.BACK, Role.CLEAT}
    for name, change in found.items():
        role = by_name(before)[f"A: {name}"].role
        if name.endswith("end cleat") or name.startswith("base cross"):
            assert change == LONGER, name
        elif role in rear or "rear" in name:
            assert change == (0, BY, 0, 0, 0), name
        elif role in (Role.TOE_KICK, Role.BASE_FRAME):
            assert change == STILL, name
        else:
            assert change == WIDER, name


def test_new_readings_of_the_room_move_the_closet_as_the_envelope_moves() -> None:
    def surveyed(width: float) -> Closet:
        diagonal = math.hypot(width, 600.0)
        survey = Survey(
            *[width] * 6, *[2400.0] * 4, depth_left=600.0, depth_right=600.0,
            diagonal_to_right=diagonal, diagonal_to_left=diagonal,
        )
        design = ClosetDesign("closet", survey, components=(REMEASURED,))
        return build_closet(design, CATALOGUE)

    narrow, wide = surveyed(1900.0), surveyed(1907.0)
    grown = wide.envelope.width - narrow.envelope.width
    assert grown == pytest.approx(BY, abs=0.01)
    found = {n: c for n, c in changes(narrow, wide).items() if any(abs(v) > 0.01 for v in c)}
    longer = {
        "bottom", "top", "front kick board", "rear kick board", "bay 2 shelf 1",
        "bay 2 top cleat", "bay 2 middle cleat", "bay 2 bottom cleat",
    }
    assert set(found) == {"right side", *longer}
    assert found["right side"] == pytest.approx((grown, 0, 0, 0, 0), abs=0.01)
    assert all(found[n] == pytest.approx((0, 0, 0, grown, 0), abs=0.01) for n in longer)
