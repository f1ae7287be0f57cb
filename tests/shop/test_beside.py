"""The bill of what goes inside: equal parts counted once, bars, kept panels, pieces."""

from __future__ import annotations

from closetbench.core.closet import Closet, ClosetDesign, build_closet
from closetbench.core.doors import DoorsSpec
from closetbench.core.drawers import DrawersSpec
from closetbench.core.existing import ExistingSpec, KeptPanel
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.rods import RodsSpec, RodUse
from closetbench.core.specs import BaySpec, CarcassSpec, PanelSpec
from closetbench.resources import load_catalogue
from closetbench.shop.bill import bill_rows, closet_bill
from closetbench.shop.lines import part_lines

CATALOGUE = load_catalogue()


def built() -> Closet:
    return build_closet(ClosetDesign("t", size=(2600.0, 620.0, 2400.0), components=(
        CarcassSpec("A", "mdf18", bays=(BaySpec(600.0), BaySpec(), BaySpec())),
        ExistingSpec("Chest", Spot("A", 3), 804.0, 640.0, 420.0, height_right=636.0, top=20.0,
                     kept=(KeptPanel("top", 820.0, 430.0, 20.0),), weight=31.0),
        DrawersSpec("Bank", Spot("A", 1, 1, 0.0, 1200.0), count=5),
        DrawersSpec("Low", Spot("A", 1, 1, 1200.0, 300.0),
                    front=FrontSpec(FrontKind.INSET, "kept-chest-top")),
        DoorsSpec("Doors", Spot("A", 1, 1, 1500.0), leaves=2, front=FrontSpec(FrontKind.INSET)),
        RodsSpec("Rods", Spot("A", 2), use=RodUse.DOUBLE),
        PanelSpec("One", "mdf18", 700.0, 300.0, grooves=2), PanelSpec("Two", "mdf18", 700.0, 300.0,
                                                                      grooves=2),
    )), CATALOGUE)


CLOSET = built()
LINES = part_lines(CLOSET.parts, CATALOGUE)


def counts(*names: str) -> list[int]:
    """How many parts the lines have that hold parts of these names."""
    return [
        len(line.parts) for line in LINES
        if any(p.full_name.endswith(names) for p in line.parts)
    ]


def test_a_bank_of_five_is_one_row_of_each_piece() -> None:
    assert counts("drawer 1 back", "drawer 5 back") == [5]
    assert counts("drawer 3 bottom") == [6]  # the sixth drawer has the same bottom
    # left and right are mirror images, and one turned end for end is the other
    assert counts("drawer 2 left side", "drawer 4 right side") == [10]
    assert counts("Bank: drawer 1 front") == [5]


def test_mirrored_twins_are_two_rows() -> None:
    """The sides of the carcass carry their grooves on opposite faces."""
    assert counts("A: left side") == counts("A: right side") == [1]


def test_a_panel_used_twice_is_one_row() -> None:
    assert counts("One: One", "Two: Two", "One: panel", "Two: panel") == [2]


def test_every_part_is_counted_once() -> None:
    assert sum(len(line.parts) for line in LINES) == len(CLOSET.parts)
    hinges = {n.key: n.count for n in CLOSET.hardware}
    assert hinges["hinge_35"] == 4
    assert hinges["slide_550"] == 12


def test_bars_kept_panels_and_pieces_have_sections_of_their_own() -> None:
    rows = bill_rows(closet_bill(CLOSET, None, CATALOGUE))
    heads = [row[0] for row in rows if len(row) == 1]
    at = heads.index("Parts")
    assert heads[at:at + 3] == ["Parts", heads[at + 1], "Cut from bars"]
    assert "Reused" in heads
    start = rows.index(["Cut from bars"])
    (bar,) = [r for r in rows[start + 2: start + 4] if r]
    assert bar[0] == "Rods: lower rod; Rods: upper rod"
    assert bar[1] == 2
    start = rows.index(["Reused"])
    front, piece = rows[start + 2: start + 4]
    assert front[:2] == ["Low: drawer front", "kept-chest-top"]
    assert front[4] == 20.0
    assert piece[0] == "Chest: piece"
    assert piece[2:5] == [804.0, 420.0, 620.0]
    assert piece[6] == 31.0
    whole = next(r for r in rows if r and r[0] == "total")
    assert whole[2] == len(CLOSET.parts)


def test_without_them_the_sections_are_left_out() -> None:
    plain = build_closet(ClosetDesign("t", size=(900.0, 600.0, 2000.0), components=(
        CarcassSpec("A", "mdf18"),)), CATALOGUE)
    heads = [row[0] for row in bill_rows(closet_bill(plain, None, CATALOGUE)) if len(row) == 1]
    assert not {"Cut from bars", "Reused"} & set(heads)
