"""Holes that one component needs in the parts of another: plates of hinges in a side."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.joinery import JoineryRules, check_hole_row
from closetbench.core.panel import Face, HoleRow, Panel, Run
from closetbench.core.parts import Part, Vector

NEAR = 0.01
"""Holes whose middles lie nearer than this are one, mm."""


@dataclass(frozen=True)
class Boring:
    """Two or more equal holes in a row, drilled square into whatever part of ``host`` has a
    face there. ``at``: middle of the first in the closet's frame; ``step``: from one to the
    next; ``into``: the way in."""

    name: str
    host: str
    at: Vector
    step: Vector
    into: Vector
    count: int
    diameter: float
    depth: float


@dataclass(frozen=True)
class Blocked:
    """A boring that cannot be made: ``part`` is where, "" for no part there at all."""

    boring: Boring
    part: str
    why: str


def blocked_finding(name: str, blocked: Blocked, figures: Figures) -> Finding:
    """The doubt of a component about a boring that cannot be made."""
    z = blocked.boring.at[2] + blocked.boring.step[2] * (blocked.boring.count - 1) / 2
    where = f" in {blocked.part}" if blocked.part else ""
    return Finding(
        Severity.WARNING, name, "boring-blocked",
        f"the holes for a {blocked.boring.name}{where} cannot be drilled: {blocked.why}; move it "
        "or what is in its way", "geometry", f"{figures.length(z)} above the floor",
        parts=(blocked.part,) if blocked.part else (),
    )


def drill(
    parts: Sequence[Part], borings: Sequence[Boring], rules: JoineryRules
) -> tuple[tuple[Part, ...], tuple[Blocked, ...]]:
    """The parts with the holes in them, and what could not be drilled.

    Holes that are there already serve twice. Where both faces of a part want the same hole and
    too little would stay between the two, it goes right through.
    """
    found = list(parts)
    blocked = []
    for boring in borings:
        near = ((i, row) for i, p in enumerate(found) if (row := _row(p, boring)) is not None)
        hit = next(near, None)
        if hit is None:
            blocked.append(Blocked(boring, "", "nothing is there to be drilled"))
            continue
        index, row = hit
        part = found[index]
        try:
            panel = _drilled(part.panel, row, rules)
        except ClosetError as error:
            blocked.append(Blocked(boring, part.full_name, error.limit))
            continue
        found[index] = replace(part, panel=panel)
    return tuple(found), tuple(blocked)


def _row(part: Part, boring: Boring) -> HoleRow | None:
    """The boring in the frame of a part, None where it does not start at one of its faces."""
    place, panel = part.place, part.panel
    offset = tuple(a - o for a, o in zip(boring.at, place.origin, strict=True))
    ways = (place.along, place.across, place.up)
    x, y, z = (_dot(offset, way) for way in ways)
    depth = _dot(boring.into, place.up)
    face, level = (Face.LOWER, 0.0) if depth > 0 else (Face.UPPER, panel.thickness)
    if abs(abs(depth) - 1) > 1e-6 or abs(z - level) > NEAR:
        return None
    if not (0 <= x <= panel.length and 0 <= y <= panel.width):
        return None
    dx, dy = _dot(boring.step, place.along), _dot(boring.step, place.across)
    if abs(dy) > 1e-6:
        first, pitch, run = (x, y if dy > 0 else y + dy * (boring.count - 1)), abs(dy), Run.WIDTH
    else:
        first, pitch, run = (x if dx > 0 else x + dx * (boring.count - 1), y), abs(dx), Run.LENGTH
    return HoleRow(
        boring.name, face, *first, boring.diameter, min(boring.depth, panel.thickness),
        boring.count, pitch, run,
    )


def _drilled(panel: Panel, row: HoleRow, rules: JoineryRules) -> Panel:
    """The panel with a row more; ``ClosetError`` where it cannot be drilled."""
    holes, new = list(panel.holes), []
    for x, y in row.centres():
        one = _one(panel, replace(row, x=x, y=y, count=1), holes, rules)
        if one is not None:
            check_hole_row(replace(panel, holes=tuple(holes)), one, "panel", rules)
            new.append(one)
    if len(new) == row.count and len({(h.face, h.depth) for h in new}) == 1:
        new = [replace(row, face=new[0].face, depth=new[0].depth)]
    return replace(panel, holes=(*holes, *new))


def _one(
    panel: Panel, hole: HoleRow, holes: list[HoleRow], rules: JoineryRules
) -> HoleRow | None:
    """What to drill for a single hole, None where one is there; a shallower one, or one that
    is met from the other face, is taken out of ``holes``."""
    for other in list(holes):
        if abs(hole.diameter - other.diameter) > NEAR or not _holds(other, hole):
            continue
        if other.face is hole.face or other.depth >= panel.thickness - NEAR:
            if other.depth >= hole.depth - NEAR:
                return None
            deeper = hole
        elif panel.thickness - hole.depth - other.depth < rules.least_skin:
            deeper = replace(hole, face=Face.LOWER, depth=panel.thickness)
        else:
            continue
        at = holes.index(other)
        holes[at: at + 1] = _without(other, hole)
        hole = deeper
    return hole


def _holds(row: HoleRow, hole: HoleRow) -> bool:
    return any(abs(x - hole.x) < NEAR and abs(y - hole.y) < NEAR for x, y in row.centres())


def _without(row: HoleRow, hole: HoleRow) -> list[HoleRow]:
    """What stays of a row without one of its holes."""
    runs: list[list[tuple[float, float]]] = [[]]
    for x, y in row.centres():
        if abs(x - hole.x) < NEAR and abs(y - hole.y) < NEAR:
            runs.append([])
        else:
            runs[-1].append((x, y))
    return [replace(row, x=r[0][0], y=r[0][1], count=len(r)) for r in runs if r]


def _dot(a: Sequence[float], b: Sequence[float]) -> float:
    return sum(p * q for p, q in zip(a, b, strict=True))
