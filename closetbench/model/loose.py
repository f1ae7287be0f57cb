"""Pieces that are not cut from boards: bars and existing furniture."""

from __future__ import annotations

from typing import Any

import FreeCAD
import Part

from closetbench.core.bodies import LengthPart, Piece
from closetbench.model.body import BODY, BodyProxy, move
from closetbench.model.properties import FLOAT, LENGTH, STRING, put, result

Vector = FreeCAD.Vector


class Bar(BodyProxy):
    """Proxy of a piece cut to length from a round bar or tube."""

    properties = (
        *BODY,
        result("Stock", STRING, "Key of the class of bar in the catalogue", "Part"),
        result("Length", LENGTH, "Length to cut from the bar", "Part"),
        result("Diameter", LENGTH, "Outer diameter", "Part"),
        result("Wall", LENGTH, "Thickness of a tube's wall; 0: solid", "Part"),
    )

    def show(self, obj: Any, body: Any, built: Any) -> None:
        """Set what follows from a length of the core."""
        values = {
            "Stock": body.stock, "Length": body.length, "Diameter": body.diameter,
            "Wall": body.wall,
        }
        _show(obj, repr(values), lambda: bar_shape(body), built.at.multiply(bar_place(body)))
        for name, value in values.items():
            put(obj, name, value)


class ExistingPiece(BodyProxy):
    """Proxy of a piece of furniture that is built in as it is."""

    properties = (
        *BODY, result("Weight", FLOAT, "Weight in kg; 0: not known", "Part"),
    )

    def show(self, obj: Any, body: Any, built: Any) -> None:
        """Set what follows from a piece of the core."""
        _show(obj, repr((body.corners, body.fronts)), lambda: piece_shape(body), built.at)
        put(obj, "Weight", body.weight or 0.0)


def bar_shape(bar: LengthPart) -> Part.Shape:
    """The bar along z from the origin."""
    solid = Part.makeCylinder(bar.diameter / 2, bar.length)
    if 0 < bar.wall < bar.diameter / 2:
        solid = solid.cut(Part.makeCylinder(bar.diameter / 2 - bar.wall, bar.length)).Solids[0]
    return solid


def bar_place(bar: LengthPart) -> FreeCAD.Placement:
    """Where the bar's axis starts, and which way it runs."""
    start, end = Vector(*bar.start), Vector(*bar.end)
    return FreeCAD.Placement(start, FreeCAD.Rotation(Vector(0, 0, 1), end - start))


def piece_shape(piece: Piece) -> Part.Shape:
    """The piece as measured, each face that is not flat in triangles, with its fronts."""
    faces = []
    for ring in piece.solid():
        corners = [Vector(*p) for p in ring]
        for i in range(1, len(corners) - 1):
            triangle = [corners[0], corners[i], corners[i + 1], corners[0]]
            faces.append(Part.Face(Part.makePolygon(triangle)))
    shell = Part.Compound(faces)
    shell.sewShape()
    solid = Part.Solid(shell).removeSplitter()
    rings = [[Vector(*p) for p in (*ring, ring[0])] for ring in piece.fronts]
    return Part.Compound([solid, *map(Part.makePolygon, rings)]) if rings else solid


def _show(obj: Any, mark: str, make: Any, at: FreeCAD.Placement) -> None:
    move(obj, at)
    if obj.Fingerprint == mark and not obj.Shape.isNull():
        return
    shape = make()
    shape.Placement = at
    obj.Shape = shape
    obj.Fingerprint = mark
