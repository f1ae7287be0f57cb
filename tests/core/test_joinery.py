"""Rules for joints, and which cuts are refused and in which words."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from closetbench.core.errors import ClosetError
from closetbench.core.joinery import JoineryRules, check_panel, rabbet, router_passes
from closetbench.core.panel import Band, Face, Groove, HoleRow, Notch, Panel, Rim

RULES = JoineryRules()
BARE = Panel(1000.0, 300.0, 18.0, "mdf")
PINS = HoleRow("pins", Face.UPPER, 200.0, 37.0, 5.0, 10.0)


def groove(offset: float = 100.0, face: Face = Face.UPPER, **changes: object) -> Groove:
    made = Groove("shelf", face, Rim.START, offset, 18.2, 6.0)
    return replace(made, **changes)  # type: ignore[arg-type]


def refused(panel: Panel, rules: JoineryRules = RULES) -> ClosetError:
    with pytest.raises(ClosetError) as caught:
        check_panel(panel, "A: side", rules)
    return caught.value


@pytest.mark.parametrize(
    ("thickness", "depth"),
    # a third, taken down to a half millimetre, worked by hand
    [(18.0, 6.0), (17.6, 5.5), (19.05, 6.0), (15.9, 5.0), (12.0, 4.0), (3.1, 1.0), (1.0, 0.5)],
)
def test_groove_depth_is_a_third_in_half_millimetres(thickness: float, depth: float) -> None:
    assert RULES.groove_depth(thickness) == depth


def test_depth_step_and_fraction_are_the_shops() -> None:
    assert JoineryRules(depth_step=0.25).groove_depth(17.6) == 5.75
    assert JoineryRules(depth_fraction=0.5).groove_depth(17.6) == 8.5
    # a third of 18 is not lost to rounding, and a coarse step still cuts something
    assert JoineryRules(depth_step=0.1).groove_depth(18.0) == pytest.approx(6.0, abs=1e-12)
    assert JoineryRules(depth_step=2.0).groove_depth(3.1) == 2.0


def test_given_depth_is_taken_up_to_the_deepest() -> None:
    assert JoineryRules(depth=9.0).groove_depth(18.0) == 9.0
    for depth in (9.01, 0.0, -1.0):
        with pytest.raises(ClosetError) as caught:
            JoineryRules(depth=depth).groove_depth(18.0, "A")
        assert str(caught.value) == (
            f"A: groove depth is {depth:g} mm; "
            "must be above 0 and at most 9 mm in a panel 18 mm thick"
        )


def test_groove_is_as_wide_as_the_measured_panel_and_the_fit() -> None:
    assert RULES.groove_width(17.6) == pytest.approx(17.8, abs=1e-12)


def test_tongue_is_the_depth_less_the_clearance_at_its_end() -> None:
    assert RULES.tongue(18.0) == 5.5
    assert JoineryRules(end_clearance=0.0).tongue(18.0) == 6.0


def test_tongue_that_would_not_reach_its_groove_is_refused() -> None:
    with pytest.raises(ClosetError) as caught:
        JoineryRules(depth=2.0, end_clearance=3.0).tongue(18.0, "A")
    assert str(caught.value) == (
        "A: end clearance is 3 mm; must be less than the depth of the groove, 2 mm"
    )


def test_rabbet_has_the_panels_width_and_no_fit() -> None:
    assert rabbet("bottom", Face.LOWER, Rim.START, 17.6, 5.5) == Groove(
        "bottom", Face.LOWER, Rim.START, 0.0, 17.6, 5.5
    )


@pytest.mark.parametrize(
    ("changes", "message"),
    [
        ({"fit": -0.1}, "fit is -0.1; must be 0 to 2"),
        ({"fit": float("nan")}, "fit is nan; must be 0 to 2"),
        ({"end_clearance": 4.0}, "end clearance is 4; must be 0 to 3"),
        ({"depth_fraction": 0.6},
         "groove depth as a fraction of the thickness is 0.6; must be 0.1 to 0.5"),
        ({"depth_step": 0.0}, "step of the groove depth is 0; must be 0.01 to 2"),
        ({"most_fraction": 1.0},
         "deepest groove as a fraction of the thickness is 1; must be 0.1 to 0.75"),
        ({"least_web": 0.0}, "least web as a fraction of the thickness is 0; must be 0.1 to 0.9"),
        ({"least_skin": 0.0}, "skin under a blind hole is 0; must be 0.5 to 20"),
    ],
)
def test_rules_keep_within_reason(changes: dict[str, float], message: str) -> None:
    with pytest.raises(ClosetError) as caught:
        JoineryRules(**changes)
    assert str(caught.value) == f"joinery: {message}"


@pytest.mark.parametrize(
    ("width", "bit", "passes"),
    [
        (17.8, 17.8, (0.0,)),
        (17.8, 12.0, (0.0, 5.8)),
        (17.8, 6.0, (0.0, 5.9, 11.8)),
        (18.0, 6.0, (0.0, 6.0, 12.0)),
    ],
)
def test_router_passes(width: float, bit: float, passes: tuple[float, ...]) -> None:
    assert router_passes(width, bit) == pytest.approx(passes, abs=1e-12)


@given(st.floats(3.0, 40.0), st.floats(2.0, 40.0))
def test_router_leaves_nothing_standing_and_makes_no_pass_too_many(
    width: float, bit: float
) -> None:
    if bit > width:
        bit, width = width, bit
    passes = router_passes(width, bit)
    assert passes[0] == 0.0
    assert passes[-1] + bit == pytest.approx(max(width, bit), abs=1e-6)
    assert all(b - a <= bit + 1e-6 for a, b in pairwise(passes))
    assert (len(passes) - 1) * bit < width


@pytest.mark.parametrize("bit", [18.0, 0.0, -6.0])
def test_router_bit_must_fit_the_groove(bit: float) -> None:
    with pytest.raises(ClosetError) as caught:
        router_passes(17.8, bit, "A: left side, groove for bottom")
    assert str(caught.value) == (
        f"A: left side, groove for bottom: router bit is {bit:g} mm; "
        "must be above 0 and at most as wide as the groove, 17.8 mm"
    )


def test_sound_panel_comes_back_as_it_is() -> None:
    panel = replace(BARE, grooves=(groove(),), holes=(PINS,))
    assert check_panel(panel, "A: side", RULES) is panel


@pytest.mark.parametrize("name", ["length", "width", "thickness"])
@pytest.mark.parametrize("value", [0.0, -5.0, float("nan"), float("inf")])
def test_size_must_be_above_zero(name: str, value: float) -> None:
    error = refused(replace(BARE, **{name: value}))
    assert (error.subject, error.prop, error.value, error.limit) == (
        "A: side", name, f"{value:g} mm", "must be above 0"
    )


def test_bands_must_leave_something_to_saw() -> None:
    bands = (Band(Rim.FRONT, "b", 2.0), Band(Rim.REAR, "b", 2.0))
    assert str(refused(replace(BARE, width=3.0, bands=bands))) == (
        "A: side: width without its edge bands is -1 mm; must be above 0"
    )
    assert str(refused(replace(BARE, bands=(bands[0], bands[0])))) == (
        "A: side: edge band on the front is given twice; must be given once"
    )


@pytest.mark.parametrize(
    ("cut", "prop", "value", "limit"),
    [
        (groove(990.0), "position", "990 to 1008.2 mm", "must lie within 0 and 1000 mm"),
        (groove(-1.0), "position", "-1 to 17.2 mm", "must lie within 0 and 1000 mm"),
        (groove(290.0, measured_from=Rim.REAR), "position", "290 to 308.2 mm",
         "must lie within 0 and 300 mm"),
        (groove(width=0.0), "position", "100 to 100 mm", "must lie within 0 and 1000 mm"),
        (groove(stop_first=-1.0), "stops", "-1 and 0 mm",
         "must be 0 or more and leave some of the run of 300 mm"),
        (groove(stop_first=200.0, stop_last=100.0), "stops", "200 and 100 mm",
         "must be 0 or more and leave some of the run of 300 mm"),
        (groove(depth=9.1), "depth", "9.1 mm",
         "must be above 0 and at most 9 mm in a panel 18 mm thick"),
        (groove(depth=0.0), "depth", "0 mm",
         "must be above 0 and at most 9 mm in a panel 18 mm thick"),
    ],
)
def test_groove_that_cannot_be_cut(cut: Groove, prop: str, value: str, limit: str) -> None:
    error = refused(replace(BARE, grooves=(cut,)))
    assert error.subject == "A: side, groove for shelf"
    assert (error.prop, error.value, error.limit) == (prop, value, limit)


def test_grooves_on_one_face_must_not_run_into_each_other() -> None:
    error = refused(replace(BARE, grooves=(groove(), groove(110.0, name="other"))))
    assert str(error) == (
        "A: side, grooves for shelf and other: distance is less than 0 mm; "
        "must not run into each other; move one"
    )
    crossing = groove(10.0, measured_from=Rim.REAR, name="back")
    check_panel(replace(BARE, grooves=(groove(), crossing)), "A: side", RULES)
    beside = groove(118.2, name="other")
    check_panel(replace(BARE, grooves=(groove(), beside)), "A: side", RULES)


def test_grooves_back_to_back_must_leave_a_web() -> None:
    deep = [groove(depth=7.0), groove(105.0, Face.LOWER, depth=7.0, name="other")]
    error = refused(replace(BARE, grooves=tuple(deep)))
    assert str(error) == (
        "A: side, grooves for shelf and other: web between them is 4 mm; must be at least 4.5 mm "
        "of 18 mm where grooves meet back to back; make them shallower or move one shelf"
    )
    # a third from each face leaves a third; grooves that do not meet need no web
    check_panel(replace(BARE, grooves=(groove(), groove(face=Face.LOWER))), "A: side", RULES)
    apart = (deep[0], replace(deep[1], offset=118.2))
    check_panel(replace(BARE, grooves=apart), "A: side", RULES)


@pytest.mark.parametrize(
    ("row", "prop", "value", "limit"),
    [
        (replace(PINS, depth=16.0), "depth", "16 mm",
         "must be at most 15 mm, or drill right through 18 mm"),
        (replace(PINS, depth=19.0), "depth", "19 mm",
         "must be at most 15 mm, or drill right through 18 mm"),
        (replace(PINS, depth=0.0), "depth", "0 mm",
         "must be at most 15 mm, or drill right through 18 mm"),
        (replace(PINS, diameter=0.0), "row", "1 of 0 mm at 32 mm",
         "needs one hole or more, a diameter above 0 and a pitch that leaves wood between"),
        (replace(PINS, count=0), "row", "0 of 5 mm at 32 mm",
         "needs one hole or more, a diameter above 0 and a pitch that leaves wood between"),
        (replace(PINS, count=3, pitch=4.0), "row", "3 of 5 mm at 4 mm",
         "needs one hole or more, a diameter above 0 and a pitch that leaves wood between"),
        (replace(PINS, x=998.0), "position", "998, 37 mm",
         "must leave the hole inside the panel, 1000 x 300 mm"),
        (replace(PINS, y=2.0), "position", "200, 2 mm",
         "must leave the hole inside the panel, 1000 x 300 mm"),
    ],
)
def test_holes_that_cannot_be_drilled(row: HoleRow, prop: str, value: str, limit: str) -> None:
    error = refused(replace(BARE, holes=(row,)))
    assert error.subject == "A: side, holes for pins"
    assert (error.prop, error.value, error.limit) == (prop, value, limit)


def test_hole_right_through_is_drilled() -> None:
    check_panel(replace(BARE, holes=(replace(PINS, depth=18.0),)), "A: side", RULES)


def test_hole_keeps_out_of_grooves_and_notches() -> None:
    in_groove = replace(BARE, grooves=(groove(),), holes=(replace(PINS, x=117.0),))
    assert str(refused(in_groove)) == (
        "A: side, holes for pins: position is 117, 37 mm; must keep clear of the groove for shelf"
    )
    # opposite a groove of 6 mm a hole of 10 would leave 2 mm, one of 9 leaves 3
    behind = replace(BARE, grooves=(groove(face=Face.LOWER),), holes=(replace(PINS, x=110.0),))
    assert refused(behind).limit == "must keep clear of the groove for shelf"
    shallow = replace(behind, holes=(replace(PINS, x=110.0, depth=9.0),))
    check_panel(shallow, "A: side", RULES)
    notched = replace(
        BARE, notches=(Notch(Rim.START, Rim.FRONT, 80, 50),), holes=(replace(PINS, x=79.0),)
    )
    assert refused(notched).limit == "must not lie in a notch"


def test_holes_must_not_run_into_each_other() -> None:
    near = replace(PINS, name="others", x=204.0)
    error = refused(replace(BARE, holes=(PINS, near)))
    assert str(error) == (
        "A: side, holes for pins and others: position is 200, 37 mm; "
        "must not run into each other"
    )
    other_face = replace(near, face=Face.LOWER)
    assert refused(replace(BARE, holes=(PINS, other_face))).prop == "position"
    short = replace(BARE, holes=(replace(PINS, depth=7.0), replace(other_face, depth=7.0)))
    check_panel(short, "A: side", RULES)
    check_panel(replace(BARE, holes=(PINS, replace(near, x=205.0))), "A: side", RULES)


@pytest.mark.parametrize("size", [(1000.0, 50.0), (80.0, 300.0), (0.0, 50.0), (80.0, -1.0)])
def test_notch_must_be_smaller_than_the_panel(size: tuple[float, float]) -> None:
    error = refused(replace(BARE, notches=(Notch(Rim.START, Rim.FRONT, *size),)))
    assert (error.prop, error.value, error.limit) == (
        "notch", f"{size[0]:g} x {size[1]:g} mm", "must be smaller than the panel, 1000 x 300 mm"
    )


def test_notch_must_reach_into_the_sawn_board() -> None:
    panel = replace(
        BARE, notches=(Notch(Rim.START, Rim.FRONT, 80, 2.0),), bands=(Band(Rim.FRONT, "b", 2.0),)
    )
    assert refused(panel).limit == "must be larger than the edge band, 2 mm thick"


def test_notches_must_not_run_into_each_other() -> None:
    ends = (Notch(Rim.START, Rim.FRONT, 600, 50), Notch(Rim.END, Rim.FRONT, 500, 50))
    assert refused(replace(BARE, notches=ends)).limit == "must not run into another notch"
    twice = (Notch(Rim.START, Rim.FRONT, 60, 50), Notch(Rim.START, Rim.FRONT, 50, 60))
    assert refused(replace(BARE, notches=twice)).limit == "must not run into another notch"
