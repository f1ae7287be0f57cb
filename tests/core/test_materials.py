from __future__ import annotations

import os
from dataclasses import replace
from pathlib import Path

import pytest

from closetbench.core.catalogue import read_catalogue
from closetbench.core.errors import CatalogueError
from closetbench.core.findings import Severity
from closetbench.core.lengths import THIRTY_SECONDS
from closetbench.core.materials import (
    Catalogue,
    EdgeBand,
    HardwareItem,
    Material,
    MaterialKind,
    SheetSize,
    thickness_limits,
)
from closetbench.resources import RESOURCES, load_catalogue

PLY18 = Material(
    key="ply18",
    title="plywood 18 mm",
    kind=MaterialKind.PLYWOOD,
    nominal=18.0,
    measured=None,
    grained=True,
    density=600.0,
    e_along=6960.0,
    e_across=1390.0,
    sheets=(SheetSize(2440, 1220, 60.0),),
    trim=5.0,
    band="veneer",
    needs_band=True,
    source="invented",
)
BASE = Catalogue(
    {"ply18": PLY18},
    {"veneer": EdgeBand("veneer", "veneer band", 0.6, 22, 0.8)},
    {"pin": HardwareItem("pin", "shelf pin", 50, 4.0)},
    "cu",
)
NEW = """
currency = "EUR"
[material.mdf9]
title = "MDF 9 mm"
kind = "mdf"
nominal = 9
grained = false
density = 760
e_along = 2700
e_across = 2700
sheets = [{ length = "96 in", width = "4 ft", cost = 20 }, { length = 2800, width = 2070 }]
source = "invented"
"""


def test_thickness_is_measured_where_it_was_measured() -> None:
    assert PLY18.thickness == 18.0
    assert PLY18.with_measured(17.6).thickness == 17.6


def test_weight_is_volume_times_density() -> None:
    assert PLY18.weight(1000, 500) == pytest.approx(0.5 * 0.018 * 600)
    assert PLY18.with_measured(17.0).weight(1000, 500) == pytest.approx(0.5 * 0.017 * 600)


@pytest.mark.parametrize("value", [25.0, 12.0, 0.0, -18.0, float("nan")])
def test_a_thickness_that_contradicts_the_nominal_is_refused(value: float) -> None:
    with pytest.raises(CatalogueError) as caught:
        PLY18.with_measured(value)
    error = caught.value
    assert (error.subject, error.prop) == ("ply18", "measured")
    assert "16.56 mm to 19.29 mm" in error.limit
    assert "PS 1-19" in error.limit


def test_the_reading_margin_is_believed_but_doubted() -> None:
    thin = PLY18.with_measured(16.8)
    (finding,) = thin.findings()
    assert finding.rule == "thickness-out-of-tolerance"
    assert finding.severity is Severity.WARNING
    assert PLY18.with_measured(17.6).findings() == ()


def test_an_unmeasured_board_is_a_finding_in_the_users_unit() -> None:
    (finding,) = PLY18.findings()
    assert finding.rule == "thickness-not-measured"
    assert (finding.value, finding.limit) == ("18 mm", "17.06 mm to 18.79 mm")
    (finding,) = PLY18.findings(THIRTY_SECONDS)
    assert finding.value == '23/32"'


@pytest.mark.parametrize("kind", list(MaterialKind))
@pytest.mark.parametrize("nominal", [3.2, 6.0, 12.0, 18.0, 19.05, 25.0, 38.1])
def test_limits_hold_the_nominal(kind: MaterialKind, nominal: float) -> None:
    low, high, source = thickness_limits(kind, nominal)
    assert 0 < low < nominal < high
    assert source


@pytest.mark.parametrize(
    ("prop", "value"),
    [
        ("key", "ply 18"),
        ("title", " "),
        ("nominal", 0.0),
        ("nominal", -18.0),
        ("nominal", 1800.0),
        ("density", 0.6),
        ("density", float("inf")),
        ("e_along", 0.0),
        ("e_across", float("nan")),
        ("trim", -1.0),
        ("trim", 610.0),
    ],
)
def test_values_that_no_board_has_are_refused(prop: str, value: object) -> None:
    with pytest.raises(CatalogueError) as caught:
        replace(PLY18, **{prop: value})  # type: ignore[arg-type]
    assert caught.value.prop == prop


