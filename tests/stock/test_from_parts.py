"""Parts as rectangles to saw, and the catalogue's sheets as stock."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.errors import CatalogueError
from closetbench.core.materials import Catalogue, Material, MaterialKind, SheetSize
from closetbench.core.panel import Band, Grain, Panel, Rim
from closetbench.core.parts import LYING, Part, Place, Role
from closetbench.stock.from_parts import cut_parts, stock_sheets
from closetbench.stock.plan import GrainOnSheet, StockSheet

PLY = Material(
    "ply", "plywood", MaterialKind.PLYWOOD, 18.0, 18.0, True, 600.0, 9000.0, 5000.0,
    (SheetSize(2440.0, 1220.0, 70.0), SheetSize(1220.0, 1220.0)), 10.0, "", False, "invented",
)
MDF = replace(PLY, key="mdf", kind=MaterialKind.MDF, grained=False)
PINE = replace(PLY, key="pine", kind=MaterialKind.LUMBER, sheets=(SheetSize(3000.0, 140.0),))
CATALOGUE = Catalogue({m.key: m for m in (PLY, MDF, PINE)})


def part(material: str, grain: Grain = Grain.LENGTH) -> Part:
    panel = Panel(600.0, 300.0, 18.0, material, grain, bands=(
        Band(Rim.FRONT, "b", 1.0), Band(Rim.END, "b", 2.0)))
    return Part("shelf", "case", Role.PANEL, panel, Place((0.0, 0.0, 0.0), *LYING))


@pytest.mark.parametrize(
    ("material", "grain", "lies"),
    [
        ("ply", Grain.LENGTH, GrainOnSheet.ALONG),
        ("ply", Grain.WIDTH, GrainOnSheet.ACROSS),
        ("ply", Grain.NONE, GrainOnSheet.FREE),
        ("mdf", Grain.LENGTH, GrainOnSheet.FREE),
        ("mdf", Grain.WIDTH, GrainOnSheet.FREE),
    ],
)
def test_a_part_is_sawn_without_its_bands(material: str, grain: Grain, lies: GrainOnSheet) -> None:
    (cut,) = cut_parts([part(material, grain)], CATALOGUE)
    assert (cut.key, cut.label, cut.material) == ("case: shelf", "shelf", material)
    assert (cut.length, cut.width, cut.grain) == (598.0, 299.0, lies)


def test_an_unknown_material_names_the_part() -> None:
    with pytest.raises(CatalogueError) as caught:
        cut_parts([part("plyy")], CATALOGUE)
    assert caught.value.subject == "case: shelf"


def test_stock_has_every_size_once_and_offcuts_first() -> None:
    offcuts = (StockSheet("shed", "ply", 700.0, 500.0, offcut=True),
               StockSheet("other", "oak", 700.0, 500.0, offcut=True))
    stock = stock_sheets(CATALOGUE, ["ply", "pine", "ply"], offcuts)
    assert [(s.key, s.trim, s.cost) for s in stock] == [
        ("shed", 0.0, None),
        ("ply 2440x1220", 10.0, 70.0),
        ("ply 1220x1220", 10.0, None),
        ("pine 3000x140", 0.0, None),
    ]
    assert all(s.quantity is None for s in stock)
