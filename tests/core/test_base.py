"""Base frame, kick boards, back and cleats: places worked by hand for 18 mm board."""

from __future__ import annotations

from itertools import pairwise

import pytest

from closetbench.core.carcass import build_carcass
from closetbench.core.component import Component, Space
from closetbench.core.errors import ClosetError
from closetbench.core.joinery import Joint
from closetbench.core.panel import Box, Face, Grain, Groove, Rim
from closetbench.core.parts import Part, Role
from closetbench.core.specs import BackKind, BackSpec, BaseKind, BaseSpec, BaySpec, TopKind
from tests.core.boards import CATALOGUE, SPACE, names, part, plain

NO_BACK = BackSpec(BackKind.NONE)
HARD = BackSpec(BackKind.PANEL, "hard", 10.0)


def built(space: Space = SPACE, **changes: object) -> Component:
    return build_carcass(plain(**changes), space, CATALOGUE)


def refused(**changes: object) -> str:
    with pytest.raises(ClosetError) as caught:
        built(**changes)
    return str(caught.value)


def with_role(found: Component, role: Role) -> list[Part]:
    return [p for p in found.parts if p.role is role]


def test_no_base_no_parts() -> None:
    assert not with_role(built(), Role.BASE_FRAME)
    assert not with_role(built(), Role.TOE_KICK)


def test_kick_boards_stand_between_the_sides_under_the_bottom() -> None:
    found = built(base=BaseSpec(BaseKind.TOE_KICK, 80.0, 50.0))
    assert part(found, "front kick board").box() == Box(18, 50, 0, 982, 68, 80)
    assert part(found, "rear kick board").box() == Box(18, 582, 0, 982, 600, 80)
    assert ("screw_4x50", 8) in [(h.key, h.count) for h in found.hardware]


def test_base_frame_is_two_rails_and_cross_members() -> None:
    found = built(base=BaseSpec(BaseKind.FRAME, 80.0, 50.0, spacing=600.0))
    assert part(found, "base front rail").box() == Box(0, 50, 0, 1000, 68, 80)
    assert part(found, "base rear rail").box() == Box(0, 582, 0, 1000, 600, 80)
    members = [p.box() for p in with_role(found, Role.BASE_FRAME)[2:]]
    # 1000 - 18 = 982 in fields of at most 618: two of 491
    assert members == [Box(x, 68, 0, x + 18, 582, 80) for x in (0.0, 491.0, 982.0)]
    needs = {h.purpose: h.count for h in found.hardware}
    assert (needs["base frame"], needs["carcass to base frame"]) == (12, 6)


@pytest.mark.parametrize(("spacing", "members"), [(946.0, 3), (964.0, 2), (473.0, 3), (472.0, 4)])
def test_no_field_of_the_base_frame_is_wider_than_its_spacing(
    spacing: float, members: int
) -> None:
    # clear between the ends: 964; with one between them 473 twice
    found = built(base=BaseSpec(BaseKind.FRAME, spacing=spacing))
    xs = [p.box() for p in with_role(found, Role.BASE_FRAME)[2:]]
    assert len(xs) == members
    assert all(b.x0 - a.x1 <= spacing + 1e-9 for a, b in pairwise(xs))


def test_base_may_be_of_another_board() -> None:
    found = built(base=BaseSpec(BaseKind.FRAME, material="ply"))
    rail = part(found, "base front rail")
    assert (rail.panel.material, rail.panel.thickness) == ("ply", 17.6)
    assert rail.panel.grain is Grain.LENGTH
    assert rail.panel.bands == ()


@pytest.mark.parametrize(
    ("base", "message"),
    [
        (BaseSpec(height=10.0), "A: base height is 10 mm; must be 20 to 400 mm"),
        (BaseSpec(height=float("nan")), "A: base height is nan mm; must be 20 to 400 mm"),
        (BaseSpec(setback=-1.0), "A: base setback is -1 mm; must be 0 to 514 mm"),
        (BaseSpec(setback=520.0), "A: base setback is 520 mm; must be 0 to 514 mm"),
        (BaseSpec(spacing=0.0),
         "A: spacing of the base's cross members is 0 mm; must be 100 to 1200 mm"),
    ],
)
def test_base_that_cannot_be_built(base: BaseSpec, message: str) -> None:
    assert refused(base=base) == message


