"""Criteria, units of the figures, and what the boards' kinds add."""

from __future__ import annotations

import pytest

from closetbench.core import grades
from closetbench.core.errors import ClosetError
from closetbench.core.figures import PSF, Figures
from closetbench.core.lengths import FEET_AND_INCHES, SIXTEENTHS
from closetbench.core.loads import CRITERIA, ShelfUse, clothes_on_rod, criterion
from closetbench.core.materials import MaterialKind
from tests.core.wooden import CATALOGUE, board


def test_every_use_has_a_criterion_with_a_source() -> None:
    assert set(CRITERIA) == set(ShelfUse)
    assert all(c.source for c in CRITERIA.values())


def test_nothing_known_is_no_criterion() -> None:
    assert criterion(None) is None
    assert criterion(None, None, 200) is None


def test_a_load_and_a_sag_of_ones_own() -> None:
    own = criterion(ShelfUse.BOOKS, 100.0, 300.0)
    assert own is not None
    # 100 kg/m² on half a square metre; no cap of somebody else's
    assert own.load(1000, 500) == pytest.approx(490.3, abs=0.1)
    assert own.load(3000, 2000) == pytest.approx(5884, abs=1)
    assert own.limit(900) == pytest.approx(3.0)
    assert "as you entered it" in own.source


@pytest.mark.parametrize(
    ("load", "over"),
    [(0.0, None), (-5.0, None), (float("nan"), None), (50.0, 0.0), (50.0, -100.0)],
)
def test_a_load_that_is_none_is_refused(load: float, over: float | None) -> None:
    with pytest.raises(ClosetError):
        criterion(None, load, over)


def test_a_load_needs_an_area() -> None:
    for length, depth in ((0, 300), (800, -1), (float("nan"), 300)):
        with pytest.raises(ClosetError, match="needs an area"):
            CRITERIA[ShelfUse.LINEN].load(length, depth)
    with pytest.raises(ClosetError):
        clothes_on_rod(2.0, 0.0)


def test_figures_in_both_systems() -> None:
    metric, inches = Figures(), Figures(SIXTEENTHS)
    assert metric.small(4.489) == "4.5 mm"
    assert inches.small(4.489) == '0.18"'
    assert metric.mass(10) == "10.0 kg"
    assert inches.mass(10) == "22 lb"
    assert (metric.force(100), inches.force(100)) == ("100 N", "22 lbf")
    assert (metric.on_area(40 * PSF), inches.on_area(40 * PSF)) == ("195 kg/m²", "40 lb/ft²")
    assert (metric.stress(10), inches.stress(10)) == ("10.0 N/mm²", "1450 psi")
    assert (metric.moment(1e5), inches.moment(1e5)) == ("100 N·m", "74 lbf·ft")
    assert Figures(FEET_AND_INCHES).inches
    assert metric.small_range(5, 3) == "3.0 mm to 5.0 mm"
    assert (metric.on_length(30), inches.on_length(30)) == ("30 kg/m", "20 lb/ft")


def test_every_kind_has_its_grade() -> None:
    assert set(grades.GRADES) == set(MaterialKind)
    for material in CATALOGUE.materials.values():
        low, high = grades.scatter(material, material.e_along)
        assert low <= material.e_along <= high
        first, usual, most = grades.grade(material).creep
        assert 1 <= first <= usual <= most
        assert 0 < grades.allowed_stress(material, True) < grades.grade(material).mor


def test_across_the_sheet_less_is_left() -> None:
    ply = CATALOGUE.material("ply18")
    share = ply.e_across / ply.e_along
    assert grades.stiffness(ply, False) == ply.e_across
    assert grades.allowed_stress(ply, False) == pytest.approx(
        grades.allowed_stress(ply, True) * share)
    assert grades.scatter(ply, ply.e_across) == pytest.approx((6960 * share, 8550 * share))


def test_damp_takes_its_share_or_is_refused() -> None:
    ply = CATALOGUE.material("ply18")
    assert grades.stiffness(ply, True, damp=True) == pytest.approx(0.85 * ply.e_along)
    assert grades.allowed_stress(ply, True, damp=True) == pytest.approx(
        0.75 * grades.allowed_stress(ply, True))
    for key in ("mdf18", "melamine18", "hardboard6"):
        with pytest.raises(ClosetError, match="dry, heated rooms"):
            grades.stiffness(CATALOGUE.material(key), True, damp=True)


def test_a_board_without_stiffness_is_refused() -> None:
    weak = board(2000)
    object.__setattr__(weak, "e_along", 0.0)
    with pytest.raises(ClosetError, match="stiffness"):
        grades.stiffness(weak, True)
