"""Nodes of the 3D view that stand for no document object: see-through faces, lines, labels.

Nothing here can be picked, so that none of it is in the way of selecting parts.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from pivy import coin

from closetbench.core.convex import Solid, Vector
from closetbench.gui.palette import Colour

LABEL_SIZE = 11
"""Points of the letters of labels."""
_OPAQUE: Colour = (1.0, 1.0, 1.0)


def unpickable(name: str) -> Any:
    """A separator whose nodes the mouse goes through; ``name`` to find it again by."""
    root = coin.SoSeparator()
    root.setName(name)
    style = coin.SoPickStyle()
    style.style = coin.SoPickStyle.UNPICKABLE
    root.addChild(style)
    return root


def put_in(view: Any, root: Any) -> None:
    """Put a root under a view provider, where it follows the object's placement, in the
    place of one of the same name."""
    take_out(view, root.getName().getString())
    view.RootNode.addChild(root)


def take_out(view: Any, name: str) -> None:
    """Remove the root of that name, if there is one."""
    parent = view.RootNode
    for i in reversed(range(parent.getNumChildren())):
        if parent.getChild(i).getName().getString() == name:
            parent.removeChild(i)


def on_top(nodes: Iterable[Any]) -> Any:
    """Nodes that nothing hides."""
    root = coin.SoAnnotation()
    for node in nodes:
        root.addChild(node)
    return root


def faces(solids: Iterable[Solid], colour: Colour, transparency: float, lit: bool = False) -> Any:
    """Faces of convex rings, seen from both sides; ``lit`` shades them by the light."""
    rings = [ring for solid in solids for ring in solid]
    root = coin.SoSeparator()
    if not rings:
        return root
    light = coin.SoLightModel()
    light.model = coin.SoLightModel.PHONG if lit else coin.SoLightModel.BASE_COLOR
    hints = coin.SoShapeHints()
    hints.vertexOrdering = coin.SoShapeHints.COUNTERCLOCKWISE
    hints.faceType = coin.SoShapeHints.CONVEX
    material = coin.SoMaterial()
    material.diffuseColor = colour
    material.transparency = transparency
    # what lies in a board's face is drawn behind it, not through it
    offset = coin.SoPolygonOffset()
    points = coin.SoCoordinate3()
    points.point.setValues(0, sum(len(r) for r in rings), [p for r in rings for p in r])
    surface = coin.SoFaceSet()
    surface.numVertices.setValues(0, len(rings), [len(r) for r in rings])
    for node in (light, hints, material, offset, points, surface):
        root.addChild(node)
    return root


def edges(solids: Iterable[Solid], colour: Colour, width: float = 1.0) -> Any:
    """The outlines of faces."""
    return lines([(*ring, ring[0]) for solid in solids for ring in solid], colour, width)


def lines(chains: Sequence[Sequence[Vector]], colour: Colour, width: float = 1.0) -> Any:
    """Chains of straight lines."""
    root = coin.SoSeparator()
    if not chains:
        return root
    points = coin.SoCoordinate3()
    points.point.setValues(0, sum(len(c) for c in chains), [p for c in chains for p in c])
    line = coin.SoLineSet()
    line.numVertices.setValues(0, len(chains), [len(c) for c in chains])
    for node in (*_plain(colour, width), points, line):
        root.addChild(node)
    return root


def dots(at: Sequence[Vector], colour: Colour) -> Any:
    """Dots that keep their size on the screen."""
    root = coin.SoSeparator()
    points = coin.SoCoordinate3()
    points.point.setValues(0, len(at), list(at))
    marks = coin.SoMarkerSet()
    marks.markerIndex = coin.SoMarkerSet.CIRCLE_FILLED_7_7
    for node in (*_plain(colour, 1.0), points, marks):
        root.addChild(node)
    return root


def label(text: str, at: Vector, ground: Colour) -> Any:
    """White words on a ground of their own, so that they can be read before anything."""
    return Label(text, at, ground).node


class Label:
    """A label that can be told to show something else: making one takes long."""

    def __init__(self, text: str, at: Vector, ground: Colour) -> None:
        self.node = coin.SoSeparator()
        place = coin.SoTranslation()
        self.node.addChild(place)
        # FreeCAD's own node for labels; it draws over what is before it
        node = coin.SoType.fromName("SoFrameLabel").createInstance()
        self.node.addChild(node)
        # pivy looks fields up slowly
        self._at, self._string = place.translation, node.string
        self._ground = node.getField("backgroundColor")
        node.getField("textColor").setValue(_OPAQUE)
        node.getField("size").setValue(LABEL_SIZE)
        self._shown: tuple[str, Vector, Colour] | None = None
        self.show(text, at, ground)

    def show(self, text: str, at: Vector, ground: Colour) -> None:
        """Show these words, there, on that ground. The node draws itself afresh with every
        change of its fields, as soon as there are words: they come last."""
        before, self._shown = self._shown, (text, at, ground)
        if before is None or at != before[1]:
            self._at.setValue(at)
        if before is None or ground != before[2]:
            self._ground.setValue(ground)
        if before is None or text != before[0]:
            rows = text.split("\n")
            if self._string.getNum() > len(rows):
                self._string.setNum(len(rows))
            self._string.setValues(0, len(rows), rows)


def _plain(colour: Colour, width: float) -> tuple[Any, ...]:
    light = coin.SoLightModel()
    light.model = coin.SoLightModel.BASE_COLOR
    paint = coin.SoBaseColor()
    paint.rgb = colour
    style = coin.SoDrawStyle()
    style.lineWidth = width
    return light, paint, style
