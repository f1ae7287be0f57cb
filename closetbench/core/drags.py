"""What can be dragged to change a carcass or a panel: where it stands, which way it goes, and
what sizes follow from how far."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass

from closetbench.core.component import Component
from closetbench.core.panel import Panel
from closetbench.core.parts import Vector
from closetbench.core.specs import BaySpec, CarcassSpec

RIGHT: Vector = (1.0, 0.0, 0.0)
REAR: Vector = (0.0, 1.0, 0.0)
UP: Vector = (0.0, 0.0, 1.0)
FRONT: Vector = (0.0, -1.0, 0.0)


@dataclass(frozen=True)
class Change:
    """A length that a drag changes: its path in the specification, what it is now in mm, and
    how much it grows for each mm that is dragged."""

    path: str
    now: float
    rate: float = 1.0


@dataclass(frozen=True)
class Drag:
    """What stands ``at`` a point and is dragged the ``way`` of a unit vector, in the closet's
    frame, or a panel's own. The first of the changes keeps to the user's step."""

    key: str
    at: Vector
    way: Vector
    changes: tuple[Change, ...]

    def values(self, moved: float, step: float) -> dict[str, float]:
        """The lengths by their paths once it is dragged so far, in mm."""
        first, *others = self.changes
        value = round((first.now + first.rate * moved) / step) * step
        kept = (value - first.now) / first.rate
        return {first.path: value} | {c.path: c.now + c.rate * kept for c in others}


def carcass_drags(
    spec: CarcassSpec, component: Component, locked: Collection[str] = ()
) -> tuple[Drag, ...]:
    """The right side, the top, the face that depth moves, and the dividers of a carcass as it
    is built. ``locked``: paths of what is not to be changed."""
    b = component.box
    out, face = (FRONT, b.y0) if spec.against_back else (REAR, b.y1)
    x, y, z = (b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2, (b.z0 + b.z1) / 2
    # none of them hides another in a view along an axis
    sides = (
        Drag("width", (b.x1, y, z), RIGHT, (Change("width", b.x1 - b.x0),)),
        Drag("height", (x, y, b.z1), UP, (Change("height", b.z1 - b.z0),)),
        Drag("depth", (b.x1, face, b.z1), out, (Change("depth", b.y1 - b.y0),)),
    )
    found = [d for d in sides if d.key not in locked]
    spaces = [bay.space for bay in component.bays]
    widths = [s.x1 - s.x0 for s in spaces]
    for i in range(len(spaces) - 1):
        left, right = spaces[i], spaces[i + 1]
        changes = _divided(spec.bays, widths, i, locked)
        if changes:
            at = (left.x1 + right.x0) / 2, left.y0, (left.z0 + left.z1) / 2
            found.append(Drag(f"divider {i + 1}", at, RIGHT, changes))
    return tuple(found)


def panel_drags(panel: Panel, locked: Collection[str] = ()) -> tuple[Drag, ...]:
    """The end and the rear edge of a panel, in its own frame."""
    x, y, z = panel.length, panel.width, panel.thickness
    ends = (
        Drag("length", (x, y / 2, z), RIGHT, (Change("length", x),)),
        Drag("width", (x / 2, y, z), REAR, (Change("width", y),)),
    )
    return tuple(d for d in ends if d.key not in locked)


def _divided(
    bays: tuple[BaySpec, ...], widths: list[float], i: int, locked: Collection[str]
) -> tuple[Change, ...]:
    """What the divider to the right of bay ``i`` changes, so that it moves as far as it is
    dragged: the widths of both its bays where both are given, else that of one of them,
    while the bays without one share what is left. Nothing where it cannot move."""
    paths = {k: f"bays.{k}.width" for k in (i, i + 1)}
    free = [k for k in paths if paths[k] not in locked]
    given = [k for k in free if bays[k].width is not None]
    if len(given) == 2:
        return Change(paths[i], widths[i]), Change(paths[i + 1], widths[i + 1], -1.0)
    best: tuple[bool, float, Change] | None = None
    for k in free:
        sharing = [j for j, bay in enumerate(bays) if bay.width is None and j != k]
        if not sharing:
            continue
        # what one bay takes, all those without a width give, on both sides of the divider
        moves = (k == i) - sum(j <= i for j in sharing) / len(sharing)
        if abs(moves) < 1e-9:
            continue
        rank = k in given, abs(moves)
        if best is None or rank > best[:2]:
            best = *rank, Change(paths[k], widths[k], 1.0 / moves)
    return () if best is None else (best[2],)
