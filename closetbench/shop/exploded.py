"""The closet pulled apart, for a picture that shows what it is made of."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from closetbench.core.bodies import Body, LengthPart, Piece
from closetbench.core.component import Component
from closetbench.core.panel import Box
from closetbench.core.parts import Part, Role, Vector

APART = 0.45
"""How far parts move from the closet's middle, as a share of their distance from it."""
AHEAD = 1.35
"""How far what goes into carcasses comes forward, as a share of the closet's depth."""
_SHUTS = (Role.FRONT, Role.DOOR, Role.STILE, Role.RAIL, Role.MULLION, Role.BENCH_FACE)
_HOSTS = (Role.SIDE, Role.BENCH_FRAME)


_TURNS = (
    (Role.BASE_FRAME, Role.BENCH_FRAME), (Role.BOTTOM,), (Role.SIDE,), (Role.DIVIDER,),
    (Role.FIXED_SHELF,), (Role.TOP, Role.CLEAT), (Role.BACK,), (Role.TOE_KICK,),
    (Role.EXISTING,), (Role.BOX_SIDE, Role.BOX_FRONT, Role.BOX_BACK), (Role.BOX_BOTTOM,),
    (Role.ADJUSTABLE_SHELF, Role.SHOE_SHELF, Role.CORNER_SHELF, Role.OVER_SHELF, Role.ROD),
    (Role.LIP, Role.BENCH_TOP, Role.BENCH_FACE, Role.LID), (Role.STILE, Role.MULLION, Role.RAIL),
    (Role.FRONT, Role.DOOR),
)
"""Kinds of parts in the turn in which they go together: the frame and the box from the floor
up, then what goes into it, then what shuts it. Common practice, no published source."""


def exploded(components: Sequence[Component]) -> tuple[Body, ...]:
    """Every body moved away from the middle of the closet, what goes into the carcasses in
    front of them, fronts and frames farther still."""
    way = offsets(components)
    return tuple(moved(b, *way[b.full_name]) for c in components for b in c.bodies)


def offsets(components: Sequence[Component]) -> dict[str, Vector]:
    """How far each body goes from where it belongs when the closet is pulled apart, mm in
    the closet's frame, by its full name."""
    if not components:
        return {}
    boxes = [c.box for c in components]
    depth = max(b.y1 for b in boxes) - min(b.y0 for b in boxes)
    middle = _middle(Box(
        min(b.x0 for b in boxes), min(b.y0 for b in boxes), min(b.z0 for b in boxes),
        max(b.x1 for b in boxes), max(b.y1 for b in boxes), max(b.z1 for b in boxes),
    ))
    found: dict[str, Vector] = {}
    for component in components:
        ahead = 0.0 if any(b.role in _HOSTS for b in component.bodies) else AHEAD * depth
        for body in component.bodies:
            own = _middle(body.box())
            out = 0.6 * depth if body.role in _SHUTS else 0.0
            dx, dy, dz = (APART * (o - m) for o, m in zip(own, middle, strict=True))
            found[body.full_name] = (dx, dy - ahead - out, dz)
    return found


def turns(components: Sequence[Component]) -> tuple[tuple[str, ...], ...]:
    """Full names of the bodies that go together in one turn, turn after turn: a component
    after another in the closet's order, those without a carcass's sides last."""
    hosts = [c for c in components if any(b.role in _HOSTS for b in c.bodies)]
    others = [c for c in components if c not in hosts]
    found = []
    for component in (*hosts, *others):
        for roles in (*_TURNS, tuple(r for r in Role if not any(r in t for t in _TURNS))):
            names = tuple(b.full_name for b in component.bodies if b.role in roles)
            if names:
                found.append(names)
    return tuple(found)


def moved(body: Body, dx: float, dy: float, dz: float) -> Body:
    """The same body elsewhere."""
    def shift(p: Vector) -> Vector:
        return p[0] + dx, p[1] + dy, p[2] + dz

    if isinstance(body, Part):
        return replace(body, place=body.place.moved(dx, dy, dz))
    if isinstance(body, LengthPart):
        return replace(body, start=shift(body.start), end=shift(body.end))
    assert isinstance(body, Piece)
    return replace(
        body, corners=tuple(shift(p) for p in body.corners),
        fronts=tuple(tuple(shift(p) for p in ring) for ring in body.fronts),
    )


def _middle(box: Box) -> Vector:
    return (box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2, (box.z0 + box.z1) / 2
