"""Benches: members upright and flat, people on them, tops, and lids."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.bench_strength import (
    BENDING_ALLOWED,
    SHEAR_ALLOWED,
    Bench,
    check_member,
    check_rails,
    check_top,
    findings,
    seat_loads,
)
from closetbench.core.errors import ClosetError
from closetbench.core.figures import GRAVITY, PSI
from closetbench.core.findings import Severity
from closetbench.core.loads import SITTER
from closetbench.core.people import lid_findings
from tests.core.wooden import CATALOGUE, FIGURES, only, rules

STUD = CATALOGUE.material("stud_2x4")
BENCH = Bench("bench", "stud_2x4", 1000.0, 3, 38.1, 88.9, "pine_glued27", 200.0)


def test_upright_is_stiffer_and_stronger_than_flat_by_the_squares() -> None:
    loads = seat_loads(1000, 1)
    upright = check_member(STUD, 1000, 38.1, 88.9, loads)
    flat = check_member(STUD, 1000, 88.9, 38.1, loads)
    assert flat.bending / upright.bending == pytest.approx(88.9 / 38.1, rel=1e-9)
    # bending goes with the square of the proportion; shear takes a tenth off it
    assert flat.sag / upright.sag == pytest.approx((88.9 / 38.1) ** 2, rel=0.12)
    assert flat.shear == upright.shear


def test_bending_and_shear_by_hand() -> None:
    result = check_member(STUD, 1000, 38.1, 88.9, seat_loads(1000, 1))
    own = 450e-9 * 38.1 * 88.9 * 1000 * GRAVITY
    section = 38.1 * 88.9**2 / 6
    assert result.bending == pytest.approx((SITTER + own) * 250 / section, rel=1e-6)
    # somebody stands beside a support: all of one person in shear
    assert result.shear == pytest.approx(1.5 * SITTER / (38.1 * 88.9))
    # NDS Supplement Table 4A, spruce-pine-fir No. 2 (from memory): 875 and 135 psi
    assert result.bending_allowed == BENDING_ALLOWED == pytest.approx(875 * PSI)
    assert result.shear_allowed == SHEAR_ALLOWED == pytest.approx(135 * PSI)


def test_people_sit_side_by_side() -> None:
    assert [p.at for p in seat_loads(1000, 1)] == [500]
    assert [p.at for p in seat_loads(1600, 3)] == [300, 800, 1300]
    assert [p.at for p in seat_loads(900, 3)] == [150, 450, 750]
    assert seat_loads(900, 0) == ()
    assert replace(BENCH, span=1600.0).seats == 3
    assert replace(BENCH, span=300.0).seats == 1
    assert replace(BENCH, sitters=5).seats == 5


def test_two_rails_share_and_one_does_not() -> None:
    shared = check_rails(BENCH, CATALOGUE)
    alone = check_rails(replace(BENCH, rails=1), CATALOGUE)
    assert alone.bending == pytest.approx(2 * shared.bending, rel=0.02)
    assert shared.stiff < shared.sag < shared.soft


def test_a_strong_bench_shows_its_sag_only() -> None:
    found = list(findings(BENCH, CATALOGUE, FIGURES))
    assert rules(found) == ["bench-sag"]
    assert found[0].severity is Severity.NOTE
    assert found[0].spread


def test_rails_laid_flat_over_a_long_span_are_a_danger() -> None:
    flat = replace(BENCH, span=1800.0, wide=88.9, high=38.1)
    found = list(findings(flat, CATALOGUE, FIGURES))
    danger = only(found, "bench-strength")
    assert danger.severity is Severity.DANGER
    assert "in bending" in danger.message
    assert "set the rails upright" in danger.fix
    assert only(found, "bench-sag").severity is Severity.WARNING


def test_a_short_weak_rail_is_a_danger_in_shear() -> None:
    low = replace(BENCH, span=120.0, rails=1, wide=38.1, high=25.0)
    assert "in shear" in only(findings(low, CATALOGUE, FIGURES), "bench-strength").message


def test_a_thin_top_is_a_danger() -> None:
    thin = replace(BENCH, top="mdf12", top_span=500.0)
    found = list(findings(thin, CATALOGUE, FIGURES))
    assert only(found, "bench-top-strength").severity is Severity.DANGER
    assert only(found, "bench-top-sag").severity is Severity.WARNING
    along = replace(BENCH, top="ply18", top_span=600.0)
    across = replace(along, top_along=False)
    assert check_top(across, CATALOGUE)[0] > 4 * check_top(along, CATALOGUE)[0]


def test_what_is_not_known_is_not_checked() -> None:
    nobody = list(findings(replace(BENCH, sitters=0), CATALOGUE, FIGURES))
    assert [f.severity for f in nobody] == [Severity.NOT_CHECKED]
    board = list(findings(replace(BENCH, material="ply18"), CATALOGUE, FIGURES))
    assert only(board, "bench-rails").severity is Severity.NOT_CHECKED
    with pytest.raises(ClosetError, match="solid lumber"):
        check_member(CATALOGUE.material("ply18"), 1000, 18, 90, [])


@pytest.mark.parametrize(
    "wrong", [{"span": -5.0}, {"rails": 0}, {"sitters": -1}, {"wide": 0.0}, {"top_span": 0.0}]
)
def test_what_is_no_bench_is_refused(wrong: dict[str, float]) -> None:
    with pytest.raises(ClosetError):
        replace(BENCH, **wrong)
    with pytest.raises(ClosetError):
        check_rails(replace(BENCH, material="no_such"), CATALOGUE)


def test_a_lid_can_fall_and_shut_the_air_out() -> None:
    assert lid_findings(BENCH, CATALOGUE, FIGURES) == []
    lid = replace(BENCH, lid=True, volume=80.0)
    found = lid_findings(lid, CATALOGUE, FIGURES)
    assert rules(found) == ["lid-support", "lid-air"]
    assert {f.severity for f in found} == {Severity.DANGER}
    assert all("licensed professional" in f.message for f in found)
    assert lid_findings(replace(lid, lid_support=True, vents=True), CATALOGUE, FIGURES) == []
    assert lid_findings(replace(lid, lid_support=True, volume=20.0), CATALOGUE, FIGURES) == []
    unknown = only(lid_findings(replace(lid, volume=None), CATALOGUE, FIGURES), "lid-air")
    assert unknown.severity is Severity.NOT_CHECKED
