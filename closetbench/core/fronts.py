"""Fronts of drawers and pull-outs: where they lie, how they are parted, where the pulls go."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum

from closetbench.core.component import bands_for, require
from closetbench.core.errors import ClosetError
from closetbench.core.findings import Finding, Severity
from closetbench.core.inside import Lap, Opening
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Face, Grain, HoleRow, Panel, Rim, Run
from closetbench.core.parts import FACING, Part, Place, Role
from closetbench.core.skew import Lean, fit_front

LEAST_FRONT = 40.0
"""The lowest front, mm: common practice, no published source."""

Span = tuple[float, float]


class FrontKind(Enum):
    """Where fronts lie."""

    NONE = "none"
    INSET = "inset"
    HALF = "half overlay"
    FULL = "full overlay"


@dataclass(frozen=True)
class FrontSpec:
    """Fronts of drawers and doors.

    ``kind``: where they lie.
    ``material``: key of their board, None takes the carcass's.
    ``gap``: the reveal around an inset front and between any two.
    ``pulls``: pulls on each front, 0 for none.
    ``pull_hole``: diameter of the hole for a pull.
    ``band``: key of their edge band, None for the material's own, "" for none.
    ``lap``: how far an overlay front laps over what bounds its opening, None by its kind.
    ``pull_spacing``: from hole to hole of a pull with two, 0 for a knob with one.
    ``lean_left``: how far the left edge of an inset front's opening leans to the right, upwards.
    ``lean_right``: how far its right edge leans to the right, upwards.
    ``rise_below``: how far its lower edge rises to the right.
    ``rise_above``: how far its upper edge rises to the right.
    """

    kind: FrontKind = FrontKind.INSET
    material: str | None = None
    gap: float = 3.0
    pulls: int = 1
    pull_hole: float = 5.0
    band: str | None = None
    lap: float | None = None
    pull_spacing: float = 0.0
    lean_left: float = 0.0
    lean_right: float = 0.0
    rise_below: float = 0.0
    rise_above: float = 0.0

    @property
    def lean(self) -> Lean:
        """How the opening of inset fronts is out of square."""
        return Lean(self.lean_left, self.lean_right, self.rise_below, self.rise_above)

    def pull_holes(
        self, face: Face, at: Iterable[tuple[float, float]], depth: float, run: Run, subject: str
    ) -> tuple[HoleRow, ...]:
        """The holes for pulls whose middles are given, evenly along the length where they are
        several; a pull's two holes lie along ``run``."""
        middles, apart = list(at), self.pull_spacing
        if len(middles) > 1 and not apart:
            (x, y), (x2, _) = middles[:2]
            return (HoleRow(
                "pull", face, x, y, self.pull_hole, depth, len(middles), x2 - x, Run.LENGTH),)
        if apart:
            require(subject, "distance of a pull's holes", apart, 20.0, 600.0)
        back = apart / 2 if apart else 0.0
        dx, dy = (back, 0.0) if run is Run.LENGTH else (0.0, back)
        return tuple(
            HoleRow(
                "pull", face, x - dx, y - dy, self.pull_hole, depth, 2 if apart else 1,
                apart or 32.0, run,
            )
            for x, y in middles
        )

    def board(self, opening: Opening) -> str:
        """Key of the fronts' material."""
        return self.material or opening.material

    def inset_by(self, opening: Opening, catalogue: Catalogue) -> float:
        """How far what lies behind a front stays back from the carcass's front edges."""
        if self.kind is not FrontKind.INSET:
            return 0.0
        return catalogue.material(self.board(opening), subject=opening.subject).thickness


def lapped(spec: FrontSpec, opening: Opening) -> tuple[float, float, float, float]:
    """Left, right, bottom and top of the field that fronts fill together, mm."""
    box, gap = opening.box, spec.gap
    if spec.kind is FrontKind.INSET:
        return box.x0 + gap, box.x1 - gap, box.z0 + gap, box.z1 - gap
    if spec.kind is FrontKind.NONE:
        return box.x0, box.x1, box.z0, box.z1
    laps = [
        _lap(spec, lap, opening.subject)
        for lap in (opening.left, opening.right, opening.below, opening.above)
    ]
    return box.x0 - laps[0], box.x1 + laps[1], box.z0 - laps[2], box.z1 + laps[3]


