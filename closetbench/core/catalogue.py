"""Reading a catalogue's TOML: every field checked, every refusal with its place."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import MISSING, Field, fields, replace
from typing import Any, TypeVar

from closetbench.core import catalogue_fields as cf
from closetbench.core.bars import BAR_DEFAULTS, BAR_FIELDS, BarClass, BarLength
from closetbench.core.errors import CatalogueError
from closetbench.core.hinges import HINGE_FIELDS, HingeClass
from closetbench.core.materials import (
    BandRoll,
    Catalogue,
    EdgeBand,
    HardwareItem,
    Material,
    MaterialKind,
    SheetSize,
)
from closetbench.core.slides import SLIDE_DEFAULTS, SLIDE_FIELDS, SlideClass

_R = TypeVar("_R", SheetSize, BandRoll, BarLength)
_E = TypeVar("_E", Material, EdgeBand, HardwareItem, SlideClass, HingeClass, BarClass)


def read_catalogue(text: str, origin: str, base: Catalogue | None = None) -> Catalogue:
    """The catalogue that a TOML text says, laid over ``base``.

    Tables ``[material.KEY]``, ``[band.KEY]``, ``[hardware.KEY]``, ``[slide.KEY]``,
    ``[hinge.KEY]``, ``[bar.KEY]`` and a top-level ``currency``; fields as in the classes
    here. Lengths are numbers of mm or texts with a unit (``"3/4 in"``). An entry that
    ``base`` has needs only what changes; a file with any price must state its currency.
    CatalogueError names ``origin``, table, key and limit.
    """
    try:
        data = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise CatalogueError(origin, "text", "not TOML", str(error)) from None
    known = [*_TABLES, "currency"]
    for name, value in data.items():
        if name not in known:
            limit = f"is no table here; {cf.nearest(name, known)}"
            raise CatalogueError(origin, name, value, limit)
    currency = cf.read_text(data.get("currency", ""), origin, "currency")
    if "currency" in data and not currency:
        raise CatalogueError(origin, "currency", "empty", "must be a name such as EUR")
    base = base or Catalogue()
    under = base.unpriced() if currency not in ("", base.currency) else base
    over = Catalogue(
        _entries(Material, "material", data, origin, under.materials),
        _entries(EdgeBand, "band", data, origin, under.bands),
        _entries(HardwareItem, "hardware", data, origin, under.hardware),
        currency,
        _entries(SlideClass, "slide", data, origin, under.slides),
        _entries(HingeClass, "hinge", data, origin, under.hinges),
        _entries(BarClass, "bar", data, origin, under.bars),
    )
    if not currency and cf.mentions_price(data):
        raise CatalogueError(origin, "currency", "missing", "a file with prices must state theirs")
    merged = under.merged(over)
    for key, material in over.materials.items():
        if material.band:
            merged.band(material.band, f"{origin} [material.{key}]")
    return merged


def _entries(
    cls: type[_E], table: str, data: Mapping[str, Any], origin: str, base: Mapping[str, _E]
) -> dict[str, _E]:
    out: dict[str, _E] = {}
    for key, given in cf.read_table(data.get(table, {}), origin, table).items():
        subject = f"{origin} [{table}.{key}]"
        given = cf.read_table(given, origin, f"{table}.{key}")
        values = cf.read_fields(given, _TABLES[table], subject)
        old = base.get(key)
        if isinstance(old, Material) and {"density", "e_along", "e_across"} & values.keys():
            values.setdefault("source", f"{old.source}; changed in {origin}")
        try:
            if old is not None:
                out[key] = replace(old, **values)
                continue
            for needed in fields(cls):
                if needed.name != "key" and needed.name not in values:
                    values[needed.name] = _default(needed, subject, cf.nearest(key, base))
            out[key] = cls(key=key, **values)
        except CatalogueError as error:
            raise CatalogueError(subject, error.prop, error.value, error.limit) from None
    return out


def _default(needed: Field[Any], subject: str, hint: str) -> object:
    if needed.default is not MISSING:
        return needed.default
    if needed.name in _OPTIONAL:
        return _OPTIONAL[needed.name]
    raise CatalogueError(subject, needed.name, "missing", f"a new entry must state it; {hint}")


def _kind(value: object, subject: str, name: str) -> MaterialKind:
    kinds = {kind.name.lower(): kind for kind in MaterialKind}
    if not isinstance(value, str) or value not in kinds:
        raise CatalogueError(subject, name, value, f"must be one of {', '.join(kinds)}")
    return kinds[value]


def _sheets(value: object, subject: str, name: str) -> tuple[SheetSize, ...]:
    return _records(SheetSize, _SHEET, ("length", "width"), "sheet", value, subject, name)


def _rolls(value: object, subject: str, name: str) -> tuple[BandRoll, ...]:
    return _records(BandRoll, _LENGTH, ("length",), "roll", value, subject, name)


def _bar_lengths(value: object, subject: str, name: str) -> tuple[BarLength, ...]:
    return _records(BarLength, _LENGTH, ("length",), "length", value, subject, name)


def _records(
    cls: type[_R], readers: Mapping[str, cf.FieldReader], needed: tuple[str, ...], kind: str,
    value: object, subject: str, name: str,
) -> tuple[_R, ...]:
    if not isinstance(value, list) or not value:
        like = ", ".join(f"{key} = …" for key in needed)
        raise CatalogueError(subject, name, value, f"must be a list: [{{ {like} }}]")
    found = []
    for number, given in enumerate(value, 1):
        where = f"{subject} {kind} {number}"
        values = cf.read_fields(cf.read_table(given, where, name), readers, where)
        for key in needed:
            if key not in values:
                raise CatalogueError(where, key, "missing", f"a {kind} must state it")
        try:
            found.append(cls(**values))
        except CatalogueError as error:
            raise CatalogueError(where, error.prop, error.value, error.limit) from None
    return tuple(found)


_LENGTH: Mapping[str, cf.FieldReader] = {"length": cf.read_mm, "cost": cf.read_number}
_SHEET: Mapping[str, cf.FieldReader] = {
    **dict.fromkeys(("length", "width"), cf.read_mm),
    "cost": cf.read_number,
}
_TABLES: Mapping[str, Mapping[str, cf.FieldReader]] = {
    "material": {
        **dict.fromkeys(("title", "band", "source"), cf.read_text),
        **dict.fromkeys(("nominal", "measured", "trim"), cf.read_mm),
        **dict.fromkeys(("density", "e_along", "e_across"), cf.read_number),
        **dict.fromkeys(("grained", "needs_band"), cf.read_boolean),
        "kind": _kind,
        "sheets": _sheets,
    },
    "band": {
        **dict.fromkeys(("thickness", "width"), cf.read_mm),
        "title": cf.read_text,
        "cost_per_m": cf.read_number,
        "rolls": _rolls,
    },
    "hardware": {"title": cf.read_text, "pack": cf.read_whole, "cost": cf.read_number},
    "slide": SLIDE_FIELDS,
    "hinge": HINGE_FIELDS,
    "bar": {**BAR_FIELDS, "lengths": _bar_lengths},
}
_OPTIONAL: Mapping[str, object] = {
    "measured": None, "trim": 0.0, "band": "", "needs_band": False, **SLIDE_DEFAULTS,
    **BAR_DEFAULTS,
}
