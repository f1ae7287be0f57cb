"""Places: where a panel's frame lies in the closet, and which way its faces look."""

from __future__ import annotations

import pytest

from closetbench.core.panel import Box, Panel
from closetbench.core.parts import (
    FACING,
    FACING_UPRIGHT,
    LYING,
    LYING_DEEP,
    STANDING_ACROSS,
    Part,
    Place,
    Role,
    Vector,
)

BOARD = Panel(1000.0, 300.0, 18.0, "mdf")


@pytest.mark.parametrize(
    ("axes", "up", "size"),
    [
        (STANDING_ACROSS, (-1, 0, 0), (18, 300, 1000)),  # upper face to the left
        (LYING, (0, 0, 1), (1000, 300, 18)),  # upper face up
        (FACING, (0, -1, 0), (1000, 18, 300)),  # upper face to the front
        (FACING_UPRIGHT, (0, -1, 0), (300, 18, 1000)),
        (LYING_DEEP, (1, 0, 0), (18, 1000, 300)),  # upper face to the right
    ],
)
def test_panel_lies_as_its_axes_say(
    axes: tuple[Vector, Vector], up: Vector, size: Vector
) -> None:
    place = Place((5.0, 6.0, 7.0), *axes)
    assert place.up == up
    box = Part("p", "A", Role.PANEL, BOARD, place).box()
    assert (box.x1 - box.x0, box.y1 - box.y0, box.z1 - box.z0) == size
    assert place.point(0.0, 0.0, 18.0) == tuple(
        o + 18 * u for o, u in zip(place.origin, up, strict=True)
    )


def test_box_of_a_panel_grows_from_its_origin() -> None:
    side = Part("side", "A", Role.SIDE, BOARD, Place((18.0, 0.0, 80.0), *STANDING_ACROSS))
    assert side.box() == Box(0, 0, 80, 18, 300, 1080)
    rail = Part("rail", "A", Role.BASE_FRAME, BOARD, Place((0.0, 68.0, 0.0), *FACING))
    assert rail.box() == Box(0, 50, 0, 1000, 68, 300)
    back = Part("back", "A", Role.BACK, BOARD, Place((300.0, 590.0, 0.0), *FACING_UPRIGHT))
    assert back.box() == Box(0, 572, 0, 300, 590, 1000)


def test_moving_a_place_turns_nothing() -> None:
    place = Place((1.0, 2.0, 3.0), *LYING).moved(10.0, 20.0, 30.0)
    assert place == Place((11.0, 22.0, 33.0), *LYING)


def test_full_name_says_the_component() -> None:
    assert Part("top", "A", Role.TOP, BOARD, Place((0, 0, 0), *LYING)).full_name == "A: top"
