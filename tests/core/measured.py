"""Rooms drawn at random, flat or bent, with the readings that a tape and a level give there.

The true room is drawn straight in the unknowns of the fit; the readings come from it with
the errors of the instruments: even within the tape's permissible error, partly the same
in all of them, and rounded to the step of the reading.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import numpy as np

from closetbench.core.readings import Observation, Places, observations, places, recommended
from closetbench.core.room import Room
from closetbench.core.room_model import SHAPE_TERMS, Model
from closetbench.core.surfaces import Surface
from closetbench.core.survey import Survey


@dataclass(frozen=True)
class Measured:
    """A room and its readings. ``survey`` has the sizes and places, not the readings."""

    survey: Survey
    at: Places
    truth: tuple[Surface, ...]
    read: tuple[Observation, ...]

    def with_blunder(self, index: int, by: float) -> tuple[Observation, ...]:
        """The readings with one of them wrong."""
        return tuple(
            replace(o, value=o.value + by) if i == index else o
            for i, o in enumerate(self.read)
        )

    def true_room(self) -> Room:
        """The room as it is."""
        return Room(*self.truth[:5])


OPEN = ("opening_width", "return_left", "return_right", "opening_height", "lintel")


def plain_survey(width: float, depth: float, height: float, opening: bool = False) -> Survey:
    """A fully measured room without any fault, as a start; ``opening``: behind returns."""
    flat = math.hypot(width, depth)
    survey = Survey(
        *(width,) * 6, *(height,) * 4, depth, depth, flat, flat,
        lean_right_front=0.0, lean_right_back=0.0,
    )
    if opening:
        survey = replace(survey, **dict(zip(  # type: ignore[arg-type]
            OPEN, (0.8 * width, 0.1 * width, 0.1 * width, 0.85 * height, 0.15 * height), strict=True
        )))
    return replace(survey, extras=recommended(survey))


def draw(
    rng: np.random.Generator, shared: float = 0.0, slope: float = 8.0, bent: int = 0,
    opening: bool = False,
) -> Measured:
    """A room out of true by about ``slope`` mm each way, and its readings.

    ``shared``: share of the tape's error that is the same in every reading. ``bent``: number
    of bows and twists, each drawn from those that a room may have, of any size up to 20 mm;
    ``opening``: with returns and a lintel, read as well.
    """
    survey = plain_survey(
        float(rng.integers(900, 3000)), float(rng.integers(400, 900)),
        float(rng.integers(2300, 2700)), opening,
    )
    seen = observations(survey)
    at = places(survey)
    model = Model(at, seen)
    x = np.zeros(len(model.terms))
    x[[model.index[k] for k in model.planes()]] = rng.normal(0.0, slope, len(model.planes()))
    bows = sorted(SHAPE_TERMS)
    for i in rng.permutation(len(bows))[:bent]:
        x[model.index[bows[i]]] = rng.uniform(-20.0, 20.0)
    exact, _ = model.predict(x)
    tape = shared * rng.uniform(-1.0, 1.0) + (1 - shared) * rng.uniform(-1.0, 1.0, len(seen))
    read = []
    for one, value, part in zip(seen, exact, tape, strict=True):
        if one.axis is None:
            error = part * survey.tape.error(one.value)
        else:
            # what is left of a level's or plumb line's deviation without the rounding
            own = math.sqrt(max(one.sd**2 - survey.resolution**2 / 12.0, 0.0))
            error = rng.uniform(-1.0, 1.0) * own * math.sqrt(3.0)
        step = survey.resolution
        read.append(replace(one, value=round((value + error) / step) * step))
    c = model.coefficients(x)
    truth = tuple(Surface(tuple(float(v) for v in row)) for row in c[:8])  # type: ignore[arg-type]
    return Measured(survey, at, truth, tuple(read))
