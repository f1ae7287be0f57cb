"""The rows of a document as its tables: what parts them, and which row is the head."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from closetbench.shop.csv_text import Cell

MM = " mm"
"""How the head of a column of exact lengths ends."""
KG = " kg"
"""How the head of a column of weights ends."""


@dataclass(frozen=True)
class Table:
    """One section of a document: its name, what is said before its heads, the heads of its
    columns and its rows. ``first``: number of its first row in the document, from 0."""

    name: str
    notes: tuple[str, ...]
    heads: tuple[str, ...]
    rows: tuple[tuple[Cell, ...], ...]
    first: int

    @property
    def head_at(self) -> int:
        """Number of the row of heads in the document, from 0."""
        return self.first + 1 + len(self.notes)

    def unit(self, column: int) -> str:
        """What numbers in a column are in: ``mm``, ``kg`` or nothing."""
        head = self.heads[column] if column < len(self.heads) else ""
        return next((unit.strip() for unit in (MM, KG) if head.endswith(unit)), "")


def tables(rows: Sequence[Sequence[Cell]]) -> tuple[Table, ...]:
    """The tables in the rows of a document, which an empty row goes before.

    Rows of one cell after a table's name are notes, the first longer one is its heads.
    """
    starts = [i + 1 for i, row in enumerate(rows) if not row]
    found = []
    for start, end in zip(starts, [*(s - 1 for s in starts[1:]), len(rows)], strict=True):
        body = list(rows[start + 1:end])
        notes = []
        while body and len(body[0]) == 1:
            notes.append(str(body.pop(0)[0]))
        heads = tuple(str(cell) for cell in body.pop(0)) if body else ()
        found.append(Table(
            str(rows[start][0]), tuple(notes), heads, tuple(tuple(row) for row in body), start))
    return tuple(found)
