"""How the components of a closet meet when they move: drawers, doors, lids, clothes.

What takes the same space at rest is in ``conflicts``; here is what gets in the way of what
moves, and what stands where clothes hang. Every finding names both.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import combinations

from closetbench.core.bodies import Body
from closetbench.core.component import Component
from closetbench.core.conflicts import shares_with_box
from closetbench.core.envelope import Envelope
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.moves import Pull, Swing, Turn, Zone
from closetbench.core.panel import Box
from closetbench.core.parts import Role
from closetbench.core.room import Opening, Room
from closetbench.core.survey import OwnDoor

FAR = 10_000.0
"""How far the walls beside and above an opening are taken to reach, mm."""
STEP = 1
"""Degrees between the positions of a door that are looked at."""
SLIDING_LAP = 25.0
"""How far sliding panels lap over each other, mm: common practice, no published source."""
CLOSE = 5.0
"""What a drawer should have to spare beside a jamb and under a lintel, mm."""
TOUCH = 0.01
"""Things that meet by less than this only touch, mm."""

Section = tuple[float, float, float, float]
Corner = tuple[float, float]


def meeting_findings(
    components: Sequence[Component], walls: Sequence[tuple[str, Box]] = (),
    figures: Figures | None = None,
) -> list[Finding]:
    """What stands in the way of drawers, doors, lids and clothes.

    ``walls``: boxes of the building that nothing moves through, with their names;
    ``figures`` prints lengths.
    """
    form = figures or Figures()
    bodies = [(c, b) for c in components for b in c.bodies]
    found = _in_walls(bodies, walls)
    swings = [(c, m) for c in components for m in c.moves if isinstance(m, Swing)]
    pulls = [(c, m) for c in components for m in c.moves if isinstance(m, Pull)]
    angles = {}
    for c, swing in swings:
        angle, by = free_angle(swing, _others(bodies, c, swing.bodies), walls)
        angles[id(swing)] = angle
        if angle < swing.needed:
            found.append(_blocked_swing(c, swing, angle, by))
    for (c, first), (d, second) in combinations(swings, 2):
        a, b = (min(s.opens, angles[id(s)], s.needed) for s in (first, second))
        if _open_clash(first, a, second, b):
            found.append(Finding(
                Severity.NOTE, _name(d, second), "doors-meet",
                f"cannot stand open while {_name(c, first)} does", value=f"{b:g}° open",
                parts=(_name(c, first),),
            ))
    for c, pull in pulls:
        found += _pull_findings(c, pull, bodies, walls, swings, angles, form)
    for c in components:
        for zone in c.zones:
            found += _zone_findings(c, zone, bodies, form)
    return found


def room_blocks(room: Room | None, envelope: Envelope) -> tuple[tuple[str, Box], ...]:
    """The walls beside and above the opening, casing included, and what always stands in it of
    the closet's own door, as boxes in the closet's frame."""
    gap = room.opening if room else None
    if gap is None:
        return ()
    x0, x1 = gap.x0 - envelope.x0, gap.x1 - envelope.x0
    y0, y1 = -gap.depth - gap.casing_thickness - envelope.y0, -envelope.y0
    z1 = gap.z1 - envelope.z0
    return (
        ("the left return", Box(-FAR, y0, -FAR, x0, y1, FAR)),
        ("the right return", Box(x1, y0, -FAR, FAR, y1, FAR)),
        ("the wall above the opening", Box(-FAR, y0, z1, FAR, y1, FAR)),
        *_own_door(gap, envelope),
    )


def _own_door(gap: Opening, envelope: Envelope) -> Iterator[tuple[str, Box]]:
    """What of the closet's own door stands in the way when it is open: hinged leaves as far
    as they open, in boxes around them; of sliding panels where they lap in the middle, since
    one of them is always there."""
    x0, x1 = gap.x0 - envelope.x0, gap.x1 - envelope.x0
    y, thick, z1 = -gap.depth - envelope.y0, gap.door_thickness, gap.z1 - envelope.z0
    middle = (x0 + x1) / 2
    if gap.door is OwnDoor.SLIDING:
        lap = SLIDING_LAP / 2
        yield "the middle of the closet's sliding panels", Box(
            middle - lap, y, -FAR, middle + lap, y + 2 * thick, z1)
    leaves = {
        OwnDoor.LEFT: ((Turn.LEFT, x0, x1),), OwnDoor.RIGHT: ((Turn.RIGHT, x0, x1),),
        OwnDoor.PAIR: ((Turn.LEFT, x0, middle), (Turn.RIGHT, middle, x1)),
    }
    for turn, a, b in leaves.get(gap.door, ()):
        shut = Box(a, y, -FAR, b, y + thick, z1)
        leaf = Swing("door", frozenset(), shut, turn, gap.door_opens)
        xs, ys = zip(*leaf.outline(gap.door_opens), strict=True)
        yield "the closet's own door, open", Box(min(xs), min(ys), -FAR, max(xs), max(ys), z1)


def _in_walls(
    bodies: Iterable[tuple[Component, Body]], walls: Sequence[tuple[str, Box]]
) -> list[Finding]:
    """What stands in a wall; single panels lie in front of the closet and do not count."""
    return [
        Finding(
            Severity.WARNING, b.full_name, "in-the-wall", f"stands in {name}", "geometry",
            parts=(name,),
        )
        for _, b in bodies if b.role is not Role.PANEL
        for name, box in walls if shares_with_box(b, box)
    ]


def _others(
    bodies: Iterable[tuple[Component, Body]], own: Component, moving: frozenset[str]
) -> list[Body]:
    return [b for c, b in bodies if c is not own or b.name not in moving]


def free_angle(
    swing: Swing, bodies: Iterable[Body], walls: Iterable[tuple[str, Box]]
) -> tuple[float, str]:
    """How far a door or lid opens, degrees, and what stops it short of ``opens``.

    Looked at degree by degree; everything counts as the box around it. What it meets
    when shut is no matter of swinging.
    """
    reach = swing.reach()
    blocks = [
        (name, section) for name, box in (*((b.full_name, b.box()) for b in bodies), *walls)
        if box.overlaps(reach) and (section := swing.section(box)) is not None
    ]
    shut = swing.outline(0.0)
    blocks = [(n, s) for n, s in blocks if not _cross(shut, s)]
    for angle in range(STEP, int(swing.opens) + 1, STEP):
        outline = swing.outline(angle)
        for name, section in blocks:
            if _cross(outline, section):
                return float(angle - STEP), name
    return swing.opens, ""


def _cross(outline: Sequence[Corner], section: Section) -> bool:
    """Whether a turned rectangle and an upright one share area."""
    u0, v0, u1, v1 = section
    square = ((u0, v0), (u1, v0), (u1, v1), (u0, v1))
    return _convex_cross(outline, square)


def _convex_cross(p: Sequence[Corner], q: Sequence[Corner]) -> bool:
    for ring in (p, q):
        for (ax, ay), (bx, by) in zip(ring, (*ring[1:], ring[0]), strict=True):
            nx, ny = by - ay, ax - bx
            size = (nx * nx + ny * ny) ** 0.5
            if size < 1e-9:
                continue
            first = [(nx * x + ny * y) / size for x, y in p]
            second = [(nx * x + ny * y) / size for x, y in q]
            if min(max(first), max(second)) - max(min(first), min(second)) <= TOUCH:
                return False
    return True


def _name(component: Component, move: Pull | Swing) -> str:
    return f"{component.name}: {move.name}"


def _blocked_swing(component: Component, swing: Swing, angle: float, by: str) -> Finding:
    return Finding(
        Severity.WARNING, _name(component, swing), "swing-blocked",
        f"opens only {angle:g}°, then {by} is in the way", "geometry, hinges taken to turn "
        "about the edge of the leaf", f"{angle:g}°", f"at least {swing.needed:g}°",
        "hinge it on the other side, make it narrower or part it in two", parts=(by,),
    )


def _open_clash(first: Swing, a: float, second: Swing, b: float) -> bool:
    if (first.turn.value == "up") != (second.turn.value == "up"):
        return False
    p, q = first.outline(a), second.outline(b)
    us = [u for u, _ in q]
    vs = [v for _, v in q]
    lies = second.section(second.box) is not None and first.section(second.box) is not None
    around = max(us) > min(u for u, _ in p) and max(vs) > min(v for _, v in p)
    return lies and around and _convex_cross(p, q)


def _pull_findings(
    component: Component, pull: Pull, bodies: Sequence[tuple[Component, Body]],
    walls: Sequence[tuple[str, Box]], swings: Sequence[tuple[Component, Swing]],
    angles: dict[int, float], form: Figures,
) -> Iterator[Finding]:
    swept = pull.swept()
    name = _name(component, pull)
    leaves = {(id(c), b) for c, s in swings for b in s.bodies}
    still = [(c, b) for c, b in bodies if (id(c), b.name) not in leaves]
    blocked = [n for n, _ in in_the_way(component, pull, still, walls)]
    if blocked:
        yield Finding(
            Severity.WARNING, name, "pull-blocked",
            f"cannot come out: {', '.join(blocked)} in the way", "geometry",
            f"{form.length(pull.travel)} of travel", "free", parts=tuple(blocked),
        )
    near = [
        n for n, box in walls
        if n not in blocked and any(box.overlaps(_wider(s)) for s in swept)
    ]
    if near:
        yield Finding(
            Severity.WARNING, name, "pull-close",
            f"comes out with less than {form.length(CLOSE)} to spare beside {', '.join(near)}: "
            "the tape knows it no better; move it away or measure there again",
            "common practice, no published source", limit=form.length(CLOSE), parts=tuple(near),
        )
    for c, swing in swings:
        if not any(swing.box.overlaps(s) for s in swept):
            continue
        leaf = _name(c, swing)
        angle = min(angles[id(swing)], swing.opens)
        outline = swing.outline(min(angle, 90.0))
        if swing.turn.value != "up" and any(
            _cross(outline, (s.x0, s.y0, s.x1, s.y1)) for s in swept
        ):
            yield Finding(
                Severity.WARNING, name, "pull-behind-door",
                f"does not clear {leaf}, which stands before it when open: keep the pull-out "
                "farther from the hinges, or take hinges that throw the door clear",
                "geometry, hinges taken to turn about the edge of the leaf",
                f"{min(angle, 90.0):g}° open", "clear of the door", parts=(leaf,),
            )
        else:
            yield Finding(
                Severity.NOTE, name, "pull-behind-door",
                f"comes out only after {leaf} is opened to {min(angle, 90.0):g}° or more",
                parts=(leaf,),
            )


def _wider(box: Box) -> Box:
    return Box(box.x0 - CLOSE, box.y0, box.z0, box.x1 + CLOSE, box.y1, box.z1 + CLOSE)


def in_the_way(
    component: Component, pull: Pull, bodies: Iterable[tuple[Component, Body]],
    walls: Iterable[tuple[str, Box]],
) -> list[tuple[str, Box]]:
    """What a drawer or pull-out of a component runs into, with the box around it; doors and
    lids are to be left out of ``bodies``, since they open."""
    swept = pull.swept()
    found = [
        (b.full_name, b.box()) for c, b in bodies
        if (c is not component or b.name not in pull.bodies)
        and any(shares_with_box(b, box) for box in swept)
        and not any(shares_with_box(b, box) for box in pull.boxes)
    ]
    return found + [(n, box) for n, box in walls if any(box.overlaps(s) for s in swept)]


def _zone_findings(
    component: Component, zone: Zone, bodies: Iterable[tuple[Component, Body]], form: Figures
) -> Iterator[Finding]:
    inside = [
        b.full_name for c, b in bodies if c is not component and shares_with_box(b, zone.box)
    ]
    if inside:
        yield Finding(
            Severity.NOTE, f"{component.name}: {zone.name}", "zone-taken",
            f"{zone.use} need the place of {', '.join(inside)}",
            "common practice, no published source",
            f"{form.length(zone.box.z1 - zone.box.z0)} below it", parts=tuple(inside),
        )
