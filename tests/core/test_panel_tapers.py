"""Tapers, mitres and sections other than rectangles."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from closetbench.core.convex import volume
from closetbench.core.errors import ClosetError
from closetbench.core.joinery import JoineryRules, check_panel
from closetbench.core.panel import (
    Face,
    HoleRow,
    Notch,
    Panel,
    Rim,
    Section,
    Taper,
)
from closetbench.core.sections import quarter_round_faces

STRIP = Panel(2000.0, 30.0, 18.0, "mdf", tapers=(Taper(Rim.REAR, 12.0, 0.0, 6.0),))
"""A filler: 18 mm wide at START, 30 mm at END, 6 mm left on to be scribed."""
"""A filler: 18 mm wide at START, 30 mm at END, 6 mm left on to be scribed."""


def test_taper_runs_from_one_end_to_the_other() -> None:
    assert STRIP.outline() == ((0.0, 0.0), (2000.0, 0.0), (2000.0, 30.0), (0.0, 18.0))
    assert STRIP.cut_outline() == ((0.0, 0.0), (2000.0, 0.0), (2000.0, 36.0), (0.0, 24.0))
    assert (STRIP.cut_origin, STRIP.cut_length, STRIP.cut_width) == ((0.0, 0.0), 2000.0, 36.0)
    assert STRIP.volume == pytest.approx(2000.0 * 24.0 * 18.0)
    front = replace(STRIP, tapers=(Taper(Rim.FRONT, 0.0, 12.0, 6.0),))
    assert front.outline() == ((0.0, 0.0), (2000.0, 12.0), (2000.0, 30.0), (0.0, 30.0))
    assert (front.cut_origin, front.cut_width) == ((0.0, -6.0), 36.0)


def test_mitres_are_tapers_of_the_ends() -> None:
    mitred = Panel(1000.0, 40.0, 6.0, "pine", tapers=(
        Taper(Rim.START, 40.0, 0.0), Taper(Rim.END, 40.0, 0.0)))
    assert mitred.outline() == ((40.0, 0.0), (960.0, 0.0), (1000.0, 40.0), (0.0, 40.0))
    assert mitred.volume == pytest.approx(960.0 * 40.0 * 6.0)


def test_taper_and_mitre_meet_in_a_corner() -> None:
    both = Panel(1000.0, 40.0, 6.0, "pine", tapers=(
        Taper(Rim.REAR, 0.0, 10.0), Taper(Rim.END, 40.0, 0.0)))
    (_, low, high, left) = both.outline()
    assert low == (960.0, 0.0)
    assert left == (0.0, 40.0)
    # x = 960 + y on the mitre, y = 40 - x / 100 on the edge
    assert high == pytest.approx((1000.0 / 1.01, 40.0 - 10.0 / 1.01))


def test_what_is_left_on_makes_the_points_of_mitres_longer() -> None:
    # 6 mm left on along the rear, and a mitre of 45 degrees at the end
    mitred = Panel(1000.0, 26.0, 6.0, "pine", tapers=(
        Taper(Rim.REAR, 0.0, 0.0, 6.0), Taper(Rim.END, 26.0, 0.0)))
    assert mitred.outline()[2] == (1000.0, 26.0)
    assert mitred.cut_outline() == ((0.0, 0.0), (974.0, 0.0), (1006.0, 32.0), (0.0, 32.0))
    assert (mitred.cut_length, mitred.cut_width, mitred.cut_origin) == (1006.0, 32.0, (0.0, 0.0))


def test_tapered_strip_and_its_mirror_image_are_one_piece_turned_over() -> None:
    turned = (
        replace(STRIP, tapers=(Taper(Rim.REAR, 0.0, 12.0, 6.0),)),
        replace(STRIP, tapers=(Taper(Rim.FRONT, 12.0, 0.0, 6.0),)),
        replace(STRIP, tapers=(Taper(Rim.FRONT, 0.0, 12.0, 6.0),)),
        STRIP.mirrored(),
    )
    assert {p.shape_key() for p in turned} == {STRIP.shape_key()}
    for other in (Taper(Rim.REAR, 12.0, 0.0, 5.0), Taper(Rim.REAR, 11.0, 0.0, 6.0),
                  Taper(Rim.END, 12.0, 0.0, 6.0)):
        assert replace(STRIP, tapers=(other,)).shape_key() != STRIP.shape_key()
    assert replace(STRIP, tapers=()).shape_key() != STRIP.shape_key()


@pytest.mark.parametrize(
    ("changes", "message"),
    [
        ({"notches": (Notch(Rim.END, Rim.FRONT, 5.0, 5.0),)}, "grooves and notches is given; must"),
        ({"holes": (HoleRow("h", Face.UPPER, 10.0, 21.0, 5.0, 10.0),)}, "inside the taper"),
        ({"tapers": (Taper(Rim.REAR, 0.0, 30.0),)}, "taper of the rear is 0 to 30 mm; must be"),
        ({"tapers": (Taper(Rim.REAR, -1.0, 3.0),)}, "must leave the panel within 2000 x 30 mm"),
        ({"tapers": (Taper(Rim.REAR, 1.0, 3.0),) * 2}, "must be the only one there"),
    ],
)
def test_tapers_that_cannot_be_cut(changes: dict[str, object], message: str) -> None:
    assert check_panel(STRIP, "strip", JoineryRules()) is STRIP
    with pytest.raises(ClosetError, match=message):
        check_panel(replace(STRIP, **changes), "strip", JoineryRules())  # type: ignore[arg-type]


BENT = Panel(
    2000.0, 30.0, 18.0, "ply", tapers=(Taper(Rim.REAR, 0.0, 12.0, 6.0, ((0.25, 4.0), (0.5, 9.0))),)
)


def test_a_taper_of_several_straight_pieces() -> None:
    assert BENT.outline() == (
        (0.0, 0.0), (2000.0, 0.0), (2000.0, 18.0), (1000.0, 21.0), (500.0, 26.0), (0.0, 30.0)
    )
    assert BENT.cut_outline()[2:] == (
        (2000.0, 24.0), (1000.0, 27.0), (500.0, 32.0), (0.0, 36.0))
    area = 500.0 * 28.0 + 500.0 * 23.5 + 1000.0 * 19.5
    assert BENT.volume == pytest.approx(area * 18.0)
    assert check_panel(BENT, "strip", JoineryRules()) is BENT
    turned = replace(BENT, tapers=(BENT.tapers[0].reversed(),))
    assert turned.outline()[3:5] == ((1500.0, 26.0), (1000.0, 21.0))
    front = replace(turned, tapers=(replace(turned.tapers[0], rim=Rim.FRONT),))
    assert front.shape_key() == BENT.shape_key() == turned.shape_key()
    assert BENT.tapers[0].inside(0.375) == pytest.approx(6.5)
    bad = replace(BENT, tapers=(Taper(Rim.REAR, 0.0, 1.0, via=((0.6, 1.0), (0.4, 1.0))),))
    with pytest.raises(ClosetError, match="shares of its length, rising between 0 and 1"):
        check_panel(bad, "strip", JoineryRules())


def test_quarter_round_is_a_quarter_of_a_bar() -> None:
    bar = Panel(1000.0, 12.0, 12.0, "pine", section=Section.QUARTER_ROUND)
    assert bar.volume == pytest.approx(1000.0 * math.pi * 36.0)
    mitred = replace(bar, tapers=(Taper(Rim.START, 0.0, 12.0), Taper(Rim.END, 0.0, 12.0)))
    # what a mitre takes off: the section's first moment about its straight side, r³ / 3
    assert mitred.volume == pytest.approx(1000.0 * math.pi * 36.0 - 2 * 12.0**3 / 3)
    assert check_panel(mitred, "bar", JoineryRules()) is mitred
    assert bar.shape_key() != replace(bar, section=Section.FLAT).shape_key()
    left, right = (replace(bar, tapers=(Taper(rim, 0.0, 12.0),)) for rim in (Rim.START, Rim.END))
    assert left.shape_key() != right.shape_key()
    faces = [ring for ring, _ in quarter_round_faces(mitred)]
    # the facets lie inside the round, by 1 - sin(15°) / (15° in radians) of its area
    assert volume(tuple(faces)) == pytest.approx(mitred.volume, rel=0.015)
    assert volume(tuple(faces)) < mitred.volume
    with pytest.raises(ClosetError, match="as wide as thick, straight along its length"):
        check_panel(replace(bar, width=14.0), "bar", JoineryRules())
