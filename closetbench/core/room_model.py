"""The unknowns of a room and how its readings follow from them.

Every unknown is a length: how far a term moves its surface where it moves it most.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from closetbench.core.readings import Observation, On, Places

SURFACES = int(On.START)

Array = Any


@dataclass(frozen=True)
class Term:
    """One unknown: ``c`` times it is added to the coefficients of a surface."""

    key: str
    on: On
    c: tuple[float, ...]


@dataclass(frozen=True)
class Shape:
    """A bow or a twist that the room may have: the terms that make it."""

    name: str
    terms: tuple[str, ...]


class Model:
    """The unknowns of a room of about this size."""

    def __init__(self, at: Places, observations: Sequence[Observation]) -> None:
        self.at = at
        self.observations = tuple(observations)
        self.terms = tuple(_terms(at))
        self.index = {t.key: i for i, t in enumerate(self.terms)}
        self.by_term = np.zeros((SURFACES + 1, 6, len(self.terms)))
        for i, term in enumerate(self.terms):
            self.by_term[term.on, :, i] = term.c
        self.base = np.zeros((SURFACES + 1, 6))
        self.base[On.RIGHT, 0], self.base[On.BACK, 0] = at.width, at.depth
        self.base[On.CEILING, 0] = at.height
        seen = {c for o in observations for s in (o.start, o.end) for c in s if isinstance(c, On)}
        self.fixed_off = {On.JAMB_LEFT, On.JAMB_RIGHT, On.LINTEL} - seen
        for on, start in (
            (On.JAMB_LEFT, 0.1 * at.width), (On.JAMB_RIGHT, 0.9 * at.width),
            (On.LINTEL, 0.85 * at.height),
        ):
            self.base[on, 0] = start
        spots = [s for o in observations for s in (o.start, o.end)]
        self.on = np.array(
            [[c if isinstance(c, On) else SURFACES for c in s] for s in spots], dtype=int
        )
        self.fixed = np.array([[0.0 if isinstance(c, On) else c for c in s] for s in spots])
        self.follows = np.array([[c is On.START for c in o.end] for o in observations])
        self.values = np.array([o.value for o in observations])
        self.sds = np.array([o.sd for o in observations])
        self.common = np.array([o.common for o in observations])
        self.axes = [o.axis for o in observations]
        self.signs = np.array([o.sign for o in observations])

    def planes(self) -> list[str]:
        """The unknowns of flat walls, and of the opening where it was read."""
        return [
            t.key for t in self.terms
            if t.key not in SHAPE_TERMS and t.on not in self.fixed_off
        ]

    def coefficients(self, x: Array) -> Array:
        """The surfaces' coefficients for all unknowns ``x``."""
        return self.base + self.by_term @ x

    def predict(self, x: Array) -> tuple[Array, Array]:
        """What the readings would be, and how each changes with every unknown."""
        c = self.coefficients(x)
        picked = c[self.on]
        points = self.fixed + picked[:, :, 0]
        for _ in range(40):
            before = points
            points = self.fixed + np.einsum("nkb,nkb->nk", picked, _bases(points))
            points[1::2] = np.where(self.follows, points[::2], points[1::2])
            if np.max(np.abs(points - before)) < 1e-10:
                break
        bases = _bases(points)
        # (I - S) dX = R: how a spot moves when the surfaces that it lies on move
        slope = np.zeros((len(points), 3, 3))
        for k, (u, v) in enumerate(_OTHERS):
            p, q = points[:, u], points[:, v]
            s = picked[:, k]
            slope[:, k, u] = s[:, 1] + s[:, 3] * q + 2 * s[:, 4] * p
            slope[:, k, v] = s[:, 2] + s[:, 3] * p + 2 * s[:, 5] * q
        right = np.einsum("nkb,nkbm->nkm", bases, self.by_term[self.on])
        moved = right
        for _ in range(4):  # a series, since the slopes are small and solvers slow on many
            moved = right + np.einsum("nij,njm->nim", slope, moved)
            moved[1::2] = np.where(self.follows[:, :, None], moved[::2], moved[1::2])
        apart, dapart = points[1::2] - points[::2], moved[1::2] - moved[::2]
        length = np.sqrt(np.einsum("nk,nk->n", apart, apart))
        found = length.copy()
        rows = np.einsum("nk,nkm->nm", apart / np.maximum(length, 1e-9)[:, None], dapart)
        for i, axis in enumerate(self.axes):
            if axis is not None:
                found[i] = self.signs[i] * apart[i, axis]
                rows[i] = self.signs[i] * dapart[i, axis]
        return found, rows


