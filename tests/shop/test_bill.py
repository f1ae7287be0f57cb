"""The bill: what it counts, what it says, and that it reads back."""

from __future__ import annotations

import csv
import os
from dataclasses import replace
from pathlib import Path

import pytest

from closetbench.core.bars import BarLength
from closetbench.core.closet import Closet, ClosetDesign, part_weight
from closetbench.core.component import Component
from closetbench.core.envelope import Envelope
from closetbench.core.errors import CatalogueError, DocumentError
from closetbench.core.findings import Finding, Severity
from closetbench.core.lengths import MILLIMETRES, SIXTEENTHS
from closetbench.core.panel import (
    Band,
    Box,
    Face,
    Grain,
    Groove,
    HoleRow,
    Notch,
    Panel,
    Pocket,
    Rim,
    RimHole,
    Run,
    Taper,
)
from closetbench.core.parts import HardwareNeed
from closetbench.resources import load_catalogue
from closetbench.shop.bill import Bill, bill_rows, closet_bill, save_bill
from closetbench.shop.buying import (
    band_purchases,
    hardware_purchases,
    length_purchases,
    sheet_purchases,
)
from closetbench.shop.lines import part_lines, set_ups
from closetbench.shop.words import (
    fit_text,
    groove_words,
    holes_words,
    machining_words,
    notch_words,
)
from closetbench.stock.length_plan import BarPlan, LengthCut, LengthPlan, StockLength
from tests.shop import samples

DOUBTS = (
    Finding(Severity.NOTE, "top", "small", "a remark"),
    Finding(Severity.DANGER, "case", "anchor", "it can tip: anchor it", "a standard", "1", "2"),
)


def bill(**more: object) -> Bill:
    parts = samples.closet()
    return replace(
        Bill("The box room", parts, samples.catalogue(), samples.plan(parts), samples.hardware(),
             DOUBTS, bit=12.0),
        **more,  # type: ignore[arg-type]
    )


def read(path: Path) -> dict[str, list[dict[str, str]]]:
    """The sections of a written bill, by name, rows by the heads of their columns."""
    with open(path, encoding="utf-8-sig", newline="") as stream:
        rows = list(csv.reader(stream, strict=True))
    assert len({len(row) for row in rows}) == 1
    sections: dict[str, list[dict[str, str]]] = {}
    block: list[list[str]] = []
    for row in [*rows[next(i for i, r in enumerate(rows) if not any(r)) + 1:], [""]]:
        if any(row):
            block.append(row)
            continue
        head = next(i for i, r in enumerate(block) if sum(map(bool, r)) > 1)
        sections[block[0][0]] = [
            {k: v for k, v in zip(block[head], r, strict=True) if k} for r in block[head + 1:]
        ]
        block = []
    return sections


@pytest.fixture(scope="module")
def sections(tmp_path_factory: pytest.TempPathFactory) -> dict[str, list[dict[str, str]]]:
    return read(save_bill(tmp_path_factory.mktemp("bill") / "bill.csv", bill()))


def test_the_file_reads_back_with_all_its_sections(tmp_path: Path) -> None:
    path = save_bill(tmp_path / "bill.csv", bill())
    raw = path.read_bytes()
    assert raw.startswith(b"\xef\xbb\xbf")
    assert raw.endswith(b"\r\n")
    assert raw.count(b"\n") == raw.count(b"\r\n")
    assert list(read(path)) == ["Parts", "Purchases", "Groove set-ups", "Findings"]


def test_the_bill_of_a_whole_closet(tmp_path: Path) -> None:
    made = bill()
    component = Component(
        "tall case", made.parts, Box(0.0, 0.0, 0.0, 1500.0, 560.0, 2200.0), made.hardware)
    closet = Closet(
        ClosetDesign(made.title), None, Envelope(1500.0, 560.0, 2200.0), (component,), DOUBTS)
    path = save_bill(
        tmp_path / "a.csv",
        closet_bill(closet, made.plan, made.catalogue, made.form, made.bit))
    assert path.read_bytes() == save_bill(tmp_path / "b.csv", made).read_bytes()


def test_sizes_agree_with_the_model(sections: dict[str, list[dict[str, str]]]) -> None:
    parts = {p.name: p for p in samples.closet()}
    *rows, total = sections["Parts"]
    seen = 0
    for row in rows:
        names = row["parts"].split("; ")
        assert int(row["count"]) == len(names)
        seen += len(names)
        for name in names:
            panel = parts[name].panel
            for head, value in (
                ("length mm", panel.length), ("width mm", panel.width),
                ("thickness mm", panel.thickness), ("cut length mm", panel.cut_length),
                ("cut width mm", panel.cut_width),
            ):
                assert float(row[head]) == pytest.approx(value, abs=1e-3)
            assert row["cut width"] == MILLIMETRES.text(panel.cut_width)
    assert seen == len(parts) == int(total["count"])
    weights = [part_weight(p, samples.catalogue()) for p in parts.values()]
    assert float(total["weight kg"]) == pytest.approx(sum(weights), abs=1e-3)


