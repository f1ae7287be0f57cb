"""The fit of a room to its readings: how sure it is, and which reading it blames."""

from __future__ import annotations

import numpy as np
import pytest

from closetbench.core.adjust import CRITICAL, greatest_sum, solve
from closetbench.core.envelope import Clearances, Envelope, fit_envelope
from closetbench.core.errors import SurveyError
from closetbench.core.fit import Fit, fit
from closetbench.core.readings import candidates, observations, places, recommended
from closetbench.core.room import Room
from closetbench.core.surfaces import Surface
from tests.core.measured import Measured, draw, plain_survey

pytestmark = pytest.mark.once


def test_a_mean_is_the_simplest_adjustment() -> None:
    found = solve(np.ones((4, 1)), np.array([10.0, 12.0, 11.0, 11.0]), np.full(4, 2.0))
    assert found.x == pytest.approx([11.0])
    assert found.cofactor == pytest.approx(np.array([[1.0]]))
    assert found.redundancy == pytest.approx([0.75] * 4)
    assert found.residuals == pytest.approx([1.0, -1.0, 0.0, 0.0])
    # residual over its own deviation, 2 sqrt(0.75)
    assert found.w == pytest.approx([-1 / 3**0.5, 1 / 3**0.5, 0.0, 0.0])
    assert found.dof == 3
    assert found.s0**2 == pytest.approx(0.5 / 3)


def test_redundancies_add_up_to_the_degrees_of_freedom() -> None:
    rng = np.random.default_rng(3)
    found = solve(rng.normal(size=(20, 6)), rng.normal(size=20), rng.uniform(0.05, 0.2, 20))
    assert float(found.redundancy.sum()) == pytest.approx(found.dof) == 14
    for i in range(20):
        unit = np.zeros(20)
        unit[i] = 1.0
        w, size = found.effect(unit)
        assert w == pytest.approx(found.w[i])
        assert size == pytest.approx(-found.residuals[i] / found.redundancy[i])


def test_what_is_open_is_told() -> None:
    found = solve(np.array([[1.0, 1.0, 0.0], [1.0, 1.0, 0.0]]), np.ones(2), np.ones(2))
    assert found.x == pytest.approx([0.5, 0.5, 0.0])
    assert found.null.shape == (2, 3)
    assert found.null @ np.array([1.0, 1.0, 0.0]) == pytest.approx([0.0, 0.0])


# chi-squared quantiles at 99.9 %, as printed in any table of them
@pytest.mark.parametrize(("dof", "value"), [(5, 20.52), (10, 29.59), (20, 45.31)])
def test_greatest_sum_of_squares(dof: int, value: float) -> None:
    assert greatest_sum(dof) == pytest.approx(value, rel=0.015)


def test_too_few_readings_say_what_is_open() -> None:
    survey = plain_survey(1900.0, 600.0, 2400.0)
    seen = [o for o in observations(survey) if not o.key.startswith(("height", "extra"))]
    with pytest.raises(SurveyError, match="nothing says where these are: ceiling, ceiling rise"):
        fit(places(survey), seen)


@pytest.mark.parametrize(("opening", "count", "unknowns"), [(False, 43, 13), (True, 51, 16)])
def test_a_full_sheet_controls_every_reading(opening: bool, count: int, unknowns: int) -> None:
    survey = plain_survey(1930.0, 640.0, 2410.0, opening)
    assert recommended(survey) == ()
    assert candidates(survey) == ()
    seen = observations(survey)
    result = fit(places(survey), seen)
    assert len(seen) == count
    assert result.dof == count - unknowns
    assert min(result.redundancy) > 0.2
    assert max(result.sd_adjusted) < 1.2
    assert result.unseen == ()


def room_of(measured: Measured, result: Fit) -> Room:
    rows = result.coefficients.tolist()
    five = [Surface(tuple(r)) for r in rows[:5]]  # type: ignore[arg-type]
    covariance = tuple(tuple(r) for r in result.covariance[:30, :30].tolist())
    return Room(*five, covariance=covariance)  # type: ignore[arg-type,misc]


def stands_clear(room: Room, box: Envelope, c: Clearances) -> bool:
    """Whether the box fits in the true room with its clearances, pushed to where it fits."""
    x0, x1, y1 = box.x0, box.x0 + box.width, box.depth
    z0 = room.floor.over(x0, x1, 0.0, y1)[1] + c.floor
    z1 = z0 + box.height
    width = room.right.over(0.0, y1, z0, z1)[0] - room.left.over(0.0, y1, z0, z1)[1]
    return (
        width >= box.width + c.left + c.right
        and room.back.over(x0, x1, z0, z1)[0] >= y1 + c.back
        and room.ceiling.over(x0, x1, 0.0, y1)[0] >= z1 + c.top
    )


ROOMS = (
    # share of the tape's error that is alike in all readings, bows and twists, an opening
    (0.0, 0, False), (0.5, 0, True), (1.0, 0, False), (0.5, 1, True), (0.5, 2, False),
    (0.5, 3, True),
)


@pytest.mark.parametrize(("shared", "bent", "opening"), ROOMS)
def test_promised_box_fits_the_true_room(shared: float, bent: int, opening: bool) -> None:
    rng, c = np.random.default_rng(2024), Clearances()
    kept, short, readings = 0, 0.0, 0.0
    count = 170  # 1,020 rooms of all kinds
    for _ in range(count):
        measured = draw(rng, shared, bent=bent, opening=opening)
        box = fit_envelope(room_of(measured, fit(measured.at, measured.read)), c)
        best = fit_envelope(measured.true_room(), c)
        kept += stands_clear(measured.true_room(), box, c)
        short += best.width - box.width
        survey = measured.survey
        readings += survey.tape.error(best.width) + survey.resolution / 2
    assert kept >= 0.95 * count
    # on average no further from the true optimum than a single reading may be out
    assert 0 < short < readings


@pytest.mark.parametrize(("bent", "opening", "share"), [(0, True, 0.97), (2, True, 0.9)])
def test_single_blunder_is_named(bent: int, opening: bool, share: float) -> None:
    rng = np.random.default_rng(1968)
    named, count = 0, 500
    for _ in range(count):
        measured = draw(rng, bent=bent, opening=opening)
        index = int(rng.integers(len(measured.read)))
        by = float(rng.choice([-1.0, 1.0]) * rng.uniform(10.0, 40.0))
        result = fit(measured.at, measured.with_blunder(index, by))
        blamed = [i for i, used in enumerate(result.used) if not used]
        if blamed == [index]:
            named += 1
            assert abs(result.w[index]) > CRITICAL
            expected = measured.read[index].value
            assert result.adjusted[index] == pytest.approx(expected, abs=6.0)
    assert named >= share * count


def test_readings_without_a_blunder_are_left_alone() -> None:
    rng = np.random.default_rng(11)
    blamed = 0
    for _ in range(150):
        measured = draw(rng, 0.5)
        result = fit(measured.at, measured.read)
        blamed += not all(result.used) or bool(result.shapes) or not result.consistent
    assert blamed <= 3
