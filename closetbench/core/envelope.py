"""The plumb, level, square box that fits in a room, and the gaps that it leaves."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, fields, replace
from enum import Enum

from closetbench.core.errors import SurveyError
from closetbench.core.readings import On
from closetbench.core.room import Room
from closetbench.core.survey import Obstacle

LEAST_SIZE = 100.0
"""A box smaller than this in any direction holds no closet, mm."""
SETTLED = 1e-9


class Wall(Enum):
    """A side of the room that the envelope keeps away from."""

    LEFT = "left"
    RIGHT = "right"
    BACK = "back"
    TOP = "top"
    FLOOR = "floor"


class Objective(Enum):
    """What is largest. ``WIDTH``: the box reaches the depth asked for (or the rear wall) and
    the lowest ceiling over it, and is as wide as that leaves. ``VOLUME``: depth, height and
    width give way to each other, which matters under a slope."""

    WIDTH = "width first"
    VOLUME = "volume"


@dataclass(frozen=True)
class Clearances:
    """The least gap to keep from each surface, mm, all 0 or more, and how surely.

    5 mm at the sides, 10 mm above and none below is common practice, no published source:
    it lets the carcass slide in. ``confidence``: how likely all of them are kept, given how
    well the room is known; the box is smaller by what that takes.
    """

    left: float = 5.0
    right: float = 5.0
    back: float = 5.0
    top: float = 10.0
    floor: float = 0.0
    confidence: float = 0.95

    def __post_init__(self) -> None:
        for item in fields(self):
            value = getattr(self, item.name)
            if item.name != "confidence" and not 0 <= value <= 500:
                raise SurveyError(
                    "clearances", item.name, f"{value:g} mm", "must be 0 to 500 mm"
                )
        if not 0.5 <= self.confidence <= 0.999:
            raise SurveyError(
                "clearances", "confidence", f"{self.confidence:g}", "must be 0.5 to 0.999"
            )


@dataclass(frozen=True)
class Gap:
    """The distance from the envelope's face to the wall at one point, mm.

    ``across`` and ``up`` say where, in the envelope's frame: for the side walls y and z,
    for the back x and z, for top and floor x and y. ``sd``: its standard deviation.
    """

    wall: Wall
    across: float
    up: float
    value: float
    sd: float = 0.0


@dataclass(frozen=True)
class Envelope:
    """The box: sizes, its origin in the room's frame, and the gaps around it.

    Gaps are given at the corners of each face and halfway along its edges. ``margins``: what
    the uncertainty took off width, depth and height.
    """

    width: float
    depth: float
    height: float
    x0: float = 0.0
    y0: float = 0.0
    z0: float = 0.0
    gaps: tuple[Gap, ...] = ()
    margins: tuple[float, float, float] = (0.0, 0.0, 0.0)

    def gaps_at(self, wall: Wall) -> tuple[Gap, ...]:
        """The gaps along one wall."""
        return tuple(g for g in self.gaps if g.wall is wall)

    def profile(self, wall: Wall, edge: str) -> tuple[tuple[float, float], ...]:
        """How the gap tapers along one edge of a face: places and gaps, from its start.

        ``edge``: "front" or "back" of the sides (places are z), of top and floor (x); "left"
        or "right" of the back (z), of top and floor (y).
        """
        along = 1 if wall in (Wall.LEFT, Wall.RIGHT, Wall.BACK) else 0
        if edge in ("left", "right") and wall in (Wall.TOP, Wall.FLOOR):
            along = 1
        far = {"front": 0.0, "back": self.depth, "left": 0.0, "right": self.width}[edge]
        found = [
            ((g.across, g.up)[along], g.value) for g in self.gaps_at(wall)
            if abs((g.across, g.up)[1 - along] - far) < SETTLED
        ]
        return tuple(sorted(found))


@dataclass(frozen=True)
class _Box:
    """A box in the room's frame, with its front at y = 0."""

    x0: float
    x1: float
    y1: float
    z0: float
    z1: float

    @property
    def sizes(self) -> tuple[float, float, float]:
        return self.x1 - self.x0, self.y1, self.z1 - self.z0

    @property
    def volume(self) -> float:
        return math.prod(max(0.0, s) for s in self.sizes)

    def meets(self, o: Obstacle) -> bool:
        return (
            o.x0 < self.x1 - SETTLED and o.x1 > self.x0 + SETTLED and o.y0 < self.y1 - SETTLED
            and o.y1 > SETTLED and o.z0 < self.z1 - SETTLED and o.z1 > self.z0 + SETTLED
        )


