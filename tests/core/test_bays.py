"""Shelves, fixed and loose, and the rows of holes: sizes and heights worked by hand.

18 mm board, 1000 x 600 x 2000 mm: bays begin at z = 18, end at 1982 and are 1964 high.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.carcass import build_carcass
from closetbench.core.component import Component
from closetbench.core.errors import ClosetError
from closetbench.core.joinery import JoineryRules, Joint
from closetbench.core.panel import Box, Face, Groove, HoleRow, Rim
from closetbench.core.parts import Part, Role
from closetbench.core.specs import BackKind, BackSpec, BaySpec, CarcassSpec, DrillRules
from tests.core.boards import CATALOGUE, SPACE, names, part, plain

NO_BACK = BackSpec(BackKind.NONE)


def built(*bays: BaySpec, **changes: object) -> Component:
    spec = plain(**{"bays": bays, "back": NO_BACK, **changes})
    return build_carcass(spec, SPACE, CATALOGUE)


def refused(*bays: BaySpec, **changes: object) -> str:
    with pytest.raises(ClosetError) as caught:
        built(*bays, **changes)
    return str(caught.value)


def undersides(found: Component, role: Role) -> list[float]:
    return sorted(p.box().z0 for p in found.parts if p.role is role)


def test_shelves_are_spread_to_equal_clear_heights() -> None:
    # 1964 less three shelves of 18 is 1910; four spaces of 477.5
    found = built(BaySpec(fixed=3))
    assert undersides(found, Role.FIXED_SHELF) == pytest.approx([495.5, 991.0, 1486.5])


def test_heights_are_measured_from_the_bays_floor_to_the_underside() -> None:
    found = built(BaySpec(heights=(900.0, 300.0)))
    assert undersides(found, Role.FIXED_SHELF) == [318.0, 918.0]
    assert part(found, "bay 1 shelf 1").box().z0 == 318.0


def test_shelf_in_grooves_grows_by_two_tongues() -> None:
    found = built(BaySpec(heights=(300.0,)))
    shelf = part(found, "bay 1 shelf 1")
    assert shelf.panel.length == 964 + 2 * (6.0 - 0.5)
    assert shelf.box() == Box(12.5, 0, 318, 987.5, 600, 336)
    for name, face, x0 in (("left side", Face.LOWER, 12.0), ("right side", Face.UPPER, 982.0)):
        side = part(found, name)
        cut = next(g for g in side.panel.grooves if g.name == "bay 1 shelf 1")
        assert cut == Groove("bay 1 shelf 1", face, Rim.START, 318.0, 18.2, 6.0)
        box = side.place.box(side.panel.groove_box(cut))
        # the lower wall carries the shelf, half a millimetre stays free at its end
        assert (box.x0, box.x1, box.z0, box.z1) == pytest.approx((x0, x0 + 6, 318, 336.2))


def test_figures_of_the_shop_reach_the_shelf() -> None:
    rules = JoineryRules(fit=0.4, end_clearance=1.0, depth=8.0)
    found = built(BaySpec(fixed=1), rules=rules)
    assert part(found, "bay 1 shelf 1").panel.length == 964 + 2 * 7.0
    assert part(found, "left side").panel.grooves[2].width == 18.4
    assert part(found, "left side").panel.grooves[2].depth == 8.0


@pytest.mark.parametrize(
    ("joint", "length"), [(Joint.SCREWS, 964.0), (Joint.NAILS, 964.0), (Joint.CLEATS, 963.0)]
)
def test_other_shelves_fit_between_the_sides(joint: Joint, length: float) -> None:
    found = built(BaySpec(fixed=1), shelf_joint=joint)
    shelf = part(found, "bay 1 shelf 1")
    assert shelf.panel.length == length
    assert shelf.box().x0 == pytest.approx(500 - length / 2)
    assert len(part(found, "left side").panel.grooves) == 2


def test_end_cleats_carry_the_shelf_from_below() -> None:
    found = built(BaySpec(heights=(300.0,)), shelf_joint=Joint.CLEATS)
    assert part(found, "bay 1 shelf 1 left end cleat").box() == Box(18, 20, 288, 36, 600, 318)
    assert part(found, "bay 1 shelf 1 right end cleat").box() == Box(964, 20, 288, 982, 600, 318)
    # with cleats at the wall they end in front of them
    walled = built(BaySpec(heights=(300.0,)), shelf_joint=Joint.CLEATS, back=BackSpec())
    assert part(walled, "bay 1 shelf 1 left end cleat").box().y1 == 600 - 18 - 0.5


@pytest.mark.parametrize(
    ("joint", "needs"),
    [
        (Joint.GROOVE, {}),
        (Joint.SCREWS, {"fixed shelves to sides and dividers": ("screw_4x50", 8)}),
        (Joint.NAILS, {"fixed shelves to sides and dividers": ("nail_20x50", 8)}),
        (Joint.CLEATS, {"end cleats to sides and dividers": ("screw_4x30", 8)}),
    ],
)
def test_fasteners_of_a_shelf(joint: Joint, needs: dict[str, tuple[str, int]]) -> None:
    found = built(BaySpec(fixed=1), shelf_joint=joint)
    case = "bottom and top to sides and dividers"
    assert {h.purpose: (h.key, h.count) for h in found.hardware if h.purpose != case} == needs


def test_shelves_in_front_of_a_back_keep_clear_of_it() -> None:
    found = built(BaySpec(fixed=1), BaySpec(), back=BackSpec(BackKind.PANEL, "hard", 10.0))
    # 600 - 10 - 3.1 is the back's face, and half a millimetre stays free
    for name in ("bay 1 shelf 1", "divider 1"):
        assert part(found, name).box().y1 == pytest.approx(586.4)
    assert found.bays[0].space.y1 == pytest.approx(586.9)
    assert part(found, "left side").panel.width == 600


def test_shelves_level_on_both_sides_of_a_divider_cannot_both_be_screwed() -> None:
    found = built(BaySpec(heights=(300.0,)), BaySpec(heights=(310.0,)), BaySpec(),
                  shelf_joint=Joint.SCREWS)
    (said,) = [f for f in found.findings if f.rule == "level-shelves"]
    assert said.subject == "A, divider 1"
    assert (said.value, said.limit) == ("10.0 mm apart", "at least 18.0 mm")
    for apart, joint in ((318.0, Joint.NAILS), (310.0, Joint.GROOVE), (310.0, Joint.CLEATS)):
        quiet = built(BaySpec(heights=(300.0,)), BaySpec(heights=(apart,)), shelf_joint=joint)
        assert not [f for f in quiet.findings if f.rule == "level-shelves"]


def pin_rows(item: Part) -> tuple[HoleRow, ...]:
    return item.panel.holes


def test_loose_shelves_lie_on_pins_of_the_32_grid() -> None:
    found = built(BaySpec(adjustable=2))
    # ideal undersides: 18 + 642.67 and 18 + 1303.33; pins at 18 + 32 n, shelf 2.5 above
    assert undersides(found, Role.ADJUSTABLE_SHELF) == [
        18 + 20 * 32 + 2.5, 18 + 41 * 32 + 2.5
    ]
    shelf = part(found, "bay 1 loose shelf 1")
    # 3 mm of play, 2 mm behind the front and before the rear
    assert shelf.box() == Box(19.5, 2, 660.5, 980.5, 598, 678.5)


def test_both_walls_have_the_same_two_rows() -> None:
    found = built(BaySpec(adjustable=2))
    left, right = part(found, "left side"), part(found, "right side")
    # first hole at least 96 mm above the floor (3 x 32), last one 96 below the ceiling;
    # rows 37 mm from the front and the most times 32 behind that leaves 37 at the rear
    assert pin_rows(left) == tuple(
        HoleRow("shelf pins", Face.LOWER, 18 + 3 * 32, y, 5.0, 10.0, 56, 32.0)
        for y in (37.0, 37.0 + 16 * 32)
    )
    assert [replace(r, face=Face.LOWER) for r in pin_rows(right)] == list(pin_rows(left))
    assert {r.face for r in pin_rows(right)} == {Face.UPPER}


def test_rear_row_keeps_clear_of_cleats() -> None:
    found = built(BaySpec(adjustable=1), back=BackSpec())
    # the loose shelf ends at 600 - 18 - 2 = 580; 37 before that at most: 37 + 15 * 32 = 517
    assert part(found, "bay 1 loose shelf 1").box().y1 == 580
    assert {r.y for r in pin_rows(part(found, "left side"))} == {37.0, 517.0}


def test_divider_with_loose_shelves_on_both_sides_is_drilled_through() -> None:
    found = built(BaySpec(adjustable=1), BaySpec(adjustable=1))
    rows = pin_rows(part(found, "divider 1"))
    assert len(rows) == 2
    assert {(r.depth, r.count) for r in rows} == {(18.0, 56)}
    assert {r.depth for r in pin_rows(part(found, "left side"))} == {10.0}
    assert [f.rule for f in found.findings if f.rule == "holes-through"] == ["holes-through"]
    alone = built(BaySpec(adjustable=1), BaySpec())
    assert {r.depth for r in pin_rows(part(alone, "divider 1"))} == {10.0}
    assert pin_rows(part(alone, "right side")) == ()


def test_holes_opposite_a_groove_are_left_out_on_both_walls() -> None:
    # the shelf of bay 2 has its groove at 994 to 1012.2, the hole at 18 + 31 * 32 = 1010
    # would lie behind it; 978 and 1042 do not
    found = built(BaySpec(adjustable=2), BaySpec(heights=(976.0,)))
    for name in ("left side", "divider 1"):
        item = part(found, name)
        heights = {
            round(item.place.point(x, y, 0)[2] - 18) for row in pin_rows(item)
            for x, y in row.centres()
        }
        assert heights == {32 * n for n in range(3, 59) if n != 31}
        assert len(pin_rows(item)) == 4


def test_loose_shelves_go_where_there_is_most_room() -> None:
    found = built(BaySpec(heights=(500.0,), adjustable=2))
    # above the fixed shelf 1446 mm are free, below it 500: one above leaves twice 714, so
    # the second goes above too
    assert all(z > 536 for z in undersides(found, Role.ADJUSTABLE_SHELF))
    assert min(x for r in pin_rows(part(found, "left side")) for x, _ in r.centres()) >= 536 + 96
    three = built(BaySpec(heights=(800.0,), adjustable=3))
    assert [z > 818 for z in undersides(three, Role.ADJUSTABLE_SHELF)] == [False, True, True]


def test_four_pins_for_every_loose_shelf() -> None:
    found = built(BaySpec(adjustable=2), BaySpec(adjustable=3))
    pins = [(h.key, h.count) for h in found.hardware if h.purpose == "adjustable shelves"]
    assert pins == [("shelf_pin_5", 8), ("shelf_pin_5", 12)]


def test_loose_shelf_is_banded_like_the_rest() -> None:
    found = built(BaySpec(adjustable=1), material="ply")
    assert part(found, "bay 1 loose shelf 1").panel.visible == {Rim.FRONT}
    assert part(found, "bay 1 loose shelf 1").panel.band_thickness(Rim.FRONT) == 0.5


def test_names_tell_bay_and_number() -> None:
    found = built(BaySpec(fixed=1, adjustable=1), BaySpec(fixed=2))
    assert [n for n in names(found) if "bay" in n] == [
        "bay 1 shelf 1", "bay 2 shelf 1", "bay 2 shelf 2", "bay 1 loose shelf 1"
    ]


@pytest.mark.parametrize(
    ("bay", "message"),
    [
        (BaySpec(fixed=-1), "A, bay 1: number of shelves is -1; must be 0 or more"),
        (BaySpec(adjustable=-2), "A, bay 1: number of shelves is -2; must be 0 or more"),
        (BaySpec(fixed=2, heights=(300.0,)),
         "A, bay 1: fixed shelves is 2; must be 1, the number of heights given, or leave the "
         "heights out"),
        # 33 shelves leave (1964 - 33 * 18) / 34 = 40.3 mm each, 34 would leave 38.6
        (BaySpec(fixed=34),
         "A, bay 1: fixed shelves is 34; must be at most 33 to leave 40 mm between them in "
         "1964 mm"),
        (BaySpec(heights=(300.0, 310.0)),
         "A, bay 1: height of shelf 2 is 310 mm; must be 358 to 1906 mm above the bay's floor"),
        (BaySpec(heights=(39.0,)),
         "A, bay 1: height of shelf 1 is 39 mm; must be 40 to 1906 mm above the bay's floor"),
        (BaySpec(heights=(1950.0,)),
         "A, bay 1: height of shelf 1 is 1950 mm; must be 40 to 1906 mm above the bay's floor"),
        (BaySpec(heights=(float("nan"),)),
         "A, bay 1: height of shelf 1 is nan mm; must be 40 to 1906 mm above the bay's floor"),
        (BaySpec(adjustable=40),
         "A, bay 1: adjustable shelves is 40; must be fewer: 1964 mm of clear height with 56 "
         "usable holes leave less than 40 mm between shelves"),
    ],
)
def test_shelves_that_do_not_fit(bay: BaySpec, message: str) -> None:
    assert refused(bay) == message


def test_as_many_fixed_shelves_as_the_message_says_do_fit() -> None:
    assert len(undersides(built(BaySpec(fixed=33)), Role.FIXED_SHELF)) == 33


def test_carcass_too_shallow_for_two_rows() -> None:
    # 37 in front, 37 behind and 32 between are 106 mm, and the loose shelf ends 2 mm short
    assert refused(BaySpec(adjustable=1), depth=107.0) == (
        "A: depth is 107 mm; must be at least 108 mm for two rows of holes under loose shelves"
    )
    assert built(BaySpec(adjustable=1), depth=108.0)


@pytest.mark.parametrize(
    ("changes", "message"),
    [
        ({"pitch": 0.0}, "pitch is 0 mm; must be 5 to 500 mm"),
        ({"diameter": -5.0}, "diameter is -5 mm; must be 1 to 20 mm"),
        ({"depth": 0.0}, "depth is 0 mm; must be 1 to 50 mm"),
        ({"front": 0.0}, "distance of the front row is 0 mm; must be 5 to 300 mm"),
        ({"rear": float("nan")}, "distance of the rear row is nan mm; must be 5 to 300 mm"),
        ({"margin": -1.0}, "distance from a fixed panel is -1 mm; must be 0 to 1000 mm"),
        ({"play": -1.0}, "play of a loose shelf is -1 mm; must be 0 to 20 mm"),
        ({"setback": -1.0}, "setback of a loose shelf is -1 mm; must be 0 to 100 mm"),
    ],
)
def test_drilling_keeps_within_reason(changes: dict[str, float], message: str) -> None:
    with pytest.raises(ClosetError) as caught:
        DrillRules(**changes)
    assert str(caught.value) == f"shelf pin holes: {message}"


def test_holes_too_close_together_are_refused() -> None:
    drill = DrillRules(diameter=8.0, pitch=6.0)
    assert refused(BaySpec(adjustable=1), drill=drill).startswith(
        "A: left side, holes for shelf pins: row is "
    )


def test_spec_defaults_are_the_trades() -> None:
    drill = CarcassSpec("A", "mdf").drill
    assert (drill.diameter, drill.pitch, drill.front) == (5.0, 32.0, 37.0)
