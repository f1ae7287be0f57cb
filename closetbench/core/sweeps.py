"""What opens: the space that every drawer, pull-out, door and lid passes through."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from closetbench.core.closet import Closet
from closetbench.core.component import Component
from closetbench.core.convex import Solid, Vector, block, corners, volume
from closetbench.core.findings import Finding
from closetbench.core.meeting import free_angle, in_the_way, room_blocks
from closetbench.core.moves import Pull, Swing, Turn
from closetbench.core.panel import Box

FAN = 10.0
"""Degrees of a leaf's turn between two corners of its sweep's outline."""
WIDEST = 170.0
"""Degrees that one solid of a sweep covers at most, to be convex."""
MEETING = ("pull-blocked", "pull-close", "pull-behind-door", "swing-blocked", "doors-meet")
"""The rules of ``meeting`` on what moves."""


@dataclass(frozen=True)
class Sweep:
    """One thing that opens. ``solids``: the space that it passes through freely; ``hits``:
    where it cannot go, since something is there, whose names are ``blockers``.

    ``reach``: travel in mm of a pull, degrees free to turn of a leaf. ``findings``: what the
    closet says about it.
    """

    name: str
    turns: bool
    reach: float
    solids: tuple[Solid, ...]
    hits: tuple[Solid, ...]
    blockers: tuple[str, ...]
    findings: tuple[Finding, ...] = ()


def sweeps(closet: Closet) -> tuple[Sweep, ...]:
    """The sweep of everything that opens, in the closet's frame."""
    walls = room_blocks(closet.room, closet.envelope)
    return tuple(
        _pull(closet, c, m, walls) if isinstance(m, Pull) else _swing(closet, c, m, walls)
        for c in closet.components for m in c.moves
    )


def _said(closet: Closet, name: str) -> tuple[Finding, ...]:
    return tuple(f for f in closet.findings if f.subject == name and f.rule in MEETING)


def _pull(
    closet: Closet, component: Component, pull: Pull, walls: tuple[tuple[str, Box], ...]
) -> Sweep:
    leaves = {
        (id(c), b) for c in closet.components for m in c.moves if isinstance(m, Swing)
        for b in m.bodies
    }
    still = [
        (c, b) for c in closet.components for b in c.bodies if (id(c), b.name) not in leaves
    ]
    blocks = in_the_way(component, pull, still, walls)
    swept = pull.swept()
    hits = [h for box in swept for _, b in blocks if (h := _common(box, b)) is not None]
    name = f"{component.name}: {pull.name}"
    return Sweep(
        name, False, pull.travel, tuple(block(corners(b)) for b in swept),
        tuple(block(corners(h)) for h in hits), tuple(n for n, _ in blocks), _said(closet, name),
    )


def _swing(
    closet: Closet, component: Component, swing: Swing, walls: tuple[tuple[str, Box], ...]
) -> Sweep:
    others = [
        b for c in closet.components for b in c.bodies
        if c is not component or b.name not in swing.bodies
    ]
    angle, by = free_angle(swing, others, walls)
    wanted = max(angle, min(swing.needed, swing.opens))
    name = f"{component.name}: {swing.name}"
    return Sweep(
        name, True, angle, tuple(_fan(swing, 0.0, angle)), tuple(_fan(swing, angle, wanted)),
        (by,) if by and angle < swing.needed else (), _said(closet, name),
    )


def _common(a: Box, b: Box) -> Box | None:
    if not a.overlaps(b):
        return None
    return Box(
        max(a.x0, b.x0), max(a.y0, b.y0), max(a.z0, b.z0),
        min(a.x1, b.x1), min(a.y1, b.y1), min(a.z1, b.z1),
    )


def _fan(swing: Swing, start: float, end: float) -> Iterator[Solid]:
    """Sectors about the hinges' axis between two angles, as wide as the leaf, each convex."""
    if end - start < 1e-9:
        return
    b = swing.box
    low, high = (b.x0, b.x1) if swing.turn is Turn.UP else (b.z0, b.z1)
    axis, tip = {Turn.UP: (2, 3), Turn.LEFT: (0, 1), Turn.RIGHT: (1, 0)}[swing.turn]

    def at(corner: tuple[float, float], along: float) -> Vector:
        u, v = corner
        return (along, u, v) if swing.turn is Turn.UP else (u, v, along)

    sectors = math.ceil((end - start) / WIDEST)
    for k in range(sectors):
        first, last = (start + (end - start) * (k + i) / sectors for i in (0, 1))
        steps = math.ceil((last - first) / FAN)
        ring = [swing.outline(first)[axis]]
        ring += [swing.outline(first + (last - first) * i / steps)[tip] for i in range(steps + 1)]
        below, above = ([at(p, z) for p in ring] for z in (low, high))
        sides = zip(pairwise((*below, below[0])), pairwise((*above, above[0])), strict=True)
        sector: Solid = (
            tuple(below[::-1]), tuple(above), *((a, b, d, c) for (a, b), (c, d) in sides),
        )
        yield sector if volume(sector) > 0 else tuple(face[::-1] for face in sector)
