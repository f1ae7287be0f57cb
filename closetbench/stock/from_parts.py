"""What the planners of sheets need to know of the parts and the catalogue."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from closetbench.core.materials import Catalogue
from closetbench.core.panel import Grain
from closetbench.core.parts import Part
from closetbench.stock.plan import CutPart, GrainOnSheet, StockSheet


def cut_parts(parts: Iterable[Part], catalogue: Catalogue) -> tuple[CutPart, ...]:
    """The rectangles to saw, in the order of the parts; keys are the parts' full names.

    The grain ties a part to the sheet only where its material has one and the part asks
    for it. Raises ``CatalogueError`` for a material that the catalogue does not have.
    """
    return tuple(
        CutPart(
            part.full_name,
            part.panel.cut_length,
            part.panel.cut_width,
            part.panel.material,
            _grain(part, catalogue),
            part.name,
        )
        for part in parts
    )


def _grain(part: Part, catalogue: Catalogue) -> GrainOnSheet:
    material = catalogue.material(part.panel.material, subject=part.full_name)
    if not material.grained or part.panel.grain is Grain.NONE:
        return GrainOnSheet.FREE
    return GrainOnSheet.ALONG if part.panel.grain is Grain.LENGTH else GrainOnSheet.ACROSS


def stock_sheets(
    catalogue: Catalogue,
    materials: Iterable[str],
    offcuts: Sequence[StockSheet] = (),
    trim: float | None = None,
) -> tuple[StockSheet, ...]:
    """Every size that each of the ``materials`` is sold in, after the ``offcuts`` at hand.

    ``trim`` takes the place of the materials' own, where given. Boards of their own width
    keep their edges, so nothing is trimmed off those.
    """
    wanted = tuple(dict.fromkeys(materials))
    mine = [s for s in offcuts if s.material in wanted]
    for key in wanted:
        material = catalogue.material(key)
        edges = material.trim if trim is None else trim
        mine += [
            StockSheet(
                f"{key} {size.length:g}x{size.width:g}",
                key, size.length, size.width, 0.0 if material.by_length else edges, None, size.cost,
            )
            for size in material.sheets
        ]
    return tuple(mine)
