"""A panel of the closet as an object that can be selected, hidden, coloured and measured."""

from __future__ import annotations

import contextlib
import hashlib
from typing import Any

import FreeCAD

from closetbench.core.closet import part_weight
from closetbench.core.errors import ClosetError
from closetbench.core.lengths import LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.parts import Part
from closetbench.model import cards
from closetbench.model.base import Scripted
from closetbench.model.body import BODY, BodyProxy, move
from closetbench.model.draft import drafted
from closetbench.model.properties import BOOL, FLOAT, LENGTH, STRING, put, put_results, result
from closetbench.model.shapes import panel_shape, placement
from closetbench.shop.words import machining_words

SHAPES = 2
"""Raised when the same panel is to be given another solid than before."""

PANEL = (
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
)


class Carded(Scripted):
    """Base of the proxies of pieces that have the material card of their board."""

    def set_up(self, obj: Any) -> None:
        """A file holds no card of ours: what is loaded is given it again."""
        from closetbench.model import bridge

        super().set_up(obj)
        with contextlib.suppress(ClosetError):  # a catalogue that is gone: the recompute says so
            catalogue = bridge.catalogue_of(bridge.closet_for(obj))
            cards.follow(obj, catalogue.materials.get(obj.Material))

    def onChanged(self, obj: Any, prop: str) -> None:  # noqa: N802 - FreeCAD's name
        """A card may be the user's choice."""
        if prop == cards.PROPERTY:
            cards.mark(obj)


class ClosetPart(Carded, BodyProxy):
    """Proxy of a panel that is part of a component."""

    properties = (
        *BODY, *PANEL,
        result("Reused", BOOL, "Cut from a panel that is kept from an existing piece", "Part"),
    )

    def show(self, obj: Any, body: Any, built: Any) -> None:
        """Set what follows from a part of the core."""
        at = built.at.multiply(placement(body.place))
        show_panel(obj, body, built.catalogue, built.form, at)
        put(obj, "Reused", any(body in c.reused for c in built.closet.components if c.reused))


def show_panel(
    obj: Any, part: Part, catalogue: Catalogue, form: LengthFormat, at: FreeCAD.Placement
) -> None:
    """Set sizes, texts, shape and place of an object from a part, so far as they changed."""
    move(obj, at)
    cards.follow(obj, catalogue.materials.get(part.panel.material))
    mark = _fingerprint(part, catalogue, form)
    there = not obj.Shape.isNull()
    if obj.Fingerprint == mark and there:
        return
    panel = part.panel
    drawn, mark = drafted(panel, mark)
    if obj.Fingerprint == mark and there:
        return
    shape = panel_shape(drawn)
    shape.Placement = at
    obj.Shape = shape
    put_results(obj, {
        "Material": panel.material, "Length": panel.length, "Width": panel.width,
        "Thickness": panel.thickness, "CutLength": panel.cut_length,
        "CutWidth": panel.cut_width, "Grain": panel.grain.value,
        "Bands": ", ".join(f"{b.rim.value} {b.key}" for b in panel.bands),
        "Machining": machining_words(panel, form), "Weight": part_weight(part, catalogue),
        "Fingerprint": mark,
    })


def _fingerprint(part: Part, catalogue: Catalogue, form: LengthFormat) -> str:
    """Equal for pieces that look and read the same, in any run of the program."""
    p = part.panel
    board = catalogue.materials.get(p.material)
    facts = (
        SHAPES, p.material, board and board.density, p.length, p.width, p.thickness, p.grain,
        p.bands, p.grooves, p.holes, p.notches, p.tapers, p.section, p.rim_holes, p.pockets, form,
    )
    return hashlib.md5(repr(facts).encode(), usedforsecurity=False).hexdigest()
