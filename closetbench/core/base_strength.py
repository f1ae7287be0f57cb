"""The base frame of a carcass where the floor does not bear it all along: its rails between
shims under the cross members. Lengths mm, forces N, stresses N/mm²."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

from closetbench.core import grades
from closetbench.core.beams import deflection, moment, rectangle
from closetbench.core.component import Component
from closetbench.core.figures import GRAVITY, Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.loads import Criterion
from closetbench.core.materials import Catalogue, MaterialKind
from closetbench.core.parts import Part, Role
from closetbench.core.shelves import BEAM_SOURCE, Shelf, damp_finding

EDGEWISE = 0.6
"""Strength and stiffness of boards on edge over those laid flat, where their dense faces work:
tension over bending of particleboard and MDF in EN 12369-1 (from memory). Solid wood: 1."""


def findings(
    component: Component, groups: Sequence[Sequence[Shelf]], use: Criterion, mass: float,
    catalogue: Catalogue, figures: Figures, damp: bool = False,
) -> Iterable[Finding]:
    """The rails of a base frame under the carcass of ``mass`` kg and all its shelves full;
    half of it on each rail, each field between two cross members a beam by itself."""
    parts = [p for p in component.parts if p.role is Role.BASE_FRAME]
    rails = [p for p in parts if p.place.along[0]]
    at = sorted(
        (b.x0 + b.x1) / 2 for b in (p.box() for p in parts if not p.place.along[0]))
    if not rails or len(at) < 2:
        return
    rail, span = rails[0], max(b - a for a, b in pairwise(at))
    board = catalogue.material(rail.panel.material, subject=rail.full_name)
    if damp and grades.grade(board).damp is None:
        yield damp_finding(board, rail.full_name, _names(rails))
        return
    # the bottom lies on the rails with what stands on it, as the shelves do with theirs
    stored = sum(len(g) * (use.load(g[0].span, g[0].depth) + use.centre) for g in groups)
    load = (stored + mass * GRAVITY) / len(rails) * span / rail.panel.length
    edge = 1.0 if board.kind is MaterialKind.LUMBER else EDGEWISE
    e = grades.stiffness(board, True, damp) * edge
    wide, high = rail.panel.thickness, rail.panel.width

    def sag(stiff: float) -> float:
        bar = rectangle(wide, high, stiff, grades.shear_modulus(board, stiff))
        return deflection(bar, span, load)

    stress = moment(span, load) * 6 / (wide * high**2)
    allowed = grades.allowed_stress(board, True, damp) * edge
    low, high_e = (v * edge for v in grades.scatter(board, e / edge))
    bends, breaks = sag(e) > use.limit(span), stress > allowed
    weak, good = grades.strength_range(board, allowed)
    value, limit, spread = (
        (figures.stress(stress), figures.stress(allowed),
         f"for the mean strengths published {figures.stress(weak)} to {figures.stress(good)}")
        if breaks else
        (figures.small(sag(e)), figures.small(use.limit(span)),
         f"{figures.small_range(sag(high_e), sag(low))} between the stiffest and the softest "
         f"boards published ({grades.grade(board).e_source})")
    )
    yield Finding(
        Severity.WARNING if bends or breaks else Severity.NOTE, rail.full_name, "base-rails",
        f"shimmed under its cross members alone, each field of it carries "
        f"{figures.mass(load / GRAVITY)} with all shelves full over {figures.length(span)}"
        + (", for which a weak board is not strong enough" if breaks else
           ", for which it is too soft" if bends else ""),
        f"{BEAM_SOURCE}; {grades.STRENGTH_SOURCE}; load: {use.source}", value, limit,
        "shims under the rails between the cross members too, closer cross members, or a higher "
        "base" if bends or breaks else "", spread, _names(rails),
    )


def _names(parts: Sequence[Part]) -> tuple[str, ...]:
    return tuple(p.full_name for p in parts)