def test_equal_parts_share_a_row_and_mirrored_twins_do_not() -> None:
    parts = samples.closet()
    twin = replace(parts[0], name="twin", panel=parts[0].panel.mirrored())
    again = replace(parts[0], name="again", component="other case")
    lines = part_lines([parts[0], twin, again], samples.catalogue())
    assert [(line.names, line.components) for line in lines] == [
        ("tall case: left side; other case: again", "tall case; other case"),
        ("twin", "tall case"),
    ]


def test_material_grain_and_bands(sections: dict[str, list[dict[str, str]]]) -> None:
    rows = {row["parts"]: row for row in sections["Parts"]}
    side, cleat = rows["left side"], rows["cleat"]
    assert side["material"] == "birch plywood 18 mm"
    assert side["grain"] == "along the length"
    assert side["band front"] == "birch edge band 0.5 mm"
    assert (side["band rear"], side["band start"], side["band end"]) == ("", "", "")
    assert cleat["grain"] == "any way"
    assert "3 mm" not in side["thickness"]


def test_purchases(sections: dict[str, list[dict[str, str]]]) -> None:
    *rows, total = sections["Purchases"]
    by_title = {row["title"]: row for row in rows}
    ply = by_title["birch plywood 18 mm"]
    plan = samples.plan(samples.closet())
    count = len(plan.sheets_of("ply18"))
    assert int(ply["count"]) == count
    assert ply["size"] == "2440 mm x 1220 mm"
    # 2.44 m x 1.22 m x 0.018 m x 680 kg/m3, invented density
    assert float(ply["weight kg"]) == pytest.approx(count * 36.436, abs=2e-3)
    pins = by_title["shelf pin 5 mm"]
    assert (pins["count"], pins["unit"], pins["cost cu"]) == ("2", "pack of 50", "13")
    assert pins["note"].startswith("52 needed: 12 for adjustable shelves")
    # the cleat's screws and both kinds of sheet have no price in the plan
    assert total["note"].startswith("without 3 lines that no price is known for; weight of sheets")
    priced = sum(float(row["cost cu"] or 0) for row in rows)
    assert float(total["cost cu"]) == pytest.approx(priced)


def test_sheets_with_a_price_and_offcuts_at_hand() -> None:
    parts = samples.closet()
    plan = samples.plan(parts)
    first, *others = plan.sheets
    sheets = (
        replace(first, sheet=replace(first.sheet, key="shed", offcut=True)),
        *(replace(s, sheet=replace(s.sheet, cost=70.0)) for s in others if
          s.sheet.material == "ply18"),
    )
    found = sheet_purchases(replace(plan, sheets=sheets), parts, samples.catalogue(), SIXTEENTHS)
    offcut, ply, mdf = found
    assert (offcut.kind, offcut.count, offcut.total) == ("offcut", 1, 0.0)
    assert offcut.note == "at hand: shed"
    assert (ply.count, ply.cost, ply.total) == (len(others) - 1, 70.0, 70.0 * (len(others) - 1))
    assert ply.size == '96 1/16" x 48 1/16"'
    assert (mdf.count, mdf.note.split(":")[0]) == (0, "not planned yet")


def test_bars_are_weighed_and_bought_by_length() -> None:
    """Tube 27 x 1.2 mm: a ring of 97.3 mm², steel of 7,850 kg/m³ (EN 1993-1-1, 3.2.6, from
    memory): 0.7634 kg/m."""
    catalogue = load_catalogue()
    bar = replace(catalogue.bar("steel_27"), lengths=(BarLength(1250.0, 9.5),))
    item = replace(catalogue.item("rod_steel_27"), cost=30.0, pack=2)
    catalogue = replace(
        catalogue, bars={"steel_27": bar}, hardware={**catalogue.hardware, "rod_steel_27": item})
    long, short = (
        StockLength(f"steel_27 {n:g}", "steel_27", n, cost=c)
        for n, c in ((2500.0, 15.0), (1250.0, 9.5)))
    cut = (LengthCut("rod", 0.0, 1200.0),)
    plan = LengthPlan(
        tuple(BarPlan(f"L{n}", s, cut) for n, s in enumerate((long, long, long, short), 1)),
        {"steel_27": True})
    packs, single = length_purchases(plan, (), catalogue, SIXTEENTHS)
    assert (packs.count, packs.unit, packs.total) == (2, "pack of 2", 60.0)
    assert packs.weight == pytest.approx(4 * 2.5 * 0.7634, rel=1e-3)
    assert packs.note == "3 needed"
    assert (single.count, single.unit, single.total) == (1, "piece", 9.5)
    assert single.size == '49 3/16"'
    assert single.weight == pytest.approx(1.25 * 0.7634, rel=1e-3)