def test_back_lies_in_grooves_all_round() -> None:
    found = built(back=HARD)
    # rear face 10 mm in, tongues of 5.5 at all four edges
    assert part(found, "back").box() == Box(12.5, 586.9, 12.5, 987.5, 590.0, 1987.5)
    groove = {"width": pytest.approx(3.3), "depth": 6.0, "offset": 10.0}
    for name, face in (
        ("left side", Face.LOWER), ("right side", Face.UPPER),
        ("bottom", Face.UPPER), ("top", Face.LOWER),
    ):
        (cut,) = [g for g in part(found, name).panel.grooves if g.name == "back"]
        assert (cut.face, cut.measured_from) == (face, Rim.REAR)
        assert {k: getattr(cut, k) for k in groove} == groove
        assert cut.is_through


def test_back_is_open_above_where_there_is_no_top_and_stopped_where_it_lies_over() -> None:
    assert part(built(back=HARD, top=TopKind.NONE), "back").box().z1 == 2000
    over = built(back=HARD, top=TopKind.OVER)
    (cut,) = part(over, "top").panel.grooves
    # the back reaches 12.5 mm from the end, the groove 12: nothing shows outside
    assert cut == Groove("back", Face.LOWER, Rim.REAR, 10.0, cut.width, 6.0, 12.0, 12.0)
    assert part(over, "back").box().z1 == 1982 + 5.5


def test_back_of_a_screwed_carcass_is_still_let_in() -> None:
    found = built(back=HARD, joint=Joint.SCREWS, shelf_joint=Joint.SCREWS)
    assert [g.name for g in part(found, "left side").panel.grooves] == ["back"]
    assert part(found, "back").box().x0 == 12.5


def test_grain_of_a_back_stands_upright() -> None:
    back = part(built(back=BackSpec(BackKind.PANEL, "ply6")), "back").panel
    assert (back.length, back.width, back.grain) == (1975.0, 975.0, Grain.LENGTH)
    low = part(built(back=BackSpec(BackKind.PANEL, "hard"), height=700.0), "back").panel
    assert (low.length, low.width, low.grain) == (975.0, 675.0, Grain.NONE)


WIDE = Space(0.0, 2400.0, 600.0, 2000.0)
THREE = (BaySpec(), BaySpec(), BaySpec())


def test_wide_back_is_parted_behind_dividers() -> None:
    # 2400 - 25 wide, 1975 high: a sheet of 2430 x 1210 clear yields pieces up to 1210.
    # Dividers' middles: 18 + (2364 - 36) / 3 = 794 + 9, and 794 + 18 + 776 + 9
    found = built(WIDE, back=HARD, bays=THREE)
    backs = with_role(found, Role.BACK)
    assert [p.name for p in backs] == ["back 1", "back 2", "back 3"]
    spans = [(p.box().x0, p.box().x1) for p in backs]
    assert spans == [(12.5, 803.0), (803.0, 1597.0), (1597.0, 2387.5)]
    needs = {h.purpose: (h.key, h.count) for h in found.hardware}
    # two dividers, one screw every 300 mm of 1975
    assert needs["back to dividers"] == ("screw_35x16", 14)


def test_low_back_takes_the_sheet_lengthwise_and_needs_no_joint() -> None:
    found = built(WIDE, back=HARD, bays=THREE, height=1000.0)
    assert [p.name for p in with_role(found, Role.BACK)] == ["back"]
    grained = built(WIDE, back=BackSpec(BackKind.PANEL, "ply6"), bays=THREE, height=1000.0)
    assert len(with_role(grained, Role.BACK)) == 3


def test_pieces_are_as_few_as_the_sheet_allows() -> None:
    # four bays of 577.5: middles at 604.5, 1200 and 1795.5, so one joint at 1200 is enough
    found = built(WIDE, back=HARD, bays=(*THREE, BaySpec()))
    assert [p.box().x1 for p in with_role(found, Role.BACK)] == [1200.0, 2387.5]


def test_back_too_wide_for_a_sheet_and_without_divider_is_left_whole() -> None:
    assert names(built(WIDE, back=HARD))[-1] == "back"


