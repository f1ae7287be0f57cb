"""The cut layout in the document: its settings, its plan and a drawing of its sheets.

A recompute never searches for a plan; it only says whether the plan is out of date. The
plan is made by ``CutLayout.plan``, or in the recompute after ``Update`` was set.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from typing import Any

import FreeCAD
import Part

from closetbench.core.errors import ClosetError
from closetbench.model.base import Scripted
from closetbench.model.offcuts import offcuts_of
from closetbench.model.plain import from_text, to_text
from closetbench.model.properties import (
    BOOL,
    FLOAT,
    INTEGER,
    LENGTH,
    LINK,
    STRING,
    TEXTS,
    Codec,
    Prop,
    choice,
    put,
    read_fields,
    records_codec,
    result,
    starting_as,
    write_fields,
)
from closetbench.stock.by_hand import move_part
from closetbench.stock.cutting import Cutting, Needs, needs_of, plan_cutting
from closetbench.stock.length_plan import LengthPlan
from closetbench.stock.plan import CutSettings, FirstCut, Plan, PlanProgress
from closetbench.stock.purchase import WayToBuy
from closetbench.stock.tools import Shop, StoreWork, Tool

SPACE = 200.0
"""Between two sheets of the drawing, mm."""
IN_FRONT = 1500.0
"""From the closet's front to the first sheet, mm."""
BAR_WIDTH = 40.0
"""Of bars in the drawing, mm."""

SETTINGS = starting_as(CutSettings(), (
    Prop("Kerf", LENGTH, "Cutting", "Width of the saw's cut", "kerf"),
    Prop("Stages", INTEGER, "Cutting",
         "How many times the cutting may change direction, the first counted; 0: no limit",
         "stages", Codec(lambda v: v or 0, lambda v: v or None)),
    choice("FirstCut", "Cutting", "Direction of the cuts made first on a whole sheet", "first",
           FirstCut),
    Prop("Seconds", FLOAT, "Search", "How long to look for fewer sheets, per material",
         "seconds"),
    Prop("Tidy", FLOAT, "Search", "How long to look for fewer cuts then, per material", "tidy"),
    Prop("Seed", INTEGER, "Search", "Another number may find another plan", "seed"),
))
SHOP = starting_as(Shop(), (
    choice("StoreWork", "Who cuts", "What the store saws", "store", StoreWork),
    Prop("StoreCuts", INTEGER, "Who cuts", "Cuts on a sheet that the store makes; 0: any number",
         "most", Codec(lambda v: v or 0, lambda v: v or None)),
    Prop("Straightedge", BOOL, "Who cuts", "A circular saw along a straightedge is at home",
         "straightedge"),
    Prop("TableSaw", BOOL, "Who cuts", "A table saw is at home", "table"),
    Prop("OwnSaws", TEXTS, "Who cuts", "Saws in the place of all these, a text of JSON each",
         "own", records_codec(Tool, "saws")),
))
OWN = (
    Prop("Offcuts", LINK, "Cutting", "The offcuts at hand; none: everything is bought"),
    Prop("Closet", LINK, "Cutting", "The closet whose parts are cut"),
    Prop("TrimOverride", BOOL, "Cutting", "Trim every sheet by Trim, not as the catalogue says",
         initial=False),
    Prop("Trim", LENGTH, "Cutting", "Taken off each edge of a sheet before any part is cut"),
    Prop("Update", BOOL, "Cutting", "Set it to plan again in the next recompute", initial=False),
)
RESULTS = (
    result("Sheets", INTEGER, "Sheets to be cut"),
    result("Yield", FLOAT, "Area of the parts over the area of the sheets, in percent"),
    result("OutOfDate", BOOL, "The parts, the catalogue or the settings have changed since"),
    result("Lengths", INTEGER, "Boards and bars to be cut by length"),
    result("ByHand", BOOL, "Parts were moved by hand since the plan was made"),
    result("PlanJson", STRING, "The plan, as data", hidden=True),
    result("LengthsJson", STRING, "The plan of boards and bars, as data", hidden=True),
    result("Drawn", INTEGER, "How often the plan was drawn", hidden=True),
    result("WaysJson", TEXTS, "The ways to buy that were compared, as data", hidden=True),
    result("PlannedFor", STRING, "What the plan was made for", hidden=True),
)


