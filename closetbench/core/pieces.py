"""What of a closet is carried in, piece by piece."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from closetbench.core.access import Piece
from closetbench.core.component import Component, box_around
from closetbench.core.moves import Pull
from closetbench.core.parts import Role

_CUT_IN_PLACE = (Role.FILLER, Role.MOULDING, Role.SHIM)


@dataclass(frozen=True)
class Load:
    """A piece to carry in and the bodies of its component that it consists of.

    ``whole``: it is carried as it will stand, assembled: a component, or a drawer box of
    those that nothing but their carcass holds together.
    """

    piece: Piece
    component: str
    bodies: frozenset[str]
    whole: bool


def is_carried(component: Component) -> bool:
    """Whether a component has to come in: not what lies in front of the closet, nor what is
    thin and cut where it goes."""
    return component.box.y1 > 0 and not all(
        b.role in _CUT_IN_PLACE for b in component.bodies)


def loads_in(component: Component) -> Iterator[Load]:
    """The pieces of a component: itself, unless it is but drawers; its drawer boxes; then
    each of its parts, where it has more than one."""
    names = frozenset(b.name for b in component.bodies)
    fronts = frozenset(b.name for b in component.bodies if b.role is Role.FRONT)
    boxes = {
        move.name: box for move in component.moves if isinstance(move, Pull)
        for box in [(move.bodies & names) - fronts] if len(box) > 1
    }
    only_drawers = bool(boxes) and names == fronts.union(*boxes.values())
    if not only_drawers:
        yield Load(
            Piece(component.name, component.box, len(names) > 1), component.name, names, True)
    for name, box in boxes.items():
        yield _load(f"{component.name}: {name}", component, box, only_drawers)
    if len(names) > 1:
        for body in component.bodies:
            yield _load(body.full_name, component, frozenset((body.name,)), False)


def _load(name: str, component: Component, names: frozenset[str], whole: bool) -> Load:
    box = box_around([b for b in component.bodies if b.name in names])
    return Load(Piece(name, box, len(names) > 1), component.name, names, whole)
