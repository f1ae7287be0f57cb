"""Reading plain part lists: JSON or CSV to parts, sheets and settings.

JSON is one object::

    {"kerf": 3.2, "trim": 6,
     "sheets": {"ply 18": {"length": 2440, "width": 1220}},
     "parts": [{"id": "P1", "length": 700, "width": 300, "qty": 2,
                "grain": "length", "material": "ply 18"}]}

A material may have a list of sheets; a sheet may have trim, quantity, cost, key and
offcut, an offcut defects, [from, to, from, to] along its length and its width, of which the
largest sound rectangle is used. Boards, bars and mouldings stand under lengths in the same way,
without a width, and may have defects, [from, to] in a list; a part of such a material has no
width::

    {"lengths": {"oak": [{"length": 2400, "cost": 9.5, "defects": [[0, 40]]}]},
     "parts": [{"id": "rail", "length": 912, "qty": 4, "material": "oak"}]}

CSV (RFC 4180, comma or semicolon) has a heading with part, length, width and,
where wanted, quantity, grain, material and name. Lengths are numbers of millimetres, or
texts such as 16" or 23 1/4 in. Grain is none, length or width, the side of the part that
the grain runs along; free, along and across say the same of the sheet's length.
"""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from closetbench.core.errors import DocumentError, LayoutError
from closetbench.core.lengths import read_length
from closetbench.stock.length_plan import LengthNeed, StockLength
from closetbench.stock.plan import CutFrom, CutPart, GrainOnSheet, StockSheet
from closetbench.stock.sound import Area, Defect, check_defects, sound_area

_GRAINS = {
    "": GrainOnSheet.FREE,
    "none": GrainOnSheet.FREE,
    "free": GrainOnSheet.FREE,
    "length": GrainOnSheet.ALONG,
    "along": GrainOnSheet.ALONG,
    "width": GrainOnSheet.ACROSS,
    "across": GrainOnSheet.ACROSS,
}
_TOP = {"name", "note", "seed", "kerf", "trim", "sheets", "lengths", "parts", "n_parts"}
_SHEET = {
    "key", "length", "width", "trim", "quantity", "cost", "offcut", "defects", "thickness",
}
_LENGTH = {"key", "length", "trim", "quantity", "cost", "offcut", "defects"}
_PART = {"id", "name", "length", "width", "qty", "grain", "material", "thickness"}
_COLUMNS = {"part": "id", "id": "id", "quantity": "qty", "qty": "qty", "count": "qty"} | {
    name: name for name in ("name", "length", "width", "grain", "material", "thickness")
}
_MOST_PARTS = 20_000


@dataclass(frozen=True)
class PartList:
    """What a file says: parts (one value for each piece), sheets, and a kerf if it has one;
    ``pieces`` and ``lengths``: of boards and bars.

    ``ids`` gives the id in the file for the key of each piece.
    """

    parts: tuple[CutPart, ...]
    sheets: tuple[StockSheet, ...]
    kerf: float | None
    ids: Mapping[str, str]
    pieces: tuple[LengthNeed, ...] = ()
    lengths: tuple[StockLength, ...] = ()


def read_part_list(path: Path, unit: str = "mm", by_length: Collection[str] = ()) -> PartList:
    """Read a part list by its ending, .csv or otherwise JSON.

    ``unit``: of bare numbers in CSV. ``by_length``: materials, beside those that the list
    has lengths of, whose parts have no width. Raises DocumentError for a file that cannot be read
    and LayoutError (or LengthError) for what it says, with the place.
    """
    try:
        text = path.read_bytes().decode("utf-8-sig")
    except UnicodeDecodeError:
        raise DocumentError("part list", "file", path, "it must be text in UTF-8") from None
    except OSError as error:
        reason = error.strerror or str(error)
        raise DocumentError("part list", "file", path, f"it cannot be read ({reason})") from None
    if path.suffix.lower() == ".csv":
        parts, pieces, ids = _expand(_csv_rows(text), unit, by_length)
        return PartList(parts, (), None, ids, pieces)
    return _from_json(text, unit, by_length)


