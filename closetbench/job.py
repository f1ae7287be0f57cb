"""A job as a TOML file: read into core values, and written back.

The tables follow the dataclasses of core: [survey] holds the readings by the names of
``Survey``, [[carcass]] the fields of ``CarcassSpec`` with [carcass.base], [carcass.back],
[[carcass.bay]], [carcass.rules] and [carcass.drill], each other table of ``COMPONENTS``
those of its own specification with inner records as inner tables, [circumstances] those of
``Circumstances`` with [circumstances.wall], [[circumstances.rod]], [[circumstances.bench]]
and [[circumstances.unit]].
A number is a length in the job's unit; a text is a length in any spelling that
``core.lengths`` reads. Errors name the file, the table, the key, the value and the limit.
"""

from __future__ import annotations

import difflib
import tomllib
import types
import typing
from collections.abc import Mapping
from dataclasses import MISSING, Field, dataclass, field, fields, is_dataclass, replace
from enum import Enum
from fractions import Fraction
from pathlib import Path
from typing import Any

from closetbench.core.anchoring import Drawer, FreeUnit
from closetbench.core.bench import BenchSpec
from closetbench.core.bench_strength import Bench
from closetbench.core.circumstances import Circumstances
from closetbench.core.closet import ClosetDesign, Spec
from closetbench.core.doors import DoorsSpec
from closetbench.core.drawers import DrawersSpec
from closetbench.core.envelope import Clearances, Objective
from closetbench.core.errors import ClosetError, DocumentError
from closetbench.core.existing import ExistingSpec
from closetbench.core.face_frame import FaceFrameSpec
from closetbench.core.fillers import FillersSpec
from closetbench.core.joinery import JoineryRules
from closetbench.core.lengths import UNITS, LengthFormat, read_length
from closetbench.core.materials import Catalogue
from closetbench.core.rods import RodsSpec
from closetbench.core.rods_strength import Rod
from closetbench.core.shoe_shelves import ShoeShelvesSpec
from closetbench.core.specs import CarcassSpec, PanelSpec
from closetbench.core.survey import Survey
from closetbench.core.wall_shelves import CornerShelvesSpec, OverShelfSpec
from closetbench.resources import load_catalogue
from closetbench.stock.plan import CutSettings, CutWeights
from closetbench.stock.purchase import SpareRule
from closetbench.stock.tools import Shop, check_shop

PLAIN_NUMBERS = frozenset({
    (JoineryRules, "depth_fraction"), (JoineryRules, "most_fraction"),
    (JoineryRules, "least_web"), (CutSettings, "seconds"), (CutSettings, "tidy"),
    (CutWeights, "cuts"), (CutWeights, "length"), (CutWeights, "offcut"),
    (Circumstances, "shelf_load"), (Circumstances, "sag_over"), (Circumstances, "shelf_middle"),
    (Rod, "load"), (Bench, "volume"), (Bench, "lid_turns"),
    (FreeUnit, "mass"), (Drawer, "mass"), (Survey, "level_error"), (Survey, "door_opens"),
    (Clearances, "confidence"), (ExistingSpec, "weight"),
})
"""Fields that are floats and no lengths."""

COMPONENTS: Mapping[str, type[Spec]] = {
    "carcass": CarcassSpec, "drawers": DrawersSpec, "doors": DoorsSpec,
    "rods": RodsSpec, "existing": ExistingSpec, "face_frame": FaceFrameSpec,
    "bench": BenchSpec, "shoe_shelves": ShoeShelvesSpec, "corner_shelves": CornerShelvesSpec,
    "over_shelf": OverShelfSpec, "fillers": FillersSpec, "panel": PanelSpec,
}
"""The tables of components, in the order in which a closet is built from them."""

NOTHING = "none"
"""The text that sets an optional value to None where its default is another."""