class CutLayout(Scripted):
    """Proxy of a cut layout."""

    properties = (*OWN, *SETTINGS, *SHOP, *RESULTS)
    type_id = "Part::FeaturePython"

    def work_out(self, obj: Any) -> None:
        """Draw the plan that there is, and see whether it still fits the parts."""
        if obj.Update:
            self.plan(obj)
        plan = plan_of(obj)
        if plan is None:
            put(obj, "OutOfDate", True)
            return
        put(obj, "OutOfDate", obj.PlannedFor != _mark(needs_for(obj), settings_of(obj)))

    def plan(
        self, obj: Any, progress: Callable[[PlanProgress], bool] | None = None
    ) -> Plan:
        """Plan the sheets, boards and bars and keep the plans. Raises ``ClosetError`` where
        there is none."""
        from closetbench.model.bridge import catalogue_of

        needs, settings = needs_for(obj), settings_of(obj)
        cutting = plan_cutting(needs, settings, catalogue_of(obj.Closet), progress)
        put(obj, "PlannedFor", _mark(needs, settings))
        put(obj, "LengthsJson", to_text(cutting.lengths))
        put(obj, "Lengths", len(cutting.lengths.bars))
        put(obj, "WaysJson", [to_text(way) for way in cutting.ways])
        put(obj, "ByHand", False)
        put(obj, "OutOfDate", False)
        put(obj, "Update", False)
        self.keep(obj, cutting.sheets)
        return cutting.sheets

    def move(
        self, obj: Any, part: str, x: float, y: float, turned: bool = False, to: str = ""
    ) -> Plan:
        """Move a part on its sheet or to the one named ``to``, or turn it. ``ClosetError`` with
        the reason, and nothing changed, where the plan would not hold."""
        moved = moves_of(obj)(part, x, y, turned, to)
        put(obj, "ByHand", True)
        self.keep(obj, moved)
        return moved

    def keep(self, obj: Any, plan: Plan) -> None:
        """Store the plan of the sheets and draw it."""
        put(obj, "PlanJson", to_text(plan))
        put(obj, "Sheets", len(plan.sheets))
        whole = sum(s.sheet.length * s.sheet.width for s in plan.sheets)
        put(obj, "Yield", 100 * sum(s.used_area for s in plan.sheets) / whole if whole else 0.0)
        shape = drawing(plan, lengths_of(obj) or LengthPlan())
        shape.Placement = obj.Placement
        obj.Shape = shape
        # FreeCAD colours a new shape all over: faces get theirs once this tells that it is there
        put(obj, "Drawn", obj.Drawn + 1)


def settings_of(obj: Any) -> CutSettings:
    """The settings that a layout's properties say."""
    return CutSettings(**read_fields(obj, SETTINGS))


def write_settings(obj: Any, settings: CutSettings) -> None:
    """Set the properties that differ from the settings."""
    write_fields(obj, SETTINGS, settings)


def plan_of(obj: Any) -> Plan | None:
    """The plan that is kept in a layout, None where none was made."""
    if not obj.PlanJson:
        return None
    return from_text(Plan, obj.PlanJson, obj.Label, "plan")


def lengths_of(obj: Any) -> LengthPlan | None:
    """The plan of boards and bars that is kept in a layout, None where none was made."""
    if not obj.LengthsJson:
        return None
    return from_text(LengthPlan, obj.LengthsJson, obj.Label, "plan of lengths")


def ways_of(obj: Any) -> tuple[WayToBuy, ...]:
    """The ways to buy that were compared when the plan was made."""
    return tuple(from_text(WayToBuy, text, obj.Label, "ways to buy") for text in obj.WaysJson)


def cutting_of(obj: Any) -> Cutting | None:
    """Both plans and the ways to buy, None where nothing was planned."""
    plan = plan_of(obj)
    if plan is None:
        return None
    return Cutting(plan, lengths_of(obj) or LengthPlan(), ways_of(obj))


