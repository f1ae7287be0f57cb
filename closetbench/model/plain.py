"""Frozen dataclasses as JSON and back, for values that no single property can hold."""

from __future__ import annotations

import json
import types
import typing
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import MISSING, fields, is_dataclass
from enum import Enum
from functools import cache
from typing import Any, TypeVar

from closetbench.core.errors import ClosetError

_Record = TypeVar("_Record")


@cache
def type_hints(kind: type[Any]) -> dict[str, Any]:
    """The types of a dataclass's fields, worked out once: Python takes its time for that."""
    return typing.get_type_hints(kind)


def to_text(record: Any) -> str:
    """A dataclass as JSON in one line, what equals its default left out."""
    return json.dumps(_plain(record), ensure_ascii=False)


def from_text(kind: type[_Record], text: str, subject: str, prop: str) -> _Record:
    """The dataclass that a text says; ``ClosetError`` about the property where it says none."""
    with _told(kind, text, subject, prop):
        return typing.cast(_Record, _record(kind, json.loads(text)))


def some_to_text(values: Mapping[str, Any]) -> str:
    """Some of a dataclass's fields as JSON, by their names."""
    return json.dumps(_plain(dict(values)))


def some_from_text(kind: type[Any], text: str, subject: str, prop: str) -> dict[str, Any]:
    """The fields of a dataclass that a text gives; ``ClosetError`` where it gives others."""
    hints = type_hints(kind)
    with _told(kind, text, subject, prop):
        return {name: _value(hints[name], value) for name, value in json.loads(text).items()}


@contextmanager
def _told(kind: type[Any], text: str, subject: str, prop: str) -> Iterator[None]:
    try:
        yield
    except ClosetError:
        raise
    except (ValueError, TypeError, AttributeError, KeyError) as error:
        raise ClosetError(
            subject, prop, repr(text), f"says no {kind.__name__.lower()}: {error}"
        ) from None


def _plain(value: Any) -> Any:
    if is_dataclass(value):
        found = {}
        for item in fields(value):
            own = getattr(value, item.name)
            default = item.default
            if item.default_factory is not MISSING:
                default = item.default_factory()
            if own != default:
                found[item.name] = _plain(own)
        return found
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, tuple | list):
        return [_plain(v) for v in value]
    if isinstance(value, dict):
        return {str(k): _plain(v) for k, v in value.items()}
    return value


def _record(kind: type[Any], data: dict[str, Any]) -> Any:
    hints = type_hints(kind)
    return kind(**{name: _value(hints[name], value) for name, value in data.items()})


def _value(hint: Any, value: Any) -> Any:
    if isinstance(hint, types.UnionType):
        if value is None:
            return None
        hint = next(h for h in typing.get_args(hint) if h is not types.NoneType)
    origin, inner = typing.get_origin(hint), typing.get_args(hint)
    if origin is tuple:
        each = [inner[0]] * len(value) if inner[-1] is Ellipsis else inner
        return tuple(_value(h, v) for h, v in zip(each, value, strict=True))
    if origin is dict:
        return {k: _value(inner[1], v) for k, v in value.items()}
    if is_dataclass(hint):
        return _record(typing.cast("type[Any]", hint), value)
    if isinstance(hint, type) and issubclass(hint, Enum):
        return hint(value)
    return value
