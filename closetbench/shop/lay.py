"""Parts as they lie on the bench or on the sheet: which side up, where, what is marked.

The board lies as sawn, before its edges are banded. Where only one face is machined,
that face lies up: a part machined on its lower face alone is turned over along its
length, so that START stays left and FRONT and REAR change places. A part machined on
both faces lies with its upper face up. Holes drilled through count for neither face.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from enum import Enum

from closetbench.core.errors import DocumentError
from closetbench.core.panel import Box, Face, Grain, HoleRow, Panel, Pocket, Point, Rim
from closetbench.core.parts import Part
from closetbench.stock.plan import SheetPlan

TOLERANCE = 1e-3
"""mm within which a part and its place in a plan must agree."""
_EPS = 1e-6
POCKET_LINE = 40.0
"""How far the line that marks a pocket runs into the board, mm."""


class Side(Enum):
    """From which side of the board as it lies the work is done."""

    UP = "up"
    UNDER = "under"
    THROUGH = "through"


@dataclass(frozen=True)
class Trace:
    """A groove or rabbet seen from above: ``points`` counter-clockwise, within the board."""

    name: str
    rabbet: bool
    side: Side
    depth: float
    points: tuple[Point, ...]


@dataclass(frozen=True)
class Drill:
    """One hole seen from above."""

    name: str
    side: Side
    depth: float
    centre: Point
    diameter: float


@dataclass(frozen=True)
class BandMark:
    """A rim to be banded: its ends on the sawn outline, and the way into the board."""

    key: str
    start: Point
    end: Point
    inward: Point


@dataclass(frozen=True)
class RimMark:
    """Work on a rim, seen from above: a hole's ``points``, counter-clockwise, or a pocket's
    axis from the rim into the board, two points. ``side``: the face that a pocket opens in,
    None for a hole. ``depth`` of the hole, 0 for a pocket, which a jig sets."""

    name: str
    side: Side | None
    depth: float
    points: tuple[Point, ...]


@dataclass(frozen=True)
class LaidPart:
    """A part as it lies: all points in mm, counter-clockwise where they close.

    ``corner`` and ``size`` give the rectangle of the sawn board; ``along``: the direction
    of the part's length; ``grain``: that of its grain, None where it has none.
    """

    part: Part
    turned: bool
    corner: Point
    size: Point
    along: Point
    grain: Point | None
    outline: tuple[Point, ...]
    traces: tuple[Trace, ...]
    drills: tuple[Drill, ...]
    bands: tuple[BandMark, ...]
    rims: tuple[RimMark, ...] = ()

    @property
    def upright(self) -> bool:
        """Whether the longer side runs along y."""
        return self.size[1] > self.size[0]

    @property
    def one_face_up(self) -> bool:
        """Whether it matters which face lies up."""
        return bool(self.traces) or any(d.side is not Side.THROUGH for d in self.drills) or any(
            r.side for r in self.rims)

    def word_room(self) -> tuple[float, float, float, float]:
        """The largest stretch for words: x0, y0, x1, y1 of a rectangle.

        It spans the board between the grooves that cross it and beside those and the
        holes that run along it.
        """
        long, short = (1, 0) if self.upright else (0, 1)
        blocked: tuple[list[Point], list[Point]] = ([], [])
        for trace in self.traces:
            spans = [(min(v), max(v)) for v in zip(*trace.points, strict=True)]
            crosses = spans[long][1] - spans[long][0] < spans[short][1] - spans[short][0]
            axis = long if crosses else short
            blocked[axis].append(spans[axis])
        for drill in self.drills:
            at, r = drill.centre[short], drill.diameter / 2
            blocked[short].append((at - r, at + r))
        xs, ys = (
            _widest_gap(blocked[i], self.corner[i], self.corner[i] + self.size[i])
            for i in (0, 1)
        )
        return xs[0], ys[0], xs[1], ys[1]


def lies_turned(panel: Panel) -> bool:
    """Whether the panel lies with its lower face up."""
    faces = {g.face for g in panel.grooves}
    faces |= {h.face for h in panel.holes if not _is_through(h, panel)}
    faces |= {p.face for p in panel.pockets}
    return faces == {Face.LOWER}


def lay(part: Part, x: float = 0.0, y: float = 0.0, rotated: bool = False) -> LaidPart:
    """The part with its sawn corner at (x, y); ``rotated``: its length runs along y."""
    panel = part.panel
    turned = lies_turned(panel)
    ox, oy = panel.cut_origin
    width = panel.cut_width

    def move(point: Point) -> Point:
        u, v = point[0] - ox, point[1] - oy
        if turned:
            v = width - v
        if rotated:
            u, v = width - v, u
        return _clean(x + u), _clean(y + v)

    def ring(points: Sequence[Point]) -> tuple[Point, ...]:
        moved = [move(p) for p in points]
        return tuple(reversed(moved)) if turned else tuple(moved)

    def direction(dx: float, dy: float) -> Point:
        a, b = move((ox, oy)), move((ox + dx, oy + dy))
        return b[0] - a[0], b[1] - a[1]

    def side(face: Face) -> Side:
        return Side.UP if (face is Face.LOWER) == turned else Side.UNDER

    grain = {Grain.LENGTH: (1.0, 0.0), Grain.WIDTH: (0.0, 1.0)}.get(panel.grain)
    clipped = [(g, _clip(panel, panel.groove_box(g))) for g in panel.grooves]
    return LaidPart(
        part=part,
        turned=turned,
        corner=(x, y),
        size=(width, panel.cut_length) if rotated else (panel.cut_length, width),
        along=direction(1.0, 0.0),
        grain=direction(*grain) if grain else None,
        outline=ring(panel.cut_outline()),
        traces=tuple(
            Trace(g.name, g.is_rabbet, side(g.face), g.depth, ring(points))
            for g, points in clipped if points
        ),
        drills=tuple(
            Drill(
                h.name, Side.THROUGH if _is_through(h, panel) else side(h.face),
                h.depth, move(centre), h.diameter,
            )
            for h in panel.holes for centre in h.centres()
        ),
        bands=tuple(_band_marks(panel, move, direction)),
        rims=(
            *(
                RimMark(h.name, None, h.depth, ring(
                    ((b.x0, b.y0), (b.x1, b.y0), (b.x1, b.y1), (b.x0, b.y1))))
                for h in panel.rim_holes for b in (panel.rim_hole_box(h),)
            ),
            *(
                RimMark(p.name, side(p.face), 0.0, tuple(move(q) for q in _axis(panel, p)))
                for p in panel.pockets
            ),
        ),
    )


def _axis(panel: Panel, pocket: Pocket) -> tuple[Point, Point]:
    """The axis of a pocket from its rim into the board."""
    ends = {
        Rim.START: ((0.0, pocket.at), (POCKET_LINE, pocket.at)),
        Rim.END: ((panel.length, pocket.at), (panel.length - POCKET_LINE, pocket.at)),
        Rim.FRONT: ((pocket.at, 0.0), (pocket.at, POCKET_LINE)),
        Rim.REAR: ((pocket.at, panel.width), (pocket.at, panel.width - POCKET_LINE)),
    }
    return ends[pocket.rim]


def lay_sheet(sheet: SheetPlan, parts: Sequence[Part], subject: str) -> tuple[LaidPart, ...]:
    """The parts of one sheet where the plan puts them.

    Raises ``DocumentError`` when the plan names a part that is not there or that has
    another size now.
    """
    by_key = {p.full_name: p for p in parts}
    laid = []
    for place in sheet.placements:
        part = by_key.get(place.part)
        if part is None:
            raise DocumentError(
                subject, f"part on sheet {sheet.name}", place.part,
                "there is no such part any more; plan the cutting again",
            )
        here = lay(part, place.x, place.y, place.rotated)
        if max(abs(here.size[0] - place.dx), abs(here.size[1] - place.dy)) > TOLERANCE:
            planned = (place.dy, place.dx) if place.rotated else (place.dx, place.dy)
            raise DocumentError(
                subject, f"sawn size of {part.full_name}",
                f"{part.panel.cut_length:g} x {part.panel.cut_width:g} mm",
                f"the plan was made for {planned[0]:g} x {planned[1]:g} mm; plan the cutting again",
            )
        laid.append(here)
    return tuple(laid)


def _is_through(row: HoleRow, panel: Panel) -> bool:
    return row.depth >= panel.thickness - _EPS


def _widest_gap(blocked: list[Point], low: float, high: float) -> Point:
    best, reach = (low, low), low
    for a, b in [*sorted(blocked), (high, high)]:
        if a - reach > best[1] - best[0]:
            best = (reach, a)
        reach = max(reach, b)
    return best


def _clean(value: float) -> float:
    return round(value, 6) + 0.0


def _band_marks(
    panel: Panel, move: Callable[[Point], Point], direction: Callable[[float, float], Point]
) -> list[BandMark]:
    x0, y0 = panel.cut_origin
    x1, y1 = x0 + panel.cut_length, y0 + panel.cut_width
    notched = {(n.end, n.edge): n for n in panel.notches}
    marks = []
    ring = panel.cut_outline() if panel.tapers else ()
    for band in panel.bands:
        if band.rim.is_end:
            at = x0 if band.rim is Rim.START else x1
            first, last = (notched.get((band.rim, e)) for e in (Rim.FRONT, Rim.REAR))
            low = first.dy if first else y0
            high = panel.width - last.dy if last else y1
            ends = ((at, low), (at, high))
            inward = (1.0 if band.rim is Rim.START else -1.0, 0.0)
        else:
            at = y0 if band.rim is Rim.FRONT else y1
            first, last = (notched.get((e, band.rim)) for e in (Rim.START, Rim.END))
            low = first.dx if first else x0
            high = panel.length - last.dx if last else x1
            ends = ((low, at), (high, at))
            inward = (0.0, 1.0 if band.rim is Rim.FRONT else -1.0)
        if ring:
            start = (Rim.FRONT, Rim.END, Rim.REAR, Rim.START).index(band.rim)
            ends = ring[start], ring[(start + 1) % 4]
        marks.append(BandMark(band.key, move(ends[0]), move(ends[1]), direction(*inward)))
    return marks


def _clip(panel: Panel, box: Box) -> tuple[Point, ...]:
    """What a groove's box takes of the sawn board, seen from above; empty for nothing."""
    cx, cy = panel.cut_origin
    x0, x1 = max(box.x0, cx), min(box.x1, cx + panel.cut_length)
    y0, y1 = max(box.y0, cy), min(box.y1, cy + panel.cut_width)
    corners = {}
    left = list(panel.notches)
    while left:
        notch = left.pop(0)
        n = panel.notch_box(notch)
        a0, a1, b0, b1 = max(x0, n.x0), min(x1, n.x1), max(y0, n.y0), min(y1, n.y1)
        if a1 - a0 < _EPS or b1 - b0 < _EPS:
            continue
        across_x, across_y = a1 - a0 > x1 - x0 - _EPS, b1 - b0 > y1 - y0 - _EPS
        if across_x and across_y:
            return ()
        if across_x:  # the notch takes the groove's whole breadth, so the groove is shorter
            y0, y1 = (b1, y1) if notch.edge is Rim.FRONT else (y0, b0)
        elif across_y:
            x0, x1 = (a1, x1) if notch.end is Rim.START else (x0, a0)
        else:
            corners[(notch.end, notch.edge)] = (
                a1 if notch.end is Rim.START else a0, b1 if notch.edge is Rim.FRONT else b0)
            continue
        left += [m for m in panel.notches if (m.end, m.edge) in corners]
        corners.clear()
    if x1 - x0 < _EPS or y1 - y0 < _EPS:
        return ()
    points: list[Point] = []
    for end, edge, x, y in (
        (Rim.START, Rim.FRONT, x0, y0), (Rim.END, Rim.FRONT, x1, y0),
        (Rim.END, Rim.REAR, x1, y1), (Rim.START, Rim.REAR, x0, y1),
    ):
        if (end, edge) not in corners:
            points.append((x, y))
            continue
        nx, ny = corners[(end, edge)]
        legs = [(x, ny), (nx, ny), (nx, y)]
        points += legs if (end is Rim.START) == (edge is Rim.FRONT) else reversed(legs)
    return tuple(points)
