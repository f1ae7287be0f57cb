"""Every clearance of a drawer measured on solids, for each class of slide, over a grid of
openings, depths and thicknesses.

The figures stand here once more, each with where it comes from, so that a slip in the
catalogue or in the rules shows. Widths of solids are known to FreeCAD's 1e-7 mm.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import combinations, cycle, product

import Part
import pytest

from closetbench.core.closet import ClosetDesign, build_closet
from closetbench.core.drawers import BottomKind, BoxJoint, DrawersSpec
from closetbench.core.errors import ClosetError
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.parts import Role
from closetbench.core.specs import BackKind, BackSpec, BaySpec, CarcassSpec
from closetbench.model.shapes import panel_shape, placement
from closetbench.resources import load_catalogue

pytestmark = pytest.mark.freecad

CATALOGUE = load_catalogue()
NEAR = 1e-4
METRIC = (250, 300, 350, 400, 450, 500, 550, 600)
INCHES = tuple(25.4 * n for n in range(10, 25, 2))


@dataclass(frozen=True)
class Sheet:
    """What a class of slide asks for, mm. ``gap``: least and greatest at each side, by the
    opening, or ``less``: the opening less the inside width, ``sides`` at most so thick."""

    source: str
    above: float
    below: float
    behind: float
    recess: float
    lengths: tuple[float, ...]
    gap: tuple[float, float] = (0.0, 0.0)
    less: tuple[float, float] = (0.0, 0.0)
    sides: float = 18.0


TRADE = "common practice, no published source"
SHEETS = {
    # 1/2 in at each side, +1/32 in, -0; 1/2 in above the box
    "side_mount": Sheet(TRADE, 12.7, 6, 6, 0, METRIC, (12.7, 13.5)),
    "side_mount_inch": Sheet(TRADE, 12.7, 6.35, 6.35, 0, INCHES, (12.7, 12.7 + 25.4 / 32)),
    # rails in the lower corners of the box, tilted in over stops
    "corner_roller": Sheet("from memory, common practice", 19, 6, 10, 0, METRIC, (12.5, 13.5)),
    # the box's inside width by the opening, whatever its sides up to 16 mm
    "undermount": Sheet("from memory; makers' sheets differ", 7, 14, 10, 13, METRIC[:-1],
                        less=(40.5, 42.0), sides=16.0),
    "centre_rail": Sheet("from memory, common practice", 8, 16, 10, 13, METRIC[1:-1], (3.3, 6.3)),
    # 1/16 in of play in all; cut to fit
    "wooden_runner": Sheet(TRADE, 3, 0, 6, 0, (), (0.4, 1.2)),
}
BOXES = {12.0: "ply12", 16.0: "melamine16", 18.0: "mdf18"}
BOUNDS = (
    "left side", "divider 1", "bay 1 shelf 1", "bottom", "back", "back 1", "back 2",
    "bay 1 bottom cleat", "bay 1 middle cleat",
)
"""What lies around the drawer."""


def solid(part):
    shape = panel_shape(part.panel)
    shape.Placement = placement(part.place)
    return shape


def distance(a, b):
    return a.distToShape(b)[0]


def built(key, width, depth, box, back=BackKind.PANEL, **more):
    carcass = CarcassSpec(
        "A", "mdf18", bays=(BaySpec(width=width, heights=(300.0,)), BaySpec()),
        back=BackSpec(back, "hardboard3" if back is BackKind.PANEL else None),
    )
    drawers = DrawersSpec("D", Spot("A", 1, 1), slide=key, box_material=box, **more)
    design = ClosetDesign("t", size=(width + 500.0, depth, 2000.0), components=(carcass, drawers))
    return build_closet(design, CATALOGUE)


def solids(closet, component, *roles):
    return [solid(p) for p in closet.parts if p.component == component and p.role in roles]


def test_the_table_is_about_every_class():
    assert set(SHEETS) == set(CATALOGUE.slides)


@pytest.mark.parametrize("thick", BOXES)
@pytest.mark.parametrize("key", SHEETS)
def test_clearances_on_all_sides(key, thick):
    sheet = SHEETS[key]
    if thick > sheet.sides:
        with pytest.raises(ClosetError, match=rf"must be at most {sheet.sides:g} mm"):
            built(key, 600.0, 500.0, BOXES[thick])
        return
    grid = list(product((333.0, 600.0, 914.4), (406.4, 513.0, 640.0)))
    for (width, depth), back in zip(
        grid if thick == min(BOXES) else grid[::4], cycle((BackKind.PANEL, BackKind.CLEATS)),
        strict=False,
    ):
        closet = built(key, width, depth, BOXES[thick], back, front=FrontSpec(FrontKind.NONE))
        where = (key, thick, width, depth, back)
        left, right = solids(closet, "D", Role.BOX_SIDE)
        walls = {p.name: solid(p) for p in closet.parts if p.component == "A" and p.name in BOUNDS}
        side, divider = walls["left side"], walls["divider 1"]
        gaps = distance(side, left), distance(divider, right)
        assert gaps[0] == pytest.approx(gaps[1], abs=NEAR), where
        if sheet.less[1]:
            inside = right.BoundBox.XMin - left.BoundBox.XMax
            clear = divider.BoundBox.XMin - side.BoundBox.XMax
            assert sheet.less[0] - NEAR <= clear - inside <= sheet.less[1] + NEAR, where
        else:
            assert sheet.gap[0] - NEAR <= min(gaps), where
            assert max(gaps) <= sheet.gap[1] + NEAR, where
        box = Part.Compound(solids(
            closet, "D", Role.BOX_SIDE, Role.BOX_FRONT, Role.BOX_BACK, Role.BOX_BOTTOM))
        shelf, floor = walls["bay 1 shelf 1"], walls["bottom"]
        assert distance(shelf, box) == pytest.approx(sheet.above, abs=NEAR), where
        assert distance(floor, box) == pytest.approx(sheet.below, abs=NEAR), where
        rear = [s for n, s in walls.items() if "back" in n or "cleat" in n]
        behind = distance(Part.Compound(rear), box)
        length = left.BoundBox.YLength
        assert left.BoundBox.YMin == pytest.approx(side.BoundBox.YMin, abs=NEAR), where
        assert behind >= sheet.behind - NEAR, where
        if not sheet.lengths:
            assert behind == pytest.approx(sheet.behind, abs=NEAR), where
        else:
            assert min(abs(length - v) for v in sheet.lengths) < NEAR, where
            longer = [v for v in sheet.lengths if v > length + NEAR]
            # the next longer slide would not have had its clearance behind
            assert not longer or behind - (longer[0] - length) < sheet.behind, where
        (bottom,) = solids(closet, "D", Role.BOX_BOTTOM)
        assert bottom.BoundBox.ZMin - left.BoundBox.ZMin >= sheet.recess - NEAR, where


@pytest.mark.parametrize("key", SHEETS)
@pytest.mark.parametrize("kind", [FrontKind.INSET, FrontKind.HALF, FrontKind.FULL])
def test_a_bank_behind_its_fronts_keeps_its_clearances(key, kind):
    sheet = SHEETS[key]
    closet = built(key, 600.0, 560.0, "ply12", count=2, front=FrontSpec(kind))
    fronts = solids(closet, "D", Role.FRONT)
    sides = solids(closet, "D", Role.BOX_SIDE)[::2]
    for front, side in zip(fronts, sides, strict=True):
        # the box lies against its front, and within its height by the slide's clearances
        assert distance(front, side) == pytest.approx(0.0, abs=NEAR)
        assert front.BoundBox.ZMax - side.BoundBox.ZMax >= sheet.above - NEAR
        assert side.BoundBox.ZMin - front.BoundBox.ZMin >= sheet.below - NEAR
    everything = solids(closet, "D", *Role)
    assert sides[1].BoundBox.ZMin - sides[0].BoundBox.ZMax >= sheet.above + sheet.below - NEAR
    for a, b in combinations(everything, 2):
        assert a.common(b).Volume < 1e-3


@pytest.mark.parametrize("joint", BoxJoint)
@pytest.mark.parametrize("bottom", BottomKind)
@pytest.mark.parametrize("box", BOXES.values())
def test_a_box_goes_together_without_wood_on_wood(joint, bottom, box):
    """Every two parts that are joined touch, none overlap, and what enters a groove stays
    0.5 mm short of its bottom."""
    closet = built("side_mount", 600.0, 500.0, box, joint=joint, bottom=bottom)
    mine = {p.name.removeprefix("drawer "): p for p in closet.parts if p.component == "D"}
    made = {n: solid(p) for n, p in mine.items()}
    for a, b in combinations(made.values(), 2):
        assert a.common(b).Volume < 1e-3
    joined = [(s, e) for s in ("left side", "right side") for e in ("box front", "back")]
    for a, b in joined:
        assert distance(made[a], made[b]) == pytest.approx(0.0, abs=NEAR), (a, b)
    t = mine["left side"].panel.thickness
    for cross in ("box front", "back"):
        reach = made["left side"].BoundBox.XMax - made[cross].BoundBox.XMin
        depth = next((g.depth for g in mine["left side"].panel.grooves if g.name == cross), 0.5)
        assert reach == pytest.approx(depth - 0.5, abs=NEAR), cross
        assert made[cross].BoundBox.YLength == pytest.approx(t, abs=NEAR)
    sheet = made["bottom"].BoundBox
    groove = next(g for g in mine["left side"].panel.grooves if g.name == "bottom")
    assert made["left side"].BoundBox.XMax - sheet.XMin == pytest.approx(
        groove.depth - 0.5, abs=NEAR)
    assert groove.width == pytest.approx(sheet.ZLength + 0.2, abs=NEAR)
    if bottom is BottomKind.UNDER_BACK:
        assert made["back"].BoundBox.ZMin == pytest.approx(sheet.ZMax, abs=NEAR)
    outer = made["left side"].BoundBox
    assert made["box front"].BoundBox.YMin == pytest.approx(outer.YMin, abs=NEAR)
    assert made["back"].BoundBox.YMax == pytest.approx(outer.YMax, abs=NEAR)
