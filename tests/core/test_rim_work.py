"""Holes and pockets in the rims of a panel: volume, twins, what cannot be made."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from closetbench.core.errors import ClosetError
from closetbench.core.joinery import JoineryRules, check_panel
from closetbench.core.panel import Box, Face, Groove, HoleRow, Panel, Pocket, Rim, RimHole

DOWELLED = Panel(
    600.0, 45.0, 19.0, "pine",
    rim_holes=(
        RimHole("dowel", Rim.START, 11.0, 9.5, 8.0, 21.0),
        RimHole("dowel", Rim.REAR, 100.0, 8.0, 8.0, 20.0),
    ),
    pockets=(Pocket("stile", Face.LOWER, Rim.END, 20.0),),
)


def test_holes_in_rims_are_taken_off_and_pockets_are_not() -> None:
    whole = replace(DOWELLED, rim_holes=(), pockets=())
    assert whole.volume - DOWELLED.volume == pytest.approx(math.pi * 16 * 41)
    assert DOWELLED.rim_hole_box(DOWELLED.rim_holes[1]) == Box(96, 25, 4, 104, 45, 12)
    assert check_panel(DOWELLED, "rail", JoineryRules()) is DOWELLED


def test_a_board_with_dowel_holes_turned_over_is_the_same_piece() -> None:
    turned = replace(
        DOWELLED,
        rim_holes=(
            RimHole("dowel", Rim.START, 34.0, 9.5, 8.0, 21.0),
            RimHole("dowel", Rim.FRONT, 100.0, 11.0, 8.0, 20.0),
        ),
        pockets=(Pocket("stile", Face.UPPER, Rim.END, 25.0),),
    )
    assert turned.shape_key() == DOWELLED.shape_key()
    assert DOWELLED.mirrored().mirrored() == DOWELLED
    for other in (
        DOWELLED.mirrored(), replace(DOWELLED, pockets=()),
        replace(DOWELLED, rim_holes=DOWELLED.rim_holes[:1]),
        replace(DOWELLED, pockets=(Pocket("stile", Face.LOWER, Rim.END, 21.0),)),
    ):
        assert other.shape_key() != DOWELLED.shape_key()


@pytest.mark.parametrize(
    ("changes", "message"),
    [
        ({"thickness": 10.0}, "thickness of the board is 10 mm; must be at least 12 mm for a hole"),
        ({"width": 14.0}, "hole for dowel in the start: position is 11 mm; must be 6 to 8 mm"),
        ({"rim_holes": (RimHole("d", Rim.FRONT, 90.0, 4.0, 8.0, 9.0),)}, "level is 4 mm; must be"),
        ({"rim_holes": (RimHole("d", Rim.FRONT, 90.0, 9.0, 8.0, 44.0),)}, "depth is 44 mm; must"),
        ({"grooves": (Groove("g", Face.UPPER, Rim.START, 5.0, 9.0, 8.0),)}, "clear of other cuts"),
        ({"holes": (HoleRow("h", Face.UPPER, 15.0, 11.0, 5.0, 19.0),)}, "clear of other cuts"),
        ({"rim_holes": DOWELLED.rim_holes[:1] * 2}, "must keep clear of other cuts"),
        ({"pockets": (Pocket("stile", Face.LOWER, Rim.END, 41.0),)}, "must be 8 to 37 mm along"),
    ],
)
def test_work_on_rims_that_cannot_be_done(changes: dict[str, object], message: str) -> None:
    with pytest.raises(ClosetError, match=message):
        check_panel(replace(DOWELLED, **changes), "rail", JoineryRules())  # type: ignore[arg-type]
