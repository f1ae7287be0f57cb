"""Whether each piece goes in: through the opening, past the returns, up under the ceiling.

Everything is in the closet's frame (the envelope's). Inside, the room counts as the largest
plumb box in it, emptied of what else will stand there; before the opening there is space
enough. A piece is a rectangular block; it is carried through

* straight,
* turned in the opening's own plane (closed form),
* turned in plan past the jambs, or tilted under the lintel (search, see ``turning``),

and then turned about one axis after the other to how it stands (closed form).
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from closetbench.core.envelope import Clearances, Envelope, fit_envelope
from closetbench.core.figures import Figures
from closetbench.core.panel import Box
from closetbench.core.room import Room
from closetbench.core.turning import (
    Slot,
    angle_through,
    carry_through,
    largest_that,
    tilt_diagonal,
    turns_within,
)

PLAY = 10.0
"""mm to spare all round that a path is looked for with: fingers, and the searches' step."""

SNUG = 3.0
"""mm that a piece keeps from each jamb and from the lintel where it goes through without a
search: the opening is known no better, and it is carried by hand; common practice, no published
source."""

Size = tuple[float, float, float]
AXES = "xyz"


@dataclass(frozen=True)
class Piece:
    """A rigid piece as it will stand: its name, its box, and whether it can come in parts."""

    name: str
    box: Box
    in_parts: bool = False

    @property
    def size(self) -> Size:
        """Width, depth and height as it stands."""
        b = self.box
        return b.x1 - b.x0, b.y1 - b.y0, b.z1 - b.z0


@dataclass(frozen=True)
class Entrance:
    """The opening and the room behind it.

    ``inside``: the free box behind the front; the front wall is ``thick``, casing included,
    and opens from ``jamb0`` to ``jamb1`` up to ``head``. ``ceiling``: height outside.
    """

    inside: Box
    jamb0: float
    jamb1: float
    head: float
    thick: float
    ceiling: float

    @property
    def size(self) -> Size:
        """Width, depth and height inside."""
        b = self.inside
        return b.x1 - b.x0, b.y1 - b.y0, b.z1 - b.z0

    @property
    def width(self) -> float:
        """Clear width of the opening."""
        return self.jamb1 - self.jamb0

    @property
    def height(self) -> float:
        """Clear height of the opening, from the highest point of the floor."""
        return self.head - self.inside.z0


@dataclass(frozen=True)
class Pose:
    """Where a piece is on its way: its centre, its size along x, y and z before it is turned,
    and the axis that it is turned about, by an angle in degrees (right-handed)."""

    centre: tuple[float, float, float]
    size: Size
    axis: str = "z"
    angle: float = 0.0


@dataclass(frozen=True)
class Access:
    """Whether a piece goes in, how, and if not, what would let it.

    ``path``: positions from before the opening to its place, straight between them.
    ``searched``: the step of the search in mm, 0 where the answer is exact.
    """

    piece: Piece
    passes: bool
    how: str
    path: tuple[Pose, ...] = ()
    searched: float = 0.0
    remedy: str = ""


def entrance(room: Room, envelope: Envelope) -> Entrance | None:
    """The way in, None where the whole front is open.

    Walls are taken at their narrowest, with the envelope's own certainty; a baseboard and
    the casing count.
    """
    if room.opening is None:
        return None
    free = fit_envelope(replace(room, obstacles=()), Clearances(0.0, 0.0, 0.0, 0.0, 0.0))
    x0, z0 = free.x0 - envelope.x0, free.z0 - envelope.z0
    o = room.opening
    return Entrance(
        Box(x0, 0.0, z0, x0 + free.width, free.depth, z0 + free.height),
        o.x0 - envelope.x0, o.x1 - envelope.x0, min(o.z1, free.z0 + free.height) - envelope.z0,
        o.depth + o.casing_thickness, z0 + free.height,
    )


