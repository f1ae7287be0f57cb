"""Corner shelves, over-the-top shelves, and the screws of their cleats."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from closetbench.core.circumstances import Circumstances
from closetbench.core.closet import Spec
from closetbench.core.findings import Finding, Severity
from closetbench.core.fixings import FASTENERS, board_withdrawal, lateral_allowable
from closetbench.core.loads import ShelfUse
from closetbench.core.people import Light
from closetbench.core.specs import BaySpec, CarcassSpec, TopKind
from closetbench.core.wall_borne import PER_STUD
from closetbench.core.wall_shelves import CornerShelvesSpec, LipSpec, OverShelfSpec
from closetbench.core.walls import STUD_GRAVITY, Wall, WallKind
from tests.core.wooden import CATALOGUE, built, checked, only, rules

STUDS = Wall(WallKind.WOOD_STUDS, 406.4, 100.0, 12.7)
KNOWN = Circumstances(
    ShelfUse.LINEN, damp=False, wall=STUDS, children=(), old_paint=False, outlets=False,
    light=Light.NONE,
)
CORNER = CornerShelvesSpec("nook", "ply18", (400.0, 900.0))
SIZE = (1200.0, 600.0, 2200.0)


def found(*specs: Spec, known: Circumstances = KNOWN, size: tuple[float, float, float] = SIZE,
          name: str = "nook") -> list[Finding]:
    closet = built(*specs, size=size, circumstances=known)
    return [f for f in checked(closet, known) if f.subject.startswith(name)]


def test_a_corner_shelf_is_strips_from_cleat_to_cleat() -> None:
    said = found(CORNER)
    assert rules(said) == ["corner-sag", "corner-tips", "cleat-screws", "cleat-screws"]
    sag = said[0]
    assert sag.parts == ("nook: shelf 1", "nook: shelf 2")
    # by hand: L of 600 x 500, legs 300 deep; cleats end 20 mm short; all of 718 Pa on the
    # triangle within the line of the ends, so a strip of its span and height carries it twice
    area = 600 * 500 - 300 * 200
    a, b = 580.0, 480.0
    span, high = math.hypot(a, b), a * b / math.hypot(a, b)
    load = 718.2e-6 * area * 2
    sagged = 5 / 384 * load * span**3 / (
        CATALOGUE.material("ply18").e_across * high * 18**3 / 12)
    assert float(sag.value.split()[0]) == pytest.approx(sagged, rel=0.05)
    assert sag.limit == f"{span / 192:.1f} mm"


def test_what_lifts_a_corner_shelf_off_its_cleats() -> None:
    # a whole square on cleats along two sides: by hand, x + y - 1 over the half beyond the
    # diagonal has the mean 1/3, so q·A/2·h/3; its own weight balances on the diagonal but for
    # what the cleats are short of. Screws from 0 to h away carry n·h/3 of the greatest pull.
    square = CornerShelvesSpec(
        "nook", "ply18", (400.0,), along_back=500.0, along_side=500.0, depth_back=500.0,
        depth_side=500.0)
    tips = only(found(square), "corner-tips")
    assert tips.severity is Severity.NOTE
    pull = 718.2e-6 * 500**2 / 2 / 6
    assert float(tips.value.split()[0]) == pytest.approx(pull, rel=0.25)
    screw = FASTENERS["screw_4x40"]
    hold, _ = board_withdrawal(CATALOGUE.material("ply18"), screw, 22.0, edge=True)
    assert tips.limit == f"{hold:.0f} N"
    assert "6 x" in tips.message
    bill = {h.purpose: h.count for h in built(square, size=SIZE).hardware}
    assert bill["shelves to their cleats"] == 6
    heavy = replace(KNOWN, shelf_use=None, shelf_load=3000.0)
    assert only(found(square, known=heavy), "corner-tips").severity is Severity.DANGER


def test_slender_legs_are_not_checked() -> None:
    slender = replace(CORNER, depth_back=150.0, depth_side=150.0)
    said = found(slender)
    assert only(said, "corner-legs").severity is Severity.NOT_CHECKED
    assert "corner-sag" not in rules(said)


def test_cleats_hang_on_as_many_screws_as_are_in_the_bill() -> None:
    closet = built(CORNER, size=SIZE, circumstances=KNOWN)
    back, side = [f for f in checked(closet) if f.rule == "cleat-screws"]
    bill = {h.purpose: h.count for h in closet.hardware}
    # two shelves, each with two cleats
    assert bill["cleats to the studs"] == 2 * (2 + 2)
    screw = FASTENERS["screw_6x100"]
    each = lateral_allowable(screw.kind, STUD_GRAVITY, screw.diameter, 38.0)
    assert back.severity is Severity.NOTE
    assert back.limit == f"{min(2, PER_STUD * 2) * each:.0f} N"
    # nobody has surveyed the side wall: 460 mm of cleat are sure to find one stud
    assert side.limit == f"{min(2, PER_STUD * 1) * each:.0f} N"
    assert "lightest" in side.spread


@pytest.mark.parametrize(
    ("wall", "severity"),
    [(Wall(), Severity.NOT_CHECKED), (Wall(WallKind.BRICK), Severity.NOT_CHECKED),
     (Wall(WallKind.WOOD_STUDS), Severity.NOT_CHECKED),
     (Wall(WallKind.WOOD_STUDS, 1300.0), Severity.NOT_CHECKED),
     (Wall(WallKind.WOOD_STUDS, 406.4, 100.0, 79.0), Severity.DANGER)],
)
def test_a_wall_that_does_not_hold_is_said(wall: Wall, severity: Severity) -> None:
    said = [f for f in found(CORNER, known=replace(KNOWN, wall=wall)) if f.rule == "cleat-screws"]
    assert {f.severity for f in said} == {severity}


def test_a_surveyed_wall_without_a_stud_behind_a_cleat_is_a_danger() -> None:
    known = replace(KNOWN, wall=Wall(WallKind.WOOD_STUDS, 1300.0, 5.0))
    back, side = [f for f in found(CORNER, known=known) if f.rule == "cleat-screws"]
    assert back.severity is Severity.DANGER
    assert "no stud is sure" in back.message
    # nobody surveys the studs of the side walls
    assert side.severity is Severity.NOT_CHECKED


def test_overloaded_cleats_may_come_down() -> None:
    heavy = replace(KNOWN, shelf_use=None, shelf_load=1500.0)
    said = [f for f in found(CORNER, known=heavy) if f.rule == "cleat-screws"]
    assert Severity.DANGER in {f.severity for f in said}
    assert any("may come down" in f.message for f in said)
    assert only(found(CORNER, known=heavy), "corner-strength").severity is Severity.DANGER


CASE = CarcassSpec("case", "ply18", height=2000.0, bays=(BaySpec(), BaySpec()))
OVER = OverShelfSpec("over", "ply18")


@pytest.mark.parametrize("top", [TopKind.OVER, TopKind.BETWEEN])
def test_an_over_shelf_spans_from_upright_to_upright(top: TopKind) -> None:
    closet = built(replace(CASE, top=top), OVER, size=SIZE, circumstances=KNOWN)
    sag = only(checked(closet), "shelf-sag", "over: shelf")
    case = next(c for c in closet.components if c.name == "case")
    widest = max(b.space.x1 - b.space.x0 for b in case.bays) + 18
    assert sag.limit == f"{widest / 192:.1f} mm"


def test_a_lip_stiffens_an_over_shelf() -> None:
    wide = replace(CASE, bays=(BaySpec(),))
    plain = only(found(wide, OVER, name="over"), "shelf-sag")
    lipped = only(
        found(wide, replace(OVER, lip=LipSpec(40.0)), name="over"), "shelf-sag")
    assert float(lipped.value.split()[0]) < float(plain.value.split()[0]) / 1.5
    assert "lip glued and screwed" in lipped.message
    assert "lip glued" not in plain.message


def test_a_shelf_on_nothing_is_a_danger_and_one_that_reaches_past_is_pointed_at() -> None:
    loose = OverShelfSpec("over", "ply18", height=2100.0, cleat=0.0)
    assert only(found(CASE, loose, name="over"), "over-shelf-loose").severity is Severity.DANGER
    narrow = replace(CASE, width=700.0, x=0.0)
    free = OverShelfSpec("over", "ply18", x1=1100.0)
    end = only(found(narrow, free, name="over"), "over-shelf-end")
    assert end.severity is Severity.WARNING
    assert "by the boards published" in end.spread


def test_a_wall_to_wall_shelf_hangs_on_its_side_cleats() -> None:
    alone = OverShelfSpec("over", "ply18", height=2000.0)
    said = found(alone, name="over")
    assert rules(said) == ["shelf-sag", "cleat-screws", "cleat-screws", "cleat-screws"]
    sag = only(said, "shelf-sag")
    assert sag.limit == f"{min((1200 - 18) / 192, 6.35):.1f} mm"


def test_damp_boards_of_wall_shelves_are_not_checked() -> None:
    damp = replace(KNOWN, damp=True)
    mdf = replace(CORNER, material="mdf18")
    assert only(found(mdf, known=damp), "shelf-damp").severity is Severity.NOT_CHECKED
    over = replace(OVER, material="mdf18")
    assert only(found(CASE, over, known=damp, name="over"), "shelf-damp")


def test_without_a_use_they_are_named_as_not_checked() -> None:
    unknown = replace(KNOWN, shelf_use=None)
    closet = built(CORNER, CASE, OVER, size=(1900.0, 600.0, 2200.0), circumstances=unknown)
    said = only(checked(closet), "shelf-use")
    assert {"nook: shelf 1", "over: shelf"} <= set(said.parts)
