"""The closet: the group of everything that the user decides, worked out as one design.

A plain group, no ``App::Part``: the parts stand where the survey's placement says, and no
second coordinate frame is wanted.
"""

from __future__ import annotations

from typing import Any

from closetbench.core.closet import part_weight
from closetbench.core.lengths import MILLIMETRES
from closetbench.model import watch
from closetbench.model.base import Scripted, class_of
from closetbench.model.properties import (
    ENUMERATION,
    FLOAT,
    INTEGER,
    MAP,
    STRING,
    TEXTS,
    Prop,
    put,
    result,
)

STYLES = ("mm", "cm", "m", "in", "in-frac", "ft-in")
SETTINGS = (
    Prop("Catalogue", STRING, "Closet",
         "File with materials and prices of your own; empty: only those that come along",
         initial=""),
    Prop("Measured", MAP, "Closet", "Thickness in mm as measured, by key of the material"),
    Prop("Circumstances", STRING, "Closet",
         "What is known about the place and the people, as written by its form", initial="{}"),
    Prop("LengthStyle", ENUMERATION, "Closet", "How texts print lengths", choices=STYLES,
         initial=MILLIMETRES.style),
    Prop("LengthStep", STRING, "Closet",
         "What texts round lengths to, in mm for metric styles, else in inches",
         initial=str(MILLIMETRES.resolution)),
)
RESULTS = (
    result("PartCount", INTEGER, "Number of parts to be cut from boards"),
    result("Weight", FLOAT, "Weight of all parts in kg"),
    result("Findings", TEXTS, "Findings about the design"),
)


class Closet(Scripted):
    """Proxy of the group."""

    properties = (*SETTINGS, *RESULTS)
    type_id = "App::DocumentObjectGroupPython"

    def work_out(self, obj: Any) -> None:
        """Build the whole design; raises ``ClosetError`` for what cannot be built."""
        from closetbench.model import bridge
        from closetbench.model.component import show_results

        if bridge.survey_for(obj) is None:
            return
        built = bridge.built_of(obj, afresh=True)
        closet = built.closet
        panels = (p for c in closet.components for p in (*c.parts, *c.reused))
        put(obj, "PartCount", len(closet.parts))
        put(obj, "Weight", sum(part_weight(p, built.catalogue) for p in panels))
        put(obj, "Findings", [f"{f.subject}: {f.message}" for f in closet.findings])
        # what stands in a component may have a say in its sizes, though it comes after it
        components = {c.name: c for c in closet.components}
        for held in bridge.chain_of(obj):
            show_results(held, components[held.Label], built.catalogue)

    def onDocumentRestored(self, obj: Any) -> None:  # noqa: N802 - FreeCAD's name
        super().onDocumentRestored(obj)
        watch.show_drawings(obj.Document)

    def onChanged(self, obj: Any, name: str) -> None:  # noqa: N802 - FreeCAD's name
        """Settings reach the objects in the group, which cannot depend on it. The closet's
        name stands in its findings; a new label alone makes no recompute."""
        if obj.Document.Restoring or not hasattr(obj, "Findings"):
            return
        if name == "Group":
            _stand_in_order(obj)
        elif name == "Label":
            obj.touch()
        elif name in ("Catalogue", "Measured"):
            for held in obj.Group:
                if class_of(held) not in ("Survey", "Bay"):
                    held.touch()


def _stand_in_order(closet: Any) -> None:
    """Link every component to the one before it, so that they are recomputed in that order."""
    from closetbench.model.bridge import chain_of

    before = None
    for obj in chain_of(closet):
        if hasattr(obj, "After"):
            if obj.After != before:
                obj.After = before
            before = obj
