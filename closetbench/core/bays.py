"""What hangs between the verticals: fixed shelves, loose shelves and the rows for them."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, field
from itertools import pairwise

from closetbench.core.component import bands_for, fastener_count, require
from closetbench.core.errors import ClosetError
from closetbench.core.findings import Finding, Severity
from closetbench.core.frame import NAIL, PIN, PINS, SCREW, SHORT_SCREW, Frame, Vertical
from closetbench.core.joinery import Joint
from closetbench.core.panel import Face, Grain, Groove, HoleRow, Notch, Panel, Rim
from closetbench.core.parts import FACING, LYING, LYING_DEEP, HardwareNeed, Part, Place, Role
from closetbench.core.specs import BackKind

LEAST_CLEAR = 40.0
"""Least clear height above or below a shelf, mm: common practice, no published source."""

END_CLEAT_HEIGHT = 30.0
END_CLEAT_SETBACK = 20.0
LIP_SCREW = "screw_4x40"
CLEAT_PLAY = 0.5
"""A shelf that drops onto cleats is this much short at each end, mm."""

Grooves = dict[int, list[Groove]]
Holes = dict[int, list[HoleRow]]


@dataclass
class Shelves:
    """The parts, the hardware and the doubts of shelves."""

    parts: list[Part] = field(default_factory=list)
    hardware: list[HardwareNeed] = field(default_factory=list)
    findings: list[Finding] = field(default_factory=list)


def shelf_heights(frame: Frame, bay: int) -> tuple[float, ...]:
    """Undersides of a bay's fixed shelves above the bay's floor, rising.

    Spread to equal clear heights unless the heights are given. Raises ``ClosetError``
    where a shelf leaves less than ``LEAST_CLEAR`` above or below itself.
    """
    spec, t = frame.spec.bays[bay - 1], frame.t
    subject = f"{frame.spec.name}, bay {bay}"
    clear = frame.z_ceiling - frame.z_floor
    count = len(spec.heights) or spec.fixed
    least = LEAST_CLEAR + frame.hang
    if count < 0 or spec.adjustable < 0:
        raise ClosetError(subject, "number of shelves", min(count, spec.adjustable),
                          "must be 0 or more")
    if spec.heights and spec.fixed not in (0, count):
        raise ClosetError(
            subject, "fixed shelves", spec.fixed,
            f"must be {count}, the number of heights given, or leave the heights out",
        )
    if spec.heights:
        heights = tuple(sorted(spec.heights))
    else:
        gap = (clear - count * t) / (count + 1)
        if count and gap < least:
            most = math.floor((clear - least) / (t + least))
            raise ClosetError(
                subject, "fixed shelves", count,
                f"must be at most {most} to leave {LEAST_CLEAR:g} mm between them in "
                f"{clear:g} mm",
            )
        heights = tuple(gap + i * (gap + t) for i in range(count))
    low = 0.0
    for i, height in enumerate(heights, 1):
        require(
            subject, f"height of shelf {i}", height, low + least, clear - t - LEAST_CLEAR,
            "above the bay's floor",
        )
        low = height + t
    return heights


def build_shelves(frame: Frame, grooves: Grooves) -> Shelves:
    """The fixed shelves of all bays; their grooves are added to ``grooves`` by vertical."""
    found = Shelves()
    kind = frame.spec.shelf_joint
    for i in range(1, len(frame.openings) + 1):
        for k, height in enumerate(shelf_heights(frame, i), 1):
            z = frame.z_floor + height
            if kind is Joint.GROOVE:
                for vertical, face in _walls(frame, i):
                    grooves[vertical.index].append(Groove(
                        f"bay {i} shelf {k}", face, Rim.START, z - vertical.z0,
                        frame.rules.groove_width(frame.t), frame.groove_depth, frame.shelf_stop,
                    ))
            found.parts += _fixed_shelf(frame, i, k, z)
            found.hardware += _shelf_hardware(frame)
            found.hardware += _lip_screws(frame, found.parts[-1])
    if kind in (Joint.SCREWS, Joint.NAILS):
        found.findings += _level_shelves(frame)
    return found


def _level_shelves(frame: Frame) -> list[Finding]:
    """A doubt for each divider with shelves at one height on both sides: the first one in
    takes the place from which the second would be fastened."""
    heights = [shelf_heights(frame, i) for i in range(1, len(frame.openings) + 1)]
    return [
        Finding(
            Severity.WARNING, f"{frame.spec.name}, divider {i}", "level-shelves",
            "shelves lie level on both sides, so the second cannot be fastened straight through "
            "the divider: let shelves into grooves, carry them on cleats or set them off",
            "common practice, no published source", f"{frame.figures.small(min(apart))} apart",
            f"at least {frame.figures.small(frame.t)}",
        )
        for i, (left, right) in enumerate(pairwise(heights), 1)
        if (apart := [abs(a - b) for a in left for b in right]) and min(apart) < frame.t
    ]


def _walls(frame: Frame, bay: int) -> tuple[tuple[Vertical, Face], tuple[Vertical, Face]]:
    """The verticals left and right of a bay, each with the face that looks into it."""
    return (frame.verticals[bay - 1], Face.LOWER), (frame.verticals[bay], Face.UPPER)


def _fixed_shelf(frame: Frame, bay: int, k: int, z: float) -> list[Part]:
    spec, t = frame.spec, frame.t
    x0, x1 = frame.openings[bay - 1]
    name = f"bay {bay} shelf {k}"
    notches: tuple[Notch, ...] = ()
    y, ends = frame.lip_thickness, (x0, x1)
    if spec.shelf_joint is Joint.GROOVE:
        x0, x1 = x0 - frame.tongue, x1 + frame.tongue
        if frame.shelf_stop:
            dy = frame.shelf_stop + frame.rules.end_clearance - y
            notches = (
                Notch(Rim.START, Rim.FRONT, frame.tongue, dy),
                Notch(Rim.END, Rim.FRONT, frame.tongue, dy),
            )
    elif spec.shelf_joint is Joint.CLEATS:
        x0, x1 = x0 + CLEAT_PLAY, x1 - CLEAT_PLAY
        ends = x0, x1
    panel = Panel(
        x1 - x0, frame.y_panel - y, t, spec.material, frame.grain, (), (), notches,
        frame.shelf_bands, frozenset() if frame.lip else frozenset({Rim.FRONT}),
    )
    parts = [Part(name, spec.name, Role.FIXED_SHELF, panel, Place((x0, y, z), *LYING))]
    if spec.shelf_joint is Joint.CLEATS:
        parts += _end_cleats(frame, bay, name, z)
    return parts + _lip(frame, name, ends, 0.0, z)


def _lip(frame: Frame, name: str, ends: tuple[float, float], y: float, z: float) -> list[Part]:
    """The strip before a shelf whose underside is at ``z``, its front face at ``y``; its ends
    lie against what stands beside it."""
    board, spec = frame.lip, frame.spec
    if board is None:
        return []
    rims = (Rim.FRONT, Rim.REAR)
    panel = Panel(
        ends[1] - ends[0], spec.shelf_lip.height, board.thickness, board.key,
        Grain.LENGTH if board.grained else Grain.NONE,
        bands=bands_for(frame.catalogue, board.key, spec.shelf_band, rims, spec.name),
        visible=frozenset(rims),
    )
    place = Place((ends[0], y + board.thickness, z - frame.hang), *FACING)
    return [Part(f"{name} lip", spec.name, Role.LIP, panel, place)]


def _lip_screws(frame: Frame, part: Part) -> list[HardwareNeed]:
    if frame.lip is None:
        return []
    return [HardwareNeed(LIP_SCREW, fastener_count(part.panel.length, 400.0), "lips to shelves")]


def _end_cleats(frame: Frame, bay: int, name: str, z: float) -> list[Part]:
    """The two strips that carry a shelf at its ends."""
    t = frame.t
    x0, x1 = frame.openings[bay - 1]
    rear = frame.y_panel
    if frame.spec.back.kind is BackKind.CLEATS:
        rear -= t + CLEAT_PLAY
    front = max(END_CLEAT_SETBACK, frame.lip_thickness)
    panel = Panel(
        rear - front, END_CLEAT_HEIGHT, t, frame.spec.material, frame.grain
    )
    return [
        Part(
            f"{name} {side} end cleat", frame.spec.name, Role.CLEAT, panel,
            Place((x, front, z - panel.width), *LYING_DEEP),
        )
        for side, x in (("left", x0), ("right", x1 - t))
    ]


def _shelf_hardware(frame: Frame) -> list[HardwareNeed]:
    each = fastener_count(frame.y_panel)
    kind = frame.spec.shelf_joint
    if kind is Joint.SCREWS:
        return [HardwareNeed(SCREW, 2 * each, "fixed shelves to sides and dividers")]
    if kind is Joint.NAILS:
        return [HardwareNeed(NAIL, 2 * each, "fixed shelves to sides and dividers")]
    if kind is Joint.CLEATS:
        return [HardwareNeed(SHORT_SCREW, 2 * each, "end cleats to sides and dividers")]
    return []


def build_adjustable(frame: Frame, grooves: Grooves, holes: Holes) -> Shelves:
    """The loose shelves on pins; the rows of holes are added to ``holes`` by vertical.

    Each shelf goes into the highest free space of its bay. Holes that would meet a
    groove on the divider's other face are left out; where both faces of a divider need
    the same hole it is drilled right through.
    """
    found = Shelves()
    wanted: dict[tuple[int, Face], set[float]] = {}
    for i, bay in enumerate(frame.spec.bays, 1):
        if bay.adjustable:
            levels = _place_loose(frame, i, grooves)
            for k, z in enumerate(sorted(levels.shelves), 1):
                found.parts += _loose_shelf(frame, i, k, z)
                found.hardware += _lip_screws(frame, found.parts[-1])
            found.hardware.append(
                HardwareNeed(PIN, 4 * bay.adjustable, "adjustable shelves")
            )
            for vertical, face in _walls(frame, i):
                wanted.setdefault((vertical.index, face), set()).update(levels.holes)
    through = False
    for vertical in frame.verticals:
        both = wanted.get((vertical.index, Face.LOWER), set()) & wanted.get(
            (vertical.index, Face.UPPER), set())
        through = through or bool(both)
        for face in (Face.LOWER, Face.UPPER):
            blind = wanted.get((vertical.index, face), set()) - both
            holes[vertical.index] += _rows(frame, vertical, face, blind, frame.spec.drill.depth)
        holes[vertical.index] += _rows(frame, vertical, Face.LOWER, both, frame.t)
    if through:
        found.findings.append(Finding(
            Severity.NOTE, frame.spec.name, "holes-through",
            "dividers with loose shelves on both sides are drilled right through; the pins of "
            "both bays share the holes", "common practice, no published source",
        ))
    return found


@dataclass(frozen=True)
class _Levels:
    holes: tuple[float, ...]
    shelves: tuple[float, ...]


def _place_loose(frame: Frame, bay: int, grooves: Grooves) -> _Levels:
    """Heights of the holes and of the loose shelves' undersides in a bay."""
    drill, t = frame.spec.drill, frame.t
    subject = f"{frame.spec.name}, bay {bay}"
    limits = [
        frame.z_floor,
        *(z for h in shelf_heights(frame, bay) for z in (frame.z_floor + h, frame.z_floor + h + t)),
        frame.z_ceiling,
    ]
    spaces = [(limits[i], limits[i + 1]) for i in range(0, len(limits), 2)]
    shares = [0] * len(spaces)
    for _ in range(frame.spec.bays[bay - 1].adjustable):
        clear = [(b - a - n * t) / (n + 1) for (a, b), n in zip(spaces, shares, strict=True)]
        shares[clear.index(max(clear))] += 1
    holes: list[float] = []
    shelves: list[float] = []
    for (a, b), count in zip(spaces, shares, strict=True):
        if not count:
            continue
        first = math.ceil((a + drill.margin - frame.z_floor) / drill.pitch - 1e-9)
        last = math.floor((b - drill.margin - frame.z_floor) / drill.pitch + 1e-9)
        grid = [frame.z_floor + n * drill.pitch for n in range(first, last + 1)]
        free = [z for z in grid if not _meets_groove(frame, bay, z, grooves)]
        gap = (b - a - count * t) / (count + 1)
        ideal = [a + gap + j * (gap + t) for j in range(count)]
        pins = [z + drill.diameter / 2 for z in free]
        undersides = [_nearest(pins, at) for at in ideal] if pins else []
        tops = [a, *(z + t for z in undersides)]
        if len(undersides) < count or any(
            above - below < LEAST_CLEAR + (frame.hang if above != frame.z_ceiling else 0.0)
            for below, above in zip(tops, [*undersides, b], strict=True)
        ):
            raise ClosetError(
                subject, "adjustable shelves", frame.spec.bays[bay - 1].adjustable,
                f"must be fewer: {b - a:g} mm of clear height with {len(free)} usable holes "
                f"leave less than {LEAST_CLEAR:g} mm between shelves",
            )
        holes += free
        shelves += undersides
    return _Levels(tuple(holes), tuple(shelves))


