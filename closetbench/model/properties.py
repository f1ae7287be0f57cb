"""Properties of document objects, and how they stand for fields of the core's dataclasses.

A table of ``Prop`` per object says both. Names of properties are in users' files and in
their expressions: they never change.
"""

from __future__ import annotations

import typing
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace
from enum import Enum
from typing import Any, TypeVar

from closetbench.core.errors import ClosetError
from closetbench.model.plain import from_text, to_text, type_hints

LENGTH = "App::PropertyLength"
DISTANCE = "App::PropertyDistance"
FLOAT = "App::PropertyFloat"
INTEGER = "App::PropertyInteger"
BOOL = "App::PropertyBool"
STRING = "App::PropertyString"
TEXTS = "App::PropertyStringList"
FLOATS = "App::PropertyFloatList"
MAP = "App::PropertyMap"
ENUMERATION = "App::PropertyEnumeration"
LINK = "App::PropertyLinkGlobal"
LINKS = "App::PropertyLinkListGlobal"

_Record = TypeVar("_Record")
_QUANTITIES = (LENGTH, DISTANCE)
_READ_ONLY, _HIDDEN, _OUTPUT = 1, 4, 8
OWN_BAND = "auto"
"""The value of a band property that takes the material's own band."""


def camel(name: str) -> str:
    """``width_front_low`` as ``WidthFrontLow``."""
    return "".join(word.capitalize() for word in name.split("_"))


@dataclass(frozen=True)
class Codec:
    """How a field's value is kept in a property."""

    encode: Callable[[Any], Any] = lambda value: value
    decode: Callable[[Any], Any] = lambda value: value


PLAIN = Codec()
ZERO_IS_NONE = Codec(lambda v: 0.0 if v is None else v, lambda v: v or None)
EMPTY_IS_NONE = Codec(lambda v: v or "", lambda v: v or None)
BAND = Codec(
    lambda v: OWN_BAND if v is None else v, lambda v: None if v == OWN_BAND else v
)
TUPLE = Codec(list, tuple)


def enum_codec(kind: type[Enum]) -> Codec:
    """The codec of an enumeration, kept by its members' texts."""
    return Codec(lambda v: v.value, kind)


def records_codec(kind: type[Any], name: str) -> Codec:
    """The codec of a tuple of dataclasses, a text of JSON each."""
    return Codec(
        lambda records: [to_text(r) for r in records],
        lambda texts: tuple(
            from_text(kind, text, name, f"line {i}") for i, text in enumerate(texts, 1)
        ),
    )


@dataclass(frozen=True)
class Prop:
    """One property. ``field``: the dataclass field it stands for, dotted, "" for none;
    ``choices``: of an enumeration; ``result``: worked out, so that it is read-only and its
    change asks for no recompute; ``locked``: read-only for other reasons; ``initial``: the
    value that a new object has; ``unless``: the boolean property that says, while it is on,
    that the field is None, whatever this one holds."""

    name: str
    type: str
    group: str
    text: str
    field: str = ""
    codec: Codec = PLAIN
    choices: tuple[str, ...] = ()
    result: bool = False
    locked: bool = False
    hidden: bool = False
    initial: Any = None
    unless: str = ""


def choice(
    name: str, group: str, text: str, field: str, kind: type[Enum], initial: Enum | None = None
) -> Prop:
    """An enumeration property for an enum field."""
    return Prop(
        name, ENUMERATION, group, text, field, enum_codec(kind), tuple(m.value for m in kind),
        initial=None if initial is None else initial.value,
    )


def result(name: str, type_: str, text: str, group: str = "Results", hidden: bool = False) -> Prop:
    """A property that only ``execute`` writes."""
    return Prop(name, type_, group, text, result=True, hidden=hidden)


def starting_as(record: Any, props: Iterable[Prop]) -> tuple[Prop, ...]:
    """The properties, with the fields of ``record`` as the values of a new object."""
    return tuple(
        replace(p, initial=p.codec.encode(value))
        if p.field and ((value := field_of(record, p.field)) is not None or not p.unless) else p
        for p in props
    )


def add_missing(obj: Any, props: Iterable[Prop]) -> None:
    """Add the properties that the object does not have yet."""
    have = set(obj.PropertiesList)
    for prop in props:
        if prop.name in have:
            continue
        fixed = prop.result or prop.locked
        attributes = (
            (_READ_ONLY if fixed else 0) | (_OUTPUT if prop.result else 0)
            | (_HIDDEN if prop.hidden else 0)
        )
        obj.addProperty(
            prop.type, prop.name, prop.group, prop.text, attributes, fixed, prop.hidden
        )
        if prop.choices:
            setattr(obj, prop.name, list(prop.choices))
        if prop.initial is not None:
            setattr(obj, prop.name, prop.initial)


def read_property(obj: Any, prop: Prop) -> Any:
    """The value of a property as the core takes it."""
    if prop.unless and getattr(obj, prop.unless):
        return None
    value = getattr(obj, prop.name)
    if prop.type in _QUANTITIES:
        value = value.Value
    return prop.codec.decode(value)


def put(obj: Any, name: str, value: Any) -> None:
    """Set a property if its value differs, so that nothing is touched for nothing."""
    current = getattr(obj, name)
    if getattr(current, "Value", current) != value:
        setattr(obj, name, value)


def put_results(obj: Any, values: Mapping[str, Any]) -> None:
    """Set those of the values that are results of the object's class and differ."""
    for prop in type(obj.Proxy).properties:
        if prop.result and prop.name in values:
            put(obj, prop.name, values[prop.name])


def read_fields(obj: Any, props: Iterable[Prop]) -> dict[str, Any]:
    """The fields that the properties stand for, dotted names and all."""
    return {p.field: read_property(obj, p) for p in props if p.field}


def write_fields(obj: Any, props: Iterable[Prop], record: Any) -> None:
    """Set the properties that differ from the fields of a dataclass.

    Raises ``ClosetError`` before any is set where a value would not come back as it is.
    """
    values = [(p, field_of(record, p.field)) for p in props if p.field]
    for prop, value in values:
        if not (prop.unless and value is None) and (
            prop.codec.decode(prop.codec.encode(value)) != value
        ):
            raise ClosetError(
                obj.Label, prop.field, str(value), "stands for none given; write another value"
            )
    for prop, value in values:
        if prop.unless:
            put(obj, prop.unless, value is None)
        if not (prop.unless and value is None):
            put(obj, prop.name, prop.codec.encode(value))


def record_of(kind: type[_Record], values: Mapping[str, Any]) -> _Record:
    """A dataclass from its fields, dotted names reaching into the records within it."""
    own: dict[str, Any] = {}
    below: dict[str, dict[str, Any]] = {}
    for key, value in values.items():
        name, _, rest = key.partition(".")
        if rest:
            below.setdefault(name, {})[rest] = value
        else:
            own[name] = value
    for name, inner in below.items():
        hint = type_hints(kind)[name]
        kinds = [k for k in typing.get_args(hint) if k is not type(None)] or [hint]
        own[name] = record_of(kinds[0], inner)
    return kind(**own)


def field_of(record: Any, path: str) -> Any:
    """A field of a dataclass by its dotted name."""
    for name in path.split("."):
        record = getattr(record, name)
    return record
