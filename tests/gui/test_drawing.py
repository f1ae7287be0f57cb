"""The page of drawings."""

import pytest

pytestmark = pytest.mark.gui


@pytest.mark.parametrize(
    "metric", [True, pytest.param(False, marks=pytest.mark.once)], ids=["metric", "inches"])
def test_a_page_of_drawings(gui, metric):
    run = gui("drawing.py", timeout=600, metric=metric)
    assert run.checks > 20
