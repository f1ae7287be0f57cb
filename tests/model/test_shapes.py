"""Solids against the core's panels: size, volume, and that they are sound."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations

import FreeCAD
import pytest

from closetbench.core.closet import build_closet
from closetbench.core.joinery import rabbet
from closetbench.core.panel import Face, Groove, HoleRow, Notch, Panel, Rim, RimHole, Taper
from closetbench.core.parts import FACING, LYING_DEEP, STANDING_ACROSS, Place, Role
from closetbench.model.shapes import cut_shape, panel_shape, placement
from closetbench.resources import load_catalogue

pytestmark = pytest.mark.freecad


def dado(offset: float, stop: float = 0.0, face: Face = Face.UPPER, rim: Rim = Rim.START) -> Groove:
    return Groove(f"shelf {offset:g}", face, rim, offset, 18.2, 6.0, stop)


def pins(face: Face, x: float, y: float, count: int = 20, depth: float = 10.0) -> HoleRow:
    return HoleRow("pins", face, x, y, 5.0, depth, count)


BACK = Groove("back", Face.UPPER, Rim.REAR, 10.0, 6.2, 6.0)
PANELS = {
    "plain": Panel(800, 400, 18, "m"),
    "through": Panel(2400, 400, 18, "m", grooves=tuple(dado(100.0 + 200 * i) for i in range(10))),
    "both faces": Panel(
        2400, 400, 18, "m",
        grooves=(dado(100.0), dado(300.0, face=Face.LOWER), dado(500.0, rim=Rim.END)),
    ),
    "ripped": Panel(2400, 400, 18, "m", grooves=(BACK, dado(50.0, rim=Rim.FRONT))),
    "touching": Panel(800, 400, 18, "m", grooves=(dado(100.0), dado(118.2))),
    "rabbets": Panel(
        800, 400, 18, "m",
        grooves=(
            rabbet("bottom", Face.LOWER, Rim.START, 18, 6),
            rabbet("top", Face.UPPER, Rim.END, 18, 6),
        ),
    ),
    "crossing": Panel(2400, 400, 18, "m", grooves=(BACK, dado(100.0), dado(300.0, 10.0))),
    "notched": Panel(800, 400, 18, "m", notches=(Notch(Rim.START, Rim.FRONT, 80, 50),)),
    "notched and grooved": Panel(
        800, 400, 18, "m", grooves=(dado(200.0, 10.0), BACK),
        notches=(Notch(Rim.START, Rim.FRONT, 80, 50), Notch(Rim.END, Rim.REAR, 30, 20)),
    ),
    "upper holes": Panel(2400, 400, 18, "m", holes=(pins(Face.UPPER, 100, 37),)),
    "lower holes": Panel(2400, 400, 18, "m", holes=(pins(Face.LOWER, 100, 37),)),
    "holes right through": Panel(
        2400, 400, 18, "m", holes=(pins(Face.UPPER, 100, 37, 5, 18.0), pins(Face.LOWER, 1000, 37))
    ),
    "grooves and holes on both faces": Panel(
        2400, 400, 18, "m",
        grooves=(dado(60.0, 10.0), dado(1200.0, 10.0, Face.LOWER), BACK),
        holes=(
            pins(Face.UPPER, 150, 37), pins(Face.UPPER, 150, 300), pins(Face.LOWER, 1300, 37, 9)
        ),
    ),
    "hole over a groove": Panel(
        800, 400, 18, "m", grooves=(dado(100.0, face=Face.LOWER),),
        holes=(HoleRow("screw", Face.UPPER, 109.0, 50.0, 5.0, 8.0),),
    ),
    "hole at a rim": Panel(800, 400, 18, "m", holes=(HoleRow("pin", Face.LOWER, 50, 2.5, 5, 10),)),
    "tapered and drilled": Panel(
        600, 200, 18, "m", tapers=(Taper(Rim.END, 9.0, 0.0), Taper(Rim.REAR, 4.0, 0.0)),
        holes=(
            HoleRow("pull", Face.UPPER, 250, 100, 5, 18, 2, 96.0),
            HoleRow("cup", Face.LOWER, 100, 30, 35, 12.5),
        ),
    ),
    "dowelled": Panel(
        600, 45, 19, "m",
        rim_holes=tuple(
            RimHole("dowel", rim, at, 9.5, 8.0, 21.0)
            for rim, at in (
                (Rim.START, 11.0), (Rim.START, 34.0), (Rim.END, 22.0), (Rim.FRONT, 300.0),
                (Rim.REAR, 400.0),
            )
        ),
    ),
    "holes that touch": Panel(
        800, 400, 18, "m", holes=(HoleRow("pin", Face.LOWER, 50, 37, 5, 10, 3, 5.0),)
    ),
}


@pytest.mark.parametrize("name", PANELS)
@pytest.mark.parametrize("make", [panel_shape, cut_shape])
def test_solid_is_the_panel(name, make):
    panel = PANELS[name]
    shape = make(panel)
    box = shape.BoundBox
    assert shape.ShapeType == "Solid"
    assert shape.isValid()
    assert (box.XMin, box.YMin, box.ZMin) == pytest.approx((0, 0, 0), abs=1e-3)
    assert (box.XMax, box.YMax, box.ZMax) == pytest.approx(
        (panel.length, panel.width, panel.thickness), abs=1e-3
    )
    assert shape.Volume == pytest.approx(panel.volume, rel=1e-6)


def test_machining_lies_where_the_panel_says():
    panel = PANELS["grooves and holes on both faces"]
    shape = panel_shape(panel)
    inside = [panel.groove_box(g) for g in panel.grooves]
    middles = [
        ((b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2, (b.z0 + b.z1) / 2) for b in inside
    ]
    for row in panel.holes:
        z = 18 - 5.0 if row.face is Face.UPPER else 5.0
        middles += [(x, y, z) for x, y in row.centres()]
    for x, y, z in middles:
        assert not shape.isInside(FreeCAD.Vector(x, y, z), 1e-6, True)
        # the same place from the other face is wood
        assert shape.isInside(FreeCAD.Vector(x, y, 17.0 if z < 9 else 1.0), 1e-6, True)


def test_holes_in_rims_lie_where_the_panel_says():
    panel = PANELS["dowelled"]
    shape = panel_shape(panel)
    for hole in panel.rim_holes:
        box = panel.rim_hole_box(hole)
        middle = ((box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2, hole.level)
        assert not shape.isInside(FreeCAD.Vector(*middle), 1e-6, True)
        assert shape.isInside(FreeCAD.Vector(*middle[:2], hole.level + 5.0), 1e-6, True)


@pytest.mark.parametrize("directions", [STANDING_ACROSS, FACING, LYING_DEEP])
def test_placement_moves_points_as_the_place_does(directions):
    place = Place((10.0, 20.0, 30.0), *directions)
    moved = placement(place).multVec(FreeCAD.Vector(3, 5, 7))
    assert (moved.x, moved.y, moved.z) == pytest.approx(place.point(3, 5, 7), abs=1e-9)


def test_solids_of_random_closets_never_overlap(designs):
    source = designs(20240611)
    pairs = 0
    for _ in range(200):
        found = list(_overlaps(build_closet(next(source), load_catalogue()).parts))
        pairs += len(found)
        assert [o for o in found if abs(o[2]) > 1e-3] == []
    assert pairs > 1000


def test_an_overlap_would_be_seen(designs):
    parts = list(build_closet(next(designs(3)), load_catalogue()).parts)
    shelf = next(i for i, p in enumerate(parts) if p.role is Role.FIXED_SHELF)
    parts[shelf] = replace(parts[shelf], place=parts[shelf].place.moved(1.0, 0.0, 0.0))
    assert max(volume for _, _, volume in _overlaps(parts)) > 1000


def _overlaps(parts):
    """Pairs whose boxes overlap, with the volume that their solids share in mm³."""
    solids = {}
    for a, b in combinations(parts, 2):
        if a.box().overlaps(b.box(), 1e-4):
            for part in (a, b):
                if part.full_name not in solids:
                    solids[part.full_name] = _without_holes(part)
            yield a, b, solids[a.full_name].common(solids[b.full_name]).Volume


def _without_holes(part):
    """The part's solid in its place. Holes only take away, so they make no overlap."""
    panel = part.panel
    bare = Panel(
        panel.length, panel.width, panel.thickness, panel.material, grooves=panel.grooves,
        notches=panel.notches,
    )
    shape = panel_shape(bare)
    shape.Placement = placement(part.place)
    return shape


def test_solids_of_random_closets_are_the_panels(designs):
    source = designs(7)
    for _ in range(25):
        for part in build_closet(next(source), load_catalogue()).parts:
            shape = panel_shape(part.panel)
            assert shape.Volume == pytest.approx(part.panel.volume, rel=1e-6), part
            shape.Placement = placement(part.place)
            box, expected = shape.BoundBox, part.box()
            assert (box.XMin, box.YMin, box.ZMin, box.XMax, box.YMax, box.ZMax) == pytest.approx(
                (expected.x0, expected.y0, expected.z0, expected.x1, expected.y1, expected.z1),
                abs=1e-3,
            )
