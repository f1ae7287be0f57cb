"""What all objects that show a piece of a closet have in common."""

from __future__ import annotations

from typing import Any

import FreeCAD

from closetbench.core.bodies import Body
from closetbench.model.base import Scripted
from closetbench.model.properties import INTEGER, LINK, STRING, Prop, put, result

BODY = (
    Prop("Closet", LINK, "Part", "The closet that it follows from", locked=True),
    Prop("Component", LINK, "Part", "The component that it belongs to", locked=True),
    result("PartName", STRING, "Name of the piece within its component", "Part"),
    result("Role", STRING, "What the piece is in the closet", "Part"),
    result("FullName", STRING, "Component and name", "Part", hidden=True),
    result("Order", INTEGER, "Place among its component's parts", "Part", hidden=True),
    result("Fingerprint", STRING, "What the shape was made from", "Part", hidden=True),
)


class BodyProxy(Scripted):
    """Base of the proxies. Everything about such an object follows from the closet."""

    type_id = "Part::FeaturePython"

    def set_up(self, obj: Any) -> None:
        """The placement follows, too."""
        super().set_up(obj)
        obj.setEditorMode("Placement", 1)

    def work_out(self, obj: Any) -> None:
        """Follow the closet. A part that is there no more stays until it is taken away."""
        from closetbench.model.bridge import built_of

        if obj.Component is None or obj.Closet is None:
            return
        built = built_of(obj.Closet)
        siblings = built.bodies.get(obj.Component.Label, {})
        body = siblings.get(obj.PartName)
        if body is None:
            return
        self.show(obj, body, built)
        put(obj, "Role", body.role.value)
        put(obj, "Order", list(siblings).index(body.name))
        if obj.FullName != body.full_name:
            # the label goes along with a new name, unless the user gave it one
            if obj.Label == obj.FullName or not obj.FullName:
                obj.Label = body.full_name
            obj.FullName = body.full_name

    def show(self, obj: Any, body: Body, built: Any) -> None:
        """Set sizes, texts, shape and place from a body, so far as they changed."""
        raise NotImplementedError


_noted: dict[int, set[tuple[str, str]]] = {}
"""By the number of the transaction that is open: the objects whose shapes it has noted."""


def move(obj: Any, at: FreeCAD.Placement) -> None:
    """Put an object in another place, in a way that undo brings back.

    A shape carries its place. FreeCAD notes a property before its first change in a
    transaction, but moving changes the shape unnoted: if that is changed as well later on,
    it is noted where it was moved to, and undo leaves the object there. So it is noted first.
    """
    if obj.Placement == at:
        return
    active = FreeCAD.getActiveTransaction()
    if active is not None and not obj.Shape.isNull():
        number, key = int(active[1]), (obj.Document.Name, obj.Name)
        if number not in _noted:
            _noted.clear()
        if key not in _noted.setdefault(number, set()):
            _noted[number].add(key)
            obj.Shape = obj.Shape
    obj.Placement = at
