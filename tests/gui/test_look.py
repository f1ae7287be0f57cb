"""The example looked at in other ways, and its pictures saved."""

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.ends]


def test_looking_at_the_example(gui):
    run = gui("look.py", timeout=400)
    assert run.checks > 25
    assert run.shots["colours"].stat().st_size > 5_000
