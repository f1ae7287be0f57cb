"""Whether a page of drawings still shows the closet that it was made from.

The page is FreeCAD's own object with three properties of ours; it needs no program of ours
to be looked at or printed.
"""

from __future__ import annotations

import hashlib
from typing import Any

from closetbench.core.closet import Closet
from closetbench.core.errors import ClosetError
from closetbench.model.bridge import closet_of
from closetbench.model.spoken import words

CLOSET, MARK, PAPER = "DrawnCloset", "DrawnFrom", "DrawnPaper"
"""Names of the page's properties. They are in users' files: they never change."""
STATUS = "status"
"""The field of the title block that says so."""
OUT_OF_DATE = "OUT OF DATE: the closet has changed since; make the page again"


def mark_of(built: Closet) -> str:
    """Equal for closets that are drawn alike, in any run of the program."""
    facts = repr([(c.name, c.bodies, c.bays) for c in built.components])
    return hashlib.md5(facts.encode(), usedforsecurity=False).hexdigest()


def see_whether_current(doc: Any) -> None:
    """Write on the pages of a document whether they are out of date."""
    for page in doc.findObjects("TechDraw::DrawPage"):
        closet = getattr(page, CLOSET, None)
        if closet is None or page.Template is None:
            continue
        try:
            current = getattr(page, MARK) in ("", mark_of(closet_of(closet)))
        except ClosetError:
            current = False
        texts = dict(page.Template.EditableTexts)
        said = "" if current else words()(OUT_OF_DATE)
        if texts.get(STATUS, "") != said:
            page.Template.EditableTexts = {**texts, STATUS: said}
            for obj in (page.Template, page):
                obj.purgeTouched()
