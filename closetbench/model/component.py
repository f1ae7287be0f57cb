"""What all components of a closet have in common as objects: results, and when they change."""

from __future__ import annotations

from typing import Any

from closetbench.core.closet import part_weight
from closetbench.core.component import Component
from closetbench.core.materials import Catalogue
from closetbench.model.base import Scripted
from closetbench.model.properties import (
    DISTANCE,
    FLOAT,
    INTEGER,
    LENGTH,
    LINK,
    TEXTS,
    Prop,
    put_results,
    result,
)

LINKS = (
    Prop("Survey", LINK, "Links", "The survey whose envelope it stands in"),
    Prop("After", LINK, "Links", "What comes before it in the closet's order", locked=True),
)
RESULTS = (
    result("OuterWidth", LENGTH, "Outer width as built"),
    result("OuterHeight", LENGTH, "Outer height as built"),
    result("OuterDepth", LENGTH, "Outer depth as built"),
    result("LeftAt", DISTANCE, "Left side's distance from the envelope's left as built"),
    result("FrontAt", DISTANCE, "The front's distance from the envelope's front as built"),
    result("PartCount", INTEGER, "Number of parts to be cut from boards"),
    result("Weight", FLOAT, "Weight of all parts in kg"),
    result("Findings", TEXTS, "Findings about it"),
)


class ComponentProxy(Scripted):
    """Base of the proxies of components whose parts are objects of their own."""

    def work_out(self, obj: Any) -> None:
        """Work the component out; raises ``ClosetError`` and keeps what was."""
        from closetbench.model.bridge import boards_for, closet_for, component_of

        component = component_of(obj)
        show_results(obj, component, boards_for(closet_for(obj)))

    def onChanged(self, obj: Any, name: str) -> None:  # noqa: N802 - FreeCAD's name
        """A new label is a new name for all parts, and for whoever stands in it."""
        if name == "Label" and not obj.Document.Restoring and hasattr(obj, "Findings"):
            obj.touch()


def show_results(obj: Any, component: Component, catalogue: Catalogue) -> None:
    """Set the results that differ from what a component came to."""
    box, parts = component.box, (*component.parts, *component.reused)
    put_results(obj, {
        "OuterWidth": box.x1 - box.x0, "OuterHeight": box.z1 - box.z0,
        "OuterDepth": box.y1 - box.y0, "LeftAt": box.x0, "FrontAt": box.y0,
        "PartCount": len(component.parts),
        "Weight": sum(part_weight(p, catalogue) for p in parts),
        "Findings": [f"{f.subject}: {f.message}" for f in component.findings],
    })