def moves_of(obj: Any) -> Callable[[str, float, float, bool, str], Plan]:
    """What a part, its low corner, whether it is turned and the sheet's name make of the plan as
    it is now, worked out without touching it. ``ClosetError`` where there is none to be changed;
    what is called raises it where the plan would not hold."""
    plan = plan_of(obj)
    if plan is None:
        raise ClosetError(obj.Label, "plan", "none", "plan the sheets first")
    needs, settings = needs_for(obj), settings_of(obj)
    if obj.PlannedFor != _mark(needs, settings):
        raise ClosetError(obj.Label, "plan", "out of date", "plan the sheets again first")

    def moved(part: str, x: float, y: float, turned: bool, to: str) -> Plan:
        return move_part(plan, part, x, y, turned, needs.parts, settings, needs.sheets, to)

    return moved


def shop_of(obj: Any) -> Shop:
    """Who cuts what, as a layout's properties say."""
    return Shop(**read_fields(obj, SHOP))


def write_shop(obj: Any, shop: Shop) -> None:
    """Set the properties that differ from who cuts what."""
    write_fields(obj, SHOP, shop)


def needs_for(obj: Any) -> Needs:
    """What the layout's closet needs, and what it may be cut from."""
    from closetbench.model.bridge import catalogue_of, closet_of

    if obj.Closet is None:
        raise ClosetError(obj.Label, "closet", "none", "link the closet whose parts are cut")
    closet, catalogue = closet_of(obj.Closet), catalogue_of(obj.Closet)
    trim = obj.Trim.Value if obj.TrimOverride else None
    return needs_of(
        closet.parts, closet.lengths, catalogue, obj.Kerf.Value, trim,
        offcuts_of(obj.Offcuts), obj.Closet.Label,
    )


def _mark(needs: Needs, settings: CutSettings) -> str:
    return hashlib.md5(repr((needs, settings)).encode(), usedforsecurity=False).hexdigest()


def faces_of(plan: Plan, lengths: LengthPlan) -> list[tuple[str, str]]:
    """What the faces of the drawing are, in its order: the kind ("part", "rest", "bar",
    "waste") and the part's key, or the material."""
    found = []
    for sheet in plan.sheets:
        found += [("part", p.part) for p in sheet.placements]
        found += [("rest", sheet.sheet.material)] * len(sheet.rests)
    for bar in lengths.bars:
        found += [("part", cut.part) for cut in bar.cuts]
    return found


def corners_of(plan: Plan) -> list[tuple[float, float]]:
    """Where the low corners of the sheets are in the drawing, mm."""
    found, x = [], 0.0
    for sheet in plan.sheets:
        found.append((x, -sheet.sheet.width))
        x += sheet.sheet.length + SPACE
    return found


def drawing(plan: Plan, lengths: LengthPlan) -> Part.Shape:
    """The sheets side by side, toward the viewer, as outlines; the parts and rests on them as
    faces, with strokes along the grain; the boards and bars in front of them."""
    shapes, front = [], 0.0
    for sheet, (x, y) in zip(plan.sheets, corners_of(plan), strict=True):
        front = min(front, y)
        shapes.append(_rectangle(x, y, sheet.sheet.length, sheet.sheet.width))
        for p in sheet.placements:
            shapes.append(Part.Face(_rectangle(x + p.x, y + p.y, p.dx, p.dy)))
            # the grain of a sheet runs along its length
            shapes.append(_stroke(x + p.x, y + p.y, p.dx, p.dy))
        shapes += [Part.Face(_rectangle(x + r.x, y + r.y, r.dx, r.dy)) for r in sheet.rests]
    y = front - SPACE
    for bar in lengths.bars:
        width = bar.stock.width or BAR_WIDTH
        y -= width
        shapes.append(_rectangle(0.0, y, bar.stock.length, width))
        shapes += [
            Part.Face(_rectangle(cut.start, y, cut.end - cut.start, width)) for cut in bar.cuts
        ]
        y -= SPACE / 4
    return Part.Compound(shapes)


def _stroke(x: float, y: float, dx: float, dy: float) -> Part.Shape:
    half = min(0.3 * dx, 150.0)
    middle, height = x + dx / 2, y + dy / 2
    return Part.makeLine(
        FreeCAD.Vector(middle - half, height, 0.5), FreeCAD.Vector(middle + half, height, 0.5))


def _rectangle(x: float, y: float, dx: float, dy: float) -> Part.Wire:
    corners = ((x, y), (x + dx, y), (x + dx, y + dy), (x, y + dy), (x, y))
    return Part.makePolygon([FreeCAD.Vector(u, v, 0.0) for u, v in corners])
