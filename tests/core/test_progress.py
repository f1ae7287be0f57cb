"""The steps of the work, told from facts alone."""

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from closetbench.core.progress import Facts, StepKey, StepState, Why, steps


def _said(facts: Facts) -> dict[StepKey, tuple[StepState, Why, int]]:
    return {s.key: (s.state, s.why, s.count) for s in steps(facts)}


FULL = Facts(
    surveyed=True, carcasses=2, components=4, parts=30, dangers=0, warnings=0, planned=True,
    sheets=5, written=True,
)


def test_nothing_there_asks_for_the_room():
    found = _said(Facts(document=False, closet=False))
    assert found[StepKey.ROOM] == (StepState.NEXT, Why.NO_DOCUMENT, 0)
    others = [found[k] for k in StepKey if k is not StepKey.ROOM]
    assert others == [(StepState.WAITING, Why.NO_DOCUMENT, 0)] * 5


def test_from_room_to_papers():
    room = Facts(closet=True, dangers=0)
    assert _said(room)[StepKey.CARCASS][0] is StepState.NEXT
    assert _said(room)[StepKey.LAYOUT] == (StepState.WAITING, Why.NOTHING_TO_CUT, 0)
    bare = replace(room, carcasses=1, parts=6)
    assert _said(bare)[StepKey.COMPONENTS][0] is StepState.NEXT
    assert _said(bare)[StepKey.LAYOUT][0] is StepState.OPEN
    filled = replace(bare, components=1)
    assert _said(filled)[StepKey.LAYOUT][0] is StepState.NEXT
    assert _said(filled)[StepKey.PAPERS] == (StepState.WAITING, Why.NOT_PLANNED, 0)
    planned = replace(filled, planned=True, sheets=2)
    assert _said(planned)[StepKey.LAYOUT] == (StepState.DONE, Why.PLANNED, 2)
    assert _said(planned)[StepKey.PAPERS][0] is StepState.NEXT
    # a closet of shelves alone needs no components: they may stay out
    shelves = replace(planned, components=0)
    assert _said(shelves)[StepKey.COMPONENTS][0] is StepState.OPEN
    assert _said(shelves)[StepKey.PAPERS][0] is StepState.NEXT
    assert all(s.state is StepState.DONE for s in steps(FULL))


def test_what_is_wrong_is_counted_and_comes_before_what_is_next():
    broken = replace(FULL, broken=(("A", True), ("Linen", False), ("Doors", False)), dangers=None)
    found = _said(broken)
    assert found[StepKey.CARCASS] == (StepState.WRONG, Why.BROKEN, 1)
    assert found[StepKey.COMPONENTS] == (StepState.WRONG, Why.BROKEN, 2)
    assert found[StepKey.CHECKS] == (StepState.WAITING, Why.BROKEN, 0)
    found = _said(replace(FULL, dangers=3, planned=False, written=False))
    assert found[StepKey.CHECKS] == (StepState.WRONG, Why.DANGERS, 3)
    assert found[StepKey.LAYOUT][0] is StepState.NEXT
    found = _said(replace(FULL, broken=(("A", True),), planned=False, written=False))
    assert StepState.NEXT not in [state for state, _, _ in found.values()]
    found = _said(replace(FULL, plan_old=True, bill_old=True))
    assert found[StepKey.LAYOUT] == found[StepKey.PAPERS] == (
        StepState.WRONG, Why.OUT_OF_DATE, 1)
    assert _said(replace(FULL, doubtful=2))[StepKey.ROOM] == (StepState.WRONG, Why.READINGS, 2)
    assert _said(replace(FULL, room_broken=True))[StepKey.ROOM][1] is Why.BROKEN


def test_not_checked_is_never_done():
    checks = next(s for s in steps(replace(FULL, unchecked=4)) if s.key is StepKey.CHECKS)
    assert (checks.state, checks.count, checks.also) == (StepState.LOOK, 0, 4)


_COUNTS = st.integers(0, 3)


@given(st.builds(
    Facts, document=st.booleans(), closet=st.booleans(), doubtful=_COUNTS, carcasses=_COUNTS,
    components=_COUNTS, parts=_COUNTS, dangers=st.none() | _COUNTS, warnings=_COUNTS,
    unchecked=_COUNTS, planned=st.booleans(), plan_old=st.booleans(), written=st.booleans(),
    bill_old=st.booleans(), room_broken=st.booleans(),
    broken=st.lists(st.tuples(st.sampled_from("AB"), st.booleans()), max_size=2).map(tuple),
))
def test_whatever_there_is_at_most_one_step_is_next(facts):
    found = steps(facts)
    assert [s.key for s in found] == list(StepKey)
    assert sum(s.state is StepState.NEXT for s in found) <= 1
    for step in found:
        if step.state is StepState.WRONG:
            assert step.count > 0
        if step.state is StepState.DONE and step.key is StepKey.CHECKS:
            assert not facts.unchecked
