"""Drawers: clearances from the solids, joints, fronts, and what is refused."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from closetbench.core.catalogue import read_catalogue
from closetbench.core.closet import Closet, ClosetDesign, build_closet
from closetbench.core.conflicts import common_volume
from closetbench.core.drawers import BottomKind, BoxJoint, DrawersSpec
from closetbench.core.errors import ClosetError
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.parts import Part, Role
from closetbench.core.slides import BoxRule
from closetbench.core.specs import BackKind, BackSpec, BaySpec, CarcassSpec
from closetbench.core.survey import Reading, ReadingKind
from closetbench.resources import load_catalogue
from tests.core.rooms import TrueRoom
from tests.core.solids import clashes

CATALOGUE = load_catalogue()
CARCASS = CarcassSpec(
    "A", "mdf18", bays=(BaySpec(width=600.0, fixed=1), BaySpec(fixed=1)),
    back=BackSpec(BackKind.PANEL, "hardboard3"),
)


def closet(spec: DrawersSpec, width: float = 1300.0, depth: float = 600.0) -> Closet:
    design = ClosetDesign("test", size=(width, depth, 2000.0), components=(CARCASS, spec))
    return build_closet(design, CATALOGUE)


def parts(built: Closet, role: Role) -> list[Part]:
    return [p for p in built.parts if p.role is role and p.component == "D"]


@pytest.mark.parametrize("joint", BoxJoint)
@pytest.mark.parametrize("bottom", BottomKind)
@pytest.mark.parametrize("depth", [400.0, 513.0, 640.0])
@pytest.mark.parametrize("key", sorted(CATALOGUE.slides))
def test_every_clearance_from_the_solids(key, depth, bottom, joint):
    slide = CATALOGUE.slides[key]
    built = closet(
        DrawersSpec("D", Spot("A", 1, 2), count=3, slide=key, joint=joint, bottom=bottom),
        depth=depth,
    )
    bay = built.components[0].bays[0].space
    fronts = parts(built, Role.FRONT)
    sides = parts(built, Role.BOX_SIDE)
    assert (len(fronts), len(sides)) == (3, 6)
    for i in range(3):
        left, right = sides[2 * i].box(), sides[2 * i + 1].box()
        gaps = (left.x0 - bay.x0, bay.x1 - right.x1)
        assert gaps[0] == pytest.approx(gaps[1])
        if slide.rule is BoxRule.BY_OPENING:
            assert slide.side - slide.side_under <= gaps[0] <= slide.side + slide.side_over
        else:
            inside = right.x0 - left.x1
            less = 600.0 - inside
            assert slide.inside_less - slide.side_under <= less
            assert less <= slide.inside_less + slide.side_over
        assert bay.y1 - left.y1 >= slide.behind - 1e-6
        assert left.y0 == pytest.approx(fronts[i].box().y1)
        assert left.z1 - left.z0 >= slide.height
        length = left.y1 - left.y0
        assert not slide.lengths or any(abs(length - v) < 1e-6 for v in slide.lengths)
        # the next longer slide would not go in
        longer = [v for v in slide.lengths if v > length + 1e-6]
        assert not longer or left.y0 + longer[0] + slide.behind > bay.y1
    middles = [f.box() for f in fronts]
    for i, front in enumerate(middles):
        box = sides[2 * i].box()
        low = middles[i - 1].z1 if i else bay.z0 + 690.0
        assert box.z0 >= front.z0 + slide.below - 1e-6
        assert front.z1 - box.z1 >= slide.above - 1e-6
        assert front.z0 > low or i == 0
    assert clashes(built.parts) == []
    assert not [f for f in built.findings if f.rule == "parts-overlap"]


def test_side_mounted_box_in_an_opening_of_600():
    """12.7 mm each side, +0.8/-0 on the gap: box 573.0 to 574.6 mm.

    Common practice, no published source (1/2 in each side is the trade-wide figure).
    """
    built = closet(DrawersSpec("D", Spot("A", 1, 1)))
    left, right = (p.box() for p in parts(built, Role.BOX_SIDE))
    assert 573.0 <= right.x1 - left.x0 <= 574.6


def test_rabbeted_box_sizes_by_hand():
    built = closet(DrawersSpec(
        "D", Spot("A", 1, 1), box_height=100.0, slide_length=450.0, joint=BoxJoint.RABBET,
    ))
    side = parts(built, Role.BOX_SIDE)[0].panel
    front = parts(built, Role.BOX_FRONT)[0].panel
    bottom = parts(built, Role.BOX_BOTTOM)[0].panel
    outer = 600.0 - 2 * (12.7 + 0.4)
    assert (side.length, side.width, side.thickness) == (450.0, 100.0, 12.0)
    # 12 mm board: grooves and rabbets 4 mm deep, tongues 3.5 mm
    assert front.length == pytest.approx(outer - 2 * 12 + 2 * 3.5)
    assert bottom.width == pytest.approx(outer - 2 * 12 + 2 * 3.5)
    assert bottom.length == pytest.approx(450 - 2 * 12 + 2 * 3.5)


def test_butt_and_tongue_fronts_by_hand():
    sizes = {}
    for joint in BoxJoint:
        built = closet(DrawersSpec("D", Spot("A", 1, 1), joint=joint))
        sizes[joint] = parts(built, Role.BOX_FRONT)[0].panel.length
    outer = 600.0 - 2 * (12.7 + 0.4)
    assert sizes[BoxJoint.BUTT] == pytest.approx(outer - 24)
    assert sizes[BoxJoint.TONGUE] == pytest.approx(outer - 24 + 7)


def test_bottom_let_in_under_the_back_slides_out_behind():
    built = closet(DrawersSpec("D", Spot("A", 1, 1), bottom=BottomKind.UNDER_BACK))
    bottom = parts(built, Role.BOX_BOTTOM)[0].box()
    back = parts(built, Role.BOX_BACK)[0].box()
    side = parts(built, Role.BOX_SIDE)[0].box()
    assert back.z0 == pytest.approx(bottom.z1)
    assert bottom.y1 == pytest.approx(side.y1)


def test_a_bank_of_five_has_ten_equal_sides():
    """Left and right are mirror images, and one turned end for end is the other."""
    built = closet(DrawersSpec("D", Spot("A", 1, 1), count=5))
    sides = [p.panel for p in parts(built, Role.BOX_SIDE)]
    assert len(sides) == 10
    assert sides[0].grooves != sides[1].grooves
    assert len({p.shape_key() for p in sides}) == 1
    assert len({p.panel.shape_key() for p in parts(built, Role.FRONT)}) == 1


def test_inset_reveals_are_even():
    built = closet(DrawersSpec("D", Spot("A", 1, 1), count=2, front=FrontSpec(gap=2.5)))
    bay = built.components[0].bays[0].space
    shelf = next(p.box() for p in built.parts if p.role is Role.FIXED_SHELF)
    low, high = (p.box() for p in parts(built, Role.FRONT))
    assert low.x0 - bay.x0 == pytest.approx(2.5)
    assert bay.x1 - low.x1 == pytest.approx(2.5)
    assert low.z0 - bay.z0 == pytest.approx(2.5)
    assert high.z0 - low.z1 == pytest.approx(2.5)
    assert shelf.z0 - high.z1 == pytest.approx(2.5)
    assert (low.y0, low.y1) == (pytest.approx(bay.y0), pytest.approx(bay.y0 + 18))


def test_full_overlay_covers_the_side_and_shares_the_divider():
    built = closet(DrawersSpec("D", Spot("A", 1, 1), front=FrontSpec(FrontKind.FULL)))
    front = parts(built, Role.FRONT)[0].box()
    assert front.x0 == pytest.approx(1.5)
    assert front.x1 == pytest.approx(618 + 7.5)
    assert front.y1 == pytest.approx(built.components[0].box.y0)
    half = closet(DrawersSpec("D", Spot("A", 1, 1), front=FrontSpec(FrontKind.HALF)))
    assert parts(half, Role.FRONT)[0].box().x0 == pytest.approx(18 - 7.5)


def test_graduated_heights_fill_the_opening():
    built = closet(DrawersSpec("D", Spot("A", 1, 1), heights=(300.0, 200.0, 0.0)))
    boxes = [p.box() for p in parts(built, Role.FRONT)]
    heights = [b.z1 - b.z0 for b in boxes]
    assert heights[:2] == [pytest.approx(300), pytest.approx(200)]
    bay = built.components[0].bays[0].space
    shelf = next(p.box() for p in built.parts if p.role is Role.FIXED_SHELF)
    assert sum(heights) + 4 * 3 == pytest.approx(shelf.z0 - bay.z0)


def test_front_and_box_front_are_drilled_for_each_other():
    built = closet(DrawersSpec("D", Spot("A", 1, 1), front=FrontSpec(pulls=2)))
    front = parts(built, Role.FRONT)[0].panel
    (row,) = front.holes
    assert row.count == 2
    assert row.centres()[0][0] == pytest.approx(front.length / 4)
    box = parts(built, Role.BOX_FRONT)[0]
    screws, pulls = box.panel.holes
    assert (screws.diameter, screws.depth) == (8.0, 12.0)
    # the pulls' screws go through both
    assert (pulls.diameter, pulls.depth) == (5.0, 12.0)
    through = [[p.place.point(x, y, 0.0)[::2] for x, y in r.centres()]
               for p, r in ((parts(built, Role.FRONT)[0], row), (box, pulls))]
    assert through[0] == [pytest.approx(at) for at in through[1]]


def test_a_pull_before_the_groove_of_the_bottom_is_left_to_its_own_screws():
    """A front that hangs far below its box: the pull lies before the groove or under the box."""
    spec = DrawersSpec("D", Spot("A", 1, 1, height=120.0), box_height=45.0, slide="undermount")
    built = closet(spec)
    box = parts(built, Role.BOX_FRONT)[0]
    for row in box.panel.holes:
        assert row.name == "front screws" or row.y > 13.0 + 6.0


def test_hardware_is_counted_per_drawer():
    built = closet(DrawersSpec("D", Spot("A", 1, 1), count=4, slide_length=500.0))
    needs = {n.key: n.count for n in built.components[1].hardware}
    assert needs["slide_500"] == 8
    assert needs["pull"] == 4
    inches = closet(DrawersSpec("D", Spot("A", 1, 1), slide="side_mount_inch"))
    assert {n.key for n in inches.components[1].hardware} >= {"slide_22in"}
    for need in inches.hardware:
        CATALOGUE.item(need.key)


@pytest.mark.parametrize(
    ("box", "front", "screws"),
    [
        ("ply12", "mdf18", ("screw_4x40", "screw_4x25")),
        ("mdf18", "mdf18", ("screw_4x50", "screw_4x30")),
        ("ply12", "ply12", ("screw_4x40", "screw_4x20")),
        ("ply12", "mdf6", ("screw_4x40", None)),
    ],
)
def test_screws_by_length_from_the_joint(box, front, screws):
    """Through the side 24 mm into the end; through the box front 6 mm or more into the front,
    3 mm short of its face: common practice, no published source."""
    built = closet(DrawersSpec(
        "D", Spot("A", 1, 1), box_material=box, front=FrontSpec(material=front)))
    needs = {n.purpose: (n.key, n.count) for n in built.components[1].hardware}
    assert needs["drawer boxes"] == (screws[0], 8)
    assert needs.get("fronts to drawer boxes", (None, 2)) == (screws[1], 2)
    assert ("front-screws" in {f.rule for f in built.findings}) == (screws[1] is None)


def test_a_class_of_ones_own_from_a_file_with_over_travel(tmp_path):
    """The sheet of an invented slide: every figure of it is kept, and the drawer comes out by
    its length and 25 mm more."""
    own = read_catalogue(
        '[slide.mine]\ntitle = "slide in hand"\nrule = "by the opening"\nside = 13\n'
        'side_over = 0.6\nside_under = 0.2\nabove = 9\nbelow = 4\nbehind = 12\nheight = 35\n'
        'extension = 1\nover_travel = 25\nload = 35\nlengths = [300, 420]\n'
        'source = "the sheet in hand"\n[hardware.slide_420]\ntitle = "slide 420"\npack = 2\n',
        "mine.toml", CATALOGUE,
    )
    design = ClosetDesign("test", size=(1300.0, 480.0, 2000.0), components=(
        CARCASS, DrawersSpec("D", Spot("A", 1, 1), slide="mine", front=FrontSpec(FrontKind.NONE))))
    built = build_closet(design, own)
    left, right = (p.box() for p in parts(built, Role.BOX_SIDE))
    bay = built.components[0].bays[0].space
    shelf = next(p.box() for p in built.parts if p.role is Role.FIXED_SHELF)
    assert left.y1 - left.y0 == 420.0
    assert left.x0 - bay.x0 == pytest.approx(13.2)
    assert bay.x1 - right.x1 == pytest.approx(13.2)
    assert (left.z0 - bay.z0, shelf.z0 - left.z1) == (pytest.approx(4), pytest.approx(9))
    assert built.components[1].moves[0].travel == 445.0
    assert "slide_420" in {n.key for n in built.hardware}
    assert not {"slide-sheet", "partial-extension"} & {f.rule for f in built.findings}


def test_a_back_wall_that_bows_takes_a_shorter_slide():
    """Depth is what the envelope leaves in front of the bow, less what the carcass's back takes."""
    lengths = {}
    for bow in (0.0, 45.0):
        depth = Reading(ReadingKind.DEPTH, 600.0 - bow, x=950.0, z=1200.0)
        survey = replace(TrueRoom().survey(), extras=(depth,) if bow else ())
        design = ClosetDesign("t", survey, components=(
            replace(CARCASS, bays=(BaySpec(width=500.0), BaySpec())),
            DrawersSpec("D", Spot("A", 1, 1, height=400.0), front=FrontSpec(FrontKind.FULL))))
        built = build_closet(design, CATALOGUE)
        (side, _) = parts(built, Role.BOX_SIDE)
        lengths[bow] = side.panel.length
        bay = built.components[0].bays[0].space
        longest = max(v for v in CATALOGUE.slides["side_mount"].lengths if v + 6 <= bay.y1 - bay.y0)
        assert side.panel.length == longest
    assert lengths[45.0] < lengths[0.0]


