"""What the front wall hides of the closet."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.closet import ClosetDesign, build_closet
from closetbench.core.component import Bay, Component
from closetbench.core.envelope import Clearances, Envelope, Objective, fit_envelope
from closetbench.core.errors import ClosetError
from closetbench.core.moves import Pull
from closetbench.core.panel import Box
from closetbench.core.returns import dead_space_findings, dead_spaces
from closetbench.core.room import Opening, Room
from closetbench.core.specs import CarcassSpec
from closetbench.core.surfaces import Surface
from tests.core.boards import CATALOGUE
from tests.core.test_room import opened

ROOM = Room(
    Surface.plane(0.0), Surface.plane(1930.0), Surface.plane(640.0), Surface.plane(0.0),
    Surface.plane(2410.0), opening=Opening(205.0, 1725.0, 2030.0, 120.0),
)
BOX = fit_envelope(ROOM, Clearances())


def test_dead_spaces_are_measured_from_the_envelope() -> None:
    left, right, above = dead_spaces(ROOM, BOX)
    assert (left.where, right.where, above.where) == ("left", "right", "above")
    assert left.box == Box(0.0, 0.0, 0.0, 200.0, 635.0, 2400.0)
    assert (left.depth, right.depth, above.depth) == (200.0, 200.0, 370.0)
    assert left.litres == pytest.approx(0.2 * 0.635 * 2.4 * 1000.0)
    hidden = sum(s.litres for s in (left, right, above))
    assert BOX.width * BOX.depth * BOX.height / 1e6 - hidden == pytest.approx(
        1.52 * 0.635 * 2.03 * 1000.0
    )


def test_an_open_front_hides_nothing() -> None:
    assert dead_spaces(replace(ROOM, opening=None), BOX) == ()
    assert dead_spaces(None, Envelope(1000.0, 600.0, 2000.0)) == ()
    wide = replace(ROOM, opening=Opening(0.0, 1930.0, 2410.0, 120.0))
    assert dead_spaces(wide, BOX) == ()


def test_a_bay_behind_a_return_is_for_what_needs_no_pull_out() -> None:
    def bay(name: str, x0: float, x1: float) -> Bay:
        return Bay(name, Box(x0, 0.0, 100.0, x1, 500.0, 2300.0))

    carcass = Component(
        "A", (), Box(0.0, 0.0, 0.0, 1920.0, 500.0, 2400.0),
        bays=(bay("bay 1", 18.0, 600.0), bay("bay 2", 618.0, 1300.0), bay("bay 3", 1318.0, 1902.0)),
    )
    first, last = dead_space_findings((carcass,), ROOM, BOX)
    assert (first.subject, first.value) == ("A, bay 1", "182 mm of 582 mm")
    assert (last.subject, last.value) == ("A, bay 3", "182 mm of 584 mm")
    assert "no drawer or pull-out there" in first.message
    drawer = Pull("drawer", frozenset(), (Box(30.0, 0.0, 200.0, 580.0, 450.0, 400.0),), 450.0)
    pulls = Component("D", (), carcass.box, moves=(drawer,))
    assert [f.subject for f in dead_space_findings((carcass, pulls), ROOM, BOX)] == ["A, bay 3"]


def test_closet_says_how_its_pieces_go_in_and_what_is_hidden() -> None:
    design = ClosetDesign("closet", opened(), components=(
        CarcassSpec("tall", "mdf", depth=450.0), ))
    found = build_closet(design, CATALOGUE)
    rules = [f.rule for f in found.findings]
    assert "assemble-inside" in rules
    assert "behind-return" in rules
    ways = {w.piece.name: w for w in found.access}
    assert not ways["tall"].passes
    assert all(w.passes for name, w in ways.items() if name != "tall")
    assert set(ways) == {"tall", *(p.full_name for p in found.parts)}
    whole = build_closet(replace(design, survey=opened(
        opening_width=None, return_left=None, return_right=None, opening_height=None, lintel=None
    )), CATALOGUE)
    assert whole.access == ()


def test_what_does_not_fit_because_of_a_wrong_reading_says_so() -> None:
    """Depths of 600 and 700 mm: which of them is wrong the readings do not say."""
    deep = CarcassSpec("deep", "mdf", depth=590.0)
    assert build_closet(ClosetDesign("closet", opened(), components=(deep,)), CATALOGUE)
    design = ClosetDesign("closet", replace(opened(), depth_left=700.0), components=(deep,))
    with pytest.raises(ClosetError, match=r"to fit the envelope; but look at the readings first: "
                       r"one of these must be wrong.*depth along the left wall"):
        build_closet(design, CATALOGUE)


def test_objective_of_the_design_reaches_the_envelope() -> None:
    sloping = replace(
        opened(), height_back_left=1000.0, height_back_right=1000.0, levels=(50.0, 400.0, 900.0)
    )
    design = ClosetDesign("attic", sloping)
    wide, large = (
        build_closet(replace(design, objective=o), CATALOGUE).envelope for o in Objective
    )
    assert large.width * large.depth * large.height > 1.02 * (
        wide.width * wide.depth * wide.height)
    assert wide.depth > large.depth
