"""Fillers and mouldings over the gaps beside and above what stands in a closet, and what
levels it; ``covers`` works out each."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from closetbench.core.bodies import Body, Piece
from closetbench.core.component import Component, box_around, require
from closetbench.core.covers import LEAST_STRIP, Covers
from closetbench.core.envelope import Envelope, Wall
from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.filler_specs import Cover as Cover
from closetbench.core.filler_specs import FillersSpec as FillersSpec
from closetbench.core.filler_specs import Levelling as Levelling
from closetbench.core.gaps import Front, Gaps
from closetbench.core.joinery import JoineryRules, check_panel
from closetbench.core.levelling import LEAST_SHIM, shim_findings, shim_pieces, shims
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Box
from closetbench.core.parts import HardwareNeed, Role
from closetbench.core.room import Room

SHIM = "shim"


@dataclass(frozen=True)
class Around:
    """What else fillers have to meet: face frames, and by a frame's name the walls that its
    end stiles reach to; free benches; shelves over everything."""

    frames: tuple[Component, ...] = ()
    closed: Mapping[str, frozenset[Wall]] = field(default_factory=dict)
    units: tuple[Component, ...] = ()
    shelves: tuple[Component, ...] = ()


def build_fillers(
    spec: FillersSpec, carcasses: Sequence[Component], room: Room | None, envelope: Envelope,
    catalogue: Catalogue, figures: Figures | None = None, around: Around | None = None,
) -> Component:
    """Fillers, mouldings and shims of the carcasses, as a component of its own; ``around``:
    what else they have to meet.

    Raises ``ClosetError`` without readings or carcasses, and for what cannot be made.
    """
    if room is None:
        raise ClosetError(
            spec.name, "survey", "missing", "must be there: gaps follow from its readings"
        )
    if not carcasses:
        raise ClosetError(spec.name, "carcasses", "0", "must be 1 or more to have gaps beside")
    require(spec.name, "scribe allowance", spec.scribe, 0.0, 30.0)
    require(spec.name, "narrowest strip", spec.least, LEAST_STRIP, spec.most)
    require(spec.name, "overlap of a moulding", spec.overlap, 2.0, 30.0)
    others = around or Around()
    job = Covers(spec, Gaps(room, envelope), catalogue, figures or Figures())
    job.close_all([
        *(_front(c, others) for c in carcasses),
        *(Front(u.name, u.box, u.parts[-1].panel.material, 0.0, topped=False)
          for u in others.units),
    ])
    for carcass in carcasses:
        job.close_foot(carcass)
    for shelf in others.shelves:
        job.close_shelf(shelf)
    pieces: list[Piece] = []
    if spec.levelling is Levelling.SHIMS:
        for carcass in carcasses:
            places = shims(carcass, room, envelope)
            count = sum(s.thickness >= LEAST_SHIM for s in places)
            if count:
                job.needs.append(HardwareNeed(SHIM, 2 * count, f"levelling {carcass.name}"))
            pieces += shim_pieces(spec.name, carcass.name, places)
            job.findings += shim_findings(carcass.name, places, figures)
    for part in job.parts:
        check_panel(part.panel, part.full_name, JoineryRules())
    first = carcasses[0].box
    bodies: tuple[Body, ...] = (*job.parts, *pieces)
    box = box_around(bodies) if bodies else Box(
        first.x0, first.y0, first.z0, first.x0, first.y0, first.z0)
    return Component(
        spec.name, tuple(job.parts), box, tuple(job.needs), tuple(job.findings),
        pieces=tuple(pieces),
    )


def _front(carcass: Component, around: Around) -> Front:
    """Where a carcass's gaps start: at its front edges, or at its face frame's."""
    b = carcass.box
    side = next(p.panel for p in carcass.parts if p.role is Role.SIDE)
    topped = all(
        s.box.z0 > b.z1 + 1.0 or s.box.z1 < b.z1 - 1.0 or s.box.x1 < b.x0 or s.box.x0 > b.x1
        for s in around.shelves
    )
    frame = next((f for f in around.frames if f.frames == carcass.name), None)
    if frame is None:
        return Front(
            carcass.name, b, carcass.board or side.material, side.thickness, topped=topped
        )
    closed = around.closed.get(frame.name, frozenset())
    f = frame.box
    box = Box(
        b.x0 if Wall.LEFT in closed else min(b.x0, f.x0), f.y0, b.z0,
        b.x1 if Wall.RIGHT in closed else max(b.x1, f.x1), b.y1, max(b.z1, f.z1),
    )
    stiles = [p.panel for p in frame.parts if p.role is Role.STILE]
    return Front(
        carcass.name, box, stiles[0].material, min(s.width for s in stiles), closed, topped
    )
