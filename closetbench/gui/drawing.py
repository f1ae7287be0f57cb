"""Pages of FreeCAD's TechDraw, made as the plan of a page says.

TechDraw works out what can be seen on threads of its own; nothing can be measured before
they are done. The page is not drawn again with every recompute: that would take longer than
all of ours. It says in red when the closet has changed since.
"""

from __future__ import annotations

import time
from typing import Any

import FreeCAD

from closetbench.core.closet import Closet
from closetbench.core.errors import DocumentError
from closetbench.gui.qt import QtCore
from closetbench.model.drawn import CLOSET, MARK, PAPER, mark_of
from closetbench.resources import RESOURCES
from closetbench.shop.drawing_plan import Sheet, Size, View

_GLANCE = 300
"""ms between two looks at whether TechDraw has done."""
PATIENCE = 120.0
"""Seconds that TechDraw may take over the views."""
_TEXT = {"a3": 3.2, "tabloid": 3.2, "a4": 2.5, "letter": 2.5}
"""mm: height of sizes by paper."""
_CAPTION = 1.25
"""Captions are so much higher than sizes."""
_DASH_DOT, _CUT = 4, (0.62, 0.55, 0.45)
_INK = (0.0, 0.0, 0.0, 1.0)
"""Opaque: FreeCAD 1.1 takes a colour of three parts for one that cannot be seen, and earlier ones
do not look at the fourth."""
_FONT = "Sans Serif"
Vector = FreeCAD.Vector


def page_of(closet: Any) -> Any:
    """The newest page that is of a closet, None where there is none."""
    pages = [o for o in closet.Document.Objects if getattr(o, CLOSET, None) == closet]
    return pages[-1] if pages else None


def make_page(closet: Any, built: Closet, sheet: Sheet, parts: dict[str, Any], at: Any) -> Any:
    """A new page; those that are there stay, since FreeCAD 1.0 may crash where the deletion
    of a dimension is undone. ``parts``: objects by full names; ``at``: where the closet's
    frame lies. Raises ``DocumentError`` where TechDraw does not come to an end."""
    doc = closet.Document
    page = _new_page(doc, closet)
    _set_template(doc, page, sheet)
    made = {}
    for view in sheet.views:
        made[view.name] = _view(doc, page, view, sheet, parts, at, made.get("front"))
    doc.recompute()
    _wait(made)
    _show_views(made, False)
    dims = []
    for view in sheet.views:
        dims += _sizes(doc, page, view, made[view.name], sheet, at)
        _note(doc, page, view.caption, view.caption_at, sheet)
    for mark in sheet.marks:
        made["front"].makeCosmeticLine3D(
            at.multVec(Vector(*mark.low)), at.multVec(Vector(*mark.high)), _DASH_DOT, 0.3, _INK)
        for place in mark.letters_at:
            _note(doc, page, mark.letter, place, sheet)
    doc.recompute()
    _show_views(made, True)
    _let_pass(200)
    _check_sizes(dims)
    setattr(page, MARK, mark_of(built))
    setattr(page, PAPER, sheet.paper)
    page.KeepUpdated = False
    page.purgeTouched()
    return page


def revive_soon(name: str) -> None:
    """Have the empty pages of a document drawn, once FreeCAD has done with what it is at."""
    QtCore.QTimer.singleShot(0, lambda: _revive(name))


def _revive(name: str) -> None:
    doc = FreeCAD.listDocuments().get(name)
    if doc is None:
        return
    pages = [
        p for p in doc.findObjects("TechDraw::DrawPage")
        if getattr(p, CLOSET, None) is not None and not p.KeepUpdated and _undrawn(p)
    ]
    for page in pages:
        page.KeepUpdated = True
    if pages:
        end = time.monotonic() + PATIENCE
        names = [p.Name for p in pages]
        QtCore.QTimer.singleShot(_GLANCE, lambda: _rest(name, names, end))


