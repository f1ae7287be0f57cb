"""Drawings for the panel saw and the router: DXF of release 2010, in millimetres.

The geometry stands for the boards as they are sawn, before banding, and as they lie (see
``lay``). What is to be done, from which side and how deep, is in the layer's name: see
``layer_table``.
"""

from __future__ import annotations

import io
import re
from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import Any

from closetbench.core.errors import DocumentError
from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.core.panel import Point
from closetbench.core.parts import Part
from closetbench.shop.language import Words, plain
from closetbench.shop.lay import LaidPart, Side, Trace, lay, lay_sheet
from closetbench.shop.optional import require
from closetbench.shop.words import sound_words
from closetbench.stock.atomic import make_folder, write_bytes_atomically
from closetbench.stock.plan import Plan, SheetPlan
from closetbench.stock.verify import require_sawable

GAP = 300.0
"""mm between two sheets of a layout."""
BAND_INSET = 3.0
"""mm from a rim to the line that marks its band."""
TALLEST_TEXT = 32.0

_RELEASE = "R2010"
_UNIT_MM = 4
_METRIC = 1
_BROKEN = "UNDERSIDE"
# Width of an average letter over its height; a viewer picks its own font, so this is wide.
_LETTER = 0.95

LAYERS: tuple[tuple[str, str, int], ...] = (
    ("OUTLINE_THROUGH_<t>", "part as sawn; <t>: thickness of its board", 7),
    ("GROOVE_UP_<d>", "groove in the face that lies up, <d> deep", 30),
    ("GROOVE_UNDER_<d>", "groove in the underside, seen through the board", 34),
    ("RABBET_UP_<d>", "rabbet in the face that lies up", 50),
    ("RABBET_UNDER_<d>", "rabbet in the underside", 54),
    ("HOLE_UP_<d>", "hole drilled from above, <d> deep", 140),
    ("HOLE_UNDER_<d>", "hole drilled from the underside", 144),
    ("HOLE_THROUGH_<t>", "hole drilled right through", 170),
    ("HOLE_RIM_<d>", "hole drilled square into a rim, <d> deep, seen through the board", 150),
    ("POCKET_UP", "axis of a pocket in the face that lies up, set by a jig", 130),
    ("POCKET_UNDER", "axis of a pocket in the underside", 134),
    ("BAND_<key>", f"rim to be banded: a line {BAND_INSET:g} mm inside it; <key>: the band", 210),
    ("NAME", "name of the part", 3),
    ("SIZE", "length x width as sawn, and which side lies up", 8),
    ("GRAIN", "direction of the grain", 42),
    ("SHEET", "raw sheet", 9),
    ("SHEET_NAME", "name, material and size of the sheet", 9),
    ("OFFCUT", "what is left whole after the cuts", 92),
    ("SAW_CUT", "middle of the saw's kerf", 1),
)


def layer_table() -> tuple[tuple[str, str, int], ...]:
    """Layer, meaning and colour index of every layer that a drawing may have.

    ``<d>`` and ``<t>`` stand for millimetres as in ``GROOVE_UP_6.35MM``.
    """
    return LAYERS


_COLOURS = {name.split("<")[0]: colour for name, _, colour in LAYERS}


def depth_layer(operation: str, side: Side, depth: float) -> str:
    """The layer for an operation at a depth in mm: ``GROOVE_UP_6.35MM``."""
    return f"{operation}_{side.name}_{_number(depth)}MM"


def _number(mm: float) -> str:
    return f"{mm:.3f}".rstrip("0").rstrip(".")


def band_layer(key: str) -> str:
    """The layer that marks rims with this band."""
    return "BAND_" + re.sub(r"[^A-Z0-9_-]", "_", key.upper())


def layout_dxf(
    plan: Plan, parts: Sequence[Part], path: str | Path, form: LengthFormat = MILLIMETRES,
    words: Words = plain,
) -> Path:
    """Every sheet of the plan side by side in one drawing.

    Raises ``LayoutError`` for a plan that cannot be sawn, ``DocumentError`` when plan and
    parts do not belong together or the file cannot be written; nothing half-written stays.
    """
    subject = "cut layout"
    require_sawable(plan.sheets)
    placed = {p.part for s in plan.sheets for p in s.placements}
    lost = [p.full_name for p in parts if p.full_name not in placed]
    if lost:
        raise DocumentError(
            subject, "parts on no sheet", ", ".join(lost), "plan the cutting again")
    drawing = _Drawing(subject, form, words)
    x = 0.0
    for sheet in plan.sheets:
        drawing.sheet(sheet, lay_sheet(sheet, parts, subject), x)
        x += sheet.sheet.length + GAP
    return drawing.write(path)


def sheet_dxf(
    sheet: SheetPlan, parts: Sequence[Part], path: str | Path, form: LengthFormat = MILLIMETRES,
    words: Words = plain,
) -> Path:
    """One sheet of a plan in a drawing of its own; errors as for ``layout_dxf``."""
    subject = f"sheet {sheet.name}"
    require_sawable([sheet])
    drawing = _Drawing(subject, form, words)
    drawing.sheet(sheet, lay_sheet(sheet, parts, subject), 0.0)
    return drawing.write(path)