_FREE = _Box(-math.inf, math.inf, math.inf, -math.inf, math.inf)


def fit_envelope(
    room: Room,
    clearances: Clearances,
    depth: float | None = None,
    objective: Objective = Objective.WIDTH,
) -> Envelope:
    """The largest plumb, level box parallel to the front that keeps the clearances.

    It stands on the highest point of the floor under it (shims fill the rest), clear of a
    baseboard that stays and of every obstacle, and none of its faces can be moved outward.
    The clearances are kept with their confidence; where the box stands across the width is
    free, so that only the width itself counts, not each side. ``depth`` limits how deep it
    goes. Raises ``SurveyError`` where the room leaves no box of ``LEAST_SIZE``.
    """
    if depth is not None and depth <= 0:
        raise SurveyError("envelope", "depth", f"{depth:g} mm", "must be above 0 mm")
    limits = _FREE if depth is None else replace(_FREE, y1=depth)
    best = _clear_box(room, clearances, limits, objective)
    margins = _margins(room, clearances, best)
    box = _Box(
        best.x0 + margins[0] / 2, best.x1 - margins[0] / 2, best.y1 - margins[1],
        best.z0, best.z1 - margins[2],
    )
    _require(box)
    return Envelope(*box.sizes, box.x0, 0.0, box.z0, tuple(_gaps(room, box)), margins)


def _require(box: _Box) -> None:
    for name, size in zip(("width", "depth", "height"), box.sizes, strict=True):
        if not size >= LEAST_SIZE:
            raise SurveyError(
                "envelope", name, f"{size:.1f} mm",
                f"must be at least {LEAST_SIZE:g} mm; check the readings and the clearances",
            )


def _clear_box(room: Room, c: Clearances, limits: _Box, objective: Objective) -> _Box:
    """The best box beside, below, above or in front of each obstacle that is in the way."""
    best: _Box | None = None
    blocked: Obstacle | None = None
    waiting = [limits]
    while waiting:
        limits = waiting.pop()
        box = _largest(room, c, limits, objective)
        if limits is not _FREE and min(box.sizes) < LEAST_SIZE and room.obstacles:
            continue
        if best is not None and _rank(box, objective) <= _rank(best, objective):
            continue
        o = next((o for o in room.obstacles if box.meets(o)), None)
        if o is None:
            _require(box)
            best = box
            continue
        blocked = o
        waiting += [
            replace(limits, x1=min(limits.x1, o.x0)), replace(limits, x0=max(limits.x0, o.x1)),
            replace(limits, z1=min(limits.z1, o.z0)), replace(limits, z0=max(limits.z0, o.z1)),
            replace(limits, y1=min(limits.y1, o.y0)),
        ]
    if best is None:
        assert blocked is not None
        raise SurveyError(
            blocked.name, "place",
            f"{blocked.x0:g} to {blocked.x1:g} mm across, up to {blocked.z1:g} mm high",
            f"leaves no box of {LEAST_SIZE:g} mm beside, below, above or in front of it; check "
            "its sizes, or move it",
        )
    return best


def _rank(box: _Box, objective: Objective) -> tuple[float, float]:
    volume = box.volume
    return (volume, 0.0) if objective is Objective.VOLUME else (round(box.sizes[0], 6), volume)


