"""What goes inside against published figures and the common practice of the trade.

Beside every check stands where its figure comes from. "Common practice" has no published
source; "from memory" is to be checked.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest

from closetbench.core.bench import BenchFace, BenchSpec
from closetbench.core.bench_parts import LID_GAP
from closetbench.core.closet import Closet, ClosetDesign, build_closet
from closetbench.core.component import Component
from closetbench.core.doors import DoorsSpec
from closetbench.core.drawers import DrawersSpec
from closetbench.core.existing import ExistingSpec
from closetbench.core.face_frame import FaceFrameSpec
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.panel import Box
from closetbench.core.parts import Role
from closetbench.core.rods import FROM_WALL, HANGING_DEPTH, RodsSpec, RodUse
from closetbench.core.slides import BoxRule
from closetbench.core.specs import BackKind, BackSpec, BaySpec, CarcassSpec
from closetbench.resources import load_catalogue

IN = 25.4
POUND = 0.45359237
CATALOGUE = load_catalogue()


def built(*specs, bay: float = 600.0, depth: float = 650.0, height: float = 2440.0) -> Closet:
    carcass = CarcassSpec(
        "A", "mdf18", bays=(BaySpec(width=bay), BaySpec()), back=BackSpec(BackKind.PANEL, "mdf12"))
    design = ClosetDesign("c", size=(bay + 400.0, depth, height), components=(carcass, *specs))
    return build_closet(design, CATALOGUE)


def of(found: Closet, name: str) -> Component:
    return next(c for c in found.components if c.name == name)


def box_sides(found: Closet) -> tuple[Box, Box]:
    left, right = [p.box() for p in of(found, "D").parts if p.role is Role.BOX_SIDE][:2]
    return left, right


@pytest.mark.parametrize("key", ["side_mount", "side_mount_inch"])
@pytest.mark.parametrize("opening", [12.0, 18.0, 24.0, 30.0])
def test_a_box_on_side_mounted_slides_is_an_inch_narrower_than_its_opening(key, opening):
    """1/2 in each side, +1/32 in / -0 on the gap: box 1 to 1-1/16 in less than the opening.
    Common practice: the figure is on every side-mounted slide's sheet."""
    found = built(DrawersSpec("D", Spot("A"), slide=key), bay=opening * IN)
    left, right = box_sides(found)
    less = opening * IN - (right.x1 - left.x0)
    assert 1.0 * IN - 1e-6 <= less <= 1.0625 * IN + 1e-6


@pytest.mark.parametrize(
    ("key", "less", "most", "above"),
    [
        # 1/2 in (12.5 mm) each side, 5/8 to 3/4 in above to lift the box out: from memory
        ("corner_roller", 25.0, 27.0, 5 / 8 * IN),
        # inside width 42 mm less than the opening with sides of 16 mm or less; box recess
        # 12.7 to 13 mm: from memory, makers' sheets
        ("undermount", 42.0 - 1.5, 42.0, 0.0),
        # 1/16 in (1.5 mm) of play in all: common practice
        ("wooden_runner", 0.75, 2.5, 1.5),
    ],
)
@pytest.mark.parametrize("opening", [300.0, 450.0, 600.0])
def test_other_slides(key, less, most, above, opening):
    found = built(DrawersSpec("D", Spot("A"), slide=key), bay=opening)
    slide = CATALOGUE.slides[key]
    left, right = box_sides(found)
    width = right.x0 - left.x1 if slide.rule is BoxRule.BY_INSIDE else right.x1 - left.x0
    assert less - 1e-6 <= opening - width <= most + 1e-6
    front = next(p.box() for p in of(found, "D").parts if p.role is Role.FRONT)
    assert front.z1 - left.z1 >= above - 1e-6


def test_slides_are_rated_by_the_guide_and_come_in_its_steps():
    """Architectural Woodwork Standards, edition 1 (2009), appendix B: 50, 75 and 100 lb; steps
    of 2 in or 50 mm and 1/2 in above the box: common practice."""
    rated = {k: s for k, s in CATALOGUE.slides.items() if "appendix B" in s.source}
    assert len(rated) == 3
    for slide in rated.values():
        assert round(slide.load / POUND) in (50, 75, 100)
        steps = {
            round(b - a, 6) for a, b in pairwise(slide.lengths)
        }
        assert steps in ({50.0}, {round(2 * IN, 6)})
        assert slide.above >= IN / 2 - 1e-6


def test_bars_are_as_thick_as_rods_must_be():
    """Architectural Woodwork Standards, edition 1 (2009), 4.4.16: wood poles 1-1/4 in, metal
    1-1/16 in at least."""
    for bar in CATALOGUE.bars.values():
        least = 1.25 if "pole" in bar.kind else 1.0625
        assert bar.diameter >= least * IN - 0.02, bar.key


@pytest.mark.parametrize(
    ("span", "between"), [(40.0, 0), (48.0, 0), (48.5, 1), (90.0, 1), (97.0, 2)]
)
def test_rods_have_a_support_every_48_inches(span, between):
    """Architectural Woodwork Standards, edition 1 (2009), 4.4.16."""
    found = built(RodsSpec("R", Spot("A")), bay=span * IN)
    needs = {n.key: n.count for n in of(found, "R").hardware}
    assert needs.get("rod_hanger_27", 0) == between