_OTHERS = ((1, 2), (0, 2), (0, 1))


def _bases(points: Array) -> Array:
    """What the coefficients of a surface through each coordinate are multiplied with."""
    found = np.empty((len(points), 3, 6))
    found[:, :, 0] = 1.0
    for k, (p, q) in enumerate(_OTHERS):
        u, v = points[:, p], points[:, q]
        found[:, k, 1], found[:, k, 2], found[:, k, 3] = u, v, u * v
        found[:, k, 4], found[:, k, 5] = u * u, v * v
    return found


def _terms(at: Places) -> list[Term]:
    h = at.high - at.low
    s = (-at.low / h, 0.0, 1 / h, 0.0, 0.0, 0.0)
    bow_z = (-4 * at.low / h * (1 + at.low / h), 0.0, 4 / h * (1 + 2 * at.low / h), 0.0, 0.0,
             -4 / h**2)

    def along(length: float) -> tuple[float, ...]:
        return 0.0, 1 / length, 0.0, 0.0, 0.0, 0.0

    def twist(length: float) -> tuple[float, ...]:
        return 0.0, -at.low / h / length, 0.0, 1 / h / length, 0.0, 0.0

    def less(c: tuple[float, ...]) -> tuple[float, ...]:
        return tuple(-v for v in c)

    one = (1.0, 0.0, 0.0, 0.0, 0.0, 0.0)
    bow_x = (0.0, 4 / at.width, 0.0, 0.0, -4 / at.width**2, 0.0)
    terms = []
    for side, on in (("left", On.LEFT), ("right", On.RIGHT)):
        if on is On.RIGHT:
            terms.append(Term("right", on, one))
        terms += [
            Term(f"{side} skew", on, along(at.depth)), Term(f"{side} lean", on, s),
            Term(f"{side} twist", on, twist(at.depth)),
            Term(f"{side} bow", on, bow_z if on is On.LEFT else less(bow_z)),
        ]
    terms += [
        Term("back", On.BACK, one), Term("back skew", On.BACK, along(at.width)),
        Term("back lean", On.BACK, s), Term("back twist", On.BACK, twist(at.width)),
        Term("back bow up", On.BACK, less(bow_z)), Term("back bow", On.BACK, less(bow_x)),
    ]
    across = (0.0, 0.0, 1 / at.depth, 0.0, 0.0, 0.0)
    level_twist = (0.0, 0.0, 0.0, 1 / at.width / at.depth, 0.0, 0.0)
    for name, on in (("floor", On.FLOOR), ("ceiling", On.CEILING)):
        if on is On.CEILING:
            terms.append(Term("ceiling", on, one))
        terms += [
            Term(f"{name} rise", on, along(at.width)), Term(f"{name} run", on, across),
            Term(f"{name} twist", on, level_twist),
            Term(f"{name} bow", on, bow_x if on is On.FLOOR else less(bow_x)),
        ]
    terms += [Term(on.name.lower(), on, one) for on in (On.JAMB_LEFT, On.JAMB_RIGHT, On.LINTEL)]
    return terms


SHAPES = (
    Shape("bow of the side walls", ("left bow", "right bow")),
    Shape("bow of the left wall", ("left bow",)),
    Shape("bow of the right wall", ("right bow",)),
    Shape("twist of the left wall", ("left twist",)),
    Shape("twist of the right wall", ("right twist",)),
    Shape("twist of the back wall", ("back twist",)),
    Shape("bow of the back wall on its way up", ("back bow up",)),
    Shape("bow of the back wall from left to right", ("back bow",)),
    Shape("twist of the floor", ("floor twist",)),
    Shape("bow of the floor from left to right", ("floor bow",)),
    Shape("twist of the ceiling", ("ceiling twist",)),
    Shape("bow of the ceiling from left to right", ("ceiling bow",)),
)
SHAPE_TERMS = frozenset(k for s in SHAPES for k in s.terms)
