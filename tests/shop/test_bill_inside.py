"""The bill of what goes inside: equal parts in one row, mirror images apart, hardware counted."""

from __future__ import annotations

import math

from closetbench.core.closet import Closet
from closetbench.core.doors import DoorsSpec
from closetbench.core.drawers import DrawersSpec
from closetbench.core.existing import ExistingSpec, Flank, ScrewPoint
from closetbench.core.face_frame import FaceFrameSpec, FrameJoint
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.lengths import MILLIMETRES
from closetbench.core.rods import RodHolder, RodsSpec
from closetbench.core.specs import BaySpec, CarcassSpec, LipSpec
from closetbench.shop.buying import band_purchases, hardware_purchases
from closetbench.shop.lines import part_lines
from tests.core.inside_case import CATALOGUE, closet

WIDE = CarcassSpec("A", "ply18", bays=(BaySpec(width=600.0, heights=(900.0,)), BaySpec(
    width=600.0, heights=(900.0,))))


def counts(built: Closet, component: str) -> dict[str, int]:
    """Parts of a component by the first name in their row."""
    return {
        line.parts[0].name: len(line.parts) for line in part_lines(built.parts, CATALOGUE)
        if line.parts[0].component == component
    }


def hardware(built: Closet) -> dict[str, int]:
    total: dict[str, int] = {}
    for need in built.hardware:
        total[need.key] = total.get(need.key, 0) + need.count
    return total


def test_a_bank_of_five_is_counted_in_five_rows() -> None:
    spec = DrawersSpec("D", Spot("A", 1, 1), count=5, slide_length=450.0)
    built = closet(spec, carcass=WIDE, width=1254.0)
    assert counts(built, "D") == {
        "drawer 1 left side": 10, "drawer 1 box front": 5, "drawer 1 back": 5,
        "drawer 1 bottom": 5, "drawer 1 front": 5,
    }
    needs = hardware(built)
    assert (needs["slide_450"], needs["pull"]) == (10, 5)
    bought = {p.title: p for p in hardware_purchases(built.hardware, CATALOGUE)}
    slides = bought[CATALOGUE.item("slide_450").title]
    assert slides.count == math.ceil(10 / CATALOGUE.item("slide_450").pack)
    # eight screws in a box, two in a front
    screws = {n.purpose: n.count for n in built.hardware}
    assert (screws["drawer boxes"], screws["fronts to drawer boxes"]) == (40, 10)


def test_graduated_fronts_are_rows_of_their_own() -> None:
    spec = DrawersSpec("D", Spot("A", 1, 1), heights=(300.0, 200.0, 0.0))
    found = counts(closet(spec, carcass=WIDE, width=1254.0), "D")
    assert {n: c for n, c in found.items() if n.endswith(" front") and "box" not in n} == {
        "drawer 1 front": 1, "drawer 2 front": 1, "drawer 3 front": 1}
    assert found["drawer 1 bottom"] == 3


def test_one_panel_used_twice_is_one_row_and_mirrored_sides_are_two() -> None:
    found = counts(closet(carcass=WIDE, width=1254.0), "A")
    assert found["bay 1 shelf 1"] == 2
    assert (found["left side"], found["right side"]) == (1, 1)
    lipped = CarcassSpec(
        "A", "ply18", bays=WIDE.bays, shelf_lip=LipSpec(40.0))
    assert counts(closet(carcass=lipped, width=1254.0), "A")["bay 1 shelf 1 lip"] == 2


def test_a_pair_of_doors_is_one_row_only_where_a_leaf_turned_over_is_the_other() -> None:
    """With the pull in the middle of its height a left leaf stood on its head is a right one."""
    front = FrontSpec(FrontKind.FULL)
    high = DoorsSpec("D", Spot("A", 1, 1), leaves=2, front=front, pull_height=700.0)
    assert counts(closet(high, carcass=WIDE, width=1254.0), "D") == {
        "left door": 1, "right door": 1}
    built = closet(high, carcass=WIDE, width=1254.0)
    box = next(p.box() for p in built.parts if p.name == "left door")
    middle = DoorsSpec("D", Spot("A", 1, 1), leaves=2, front=front,
                       pull_height=(box.z0 + box.z1) / 2)
    built = closet(middle, carcass=WIDE, width=1254.0)
    assert counts(built, "D") == {"left door": 2}
    assert hardware(built)["hinge_35"] == 4 or hardware(built)["hinge_35"] == 6


def test_doors_make_the_sides_that_they_hang_on_unlike() -> None:
    """A side with holes for plates is another part than its twin without."""
    bays = (BaySpec(width=600.0), BaySpec(width=600.0))
    twin = CarcassSpec("A", "ply18", bays=bays)
    hung = closet(DoorsSpec("D", Spot("A", 1)), carcass=twin, width=1254.0)
    side = next(p for p in hung.parts if p.name == "left side")
    plates = [r for r in side.panel.holes if r.name == "hinge plate"]
    cups = next(r for p in hung.parts for r in p.panel.holes if r.name == "hinge cup")
    assert sum(r.count for r in plates) == 2 * cups.count


def test_frame_rod_and_piece_are_counted() -> None:
    chest = ExistingSpec(
        "Chest", Spot("A", 2), 550.0, 600.0, 400.0, shelf_above=False,
        screws=(ScrewPoint(Flank.LEFT, 50.0, 300.0), ScrewPoint(Flank.RIGHT, 50.0, 300.0)),
    )
    built = closet(
        FaceFrameSpec("F", "A", joint=FrameJoint.DOWEL, mullion=40.0),
        RodsSpec("R", Spot("A", 1, 2), holder=RodHolder.FLANGES), chest,
        carcass=WIDE, width=1254.0, height=2200.0,
    )
    needs = hardware(built)
    assert needs["dowel_8x40"] == 2 * 2 * 2 + 2 * 2
    assert needs["rod_flange_27"] == 2
    assert "rod_support_27" not in needs
    assert {n.count for n in built.hardware if n.purpose == "existing piece to the carcass"} == {2}
    stiles = [line for line in part_lines(built.parts, CATALOGUE)
              if line.parts[0].name == "left stile"]
    assert len(stiles) == 1


def test_bands_of_fronts_are_bought_by_their_rims() -> None:
    spec = DrawersSpec("D", Spot("A", 1, 1), count=2, front=FrontSpec(
        material="melamine18", band="plastic_10"))
    built = closet(spec, carcass=WIDE, width=1254.0)
    fronts = [p for p in built.parts if p.component == "D" and p.name.endswith(" front")
              and "box" not in p.name]
    rims = sum(2 * (p.panel.cut_length + p.panel.cut_width) for p in fronts)
    (bought,) = band_purchases(fronts, CATALOGUE, MILLIMETRES)
    assert bought.note.startswith(f"{rims / 1000:.2f} m of rims")
