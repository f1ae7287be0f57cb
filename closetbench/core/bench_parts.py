"""The figures of a bench and its parts, in the bench's own frame."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from closetbench.core.component import require
from closetbench.core.materials import Material
from closetbench.core.panel import Grain, Panel
from closetbench.core.parts import FACING, LYING, LYING_DEEP, STANDING_ACROSS, Part, Place, Role

JOINTED = 1.5
"""What jointing takes off each edge of a board before it is glued to the next, mm: common
practice, no published source."""
LID_GAP = 3.0
"""Between a lid and its strip, mm: below 5, so that no finger goes in (ASTM F963, hinge
clearance under 3/16 in or over 1/2 in, from memory)."""
ACROSS_DEEP = ((0.0, 1.0, 0.0), (-1.0, 0.0, 0.0))
"""Length into the depth, width to the left: boards from front to rear. UPPER faces up."""


@dataclass(frozen=True)
class BenchFrame:
    """What follows from a bench's sizes. ``face``: thickness of the face, 0 for none;
    ``strip``: width of the strip behind a lid, 0 for no lid; ``along``: the top's boards
    run along the bench."""

    name: str
    width: float
    depth: float
    height: float
    board: Material
    member: float
    flat: bool
    rails: int
    bays: int
    top: Material
    along: bool
    overhang: float
    overhang_ends: float
    face_board: Material
    face: float
    face_full: bool
    strip: float

    @property
    def t(self) -> float:
        """Thickness of the members."""
        return self.board.thickness

    @property
    def frame_width(self) -> float:
        """Width of the frame, without the top's overhang at the ends."""
        return self.width - 2 * self.overhang_ends

    @property
    def y_front(self) -> float:
        """Front of the posts."""
        return self.overhang + self.face

    @property
    def rail_high(self) -> float:
        """Height of a long rail as it lies."""
        return self.t if self.flat else self.member

    @property
    def rail_deep(self) -> float:
        """Width of a long rail as it lies, front to rear."""
        return self.member if self.flat else self.t

    @property
    def z_top(self) -> float:
        """Underside of the top."""
        return self.height - self.top.thickness

    @property
    def clear(self) -> float:
        """Clear height under the long rails."""
        return self.z_top - self.rail_high

    @property
    def bearer_length(self) -> float:
        """Between a front and a rear post."""
        return self.depth - self.y_front - 2 * self.member

    @property
    def pitch(self) -> float:
        """From the middle of one trestle to the next."""
        return (self.frame_width - self.t) / self.bays

    @property
    def trestles(self) -> tuple[float, ...]:
        """Left faces of the trestles."""
        return tuple(self.overhang_ends + i * self.pitch for i in range(self.bays + 1))

    @property
    def openings(self) -> tuple[tuple[float, float], ...]:
        """Left and right end of each opening between two trestles."""
        return tuple((a + self.t, b) for a, b in pairwise(self.trestles))

    @property
    def bearers(self) -> tuple[tuple[str, float], ...]:
        """Name and lower edge of each bearer of a trestle: one under the rails where some lie
        between front and rear, one for slides in the middle of the height where there is
        room for it."""
        found = []
        under = self.clear - self.member
        middle = (self.clear - self.member) / 2
        if self.rails > 2:
            found.append(("rail bearer", under))
        if self.rails == 2 or middle + self.member <= under:
            found.append(("slide bearer", middle))
        return tuple(found)

    @property
    def rail_fronts(self) -> tuple[float, ...]:
        """Front faces of the long rails."""
        step = (self.depth - self.y_front - self.rail_deep) / (self.rails - 1)
        return tuple(self.y_front + i * step for i in range(self.rails))

    @property
    def top_span(self) -> float:
        """From the middle of one long rail to the next."""
        a, b = self.rail_fronts[:2]
        return b - a

    @property
    def lid_depth(self) -> float:
        """Of the top in front of its strip; of the whole top where there is no lid."""
        return self.depth - self.strip - LID_GAP if self.strip else self.depth


def lid_count(frame: BenchFrame) -> int:
    """Boards that a lid is glued up of."""
    return len(_strips(frame, frame.lid_depth if frame.along else frame.width))


