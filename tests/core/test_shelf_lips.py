"""Front lips and bands of a carcass's fixed and loose shelves."""

from __future__ import annotations

from dataclasses import replace
from itertools import product

import pytest

from closetbench.core.doors import DoorsSpec
from closetbench.core.drawers import DrawersSpec
from closetbench.core.errors import ClosetError
from closetbench.core.existing import ExistingSpec
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.joinery import Joint
from closetbench.core.parts import Role
from closetbench.core.specs import BackKind, BackSpec, BaySpec, CarcassSpec, DrillRules, LipSpec
from tests.core.inside_case import closet, component, parts, rules
from tests.core.solids import clashes

LIP = LipSpec(40.0, "pine_1x4")
PINE = 19.05
CARCASS = CarcassSpec(
    "A", "ply18", bays=(BaySpec(width=600.0, heights=(400.0, 900.0), adjustable=1), BaySpec()),
    shelf_lip=LIP,
)


def part(built, name):
    return next(p for p in component(built, "A").parts if p.name == name)


def test_sizes_by_hand():
    """Shelf and strip together are as deep as the shelf without; the strip is level with its
    upper face and fits between the sides."""
    bare, built = closet(carcass=replace(CARCASS, shelf_lip=LipSpec())), closet(carcass=CARCASS)
    front = component(built, "A").box.y0
    for name in ("bay 1 shelf 1", "bay 1 shelf 2", "bay 1 loose shelf 1"):
        was, shelf, lip = part(bare, name).box(), part(built, name).box(), part(
            built, f"{name} lip").box()
        assert shelf.y0 == pytest.approx(lip.y1)
        assert lip.y1 - lip.y0 == pytest.approx(PINE)
        assert lip.y0 == pytest.approx(was.y0)
        assert shelf.y1 == pytest.approx(was.y1)
        assert lip.z1 == pytest.approx(shelf.z1)
        assert lip.z1 - lip.z0 == pytest.approx(40.0)
        loose = "loose" in name
        assert lip.y0 - front == pytest.approx(2.0 if loose else 0.0)
        assert lip.x1 - lip.x0 == pytest.approx(597.0 if loose else 600.0)
        assert (shelf.x1 - shelf.x0) == pytest.approx(was.x1 - was.x0)
    assert [p.name for p in parts(built, Role.LIP, "A")] == [
        "bay 1 shelf 1 lip", "bay 1 shelf 2 lip", "bay 1 loose shelf 1 lip"]
    screws = [n for n in component(built, "A").hardware if n.purpose == "lips to shelves"]
    assert sum(n.count for n in screws) == 3 * 2


@pytest.mark.parametrize(
    ("joint", "back", "stop"),
    list(product(Joint, [BackSpec(), BackSpec(BackKind.PANEL, "hardboard3")], [None, 0.0, 35.0])),
)
def test_no_two_parts_share_wood(joint, back, stop):
    built = closet(carcass=replace(CARCASS, shelf_joint=joint, back=back, groove_stop=stop))
    assert clashes(built.parts) == []
    if joint is not Joint.GROOVE:
        return
    side, shelf = part(built, "left side"), part(built, "bay 1 shelf 1")
    (groove,) = [g for g in side.panel.grooves if g.name == "bay 1 shelf 1"]
    # no groove shows beside the lip, and the notch starts where the groove does
    assert groove.stop_first == max(stop or 0.0, PINE + 10.0)
    reach = shelf.box().y0 - side.box().y0 + shelf.panel.notches[0].dy
    assert reach == pytest.approx(groove.stop_first + 0.5)


def test_what_stands_in_a_compartment_ends_below_the_lip():
    built = closet(
        DrawersSpec("D", Spot("A", 1, 1), front=FrontSpec(gap=3.0)),
        DoorsSpec("E", Spot("A", 1, 2), 2, front=FrontSpec(FrontKind.FULL)),
        carcass=replace(CARCASS, bays=(BaySpec(width=600.0, heights=(400.0, 900.0)), BaySpec())),
    )
    low, high = (part(built, f"bay 1 shelf {i} lip").box() for i in (1, 2))
    front = parts(built, Role.FRONT)[0].box()
    assert low.z0 - front.z1 == pytest.approx(3.0)
    door = parts(built, Role.DOOR, "E")[0].box()
    # shelves are shared by fronts above and below, so a full overlay covers half of their lips
    assert door.z0 == pytest.approx(low.z1 - (40 - 3) / 2)
    assert door.z1 == pytest.approx(high.z0 + (40 - 3) / 2)
    assert not rules(built.findings) & {"parts-overlap", "pull-blocked"}


def test_the_shelf_over_a_reused_piece_keeps_its_lip_clear_of_it():
    carcass = replace(CARCASS, bays=(BaySpec(), BaySpec(width=400.0)))
    built = closet(ExistingSpec("Chest", Spot("A", 1), 700.0, 500.0, 400.0), carcass=carcass)
    chest, lip = component(built, "Chest").box, part(built, "bay 1 shelf 1 lip").box()
    assert lip.z0 - chest.z1 == pytest.approx(5.0)
    assert "parts-overlap" not in rules(built.findings)


def test_bands_of_shelves():
    own = closet(carcass=replace(CARCASS, shelf_lip=LipSpec(), shelf_band="veneer_06"))
    bare = closet(carcass=replace(CARCASS, shelf_lip=LipSpec(), shelf_band=""))
    plain = closet(carcass=replace(CARCASS, shelf_lip=LipSpec()))
    for name in ("bay 1 shelf 1", "bay 1 loose shelf 1"):
        (band,) = part(own, name).panel.bands
        assert band.key == "veneer_06"
        assert part(bare, name).panel.bands == ()
        assert part(plain, name).panel.bands == part(plain, "left side").panel.bands
    assert part(own, "left side").panel.bands == part(plain, "left side").panel.bands
    lipped = closet(carcass=replace(CARCASS, shelf_lip=LipSpec(40.0), shelf_band="veneer_06"))
    assert part(lipped, "bay 1 shelf 1").panel.bands == ()
    assert len(part(lipped, "bay 1 shelf 1 lip").panel.bands) == 2


@pytest.mark.parametrize(
    ("changes", "message"),
    [
        ({"shelf_lip": LipSpec(12.0)}, r"height of the shelves' lip is 12 mm; must be 18 to 150"),
        ({"shelf_lip": LipSpec(120.0, "pine_1x4")}, r"lip is 120 mm; must be 18 to 88\.9 mm"),
        ({"shelf_lip": LipSpec(40.0, "oak")}, r"material is oak; is not in the catalogue"),
        ({"drill": DrillRules(front=20.0)}, r"rear face of a loose shelf's lip is 21\.05 mm; must"),
        ({"bays": (BaySpec(fixed=27),)}, r"fixed shelves is 27; must be at most 2\d to leave"),
        ({"bays": (BaySpec(heights=(300.0, 365.0)),)}, r"height of shelf 2 is 365 mm; must be 380"),
    ],
)
def test_what_is_refused_names_value_and_limit(changes, message):
    with pytest.raises(ClosetError, match=message):
        closet(carcass=replace(CARCASS, **changes))