def _rest(name: str, pages: list[str], end: float) -> None:
    """Leave the pages alone again as soon as all their views are drawn."""
    doc = FreeCAD.listDocuments().get(name)
    found = [p for p in map(doc.getObject, pages) if p is not None] if doc is not None else []
    if any(_undrawn(p) for p in found) and time.monotonic() < end:
        QtCore.QTimer.singleShot(_GLANCE, lambda: _rest(name, pages, end))
        return
    for page in found:
        page.KeepUpdated = False
        page.purgeTouched()


def _undrawn(page: Any) -> bool:
    return any(
        view.TypeId in ("TechDraw::DrawViewPart", "TechDraw::DrawViewSection")
        and not view.getVisibleEdges() for view in page.Views)


def _new_page(doc: Any, closet: Any) -> Any:
    page = doc.addObject("TechDraw::DrawPage", "Drawing")
    page.Label = f"{closet.Label}: drawing"
    for kind, name, text in (
        ("App::PropertyLinkHidden", CLOSET, "The closet that is drawn"),
        ("App::PropertyString", MARK, "What the page was drawn from"),
        ("App::PropertyString", PAPER, "The paper"),
    ):
        page.addProperty(kind, name, "Closetbench", text)
        page.setEditorMode(name, 1)
    setattr(page, CLOSET, closet)
    return page


def _set_template(doc: Any, page: Any, sheet: Sheet) -> None:
    template = doc.addObject("TechDraw::DrawSVGTemplate", "DrawingTemplate")
    template.Template = str(RESOURCES / "drawing" / f"{sheet.paper}.svg")
    page.Template = template
    template.EditableTexts = {**template.EditableTexts, **sheet.texts}


def _view(
    doc: Any, page: Any, view: View, sheet: Sheet, parts: dict[str, Any], at: Any, front: Any
) -> Any:
    kind = "TechDraw::DrawViewPart" if view.cut is None else "TechDraw::DrawViewSection"
    made = doc.addObject(kind, f"Drawing_{view.name}".replace(" ", "_"))
    page.addView(made)
    made.Source = [parts[name] for name in view.bodies if name in parts]
    made.Label = view.name
    toward = at.Rotation.multVec(Vector(*view.toward))
    if view.cut is None:
        made.Direction = toward
        made.XDirection = at.Rotation.multVec(Vector(*view.right))
    else:
        made.BaseView = front
        made.SectionNormal = toward
        made.SectionDirection = "Right"
        made.Direction = toward
        made.XDirection = at.Rotation.multVec(Vector(*view.right))
        made.SectionSymbol = view.name.rpartition(" ")[2]
        made.CutSurfaceDisplay = "Color"
        made.SectionOrigin = at.multVec(Vector(view.cut, view.middle[1], view.middle[2]))
    made.ScaleType = "Custom"
    made.Scale = 1.0 / sheet.scale
    made.X, made.Y = view.at
    # the marks of sections are ours: FreeCAD's would run across the sizes
    _look(made, LineWidth=0.25, KeepLabel=False, ArcCenterMarks=False, ShowSectionLine=False,
          CutSurfaceColor=_CUT)
    return made


def _look(obj: Any, **values: object) -> None:
    """Set those properties of a view that this FreeCAD has."""
    for name, value in values.items():
        if hasattr(obj.ViewObject, name):
            setattr(obj.ViewObject, name, value)


def _wait(views: dict[str, Any]) -> None:
    end = time.monotonic() + PATIENCE
    while True:
        _let_pass(50)
        waiting = [name for name, view in views.items() if not view.getVisibleEdges()]
        if not waiting:
            return
        if time.monotonic() > end:
            raise DocumentError(
                "drawing page", "view", waiting[0], "FreeCAD has not finished to draw it")


def _show_views(views: dict[str, Any], shown: bool) -> None:
    """FreeCAD draws a view that is shown all over again with every point that it is given."""
    for view in views.values():
        view.ViewObject.Visibility = shown


