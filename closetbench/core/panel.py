"""A panel: a board with grooves, holes, notches and edge bands, in its own frame.

Length runs along x, width along y, thickness along z, origin at one corner, so the
panel fills 0..length, 0..width, 0..thickness. All lengths are millimetres of the
*finished* panel, edge bands included; what the saw cuts is ``cut_length`` x
``cut_width``. Grain runs along the length unless said.

Names of its sides: the faces are ``Face.UPPER`` (z = thickness) and ``Face.LOWER``
(z = 0); the long edges ``Rim.FRONT`` (y = 0) and ``Rim.REAR`` (y = width); the ends
``Rim.START`` (x = 0) and ``Rim.END`` (x = length).
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cached_property

from closetbench.core.boxes import Box as Box
from closetbench.core.boxes import ring_area, union_volume
from closetbench.core.cuts import Band as Band
from closetbench.core.cuts import Face as Face
from closetbench.core.cuts import Grain as Grain
from closetbench.core.cuts import Groove as Groove
from closetbench.core.cuts import HoleRow as HoleRow
from closetbench.core.cuts import Notch as Notch
from closetbench.core.cuts import Pocket as Pocket
from closetbench.core.cuts import Point as Point
from closetbench.core.cuts import Rim as Rim
from closetbench.core.cuts import RimHole as RimHole
from closetbench.core.cuts import Run as Run
from closetbench.core.cuts import Section as Section
from closetbench.core.tapers import Taper as Taper
from closetbench.core.tapers import tapered_ring

Features = tuple[tuple[float | str, ...], ...]


@dataclass(frozen=True)
class Panel:
    """A board with its machining; see the module's text for the frame.

    A tapered panel takes no grooves and no notches (``joinery.check_panel`` refuses that), nor
    does one that is no flat board; ``length`` and ``width`` are those of the rectangle around it.
    """

    length: float
    width: float
    thickness: float
    material: str
    grain: Grain = Grain.LENGTH
    grooves: tuple[Groove, ...] = ()
    holes: tuple[HoleRow, ...] = ()
    notches: tuple[Notch, ...] = ()
    bands: tuple[Band, ...] = ()
    visible: frozenset[Rim] = frozenset()
    tapers: tuple[Taper, ...] = ()
    rim_holes: tuple[RimHole, ...] = ()
    pockets: tuple[Pocket, ...] = ()
    section: Section = Section.FLAT

    def band_thickness(self, rim: Rim) -> float:
        """Thickness of the band on a rim, 0 where there is none."""
        return sum(b.thickness for b in self.bands if b.rim is rim)

    def _less(self, rim: Rim) -> float:
        """What the sawn board is short of the finished panel at a rim."""
        left_on = sum(t.allowance for t in self.tapers if t.rim is rim)
        return self.band_thickness(rim) - left_on

    @property
    def cut_origin(self) -> Point:
        """Where the sawn board's corner lies in the finished panel's frame."""
        x0, y0, _, _ = self._sawn()
        return x0, y0

    @property
    def cut_length(self) -> float:
        """Length to saw: finished length less the bands on the ends, scribe allowance added."""
        x0, _, x1, _ = self._sawn()
        return x1 - x0

    @property
    def cut_width(self) -> float:
        """Width to saw: finished width less the bands on the edges, scribe allowance added."""
        _, y0, _, y1 = self._sawn()
        return y1 - y0

    def _sawn(self) -> tuple[float, float, float, float]:
        """The rectangle to saw, in the finished panel's frame."""
        if not self.tapers:
            return self._cut_rims()
        # what is left on along a rim makes the points of the mitres at its ends longer
        xs, ys = zip(*self.cut_outline(), strict=True)
        return min(xs), min(ys), max(xs), max(ys)

    def _cut_rims(self) -> tuple[float, float, float, float]:
        return (
            self._less(Rim.START), self._less(Rim.FRONT),
            self.length - self._less(Rim.END), self.width - self._less(Rim.REAR),
        )

    def outline(self) -> tuple[Point, ...]:
        """The finished outline, counter-clockwise from the corner START/FRONT."""
        return self._outline(0.0, 0.0, self.length, self.width)

    def cut_outline(self) -> tuple[Point, ...]:
        """The outline as sawn, in the finished panel's frame, counter-clockwise."""
        return self._outline(*self._cut_rims())

    def _outline(self, x0: float, y0: float, x1: float, y1: float) -> tuple[Point, ...]:
        if self.tapers:
            return tapered_ring(self.tapers, (self.length, self.width), (x0, y0, x1, y1))
        cut = {(n.end, n.edge): n for n in self.notches}
        points: list[Point] = []
        corners = (
            (Rim.START, Rim.FRONT, x0, y0),
            (Rim.END, Rim.FRONT, x1, y0),
            (Rim.END, Rim.REAR, x1, y1),
            (Rim.START, Rim.REAR, x0, y1),
        )
        for end, edge, x, y in corners:
            notch = cut.get((end, edge))
            if notch is None:
                points.append((x, y))
                continue
            nx = notch.dx if end is Rim.START else self.length - notch.dx
            ny = notch.dy if edge is Rim.FRONT else self.width - notch.dy
            # walking counter-clockwise, which leg of the notch comes first alternates
            if (end is Rim.START) == (edge is Rim.FRONT):
                points += [(x, ny), (nx, ny), (nx, y)]
            else:
                points += [(nx, y), (nx, ny), (x, ny)]
        return tuple(points)

    def groove_box(self, groove: Groove) -> Box:
        """The box that a groove takes out, in the panel's frame."""
        z0, z1 = _depth_range(groove.face, groove.depth, self.thickness)
        a0, a1 = groove.offset, groove.offset + groove.width
        span = self.length if groove.measured_from.is_end else self.width
        if groove.measured_from in (Rim.END, Rim.REAR):
            a0, a1 = span - a1, span - a0
        if groove.run is Run.WIDTH:
            return Box(a0, groove.stop_first, z0, a1, self.width - groove.stop_last, z1)
        return Box(groove.stop_first, a0, z0, self.length - groove.stop_last, a1, z1)

    def notch_box(self, notch: Notch) -> Box:
        """The box that a notch takes out, in the panel's frame."""
        x0, x1 = (0.0, notch.dx) if notch.end is Rim.START else (
            self.length - notch.dx, self.length)
        y0, y1 = (0.0, notch.dy) if notch.edge is Rim.FRONT else (
            self.width - notch.dy, self.width)
        return Box(x0, y0, 0.0, x1, y1, self.thickness)

    @cached_property
    def volume(self) -> float:
        """Volume of the finished panel in mm³, machining taken off, exact.

        Grooves may cross each other; a hole may not lie in a groove or a notch
        (``joinery.check_panel`` refuses that). Pockets are not taken off.
        """
        boxes = [self.groove_box(g) for g in self.grooves]
        boxes += [self.notch_box(n) for n in self.notches]
        holes = sum(
            h.count * math.pi * h.diameter**2 / 4 * min(h.depth, self.thickness)
            for h in self.holes
        )
        holes += sum(h.depth * math.pi * h.diameter**2 / 4 for h in self.rim_holes)
        if self.section is Section.QUARTER_ROUND:
            return self._round_volume()
        whole = self.length * self.width
        if self.tapers:
            whole = ring_area(self.outline())
        return whole * self.thickness - union_volume(boxes) - holes

    def _round_volume(self) -> float:
        r, lost = self.width, 0.0
        # a mitre takes off first + (last - first) y / r at y; area and first moment of the quarter
        for t in self.tapers:
            lost += t.first * math.pi * r**2 / 4 + (t.last - t.first) / r * r**3 / 3
        return self.length * math.pi * r**2 / 4 - lost

    @property
    def machined_faces(self) -> frozenset[Face]:
        """The faces that carry grooves or holes."""
        return frozenset(g.face for g in self.grooves) | frozenset(h.face for h in self.holes)

    def mirrored(self) -> Panel:
        """The true mirror image: what is on one face is on the other."""
        return replace(
            self,
            grooves=tuple(replace(g, face=g.face.other) for g in self.grooves),
            holes=tuple(replace(h, face=h.face.other) for h in self.holes),
            rim_holes=tuple(replace(h, level=self.thickness - h.level) for h in self.rim_holes),
            pockets=tuple(replace(p, face=p.face.other) for p in self.pockets),
        )

    def shape_key(self) -> tuple[object, ...]:
        """Equal for panels that are the same piece once turned; a mirror image is another.

        The piece may be turned half around each of its three axes. Names do not count.
        """
        turns = [(False, False)]
        if self.section is Section.FLAT:  # turned over, a round lies elsewhere
            turns += [(True, False), (False, True), (True, True)]
        return (
            self.material,
            self.grain.value,
            self.section.value,
            _q(self.length),
            _q(self.width),
            _q(self.thickness),
            min(self._turned(flip_x, flip_y) for flip_x, flip_y in turns),
        )

    def _turned(self, flip_x: bool, flip_y: bool) -> tuple[Features, ...]:
        flip_z = flip_x != flip_y  # a turn in space reverses two axes or none

        def turn(box: Box) -> tuple[float | str, ...]:
            x = (self.length - box.x1, self.length - box.x0) if flip_x else (box.x0, box.x1)
            y = (self.width - box.y1, self.width - box.y0) if flip_y else (box.y0, box.y1)
            z = (self.thickness - box.z1, self.thickness - box.z0) if flip_z else (box.z0, box.z1)
            return tuple(_q(v) for v in (*x, *y, *z))

        def rim(name: Rim) -> str:
            flipped = flip_x if name.is_end else flip_y
            return (name.opposite if flipped else name).value

        return (
            tuple(sorted(turn(self.groove_box(g)) for g in self.grooves)),
            tuple(sorted(turn(b) for h in self.holes for b in self._hole_boxes(h))),
            tuple(sorted(turn(self.notch_box(n)) for n in self.notches)),
            tuple(sorted((rim(b.rim), b.key) for b in self.bands)),
            tuple(sorted(
                (rim(t.rim), *_turned_taper(t, flip_x, flip_y)) for t in self.tapers
            )),
            tuple(sorted(turn(self.rim_hole_box(h)) for h in self.rim_holes)),
            tuple(sorted(
                (rim(p.rim), (p.face.other if flip_z else p.face).value, _q(
                    self._run(p.rim) - p.at if (flip_y if p.rim.is_end else flip_x) else p.at))
                for p in self.pockets
            )),
        )

    def _run(self, rim: Rim) -> float:
        """How long a rim is."""
        return self.width if rim.is_end else self.length

    def rim_hole_box(self, hole: RimHole) -> Box:
        """The smallest box around a hole in a rim, in the panel's frame."""
        r, z = hole.diameter / 2, hole.level
        low, high = hole.at - r, hole.at + r
        end = self.length if hole.rim.is_end else self.width
        a, b = (0.0, hole.depth) if hole.rim in (Rim.START, Rim.FRONT) else (end - hole.depth, end)
        if hole.rim.is_end:
            return Box(a, low, z - r, b, high, z + r)
        return Box(low, a, z - r, high, b, z + r)

    def _hole_boxes(self, row: HoleRow) -> Iterable[Box]:
        z0, z1 = _depth_range(row.face, min(row.depth, self.thickness), self.thickness)
        r = row.diameter / 2
        return (Box(x - r, y - r, z0, x + r, y + r, z1) for x, y in row.centres())


def _turned_taper(taper: Taper, flip_x: bool, flip_y: bool) -> tuple[float, ...]:
    turned = taper.reversed() if (flip_y if taper.rim.is_end else flip_x) else taper
    places = (v for place in turned.via for v in place)
    return tuple(_q(v) for v in (turned.first, turned.last, turned.allowance, *places))


def _q(value: float) -> float:
    """A length to the nanometre, so that rounding noise makes no two pieces differ."""
    return round(value, 6) + 0.0


def _depth_range(face: Face, depth: float, thickness: float) -> tuple[float, float]:
    return (thickness - depth, thickness) if face is Face.UPPER else (0.0, depth)
