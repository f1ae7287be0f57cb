"""Which pieces of a closet do not go in, and what follows for how it is built."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace

from closetbench.core.access import PLAY, Access, Entrance, Piece, Size, entrance, way_in
from closetbench.core.component import Component
from closetbench.core.envelope import Envelope
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.pieces import Load, is_carried, loads_in
from closetbench.core.room import Room

_SOURCE = (
    f"geometry; ways that turn are searched with {PLAY:g} mm to spare all round, the closet "
    "empty and its own door taken off"
)


def access_findings(
    components: Iterable[Component], room: Room | None, envelope: Envelope,
    figures: Figures | None = None,
) -> tuple[list[Finding], tuple[Access, ...]]:
    """Everything that does not go in whole, and every part of it that does not either."""
    way = entrance(room, envelope) if room else None
    if room is None or way is None:
        return [], ()
    form = figures or Figures()
    known: dict[tuple[Size, bool], Access] = {}
    ways: list[Access] = []

    def ask(piece: Piece) -> Access:
        sizes = (round(piece.size[0], 3), round(piece.size[1], 3), round(piece.size[2], 3))
        key = sizes, piece.in_parts
        if key not in known:
            known[key] = way_in(piece, way, not piece.in_parts, form)
        ways.append(replace(known[key], piece=piece))
        return ways[-1]

    found = []
    for component in filter(is_carried, components):
        loads = list(loads_in(component))
        whole = [x for x in loads if x.whole]
        assembled = frozenset().union(*(x.bodies for x in whole))
        loose = [x for x in loads if not x.bodies & assembled]
        for load in (*whole, *loose):
            found += _outcome(load, loads, ask, way, form)
    if ways and room.obstacles:
        names = ", ".join(o.name for o in room.obstacles)
        found.append(Finding(
            Severity.NOT_CHECKED, "access", "ways-past-obstacles",
            f"ways in are looked for as if these were not there: {names}; see that the largest "
            "pieces pass them on their way", _SOURCE,
        ))
    return found, tuple(ways)


def _outcome(
    load: Load, loads: Sequence[Load], ask: Callable[[Piece], Access], way: Entrance,
    form: Figures,
) -> list[Finding]:
    """What is to be said of one piece: nothing, that its parts go in, or which do not."""
    answer = ask(load.piece)
    if answer.passes:
        return []
    inner = [x for x in loads if not x.whole and x.bodies < load.bodies]
    stuck = [answer]
    if inner:
        boxes = [x for x in inner if len(x.bodies) > 1 and ask(x.piece).passes]
        carried = frozenset().union(*(x.bodies for x in boxes))
        single = [x for x in inner if len(x.bodies) == 1 and not x.bodies <= carried]
        stuck = [a for a in (ask(x.piece) for x in single) if not a.passes]
    if not stuck:
        return [Finding(
            Severity.NOTE, load.piece.name, "assemble-inside",
            f"does not go in through the opening assembled ({answer.how}), but its parts do: "
            "assemble it inside",
            _SOURCE, _text(answer.piece.size, form), _limit(way, form),
        )]
    return [
        Finding(
            Severity.WARNING, one.piece.name, "does-not-go-in",
            f"does not go in through the opening: {one.how}; {one.remedy}",
            _SOURCE, _text(one.piece.size, form), _limit(way, form),
        )
        for one in stuck
    ]


def _text(sizes: Iterable[float], form: Figures) -> str:
    return " x ".join(form.length(v) for v in sizes)


def _limit(way: Entrance, form: Figures) -> str:
    return f"opening {_text((way.width, way.height), form)}, inside {_text(way.size, form)}"
