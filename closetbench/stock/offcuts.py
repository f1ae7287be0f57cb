"""The offcuts at hand: a TOML file that is read, added to, taken from and reserved in.

[[offcut]]
key = "ply 18 1"
material = "ply 18"
length = 1180.0      # mm; along the grain, where there is one
width = 402.5
from = "box room, S2"
reserved = "porch closet"
"""

from __future__ import annotations

import json
import tomllib
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from math import isfinite
from pathlib import Path
from typing import Any

from closetbench.core.errors import DocumentError, LayoutError
from closetbench.stock.checks import check_keys, millimetres
from closetbench.stock.plan import Plan, StockSheet
from closetbench.stock.whole_file import write_whole

LEAST_SIDE = 80.0
LEAST_AREA = 60_000.0
"""mm and mm²: what is smaller is not kept. Common practice, no published source."""

_FIELDS = {"key", "material", "length", "width", "from", "reserved"}


@dataclass(frozen=True)
class Offcut:
    """A rectangle at hand, mm, its length along the grain where there is one.

    ``source``: what it was left by; ``reserved``: the job that it is kept for, or "".
    """

    key: str
    material: str
    length: float
    width: float
    source: str = ""
    reserved: str = ""


def read_offcuts(path: Path) -> tuple[Offcut, ...]:
    """The offcuts of a file; none where there is no file yet.

    Raises DocumentError for a file that cannot be read, LayoutError for what it says.
    """
    try:
        data = tomllib.loads(path.read_bytes().decode("utf-8"))
    except FileNotFoundError:
        return ()
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError) as error:
        raise DocumentError(
            "offcuts", "file", path, f"it cannot be read as TOML ({error})"
        ) from None
    rows = data.get("offcut", [])
    unknown = sorted(set(data) - {"offcut"})
    if unknown or not isinstance(rows, list):
        named = unknown[0] if unknown else "offcut"
        raise LayoutError("offcuts", "table", named, "the file holds [[offcut]] tables only")
    offcuts = tuple(_offcut(number, row) for number, row in enumerate(rows, 1))
    check_keys("offcut", (offcut.key for offcut in offcuts))
    return offcuts


def write_offcuts(path: Path, offcuts: Sequence[Offcut]) -> None:
    """Write the offcuts whole or not at all; DocumentError where that fails."""
    check_keys("offcut", (offcut.key for offcut in offcuts))
    tables = []
    for offcut in offcuts:
        lines = [
            "[[offcut]]",
            f"key = {_text(offcut.key)}",
            f"material = {_text(offcut.material)}",
            f"length = {float(offcut.length)!r}",
            f"width = {float(offcut.width)!r}",
        ]
        if offcut.source:
            lines.append(f"from = {_text(offcut.source)}")
        if offcut.reserved:
            lines.append(f"reserved = {_text(offcut.reserved)}")
        tables.append("\n".join(lines) + "\n")
    write_whole(path, "# Offcuts at hand; lengths in mm.\n\n" + "\n".join(tables), "offcuts")


def offcuts_as_stock(offcuts: Iterable[Offcut], job: str = "") -> tuple[StockSheet, ...]:
    """The offcuts that a job may use, as sheets that cost nothing; their edges are sawn."""
    return tuple(
        StockSheet(o.key, o.material, o.length, o.width, quantity=1, offcut=True)
        for o in offcuts
        if o.reserved in ("", job)
    )


def reserve(offcuts: Sequence[Offcut], keys: Iterable[str], job: str) -> tuple[Offcut, ...]:
    """The offcuts with some kept for a job; an empty job sets them free.

    Raises LayoutError for a key that is not there or is kept for another job.
    """
    wanted = set(keys)
    by_key = {offcut.key: offcut for offcut in offcuts}
    for key in sorted(wanted):
        if key not in by_key:
            raise LayoutError(f"offcut {key}", "key", key, "there is no such offcut")
        holder = by_key[key].reserved
        if job and holder not in ("", job):
            raise LayoutError(f"offcut {key}", "reserved", holder, "it is kept for that job")
    return tuple(replace(o, reserved=job) if o.key in wanted else o for o in offcuts)


def after_cutting(
    offcuts: Sequence[Offcut],
    plan: Plan,
    job: str,
    least_side: float = LEAST_SIDE,
    least_area: float = LEAST_AREA,
) -> tuple[Offcut, ...]:
    """The offcuts at hand once a plan is cut: those it takes are out, its large rests in.

    Raises LayoutError where the plan takes an offcut that is not there.
    """
    taken = {sheet.sheet.key for sheet in plan.sheets if sheet.sheet.offcut}
    missing = sorted(taken - {offcut.key for offcut in offcuts})
    if missing:
        raise LayoutError(
            f"offcut {missing[0]}", "key", missing[0], "the plan takes it, but it is not at hand"
        )
    left = [offcut for offcut in offcuts if offcut.key not in taken]
    keys = {offcut.key for offcut in offcuts}
    for sheet in plan.sheets:
        for rest in sheet.rests:
            if min(rest.dx, rest.dy) < least_side or rest.dx * rest.dy < least_area:
                continue
            material = sheet.sheet.material
            number = 1
            while f"{material} {number}" in keys:
                number += 1
            key = f"{material} {number}"
            keys.add(key)
            left.append(Offcut(key, material, rest.dx, rest.dy, f"{job}, {sheet.name}"))
    return tuple(left)


def _offcut(number: int, row: Any) -> Offcut:
    place = f"offcut {number}"
    if not isinstance(row, dict):
        raise LayoutError(place, "table", row, "it must be a table")
    for name in row:
        if name not in _FIELDS:
            raise LayoutError(place, "entry", name, f"known are {', '.join(sorted(_FIELDS))}")
    texts = {}
    for name in ("key", "material", "from", "reserved"):
        value = row.get(name, "")
        if not isinstance(value, str) or (name in ("key", "material") and not value.strip()):
            raise LayoutError(place, name, value if value != "" else "missing", "must be a text")
        texts[name] = value
    sides = []
    for name in ("length", "width"):
        value = row.get(name, "missing")
        number_given = isinstance(value, int | float) and not isinstance(value, bool)
        if not number_given or not isfinite(value) or value <= 0:
            shown = millimetres(value) if number_given and isfinite(value) else value
            raise LayoutError(place, name, shown, "must be a number of mm above 0")
        sides.append(float(value))
    return Offcut(
        texts["key"], texts["material"], sides[0], sides[1], texts["from"], texts["reserved"]
    )


def _text(value: str) -> str:
    """A TOML basic string; JSON's escapes are among TOML's, but for the delete character."""
    return json.dumps(value, ensure_ascii=False).replace("\x7f", "\\u007f")
