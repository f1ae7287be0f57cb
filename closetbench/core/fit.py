"""The room fitted to all readings at once: Gauss-Newton on planes, and on what bends them.

The room starts as planes. Shapes (a bow, a twist) and single readings are rival reasons
for a misfit; the one that the w-test finds strongest is taken, and the fit begun again: a
shape is added to the room, a reading is left out and named. What no reading determines is
assumed plumb, level or square within ``ASSUMED_SLOPE`` and said.

Frame: x = 0 on the left wall at the front and at the low level, z = 0 on the floor in the
front left corner, y = 0 at the front; plumb and the front's direction do the rest, so that
no datum is left open.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np

from closetbench.core.adjust import CRITICAL, Solution, greatest_sum, solve
from closetbench.core.errors import SurveyError
from closetbench.core.readings import Observation, Places
from closetbench.core.room_model import SHAPES, SURFACES, Array, Model, Shape

ASSUMED_SLOPE = 0.004
"""Standard deviation of a slope that nobody measured: half of 1/4 in in 32 in, the Residential
and Light Commercial Construction Standards' limit for a wall out of plumb."""
MOST_LEFT_OUT = 3
FAR_OFF = 100.0
"""mm: readings that contradict each other by more describe no room."""
ALIKE = 0.985
"""Two readings whose w-statistics agree this closely cannot be told apart."""


@dataclass(frozen=True)
class Shown:
    """A shape that the readings show; ``instead``: the readings of which one, if it were
    wrong, would explain it as well."""

    name: str
    size: float
    instead: tuple[str, ...] = ()


@dataclass(frozen=True)
class Assumption:
    """What is taken for granted where readings are missing: the terms' sum is 0."""

    terms: tuple[str, ...]
    sd: float
    words: str


@dataclass(frozen=True)
class Fit:
    """The outcome. ``coefficients[on]`` and ``covariance`` (all coefficients in that order)
    as numpy arrays; ``shapes``: what bends the room; ``rivals``: groups of readings of which one
    must be wrong, but they cannot say which, and so count for little; ``unseen``: shapes that no
    reading would show; ``active`` and ``soft``: the unknowns and all that was assumed."""

    observations: tuple[Observation, ...]
    used: tuple[bool, ...]
    adjusted: Array
    sd_adjusted: Array
    redundancy: Array
    w: Array
    coefficients: Array
    covariance: Array
    s0: float
    dof: int
    consistent: bool
    shapes: tuple[Shown, ...]
    assumed: tuple[Assumption, ...]
    rivals: tuple[tuple[int, ...], ...] = ()
    unseen: tuple[str, ...] = ()
    active: tuple[str, ...] = field(default=(), repr=False)
    soft: tuple[Assumption, ...] = field(default=(), repr=False)
    model: Model | None = field(default=None, repr=False, compare=False)


def assumptions(at: Places) -> tuple[Assumption, ...]:
    """What is taken for granted, in this order, where nothing was read."""
    h = at.high - at.low
    return (
        Assumption(("left skew", "right skew"), 2 * ASSUMED_SLOPE * at.depth,
                   "the closet is as square in plan at the left as at the right"),
        Assumption(("left lean",), ASSUMED_SLOPE * h, "the left wall is plumb"),
        Assumption(("back lean",), ASSUMED_SLOPE * h, "the back wall is plumb"),
        Assumption(("floor rise",), ASSUMED_SLOPE * at.width,
                   "the floor is level from left to right"),
        Assumption(("floor run",), ASSUMED_SLOPE * at.depth,
                   "the floor is level from front to back"),
        Assumption(("jamb_left", "jamb_right"), 0.02 * at.width,
                   "the opening is in the middle of the front"),
    )