def way_in(
    piece: Piece, way: Entrance, advise: bool = True, figures: Figures | None = None
) -> Access:
    """A path of the piece through the opening into its place.

    Where there is none, ``remedy`` says what would help; finding that out takes longer than
    the search itself, so it can be left out.
    """
    if any(p > q + 1e-6 for p, q in zip(piece.size, way.size, strict=True)):
        return Access(piece, False, "it is larger than the closet inside", remedy="make it smaller")
    found = _way(piece, way)
    if found is None:
        remedy = _remedy(piece, way, figures or Figures()) if advise else ""
        return Access(piece, False, "no way in was found", searched=PLAY, remedy=remedy)
    return found


def _way(piece: Piece, way: Entrance) -> Access | None:
    # the ways that need no search first, and of the searches those of thin pieces
    stands = sorted(
        {(p, q, r) for p, q, r in itertools.permutations(piece.size)},
        key=lambda s: (s != piece.size, s[1]),
    )
    for enter in (_enter_straight, _enter_turning):
        for size in stands if enter is _enter_straight else sorted(stands, key=lambda s: s[1]):
            if any(p > q for p, q in zip(size, way.size, strict=True)):
                continue
            turns = _turned_inside(size, piece.size, way)
            if turns is None:
                continue
            for how, poses, searched in enter(size, way):
                return Access(
                    piece, True, ", ".join([how, *(words for words, _ in turns)]),
                    _settle(piece, poses, [s for _, s in turns], way), searched,
                )
    return None


Entry = tuple[str, tuple[Pose, ...], float]


def _enter_straight(size: Size, way: Entrance) -> Iterator[Entry]:
    """Ways through the opening without a search; they end inside, ``size`` along the axes."""
    dx, _, dz = size
    angle = angle_through(dx, dz, way.width - 2 * SNUG, way.height - SNUG)
    if angle == 0.0:
        yield "straight through the opening", _through(size, way, 0.0), 0.0
    elif angle is not None and turns_within(dx, dz, way.size[0], way.size[2], angle, 0.0):
        yield "turned in the opening and set upright behind it", _through(size, way, angle), 0.0


def _enter_turning(size: Size, way: Entrance) -> Iterator[Entry]:
    """Ways through the opening that turn past a jamb or under the lintel."""
    dx, dy, dz = size
    if dz <= way.height:
        plan = carry_through(
            Slot(way.jamb0, way.jamb1, way.thick, way.inside.x0, way.inside.x1, way.size[1]),
            dx, dy, PLAY,
        )
        if plan is not None:
            z = way.inside.z0 + dz / 2
            yield "turned past the jambs", tuple(
                Pose((p.v, p.y, z), size, "z", math.degrees(p.angle)) for p in plan
            ), PLAY
    if dx <= way.width:
        floor = way.inside.z0
        tilt = carry_through(
            Slot(floor, way.head, way.thick, floor, way.inside.z1, way.size[1], floor, way.ceiling),
            dz, dy, PLAY,
        )
        if tilt is not None:
            x = (way.jamb0 + way.jamb1) / 2
            # seen from the left, z to the right and y up: a turn there is one about -x
            yield "tilted under the lintel", tuple(
                Pose((x, p.y, p.v), size, "x", -math.degrees(p.angle)) for p in tilt
            ), PLAY


def _turned_inside(
    first: Size, last: Size, way: Entrance
) -> tuple[tuple[str, Size], ...] | None:
    """The turns about an axis each that bring the piece from one stand to another."""
    paths: dict[Size, tuple[tuple[str, Size], ...]] = {first: ()}
    waiting = [first]
    while waiting:
        here = waiting.pop(0)
        if here == last:
            return paths[here]
        for k, words in ((2, "turned in plan"), (0, "tilted up"), (1, "turned up sideways")):
            a, b = (i for i in range(3) if i != k)
            there = list(here)
            there[a], there[b] = here[b], here[a]
            size = (there[0], there[1], there[2])
            if size in paths or here[a] == here[b]:
                continue
            if turns_within(here[a], here[b], way.size[a], way.size[b]):
                paths[size] = (*paths[here], (words, size))
                waiting.append(size)
    return None


