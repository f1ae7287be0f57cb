"""Rules for joints: how wide and deep a groove is, what a shelf gains, what is left.

Sources of the default figures: groove depth of one third of the thickness, at most
one half, and a set-back of 10 to 12 mm for a back of 6 mm are common practice, no
published source. The width follows the measured thickness of the mating panel, since
a panel of a nominal class varies more than the fit can bear (Voluntary Product
Standard PS 1: category 23/32 may measure 17.5 to 19.1 mm).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import Enum
from itertools import pairwise

from closetbench.core.errors import ClosetError
from closetbench.core.panel import (
    Box,
    Face,
    Groove,
    HoleRow,
    Notch,
    Panel,
    Rim,
    RimHole,
    Run,
    Section,
)

RIM_SKIN = 2.0
"""What must stay around a hole in a rim, mm: common practice, no published source."""
POCKET_ROOM = 8.0
"""From a pocket's middle to the corner of its board at least, mm: common practice, no
published source."""


class Joint(Enum):
    """How a fixed panel is carried by the panels at its ends."""

    GROOVE = "groove"
    SCREWS = "screws"
    NAILS = "nails"
    CLEATS = "cleats"


@dataclass(frozen=True)
class JoineryRules:
    """The figures that a shop settles once.

    ``fit``: groove wider than the panel in it, mm. ``end_clearance``: how far a tongue
    stays short of the bottom of its groove, mm. ``depth_fraction`` of the grooved
    panel's thickness, taken down to a multiple of ``depth_step`` (a router is set in
    steps), unless ``depth`` is given. ``most_fraction``: deepest groove allowed.
    ``least_web``: fraction of the thickness that must stay between two cuts that meet
    from both faces. ``least_skin``: mm that must stay under a blind hole.
    """

    fit: float = 0.2
    end_clearance: float = 0.5
    depth_fraction: float = 1 / 3
    depth_step: float = 0.5
    depth: float | None = None
    most_fraction: float = 0.5
    least_web: float = 0.25
    least_skin: float = 3.0

    def __post_init__(self) -> None:
        checks = (
            ("fit", self.fit, 0.0, 2.0),
            ("end clearance", self.end_clearance, 0.0, 3.0),
            ("groove depth as a fraction of the thickness", self.depth_fraction, 0.1, 0.5),
            ("step of the groove depth", self.depth_step, 0.01, 2.0),
            ("deepest groove as a fraction of the thickness", self.most_fraction, 0.1, 0.75),
            ("least web as a fraction of the thickness", self.least_web, 0.1, 0.9),
            ("skin under a blind hole", self.least_skin, 0.5, 20.0),
        )
        for name, value, low, high in checks:
            if not low <= value <= high:
                raise ClosetError("joinery", name, f"{value:g}", f"must be {low:g} to {high:g}")

    def groove_depth(self, thickness: float, subject: str = "groove") -> float:
        """Depth of a groove in a panel of this thickness, mm."""
        if self.depth is None:
            steps = math.floor(thickness * self.depth_fraction / self.depth_step + 1e-9)
            return max(1, steps) * self.depth_step
        limit = thickness * self.most_fraction
        if not 0 < self.depth <= limit + 1e-9:
            raise ClosetError(
                subject, "groove depth", f"{self.depth:g} mm",
                f"must be above 0 and at most {limit:g} mm in a panel {thickness:g} mm thick",
            )
        return self.depth

    def groove_width(self, mating: float) -> float:
        """Width of a groove for a panel that measures ``mating`` mm."""
        return mating + self.fit

    def tongue(self, thickness: float, subject: str = "groove") -> float:
        """What a panel gains in length for each end that enters a groove, mm."""
        depth = self.groove_depth(thickness, subject)
        if depth <= self.end_clearance:
            raise ClosetError(
                subject, "end clearance", f"{self.end_clearance:g} mm",
                f"must be less than the depth of the groove, {depth:g} mm",
            )
        return depth - self.end_clearance


def router_passes(width: float, bit: float, subject: str = "groove") -> tuple[float, ...]:
    """Where the near side of the bit runs for each pass, mm from the groove's near wall.

    The fewest equally spaced passes of a straight bit that leave nothing standing.
    Raises ``ClosetError`` when the bit is wider than the groove.
    """
    if not 0 < bit <= width + 1e-9:
        raise ClosetError(
            subject, "router bit", f"{bit:g} mm",
            f"must be above 0 and at most as wide as the groove, {width:g} mm",
        )
    count = math.ceil(width / bit - 1e-9)
    if count == 1:
        return (0.0,)
    step = (width - bit) / (count - 1)
    return tuple(i * step for i in range(count))


def rabbet(name: str, face: Face, rim: Rim, mating: float, depth: float) -> Groove:
    """A rabbet for a panel that measures ``mating`` mm and lies flush with the rim.

    It has no fit: its shoulder places the panel.
    """
    return Groove(name, face, rim, 0.0, mating, depth)


def check_panel(panel: Panel, subject: str, rules: JoineryRules) -> Panel:
    """The panel itself, or a ``ClosetError`` that says which cut cannot be made."""
    sizes = (("length", panel.length), ("width", panel.width), ("thickness", panel.thickness))
    for name, value in sizes:
        if not (math.isfinite(value) and value > 0):
            raise ClosetError(subject, name, f"{value:g} mm", "must be above 0")
    rims = [band.rim for band in panel.bands]
    for rim in rims:
        if rims.count(rim) > 1:
            raise ClosetError(
                subject, f"edge band on the {rim.value}", "given twice", "must be given once"
            )
    for name, value in (("length", panel.cut_length), ("width", panel.cut_width)):
        if value <= 0:
            raise ClosetError(
                subject, f"{name} without its edge bands", f"{value:g} mm", "must be above 0"
            )
    if panel.tapers or panel.section is not Section.FLAT:
        _check_tapers(panel, subject)
    for i, notch in enumerate(panel.notches):
        _check_notch(panel, notch, panel.notches[:i], subject)
    boxes = [(g, panel.groove_box(g)) for g in panel.grooves]
    for groove, box in boxes:
        _check_groove(panel, groove, box, subject, rules)
    for i, (first, a) in enumerate(boxes):
        for second, b in boxes[i + 1:]:
            _check_pair(panel, first, a, second, b, subject, rules)
    for row in panel.holes:
        _check_holes(panel, row, boxes, subject, rules)
    _check_holes_apart(panel, subject, rules)
    for i, hole in enumerate(panel.rim_holes):
        _check_rim_hole(panel, hole, panel.rim_holes[:i], subject)
    for pocket in panel.pockets:
        run = panel.width if pocket.rim.is_end else panel.length
        if not POCKET_ROOM <= pocket.at <= run - POCKET_ROOM:
            raise ClosetError(
                f"{subject}, pocket for {pocket.name}", "position", f"{pocket.at:g} mm",
                f"must be {POCKET_ROOM:g} to {run - POCKET_ROOM:g} mm along the "
                f"{pocket.rim.value}",
            )
    return panel


def check_hole_row(panel: Panel, row: HoleRow, subject: str, rules: JoineryRules) -> None:
    """Raise ``ClosetError`` where a row of holes cannot be added to a panel that is sound."""
    _check_holes(panel, row, [(g, panel.groove_box(g)) for g in panel.grooves], subject, rules)
    _check_holes_apart(replace(panel, holes=(*panel.holes, row)), subject, rules)


def _check_tapers(panel: Panel, subject: str) -> None:
    if panel.grooves or panel.notches or panel.rim_holes or panel.pockets:
        raise ClosetError(
            subject, "grooves and notches", "given",
            "must be left out of a panel that is tapered or no flat board",
        )
    if panel.section is Section.QUARTER_ROUND:
        edges = [t for t in panel.tapers if not t.rim.is_end or t.via or t.allowance]
        if edges or panel.bands or abs(panel.width - panel.thickness) > 1e-6:
            raise ClosetError(
                subject, "section", panel.section.value,
                "must be as wide as thick, straight along its length and without edge bands",
            )
    rims = [t.rim for t in panel.tapers]
    for taper in panel.tapers:
        across = panel.length if taper.rim.is_end else panel.width
        label = f"taper of the {taper.rim.value}"
        if rims.count(taper.rim) > 1:
            raise ClosetError(subject, label, "not alone", "must be the only one there")
        inside = [v for _, v in taper.places]
        if not (max(inside) < across and taper.allowance >= 0):
            raise ClosetError(
                subject, label, f"{taper.first:g} to {taper.last:g} mm",
                f"must be less than the {across:g} mm across",
            )
        shares = [at for at, _ in taper.places]
        if any(a >= b for a, b in pairwise(shares)):
            raise ClosetError(
                subject, f"{label}, where it bends", ", ".join(f"{v:g}" for v in shares[1:-1]),
                "must be shares of its length, rising between 0 and 1",
            )
    for x, y in panel.outline():
        if not (-1e-6 <= x <= panel.length + 1e-6 and -1e-6 <= y <= panel.width + 1e-6):
            raise ClosetError(
                subject, "tapers", f"a corner at {x:g}, {y:g} mm",
                f"must leave the panel within {panel.length:g} x {panel.width:g} mm",
            )


def _check_notch(panel: Panel, notch: Notch, before: Sequence[Notch], subject: str) -> None:
    size = f"{notch.dx:g} x {notch.dy:g} mm"
    if not (0 < notch.dx < panel.length and 0 < notch.dy < panel.width):
        raise ClosetError(
            subject, "notch", size,
            f"must be smaller than the panel, {panel.length:g} x {panel.width:g} mm",
        )
    bands = panel.band_thickness(notch.end), panel.band_thickness(notch.edge)
    if notch.dx <= bands[0] or notch.dy <= bands[1]:
        raise ClosetError(
            subject, "notch", size, f"must be larger than the edge band, {max(bands):g} mm thick"
        )
    if any(_meet(panel.notch_box(notch), panel.notch_box(other)) for other in before):
        raise ClosetError(subject, "notch", size, "must not run into another notch")


def _check_groove(
    panel: Panel, groove: Groove, box: Box, subject: str, rules: JoineryRules
) -> None:
    across = panel.length if groove.run is Run.WIDTH else panel.width
    run = panel.width if groove.run is Run.WIDTH else panel.length
    label = f"{subject}, groove for {groove.name}"
    if groove.offset < 0 or groove.width <= 0 or groove.offset + groove.width > across + 1e-6:
        raise ClosetError(
            label, "position", f"{groove.offset:g} to {groove.offset + groove.width:g} mm",
            f"must lie within 0 and {across:g} mm",
        )
    if min(groove.stop_first, groove.stop_last) < 0 or (
        groove.stop_first + groove.stop_last >= run
    ):
        raise ClosetError(
            label, "stops", f"{groove.stop_first:g} and {groove.stop_last:g} mm",
            f"must be 0 or more and leave some of the run of {run:g} mm",
        )
    limit = panel.thickness * rules.most_fraction
    if not 0 < groove.depth <= limit + 1e-6:
        raise ClosetError(
            label, "depth", f"{groove.depth:g} mm",
            f"must be above 0 and at most {limit:g} mm in a panel {panel.thickness:g} mm thick",
        )


def _meet(a: Box, b: Box) -> bool:
    return (
        min(a.x1, b.x1) - max(a.x0, b.x0) > 1e-6 and min(a.y1, b.y1) - max(a.y0, b.y0) > 1e-6
    )


def _check_pair(
    panel: Panel, first: Groove, a: Box, second: Groove, b: Box, subject: str,
    rules: JoineryRules,
) -> None:
    if not _meet(a, b):
        return
    names = f"{subject}, grooves for {first.name} and {second.name}"
    if first.face is second.face:
        if first.run is second.run:
            raise ClosetError(
                names, "distance", "less than 0 mm", "must not run into each other; move one"
            )
        return
    web = panel.thickness - first.depth - second.depth
    least = rules.least_web * panel.thickness
    if web < least - 1e-6:
        raise ClosetError(
            names, "web between them", f"{web:g} mm",
            f"must be at least {least:g} mm of {panel.thickness:g} mm where grooves meet back to "
            "back; make them shallower or move one shelf",
        )


def _check_holes(
    panel: Panel, row: HoleRow, grooves: list[tuple[Groove, Box]], subject: str,
    rules: JoineryRules,
) -> None:
    label = f"{subject}, holes for {row.name}"
    if row.diameter <= 0 or row.count < 1 or row.pitch < row.diameter:
        raise ClosetError(
            label, "row", f"{row.count} of {row.diameter:g} mm at {row.pitch:g} mm",
            "needs one hole or more, a diameter above 0 and a pitch that leaves wood between",
        )
    skin = panel.thickness - row.depth
    if row.depth <= 0 or (1e-6 < skin < rules.least_skin - 1e-6) or skin < -1e-6:
        raise ClosetError(
            label, "depth", f"{row.depth:g} mm",
            f"must be at most {panel.thickness - rules.least_skin:g} mm, or drill right through "
            f"{panel.thickness:g} mm",
        )
    r = row.diameter / 2
    for x, y in row.centres():
        if not (r <= x <= panel.length - r and r <= y <= panel.width - r):
            raise ClosetError(
                label, "position", f"{x:g}, {y:g} mm",
                f"must leave the hole inside the panel, {panel.length:g} x {panel.width:g} mm",
            )
        if panel.tapers and _reach(panel.outline(), (x, y)) < r - 1e-6:
            raise ClosetError(
                label, "position", f"{x:g}, {y:g} mm", "must leave the hole inside the taper"
            )
        hole = Box(x - r, y - r, 0.0, x + r, y + r, panel.thickness)
        blocked = [panel.notch_box(n) for n in panel.notches if _meet(hole, panel.notch_box(n))]
        if blocked:
            raise ClosetError(label, "position", f"{x:g}, {y:g} mm", "must not lie in a notch")
        for groove, box in grooves:
            if not _meet(hole, box):
                continue
            left = panel.thickness - row.depth - groove.depth
            if row.face is groove.face or left < rules.least_skin - 1e-6:
                raise ClosetError(
                    label, "position", f"{x:g}, {y:g} mm",
                    f"must keep clear of the groove for {groove.name}",
                )


def _reach(ring: Sequence[tuple[float, float]], at: tuple[float, float]) -> float:
    """How far a point lies inside a convex, counter-clockwise ring; below 0 outside."""
    return min(
        ((x1 - x0) * (at[1] - y0) - (y1 - y0) * (at[0] - x0)) / math.hypot(x1 - x0, y1 - y0)
        for (x0, y0), (x1, y1) in zip(ring, (*ring[1:], ring[0]), strict=True)
    )


def _check_rim_hole(
    panel: Panel, hole: RimHole, before: Sequence[RimHole], subject: str
) -> None:
    label = f"{subject}, hole for {hole.name} in the {hole.rim.value}"
    run, across = panel.width, panel.length
    if not hole.rim.is_end:
        run, across = across, run
    least = hole.diameter + 2 * RIM_SKIN
    if panel.thickness < least - 1e-6:
        raise ClosetError(
            label, "thickness of the board", f"{panel.thickness:g} mm",
            f"must be at least {least:g} mm for a hole {hole.diameter:g} mm across",
        )
    room = hole.diameter / 2 + RIM_SKIN
    for prop, value, low, high in (
        ("position", hole.at, room, run - room),
        ("level", hole.level, room, panel.thickness - room),
        ("depth", hole.depth, 1.0, across - RIM_SKIN),
    ):
        if not low - 1e-6 <= value <= high + 1e-6:
            raise ClosetError(label, prop, f"{value:g} mm", f"must be {low:g} to {high:g} mm")
    box = panel.rim_hole_box(hole)
    others = [panel.groove_box(g) for g in panel.grooves]
    others += [panel.notch_box(n) for n in panel.notches]
    others += [panel.rim_hole_box(h) for h in before]
    for row in panel.holes:
        r = row.diameter / 2
        z0, z1 = (
            (0.0, row.depth) if row.face is Face.LOWER
            else (panel.thickness - row.depth, panel.thickness)
        )
        others += [Box(x - r, y - r, z0, x + r, y + r, z1) for x, y in row.centres()]
    if any(box.overlaps(other, 1e-6) for other in others):
        raise ClosetError(label, "position", f"{hole.at:g} mm", "must keep clear of other cuts")


def _check_holes_apart(panel: Panel, subject: str, rules: JoineryRules) -> None:
    holes = sorted(
        ((x, y, row.name, row) for row in panel.holes for x, y in row.centres()),
        key=lambda hole: hole[:3],
    )
    for i, (x, y, _, row) in enumerate(holes):
        for x2, y2, _, other in holes[i + 1:]:
            apart = (row.diameter + other.diameter) / 2
            if x2 - x >= apart:
                break
            if math.hypot(x2 - x, y2 - y) >= apart:
                continue
            left = panel.thickness - row.depth - other.depth
            if row.face is other.face or left < rules.least_skin - 1e-6:
                raise ClosetError(
                    f"{subject}, holes for {row.name} and {other.name}", "position",
                    f"{x:g}, {y:g} mm", "must not run into each other",
                )
