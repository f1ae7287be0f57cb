"""Which document objects a finding is about, and where it is put right."""

from __future__ import annotations

import re
from typing import Any

from closetbench.core.errors import ClosetError
from closetbench.core.findings import Finding
from closetbench.gui.panels import edited_with
from closetbench.model import bridge
from closetbench.model.base import class_of
from closetbench.model.children import parts_of

_ROOM = ("survey", "room", "wall", "envelope", "light")
"""Subjects of findings that are about the room."""
_READ = ("survey", "envelope")
"""Those that the readings put right."""
ASKED = {
    "shelf-use": "circumstances.shelf_use",
    "wall-unknown": "circumstances.wall.kind",
    "wall-not-computed": "circumstances.wall.kind",
    "studs-unknown": "circumstances.wall.stud_spacing",
    "wires": "circumstances.wall.kind",
    "climate": "circumstances.damp",
    "children-unknown": "circumstances.children",
    "old-paint": "circumstances.old_paint",
    "outlets": "circumstances.outlets",
    "light-clearance": "circumstances.light",
}
"""What a rule asks the user: the field of the closet's panel that takes the answer."""
_BAY = re.compile(r"(?P<carcass>.+), bay (?P<number>\d+)")


def objects_of(closet: Any, finding: Finding) -> list[Any]:
    """The objects that a finding is about; none for what is no object, such as children."""
    names = set(finding.parts or (finding.subject,))
    found: list[Any] = []
    for component in bridge.components_in(closet):
        label, parts = component.Label, parts_of(component)
        if label in names:
            found += [component, *parts]
        elif class_of(component) == "GroovedPanel":
            found += [component] if any(n.startswith(f"{label}: ") for n in names) else []
        else:
            found += [p for p in parts if f"{label}: {p.PartName}" in names]
    return found or _bays(closet, names) or _of_board(closet, names) or _of_room(closet, names)


def editor_of(closet: Any, finding: Finding) -> tuple[Any, str]:
    """The object whose panel puts a finding right, None where none does, and the field there
    where that is known."""
    if finding.rule in ASKED:
        return closet, ASKED[finding.rule]
    if finding.rule == "strip-width":
        return next((o for o in closet.InList if class_of(o) == "CutLayout"), None), ""
    if finding.subject in _READ:
        return bridge.survey_for(closet), ""
    board = _board_key(closet, {finding.subject})
    if board:
        return closet, f"measured.{board}"
    found = objects_of(closet, finding)
    if found:
        return edited_with(found[0]), ""
    return (closet, "catalogue") if finding.subject == "catalogue" else (None, "")


def _bays(closet: Any, names: set[str]) -> list[Any]:
    places = [m for name in names if (m := _BAY.fullmatch(name))]
    return [
        bay for carcass in bridge.carcasses_in(closet)
        for number, bay in enumerate(carcass.BayList, 1)
        if any(m["carcass"] == carcass.Label and int(m["number"]) == number for m in places)
    ]


def _board_key(closet: Any, names: set[str]) -> str:
    """The board that goes by one of the names, by its key; empty for none."""
    try:
        boards = bridge.boards_for(closet).materials
    except ClosetError:
        return ""
    return next((key for key, board in boards.items() if board.title in names), "")


def _of_board(closet: Any, names: set[str]) -> list[Any]:
    """Everything made of a board that goes by one of the names."""
    key = _board_key(closet, names)
    every = (o for c in bridge.components_in(closet) for o in (c, *parts_of(c)))
    return [
        o for o in every
        if key and class_of(o) in ("ClosetPart", "GroovedPanel") and o.Material == key
    ]


def _of_room(closet: Any, names: set[str]) -> list[Any]:
    survey = bridge.survey_for(closet)
    return [survey] if survey is not None and names & set(_ROOM) else []
