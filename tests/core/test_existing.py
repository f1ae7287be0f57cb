"""A reused chest: measured crooked, its bay made to measure, its panels used again."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.doors import DoorsSpec
from closetbench.core.drawers import DrawersSpec
from closetbench.core.errors import ClosetError
from closetbench.core.existing import ExistingSpec, Flank, KeptPanel, ScrewPoint
from closetbench.core.findings import Severity
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.kept import kept_key
from closetbench.core.parts import Role
from closetbench.core.specs import BackKind, BackSpec, BaySpec, CarcassSpec
from closetbench.stock.from_parts import cut_parts
from tests.core.inside_case import CATALOGUE, closet, component, rules
from tests.core.solids import clashes

CARCASS = CarcassSpec(
    "A", "mdf18", bays=(BaySpec(), BaySpec(fixed=1), BaySpec(fixed=2)),
    back=BackSpec(BackKind.PANEL, "hardboard3"),
)
CHEST = ExistingSpec(
    "Chest", Spot("A", 1), 904.0, 640.0, 420.0, width_front_high=901.0, width_back_low=906.0,
    width_back_high=903.0, height_right=637.0, depth_right=424.0, weight=38.0, drawers=3,
    travel=300.0,
    screws=(ScrewPoint(Flank.LEFT, 60.0, 300.0), ScrewPoint(Flank.RIGHT, 60.0, 300.0)),
)


def built(chest=CHEST, *more, carcass=CARCASS, **sizes):
    return closet(chest, *more, carcass=carcass, **{"width": 1900.0, "depth": 520.0, **sizes})


def test_the_bay_follows_the_largest_of_the_widths_and_the_others_share_the_rest():
    found = built()
    bays = [b.space for b in found.components[0].bays]
    widths = [b.x1 - b.x0 for b in bays]
    assert widths[0] == pytest.approx(906 + 2 * 3)
    assert widths[1] == widths[2] == pytest.approx((1900 - 4 * 18 - 912) / 2)
    assert clashes(found.parts) == []


def test_the_carcass_follows_where_the_piece_settles_its_only_bay():
    carcass = replace(CARCASS, bays=(BaySpec(adjustable=1),))
    found = built(carcass=carcass)
    box = found.components[0].box
    assert box.x1 - box.x0 == pytest.approx(912 + 2 * 18)
    wide = built(carcass=replace(carcass, width=1000.0), chest=replace(CHEST, fitted=False))
    assert wide.components[0].box.x1 == pytest.approx(1000)


def test_the_shelf_above_follows_the_greater_height_with_its_grooves():
    for chest, height in (
        (CHEST, 640 + 5), (replace(CHEST, feet=60.0), 580 + 5),
        (replace(CHEST, feet=60.0, top=20.0, gap_above=8.0), 560 + 8),
    ):
        found = built(chest)
        bay = found.components[0].bays[0].space
        shelf = next(p for p in found.parts if p.name == "bay 1 shelf 1")
        assert shelf.box().z0 - bay.z0 == pytest.approx(height)
        side = next(p for p in found.parts if p.name == "left side")
        groove = next(g for g in side.panel.grooves if g.name == "bay 1 shelf 1")
        assert side.box().z0 + groove.offset == pytest.approx(bay.z0 + height)


def test_heights_given_come_above_the_shelf_over_the_piece():
    carcass = replace(CARCASS, bays=(BaySpec(heights=(1100.0,)), BaySpec()))
    found = built(carcass=carcass)
    shelves = [p.box().z0 for p in found.parts if p.role is Role.FIXED_SHELF]
    bay = found.components[0].bays[0].space
    assert [z - bay.z0 for z in sorted(shelves)] == pytest.approx([645.0, 1100.0])
    none = built(replace(CHEST, shelf_above=False))
    assert not [p for p in none.parts if p.name.startswith("bay 1 shelf")]


def test_clearances_from_the_solids():
    found = built()
    bay = found.components[0].bays[0].space
    (piece,) = component(found, "Chest").pieces
    box = piece.box()
    assert (box.x0 - bay.x0, bay.x1 - box.x1) == (pytest.approx(3), pytest.approx(3))
    assert box.z0 == bay.z0
    assert box.z1 == pytest.approx(bay.z0 + 640)
    assert box.y0 == pytest.approx(bay.y0)
    assert box.y1 == pytest.approx(bay.y0 + 424)
    # the corners are the readings
    xs, ys, zs = zip(*piece.corners, strict=True)
    assert [xs[1] - xs[0], xs[2] - xs[3], xs[5] - xs[4], xs[6] - xs[7]] == [904, 906, 901, 903]
    assert (zs[7] - zs[3], zs[6] - zs[2]) == (640, 637)
    assert (ys[3] - ys[0], ys[2] - ys[1]) == (420, 424)
    assert not rules(found.findings) & {"parts-overlap", "pull-blocked"}


def test_what_is_taken_off_counts():
    chest = replace(CHEST, feet=50.0, top=18.0, moulding=12.0)
    found = built(chest)
    box = component(found, "Chest").pieces[0].box()
    bay = found.components[0].bays[0].space
    assert bay.x1 - bay.x0 == pytest.approx(906 - 24 + 6)
    assert box.z1 - box.z0 == pytest.approx(640 - 68)
    assert box.y1 - box.y0 == pytest.approx(424 - 12)
    (unit,) = component(found, "Chest").checked
    assert unit.altered
    assert unit.mass == 38.0
    assert len(unit.drawers) == 3


def test_it_is_no_part_to_be_cut_but_takes_space():
    found = built()
    assert not [p for p in found.parts if p.component == "Chest"]
    assert "Chest: piece" in {b.full_name for b in found.bodies}
    cut_parts(found.parts, CATALOGUE)
    needs = {n.purpose: n.count for n in component(found, "Chest").hardware}
    assert needs == {"existing piece to the carcass": 2}


def test_a_drawer_in_the_same_place_is_a_conflict_with_it():
    found = built(CHEST, DrawersSpec("D", Spot("A", 1, 1), count=2))
    pairs = [f for f in found.findings if f.rule == "parts-overlap"]
    assert pairs
    assert all("Chest: piece" in (f.subject, *f.parts) for f in pairs)


def test_its_drawers_come_out_only_after_the_door_before_them():
    found = built(CHEST, DoorsSpec("D", Spot("A", 1, 1), leaves=2))
    (note,) = [f for f in found.findings if f.subject == "Chest: drawers"][:1]
    assert note.rule == "pull-behind-door"


def test_what_is_not_known_is_not_checked():
    found = built(replace(CHEST, weight=None, screws=()))
    mine = {f.rule: f.severity for f in found.findings if f.subject == "Chest"}
    assert mine["existing-weight"] is Severity.NOT_CHECKED
    assert mine["existing-loose"] is Severity.WARNING


def test_a_bay_of_its_own_width_leaves_a_gap_that_is_named():
    carcass = replace(CARCASS, bays=(BaySpec(960.0), BaySpec()))
    found = built(carcass=carcass)
    assert "existing-gap" in rules(found.findings, "Chest")


def test_a_kept_panel_becomes_fronts_and_is_not_bought():
    top = KeptPanel("top", 910.0, 430.0, 19.0)
    chest = replace(CHEST, top=19.0, kept=(top,))
    key = kept_key("Chest", "top")
    assert key == "kept-chest-top"
    drawers = DrawersSpec(
        "D", Spot("A", 2, 1, 0.0, 400.0), count=2, front=FrontSpec(FrontKind.INSET, key)
    )
    found = built(chest, drawers)
    bank = component(found, "D")
    assert [p.role for p in bank.reused] == [Role.FRONT, Role.FRONT]
    assert all(p.panel.thickness == 19.0 for p in bank.reused)
    assert not [p for p in found.parts if p.panel.material == key]
    assert {p.full_name for p in bank.reused} <= {b.full_name for b in found.bodies}
    # the fronts are 433 mm long with the grain: two lie side by side in the top, three do not
    tall = replace(drawers, count=3, spot=Spot("A", 2, 1, 0.0, 700.0))
    with pytest.raises(ClosetError, match=r"top kept from Chest is .* must come out of 910 x 430"):
        built(chest, tall)


@pytest.mark.parametrize(
    ("chest", "carcass", "message"),
    [
        (replace(CHEST, fitted=False), replace(CARCASS, bays=(BaySpec(900.0), BaySpec())),
         r"Chest in A, bay 1: greatest width is 906 mm; must be at most 894\.0 mm, 900\.0 mm less"),
        (replace(CHEST, depth_left=520.0, depth_right=500.0), CARCASS,
         r"greatest depth is 520 mm; must be at most 50\d\.\d mm"),
        (replace(CHEST, setback=100.0), CARCASS, r"greatest depth is 424 mm; must be at most 40"),
        (replace(CHEST, width_back_low=700.0), CARCASS, r"width is 700 to 904 mm; must not differ"),
        (replace(CHEST, feet=600.0), CARCASS, r"height once it is stripped is 40 mm; must be 50"),
        (replace(CHEST, side_gap=-1.0), CARCASS, r"clearance at each side is -1 mm; must be 0"),
        (replace(CHEST, screws=(ScrewPoint(Flank.LEFT, 600.0, 300.0),)), CARCASS,
         r"screw point 1: distance from the front is 600 mm; must be 10 to 414"),
        (replace(CHEST, feet=100.0, screws=(ScrewPoint(Flank.LEFT, 60.0, 50.0),)), CARCASS,
         r"height above the floor is 50 mm; must be 110 to 630 mm to lie in what is left"),
        (CHEST, replace(CARCASS, bays=(BaySpec(fixed=2), BaySpec())),
         r"A, bay 1: fixed shelves is 2; must be given by their heights: the lowest lies over Ch"),
        (replace(CHEST, spot=Spot("A", 1, 1, 0.0, 500.0)), CARCASS,
         r"greatest height is 640 mm; must be at most 495\.0 mm"),
        (replace(CHEST, kept=(KeptPanel("top", 900, 400, 19), KeptPanel("Top", 9e2, 4e2, 19))),
         CARCASS, r"kept panel is Top; must have a name of its own"),
    ],
)
def test_what_is_refused_names_value_and_limit(chest, carcass, message):
    with pytest.raises(ClosetError, match=message):
        built(chest, carcass=carcass)
