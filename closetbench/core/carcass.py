"""The carcass: sides, dividers, top, bottom, back and base from its specification.

Worked out in a frame of its own (x from the left side's outer face, y from the front
edges, z from the floor it stands on), then moved to its place in the envelope.
Shelves are in ``bays``, base and back in ``base``.
"""

from __future__ import annotations

from dataclasses import replace

from closetbench.core import base as base_parts
from closetbench.core import bays as bay_parts
from closetbench.core.component import (
    Bay,
    Component,
    Space,
    bands_for,
    fastener_count,
    require,
)
from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.frame import LEAST_OPENING, NAIL, SCREW, Frame, Vertical
from closetbench.core.joinery import Joint, check_panel, rabbet
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Box, Face, Groove, HoleRow, Notch, Panel, Rim
from closetbench.core.parts import LYING, STANDING_ACROSS, HardwareNeed, Part, Place, Role
from closetbench.core.specs import BackKind, BaseKind, CarcassSpec, TopKind


def build_carcass(
    spec: CarcassSpec, space: Space, catalogue: Catalogue, figures: Figures | None = None
) -> Component:
    """All parts of a carcass in the envelope's frame; ``figures`` prints its findings'.

    Raises ``ClosetError`` (with the carcass, the property, the value and the limit) for
    whatever cannot be built; what can be built and yet deserves a thought comes back as
    findings.
    """
    frame, x, y = _frame(spec, space, catalogue, figures or Figures())
    grooves: dict[int, list[Groove]] = {v.index: [] for v in frame.verticals}
    holes: dict[int, list[HoleRow]] = {v.index: [] for v in frame.verticals}
    shelves = bay_parts.build_shelves(frame, grooves)
    loose = bay_parts.build_adjustable(frame, grooves, holes)
    back = base_parts.build_back(frame, shelves.parts)
    parts = [
        *base_parts.build_base(frame),
        *_verticals(frame, grooves, holes),
        *_bottom_and_top(frame),
        *shelves.parts,
        *loose.parts,
        *back.parts,
    ]
    for part in parts:
        check_panel(part.panel, part.full_name, spec.rules)
    findings = (*shelves.findings, *loose.findings, *back.findings, *_findings(frame))
    hardware = (*_fasteners(frame), *shelves.hardware, *loose.hardware, *back.hardware)
    return Component(
        spec.name,
        tuple(replace(p, place=p.place.moved(x, y, 0.0)) for p in parts),
        Box(x, y, 0.0, x + frame.width, y + frame.depth, frame.height),
        hardware,
        findings,
        tuple(
            Bay(f"bay {i}", Box(
                x + x0, y, frame.z_floor, x + x1, y + frame.y_inside, frame.z_ceiling
            ))
            for i, (x0, x1) in enumerate(frame.openings, 1)
        ),
    )


def _frame(
    spec: CarcassSpec, space: Space, catalogue: Catalogue, figures: Figures
) -> tuple[Frame, float, float]:
    """The figures of the carcass and its left and front position in the envelope."""
    name = spec.name
    board = catalogue.material(spec.material, subject=name)
    t = board.thickness
    x = space.x if spec.x is None else spec.x
    right = space.x + space.width
    require(name, "distance from the left", x, space.x, right, "beside what stands there")
    left_over = right - x
    width = left_over if spec.width is None else spec.width
    height = space.height if spec.height is None else spec.height
    depth = space.depth if spec.depth is None else spec.depth
    fits = "to fit the envelope"
    require(name, "width", width, 2 * t + LEAST_OPENING, left_over, fits)
    lift = 0.0
    if spec.base.kind is not BaseKind.NONE:
        lift = require(name, "base height", spec.base.height, 20.0, 400.0)
    require(name, "height", height, lift + 2 * t + 100.0, space.height, fits)
    require(name, "depth", depth, 100.0, space.depth, fits)
    if spec.joint is Joint.CLEATS:
        raise ClosetError(
            name, "joint", spec.joint.value, "must be groove, screws or nails; cleats carry shelves"
        )
    if not spec.bays:
        raise ClosetError(name, "bays", "0", "must be 1 or more")
    band = bands_for(catalogue, spec.material, spec.band, (Rim.FRONT,), name)
    stop = spec.groove_stop
    if stop is None:
        stop = 10.0 if band else 0.0
    behind = band[0].thickness if band and stop else 0.0
    require(name, "groove stop", stop, behind, depth / 2, "(0 runs through the edge band)")
    frame = Frame(spec, catalogue, board, width, height, depth, band, stop, figures)
    y = space.depth - depth if spec.against_back else 0.0
    return frame, x, y


def _verticals(
    frame: Frame, grooves: dict[int, list[Groove]], holes: dict[int, list[HoleRow]]
) -> list[Part]:
    parts = []
    for vertical in frame.verticals:
        own = [*_case_grooves(frame, vertical), *grooves[vertical.index]]
        notches: tuple[Notch, ...] = ()
        base = frame.spec.base
        if vertical.is_side:
            if base.kind is BaseKind.TOE_KICK and base.setback:
                notches = (Notch(Rim.START, Rim.FRONT, base.height, base.setback),)
        elif frame.let_in and frame.stop:
            dy = frame.stop + frame.rules.end_clearance
            notches = (Notch(Rim.START, Rim.FRONT, frame.tongue, dy),)
            if frame.spec.top is TopKind.BETWEEN:
                notches += (Notch(Rim.END, Rim.FRONT, frame.tongue, dy),)
        panel = Panel(
            vertical.z1 - vertical.z0, vertical.depth, frame.t, frame.spec.material,
            frame.grain, tuple(own), tuple(holes[vertical.index]), notches,
            frame.band, frozenset({Rim.FRONT}),
        )
        place = Place((vertical.x + frame.t, 0.0, vertical.z0), *STANDING_ACROSS)
        role = Role.SIDE if vertical.is_side else Role.DIVIDER
        parts.append(Part(vertical.name, frame.spec.name, role, panel, place))
    return parts


