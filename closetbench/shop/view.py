"""Pictures of the closet as it stands: an axonometric view and a front elevation."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise
from pathlib import Path

from closetbench.core.bodies import Body
from closetbench.core.component import Bay, box_around
from closetbench.core.errors import DocumentError
from closetbench.core.lengths import INCH, MILLIMETRES, LengthFormat
from closetbench.core.panel import Box, Point
from closetbench.core.parts import Role, Vector
from closetbench.shop.colours import role_colour, shaded
from closetbench.shop.language import Words, plain
from closetbench.shop.page import FAINT, INK, Page, check_ending, fitting_size, text_width
from closetbench.shop.painter import Kind, Patch, painted

TURN, LIFT = 28.0, 18.0
"""Degrees by which the viewer stands to the right of the closet's middle and above it."""
_LIGHT = (0.80, 0.93, 1.10)
"""How light a face is that looks along each axis."""
_KIND_LIGHT = {Kind.GROOVE: 0.62, Kind.WOOD: 1.0, Kind.FRONT: 1.05, Kind.HOLE: 0.45}
_SLIVER = 0.005
"""Inches: what is narrower is painted without an outline, which would make it wider."""
_BAYS = 0.3
"""Inches from the floor down to the widths of the bays."""
_SWATCH, _ROW, _ROWS = 0.42, 0.24, 3
"""Inches that a role in the key takes beside its name, and from row to row; rows that there is
room for anyway, with an empty one."""
_FRONT: Vector = (0.0, -1.0, 0.0)
_LEVEL = (Role.TOP, Role.BOTTOM, Role.FIXED_SHELF, Role.ADJUSTABLE_SHELF)

Line = tuple[Vector, Vector]


class Camera:
    """Turns the closet's millimetres into the page's inches, along parallel rays."""

    def __init__(self, turn: float, lift: float) -> None:
        a, e = math.radians(turn), math.radians(lift)
        self.toward = (math.sin(a) * math.cos(e), -math.cos(a) * math.cos(e), math.sin(e))
        self.right = (math.cos(a), math.sin(a), 0.0)
        self.up = (-math.sin(a) * math.sin(e), math.cos(a) * math.sin(e), math.cos(e))
        self.scale, self.shift = 1.0, (0.0, 0.0)

    def flat(self, p: Vector) -> Point:
        return (
            sum(a * b for a, b in zip(p, self.right, strict=True)),
            sum(a * b for a, b in zip(p, self.up, strict=True)),
        )

    def aim(self, points: Sequence[Vector], x: float, y: float, width: float, height: float,
            ) -> None:
        """Fit the points into a frame on the page, in its middle."""
        flat = [self.flat(p) for p in points]
        us, vs = zip(*flat, strict=True)
        du, dv = max(us) - min(us), max(vs) - min(vs)
        self.scale = min(width / max(du, 1e-9), height / max(dv, 1e-9))
        self.shift = (
            x + width / 2 - self.scale * (max(us) + min(us)) / 2,
            y + height / 2 - self.scale * (max(vs) + min(vs)) / 2,
        )

    def __call__(self, p: Vector) -> Point:
        u, v = self.flat(p)
        return self.shift[0] + self.scale * u, self.shift[1] + self.scale * v


