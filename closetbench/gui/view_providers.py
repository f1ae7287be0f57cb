"""How our objects look in the tree and in the 3D view, and what a double click opens."""

from __future__ import annotations

import contextlib
import re
from typing import Any

from pivy import coin

from closetbench.core.errors import ClosetError
from closetbench.gui import face_colours, palette
from closetbench.gui.qt import icon, icon_file
from closetbench.gui.room_view import PROPERTIES, RoomView
from closetbench.model import bridge, children
from closetbench.model.base import class_of
from closetbench.model.contents import CONTENTS
from closetbench.shop.board_colours import board_colour

ICONS = {
    "Closet": "closet", "Survey": "survey", "Carcass": "carcass", "Bay": "bay",
    "GroovedPanel": "panel", "ClosetPart": "part", "CutLayout": "layout", "Bill": "bill",
    "Offcuts": "offcuts",
    "Bar": "bar", "ExistingPiece": "existing",
    **{name: re.sub(r"(?<=.)(?=[A-Z])", "_", name).lower() for name in CONTENTS},
}
_COMPONENTS = ("Carcass", *CONTENTS)
_CLAIMANTS = ("Component", "Closet")
_SHAPELESS = (*_COMPONENTS, "Bay", "Bill", "Offcuts")
_TAKERS = ("Bay", "Carcass", "Bench")
_MODE = "Tree only"


def attach(obj: Any) -> None:
    """Give an object its view provider, and its first colours, where it has none yet."""
    view = obj.ViewObject
    if class_of(obj) == "BillSheet":
        # FreeCAD's own does all; a proxy, whatever it is, has it shown in the tree
        if view is not None and getattr(view, "Proxy", 0) is None:
            view.Proxy = 0
        return
    if view is None:
        return
    if isinstance(getattr(view, "Proxy", None), ViewProvider):
        # loaded with the document, whose values are all there only now
        view.Proxy.follow_room()
        if hasattr(obj, "Bands"):
            face_colours.show_loaded(obj)
        return
    fresh = getattr(view, "Proxy", None) is None
    ViewProvider(view)
    if fresh:
        _first_look(obj)
    # the tree may have drawn the object already, without its icon and children
    view.signalChangeIcon()


class ViewProvider:
    """One for all our classes: what they do differently is in the tables above."""

    followed = frozenset(("Material", "Fingerprint", "Shape", "Drawn", *_CLAIMANTS))
    """Properties whose change changes what is seen beside the shape itself."""

    room: RoomView | None = None
    """The nodes of a survey's room; a proxy that FreeCAD restores has seen no __init__."""

    def __init__(self, view: Any) -> None:
        self.Object = view.Object
        self._attached = False
        view.Proxy = self
        # FreeCAD does not attach a proxy that is given back to a loaded object
        if not self._attached:
            self.attach(view)

    def attach(self, view: Any) -> None:
        """The object is shown for the first time.

        FreeCAD greys out what has no way to be displayed: an empty one is enough.
        """
        self.Object = view.Object
        self._attached = True
        if class_of(view.Object) in _SHAPELESS:
            view.addDisplayMode(coin.SoGroup(), _MODE)
        if class_of(view.Object) == "Survey":
            self.room = RoomView(view)
            if not view.Object.Document.Restoring:
                self.room.rebuild()

    def follow_room(self) -> None:
        """Draw a survey's room as its readings are now."""
        if self.room is not None:
            self.room.rebuild()
            self.room.follow()

    def getDisplayModes(self, view: Any) -> list[str]:  # noqa: N802
        """Ways of display beside those of the object's type."""
        return [_MODE] if class_of(view.Object) in _SHAPELESS else []

    def getDefaultDisplayMode(self) -> str:  # noqa: N802
        """The way of display that a new object has."""
        return _MODE if class_of(self.Object) in _SHAPELESS else "Flat Lines"

    def setDisplayMode(self, mode: str) -> str:  # noqa: N802
        """Every way of display is one of FreeCAD's."""
        return mode

    def getIcon(self) -> str:  # noqa: N802
        """The icon's path, as it is on this machine."""
        name = ICONS.get(class_of(self.Object), "closet")
        icon(name)
        return icon_file(name)

    def claimChildren(self) -> list[Any]:  # noqa: N802
        """What the tree shows under the object."""
        return children.claimed(self.Object)

    def updateData(self, obj: Any, prop: str) -> None:  # noqa: N802
        """A board's colour follows its material. What shows an object under it is told:
        the tree asks for children again only when the object that claims them changes."""
        if prop not in self.followed:
            return
        if prop == "Drawn":
            _paint_layout(obj)
        if obj.Document.Restoring:
            # what a file holds of the view comes after this, and stays as it was saved
            return
        if prop == "Material" and class_of(obj) in ("ClosetPart", "GroovedPanel"):
            _paint(obj)
        elif prop == "Fingerprint" and hasattr(obj, "Bands"):
            face_colours.show_soon(obj)
        elif prop == "Shape":
            self.follow_room()
        elif prop in _CLAIMANTS:
            above = getattr(obj, prop)
            if above is not None and hasattr(above, "PartCount"):
                above.PartCount = above.PartCount

    def onChanged(self, view: Any, prop: str) -> None:  # noqa: N802
        """A component has no shape: hiding it hides its parts."""
        obj = view.Object
        if self.room is not None and (prop == "Visibility" or prop in PROPERTIES):
            self.room.follow()
        if prop == "Visibility" and class_of(obj) in _COMPONENTS and not obj.Document.Restoring:
            for part in children.parts_of(obj):
                part.ViewObject.Visibility = view.Visibility

    def onDelete(self, view: Any, names: Any) -> bool:  # noqa: N802
        """Take along what cannot be without the object."""
        obj = view.Object
        doc = obj.Document
        if class_of(obj) == "Bill":
            children.delete_with(obj)
        if class_of(obj) in ("Closet", *_COMPONENTS):
            papers = [o.Name for o in children.claimed(obj) if class_of(o) in children.PLANS]
            papers = [s.Name for n in papers for s in children.claimed(doc.getObject(n))] + papers
            children.delete_with(obj)
            for name in papers:
                doc.removeObject(name)
        return True

    def canDelete(self, other: Any) -> bool:  # noqa: N802
        """Whether this object can do without one that it refers to; FreeCAD warns if not.

        It can where it goes along, or where the references are put in order again.
        """
        return class_of(other) != "Survey"

    # -- dragging in the tree: a component to another bay. What raises NotImplementedError is
    # left to FreeCAD.

    def canDragObjects(self) -> bool:  # noqa: N802
        """Components can be dragged out of a closet's place in the tree, not out of it."""
        if class_of(self.Object) != "Closet":
            raise NotImplementedError
        return True

    def canDragObject(self, obj: Any) -> bool:  # noqa: N802
        """Whether this one can."""
        if class_of(self.Object) != "Closet":
            raise NotImplementedError
        return class_of(obj) in CONTENTS

    def dragObject(self, view: Any, obj: Any) -> None:  # noqa: N802
        """It stays in the closet's group: only its place changes."""
        if class_of(view.Object) != "Closet":
            raise NotImplementedError

    def canDropObjects(self) -> bool:  # noqa: N802
        """Bays and carcasses take components."""
        if class_of(self.Object) not in _TAKERS:
            raise NotImplementedError
        return True

    def canDropObject(self, obj: Any) -> bool:  # noqa: N802
        """Whether a component can stand there."""
        if class_of(self.Object) not in _TAKERS:
            raise NotImplementedError
        from closetbench.gui import moving

        return moving.can_stand(obj, self.Object)

    def dropObject(self, view: Any, obj: Any) -> None:  # noqa: N802
        """Put a component there."""
        if class_of(view.Object) not in _TAKERS:
            raise NotImplementedError
        from closetbench.gui import moving

        moving.stand(obj, view.Object)

    def doubleClicked(self, view: Any) -> bool:  # noqa: N802
        """Open the object's panel; a part opens that of its carcass."""
        from closetbench.gui import panels

        return panels.open_for(view.Object)

    def setEdit(self, view: Any, mode: int = 0) -> bool | None:  # noqa: N802
        """FreeCAD enters edit mode: show the panel. Other modes are FreeCAD's own."""
        if mode != 0:
            return None
        from closetbench.gui import panels

        return panels.show_for(view.Object)

    def unsetEdit(self, view: Any, mode: int = 0) -> bool | None:  # noqa: N802
        """FreeCAD leaves edit mode: the panel goes along."""
        if mode != 0:
            return None
        from closetbench.gui import panels

        panels.hide_for(view.Object)
        return True

    # 0.20 asks for the first pair, later versions for the second
    def __getstate__(self) -> None:
        return None

    def __setstate__(self, state: object) -> None:
        return None

    def dumps(self) -> None:
        return None

    def loads(self, state: object) -> None:
        return None


