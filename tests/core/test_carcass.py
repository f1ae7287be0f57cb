"""The carcass: every size and place worked by hand for 18 mm board in 1000 x 600 x 2000 mm.

A groove is 6 mm deep (a third of 18), a tongue 5.5 mm long, a groove 18.2 mm wide.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.carcass import build_carcass
from closetbench.core.component import Component
from closetbench.core.errors import CatalogueError, ClosetError
from closetbench.core.joinery import JoineryRules, Joint
from closetbench.core.panel import Box, Face, Grain, Groove, Notch, Rim
from closetbench.core.parts import Role
from closetbench.core.specs import (
    BackKind,
    BackSpec,
    BaseKind,
    BaseSpec,
    BaySpec,
    CarcassSpec,
    DrillRules,
    TopKind,
)
from tests.core.boards import CATALOGUE, SPACE, closet, names, part, plain

FRAME, KICK = BaseSpec(BaseKind.FRAME), BaseSpec(BaseKind.TOE_KICK)
NO_BACK = BackSpec(BackKind.NONE)


def built(**changes: object) -> Component:
    return build_carcass(plain(**changes), SPACE, CATALOGUE)


def refused(spec: CarcassSpec) -> str:
    with pytest.raises(ClosetError) as caught:
        build_carcass(spec, SPACE, CATALOGUE)
    return str(caught.value)


def near(box: Box, *corners: float) -> bool:
    return (box.x0, box.y0, box.z0, box.x1, box.y1, box.z1) == pytest.approx(corners, abs=1e-9)


def test_parts_of_the_plainest_carcass() -> None:
    found = built(back=NO_BACK)
    assert names(found) == ["left side", "right side", "bottom", "top"]
    assert [p.role for p in found.parts] == [Role.SIDE, Role.SIDE, Role.BOTTOM, Role.TOP]
    assert {p.component for p in found.parts} == {"A"}
    assert found.box == Box(0, 0, 0, 1000, 600, 2000)


def test_sides_stand_at_the_ends_with_their_grooves_inside() -> None:
    found = built(back=NO_BACK)
    left, right = part(found, "left side"), part(found, "right side")
    assert left.box() == Box(0, 0, 0, 18, 600, 2000)
    assert right.box() == Box(982, 0, 0, 1000, 600, 2000)
    assert left.panel.grooves == (
        Groove("bottom", Face.LOWER, Rim.START, 0.0, 18.0, 6.0),
        Groove("top", Face.LOWER, Rim.END, 0.0, 18.0, 6.0),
    )
    # on the side that looks into the carcass: x from 12 to 18, and from 982 to 988
    cuts = [left.place.box(left.panel.groove_box(g)) for g in left.panel.grooves]
    assert cuts == [Box(12, 0, 0, 18, 600, 18), Box(12, 0, 1982, 18, 600, 2000)]
    cuts = [right.place.box(right.panel.groove_box(g)) for g in right.panel.grooves]
    assert cuts == [Box(982, 0, 0, 988, 600, 18), Box(982, 0, 1982, 988, 600, 2000)]


def test_bottom_and_top_grow_by_a_tongue_at_each_end() -> None:
    found = built(back=NO_BACK)
    assert near(part(found, "bottom").box(), 12.5, 0, 0, 987.5, 600, 18)
    assert near(part(found, "top").box(), 12.5, 0, 1982, 987.5, 600, 2000)
    assert part(found, "bottom").panel.length == 1000 - 2 * 18 + 2 * (6.0 - 0.5)


@pytest.mark.parametrize("joint", [Joint.SCREWS, Joint.NAILS])
def test_without_grooves_bottom_and_top_fit_between_the_sides(joint: Joint) -> None:
    found = built(back=NO_BACK, joint=joint)
    assert part(found, "left side").panel.grooves == ()
    assert near(part(found, "bottom").box(), 18, 0, 0, 982, 600, 18)
    assert near(part(found, "top").box(), 18, 0, 1982, 982, 600, 2000)


def test_top_over_the_sides_lies_on_them() -> None:
    found = built(back=NO_BACK, top=TopKind.OVER, bays=(BaySpec(), BaySpec()))
    assert part(found, "top").box() == Box(0, 0, 1982, 1000, 600, 2000)
    assert part(found, "top").panel.grooves == ()
    for name in ("left side", "right side", "divider 1"):
        assert part(found, name).box().z1 == 1982


def test_without_a_top_the_verticals_reach_the_whole_height() -> None:
    found = built(back=NO_BACK, top=TopKind.NONE, bays=(BaySpec(), BaySpec()))
    assert "top" not in names(found)
    assert {part(found, n).box().z1 for n in ("left side", "divider 1", "right side")} == {2000}
    assert found.bays[0].space.z1 == 2000


def test_dividers_stand_in_grooves_of_bottom_and_top() -> None:
    found = built(back=NO_BACK, bays=(BaySpec(), BaySpec()))
    # clear between the sides: 964; less one divider, shared by two: 473 each
    divider = part(found, "divider 1")
    assert near(divider.box(), 491, 0, 12.5, 509, 600, 1987.5)
    for name, face, low in (("bottom", Face.UPPER, 12.0), ("top", Face.LOWER, 1982.0)):
        board = part(found, name)
        (cut,) = board.panel.grooves
        assert cut == Groove("divider 1", face, Rim.START, 491 - 12.5, 18.2, 6.0)
        box = board.place.box(board.panel.groove_box(cut))
        assert near(box, 491, 0, low, 509.2, 600, low + 6)
    assert divider.panel.notches == ()


def test_screwed_dividers_stand_between_bottom_and_top() -> None:
    found = built(back=NO_BACK, joint=Joint.SCREWS, bays=(BaySpec(), BaySpec()))
    assert near(part(found, "divider 1").box(), 491, 0, 18, 509, 600, 1982)
    assert part(found, "bottom").panel.grooves == ()


def test_bays_take_the_widths_given_and_share_the_rest() -> None:
    found = built(bays=(BaySpec(300.0), BaySpec(), BaySpec(100.0), BaySpec()))
    # 964 less three dividers is 910; less 400 given, 255 for each of the two others
    spans = [(bay.space.x0, bay.space.x1) for bay in found.bays]
    expected = [(18, 318), (336, 591), (609, 709), (727, 982)]
    assert [v for s in spans for v in s] == pytest.approx([v for s in expected for v in s])
    assert [bay.name for bay in found.bays] == ["bay 1", "bay 2", "bay 3", "bay 4"]
    assert found.bays[0].space == Box(18, 0, 18, 318, 600, 1982)


def test_widths_that_fill_the_carcass_exactly_are_taken() -> None:
    found = built(bays=(BaySpec(400.0), BaySpec(546.0)))
    assert [b.space.x1 - b.space.x0 for b in found.bays] == [400.0, 546.0]


def test_stopped_grooves_and_the_notches_that_hide_them() -> None:
    # banded board of 17.6 mm: grooves 5.5 deep stop 10 mm short; tongues of 5.0 are
    # notched 0.5 mm further
    found = built(material="ply", bays=(BaySpec(fixed=1), BaySpec()), back=NO_BACK)
    side = part(found, "left side").panel
    assert {g.stop_first for g in side.grooves} == {10.0}
    assert {g.stop_last for g in side.grooves} == {0.0}
    assert {g.depth for g in side.grooves} == {5.5}
    ends = (Notch(Rim.START, Rim.FRONT, 5.0, 10.5), Notch(Rim.END, Rim.FRONT, 5.0, 10.5))
    for name in ("bottom", "top", "divider 1", "bay 1 shelf 1"):
        assert part(found, name).panel.notches == ends
    assert part(found, "bottom").panel.grooves[0].stop_first == 10.0
    assert side.notches == ()


def test_divider_under_a_top_that_lies_over_is_notched_below_only() -> None:
    found = built(material="ply", top=TopKind.OVER, bays=(BaySpec(), BaySpec()))
    assert part(found, "divider 1").panel.notches == (Notch(Rim.START, Rim.FRONT, 5.0, 10.5),)
    assert part(found, "top").panel.notches == ()


def test_stop_may_be_set_and_bare_board_has_none() -> None:
    assert part(built(), "left side").panel.grooves[0].stop_first == 0.0
    found = built(groove_stop=12.0)
    assert part(found, "left side").panel.grooves[0].stop_first == 12.0
    assert part(found, "bottom").panel.notches[0] == Notch(Rim.START, Rim.FRONT, 5.5, 12.5)


def test_visible_front_edges_are_banded_and_the_finished_depth_holds() -> None:
    found = built(material="ply", bays=(BaySpec(fixed=1, adjustable=1), BaySpec()))
    for item in found.parts:
        banded = item.role is not Role.CLEAT
        assert bool(item.panel.bands) is banded, item.name
        assert item.panel.visible == (frozenset({Rim.FRONT}) if banded else frozenset())
    side = part(found, "left side").panel
    assert (side.width, side.cut_width) == (600.0, 599.5)
    assert built(material="ply", band="").parts[0].panel.bands == ()
    assert built(band="two").parts[0].panel.cut_width == 598.0


def test_right_side_is_the_mirror_image_of_the_left() -> None:
    found = built(
        material="ply", base=KICK, back=BackSpec(BackKind.PANEL, "hard"),
        bays=(BaySpec(fixed=2, adjustable=2), BaySpec(), BaySpec(fixed=2, adjustable=2)),
    )
    left, right = part(found, "left side").panel, part(found, "right side").panel
    assert right.shape_key() == left.mirrored().shape_key()
    assert right.shape_key() != left.shape_key()
    assert left.machined_faces == {Face.LOWER}
    assert right.machined_faces == {Face.UPPER}


def test_toe_kick_notches_the_sides_and_lifts_the_bottom() -> None:
    found = built(base=BaseSpec(BaseKind.TOE_KICK, 80.0, 50.0), back=NO_BACK)
    side = part(found, "right side")
    assert side.box().z0 == 0
    assert side.panel.notches == (Notch(Rim.START, Rim.FRONT, 80.0, 50.0),)
    # groove for the bottom: its lower wall carries the board, the fit lies above
    assert side.panel.grooves[0] == Groove("bottom", Face.UPPER, Rim.START, 80.0, 18.2, 6.0)
    assert near(part(found, "bottom").box(), 12.5, 0, 80, 987.5, 600, 98)
    assert found.bays[0].space.z0 == 98


def test_toe_kick_without_setback_needs_no_notch() -> None:
    found = built(base=BaseSpec(BaseKind.TOE_KICK, 80.0, 0.0))
    assert part(found, "left side").panel.notches == ()
    assert part(found, "front kick board").box() == Box(18, 0, 0, 982, 18, 80)


def test_carcass_on_a_base_frame_starts_above_it() -> None:
    found = built(base=FRAME, back=NO_BACK)
    assert part(found, "left side").box() == Box(0, 0, 80, 18, 600, 2000)
    assert part(found, "left side").panel.length == 1920
    assert part(found, "left side").panel.grooves[0].is_rabbet
    assert near(part(found, "bottom").box(), 12.5, 0, 80, 987.5, 600, 98)


def test_grain_runs_along_every_panel_of_grained_board() -> None:
    assert {p.panel.grain for p in built(material="ply").parts} == {Grain.LENGTH}
    assert {p.panel.grain for p in built().parts} == {Grain.NONE}


def test_shallow_carcass_stands_at_the_back_or_at_the_front() -> None:
    assert built(depth=400.0).box == Box(0, 200, 0, 1000, 600, 2000)
    front = built(depth=400.0, against_back=False)
    assert front.box == Box(0, 0, 0, 1000, 400, 2000)
    assert {p.box().y0 for p in front.parts if p.role is Role.SIDE} == {0}
    behind = built(depth=400.0)
    assert {p.box().y0 for p in behind.parts if p.role is Role.SIDE} == {200}
    assert behind.bays[0].space.y0 == 200


def test_carcasses_stand_side_by_side_or_where_they_are_put() -> None:
    found = closet(plain(width=400.0), plain(name="B", x=450.0, width=300.0), plain(name="C"))
    assert [(c.box.x0, c.box.x1) for c in found.components] == [(0, 400), (450, 750), (750, 1000)]


def test_screws_of_the_case_follow_the_depth() -> None:
    # 600 mm: one every 150; two boards, three verticals
    needs = {h.purpose: (h.key, h.count) for h in built(bays=(BaySpec(), BaySpec())).hardware}
    assert needs["bottom and top to sides and dividers"] == ("screw_4x50", 2 * 3 * 4)
    shallow = built(depth=100.0, top=TopKind.NONE, joint=Joint.NAILS, back=NO_BACK)
    assert [(h.key, h.count) for h in shallow.hardware] == [("nail_20x50", 2 * 2)]


def test_every_hardware_key_is_in_the_catalogue_that_ships() -> None:
    from closetbench.resources import load_catalogue

    shipped = load_catalogue()
    for joint in Joint:
        for back in BackSpec(), BackSpec(BackKind.PANEL, "hard"), BackSpec(BackKind.PANEL):
            for base in BaseKind:
                found = built(
                    shelf_joint=joint, back=back, base=BaseSpec(base),
                    bays=(BaySpec(fixed=1, adjustable=1), BaySpec()),
                )
                for need in found.hardware:
                    assert shipped.item(need.key).title
                    assert need.count > 0


def finding(found: Component, rule: str) -> object:
    return next((f for f in found.findings if f.rule == rule), None)


def test_doubts_about_a_carcass_that_can_be_built() -> None:
    assert finding(built(back=NO_BACK), "no-back")
    assert not finding(built(), "no-back")
    assert finding(built(material="ply", groove_stop=0.0), "groove-through-band")
    assert not finding(built(material="ply"), "groove-through-band")
    screwed = built(material="ply", groove_stop=0.0, joint=Joint.SCREWS)
    assert not finding(screwed, "groove-through-band")
    assert finding(built(material="ply", band=""), "raw-edge")
    assert not finding(built(), "raw-edge")


@pytest.mark.parametrize(
    ("changes", "message"),
    [
        ({"width": 1000.1}, "A: width is 1000.1 mm; must be 116 to 1000 mm to fit the envelope"),
        ({"width": 0.0}, "A: width is 0 mm; must be 116 to 1000 mm to fit the envelope"),
        ({"width": -5.0}, "A: width is -5 mm; must be 116 to 1000 mm to fit the envelope"),
        ({"width": float("nan")},
         "A: width is nan mm; must be 116 to 1000 mm to fit the envelope"),
        ({"height": 2001.0}, "A: height is 2001 mm; must be 136 to 2000 mm to fit the envelope"),
        ({"height": 200.0, "base": FRAME},
         "A: height is 200 mm; must be 216 to 2000 mm to fit the envelope"),
        ({"depth": 601.0}, "A: depth is 601 mm; must be 100 to 600 mm to fit the envelope"),
        ({"x": -1.0}, "A: distance from the left is -1 mm; must be 0 to 1000 mm beside what "
                      "stands there"),
        ({"x": 950.0}, "A: width is 50 mm; must be at least 116 mm, and only 50 mm are there to "
                       "fit the envelope"),
        ({"joint": Joint.CLEATS},
         "A: joint is cleats; must be groove, screws or nails; cleats carry shelves"),
        ({"bays": ()}, "A: bays is 0; must be 1 or more"),
        ({"bays": (BaySpec(500.0), BaySpec(400.0))},
         "A: sum of the bay widths is 900 mm; must be the 946 mm between the sides, or leave one "
         "bay's width open"),
        ({"bays": (BaySpec(79.0), BaySpec())},
         "A, bay 1: width is 79 mm; must be at least 80 mm to hold a shelf; 946 mm lie between "
         "the sides for 2 bays"),
        ({"bays": (BaySpec(900.0), BaySpec())},
         "A, bay 2: width is 46 mm; must be at least 80 mm to hold a shelf; 946 mm lie between "
         "the sides for 2 bays"),
        ({"bays": (BaySpec(float("nan")), BaySpec())},
         "A, bay 1: width is nan mm; must be at least 80 mm to hold a shelf; 946 mm lie between "
         "the sides for 2 bays"),
        ({"groove_stop": -1.0},
         "A: groove stop is -1 mm; must be 0 to 300 mm (0 runs through the edge band)"),
        ({"band": "two", "groove_stop": 1.0},
         "A: groove stop is 1 mm; must be 2 to 300 mm (0 runs through the edge band)"),
        ({"rules": JoineryRules(depth=9.5)},
         "A: groove depth is 9.5 mm; must be above 0 and at most 9 mm in a panel 18 mm thick"),
        ({"rules": JoineryRules(depth=2.0, end_clearance=2.5)},
         "A: end clearance is 2.5 mm; must be less than the depth of the groove, 2 mm"),
        ({"rules": JoineryRules(depth=7.0), "bays": (BaySpec(fixed=1), BaySpec(fixed=1))},
         "A: divider 1, grooves for bay 1 shelf 1 and bay 2 shelf 1: web between them is 4 mm; "
         "must be at least 4.5 mm of 18 mm where grooves meet back to back; make them shallower "
         "or move one shelf"),
        ({"drill": DrillRules(depth=16.0), "bays": (BaySpec(adjustable=1),)},
         "A: left side, holes for shelf pins: depth is 16 mm; must be at most 15 mm, or drill "
         "right through 18 mm"),
    ],
)
def test_carcass_that_cannot_be_built(changes: dict[str, object], message: str) -> None:
    assert refused(plain(**changes)) == message


def test_low_carcass_needs_no_room_for_a_base_that_it_has_not() -> None:
    # 2 x 18 mm board and 100 mm of clear height, whatever the unused base height
    assert built(height=136.0, base=BaseSpec(BaseKind.NONE, 400.0), back=NO_BACK).box.z1 == 136.0


def test_unknown_keys_are_named() -> None:
    for changes, what in (
        ({"material": "plywod"}, "material"),
        ({"band": "haf"}, "band"),
        ({"back": BackSpec(BackKind.PANEL, "hrad")}, "material"),
        ({"base": BaseSpec(material="mfd")}, "material"),
    ):
        with pytest.raises(CatalogueError) as caught:
            built(**changes)
        assert (caught.value.subject, caught.value.prop) == ("A", what)
        assert "is not in the catalogue" in caught.value.limit


def test_spec_is_not_changed_by_building() -> None:
    spec = plain(bays=(BaySpec(fixed=2, adjustable=1), BaySpec()))
    assert build_carcass(spec, SPACE, CATALOGUE) == build_carcass(
        replace(spec), SPACE, CATALOGUE
    )