@pytest.mark.parametrize(
    ("length", "width", "cost", "prop"),
    [(2.44, 1.22, None, "length"), (2440, 0, None, "width"), (2440, 1220, -1.0, "cost")],
)
def test_sheets_that_cannot_be_are_refused(
    length: float, width: float, cost: float | None, prop: str
) -> None:
    with pytest.raises(CatalogueError) as caught:
        SheetSize(length, width, cost)
    assert caught.value.prop == prop


def test_bands_and_hardware_are_checked() -> None:
    with pytest.raises(CatalogueError, match="thickness"):
        EdgeBand("b", "band", 0, 22)
    with pytest.raises(CatalogueError, match="cost_per_m"):
        EdgeBand("b", "band", 1, 22, -0.1)
    with pytest.raises(CatalogueError, match="pack"):
        HardwareItem("h", "screw", 0)


def test_boards_go_by_length_and_panels_by_sheet() -> None:
    board = replace(PLY18, kind=MaterialKind.LUMBER, sheets=(SheetSize(2438.4, 285.75),))
    assert board.by_length
    assert not replace(board, sheets=(SheetSize(2000, 600),)).by_length
    assert not replace(board, sheets=()).by_length
    assert not PLY18.by_length


def test_looking_up_names_the_nearest() -> None:
    assert BASE.material("ply18") is PLY18
    assert BASE.item("pin").pack == 50
    with pytest.raises(CatalogueError) as caught:
        BASE.material("ply-18", subject="left side")
    assert (caught.value.subject, caught.value.prop) == ("left side", "material")
    assert caught.value.limit.endswith("nearest: ply18")
    with pytest.raises(CatalogueError, match="known: veneer"):
        BASE.band("x")


def test_a_new_entry_is_read_whole() -> None:
    material = read_catalogue(NEW, "mine.toml").material("mdf9")
    assert material.kind is MaterialKind.MDF
    assert material.sheets == (SheetSize(2438.4, 1219.2, 20.0), SheetSize(2800.0, 2070.0))
    assert (material.measured, material.trim, material.band, material.needs_band) == (
        None,
        0.0,
        "",
        False,
    )


def test_a_single_field_over_ours_is_enough() -> None:
    merged = read_catalogue("[material.ply18]\nmeasured = 17.6\n", "mine.toml", BASE)
    assert merged.material("ply18") == PLY18.with_measured(17.6)
    assert merged.bands == BASE.bands
    assert merged.currency == "cu"
    assert BASE.material("ply18").measured is None


def test_a_measured_thickness_may_be_inches() -> None:
    merged = read_catalogue("[material.ply18]\nmeasured = '11/16 in'\n", "mine.toml", BASE)
    assert merged.material("ply18").measured == 17.4625


def test_changed_stiffness_does_not_keep_our_source() -> None:
    merged = read_catalogue("[material.ply18]\ne_along = 9000\n", "mine.toml", BASE)
    assert merged.material("ply18").source == "invented; changed in mine.toml"


def test_another_currency_drops_the_prices_that_were_not_given_in_it() -> None:
    text = 'currency = "EUR"\n[hardware.pin]\ncost = 3\n[material.ply18]\nmeasured = 17.6\n'
    merged = read_catalogue(text, "mine.toml", BASE)
    assert merged.currency == "EUR"
    assert merged.item("pin").cost == 3.0
    assert merged.material("ply18").sheets[0].cost is None
    assert merged.band("veneer").cost_per_m is None
    assert merged.findings() == ()


def test_invented_prices_are_a_finding() -> None:
    (finding,) = BASE.findings()
    assert finding.rule == "invented-prices"


def test_merged_adds_and_replaces_whole_entries() -> None:
    over = read_catalogue(NEW, "mine.toml")
    merged = BASE.merged(over)
    assert set(merged.materials) == {"ply18", "mdf9"}
    assert BASE.merged(Catalogue()).materials == BASE.materials


