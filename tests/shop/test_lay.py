"""How parts lie: side up, place, clipping, room for words."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from closetbench.core.errors import DocumentError
from closetbench.core.panel import Band, Box, Face, Grain, Groove, HoleRow, Notch, Panel, Point, Rim
from closetbench.core.parts import LYING, Part, Place, Role
from closetbench.shop.lay import Side, lay, lay_sheet, lies_turned
from closetbench.stock.plan import Placement, SheetPlan, StockSheet


def part(panel: Panel, name: str = "board") -> Part:
    return Part(name, "case", Role.PANEL, panel, Place((0.0, 0.0, 0.0), *LYING))


def board(**more: object) -> Panel:
    return Panel(600.0, 300.0, 18.0, "ply", **more)  # type: ignore[arg-type]


LOWER_ONLY = board(
    grooves=(Groove("shelf", Face.LOWER, Rim.START, 100.0, 10.0, 6.0, stop_first=20.0),),
    holes=(HoleRow("pin", Face.LOWER, 50.0, 30.0, 5.0, 10.0),),
    notches=(Notch(Rim.END, Rim.FRONT, 40.0, 25.0),),
    bands=(Band(Rim.FRONT, "b", 1.0), Band(Rim.START, "c", 2.0)),
)


def test_a_part_machined_below_is_turned_over_along_its_length() -> None:
    laid = lay(part(LOWER_ONLY))
    assert laid.turned
    # sawn: 598 x 299, its corner at (2, 1) of the finished panel; FRONT now lies away
    assert set(laid.outline) == {
        (0.0, 0.0), (598.0, 0.0), (598.0, 275.0), (558.0, 275.0), (558.0, 299.0), (0.0, 299.0),
    }
    (groove,) = laid.traces
    assert groove.side is Side.UP
    assert set(groove.points) == {(98.0, 0.0), (108.0, 0.0), (108.0, 280.0), (98.0, 280.0)}
    (hole,) = laid.drills
    assert (hole.side, hole.centre, hole.diameter) == (Side.UP, (48.0, 270.0), 5.0)
    front, start = laid.bands
    assert {front.start, front.end} == {(0.0, 299.0), (558.0, 299.0)}
    assert front.inward == (0.0, -1.0)
    assert {start.start, start.end} == {(0.0, 299.0), (0.0, 0.0)}
    assert start.inward == (1.0, 0.0)


def test_turned_and_rotated_on_the_sheet() -> None:
    laid = lay(part(LOWER_ONLY), 1000.0, 500.0, rotated=True)
    assert laid.size == (299.0, 598.0)
    (hole,) = laid.drills
    assert hole.centre == (1000.0 + 299.0 - 270.0, 500.0 + 48.0)
    assert set(laid.traces[0].points) == {
        (1299.0, 598.0), (1299.0, 608.0), (1019.0, 608.0), (1019.0, 598.0),
    }
    assert laid.along == (0.0, 1.0)
    assert laid.grain == (0.0, 1.0)


def test_a_turned_part_is_never_a_mirror_image() -> None:
    """Outline, groove and hole keep their handedness: a part is turned, not reflected."""
    for rotated in (False, True):
        laid = lay(part(LOWER_ONLY), rotated=rotated)
        assert _area(laid.outline) > 0
        assert all(_area(t.points) > 0 for t in laid.traces)


@pytest.mark.parametrize(
    ("faces", "turned"),
    [((), False), ((Face.UPPER,), False), ((Face.LOWER,), True),
     ((Face.UPPER, Face.LOWER), False)],
)
def test_which_side_lies_up(faces: tuple[Face, ...], turned: bool) -> None:
    panel = board(grooves=tuple(Groove("g", f, Rim.START, 50.0, 6.0, 6.0) for f in faces))
    assert lies_turned(panel) is turned
    sides = {t.side for t in lay(part(panel)).traces}
    assert sides == {Side.UP, Side.UNDER} if len(faces) == 2 else sides <= {Side.UP}


def test_through_holes_belong_to_no_face() -> None:
    panel = board(
        grooves=(Groove("g", Face.UPPER, Rim.START, 50.0, 6.0, 6.0),),
        holes=(HoleRow("screws", Face.LOWER, 300.0, 100.0, 5.0, 18.0),),
    )
    laid = lay(part(panel))
    assert not laid.turned
    assert laid.drills[0].side is Side.THROUGH
    assert not lies_turned(board(holes=panel.holes))
    assert not lay(part(board(holes=panel.holes))).one_face_up


def test_a_groove_that_meets_a_notch_is_drawn_without_it() -> None:
    panel = board(
        grooves=(
            Groove("into the notch", Face.UPPER, Rim.START, 20.0, 40.0, 6.0),
            Groove("along", Face.UPPER, Rim.FRONT, 10.0, 30.0, 6.0),
            Groove("all in the notch", Face.UPPER, Rim.START, 0.0, 15.0, 6.0, stop_last=280.0),
        ),
        notches=(Notch(Rim.START, Rim.FRONT, 50.0, 20.0),),
    )
    across, along = lay(part(panel)).traces
    assert set(across.points) == {
        (20.0, 20.0), (50.0, 20.0), (50.0, 0.0), (60.0, 0.0), (60.0, 300.0), (20.0, 300.0),
    }
    assert set(along.points) == {
        (0.0, 20.0), (50.0, 20.0), (50.0, 10.0), (600.0, 10.0), (600.0, 40.0), (0.0, 40.0),
    }


def _area(ring: tuple[Point, ...]) -> float:
    pairs = zip(ring, (*ring[1:], ring[0]), strict=True)
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in pairs) / 2


def _shared(a: Box, b: Box) -> Box:
    return Box(max(a.x0, b.x0), max(a.y0, b.y0), 0.0, min(a.x1, b.x1), min(a.y1, b.y1), 1.0)


def _flat(box: Box) -> float:
    return max(0.0, box.x1 - box.x0) * max(0.0, box.y1 - box.y0)


sizes = st.integers(1, 260).map(float)


@settings(max_examples=150, deadline=None)
@given(
    st.sampled_from(list(Rim)), st.integers(0, 240).map(float), st.integers(1, 60).map(float),
    st.integers(0, 100).map(float), st.integers(0, 100).map(float),
    st.sets(st.sampled_from([(e, f) for e in (Rim.START, Rim.END) for f in (Rim.FRONT, Rim.REAR)])),
    sizes, st.integers(1, 140).map(float), st.booleans(), st.booleans(),
)
def test_a_trace_has_the_area_of_its_groove_less_the_notches(
    rim: Rim, offset: float, width: float, first: float, last: float,
    corners: set[tuple[Rim, Rim]], dx: float, dy: float, lower: bool, rotated: bool,
) -> None:
    face = Face.LOWER if lower else Face.UPPER
    panel = board(
        grooves=(Groove("g", face, rim, offset, width, 6.0, first, last),),
        notches=tuple(Notch(end, edge, dx, dy) for end, edge in corners),
        bands=(Band(Rim.FRONT, "b", 2.0), Band(Rim.END, "b", 2.0)),
    )
    sawn = Box(0.0, 2.0, 0.0, 598.0, 300.0, 1.0)
    box = _shared(panel.groove_box(panel.grooves[0]), sawn)
    wanted = _flat(box) - sum(_flat(_shared(box, panel.notch_box(n))) for n in panel.notches)
    drawn = sum(_area(t.points) for t in lay(part(panel), rotated=rotated).traces)
    assert drawn == pytest.approx(wanted, abs=1e-6)


def test_words_go_between_the_grooves_and_beside_the_holes() -> None:
    panel = board(
        grooves=tuple(Groove("g", Face.UPPER, Rim.START, x, 20.0, 6.0) for x in (100.0, 500.0)),
        holes=(HoleRow("pins", Face.UPPER, 130.0, 40.0, 10.0, 10.0, 5, 32.0),),
    )
    assert lay(part(panel)).word_room() == (120.0, 45.0, 500.0, 300.0)
    assert lay(part(panel), rotated=True).word_room() == (0.0, 120.0, 255.0, 500.0)


def test_no_grain_no_direction() -> None:
    assert lay(part(board(grain=Grain.NONE))).grain is None
    assert lay(part(board(grain=Grain.WIDTH)), rotated=True).grain == (-1.0, 0.0)


def _sheet(place: Placement) -> SheetPlan:
    return SheetPlan("S1", StockSheet("s", "ply", 2440.0, 1220.0), 3.2, (place,))


@pytest.mark.parametrize(
    ("place", "words"),
    [
        (Placement("case: gone", 0.0, 0.0, 600.0, 300.0, False), ("case: gone", "no such part")),
        (Placement("case: board", 0.0, 0.0, 590.0, 300.0, False), ("600 x 300", "590 x 300")),
        (Placement("case: board", 0.0, 0.0, 600.0, 300.0, True), ("600 x 300", "300 x 600")),
    ],
)
def test_a_plan_of_other_parts_is_refused(place: Placement, words: tuple[str, ...]) -> None:
    with pytest.raises(DocumentError) as caught:
        lay_sheet(_sheet(place), [part(board())], "cut layout")
    assert all(word in str(caught.value) for word in words)
    assert "plan the cutting again" in caught.value.limit
