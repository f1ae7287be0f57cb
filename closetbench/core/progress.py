"""How far the work on a closet has come: what is done, what is next, what is wrong.

From facts about a document to the state of each step; nothing is looked up here.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class StepKey(Enum):
    """The steps of the work, in its order."""

    ROOM = "room"
    CARCASS = "carcass"
    COMPONENTS = "components"
    CHECKS = "checks"
    LAYOUT = "cut layout"
    PAPERS = "bill and papers"


class StepState(Enum):
    """What can be said of a step.

    LOOK: done, but something in it asks to be looked at. OPEN: can be done now, and may be
    left out. WAITING: something before it is missing.
    """

    DONE = "done"
    NEXT = "next"
    WRONG = "wrong"
    LOOK = "look"
    OPEN = "open"
    WAITING = "waiting"


class Why(Enum):
    """The reason for a state; with ``Step.count`` and ``Step.also`` it can be put in words."""

    NO_DOCUMENT = "no document"
    NO_CLOSET = "no closet"
    NO_CARCASS = "no carcass"
    NOTHING_TO_CUT = "nothing to cut"
    BY_SIZES = "by sizes"
    BY_READINGS = "by readings"
    READINGS = "readings that do not agree"
    BROKEN = "cannot be built"
    THERE = "there"
    NONE_YET = "none yet"
    DANGERS = "dangers"
    DOUBTS = "doubts"
    CLEAR = "nothing found"
    PLANNED = "planned"
    NOT_PLANNED = "not planned"
    WRITTEN = "written"
    NOT_WRITTEN = "not written"
    OUT_OF_DATE = "out of date"


@dataclass(frozen=True)
class Facts:
    """What a document holds of one closet.

    ``surveyed``: its room follows from readings. ``doubtful``: findings about the readings.
    ``carcasses``, ``components``: how many there are; ``parts``: what is to be cut.
    ``broken``: names of carcasses and components that cannot be built, each with whether it
    is a carcass; ``room_broken``: no envelope fits. ``dangers``, ``warnings``,
    ``unchecked``: findings of the whole closet; None where it cannot be built as a whole.
    ``planned`` and ``written``: the sheets are laid out, the bill is there; ``*_old``: the
    design has changed since.
    """

    document: bool = True
    closet: bool = True
    surveyed: bool = False
    doubtful: int = 0
    room_broken: bool = False
    carcasses: int = 0
    components: int = 0
    parts: int = 0
    broken: tuple[tuple[str, bool], ...] = ()
    dangers: int | None = None
    warnings: int = 0
    unchecked: int = 0
    planned: bool = False
    plan_old: bool = False
    sheets: int = 0
    written: bool = False
    bill_old: bool = False


@dataclass(frozen=True)
class Step:
    """One step: ``count`` is of what ``why`` says, ``also`` of what is not checked."""

    key: StepKey
    state: StepState
    why: Why
    count: int = 0
    also: int = 0


def steps(facts: Facts) -> tuple[Step, ...]:
    """The steps in their order, at most one of them NEXT.

    That is the first one that is not done and that the others wait for, unless one before it
    is wrong. Components may be left out and checks have no end, so neither of them holds up
    what comes after.
    """
    found = [
        _room(facts), _carcass(facts), _components(facts), _checks(facts), _layout(facts),
        _papers(facts),
    ]
    wanting = [
        i for i, step in enumerate(found)
        if step.state is StepState.OPEN and step.key not in (StepKey.COMPONENTS, StepKey.CHECKS)
    ]
    broken = (
        s.state is StepState.WRONG and s.key is not StepKey.CHECKS for s in found[: wanting[0]]
    ) if wanting else ()
    if wanting and not any(broken):
        first = found[wanting[0]]
        # what a bare carcass wants next is something to put into it
        bare = found[2].state is StepState.OPEN and first.key is StepKey.LAYOUT
        at = 2 if bare else wanting[0]
        found[at] = _as(found[at], StepState.NEXT)
    return tuple(found)


def _as(step: Step, state: StepState) -> Step:
    return Step(step.key, state, step.why, step.count, step.also)


def _room(facts: Facts) -> Step:
    key = StepKey.ROOM
    if not facts.document:
        return Step(key, StepState.OPEN, Why.NO_DOCUMENT)
    if not facts.closet:
        return Step(key, StepState.OPEN, Why.NO_CLOSET)
    if facts.room_broken:
        return Step(key, StepState.WRONG, Why.BROKEN, 1)
    if facts.doubtful:
        return Step(key, StepState.WRONG, Why.READINGS, facts.doubtful)
    return Step(key, StepState.DONE, Why.BY_READINGS if facts.surveyed else Why.BY_SIZES)


def _missing(facts: Facts) -> Why | None:
    if not facts.document:
        return Why.NO_DOCUMENT
    return None if facts.closet else Why.NO_CLOSET


def _carcass(facts: Facts) -> Step:
    key, missing = StepKey.CARCASS, _missing(facts)
    if missing:
        return Step(key, StepState.WAITING, missing)
    broken = sum(carcass for _, carcass in facts.broken)
    if broken:
        return Step(key, StepState.WRONG, Why.BROKEN, broken)
    if not facts.carcasses:
        # a closet of single panels needs none
        state = StepState.DONE if facts.parts else StepState.OPEN
        return Step(key, state, Why.NONE_YET)
    return Step(key, StepState.DONE, Why.THERE, facts.carcasses)


def _components(facts: Facts) -> Step:
    key, missing = StepKey.COMPONENTS, _missing(facts)
    broken = sum(not carcass for _, carcass in facts.broken)
    if missing is None and broken:
        return Step(key, StepState.WRONG, Why.BROKEN, broken)
    if missing is None and facts.components:
        return Step(key, StepState.DONE, Why.THERE, facts.components)
    if missing or not facts.carcasses:
        return Step(key, StepState.WAITING, missing or Why.NO_CARCASS)
    return Step(key, StepState.OPEN, Why.NONE_YET)


def _checks(facts: Facts) -> Step:
    key, missing = StepKey.CHECKS, _missing(facts)
    if missing:
        return Step(key, StepState.WAITING, missing)
    if facts.dangers is None:
        return Step(key, StepState.WAITING, Why.BROKEN)
    if not facts.parts:
        return Step(key, StepState.WAITING, Why.NO_CARCASS)
    if facts.dangers:
        return Step(key, StepState.WRONG, Why.DANGERS, facts.dangers, facts.unchecked)
    if facts.warnings or facts.unchecked:
        return Step(key, StepState.LOOK, Why.DOUBTS, facts.warnings, facts.unchecked)
    return Step(key, StepState.DONE, Why.CLEAR)


def _layout(facts: Facts) -> Step:
    key, missing = StepKey.LAYOUT, _missing(facts)
    if missing:
        return Step(key, StepState.WAITING, missing)
    if facts.planned:
        if facts.plan_old:
            return Step(key, StepState.WRONG, Why.OUT_OF_DATE, 1)
        return Step(key, StepState.DONE, Why.PLANNED, facts.sheets)
    if not facts.parts:
        return Step(key, StepState.WAITING, _nothing(facts))
    return Step(key, StepState.OPEN, Why.NOT_PLANNED)


def _nothing(facts: Facts) -> Why:
    return Why.BROKEN if facts.dangers is None else Why.NOTHING_TO_CUT


def _papers(facts: Facts) -> Step:
    key, missing = StepKey.PAPERS, _missing(facts)
    if missing:
        return Step(key, StepState.WAITING, missing)
    if facts.written:
        if facts.bill_old:
            return Step(key, StepState.WRONG, Why.OUT_OF_DATE, 1)
        return Step(key, StepState.DONE, Why.WRITTEN)
    if not facts.parts:
        return Step(key, StepState.WAITING, _nothing(facts))
    if not facts.planned:
        return Step(key, StepState.WAITING, Why.NOT_PLANNED)
    return Step(key, StepState.OPEN, Why.NOT_WRITTEN)
