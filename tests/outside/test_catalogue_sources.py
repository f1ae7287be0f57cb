"""The shipped catalogue against published sizes, tolerances, densities and stiffness."""

from __future__ import annotations

import pytest

from closetbench.core.materials import Material, MaterialKind, thickness_limits
from closetbench.resources import load_catalogue

PSI = 0.006894757  # N/mm²
CATALOGUE = load_catalogue()
ALL = list(CATALOGUE.materials.values())


@pytest.mark.parametrize(
    ("key", "thickness", "width"),
    # PS 20-20, American Softwood Lumber Standard, minimum dressed sizes, dry, inches.
    [("pine_1x4", 3 / 4, 3.5), ("pine_1x6", 3 / 4, 5.5), ("stud_2x4", 1.5, 3.5)],
)
def test_lumber_is_dressed_to_ps_20(key: str, thickness: float, width: float) -> None:
    material = CATALOGUE.material(key)
    assert material.nominal == pytest.approx(thickness * 25.4)
    assert [s.width for s in material.sheets] == pytest.approx(
        [width * 25.4] * len(material.sheets)
    )
    assert material.by_length
    # PS 20: lengths go up by whole feet.
    assert all(round(s.length / 304.8, 9).is_integer() for s in material.sheets)


@pytest.mark.parametrize(
    ("key", "least", "most"),
    # PS 1-19, structural plywood, thickness limits of performance categories 1/4, 15/32
    # and 23/32, unsanded, touch-sanded or overlaid, inches.
    [("ply_1_4", 0.219, 0.281), ("ply_1_2", 0.438, 0.500), ("ply_3_4", 0.688, 0.750)],
)
def test_inch_plywood_is_a_ps_1_category(key: str, least: float, most: float) -> None:
    material = CATALOGUE.material(key)
    assert least * 25.4 < material.nominal < most * 25.4
    low, high, _ = thickness_limits(material.kind, material.nominal)
    assert low <= least * 25.4 + 0.013
    assert high >= most * 25.4 - 0.013
    for measured in (least * 25.4, most * 25.4):
        assert material.with_measured(measured).thickness == measured


@pytest.mark.parametrize(
    ("nominal", "more", "less"),
    # EN 315:2000, sanded plywood, limit deviations as mills print them, mm.
    [(4, 0.3, 0.5), (12, 0.5, 0.7), (18, 0.7, 0.9), (24, 0.9, 1.1), (30, 1.1, 1.3)],
)
def test_metric_plywood_takes_what_en_315_allows(nominal: float, more: float, less: float) -> None:
    low, high, _ = thickness_limits(MaterialKind.PLYWOOD, nominal)
    assert low <= nominal - less + 0.05
    assert high >= nominal + more - 0.05


def test_lumber_takes_what_en_336_allows() -> None:
    # EN 336:2013, permitted deviations, tolerance class 2 (planed): ±1 mm up to 100 mm,
    # ±1.5 mm above.
    for nominal, deviation in [(38.0, 1.0), (120.0, 1.5)]:
        low, high, _ = thickness_limits(MaterialKind.LUMBER, nominal)
        assert low == pytest.approx(nominal - deviation)
        assert high >= nominal + deviation
    # PS 20-20: a 2x surfaced green is 1-9/16 in.
    assert thickness_limits(MaterialKind.LUMBER, 38.1)[1] == pytest.approx(1.5625 * 25.4)


def test_mdf_holds_its_published_tolerance() -> None:
    # ANSI A208.2-2009: panel average within 0.125 mm of the specified thickness. EN 622-1
    # (from memory): ±0.2 mm up to 19 mm. A board within either is taken without a doubt.
    for measured in (18 - 0.2, 18 - 0.125, 18 + 0.125, 18 + 0.2):
        assert CATALOGUE.material("mdf18").with_measured(measured).findings() == ()


@pytest.mark.parametrize(
    ("key", "length", "width"),
    # PS 1-19: 4 ft by 8 ft panels. Particleboard and MDF for the shop come an inch over
    # (49 in by 97 in): common practice, no published source.
    [
        ("ply_1_4", 2438.4, 1219.2),
        ("ply_1_2", 2438.4, 1219.2),
        ("ply_3_4", 2438.4, 1219.2),
        ("mdf_3_4", 2463.8, 1244.6),
        ("melamine_3_4", 2463.8, 1244.6),
    ],
)
def test_inch_sheets_are_exact(key: str, length: float, width: float) -> None:
    (sheet,) = CATALOGUE.material(key).sheets
    assert (sheet.length, sheet.width) == (length, width)