def _case_grooves(frame: Frame, vertical: Vertical) -> list[Groove]:
    """The cuts in a side for bottom, top and back."""
    if not vertical.is_side:
        return []
    spec, depth = frame.spec, frame.groove_depth
    face = Face.LOWER if vertical.index == 0 else Face.UPPER
    cuts = []
    if frame.let_in:
        offset = frame.z_bottom - vertical.z0
        if offset == 0.0:
            cuts.append(rabbet("bottom", face, Rim.START, frame.t, depth))
        else:
            width = frame.rules.groove_width(frame.t)
            cuts.append(Groove("bottom", face, Rim.START, offset, width, depth))
        if spec.top is TopKind.BETWEEN:
            cuts.append(rabbet("top", face, Rim.END, frame.t, depth))
        cuts = [replace(c, stop_first=frame.stop) for c in cuts]
    if frame.back is not None:
        width = frame.rules.groove_width(frame.back.thickness)
        cuts.append(Groove("back", face, Rim.REAR, spec.back.inset, width, depth))
    return cuts


def _bottom_and_top(frame: Frame) -> list[Part]:
    spec, t = frame.spec, frame.t
    reach = frame.tongue if frame.let_in else 0.0
    x0, x1 = t - reach, frame.width - t + reach
    notches: tuple[Notch, ...] = ()
    if frame.let_in and frame.stop:
        dy = frame.stop + frame.rules.end_clearance
        notches = (
            Notch(Rim.START, Rim.FRONT, reach, dy), Notch(Rim.END, Rim.FRONT, reach, dy)
        )

    def board(name: str, role: Role, face: Face, left: float, right: float, z: float) -> Part:
        grooves: list[Groove] = []
        over = left == 0.0
        if frame.let_in and not over:
            grooves += [
                Groove(
                    v.name, face, Rim.START, v.x - left, frame.rules.groove_width(t),
                    frame.groove_depth, frame.stop,
                )
                for v in frame.verticals if not v.is_side
            ]
        if frame.back is not None:
            # under a top that lies over the sides the groove would show at the ends
            stop = t - frame.groove_depth if over else 0.0
            grooves.append(Groove(
                "back", face, Rim.REAR, spec.back.inset,
                frame.rules.groove_width(frame.back.thickness), frame.groove_depth, stop, stop,
            ))
        panel = Panel(
            right - left, frame.depth, t, spec.material, frame.grain, tuple(grooves), (),
            () if over else notches, frame.band, frozenset({Rim.FRONT}),
        )
        return Part(name, spec.name, role, panel, Place((left, 0.0, z), *LYING))

    parts = [board("bottom", Role.BOTTOM, Face.UPPER, x0, x1, frame.z_bottom)]
    if spec.top is TopKind.BETWEEN:
        parts.append(board("top", Role.TOP, Face.LOWER, x0, x1, frame.height - t))
    elif spec.top is TopKind.OVER:
        parts.append(board("top", Role.TOP, Face.LOWER, 0.0, frame.width, frame.height - t))
    return parts


def _fasteners(frame: Frame) -> list[HardwareNeed]:
    """Screws or nails of the case: bottom and top to each vertical, from outside."""
    spec = frame.spec
    joints = len(frame.verticals) * (1 if spec.top is TopKind.NONE else 2)
    each = fastener_count(frame.depth)
    key = NAIL if spec.joint is Joint.NAILS else SCREW
    needs = [HardwareNeed(key, joints * each, "bottom and top to sides and dividers")]
    if spec.base.kind is BaseKind.FRAME:
        members = base_parts.cross_members(frame)
        needs.append(HardwareNeed(SCREW, 4 * len(members), "base frame"))
        needs.append(HardwareNeed(SCREW, 2 * len(members), "carcass to base frame"))
    elif spec.base.kind is BaseKind.TOE_KICK:
        needs.append(HardwareNeed(SCREW, 8, "kick boards to sides"))
    return needs


def _findings(frame: Frame) -> list[Finding]:
    name, spec = frame.spec.name, frame.spec
    found: list[Finding] = []
    if spec.back.kind is BackKind.NONE:
        found.append(Finding(
            Severity.WARNING, name, "no-back",
            "nothing keeps the carcass square or takes the screws into the wall; add a back or "
            "cleats", "common practice, no published source",
        ))
    if not frame.stop and frame.band and (
        frame.let_in or (spec.shelf_joint is Joint.GROOVE and any(b.fixed for b in spec.bays))
    ):
        found.append(Finding(
            Severity.WARNING, name, "groove-through-band",
            "grooves run through the edge band at the front; stop them short of it",
            "Architectural Woodwork Standards, edition 1 (2009), 4.4.4.5",
            f"stop {frame.figures.length(frame.stop)}", "above 0",
        ))
    if frame.board.needs_band and not frame.band:
        found.append(Finding(
            Severity.WARNING, name, "raw-edge",
            f"the front edges show the raw core of {frame.board.title}; choose an edge band",
            "common practice, no published source",
        ))
    return found
