"""Whose language a document is in: texts go through ``Words`` where they become the reader's.

Whoever has a document made hands down the words; nothing here knows which languages there
are. A text of the document's own stands in the source as a literal with numbered gaps, so
that it can be collected and translated; a message of the layers below comes as it is made.
Names of parts, keys and what software reads by its name are never handed through it.
"""

from __future__ import annotations

from typing import Protocol, TypeVar

_Texts = TypeVar("_Texts")


class Words(Protocol):
    """Says a text in the reader's language."""

    def __call__(self, text: str, *gaps: object) -> str:
        """With ``gaps``: the text with those in its ``{0}``, ``{1}`` …; without: a text as it
        stands, or a message that was made already."""


def plain(text: str, *gaps: object) -> str:
    """The words of a reader of English."""
    return text.format(*gaps) if gaps else text


def mark(texts: _Texts) -> _Texts:
    """Texts that are handed to ``Words`` by name: marked so that they are translated."""
    return texts