SIGNED = ("lean_", "rise_")
SIGNED_KEYS = frozenset({"value", "x0", "y0", "z0"})
"""Keys of lengths that may be below 0: offsets, and places of obstacles."""
TABLE_NAMES = {
    "bays": "bay", "rods": "rod", "benches": "bench", "units": "unit", "extras": "extra",
    "obstacles": "obstacle", "own": "saw",
}
"""Fields whose table in the file has another name: one [[carcass.bay]] for each bay."""

_FORMATS = {"mm": "1", "cm": "0.1", "m": "0.001", "in": "0.001", "in-frac": "1/16",
            "ft-in": "1/16"}
_USUAL = {"in": "in-frac", "ft": "ft-in"}


@dataclass(frozen=True)
class Job:
    """A whole job. ``measured``: thickness by material as measured, mm; ``bit``: the
    router bit at hand; ``trim`` overrides the catalogue's; ``seconds`` per material;
    ``offcuts_file``: the offcuts at hand, used where they save a sheet; ``shop``: who cuts
    what; ``spare``: the rule for sheets to spare."""

    design: ClosetDesign
    lengths: LengthFormat = field(default_factory=lambda: LengthFormat("mm", Fraction(1)))
    cutting: CutSettings = field(default_factory=CutSettings)
    trim: float | None = None
    bit: float | None = None
    measured: tuple[tuple[str, float], ...] = ()
    catalogue_file: Path | None = None
    offcuts_file: Path | None = None
    shop: Shop = field(default_factory=Shop)
    spare: SpareRule = field(default_factory=SpareRule)

    def catalogue(self) -> Catalogue:
        """The catalogue with the user's file and the measured thicknesses over it."""
        found = load_catalogue(self.catalogue_file)
        materials = dict(found.materials)
        for key, value in self.measured:
            board = found.material(key, subject=f"{self.design.name}, measured thickness")
            materials[key] = board.with_measured(value)
        return replace(found, materials=materials)


class JobError(DocumentError):
    """A job file that cannot be read: ``subject`` names the file and the table."""


def read_job(path: Path) -> Job:
    """The job in a file. Raises ``JobError``, or the ``ClosetError`` of a bad value."""
    try:
        text = path.read_text(encoding="utf-8")
    except OSError as error:
        raise JobError(
            path.name, "file", str(path), f"cannot be read: {error.strerror or error}"
        ) from error
    except UnicodeDecodeError as error:
        raise JobError(path.name, "file", str(path), "must be UTF-8 text") from error
    return parse_job(text, path.name, path.parent)


def parse_job(text: str, origin: str, folder: Path) -> Job:
    """The job in a text; ``origin`` names it in errors, ``folder`` is where paths start."""
    try:
        data = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise JobError(origin, "text", "not TOML", str(error)) from error
    known = ("job", "measured", "survey", "size", "clearances", "circumstances", "cutting",
             "shop", "spare", *COMPONENTS)
    _refuse_unknown(f"{origin}", data, known, "table")
    head = _table(data, "job", origin)
    _refuse_unknown(
        f"{origin} [job]", head,
        ("name", "unit", "print", "step", "catalogue", "depth_limit", "objective"),
    )
    unit = head.get("unit", "mm")
    if unit not in UNITS:
        raise JobError(f"{origin} [job]", "unit", repr(unit), f"must be one of {', '.join(UNITS)}")
    reader = _Reader(origin, unit)
    name = reader.text("job", head, "name", "Closet")
    survey = (
        reader.record(Survey, _table(data, "survey", origin), "survey")
        if "survey" in data else None
    )
    size = _table(data, "size", origin) if "size" in data else None
    if size is not None:
        _refuse_unknown(f"{origin} [size]", size, ("width", "depth", "height"))
    if size is not None and survey is not None:
        raise JobError(
            f"{origin} [size]", "size", "given", "must be left out where there is a [survey]"
        )
    design = ClosetDesign(
        name,
        survey,
        reader.record(Clearances, _table(data, "clearances", origin), "clearances"),
        None if size is None else (
            reader.needed("size", size, "width"), reader.needed("size", size, "depth"),
            reader.needed("size", size, "height"),
        ),
        reader.optional("job", head, "depth_limit"),
        tuple(spec for name, cls in COMPONENTS.items() for spec in reader.records(cls, data, name)),
        reader.record(Circumstances, _table(data, "circumstances", origin), "circumstances"),
        reader.choice("job", head, "objective", Objective.WIDTH),
    )
    cutting = dict(_table(data, "cutting", origin))
    extra: dict[str, Any] = {k: cutting.pop(k) for k in ("trim", "bit", "offcuts") if k in cutting}
    catalogue = head.get("catalogue")
    shop = reader.record(Shop, _table(data, "shop", origin), "shop")
    check_shop(shop)
    return Job(
        design,
        _lengths(reader, head),
        reader.record(CutSettings, cutting, "cutting"),
        reader.optional("cutting", extra, "trim"),
        reader.optional("cutting", extra, "bit"),
        tuple(
            (key, reader.length("measured", key, value))
            for key, value in _table(data, "measured", origin).items()
        ),
        None if catalogue is None else folder / str(catalogue),
        folder / reader.text("cutting", extra, "offcuts", "") if "offcuts" in extra else None,
        shop,
        reader.record(SpareRule, _table(data, "spare", origin), "spare"),
    )