@pytest.mark.parametrize(
    ("text", "subject", "prop", "limit"),
    [
        ("x = [", "f.toml", "text", ""),
        ("[materials.ply18]\nmeasured = 17.6", "f.toml", "materials", "nearest: material"),
        ("material = 3", "f.toml", "material", "must be a table"),
        ("[material]\nply18 = 3", "f.toml", "material.ply18", "must be a table"),
        ("currency = 3", "f.toml", "currency", "quotation marks"),
        ('currency = " "', "f.toml", "currency", "such as EUR"),
        ("[material.ply18]\nmesured = 17", "f.toml [material.ply18]", "mesured", "measured"),
        ("[material.ply18]\nmeasured = 25", "f.toml [material.ply18]", "measured", "PS 1-19"),
        ("[material.ply18]\nmeasured = true", "f.toml [material.ply18]", "measured", "number"),
        ("[material.ply18]\nmeasured = '3/4'", "f.toml [material.ply18]", "measured", "inches"),
        ("[material.ply18]\nnominal = -18", "f.toml [material.ply18]", "nominal", "from 0.5"),
        ("[material.ply18]\nnominal = nan", "f.toml [material.ply18]", "nominal", "from 0.5"),
        ("[material.ply18]\ngrained = 1", "f.toml [material.ply18]", "grained", "true or false"),
        ("[material.ply18]\ntitle = 1", "f.toml [material.ply18]", "title", "quotation marks"),
        ("[material.ply18]\nkind = 'wood'", "f.toml [material.ply18]", "kind", "melamine"),
        ("[material.ply18]\nband = 'x'", "f.toml [material.ply18]", "band", "known: veneer"),
        ("[material.ply18]\nsheets = []", "f.toml [material.ply18]", "sheets", "must be a list"),
        (
            "[material.ply18]\nsheets = [3]",
            "f.toml [material.ply18] sheet 1",
            "sheets",
            "must be a table",
        ),
        (
            "[material.ply18]\nsheets = [{ length = 2440 }]",
            "f.toml [material.ply18] sheet 1",
            "width",
            "must state it",
        ),
        (
            "[material.ply18]\nsheets = [{ length = 0, width = 1220 }]",
            "f.toml [material.ply18] sheet 1",
            "length",
            "from 50",
        ),
        (
            "[material.oak]\ntitle = 'oak'",
            "f.toml [material.oak]",
            "kind",
            "must state it; known: ply18",
        ),
        ("[material.ply81]\ntitle = 'x'", "f.toml [material.ply81]", "kind", "nearest: ply18"),
        ("[hardware.pin]\npack = 2.5", "f.toml [hardware.pin]", "pack", "whole number"),
        ("[hardware.pin]\ncost = 2.5", "f.toml", "currency", "prices must state"),
        ("[band.veneer]\nwidth = 0", "f.toml [band.veneer]", "width", "from 5"),
        ("[material.'ply 18']\ntitle = 'x'", "f.toml [material.ply 18]", "kind", "state it"),
    ],
)
def test_what_is_wrong_in_a_file_is_named(text: str, subject: str, prop: str, limit: str) -> None:
    with pytest.raises(CatalogueError) as caught:
        read_catalogue(text, "f.toml", BASE)
    assert (caught.value.subject, caught.value.prop) == (subject, prop)
    assert limit in caught.value.limit


def test_the_shipped_catalogue_is_whole() -> None:
    catalogue = load_catalogue()
    assert (RESOURCES / "catalogue").is_dir()
    assert {m.kind for m in catalogue.materials.values()} == set(MaterialKind)
    assert catalogue is load_catalogue()
    for material in catalogue.materials.values():
        assert material.sheets
        assert material.source
        assert all(sheet.cost for sheet in material.sheets)
        if material.needs_band:
            assert catalogue.band(material.band).width >= material.nominal + 2
    assert catalogue.findings()


def test_a_users_file_is_laid_over_ours_and_read_again_when_it_changes(tmp_path: Path) -> None:
    path = tmp_path / "mine.toml"
    path.write_bytes(b"\xef\xbb\xbf[material.ply18]\r\nmeasured = 17.6\r\n")
    first = load_catalogue(path)
    assert first.material("ply18").thickness == 17.6
    assert load_catalogue(path) is first
    path.write_text("[material.ply18]\nmeasured = 17.55\n")
    os.utime(path, ns=(1, 1))
    assert load_catalogue(path).material("ply18").thickness == 17.55
    assert load_catalogue().material("ply18").measured is None


def test_a_users_file_that_cannot_be_read_is_named(tmp_path: Path) -> None:
    latin = tmp_path / "latin.toml"
    latin.write_bytes("# Büro\n".encode("latin-1"))
    for path in (tmp_path / "none.toml", tmp_path, latin):
        with pytest.raises(CatalogueError) as caught:
            load_catalogue(path)
        assert caught.value.subject == str(path)
        assert "cannot be read" in caught.value.limit
