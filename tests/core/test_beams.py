"""Beam theory: what must hold of any beam, and what is refused."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from closetbench.core.beams import (
    CASES,
    Ends,
    LineLoad,
    Loading,
    Piece,
    PointLoad,
    bend,
    circle,
    composite,
    deflection,
    longest,
    moment,
    rectangle,
    tube,
)
from closetbench.core.errors import ClosetError

BAR = rectangle(300, 18, 2500, 100)


@pytest.mark.parametrize("ends", [Ends.SIMPLE, Ends.CLAMPED])
def test_the_table_and_the_integration_agree(ends: Ends) -> None:
    for loading, loads in (
        (Loading.UNIFORM, [LineLoad(0.25, 0, 1000)]),
        (Loading.CENTRE, [PointLoad(250, 500)]),
    ):
        found = bend(BAR, 1000, loads, ends)
        assert found.deflection == pytest.approx(deflection(BAR, 1000, 250, loading, ends))
        assert found.moment == pytest.approx(moment(1000, 250, loading, ends))
        assert found.at == pytest.approx(500, abs=0.1)


def test_a_cantilever_turns_with_all_of_its_load() -> None:
    assert moment(1000, 50, Loading.TIP, Ends.CANTILEVER) == 50_000
    assert moment(1000, 50, Loading.UNIFORM, Ends.CANTILEVER) == 25_000
    assert CASES[Loading.TIP, Ends.CANTILEVER].shear == 1.0


loads = st.lists(
    st.one_of(
        st.builds(PointLoad, st.floats(0, 500), st.floats(0, 1000)),
        st.builds(
            lambda w, a, b: LineLoad(w, min(a, b), max(a, b)),
            st.floats(0, 1), st.floats(0, 1000), st.floats(0, 1000),
        ),
    ),
    min_size=1, max_size=4,
)


@given(loads)
def test_supports_carry_everything_and_clamping_helps(found: list[PointLoad | LineLoad]) -> None:
    total = sum(
        v.force if isinstance(v, PointLoad) else v.per_mm * (v.end - v.start) for v in found
    )
    simple = bend(BAR, 1000, found)
    clamped = bend(BAR, 1000, found, Ends.CLAMPED)
    for result in (simple, clamped):
        assert result.left + result.right == pytest.approx(total, abs=1e-6)
        assert result.deflection >= -1e-6
    assert clamped.deflection <= simple.deflection + 1e-6


@given(st.floats(5, 200), st.floats(5, 200))
def test_a_section_of_pieces_is_the_whole(height: float, width: float) -> None:
    whole = rectangle(width, height, 2000, 100)
    parts = composite((
        Piece(width, height / 3, 0, 2000, 100), Piece(width, height * 2 / 3, height / 3, 2000, 100)
    ))
    assert parts.ei == pytest.approx(whole.ei)
    assert parts.stress(1000) == pytest.approx(whole.stress(1000))
    # M·c/I of a rectangle is 6·M/(b·h²)
    assert whole.stress(-1000) == pytest.approx(6000 / (width * height**2))


def test_a_stiff_piece_draws_the_stress() -> None:
    # two layers of 10 x 10: E 1000 below, 3000 above; transformed widths 10 and 30, axis at
    # (100·5 + 300·15)/400 = 12.5, I = 833.33 + 100·7.5² + 2500 + 300·2.5² = 10833.33
    bar = composite((Piece(10, 10, 0, 1000, 1), Piece(10, 10, 10, 3000, 1)))
    assert bar.ei == pytest.approx(1000 * 10833.33, rel=1e-5)
    # 3 times the stress of an equal fibre: 12.5 below, 7.5·3 above
    assert bar.stress(10833.33) == pytest.approx(22.5, rel=1e-5)


def test_a_tube_with_a_wall_to_its_middle_is_nearly_a_round() -> None:
    assert tube(30, 14.999, 1000, 400).ei == pytest.approx(circle(30, 1000, 400).ei)


def test_longest_span() -> None:
    assert longest(lambda span: span / 700, 1, 4000) == pytest.approx(700, abs=0.1)
    assert longest(lambda span: 2.0, 1, 4000) is None
    assert longest(lambda span: 0.5, 1, 4000) == 4000


@pytest.mark.parametrize(
    ("call", "prop"),
    [
        (lambda: deflection(BAR, -800, 100), "span"),
        (lambda: deflection(BAR, float("nan"), 100), "span"),
        (lambda: moment(0, 100), "span"),
        (lambda: deflection(BAR, 800, 1, Loading.QUARTERS, Ends.CLAMPED), "load case"),
        (lambda: rectangle(300, 18, 0, 100), "stiffness"),
        (lambda: rectangle(-300, 18, 2500, 100), "width"),
        (lambda: rectangle(300, 18, 2500, float("inf")), "shear stiffness"),
        (lambda: composite(()), "pieces"),
        (lambda: circle(0, 1, 1), "diameter"),
        (lambda: tube(27, 14, 1, 1), "wall"),
        (lambda: bend(BAR, 800, [PointLoad(1, 900)]), "place of a load"),
        (lambda: bend(BAR, 800, [LineLoad(1, 500, 400)]), "place of a load"),
        (lambda: bend(BAR, 800, [PointLoad(-5, 400)]), "load"),
        (lambda: bend(BAR, 800, [], Ends.CANTILEVER), "ends"),
    ],
)
def test_what_cannot_be_bent_is_named(call: object, prop: str) -> None:
    with pytest.raises(ClosetError) as caught:
        call()  # type: ignore[operator]
    assert caught.value.prop == prop
