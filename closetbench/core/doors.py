"""Doors inside the closet: slab doors on concealed hinges, one or a pair in an opening."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from enum import Enum
from itertools import pairwise

from closetbench.core.borings import Boring
from closetbench.core.component import Component, bands_for, box_around, require
from closetbench.core.errors import ClosetError
from closetbench.core.findings import Finding, Severity
from closetbench.core.fronts import FrontKind, FrontSpec, check_gap, lapped, out_of_square
from closetbench.core.hinges import CUPS, HingeClass
from closetbench.core.inside import Opening, Spot
from closetbench.core.joinery import JoineryRules, check_panel
from closetbench.core.materials import Catalogue
from closetbench.core.moves import Swing, Turn
from closetbench.core.panel import Face, Grain, HoleRow, Panel, Rim, Run
from closetbench.core.parts import FACING_UPRIGHT, HardwareNeed, Part, Place, Role
from closetbench.core.skew import Fitted, fit_front

PULL_ABOVE_FLOOR = 1000.0
"""Height of a pull where the leaf reaches there, mm: common practice, no published source."""
PULL_FROM_END = 60.0
"""Least distance of a pull from the ends of a leaf, mm: common practice, no published source."""
LEAST_LEAF = 100.0
"""The narrowest and lowest leaf, mm: common practice, no published source."""
PLAIN = JoineryRules()
PLATES = "hinge plate"


class Hinged(Enum):
    """Which edge of a single door is hinged, as one faces it."""

    LEFT = "left"
    RIGHT = "right"


@dataclass(frozen=True)
class DoorsSpec:
    """A door, or a pair, in front of one opening.

    ``name``: the component's name.
    ``spot``: where it stands.
    ``leaves``: 1 for a door, 2 for a pair hinged at both sides.
    ``hinged``: the hinged edge of a single door.
    ``front``: where the leaves lie, of which board, with which gaps and pulls.
    ``hinge``: key of a hinge class.
    ``hinges``: hinges on each leaf, None takes what its height and weight ask for.
    ``cup_edge``: from the leaf's edge to the boring's, None takes the hinge's own.
    ``pull_height``: of the pull's middle above the floor, None takes 1,000 mm or the nearest.
    ``pull_edge``: from the pull's middle to the free edge of the leaf.
    """

    name: str
    spot: Spot
    leaves: int = 1
    hinged: Hinged = Hinged.LEFT
    front: FrontSpec = field(default_factory=lambda: FrontSpec(FrontKind.FULL))
    hinge: str = "concealed_110"
    hinges: int | None = None
    cup_edge: float | None = None
    pull_height: float | None = None
    pull_edge: float = 40.0


def build_doors(spec: DoorsSpec, opening: Opening, catalogue: Catalogue) -> Component:
    """The leaves with their borings, in the closet's frame; ``ClosetError`` for what cannot
    be built."""
    subject, front = opening.subject, spec.front
    if front.kind is FrontKind.NONE:
        raise ClosetError(subject, "front", front.kind.value, "must be inset or an overlay")
    check_gap(front, subject)
    if spec.leaves not in (1, 2):
        raise ClosetError(subject, "number of leaves", spec.leaves, "must be 1 or 2")
    hinge = catalogue.hinge(spec.hinge, subject=subject)
    board = catalogue.material(front.board(opening), subject=subject)
    require(subject, "thickness of a door", board.thickness, hinge.least_thickness,
            hinge.most_thickness, f"for a {hinge.title}")
    x0, x1, z0, z1 = lapped(front, opening)
    width = (x1 - x0 - (spec.leaves - 1) * front.gap) / spec.leaves
    require(subject, "width of a door", width, LEAST_LEAF, float("inf"))
    require(subject, "height of a door", z1 - z0, LEAST_LEAF, float("inf"))
    if front.kind is not FrontKind.INSET:
        sides = ((Hinged.LEFT, opening.box.x0 - x0), (Hinged.RIGHT, x1 - opening.box.x1))
        for side, lap in sides:
            if spec.leaves == 2 or side is spec.hinged:
                require(subject, f"overlay at the {side.value}", lap, 0.0, hinge.most_lap,
                        f"for a {hinge.title}")
    edges = [
        (x0 + i * (width + front.gap), hinged)
        for i, hinged in enumerate((Hinged.LEFT, Hinged.RIGHT) if spec.leaves == 2
                                   else (spec.hinged,))
    ]
    rear = opening.box.y0 + (board.thickness if front.kind is FrontKind.INSET else 0.0)
    parts, moves, borings, count = [], [], [], 0
    for x, hinged in edges:
        name = "door" if spec.leaves == 1 else f"{hinged.value} door"
        fitted = fit_front(front.lean, front.gap, opening.box, (x, x + width, z0, z1))
        panel, cups = _leaf(spec, opening, hinge, catalogue, fitted, hinged)
        check_panel(panel, f"{spec.name}: {name}", PLAIN)
        count += len(cups)
        if not opening.framed:
            borings += _plates(opening, hinge, hinged, rear, [fitted.z0 + at for at in cups])
        part = Part(name, spec.name, Role.DOOR, panel,
                    Place((fitted.x1, rear, fitted.z0), *FACING_UPRIGHT))
        parts.append(part)
        moves.append(Swing(name, frozenset({name}), part.box(), Turn(hinged.value), hinge.opens))
    needs = [HardwareNeed(hinge.item, count, "doors")]
    if front.pulls:
        needs.append(HardwareNeed("pull", spec.leaves, "doors"))
    return Component(
        spec.name, tuple(parts), box_around(parts), tuple(needs),
        _findings(spec, hinge, (width, z1 - z0), opening), moves=tuple(moves),
        borings=tuple(borings),
    )


def _plates(
    opening: Opening, hinge: HingeClass, hinged: Hinged, rear: float, heights: Sequence[float]
) -> list[Boring]:
    """The holes for the plates in the side that the hinges hold on to, at the cups' heights;
    ``rear``: of the leaf."""
    left = hinged is Hinged.LEFT
    x, into = (opening.box.x0, (-1.0, 0.0, 0.0)) if left else (opening.box.x1, (1.0, 0.0, 0.0))
    return [
        Boring(
            PLATES, opening.host, (x, rear + hinge.plate_front, z - hinge.plate_pitch / 2),
            (0.0, 0.0, hinge.plate_pitch), into, 2, hinge.plate_hole, hinge.plate_depth,
        )
        for z in heights
    ]


def _leaf(
    spec: DoorsSpec, opening: Opening, hinge: HingeClass, catalogue: Catalogue,
    size: Fitted, hinged: Hinged,
) -> tuple[Panel, tuple[float, ...]]:
    """A leaf, grain upright, and the heights of its cups above its lower end."""
    front, left = spec.front, hinged is Hinged.LEFT
    width, height, z0 = size.x1 - size.x0, size.z1 - size.z0, size.z0
    board = catalogue.material(front.board(opening), subject=spec.name)
    rims = (Rim.FRONT, Rim.REAR, Rim.START, Rim.END)
    bare = Panel(
        height, width, board.thickness, board.key, Grain.LENGTH if board.grained else Grain.NONE,
        bands=bands_for(catalogue, board.key, front.band, rims, spec.name),
        visible=frozenset(rims), tapers=size.upright(),
    )
    weight = bare.volume * board.density * 1e-9
    count = hinge.count(height, weight, opening.subject)
    if spec.hinges is not None:
        count = spec.hinges
    row = None if opening.framed else opening.rows[0 if left else 1]
    fits = row is not None and abs(row[1] - hinge.plate_pitch) < 1e-6
    at = hinge.positions(height, count, opening.subject, row[0] - z0 if row and fits else None)
    edge = hinge.cup_edge if spec.cup_edge is None else require(
        opening.subject, "edge distance of the cups", spec.cup_edge, 1.0, 20.0)
    across = edge + hinge.cup / 2
    in_left, in_right = size.inside_left, size.inside_right

    def y_at(z: float, from_edge: float, at_left: bool) -> float:
        """From the right of the leaf's rectangle, where its width starts."""
        return width - in_left(z) - from_edge if at_left else in_right(z) + from_edge

    ys = [y_at(z, across, left) for z in at]
    cup = HoleRow(
        CUPS, Face.LOWER, at[0], ys[0], hinge.cup, hinge.cup_depth, count, at[1] - at[0])
    holes = [cup]
    gaps = [b - a for a, b in pairwise(at)]
    if max(ys) - min(ys) > 1e-6 or max(gaps) - min(gaps) > 1e-6:
        # the cups follow an edge that leans, or a row of shelf pins
        holes = [replace(cup, x=z, y=y, count=1) for z, y in zip(at, ys, strict=True)]
    if front.pulls:
        if front.pulls != 1:
            raise ClosetError(opening.subject, "pulls", front.pulls, "must be 0 or 1 on a door")
        pull = _pull_height(spec, opening, height, z0)
        free = y_at(pull, spec.pull_edge, not left)
        require(opening.subject, "distance of the pull from the free edge", spec.pull_edge,
                front.pull_hole, width - across - hinge.cup / 2 - front.pull_hole)
        holes += front.pull_holes(
            Face.UPPER, [(pull, free)], board.thickness, Run.LENGTH, opening.subject)
    return replace(bare, holes=tuple(holes)), at


