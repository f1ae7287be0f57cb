"""Copies of components: their names and where they go."""

import pytest

from closetbench.core.closet import ClosetDesign, build_closet
from closetbench.core.copies import copied, free_name
from closetbench.core.errors import ClosetError
from closetbench.core.inside import Spot
from closetbench.core.rods import RodsSpec
from closetbench.core.specs import BaySpec, CarcassSpec
from closetbench.resources import load_catalogue


def _make(design):
    return build_closet(design, load_catalogue())


def _design(*bays, width=900.0, extra=()):
    case = CarcassSpec("A", "ply18", width=width, bays=bays)
    return ClosetDesign("C", size=(2000.0, 600.0, 2400.0), components=(case, *extra))


@pytest.mark.parametrize(("name", "taken", "wanted"), [
    ("A", ["A"], "B"), ("A", ["A", "B"], "C"), ("Z", ["Z"], "Z 2"), ("Linen", [], "Linen 2"),
    ("Linen 2", ["Linen 3"], "Linen 4"), ("Rod 9", ["Rod 10"], "Rod 11"), ("3", [], "4"),
])
def test_names(name, taken, wanted):
    assert free_name(name, taken) == wanted


def test_into_the_next_bay():
    rods = RodsSpec("Rods", Spot("A", 1))
    design = _design(BaySpec(), BaySpec(), extra=(rods,))
    (added,) = copied(design, rods, [], _make)
    assert (added.name, added.spot) == ("Rods 2", Spot("A", 2))
    assert _make(ClosetDesign("C", size=design.size, components=(*design.components, added)))


def test_a_carcass_brings_what_stands_in_it():
    rods = RodsSpec("Rods", Spot("A", 1))
    design = _design(BaySpec(), extra=(rods,))
    case, inside = copied(design, design.components[0], [], _make)
    assert (case.name, case.width, case.x) == ("B", 900.0, None)
    assert (inside.name, inside.spot.carcass) == ("Rods 2", "B")


def test_a_carcass_takes_what_width_is_left_or_none():
    case = _design(BaySpec(), width=1500.0)
    (added,) = copied(case, case.components[0], [], _make)
    assert added.width is None
    full = _design(BaySpec(), width=1990.0)
    with pytest.raises(ClosetError):
        copied(full, full.components[0], [], _make)
