"""Copies of components as objects."""

from __future__ import annotations

import pytest

from closetbench.core.closet import ClosetDesign
from closetbench.core.errors import ClosetError
from closetbench.core.inside import Spot
from closetbench.core.rods import RodsSpec
from closetbench.core.specs import BaySpec, CarcassSpec, PanelSpec
from closetbench.model.base import ours
from closetbench.model.bridge import closet_of, spec_of
from closetbench.model.children import parts_of
from closetbench.model.duplicate import duplicate
from closetbench.model.make import closet_from_design

pytestmark = pytest.mark.freecad


@pytest.fixture
def closet(doc):
    case = CarcassSpec("A", "ply18", width=900.0, bays=(BaySpec(fixed=1), BaySpec(width=300.0)))
    return closet_from_design(doc, ClosetDesign(
        "C", size=(2000.0, 600.0, 2400.0),
        components=(case, RodsSpec("Rods", Spot("A", 1, 2)), PanelSpec("P", "ply18", 500, 200))))


def _named(doc, name):
    return next(o for o in doc.Objects if o.Label == name)


def test_a_carcass_with_its_bays_and_what_is_in_it(doc, closet):
    first = _named(doc, "A")
    first.setExpression("BaseHeight", "90 mm")
    doc.openTransaction("Duplicate")
    copy = duplicate(first)
    doc.recompute()
    doc.commitTransaction()
    assert copy.Label == "B"
    assert not set(copy.BayList) & set(first.BayList)
    assert spec_of(copy).bays == spec_of(first).bays
    assert dict(copy.ExpressionEngine).keys() == {"BaseHeight"}
    assert len(parts_of(copy)) == len(parts_of(first))
    assert _named(doc, "Rods 2").Host == copy
    assert len(closet_of(closet).parts) == 2 * len(parts_of(first)) + 1
    with pytest.raises(ClosetError):
        duplicate(copy)


def test_a_panel(doc, closet):
    copy = duplicate(_named(doc, "P"))
    doc.recompute()
    assert (copy.Label, copy.Length.Value) == ("Q", 500.0)
    assert copy in closet.Group


def test_what_freecad_copies_becomes_part_of_the_closet(doc, closet):
    """As pasting does it: everything that the original depends on comes along."""
    before = {o.Name for o in doc.Objects}
    doc.openTransaction("Paste")
    doc.copyObject(_named(doc, "Rods"), True)
    doc.commitTransaction()
    first, second = ours(doc, "Rods")
    assert len(list(ours(doc, "Carcass"))) == len(list(ours(doc, "Survey"))) == 1
    assert second.Host == first.Host
    assert second in closet.Group
    assert parts_of(second)
    assert second.isValid()
    doc.undo()
    assert {o.Name for o in doc.Objects} == before
