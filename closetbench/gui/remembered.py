"""What a new component starts with: the values that were last accepted for one of its kind.

Only what a user chooses once is remembered: materials, kinds, joints, and figures that have a
default. Its name, its place, and sizes that follow from the room or the bay where none is
given are those of the new place.
"""

from __future__ import annotations

import types
import typing
from dataclasses import MISSING, Field, fields, is_dataclass
from enum import Enum
from typing import Any

from closetbench.core.closet import Spec
from closetbench.core.errors import ClosetError
from closetbench.core.existing import ExistingSpec
from closetbench.core.specs import CarcassSpec, PanelSpec
from closetbench.gui import settings
from closetbench.model.make import MATERIAL
from closetbench.model.plain import some_from_text, some_to_text, type_hints

_PLACE = ("name", "carcass", "spot", "x", "x0")
_FIGURES = ("groove_stop",)
"""Lengths without which there is a rule, but not one of the place."""


def is_kept(spec: Any) -> bool:
    """Whether anything of such a specification is remembered."""
    return isinstance(spec, Spec)


def kept_values(spec: Any) -> dict[str, Any]:
    """What of a specification another one of its kind may start with, by its fields."""
    return {f.name: getattr(spec, f.name) for f in _kept(type(spec))}


def keep(spec: Any) -> None:
    """Remember what was accepted, over sessions, unless the user does not want that."""
    if is_kept(spec) and settings.remembers():
        settings.keep_last_values(_key(type(spec)), some_to_text(kept_values(spec)))


def last_values(kind: type[Any]) -> dict[str, Any]:
    """What was accepted last for a kind of specification; nothing where there is none, or
    where another version of the workbench kept what this one cannot read."""
    text = settings.last_values(_key(kind)) if settings.remembers() else ""
    if not text:
        return {}
    try:
        found = some_from_text(kind, text, kind.__name__, "last values")
    except ClosetError:
        return {}
    names = {f.name for f in _kept(kind)}
    return {name: value for name, value in found.items() if name in names}


def defaults(kind: type[Any]) -> dict[str, Any]:
    """What a kind starts with where nothing is remembered, of all that could be."""
    found = {
        f.name: f.default if f.default is not MISSING else typing.cast("Any", f).default_factory()
        for f in _kept(kind) if _has_default(f)
    }
    return found | ({"material": MATERIAL} if kind in (CarcassSpec, PanelSpec) else {})


def _key(kind: type[Any]) -> str:
    return kind.__name__.removesuffix("Spec")


def _has_default(field: Field[Any]) -> bool:
    return field.default is not MISSING or field.default_factory is not MISSING


def _kept(kind: type[Any]) -> list[Field[Any]]:
    hints = type_hints(kind)
    own = _PLACE
    if kind is ExistingSpec:
        # what was measured on one piece is no other's
        own += ("feet", "top", "moulding", "drawers", "travel")
    return [f for f in fields(kind) if f.name not in own and _is_choice(f, hints[f.name])]


def _is_choice(field: Field[Any], hint: Any) -> bool:
    optional = isinstance(hint, types.UnionType)
    if optional:
        hint = next(h for h in typing.get_args(hint) if h is not types.NoneType)
    if hint in (int, float):
        return field.name in _FIGURES or (_has_default(field) and not optional)
    if typing.get_origin(hint) is tuple:
        hint = typing.get_args(hint)[0]
        return issubclass(hint, str | Enum)
    return is_dataclass(hint) or issubclass(hint, str | bool | Enum)