def axonometric_page(
    parts: Sequence[Body], title: str, form: LengthFormat = MILLIMETRES, room: Sequence[Line] = (),
    caption: str = "", sized: bool = True, words: Words = plain,
) -> Page:
    """The closet seen from the right and from above, parallel lines staying parallel.

    ``room``: lines between the room's corners, in the closet's frame, drawn see-through;
    they may stand alone. ``caption``: what it shows, under the title. ``sized``: with its
    outer sizes.
    """
    box = bounds(parts, "axonometric view") if parts or not room else _around(
        [p for line in room for p in line])
    page = Page(9.0, 9.0, "axonometric view", words=words)
    camera = Camera(TURN, LIFT)
    corners = [(x, y, z) for x in (box.x0, box.x1) for y in (box.y0, box.y1)
               for z in (box.z0, box.z1)]
    camera.aim([*corners, *(p for line in room for p in line)], 0.9, 1.55, 7.2, 6.55)
    room_edges(page, camera, room, 0.9)
    paint(page, camera, painted(parts, camera.toward))
    room_edges(page, camera, room, 0.25)
    gap = 0.28 / camera.scale
    ends = [(box.x0, box.y0, box.z0), (box.x1, box.y1, box.z1), *(p for r in room for p in r)]
    left, right = min(p[0] for p in ends) - gap, max(p[0] for p in ends) + gap
    near, low = min(p[1] for p in ends) - gap, min(p[2] for p in ends)
    front = ((box.x0, near, low), (box.x1, near, low))
    side = ((right, box.y0, low), (right, box.y1, low))
    height = ((left, box.y0, box.z0), (left, box.y0, box.z1))
    for (start, end), size, upright in () if not sized else (
        (front, box.x1 - box.x0, False), (side, box.y1 - box.y0, False),
        (height, box.z1 - box.z0, True),
    ):
        _slanted(page, camera(start), camera(end), form.text(size), upright)
    heading(page, title, words(caption) if caption else words(
        "{0} parts, seen from the right, no perspective", len(parts)))
    role_legend(page, parts)
    return page


def elevation_page(
    parts: Sequence[Body], bays: Sequence[Bay], title: str, form: LengthFormat = MILLIMETRES,
    words: Words = plain,
) -> Page:
    """The closet from the front: widths of the bays, clear heights between shelves."""
    box = bounds(parts, "front elevation")
    span, rise = box.x1 - box.x0, box.z1 - box.z0
    scale = min(7.2 / span, 7.2 / rise)
    width = max(7.5, span * scale + 2.2)
    lift = legend_lift(parts, words, width)
    height = rise * scale + 3.35 + lift
    page = Page(width, height, "front elevation", words=words)
    camera = Camera(0.0, 0.0)
    left = (width - span * scale) / 2 + 0.25
    camera.scale, camera.shift = scale, (left - box.x0 * scale, 2.25 + lift - box.z0 * scale)
    paint(page, camera, painted(parts, _FRONT))
    floor = camera((0.0, 0.0, box.z0))[1]
    page.line(((left - 0.5, floor), (left + span * scale + 0.3, floor)), INK, 1.4)
    shown = shown_bays(bays)
    for bay in shown:
        _bay(page, camera, bay, parts, form, floor)
    x0, x1, y1 = left, left + span * scale, floor + rise * scale
    whole = floor - _BAYS - max(
        [0.32, *(0.2 + w for b in shown if (w := text_width(form.text(wide(b)), 7.5))
                 > wide(b) * scale - 0.2)])
    page.dimension((x0, whole), (x1, whole), form.text(span), 8.5)
    page.dimension((x0 - 0.4, floor), (x0 - 0.4, y1), form.text(rise), 8.5)
    for x in (x0, x1):
        page.line(((x, floor - 0.08), (x, whole - 0.08)), FAINT, 0.4)
    page.line(((x0 - 0.08, y1), (x0 - 0.48, y1)), FAINT, 0.4)
    heading(page, title, words(
        "front elevation; heights between shelves and widths of bays are clear"))
    bar, length = bar_length(scale, form)
    page.scale_bar((page.width - 0.45 - bar, 0.3), bar, length)
    role_legend(page, parts, page.width - bar - 1.3)
    return page


def write_axonometric(
    path: str | Path, parts: Sequence[Body], title: str, form: LengthFormat = MILLIMETRES,
    room: Sequence[Line] = (), caption: str = "", sized: bool = True, words: Words = plain,
) -> Path:
    """Save the axonometric view as PNG, SVG or PDF, by the ending of the name."""
    check_ending(path, "axonometric view")
    return axonometric_page(parts, title, form, room, caption, sized, words).write(path)