def build_bench_parts(frame: BenchFrame) -> list[Part]:
    """Posts, bearers, rails, top and face."""
    return [*_trestles(frame), *_rails(frame), *_top(frame), *_face(frame)]


def _member(frame: BenchFrame, name: str, length: float, place: Place) -> Part:
    board = frame.board
    if board.by_length:
        longest = max(s.length for s in board.sheets)
        require(f"{frame.name}: {name}", "length", length, 1.0, longest, f"from {board.title}")
    panel = Panel(
        length, frame.member, board.thickness, board.key,
        Grain.LENGTH if board.grained else Grain.NONE,
    )
    return Part(name, frame.name, Role.BENCH_FRAME, panel, place)


def _trestles(frame: BenchFrame) -> Iterator[Part]:
    rear = frame.depth - frame.member
    for i, x in enumerate(frame.trestles, 1):
        for name, y in (("front post", frame.y_front), ("rear post", rear)):
            place = Place((x + frame.t, y, 0.0), *STANDING_ACROSS)
            yield _member(frame, f"{name} {i}", frame.clear, place)
        for name, z in frame.bearers:
            place = Place((x, frame.y_front + frame.member, z), *LYING_DEEP)
            yield _member(frame, f"{name} {i}", frame.bearer_length, place)


def _rails(frame: BenchFrame) -> Iterator[Part]:
    for i, y in enumerate(frame.rail_fronts, 1):
        start = (frame.overhang_ends, y, frame.clear)
        if frame.flat:
            place = Place(start, *LYING)
        else:
            place = Place((start[0], y + frame.rail_deep, start[2]), *FACING)
        yield _member(frame, f"rail {i}", frame.frame_width, place)


def _strips(frame: BenchFrame, total: float) -> tuple[tuple[float, float], ...]:
    """Where the boards of the top begin and end across their grain: one sheet, or as many
    equal boards as the stock's width asks for."""
    if not frame.top.by_length:
        return ((0.0, total),)
    usable = max(s.width for s in frame.top.sheets) - 2 * JOINTED
    count = math.ceil(total / usable - 1e-9)
    return tuple((i * total / count, (i + 1) * total / count) for i in range(count))


def _top(frame: BenchFrame) -> Iterator[Part]:
    role = Role.LID if frame.strip else Role.BENCH_TOP
    name = "lid" if frame.strip else "top"
    strips = _strips(frame, frame.lid_depth if frame.along else frame.width)
    for i, (a, b) in enumerate(strips, 1):
        label = name if len(strips) == 1 else f"{name} board {i}"
        yield _board(frame, label, role, (0.0, a, frame.width, b) if frame.along else (
            a, 0.0, b, frame.lid_depth))
    if frame.strip:
        yield _board(frame, "hinge strip", Role.BENCH_TOP, (
            0.0, frame.depth - frame.strip, frame.width, frame.depth), along=True)


def _board(
    frame: BenchFrame, name: str, role: Role, plan: tuple[float, float, float, float],
    along: bool | None = None,
) -> Part:
    x0, y0, x1, y1 = plan
    top = frame.top
    grain = Grain.LENGTH if top.grained else Grain.NONE
    if frame.along if along is None else along:
        panel = Panel(x1 - x0, y1 - y0, top.thickness, top.key, grain)
        place = Place((x0, y0, frame.z_top), *LYING)
    else:
        panel = Panel(y1 - y0, x1 - x0, top.thickness, top.key, grain)
        place = Place((x1, y0, frame.z_top), *ACROSS_DEEP)
    return Part(name, frame.name, role, panel, place)


def _face(frame: BenchFrame) -> Iterator[Part]:
    if not frame.face:
        return
    board = frame.face_board
    low = 0.0 if frame.face_full else frame.clear
    panel = Panel(
        frame.frame_width, frame.z_top - low, board.thickness, board.key,
        Grain.LENGTH if board.grained else Grain.NONE,
    )
    place = Place((frame.overhang_ends, frame.y_front, low), *FACING)
    yield Part("face", frame.name, Role.BENCH_FACE, panel, place)
