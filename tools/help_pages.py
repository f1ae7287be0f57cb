"""Which translated help pages are behind the English ones.

    python3 tools/help_pages.py               which lack, or were made from another English text
    python3 tools/help_pages.py --done NAME…  record that these are up to date, in every language

A translated page ends with a line that no reader of Markdown shows: the sum of the English page
that it was made from. After a change of an English page bring the other languages up to it,
then record that with ``--done``.
"""

from __future__ import annotations

import hashlib
import re
import sys
from pathlib import Path

FOLDER = Path(__file__).resolve().parent.parent / "resources" / "help"
LANGUAGES = ("de", "fr", "es-ES")
"""As FreeCAD calls them."""
_SUM = re.compile(r"\n*^\[translated from\]: # \((\w+)\)\n*\Z", re.MULTILINE)


def english() -> dict[str, str]:
    """The English pages by their names."""
    return {path.stem: path.read_text(encoding="utf-8") for path in sorted(FOLDER.glob("*.md"))}


def translated(language: str) -> dict[str, str]:
    """A language's pages by their names, each with its last line."""
    return {
        path.stem: path.read_text(encoding="utf-8")
        for path in sorted((FOLDER / language).glob("*.md"))
    }


def sum_of(text: str) -> str:
    """What tells one English text from another."""
    return hashlib.sha256(text.encode()).hexdigest()[:12]


def recorded(text: str) -> str:
    """The sum of the English page that a translated one was made from; empty where none is."""
    found = _SUM.search(text)
    return found[1] if found else ""


def without_sum(text: str) -> str:
    """A translated page as its readers see it."""
    return _SUM.sub("\n", text)


def stamped(text: str, source: str) -> str:
    """A translated page, recorded as made from the English text ``source``."""
    return f"{without_sum(text).rstrip()}\n\n[translated from]: # ({sum_of(source)})\n"


def behind(language: str) -> list[str]:
    """The names of the pages that a language lacks, or has from another English text."""
    pages = translated(language)
    return [
        name for name, source in english().items()
        if recorded(pages.get(name, "")) != sum_of(source)
    ]


def main() -> None:
    sources, names = english(), sys.argv[2:]
    if sys.argv[1:2] == ["--done"]:
        for name in names:
            for language in LANGUAGES:
                path = FOLDER / language / f"{name}.md"
                text = path.read_text(encoding="utf-8")
                path.write_text(stamped(text, sources[name]), encoding="utf-8")
    for language in LANGUAGES:
        for name in behind(language):
            print(f"{language}/{name}.md")


if __name__ == "__main__":
    main()