def _nearest(values: list[float], at: float) -> float:
    return min(values, key=lambda value: abs(value - at))


def _meets_groove(frame: Frame, bay: int, z: float, grooves: Grooves) -> bool:
    """Whether a hole at this height would come too near a groove on a divider's far face."""
    r = frame.spec.drill.diameter / 2
    return any(
        groove.face is face.other
        and groove.offset - r < z - vertical.z0 < groove.offset + groove.width + r
        for vertical, face in _walls(frame, bay)
        for groove in grooves[vertical.index]
    )


def _row_depths(frame: Frame) -> tuple[float, float]:
    """Distance of the front and the rear row from the front edges."""
    drill = frame.spec.drill
    _, rear = _loose_reach(frame)
    steps = math.floor((rear - drill.rear - drill.front) / drill.pitch + 1e-9)
    if steps < 1:
        short = drill.front + drill.rear + drill.pitch - rear
        raise ClosetError(
            frame.spec.name, "depth", f"{frame.depth:g} mm",
            f"must be at least {frame.depth + short:g} mm for two rows of holes under loose "
            "shelves",
        )
    return drill.front, drill.front + steps * drill.pitch


def _rows(
    frame: Frame, vertical: Vertical, face: Face, levels: Iterable[float], depth: float
) -> list[HoleRow]:
    """Rows over these heights, parted where the grid has been left open."""
    drill = frame.spec.drill
    runs: list[list[float]] = []
    for z in sorted(levels):
        if runs and z - runs[-1][-1] < 1.5 * drill.pitch:
            runs[-1].append(z)
        else:
            runs.append([z])
    return [
        HoleRow(
            PINS, face, run[0] - vertical.z0, y, drill.diameter, depth, len(run),
            drill.pitch,
        )
        for run in runs for y in _row_depths(frame)
    ]


def _loose_reach(frame: Frame) -> tuple[float, float]:
    """Front and rear of a loose shelf: it clears the back, or the cleats."""
    drill = frame.spec.drill
    cleats = frame.t if frame.spec.back.kind is BackKind.CLEATS else 0.0
    return drill.setback, frame.y_panel - cleats - drill.setback


def _loose_shelf(frame: Frame, bay: int, k: int, z: float) -> list[Part]:
    drill = frame.spec.drill
    x0, x1 = frame.openings[bay - 1]
    front, rear = _loose_reach(frame)
    x0, x1, y = x0 + drill.play / 2, x1 - drill.play / 2, front + frame.lip_thickness
    panel = Panel(
        x1 - x0, rear - y, frame.t, frame.spec.material, frame.grain, (), (), (),
        frame.shelf_bands, frozenset() if frame.lip else frozenset({Rim.FRONT}),
    )
    name = f"bay {bay} loose shelf {k}"
    part = Part(
        name, frame.spec.name, Role.ADJUSTABLE_SHELF, panel, Place((x0, y, z), *LYING))
    return [part, *_lip(frame, name, (x0, x1), front, z)]
