"""What a carcass stands on and what closes or braces it at the rear."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from closetbench.core.component import fastener_count, require
from closetbench.core.findings import Finding, Severity
from closetbench.core.frame import BACK_SCREW, SCREW, Frame
from closetbench.core.panel import Grain, Panel
from closetbench.core.parts import (
    FACING,
    FACING_UPRIGHT,
    LYING_DEEP,
    HardwareNeed,
    Part,
    Place,
    Role,
)
from closetbench.core.specs import BackKind, BaseKind, TopKind

AWS_STRIPS = "Architectural Woodwork Standards, edition 1 (2009), 4.4.18"
ANCHOR_THICKNESS = 12.7
ANCHOR_HEIGHT = 63.5
"""Least size of a strip for the screws into the wall: 1/2 x 2-1/2 in, in ``AWS_STRIPS``."""

MIDDLE_CLEAT_ABOVE = 1524.0
"""Bays higher than this get a cleat in the middle: 60 in, in ``AWS_STRIPS``."""

THIN_BACK = 6.5
"""A back up to this thick is held by short screws, mm."""


@dataclass(frozen=True)
class Back:
    """The parts, the hardware and the doubts of a back."""

    parts: tuple[Part, ...] = ()
    hardware: tuple[HardwareNeed, ...] = ()
    findings: tuple[Finding, ...] = ()


def build_base(frame: Frame) -> list[Part]:
    """The kick boards or the base frame."""
    spec, base = frame.spec, frame.spec.base
    if base.kind is BaseKind.NONE:
        return []
    key = base.material or spec.material
    board = frame.catalogue.material(key, subject=spec.name)
    t, grain = board.thickness, Grain.LENGTH if board.grained else Grain.NONE
    require(spec.name, "base setback", base.setback, 0.0, frame.depth - 2 * t - 50.0)

    def rail(name: str, role: Role, x0: float, x1: float, y: float) -> Part:
        # facing the front, so the panel's thickness grows from the rear face forward
        panel = Panel(x1 - x0, base.height, t, key, grain)
        return Part(name, spec.name, role, panel, Place((x0, y + t, 0.0), *FACING))

    if base.kind is BaseKind.TOE_KICK:
        x0, x1 = frame.t, frame.width - frame.t
        return [
            rail("front kick board", Role.TOE_KICK, x0, x1, base.setback),
            rail("rear kick board", Role.TOE_KICK, x0, x1, frame.depth - t),
        ]
    parts = [
        rail("base front rail", Role.BASE_FRAME, 0.0, frame.width, base.setback),
        rail("base rear rail", Role.BASE_FRAME, 0.0, frame.width, frame.depth - t),
    ]
    length = frame.depth - base.setback - 2 * t
    for i, x in enumerate(cross_members(frame), 1):
        panel = Panel(length, base.height, t, key, grain)
        place = Place((x, base.setback + t, 0.0), *LYING_DEEP)
        parts.append(Part(f"base cross member {i}", spec.name, Role.BASE_FRAME, panel, place))
    return parts


def cross_members(frame: Frame) -> tuple[float, ...]:
    """Left faces of the cross members: one at each end, the others evenly between, so
    that no clear distance is wider than the base's spacing."""
    base = frame.spec.base
    t = frame.catalogue.material(
        base.material or frame.spec.material, subject=frame.spec.name
    ).thickness
    require(frame.spec.name, "spacing of the base's cross members", base.spacing, 100.0, 1200.0)
    fields = max(1, math.ceil((frame.width - t) / (base.spacing + t) - 1e-9))
    step = (frame.width - t) / fields
    return tuple(i * step for i in range(fields + 1))


def build_back(frame: Frame, shelves: Sequence[Part]) -> Back:
    """The back panel in its grooves, or the cleats."""
    if frame.spec.back.kind is BackKind.PANEL:
        return _panel_back(frame)
    if frame.spec.back.kind is BackKind.CLEATS:
        return _cleats(frame, shelves)
    return Back()


def _panel_back(frame: Frame) -> Back:
    spec, board = frame.spec, frame.back
    assert board is not None
    reach = frame.tongue
    z0 = frame.z_floor - reach
    z1 = frame.z_ceiling + (0.0 if spec.top is TopKind.NONE else reach)
    ends = [frame.t - reach, *_splits(frame, z1 - z0), frame.width - frame.t + reach]
    parts = []
    for i, (x0, x1) in enumerate(pairwise(ends), 1):
        name = "back" if len(ends) == 2 else f"back {i}"
        rear = frame.y_inside + board.thickness
        upright = board.grained or z1 - z0 >= x1 - x0
        length, width = (z1 - z0, x1 - x0) if upright else (x1 - x0, z1 - z0)
        place = (
            Place((x1, rear, z0), *FACING_UPRIGHT) if upright
            else Place((x0, rear, z0), *FACING)
        )
        panel = Panel(
            length, width, board.thickness, board.key,
            Grain.LENGTH if board.grained else Grain.NONE,
        )
        parts.append(Part(name, spec.name, Role.BACK, panel, place))
    dividers = len(frame.verticals) - 2
    needs = [
        HardwareNeed(
            BACK_SCREW if board.thickness <= THIN_BACK else SCREW,
            dividers * fastener_count(z1 - z0, 300.0), "back to dividers"
        )
    ] if dividers else []
    return Back(tuple(parts), tuple(needs))


