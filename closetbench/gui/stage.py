"""What is shown of a closet in the 3D view without touching the document.

Nodes are put into FreeCAD's scene and taken out again: parts moved, cut open by a plane,
labelled. Nothing of it is saved, and undo knows nothing of it.
"""

from __future__ import annotations

import contextlib
import math
from collections.abc import Iterable, Mapping
from typing import Any

import FreeCAD
import FreeCADGui
import Part
from pivy import coin

from closetbench.core.parts import Vector
from closetbench.gui import palette, scene

DEFLECTION = 0.5
"""mm by which round outlines of a cut may differ from the circle."""


class Stage:
    """The 3D view of a document, with the parts that ``parts`` are."""

    def __init__(self, doc: Any, parts: Iterable[Any]) -> None:
        self.parts = [p for p in parts if p.ViewObject is not None]
        gui = FreeCADGui.getDocument(doc.Name)
        self._views = list(gui.mdiViewsOfType("Gui::View3DInventor"))
        self._shifts: dict[str, tuple[Any, Any]] = {}
        self._offsets: Mapping[str, Vector] = {}
        self._clips: list[tuple[Any, Any]] = []
        self._labels = coin.SoSeparator()
        self._caps = coin.SoSeparator()
        self._shown: list[tuple[Any, Any]] = []
        for view in self._views:
            root = view.getSceneGraph()
            for node in (self._labels, self._caps):
                root.addChild(node)
                self._shown.append((root, node))

    def close(self) -> None:
        """Take everything out of the scene again."""
        self.shift({})
        self.cut(None, 0.0)
        for root, node in self._shown:
            with contextlib.suppress(RuntimeError):
                if root.findChild(node) >= 0:
                    root.removeChild(node)
        self._shown = []

    # -- parts moved

    def shift(self, offsets: Mapping[str, Vector]) -> None:
        """Move parts by their objects' names; those that are not named go home."""
        self._offsets = offsets
        for part in self.parts:
            way = offsets.get(part.Name)
            if way is None and part.Name not in self._shifts:
                continue
            if way is None:
                root, node = self._shifts.pop(part.Name)
                if root.findChild(node) >= 0:
                    root.removeChild(node)
                continue
            if part.Name not in self._shifts:
                root, node = part.ViewObject.RootNode, coin.SoTranslation()
                root.insertChild(node, 0)
                self._shifts[part.Name] = root, node
            self._shifts[part.Name][1].translation.setValue(*way)

    # -- labels

    def label(self, texts: Mapping[str, str]) -> int:
        """Write texts on the parts of those objects' names, and on no others; how many have
        found no room as the view stands, or no face that can be seen."""
        self._labels.removeAllChildren()
        wanted = [p for p in self.parts if texts.get(p.Name) and p.ViewObject.Visibility]
        if not wanted or not self._views:
            return 0
        sight = Sight(self._views[0])
        taken: list[tuple[float, float, float]] = []
        made = []
        wanted.sort(key=lambda p: -p.Shape.BoundBox.DiagonalLength)
        for part in wanted:
            text = texts[part.Name]
            at = self._face_seen(sight, part)
            if at is None:
                continue
            x, y = sight.pixel(at)
            half = 4.0 * len(text) + 8
            if any(abs(x - u) < half + w and abs(y - v) < 20 for u, v, w in taken):
                continue
            taken.append((x, y, half))
            made.append(scene.label(text, at, palette.LABEL))
        self._labels.addChild(scene.on_top(made))
        return len(wanted) - len(taken)

    def eye(self) -> str:
        """Where the view looks from: names have to be written anew when that changes."""
        return str(self._views[0].getCamera()) if self._views else ""

    def _face_seen(self, sight: Sight, part: Any) -> Vector | None:
        """The middle of a face of a part's box that nothing lies before."""
        box, way = part.Shape.BoundBox, self._offsets.get(part.Name, (0.0, 0.0, 0.0))
        middle = [c + w for c, w in zip((box.Center.x, box.Center.y, box.Center.z), way,
                                        strict=True)]
        sizes = (box.XLength, box.YLength, box.ZLength)
        for axis, side in ((1, -0.5), (2, 0.5), (0, 0.5), (0, -0.5), (1, 0.5), (2, -0.5)):
            at = list(middle)
            at[axis] += side * sizes[axis]
            if sight.faces(axis, side) and sight.sees((at[0], at[1], at[2])):
                return at[0], at[1], at[2]
        return None

    # -- cut open

    def cut(self, normal: Vector | None, distance: float, caps: bool = True) -> None:
        """Take away what lies on the side that ``normal`` points to, at ``distance`` along
        it from the origin, and close the boards that are cut; None: nothing."""
        self._caps.removeAllChildren()
        if normal is None:
            for root, node in self._clips:
                if root.findChild(node) >= 0:
                    root.removeChild(node)
            self._clips = []
            return
        if not self._clips:
            for view in self._views:
                root, node = view.getSceneGraph(), coin.SoClipPlane()
                root.insertChild(node, 0)
                self._clips.append((root, node))
        back = [-c for c in normal]
        for _, node in self._clips:
            # what lies on the side of the plane's normal stays
            node.plane.setValue(coin.SbPlane(coin.SbVec3f(*back), -distance - 0.05))
        if caps:
            self._cap(normal, distance)

    def _cap(self, normal: Vector, distance: float) -> None:
        axis = FreeCAD.Vector(*normal)
        for part in self.parts:
            if not part.ViewObject.Visibility or part.Shape.isNull():
                continue
            way = FreeCAD.Vector(*self._offsets.get(part.Name, (0.0, 0.0, 0.0)))
            level = distance - way.dot(axis)
            reach = [FreeCAD.Vector(p).dot(axis) for p in _corners(part.Shape.BoundBox)]
            if not min(reach) < level < max(reach):
                continue
            for solid in part.Shape.Solids:
                wires = solid.slice(axis, level)
                if wires:
                    colour = palette.cut_colour(part.ViewObject.ShapeColor[:3])
                    self._caps.addChild(_faces(wires, way, colour))


