"""The shelves of a built carcass as beams, and what its fixed shelves hang on."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

from closetbench.core.component import Component, fastener_count
from closetbench.core.errors import ClosetError
from closetbench.core.figures import GRAVITY, Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.fixings import FASTENERS, board_lateral
from closetbench.core.frame import NAIL, SCREW, SHORT_SCREW
from closetbench.core.joinery import Joint
from closetbench.core.loads import CRITERIA, Criterion, ShelfUse
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Grain
from closetbench.core.parts import Part, Role
from closetbench.core.shelves import Hold, Shelf, check
from closetbench.core.specs import CarcassSpec

ROOM_ABOVE = 100.0
"""A top with less room above it than this carries nothing, mm."""

_HOLDS = {
    Joint.GROOVE: Hold.GROOVES, Joint.CLEATS: Hold.CLEATS,
    Joint.SCREWS: Hold.FASTENERS, Joint.NAILS: Hold.FASTENERS,
}


def loaded_shelves(
    component: Component, spec: CarcassSpec, height: float, catalogue: Catalogue
) -> list[list[Shelf]]:
    """The shelves, the bottom and, where ``height`` leaves room above it, the top of a
    carcass, those that are alike together."""
    found: list[Shelf] = []
    for part in component.parts:
        if part.role in (Role.FIXED_SHELF, Role.ADJUSTABLE_SHELF):
            found.append(_shelf(part, component, spec, catalogue))
        elif part.role is Role.TOP and height - part.box().z1 >= ROOM_ABOVE:
            found += _top(part, component, catalogue)
        elif part.role is Role.BOTTOM:
            found += _bottom(part, component, catalogue)
    groups: dict[tuple[object, ...], list[Shelf]] = {}
    for shelf in found:
        key = (
            shelf.board.key, round(shelf.span, 1), round(shelf.depth, 1), shelf.hold, shelf.along
        )
        groups.setdefault(key, []).append(shelf)
    return list(groups.values())


def _shelf(
    part: Part, component: Component, spec: CarcassSpec, catalogue: Catalogue
) -> Shelf:
    clear = _clear(part, component)
    board = catalogue.material(part.panel.material, subject=part.full_name)
    hold = Hold.PINS if part.role is Role.ADJUSTABLE_SHELF else _HOLDS[spec.shelf_joint]
    span = clear
    if hold is Hold.GROOVES:
        span = (clear + part.panel.length) / 2
    elif hold is Hold.CLEATS:
        span = clear - board.thickness
    return Shelf(
        part.full_name, board, span, part.panel.width, hold, part.panel.grain is not Grain.WIDTH
    )


def _clear(part: Part, component: Component) -> float:
    """Clear width of the bay that a shelf lies in; its own length where it lies in none."""
    box = part.box()
    middle = (box.x0 + box.x1) / 2
    for bay in component.bays:
        if bay.space.x0 < middle < bay.space.x1:
            return bay.space.x1 - bay.space.x0
    return part.panel.length


def _top(part: Part, component: Component, catalogue: Catalogue) -> list[Shelf]:
    """The top over each bay, from middle to middle of what carries it."""
    board = catalogue.material(part.panel.material, subject=part.full_name)
    along = part.panel.grain is not Grain.WIDTH
    spans = [b.space.x1 - b.space.x0 + board.thickness for b in component.bays]
    return [
        Shelf(part.full_name, board, max(spans), part.panel.width, Hold.OVER, along)
    ] if spans else []


def _bottom(part: Part, component: Component, catalogue: Catalogue) -> list[Shelf]:
    """The bottom on its base: from front to rear rail across the sheet, or from cross
    member to cross member along it, whichever sags less; nothing where it lies on the
    floor. It carries both ways, so this is more than it will sag."""
    board = catalogue.material(part.panel.material, subject=part.full_name)
    bearers = [
        p.box() for p in component.parts if p.role in (Role.BASE_FRAME, Role.TOE_KICK)
    ]
    rails = sorted((b.y0 + b.y1) / 2 for b in bearers if b.x1 - b.x0 > b.y1 - b.y0)
    cross = sorted((b.x0 + b.x1) / 2 for b in bearers if b.x1 - b.x0 <= b.y1 - b.y0)
    along = part.panel.grain is not Grain.WIDTH
    ways: list[Shelf] = []
    if len(rails) > 1:
        ways.append(Shelf(
            part.full_name, board, max(b - a for a, b in pairwise(rails)), part.panel.length,
            Hold.OVER, not along,
        ))
    if len(cross) > 1:
        ways.append(Shelf(
            part.full_name, board, max(b - a for a, b in pairwise(cross)), part.panel.width,
            Hold.OVER, along,
        ))
    general = CRITERIA[ShelfUse.GENERAL]
    best = min(ways, key=lambda s: (r := check(s, general)).sag / r.limit, default=None)
    return [best] if best else []


def joint_findings(
    component: Component, spec: CarcassSpec, groups: Sequence[Sequence[Shelf]],
    use: Criterion, catalogue: Catalogue, figures: Figures,
) -> Iterable[Finding]:
    """What the ends of fixed shelves hang on where that is screws or nails, loaded sideways.

    Grooves carry on wood and are not in question.
    """
    joint = spec.shelf_joint
    if joint is Joint.GROOVE:
        return
    key = {Joint.SCREWS: SCREW, Joint.NAILS: NAIL, Joint.CLEATS: SHORT_SCREW}[joint]
    fastener = FASTENERS[key]
    what = "end cleats" if joint is Joint.CLEATS else "ends"
    for group in groups:
        shelf = group[0]
        if shelf.hold is not _HOLDS[joint] or shelf.hold is Hold.OVER:
            continue
        own = shelf.board.weight(shelf.span, shelf.depth) * GRAVITY
        load = (use.load(shelf.span, shelf.depth) + own) / 2
        count = fastener_count(shelf.depth)
        reach = fastener.length - shelf.board.thickness
        title = catalogue.hardware[key].title if key in catalogue.hardware else key
        names = tuple(s.name for s in group)
        each = f"each of its {what} carries {figures.force(load)} on {count} x {title}"
        try:
            hold, source = board_lateral(
                shelf.board, fastener, max(reach, 0.1), end=joint is not Joint.CLEATS)
        except ClosetError as error:
            yield Finding(
                Severity.NOT_CHECKED, shelf.name, "shelf-fixing",
                f"not checked: {each}: {error.limit}", value=figures.force(load), parts=names,
            )
            continue
        longer = "longer or more of them, glue as well, or grooves"
        if hold == 0:
            yield Finding(
                Severity.WARNING, shelf.name, "shelf-fixing",
                f"{each}, which reach only {figures.small(reach)} into what holds them: no load "
                "is published for that", source, figures.force(load), "", longer, parts=names,
            )
        elif load > hold * count:
            yield Finding(
                Severity.DANGER, shelf.name, "shelf-fixing", f"may come down: {each}", source,
                figures.force(load), figures.force(hold * count), longer, parts=names,
            )