def _from_json(text: str, unit: str, by_length: Collection[str]) -> PartList:
    try:
        data = json.loads(text, object_pairs_hook=_once)
    except (json.JSONDecodeError, RecursionError) as error:
        where = f"line {error.lineno}" if isinstance(error, json.JSONDecodeError) else "it"
        raise LayoutError("part list", "JSON", where, f"is not JSON ({error})") from None
    _check_object("part list", data, _TOP)
    trim = _length("part list", "trim", data.get("trim", 0.0), unit)
    kerf = data.get("kerf")
    sheets = [
        _sheet(material, number, given, trim, unit)
        for material, number, given in _by_material(data, "sheets")
    ]
    lengths = [
        _stock_length(material, number, given, unit)
        for material, number, given in _by_material(data, "lengths")
    ]
    rows = data.get("parts")
    if not isinstance(rows, list):
        raise LayoutError("part list", "parts", _shown(rows), "must be a list")
    parts, pieces, ids = _expand(
        ((f"part {n}", row) for n, row in enumerate(rows, 1)), unit,
        {*by_length, *(each.material for each in lengths)},
    )
    return PartList(
        parts,
        tuple(sheets),
        None if kerf is None else _length("part list", "kerf", kerf, unit),
        ids,
        pieces,
        tuple(lengths),
    )


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    """An object, in which every name must come once: two would contradict each other."""
    found: dict[str, Any] = {}
    for name, value in pairs:
        if name in found:
            raise LayoutError(
                "part list", name, f"{_shown(found[name])} and {_shown(value)}",
                "comes twice in one object; give it once",
            )
        found[name] = value
    return found


def _by_material(data: Mapping[str, Any], name: str) -> Iterable[tuple[str, int, Any]]:
    """Material, number and entry of all stock under a name."""
    by_material = data.get(name, {})
    if not isinstance(by_material, dict):
        raise LayoutError("part list", name, _shown(by_material), "an object by material")
    for material, given in by_material.items():
        for number, entry in enumerate(given if isinstance(given, list) else [given], 1):
            yield material, number, entry


def _stock_length(material: str, number: int, data: Any, unit: str) -> StockLength:
    place = f"length {number} of {material}"
    _check_object(place, data, _LENGTH)
    length = _length(place, "length", data.get("length"), unit)
    offcut, quantity = _at_hand(place, data)
    defects = _defects(place, data, unit, 2)
    return StockLength(
        str(data.get("key", f"{material} {length:g}" + f" offcut {number}" * offcut)),
        material, length, _length(place, "trim", data.get("trim", 0.0), unit), quantity,
        _cost(place, data),
        tuple((start, end) for start, end in defects),
        offcut,
    )  # fmt: skip


def _defects(
    place: str, data: Mapping[str, Any], unit: str, most: int
) -> tuple[tuple[float, ...], ...]:
    """Lists of 2 lengths, or of 2 or 4 where there may be so many."""
    rows = data.get("defects", [])
    if not isinstance(rows, list) or any(
        not isinstance(d, list) or len(d) not in (2, most) for d in rows
    ):
        raise LayoutError(
            place, "defects", _shown(rows),
            "must be a list of [from, to]" if most == 2
            else "must be a list of [from, to], or [from, to, from, to]",
        )
    return tuple(tuple(_length(place, "defect", v, unit) for v in row) for row in rows)


def _at_hand(place: str, data: Mapping[str, Any]) -> tuple[bool, int | None]:
    """Whether a stock entry is an offcut, and how many there are."""
    offcut = data.get("offcut", False)
    if not isinstance(offcut, bool):
        raise LayoutError(place, "offcut", _shown(offcut), "must be true or false")
    quantity = data.get("quantity", 1 if offcut else None)
    return offcut, None if quantity is None else _count(place, "quantity", quantity, 0)


def _cost(place: str, data: Mapping[str, Any]) -> float | None:
    cost = data.get("cost")
    if cost is not None and not _is_number(cost):
        raise LayoutError(place, "cost", _shown(cost), "must be a number")
    return None if cost is None else float(cost)


def _sheet(material: str, number: int, data: Any, trim: float, unit: str) -> StockSheet:
    place = f"sheet {number} of {material}"
    _check_object(place, data, _SHEET)
    length = _length(place, "length", data.get("length"), unit)
    width = _length(place, "width", data.get("width"), unit)
    offcut, quantity = _at_hand(place, data)
    defects = tuple(Defect(*row) for row in _defects(place, data, unit, 4))
    if defects and not offcut:
        raise LayoutError(
            place, "defects", len(defects), "what is bought is sound; say offcut for one at hand"
        )
    sound = Area(0.0, 0.0, length, width)
    if defects:
        check_defects(place, length, width, defects)
        sound = sound_area(place, length, width, defects)
    return StockSheet(
        str(data.get("key", f"{material} {length:g}x{width:g}" + " offcut" * offcut)),
        material,
        sound.dx,
        sound.dy,
        _length(place, "trim", data.get("trim", 0.0 if offcut else trim), unit),
        quantity,
        _cost(place, data),
        offcut,
        CutFrom(length, width, sound.x, sound.y) if defects else None,
    )


