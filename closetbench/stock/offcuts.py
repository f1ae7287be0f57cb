"""The offcuts at hand: a TOML file that is read, added to, taken from and reserved in.

[[offcut]]
key = "ply18 1"
material = "ply18"   # key of a board or of a bar in the catalogue
length = 1180.0      # mm
width = 402.5        # left out: a length of a bar
grain = "length"     # the side that the grain runs along, "length" or "width"
place = "rack, left"
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
from closetbench.stock.atomic import write_text_atomically
from closetbench.stock.checks import check_keys, millimetres
from closetbench.stock.length_plan import LengthPlan, StockLength
from closetbench.stock.plan import Plan, StockSheet

LEAST_SIDE = 80.0
LEAST_AREA = 60_000.0
"""mm and mm²: what is smaller is not kept. Common practice, no published source."""

LEAST_LENGTH = 300.0
"""mm of a board or bar: what is shorter is not kept. Common practice, no published source."""

GRAINS = ("length", "width")
_TEXTS = {"key": "key", "material": "material", "grain": "grain", "place": "place",
          "from": "source", "reserved": "reserved"}
_FIELDS = {*_TEXTS, "length", "width"}


@dataclass(frozen=True)
class Offcut:
    """A rectangle at hand, mm; ``width`` 0: a length of a bar.

    ``source``: what it was left by; ``reserved``: the job that it is kept for, or "";
    ``grain``: the side that the grain runs along, where there is one; ``place``: where it
    stands.
    """

    key: str
    material: str
    length: float
    width: float
    source: str = ""
    reserved: str = ""
    grain: str = "length"
    place: str = ""


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
    check_offcuts(offcuts)
    return offcuts


def check_offcuts(offcuts: Sequence[Offcut]) -> None:
    """Raise LayoutError for offcuts of one key, of no size, or of a grain that is neither."""
    check_keys("offcut", (offcut.key for offcut in offcuts))
    for offcut in offcuts:
        name = f"offcut {offcut.key}"
        if not offcut.material:
            raise LayoutError(name, "material", "empty", "must be a key of the catalogue")
        for prop, value, least in (("length", offcut.length, 1.0), ("width", offcut.width, 0.0)):
            if not isfinite(value) or value < least:
                raise LayoutError(name, prop, millimetres(value), f"must be {least:g} mm or more")
        if offcut.grain not in GRAINS:
            raise LayoutError(name, "grain", offcut.grain, f"must be {' or '.join(GRAINS)}")


def write_offcuts(path: Path, offcuts: Sequence[Offcut]) -> None:
    """Write the offcuts whole or not at all; DocumentError where that fails."""
    check_offcuts(offcuts)
    tables = []
    for offcut in offcuts:
        lines = [
            "[[offcut]]",
            f"key = {_text(offcut.key)}",
            f"material = {_text(offcut.material)}",
            f"length = {float(offcut.length)!r}",
        ]
        if offcut.width:
            lines.append(f"width = {float(offcut.width)!r}")
        if offcut.grain != "length":
            lines.append(f"grain = {_text(offcut.grain)}")
        for name, value in (
            ("place", offcut.place), ("from", offcut.source), ("reserved", offcut.reserved)
        ):
            if value:
                lines.append(f"{name} = {_text(value)}")
        tables.append("\n".join(lines) + "\n")
    write_text_atomically(
        path, "# Offcuts at hand; lengths in mm.\n\n" + "\n".join(tables), "offcuts")


def offcuts_as_stock(offcuts: Iterable[Offcut], job: str = "") -> tuple[StockSheet, ...]:
    """The offcuts that a job may use, as sheets that cost nothing; their edges are sawn."""
    return tuple(
        StockSheet(o.key, o.material, *_along_grain(o), quantity=1, offcut=True)
        for o in offcuts
        if o.width and o.reserved in ("", job)
    )


def _along_grain(offcut: Offcut) -> tuple[float, float]:
    sides = offcut.length, offcut.width
    return sides if offcut.grain == "length" else (sides[1], sides[0])


def offcuts_as_lengths(offcuts: Iterable[Offcut], job: str = "") -> tuple[StockLength, ...]:
    """The offcuts that a job may use, as boards and bars that cost nothing."""
    return tuple(
        StockLength(
            o.key, o.material, _along_grain(o)[0] if o.width else o.length, quantity=1,
            offcut=True, width=_along_grain(o)[1] if o.width else 0.0,
        )
        for o in offcuts
        if o.reserved in ("", job)
    )


def taken(plan: Plan, lengths: LengthPlan | None = None) -> tuple[str, ...]:
    """Keys of the offcuts that plans take."""
    bars = lengths.bars if lengths else ()
    return (
        *(sheet.sheet.key for sheet in plan.sheets if sheet.sheet.offcut),
        *(bar.stock.key for bar in bars if bar.stock.offcut),
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
    lengths: LengthPlan | None = None,
    kerf: float = 0.0,
) -> tuple[Offcut, ...]:
    """The offcuts at hand once all is cut: those that were taken are out, what is left and
    large enough is in, in no place as yet. ``kerf``: of the cut that frees a length's rest.

    Raises LayoutError where a plan takes an offcut that is not there.
    """
    used = taken(plan, lengths)
    keys = {offcut.key for offcut in offcuts}
    for key in used:
        if key not in keys:
            raise LayoutError(
                f"offcut {key}", "key", key, "the plan takes it, but it is not at hand"
            )
    left = [offcut for offcut in offcuts if offcut.key not in used]
    rests = [
        (sheet.sheet.material, rest.dx, rest.dy, sheet.name)
        for sheet in plan.sheets for rest in sheet.rests
        if min(rest.dx, rest.dy) >= LEAST_SIDE and rest.dx * rest.dy >= LEAST_AREA
    ]
    rests += [
        (bar.stock.material, bar.rest - kerf, bar.stock.width, bar.name)
        for bar in (lengths.bars if lengths else ()) if bar.rest - kerf >= LEAST_LENGTH
    ]
    for material, length, width, origin in rests:
        number = 1
        while f"{material} {number}" in keys:
            number += 1
        keys.add(f"{material} {number}")
        left.append(Offcut(f"{material} {number}", material, length, width, f"{job}, {origin}"))
    return tuple(left)


def _offcut(number: int, row: Any) -> Offcut:
    place = f"offcut {number}"
    if not isinstance(row, dict):
        raise LayoutError(place, "table", row, "it must be a table")
    for name in row:
        if name not in _FIELDS:
            raise LayoutError(place, "entry", name, f"known are {', '.join(sorted(_FIELDS))}")
    found: dict[str, Any] = {}
    for name, target in _TEXTS.items():
        value = row.get(name, "length" if name == "grain" else "")
        if not isinstance(value, str) or (name in ("key", "material") and not value.strip()):
            raise LayoutError(place, name, value if value != "" else "missing", "must be a text")
        found[target] = value
    for name in ("length", "width"):
        value = row.get(name, "missing" if name == "length" else 0.0)
        number_given = isinstance(value, int | float) and not isinstance(value, bool)
        if not number_given or not isfinite(value) or (name in row and value <= 0):
            shown = millimetres(value) if number_given and isfinite(value) else value
            raise LayoutError(place, name, shown, "must be a number of mm above 0")
        found[name] = float(value)
    return Offcut(**found)


def _text(value: str) -> str:
    """A TOML basic string; JSON's escapes are among TOML's, but for the delete character."""
    return json.dumps(value, ensure_ascii=False).replace("\x7f", "\\u007f")