def fit(at: Places, observations: Sequence[Observation], shapes: bool = True) -> Fit:
    """The room that all readings together say.

    ``shapes`` False keeps planes whatever the misfit. Raises ``SurveyError`` where the
    readings leave more open than may be assumed.
    """
    model = Model(at, observations)
    used = [True] * len(model.observations)
    active = model.planes()
    shown: dict[Shape, tuple[str, ...]] = {}
    soft: list[Assumption] = []
    rivals: list[tuple[int, ...]] = []
    tried = False
    x = np.zeros(len(model.terms))
    while True:
        x, solution, rows, found = _iterate(model, x, active, used, soft)
        if solution.null.size:
            _assume(model, active, solution.null, soft)
            continue
        kept = [i for i, u in enumerate(used) if u]
        reading, w = _worst(solution, kept)
        shape, shape_w, size = _best_shape(model, solution, rows, kept, shown) if shapes else (
            None, 0.0, 0.0)
        if max(w, shape_w) <= CRITICAL:
            idle = None if tried else _idle(model, x, solution, active, shown)
            if idle is None:
                break
            # found strong while something else was still wrong
            tried = True
            del shown[idle]
            active = [k for k in active if k not in idle.terms]
            soft = [o for o in soft if o.terms[0] not in idle.terms]
            x[[model.index[k] for k in idle.terms]] = 0.0
            continue
        if shape is not None and shape_w >= 0.98 * w:
            shown[shape] = tuple(
                model.observations[i].name for n, i in enumerate(kept)
                if abs(solution.w[n]) >= 0.98 * shape_w
            )
            active = [*active, *shape.terms]
            if len(shape.terms) > 1:
                # only their sum shows in the widths: how they share it is left open
                soft.append(Assumption(
                    (shape.terms[0], f"-{shape.terms[1]}"),
                    max(1.0, 2 * abs(size)) / math.sqrt(3.0), "",
                ))
            continue
        group = _rivals(solution, kept, reading)
        if len(group) > 1:
            if len(rivals) == MOST_LEFT_OUT:
                break
            _refuse_nonsense(model, solution, kept, group)
            rivals.append(group)
            # whichever is wrong, none of them is worth more than their quarrel
            for i in group:
                model.sds[i] *= max(2.0, abs(float(solution.w[kept.index(i)])))
            continue
        if used.count(False) == MOST_LEFT_OUT:
            break
        used[reading] = False
    return _result(
        model, x, solution, rows, found, active, used, shown, soft, tuple(rivals)
    )


def _idle(
    model: Model, x: Array, solution: Solution, active: Sequence[str], shown: Iterable[Shape]
) -> Shape | None:
    """The least of the shapes that would no longer be found."""
    least: tuple[Shape | None, float] = (None, CRITICAL)
    for shape in shown:
        at = [active.index(k) for k in shape.terms]
        size = abs(float(sum(x[model.index[k]] for k in shape.terms)))
        sd = math.sqrt(float(solution.cofactor[np.ix_(at, at)].sum()))
        if size < least[1] * sd:
            least = shape, size / sd
    return least[0]


def _refuse_nonsense(
    model: Model, solution: Solution, kept: Sequence[int], group: Sequence[int]
) -> None:
    wrong = [
        abs(float(solution.w[n])) * float(model.sds[i]) / math.sqrt(float(solution.redundancy[n]))
        for i in group for n in (kept.index(i),)
    ]
    if min(wrong) > FAR_OFF:
        names = [model.observations[i] for i in group]
        raise SurveyError(
            "survey", " and ".join(f"the {o.name}" for o in names),
            ", ".join(f"{o.value:g}" for o in names) + " mm",
            f"contradict each other by {min(wrong):.0f} mm or more; measure these again",
        )


def _iterate(
    model: Model, x: Array, active: Sequence[str], used: Sequence[bool],
    soft: Sequence[Assumption],
) -> tuple[Array, Solution, Array, Array]:
    """Gauss-Newton; the last unknown is the tape's own error in units of its deviation."""
    columns = [model.index[k] for k in active]
    mask = np.array(used)
    extra = np.zeros((len(soft) + 1, len(columns) + 1))
    for i, one in enumerate(soft):
        for key in one.terms:
            extra[i, active.index(key.lstrip("-"))] = -1.0 if key.startswith("-") else 1.0
    extra[-1, -1] = 1.0
    sds = np.concatenate([model.sds[mask], [o.sd for o in soft], [1.0]])
    scale = 0.0
    x = x.copy()
    start, _ = model.predict(x)
    for turn in range(25):
        found, rows = model.predict(x)
        if not np.isfinite(rows).all():
            break
        design = np.vstack([
            np.hstack([rows[:, columns], model.common[:, None]])[mask], extra
        ])
        state = np.append(x[columns], scale)
        misfit = np.concatenate([
            (model.values - found - model.common * scale)[mask], -extra @ state
        ])
        solution = solve(design, misfit, sds)
        x[columns] += solution.x[:-1]
        scale += solution.x[-1]
        if solution.null.size and turn:
            break
        if solution.null.size or np.max(np.abs(solution.x)) < 1e-7:
            return x, solution, rows, found + model.common * scale
    worst = int(np.argmax(np.abs(model.values - start)))
    reading = model.observations[worst]
    raise SurveyError(
        "survey", reading.name, f"{reading.value:g} mm",
        f"goes with no room that the other readings allow; about {start[worst]:.0f} mm was "
        "expected; measure it again",
    )