def test_cleats_at_the_rear_shorten_the_drawer():
    with_cleats = replace(CARCASS, back=BackSpec(BackKind.CLEATS))
    design = ClosetDesign("t", size=(1300.0, 471.0, 2000.0), components=(
        with_cleats, DrawersSpec("D", Spot("A", 1, 1), front=FrontSpec(FrontKind.FULL)),
    ))
    side = parts(build_closet(design, CATALOGUE), Role.BOX_SIDE)[0]
    assert side.panel.length == 400.0


def test_a_drawer_where_a_loose_shelf_lies_is_a_conflict_that_names_both():
    carcass = replace(CARCASS, bays=(BaySpec(width=600.0, adjustable=1), BaySpec()))
    design = ClosetDesign("t", size=(1300.0, 600.0, 2000.0), components=(
        carcass, DrawersSpec("D", Spot("A", 1, 1), count=2),
    ))
    found = [f for f in build_closet(design, CATALOGUE).findings if f.rule == "parts-overlap"]
    assert found
    assert all("A: bay 1 loose shelf 1" in f.message and f.subject.startswith("D: ") for f in found)


def test_common_volume_of_a_shelf_in_its_groove_is_nothing():
    built = closet(DrawersSpec("D", Spot("A", 1, 1)))
    side = next(p for p in built.parts if p.name == "left side")
    shelf = next(p for p in built.parts if p.role is Role.FIXED_SHELF)
    assert side.box().overlaps(shelf.box())
    assert common_volume(side, shelf) == 0.0
    moved = replace(shelf, place=shelf.place.moved(-2.0, 0.0, 0.0))
    box = shelf.panel
    assert common_volume(side, moved) == pytest.approx(1.5 * box.width * box.thickness)


