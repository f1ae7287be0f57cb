"""Shapes without holes while somebody types."""

import pytest

from closetbench.core.closet import ClosetDesign
from closetbench.core.specs import BaySpec, CarcassSpec

pytestmark = pytest.mark.freecad


@pytest.fixture
def sides(doc):
    from closetbench.model.make import closet_from_design

    design = ClosetDesign(
        "Drafted", size=(800.0, 400.0, 2000.0),
        components=(CarcassSpec("A", "ply18", bays=(BaySpec(fixed=1, adjustable=2),)),),
    )
    closet_from_design(doc, design)
    return [o for o in doc.Objects if getattr(o, "Role", "") == "side"]


def bored(obj):
    return sum(f.Surface.TypeId == "Part::GeomCylinder" for f in obj.Shape.Faces)


def test_a_draft_has_the_panel_without_its_holes(doc, sides):
    from closetbench.model import draft

    (carcass,) = {s.Component for s in sides}
    assert len(sides) == 2
    assert all(bored(s) > 20 for s in sides)
    carcass.Height = 1900
    with draft.drafting():
        doc.recompute()
    assert [bored(s) for s in sides] == [0, 0]
    assert all("hole" in s.Machining for s in sides)
    drafts = [s.Shape.Volume for s in sides]
    assert draft.finish(doc)
    doc.recompute()
    assert all(bored(s) > 20 for s in sides)
    assert all(s.Shape.Volume < v for s, v in zip(sides, drafts, strict=True))
    assert not draft.finish(doc)


def test_what_does_not_change_stays_whole(doc, sides):
    from closetbench.model import draft

    (carcass,) = {s.Component for s in sides}
    carcass.touch()
    with draft.drafting():
        doc.recompute()
    assert all(bored(s) > 20 for s in sides)
    assert not draft.finish(doc)


def test_a_draft_of_the_same_values_is_kept_as_it_is(doc, sides):
    from closetbench.model import draft

    (carcass,) = {s.Component for s in sides}
    with draft.drafting():
        carcass.Height = 1900
        doc.recompute()
        marks = [s.Fingerprint for s in sides]
        carcass.touch()
        doc.recompute()
    assert [s.Fingerprint for s in sides] == marks
    assert bored(sides[0]) == 0
    # the next recompute outside makes it whole even if nothing else asks for it
    carcass.touch()
    doc.recompute()
    assert bored(sides[0]) > 20
