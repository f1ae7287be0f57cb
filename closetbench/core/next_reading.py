"""Which reading to take next: what makes the room surest, settles a doubt or checks another."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

import numpy as np

from closetbench.core.fit import ALIKE, Fit
from closetbench.core.readings import Observation
from closetbench.core.room_model import SHAPES, SURFACES, Array, Model

UNCHECKED = 0.02
"""A reading whose error the others would show less of than this share is checked by none."""


def gain(result: Fit, candidates: Sequence[Observation]) -> Observation | None:
    """The reading not yet taken that would make the room most certain."""
    model = result.model
    if model is None or not candidates:
        return None
    trial, rows = _trial(result, model, candidates)
    q = np.linalg.pinv(model.by_term[:SURFACES].reshape(-1, len(model.terms)))
    cofactor = q @ result.covariance @ q.T
    reach = rows @ cofactor
    score = np.einsum("ij,ij->i", reach, reach) / (
        trial.sds**2 + np.einsum("ij,ij->i", reach, rows))
    return candidates[int(np.argmax(score))]


def settling(
    result: Fit, doubts: Sequence[int | str], candidates: Sequence[Observation]
) -> Observation | None:
    """The reading after which the rival reasons of a misfit can be told apart, all or most.

    ``doubts``: readings by number, shapes by name. None where no reading parts any two.
    """
    pairs = list(combinations(range(len(doubts)), 2))

    def alike(effects: Array) -> tuple[int, float]:
        sizes = np.maximum(np.linalg.norm(effects, axis=0), 1e-9)
        angles = np.abs(effects.T @ effects) / np.outer(sizes, sizes)
        found = [float(angles[pair]) for pair in pairs]
        return sum(one > ALIKE for one in found), max(found)

    scores = [alike(effects) for effects in _unexplained(result, doubts, candidates)]
    if not scores or min(scores)[0] == len(pairs):
        return None
    return candidates[scores.index(min(scores))]


def checking(
    result: Fit, reading: int, candidates: Sequence[Observation]
) -> Observation | None:
    """The reading that checks another best, None where none does."""
    sizes = [float(np.linalg.norm(e)) for e in _unexplained(result, [reading], candidates)]
    best = int(np.argmax(sizes)) if sizes else 0
    return candidates[best] if sizes and sizes[best] ** 2 > UNCHECKED else None


def _unexplained(
    result: Fit, doubts: Sequence[int | str], candidates: Sequence[Observation]
) -> list[Array]:
    """For each candidate, what of the doubts' effects no room could explain were it taken:
    a column for each doubt, in standard deviations."""
    model = result.model
    if model is None or not candidates:
        return []
    count = len(result.observations)
    trial, rows = _trial(result, model, [*result.observations, *candidates])
    shapes = [s for s in SHAPES if s.name in doubts]
    bent = {k for s in shapes for k in s.terms}
    active = [trial.index[k] for k in result.active if k not in bent]
    soft = [o for o in result.soft if bent.isdisjoint(k.lstrip("-") for k in o.terms)]
    assumed = np.zeros((len(soft) + 1, len(active) + 1))
    for i, one in enumerate(soft):
        for key in one.terms:
            place = active.index(trial.index[key.lstrip("-")])
            assumed[i, place] = -1.0 if key.startswith("-") else 1.0
    assumed[-1, -1] = 1.0
    sds = np.concatenate([trial.sds, [o.sd for o in soft], [1.0]])
    design = np.vstack([np.hstack([rows[:, active], trial.common[:, None]]), assumed])
    effects = np.zeros((len(sds), len(doubts)))
    for i, doubt in enumerate(doubts):
        if isinstance(doubt, int):
            effects[doubt, i] = sds[doubt]
        else:
            for key in next(s for s in shapes if s.name == doubt).terms:
                effects[:len(rows), i] += rows[:, trial.index[key]]
    design, effects = design / sds[:, None], effects / sds[:, None]
    seen = [i for i, used in enumerate(result.used) if used]
    rest = list(range(len(rows), len(sds)))
    found = []
    for candidate in range(len(candidates)):
        kept = [*seen, count + candidate, *rest]
        u = np.linalg.qr(design[kept])[0]
        found.append(effects[kept] - u @ (u.T @ effects[kept]))
    return found


def _trial(result: Fit, model: Model, readings: Sequence[Observation]) -> tuple[Model, Array]:
    """The model for other readings, and how each would change with every unknown."""
    trial = Model(model.at, readings)
    x = np.linalg.lstsq(
        trial.by_term[:SURFACES].reshape(-1, len(trial.terms)),
        (result.coefficients - trial.base[:SURFACES]).reshape(-1), rcond=None,
    )[0]
    return trial, trial.predict(x)[1]
