"""Carrying pieces in, against published closed forms."""

from __future__ import annotations

import math

import numpy as np
import pytest

from closetbench.core.turning import (
    Slot,
    angle_through,
    carry_through,
    longest_round_corner,
    tilt_diagonal,
)


@pytest.mark.parametrize(
    ("a", "b", "longest"),
    [
        # the ladder round a corner, (a^(2/3) + b^(2/3))^(3/2): a calculus textbooks' classic;
        # 27 and 64 give 125 exactly, 8 and 8 give 16 sqrt(2)
        (27.0, 64.0, 125.0), (8.0, 8.0, 16.0 * math.sqrt(2.0)), (1.0, 8.0, 5.0**1.5),
    ],
)
def test_ladder_round_a_corner(a: float, b: float, longest: float) -> None:
    assert longest_round_corner(a, b) == pytest.approx(longest, rel=1e-12)
    # a rectangle that is hardly thick is a ladder
    assert longest_round_corner(a, b, 1e-9) == pytest.approx(longest, rel=1e-8)


def test_rectangle_round_a_corner() -> None:
    # in a corridor of one width a rectangle l x t goes round if l <= 2 (sqrt(2) a - t): the
    # symmetric place, at 45 degrees, is the tightest (elementary geometry)
    for thick in (0.1, 0.4, 0.8):
        longest = longest_round_corner(1.0, 1.0, thick)
        assert longest == pytest.approx(2 * (math.sqrt(2.0) - thick), rel=1e-9)
    assert longest_round_corner(1.0, 3.0, 1.5) == 0.0


def test_tilt_up_diagonal() -> None:
    # Pythagoras; the usual check is diagonal against ceiling: 84 x 24 in needs 87.4 in
    assert tilt_diagonal(3.0, 4.0) == 5.0
    assert tilt_diagonal(84.0, 24.0) == pytest.approx(87.36, abs=0.005)


def carver(p: float, q: float, w: float, h: float) -> bool:
    """Whether a rectangle p x q goes into w x h, p >= q and w >= h (J. E. Carver 1957)."""
    if p <= w:
        return q <= h
    if q > h:
        return False
    reach = p * p + q * q - w * w
    return h >= (2 * p * q * w + (p * p - q * q) * math.sqrt(reach)) / (p * p + q * q)


def test_rectangle_through_a_window_at_an_angle() -> None:
    # The American Mathematical Monthly 64 (1957), problem E 1225: a rectangle p x q in another
    rng = np.random.default_rng(57)
    answers = set()
    for _ in range(4000):
        w, h = sorted(rng.uniform(0.5, 3.0, 2), reverse=True)
        p, q = sorted(rng.uniform(0.1, 3.0, 2), reverse=True)
        expected = carver(p, q, w, h)
        answers.add((expected, bool(p > w)))
        for turned in ((p, q, w, h), (q, p, w, h), (p, q, h, w), (q, p, h, w)):
            assert (angle_through(*turned) is not None) == expected
    assert answers == {(True, True), (False, True), (True, False), (False, False)}


def test_search_agrees_with_the_corner_closed_form() -> None:
    # Tilted in under a lintel, a board turns round the corner between the opening, b high,
    # and the closet, a deep, when the ceiling is high and there is no wall to speak of
    a, b, thick = 640.0, 1500.0, 18.0
    longest = longest_round_corner(a, b, thick)
    slot = Slot(0.0, b, 0.001, 0.0, 9000.0, a, 0.0, 9000.0)
    assert carry_through(slot, longest - 60.0, thick) is not None
    assert carry_through(slot, longest + 20.0, thick) is None
    # the same by the search alone, with a hair of a step in the floor
    stepped = Slot(0.0, b, 0.001, -0.001, 9000.0, a, -0.001, 9000.0)
    assert carry_through(stepped, longest - 60.0, thick) is not None
    assert carry_through(stepped, longest + 20.0, thick) is None


def test_search_agrees_with_the_diagonal_of_the_way_in() -> None:
    # past a jamb a rod reaches from the far corner at most to the other jamb
    slot = Slot(200.0, 1700.0, 0.001, 0.0, 1900.0, 600.0)
    longest = math.hypot(1700.0, 600.0)
    assert carry_through(slot, longest - 60.0, 1.0) is not None
    assert carry_through(slot, longest + 45.0, 1.0) is None
