"""CSV by RFC 4180 that a spreadsheet takes for text and numbers, never for formulas."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

Cell = str | int | float | None

_BOM = "\ufeff"
# OWASP, "CSV Injection": = + - @ tab, carriage return, line feed; and the full-width
# forms of the first four, which East Asian spreadsheets take for the same.
_SIGNS = tuple("=+-@＝＋－＠")
_BREAKS = tuple("\t\r\n")


def harmless(text: str) -> str:
    """The text, with an apostrophe before what a spreadsheet would take for a formula."""
    starts = text.startswith(_BREAKS) or text.lstrip().startswith(_SIGNS)
    return "'" + text if starts else text


def csv_field(cell: Cell) -> str:
    """One field. Texts always stand in quotes, so that no separator of whatever locale can
    split them; numbers stand bare, with a point and at most three decimals."""
    if cell is None or cell == "":
        return ""
    if isinstance(cell, str):
        return '"' + harmless(cell).replace('"', '""') + '"'
    if isinstance(cell, int):
        return str(cell)
    return f"{round(cell, 3) + 0.0:.3f}".rstrip("0").rstrip(".")


def csv_text(rows: Iterable[Sequence[Cell]]) -> str:
    """A whole file: records of equal field count that end in CRLF, after a byte-order mark.

    The mark is there because the file is for people with spreadsheets, one of which reads
    UTF-8 as the system's old code page without it; a program reads it as "utf-8-sig".
    """
    table = [list(row) for row in rows]
    width = max((len(row) for row in table), default=0)
    return _BOM + "".join(
        ",".join(csv_field(c) for c in [*row, *[None] * (width - len(row))]) + "\r\n"
        for row in table
    )