class Sight:
    """What a view's camera sees of points."""

    NEARER = 6.0
    """mm by which something may lie before a point that counts as seen."""

    def __init__(self, view: Any, size: tuple[int, int] | None = None) -> None:
        """``size``: the view's in pixels, where it is known better than FreeCAD says."""
        self._root = view.getSceneGraph()
        width, height = size or view.getSize()
        camera = view.getCameraNode()
        aspect = width / max(1, height)
        self._volume = camera.getViewVolume(aspect)
        if aspect < 1.0:
            # the camera shows its height across the narrower side
            self._volume.scale(1.0 / aspect)
        self._size = width, height
        self._region = coin.SbViewportRegion(width, height)
        self._toward = self._volume.getProjectionDirection()
        self._level = camera.isOfType(coin.SoOrthographicCamera.getClassTypeId())

    def pixel(self, at: Vector) -> tuple[float, float]:
        """Where a point is on the view."""
        flat = self._volume.projectToScreen(coin.SbVec3f(*at))
        return flat[0] * self._size[0], flat[1] * self._size[1]

    def millimetres(self, at: Vector) -> float:
        """How many millimetres a pixel is at a point."""
        (x, y), (u, v) = self.pixel(at), self.pixel(self.above(at, 1.0))
        return 1.0 / max(1e-9, math.hypot(u - x, v - y))

    def above(self, at: Vector, far: float) -> Vector:
        """The point so far above one, as the view stands upright, in millimetres."""
        up = self._volume.getViewUp()
        up.normalize()
        return at[0] + far * up[0], at[1] + far * up[1], at[2] + far * up[2]

    def along(self, pixel: tuple[float, float], start: Vector, way: Vector) -> float | None:
        """How far along an axis from its start lies what is nearest to a pixel; None where
        one looks along the axis."""
        near, far = self._volume.projectPointToLine(
            coin.SbVec2f(pixel[0] / self._size[0], pixel[1] / self._size[1]))
        look, axis = far - near, coin.SbVec3f(*way)
        look.normalize()
        slant = look.dot(axis)
        if 1.0 - slant * slant < 1e-4:
            return None
        apart = coin.SbVec3f(*start) - near
        return float((slant * look.dot(apart) - axis.dot(apart)) / (1.0 - slant * slant))

    def onto(self, pixel: tuple[float, float], at: Vector, square: Vector) -> Vector | None:
        """Where a pixel is on the plane through a point, ``square`` to it; None where one looks
        along the plane."""
        near, far = self._volume.projectPointToLine(
            coin.SbVec2f(pixel[0] / self._size[0], pixel[1] / self._size[1]))
        look, axis = far - near, coin.SbVec3f(*square)
        slant = look.dot(axis)
        if abs(slant) < 0.02 * look.length():
            return None
        found = near + look * (axis.dot(coin.SbVec3f(*at) - near) / slant)
        return tuple(found.getValue())

    def across(self, at: Vector, way: Vector) -> tuple[Vector, float]:
        """The direction square to the look in which an axis is seen to go at a point, and
        how much of the axis's length is seen: from 0, along the look, to 1."""
        look = self._toward
        if not self._level:
            look = coin.SbVec3f(*at) - self._volume.getProjectionPoint()
            look.normalize()
        axis = coin.SbVec3f(*way)
        flat = axis - look * look.dot(axis)
        seen = flat.normalize()
        return tuple(flat.getValue()), float(seen)

    def faces(self, axis: int, side: float) -> bool:
        """Whether a side square to an axis looks towards the viewer."""
        return bool(self._toward[axis] * side < 0)

    def sees(self, at: Vector) -> bool:
        """Whether nothing lies before a point."""
        point = coin.SbVec3f(*at)
        start = (
            point - self._toward * 1e5 if self._level else self._volume.getProjectionPoint())
        way = point - start
        reach = way.length()
        way.normalize()
        action = coin.SoRayPickAction(self._region)
        action.setRay(start, way, 0.0, reach + 10.0)
        action.apply(self._root)
        hit = action.getPickedPoint()
        return hit is None or (hit.getPoint() - start).length() > reach - self.NEARER


def _corners(box: Any) -> list[tuple[float, float, float]]:
    return [
        (x, y, z) for x in (box.XMin, box.XMax) for y in (box.YMin, box.YMax)
        for z in (box.ZMin, box.ZMax)
    ]


def _faces(wires: list[Any], way: Any, colour: palette.Colour) -> Any:
    """The areas within wires of one plane, what lies within another being a hole."""
    face = Part.makeFace(wires, "Part::FaceMakerBullseye")
    points, triangles = face.tessellate(DEFLECTION)
    group = coin.SoSeparator()
    light, paint, at = coin.SoLightModel(), coin.SoBaseColor(), coin.SoCoordinate3()
    light.model.setValue(coin.SoLightModel.BASE_COLOR)
    paint.rgb.setValue(*colour)
    at.point.setValues(0, len(points), [tuple(p + way) for p in points])
    net = coin.SoIndexedFaceSet()
    numbers = [n for t in triangles for n in (*t, -1)]
    net.coordIndex.setValues(0, len(numbers), numbers)
    for node in (light, paint, at, net):
        group.addChild(node)
    return group
