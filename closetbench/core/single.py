"""A single grooved panel, for a job that needs just one."""

from __future__ import annotations

from dataclasses import replace

from closetbench.core.component import Component, bands_for
from closetbench.core.errors import ClosetError
from closetbench.core.joinery import check_panel, rabbet
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Grain, Groove, Panel
from closetbench.core.parts import LYING, Part, Place, Role
from closetbench.core.specs import PanelSpec


def build_panel(spec: PanelSpec, catalogue: Catalogue) -> Component:
    """The panel lying at the closet's origin. Raises ``ClosetError`` for what cannot be cut."""
    board = catalogue.material(spec.material, subject=spec.name)
    mating = catalogue.material(spec.mating or spec.material, subject=spec.name).thickness
    if spec.grooves < 0:
        raise ClosetError(spec.name, "number of grooves", spec.grooves, "must be 0 or more")
    rules = spec.rules if spec.depth is None else replace(spec.rules, depth=spec.depth)
    cuts: list[Groove] = []
    if spec.grooves or spec.rabbets:
        depth = rules.groove_depth(board.thickness, spec.name)
        cuts = [
            Groove(
                f"panel {i + 1}", spec.face, spec.measured_from,
                spec.first + i * spec.spacing, rules.groove_width(mating), depth,
                spec.stop_first, spec.stop_last,
            )
            for i in range(spec.grooves)
        ]
        cuts += [
            rabbet(f"panel at the {rim.value}", spec.face, rim, mating, depth)
            for rim in spec.rabbets
        ]
    panel = Panel(
        spec.length, spec.width, board.thickness, board.key,
        spec.grain if board.grained else Grain.NONE, tuple(cuts),
        bands=bands_for(catalogue, spec.material, spec.band, spec.bands, spec.name),
        visible=frozenset(spec.bands),
    )
    check_panel(panel, spec.name, rules)
    part = Part("panel", spec.name, Role.PANEL, panel, Place((0.0, 0.0, 0.0), *LYING))
    return Component(spec.name, (part,), part.box())


