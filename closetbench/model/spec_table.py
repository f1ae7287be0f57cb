"""Properties that follow from a specification of the core.

A field becomes a property of the same name in capitals, that of an inner record with the
record's name before it. The tooltip is the field's line in the docstring. Where None is
allowed, 0 (of a count -1, of a text nothing) stands for it, or the first choice of an
enumeration; where 0 is a value too, a switch of its own says whether it counts.
"""

from __future__ import annotations

import re
import types
import typing
from collections.abc import Iterator
from dataclasses import MISSING, fields, is_dataclass, replace
from enum import Enum
from types import SimpleNamespace
from typing import Any

from closetbench.core.inside import Spot
from closetbench.core.joinery import JoineryRules
from closetbench.model.carcass import JOINERY, RULE_DEPTH
from closetbench.model.plain import from_text, to_text
from closetbench.model.properties import (
    BAND,
    BOOL,
    DISTANCE,
    EMPTY_IS_NONE,
    ENUMERATION,
    FLOAT,
    FLOATS,
    INTEGER,
    PLAIN,
    STRING,
    TEXTS,
    TUPLE,
    ZERO_IS_NONE,
    Codec,
    Prop,
    camel,
    enum_codec,
    records_codec,
    starting_as,
)

BY_RULE = "by rule"
"""The choice of an enumeration that stands for None."""
LINKED = ("name", "carcass")
"""Fields that a label or a link holds, so that they have no property of their own."""
_ENTRY = re.compile(
    r"^\s*(``\w+``(?:, ``\w+``)*): (.+?)(?=^\s*``\w+``[:,]|^\s*$|\Z)", re.MULTILINE | re.DOTALL
)
"""A docstring's entry: one field or more, and what is said about them."""
_COUNT = Codec(lambda v: -1 if v is None else v, lambda v: None if v < 0 else v)
_NUMBERS = ("fraction", "web", "weight", "mass", "load", "volume")
"""Words in the names of fields that are numbers and no lengths."""
_ZERO_COUNTS = ("x", "lap")
"""Fields that may be None and of which 0 is a value too."""
_LABELS = {"x": "From the left", "x0": "Left end at", "x1": "Right end at"}
_FOR_NONE = {DISTANCE: "0", FLOAT: "0", INTEGER: "-1", STRING: "empty", ENUMERATION: BY_RULE}


def spec_table(spec: type[Any], group: str) -> tuple[Prop, ...]:
    """The properties of a specification; those of inner records in groups of their own."""
    return starting_as(_blank(spec), tuple(_props(spec, group, "", "")))


def _blank(spec: type[Any]) -> SimpleNamespace:
    """The defaults of a specification's fields, and the least that is needed elsewhere."""
    hints, found = typing.get_type_hints(spec), SimpleNamespace()
    for item in fields(spec):
        hint, optional = _bare(hints[item.name])
        if optional and _is_record(hint):
            value = _blank(hint)
        elif item.default_factory is not MISSING:
            value = item.default_factory()
        elif item.default is not MISSING:
            value = item.default
        elif _is_record(hint):
            value = _blank(hint)
        elif isinstance(hint, type) and issubclass(hint, Enum):
            value = next(iter(hint))
        else:
            value = {str: "", float: 0.0, int: 0, bool: False}.get(hint, ())
        setattr(found, item.name, value)
    return found


def label_text(name: str) -> str:
    """What a field is called where it is shown, in English."""
    return _LABELS.get(name, name.replace("_", " ").capitalize())


def field_texts(spec: type[Any]) -> dict[str, str]:
    """What the docstring says about each field, as a sentence without its full stop."""
    found = {}
    for names, words in _ENTRY.findall(spec.__doc__ or ""):
        text = " ".join(words.split()).removesuffix(".")
        found |= dict.fromkeys(re.findall(r"\w+", names), text[0].upper() + text[1:])
    return found


def _props(spec: type[Any], group: str, path: str, prefix: str) -> Iterator[Prop]:
    hints, texts = typing.get_type_hints(spec), field_texts(spec)
    for item in fields(spec):
        hint, name = hints[item.name], prefix + camel(item.name)
        kind, optional = _bare(hint)
        if item.name in LINKED:
            continue
        if kind is JoineryRules:
            yield from (*JOINERY, RULE_DEPTH)
        elif _is_record(kind) and (not optional or kind is Spot):
            yield from _props(kind, camel(item.name), f"{path}{item.name}.", name)
        else:
            text = texts.get(item.name, camel(item.name))
            prop = _prop(name, kind, optional, group, text, f"{path}{item.name}")
            if optional and item.name in _ZERO_COUNTS:
                switch = f"{name}ByRule"
                rule = f"Whether {name} is left to the rule"
                yield Prop(switch, BOOL, group, rule, initial=True)
                left = text.replace("None", "by rule")
                prop = replace(prop, codec=PLAIN, text=left, unless=switch)
            yield prop


def _is_record(kind: Any) -> bool:
    return isinstance(kind, type) and is_dataclass(kind)


def _bare(hint: Any) -> tuple[Any, bool]:
    """A type without None, and whether None was allowed."""
    if not isinstance(hint, types.UnionType):
        return hint, False
    return next(h for h in typing.get_args(hint) if h is not types.NoneType), True


def _prop(name: str, hint: Any, optional: bool, group: str, text: str, path: str) -> Prop:
    choices: tuple[str, ...] = ()
    if path.rpartition(".")[2] == "band":
        text = text.replace("None", "auto").replace('""', "empty")
        return Prop(name, STRING, group, text, path, BAND)
    if typing.get_origin(hint) is tuple:
        inner = typing.get_args(hint)[0]
        plain = inner is float
        kind, codec = (FLOATS, TUPLE) if plain else (TEXTS, _texts_codec(inner, path))
        text += " (mm)" if plain else ""
    elif isinstance(hint, type) and issubclass(hint, Enum):
        members = tuple(m.value for m in hint)
        kind, codec, choices = ENUMERATION, enum_codec(hint), members
        if optional:
            choices = (BY_RULE, *members)
            codec = Codec(
                lambda v: BY_RULE if v is None else v.value,
                lambda v: None if v == BY_RULE else hint(v),
            )
    elif hint is bool:
        kind, codec = BOOL, PLAIN
        if optional:
            kind, choices = ENUMERATION, (BY_RULE, "yes", "no")
            codec = Codec(
                lambda v: BY_RULE if v is None else "yes" if v else "no",
                lambda v: {BY_RULE: None, "yes": True, "no": False}[v],
            )
    elif _is_record(hint):
        kind = STRING
        codec = Codec(
            lambda v: "" if v is None else to_text(v),
            lambda v: from_text(hint, v, group, path) if v else None,
        )
    elif hint is int:
        kind, codec = INTEGER, _COUNT if optional else PLAIN
    elif hint is str:
        kind, codec = STRING, EMPTY_IS_NONE if optional else PLAIN
    else:
        number = any(word in path for word in _NUMBERS)
        kind, codec = FLOAT if number else DISTANCE, ZERO_IS_NONE if optional else PLAIN
    if optional:
        none = _FOR_NONE[kind]
        told = re.sub(r"\bNone\b", none, text)
        text = told if told != text else f"{text}; {none}: not given"
    return Prop(name, kind, group, text, path, codec, choices)


def _texts_codec(kind: type[Any], path: str) -> Codec:
    if kind is str:
        return TUPLE
    if issubclass(kind, Enum):
        return Codec(lambda v: [m.value for m in v], lambda v: tuple(kind(t) for t in v))
    return records_codec(kind, path.rpartition(".")[2])