def _largest(room: Room, c: Clearances, limits: _Box, objective: Objective) -> _Box:
    box = _spread(room, c, limits)
    if objective is Objective.WIDTH or min(box.sizes) < LEAST_SIZE:
        return box
    # The largest volume within planes is where no face gains by going back: volume is
    # log-concave there, so a face that gains nothing at first gains nothing further on.
    for _ in range(12):
        before = box.volume
        for face, sign in (("y1", -1.0), ("z1", -1.0), ("z0", 1.0), ("x1", -1.0), ("x0", 1.0)):
            box, limits = _give_way(room, c, limits, box, face, sign)
        if box.volume <= before * (1 + 1e-12):
            break
    return box


def _give_way(
    room: Room, c: Clearances, limits: _Box, box: _Box, face: str, sign: float
) -> tuple[_Box, _Box]:
    """Move one face inward as far as the volume grows."""
    start = getattr(box, face)

    def moved(by: float) -> _Box:
        return _spread(room, c, replace(limits, **{face: start + sign * by}))

    if moved(0.1).volume <= box.volume:
        return box, limits
    low, high = 0.0, max(box.sizes)
    ratio = (math.sqrt(5.0) - 1) / 2
    a, b = high - ratio * (high - low), low + ratio * (high - low)
    va, vb = moved(a).volume, moved(b).volume
    while high - low > 1e-7:
        if va < vb:
            low, a, va = a, b, vb
            b = low + ratio * (high - low)
            vb = moved(b).volume
        else:
            high, b, vb = b, a, va
            a = high - ratio * (high - low)
            va = moved(a).volume
    by = (low + high) / 2
    return moved(by), replace(limits, **{face: start + sign * by})


def _spread(room: Room, c: Clearances, limits: _Box) -> _Box:
    """Every face as far out as the surfaces over the others' extents and the limits let it."""
    x0, x1 = room.left.c[0], room.right.c[0]
    y1, z0, z1 = room.back.c[0], room.floor.c[0], room.ceiling.c[0]
    for _ in range(80):
        before = (x0, x1, y1, z0, z1)
        z0 = max(limits.z0, room.floor.over(x0, x1, 0, y1)[1] + c.floor)
        z1 = min(limits.z1, room.ceiling.over(x0, x1, 0, y1)[0] - c.top)
        y1 = min(limits.y1, min(v for v, *_ in _back(room, x0, x1, z0, z1)) - c.back)
        if min(x1 - x0, y1, z1 - z0) < LEAST_SIZE:
            break
        x0 = max(limits.x0, max(v for v, *_ in _side(room, On.LEFT, y1, z0, z1)) + c.left)
        x1 = min(limits.x1, min(v for v, *_ in _side(room, On.RIGHT, y1, z0, z1)) - c.right)
        if max(abs(a - b) for a, b in zip(before, (x0, x1, y1, z0, z1), strict=True)) < SETTLED:
            break
    return _Box(x0, x1, y1, z0, z1)


Reach = tuple[float, float, float]
"""What counts at one point of a wall, baseboard taken off, and where that is."""


def _side(room: Room, on: On, y1: float, z0: float, z1: float) -> list[Reach]:
    inward = 1.0 if on is On.LEFT else -1.0
    return _with_baseboard(room, room.surface(on).critical, room.surface(on).at, inward,
                           y1, z0, z1)


def _back(room: Room, x0: float, x1: float, z0: float, z1: float) -> list[Reach]:
    return _with_baseboard(
        room, lambda u0, u1, v0, v1: room.back.critical(x0, x1, v0, v1), room.back.at, -1.0,
        0.0, z0, z1,
    )


def _with_baseboard(
    room: Room, critical: Callable[..., Iterable[tuple[float, float]]],
    at: Callable[[float, float], float], inward: float, u1: float, z0: float, z1: float,
) -> list[Reach]:
    found = [(at(u, v), u, v) for u, v in critical(0.0, u1, z0, z1)]
    high, thick = room.baseboard
    # it follows the floor; over a box the floor is as good as level
    top = room.floor.at(0.0, 0.0) + high
    if high > 0 and thick > 0 and top > z0:
        found += [
            (at(u, v) + inward * thick, u, v) for u, v in critical(0.0, u1, z0, min(top, z1))
        ]
    return found


