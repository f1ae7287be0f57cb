"""The look at documents that random walks take sees what a step may change in them."""

import FreeCAD
import pytest

from closetbench.model.base import class_of
from closetbench.model.bridge import carcasses_in
from closetbench.model.make import closet_from_design
from tests.gui.snapshots import Snapshots, differences

pytestmark = pytest.mark.freecad


@pytest.fixture
def closet(doc, two_carcasses):
    return closet_from_design(doc, two_carcasses)


@pytest.fixture
def other(closet, doc):
    """What is another after a change, as ``object.property``."""
    snapshots = Snapshots()
    before = snapshots.take(doc)

    def look(change):
        change()
        lines = differences(before, snapshots.take(doc), most=1000)
        return {line.partition(":")[0] for line in lines}

    return look


def board(doc, name):
    return next(o for o in doc.Objects if class_of(o) == "ClosetPart" and o.FullName == name)


def test_nothing_is_other_after_a_recompute(other, doc):
    def touch():
        for obj in doc.Objects:
            obj.touch()
        doc.recompute()

    assert not other(touch)


def test_a_shape_that_was_moved(other, doc):
    side = board(doc, "Shelves: left side")
    found = other(lambda: setattr(
        side, "Shape", side.Shape.translated(FreeCAD.Vector(0, 0, 0.1))))
    assert {f"{side.Name}.Shape", f"{side.Name}.Placement"} <= found


@pytest.mark.parametrize("name", ["PinDepth", "PinDiameter", "PinPitch"])
def test_a_shape_with_other_holes(other, closet, doc, name):
    coats = carcasses_in(closet)[1]
    side = board(doc, "Coats: left side")

    def drill():
        setattr(coats, name, getattr(coats, name).Value - 0.5)
        doc.recompute()

    found = other(drill)
    assert f"{side.Name}.Shape" in found
