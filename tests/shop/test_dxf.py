"""Drawings agree with the model to 0.001 mm and say what is to be done."""

from __future__ import annotations

import os
import sys
from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import ezdxf
import pytest

from closetbench.core.errors import DocumentError, LayoutError
from closetbench.core.lengths import SIXTEENTHS
from closetbench.core.panel import (
    Band,
    Face,
    Groove,
    HoleRow,
    Panel,
    Pocket,
    Rim,
    RimHole,
    Taper,
)
from closetbench.core.parts import LYING, Part, Place, Role
from closetbench.shop import dxf
from closetbench.shop.lay import lay
from closetbench.stock.by_hand import sawn_anew
from closetbench.stock.plan import CutSettings, Placement, Plan, SheetPlan, StockSheet
from tests.shop import reading, samples

EXACT = 1e-3
TURNED = {"tall case: left side", "tall case: upper shelf"}


@pytest.fixture(scope="module")
def layout(tmp_path_factory: pytest.TempPathFactory) -> Path:
    parts = samples.closet()
    return dxf.layout_dxf(
        samples.plan(parts), parts, tmp_path_factory.mktemp("dxf") / "layout.dxf")


def same(found: list[reading.XY], wanted: list[reading.XY]) -> bool:
    """Whether two sets of points agree, each point with one of the other set."""
    def near(p: reading.XY, q: reading.XY) -> bool:
        return abs(p[0] - q[0]) <= EXACT and abs(p[1] - q[1]) <= EXACT

    return len(found) == len(wanted) and all(any(near(p, q) for q in wanted) for p in found)


def test_every_part_of_the_layout_agrees_with_the_model(layout: Path) -> None:
    parts = {p.full_name: p for p in samples.closet()}
    plan = samples.plan(list(parts.values()))
    read = {r.name: r for r in reading.read_layout(layout)}
    assert read.keys() == parts.keys()
    left = 0.0
    rotated = 0
    for sheet in plan.sheets:
        for place in sheet.placements:
            panel, got = parts[place.part].panel, read[place.part]
            ox, oy = panel.cut_origin
            rotated += place.rotated

            def on_sheet(
                x: float, y: float, panel: Panel = panel, place: Placement = place,
                origin: tuple[float, float] = (ox, oy), left: float = left,
            ) -> reading.XY:
                u, v = x - origin[0], y - origin[1]
                if place.part in TURNED:
                    v = panel.cut_width - v
                if place.rotated:
                    u, v = panel.cut_width - v, u
                return left + place.x + u, place.y + v

            assert same(got.outline, [on_sheet(*p) for p in panel.cut_outline()])
            assert got.thickness == panel.thickness
            assert len(got.grooves) == len(panel.grooves)
            for (_, depth, ring), groove in zip(got.grooves, panel.grooves, strict=True):
                box = panel.groove_box(groove)
                y0, y1 = max(box.y0, oy), min(box.y1, oy + panel.cut_width)
                corners = [(box.x0, y0), (box.x1, y0), (box.x1, y1), (box.x0, y1)]
                assert same(ring, [on_sheet(*c) for c in corners])
                assert depth == pytest.approx(groove.depth, abs=EXACT)
            holes = [(h, c) for h in panel.holes for c in h.centres()]
            for (_, depth, centre, diameter), (row, at) in zip(got.holes, holes, strict=True):
                assert same([centre], [on_sheet(*at)])
                assert depth == pytest.approx(row.depth, abs=EXACT)
                assert diameter == pytest.approx(row.diameter, abs=EXACT)
        left += sheet.sheet.length + dxf.GAP
    assert rotated > 0


def test_the_auditor_finds_nothing(layout: Path) -> None:
    audit = ezdxf.readfile(layout).audit()
    assert audit.errors == []
    assert audit.fixes == []