def part_dxf(
    part: Part, path: str | Path, form: LengthFormat = MILLIMETRES, words: Words = plain
) -> Path:
    """One part in a drawing of its own, its sawn corner at the origin."""
    drawing = _Drawing(part.full_name, form, words)
    drawing.part(lay(part))
    return drawing.write(path)


def sheet_files(
    plan: Plan, parts: Sequence[Part], folder: str | Path, form: LengthFormat = MILLIMETRES,
    words: Words = plain,
) -> tuple[Path, ...]:
    """A drawing for every sheet in ``folder``, which is made, named after the sheets."""
    require_sawable(plan.sheets)
    make_folder(folder, "sheets")
    names = file_names([s.name for s in plan.sheets])
    return tuple(
        sheet_dxf(sheet, parts, Path(folder) / name, form, words)
        for sheet, name in zip(plan.sheets, names, strict=True)
    )


def part_files(
    parts: Sequence[Part], folder: str | Path, form: LengthFormat = MILLIMETRES,
    words: Words = plain,
) -> tuple[Path, ...]:
    """A drawing for every part in ``folder``, which is made, named after the parts."""
    make_folder(folder, "parts")
    names = file_names([p.full_name for p in parts])
    return tuple(
        part_dxf(part, Path(folder) / name, form, words)
        for part, name in zip(parts, names, strict=True)
    )


def file_names(names: Iterable[str], suffix: str = ".dxf") -> tuple[str, ...]:
    """A file name for each name, good on every system and no two alike."""
    taken: set[str] = set()
    out = []
    for name in names:
        base = re.sub(r"[^\w.-]+", "_", name).strip("._")[:60] or "part"
        unique, count = base, 1
        while unique.lower() in taken:
            count += 1
            unique = f"{base}_{count}"
        taken.add(unique.lower())
        out.append(unique + suffix)
    return tuple(out)


