"""The shelves of a built carcass as beams, and what its fixed shelves hang on."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

from closetbench.core.component import Component, fastener_count
from closetbench.core.errors import ClosetError
from closetbench.core.figures import GRAVITY, Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.fixings import FASTENERS, LATERAL_SHARE, board_lateral
from closetbench.core.frame import NAIL, SCREW, SHORT_SCREW
from closetbench.core.grades import allowed_stress, shear_modulus
from closetbench.core.handling import DENSITIES
from closetbench.core.joinery import Joint
from closetbench.core.loads import CRITERIA, Criterion, ShelfUse
from closetbench.core.materials import Catalogue, Material
from closetbench.core.panel import Box, Grain
from closetbench.core.parts import Part, Role
from closetbench.core.shelves import Hold, Shelf, Strip, check
from closetbench.core.shoe_shelves import CLEAT_SCREW, SCREWS_PER_CLEAT
from closetbench.core.specs import CarcassSpec, TopKind

ROOM_ABOVE = 100.0
"""A top with less room above it than this carries nothing, mm."""

LIP_COVERS = 0.9
"""Share of a shelf's length that a lip must run along to count; what is missing at the ends,
where the moment is small, does not matter."""

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
    lips = lips_in(component)
    for part in component.parts:
        if part.role in (Role.FIXED_SHELF, Role.ADJUSTABLE_SHELF):
            found.append(_shelf(part, component, spec, lips, catalogue))
        elif part.role is Role.TOP and height - part.box().z1 >= ROOM_ABOVE:
            found += _top(part, component, catalogue)
        elif part.role is Role.BOTTOM:
            found += _bottom(part, component, catalogue)
    groups: dict[tuple[object, ...], list[Shelf]] = {}
    for shelf in found:
        key = (
            shelf.board.key, round(shelf.span, 1), round(shelf.depth, 1), shelf.hold,
            shelf.along, shelf.lip,
        )
        groups.setdefault(key, []).append(shelf)
    return list(groups.values())


def _shelf(
    part: Part, component: Component, spec: CarcassSpec, lips: Lips, catalogue: Catalogue
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
        part.full_name, board, span, part.panel.width, hold,
        part.panel.grain is not Grain.WIDTH, lip_of(part, lips, catalogue),
    )


Lips = Sequence[tuple[Box, Part]]


def lips_in(component: Component) -> Lips:
    """The lips of a component, each with its box."""
    return [(p.box(), p) for p in component.parts if p.role is Role.LIP]


def lip_of(shelf: Part, lips: Lips, catalogue: Catalogue) -> Strip | None:
    """The strip along the front edge of a shelf, level with its upper face, that stiffens it:
    one at least as high as the shelf is thick, over nearly all of its length. None where
    there is none."""
    box = shelf.box()
    for strip, part in lips:
        covers = min(strip.x1, box.x1) - max(strip.x0, box.x0)
        if (
            abs(strip.y1 - box.y0) < 1.0
            and abs(strip.z1 - box.z1) < 1.0 and strip.z0 < box.z0 + 1e-6
            and covers > LIP_COVERS * (box.x1 - box.x0)
        ):
            board = catalogue.material(part.panel.material, subject=part.full_name)
            along = part.panel.grain is not Grain.WIDTH
            e = board.e_along if along else board.e_across
            return Strip(
                strip.y1 - strip.y0, strip.z1 - strip.z0, e, shear_modulus(board, e),
                allowed_stress(board, along),
            )
    return None


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


_KEYS = {Joint.SCREWS: SCREW, Joint.NAILS: NAIL, Joint.CLEATS: SHORT_SCREW}


def shoe_shelves(component: Component, catalogue: Catalogue) -> list[list[Shelf]]:
    """Shoe shelves as beams from cleat to cleat, all alike. The slope and the stop, which is
    screwed but not glued, are left out of account."""
    found = []
    for part in component.parts:
        if part.role is Role.SHOE_SHELF:
            board = catalogue.material(part.panel.material, subject=part.full_name)
            found.append(Shelf(
                part.full_name, board, part.panel.length - board.thickness, part.panel.width,
                Hold.CLEATS, part.panel.grain is not Grain.WIDTH,
            ))
    return [found] if found else []


def joint_findings(
    component: Component, spec: CarcassSpec, groups: Sequence[Sequence[Shelf]],
    use: Criterion, catalogue: Catalogue, figures: Figures,
) -> Iterable[Finding]:
    """What the ends of fixed shelves, and of a loaded top between the sides, hang on where
    that is screws or nails, loaded sideways.

    Grooves carry on wood and are not in question.
    """
    between = f"{component.name}: top" if spec.top is TopKind.BETWEEN else ""
    for group in groups:
        joint, hung = spec.shelf_joint, group
        if group[0].hold is Hold.OVER:
            joint, hung = spec.joint, [s for s in group if s.name == between]
        elif group[0].hold is not _HOLDS[joint]:
            continue
        key = _KEYS.get(joint)
        if key is not None and hung:
            yield from _fixing(
                hung, key, fastener_count(hung[0].depth), hung[0].board, joint is Joint.CLEATS,
                use, catalogue, figures)


def cleat_screw_findings(
    groups: Sequence[Sequence[Shelf]], holder: str, use: Criterion, catalogue: Catalogue,
    figures: Figures,
) -> Iterable[Finding]:
    """The screws of the cleats under shoe shelves, in the carcass's sides."""
    for group in groups:
        board = catalogue.material(holder, subject=group[0].name)
        yield from _fixing(
            group, CLEAT_SCREW, SCREWS_PER_CLEAT, board, True, use, catalogue, figures)


