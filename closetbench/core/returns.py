"""The dead space behind the returns: what cannot be pulled out of, and how large it is.

It still serves what needs no way straight out: the ends of a rod, shelves reached from the
side.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from closetbench.core.component import Component
from closetbench.core.envelope import Envelope
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.moves import Pull
from closetbench.core.panel import Box
from closetbench.core.room import Room


@dataclass(frozen=True)
class DeadSpace:
    """A part of the envelope that the front wall hides: ``where`` ("left", "right" or
    "above") and its box in the closet's frame."""

    where: str
    box: Box

    @property
    def depth(self) -> float:
        """How far it goes behind the wall, from its jamb or lintel."""
        b = self.box
        return b.z1 - b.z0 if self.where == "above" else b.x1 - b.x0

    @property
    def litres(self) -> float:
        """Its volume."""
        return self.box.volume / 1e6


def dead_spaces(room: Room | None, envelope: Envelope) -> tuple[DeadSpace, ...]:
    """What of the envelope lies behind the returns and above the lintel.

    The one above reaches from jamb to jamb, so that no space counts twice.
    """
    if room is None or room.opening is None:
        return ()
    o, e = room.opening, envelope
    x0, x1 = (min(max(x - e.x0, 0.0), e.width) for x in (o.x0, o.x1))
    head = min(max(o.z1 - e.z0, 0.0), e.height)
    spaces = (
        DeadSpace("left", Box(0.0, 0.0, 0.0, x0, e.depth, e.height)),
        DeadSpace("right", Box(x1, 0.0, 0.0, e.width, e.depth, e.height)),
        DeadSpace("above", Box(x0, 0.0, head, x1, e.depth, e.height)),
    )
    return tuple(s for s in spaces if s.depth > 1.0)


def dead_space_findings(
    components: Sequence[Component], room: Room | None, envelope: Envelope,
    figures: Figures | None = None,
) -> list[Finding]:
    """A note for every bay that lies behind a return, with what of it can be reached.

    Bays that something is pulled out of are left to the check of what moves.
    """
    found = []
    form = figures or Figures()
    pulled = [b for c in components for m in c.moves if isinstance(m, Pull) for b in m.boxes]
    for space in dead_spaces(room, envelope):
        if space.where == "above":
            continue
        for component in components:
            for bay in component.bays:
                hidden = min(bay.space.x1, space.box.x1) - max(bay.space.x0, space.box.x0)
                width = bay.space.x1 - bay.space.x0
                if hidden <= 1.0 or any(b.overlaps(bay.space) for b in pulled):
                    continue
                found.append(Finding(
                    Severity.NOTE, f"{component.name}, {bay.name}", "behind-return",
                    f"lies behind the {space.where} return: no drawer or pull-out there; "
                    "shelves reached from the side and rods are at home there", "",
                    f"{form.length(hidden)} of {form.length(width)}", "none for a drawer",
                ))
    return found
