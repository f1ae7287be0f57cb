"""The material card of a part, where FreeCAD has cards on shapes (1.0 and later).

A FreeCAD without our library complains about a file that names a card of it. So our cards
are never written into files: the property is marked as transient while it holds one, and
set again on loading from the board that the part is of. A card that the user chose is the
user's: it stays and is saved.
"""

from __future__ import annotations

import importlib
import uuid
from functools import cache
from typing import Any

import FreeCAD

from closetbench.core.materials import Material
from closetbench.model import card_library
from closetbench.resources import load_catalogue

PROPERTY = "ShapeMaterial"
_NAMESPACE = uuid.UUID("aa0dd84e-0e0b-46a2-88ae-8104f11f36be")
"""Never changed: the numbers of all cards follow from it."""
_TRANSIENT = "Transient"
_PLAIN = "7f9fd73b-50c9-41d8-b7b2-575a030c1eeb"
"""FreeCAD's number of the card that a shape starts with, unless its preferences name another."""
_QUIET = ["Output", "NoModify"]
"""A card that follows from the board neither touches the part nor changes the file."""
_LOOK = (
    "AmbientColor", "DiffuseColor", "EmissiveColor", "SpecularColor", "Shininess", "Transparency",
)


def number_of(key: str) -> str:
    """The number of the card of a board, which follows from its key in the catalogue."""
    return str(uuid.uuid5(_NAMESPACE, key))


def follow(obj: Any, board: Material | None) -> None:
    """Give a part the card of its board, and FreeCAD's plain one where the board has none.

    A board has one if it is in our catalogue and the user's own catalogue or price book says
    no other density and no other stiffness.
    """
    there = getattr(obj, PROPERTY, None)
    if there is None:
        return
    wanted = (board and _number(board.key, _facts(board))) or _plain()
    now = there.UUID
    card = None if now == wanted or _is_chosen(now) else _card(wanted)
    if card is not None:
        _put(obj, card)


def mark(obj: Any) -> None:
    """See to it that a card is saved with the file if the user chose it, and only then."""
    chosen = _is_chosen(obj.ShapeMaterial.UUID)
    if chosen == (_TRANSIENT in obj.getPropertyStatus(PROPERTY)):
        obj.setPropertyStatus(PROPERTY, f"-{_TRANSIENT}" if chosen else _TRANSIENT)


def _put(obj: Any, card: Any) -> None:
    """Set the card and keep the colours: FreeCAD may paint a shape by its new card."""
    view = obj.ViewObject
    look = list(view.ShapeAppearance) if view is not None else []
    obj.setPropertyStatus(PROPERTY, [_TRANSIENT, *_QUIET])
    try:
        obj.ShapeMaterial = card
    finally:
        obj.setPropertyStatus(PROPERTY, [f"-{status}" for status in _QUIET])
    if view is not None and _seen(view.ShapeAppearance) != _seen(look):
        view.ShapeAppearance = look


def _seen(appearance: Any) -> list[Any]:
    return [[getattr(one, name) for name in _LOOK] for one in appearance]


def _is_chosen(number: str) -> bool:
    return number != _plain() and number not in _ours()


def _plain() -> str:
    group = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Mod/Material")
    return str(group.GetString("DefaultMaterial", _PLAIN)) or _PLAIN


@cache
def _number(key: str, facts: tuple[Any, ...]) -> str:
    """The number of the card that says this of a board, "" where none does."""
    shipped = load_catalogue().materials.get(key)
    return number_of(key) if shipped is not None and _facts(shipped) == facts else ""


def _facts(board: Material) -> tuple[Any, ...]:
    return board.kind, board.density, board.e_along, board.e_across


@cache
def _ours() -> frozenset[str]:
    return frozenset(number_of(key) for key in load_catalogue().materials)


@cache
def _card(number: str) -> Any:
    """The card of a number, None where FreeCAD cannot find it."""
    manager = importlib.import_module("Materials").MaterialManager()
    try:
        return manager.getMaterial(number)
    except LookupError:
        pass
    # a program that loads FreeCAD as a library does not go through our Init.py
    card_library.register()
    manager.refresh()
    try:
        return manager.getMaterial(number)
    except LookupError:
        return None