def sideways_verdict(load: float, held: float) -> tuple[Severity, str]:
    """How much it matters that screws or nails that may hold ``held`` N sideways carry
    ``load`` N, and the words to begin with: beyond the handbook's load at 0.38 mm of slip,
    where they yield for good, somebody may be hurt."""
    if load <= held:
        return Severity.NOTE, ""
    if load <= held / LATERAL_SHARE:
        return Severity.WARNING, "works loose in time: "
    return Severity.DANGER, "may come down: "


def _fixing(
    group: Sequence[Shelf], key: str, count: int, holder: Material, cleats: bool,
    use: Criterion, catalogue: Catalogue, figures: Figures,
) -> Iterable[Finding]:
    """``count`` fasteners at each end of a shelf, with their points in ``holder``: in its face
    where they go through ``cleats``, in the shelf's own end where not."""
    shelf, fastener = group[0], FASTENERS[key]
    own = shelf.board.weight(shelf.span, shelf.depth) * GRAVITY
    load = (use.load(shelf.span, shelf.depth) + use.centre + own) / 2
    reach = fastener.length - shelf.board.thickness
    title = catalogue.hardware[key].title if key in catalogue.hardware else key
    names = tuple(s.name for s in group)
    what = "end cleats" if cleats else "ends"
    each = f"each of its {what} carries {figures.force(load)} on {count} x {title}"
    try:
        hold, source = board_lateral(holder, fastener, max(reach, 0.1), end=not cleats)
    except ClosetError as error:
        yield Finding(
            Severity.NOT_CHECKED, shelf.name, "shelf-fixing",
            f"not checked: {each}: {error.limit}", value=figures.force(load), parts=names,
        )
        return
    longer = "longer or more of them, glue as well, or grooves"
    if hold == 0:
        yield Finding(
            Severity.WARNING, shelf.name, "shelf-fixing",
            f"{each}, which reach only {figures.small(reach)} into what holds them: no load "
            "is published for that", source, figures.force(load), "",
            f"glue the {what} as well, which then carries; or grooves", parts=names,
        )
        return
    low, high = (
        count * board_lateral(holder, fastener, reach, not cleats, d)[0]
        for d in DENSITIES[holder.kind][:2]
    )
    held = hold * count
    severity, lead = sideways_verdict(load, held)
    yield Finding(
        severity, shelf.name, "shelf-fixing", f"{lead}{each}", source,
        figures.force(load), figures.force(held), longer if load > held else "",
        f"{figures.force(min(low, held))} to {figures.force(max(high, held))} by the density "
        "published for the board", names,
    )
