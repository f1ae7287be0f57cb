"""A price book: the user's own prices as a table, laid over a catalogue.

CSV (RFC 4180, comma or semicolon), a line for each price::

    item,length,width,price,currency
    ply18,2440,1220,61.50,EUR
    pine_1x6,3048,,18.20
    plastic_10,50 m,,24
    screw_4x50,,,5.40

``item`` is a key of the catalogue. With length and width: one sheet or board of that size,
which the catalogue gets where it lacks it (a width that is left out: every board of that
length). A band with a length: a roll; without: a metre. Hardware: a pack. A bar: a pack of it;
with a length: one of that length, which the catalogue gets where it lacks it.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Mapping
from dataclasses import dataclass, replace

from closetbench.core import catalogue_fields as cf
from closetbench.core.bars import SAME, BarLength
from closetbench.core.errors import CatalogueError, LengthError
from closetbench.core.lengths import read_length
from closetbench.core.materials import BandRoll, Catalogue, Material, SheetSize

_COLUMNS = ("item", "length", "width", "price", "currency")

@dataclass(frozen=True)
class _Line:
    place: str
    item: str
    length: float | None
    width: float | None
    price: float


def read_price_book(text: str, origin: str, base: Catalogue) -> Catalogue:
    """The catalogue with the prices of a CSV text in the place of its own.

    What the book does not name has no price then, unless the book is in the catalogue's own
    currency. CatalogueError names ``origin``, line, column, value and limit.
    """
    rows, currency = _rows(text, origin)
    found = base.unpriced() if currency != base.currency else base
    found = replace(found, currency=currency)
    seen: set[tuple[str, float | None, float | None]] = set()
    for line in rows:
        key = (line.item, line.length, line.width)
        if key in seen:
            raise CatalogueError(line.place, "item", line.item, "another line prices the same")
        seen.add(key)
        found = _priced(found, line)
    return found


def _priced(found: Catalogue, line: _Line) -> Catalogue:
    if line.item in found.materials:
        board = _board(found.materials[line.item], line)
        return replace(found, materials={**found.materials, line.item: board})
    if line.item in found.bands:
        band = found.bands[line.item]
        if line.length is None:
            band = replace(band, cost_per_m=line.price)
        else:
            others = tuple(r for r in band.rolls if abs(r.length - (line.length or 0.0)) >= SAME)
            band = replace(band, rolls=(*others, BandRoll(line.length, line.price)))
        return replace(found, bands={**found.bands, line.item: band})
    key = line.item
    if line.item in found.bars:
        bar = found.bars[line.item]
        if line.length is not None and abs(line.length - bar.length) >= SAME:
            kept = tuple(b for b in bar.lengths if abs(b.length - line.length) >= SAME)
            bar = replace(bar, lengths=(*kept, BarLength(line.length, line.price)))
            return replace(found, bars={**found.bars, line.item: bar})
        key = bar.bar
    if key in found.hardware:
        item = replace(found.hardware[key], cost=line.price)
        return replace(found, hardware={**found.hardware, key: item})
    known = (*found.materials, *found.bands, *found.hardware, *found.bars)
    limit = f"is not in the catalogue; {cf.nearest(line.item, known)}"
    raise CatalogueError(line.place, "item", line.item, limit)


def _board(board: Material, line: _Line) -> Material:
    if line.length is None:
        raise CatalogueError(line.place, "length", "empty", "a board's price is for one size")
    length, width = line.length, line.width
    sizes = list(board.sheets)
    same = [
        i for i, s in enumerate(sizes)
        if abs(s.length - length) < SAME and (width is None or abs(s.width - width) < SAME)
    ]
    if not same and width is None:
        raise CatalogueError(
            line.place, "width", "empty", f"{board.title} is not sold {length:g} mm long as yet"
        )
    for i in same:
        sizes[i] = replace(sizes[i], cost=line.price)
    if not same and width is not None:
        sizes.append(SheetSize(length, width, line.price))
    return replace(board, sheets=tuple(sizes))


def _rows(text: str, origin: str) -> tuple[list[_Line], str]:
    heading = text.partition("\n")[0]
    delimiter = ";" if heading.count(";") > heading.count(",") else ","
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True)
    names: list[str] = []
    lines: list[_Line] = []
    currency = ""
    try:
        for cells in reader:
            place = f"{origin} line {reader.line_num}"
            if not any(cell.strip() for cell in cells):
                continue
            if not names:
                names = _heading([cell.strip().lower() for cell in cells], place)
                continue
            if len(cells) > len(names):
                raise CatalogueError(place, "cells", len(cells), f"the heading has {len(names)}")
            cell = dict(zip(names, (c.strip() for c in cells), strict=False))
            own = cell.get("currency", "")
            if own and currency and own != currency:
                raise CatalogueError(place, "currency", own, f"the lines before say {currency}")
            currency = currency or own
            lines.append(_Line(
                place, cell["item"], _size(cell, "length", place), _size(cell, "width", place),
                _price(cell.get("price", ""), place),
            ))
    except csv.Error as error:
        raise CatalogueError(
            f"{origin} line {reader.line_num}", "CSV", "unreadable", str(error)
        ) from None
    if not lines:
        raise CatalogueError(origin, "lines", 0, f"the first names columns: {', '.join(_COLUMNS)}")
    if not currency:
        raise CatalogueError(origin, "currency", "missing", "a file with prices must state theirs")
    return lines, currency


def _heading(names: list[str], place: str) -> list[str]:
    for name in names:
        if name not in _COLUMNS:
            raise CatalogueError(place, "column", name, f"must be one of {', '.join(_COLUMNS)}")
    for needed in ("item", "price"):
        if names.count(needed) != 1:
            raise CatalogueError(place, needed, names.count(needed), "there must be one of it")
    return names


def _size(cell: Mapping[str, str], name: str, place: str) -> float | None:
    text = cell.get(name, "")
    if not text:
        return None
    try:
        return read_length(text, "mm", subject=place, prop=name)
    except LengthError as error:
        raise CatalogueError(place, name, error.value, error.limit) from None


def _price(text: str, place: str) -> float:
    try:
        price = float(text.replace(",", "."))
    except ValueError:
        raise CatalogueError(place, "price", text or "empty", "must be a number") from None
    cf.check_cost(place, "price", price)
    return price
