"""Pages for the wall by the saw: every cut of every sheet has its number and its line."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.errors import DocumentError, LayoutError
from closetbench.core.lengths import MILLIMETRES
from closetbench.shop.cutting_order import board_split
from closetbench.shop.cutting_pages import cutting_page, write_cutting_pages
from closetbench.stock.from_parts import cut_parts, stock_sheets
from closetbench.stock.plan import CutSettings
from closetbench.stock.sheets import plan_sheets
from closetbench.stock.tools import Shop, StoreWork
from tests.shop import samples

PARTS = samples.closet()
CATALOGUE = samples.catalogue()
PLAN = plan_sheets(
    cut_parts(PARTS, CATALOGUE), stock_sheets(CATALOGUE, ["ply18", "mdf12"]),
    CutSettings(seconds=0.02, tidy=0.0),
)


def words(page) -> list[str]:
    return [text.get_text() for text in page.axes.texts]


def test_every_cut_is_numbered_on_the_sheet_and_listed():
    for sheet in PLAN.sheets:
        page = cutting_page(sheet, PARTS, CATALOGUE, MILLIMETRES, Shop())
        said = words(page)
        split = board_split(sheet, CATALOGUE, Shop())
        assert len(split.store) + len(split.home) == len(sheet.cuts)
        for made in (*split.store, *split.home):
            assert said.count(str(made.cut.number)) == 2  # on the picture, in the list
            assert MILLIMETRES.text(made.as_sawn.fence) in said
        if split.to_size:
            assert any(text.startswith("bring to size first: ") for text in said)
        for placed in sheet.placements:
            assert any(placed.part.split(': ')[1] in text for text in said)


def test_colours_say_who_cuts():
    sheet = PLAN.sheets[0]
    colours = []
    for shop in (Shop(), Shop(StoreWork.NOTHING)):
        page = cutting_page(sheet, PARTS, CATALOGUE, MILLIMETRES, shop)
        colours.append({t.get_color() for t in page.axes.texts if t.get_text() == "1"})
    assert len(colours[0]) == len(colours[1]) == 1
    assert colours[0] != colours[1]


def test_a_file_for_each_sheet(tmp_path):
    made = write_cutting_pages(
        tmp_path / "cutting", PLAN, PARTS, CATALOGUE, MILLIMETRES, Shop())
    assert [p.name for p in made] == [f"{s.name}.png" for s in PLAN.sheets]
    assert all(p.stat().st_size > 10_000 for p in made)
    with pytest.raises(DocumentError, match="must end in"):
        write_cutting_pages(
            tmp_path, PLAN, PARTS, CATALOGUE, MILLIMETRES, Shop(), ".doc")
    wrong = replace(PLAN, sheets=(*PLAN.sheets[:-1], replace(PLAN.sheets[-1], cuts=())))
    with pytest.raises(LayoutError, match="no cuts are listed"):
        write_cutting_pages(tmp_path / "wrong", wrong, PARTS, CATALOGUE, MILLIMETRES, Shop())
    assert not (tmp_path / "wrong").exists()
