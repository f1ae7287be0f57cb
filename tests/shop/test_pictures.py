"""Pictures: what stands on them, that it can be read, and how they are saved."""

from __future__ import annotations

import os
import sys
import xml.etree.ElementTree as ET
from collections.abc import Callable
from dataclasses import replace
from itertools import combinations
from pathlib import Path

import pytest

from closetbench.core.bench import BenchSpec
from closetbench.core.closet import Closet, ClosetDesign, build_closet
from closetbench.core.component import Component
from closetbench.core.drawers import DrawersSpec
from closetbench.core.envelope import Envelope
from closetbench.core.errors import DocumentError
from closetbench.core.existing import ExistingSpec
from closetbench.core.inside import Spot
from closetbench.core.lengths import MILLIMETRES, SIXTEENTHS, LengthFormat
from closetbench.core.panel import Box
from closetbench.core.parts import Role
from closetbench.core.rods import RodsSpec
from closetbench.core.specs import BaySpec, CarcassSpec, PanelSpec
from closetbench.resources import load_catalogue
from closetbench.shop import picture, sheets, view
from closetbench.shop.exploded import exploded, offsets, turns
from closetbench.shop.page import Page, fitting_size, text_width
from closetbench.shop.plan_view import plan_page
from closetbench.stock.plan import Plan
from tests.core.rooms import TrueRoom
from tests.shop import samples

PARTS = samples.closet()
PLAN = samples.plan(PARTS)
ROOM = tuple(
    (a, b) for a, b in combinations(
        [(x, y, z) for x in (-60.0, 1600.0) for y in (-80.0, 600.0) for z in (0.0, 2400.0)], 2)
    if sum(p != q for p, q in zip(a, b, strict=True)) == 1
)

PAGES: dict[str, Callable[[LengthFormat], Page]] = {
    "view": lambda form: view.axonometric_page(PARTS, "The box room", form, ROOM),
    "front": lambda form: view.elevation_page(PARTS, samples.bays(), "The box room", form),
    "sheets": lambda form: sheets.sheets_page(
        PLAN, PARTS, "The box room", form, samples.catalogue()),
}


def words(page: Page) -> list[str]:
    return [t.get_text() for t in page.axes.texts]


@pytest.mark.parametrize("form", [MILLIMETRES, SIXTEENTHS], ids=["mm", "in"])
@pytest.mark.parametrize("name", PAGES)
def test_no_words_overlap_or_leave_the_page(name: str, form: LengthFormat) -> None:
    from matplotlib.backends.backend_agg import FigureCanvasAgg

    page = PAGES[name](form)
    renderer = FigureCanvasAgg(page.figure).get_renderer()
    boxes = [(t.get_text(), t.get_window_extent(renderer)) for t in page.axes.texts]
    frame = page.figure.bbox
    assert len(boxes) > 8
    for text, box in boxes:
        assert frame.x0 <= box.x0, text
        assert box.x1 <= frame.x1, text
        assert frame.y0 <= box.y0, text
        assert box.y1 <= frame.y1, text
    for (one, a), (other, b) in combinations(boxes, 2):
        wide = min(a.x1, b.x1) - max(a.x0, b.x0)
        tall = min(a.y1, b.y1) - max(a.y0, b.y0)
        assert min(wide, tall) < 1.0, (one, other)


def test_the_view_tells_the_outer_sizes_and_the_roles() -> None:
    found = words(PAGES["view"](MILLIMETRES))
    assert {"1500 mm", "560 mm", "2200 mm", "13 parts, seen from the right, no perspective"} <= (
        set(found))
    assert {p.role.value for p in PARTS} <= set(found)
    assert "back" not in found


def test_the_room_is_drawn_behind_and_before() -> None:
    with_room = PAGES["view"](MILLIMETRES)
    without = view.axonometric_page(PARTS, "x")
    assert len(with_room.axes.lines) - len(without.axes.lines) == 2 * len(ROOM)
    shades = {line.get_alpha() for line in with_room.axes.lines}
    assert 0.25 in shades