def test_nothing_planned_says_so() -> None:
    found = sheet_purchases(None, samples.closet(), samples.catalogue(), MILLIMETRES)
    assert [p.count for p in found] == [0, 0]
    assert all("not planned yet" in p.note and p.total is None for p in found)


def test_edge_band_is_bought_by_the_rims_with_waste() -> None:
    panel = Panel(1000.0, 300.0, 18.0, "ply18", bands=(
        Band(Rim.FRONT, "birch-05", 0.5), Band(Rim.START, "birch-05", 0.5)),
        notches=(Notch(Rim.END, Rim.FRONT, 100.0, 50.0),))
    part = replace(samples.closet()[0], panel=panel)
    (band,) = band_purchases([part, part], samples.catalogue(), MILLIMETRES, waste=0.10)
    # sawn: front 999.5 less the notch of 100, start 299.5: 2 x 1199 mm, 2.6378 m with waste
    assert (band.count, band.unit) == (2.7, "m")
    assert band.total == pytest.approx(2.7 * 0.8)
    assert band.note == "2.40 m of rims and 10% for waste"


def test_packs_are_whole() -> None:
    for pieces, packs in ((1, 1), (50, 1), (51, 2)):
        (line,) = hardware_purchases([HardwareNeed("pin-5", pieces, "x")], samples.catalogue())
        assert line.count == packs


def test_a_key_that_is_not_there_is_named(tmp_path: Path) -> None:
    with pytest.raises(CatalogueError, match="pin-6"):
        save_bill(tmp_path / "a.csv", bill(hardware=(HardwareNeed("pin-6", 1, "x"),)))
    assert list(tmp_path.iterdir()) == []


def test_set_ups_count_grooves_and_passes(sections: dict[str, list[dict[str, str]]]) -> None:
    groove, rabbet = sections["Groove set-ups"]
    assert (groove["work"], groove["width mm"], groove["depth mm"]) == ("groove", "18.2", "6")
    assert (groove["grooves"], groove["parts"], groove["passes"]) == ("10", "5", "2")
    assert groove["near side of the bit from the near wall, mm"] == "0; 6.2"
    assert (rabbet["work"], rabbet["width mm"], rabbet["grooves"]) == ("rabbet", "18", "2")


@pytest.mark.parametrize(
    ("bit", "passes", "note"),
    [
        (None, [(), ()], ["no bit chosen", "no bit chosen"]),
        (6.0, [(0.0, 4.0667, 8.1333, 12.2), (0.0, 6.0, 12.0)], ["", ""]),
        (19.0, [(), (-1.0,)], [
            "the bit is wider than the groove: take one of at most 18.2 mm",
            "the bit stands over the rim"]),
    ],
)
def test_passes_of_a_bit(
    bit: float | None, passes: list[tuple[float, ...]], note: list[str]
) -> None:
    found = set_ups(samples.closet(), bit)
    assert [s.note for s in found] == note
    for setting, wanted in zip(found, passes, strict=True):
        assert setting.passes == pytest.approx(wanted, abs=1e-4)


def test_findings_come_last_the_dangers_first(sections: dict[str, list[dict[str, str]]]) -> None:
    found = sections["Findings"]
    assert [row["severity"] for row in found] == ["danger", "note", "note"]
    assert (found[0]["message"], found[0]["limit"]) == ("it can tip: anchor it", "2")
    assert found[2]["rule"] == "invented-prices"


def test_what_can_hurt_stands_above_everything(tmp_path: Path) -> None:
    danger = Finding(Severity.DANGER, "A", "tips", "it can tip", value="3", fix="anchor it")
    bill = Bill("x", samples.closet(), samples.catalogue(), findings=(danger,))
    title, headline, danger, empty = bill_rows(bill)[:4]
    assert (title, danger, empty) == (
        ["x"], ["DANGER", "A", "it can tip", "3", "anchor it"], [])
    assert headline[0].startswith("1 DANGER: read this")


def test_nothing_to_say_is_said(tmp_path: Path) -> None:
    catalogue = replace(samples.catalogue(), currency="EUR")
    parts = samples.closet()[8:9]
    path = save_bill(tmp_path / "a.csv", Bill("x", parts, catalogue))
    found = read_plain(path)
    assert found.count("none") == 2
    assert "cost each EUR" in found