def _through(size: Size, way: Entrance, angle: float) -> tuple[Pose, ...]:
    """Square through the opening, turned in its plane by ``angle``."""
    c, s = abs(math.cos(angle)), abs(math.sin(angle))
    wide, high = size[0] * c + size[2] * s, size[0] * s + size[2] * c
    x = min(max((way.jamb0 + way.jamb1) / 2, way.inside.x0 + wide / 2),
            way.inside.x1 - wide / 2)
    z = way.inside.z0 + high / 2
    poses = [
        Pose((x, y, z), size, "y", math.degrees(angle))
        for y in (-way.thick - size[1] / 2 - PLAY, size[1] / 2)
    ]
    if angle:
        poses += _turn(size, "y", angle, 0.0, way, poses[-1].centre)
    return tuple(poses)


def _turn(
    size: Size, axis: str, start: float, end: float, way: Entrance,
    centre: tuple[float, float, float],
) -> list[Pose]:
    """A turn inside, kept within the walls and on the floor at every step."""
    poses = []
    k = AXES.index(axis)
    a, b = (i for i in range(3) if i != k)
    steps = max(2, math.ceil(abs(end - start) / math.radians(5.0)))
    low = (way.inside.x0, way.inside.y0, way.inside.z0)
    for i in range(1, steps + 1):
        angle = start + (end - start) * i / steps
        c, s = abs(math.cos(angle)), abs(math.sin(angle))
        reach = list(size)
        reach[a], reach[b] = size[a] * c + size[b] * s, size[a] * s + size[b] * c
        at = [
            min(max(centre[j], low[j] + reach[j] / 2), low[j] + way.size[j] - reach[j] / 2)
            for j in range(3)
        ]
        at[2] = low[2] + reach[2] / 2
        centre = (at[0], at[1], at[2])
        poses.append(Pose(centre, size, axis, math.degrees(angle)))
    return poses


def _settle(
    piece: Piece, poses: Sequence[Pose], turns: Sequence[Size], way: Entrance
) -> tuple[Pose, ...]:
    """The rest of the way: the turns inside, then sideways, back and down or up to its place."""
    found = list(poses)
    for size in turns:
        last = found[-1]
        k = next(i for i in range(3) if size[i] == last.size[i] and _swapped(last.size, size, i))
        found += _turn(last.size, AXES[k], 0.0, math.pi / 2, way, last.centre)
        found.append(Pose(found[-1].centre, size))
    b = piece.box
    goal = ((b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2, (b.z0 + b.z1) / 2)
    _, y, z = found[-1].centre
    # lifted off the floor or let down only where it stands, so that nothing is dragged
    for place in ((goal[0], y, z), (goal[0], goal[1], z), goal):
        if place != found[-1].centre:
            found.append(Pose(place, piece.size))
    return tuple(found)


def _swapped(a: Size, b: Size, k: int) -> bool:
    i, j = (n for n in range(3) if n != k)
    return a[i] == b[j] and a[j] == b[i]


def _remedy(piece: Piece, way: Entrance, figures: Figures) -> str:
    """What would let the piece in."""
    size = piece.size
    long = max(range(3), key=lambda i: size[i])
    upright = tilt_diagonal(size[2], min(size[0], size[1]))

    def passes(length: float) -> bool:
        b = piece.box
        high = [b.x1, b.y1, b.z1]
        high[long] -= size[long] - length
        box = Box(b.x0, b.y0, b.z0, high[0], high[1], high[2])
        return _way(Piece(piece.name, box), way) is not None

    ideas = []
    if piece.in_parts:
        ideas.append("assemble it inside")
    fits = largest_that(passes, size[long] / 4, size[long], 5.0)
    if fits:
        what = ("width", "depth", "height")[long]
        ideas.append(
            f"make its {what} {figures.length(size[long] - fits)} less"
            if size[long] - fits < 300.0
            else f"split its {what} into pieces of {figures.length(fits)} or less"
        )
    if long == 2 and upright > way.size[2]:
        ideas.append(
            f"its diagonal of {figures.length(upright)} does not go up under "
            f"{figures.length(way.size[2])}: put it on a base of its own"
        )
    return "; or ".join(ideas) or "make it smaller"
