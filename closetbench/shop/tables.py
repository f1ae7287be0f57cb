"""The rows of a document as its tables: what parts them, and which row is the head."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from closetbench.shop.csv_text import Cell
from closetbench.shop.language import Words, mark, plain

MM = " mm"
"""How the head of a column of exact lengths ends."""
KG = " kg"
"""How the head of a column of weights ends."""
TOTAL = "total"
"""What a row of sums begins with."""
_COSTS = mark(("cost each", "cost"))


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


def said_rows(rows: Sequence[Sequence[Cell]], words: Words) -> list[list[Cell]]:
    """The rows with the names of the tables, the heads and the row of sums as their reader
    calls them: for paper and screen, not for another program."""
    out = [list(row) for row in rows]
    for table in tables(rows):
        out[table.first] = [words(table.name)]
        out[table.head_at] = [said_head(head, words) for head in table.heads]
        for at, row in enumerate(table.rows, table.head_at + 1):
            if row and row[0] == TOTAL:
                out[at][0] = words("total")
    return out


def glossed_rows(rows: Sequence[Sequence[Cell]], words: Words) -> list[list[Cell]]:
    """The rows, each table with a note that says what its name and its heads mean; nothing is
    noted for a reader of English."""
    out = [list(row) for row in rows]
    if words is plain:
        return out
    for table in reversed(tables(rows)):
        pairs = [(head, said_head(head, words)) for head in table.heads]
        told = ", ".join(f"{head} = {said}" for head, said in pairs if head != said)
        out.insert(table.head_at, [f"{table.name} = {words(table.name)}: {told}"])
    return out


def said_head(head: str, words: Words) -> str:
    """A column's head as its reader calls it; a currency stays behind its cost."""
    for cost in _COSTS:
        if head.startswith(f"{cost} "):
            return f"{words(cost)}{head[len(cost):]}"
    return words(head)
