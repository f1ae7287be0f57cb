"""The values that combo boxes offer, with the words they are chosen by."""

from __future__ import annotations

from enum import Enum
from typing import Any

from closetbench.core.materials import Catalogue
from closetbench.gui.qt import translate

CONTEXT = "Closetbench_Choice"

MOST_MOULDING = 12.0
"""A flat strip of wood that is thicker is a board and no moulding, mm."""

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
    return [*first, *((m.key, words(m.title)) for m in boards)]


def bands(catalogue: Catalogue, own: bool = True) -> Choices:
    """What may go on an edge: the material's own band, none, or one of the catalogue's."""
    listed = sorted(catalogue.bands.values(), key=lambda b: b.title)
    first = [(None, words("the material's own"))] if own else []
    return [*first, ("", words("none")), *((b.key, words(b.title)) for b in listed)]


def mouldings(catalogue: Catalogue, square: bool) -> Choices:
    """The mouldings of the catalogue, flat ones or those as wide as thick, such as quarter
    rounds; the narrowest first."""
    found = []
    for m in catalogue.materials.values():
        wide = max(s.width for s in m.sheets)
        even = abs(wide - m.nominal) < 0.5
        if m.by_length and (even if square else not even and m.nominal <= MOST_MOULDING):
            found.append((wide, m.key, words(m.title)))
    return [(key, title) for _, key, title in sorted(found)]
