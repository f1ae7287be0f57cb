"""Colours of a panel's faces in the 3D view: edge bands, and what is cut into the board."""

from __future__ import annotations

from typing import Any

import FreeCAD

from closetbench.core.errors import ClosetError
from closetbench.core.panel import Rim
from closetbench.gui import palette
from closetbench.gui.qt import QtCore
from closetbench.model import bridge
from closetbench.shop.board_colours import Colour, board_colour

_waiting: dict[tuple[str, str], None] = {}
_SHADE = 0.01
"""By how much a colour may change where it is kept in eight bits."""
_NEAR = 1e-4
"""mm by which a face may lie beside the plane that it is on."""


def show_soon(obj: Any) -> None:
    """Colour the faces once all that changes with the shape has changed: in a recompute, and
    more so in an undo, properties come one after another in no order to rely on."""
    if not _waiting:
        QtCore.QTimer.singleShot(0, _show_waiting)
    _waiting[obj.Document.Name, obj.Name] = None


def _show_waiting() -> None:
    names = list(_waiting)
    _waiting.clear()
    there = FreeCAD.listDocuments()
    for doc, name in names:
        obj = there[doc].getObject(name) if doc in there else None
        if obj is not None:
            show(obj)


def show(obj: Any) -> None:
    """Colour the faces of a part's object by what they are; the board keeps its colour."""
    view = obj.ViewObject
    if view is None or obj.Shape.isNull() or not hasattr(view, "DiffuseColor"):
        return
    board = _board(obj, view)
    banded = {Rim(text.split(" ")[0]) for text in obj.Bands.split(", ") if text}
    size = obj.Length.Value, obj.Width.Value, obj.Thickness.Value
    found = [_colour(face, size, banded, board) for face in _own_frame(obj.Shape).Faces]
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
    own = shape.copy(False)
    own.Placement = FreeCAD.Placement()
    return own


def _colour(
    face: Any, size: tuple[float, float, float], banded: set[Rim], board: Colour
) -> Colour:
    box = face.BoundBox
    length, width, thickness = size
    rims = {
        Rim.START: box.XMax, Rim.END: length - box.XMin,
        Rim.FRONT: box.YMax, Rim.REAR: width - box.YMin,
    }
    rim = next((rim for rim, off in rims.items() if off < _NEAR), None)
    if rim is not None:
        return palette.band_colour(board) if rim in banded else board
    flat = box.ZLength < _NEAR
    if flat:
        inside = _NEAR < box.ZMin < thickness - _NEAR
    else:
        # the walls of grooves are lower than the board; those of notches are not
        inside = box.ZLength < thickness - _NEAR
    return palette.groove_colour(board) if inside else board
