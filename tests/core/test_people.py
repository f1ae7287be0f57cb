"""Reach, light, outlets, paint, and the cautions of the work."""

from __future__ import annotations

import pytest

from closetbench.core.errors import ClosetError
from closetbench.core.findings import Severity
from closetbench.core.movement import change
from closetbench.core.people import (
    CHILD_REACH,
    LIGHT_CLEARANCE,
    ChildAge,
    Level,
    Light,
    child_findings,
    light_findings,
    reach_findings,
    rod_findings,
    room_findings,
    within_reach,
    work_findings,
)
from closetbench.core.rods_strength import Rod, RodKind
from tests.core.wooden import FIGURES, only, rules

LEVELS = [Level("low", 200.0), Level("middle", 900.0), Level("high", 1900.0)]


def test_reach_of_somebody_seated() -> None:
    note = only(reach_findings(LEVELS, FIGURES), "reach")
    assert note.parts == ("low", "high")
    assert note.value == "1900 mm"
    assert "not bound" in note.source
    assert reach_findings([LEVELS[1]], FIGURES) == []
    assert reach_findings([], FIGURES) == []


def test_children() -> None:
    unknown = only(child_findings(LEVELS, None, FIGURES), "children-unknown")
    assert unknown.severity is Severity.NOT_CHECKED
    assert child_findings(LEVELS, (), FIGURES) == []
    ages = (ChildAge.THREE_TO_FOUR, ChildAge.NINE_TO_TWELVE, ChildAge.THREE_TO_FOUR)
    found = child_findings(LEVELS, ages, FIGURES)
    assert rules(found) == ["children-climb", "child-reach", "child-reach"]
    assert found[1].parts == ("middle",)
    assert found[0].severity is Severity.WARNING
    assert set(CHILD_REACH) == set(ChildAge)
    assert within_reach(914.4, ChildAge.THREE_TO_FOUR)
    assert not within_reach(916.0, ChildAge.THREE_TO_FOUR)


def test_rods_too_high_or_low_unless_a_child_uses_them() -> None:
    low = Rod("low rod", RodKind.STEEL, 27.0, 600.0, wall=1.2, height=800.0)
    usual = Rod("rod", RodKind.STEEL, 27.0, 600.0, wall=1.2, height=1650.0)
    unknown = Rod("rod?", RodKind.STEEL, 27.0, 600.0, wall=1.2)
    assert rules(rod_findings([low, usual], None, FIGURES)) == ["rod-height"]
    assert rod_findings([low], (ChildAge.FIVE_TO_EIGHT,), FIGURES) == []
    assert only(rod_findings([unknown], None, FIGURES), "rod-height").severity is (
        Severity.NOT_CHECKED)


@pytest.mark.parametrize(
    ("light", "clearance", "severity"),
    [
        (None, None, Severity.NOT_CHECKED),
        (Light.SURFACE_ENCLOSED, None, Severity.NOT_CHECKED),
        (Light.SURFACE_ENCLOSED, 300.0, Severity.DANGER),
        (Light.SURFACE_ENCLOSED, 305.0, None),
        (Light.SURFACE_FLUORESCENT, 100.0, Severity.DANGER),
        (Light.RECESSED_ENCLOSED, 160.0, None),
        (Light.RECESSED_FLUORESCENT, 0.0, Severity.DANGER),
        (Light.IDENTIFIED, None, None),
        (Light.OPEN_LAMP, 2000.0, Severity.DANGER),
        (Light.OPEN_LAMP, None, Severity.DANGER),
        (Light.NONE, None, None),
    ],
)
def test_the_light(light: Light | None, clearance: float | None, severity: Severity | None) -> None:
    # NEC 410.16(C) as printed in a state's amendment (read): 12 in from surface-mounted
    # incandescent and LED, 6 in from the others; open lamps and pendants not at all
    found = light_findings(light, clearance, FIGURES)
    assert [f.severity for f in found] == ([] if severity is None else [severity])
    assert all("licensed professional" in f.message and "NEC 410.16" in f.source for f in found)
    assert {Light.NONE, Light.OPEN_LAMP, *LIGHT_CLEARANCE} == set(Light)


def test_outlets_and_paint() -> None:
    assert [f.severity for f in room_findings(None, None)] == [Severity.NOT_CHECKED] * 2
    assert room_findings(False, False) == []
    outlets, paint = room_findings(True, True)
    assert (outlets.severity, paint.severity) == (Severity.WARNING, Severity.DANGER)
    assert "lead" in paint.message
    assert "40 CFR 745" in paint.source
    assert all("licensed professional" in f.message for f in (outlets, paint))


def test_cautions_come_where_they_apply() -> None:
    assert work_findings(False, False) == []
    assert rules(work_findings(True, False)) == ["dust", "saw"]
    assert rules(work_findings(True, True)) == ["dust", "saw", "router"]
    assert all(f.source for f in work_findings(True, True))


def test_moisture_outside_the_equation_is_refused() -> None:
    with pytest.raises(ClosetError, match="6 to 14"):
        change(300, 0.002, 4, 12)