def _splits(frame: Frame, height: float) -> list[float]:
    """Where the back is parted, on the middle of dividers, so that a sheet yields it.

    The fewest pieces; where even one bay is too wide, the layout will say so.
    """
    board = frame.back
    assert board is not None
    widest = 0.0
    for sheet in board.sheets:
        length, width = sheet.length - 2 * board.trim, sheet.width - 2 * board.trim
        if height <= length:
            widest = max(widest, width)
        if height <= width and not board.grained:
            widest = max(widest, length)
    middles = [v.x + frame.t / 2 for v in frame.verticals if not v.is_side]
    right = frame.width - frame.t + frame.tongue
    splits: list[float] = []
    start = frame.t - frame.tongue
    while right - start > widest:
        reachable = [m for m in middles if start < m <= start + widest]
        if not reachable:
            beyond = [m for m in middles if m > start]
            if not beyond:
                break
            reachable = beyond[:1]
        start = reachable[-1]
        splits.append(start)
    return splits


def _by(frame: Frame, thick: float, high: float) -> str:
    return f"{frame.figures.small(thick)} x {frame.figures.small(high)}"


def _cleats(frame: Frame, shelves: Sequence[Part]) -> Back:
    """Cleats between the verticals at the rear: top, bottom and, in a high bay, middle."""
    spec, t, high = frame.spec, frame.t, frame.spec.back.cleat_height
    clear = frame.z_ceiling - frame.z_floor
    require(spec.name, "cleat height", high, 40.0, clear / 3)
    parts: list[Part] = []
    findings: list[Finding] = []
    if high < ANCHOR_HEIGHT or t < ANCHOR_THICKNESS:
        findings.append(Finding(
            Severity.WARNING, spec.name, "small-cleats",
            "the cleats are too small for the screws into the wall", AWS_STRIPS,
            _by(frame, t, high), f"at least {_by(frame, ANCHOR_THICKNESS, ANCHOR_HEIGHT)}",
        ))
    for i, (x0, x1) in enumerate(frame.openings, 1):
        spans = sorted(
            (box.z0, box.z1)
            for box in (s.box() for s in shelves if s.role is Role.FIXED_SHELF)
            if box.x0 < (x0 + x1) / 2 < box.x1
        )
        levels = [("top", frame.z_ceiling - high), ("bottom", frame.z_floor)]
        if clear > MIDDLE_CLEAT_ABOVE:
            middle = _free_middle(frame, spans, high)
            if middle is None:
                findings.append(Finding(
                    Severity.WARNING, f"{spec.name}, bay {i}", "middle-cleat",
                    "no room for a cleat between the shelves near the middle of the bay",
                    AWS_STRIPS,
                    frame.figures.length(clear),
                    f"at most {frame.figures.length(MIDDLE_CLEAT_ABOVE)} without one",
                ))
            else:
                levels.insert(1, ("middle", middle))
        for name, z in levels:
            # a shelf may cross the level of a cleat only above or below it
            for z0, z1 in spans:
                if name != "middle" and z0 < z + high - 1e-6 and z1 > z + 1e-6:
                    require(
                        f"{spec.name}, bay {i}", "height of a fixed shelf",
                        z0 - frame.z_floor, high, clear - high - (z1 - z0),
                        f"above the bay's floor, clear of the {name} cleat",
                    )
            panel = Panel(x1 - x0, high, t, spec.material, frame.grain)
            place = Place((x0, frame.depth, z), *FACING)
            parts.append(
                Part(f"bay {i} {name} cleat", spec.name, Role.CLEAT, panel, place)
            )
    needs = (HardwareNeed(SCREW, 4 * len(parts), "cleats to sides and dividers"),)
    return Back(tuple(parts), needs, tuple(findings))


def _free_middle(
    frame: Frame, spans: Sequence[tuple[float, float]], high: float
) -> float | None:
    """Level of the middle cleat: under a shelf or free, as near the middle as it goes."""
    middle = (frame.z_floor + frame.z_ceiling - high) / 2
    taken = [
        (frame.z_floor, frame.z_floor + high), (frame.z_ceiling - high, frame.z_ceiling), *spans
    ]
    candidates = [middle, *(z0 - high for z0, _ in spans)]
    free = [
        z for z in candidates
        if all(z + high <= z0 + 1e-6 or z >= z1 - 1e-6 for z0, z1 in taken)
    ]
    return min(free, key=lambda z: abs(z - middle), default=None)
