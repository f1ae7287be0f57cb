"""The bill as a spreadsheet of FreeCAD's own that follows every recompute.

The rows are those of the bill as a document, in the language that FreeCAD speaks; nothing
is worked out here. Lengths and
weights are quantities, so that formulas can use them. Cells to the right of the bill and
below it are the user's.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Sequence
from typing import Any

from closetbench.core.errors import ClosetError
from closetbench.model.base import Scripted
from closetbench.model.bill import bill_of
from closetbench.model.properties import INTEGER, LINK, STRING, Prop, put, result
from closetbench.model.spoken import words
from closetbench.shop.bill import bill_rows
from closetbench.shop.csv_text import Cell
from closetbench.shop.tables import TOTAL, Table, said_rows, tables

OWN = (Prop("Bill", LINK, "Bill", "The bill whose lines the cells hold"),)
RESULTS = (
    result("FilledRows", INTEGER, "Rows that hold the bill"),
    result("FilledColumns", INTEGER, "Columns that hold the bill"),
    result("Fingerprint", STRING, "What the cells were filled from", hidden=True),
    result("Places", STRING, "Where heads and names stand", hidden=True),
)
WIDE, WIDEST = 70, 260
"""Pixels that a column has at least and at most."""
_LETTER = 7
"""Pixels that a letter takes."""
SPACE = "\u00a0"
"""Goes before a text that could be taken for a number or a formula."""
_LIKE_A_NUMBER = re.compile(r"[^\w]*\d|[=']")
_HEAD = (0.88, 0.84, 0.76)
_INK = (0.1, 0.1, 0.1)
_DANGER = (0.70, 0.15, 0.12)
_ON_DANGER = (1.0, 1.0, 1.0)
_DANGER_CELLS = 5


class BillSheet(Scripted):
    """Proxy of the spreadsheet. FreeCAD's own part works its cells out after ``execute``,
    and before anything whose formulas use them."""

    properties = (*OWN, *RESULTS)
    type_id = "Spreadsheet::SheetPython"

    def execute(self, obj: Any) -> bool:
        """Fill the cells; False, so that FreeCAD goes on and works them out."""
        super().execute(obj)
        return False

    def work_out(self, obj: Any) -> None:
        """Put the bill into the cells, where it differs from what they hold."""
        if obj.Bill is None:
            raise ClosetError(obj.Label, "bill", "none", "link the bill that it shows")
        reader = words()
        rows = bill_rows(bill_of(obj.Bill), reader)
        said = said_rows(rows, reader)
        mark = hashlib.md5(repr(said).encode(), usedforsecurity=False).hexdigest()
        if obj.Fingerprint == mark:
            return
        found = tables(rows)
        wide = max(map(len, rows))
        shown = tables(said)
        places = repr([(t.first, t.head_at, len(t.rows), t.heads) for t in shown])
        if obj.Places != places:
            _clear(obj)
            _dress(obj, found)
            _set_widths(obj, shown)
        for at, row in enumerate(_contents(said, found)):
            for column, text in enumerate([*row, *[""] * (wide - len(row))]):
                _set(obj, address(at, column), text)
        for alias, cell in _aliases(found).items():
            if obj.getAlias(cell) != alias:
                obj.setAlias(cell, alias)
        put(obj, "FilledRows", len(rows))
        put(obj, "FilledColumns", wide)
        put(obj, "Places", places)
        put(obj, "Fingerprint", mark)


def address(row: int, column: int) -> str:
    """A cell's name, from numbers that start at 0."""
    letters = ""
    column += 1
    while column:
        column, rest = divmod(column - 1, 26)
        letters = chr(ord("A") + rest) + letters
    return f"{letters}{row + 1}"


def _contents(rows: Sequence[Sequence[Cell]], found: Sequence[Table]) -> list[list[str]]:
    """The rows as what is typed into cells."""
    units: dict[int, Table] = {
        t.head_at + 1 + i: t for t in found for i in range(len(t.rows))
    }
    return [
        [
            _typed(cell, units[at].unit(column) if at in units else "")
            for column, cell in enumerate(row)
        ]
        for at, row in enumerate(rows)
    ]


def _typed(cell: Cell, unit: str) -> str:
    if cell is None or cell == "":
        return ""
    if isinstance(cell, str):
        text = cell.replace("\n", " ")
        # 0.20 forgets the apostrophe in the file, and then takes a text for what it looks like
        return "'" + (SPACE + text if _LIKE_A_NUMBER.match(text) else text)
    return f"={cell!r} {unit}" if unit else repr(cell)


def _aliases(found: Sequence[Table]) -> dict[str, str]:
    """Names for the sums: ``Parts_total_weight``, ``Purchases_total_cost`` and the like; the
    same in every language, for formulas use them."""
    return {
        re.sub(r"\W+", "_", f"{table.name}_total_{table.heads[column].split()[0]}"):
            address(table.head_at + 1 + i, column)
        for table in found for i, row in enumerate(table.rows) if row[0] == TOTAL
        for column, cell in enumerate(row) if isinstance(cell, int | float)
    }


def _set(obj: Any, cell: str, text: str) -> None:
    held = obj.getContents(cell)
    # 0.20 gives texts back without the apostrophe that they were typed with
    if held not in (text, text.removeprefix("'")) or text == "'":
        obj.set(cell, text)


def _clear(obj: Any) -> None:
    for row in range(obj.FilledRows):
        for column in range(obj.FilledColumns):
            obj.clear(address(row, column))


def _dress(obj: Any, found: Sequence[Table]) -> None:
    obj.setStyle("A1", "bold")
    for at in range(1, found[0].first - 1):
        # the dangers, over all tables
        cells = f"A{at + 1}:{address(at, _DANGER_CELLS - 1)}"
        obj.setStyle(cells, "bold")
        obj.setBackground(cells, _DANGER)
        obj.setForeground(cells, _ON_DANGER)
    for table in found:
        obj.setStyle(address(table.first, 0), "bold")
        heads = f"A{table.head_at + 1}:{address(table.head_at, max(0, len(table.heads) - 1))}"
        obj.setStyle(heads, "bold")
        obj.setBackground(heads, _HEAD)
        # the ground is pale on a dark theme too
        obj.setForeground(heads, _INK)


def _set_widths(obj: Any, found: Sequence[Table]) -> None:
    for column in range(max((len(t.heads) for t in found), default=0)):
        cells = [t.heads[column] for t in found if column < len(t.heads)]
        cells += [
            str(row[column]) for t in found for row in t.rows
            if column < len(row) and isinstance(row[column], str)
        ]
        need = _LETTER * max(map(len, cells))
        obj.setColumnWidth(address(0, column).rstrip("1"), min(max(need, WIDE), WIDEST))