def check_gap(spec: FrontSpec, subject: str) -> None:
    """Refuse a gap around fronts that is none, or wider than a gap is."""
    if spec.kind is not FrontKind.NONE and not 1.0 <= spec.gap <= 10.0:
        raise ClosetError(
            subject, "gap around the fronts", f"{spec.gap:g} mm",
            "must be 1 to 10 mm, or a front rubs on its neighbour",
        )
    if spec.lean.any:
        if spec.kind is not FrontKind.INSET:
            raise ClosetError(
                subject, "lean of the opening", spec.kind.value,
                "must be 0 unless fronts are inset: an overlay hides it",
            )
        spec.lean.check(subject)


def _lap(spec: FrontSpec, lap: Lap, subject: str) -> float:
    most = lap.full(spec.gap)
    if spec.lap is None or lap.thickness == 0:
        return lap.half(spec.gap) if spec.kind is FrontKind.HALF else most
    if not 0 <= spec.lap <= most + 1e-6:
        raise ClosetError(
            subject, "overlay of the fronts", f"{spec.lap:g} mm",
            f"must be 0 to {most:g} mm on a board {lap.thickness:g} mm thick"
            f"{' that a neighbour shares' if lap.shared else ''}",
        )
    return spec.lap


def front_spans(
    spec: FrontSpec, opening: Opening, count: int, heights: tuple[float, ...]
) -> tuple[Span, ...]:
    """Bottom and top of each front, from the lowest.

    ``count`` of equal height, or the given ``heights`` (one of them may be 0 and takes what
    is left). Without fronts the opening is parted without gaps.
    """
    subject = opening.subject
    check_gap(spec, subject)
    gap = 0.0 if spec.kind is FrontKind.NONE else spec.gap
    _, _, low, high = lapped(spec, opening)
    if heights and count not in (1, len(heights)):
        raise ClosetError(
            subject, "number of fronts", count, f"must be {len(heights)}, as the heights given"
        )
    count = len(heights) or count
    if count < 1:
        raise ClosetError(subject, "number of fronts", count, "must be 1 or more")
    free = high - low - (count - 1) * gap
    sizes = heights or (free / count,) * count
    rest = free - sum(sizes)
    open_ended = sizes.count(0.0)
    if open_ended > 1 or rest < -1e-6 or (not open_ended and rest > 1e-6):
        raise ClosetError(
            subject, "heights of the fronts", " + ".join(f"{v:g}" for v in sizes) + " mm",
            f"must be {free:.1f} mm together, or leave one of them 0 to take what is left",
        )
    spans, z = [], low
    for size in sizes:
        size = size or rest
        if size < LEAST_FRONT:
            raise ClosetError(
                subject, "height of a front", f"{size:.1f} mm",
                f"must be at least {LEAST_FRONT:g} mm",
            )
        spans.append((z, z + size))
        z += size + gap
    return tuple(spans)


def front_part(
    spec: FrontSpec, opening: Opening, catalogue: Catalogue, span: Span, name: str,
    component: str,
) -> Part:
    """One front with the holes for its pulls, in the closet's frame."""
    key = spec.board(opening)
    board = catalogue.material(key, subject=component)
    x0, x1, _, _ = lapped(spec, opening)
    fitted = fit_front(spec.lean, spec.gap, opening.box, (x0, x1, *span))
    rims = (Rim.FRONT, Rim.REAR, Rim.START, Rim.END)
    width, height = fitted.x1 - fitted.x0, fitted.z1 - fitted.z0
    holes: tuple[HoleRow, ...] = ()
    if spec.pulls:
        pitch = width / spec.pulls
        middles = [(pitch * (i + 0.5), height / 2) for i in range(spec.pulls)]
        holes = spec.pull_holes(Face.UPPER, middles, board.thickness, Run.LENGTH, component)
    panel = Panel(
        width, height, board.thickness, key,
        Grain.LENGTH if board.grained else Grain.NONE, (), holes, (),
        bands_for(catalogue, key, spec.band, rims, component), frozenset(rims),
        fitted.facing(),
    )
    rear = opening.box.y0 + (board.thickness if spec.kind is FrontKind.INSET else 0.0)
    return Part(name, component, Role.FRONT, panel, Place((fitted.x0, rear, fitted.z0), *FACING))


def out_of_square(name: str, then: str) -> Finding:
    """The note that fronts are tapered to their opening; ``then``: what else to do."""
    return Finding(
        Severity.NOTE, name, "tapered-fronts",
        "its fronts are tapered to an opening that is out of square, each its own way: mark them "
        f"as they are cut, measure both diagonals once more before that, and {then}",
        "common practice, no published source",
    )
