"""The values that combo boxes offer, with the words they are chosen by."""

from __future__ import annotations

from enum import Enum
from typing import Any

from closetbench.core.materials import Catalogue
from closetbench.gui.qt import translate

CONTEXT = "Closetbench_Choice"

Choices = list[tuple[Any, str]]


def words(text: str) -> str:
    """A choice in the user's language."""
    return translate(CONTEXT, text)


def of_enum(kind: type[Enum]) -> Choices:
    """All members of an enumeration."""
    return [(member, words(str(member.value))) for member in kind]


def materials(catalogue: Catalogue, *first: tuple[Any, str]) -> Choices:
    """Every board of the catalogue by its title, after special choices."""
    boards = sorted(catalogue.materials.values(), key=lambda m: (m.kind.value, m.nominal, m.title))
    return [*first, *((m.key, m.title) for m in boards)]


def bands(catalogue: Catalogue, own: bool = True) -> Choices:
    """What may go on an edge: the material's own band, none, or one of the catalogue's."""
    listed = sorted(catalogue.bands.values(), key=lambda b: b.title)
    first = [(None, words("the material's own"))] if own else []
    return [*first, ("", words("none")), *((b.key, b.title) for b in listed)]
