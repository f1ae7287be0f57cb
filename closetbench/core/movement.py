"""How solid wood swells and shrinks across its grain with the air's moisture."""

from __future__ import annotations

from collections.abc import Iterable

from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.materials import Catalogue, MaterialKind
from closetbench.core.panel import Grain
from closetbench.core.parts import Part

PINE = 0.00216
"""Tangential change per percent of moisture, ponderosa pine, Wood Handbook FPL-GTR-190
Table 13-5 (from memory); 0.0021 to 0.0044 over the species of that table."""
PINE_RANGE = (0.00071, 0.00263)
"""Least radial (eastern white pine) and greatest tangential (southern pine) of the pines."""
SEASONS = 4.0
"""Percent of moisture between a heated winter and a summer indoors (common practice)."""
WORTH_SAYING = 2.0
"""mm of movement from which it matters to a joint."""


def change(width: float, coefficient: float, before: float, after: float) -> float:
    """Change of a width in mm from ``before`` to ``after`` percent of moisture.

    Wood Handbook FPL-GTR-190 eq. 13-2, for 6 to 14 %; ``ClosetError`` outside.
    """
    for value in (before, after):
        if not 6.0 <= value <= 14.0:
            raise ClosetError("wood", "moisture", f"{value:g} %", "must be 6 to 14 %")
    return width * coefficient * (after - before)


def findings(parts: Iterable[Part], catalogue: Catalogue, figures: Figures) -> list[Finding]:
    """One remark on the wooden part that moves most, where that matters."""
    found: list[tuple[float, Part]] = []
    for part in parts:
        if catalogue.material(part.panel.material).kind is MaterialKind.LUMBER:
            panel = part.panel
            across = panel.length if panel.grain is Grain.WIDTH else panel.width
            found.append((across, part))
    if not found:
        return []
    across, part = max(found, key=lambda pair: pair[0])
    low, middle, high = (
        change(across, c, 8.0 - SEASONS / 2, 8.0 + SEASONS / 2)
        for c in (PINE_RANGE[0], PINE, PINE_RANGE[1])
    )
    if middle < WORTH_SAYING:
        return []
    return [Finding(
        Severity.NOTE, part.full_name, "wood-movement",
        f"solid wood: it swells and shrinks by about {figures.small(middle)} across the grain "
        "between winter and summer; fasten it firmly at one edge only and leave room at the other",
        "Wood Handbook FPL-GTR-190 eq. 13-2 and Table 13-5 (pine, from memory); moisture: common "
        "practice", figures.small(middle), spread=figures.small_range(low, high) + ", pines",
        parts=tuple(p.full_name for _, p in found),
    )]
