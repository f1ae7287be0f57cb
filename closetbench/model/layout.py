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
from closetbench.model.plain import from_text, to_text
from closetbench.model.properties import (
    BOOL,
    FLOAT,
    INTEGER,
    LENGTH,
    LINK,
    STRING,
    Codec,
    Prop,
    choice,
    put,
    read_fields,
    result,
    starting_as,
    write_fields,
)
from closetbench.stock.from_parts import cut_parts, stock_sheets
from closetbench.stock.plan import (
    CutPart,
    CutSettings,
    FirstCut,
    Plan,
    PlanProgress,
    StockSheet,
)
from closetbench.stock.sheets import plan_sheets
from closetbench.stock.verify import require_valid

SPACE = 200.0
"""Between two sheets of the drawing, mm."""
IN_FRONT = 1500.0
"""From the closet's front to the first sheet, mm."""

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
OWN = (
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
    result("PlanJson", STRING, "The plan, as data", hidden=True),
    result("PlannedFor", STRING, "What the plan was made for", hidden=True),
)


class CutLayout(Scripted):
    """Proxy of a cut layout."""

    properties = (*OWN, *SETTINGS, *RESULTS)
    type_id = "Part::FeaturePython"

    def work_out(self, obj: Any) -> None:
        """Draw the plan that there is, and see whether it still fits the parts."""
        if obj.Update:
            self.plan(obj)
        plan = plan_of(obj)
        if plan is None:
            put(obj, "OutOfDate", True)
            return
        parts, stock = _needs(obj)
        put(obj, "OutOfDate", obj.PlannedFor != _mark(parts, stock, settings_of(obj)))

    def plan(
        self, obj: Any, progress: Callable[[PlanProgress], bool] | None = None
    ) -> Plan:
        """Plan the sheets and keep the plan. Raises ``ClosetError`` where there is none."""
        parts, stock = _needs(obj)
        settings = settings_of(obj)
        plan = plan_sheets(parts, stock, settings, progress)
        require_valid(plan, parts, settings, stock)
        put(obj, "PlanJson", to_text(plan))
        put(obj, "PlannedFor", _mark(parts, stock, settings))
        put(obj, "Sheets", len(plan.sheets))
        whole = sum(s.sheet.length * s.sheet.width for s in plan.sheets)
        put(obj, "Yield", 100 * sum(s.used_area for s in plan.sheets) / whole if whole else 0.0)
        put(obj, "OutOfDate", False)
        put(obj, "Update", False)
        shape = _drawing(plan)
        shape.Placement = obj.Placement
        obj.Shape = shape
        return plan


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


def _needs(obj: Any) -> tuple[tuple[CutPart, ...], tuple[StockSheet, ...]]:
    from closetbench.model.bridge import catalogue_of, closet_of

    if obj.Closet is None:
        raise ClosetError(obj.Label, "closet", "none", "link the closet whose parts are cut")
    closet, catalogue = closet_of(obj.Closet), catalogue_of(obj.Closet)
    trim = obj.Trim.Value if obj.TrimOverride else None
    materials = (p.panel.material for p in closet.parts)
    return cut_parts(closet.parts, catalogue), stock_sheets(catalogue, materials, trim=trim)


def _mark(
    parts: tuple[CutPart, ...], stock: tuple[StockSheet, ...], settings: CutSettings
) -> str:
    return hashlib.md5(repr((parts, stock, settings)).encode(), usedforsecurity=False).hexdigest()


def _drawing(plan: Plan) -> Part.Shape:
    """The sheets side by side, toward the viewer, as outlines; the parts on them as faces."""
    shapes, x = [], 0.0
    for sheet in plan.sheets:
        y = -sheet.sheet.width
        shapes.append(_rectangle(x, y, sheet.sheet.length, sheet.sheet.width))
        shapes += [
            Part.Face(_rectangle(x + p.x, y + p.y, p.dx, p.dy)) for p in sheet.placements
        ]
        x += sheet.sheet.length + SPACE
    return Part.Compound(shapes)


def _rectangle(x: float, y: float, dx: float, dy: float) -> Part.Wire:
    corners = ((x, y), (x + dx, y), (x + dx, y + dy), (x, y + dy), (x, y))
    return Part.makePolygon([FreeCAD.Vector(u, v, 0.0) for u, v in corners])
