"""What hangs on hinges and on nails: doors and face frames. Lengths mm, forces N."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from closetbench.core.component import Component
from closetbench.core.errors import ClosetError
from closetbench.core.figures import GRAVITY, POUND_FORCE, Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.fixings import (
    FASTENERS,
    SAFETY,
    Fastener,
    board_lateral,
    board_withdrawal,
)
from closetbench.core.handling import DENSITIES, part_weight
from closetbench.core.hinges import CUPS
from closetbench.core.materials import Catalogue
from closetbench.core.parts import Part, Role

PLATE_SCREWS = 2
"""Screws of a hinge's plate in the side, and of its cup in the door."""
PLATE_SCREW = "screw_35x16"
SKIN = 2.0
"""mm of board that stays under the point of a screw."""
PLATE_GAP = 1.5
"""mm of a screw's length that plate or cup flange take."""
RACKING, RACKING_ARM = 65 * POUND_FORCE, 254.0
"""N and mm: 65 lb hung on an open door, 10 in from its hinges, ANSI/KCMA A161.1, 6.1 (as
quoted)."""
HINGE_SOURCE = (
    "statics: the door's weight turns about its hinges, the top one is pulled; test load: "
    "ANSI/KCMA A161.1, 6.1 (as quoted)"
)


def door_findings(
    component: Component, holder: str, catalogue: Catalogue, figures: Figures
) -> Iterable[Finding]:
    """The pull on the top hinge of each leaf: by the leaf's weight for years against what its
    screws may hold, and with somebody leaning on it against what pulls them out.

    ``holder``: key of the board that the plates are screwed to.
    """
    groups: dict[tuple[float, ...], list[tuple[Part, tuple[float, ...]]]] = {}
    for part in component.parts:
        cups = tuple(sorted(
            x for row in part.panel.holes if row.name == CUPS for x, _ in row.centres()))
        if part.role is Role.DOOR and len(cups) > 1:
            p = part.panel
            key = (
                round(p.length, 1), round(p.width, 1), p.thickness, len(cups),
                round(cups[-1] - cups[0], 1),
            )
            groups.setdefault(key, []).append((part, cups))
    for group in groups.values():
        names = tuple(p.full_name for p, _ in group)
        yield replace(_leaf(*group[0], holder, catalogue, figures), parts=names)


def _leaf(
    part: Part, cups: tuple[float, ...], holder: str, catalogue: Catalogue, figures: Figures
) -> Finding:
    board = catalogue.material(part.panel.material, subject=part.full_name)
    side = catalogue.material(holder, subject=part.full_name)
    mass = part_weight(part, catalogue)
    apart = cups[-1] - cups[0]
    # the leaf's middle lies half its width from the hinges
    pull = mass * GRAVITY * part.panel.width / 2 / apart
    racked = pull + RACKING * RACKING_ARM / apart
    screw = FASTENERS[PLATE_SCREW]

    def hold(extreme: int | None = None) -> tuple[float, str]:
        """What the weaker of plate and cup may hold, N, at the board's own density or at the
        least (0) or greatest (1) published for its kind."""
        found = []
        for b in (side, board):
            depth = min(screw.length - PLATE_GAP, b.thickness - SKIN)
            density = None if extreme is None else DENSITIES[b.kind][:2][extreme]
            found.append(board_withdrawal(b, screw, depth, density=density))
        value, source = min(found, key=lambda pair: pair[0])
        return PLATE_SCREWS * value, source

    text = (
        f"its top hinge is pulled with {figures.force(pull)} by its own {figures.mass(mass)}, and "
        f"with {figures.force(racked)} when somebody leans on it as in the test"
    )
    try:
        allowed, source = hold()
        least, most = hold(0)[0], hold(1)[0]
    except ClosetError as error:
        return Finding(
            Severity.NOT_CHECKED, part.full_name, "hinge-screws",
            f"not checked: {text}: {error.limit}", value=figures.force(pull),
        )
    ultimate = allowed * SAFETY[screw.kind]
    spread = (
        f"{figures.force(min(least, allowed))} to {figures.force(max(most, allowed))} by the "
        "density published for the boards"
    )
    fix = (
        "a lighter or narrower leaf, hinges further apart, or longer screws into a doubled side; "
        "screws in a board near its edge need pilot holes"
    )
    if pull <= allowed and racked <= ultimate:
        return Finding(
            Severity.NOTE, part.full_name, "hinge-screws", text,
            f"{HINGE_SOURCE}; {source}", figures.force(pull), figures.force(allowed), "", spread,
        )
    falls = pull > ultimate
    why = "" if pull > allowed else ", which pulls its screws out"
    return Finding(
        Severity.DANGER if falls else Severity.WARNING, part.full_name, "hinge-screws",
        f"{'may come down' if falls else 'works loose in time'}: {text}{why}",
        f"{HINGE_SOURCE}; {source}",
        figures.force(pull if pull > allowed else racked),
        figures.force(allowed if pull > allowed else ultimate), fix, spread,
    )


def frame_findings(
    component: Component, holder: str, nail: str, catalogue: Catalogue, figures: Figures
) -> Iterable[Finding]:
    """What a face frame hangs on: its nails in the edges of the carcass, sideways. It carries
    itself alone: being nailed, not glued, it is not counted as stiffening the shelves."""
    part = component.parts[0]
    frame = catalogue.material(part.panel.material, subject=component.name)
    board = catalogue.material(holder, subject=component.name)
    fastener: Fastener = FASTENERS[nail]
    count = sum(h.count for h in component.hardware if h.key == nail)
    weight = sum(part_weight(p, catalogue) for p in component.parts) * GRAVITY
    title = catalogue.item(nail).title
    text = f"its own {figures.mass(weight / GRAVITY)} hang on {count} x {title}"
    depth = fastener.length - frame.thickness
    try:
        each, source = board_lateral(board, fastener, max(depth, 0.1), end=True)
        low, high = (
            count * board_lateral(board, fastener, max(depth, 0.1), True, d)[0]
            for d in DENSITIES[board.kind][:2]
        )
        draw, _ = board_withdrawal(board, fastener, max(depth, 0.1), edge=True)
    except ClosetError:
        yield Finding(
            Severity.NOT_CHECKED, component.name, "frame-nails",
            f"not checked: {text} in the edges of {board.title}, for which nothing is published: "
            "glue it on as well, or screw it on through the sides", value=figures.force(weight),
        )
        return
    held = each * count
    yield Finding(
        Severity.NOTE if weight <= held else Severity.WARNING, component.name, "frame-nails",
        f"{text}; a nail may be pulled with {figures.force(draw)}, so glue it on where doors hang "
        "on it", source, figures.force(weight), figures.force(held),
        "" if weight <= held else "more or longer nails, or glue",
        f"{figures.force(min(low, held))} to {figures.force(max(high, held))} by the density "
        "published for the board", tuple(p.full_name for p in component.parts),
    )
