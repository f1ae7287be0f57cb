"""All that the survey's panel takes."""

import pytest

pytestmark = pytest.mark.gui


def test_survey_panel(gui):
    run = gui("survey.py")
    assert run.checks > 20