class _Drawing:
    """One drawing being made; its layers appear as they are first used."""

    def __init__(self, subject: str, form: LengthFormat, words: Words) -> None:
        require("ezdxf", subject)
        import ezdxf  # FreeCAD may come without it

        self.subject = subject
        self.form = form
        self.tell = words
        self.doc: Any = ezdxf.new(_RELEASE)
        self.doc.units = _UNIT_MM
        self.doc.header["$MEASUREMENT"] = _METRIC
        self.doc.linetypes.add(_BROKEN, [12.0, 8.0, -4.0], description="underside, broken")
        self.space: Any = self.doc.modelspace()
        self.corners: list[Point] = []

    def sheet(self, sheet: SheetPlan, laid: Sequence[LaidPart], dx: float) -> None:
        stock = sheet.sheet
        self.ring("SHEET", [(0.0, 0.0), (stock.length, 0.0), (stock.length, stock.width),
                            (0.0, stock.width)], dx)
        size = f"{self.form.text(stock.length)} x {self.form.text(stock.width)}"
        title = f"{sheet.name}, {stock.material}, {size}"
        if stock.offcut:
            title += ", " + self.tell("offcut {0}", stock.key)
        if stock.cut_from is not None:
            title += f", {sound_words(stock.cut_from, self.form, self.tell)}"
        height = min(1.5 * TALLEST_TEXT, (stock.length + GAP / 2) / (len(title) * _LETTER))
        self.text("SHEET_NAME", title, (dx, stock.width + 1.2 * height), height, 0.0, "LEFT")
        for rest in sheet.rests:
            x0, y0, x1, y1 = rest.x, rest.y, rest.x + rest.dx, rest.y + rest.dy
            self.ring("OFFCUT", [(x0, y0), (x1, y0), (x1, y1), (x0, y1)], dx)
        for cut in sheet.cuts:
            self.line("SAW_CUT", (cut.x0, cut.y0), (cut.x1, cut.y1), dx)
        for part in laid:
            self.part(part, dx)

    def part(self, laid: LaidPart, dx: float = 0.0) -> None:
        thickness = laid.part.panel.thickness
        self.ring(depth_layer("OUTLINE", Side.THROUGH, thickness), laid.outline, dx)
        for trace in laid.traces:
            self.ring(_trace_layer(trace), trace.points, dx)
        for drill in laid.drills:
            depth = min(drill.depth, thickness)
            layer = self.layer(depth_layer("HOLE", drill.side, depth))
            x, y = drill.centre
            self.space.add_circle((x + dx, y), drill.diameter / 2, dxfattribs={"layer": layer})
        for mark in laid.rims:
            if mark.side is None:
                self.ring(f"HOLE_RIM_{_number(mark.depth)}MM", mark.points, dx)
            else:
                start, end = mark.points
                self.line(f"POCKET_{mark.side.name}", start, end, dx)
        for band in laid.bands:
            self._band(band.key, band.start, band.end, band.inward, dx)
        self._words(laid, dx)

    def _band(self, key: str, start: Point, end: Point, inward: Point, dx: float) -> None:
        (ax, ay), (bx, by), (ix, iy) = start, end, inward
        self.line(
            band_layer(key),
            (ax + BAND_INSET * ix, ay + BAND_INSET * iy),
            (bx + BAND_INSET * ix, by + BAND_INSET * iy), dx,
        )

    def _words(self, laid: LaidPart, dx: float) -> None:
        """Name and size along the longer side, clear of the grooves where there is room."""
        panel = laid.part.panel
        size = f"{self.form.text(panel.cut_length)} x {self.form.text(panel.cut_width)}"
        if laid.one_face_up:
            size += ", " + (
                self.tell("lower face up") if laid.turned else self.tell("upper face up"))
        x0, y0, x1, y1 = laid.word_room()
        long, short = (y1 - y0, x1 - x0) if laid.upright else (x1 - x0, y1 - y0)
        letters = max(len(laid.part.full_name), len(size))
        height = min(TALLEST_TEXT, 0.9 * long / (letters * _LETTER), short / 5.5)
        cx, cy = (x0 + x1) / 2 + dx, (y0 + y1) / 2
        turn = 90.0 if laid.upright else 0.0

        def beside(lift: float) -> Point:
            return (cx - lift * height, cy) if laid.upright else (cx, cy + lift * height)

        self.text("NAME", laid.part.full_name, beside(1.6), height, turn, "MIDDLE_CENTER")
        self.text("SIZE", size, beside(0.0), height, turn, "MIDDLE_CENTER")
        if laid.grain is not None:
            along_words = (abs(laid.grain[1]) > 0.5) == laid.upright
            half = min(4.0 * height, long / 3) if along_words else 0.6 * height
            self._grain(beside(-1.6), laid.grain, half, height)

    def _grain(self, middle: Point, grain: Point, half: float, height: float) -> None:
        """A line with a barb at each end."""
        gx, gy = abs(grain[0]), abs(grain[1])
        (cx, cy) = middle
        barb = height / 3
        for sign in (-1.0, 1.0):
            tip = (cx + sign * half * gx, cy + sign * half * gy)
            for away in (-0.5, 0.5):
                tail = (tip[0] - sign * barb * gx + away * barb * gy,
                        tip[1] - sign * barb * gy + away * barb * gx)
                self.line("GRAIN", tip, tail, 0.0)
        self.line("GRAIN", (cx - half * gx, cy - half * gy), (cx + half * gx, cy + half * gy), 0.0)

    def layer(self, name: str) -> str:
        if name not in self.doc.layers:
            prefix = max((p for p in _COLOURS if name.startswith(p)), key=len)
            broken = "_UNDER" in prefix or prefix == "HOLE_RIM_"
            self.doc.layers.add(
                name, color=_COLOURS[prefix], linetype=_BROKEN if broken else "Continuous")
        return name

    def ring(self, layer: str, points: Sequence[Point], dx: float) -> None:
        moved = [(x + dx, y) for x, y in points]
        self.corners += moved
        self.space.add_lwpolyline(moved, close=True, dxfattribs={"layer": self.layer(layer)})

    def line(self, layer: str, start: Point, end: Point, dx: float) -> None:
        self.space.add_line(
            (start[0] + dx, start[1]), (end[0] + dx, end[1]),
            dxfattribs={"layer": self.layer(layer)},
        )

    def text(
        self, layer: str, words: str, at: Point, height: float, turn: float, align: str
    ) -> None:
        from ezdxf.enums import TextEntityAlignment

        entity = self.space.add_text(
            _plain(words),
            dxfattribs={"layer": self.layer(layer), "height": height, "rotation": turn},
        )
        entity.set_placement(at, align=TextEntityAlignment[align])

    def write(self, path: str | Path) -> Path:
        if self.corners:
            xs, ys = zip(*self.corners, strict=True)
            low, high = (min(xs), min(ys)), (max(xs), max(ys))
            self.space.reset_extents((*low, 0.0), (*high, 0.0))
            self.doc.set_modelspace_vport(
                height=1.2 * max(high[1] - low[1], (high[0] - low[0]) / 2),
                center=((low[0] + high[0]) / 2, (low[1] + high[1]) / 2),
            )
        stream = io.StringIO()
        self.doc.write(stream)
        return write_bytes_atomically(path, stream.getvalue().encode("utf-8"), self.subject)


def _trace_layer(trace: Trace) -> str:
    return depth_layer("RABBET" if trace.rabbet else "GROOVE", trace.side, trace.depth)


def _plain(words: str) -> str:
    """One line of text without what a DXF reader takes for a control code."""
    line = " ".join("".join(c if c.isprintable() else " " for c in words).split())
    return line.replace("^", "^ ").replace("%%", "% %")
