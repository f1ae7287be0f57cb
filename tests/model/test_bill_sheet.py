"""The bill as a spreadsheet of FreeCAD's own."""

from __future__ import annotations

import pytest

from closetbench.core.closet import ClosetDesign
from closetbench.core.specs import BaySpec, CarcassSpec
from closetbench.model.base import is_invalid
from closetbench.model.bill import bill_of
from closetbench.model.bill_sheet import _DANGER, SPACE, _typed, address
from closetbench.model.bridge import carcasses_in
from closetbench.model.make import closet_from_design, make_bill, make_bill_sheet
from closetbench.shop.bill import bill_rows
from closetbench.shop.tables import tables

pytestmark = pytest.mark.freecad


@pytest.fixture
def closet(doc):
    spec = CarcassSpec("Case", "ply18", width=800.0, bays=(BaySpec(fixed=2),))
    return closet_from_design(
        doc, ClosetDesign("Small", size=(1000.0, 500.0, 1500.0), components=(spec,)))


@pytest.fixture
def sheet(doc, closet):
    made = make_bill_sheet(doc, make_bill(doc, closet))
    doc.recompute()
    return made


def shown(sheet):
    """The cells' values in the extent of the bill, None where there is nothing."""
    def value(cell):
        try:
            return sheet.get(cell)
        except ValueError:
            return None

    return [
        [value(address(row, column)) for column in range(sheet.FilledColumns)]
        for row in range(sheet.FilledRows)
    ]


def agrees(sheet):
    rows = bill_rows(bill_of(sheet.Bill))
    cells = shown(sheet)
    assert len(cells) == len(rows)
    for row, wanted in zip(cells, rows, strict=True):
        for cell, value in zip(row, [*wanted, *[None] * (len(row) - len(wanted))], strict=True):
            if value in (None, ""):
                assert cell in (None, "")
            elif isinstance(value, str):
                assert cell.removeprefix(SPACE) == value.replace("\n", " ")
            else:
                assert getattr(cell, "Value", cell) == pytest.approx(value, abs=1e-9)


def test_dangers_are_white_on_red(doc, closet, sheet):
    rows = bill_rows(bill_of(sheet.Bill))
    dangers = [at for at, row in enumerate(rows) if row and "DANGER" in str(row[0])]
    assert dangers[0] == 1
    assert len(dangers) > 1
    for at in dangers:
        for cell in (address(at, 0), address(at, 4)):
            assert sheet.getBackground(cell)[:3] == pytest.approx(_DANGER, abs=0.01)
            assert sheet.getForeground(cell)[:3] == pytest.approx((1.0, 1.0, 1.0))
    assert sheet.getBackground(address(dangers[-1] + 2, 0)) is None


def test_names_of_cells():
    assert [address(r, c) for r, c in ((0, 0), (4, 25), (4, 26), (9, 701), (0, 702))] == [
        "A1", "Z5", "AA5", "ZZ10", "AAA1"]


def test_the_cells_are_the_rows_of_the_bill(sheet):
    agrees(sheet)
    parts = tables(bill_rows(bill_of(sheet.Bill)))[0]
    cell = sheet.get(address(parts.head_at + 1, parts.heads.index("length mm")))
    assert str(cell.Unit).startswith("Unit: mm")
    assert sheet.Parts_total_count == len(bill_of(sheet.Bill).parts)
    assert sheet.Parts_total_weight.getValueAs("kg").Value > 10


def test_the_cells_follow_and_formulas_use_them_in_the_same_recompute(doc, closet, sheet):
    block = doc.addObject("Part::Box", "Block")
    table = tables(bill_rows(bill_of(sheet.Bill)))[0]
    cell = address(table.head_at + 1, table.heads.index("length mm"))
    block.setExpression("Length", f"{sheet.Name}.{cell} + 1 mm")
    block.setExpression("Height", f"{sheet.Name}.Parts_total_count * 1 mm")
    doc.recompute()
    count, length = sheet.Parts_total_count, block.Length.Value
    assert length == sheet.get(cell).Value + 1
    bay = carcasses_in(closet)[0].BayList[0]
    doc.openTransaction("Shelves")
    bay.FixedShelves = 4
    carcasses_in(closet)[0].Height = 1200.0
    doc.recompute()
    doc.commitTransaction()
    agrees(sheet)
    assert sheet.Parts_total_count == count + 2
    assert block.Height.Value == count + 2
    assert not any("Touched" in o.State for o in doc.Objects)
    doc.undo()
    assert sheet.Parts_total_count == count
    assert (block.Height.Value, block.Length.Value) == (count, length)
    agrees(sheet)
    doc.redo()
    assert sheet.Parts_total_count == count + 2
    agrees(sheet)


def test_cells_beside_the_bill_stay_the_users(doc, closet, sheet):
    mine = address(3, sheet.FilledColumns + 2)
    sheet.set(mine, "=Parts_total_count * 2")
    doc.recompute()
    carcasses_in(closet)[0].BayList[0].FixedShelves = 5
    doc.recompute()
    assert sheet.get(mine) == 2 * sheet.Parts_total_count


def test_the_cells_outlive_the_file(doc, sheet, reopen):
    again = reopen(doc).getObject(sheet.Name)
    agrees(again)
    carcasses_in(again.Bill.Closet)[0].BayList[0].FixedShelves = 1
    again.Document.recompute()
    agrees(again)


@pytest.mark.parametrize(
    "text", ["800 mm", '6\' 1/4"', "=2+3", "'quoted'", "-5", "a > b", "1 >> 2 \\ 3", "wide, 3"])
def test_texts_stay_texts(doc, text, reopen):
    plain = doc.addObject("Spreadsheet::Sheet", "Plain")
    plain.set("A1", _typed(text, ""))
    doc.recompute()
    assert plain.get("A1").removeprefix(SPACE) == text
    again = reopen(doc).getObject("Plain")
    again.touch()
    again.Document.recompute()
    assert again.get("A1").removeprefix(SPACE) == text


def test_a_sheet_without_a_bill_says_so(doc, sheet):
    before = shown(sheet)
    sheet.Bill = None
    doc.recompute()
    assert is_invalid(sheet)
    assert "link the bill" in sheet.getStatusString()
    assert shown(sheet) == before