def write_elevation(
    path: str | Path, parts: Sequence[Body], bays: Sequence[Bay], title: str,
    form: LengthFormat = MILLIMETRES, words: Words = plain,
) -> Path:
    """Save the front elevation as PNG, SVG or PDF, by the ending of the name."""
    check_ending(path, "front elevation")
    return elevation_page(parts, bays, title, form, words).write(path)


def bounds(parts: Sequence[Body], subject: str) -> Box:
    """The box around what is drawn; ``DocumentError`` about ``subject`` for nothing."""
    if not parts:
        raise DocumentError(subject, "number of parts", 0, "there is nothing to draw yet")
    return box_around(parts)


def _around(points: Sequence[Vector]) -> Box:
    xs, ys, zs = zip(*points, strict=True)
    return Box(min(xs), min(ys), min(zs), max(xs), max(ys), max(zs))


def paint(page: Page, camera: Camera, patches: Sequence[Patch]) -> None:
    """Paint faces as shaded areas with their edges, the farthest first."""
    rings: list[list[Point]] = []
    fills, edges, widths = [], [], []
    for patch in patches:
        light = sum(n * n * lit for n, lit in zip(patch.normal, _LIGHT, strict=True))
        fill = shaded(role_colour(patch.body.role), light * _KIND_LIGHT[patch.kind])
        sides = sorted(high - low for low, high in zip(patch.low, patch.high, strict=True))
        rings.append([camera(p) for p in patch.ring])
        fills.append(fill)
        edges.append(fill)  # covers the hairline between two halves of a split face
        widths.append(0.25 if sides[1] * camera.scale > _SLIVER else 0.0)
        for start, end in patch.lines():
            rings.append([camera(start), camera(end)])
            fills.append("none")
            edges.append(shaded(fill, 0.8) if patch.kind is Kind.GROOVE else INK)
            widths.append(0.55)
    page.shapes(rings, fills, edges, widths)


def room_edges(page: Page, camera: Camera, room: Sequence[Line], alpha: float) -> None:
    """The room's edges, dashed."""
    for start, end in room:
        page.line((camera(start), camera(end)), FAINT, 0.8, (5.0, 3.0), alpha)


def _slanted(page: Page, start: Point, end: Point, words: str, upright: bool) -> None:
    """A dimension along an axis of the picture, its words outside it."""
    page.line((start, end), INK, 0.6)
    for x, y in (start, end):
        page.line(((x - 0.035, y - 0.035), (x + 0.035, y + 0.035)), INK, 1.0)
    x, y = (start[0] + end[0]) / 2, (start[1] + end[1]) / 2
    if upright:
        page.text((x - 0.1, y), words, 8.5, turn=90.0, rise="bottom")
        return
    turn = math.degrees(math.atan2(end[1] - start[1], end[0] - start[0]))
    down = math.radians(turn - 90.0)
    at = (x + 0.1 * math.cos(down), y + 0.1 * math.sin(down))
    page.text(at, words, 8.5, turn=turn, rise="top")


def wide(bay: Bay) -> float:
    """A bay's clear width, mm."""
    return bay.space.x1 - bay.space.x0


def holds(outer: Box, inner: Box) -> bool:
    """Whether a bay lies in another, as one under a bench in a bay does: both widths would
    be written on one line."""
    return outer.x0 < inner.x0 + 1e-6 and inner.x1 < outer.x1 + 1e-6 and outer.overlaps(inner)


def shown_bays(bays: Sequence[Bay]) -> list[Bay]:
    """The bays whose clear widths are written."""
    return [b for b in bays if not any(holds(o.space, b.space) for o in bays if o is not b)]


