"""The surveyed room in the 3D view, what is carried into it and what opens in it."""

import pytest

pytestmark = pytest.mark.gui


@pytest.mark.parametrize(
    "what", ["seen", *(pytest.param(w, marks=pytest.mark.once) for w in ("kept", "small"))])
def test_room_in_the_view(gui, what):
    run = gui("room.py", what=what, timeout=300)
    assert run.checks > 2


def test_does_it_go_in(gui):
    run = gui("goes_in.py", timeout=300)
    assert {"stuck", "on the way"} <= set(run.shots)


def test_what_opens(gui):
    run = gui("opens.py")
    assert {"free", "hits"} <= set(run.shots)
