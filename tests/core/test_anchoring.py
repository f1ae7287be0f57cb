"""Tipping: moments by hand, before and after anchoring, and the dangers."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.anchoring import (
    ANCHORS,
    CHILD,
    PULL,
    TALL,
    Anchorage,
    Drawer,
    FreeUnit,
    Leaf,
    anchor_needs,
    anchored,
    findings,
    tips,
    worst_tip,
)
from closetbench.core.errors import ClosetError
from closetbench.core.figures import GRAVITY
from closetbench.core.findings import Severity
from tests.core.wooden import FIGURES, only, rules

CHEST = FreeUnit(
    "chest", 900.0, 420.0, 900.0, 40.0,
    drawers=tuple(Drawer(800.0, 150.0, 380.0, z, 330.0, 4.0) for z in (150.0, 400.0, 650.0)),
)
TOWER = FreeUnit("tower", 600.0, 500.0, 2300.0, 50.0)
LOOSE = Anchorage(2, 880.0, None, "anti-tip anchors")
FIRM = Anchorage(2, 880.0, 600.0, "2 screws into studs")


def test_a_drawerless_unit_by_hand() -> None:
    still, pulled, climbed = tips(TOWER)
    assert still.overturning == 0
    assert still.restoring == pytest.approx(50 * GRAVITY * 250)
    # 10 lbf at 56 in, the hand-hold's greatest height
    assert pulled.overturning == pytest.approx(PULL * 1422.4)
    assert pulled.restoring == still.restoring
    # the rear raised by 0.43 in: everything leans forward by its height times the slope
    slope = 0.43 * 25.4 / 500
    assert climbed.restoring == pytest.approx(50 * GRAVITY * (250 - 1150 * slope), rel=1e-3)
    assert climbed.overturning == pytest.approx(CHILD * GRAVITY * 1150 * slope, rel=1e-2)


def test_open_full_drawers_by_hand() -> None:
    open_full = tips(CHEST)[0]
    fill = 800 * 150 * 380 * 136.16e-9
    # each drawer's middle moves from 190 mm behind the front to 140 mm before it
    assert open_full.overturning == pytest.approx(3 * (4 + fill) * GRAVITY * 140, rel=1e-6)
    assert open_full.restoring == pytest.approx((40 * 210 - 3 * 4 * 190) * GRAVITY, rel=1e-6)


def test_open_doors_lean_out_by_half_their_width() -> None:
    """F2057 opens doors to 90 degrees (from memory): the middle of each is then half its width
    before the front."""
    doors = replace(TOWER, leaves=(Leaf(300.0, 1100.0, 8.0), Leaf(300.0, 1100.0, 8.0)))
    still, pulled, _ = tips(doors)
    assert still.overturning == pytest.approx(2 * 8 * GRAVITY * 150)
    assert pulled.overturning == pytest.approx(PULL * 1422.4 + 2 * 8 * GRAVITY * 150)
    assert pulled.restoring == pytest.approx(50 * GRAVITY * 250)
    told = only(findings(doors, LOOSE, FIGURES), "tipping").message
    assert "with its doors open, pulled at the edge" in told


def test_a_foot_set_back_tips_sooner() -> None:
    back = replace(TOWER, foot=60.0)
    assert worst_tip(back).ratio < worst_tip(TOWER).ratio
    low = replace(TOWER, height=600.0)
    assert tips(low)[1].overturning == pytest.approx(PULL * 600)


def test_a_chest_whose_drawers_open_together_is_a_danger() -> None:
    danger = only(findings(CHEST, LOOSE, FIGURES, "nobody knows"), "tipping")
    assert danger.severity is Severity.DANGER
    assert "tips over" in danger.message
    assert "open drawer" in danger.message
    assert "nobody knows" in danger.message
    assert "licensed professional" in danger.message
    assert "before anything is put into it" in danger.message
    assert danger.value
    assert danger.limit


def test_anchoring_is_computed_before_and_after() -> None:
    worst = worst_tip(CHEST)
    assert worst.ratio < 1
    assert anchored(worst, LOOSE) == 0
    after = anchored(worst, FIRM)
    assert after == pytest.approx(
        (worst.restoring + 2 * 600 * 880) / worst.overturning)
    assert worst.anchor_force(880) * 880 == pytest.approx(worst.overturning - worst.restoring)
    warned = only(findings(CHEST, FIRM, FIGURES), "tipping")
    assert warned.severity is Severity.WARNING
    assert "2 screws into studs" in warned.message
    assert "anchors must hold" in warned.message


def test_anchors_that_are_too_weak_stay_a_danger() -> None:
    weak = Anchorage(1, 880.0, 1.0, "a nail")
    danger = only(findings(CHEST, weak, FIGURES), "tipping")
    assert danger.severity is Severity.DANGER
    assert "a nail would hold" in danger.message


def test_a_tall_unit_is_never_fine_unanchored() -> None:
    assert worst_tip(TOWER).ratio > 1
    assert only(findings(TOWER, LOOSE, FIGURES), "tipping").severity is Severity.DANGER
    firm = only(findings(TOWER, FIRM, FIGURES), "tipping")
    assert firm.severity is Severity.WARNING
    heavy = replace(TOWER, mass=900.0)
    assert only(findings(heavy, LOOSE, FIGURES), "tipping").severity is Severity.DANGER
    just = replace(TOWER, height=TALL)
    assert only(findings(just, LOOSE, FIGURES), "tipping").severity is Severity.DANGER


def test_a_low_steady_unit_is_a_remark() -> None:
    low = FreeUnit("low", 900.0, 500.0, 500.0, 60.0)
    note = only(findings(low, LOOSE, FIGURES), "tipping")
    assert note.severity is Severity.NOTE
    assert "all the same" in note.message


def test_the_range_by_mass_is_given() -> None:
    found = only(findings(TOWER, LOOSE, FIGURES, masses=(40.0, 70.0)), "tipping")
    light, heavy = (worst_tip(replace(TOWER, mass=m)).ratio for m in (40.0, 70.0))
    assert found.spread.startswith(f"{light:.1f} times to {heavy:.1f} times")


def test_altered_furniture_is_computed_as_new() -> None:
    assert rules(findings(replace(CHEST, altered=True), LOOSE, FIGURES)) == [
        "tipping", "altered-furniture"]


def test_anchors_are_counted() -> None:
    need = anchor_needs(CHEST)
    assert (need.key, need.count) == ("anti_tip_anchor", ANCHORS)


@pytest.mark.parametrize(
    "wrong",
    [{"mass": 0.0}, {"depth": -1.0}, {"height": float("nan")}, {"foot": 420.0}, {"centre": 500.0},
     {"mass": 12.0}, {"centre_height": 900.0}],
)
def test_what_is_no_unit_is_refused(wrong: dict[str, float]) -> None:
    with pytest.raises(ClosetError):
        replace(CHEST, **wrong)
    with pytest.raises(ClosetError):
        Drawer(800.0, 0.0, 380.0, 150.0, 330.0)
    with pytest.raises(ClosetError):
        Drawer(800.0, 150.0, 380.0, 150.0, 330.0, -1.0)
    with pytest.raises(ClosetError):
        Leaf(300.0, 1100.0, 0.0)
