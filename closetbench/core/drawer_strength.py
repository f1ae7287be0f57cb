"""Drawers under load: what the slides carry, how far the bottoms sag, what leans out.

Lengths mm, masses kg. A drawer is taken to be full of clothes, 8.5 lb/ft³.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from closetbench.core import grades
from closetbench.core.anchoring import Drawer
from closetbench.core.beams import deflection, longest, rectangle
from closetbench.core.component import Component
from closetbench.core.drawers import DrawersSpec
from closetbench.core.figures import GRAVITY, Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.handling import part_weight, weight_range
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Grain
from closetbench.core.parts import Part, Role

BOTTOM_SPAN_OVER = 144.0
"""A bottom may sag its span over this, as a shelf (common practice, no published source)."""
CLOTHES_SOURCE = "clothes: 8.5 lb/ft³, 87 FR 72598 and ASTM F2057-23"


@dataclass(frozen=True)
class Box:
    """A drawer box as built: its name, what it is for tipping, its bottom."""

    name: str
    drawer: Drawer
    bottom: Part


def boxes(component: Component, spec: DrawersSpec, catalogue: Catalogue) -> tuple[Box, ...]:
    """The boxes of a built bank of drawers, each with its front's mass."""
    slide = catalogue.slide(spec.slide, subject=spec.name)
    drawers: dict[str, list[Part]] = {}
    for part in component.parts:
        # "drawer 2 left side", or "drawer left side" where there is one
        words = part.name.split()
        key = " ".join(words[:2]) if words[1:2] and words[1].isdigit() else words[0]
        drawers.setdefault(key, []).append(part)
    found = []
    for name, parts in drawers.items():
        roles: Mapping[Role, Part] = {p.role: p for p in parts}
        side, bottom = roles[Role.BOX_SIDE], roles[Role.BOX_BOTTOM]
        box, base = side.box(), bottom.box()
        mass = sum(part_weight(p, catalogue) for p in parts)
        found.append(Box(
            f"{component.name}: {name}",
            Drawer(
                base.x1 - base.x0, box.z1 - base.z1, base.y1 - base.y0,
                (box.z0 + box.z1) / 2, slide.travel(side.panel.length), mass,
            ),
            bottom,
        ))
    return tuple(found)


def findings(
    component: Component, spec: DrawersSpec, catalogue: Catalogue, figures: Figures
) -> Iterable[Finding]:
    """What there is to say about a bank of drawers; those that are alike together."""
    slide = catalogue.slide(spec.slide, subject=spec.name)
    groups: dict[tuple[object, ...], list[Box]] = {}
    for box in boxes(component, spec, catalogue):
        d = box.drawer
        key = (box.bottom.panel.material, round(d.width, 1), round(d.depth, 1), round(d.height, 1))
        groups.setdefault(key, []).append(box)
    for group in groups.values():
        drawer, names = group[0].drawer, tuple(b.bottom.full_name for b in group)
        load = drawer.filling + drawer.mass
        board = catalogue.material(group[0].bottom.panel.material, subject=group[0].name)
        light, heavy = weight_range(drawer.mass, board)
        if load > slide.load:
            yield Finding(
                Severity.DANGER if load > 2 * slide.load else Severity.WARNING,
                group[0].name, "drawer-load",
                f"full of clothes it weighs more than its {slide.title} may carry",
                f"{CLOTHES_SOURCE}; {slide.source}", figures.mass(load), figures.mass(slide.load),
                "lower drawers, or a slide of a heavier class",
                f"{figures.mass(drawer.filling + light)} to {figures.mass(drawer.filling + heavy)} "
                "by the density of its boards", names,
            )
        yield _bottom(group, names, catalogue, figures)


def _bottom(
    group: list[Box], names: tuple[str, ...], catalogue: Catalogue, figures: Figures
) -> Finding:
    """The bottom's sag as a strip over its stiffer way: held all round, it sags less."""
    drawer, panel = group[0].drawer, group[0].bottom.panel
    board = catalogue.material(panel.material, subject=group[0].name)
    force = drawer.filling * GRAVITY
    # the panel's length runs into the depth of the closet
    ways = [
        (panel.length, panel.width, panel.grain is not Grain.WIDTH),
        (panel.width, panel.length, panel.grain is Grain.WIDTH),
    ]

    def sag(span: float, width: float, e: float) -> float:
        g = grades.shear_modulus(board, e)
        return deflection(rectangle(width, board.thickness, e, g), span, force)

    def stiff(along: bool) -> float:
        return grades.stiffness(board, along)

    span, width, along = min(
        ways, key=lambda w: sag(w[0], w[1], stiff(w[2])) / w[0])
    value, limit = sag(span, width, stiff(along)), span / BOTTOM_SPAN_OVER
    low, high = grades.scatter(board, stiff(along))
    most = longest(
        lambda s: sag(s, width, stiff(along)) * s / span / (s / BOTTOM_SPAN_OVER),
        1.0, 2000.0,
    )
    ok = value <= limit
    return Finding(
        Severity.NOTE if ok else Severity.WARNING, group[0].name, "drawer-bottom",
        f"its bottom sags {figures.small(value)} under {figures.mass(drawer.filling)} of clothes",
        f"{CLOTHES_SOURCE}; limit: common practice, no published source",
        figures.small(value), figures.small(limit),
        f"the span that passes is {figures.length(math.floor(most or 0.0))}"
        + ("" if ok else "; a thicker bottom, or a batten under its middle"),
        f"{figures.small_range(sag(span, width, high), sag(span, width, low))} "
        f"between the stiffest and the softest boards published "
        f"({grades.grade(board).e_source})", names,
    )