def test_the_elevation_tells_clear_widths_and_heights() -> None:
    found = words(PAGES["front"](SIXTEENTHS))
    expected = [882.0, 564.0, 1500.0, 2200.0]  # bays, whole width and height
    # left bay: loose shelves at 480, 800, 1120 on the bottom at 98.1; upper shelf at 1800.1
    expected += [381.9, 302.0, 302.0, 662.1, 363.9]
    # right bay: shelves at 520.1 and 960.1
    expected += [422.0, 422.0, 822.0, 363.9]
    for mm in expected:
        assert SIXTEENTHS.text(mm) in found
    assert found.count(SIXTEENTHS.text(363.9)) == 2
    assert "20 in" in found
    assert "500 mm" in words(PAGES["front"](MILLIMETRES))


def test_narrow_bays_and_low_gaps_are_still_dimensioned() -> None:
    bays = (replace(samples.bays()[0], space=Box(18.0, 0.0, 98.0, 60.0, 560.0, 2182.0)),)
    low = [p for p in PARTS if p.name != "loose shelf 1"]
    low.append(replace(PARTS[6], name="low", place=PARTS[6].place.moved(0.0, 0.0, -340.0)))
    found = words(view.elevation_page(low, bays, "x"))
    assert "42 mm" in found
    assert "41.9 mm" in found


def test_the_sheets_name_every_part_with_its_sawn_size() -> None:
    page = PAGES["sheets"](MILLIMETRES)
    found = words(page)
    together = " | ".join(found)
    for part in PARTS:
        assert part.name in together
        size = f"{MILLIMETRES.text(part.panel.cut_length)} x "
        assert size + MILLIMETRES.text(part.panel.cut_width) in together
    for sheet in PLAN.sheets:
        assert sheet.name in found
        for rest in sheet.rests:
            shown = f"offcut {MILLIMETRES.text(rest.dx)} x {MILLIMETRES.text(rest.dy)}"
            assert shown in found or min(rest.dx, rest.dy) < 40.0  # no room for words
    assert found.count("birch plywood 18 mm, 2440 mm x 1220 mm, kerf 3.2 mm, 83% used") == 1
    hatched = [p for p in page.axes.patches if p.get_hatch()]
    assert len(hatched) == sum(len(s.rests) for s in PLAN.sheets) + 1  # and the legend


def test_kerfs_are_as_wide_as_the_saw() -> None:
    page = PAGES["sheets"](MILLIMETRES)
    scale = 7.4 / 2440.0
    first = PLAN.sheets[0].cuts[0]
    assert first.rip
    strips = [p.get_xy() for p in page.axes.patches if p.get_facecolor()[:2] == pytest.approx(
        (0x8C / 255, 0x3B / 255)) and len(p.get_xy()) == 5]
    assert len(strips) == sum(len(s.cuts) for s in PLAN.sheets) + 1  # and the legend
    wide = strips[0][:, 0].max() - strips[0][:, 0].min()
    tall = strips[0][:, 1].max() - strips[0][:, 1].min()
    assert tall == pytest.approx(samples.KERF * scale)
    assert wide == pytest.approx((first.x1 - first.x0) * scale)


def test_words_that_look_like_formulas_are_drawn_as_they_are() -> None:
    part = replace(PARTS[9], name="a $x^2$ b\n", component="c")
    page = sheets.sheets_page(samples.plan([part]), [part], "5 $ or 6 $", MILLIMETRES)
    assert any("a $x^2$ b" in w for w in words(page))
    assert not any(t.get_parse_math() for t in page.axes.texts)
    assert not any("\n" in w for w in words(page))


def test_sizes_of_words_fit_their_room() -> None:
    size = fitting_size(["a long line of words", "b"], 1.0, 1.0, 40.0)
    assert text_width("a long line of words", size) == pytest.approx(1.0, rel=0.02)
    assert fitting_size(["b"], 9.0, 0.1, 40.0) == pytest.approx(0.1 * 72 / 1.35)
    assert fitting_size(["b"], 9.0, 9.0, 8.0) == 8.0
    assert text_width("words", 10.0, bold=True) > text_width("words", 10.0)


@pytest.mark.parametrize(
    ("ending", "start"), [(".png", b"\x89PNG"), (".svg", b"<?xml"), (".PDF", b"%PDF")])
