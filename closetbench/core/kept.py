"""Panels kept from a reused piece, cut into parts elsewhere in the closet.

In a specification such a panel is a material like any other, by its ``kept_key``; its parts
are kept apart from those that are cut from bought sheets.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import replace

from closetbench.core.component import Component
from closetbench.core.errors import ClosetError
from closetbench.core.existing import ExistingSpec, KeptPanel
from closetbench.core.materials import Catalogue, Material, MaterialKind, SheetSize
from closetbench.core.parts import Part

SAW_CUT = 4.0
"""What a saw cut takes off a kept panel, mm: common practice, no published source."""


def kept_key(piece: str, panel: str) -> str:
    """Key of a kept panel as a material: ``kept-chest-top`` for the top of "Chest"."""
    slug = (re.sub(r"[^a-z0-9]+", "-", text.lower()).strip("-") for text in (piece, panel))
    return "-".join(("kept", *slug))


def with_kept(catalogue: Catalogue, pieces: Iterable[ExistingSpec]) -> Catalogue:
    """The catalogue with the kept panels as materials, each a single sheet.

    Density and stiffness of an old panel are not known: it counts as heavy softwood.
    """
    found: dict[str, Material] = {}
    for piece in pieces:
        for panel in piece.kept:
            key = kept_key(piece.name, panel.name)
            if key in found or key in catalogue.materials:
                raise ClosetError(
                    piece.name, "kept panel", panel.name, "must have a name of its own"
                )
            found[key] = Material(
                key, f"{panel.name} kept from {piece.name}", MaterialKind.LUMBER,
                panel.thickness, panel.thickness, panel.grained, 700.0, 9000.0, 400.0,
                (SheetSize(panel.length, panel.width, 0.0),), 0.0, "", False,
                "taken as heavy softwood: not known",
            )
    if not found:
        return catalogue
    return replace(catalogue, materials={**catalogue.materials, **found})


def take_out_reused(
    components: Sequence[Component], pieces: Iterable[ExistingSpec]
) -> tuple[Component, ...]:
    """The components with what is cut from kept panels apart from what is cut from sheets.

    Raises ``ClosetError`` where the parts asked for do not come out of a kept panel side
    by side.
    """
    kept = {kept_key(p.name, k.name): (p, k) for p in pieces for k in p.kept}
    taken: dict[str, list[Part]] = {}
    result = []
    for component in components:
        reused = tuple(p for p in component.parts if p.panel.material in kept)
        for part in reused:
            taken.setdefault(part.panel.material, []).append(part)
        parts = tuple(p for p in component.parts if p.panel.material not in kept)
        result.append(replace(component, parts=parts, reused=reused))
    for key, found in taken.items():
        _check_kept(*kept[key], found)
    return tuple(result)


def _check_kept(piece: ExistingSpec, panel: KeptPanel, parts: Sequence[Part]) -> None:
    sizes = [(p.panel.cut_length, p.panel.cut_width) for p in parts]
    cuts = SAW_CUT * (len(sizes) - 1)
    ways = [sizes] if panel.grained else [sizes, [(b, a) for a, b in sizes]]
    for way in ways:
        lengths, widths = zip(*way, strict=True)
        beside = max(lengths) <= panel.length and sum(widths) + cuts <= panel.width
        behind = sum(lengths) + cuts <= panel.length and max(widths) <= panel.width
        if beside or behind:
            return
    wanted = ", ".join(f"{a:.0f} x {b:.0f}" for a, b in sizes)
    raise ClosetError(
        parts[0].full_name, f"{panel.name} kept from {piece.name}", f"{wanted} mm wanted",
        f"must come out of {panel.length:g} x {panel.width:g} mm side by side",
    )
