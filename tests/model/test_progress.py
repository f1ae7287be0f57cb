"""The steps of the work as a document tells them."""

from __future__ import annotations

import math

import pytest

from closetbench.core.closet import ClosetDesign
from closetbench.core.inside import Spot
from closetbench.core.progress import StepKey, StepState, Why, steps
from closetbench.core.rods import RodsSpec
from closetbench.core.specs import BaySpec, CarcassSpec
from closetbench.core.survey import Survey
from closetbench.model.bridge import survey_for
from closetbench.model.make import (
    closet_from_design,
    make_bill,
    make_closet,
    make_content,
    make_layout,
)
from closetbench.model.progress import closet_in_view, facts_of
from closetbench.model.survey import write_site
from closetbench.stock.plan import CutSettings, FirstCut

pytestmark = pytest.mark.freecad

QUICK = CutSettings(kerf=4.0, stages=None, first=FirstCut.ANY, seconds=0.01, tidy=0.01, seed=5)


def _told(doc, closet):
    return {s.key: s for s in steps(facts_of(doc, closet))}


def test_nothing_there(doc):
    assert _told(None, None)[StepKey.ROOM].why is Why.NO_DOCUMENT
    assert _told(doc, None)[StepKey.ROOM].why is Why.NO_CLOSET
    assert closet_in_view(doc) is None


def test_the_work_from_room_to_bill(doc):
    design = ClosetDesign(
        "Landing", size=(1200.0, 600.0, 2400.0),
        components=(CarcassSpec("A", "ply18", bays=(BaySpec(fixed=2),)),))
    closet = closet_from_design(doc, design)
    assert closet_in_view(doc) == closet == closet_in_view(doc, closet)
    told = _told(doc, closet)
    assert told[StepKey.ROOM].why is Why.BY_SIZES
    assert (told[StepKey.CARCASS].state, told[StepKey.CARCASS].count) == (StepState.DONE, 1)
    assert told[StepKey.COMPONENTS].why is Why.NONE_YET
    rods = make_content(doc, closet, RodsSpec("Rods", Spot("A", 1, 3)))
    doc.recompute()
    assert _told(doc, closet)[StepKey.COMPONENTS].count == 1
    layout = make_layout(doc, closet, QUICK)
    doc.recompute()
    assert _told(doc, closet)[StepKey.LAYOUT].why is Why.NOT_PLANNED
    layout.Proxy.plan(layout)
    doc.recompute()
    told = _told(doc, closet)
    assert (told[StepKey.LAYOUT].why, told[StepKey.LAYOUT].count) == (Why.PLANNED, layout.Sheets)
    assert told[StepKey.PAPERS].why is Why.NOT_WRITTEN
    make_bill(doc, closet, layout)
    doc.recompute()
    assert _told(doc, closet)[StepKey.PAPERS].state is StepState.DONE
    # another design: sheets and bill are out of date
    (carcass,) = [o for o in closet.Group if o.Label == "A"]
    carcass.Width = 900.0
    doc.recompute()
    told = _told(doc, closet)
    assert told[StepKey.LAYOUT].why is told[StepKey.PAPERS].why is Why.OUT_OF_DATE
    # and one that cannot be built
    rods.SpotCompartment = 9
    doc.recompute()
    told = _told(doc, closet)
    assert (told[StepKey.COMPONENTS].state, told[StepKey.COMPONENTS].count) == (
        StepState.WRONG, 1)
    assert told[StepKey.CHECKS].why is Why.BROKEN


def test_readings_that_do_not_agree_are_counted(doc):
    closet = make_closet(doc)
    survey = survey_for(closet)
    square = Survey(
        *[1200.0] * 6, *[2400.0] * 4, 600.0, 600.0, diagonal_to_right=math.hypot(1200, 600),
        diagonal_to_left=math.hypot(1200, 600))
    write_site(survey, ClosetDesign("S", square))
    doc.recompute()
    before = _told(doc, closet)[StepKey.ROOM]
    assert before.state is StepState.DONE
    survey.WidthBackMid = survey.WidthBackMid.Value + 100
    doc.recompute()
    after = _told(doc, closet)[StepKey.ROOM]
    assert (after.state, after.why) == (StepState.WRONG, Why.READINGS)
    assert after.count >= 1