def test_thick_back_is_screwed_with_screws_that_pass_through_it() -> None:
    thick = built(back=BackSpec(BackKind.PANEL), bays=(BaySpec(), BaySpec()))
    assert ("screw_4x50", "back to dividers") in [(h.key, h.purpose) for h in thick.hardware]


@pytest.mark.parametrize("inset", [2.9, 297.0, -1.0])
def test_inset_of_the_back_leaves_wood_behind_it_and_room_before_it(inset: float) -> None:
    # at most to the middle of 600 mm, less the back's own 3.1
    assert refused(back=BackSpec(BackKind.PANEL, "hard", inset)) == (
        f"A: inset of the back is {inset:g} mm; must be 3 to 296.9 mm"
    )


def test_cleats_lie_between_the_verticals_at_the_rear() -> None:
    found = built(bays=(BaySpec(), BaySpec()), height=1500.0)
    cleats = {p.name: p.box() for p in with_role(found, Role.CLEAT)}
    assert cleats == {
        "bay 1 top cleat": Box(18, 582, 1392, 491, 600, 1482),
        "bay 1 bottom cleat": Box(18, 582, 18, 491, 600, 108),
        "bay 2 top cleat": Box(509, 582, 1392, 982, 600, 1482),
        "bay 2 bottom cleat": Box(509, 582, 18, 982, 600, 108),
    }
    assert {h.purpose: h.count for h in found.hardware}["cleats to sides and dividers"] == 16


@pytest.mark.parametrize(("height", "middle"), [(1560.0, False), (1560.1, True)])
def test_high_bay_has_a_cleat_in_the_middle(height: float, middle: bool) -> None:
    # 1560 less 36 of board is 1524 mm, 60 in
    assert ("bay 1 middle cleat" in names(built(height=height))) is middle


def test_middle_cleat_lies_in_the_middle_or_under_the_nearest_shelf() -> None:
    assert part(built(), "bay 1 middle cleat").box().z0 == 955.0
    shelved = built(bays=(BaySpec(heights=(960.0,)),))
    assert part(shelved, "bay 1 middle cleat").box().z1 == 978.0
    free = built(bays=(BaySpec(heights=(500.0,)),))
    assert part(free, "bay 1 middle cleat").box().z0 == 955.0


def test_bay_without_room_for_a_middle_cleat_is_pointed_at() -> None:
    # 90 mm between any two shelves, and cleats of 95
    crowded = built(
        back=BackSpec(cleat_height=95.0), bays=(BaySpec(heights=tuple(
            95.0 + 108.0 * i for i in range(17)
        )),),
    )
    assert "bay 1 middle cleat" not in names(crowded)
    (said,) = [f for f in crowded.findings if f.rule == "middle-cleat"]
    assert said.subject == "A, bay 1"


@pytest.mark.parametrize(
    ("bays", "message"),
    [
        ((BaySpec(heights=(50.0,)),),
         "A, bay 1: height of a fixed shelf is 50 mm; must be 90 to 1856 mm above the bay's "
         "floor, clear of the bottom cleat"),
        ((BaySpec(), BaySpec(heights=(1870.0,))),
         "A, bay 2: height of a fixed shelf is 1870 mm; must be 90 to 1856 mm above the bay's "
         "floor, clear of the top cleat"),
    ],
)
def test_shelf_must_keep_clear_of_top_and_bottom_cleat(
    bays: tuple[BaySpec, ...], message: str
) -> None:
    assert refused(bays=bays) == message
    assert built(bays=bays, back=NO_BACK)


def test_cleat_height_has_limits_and_a_small_one_is_pointed_at() -> None:
    assert refused(back=BackSpec(cleat_height=30.0)) == (
        "A: cleat height is 30 mm; must be 40 to 654.667 mm"
    )
    (said,) = [
        f for f in built(back=BackSpec(cleat_height=60.0)).findings if f.rule == "small-cleats"
    ]
    assert (said.value, said.limit) == (
        "18.0 mm x 60.0 mm", "at least 12.7 mm x 63.5 mm")
    assert not [f for f in built().findings if f.rule == "small-cleats"]