def _lengths(reader: _Reader, head: Mapping[str, Any]) -> LengthFormat:
    style = head.get("print", _USUAL.get(reader.unit, reader.unit))
    if style not in _FORMATS:
        raise JobError(
            f"{reader.origin} [job]", "print", repr(style), f"must be one of {', '.join(_FORMATS)}"
        )
    step = str(head.get("step", _FORMATS[style]))
    try:
        return LengthFormat(style, Fraction(step))
    except (ValueError, ZeroDivisionError) as error:
        limit = error.limit if isinstance(error, ClosetError) else "must be a number or a fraction"
        raise JobError(f"{reader.origin} [job]", "step", repr(step), limit) from error


def _table(data: Mapping[str, Any], name: str, origin: str) -> Mapping[str, Any]:
    table = data.get(name, {})
    if not isinstance(table, dict):
        raise JobError(origin, name, repr(table), f"must be a table: [{name}]")
    return table


def _refuse_unknown(
    subject: str, table: Mapping[str, Any], known: typing.Iterable[str], kind: str = "key"
) -> None:
    names = list(known)
    for key in table:
        if key not in names:
            near = difflib.get_close_matches(key, names, 1)
            hint = f"did you mean {near[0]}?" if near else f"known are {', '.join(names)}"
            raise JobError(subject, kind, key, f"is unknown; {hint}")


