"""The adjustment against worked examples from surveying, and against scipy's solver.

Read on the web pages named beside each example.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy.optimize import least_squares

from closetbench.core.adjust import solve
from closetbench.core.fit import fit
from closetbench.core.readings import observations, places
from closetbench.core.room_model import Model
from closetbench.core.survey import Reading, ReadingKind, Side, TapeClass
from tests.core.rooms import TrueRoom

Line = tuple[str, str, float, float]


def levels(lines: list[Line], known: dict[str, float], wanted: str):
    """Level lines (from, to, difference, standard deviation) adjusted to heights."""
    design = np.zeros((len(lines), len(wanted)))
    observed = np.zeros(len(lines))
    for i, (start, end, rise, _) in enumerate(lines):
        observed[i] = rise + known.get(start, 0.0) - known.get(end, 0.0)
        for point, sign in ((start, -1.0), (end, 1.0)):
            if point not in known:
                design[i, wanted.index(point)] = sign
    return solve(design, observed, np.array([line[3] for line in lines]))


# J. Mahun, Open Access Surveying Library, XV. Least Squares Lite, chapters D.4 and E.4: the
# level circuit with eight lines. The benchmarks follow from the printed adjusted lines. The
# page works with rounded figures, so that its last digit is off by one here and there.
MAHUN = {"A": 806.52, "B": 818.32, "C": 820.12, "D": 824.04}
MAHUN_LINES = [
    ("A", "Q", 8.91, 3), ("B", "Q", -2.92, 2), ("C", "Q", -4.67, 1), ("D", "Q", -8.66, 3),
    ("A", "R", -3.56, 3), ("C", "R", -17.12, 4), ("D", "R", -21.10, 2), ("Q", "R", -12.47, 3),
]


def test_level_circuit_with_equal_weights() -> None:
    found = levels([(*x[:3], 1.0) for x in MAHUN_LINES], MAHUN, "QR")
    assert found.x == pytest.approx([815.418, 802.962], abs=0.0005)
    assert found.dof == 6
    assert found.s0 == pytest.approx(0.028, abs=0.0015)
    sd = found.s0 * np.sqrt(np.diag(found.cofactor))
    assert sd == pytest.approx([0.013, 0.014], abs=0.001)
    adjusted = [line[2] for line in MAHUN_LINES] + found.residuals
    assert adjusted == pytest.approx(
        [8.898, -2.902, -4.702, -8.622, -3.558, -17.158, -21.078, -12.456], abs=0.0006
    )
    assert found.s0 * found.sd_adjusted == pytest.approx(
        [0.013] * 4 + [0.014] * 3 + [0.017], abs=0.001
    )


def test_level_circuit_weighted_by_set_ups() -> None:
    # weights 12 over the number of set-ups
    lines = [(*x[:3], (x[3] / 12.0) ** 0.5) for x in MAHUN_LINES]
    found = levels(lines, MAHUN, "QR")
    assert found.x == pytest.approx([815.424, 802.958], abs=0.0015)
    assert found.s0 == pytest.approx(0.067, abs=0.0005)
    sd = found.s0 * np.sqrt(np.diag(found.cofactor))
    assert sd == pytest.approx([0.012, 0.016], abs=0.0005)


def test_levels_run_forth_and_back_with_normalised_residuals() -> None:
    # printed output of the free program GNU Gama 1.5 for its sample of levels observed
    # forward and back (vrmapper.com/gama/1doutput.html); lengths in mm, deviation 5 mm
    lines = [
        ("1", "4", -1225.0, 5.0), ("4", "3", -848.0, 5.0), ("3", "2", 1342.0, 5.0),
        ("2", "1", 720.0, 5.0), ("1", "2", -724.0, 5.0), ("2", "3", -1335.0, 5.0),
        ("3", "4", 842.0, 5.0), ("4", "1", 1231.0, 5.0),
    ]
    found = levels(lines, {"1": 1000000.0}, "432")
    assert found.x == pytest.approx([998775.13, 997933.25, 999274.87], abs=0.01)
    assert np.sqrt(np.diag(found.cofactor)) == pytest.approx([3.1, 3.5, 3.1], abs=0.05)
    assert found.dof == 5
    assert 25.0 * found.square_sum == pytest.approx(146.625, abs=1e-3)
    assert 5.0 * found.s0 == pytest.approx(5.42, abs=0.005)
    assert np.max(np.abs(found.w)) == pytest.approx(1.68, abs=0.005)
    assert int(np.argmax(np.abs(found.w))) + 1 == 6
    assert found.sd_adjusted == pytest.approx([3.1] * 8, abs=0.05)


def test_levels_between_two_benchmarks() -> None:
    # P. R. Wolf and C. D. Ghilani, Adjustment Computations, chapter on level nets: weights
    # by the lines' lengths; data and result from memory
    lines = [
        ("X", "A", 5.10, 2.0), ("A", "Y", 2.34, 3**0.5), ("Y", "C", -1.25, 2**0.5),
        ("C", "X", -6.13, 3**0.5), ("A", "B", -0.68, 2**0.5), ("B", "Y", 3.00, 2**0.5),
        ("B", "C", 1.70, 2**0.5),
    ]
    found = levels(lines, {"X": 100.0, "Y": 107.5}, "ABC")
    assert found.x == pytest.approx([105.150, 104.489, 106.197], abs=0.0005)


# Directive 2014/32/EU, Annex X, chapter I: (a + b L) and c more from the tape's end
@pytest.mark.parametrize(
    ("tape", "length", "error"),
    [(TapeClass.I, 2400.0, 0.5), (TapeClass.II, 2400.0, 1.1), (TapeClass.III, 2400.0, 2.1),
     (TapeClass.II, 2000.0, 0.9), (TapeClass.II, 2000.1, 1.1)],
)
def test_permissible_error_of_a_tape(tape: TapeClass, length: float, error: float) -> None:
    assert tape.error(length) == pytest.approx(error)


def test_room_agrees_with_scipy_on_the_same_equations() -> None:
    true = TrueRoom(
        rear_left=(12.0, 640.0), rear_right=(1909.0, 631.0), left=(8.0, 8.0),
        right=(-3.0, -3.0), back=(4.0, 4.0), floor=(0.0, 6.0, -3.0, 3.0),
        ceiling=(2403.0, 2410.0, 2396.0, 2403.0),
    ).survey()
    survey = replace(true, extras=(
        Reading(ReadingKind.ELEVATION_DIAGONAL, 3069.0, y=0.0, side=Side.RIGHT),
        Reading(ReadingKind.RISE, -3.0, x=1900.0, y=0.0, x2=1900.0, y2=630.0),
        Reading(ReadingKind.DEPTH, 631.3, x=1000.0, z=2200.0),
    ))
    rng = np.random.default_rng(7)
    seen = tuple(
        replace(o, value=o.value + float(e))
        for o, e in zip(observations(survey), rng.normal(0.0, 0.4, 26), strict=True)
    )
    at = places(survey)
    ours = fit(at, seen, shapes=False)
    assert all(ours.used)
    model = Model(at, seen)
    columns = [model.index[k] for k in model.planes()]

    def misfit(unknowns: np.ndarray) -> np.ndarray:
        x = np.zeros(len(model.terms))
        x[columns] = unknowns[:-1]
        found, _ = model.predict(x)
        tape = unknowns[-1]
        return np.append((found + model.common * tape - model.values) / model.sds, tape)

    theirs = least_squares(misfit, np.zeros(len(columns) + 1), xtol=1e-15, ftol=1e-15, gtol=1e-12)
    x = np.zeros(len(model.terms))
    x[columns] = theirs.x[:-1]
    assert np.max(np.abs(model.coefficients(x)[:8, 0] - ours.coefficients[:, 0])) < 1e-4
    residual = theirs.fun[:-1] * model.sds
    assert ours.adjusted - model.values == pytest.approx(residual, abs=1e-5)
    covariance = np.linalg.inv(theirs.jac.T @ theirs.jac)
    rows = theirs.jac[:-1] * model.sds[:, None]
    assert ours.sd_adjusted == pytest.approx(
        np.sqrt(np.einsum("ij,jk,ik->i", rows, covariance, rows)), rel=1e-3
    )