def test_every_layer_is_in_the_table(layout: Path) -> None:
    prefixes = {name.split("<")[0]: colour for name, _, colour in dxf.layer_table()}
    used = {e.layer for e in reading.entities(layout)}
    for layer in used:
        assert any(layer.startswith(p) for p in prefixes)
    assert {"GROOVE_UP_6MM", "GROOVE_UNDER_6MM", "RABBET_UP_6MM", "HOLE_UP_10MM",
            "HOLE_THROUGH_12MM", "OUTLINE_THROUGH_18MM", "BAND_BIRCH-05"} <= used
    colours = [colour for _, _, colour in dxf.layer_table()]
    assert all(1 <= c <= 255 for c in colours)
    layers = {layer.dxf.name: layer.dxf.color for layer in ezdxf.readfile(layout).layers}
    assert layers["GROOVE_UP_6MM"] == prefixes["GROOVE_UP_"]
    assert used <= layers.keys()


def test_sheets_stand_side_by_side_with_rests_and_cuts(layout: Path) -> None:
    plan = samples.plan(samples.closet())
    found = reading.entities(layout)
    sheets = [e for e in found if e.layer == "SHEET"]
    assert [min(p[0] for p in e.points) for e in sheets] == [
        i * (2440.0 + dxf.GAP) for i in range(len(plan.sheets))
    ]
    assert all(e.closed for e in found if e.kind == "LWPOLYLINE")
    assert sum(e.layer == "OFFCUT" for e in found) == sum(len(s.rests) for s in plan.sheets)
    cuts = [e for e in found if e.layer == "SAW_CUT"]
    assert len(cuts) == sum(len(s.cuts) for s in plan.sheets)
    first = plan.sheets[0].cuts[0]
    assert same(cuts[0].points, [(first.x0, first.y0), (first.x1, first.y1)])


def test_bands_are_marked_beside_their_rims(layout: Path) -> None:
    read = {r.name.removeprefix("tall case: "): r for r in reading.read_layout(layout)}
    left, divider = read["left side"], read["divider"]
    (layer, a, b), = left.bands
    # turned over: its front edge lies away, and the toe notch takes 80 mm of it
    (x, y), (dx, dy) = left.corner, left.size
    assert layer == dxf.band_layer("birch-05")
    assert same([a, b], [(x + 80.0, y + dy - 3.0), (x + dx, y + dy - 3.0)])
    (_, a, b), = divider.bands
    x, y = divider.corner
    assert same([a, b], [(x + 5.5, y + 3.0), (x + 1707.5, y + 3.0)])
    assert read["kick board"].bands == []


def test_words_fit_into_their_parts(layout: Path) -> None:
    rings = [r.outline for r in reading.read_layout(layout)]
    words = [e for e in reading.entities(layout) if e.layer in ("NAME", "SIZE")]
    assert len(words) == 2 * len(rings)
    for text in words:
        (x, y), h = text.points[-1], text.height
        assert 3.0 < h <= dxf.TALLEST_TEXT
        half, rise = 0.475 * h * len(text.text), h / 2
        if text.turn == 90.0:
            half, rise = rise, half
        (home,) = [r for r in rings if reading.inside((x, y), r)]
        assert all(reading.inside((x + i * half, y + j * rise), home)
                   for i in (-1, 1) for j in (-1, 1))


def test_words_name_the_size_in_the_users_unit_and_the_face(tmp_path: Path) -> None:
    parts = {p.name: p for p in samples.closet()}
    sizes = {}
    for name in ("left side", "divider", "kick board", "cleat"):
        path = dxf.part_dxf(parts[name], tmp_path / "part.dxf", SIXTEENTHS)
        (read,) = reading.read_layout(path)
        assert read.name == f"tall case: {name}"
        sizes[name] = read.size_text
    assert sizes["left side"] == '86 5/8" x 22", lower face up'
    assert sizes["divider"].endswith(", upper face up")
    assert sizes["kick board"] == '57 5/8" x 3 1/8"'
    assert "face" not in sizes["cleat"]


