"""A bench: a frame of lumber on posts, a boarded top, a face, a lid if wanted.

Long rails run from end to end over trestles; each trestle is a front and a rear post with a
bearer between them for the slides of a pull-out. Worked out in a frame of its own (x from
the left end of the top, y from its front edge, z from what it stands on).
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from closetbench.core.bench_parts import BenchFrame, build_bench_parts, lid_count
from closetbench.core.bench_strength import Bench
from closetbench.core.component import Bay, Component, box_around, fastener_count, require
from closetbench.core.errors import ClosetError
from closetbench.core.figures import GRAVITY, Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.inside import Site, Spot
from closetbench.core.materials import Catalogue
from closetbench.core.moves import Swing, Turn
from closetbench.core.panel import Box
from closetbench.core.parts import HardwareNeed, Part, Role

PLAY = 2.0
"""What a bench between two sides leaves free at each, mm: common practice, no published
source."""
SEAT = (380.0, 530.0)
"""Heights of seats that people sit on well, mm: common practice, no published source."""
BRACKET, BEARER_SCREW, TOP_SCREW, FACE_SCREW = (
    "angle_bracket_60", "screw_5x90", "screw_4x30", "screw_4x50",
)
LID_OPENS, LID_NEEDS = 95.0, 75.0
"""Degrees that a lid opens to, and without which it falls shut."""


class Lay(Enum):
    """How the long rails lie."""

    UPRIGHT = "upright"
    FLAT = "flat"


class BenchFace(Enum):
    """What closes a bench at the front."""

    NONE = "none"
    APRON = "apron"
    """A board before the front rail."""
    FULL = "full"
    """A board from the floor to the top."""


class TopRun(Enum):
    """Which way the boards of the top run."""

    ALONG = "along the bench"
    ACROSS = "from front to rear"


@dataclass(frozen=True)
class BenchSpec:
    """A bench, in a bay of a carcass or free in the envelope.

    ``name``: the component's name.
    ``spot``: the bay that it stands in, None to stand free.
    ``x``: its left end's distance from the envelope's left, None beside what stands there.
    ``width``: over its top, None takes what is left.
    ``depth``: over its top, None takes what is there; it stands at the rear.
    ``height``: of its seat above what it stands on.
    ``material``: key of the members' lumber.
    ``member``: width of the members as sawn, None takes the board's own.
    ``lay``: how the long rails lie.
    ``rails``: number of long rails, the front and the rear one included.
    ``bays``: number of openings under it, posts between them.
    ``top``: key of the top's board.
    ``top_run``: which way the top's grain runs; from front to rear it is strong between rails.
    ``overhang``: how far the top reaches over the frame and its face at the front.
    ``overhang_ends``: how far it reaches over the frame at both ends.
    ``face``: what closes it at the front.
    ``face_material``: key of the face's board, None takes the top's.
    ``lid``: the top is a lid, hinged to a strip at the rear.
    ``strip``: width of that strip.
    ``lid_support``: supports hold the lid at any height.
    ``vents``: two openings let air in with the lid shut.
    """

    name: str
    spot: Spot | None = None
    x: float | None = None
    width: float | None = None
    depth: float | None = None
    height: float = 450.0
    material: str = "stud_2x4"
    member: float | None = None
    lay: Lay = Lay.UPRIGHT
    rails: int = 3
    bays: int = 1
    top: str = "pine_glued27"
    top_run: TopRun = TopRun.ACROSS
    overhang: float = 20.0
    overhang_ends: float = 0.0
    face: BenchFace = BenchFace.NONE
    face_material: str | None = None
    lid: bool = False
    strip: float = 100.0
    lid_support: bool = True
    vents: bool = False


def build_bench(spec: BenchSpec, site: Site, catalogue: Catalogue) -> Component:
    """The bench in the closet's frame; ``ClosetError`` for what cannot be built."""
    frame, origin = _frame(spec, site, catalogue)
    found = build_bench_parts(frame)
    parts = tuple(_moved(p, origin) for p in found)
    x, y, z = origin
    bays = tuple(
        Bay(f"bay {i}", Box(x + a, y + frame.y_front, z, x + b, y + frame.depth, z + frame.clear))
        for i, (a, b) in enumerate(frame.openings, 1)
    )
    moves: tuple[Swing, ...] = ()
    if spec.lid:
        lid = [p for p in parts if p.role is Role.LID]
        moves = (Swing(
            "lid", frozenset(p.name for p in lid), box_around(lid), Turn.UP, LID_OPENS, LID_NEEDS
        ),)
    return Component(
        spec.name, parts, box_around(parts), _hardware(spec, frame),
        _findings(spec, frame, site.figures), bays,
        moves=moves, board=frame.face_board.key, laps=(0.0, frame.rail_high),
        checked=(_to_check(spec, frame),),
    )