def test_pictures_are_saved_by_the_ending_of_the_name(
    tmp_path: Path, ending: str, start: bytes
) -> None:
    path = view.write_axonometric(tmp_path / f"a{ending}", PARTS[:2], "x")
    assert path.read_bytes().startswith(start)
    if ending == ".svg":
        assert ET.parse(path).getroot().tag.endswith("svg")


def test_the_same_picture_is_the_same_file(tmp_path: Path) -> None:
    for ending in (".png", ".svg"):
        one, two = (
            view.write_elevation(tmp_path / f"{i}{ending}", PARTS[:2], (), "x").read_bytes()
            for i in (1, 2)
        )
        assert one == two


def test_what_cannot_be_drawn_is_refused(tmp_path: Path) -> None:
    with pytest.raises(DocumentError, match=r"must end in \.png, \.svg, \.pdf"):
        view.write_elevation(tmp_path / "a.gif", PARTS, (), "x")
    with pytest.raises(DocumentError, match="nothing to draw"):
        view.write_axonometric(tmp_path / "a.png", (), "x")
    with pytest.raises(DocumentError, match="plan the cutting first"):
        sheets.write_sheets(tmp_path / "a.png", Plan(()), PARTS, "x")
    with pytest.raises(DocumentError, match="no such part any more"):
        sheets.write_sheets(tmp_path / "a.png", PLAN, PARTS[1:], "x")
    with pytest.raises(DocumentError, match="there is no folder"):
        view.write_axonometric(tmp_path / "no" / "a.png", PARTS[:1], "x")
    assert list(tmp_path.iterdir()) == []