def test_heights_and_depth_of_rods():
    """One rod 64 in (Time-Saver Standards) to 66 in (trim carpenters) high, 3 in under a shelf
    (Time-Saver Standards); two rods 40 to 42 and 80 to 84 in (common practice); a depth of 24
    in with the rod 12 in from the wall (closet planning, as quoted)."""
    def heights(use: RodUse, height: float = 2440.0) -> list[float]:
        return [r.start[2] / IN for r in of(built(RodsSpec("R", Spot("A"), use), height=height),
                                           "R").lengths]

    (single,) = heights(RodUse.LONG)
    assert 64 <= single <= 66
    lower, upper = heights(RodUse.DOUBLE)
    assert 40 <= lower <= 42
    assert 80 <= upper <= 84
    found = built(RodsSpec("R", Spot("A")), height=1700.0)
    bay, (rod,) = of(found, "A").bays[0].space, of(found, "R").lengths
    assert (bay.z1 - rod.start[2]) / IN == pytest.approx(3.0)
    assert pytest.approx(24 * IN) == HANGING_DEPTH
    assert pytest.approx(12 * IN) == FROM_WALL


def test_a_child_reaches_the_rod_for_children():
    """2010 ADA Standards, advisory 308.1: 20 to 36 in at 3 to 4 years, 18 to 40 in at 5 to 8."""
    (rod,) = of(built(RodsSpec("R", Spot("A"), RodUse.CHILD)), "R").lengths
    for low, high in ((20, 36), (18, 40)):
        assert low * IN <= rod.start[2] <= high * IN


@pytest.mark.parametrize(("height", "hinges"), [(800, 2), (1500, 3), (1950, 4), (2350, 5)])
def test_hinges_by_height_and_their_boring(height, hinges):
    """A 35 mm cup 12 to 13 mm deep, 3 to 6 mm from the edge, 80 to 120 mm from the ends; two
    hinges to about 900 mm and one more to 1600, 2000 and 2400 mm: common practice."""
    spec = DoorsSpec("D", Spot("A", height=float(height)), front=FrontSpec(FrontKind.INSET))
    (door,) = of(built(spec, bay=400.0, height=2600.0), "D").parts
    (row,) = [h for h in door.panel.holes if h.name == "hinge cup"]
    assert row.count == hinges
    assert row.diameter == 35
    assert 12 <= row.depth <= 13
    edge = min(row.y, door.panel.width - row.y) - row.diameter / 2
    assert 3 <= edge <= 6
    ends = [x for x, _ in row.centres()]
    assert 80 <= ends[0] <= 120
    assert 80 <= door.panel.length - ends[-1] <= 120


def test_bench_members_are_dressed_lumber():
    """PS 20-20, dry: a 2x4 is 1-1/2 by 3-1/2 in."""
    found = built(BenchSpec("B", Spot("A")), bay=900.0)
    for part in of(found, "B").parts:
        if part.role is Role.BENCH_FRAME:
            assert (part.panel.thickness, part.panel.width) == (
                pytest.approx(1.5 * IN), pytest.approx(3.5 * IN))


@pytest.mark.parametrize(("width", "closed"), [(250.0, False), (900.0, True)])
def test_a_lidded_chest_needs_air_from_a_size_on(width, closed):
    """ASTM F2598-22: from 1.1 ft3 (31 litres) of closed volume; ASTM F963, hinge line: gaps of
    3/16 in and less, or of 1/2 in and more, pinch no finger (from memory)."""
    bench = BenchSpec("B", Spot("A"), depth=320.0, rails=2, lid=True, face=BenchFace.FULL,
                      top="ply18", face_material="ply18")
    found = built(replace(bench, width=width), bay=1000.0)
    (figures,) = of(found, "B").checked
    assert (figures.volume > 1.1 * 28.3168) is closed
    rules = {f.rule for f in found.findings if f.subject == "B"}
    assert ("lid-air" in rules) is closed
    assert LID_GAP < 3 / 16 * IN


def test_an_altered_chest_counts_as_altered_and_keeps_its_weight():
    """16 CFR 1261 exempts built-in units fastened to the building, and says nothing of sawn
    ones: computed as new (common practice)."""
    chest = ExistingSpec("C", Spot("A"), 560.0, 700.0, 420.0, feet=80.0, weight=40.0, drawers=4,
                         travel=300.0)
    found = built(chest)
    (unit,) = of(found, "C").checked
    assert (unit.altered, unit.mass, unit.height) == (True, 40.0, 620.0)
    rules = {f.rule for f in found.findings if f.subject == "C"}
    assert {"tipping", "altered-furniture"} <= rules
    plain = built(replace(chest, feet=0.0))
    assert "altered-furniture" not in {f.rule for f in plain.findings if f.subject == "C"}


def test_scribes_are_no_wider_than_woodwork_allows():
    """Architectural Woodwork Standards, edition 1 (2009): scribes at walls up to 1-1/2 in."""
    assert FaceFrameSpec("F", "A").scribe <= 1.5 * IN