DENSITIES = {
    # Particleboard, ANSI A208.1 class M: 640 to 800 kg/m³.
    MaterialKind.MELAMINE: (640, 800),
    # MDF, Wood Handbook FPL-GTR-282 (2021) Table 12-1: specific gravity 0.7 to 0.9; trade
    # range 680 to 800 kg/m³, common practice, no published source.
    MaterialKind.MDF: (680, 800),
    # Hardboard, the same table: specific gravity 0.9 to 1.0, from memory.
    MaterialKind.HARDBOARD: (900, 1000),
    # Plywood, the same table: specific gravity 0.4 to 0.6; birch up to 700 kg/m³.
    MaterialKind.PLYWOOD: (400, 700),
    # Softwoods, FPL-GTR-282 Table 5-3b: specific gravity 0.35 to 0.59 at 12 % moisture,
    # so 1.12 times that in mass.
    MaterialKind.LUMBER: (390, 665),
}
STIFFNESS = {
    # Wood Handbook FPL-GTR-282 (2021) Table 12-1, E in million psi, as upper ends: the
    # catalogue uses standards' minima, which lie below these means.
    MaterialKind.MELAMINE: (0.22, 0.60),
    MaterialKind.MDF: (0.30, 0.52),
    MaterialKind.HARDBOARD: (0.45, 0.80),
    # From the 950,000 psi of AWS 2009 4.4.14.10 to birch, Handbook of Finnish Plywood.
    MaterialKind.PLYWOOD: (0.94, 1.56),
    # Table 5-3b, softwoods from redwood to longleaf pine.
    MaterialKind.LUMBER: (1.10, 1.98),
}


@pytest.mark.parametrize("material", ALL, ids=[m.key for m in ALL])
def test_density_and_stiffness_are_in_published_ranges(material: Material) -> None:
    low, high = DENSITIES[material.kind]
    assert low <= material.density <= high
    soft, stiff = STIFFNESS[material.kind]
    rounding = 0.005  # the handbook's GPa and million psi are rounded apart
    assert soft * 1e6 * PSI * (1 - rounding) <= material.e_along
    assert material.e_along <= stiff * 1e6 * PSI * (1 + rounding)
    assert material.e_across <= material.e_along


def test_stiffness_is_the_cited_figure() -> None:
    # EN 312 type P2 over 13 to 20 mm; EN 622-5 general purpose over 9 to 12 and 12 to 19 mm.
    assert CATALOGUE.material("melamine18").e_along == 1600
    assert CATALOGUE.material("mdf12").e_along == 2500
    assert CATALOGUE.material("mdf18").e_along == 2200
    # AWS 2009 4.4.14.10: Douglas-fir veneer core, 950,000 psi.
    assert CATALOGUE.material("ply_3_4").e_along == pytest.approx(950_000 * PSI, rel=1e-3)
    # FPL-GTR-282 Table 5-3b, ponderosa pine: 1.29 million psi, specific gravity 0.40.
    pine = CATALOGUE.material("pine_1x4")
    assert pine.e_along == pytest.approx(1.29e6 * PSI, rel=1e-3)
    assert pine.density == pytest.approx(0.40 * 1120, rel=0.01)


def test_plywood_is_four_to_six_times_as_stiff_along_the_face_grain() -> None:
    # Panel EI along and across, lb-in²/ft of 5-ply spans 24/0, 32/16 and 48/24 (APA Panel
    # Design Specification D510, as quoted): 66,000/11,000, 125,000/25,000, 440,000/91,500.
    ratios = [66_000 / 11_000, 125_000 / 25_000, 440_000 / 91_500]
    for material in ALL:
        if material.kind is MaterialKind.PLYWOOD and not material.key.startswith("birch"):
            ratio = material.e_along / material.e_across
            assert min(ratios) - 0.01 <= ratio <= max(ratios) + 0.02


def test_an_mdf_sheet_weighs_what_the_handbooks_say() -> None:
    # 18 mm MDF of 1220 x 2440 mm at 750 kg/m³: 40.2 kg, above the 23 kg load constant of
    # the revised NIOSH lifting equation (NIOSH 94-110), so two people carry it.
    weight = CATALOGUE.material("mdf18").weight(2440, 1220)
    assert weight == pytest.approx(40.2, abs=0.05)
