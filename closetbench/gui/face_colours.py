"""Colours of a panel's faces in the 3D view: edge bands, and what is cut into the board.

A file keeps them. What waits to be coloured is coloured before a document is saved, so that
what comes out of a file with a colour for each face needs no more.
"""

from __future__ import annotations

from typing import Any

import FreeCAD
import Part

from closetbench.core.errors import ClosetError
from closetbench.core.panel import Rim
from closetbench.gui import palette
from closetbench.gui.qt import QtCore
from closetbench.model import bridge
from closetbench.shop.board_colours import Colour, board_colour

_waiting: dict[tuple[str, str], bool] = {}
"""Parts to be coloured, by their documents' names and their own: whether they were loaded."""
_savers: list[_Saver] = []
_SHADE = 0.01
"""By how much a colour may change where it is kept in eight bits."""
_NEAR = 1e-4
"""mm by which a face may lie beside the plane that it is on."""


def show_soon(obj: Any) -> None:
    """Colour the faces once all that changes with the shape has changed: in a recompute, and
    more so in an undo, properties come one after another in no order to rely on."""
    _wait(obj, loaded=False)


def show_loaded(obj: Any) -> None:
    """The same for a part that comes out of a file, unless its faces were coloured there."""
    _wait(obj, loaded=True)


def _wait(obj: Any, loaded: bool) -> None:
    if not _savers:
        _savers.append(_Saver())
        FreeCAD.addDocumentObserver(_savers[0])
    if not _waiting:
        QtCore.QTimer.singleShot(0, _show_waiting)
    key = obj.Document.Name, obj.Name
    _waiting[key] = loaded and _waiting.get(key, True)


def _show_waiting() -> None:
    asked = dict(_waiting)
    _waiting.clear()
    there = FreeCAD.listDocuments()
    for (doc, name), loaded in asked.items():
        obj = there[doc].getObject(name) if doc in there else None
        if obj is not None and not (loaded and _is_coloured(obj)):
            show(obj)


def _is_coloured(obj: Any) -> bool:
    """Whether there is a colour for each face, or none that could differ from the board's."""
    count = len(getattr(obj.ViewObject, "DiffuseColor", ()))
    if count > 1:
        return bool(count == obj.Shape.countElement("Face"))
    return not (obj.Bands or obj.Machining)


class _Saver:
    """FreeCAD tells it that a document is about to be saved."""

    def slotStartSaveDocument(self, doc: Any, path: str) -> None:  # noqa: N802
        if any(name == doc.Name for name, _ in _waiting):
            _show_waiting()


def show(obj: Any) -> None:
    """Colour the faces of a part's object by what they are; the board keeps its colour."""
    view = obj.ViewObject
    if view is None or obj.Shape.isNull() or not hasattr(view, "DiffuseColor"):
        return
    board = _board(obj, view)
    banded = {Rim(text.split(" ")[0]) for text in obj.Bands.split(", ") if text}
    size = obj.Length.Value, obj.Width.Value, obj.Thickness.Value
    colours = board, palette.band_colour(board), palette.groove_colour(board)
    found = [_colour(face, size, banded, colours) for face in _own_frame(obj.Shape).Faces]
    wanted = found if any(colour != board for colour in found) else [board]
    if not _all_alike(view.DiffuseColor, wanted):
        # only then: it is a change of the file
        view.DiffuseColor = wanted


def by_material(obj: Any) -> Colour:
    """The colour of a part's board."""
    try:
        closet = bridge.closet_for(obj)
        material = bridge.catalogue_of(closet).materials.get(obj.Material)
        if material is None and closet is not None:
            # a board kept from an existing piece
            material = bridge.boards_for(closet).materials.get(obj.Material)
    except ClosetError:
        material = None
    return board_colour(material)


def _board(obj: Any, view: Any) -> Colour:
    """The colour that the board was given, by its material or by the user.

    Where FreeCAD has an appearance for each face, a part's colour is that of its first face,
    which may be a band's or a groove's.
    """
    shown = tuple(view.ShapeColor[:3])
    if not hasattr(view, "ShapeAppearance"):
        return shown
    board = by_material(obj)
    ours = (board, palette.band_colour(board), palette.groove_colour(board))
    return board if any(_alike(shown, colour) for colour in ours) else shown


def _alike(one: Colour, other: Colour) -> bool:
    return all(abs(a - b) < _SHADE for a, b in zip(one, other, strict=True))


def _all_alike(there: list[tuple[float, ...]], wanted: list[Colour]) -> bool:
    """Whether faces show these colours; one colour stands for all faces."""
    if len(wanted) == 1:
        return all(_alike(one[:3], wanted[0]) for one in there)
    return len(there) == len(wanted) and all(
        _alike(one[:3], colour) for one, colour in zip(there, wanted, strict=True))


def _own_frame(shape: Any) -> Any:
    """The shape where it was made, sharing its geometry: a copy of that takes long."""
    own = Part.Shape(shape)
    own.Placement = FreeCAD.Placement()
    return own


def _colour(
    face: Any, size: tuple[float, float, float], banded: set[Rim],
    colours: tuple[Colour, Colour, Colour],
) -> Colour:
    """``colours``: of the board, of its bands and of what is cut into it."""
    # the box that FreeCAD tells is wider by the error of the mesh, once there is one
    xs, ys, zs = zip(*(vertex.Point for vertex in face.Vertexes), strict=True)
    board, band, groove = colours
    length, width, thickness = size
    rims = (
        (Rim.START, max(xs)), (Rim.END, length - min(xs)),
        (Rim.FRONT, max(ys)), (Rim.REAR, width - min(ys)),
    )
    rim = next((rim for rim, off in rims if off < _NEAR), None)
    if rim is not None:
        return band if rim in banded else board
    high = max(zs) - min(zs)
    if high < _NEAR:
        inside = _NEAR < min(zs) < thickness - _NEAR
    else:
        # the walls of grooves are lower than the board; those of notches are not
        inside = high < thickness - _NEAR
    return groove if inside else board
