"""What a new component may start with of one that was accepted before."""

from __future__ import annotations

from dataclasses import fields, replace
from typing import get_args

import pytest

from closetbench.core.closet import Spec
from closetbench.core.drawers import DrawersSpec
from closetbench.core.errors import ClosetError
from closetbench.core.existing import ExistingSpec
from closetbench.core.inside import Spot
from closetbench.core.specs import BackSpec, BaseSpec, BaySpec, CarcassSpec, LipSpec, PanelSpec
from closetbench.model.plain import some_from_text, some_to_text

try:
    from closetbench.gui import remembered, settings
except ImportError:
    pytest.skip("no FreeCAD", allow_module_level=True)

ITS_PLACE = {
    "Carcass": {"width", "height", "depth", "x", "bays"},
    "Panel": {"length", "width", "depth"},
    "Drawers": {"heights", "slide_length", "box_height"},
    "Doors": {"hinges", "cup_edge", "pull_height"},
    "Rods": {"height", "upper", "setback", "supports"},
    "FaceFrame": set(),
    "Bench": {"x", "width", "depth", "member"},
    "ShoeShelves": set(),
    "CornerShelves": {"heights"},
    "OverShelf": {"height", "depth", "x0", "x1"},
    "Fillers": set(),
}
"""Fields that the place gives, by kind, beside the name and what it stands in."""


@pytest.fixture
def memory(monkeypatch):
    """FreeCAD's preferences as they are in a new session, with nothing of the user's."""
    kept: dict[str, str] = {}
    monkeypatch.setattr(settings, "remembers", lambda: True)
    monkeypatch.setattr(settings, "last_values", lambda kind: kept.get(kind, ""))
    monkeypatch.setattr(settings, "keep_last_values", kept.__setitem__)
    return kept


@pytest.mark.parametrize("kind", get_args(Spec))
def test_what_the_place_gives_is_not_remembered(kind):
    name = kind.__name__.removesuffix("Spec")
    every = {f.name for f in fields(kind)}
    left_out = every - {f.name for f in remembered._kept(kind)} - {"name", "spot", "carcass"}
    if kind is ExistingSpec:
        assert {"width_front_low", "height_left", "weight", "screws", "kept", "feet"} <= left_out
        assert {"side_gap", "gap_above", "setback", "fitted"} <= every - left_out
    else:
        assert left_out == ITS_PLACE[name]


def test_values_come_back_as_they_were_accepted(memory):
    spec = CarcassSpec(
        "Linen", "ply18", width=800.0, height=2000.0, depth=400.0, x=20.0,
        bays=(BaySpec(fixed=3),), base=BaseSpec(height=85.0), back=BackSpec(cleat_height=70.0),
        band="", groove_stop=0.0, shelf_lip=LipSpec(height=40.0))
    remembered.keep(spec)
    found = replace(CarcassSpec("A", "melamine18"), **remembered.last_values(CarcassSpec))
    assert found == replace(
        spec, name="A", width=None, height=None, depth=None, x=None, bays=(BaySpec(),))
    drawers = DrawersSpec(
        "Socks", Spot("Linen", 2), count=3, heights=(200.0,), bottom_inset=12.0, slide_length=450.0)
    remembered.keep(drawers)
    values = remembered.last_values(DrawersSpec)
    assert replace(DrawersSpec("B", Spot("A")), **values) == replace(
        drawers, name="B", spot=Spot("A"), heights=(), slide_length=None)
    assert remembered.last_values(PanelSpec) == {}


def test_nothing_is_kept_or_given_where_the_user_does_not_want_it(memory, monkeypatch):
    remembered.keep(CarcassSpec("A", "ply18"))
    monkeypatch.setattr(settings, "remembers", lambda: False)
    assert remembered.last_values(CarcassSpec) == {}
    remembered.keep(PanelSpec("A", "ply18", 800.0, 300.0))
    assert set(memory) == {"Carcass"}


@pytest.mark.parametrize("text", [
    "no JSON", '{"material": ', '{"gone": 1}', '{"joint": "glue of old"}', "[1, 2]", "7",
    '{"base": {"height": 80.0, "other": 1}}',
])
def test_what_cannot_be_read_is_as_if_there_were_nothing(memory, text):
    memory["Carcass"] = text
    assert remembered.last_values(CarcassSpec) == {}
    with pytest.raises(ClosetError):
        some_from_text(CarcassSpec, text, "carcass", "last values")


def test_a_place_that_was_written_by_hand_is_not_taken(memory):
    memory["Carcass"] = some_to_text({"name": "Z", "width": 300.0, "material": "ply18"})
    assert remembered.last_values(CarcassSpec) == {"material": "ply18"}


def test_defaults_are_what_a_first_component_starts_with():
    spec = replace(
        CarcassSpec("A", "ply18", width=800.0, base=BaseSpec(height=85.0)),
        **remembered.defaults(CarcassSpec))
    assert spec == CarcassSpec("A", "melamine18", width=800.0)
    drawers = DrawersSpec("B", Spot("A"), count=3, bottom_inset=12.0, slide_length=450.0)
    assert replace(drawers, **remembered.defaults(DrawersSpec)) == DrawersSpec(
        "B", Spot("A"), slide_length=450.0)