@pytest.mark.parametrize(
    ("spec", "depth", "message"),
    [
        (DrawersSpec("D", Spot("A", 1, 1), slide_length=550.0), 400.0,
         r"D in A, bay 1, drawer: slide length is 550 mm; must be 60 to 36\d.* mm in 3"),
        (DrawersSpec("D", Spot("A", 1, 1), slide_length=410.0), 600.0,
         r"slide length is 410 mm; must be one of 250, 300"),
        (DrawersSpec("D", Spot("A", 1, 1), box_height=30.0), 600.0,
         r"height of the box is 30 mm; must be 45 to .* to cover the slide"),
        (DrawersSpec("D", Spot("A", 1, 1), heights=(900.0, 200.0)), 600.0,
         r"heights of the fronts is 900 \+ 200 mm; must be 9\d\d\.\d mm together"),
        (DrawersSpec("D", Spot("A", 1, 1), front=FrontSpec(gap=0.0)), 600.0,
         r"gap around the fronts is 0 mm; must be 1 to 10 mm"),
        (DrawersSpec("D", Spot("A", 1, 1), slide="undermount", box_material="mdf18"), 600.0,
         r"thickness of the box's sides is 18 mm; must be at most 16 mm"),
        (DrawersSpec("D", Spot("A", 1, 1)), 250.0,
         r"free depth is 2\d\d\.\d mm; must be at least 256 mm for the shortest slide, 250 mm"),
        (DrawersSpec("D", Spot("A", 1, 1), count=30), 600.0,
         r"height of a front is \d\d\.\d mm; must be at least 40 mm"),
        (DrawersSpec("D", Spot("A", 3, 1)), 600.0, r"D: bay is 3; must be 1 to 2 in A"),
        (DrawersSpec("D", Spot("A", 1, 3)), 600.0,
         r"D: compartment is 3; must be 1 to 2 in A, bay 1"),
        (DrawersSpec("D", Spot("B", 1, 1)), 600.0, r"D: carcass is 'B'; must be one of A"),
        (DrawersSpec("D", Spot("A", 1, 1, height=2000.0)), 600.0,
         r"D: height is 2000 mm; must be 20 to .* in its compartment"),
        (DrawersSpec("D", Spot("A", 1, 1), slide="ball"), 600.0, r"slide is ball; is not in the"),
    ],
)
def test_what_is_refused_names_value_and_limit(spec, depth, message):
    with pytest.raises(ClosetError, match=message) as caught:
        closet(spec, depth=depth)
    assert re.search(r"\w", caught.value.limit)