def read_plain(path: Path) -> list[str]:
    with open(path, encoding="utf-8-sig", newline="") as stream:
        return [cell for row in csv.reader(stream) for cell in row]


def test_words_of_the_machining() -> None:
    groove = Groove("top", Face.LOWER, Rim.START, 320.0, 18.2, 6.0, stop_first=10.0)
    assert groove_words(groove, MILLIMETRES) == (
        "groove for top: 18.2 mm wide, 6 mm deep, 320 mm from the start, lower face, "
        "stopped 10 mm from the front and squared with a chisel"
    )
    along = Groove("back", Face.UPPER, Rim.REAR, 12.7, 6.2, 6.0, stop_last=50.8)
    assert groove_words(along, SIXTEENTHS) == (
        'groove for back: 6.2 mm (0.244") wide, 6 mm (0.236") deep, 1/2" from the rear, '
        'upper face, stopped 2" from the end and squared with a chisel'
    )
    rabbet = Groove("back", Face.UPPER, Rim.REAR, 0.0, 6.0, 9.0)
    assert groove_words(rabbet, SIXTEENTHS).startswith("rabbet for back: ")
    assert ", along the rear, upper face" in groove_words(rabbet, SIXTEENTHS)
    row = HoleRow("pins", Face.UPPER, 50.8, 25.4, 5.0, 10.0, 3, 32.0, Run.WIDTH)
    assert holes_words(row, 18.0, SIXTEENTHS) == (
        '3 holes for pins: 5 mm (0.197") across, 10 mm (0.394") deep, first 2" from the start '
        'and 1" from the front, every 32 mm (1.260") across the width, upper face'
    )
    single = HoleRow("cable", Face.LOWER, 50.8, 25.4, 60.0, 18.0)
    assert holes_words(single, 18.0, SIXTEENTHS) == (
        'hole for cable: 60 mm (2.362") across, right through, 2" from the start and '
        '1" from the front'
    )
    notch = Notch(Rim.START, Rim.FRONT, 76.2, 50.8)
    assert notch_words(notch, SIXTEENTHS) == (
        'notch at the start and front corner: 3" along the length, 2" along the width'
    )


def test_words_of_the_work_on_rims() -> None:
    rail = Panel(
        500.0, 60.0, 19.0, "pine", tapers=(Taper(Rim.REAR, 0.0, 4.0),),
        rim_holes=tuple(RimHole("dowels", Rim.END, at, 9.5, 8.0, 21.0) for at in (15.0, 45.0)),
        pockets=tuple(Pocket("left stile", Face.LOWER, Rim.START, at) for at in (15.0, 45.0)),
    )
    assert machining_words(rail, MILLIMETRES).split("; ") == [
        "2 holes in the end for dowels: 8 mm across, 21 mm deep, 15 mm and 45 mm from the front, "
        "in the middle of the thickness",
        "rear aslant: 60 mm wide at the start, 56 mm wide at the end",
        "2 pockets at the start for left stile: lower face, 15 mm and 45 mm from the front",
    ]


def test_a_fit_is_never_rounded_to_a_fraction() -> None:
    assert fit_text(18.2, MILLIMETRES) == "18.2 mm"
    assert fit_text(17.46, SIXTEENTHS) == '17.46 mm (0.687")'


def test_names_that_look_like_formulas_are_harmless(tmp_path: Path) -> None:
    part = replace(samples.closet()[8], name='=HYPERLINK("x";"y")', component="@home")
    turned = replace(part, panel=replace(part.panel, grain=Grain.NONE))
    doubt = Finding(Severity.NOTE, "-1+2", "rule", "+3", value="-3.5 mm")
    path = save_bill(tmp_path / "a.csv", bill(
        title="\t=1", parts=(turned,), plan=None, findings=(doubt,)))
    cells = read_plain(path)
    assert not [c for c in cells if c.startswith(tuple("=+-@\t\r\n"))]
    assert "'=HYPERLINK(\"x\";\"y\")" in cells
    assert {"'\t=1", "'@home", "'-1+2", "'+3", "'-3.5 mm"} <= set(cells)


def test_an_old_bill_outlives_a_failure(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(*_args: object) -> None:
        raise PermissionError(13, "Permission denied")

    path = tmp_path / "bill.csv"
    path.write_text("old")
    monkeypatch.setattr(os, "replace", fail)
    with pytest.raises(DocumentError, match="Permission denied") as caught:
        save_bill(path, bill())
    assert str(path) in str(caught.value)
    assert [p.read_text() for p in tmp_path.iterdir()] == ["old"]
