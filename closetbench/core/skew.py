"""Inset fronts in an opening that is out of square: tapered, so that reveals stay even.

The opening's edges are measured: how far the left and the right one lean to the right from
its lower to its upper end, how far the lower and the upper one rise to the right. Its width is
that at the bottom, its height that at the left. Between fronts the edges turn evenly from
one to the other.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from closetbench.core.component import require
from closetbench.core.inside import Opening
from closetbench.core.panel import Box, Rim, Taper

MOST = 30.0
"""How far an edge may be out of plumb or level, mm: more is no opening to fit a front into."""

Pair = tuple[float, float]


@dataclass(frozen=True)
class Lean:
    """How far the four edges of an opening lean and rise, mm."""

    left: float
    right: float
    below: float
    above: float

    @property
    def any(self) -> bool:
        """Whether it is out of square or plumb at all."""
        return any((self.left, self.right, self.below, self.above))

    def check(self, subject: str) -> None:
        """Refuse what is no measurement of an opening."""
        for prop, value in (
            ("lean of the left edge", self.left), ("lean of the right edge", self.right),
            ("rise of the lower edge", self.below), ("rise of the upper edge", self.above),
        ):
            require(subject, prop, value, -MOST, MOST)


@dataclass(frozen=True)
class Fitted:
    """A front as it is cut: the rectangle around it, and what its edges lie inside that:
    ``left`` and ``right`` at the bottom and the top, ``below`` and ``above`` at the left and
    the right."""

    x0: float
    x1: float
    z0: float
    z1: float
    left: Pair = (0.0, 0.0)
    right: Pair = (0.0, 0.0)
    below: Pair = (0.0, 0.0)
    above: Pair = (0.0, 0.0)

    def facing(self) -> tuple[Taper, ...]:
        """The tapers of a panel whose length runs to the right and whose width runs up."""
        return _tapers({
            Rim.START: self.left, Rim.END: self.right, Rim.FRONT: self.below,
            Rim.REAR: self.above,
        })

    def upright(self) -> tuple[Taper, ...]:
        """The tapers of a panel whose length runs up and whose width runs to the left."""
        return _tapers({
            Rim.REAR: self.left, Rim.FRONT: self.right, Rim.START: self.below[::-1],
            Rim.END: self.above[::-1],
        })

    def inside_left(self, z: float) -> float:
        """How far the left edge lies inside the rectangle, ``z`` above its lower end."""
        return _between(self.left, z / (self.z1 - self.z0))

    def inside_right(self, z: float) -> float:
        """The same of the right edge."""
        return _between(self.right, z / (self.z1 - self.z0))


def fit_front(lean: Lean, gap: float, box: Box, front: tuple[float, float, float, float]) -> Fitted:
    """A front of an opening's ``box``, given by left, right, bottom and top as if everything
    were square."""
    x0, x1, z0, z1 = front
    if not lean.any:
        return Fitted(x0, x1, z0, z1)
    wide, high = box.x1 - box.x0, box.z1 - box.z0
    across = (lean.left, lean.right)
    upward = (lean.below, lean.above)
    left = x0, _slope(across, x0 - gap, x0 - gap / 2, box.x0, box.x1) / high
    right = x1, _slope(across, x1 + gap, x1 + gap / 2, box.x0, box.x1) / high
    below = z0, _slope(upward, z0 - gap, z0 - gap / 2, box.z0, box.z1) / wide
    above = z1, _slope(upward, z1 + gap, z1 + gap / 2, box.z0, box.z1) / wide
    corners = [_meet(side, level, box) for level in (below, above) for side in (left, right)]
    xs, zs = zip(*corners, strict=True)
    a0, a1, b0, b1 = min(xs), max(xs), min(zs), max(zs)

    def x_at(line: Pair, z: float) -> float:
        return line[0] + line[1] * (z - box.z0)

    def z_at(line: Pair, x: float) -> float:
        return line[0] + line[1] * (x - box.x0)

    return Fitted(
        a0, a1, b0, b1,
        (x_at(left, b0) - a0, x_at(left, b1) - a0), (a1 - x_at(right, b0), a1 - x_at(right, b1)),
        (z_at(below, a0) - b0, z_at(below, a1) - b0), (b1 - z_at(above, a0), b1 - z_at(above, a1)),
    )


def plumb(lean: Lean, gap: float, opening: Opening, span: Pair) -> tuple[Opening, Pair]:
    """What an opening leaves plumb and level for the box behind a front of this span."""
    if not lean.any:
        return opening, span
    box = opening.box
    f = fit_front(lean, gap, box, (box.x0 + gap, box.x1 - gap, *span))
    clear = replace(
        box, x0=max(box.x0, f.x0 + max(f.left) - gap), x1=min(box.x1, f.x1 - max(f.right) + gap))
    return replace(opening, box=clear), (f.z0 + max(f.below), f.z1 - max(f.above))


def _slope(ends: Pair, at_edge: float, in_gap: float, low: float, high: float) -> float:
    """How much an edge of a front turns: as the opening's own beside it, and as the middle of
    the gap between two fronts."""
    if abs(at_edge - low) < 1e-6:
        return ends[0]
    if abs(at_edge - high) < 1e-6:
        return ends[1]
    return _between(ends, (in_gap - low) / (high - low))


def _meet(side: Pair, level: Pair, box: Box) -> tuple[float, float]:
    """Where x = a + p (z - box.z0) and z = b + q (x - box.x0) meet."""
    (a, p), (b, q) = side, level
    z = (b + q * (a - p * box.z0 - box.x0)) / (1 - p * q)
    return a + p * (z - box.z0), z


def _between(ends: Pair, share: float) -> float:
    return ends[0] + (ends[1] - ends[0]) * share


def _tapers(edges: dict[Rim, Pair]) -> tuple[Taper, ...]:
    return tuple(
        Taper(rim, *ends) for rim, ends in edges.items() if any(abs(v) > 1e-9 for v in ends)
    )
