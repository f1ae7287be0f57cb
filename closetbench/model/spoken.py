"""The language that FreeCAD speaks, for what is written into documents and onto paper."""

from __future__ import annotations

import FreeCAD

from closetbench.languages import CODE, Language, language


def words() -> Language:
    """The words of FreeCAD's language; English without windows."""
    return language(FreeCAD.Qt.translate(*CODE))
