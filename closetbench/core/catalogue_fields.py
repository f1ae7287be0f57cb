"""Fields of a catalogue file: each reader takes a TOML value or names what is wrong with it.

Every reader is called with the value, the subject (file and table) and the key, and raises
CatalogueError.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from difflib import get_close_matches
from math import isfinite
from typing import Any

from closetbench.core.errors import CatalogueError, LengthError
from closetbench.core.lengths import read_length

FieldReader = Callable[[object, str, str], object]


def read_table(value: object, origin: str, name: str) -> Mapping[str, Any]:
    """A table."""
    if not isinstance(value, dict):
        raise CatalogueError(origin, name, value, "must be a table of keys and values")
    return value


def read_text(value: object, subject: str, name: str) -> str:
    """Text without the blanks around it."""
    if not isinstance(value, str):
        raise CatalogueError(subject, name, value, "must be text in quotation marks")
    return value.strip()


def read_boolean(value: object, subject: str, name: str) -> bool:
    """True or false."""
    if not isinstance(value, bool):
        raise CatalogueError(subject, name, value, "must be true or false")
    return value


def read_whole(value: object, subject: str, name: str) -> int:
    """A whole number."""
    if isinstance(value, bool) or not isinstance(value, int):
        raise CatalogueError(subject, name, value, "must be a whole number")
    return value


def read_number(value: object, subject: str, name: str) -> float:
    """A number; TOML also has nan and inf, which the values refuse."""
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise CatalogueError(subject, name, value, "must be a number")
    return float(value)


def read_mm(value: object, subject: str, name: str) -> float:
    """A length in mm: a number of mm, or text with a unit (``"3/4 in"``)."""
    if not isinstance(value, str):
        return read_number(value, subject, name)
    try:
        return read_length(value, subject=subject, prop=name)
    except LengthError as error:
        raise CatalogueError(subject, name, error.value, error.limit) from None


def read_fields(
    given: Mapping[str, Any], readers: Mapping[str, FieldReader], subject: str
) -> dict[str, Any]:
    """The values of a table whose keys must all have a reader."""
    for name, value in given.items():
        if name not in readers:
            limit = f"is no key of this table; {nearest(name, readers)}"
            raise CatalogueError(subject, name, value, limit)
    return {name: readers[name](value, subject, name) for name, value in given.items()}


def mentions_price(data: object) -> bool:
    """Whether a price is anywhere in a catalogue's data."""
    if isinstance(data, Mapping):
        return any(k in ("cost", "cost_per_m") or mentions_price(v) for k, v in data.items())
    return isinstance(data, list) and any(map(mentions_price, data))


def nearest(key: str, known: Iterable[str]) -> str:
    """The known names that ``key`` may have meant, else all of them."""
    names = sorted(known)
    close = get_close_matches(key, names, n=3, cutoff=0.5)
    return f"nearest: {', '.join(close)}" if close else f"known: {', '.join(names) or 'none'}"


def check_within(subject: str, prop: str, value: float, low: float, high: float, unit: str) -> None:
    """Refuse a value outside ``low`` to ``high``, or not finite."""
    if not (isfinite(value) and low <= value <= high):
        limit = f"must be from {low:g} to {high:g} {unit}"
        raise CatalogueError(subject, prop, f"{value:g} {unit}", limit)


def check_cost(subject: str, prop: str, value: float | None) -> None:
    """Refuse a negative price; None is no price."""
    if value is not None and not (isfinite(value) and value >= 0):
        raise CatalogueError(subject, prop, f"{value:g}", "must not be negative")
