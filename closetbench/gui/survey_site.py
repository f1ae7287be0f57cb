"""What a survey's panel edits: the readings and the sizes, of which one counts."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from closetbench.core.closet import ClosetDesign
from closetbench.core.envelope import Clearances, Objective
from closetbench.core.errors import ClosetError
from closetbench.core.survey import Survey
from closetbench.model import bridge
from closetbench.model.properties import read_fields
from closetbench.model.survey import LEVELS, MAYBE_READ, READINGS, camel


@dataclass(frozen=True)
class Site:
    """What the panel edits: the readings and the sizes, of which one counts."""

    by_readings: bool
    width: float
    depth: float
    height: float
    survey: Survey
    clearances: Clearances = field(default_factory=Clearances)
    depth_limit: float | None = None
    objective: Objective = Objective.WIDTH

    def design(self, name: str) -> ClosetDesign:
        """The design without components."""
        size = None if self.by_readings else (self.width, self.depth, self.height)
        return ClosetDesign(
            name, self.survey if self.by_readings else None, self.clearances, size,
            self.depth_limit, objective=self.objective,
        )


def site_in(obj: Any) -> Site:
    """What a survey's properties say; readings that do not count are kept all the same."""
    size = (obj.GivenWidth.Value, obj.GivenDepth.Value, obj.GivenHeight.Value)
    design = bridge.spec_of(obj)
    survey = design.survey or _kept_readings(obj) or _plain_room(*size)
    return Site(
        design.survey is not None, *size, survey, design.clearances,
        design.depth_limit, design.objective,
    )


def _kept_readings(obj: Any) -> Survey | None:
    """Readings that the object holds while given sizes count; None where there are none."""
    values = read_fields(obj, READINGS)
    for name in MAYBE_READ:
        taken = getattr(obj, f"{camel(name)}Taken")
        values[name] = getattr(obj, camel(name)).Value if taken else None
    try:
        return Survey(**values, levels=tuple(getattr(obj, p.name).Value for p in LEVELS))
    except ClosetError:
        return None


def _plain_room(width: float, depth: float, height: float) -> Survey:
    """Readings of a room that is plumb, level and square, to begin with."""
    levels = (100.0, 1200.0, 2200.0)
    if height <= levels[2]:
        levels = (min(100.0, height / 8), height / 2, height * 0.9)
    return Survey(*[width] * 6, *[height] * 4, depth, depth, levels=levels)