def _first_look(obj: Any) -> None:
    view = obj.ViewObject
    kind = class_of(obj)
    if kind == "Survey":
        view.LineColor = palette.SURVEY
        view.PointColor = palette.SURVEY
        view.LineWidth = 1.0
        view.PointSize = 1.0
        view.Transparency = 80
        with contextlib.suppress(AttributeError):
            view.Selectable = False
    elif kind == "CutLayout":
        view.LineWidth = 1.0
        view.PointSize = 1.0
        view.LineColor = palette.EDGES
        view.ShapeColor = palette.SHEET
    elif kind in _SHAPELESS:
        # what was loaded without a view has none of this yet
        view.DisplayMode = _MODE
        view.Visibility = True
    elif kind in (*children.BODIES, "GroovedPanel"):
        view.LineWidth = 1.0
        view.PointSize = 1.0
        view.LineColor = palette.EDGES
        _paint(obj)


def _paint_layout(obj: Any) -> None:
    """Every face of the drawing in the colour of its board, what is left whole much paler."""
    from closetbench.model.layout import cutting_of, faces_of

    view = obj.ViewObject
    try:
        cutting = cutting_of(obj)
        materials = bridge.catalogue_of(obj.Closet).materials if obj.Closet is not None else {}
    except ClosetError:
        return
    if view is None or cutting is None or obj.Shape.isNull():
        return
    of_part = {p.part: s.sheet.material for s in cutting.sheets.sheets for p in s.placements}
    of_part |= {c.part: b.stock.material for b in cutting.lengths.bars for c in b.cuts}
    colours = []
    for kind, key in faces_of(cutting.sheets, cutting.lengths):
        material = of_part.get(key, "") if kind == "part" else key
        colour = board_colour(materials.get(material))
        if kind == "rest":
            colour = tuple(0.25 * part + 0.75 * 0.97 for part in colour)
        colours.append(colour)
    if len(colours) == len(obj.Shape.Faces):
        view.DiffuseColor = colours


def _paint(obj: Any) -> None:
    view = obj.ViewObject
    if view is None or not hasattr(view, "ShapeColor"):
        return
    if class_of(obj) in palette.PIECES:
        view.ShapeColor = palette.PIECES[class_of(obj)]
        return
    view.ShapeColor = face_colours.by_material(obj)
    if hasattr(obj, "Bands"):
        face_colours.show_soon(obj)