def _csv_rows(text: str) -> Iterable[tuple[str, dict[str, Any]]]:
    heading = text.partition("\n")[0]
    delimiter = ";" if heading.count(";") > heading.count(",") else ","
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True)
    names: list[str] = []
    try:
        for cells in reader:
            if not any(cell.strip() for cell in cells):
                continue
            if not names:
                names = _heading(cells)
                continue
            place = f"line {reader.line_num}"
            if len(cells) != len(names):
                raise LayoutError(place, "cells", len(cells), f"the heading has {len(names)}")
            yield place, {n: c.strip() for n, c in zip(names, cells, strict=True)}
    except csv.Error as error:
        raise LayoutError(f"line {reader.line_num}", "CSV", "unreadable", str(error)) from None
    if not names:
        raise LayoutError("part list", "CSV", "empty", "the first line names the columns")


def _heading(cells: list[str]) -> list[str]:
    names = []
    for cell in cells:
        name = cell.strip().lower()
        if name not in _COLUMNS:
            known = ", ".join(_COLUMNS)
            raise LayoutError("heading", "column", cell, f"must be one of {known}")
        names.append(_COLUMNS[name])
    for needed in ("id", "length", "width"):
        if names.count(needed) != 1:
            column = "part" if needed == "id" else needed
            raise LayoutError("heading", column, names.count(needed), "there must be one of it")
    return names


def _expand(
    rows: Iterable[tuple[str, Any]], unit: str, by_length: Collection[str]
) -> tuple[tuple[CutPart, ...], tuple[LengthNeed, ...], dict[str, str]]:
    """Each row as so many pieces, with keys of their own; those of a material that goes
    ``by_length`` and have no width apart."""
    parts: list[CutPart] = []
    pieces: list[LengthNeed] = []
    ids: dict[str, str] = {}
    seen: dict[str, CutPart] = {}
    for place, row in rows:
        _check_object(place, row, _PART)
        key = str(row.get("id", "")).strip()
        if not key:
            raise LayoutError(place, "id", "empty", "every part needs one")
        subject = f"part {key}"
        grain = str(row.get("grain", "")).strip().lower()
        if grain not in _GRAINS:
            raise LayoutError(
                subject, "grain", grain,
                "must be none, length or width, or free, along or across",
            )  # fmt: skip
        material = str(row.get("material", "")).strip() or "sheet"
        narrow = material in by_length and row.get("width", "") in ("", None)
        part = CutPart(
            key,
            _length(subject, "length", row.get("length"), unit),
            0.0 if narrow else _length(subject, "width", row.get("width"), unit),
            material,
            _GRAINS[grain],
            str(row.get("name", "")).strip(),
        )
        if key in seen:
            contrary = seen[key].grain is not part.grain
            raise LayoutError(
                subject, "grain" if contrary else "id", grain or "none" if contrary else key,
                "another line says something else of the same part" if contrary
                else "another line has the same id; give the quantity instead",
            )  # fmt: skip
        seen[key] = part
        quantity = row.get("qty", 1)
        count = _count(subject, "quantity", 1 if quantity == "" else quantity, 1)
        if len(ids) + count > _MOST_PARTS:
            raise LayoutError(subject, "quantity", count, f"at most {_MOST_PARTS} pieces in all")
        for number in range(1, count + 1):
            piece = key if count == 1 else f"{key}/{number}"
            ids[piece] = key
            if narrow:
                pieces.append(LengthNeed(piece, part.length, material))
                continue
            parts.append(
                CutPart(piece, part.length, part.width, part.material, part.grain, part.label)
            )
    return tuple(parts), tuple(pieces), ids


def _check_object(place: str, data: Any, known: set[str]) -> None:
    if not isinstance(data, dict):
        raise LayoutError(place, "entry", _shown(data), "must be an object with named values")
    for name in data:
        if name not in known:
            raise LayoutError(place, "entry", name, f"is not known; known: {', '.join(known)}")


def _length(subject: str, prop: str, value: Any, unit: str) -> float:
    if _is_number(value):
        return float(value)
    if isinstance(value, str):
        return read_length(value, unit, allow_negative=True, subject=subject, prop=prop)
    given = "missing" if value is None else _shown(value)
    raise LayoutError(subject, prop, given, "must be a length")


def _count(subject: str, prop: str, value: Any, least: int) -> int:
    if isinstance(value, str) and value.isascii() and value.isdigit() and len(value) < 10:
        value = int(value)
    if isinstance(value, bool) or not isinstance(value, int) or value < least:
        raise LayoutError(subject, prop, _shown(value), f"must be a whole number from {least} on")
    return value


def _is_number(value: Any) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


def _shown(value: Any) -> str:
    text = json.dumps(value) if value is not None else "missing"
    return text if len(text) <= 40 else text[:39] + "…"
