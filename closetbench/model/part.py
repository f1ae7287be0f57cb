"""A piece of the closet as an object that can be selected, hidden, coloured and measured."""

from __future__ import annotations

import hashlib
from typing import Any

import FreeCAD

from closetbench.core.closet import part_weight
from closetbench.core.lengths import LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.parts import Part
from closetbench.model.base import Scripted
from closetbench.model.properties import (
    FLOAT,
    INTEGER,
    LENGTH,
    LINK,
    STRING,
    Prop,
    put,
    result,
)
from closetbench.model.shapes import panel_shape, placement
from closetbench.shop.words import machining_words

SHAPES = 1
"""Raised when the same panel is to be given another solid than before."""

PIECE = (
    result("PartName", STRING, "Name of the piece within its component", "Part"),
    result("Role", STRING, "What the piece is in the closet", "Part"),
    result("Material", STRING, "Key of its board in the catalogue", "Part"),
    result("Length", LENGTH, "Finished length, edge bands included", "Part"),
    result("Width", LENGTH, "Finished width, edge bands included", "Part"),
    result("Thickness", LENGTH, "Thickness as measured, else as sold", "Part"),
    result("CutLength", LENGTH, "Length to saw, without the edge bands", "Part"),
    result("CutWidth", LENGTH, "Width to saw, without the edge bands", "Part"),
    result("Grain", STRING, "Where the grain runs", "Part"),
    result("Bands", STRING, "Rims with an edge band, and which", "Part"),
    result("Machining", STRING, "Grooves, holes and notches in words", "Part"),
    result("Weight", FLOAT, "Weight of the finished piece in kg", "Part"),
    result("Fingerprint", STRING, "What the shape was made from", "Part", hidden=True),
)
PLACE = (
    Prop("Component", LINK, "Part", "The carcass that it is a part of", locked=True),
    result("FullName", STRING, "Component and name", "Part", hidden=True),
    result("Order", INTEGER, "Place among its component's parts", "Part", hidden=True),
)


class ClosetPart(Scripted):
    """Proxy of a part of a carcass. Everything about it follows from the carcass."""

    properties = (*PLACE, *PIECE)
    type_id = "Part::FeaturePython"

    def set_up(self, obj: Any) -> None:
        """The placement follows from the carcass, too."""
        super().set_up(obj)
        obj.setEditorMode("Placement", 1)

    def work_out(self, obj: Any) -> None:
        """Follow the carcass. A part that is there no more stays until it is taken away."""
        from closetbench.model.bridge import built_of

        if obj.Component is None:
            return
        built = built_of(obj.Component)
        part = built.parts.get(obj.PartName)
        if part is None:
            return
        at = built.at.multiply(placement(part.place))
        show_piece(obj, part, built.catalogue, built.form, at)
        put(obj, "Order", list(built.parts).index(part.name))
        if obj.FullName != part.full_name:
            # the label goes along with a new name, unless the user gave it one
            if obj.Label == obj.FullName or not obj.FullName:
                obj.Label = part.full_name
            obj.FullName = part.full_name


def show_piece(
    obj: Any, part: Part, catalogue: Catalogue, form: LengthFormat, at: FreeCAD.Placement
) -> None:
    """Set sizes, texts, shape and place of an object from a part, so far as they changed."""
    panel = part.panel
    mark = _fingerprint(part, catalogue, form)
    if obj.Placement != at:
        obj.Placement = at
    if obj.Fingerprint == mark and not obj.Shape.isNull():
        return
    shape = panel_shape(panel)
    shape.Placement = at
    obj.Shape = shape
    bands = ", ".join(f"{b.rim.value} {b.key}" for b in panel.bands)
    for name, value in (
        ("PartName", part.name), ("Role", part.role.value), ("Material", panel.material),
        ("Length", panel.length), ("Width", panel.width), ("Thickness", panel.thickness),
        ("CutLength", panel.cut_length), ("CutWidth", panel.cut_width), ("Bands", bands),
        ("Machining", machining_words(panel, form)),
        ("Weight", part_weight(part, catalogue)), ("Fingerprint", mark),
    ):
        put(obj, name, value)
    if "Grain" in {p.name for p in type(obj.Proxy).properties if p.result}:
        put(obj, "Grain", panel.grain.value)


def _fingerprint(part: Part, catalogue: Catalogue, form: LengthFormat) -> str:
    """Equal for pieces that look and read the same, in any run of the program."""
    p = part.panel
    facts = (
        SHAPES, part.role.value, p.material, catalogue.material(p.material).density, p.length,
        p.width, p.thickness, p.grain, p.bands, p.grooves, p.holes, p.notches, form,
    )
    return hashlib.md5(repr(facts).encode(), usedforsecurity=False).hexdigest()