def test_a_drawing_of_one_part_has_its_corner_at_the_origin(tmp_path: Path) -> None:
    panel = Panel(500.0, 250.0, 19.05, "ply", grooves=(
        Groove("back", Face.LOWER, Rim.REAR, 12.7, 6.53, 6.35),
    ), bands=(Band(Rim.REAR, "b/α: 1", 1.0),))
    part = Part("a", "b", Role.PANEL, panel, Place((9.0, 9.0, 9.0), *LYING))
    path = dxf.part_dxf(part, tmp_path / "a.dxf")
    (read,) = reading.read_layout(path)
    assert same(read.outline, [(0.0, 0.0), (500.0, 0.0), (500.0, 249.0), (0.0, 249.0)])
    assert read.thickness == 19.05
    ((layer, depth, ring),) = read.grooves
    assert (layer, depth) == ("GROOVE_UP", 6.35)
    # turned over: the rear edge, less its band, lies at y = 0
    assert same(ring, [(0.0, 11.7), (500.0, 11.7), (500.0, 18.23), (0.0, 18.23)])
    assert read.bands[0][0] == "BAND_B____1"
    assert ezdxf.readfile(path).audit().errors == []


def test_work_on_rims_is_drawn_and_told(tmp_path: Path) -> None:
    """A rail with dowels in one end and pockets at the other, turned over for the pockets."""
    panel = Panel(
        500.0, 60.0, 19.0, "ply",
        rim_holes=(RimHole("dowels", Rim.START, 15.0, 9.5, 8.0, 21.0),),
        pockets=(Pocket("right stile", Face.LOWER, Rim.END, 15.0),),
    )
    path = dxf.part_dxf(Part("a", "b", Role.PANEL, panel, Place((0.0, 0.0, 0.0), *LYING)),
                        tmp_path / "a.dxf")
    found = {e.dxf.layer: e for e in ezdxf.readfile(path).modelspace()}
    ring = [(p[0], p[1]) for p in found["HOLE_RIM_21MM"].get_points()]
    assert sorted(ring) == [(0.0, 41.0), (0.0, 49.0), (21.0, 41.0), (21.0, 49.0)]
    line = found["POCKET_UP"]
    assert (tuple(line.dxf.start)[:2], tuple(line.dxf.end)[:2]) == ((500.0, 45.0), (460.0, 45.0))
    (size,) = [e.text for e in reading.entities(path) if e.layer == "SIZE"]
    assert size.endswith("lower face up")


def test_bands_follow_a_taper(tmp_path: Path) -> None:
    panel = Panel(
        500.0, 200.0, 18.0, "ply", tapers=(Taper(Rim.END, 0.0, 8.0),),
        bands=(Band(Rim.END, "thin", 1.0),),
    )
    laid = lay(Part("a", "b", Role.PANEL, panel, Place((0.0, 0.0, 0.0), *LYING)))
    (mark,) = laid.bands
    assert (mark.start, mark.end) == ((499.0, 0.0), (491.0, 200.0))
    assert set(laid.outline) >= {mark.start, mark.end}


def test_one_sheet_in_a_drawing_of_its_own(tmp_path: Path) -> None:
    parts = samples.closet()
    plan = samples.plan(parts)
    paths = dxf.sheet_files(plan, parts, tmp_path)
    assert [p.name for p in paths] == [f"{s.name}.dxf" for s in plan.sheets]
    for path, sheet in zip(paths, plan.sheets, strict=True):
        assert [r.name for r in reading.read_layout(path)] == [p.part for p in sheet.placements]
        assert min(x for e in reading.entities(path) for x, _ in e.points) == 0.0


def test_a_file_for_every_part(tmp_path: Path) -> None:
    parts = samples.closet()
    paths = dxf.part_files(parts, tmp_path)
    assert len(set(paths)) == len(parts)
    for path, part in zip(paths, parts, strict=True):
        (read,) = reading.read_layout(path)
        assert read.name == part.full_name