def _margins(room: Room, c: Clearances, box: _Box) -> tuple[float, float, float]:
    """What width, depth and height must give up so that the clearances hold surely enough.

    A third of the risk goes to each; within one, the risks of all points that could be the
    narrowest add up (Bonferroni), so the confidence is kept at the least.
    """
    if not room.covariance:
        return 0.0, 0.0, 0.0
    risk = (1.0 - c.confidence) / 3.0
    lefts = _side(room, On.LEFT, box.y1, box.z0, box.z1)
    rights = _side(room, On.RIGHT, box.y1, box.z0, box.z1)
    sides = c.left + c.right + box.sizes[0]
    width = [
        (r - left - sides, ((1.0, On.RIGHT, ru, rv), (-1.0, On.LEFT, lu, lv)))
        for left, lu, lv in lefts for r, ru, rv in rights
    ]
    depth = [
        (y - c.back - box.y1, ((1.0, On.BACK, u, v),))
        for y, u, v in _back(room, box.x0, box.x1, box.z0, box.z1)
    ]
    plan = (box.x0, box.x1, 0.0, box.y1)
    tops = [(room.ceiling.at(u, v), u, v) for u, v in room.ceiling.critical(*plan)]
    floors = [(room.floor.at(u, v), u, v) for u, v in room.floor.critical(*plan)]
    levels = c.top + c.floor + box.sizes[2]
    height = [
        (t - f - levels, ((1.0, On.CEILING, tu, tv), (-1.0, On.FLOOR, fu, fv)))
        for t, tu, tv in tops for f, fu, fv in floors
    ]
    return _margin(room, width, risk), _margin(room, depth, risk), _margin(room, height, risk)


def _margin(
    room: Room, slacks: Sequence[tuple[float, tuple[tuple[float, On, float, float], ...]]],
    risk: float,
) -> float:
    near = min(s for s, _ in slacks)
    points = [
        # nothing measured this way is uncertain by 8 mm or more, so far points cannot count
        (s, math.sqrt(room.variance(parts))) for s, parts in slacks if s < near + 40.0
    ]
    points = [(s, sd) for s, sd in points if sd > 0]

    def chance(margin: float) -> float:
        return sum(0.5 * math.erfc((s + margin) / sd / math.sqrt(2.0)) for s, sd in points)

    if not points or chance(0.0) <= risk:
        return 0.0
    low, high = 0.0, 1.0
    while chance(high) > risk:
        low, high = high, 2 * high
    while high - low > 1e-6:
        middle = (low + high) / 2
        low, high = (middle, high) if chance(middle) > risk else (low, middle)
    return high


def _gaps(room: Room, box: _Box) -> list[Gap]:
    xs, ys, zs = ((a, (a + b) / 2, b) for a, b in (
        (box.x0, box.x1), (0.0, box.y1), (box.z0, box.z1)))
    gaps = []

    def add(wall: Wall, on: On, u: float, v: float, value: float) -> None:
        across = u if wall in (Wall.LEFT, Wall.RIGHT) else u - box.x0
        up = v if wall in (Wall.TOP, Wall.FLOOR) else v - box.z0
        sd = math.sqrt(room.variance(((1.0, on, u, v),)))
        gaps.append(Gap(wall, across, up, value, sd))

    for y in ys:
        for z in zs:
            if y != ys[1] or z != zs[1]:
                add(Wall.LEFT, On.LEFT, y, z, box.x0 - room.left.at(y, z))
                add(Wall.RIGHT, On.RIGHT, y, z, room.right.at(y, z) - box.x1)
    for x in xs:
        for z in zs:
            if x != xs[1] or z != zs[1]:
                add(Wall.BACK, On.BACK, x, z, room.back.at(x, z) - box.y1)
        for y in ys:
            if x != xs[1] or y != ys[1]:
                add(Wall.TOP, On.CEILING, x, y, room.ceiling.at(x, y) - box.z1)
                add(Wall.FLOOR, On.FLOOR, x, y, box.z0 - room.floor.at(x, y))
    return gaps
