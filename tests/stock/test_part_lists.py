"""Plain part lists: what they may say, and the message for what they may not."""

from __future__ import annotations

import json

import pytest

from closetbench.core.errors import ClosetError, DocumentError
from closetbench.stock.part_lists import read_part_list
from closetbench.stock.plan import GrainOnSheet

JOB = {
    "name": "invented",
    "kerf": 3.2,
    "trim": 6,
    "sheets": {
        "18": {"length": 2440, "width": 1220},
        "6": [
            {"length": 2440, "width": 1220, "cost": 21.5, "quantity": 2},
            {"length": 900, "width": 700, "offcut": True},
        ],
    },
    "parts": [
        {"id": "A", "name": "side", "length": 2000, "width": 590, "qty": 2, "grain": "length",
         "material": "18", "thickness": 18},
        {"id": "B", "length": '23 1/4"', "width": 300, "material": "6", "grain": "width"},
    ],
}  # fmt: skip


def listed(tmp_path, data, name="list.json", **options):
    path = tmp_path / name
    text = data if isinstance(data, str) else json.dumps(data)
    path.write_text(text, encoding="utf-8")
    return read_part_list(path, **options)


def changed(**changes):
    return JOB | changes


def part(**changes):
    return changed(parts=[JOB["parts"][0] | changes])


def test_json(tmp_path):
    found = listed(tmp_path, JOB)
    assert [p.key for p in found.parts] == ["A/1", "A/2", "B"]
    assert [found.ids[p.key] for p in found.parts] == ["A", "A", "B"]
    assert found.parts[0].label == "side"
    assert found.parts[0].grain is GrainOnSheet.ALONG
    assert found.parts[2].grain is GrainOnSheet.ACROSS
    assert found.parts[2].length == 590.55
    assert found.kerf == 3.2
    full, thin, offcut = found.sheets
    assert (full.trim, full.quantity, full.cost) == (6, None, None)
    assert (thin.quantity, thin.cost) == (2, 21.5)
    assert (offcut.trim, offcut.quantity, offcut.offcut) == (0, 1, True)
    assert len({sheet.key for sheet in found.sheets}) == 3


def test_csv_with_semicolons_inches_and_a_byte_order_mark(tmp_path):
    text = '\ufeffPart;Length;Width;Quantity\r\nside;23 1/4";11;2\r\n\r\n"a;b";9;8;\r\n'
    found = listed(tmp_path, text, "list.csv", unit="in")
    assert [(p.key, p.width) for p in found.parts] == [
        ("side/1", pytest.approx(279.4)), ("side/2", pytest.approx(279.4)),
        ("a;b", pytest.approx(203.2)),
    ]  # fmt: skip
    assert found.sheets == ()


@pytest.mark.parametrize(
    ("data", "message"),
    [
        ("{", "is not JSON"),
        ("[]", "must be an object"),
        ('{"parts": 3}', "parts is 3; must be a list"),
        ("[" * 100_000, "is not JSON"),
        (changed(sheets=[1]), "an object by material"),
        (changed(kerf="thick"), "kerf"),
        (changed(kerff=3), "entry is kerff"),
        (changed(sheets={"18": {"length": 2440}}), "sheet 1 of 18: width is missing"),
        (changed(sheets={"18": {"length": 2440, "width": 9, "cost": "dear"}}), "cost"),
        (changed(sheets={"18": {"length": 9, "width": 9, "quantity": 1.5}}), "whole number"),
        (changed(sheets={"18": {"length": 9, "width": 9, "offcut": 1}}), "true or false"),
        (changed(parts=[7]), "part 1: entry is 7"),
        (changed(parts=[{"length": 1, "width": 1}]), "part 1: id is empty"),
        (changed(parts=[JOB["parts"][1], JOB["parts"][1]]), "another line has the same id"),
        (changed(parts=[JOB["parts"][1], JOB["parts"][1] | {"grain": "length"}]),
         "part B: grain is length; another line says something else"),
        (part(grain="up"), "part A: grain is up; must be none, length or width, or free"),
        ('{"parts": [{"id": "A", "grain": "length", "grain": "width"}]}',
         'grain is "length" and "width"; comes twice in one object'),
        (part(length=None), "part A: length is missing"),
        (part(length=True), "must be a length"),
        (part(length="two"), "part A: length is two"),
        (part(qty=0), "part A: quantity is 0; must be a whole number from 1 on"),
        (part(qty=10**9), "at most 20000 pieces"),
        (part(colour="red"), "entry is colour"),
    ],
)  # fmt: skip
def test_bad_json(tmp_path, data, message):
    with pytest.raises(ClosetError) as caught:
        listed(tmp_path, data)
    assert message in str(caught.value)


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("", "the first line names the columns"),
        ("part,size\n", "column is size"),
        ("part,length\n", "width is 0"),
        ("part,length,width\na,1\n", "line 2: cells is 2"),
        ('part,length,width\n"a,1,2\n', "CSV is unreadable"),
        ("part,length,width\na,1,wide\n", "part a: width is wide"),
        ("part,length,width,qty\na,1,2,x\n", 'quantity is "x"'),
    ],
)
def test_bad_csv(tmp_path, text, message):
    with pytest.raises(ClosetError) as caught:
        listed(tmp_path, text, "list.csv")
    assert message in str(caught.value)


def test_files_that_cannot_be_read(tmp_path):
    with pytest.raises(DocumentError, match="cannot be read"):
        read_part_list(tmp_path / "absent.json")
    (tmp_path / "latin.csv").write_bytes(b"part\xe9")
    with pytest.raises(DocumentError, match="UTF-8"):
        read_part_list(tmp_path / "latin.csv")


def test_grain_is_also_told_by_the_sheet_and_quantity_by_count(tmp_path):
    path = tmp_path / "parts.csv"
    path.write_text("part,count,length,width,grain\na,2,700,300,along\nb,1,700,300,across\n"
                    "c,1,700,300,free\n", encoding="utf-8")
    grains = [part.grain for part in read_part_list(path).parts]
    assert grains == [GrainOnSheet.ALONG, GrainOnSheet.ALONG, GrainOnSheet.ACROSS,
                      GrainOnSheet.FREE]