def test_file_names_are_good_everywhere_and_unlike() -> None:
    names = dxf.file_names(["A: b/c", "a b c", "..", "été ×2", "x" * 200])
    assert names == ("A_b_c.dxf", "a_b_c_2.dxf", "part.dxf", "été_2.dxf", "x" * 60 + ".dxf")


def test_depths_are_written_to_a_thousandth() -> None:
    side = dxf.Side
    assert dxf.depth_layer("GROOVE", side.UP, 6.0) == "GROOVE_UP_6MM"
    assert dxf.depth_layer("GROOVE", side.UNDER, float(Fraction(254, 10) / 4)) == (
        "GROOVE_UNDER_6.35MM")
    assert dxf.depth_layer("HOLE", side.THROUGH, 18.2564) == "HOLE_THROUGH_18.256MM"


def test_odd_names_survive(tmp_path: Path) -> None:
    for name, read_back in (("a\nb", "a b"), ("100 %%d ^I", "100 % %d ^ I"), ("Brett ü 木", None)):
        part = replace(samples.closet()[0], name=name, component="x")
        path = dxf.part_dxf(part, tmp_path / "odd.dxf")
        (read,) = reading.read_layout(path)
        assert read.name == f"x: {read_back or name}"
        assert ezdxf.readfile(path).audit().errors == []


def test_a_part_on_no_sheet_is_not_lost_silently(tmp_path: Path) -> None:
    parts = samples.closet()
    plan = samples.plan(parts)
    with pytest.raises(DocumentError, match=r"on no sheet is tall case: extra; plan the cutting"):
        dxf.layout_dxf(plan, [*parts, replace(parts[3], name="extra")], tmp_path / "a.dxf")
    with pytest.raises(DocumentError, match="no such part any more"):
        dxf.layout_dxf(plan, parts[1:], tmp_path / "a.dxf")
    longer = replace(parts[0], panel=replace(parts[0].panel, length=2201.0))
    with pytest.raises(DocumentError, match=r"the plan was made for 2200 x 559\.5 mm"):
        dxf.layout_dxf(plan, [longer, *parts[1:]], tmp_path / "a.dxf")
    assert list(tmp_path.iterdir()) == []


def test_offcuts_at_hand_are_named(tmp_path: Path) -> None:
    panel = Panel(300.0, 200.0, 18.0, "ply", holes=(
        HoleRow("pin", Face.UPPER, 50.0, 50.0, 5.0, 10.0),))
    part = Part("a", "b", Role.PANEL, panel, Place((0.0, 0.0, 0.0), *LYING))
    stock = StockSheet("from the shed", "ply", 600.0, 400.0, offcut=True)
    bare = SheetPlan("S1", stock, 3.2, (Placement("b: a", 5.0, 7.0, 300.0, 200.0, False),))
    with pytest.raises(LayoutError, match="no cuts are listed"):
        dxf.layout_dxf(Plan((bare,)), [part], tmp_path / "a.dxf")
    assert not list(tmp_path.iterdir())
    plan = Plan((sawn_anew(bare, CutSettings(kerf=3.2)),))
    path = dxf.layout_dxf(plan, [part], tmp_path / "a.dxf")
    (title,) = [e.text for e in reading.entities(path) if e.layer == "SHEET_NAME"]
    assert title == "S1, ply, 600 mm x 400 mm, offcut from the shed"


def test_without_ezdxf_the_message_says_what_to_do(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(sys.modules, "ezdxf", None)
    with pytest.raises(DocumentError, match="ezdxf is not installed; install it from"):
        dxf.part_dxf(samples.closet()[0], tmp_path / "a.dxf")
    assert list(tmp_path.iterdir()) == []


def test_a_failure_leaves_the_old_drawing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(*_args: object) -> None:
        raise OSError(28, "No space left on device")

    path = tmp_path / "a.dxf"
    path.write_text("old")
    monkeypatch.setattr(os, "replace", fail)
    with pytest.raises(DocumentError, match="No space left"):
        dxf.part_dxf(samples.closet()[0], path)
    assert [p.read_text() for p in tmp_path.iterdir()] == ["old"]
