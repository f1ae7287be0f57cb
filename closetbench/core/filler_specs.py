"""What the user decides about fillers, mouldings and levelling."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Cover(Enum):
    """What covers a gap."""

    AUTO = "by the gap"
    """A strip where the gap is wide enough for one, else a moulding."""
    STRIP = "filler strip"
    MOULDING = "moulding"
    NONE = "none"


class Levelling(Enum):
    """How the base meets a floor that is not level."""

    SHIMS = "shims"
    SCRIBED = "base frame scribed to the floor"


@dataclass(frozen=True)
class FillersSpec:
    """Everything that closes the gaps around the carcasses.

    ``left``, ``right``, ``top``: what covers the gap there.
    ``levelling``: how the bases meet the floor.
    ``material``: of strips, None takes the carcass's.
    ``mouldings``, ``rounds``: keys of the flat mouldings and of the quarter rounds for the
    foot of the base to choose from; without rounds the foot stays open.
    ``scribe``: left on to be scribed away, 6 mm (common practice, no published source).
    ``least``, ``most``: narrowest and widest strip: 20 mm (common practice, no published
    source) and 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, edition 1, 2009).
    ``overlap``: how far a moulding lies on the carcass at least, 6 mm as above.
    """

    name: str
    left: Cover = Cover.AUTO
    right: Cover = Cover.AUTO
    top: Cover = Cover.AUTO
    levelling: Levelling = Levelling.SHIMS
    material: str | None = None
    mouldings: tuple[str, ...] = ("scribe_20", "scribe_32", "scribe_45")
    rounds: tuple[str, ...] = ("quarter_round_12", "quarter_round_19")
    scribe: float = 6.0
    least: float = 20.0
    most: float = 38.1
    overlap: float = 6.0
