"""Cut layout, drawings and bill of the example, by commands and task panels."""

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.ends]


def test_papers_of_the_example(gui):
    run = gui("papers.py", timeout=240)
    assert run.checks > 40
    assert run.records["sheets"] >= 3
    assert run.shots["view"].stat().st_size > 5_000