def clear_heights(bay: Bay, parts: Sequence[Body]) -> list[tuple[float, float]]:
    """The clear heights in a bay: from where to where, mm, in the closet's frame."""
    middle = (bay.space.x0 + bay.space.x1) / 2
    levels = sorted(
        (box.z0, box.z1) for p in parts if p.role in _LEVEL
        for box in (p.box(),) if box.x0 < middle < box.x1
        and box.z1 > bay.space.z0 - 1.0 and box.z0 < bay.space.z1 + 1.0
    )
    return [(under, over) for (_, under), (over, _) in pairwise(levels) if over > under]


def _bay(
    page: Page, camera: Camera, bay: Bay, parts: Sequence[Body], form: LengthFormat, floor: float
) -> None:
    """A bay's clear width under it, and its clear heights in it."""
    x0, x1 = bay.space.x0, bay.space.x1
    y = floor - _BAYS
    a, b = camera((x0, 0.0, 0.0))[0], camera((x1, 0.0, 0.0))[0]
    for x in (a, b):
        page.line(((x, floor - 0.08), (x, y - 0.08)), FAINT, 0.4)
    page.dimension((a, y), (b, y), form.text(wide(bay)))
    at = camera((x0 + 0.62 * (x1 - x0), 0.0, 0.0))[0]
    for under, over in clear_heights(bay, parts):
        start, end = camera((0.0, 0.0, under))[1], camera((0.0, 0.0, over))[1]
        page.dimension((at, start), (at, end), form.text(over - under))


def bar_length(scale: float, form: LengthFormat) -> tuple[float, str]:
    """Inches of paper and words of a scale bar of 500 mm or 20 in, or a good part of that."""
    inches = form.unit == "in"
    unit = float(INCH) if inches else 1.0
    for length in (20, 10, 5, 2) if inches else (500, 200, 100, 50):
        if length * unit * scale < 2.2:
            break
    return length * unit * scale, f"{length} in" if inches else f"{length} mm"


def heading(page: Page, title: str, below: str) -> None:
    """The title of a page and what is below it."""
    page.text((0.45, page.height - 0.42), title, 14.0, align="left", bold=True)
    size = fitting_size([below], page.width - 0.9, 0.3, 8.5)
    page.text((0.45, page.height - 0.7), below, size, FAINT, align="left")


def legend_lift(parts: Sequence[Body], words: Words, width: float) -> float:
    """Inches by which the drawing over a key of roles has to be lifted to leave room for it,
    on a page so wide."""
    return _ROW * max(0, len(_legend_rows(parts, words, width - 0.9)) - _ROWS)


def _legend_rows(
    parts: Sequence[Body], words: Words, room: float, last: float | None = None
) -> list[list[tuple[Role, str]]]:
    """The roles that occur in rows no wider than ``room``, the last no wider than ``last``."""
    rows: list[list[tuple[Role, str]]] = [[]]
    x = 0.0
    present = {p.role for p in parts}
    for role in (r for r in Role if r in present):
        name = words(role.value)
        need = _SWATCH + text_width(name, 8.0)
        if x + need > room and rows[-1]:
            rows.append([])
            x = 0.0
        rows[-1].append((role, name))
        x += need
    return rows if last is None or x <= last else [*rows, []]


def role_legend(page: Page, parts: Sequence[Body], width: float | None = None) -> None:
    """Swatches of the roles that occur, in rows from the lower left corner upwards;
    ``width``: where the lowest row has to end."""
    last = None if width is None else width - 0.45
    for i, row in enumerate(reversed(_legend_rows(parts, page.words, page.width - 0.9, last))):
        x, y = 0.45, 0.3 + _ROW * i
        for role, name in row:
            ring = ((x, y), (x + 0.16, y), (x + 0.16, y + 0.12), (x, y + 0.12))
            page.shape(ring, role_colour(role), INK, 0.4)
            page.text((x + 0.22, y + 0.06), name, 8.0, align="left")
            x += _SWATCH + text_width(name, 8.0)
