"""What the survey's panel starts with where sizes are given in place of readings."""

import pytest

from closetbench.core.closet import ClosetDesign
from closetbench.gui.survey_site import site_in
from closetbench.model.bridge import survey_for
from closetbench.model.make import closet_from_design

pytestmark = pytest.mark.freecad


@pytest.mark.parametrize("height", [600.0, 1920.0, 2200.0, 2200.1, 2400.0])
def test_levels_lie_below_a_low_ceiling(doc, height):
    closet = closet_from_design(doc, ClosetDesign("C", size=(2400.0, 600.0, height)))
    site = site_in(survey_for(closet))
    assert not site.by_readings
    assert site.survey.height_back_left == height
    assert 0 < site.survey.levels[0] < site.survey.levels[1] < site.survey.levels[2] < height
