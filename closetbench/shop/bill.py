"""The cut list and the bill, as rows and as a CSV file for a spreadsheet."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from closetbench.core.bodies import LengthPart, Piece
from closetbench.core.closet import Closet
from closetbench.core.findings import Finding, Severity, by_severity
from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Grain, Panel, Rim
from closetbench.core.parts import HardwareNeed, Part, Role
from closetbench.shop.beside import bar_rows, reused_rows
from closetbench.shop.buying import (
    BAND_WASTE,
    Purchase,
    band_purchases,
    hardware_purchases,
    length_purchases,
    length_rows,
    sheet_purchases,
    way_rows,
)
from closetbench.shop.csv_text import Cell, csv_text
from closetbench.shop.language import Words, mark, plain
from closetbench.shop.lines import TOO_WIDE, SetUp, part_lines, set_ups
from closetbench.shop.report import danger_headline, subject_words
from closetbench.shop.tables import TOTAL, glossed_rows
from closetbench.shop.words import fit_text, machining_words
from closetbench.stock.atomic import write_text_atomically
from closetbench.stock.length_checks import require_cuttable
from closetbench.stock.length_plan import LengthPlan
from closetbench.stock.plan import Plan
from closetbench.stock.purchase import SpareRule, WayToBuy
from closetbench.stock.verify import require_sawable

Row = list[Cell]

_RIMS = (Rim.FRONT, Rim.REAR, Rim.START, Rim.END)
_GRAIN = mark({
    Grain.LENGTH: "along the length", Grain.WIDTH: "along the width", Grain.NONE: "any way",
})
_ROUTER_CARE = mark(
    "Fasten the work, wear eye and ear protection, feed against the bit's turn and take deep "
    "grooves in several steps of depth; the machine's own manual goes before this list."
)


@dataclass(frozen=True)
class Bill:
    """What goes into a bill.

    ``plan`` None: nothing is planned yet, and the bill says so. ``findings``: those of the
    closet; the catalogue's own are added where they lack. ``bit``: diameter of the router
    bit in mm. ``band_waste``: fraction of edge band bought over the rims' length.
    ``lengths`` are cut from bars, ``reused`` from kept panels, ``pieces`` not at all.
    ``length_plan``: of boards and bars; ``spare``: the rule for sheets to spare; ``ways``: the
    ways to buy that were compared.
    """

    title: str
    parts: tuple[Part, ...]
    catalogue: Catalogue
    plan: Plan | None = None
    hardware: tuple[HardwareNeed, ...] = ()
    findings: tuple[Finding, ...] = ()
    form: LengthFormat = MILLIMETRES
    bit: float | None = None
    band_waste: float = BAND_WASTE
    lengths: tuple[LengthPart, ...] = ()
    reused: tuple[Part, ...] = ()
    pieces: tuple[Piece, ...] = ()
    length_plan: LengthPlan | None = None
    spare: SpareRule = SpareRule()
    ways: tuple[WayToBuy, ...] = ()

    def purchases(self, words: Words = plain) -> tuple[Purchase, ...]:
        """Everything to be bought: sheets, boards, bars, edge band, hardware."""
        by_length = tuple(self.length_plan.proved) if self.length_plan else ()
        return (
            *sheet_purchases(
                self.plan, self.parts, self.catalogue, self.form, self.spare, by_length, words),
            *length_purchases(self.length_plan, self.lengths, self.catalogue, self.form, words),
            *band_purchases(self.parts, self.catalogue, self.form, self.band_waste, words),
            *hardware_purchases(self.hardware, self.catalogue, words),
        )


def bill_rows(bill: Bill, words: Words = plain) -> list[Row]:
    """The bill's rows: sections for parts, purchases, groove set-ups and findings.

    What can hurt somebody stands above them all. A section is its name, the heads of its
    columns and its rows; an empty row parts two sections. Columns in mm are
    exact to 0.001 mm, those of text are in the user's unit and rounded as the user chose.
    Names of sections and the heads of columns are always English, for another program may
    look for them; ``tables.said_rows`` puts them into the words of a reader.
    Raises ``CatalogueError`` for a key that is not there.
    """
    sections = (
        _part_rows(bill, words),
        [] if bill.length_plan else bar_rows(bill.lengths, bill.catalogue, bill.form, words),
        reused_rows(bill.reused, bill.pieces, bill.form, words), _purchase_rows(bill, words),
        way_rows(bill.ways, bill.catalogue, bill.form, words),
        length_rows(bill.length_plan, bill.catalogue, bill.form, bill.parts, words),
        _set_up_rows(bill, words), _finding_rows(bill, words),
    )
    rows: list[Row] = [[bill.title]]
    dangers = [f for f in bill.findings if f.severity is Severity.DANGER]
    rows += [[danger_headline(len(dangers), words)]] if dangers else []
    rows += [
        [words("DANGER"), subject_words(f.subject, words), words(f.message), words(f.value),
         words(f.fix)]
        for f in dangers
    ]
    for section in filter(None, sections):
        rows += [[], *section]
    return rows


def closet_bill(
    closet: Closet, plan: Plan | None, catalogue: Catalogue, form: LengthFormat = MILLIMETRES,
    bit: float | None = None, lengths: LengthPlan | None = None,
) -> Bill:
    """The bill of a whole closet."""
    return Bill(
        closet.design.name, closet.parts, catalogue, plan, closet.hardware, closet.findings, form,
        bit, lengths=closet.lengths, reused=closet.reused,
        pieces=tuple(
            p for c in closet.components for p in c.pieces if p.role is Role.EXISTING
        ), length_plan=lengths,
    )


def save_bill(path: str | Path, bill: Bill, words: Words = plain) -> Path:
    """Write a bill as CSV; ``DocumentError`` where that cannot be done, ``LayoutError`` for a
    plan that cannot be sawn. A reader of another language than English finds what each head
    means in a note over the heads."""
    if bill.plan is not None:
        require_sawable(bill.plan.sheets)
    require_cuttable(bill.length_plan or LengthPlan())
    rows = glossed_rows(bill_rows(bill, words), words)
    return write_text_atomically(path, csv_text(rows), "bill")


_PART_HEADS = mark((
    "component", "parts", "count", "material", "length mm", "width mm", "thickness mm", "length",
    "width", "thickness", "cut length mm", "cut width mm", "cut length", "cut width", "grain",
    "band front", "band rear", "band start", "band end", "machining", "weight each kg",
    "weight kg",
))


def _part_rows(bill: Bill, words: Words) -> list[Row]:
    rows: list[Row] = [
        [mark("Parts")],
        [words("Saw to the cut size; the finished size has the edge bands on, and positions are "
               "measured from the finished rims. Columns in mm are exact, those without are "
               "rounded.")],
        [*_PART_HEADS],
    ]
    total = 0.0
    for line in part_lines(bill.parts, bill.catalogue):
        panel, count = line.parts[0].panel, len(line.parts)
        material = bill.catalogue.material(panel.material)
        finished = (panel.length, panel.width, panel.thickness)
        cut = (panel.cut_length, panel.cut_width)
        total += line.weight * count
        rows.append([
            line.components, line.names, count, words(material.title),
            *finished, bill.form.text(panel.length), bill.form.text(panel.width),
            fit_text(panel.thickness, bill.form),
            *cut, *(bill.form.text(v) for v in cut),
            words(_GRAIN[panel.grain if material.grained else Grain.NONE]),
            *(_band_title(panel, rim, bill.catalogue, words) for rim in _RIMS),
            machining_words(panel, bill.form, words), line.weight, line.weight * count,
        ])
    rows.append([TOTAL, None, len(bill.parts), *[None] * 18, total])
    return rows


def _band_title(panel: Panel, rim: Rim, catalogue: Catalogue, words: Words) -> str:
    return "; ".join(words(catalogue.band(b.key).title) for b in panel.bands if b.rim is rim)


def _purchase_rows(bill: Bill, words: Words) -> list[Row]:
    money = f" {bill.catalogue.currency}" if bill.catalogue.currency else ""
    rows: list[Row] = [
        [mark("Purchases")],
        [*mark(("what", "title", "size", "count", "unit")), f"cost each{money}", f"cost{money}",
         *mark(("weight kg", "note"))],
    ]
    known, weight, unpriced = 0.0, 0.0, 0
    for item in bill.purchases(words):
        cost = item.total
        known += cost or 0.0
        unpriced += cost is None
        weight += item.weight or 0.0
        rows.append([item.kind, item.title, item.size, item.count, item.unit, item.cost,
                     cost, item.weight, item.note])
    note = words("every line has a price")
    if unpriced:
        note = words("without 1 line that no price is known for") if unpriced == 1 else words(
            "without {0} lines that no price is known for", unpriced)
    weighed = words("weight of sheets, boards and bars; hardware and edge band not counted")
    rows.append([TOTAL, None, None, None, None, None, known, weight, f"{note}; {weighed}"])
    return rows


def _set_up_rows(bill: Bill, words: Words) -> list[Row]:
    rows: list[Row] = [
        [mark("Groove set-ups")],
        [words(_ROUTER_CARE)],
        [*mark(("work", "width mm", "depth mm", "grooves", "parts", "bit mm", "passes",
                "near side of the bit from the near wall, mm", "note"))],
    ]
    for s in set_ups(bill.parts, bill.bit):
        passes = "; ".join(f"{p:.2f}".rstrip("0").rstrip(".") for p in s.passes)
        work = words("rabbet") if s.rabbet else words("groove")
        rows.append([work, s.width, s.depth, s.grooves, s.parts, s.bit, len(s.passes) or None,
                     passes, _note(s, words)])
    if len(rows) == 3:
        rows.append([words("none")])
    return rows


def _note(set_up: SetUp, words: Words) -> str:
    width = f"{set_up.width:g}"
    told = set_up.note == TOO_WIDE.format(width)
    return words(TOO_WIDE, width) if told else words(set_up.note)


def _finding_rows(bill: Bill, words: Words) -> list[Row]:
    rows: list[Row] = [
        [mark("Findings")],
        [*mark(("severity", "subject", "message", "value", "limit", "range", "what to do",
                "source", "rule"))],
    ]
    found = dict.fromkeys((*bill.findings, *bill.catalogue.findings()))
    rows += [
        [words(f.severity.value), subject_words(f.subject, words), words(f.message),
         words(f.value), words(f.limit), words(f.spread), words(f.fix), words(f.source), f.rule]
        for f in by_severity(found)
    ]
    if len(rows) == 2:
        rows.append([words("none")])
    return rows