def _frame(
    spec: BenchSpec, site: Site, catalogue: Catalogue
) -> tuple[BenchFrame, tuple[float, float, float]]:
    """The bench's figures and where its own frame begins in the closet's."""
    name = spec.name
    if spec.spot is not None:
        if spec.x is not None:
            raise ClosetError(
                name, "distance from the left", f"{spec.x:g} mm",
                f"must be left open: it stands in {spec.spot.carcass}",
            )
        box = site.opening(spec.spot, name).box
        left, room = box.x0 + PLAY, box.x1 - box.x0 - 2 * PLAY
    else:
        e = site.envelope
        left = site.free if spec.x is None else spec.x
        require(name, "distance from the left", left, 0.0, e.width, "in the envelope")
        box, room = Box(left, 0.0, 0.0, e.width, e.depth, e.height), e.width - left
    width = room if spec.width is None else spec.width
    depth = box.y1 - box.y0 if spec.depth is None else spec.depth
    require(name, "width", width, 200.0, room, "beside what stands there")
    require(name, "depth", depth, 150.0, box.y1 - box.y0, "to fit in")
    require(name, "height", spec.height, 150.0, box.z1 - box.z0, "to fit in")
    require(name, "overhang", spec.overhang, 0.0, 150.0)
    require(name, "overhang at the ends", spec.overhang_ends, 0.0, 150.0)
    for prop, count, low, high in (("rails", spec.rails, 2, 8), ("bays", spec.bays, 1, 8)):
        if not low <= count <= high:
            raise ClosetError(name, prop, count, f"must be {low} to {high}")
    if spec.lid and spec.rails != 2:
        raise ClosetError(
            name, "rails", spec.rails, "must be 2 under a lid: what lies between is in the way"
        )
    board = catalogue.material(spec.material, subject=name)
    wide = max((s.width for s in board.sheets), default=0.0) if board.by_length else 90.0
    member = wide if spec.member is None else spec.member
    require(name, "width of the members", member, board.thickness,
            wide if board.by_length else 300.0, f"from {board.title}")
    top = catalogue.material(spec.top, subject=name)
    face = catalogue.material(spec.face_material or spec.top, subject=name)
    flat = spec.lay is Lay.FLAT
    frame = BenchFrame(
        name, width, depth, spec.height, board, member, flat, spec.rails, spec.bays, top,
        spec.top_run is TopRun.ALONG, spec.overhang, spec.overhang_ends, face,
        face.thickness if spec.face is not BenchFace.NONE else 0.0,
        spec.face is BenchFace.FULL, spec.strip if spec.lid else 0.0,
    )
    require(name, "clear height under the rails", frame.clear, member + 40.0, spec.height)
    require(name, "depth between front and rear post", frame.bearer_length, 60.0, depth,
            "to carry slides")
    if frame.top_span < frame.rail_deep - 1e-6:
        most = int((depth - frame.y_front) / frame.rail_deep)
        raise ClosetError(
            name, "rails", spec.rails, f"must be at most {most} to lie side by side in this depth"
        )
    for i, (a, b) in enumerate(frame.openings, 1):
        require(f"{name}, bay {i}", "width", b - a, 100.0, width)
    if spec.lid:
        require(name, "strip behind the lid", spec.strip, 40.0, depth / 2)
    return frame, (left, box.y1 - depth, box.z0)


def _moved(part: Part, origin: tuple[float, float, float]) -> Part:
    return Part(part.name, part.component, part.role, part.panel, part.place.moved(*origin))


def _hardware(spec: BenchSpec, frame: BenchFrame) -> tuple[HardwareNeed, ...]:
    trestles = frame.bays + 1
    needs = [
        HardwareNeed(BRACKET, 2 * frame.rails * trestles, "bench rails to trestles"),
        HardwareNeed(BEARER_SCREW, 4 * len(frame.bearers) * trestles, "bearers to posts"),
    ]
    if not spec.lid:
        count = frame.rails * fastener_count(frame.width, 300.0)
        needs.append(HardwareNeed(TOP_SCREW, count, "bench top to rails"))
    else:
        needs.append(HardwareNeed("butt_hinge_60", max(2, round(frame.width / 500.0) + 1), "lid"))
        if spec.lid_support:
            needs.append(HardwareNeed("lid_support", 2, "lid"))
    if spec.face is not BenchFace.NONE:
        count = 2 * fastener_count(frame.width, 300.0)
        needs.append(HardwareNeed(FACE_SCREW, count, "bench face"))
    return tuple(needs)


def _findings(spec: BenchSpec, frame: BenchFrame, form: Figures) -> tuple[Finding, ...]:
    found = []
    if not SEAT[0] <= spec.height <= SEAT[1]:
        found.append(Finding(
            Severity.NOTE, spec.name, "seat-height",
            "is higher or lower than people sit well on", "common practice, no published source",
            form.length(spec.height), f"{form.length(SEAT[0])} to {form.length(SEAT[1])}",
        ))
    if spec.lid and lid_count(frame) > 1:
        found.append(Finding(
            Severity.NOTE, spec.name, "lid-battens",
            "its lid is glued up of boards: screw two battens under it through slotted holes, or "
            "it cups", "common practice, no published source",
        ))
    return tuple(found)


def _to_check(spec: BenchSpec, frame: BenchFrame) -> Bench:
    """The bench as the checks of strength and of lids take it."""
    closed = spec.lid and spec.face is BenchFace.FULL
    lid = frame.top.density * 1e-9 * frame.top.thickness * frame.width * frame.lid_depth
    turns = lid * GRAVITY * frame.lid_depth / 2 if spec.lid else None
    inside = (frame.depth - frame.y_front) * frame.frame_width * frame.z_top * 1e-6
    return Bench(
        spec.name, spec.material, frame.pitch, frame.rails, frame.rail_deep, frame.rail_high,
        spec.top, frame.top_span, not frame.along, lid=spec.lid, lid_support=spec.lid_support,
        vents=spec.vents, volume=inside if closed else 0.0, lid_turns=turns,
    )