def _pull_height(spec: DoorsSpec, opening: Opening, height: float, z0: float) -> float:
    """Of the pull's middle above the lower end of the leaf."""
    least = PULL_FROM_END + spec.front.pull_spacing / 2
    most = max(height - least, least)
    if spec.pull_height is None:
        return min(max(PULL_ABOVE_FLOOR - z0, least), most)
    return require(
        opening.subject, "height of the pull", spec.pull_height, z0 + least, z0 + most,
        "above the floor, to lie on the door",
    ) - z0


def _findings(
    spec: DoorsSpec, hinge: HingeClass, size: tuple[float, float], opening: Opening
) -> tuple[Finding, ...]:
    (width, height), form = size, opening.figures
    found = [Finding(
        Severity.NOTE, spec.name, "hinge-sheet",
        f"the boring for the {hinge.title} is common practice: compare it with the sheet of the "
        "hinge in hand, and bore a trial piece first", hinge.source,
        f"{form.small(hinge.cup)}, {form.small(hinge.cup_depth)} deep",
    )]
    if opening.framed:
        found.append(Finding(
            Severity.NOTE, spec.name, "plates-on-frame",
            "its hinges hold on to the face frame: take plates for frames, or pack the sides out "
            "flush with it; their holes are not drilled", hinge.source,
        ))
    if spec.front.lean.any:
        found.append(out_of_square(
            spec.name, "set the hinges so that their axis is plumb, or the door swings by itself"))
    if width > hinge.widest:
        found.append(Finding(
            Severity.WARNING, spec.name, "wide-door",
            "is wider than the number of hinges is meant for: it sags and pulls on them; make a "
            "pair of it", hinge.source, form.length(width), form.length(hinge.widest),
        ))
    by_height = hinge.count(height, 0.0, spec.name)
    if spec.hinges is not None and spec.hinges < by_height:
        found.append(Finding(
            Severity.WARNING, spec.name, "few-hinges",
            "has fewer hinges than its height asks for", hinge.source, f"{spec.hinges}",
            f"at least {by_height}",
        ))
    return tuple(found)
