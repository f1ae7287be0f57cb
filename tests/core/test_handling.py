"""Weights and lifting."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.errors import ClosetError
from closetbench.core.findings import Severity
from closetbench.core.handling import (
    AWKWARD,
    LOAD_CONSTANT,
    THREE_PEOPLE,
    TWO_PEOPLE,
    Grip,
    carcass_finding,
    part_findings,
    part_weight,
    people,
    recommended_weight,
    sheet_findings,
    weight_range,
)
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Panel
from closetbench.core.parts import LYING, Part, Place, Role
from tests.core.wooden import CATALOGUE, FIGURES, only, rules


def part(length: float, width: float, material: str = "mdf18", name: str = "p") -> Part:
    thickness = CATALOGUE.material(material).thickness
    panel = Panel(length, width, thickness, material)
    return Part(name, "c", Role.PANEL, panel, Place((0.0, 0.0, 0.0), *LYING))


def test_how_many_people() -> None:
    assert [people(m) for m in (23, 23.1, TWO_PEOPLE, 31, THREE_PEOPLE, 35)] == [1, 2, 2, 3, 3, 4]


def test_a_part_weighs_its_volume() -> None:
    assert part_weight(part(1000, 500), CATALOGUE) == pytest.approx(0.018 * 0.5 * 750)


def test_parts_are_grouped_by_people() -> None:
    parts = [part(2400, 800, name="a"), part(2400, 820, name="b"), part(2400, 950, name="c"),
             part(2400, 1200, name="d"), part(2000, 800, "hardboard3", "e"),
             part(1500, 800, name="f"), part(300, 300, name="g")]
    masses = [(p, part_weight(p, CATALOGUE)) for p in parts]
    found = part_findings(masses, CATALOGUE, FIGURES)
    assert rules(found) == ["heavy-part", "heavy-part", "heavy-part", "large-part", "awkward-part"]
    two, three, many, large, awkward = found
    assert two.parts == ("c: a", "c: b")
    assert (two.subject, two.value) == ("c: b", "26.6 kg")
    assert "two people, as do 1 others" in two.message
    assert three.parts == ("c: c",)
    assert "more than three people" in many.message
    assert large.parts == ("c: e",)
    assert awkward.parts == ("c: f",)
    assert all(f.severity is Severity.WARNING for f in found[:4])
    assert two.spread == "24.1 kg to 28.3 kg by density"


def test_a_carcass_that_one_can_lift_is_not_mentioned() -> None:
    assert carcass_finding("A", LOAD_CONSTANT, (20.0, 25.0), FIGURES) is None
    light, heavy = (
        carcass_finding("A", mass, (0.9 * mass, 1.1 * mass), FIGURES) for mass in (28.0, 60.0))
    assert light is not None
    assert light.severity is Severity.NOTE
    assert heavy is not None
    assert heavy.severity is Severity.WARNING


def test_sheets_are_named_once() -> None:
    found = sheet_findings(["mdf18", "mdf18", "hardboard3", "pine_1x4"], CATALOGUE, FIGURES)
    sheet = only(found, "heavy-sheet")
    assert sheet.value == "40.2 kg"
    assert "a whole sheet of 2440 mm x 1220 mm" in sheet.message
    assert "the heaviest that it is sold as weighs 78.2 kg" in sheet.message
    assert "cut to the strips" in sheet.fix
    # a small size that one person can lift does not hide a large one
    mdf = CATALOGUE.material("mdf18")
    also_small = replace(mdf, sheets=(replace(mdf.sheets[0], length=600.0), *mdf.sheets))
    assert sheet_findings(["mdf18"], Catalogue({"mdf18": also_small}), FIGURES) == [sheet]
    bare = replace(CATALOGUE.material("mdf18"), sheets=())
    assert sheet_findings(["mdf18"], Catalogue({"mdf18": bare}), FIGURES) == []


def test_density_ranges_hold_the_catalogues() -> None:
    for material in CATALOGUE.materials.values():
        low, high = weight_range(10.0, material)
        assert low <= 10.0 <= high


def test_the_equation_multiplies_down() -> None:
    best = recommended_weight(250, 750, 250, Grip.GOOD)
    assert best == pytest.approx(23.0)
    assert recommended_weight(100, 750, 100, Grip.GOOD) == best
    assert recommended_weight(500, 750, 250, Grip.GOOD) == pytest.approx(best / 2)
    assert recommended_weight(250, 750, 250, Grip.GOOD, twist=90) == pytest.approx(best * 0.712)
    assert recommended_weight(250, 750, 250, Grip.GOOD, frequency=0.5) == pytest.approx(best / 2)
    assert recommended_weight(250, 749, 250, Grip.FAIR) < 0.951 * best
    assert pytest.approx(11.9, abs=0.05) == AWKWARD


@pytest.mark.parametrize(
    ("reach", "height", "travel", "twist", "prop"),
    [(700, 700, 300, 0, "reach"), (400, 1800, 300, 0, "height of the hands"),
     (400, 700, -1, 0, "travel"), (400, 700, 300, 140, "twist"),
     (float("nan"), 700, 300, 0, "reach")],
)
def test_outside_its_range_the_equation_is_refused(
    reach: float, height: float, travel: float, twist: float, prop: str
) -> None:
    with pytest.raises(ClosetError) as caught:
        recommended_weight(reach, height, travel, Grip.GOOD, twist)
    assert caught.value.prop == prop
