"""What goes where on a page of drawings."""

from __future__ import annotations

import xml.etree.ElementTree as ET
from fractions import Fraction

import pytest

from closetbench.core.closet import ClosetDesign, build_closet
from closetbench.core.errors import DocumentError
from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.core.specs import BaySpec, CarcassSpec
from closetbench.resources import RESOURCES, load_catalogue
from closetbench.shop.drawing_plan import INCH, MARGIN, METRIC, PAPERS, STRIP, drawing_sheet

CATALOGUE = load_catalogue()
SVG = "{http://www.w3.org/2000/svg}"
EDITABLE = "{http://www.freecadweb.org/wiki/index.php?title=Svg_Namespace}editable"
SIXTEENTHS = LengthFormat("in-frac", Fraction(1, 16))


def closet(width=1800.0, name="The closet"):
    return build_closet(ClosetDesign(name, size=(width, 600.0, 2300.0), components=(
        CarcassSpec("A", "mdf18", bays=(BaySpec(700.0, fixed=2), BaySpec(fixed=1))),)), CATALOGUE)


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("form", [MILLIMETRES, SIXTEENTHS], ids=["mm", "in"])
@pytest.mark.parametrize("width", [900.0, 1800.0, 3000.0])
def test_views_and_sizes_lie_within_the_border_and_apart(paper, form, width):
    sheet = drawing_sheet(closet(width), CATALOGUE, form, paper, sections=2)
    _, wide, high = PAPERS[paper]
    assert sheet.scale in (INCH if form is SIXTEENTHS else METRIC)
    spans = {}
    for view in sheet.views:
        across, up = (0, 2) if view.name == "front" else (0, 1) if view.name == "plan" else (1, 2)
        extent = {0: width, 1: 600.0, 2: 2300.0}
        half = extent[across] / 2 / sheet.scale, extent[up] / 2 / sheet.scale
        offsets_x = [s.offset for s in view.sizes if not s.level]
        offsets_y = [s.offset for s in view.sizes if s.level]
        left = view.at[0] + min([-half[0], *offsets_x])
        low = min(view.at[1] + min([-half[1], *offsets_y]), view.caption_at[1])
        right, top = view.at[0] + half[0], view.at[1] + half[1]
        assert left > MARGIN
        assert right < wide - MARGIN
        assert low > MARGIN + STRIP
        assert top < high - MARGIN
        spans[view.name] = left, low, right, top
    for one in spans.values():
        for other in spans.values():
            apart = one[2] <= other[0] or other[2] <= one[0] or one[3] <= other[1] or (
                other[3] <= one[1])
            assert apart or one is other
    for mark in sheet.marks:
        for _, y in mark.letters_at:
            assert MARGIN + STRIP < y < high - MARGIN


def test_sizes_are_those_of_the_closet():
    sheet = drawing_sheet(closet(), CATALOGUE)
    front = next(v for v in sheet.views if v.name == "front")
    texts = [s.text for s in front.sizes]
    assert {"1800", "2300", "700"} <= set(texts)
    for size in front.sizes:
        length = sum(abs(b - a) for a, b in zip(size.start, size.end, strict=True))
        assert size.text == MILLIMETRES.text(length, unit=False)
    assert [v.name for v in sheet.views] == ["front", "plan", "section A", "section B"]
    assert [m.letter for m in sheet.marks] == ["A", "B"]


def test_what_is_left_out_is_left_out():
    sheet = drawing_sheet(closet(), CATALOGUE, plan=False, sections=0)
    assert [v.name for v in sheet.views] == ["front"]
    assert sheet.marks == ()
    plan = drawing_sheet(closet(), CATALOGUE).views[1]
    assert "A: top" not in plan.bodies
    assert "A: bottom" in plan.bodies


def test_the_title_block_is_filled_and_every_template_has_its_fields():
    texts = drawing_sheet(closet(name="x" * 90), CATALOGUE, date="2024-02-29").texts
    assert texts["value_4"] == "2024-02-29"
    assert len(texts["title"]) < 40
    assert texts["material_1"] == (
        f"{CATALOGUE.material('mdf18').title}: {len(closet().parts)} parts")
    assert "professional" in texts["caution_2"]
    for paper, (_, wide, high) in PAPERS.items():
        root = ET.parse(RESOURCES / "drawing" / f"{paper}.svg").getroot()
        assert (root.get("width"), root.get("height")) == (f"{wide:g}mm", f"{high:g}mm")
        assert {t.get(EDITABLE) for t in root.iter(f"{SVG}text")} == set(texts)


def test_nothing_to_draw_and_no_room_are_said():
    empty = build_closet(ClosetDesign("Empty", size=(1800.0, 600.0, 2300.0)), CATALOGUE)
    with pytest.raises(DocumentError, match="nothing to draw"):
        drawing_sheet(empty, CATALOGUE)
    with pytest.raises(DocumentError, match="larger"):
        drawing_sheet(closet(19_900.0), CATALOGUE, paper="letter")
