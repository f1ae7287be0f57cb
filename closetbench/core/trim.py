"""Mouldings over gaps: which one covers, how long it is, what its mitres cost."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from closetbench.core.materials import Catalogue, Material
from closetbench.core.panel import Panel, Rim
from closetbench.core.parts import Part, Role

SAW = 5.0
"""mm lost to each saw cut on a moulding, trying included: common practice, no published
source."""


@dataclass(frozen=True)
class TrimCut:
    """A length of moulding: ``long`` and ``short`` point, mm, the ends that are mitred, and
    the length of stock it takes with the triangles that its mitres leave."""

    name: str
    material: str
    long: float
    short: float
    mitres: tuple[Rim, ...]
    stock: float


def narrowest(
    catalogue: Catalogue, keys: Iterable[str], needed: float, subject: str
) -> tuple[Material, float] | None:
    """The narrowest of the mouldings that is at least ``needed`` wide, and its width."""
    boards = [catalogue.material(key, subject=subject) for key in keys]
    wide = [(min(s.width for s in b.sheets), b) for b in boards if b.sheets]
    found = [(w, b) for w, b in wide if w >= needed]
    if not found:
        return None
    width, board = min(found, key=lambda f: f[0])
    return board, width


def widest(catalogue: Catalogue, keys: Sequence[str], subject: str) -> float:
    """Width of the widest of the mouldings."""
    return max(
        (s.width for k in keys for s in catalogue.material(k, subject=subject).sheets), default=0.0
    )


def trim_cuts(parts: Iterable[Part]) -> tuple[TrimCut, ...]:
    """The lengths of all mouldings among the parts."""
    return tuple(_cut(p) for p in parts if p.role is Role.MOULDING)


def _cut(part: Part) -> TrimCut:
    panel: Panel = part.panel
    ends = [t for t in panel.tapers if t.rim.is_end]
    outline = panel.cut_outline()
    front = 1 + sum(len(t.via) for t in panel.tapers if t.rim is Rim.FRONT)
    # from corner to corner of the edges; in between they may bend
    low, high = (
        abs(outline[a][0] - outline[b][0]) for a, b in ((0, front), (front + 1, len(outline) - 1))
    )
    mitred = sum(max(t.first, t.last) for t in ends)
    long = max(low, high)
    return TrimCut(
        part.full_name, panel.material, long, min(low, high), tuple(t.rim for t in ends),
        long + mitred + 2 * SAW,
    )
