"""Panels: their frame, their cuts, their outline, their volume, and which are one piece."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from closetbench.core.errors import ClosetError
from closetbench.core.joinery import JoineryRules, check_panel
from closetbench.core.panel import (
    Band,
    Box,
    Face,
    Grain,
    Groove,
    HoleRow,
    Notch,
    Panel,
    Rim,
    Run,
)
from tests.core import solids

BARE = Panel(1000.0, 300.0, 18.0, "mdf")
FEWER = settings(max_examples=60)


def with_grooves(*grooves: Groove) -> Panel:
    return replace(BARE, grooves=grooves)


@pytest.mark.parametrize(
    ("rim", "face", "box"),
    [
        # 100 mm from the rim, 18 wide, 6 deep, 20 short of the first and 30 of the last end
        (Rim.START, Face.LOWER, Box(100, 20, 0, 118, 270, 6)),
        (Rim.START, Face.UPPER, Box(100, 20, 12, 118, 270, 18)),
        (Rim.END, Face.LOWER, Box(882, 20, 0, 900, 270, 6)),
        (Rim.FRONT, Face.UPPER, Box(20, 100, 12, 970, 118, 18)),
        (Rim.REAR, Face.LOWER, Box(20, 182, 0, 970, 200, 6)),
    ],
)
def test_groove_lies_where_it_is_measured_from(rim: Rim, face: Face, box: Box) -> None:
    assert BARE.groove_box(Groove("shelf", face, rim, 100, 18, 6, 20, 30)) == box


def test_groove_runs_at_right_angles_to_its_measure() -> None:
    assert Groove("g", Face.UPPER, Rim.END, 1, 1, 1).run is Run.WIDTH
    assert Groove("g", Face.UPPER, Rim.REAR, 1, 1, 1).run is Run.LENGTH


def test_groove_at_the_rim_is_a_rabbet() -> None:
    groove = Groove("g", Face.UPPER, Rim.END, 0.0, 18, 6)
    assert groove.is_rabbet
    assert groove.is_through
    assert not replace(groove, offset=1.0).is_rabbet
    assert not replace(groove, stop_last=5.0).is_through


def test_faces_and_rims_have_opposites() -> None:
    assert Face.UPPER.other is Face.LOWER
    assert Face.LOWER.other is Face.UPPER
    assert [rim.opposite for rim in (Rim.FRONT, Rim.REAR, Rim.START, Rim.END)] == [
        Rim.REAR, Rim.FRONT, Rim.END, Rim.START
    ]
    assert [rim.is_end for rim in (Rim.FRONT, Rim.REAR, Rim.START, Rim.END)] == [
        False, False, True, True
    ]


def test_hole_row_runs_along_the_length_or_the_width() -> None:
    row = HoleRow("pins", Face.UPPER, 100, 37, 5, 10, 3)
    assert row.centres() == ((100, 37), (132, 37), (164, 37))
    assert replace(row, run=Run.WIDTH, pitch=64).centres() == ((100, 37), (100, 101), (100, 165))


def test_bands_make_the_sawn_board_smaller() -> None:
    panel = replace(
        BARE, bands=(Band(Rim.FRONT, "b", 0.5), Band(Rim.START, "b", 2.0), Band(Rim.END, "b", 1.0))
    )
    assert panel.cut_length == 997.0
    assert panel.cut_width == 299.5
    assert panel.cut_origin == (2.0, 0.5)
    assert panel.band_thickness(Rim.REAR) == 0.0


def test_outline_without_notches_is_the_rectangle() -> None:
    assert BARE.outline() == ((0, 0), (1000, 0), (1000, 300), (0, 300))


def test_outline_walks_around_every_notch() -> None:
    panel = replace(
        BARE,
        notches=(
            Notch(Rim.START, Rim.FRONT, 80, 50),
            Notch(Rim.END, Rim.FRONT, 10, 20),
            Notch(Rim.END, Rim.REAR, 30, 40),
            Notch(Rim.START, Rim.REAR, 60, 70),
        ),
    )
    assert panel.outline() == (
        (0, 50), (80, 50), (80, 0),
        (990, 0), (990, 20), (1000, 20),
        (1000, 260), (970, 260), (970, 300),
        (60, 300), (60, 230), (0, 230),
    )
    assert solids.area(panel.outline()) == 1000 * 300 - 4000 - 200 - 1200 - 4200


def test_sawn_outline_leaves_the_notch_where_it_is_and_takes_the_bands_off() -> None:
    panel = replace(
        BARE, notches=(Notch(Rim.START, Rim.FRONT, 80, 50),), bands=(Band(Rim.FRONT, "b", 2.0),)
    )
    assert panel.cut_outline() == (
        (0, 50), (80, 50), (80, 2.0), (1000, 2.0), (1000, 300), (0, 300)
    )


def test_volume_is_that_of_the_panel_as_it_is() -> None:
    plain = Panel(1000.0, 400.0, 18.0, "ply18")
    assert plain.volume == 1000.0 * 400.0 * 18.0
    shorter = replace(plain, length=500.0)
    assert shorter.volume == 500.0 * 400.0 * 18.0
    assert plain == Panel(1000.0, 400.0, 18.0, "ply18"), "one that was asked is no other"


def test_volume_of_a_groove_across() -> None:
    panel = with_grooves(Groove("a", Face.UPPER, Rim.START, 100, 18, 6))
    assert panel.volume == 1000 * 300 * 18 - 18 * 6 * 300


def test_volume_counts_the_crossing_of_grooves_once() -> None:
    panel = with_grooves(
        Groove("a", Face.UPPER, Rim.START, 100, 18, 6), Groove("b", Face.UPPER, Rim.REAR, 10, 4, 5)
    )
    assert panel.volume == 1000 * 300 * 18 - 18 * 6 * 300 - 4 * 5 * 1000 + 18 * 4 * 5


def test_volume_of_notches_and_holes() -> None:
    panel = replace(
        BARE,
        notches=(Notch(Rim.START, Rim.FRONT, 80, 50),),
        holes=(
            HoleRow("blind", Face.UPPER, 200, 37, 5, 10, 4),
            HoleRow("through", Face.LOWER, 200, 200, 8, 18, 2),
        ),
    )
    holes = 4 * math.pi * 2.5**2 * 10 + 2 * math.pi * 4**2 * 18
    assert panel.volume == pytest.approx((1000 * 300 - 80 * 50) * 18 - holes, rel=1e-14)


def test_groove_over_a_notch_takes_nothing_twice() -> None:
    panel = replace(
        with_grooves(Groove("a", Face.LOWER, Rim.START, 60, 40, 6)),
        notches=(Notch(Rim.START, Rim.FRONT, 80, 50),),
    )
    assert panel.volume == (1000 * 300 - 80 * 50) * 18 - 40 * 6 * 300 + 20 * 50 * 6


mm = st.integers(1, 60).map(lambda n: n * 2.5)


@st.composite
def panels(draw: st.DrawFn) -> Panel:
    """Panels that can be made, with a little of everything."""
    length, width, thick = draw(st.integers(200, 900)), draw(st.integers(150, 600)), 18.0
    grooves = draw(st.lists(
        st.builds(
            Groove, st.just("g"), st.sampled_from(Face), st.sampled_from(Rim), mm, mm,
            st.sampled_from([4.0, 6.0]), st.sampled_from([0.0, 10.0]), st.sampled_from([0.0, 25.0]),
        ),
        max_size=4,
    ))
    holes = draw(st.lists(
        st.builds(
            HoleRow, st.just("h"), st.sampled_from(Face), mm, mm, st.sampled_from([5.0, 8.0]),
            st.sampled_from([8.0, 18.0]), st.integers(1, 4), st.just(32.0), st.sampled_from(Run),
        ),
        max_size=2,
    ))
    notches = draw(st.lists(
        st.builds(Notch, st.sampled_from([Rim.START, Rim.END]),
                  st.sampled_from([Rim.FRONT, Rim.REAR]), mm, mm),
        max_size=2,
    ))
    bands = draw(st.sets(st.sampled_from(Rim), max_size=2))
    panel = Panel(
        float(length), float(width), thick, "mdf", draw(st.sampled_from(Grain)), tuple(grooves),
        tuple(holes), tuple(notches), tuple(Band(rim, "b", 0.5) for rim in bands),
    )
    try:
        return check_panel(panel, "panel", JoineryRules())
    except ClosetError:
        assume(False)
        raise


def turned(panel: Panel, axis: str) -> Panel:
    """The same piece turned half around one of its axes and described anew."""
    flips = {"x": (False, True, True), "y": (True, False, True), "z": (True, True, False)}
    along, across, over = flips[axis]

    def rim(name: Rim) -> Rim:
        return name.opposite if (along if name.is_end else across) else name

    def face(name: Face) -> Face:
        return name.other if over else name

    def groove(g: Groove) -> Groove:
        swap = across if g.run is Run.WIDTH else along
        stops = (g.stop_last, g.stop_first) if swap else (g.stop_first, g.stop_last)
        return replace(g, face=face(g.face), measured_from=rim(g.measured_from),
                       stop_first=stops[0], stop_last=stops[1])

    def row(h: HoleRow) -> HoleRow:
        points = [
            (panel.length - x if along else x, panel.width - y if across else y)
            for x, y in h.centres()
        ]
        x, y = min(points)
        return replace(h, face=face(h.face), x=x, y=y)

    return replace(
        panel,
        grooves=tuple(map(groove, panel.grooves)),
        holes=tuple(map(row, panel.holes)),
        notches=tuple(replace(n, end=rim(n.end), edge=rim(n.edge)) for n in panel.notches),
        bands=tuple(replace(b, rim=rim(b.rim)) for b in panel.bands),
    )


@FEWER
@given(panels())
def test_volume_equals_the_sum_of_the_cells(panel: Panel) -> None:
    assert panel.volume == pytest.approx(solids.volume(panel), rel=1e-12)


@FEWER
@given(panels())
def test_outline_has_the_area_that_the_notches_leave(panel: Panel) -> None:
    left = panel.length * panel.width - sum(n.dx * n.dy for n in panel.notches)
    assert solids.area(panel.outline()) == pytest.approx(left, rel=1e-12)


@FEWER
@given(panels())
def test_a_turned_panel_is_the_same_piece(panel: Panel) -> None:
    for axis in "xyz":
        other = turned(panel, axis)
        assert other.shape_key() == panel.shape_key()
        assert turned(other, axis).shape_key() == panel.shape_key()
        assert other.volume == pytest.approx(panel.volume, rel=1e-12)


@FEWER
@given(panels())
def test_mirroring_twice_gives_the_panel_back(panel: Panel) -> None:
    mirror = panel.mirrored()
    assert mirror.mirrored() == panel
    assert mirror.volume == pytest.approx(panel.volume, rel=1e-12)
    assert mirror.outline() == panel.outline()
    # the same mirror image whichever way up it is made
    assert turned(panel, "x").mirrored().shape_key() == mirror.shape_key()


def test_mirror_image_is_another_piece() -> None:
    side = with_grooves(Groove("shelf", Face.LOWER, Rim.START, 100, 18, 6, 10))
    assert side.mirrored().shape_key() != side.shape_key()
    assert side.mirrored().machined_faces == {Face.UPPER}


def test_mirror_image_of_a_panel_alike_at_both_edges_is_the_same_piece() -> None:
    side = with_grooves(Groove("shelf", Face.LOWER, Rim.START, 100, 18, 6))
    assert side.mirrored().shape_key() == side.shape_key()


@pytest.mark.parametrize(
    "change",
    [
        {"material": "ply"},
        {"grain": Grain.WIDTH},
        {"length": 1000.1},
        {"thickness": 17.6},
        {"bands": (Band(Rim.FRONT, "half", 0.5),)},
        {"notches": (Notch(Rim.END, Rim.FRONT, 80, 50),)},
        {"holes": (HoleRow("pins", Face.LOWER, 200, 37, 5, 10),)},
    ],
)
def test_whatever_can_be_seen_makes_another_piece(change: dict[str, object]) -> None:
    assert replace(BARE, **change).shape_key() != BARE.shape_key()  # type: ignore[arg-type]


def test_names_and_the_way_a_row_is_written_make_no_other_piece() -> None:
    row = HoleRow("pins", Face.UPPER, 100, 37, 5, 10, 2)
    two = tuple(replace(row, name="p", x=x, count=1) for x in (132.0, 100.0))
    assert replace(BARE, holes=(row,)).shape_key() == replace(BARE, holes=two).shape_key()
    through = replace(row, depth=18.0)
    assert (
        replace(BARE, holes=(through,)).shape_key()
        == replace(BARE, holes=(replace(through, face=Face.LOWER),)).shape_key()
    )


def test_rounding_noise_makes_no_other_piece() -> None:
    a = with_grooves(Groove("g", Face.UPPER, Rim.START, 0.1 + 0.2, 18, 6))
    b = with_grooves(Groove("g", Face.UPPER, Rim.START, 0.3, 18, 6))
    assert a.shape_key() == b.shape_key()


def test_boxes_that_touch_do_not_overlap() -> None:
    a = Box(0, 0, 0, 10, 10, 10)
    assert not a.overlaps(Box(10, 0, 0, 20, 10, 10))
    assert a.overlaps(Box(9.9, 9.9, 9.9, 20, 20, 20))
    assert a.volume == 1000
