"""Messages of the layers below in the user's language.

They are English sentences with figures and names set in. The patterns that they were made
from are listed beside the translations; a message without a translation stays English.
"""

from __future__ import annotations

import json
from dataclasses import replace
from functools import cache, partial

import FreeCADGui

from closetbench.core.findings import Finding
from closetbench.gui.qt import TRANSLATIONS, translate
from closetbench.gui.sentences import Sentences

CONTEXT = "Closetbench_Said"


def said(text: str) -> str:
    """A message in the user's language."""
    return _sentences(FreeCADGui.getLocale()).said(text) if text else text


def finding_said(finding: Finding) -> Finding:
    """A finding in the user's language; its rule, its source and the names of parts stay."""
    return replace(
        finding, message=said(finding.message), value=said(finding.value),
        limit=said(finding.limit), fix=said(finding.fix), spread=said(finding.spread),
    )


@cache
def _sentences(language: str) -> Sentences:
    """What is known in a language, which is that of FreeCAD now."""
    patterns = json.loads((TRANSLATIONS / "patterns.json").read_text(encoding="utf-8"))
    return Sentences(patterns, partial(translate, CONTEXT))
