"""The languages besides English, without Qt: texts of documents and messages translated.

The translations are those of the windows, read from the same files. A text of a document is
looked up as it stands in the source, a message of the layers below by the patterns that such
are made from (``sentences``). What has no translation stays English.
"""

from __future__ import annotations

import json
import re
import xml.etree.ElementTree as ET
from collections.abc import Iterable, Mapping
from functools import cache
from pathlib import Path

from closetbench.sentences import Sentences

TRANSLATIONS = Path(__file__).resolve().parent.parent / "resources" / "translations"
FILES = {"de": "de", "fr": "fr", "es": "es-ES"}
"""Languages by their codes (ISO 639-1), and as FreeCAD calls them in the names of files."""
COMMON, MESSAGES, PAPERS = "Closetbench", "Closetbench_Said", "Closetbench_Papers"
"""Contexts of the translations: what is called so everywhere, messages, documents."""
CODE = ("Closetbench_Language", "en")
"""Context and text whose translation is the language's own code: so whoever translates by the
same files, as FreeCAD does in its windows, can tell which of them it uses."""


class Language:
    """The words of one language; ``known``: translations by context and English text;
    ``patterns``: what messages are made from."""

    def __init__(
        self, known: Mapping[tuple[str, str], str], patterns: Iterable[str]
    ) -> None:
        self._known = known
        self._sentences = Sentences(patterns, self._named)

    def __call__(self, text: str, *gaps: object) -> str:
        """A text of a document with what goes into its gaps; without gaps it may be a message."""
        told = self._known.get((PAPERS, text))
        if gaps:
            return (told or self._named(text)).format(*gaps)
        return told or self.message(text)

    def message(self, text: str) -> str:
        """A message of the layers below."""
        return self._sentences.said(text)

    def _named(self, text: str) -> str:
        known = self._known
        return known.get((MESSAGES, text)) or known.get((COMMON, text)) or text


@cache
def language(code: str) -> Language:
    """The words of a language by its code, as ``de`` or ``es-ES``; English for one that there
    is no translation for."""
    name = FILES.get(re.split("[-_]", code.lower())[0])
    if name is None:
        return Language({}, ())
    patterns = json.loads((TRANSLATIONS / "patterns.json").read_text(encoding="utf-8"))
    return Language(read(TRANSLATIONS / f"closetbench_{name}.ts"), patterns)


def read(path: Path) -> dict[tuple[str, str], str]:
    """The finished translations of a .ts file, by context and English text."""
    if not path.exists():
        return {}
    return {
        (context.findtext("name", ""), message.findtext("source", "")): told.text
        for context in ET.parse(path).getroot().iter("context")
        for message in context.iter("message")
        for told in [message.find("translation")]
        if told is not None and told.get("type") is None and told.text
    }
