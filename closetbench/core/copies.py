"""Where a copy of a component may stand, and with what it comes along."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from itertools import count
from typing import Any

from closetbench.core.closet import Closet, ClosetDesign, Spec
from closetbench.core.errors import ClosetError
from closetbench.core.findings import Severity
from closetbench.core.specs import CarcassSpec

_NUMBER = re.compile(r"^(.*?)\s*(\d+)$")


def free_name(name: str, taken: Iterable[str]) -> str:
    """A name like ``name`` that none of ``taken`` has: the next letter or the next number."""
    used = set(taken)
    if len(name) == 1 and name.isalpha():
        letters = (chr(c) for c in range(ord(name) + 1, ord("Z" if name.isupper() else "z") + 1))
        for letter in letters:
            if letter not in used:
                return letter
    found = _NUMBER.match(name)
    stem, start = (found[1], int(found[2]) + 1) if found else (name, 2)
    names = (f"{stem} {number}".strip() for number in count(start))
    return next(n for n in names if n not in used)


def stands_in(spec: Any) -> str:
    """Name of what a component stands in or in front of, "" for none."""
    spot = getattr(spec, "spot", None)
    return spot.carcass if spot is not None else getattr(spec, "carcass", "")


def put_in(spec: Any, host: str) -> Any:
    """The component in another carcass."""
    if getattr(spec, "spot", None) is not None:
        return replace(spec, spot=replace(spec.spot, carcass=host))
    return replace(spec, carcass=host) if hasattr(spec, "carcass") else spec


def copied(
    design: ClosetDesign, spec: Spec, taken: Iterable[str], make: Callable[[ClosetDesign], Closet]
) -> tuple[Spec, ...]:
    """What is to be added to a design for a copy of one of its components, or of one like it.

    A carcass brings copies of what stands in it where these can be built, too, and stands
    beside the last one. Anything else goes into the first place with no more dangers
    and warnings than before: the bays after its own, those of its carcass before it, other
    carcasses; else into the first where it can be built. Raises the first place's
    ``ClosetError`` where there is none.
    """
    used = [*taken, *(c.name for c in design.components)]
    name = free_name(spec.name, used)
    before = _doubts(make(design))
    best: tuple[int, tuple[Spec, ...]] | None = None
    problem: ClosetError | None = None
    for added in _tries(design, replace(spec, name=name), spec, [*used, name], make):
        try:
            built = make(replace(design, components=(*design.components, *added)))
        except ClosetError as error:
            problem = problem or error
            continue
        more = _doubts(built) - before
        if isinstance(spec, CarcassSpec) or more <= 0:
            return added
        if best is None or more < best[0]:
            best = more, added
    if best is None:
        raise problem or ClosetError(spec.name, "place", "none", "make room for a copy first")
    return best[1]


def _doubts(closet: Closet) -> int:
    return sum(f.severity in (Severity.DANGER, Severity.WARNING) for f in closet.findings)


def _tries(
    design: ClosetDesign, new: Any, old: Any, used: list[str],
    make: Callable[[ClosetDesign], Closet],
) -> Iterator[tuple[Spec, ...]]:
    if isinstance(new, CarcassSpec):
        yield from _carcasses(design, new, old.name, used)
        return
    spot = getattr(new, "spot", None)
    if spot is None:
        hosts = [c.name for c in design.components if isinstance(c, CarcassSpec)]
        yield from ((put_in(new, h),) for h in sorted(hosts, key=lambda h: h == stands_in(old)))
        yield (new,)
        return
    standing = [c for c in make(design).components if c.bays]
    standing.sort(key=lambda c: c.name != spot.carcass)
    for host in standing:
        bays = range(1, len(host.bays) + 1)
        own = host.name == spot.carcass
        order = sorted(bays, key=lambda b: (own and b <= spot.bay, own and b == spot.bay, b))
        for bay in order:
            if not (own and bay == spot.bay):
                yield (replace(new, spot=replace(spot, carcass=host.name, bay=bay)),)
    for compartment in (1, 2, 3):
        if compartment != spot.compartment:
            yield (replace(new, spot=replace(spot, compartment=compartment)),)
    yield (new,)


def _carcasses(
    design: ClosetDesign, new: CarcassSpec, old: str, used: list[str]
) -> Iterator[tuple[Spec, ...]]:
    held: list[Any] = []
    for spec in design.components:
        if stands_in(spec) == old:
            other = free_name(spec.name, used)
            used.append(other)
            held.append(put_in(replace(spec, name=other), new.name))
    beside = replace(new, x=None)
    narrow = replace(beside, width=None)
    yield (beside, *held)
    yield (narrow, *held)
    yield (beside,)
    yield (narrow,)
