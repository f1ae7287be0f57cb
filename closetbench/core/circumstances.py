"""What is known about the place and the people that no measurement of the closet tells."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from closetbench.core.anchoring import FreeUnit
from closetbench.core.bench_strength import Bench
from closetbench.core.errors import ClosetError
from closetbench.core.loads import Criterion, ShelfUse, criterion
from closetbench.core.people import ChildAge, Light
from closetbench.core.rods_strength import Rod
from closetbench.core.walls import Wall


@dataclass(frozen=True)
class Circumstances:
    """What the checks are to reckon with. None is "not known", and is then not checked.

    ``shelf_use`` or ``shelf_load`` (kg/m²) with ``sag_over`` (a shelf may sag its span over
    this) and ``shelf_middle`` (kg, one heavy thing in the middle of each shelf); ``damp``: air
    that is not heated; ``children``: ages of those who live or visit there, empty for none;
    ``old_paint``: paint from before 1978 on the walls or a reused piece; ``outlets``: behind
    the closet; ``light_clearance``: from the light to the nearest storage space, mm; ``rods``,
    ``benches`` and ``units``: what stands or hangs in the closet beside its carcasses.
    """

    shelf_use: ShelfUse | None = None
    shelf_load: float | None = None
    sag_over: float | None = None
    damp: bool | None = None
    wall: Wall = field(default_factory=Wall)
    children: tuple[ChildAge, ...] | None = None
    old_paint: bool | None = None
    outlets: bool | None = None
    light: Light | None = None
    light_clearance: float | None = None
    rods: tuple[Rod, ...] = ()
    benches: tuple[Bench, ...] = ()
    units: tuple[FreeUnit, ...] = ()
    shelf_middle: float | None = None

    def __post_init__(self) -> None:
        self.shelf_criterion()
        clear = self.light_clearance
        if clear is not None and not (math.isfinite(clear) and clear >= 0):
            raise ClosetError(
                "circumstances", "light clearance", f"{clear:g} mm", "must be 0 or more"
            )

    def shelf_criterion(self) -> Criterion | None:
        """What the shelves have to carry and how far they may sag; None: not known."""
        return criterion(self.shelf_use, self.shelf_load, self.sag_over, self.shelf_middle)
