"""Beams and sections against general structural libraries.

structures.json holds what PyNiteFEA (beams), sectionproperties (sections) and scikit-fem
(plane stress and plates) say; record_structures.py wrote it. Where all three are at hand, all of
it is computed again, so that the record itself is checked; it was, with the versions named in it.
"""

from __future__ import annotations

import importlib.util
import json
from pathlib import Path
from typing import Any

import pytest

from closetbench.core.beams import (
    Ends,
    LineLoad,
    Piece,
    PointLoad,
    Section,
    bend,
    circle,
    composite,
    deflection,
    rectangle,
    tube,
)
from closetbench.core.wall_borne import strip_of

RECORD: dict[str, Any] = json.loads(
    Path(__file__).with_name("structures.json").read_text(encoding="utf-8")
)
RIGID = 1e15
"""A shear stiffness beyond any influence: the library's beams have no shear deflection."""


def shelf() -> Section:
    plain = rectangle(300, 18, 2500, 500)
    return Section(plain.ei, RIGID, plain.fibres)


@pytest.mark.parametrize("name", RECORD["beams"])
def test_beams_bend_as_finite_elements_do(name: str) -> None:
    case = RECORD["beams"][name]
    loads: list[PointLoad | LineLoad] = [PointLoad(*p) for p in case.get("points", ())]
    loads += [LineLoad(*line) for line in case.get("lines", ())]
    ends = Ends.CLAMPED if case.get("clamped") else Ends.SIMPLE
    found, said = bend(shelf(), 800, loads, ends), case["result"]
    assert found.deflection == pytest.approx(said["deflection"], rel=1e-4)
    assert found.moment == pytest.approx(said["moment"], rel=1e-4)
    assert found.left == pytest.approx(said["left"], rel=1e-6)
    assert found.right == pytest.approx(said["right"], rel=1e-6)


def test_sections_are_as_stiff_as_the_library_says() -> None:
    said = RECORD["sections"]
    board = Piece(300, 18, 0, 2500, 500)
    lip = Piece(18, 40, -22, 2500, 500)
    oak = Piece(19, 40, -22, 12550, 700)
    cleat = Piece(18, 60, -60, 8890, 500)
    for name, pieces in {
        "shelf": [board], "shelf and lip": [board, lip], "shelf and oak lip": [board, oak],
        "shelf and pine cleat": [board, cleat], "shelf, lip and cleat": [board, lip, cleat],
    }.items():
        assert composite(pieces).ei == pytest.approx(said[name], rel=1e-6), name
    # the library draws a round with 256 sides
    assert tube(27, 1.245, 200e3, 77e3).ei == pytest.approx(said["tube"], rel=1e-3)
    assert circle(31.75, 8890, 500).ei == pytest.approx(said["pole"], rel=1e-3)


def test_shear_areas_are_near_those_of_the_library() -> None:
    # Wood Handbook FPL-GTR-190 eq. 9-4 has 9/10 of a round's area, warping theory 6/7.
    said = RECORD["shear areas"]
    assert rectangle(89, 38, 1000, 1).ga == pytest.approx(said["rectangle"][1], rel=1e-4)
    assert circle(31.75, 1000, 1).ga == pytest.approx(said["round"][1], rel=0.06)
    assert tube(27, 1.245, 1000, 1).ga == pytest.approx(said["tube"][1], rel=0.01)


def test_deep_beams_sag_as_plates_in_plane_stress_do() -> None:
    # shear is 12 % of the deflection at a span of 4 heights, 0.5 % at 20
    for case in RECORD["plane stress"]:
        span, height = case["span"], case["height"]
        assert deflection(rectangle(1, height, 2500, 1250), span, span) == pytest.approx(
            case["deflection"], rel=1e-3
        )


def test_the_record_says_with_what_it_was_made_and_holds_when_made_again() -> None:
    assert set(RECORD["recorded with"]) == {"PyNiteFEA", "sectionproperties", "scikit-fem"}
    modules = ("Pynite", "sectionproperties", "skfem")
    if all(importlib.util.find_spec(name) for name in modules):
        from tests.outside.record_structures import record

        again = record()
        for name, case in RECORD["beams"].items():
            assert again["beams"][name]["result"] == pytest.approx(case["result"], rel=1e-6)
        assert again["sections"] == pytest.approx(RECORD["sections"], rel=1e-6)
        for plate, found in zip(RECORD["corner plates"], again["corner plates"], strict=True):
            assert found["deflection"] == pytest.approx(plate["deflection"], rel=1e-6)


@pytest.mark.parametrize("case", RECORD["corner plates"], ids=lambda c: str(c["legs"]))
def test_corner_shelves_sag_less_as_plates_than_as_strips(case: dict[str, Any]) -> None:
    # Kirchhoff plates of E 2500 N/mm², 18 mm, 1e-3 N/mm², on two walls; no tolerance: the
    # strips have to be on the safe side, and within three times of the plate
    (a, b), (dx, dy) = case["legs"], case["cut"]
    span, width, share = strip_of((a, b))
    out = 1.0 if dx else 2.0
    load = 1e-3 * (a * b - dx * dy) * share
    bar = rectangle(width, 18, 2500, RIGID)
    sag = out * deflection(bar, span, load)
    assert case["deflection"] < sag < 3 * case["deflection"]