def _assume(
    model: Model, active: Sequence[str], null: Array, soft: list[Assumption]
) -> None:
    for one in assumptions(model.at):
        if one in soft or any(k not in active for k in one.terms):
            continue
        row = np.zeros(null.shape[1])
        for key in one.terms:
            row[active.index(key)] = 1.0
        if np.linalg.norm(null @ row) > 1e-6:
            soft.append(one)
            return
    open_terms = [k for k, v in zip(active, np.abs(null).max(axis=0), strict=False) if v > 1e-6]
    raise SurveyError(
        "survey", "readings", f"{len(model.observations)}",
        f"must be more: nothing says where these are: {', '.join(open_terms)}",
    )


def _worst(solution: Solution, kept: Sequence[int]) -> tuple[int, float]:
    w = np.abs(solution.w[:len(kept)])
    at = int(np.argmax(w))
    return kept[at], float(w[at])


def _best_shape(
    model: Model, solution: Solution, rows: Array, kept: Sequence[int], taken: Iterable[Shape]
) -> tuple[Shape | None, float, float]:
    best: tuple[Shape | None, float, float] = (None, 0.0, 0.0)
    for shape in _others(taken):
        w, size = solution.effect(_effect(model, solution, rows, kept, shape))
        # widths alone show the bow of both walls, and of either as well: the first is meant
        if abs(w) > 1.001 * best[1]:
            best = shape, abs(w), size
    return best


def _others(taken: Iterable[Shape]) -> list[Shape]:
    active = {k for shape in taken for k in shape.terms}
    return [s for s in SHAPES if active.isdisjoint(s.terms)]


def _effect(
    model: Model, solution: Solution, rows: Array, kept: Sequence[int], shape: Shape
) -> Array:
    column = np.zeros(len(solution.w))
    for key in shape.terms:
        column[:len(kept)] += rows[kept, model.index[key]]
    return column


def _rivals(solution: Solution, kept: Sequence[int], reading: int) -> tuple[int, ...]:
    alike = np.abs(solution.alike(kept.index(reading)))[:len(kept)]
    return tuple(kept[i] for i in np.flatnonzero(alike > ALIKE))


def _result(
    model: Model, x: Array, solution: Solution, rows: Array, found: Array,
    active: Sequence[str], used: Sequence[bool], shown: Mapping[Shape, tuple[str, ...]],
    soft: Sequence[Assumption], rivals: tuple[tuple[int, ...], ...],
) -> Fit:
    consistent = solution.square_sum <= greatest_sum(solution.dof)
    factor = 1.0 if consistent else solution.s0**2
    columns = [model.index[k] for k in active]
    cofactor = solution.cofactor * factor
    full = model.by_term[:SURFACES, :, columns].reshape(SURFACES * 6, len(columns))
    design = np.hstack([rows[:, columns], model.common[:, None]])
    predicted = np.sqrt(np.einsum("ij,jk,ik->i", design, cofactor, design))
    w, redundancy = np.zeros(len(used)), np.zeros(len(used))
    kept = [i for i, u in enumerate(used) if u]
    w[kept], redundancy[kept] = solution.w[:len(kept)], solution.redundancy[:len(kept)]
    for i, u in enumerate(used):
        if not u:
            # against a room that it had no part in
            alone = model.sds[i] ** 2 + predicted[i] ** 2
            w[i] = (model.values[i] - found[i]) / math.sqrt(alone)
            redundancy[i] = model.sds[i] ** 2 / alone
    return Fit(
        model.observations, tuple(used), found, predicted, redundancy, w,
        model.coefficients(x)[:SURFACES], full @ cofactor[:-1, :-1] @ full.T,
        math.sqrt(factor), solution.dof, consistent,
        tuple(
            Shown(s.name, float(sum(x[model.index[k]] for k in s.terms)), names)
            for s, names in shown.items()
        ),
        tuple(o for o in soft if o.words), rivals,
        tuple(
            s.name for s in _others(shown)
            if not solution.shows(_effect(model, solution, rows, kept, s))
        ),
        tuple(active), tuple(soft), model,
    )
