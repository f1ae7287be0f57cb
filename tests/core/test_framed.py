"""A face frame and fillers in one closet: every gap is closed once, and nothing overlaps."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations

import pytest

from closetbench.core.closet import ClosetDesign, build_closet
from closetbench.core.conflicts import common_volume
from closetbench.core.envelope import Clearances
from closetbench.core.face_frame import FaceFrameSpec, StileEnd
from closetbench.core.fillers import Cover, FillersSpec
from closetbench.core.parts import Role
from closetbench.core.specs import CarcassSpec
from tests.core.inside_case import CATALOGUE, component, rules
from tests.core.rooms import TrueRoom

SURVEY = TrueRoom(left=(8.0, 5.0), right=(6.0, 9.0)).survey()
CARCASS = CarcassSpec("A", "mdf18", height=2000.0, depth=500.0)


def built(frame, fillers, clear=28.0):
    return build_closet(ClosetDesign(
        "t", SURVEY, Clearances(left=clear, right=clear),
        components=(CARCASS, frame, fillers)), CATALOGUE)


@pytest.mark.parametrize("cover", [Cover.AUTO, Cover.STRIP, Cover.MOULDING])
@pytest.mark.parametrize("left", StileEnd)
@pytest.mark.parametrize("right", StileEnd)
def test_every_side_is_closed_once(left, right, cover):
    clear = 28.0 if cover is not Cover.MOULDING else 14.0
    frame = FaceFrameSpec("F", "A", "mdf18", left=left, right=right, overhang_top=5.0)
    found = built(frame, FillersSpec("G", left=cover, right=cover, top=Cover.NONE), clear)
    fillers = [p for p in component(found, "G").parts if p.name.split()[0] in ("left", "right")]
    sides = {p.name.split()[0] for p in fillers}
    to_wall = {n for n, e in (("left", left), ("right", right)) if e is StileEnd.WALL}
    assert sides == {"left", "right"} - to_wall
    assert len(fillers) == len(sides)
    for p, q in combinations([*component(found, "F").parts, *fillers], 2):
        # a tapered strip's own rectangle may reach past what it is cut to; mouldings lie before
        assert common_volume(p, q) < 1.0, (p.full_name, q.full_name)
    assert not [f for f in found.findings if f.rule == "parts-overlap"]
    stiles = {p.name: p.box() for p in component(found, "F").parts if p.role is Role.STILE}
    for strip in (p for p in fillers if p.role is Role.FILLER):
        b = strip.box()
        if strip.name.startswith("left"):
            assert b.x1 == pytest.approx(stiles["left stile"].x0)
        else:
            assert b.x0 == pytest.approx(stiles["right stile"].x1)
        assert b.y0 == pytest.approx(stiles["left stile"].y0), "flush with the frame"
    explicit = cover is not Cover.AUTO
    assert ("frame-covers" in rules(found.findings, "G")) == (explicit and bool(to_wall))


def test_only_the_carcass_behind_the_frame_is_changed():
    """Beside a carcass without a frame the fillers stay where they were."""
    two = (replace(CARCASS, width=800.0), CarcassSpec("B", "mdf18", height=2000.0, depth=500.0))
    fillers = FillersSpec("G", top=Cover.NONE)
    clear = Clearances(left=28.0, right=28.0)
    bare = build_closet(ClosetDesign("t", SURVEY, clear, components=(*two, fillers)), CATALOGUE)
    framed = build_closet(ClosetDesign("t", SURVEY, clear, components=(
        *two, FaceFrameSpec("F", "A", "mdf18", left=StileEnd.WALL), fillers)), CATALOGUE)
    right = [next(p for p in component(c, "G").parts if p.name == "right filler")
             for c in (bare, framed)]
    assert right[0] == right[1]
    assert not [p for p in component(framed, "G").parts if p.name.startswith("left")]