def _let_pass(milliseconds: int) -> None:
    """Let TechDraw's threads hand their work in; the user has to wait."""
    loop = QtCore.QEventLoop()
    QtCore.QTimer.singleShot(milliseconds, loop.quit)
    flags = QtCore.QEventLoop.ExcludeUserInputEvents
    (loop.exec if hasattr(loop, "exec") else loop.exec_)(flags)


def _corner_count(view: Any) -> int:
    count = 0
    while True:
        try:
            view.getVertexByIndex(count)
        except Exception:  # noqa: BLE001 - of another kind on every FreeCAD
            return count
        count += 1


def _is_mirrored(view: Any, over: Any) -> bool:
    """Whether points come out upside down, as they do from FreeCAD 1.0 on. The point that is
    tried stays, unused: where it is taken away, the next one brings FreeCAD 1.0 down."""
    return bool(view.getCosmeticVertex(view.makeCosmeticVertex3d(over)).Point.y < 0)


def _check_sizes(dims: list[tuple[Size, Any]]) -> None:
    """Nothing is printed that TechDraw measures otherwise."""
    for size, dim in dims:
        length = sum(abs(b - a) for a, b in zip(size.start, size.end, strict=True))
        measured = dim.getRawValue()
        if abs(measured - length) > 0.5:
            raise DocumentError(
                "drawing page", "size", f"{measured:.1f} mm",
                f"should be {length:.1f} mm; FreeCAD has measured something else")


def _sizes(
    doc: Any, page: Any, view: View, made: Any, sheet: Sheet, at: Any
) -> list[tuple[Size, Any]]:
    """The dimensions of a view, with what they have to measure."""
    points = list(dict.fromkeys(p for size in view.sizes for p in (size.start, size.end)))
    up = Vector(*view.right).cross(Vector(*view.toward)) * -1.0
    middle = Vector(*view.middle)
    mirrored = _is_mirrored(made, at.multVec(middle + up * 100.0)) if points else False
    for point in points:
        where = Vector(*point)
        if mirrored:
            where -= up * (2.0 * (where - middle).dot(up))
        made.makeCosmeticVertex3d(at.multVec(where))
    first = _corner_count(made) - len(points)
    number = {point: first + i for i, point in enumerate(points)}
    dims = []
    for size in view.sizes:
        dim = doc.addObject("TechDraw::DrawViewDimension", "Drawing_size")
        dim.Type = "DistanceX" if size.level else "DistanceY"
        dim.References2D = [
            (made, f"Vertex{number[size.start]}"), (made, f"Vertex{number[size.end]}")]
        dim.Arbitrary = True
        dim.FormatSpec = size.text
        page.addView(dim)
        dim.X, dim.Y = _place(size, view, sheet)
        height = _TEXT[sheet.paper]
        _look(dim, Font=_FONT, Fontsize=height, Arrowsize=0.7 * height, LineWidth=0.18)
        dims.append((size, dim))
    return dims


def _place(size: Size, view: View, sheet: Sheet) -> tuple[float, float]:
    """Where a size's words go, from the middle of its view, mm on paper."""
    along = view.right if size.level else (0.0, 0.0, 1.0) if view.toward[2] == 0 else (0, 1, 0)
    middle = sum(
        ((a + b) / 2 - m) * w
        for a, b, m, w in zip(size.start, size.end, view.middle, along, strict=True))
    at = middle / sheet.scale
    return (at, size.offset) if size.level else (size.offset, at)


def _note(doc: Any, page: Any, text: str, at: tuple[float, float], sheet: Sheet) -> None:
    note = doc.addObject("TechDraw::DrawViewAnnotation", "Drawing_note")
    page.addView(note)
    note.Text = [text]
    note.TextSize = _CAPTION * _TEXT[sheet.paper]
    note.Font = _FONT
    note.X, note.Y = at
