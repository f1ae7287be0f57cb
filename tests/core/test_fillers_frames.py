"""Fillers beside face frames, and mouldings on shelves over everything."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.closet import ClosetDesign, build_closet
from closetbench.core.component import Component
from closetbench.core.envelope import Clearances
from closetbench.core.face_frame import FaceFrameSpec, StileEnd
from closetbench.core.fillers import Around, Cover, FillersSpec, build_fillers
from closetbench.core.inside import Site
from closetbench.core.panel import Rim
from closetbench.core.specs import CarcassSpec
from closetbench.core.trim import trim_cuts
from closetbench.core.wall_shelves import OverShelfSpec, build_over_shelf
from tests.core.around import STOCK, STRIPS, WITH_HARDWARE, built, fillers, part, room
from tests.core.boards import CATALOGUE
from tests.core.measured import plain_survey


def framed(left: StileEnd, right: StileEnd) -> dict[str, Component]:
    """Readings of a closet whose left wall leans, a carcass with a face frame, fillers."""
    survey = replace(
        plain_survey(2000.0, 600.0, 2400.0), lean_left_front=10.0, lean_left_back=10.0
    )
    survey = replace(survey, extras=(), width_front_high=1990.0, width_back_high=1990.0,
                     width_front_mid=1994.76, width_back_mid=1994.76)
    design = ClosetDesign(
        "closet", survey, STRIPS, components=(
            CarcassSpec("A", "mdf", depth=560.0),
            FaceFrameSpec("Frame", "A", "mdf", left=left, right=right, scribe=8.0, band=""),
            FillersSpec("Fillers"),
        ),
    )
    return {c.name: c for c in build_closet(design, WITH_HARDWARE).components}


def test_a_stile_to_the_wall_takes_up_the_filler_there() -> None:
    found = framed(StileEnd.WALL, StileEnd.FLUSH)
    names = {p.name for p in found["Fillers"].parts}
    assert "left filler" not in names
    assert {"right filler", "A top filler"} <= names
    stile = part(found["Frame"], "left stile")
    (taper,) = stile.panel.tapers
    assert (taper.rim, taper.first) == (Rim.REAR, 0.0)
    # 10 mm of lean over the 2,100 mm between the levels
    rise = stile.panel.length
    assert taper.last == pytest.approx(10.0 * rise / 2100.0, abs=0.2)
    assert taper.allowance == 8.0
    assert stile.panel.cut_width == pytest.approx(stile.panel.width + 8.0)
    # the strip beside the other stile stands flush with the frame, of its material
    right = part(found["Fillers"], "right filler")
    assert right.box().y0 == pytest.approx(found["Frame"].box.y0)
    # the one above runs on over the stile to the wall
    top = part(found["Fillers"], "A top filler")
    assert top.box().x0 < found["A"].box.x0 - 15.0
    assert top.box().x1 == pytest.approx(found["A"].box.x1)


def test_no_side_gets_a_stile_and_a_filler() -> None:
    for left in StileEnd:
        for right in StileEnd:
            found = framed(left, right)
            names = {p.name for p in found["Fillers"].parts}
            for wall, end in (("left", left), ("right", right)):
                covered = {f"{wall} filler", f"{wall} moulding"} & names
                assert len(covered) == (0 if end is StileEnd.WALL else 1)


def test_a_carcass_far_from_wall_and_ceiling_is_left_alone() -> None:
    spec = CarcassSpec("A", "mdf", width=900.0, height=2000.0)
    assert {p.name for p in fillers(room(), STRIPS, spec).parts} == {"left filler"}


def test_quarter_rounds_along_the_walls_on_a_shelf_over_everything() -> None:
    crooked = room(lean=6.0)
    envelope, carcasses = built(crooked, Clearances(left=4.0, right=6.0, back=5.0, top=10.0),
                                CarcassSpec("A", "mdf", height=1900.0))
    site = Site(envelope).with_(carcasses[0])
    shelf = build_over_shelf(OverShelfSpec("Shelf", "mdf", cleat=0.0), site, CATALOGUE)
    found = build_fillers(
        FillersSpec("Fillers", left=Cover.NONE, right=Cover.NONE), carcasses, crooked, envelope,
        STOCK, around=Around(shelves=(shelf,)),
    )
    back, left, right = (part(found, f"Shelf {n} quarter round") for n in ("back", "left", "right"))
    (board,) = (p.box() for p in shelf.parts)
    assert {p.panel.material for p in (back, left, right)} == {"quarter_round_12"}
    for p in (back, left, right):
        assert p.box().z0 == pytest.approx(board.z1)
    # against the walls, mitred in both corners: 12 mm wide, so 12 mm shorter at the front
    assert back.box().y1 + envelope.y0 == pytest.approx(600.0)
    assert [t.last for t in back.panel.tapers] == [12.0, 12.0]
    assert right.box().x1 + envelope.x0 == pytest.approx(2000.0)
    assert left.box().x1 - left.box().x0 == pytest.approx(12.0)
    assert left.box().x1 > board.x0  # it lies on the shelf and covers the gap
    cuts = {c.name: c for c in trim_cuts(found.parts)}
    assert cuts["Fillers: Shelf back quarter round"].short == pytest.approx(
        back.panel.length - 24.0)
    assert cuts["Fillers: Shelf left quarter round"].mitres == (Rim.START,)


def test_no_quarter_round_over_a_gap_that_is_too_wide_and_it_is_said() -> None:
    envelope, carcasses = built(room(lean=6.0), Clearances(left=4.0, right=6.0, back=12.0),
                                CarcassSpec("A", "mdf", height=1900.0))
    site = Site(envelope).with_(carcasses[0])
    shelf = build_over_shelf(OverShelfSpec("Shelf", "mdf", cleat=0.0), site, CATALOGUE)
    found = build_fillers(
        FillersSpec("Fillers", left=Cover.NONE, right=Cover.NONE, rounds=("quarter_round_12",)),
        carcasses, room(lean=6.0), envelope, STOCK, around=Around(shelves=(shelf,)),
    )
    assert not any("quarter round" in p.name for p in found.parts if "Shelf" in p.name)
    (said,) = (f for f in found.findings if f.rule == "shelf-open")
    # 12 mm cover 2 mm less than they are wide
    assert (said.subject, said.limit) == ("Shelf", "10.0 mm")
    assert float(said.value.removesuffix(" mm")) > 10.0