class _Reader:
    """Reads tables into dataclasses, lengths in the job's unit."""

    def __init__(self, origin: str, unit: str) -> None:
        self.origin = origin
        self.unit = unit

    def length(self, table: str, key: str, value: object) -> float:
        subject = f"{self.origin} [{table}]"
        if isinstance(value, bool) or not isinstance(value, int | float | str):
            raise JobError(subject, key, repr(value), "must be a length: a number or a text")
        try:
            return read_length(
                value if isinstance(value, str) else repr(value), self.unit,
                allow_negative=key.startswith(SIGNED) or key in SIGNED_KEYS,
                subject=subject, prop=key,
            )
        except ClosetError as error:
            raise JobError(error.subject, error.prop, error.value, error.limit) from error

    def needed(self, table: str, data: Mapping[str, Any], key: str) -> float:
        if key not in data:
            raise JobError(f"{self.origin} [{table}]", key, "missing", "must be given")
        return self.length(table, key, data[key])

    def optional(self, table: str, data: Mapping[str, Any], key: str) -> float | None:
        return self.length(table, key, data[key]) if key in data else None

    def text(self, table: str, data: Mapping[str, Any], key: str, default: str) -> str:
        value = data.get(key, default)
        if not isinstance(value, str) or not value.strip():
            raise JobError(f"{self.origin} [{table}]", key, repr(value), "must be a text")
        return value

    def choice(self, table: str, data: Mapping[str, Any], key: str, default: Any) -> Any:
        return self._value(type(default), data[key], table, key, False) if key in data else default

    def records(
        self, cls: type[Any], data: Mapping[str, Any], name: str, within: str = ""
    ) -> tuple[Any, ...]:
        tables = data.get(name, [])
        if not isinstance(tables, list):
            raise JobError(self.origin, name, repr(tables), f"must be tables: [[{name}]]")
        prefix = f"{within}, " if within else ""
        found = []
        for i, table in enumerate(tables, 1):
            if not isinstance(table, dict):
                raise JobError(self.origin, name, repr(table), f"must be a table: [[{name}]]")
            label = table.get("name", i)
            found.append(self.record(cls, table, f"{prefix}{name} {label}"))
        return tuple(found)

    def record(self, cls: type[Any], data: Mapping[str, Any], table: str) -> Any:
        """An instance of a dataclass from a table; missing keys take the class's defaults."""
        hints = typing.get_type_hints(cls)
        names = {key_of(f): f for f in fields(cls)}
        subject = f"{self.origin} [{table}]"
        _refuse_unknown(subject, data, names)
        values = {}
        for key, item in names.items():
            if key in data:
                plain = (cls, key) in PLAIN_NUMBERS
                values[item.name] = self._value(hints[item.name], data[key], table, key, plain)
            elif item.default is MISSING and item.default_factory is MISSING:
                raise JobError(subject, key, "missing", "must be given")
        try:
            return cls(**values)
        except ClosetError as error:
            raise JobError(subject, error.prop, error.value, error.limit) from error

    def _value(self, kind: Any, value: object, table: str, key: str, plain: bool) -> Any:
        subject = f"{self.origin} [{table}]"
        if isinstance(kind, types.UnionType):
            if value == NOTHING:
                return None
            kind = next(k for k in typing.get_args(kind) if k is not types.NoneType)
        if is_dataclass(kind):
            if not isinstance(value, dict):
                raise JobError(subject, key, repr(value), "must be a table")
            return self.record(typing.cast("type[Any]", kind), value, f"{table}, {key}")
        if typing.get_origin(kind) is tuple:
            if not isinstance(value, list):
                raise JobError(subject, key, repr(value), "must be a list")
            item = typing.get_args(kind)[0]
            if not is_dataclass(item):
                return tuple(self._value(item, v, table, key, plain) for v in value)
            return self.records(typing.cast("type[Any]", item), {key: value}, key, table)
        if isinstance(kind, type) and issubclass(kind, Enum):
            choices = [m.value for m in kind]
            if value not in choices:
                raise JobError(subject, key, repr(value), f"must be one of {', '.join(choices)}")
            return kind(value)
        if kind is bool:
            return self._checked(subject, key, value, bool, "must be true or false")
        if kind is str:
            return self._checked(subject, key, value, str, "must be a text")
        if kind is int:
            if isinstance(value, bool):
                value = str(value)
            return self._checked(subject, key, value, int, "must be a whole number")
        if plain:
            if isinstance(value, bool) or not isinstance(value, int | float):
                raise JobError(subject, key, repr(value), "must be a number")
            return float(value)
        return self.length(table, key, value)

    def _checked(
        self, subject: str, key: str, value: object, kind: type, limit: str
    ) -> object:
        if not isinstance(value, kind):
            raise JobError(subject, key, repr(value), limit)
        return value


def key_of(item: Field[Any]) -> str:
    """What a field is called in a file: tables that may come several times by one of them."""
    several = str(item.type).startswith("tuple[")
    return TABLE_NAMES.get(item.name, item.name) if several else item.name