def test_without_matplotlib_the_message_says_what_to_do(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(sys.modules, "matplotlib", None)
    for write in (
        lambda: view.write_axonometric(tmp_path / "a.png", PARTS, "x"),
        lambda: view.write_elevation(tmp_path / "a.png", PARTS, (), "x"),
        lambda: sheets.write_sheets(tmp_path / "a.png", PLAN, PARTS, "x"),
    ):
        with pytest.raises(DocumentError, match="matplotlib is not installed; install it from"):
            write()
    assert list(tmp_path.iterdir()) == []


def test_a_failure_leaves_the_old_picture(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(*_args: object) -> None:
        raise OSError(28, "No space left on device")

    path = tmp_path / "a.png"
    path.write_text("old")
    monkeypatch.setattr(os, "replace", fail)
    with pytest.raises(DocumentError, match="No space left"):
        view.write_axonometric(path, PARTS[:1], "x")
    assert [p.read_text() for p in tmp_path.iterdir()] == ["old"]


def test_the_pictures_of_a_whole_closet(tmp_path: Path) -> None:
    component = Component(
        "tall case", PARTS, Box(0.0, 0.0, 0.0, 1500.0, 560.0, 2200.0), bays=samples.bays())
    closet = Closet(
        ClosetDesign("The box room"), None, Envelope(1500.0, 560.0, 2200.0), (component,), ())
    paths = picture.write_pictures(tmp_path, closet, PLAN, samples.catalogue())
    assert [p.name for p in paths] == [
        "view.png", "exploded.png", "front.png", "plan.png", "sheets.png"]
    loose = replace(closet, components=(replace(component, bays=()),))
    paths = picture.write_pictures(tmp_path, loose, PLAN, samples.catalogue(), ending=".svg")
    assert [p.name for p in paths] == ["view.svg", "exploded.svg", "plan.svg", "sheets.svg"]
    some = picture.write_pictures(
        tmp_path, closet, None, samples.catalogue(), kinds=("front", "sheets"), stem="case-")
    assert [p.name for p in some] == ["case-front.png"]
    assert picture.room_lines(closet) == ()


def test_the_room_and_the_carcasses_have_pictures_of_their_own(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    design = ClosetDesign("The closet", TrueRoom().survey(), components=(
        CarcassSpec("A", "mdf18"), RodsSpec("rod", Spot("A")),
        DrawersSpec("low", Spot("A", height=300.0)), PanelSpec("loose", "mdf18", 900, 300),
    ))
    closet = build_closet(design, load_catalogue())
    monkeypatch.setattr(picture, "sheets_page", lambda *_: Page(1.0, 1.0, "sheets"))
    paths = picture.write_pictures(tmp_path, closet, PLAN, samples.catalogue())
    assert [p.stem for p in paths] == list(picture.KINDS)
    page = view.axonometric_page((), "x", room=picture.room_lines(closet), caption="empty")
    assert "empty" in words(page)
    # the room's own sizes stand on it, to the millimetre
    assert {"1900 mm", "600 mm", "2400 mm"} <= set(words(page))


def test_the_plan_has_the_bays_and_leaves_out_what_is_high() -> None:
    design = ClosetDesign("The closet", size=(1300.0, 600.0, 2000.0), components=(
        CarcassSpec("A", "mdf18", bays=(BaySpec(700.0), BaySpec(fixed=3))),))
    closet = build_closet(design, load_catalogue())
    (case,) = closet.components
    page = plan_page(case.bodies, case.bays, "x", room=picture.room_lines(closet))
    found = words(page)
    assert {"1300 mm", "600 mm"} <= set(found)
    assert {MILLIMETRES.text(b.space.x1 - b.space.x0) for b in case.bays} <= set(found)
    assert "top" not in found
    assert "bottom" in found
    with pytest.raises(DocumentError, match="nothing to draw"):
        plan_page((), (), "x")


def test_every_part_has_a_turn_in_the_assembly() -> None:
    closet = build_closet(ClosetDesign(
        "The closet", size=(1800.0, 600.0, 2200.0), components=(
            CarcassSpec("A", "mdf18", bays=(BaySpec(fixed=1), BaySpec())),
            DrawersSpec("bank", Spot("A", 2, height=800.0), count=3),
        )), load_catalogue())
    rounds = turns(closet.components)
    names = [name for names in rounds for name in names]
    assert sorted(names) == sorted(b.full_name for b in closet.bodies)
    assert set(offsets(closet.components)) == set(names)
    roles = {b.full_name: b.role for b in closet.bodies}
    # a back is let into what stands before it, a front hides all
    for name in names:
        part = name.partition(":")[0]
        own = [roles[n] for n in names if n.startswith(f"{part}:")]
        if Role.SIDE in own and Role.BACK in own:
            assert own.index(Role.SIDE) < own.index(Role.BACK)
    assert offsets(()) == {}


def test_pulled_apart_every_body_is_there_once_and_as_it_was() -> None:
    design = ClosetDesign("The closet", size=(1800.0, 600.0, 2200.0), components=(
        CarcassSpec("A", "mdf18", bays=(BaySpec(), BaySpec(), BaySpec())),
        DrawersSpec("bank", Spot("A", 2, height=800.0), count=3), RodsSpec("rod", Spot("A", 1)),
        ExistingSpec("chest", Spot("A", 3), 500.0, 600.0, 400.0, fitted=False, shelf_above=False),
    ))
    closet = build_closet(design, load_catalogue())
    apart = exploded(closet.components)
    assert sorted(b.full_name for b in apart) == sorted(b.full_name for b in closet.bodies)
    assert {type(b) for b in apart} == {type(b) for b in closet.bodies}
    for one, other in zip(closet.bodies, apart, strict=True):
        a, b = one.box(), other.box()
        assert (a.x1 - a.x0, a.y1 - a.y0, a.z1 - a.z0) == pytest.approx(
            (b.x1 - b.x0, b.y1 - b.y0, b.z1 - b.z0))


def test_a_bay_under_a_bench_in_a_bay_is_not_written_over_it() -> None:
    design = ClosetDesign("The closet", size=(1300.0, 600.0, 2000.0), components=(
        CarcassSpec("A", "mdf18", bays=(BaySpec(700.0), BaySpec())), BenchSpec("B", Spot("A", 1)),
    ))
    closet = build_closet(design, load_catalogue())
    bays = [b for c in closet.components for b in c.bays]
    found = words(view.elevation_page(closet.bodies, bays, "x"))
    assert len(bays) == 3
    assert "700 mm" in found
    assert MILLIMETRES.text(bays[2].space.x1 - bays[2].space.x0) not in found
