"""The offcuts at hand: a TOML file that is read, added to, taken from and reserved in.

[[offcut]]
key = "ply18 1"
material = "ply18"   # key of a board or of a bar in the catalogue
length = 1180.0      # mm
width = 402.5        # left out: a length of a bar
grain = "length"     # the side that the grain runs along, "length" or "width"
defects = [[0.0, 120.0, 300.0, 402.5]]  # from, to along the length; from, to across the width
place = "rack, left"
from = "box room, S2"
reserved = "porch closet"

Defects are measured from one corner, those of a length from one end; [from, to] alone goes all
across.
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
from closetbench.stock.length_plan import LengthPlan, StockLength, clear_stretches
from closetbench.stock.plan import CutFrom, Plan, StockSheet
from closetbench.stock.sound import Area, Defect, around, check_defects, defects_on, sound_area

LEAST_SIDE = 80.0
LEAST_AREA = 60_000.0
"""mm and mm²: what is smaller is not kept. Common practice, no published source."""

LEAST_LENGTH = 300.0
"""mm of a board or bar: what is shorter is not kept. Common practice, no published source."""

GRAINS = ("length", "width")
_TEXTS = {"key": "key", "material": "material", "grain": "grain", "place": "place",
          "from": "source", "reserved": "reserved"}
_FIELDS = {*_TEXTS, "length", "width", "defects"}


@dataclass(frozen=True)
class Offcut:
    """A rectangle at hand, mm; ``width`` 0: a length of a bar.

    ``source``: what it was left by; ``reserved``: the job that it is kept for, or "";
    ``grain``: the side that the grain runs along, where there is one; ``place``: where it
    stands; ``defects``: damaged places that no part may hold.
    """

    key: str
    material: str
    length: float
    width: float
    source: str = ""
    reserved: str = ""
    grain: str = "length"
    place: str = ""
    defects: tuple[Defect, ...] = ()

    @property
    def sound(self) -> Area:
        """The largest rectangle without a defect, 1 mm wide on a length of a bar.

        LayoutError where nothing is sound.
        """
        return sound_area(f"offcut {self.key}", self.length, self.width, self.defects)


_HEAD = (
    "# Offcuts at hand; lengths in mm. Measure anew what a job has left: it stands here as\n"
    "# planned, and a rough cut at the store takes some millimetres of it.\n\n"
)


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
        check_defects(name, offcut.length, offcut.width, offcut.defects)
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
        if offcut.defects:
            lines.append(f"defects = [{', '.join(map(_defect_text, offcut.defects))}]")
        if offcut.grain != "length":
            lines.append(f"grain = {_text(offcut.grain)}")
        for name, value in (
            ("place", offcut.place), ("from", offcut.source), ("reserved", offcut.reserved)
        ):
            if value:
                lines.append(f"{name} = {_text(value)}")
        tables.append("\n".join(lines) + "\n")
    write_text_atomically(path, _HEAD + "\n".join(tables), "offcuts")


def offcuts_as_stock(offcuts: Iterable[Offcut], job: str = "") -> tuple[StockSheet, ...]:
    """The offcuts that a job may use, as sheets that cost nothing; their edges are sawn.

    Of a damaged one the largest sound rectangle.
    """
    return tuple(_as_sheet(o) for o in offcuts if o.width and o.reserved in ("", job))


def _as_sheet(offcut: Offcut) -> StockSheet:
    sound = offcut.sound
    sides, corner, whole = (sound.dx, sound.dy), (sound.x, sound.y), (offcut.length, offcut.width)
    if offcut.grain != "length":
        sides, corner, whole = sides[::-1], corner[::-1], whole[::-1]
    return StockSheet(
        offcut.key, offcut.material, *sides, quantity=1, offcut=True,
        cut_from=CutFrom(*whole, *corner) if offcut.defects else None,
    )


def offcuts_as_lengths(offcuts: Iterable[Offcut], job: str = "") -> tuple[StockLength, ...]:
    """The offcuts that a job may use, as boards and bars that cost nothing.

    A defect counts over a board's whole width; one that is damaged all along is left out.
    """
    found = (_as_length(o) for o in offcuts if o.reserved in ("", job))
    return tuple(each for each in found if clear_stretches(each, 0.0))


def _as_length(offcut: Offcut) -> StockLength:
    length, width = offcut.length, offcut.width
    defects = tuple((d.start, d.end) for d in offcut.defects)
    if width and offcut.grain != "length":
        length, width = width, length
        defects = tuple((d.low, d.high) if d.high else (0.0, length) for d in offcut.defects)
    return StockLength(
        offcut.key, offcut.material, length, quantity=1, offcut=True, width=width, defects=defects
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
    by_key = {offcut.key: offcut for offcut in offcuts}
    fresh = []
    for sheet in plan.sheets:
        origin = f"{job}, {sheet.name}"
        fresh += _around(by_key.get(sheet.sheet.key), sheet.sheet, sheet.kerf, origin)
        fresh += [
            Offcut("", sheet.sheet.material, r.dx, r.dy, origin)
            for r in sheet.rests if _large(r.dx, r.dy)
        ]
    fresh += [
        Offcut("", bar.stock.material, bar.rest - kerf, bar.stock.width, f"{job}, {bar.name}")
        for bar in (lengths.bars if lengths else ()) if bar.rest - kerf >= LEAST_LENGTH
    ]
    for each in fresh:
        number = 1
        while f"{each.material} {number}" in keys:
            number += 1
        keys.add(f"{each.material} {number}")
        left.append(replace(each, key=f"{each.material} {number}"))
    return tuple(left)


def _around(
    offcut: Offcut | None, sheet: StockSheet, kerf: float, origin: str
) -> list[Offcut]:
    """What is worth keeping around the sound part that a sheet is of a damaged offcut."""
    whole = sheet.cut_from
    if offcut is None or whole is None:
        return []
    sides, sound = (whole.length, whole.width), Area(whole.x, whole.y, sheet.length, sheet.width)
    if offcut.grain != "length":
        sides, sound = sides[::-1], Area(sound.y, sound.x, sound.dy, sound.dx)
    found = []
    for piece in around(*sides, sound, kerf):
        kept = Offcut(
            "", offcut.material, piece.dx, piece.dy, origin, grain=offcut.grain,
            defects=defects_on(piece, offcut.defects, sides[1]),
        )
        try:
            clear = kept.sound
        except LayoutError:
            continue
        if _large(clear.dx, clear.dy):
            found.append(kept)
    return found


def _large(dx: float, dy: float) -> bool:
    return min(dx, dy) >= LEAST_SIDE and dx * dy >= LEAST_AREA


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
    return Offcut(**found, defects=read_defects(place, row.get("defects", [])))


def read_defects(subject: str, rows: Any) -> tuple[Defect, ...]:
    """Defects from lists of 2 or 4 numbers of mm; LayoutError where they are none."""
    if not isinstance(rows, list):
        rows = [rows]
    for number, row in enumerate(rows, 1):
        if not isinstance(row, list) or len(row) not in (2, 4) or not all(
            isinstance(v, int | float) and not isinstance(v, bool) and isfinite(v) for v in row
        ) or not all(low < high for low, high in zip(row[::2], row[1::2], strict=True)):
            raise LayoutError(
                subject, f"defect {number}", row,
                "must be [from, to] along the length, or from, to, from, to with its width, in mm, "
                "each start first",
            )
    return tuple(Defect(*map(float, row)) for row in rows)


def _defect_text(defect: Defect) -> str:
    values = [defect.start, defect.end, *([defect.low, defect.high] if defect.high else [])]
    return f"[{', '.join(repr(float(v)) for v in values)}]"


def _text(value: str) -> str:
    """A TOML basic string; JSON's escapes are among TOML's, but for the delete character."""
    return json.dumps(value, ensure_ascii=False).replace("\x7f", "\\u007f")
