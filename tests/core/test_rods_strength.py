"""Rods: verdicts, the dangers, and what is refused."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from closetbench.core.errors import ClosetError
from closetbench.core.findings import Severity
from closetbench.core.loads import ROD_LONGEST
from closetbench.core.rods_strength import GRADES, Rod, RodKind, check, findings
from tests.core.wooden import CATALOGUE, FIGURES, only, rules

STEEL = Rod("rod", RodKind.STEEL, 27.0, 900.0, wall=1.2)


def test_a_good_rod_shows_its_figures_and_what_is_not_checked() -> None:
    found = list(findings(STEEL, CATALOGUE, FIGURES))
    assert rules(found) == ["rod-sag", "rod-screws"]
    assert [f.severity for f in found] == [Severity.NOTE, Severity.NOT_CHECKED]
    assert found[0].spread
    # half of 30 kg/m on 900 mm
    assert "132 N" in found[1].message


def test_an_overloaded_rod_is_a_danger() -> None:
    heavy = replace(STEEL, load=400.0)
    danger = only(findings(heavy, CATALOGUE, FIGURES), "rod-strength")
    assert danger.severity is Severity.DANGER
    result = check(heavy)
    assert result.stress > result.allowed
    # M = q·L²/8, with the tube's own weight
    own = math.pi / 4 * (27**2 - 24.6**2) * 7850e-6
    moment = (400 + own) * 9.80665 / 1000 * 900**2 / 8
    assert result.stress == pytest.approx(
        moment * 13.5 / (math.pi / 64 * (27**4 - 24.6**4)), rel=1e-9)
    assert "supports at most" in danger.fix


def test_no_reserve_for_the_load_of_tests_is_a_warning() -> None:
    pine = Rod("rod", RodKind.PINE, 31.75, 1150.0)
    high = pine
    while check(high).test <= check(high).allowed:
        high = replace(high, span=high.span + 20)
    assert check(high).stress <= check(high).allowed
    assert "rod-overload" in rules(findings(high, CATALOGUE, FIGURES))
    assert "rod-strength" not in rules(findings(high, CATALOGUE, FIGURES))


def test_a_pole_over_four_feet_sags_and_is_told_how_many_supports() -> None:
    pine = Rod("rod", RodKind.PINE, 31.75, 1800.0)
    sag = only(findings(pine, CATALOGUE, FIGURES), "rod-sag")
    assert sag.severity is Severity.WARNING
    assert "2 between the ends" in sag.fix
    assert "rod-supports" in rules(findings(pine, CATALOGUE, FIGURES))
    carried = replace(pine, supports=2)
    assert only(findings(carried, CATALOGUE, FIGURES), "rod-sag").severity is Severity.NOTE
    assert check(carried).support == pytest.approx(30 * 9.80665 * 0.6)


def test_longest_never_passes_the_standards_spacing() -> None:
    thick = Rod("rod", RodKind.STEEL, 60.0, 900.0, wall=3.0)
    assert check(thick).longest == ROD_LONGEST


def test_thin_rods_are_named() -> None:
    assert "rod-diameter" in rules(findings(Rod("r", RodKind.OAK, 25.0, 600.0), CATALOGUE, FIGURES))
    assert "rod-diameter" in rules(findings(replace(STEEL, diameter=25.0), CATALOGUE, FIGURES))
    assert "rod-diameter" not in rules(findings(replace(STEEL, diameter=26.99), CATALOGUE, FIGURES))


def test_wood_scatters_and_metal_hardly() -> None:
    pine = check(Rod("r", RodKind.PINE, 31.75, 900.0))
    assert pine.stiff < pine.sag < pine.soft
    steel = check(STEEL)
    assert steel.stiff == steel.sag == steel.soft
    assert all(g.source for g in GRADES.values())
    assert set(GRADES) == set(RodKind)


@pytest.mark.parametrize(
    ("wrong", "prop"),
    [({"span": -1.0}, "span"), ({"diameter": 0.0}, "diameter"), ({"load": 0.0}, "load"),
     ({"supports": -1}, "supports"), ({"wall": None}, "wall")],
)
def test_what_is_no_rod_is_refused(wrong: dict[str, float], prop: str) -> None:
    with pytest.raises(ClosetError) as caught:
        replace(STEEL, **wrong)
    assert caught.value.prop == prop
    with pytest.raises(ClosetError):
        check(replace(STEEL, wall=20.0))


def test_a_rod_without_reserve_warns_and_one_that_yields_is_a_danger() -> None:
    worn = replace(STEEL, span=1200.0, load=60.0)
    assert check(worn).allowed < check(worn).stress < 205
    assert only(findings(worn, CATALOGUE, FIGURES), "rod-strength").severity is Severity.WARNING
    bent = replace(worn, load=200.0)
    assert check(bent).stress > 205
    assert only(findings(bent, CATALOGUE, FIGURES), "rod-strength").severity is Severity.DANGER


def test_the_screws_of_a_support_are_checked_where_figures_are_published() -> None:
    held = only(findings(replace(STEEL, holder="ply18"), CATALOGUE, FIGURES), "rod-screws")
    assert held.severity is Severity.NOTE
    assert "by the density" in held.spread
    heavy = replace(STEEL, holder="ply18", load=400.0)
    assert only(findings(heavy, CATALOGUE, FIGURES), "rod-screws").severity is Severity.WARNING
    for holder in ("melamine18", None):
        said = only(findings(replace(STEEL, holder=holder), CATALOGUE, FIGURES), "rod-screws")
        assert said.severity is Severity.NOT_CHECKED
