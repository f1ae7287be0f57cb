"""Joints, rows, strips and crooked niches against published figures and plain geometry."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from closetbench.core.base import ANCHOR_HEIGHT, ANCHOR_THICKNESS, MIDDLE_CLEAT_ABOVE
from closetbench.core.joinery import JoineryRules
from closetbench.core.parts import Role
from closetbench.core.room import build_room
from closetbench.core.specs import BackSpec, BaySpec, CarcassSpec, TopKind
from closetbench.core.survey import Survey
from closetbench.stock.plan import CutPart, CutSettings, StockSheet
from closetbench.stock.sheets import plan_sheets
from tests.core.boards import board, closet, part

INCH = 25.4


@pytest.mark.parametrize(
    ("thickness", "least", "most"),
    # Depth of a dado: a third of the thickness, up to a half; 18 mm: 6 to 9 mm, 3/4 in:
    # 1/4 to 3/8 in. Common practice, no published source.
    [(18.0, 6.0, 9.0), (0.75 * INCH, 0.25 * INCH, 0.375 * INCH)],
)
def test_groove_depth_is_between_a_third_and_a_half(
    thickness: float, least: float, most: float
) -> None:
    steps = JoineryRules(depth_step=INCH / 32)
    for rules in (JoineryRules(), steps):
        # a router set in steps stays less than one of them below the third
        assert least - rules.depth_step < rules.groove_depth(thickness) <= most
    assert steps.groove_depth(0.75 * INCH) == pytest.approx(0.25 * INCH)
    assert JoineryRules(depth=most).groove_depth(thickness) == most


def test_rows_of_holes_keep_to_the_32_mm_system() -> None:
    # The 32 mm system as published in trade literature: holes of 5 mm, 32 mm apart, the
    # front row 37 mm behind the front edge, rows a multiple of 32 mm apart.
    found = closet(CarcassSpec("A", "mdf", bays=(BaySpec(adjustable=3), BaySpec(adjustable=2))))
    for name in ("left side", "divider 1", "right side"):
        rows = part(found, name).panel.holes
        assert {row.diameter for row in rows} == {5.0}
        assert {row.pitch for row in rows} == {32.0}
        front, rear = sorted({row.y for row in rows})
        assert front == 37.0
        assert ((rear - front) / 32.0).is_integer()


@pytest.mark.parametrize("measured", [0.688 * INCH, 0.719 * INCH, 0.750 * INCH])
def test_groove_fits_whatever_ps_1_lets_pass_as_23_32(measured: float) -> None:
    # PS 1-19, performance category 23/32: 0.688 to 0.750 in. In a groove of 3/4 in such a
    # panel has a play of 0 to 1.59 mm: hence the sheet is measured, and the play is the fit.
    play = 0.75 * INCH - measured
    assert -1e-9 <= play <= 1.59
    sheet = board("ply", 23 / 32 * INCH, measured)
    rules = JoineryRules()
    assert rules.groove_width(sheet.thickness) - measured == pytest.approx(rules.fit)


def test_grooves_do_not_run_through_the_edge_band() -> None:
    # Architectural Woodwork Standards, edition 1 (2009), 4.4.4.5: dadoes must not run
    # through the edge band.
    spec = CarcassSpec(
        "A", "ply", top=TopKind.BETWEEN, bays=(BaySpec(fixed=2), BaySpec(fixed=1)),
    )
    found = closet(spec)
    machined = [p for p in found.parts if any(g.name != "back" for g in p.panel.grooves)]
    assert {p.role for p in machined} == {Role.SIDE, Role.DIVIDER, Role.BOTTOM, Role.TOP}
    for item in machined:
        band = item.panel.bands[0].thickness
        for groove in item.panel.grooves:
            assert item.panel.groove_box(groove).y0 > band, (item.name, groove.name)
    assert "groove-through-band" not in {f.rule for f in found.findings}
    through = closet(replace(spec, groove_stop=0.0))
    (said,) = [f for f in through.findings if f.rule == "groove-through-band"]
    assert "4.4.4.5" in said.source


def test_anchor_strips() -> None:
    # Architectural Woodwork Standards, edition 1 (2009), 4.4.18: anchor strips of at least
    # 1/2 x 2-1/2 in at top and bottom, and another between them above 60 in.
    assert pytest.approx(0.5 * INCH) == ANCHOR_THICKNESS
    assert pytest.approx(2.5 * INCH) == ANCHOR_HEIGHT
    assert pytest.approx(60 * INCH) == MIDDLE_CLEAT_ABOVE
    for height, count in ((1500.0, 2), (2000.0, 3)):
        found = closet(CarcassSpec("A", "mdf", height=height))
        cleats = [p.panel for p in found.parts if p.role is Role.CLEAT]
        assert len(cleats) == count
        assert all(c.thickness >= ANCHOR_THICKNESS and c.width >= ANCHOR_HEIGHT for c in cleats)
    small = closet(CarcassSpec("A", "mdf", back=BackSpec(cleat_height=2.4 * INCH)))
    assert "small-cleats" in {f.rule for f in small.findings}


def test_diagonals_of_a_racked_niche() -> None:
    # Geometry: a niche of 1800 x 2400 mm whose far end is shifted by 5 mm has diagonals
    # that differ by 6.00 mm. Here it lies in plan, 2400 mm deep, and its rear corners
    # must be found 5 mm to the right.
    long, short = math.hypot(1805.0, 2400.0), math.hypot(1795.0, 2400.0)
    assert long - short == pytest.approx(6.00, abs=0.005)
    side = math.hypot(5.0, 2400.0)
    room = build_room(Survey(
        *[1800.0] * 6, *[2400.0] * 4, depth_left=side, depth_right=side,
        diagonal_to_right=long, diagonal_to_left=short,
    ))
    corners = {p for line in room.corner_lines() for p in line if p[1] > 1000.0}
    assert len(corners) == 4
    for x, y, _ in corners:
        assert y == pytest.approx(2400.0, abs=0.1)
        assert min(abs(x - 5.0), abs(x - 1805.0)) < 0.1


@pytest.mark.parametrize(
    ("sheet", "strip", "count"),
    # Strips from one sheet, floor((sheet + kerf) / (strip + kerf)), kerf 3.2 mm, common
    # practice: 4 x 300 + 3 x 3.2 = 1209.6 of 1220 mm; 5 x 240 + 4 x 3.2 = 1212.8 of 1220 mm;
    # a sheet of 49 in, 1245 mm, gives no fifth strip of 300 mm.
    [(1220.0, 300.0, 4), (1220.0, 240.0, 5), (1245.0, 300.0, 4)],
)
def test_strips_from_a_sheet(sheet: float, strip: float, count: int) -> None:
    assert count == math.floor((sheet + 3.2) / (strip + 3.2))
    stock = [StockSheet("s", "mdf", 2440.0, sheet)]
    settings = CutSettings(kerf=3.2, seconds=0.2, tidy=0.0)
    for strips, sheets in ((count, 1), (count + 1, 2)):
        parts = [CutPart(f"p{i}", 2440.0, strip, "mdf") for i in range(strips)]
        assert len(plan_sheets(parts, stock, settings).sheets) == sheets
