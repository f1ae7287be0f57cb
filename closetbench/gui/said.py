"""Messages of the layers below in the user's language.

They are English sentences with figures and names set in. The patterns that they were made
from are listed beside the translations; a message is matched with them, and what stands in
its gaps is looked up in turn. A message without a translation stays English.
"""

from __future__ import annotations

import json
import re
from dataclasses import replace
from functools import cache, lru_cache

import FreeCADGui

from closetbench.core.findings import Finding
from closetbench.gui.qt import TRANSLATIONS, translate

CONTEXT = "Closetbench_Said"
_GAP = re.compile(r"\{(\d+)\}")
_DEEPEST = 4
_LEAST = 2
"""Letters that a pattern needs beside its gaps: fewer would match anything."""


def said(text: str) -> str:
    """A message in the user's language."""
    language = FreeCADGui.getLocale()
    return _said(text, 0, language) if text and _patterns(language) else text


def finding_said(finding: Finding) -> Finding:
    """A finding in the user's language; its rule, its source and the names of parts stay."""
    return replace(
        finding, message=said(finding.message), value=said(finding.value),
        limit=said(finding.limit), fix=said(finding.fix), spread=said(finding.spread),
    )


@lru_cache(maxsize=4096)
def _said(text: str, depth: int, language: str) -> str:
    found = translate(CONTEXT, text)
    if found != text or depth > _DEEPEST:
        return found
    for pattern, expression, piece in _patterns(language):
        if piece not in text:
            continue
        match = expression.fullmatch(text)
        if match is not None:
            gaps = [_said(gap, depth + 1, language) for gap in match.groups()]
            return translate(CONTEXT, pattern).format(*gaps)
    # a list of what has names of its own
    for joint in ("; ", ", "):
        if joint in text:
            return joint.join(_said(piece, depth + 1, language) for piece in text.split(joint))
    return text


@cache
def _patterns(language: str) -> list[tuple[str, re.Pattern[str], str]]:
    """The patterns with gaps that have a translation in a language, the wordiest first, each
    with its longest piece."""
    texts = json.loads((TRANSLATIONS / "patterns.json").read_text(encoding="utf-8"))
    found = []
    for text in texts:
        pieces = _GAP.split(text)[::2]
        letters = sum(c.isalpha() for piece in pieces for c in piece)
        if len(pieces) > 1 and letters >= _LEAST and translate(CONTEXT, text) != text:
            expression = re.compile("(.+?)".join(map(re.escape, pieces)), re.DOTALL)
            found.append((letters, text, expression, max(pieces, key=len)))
    found.sort(key=lambda one: -one[0])
    return [one[1:] for one in found]
