"""Weighted least squares with what surveyors ask of it: how sure, and which one is wrong.

Observation equations A x = l + v with independent observations of standard deviation sd.
Redundancy numbers and the w-test (data snooping) after W. Baarda, A testing procedure for
use in geodetic networks (Netherlands Geodetic Commission, 1968); the test of a column of
effects instead of a single reading after P. J. G. Teunissen's quality control (1990).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

import numpy as np

CRITICAL = 3.29
"""|w| above this is no chance: two-sided 0.1 %, Baarda's usual level."""
LEAST_REDUNDANCY = 1e-6
"""A reading less controlled than this is not controlled at all."""
SHOWN = 2.0
"""mm: an effect whose size the observations leave less certain than this is not theirs to
show."""
RANK = 1e-9
"""Smallest singular value, as a share of the greatest, that still determines something."""

Array = Any


@dataclass(frozen=True)
class Solution:
    """The outcome of one adjustment; arrays are numpy's.

    ``x``: unknowns; ``cofactor``: their covariance for a unit variance factor;
    ``residuals``: adjusted less observed; ``redundancy``: share of each observation that
    the others control, 0 to 1; ``w``: Baarda's statistic, positive where the observation
    is too great, 0 where it is not controlled; ``sd_adjusted``: standard deviation of each
    adjusted observation; ``null``: rows that span what is left undetermined.
    """

    x: Array
    cofactor: Array
    residuals: Array
    redundancy: Array
    w: Array
    sd_adjusted: Array
    null: Array
    dof: int
    square_sum: float
    _sd: Array
    _u: Array
    _e: Array

    @property
    def s0(self) -> float:
        """Standard deviation of unit weight, after the adjustment; 1 without redundancy."""
        return math.sqrt(self.square_sum / self.dof) if self.dof else 1.0

    def effect(self, column: Array) -> tuple[float, float]:
        """w-statistic and size of an effect that changes the observations by ``column``.

        (0, 0) where the observations cannot tell its size within a standard deviation of
        ``SHOWN``.
        """
        c = self._beyond(column)
        norm = float(np.sqrt(c @ c))
        if norm < 1 / SHOWN:
            return 0.0, 0.0
        w = float(c @ self._e) / norm
        return w, w / norm

    def shows(self, column: Array) -> bool:
        """Whether the observations tell the size of such an effect at all."""
        c = self._beyond(column)
        return float(np.sqrt(c @ c)) >= 1 / SHOWN

    def _beyond(self, column: Array) -> Array:
        """What of an effect the unknowns cannot take up, in standard deviations."""
        c = column / self._sd
        return c - self._u @ (self._u.T @ c)

    def alike(self, i: int) -> Array:
        """Correlation of every observation's w-statistic with that of observation ``i``."""
        inner = -self._u @ self._u[i]
        inner[i] += 1.0
        scale = np.sqrt(np.maximum(self.redundancy * self.redundancy[i], 1e-18))
        return np.where(self.redundancy > LEAST_REDUNDANCY, inner / scale, 0.0)


def solve(design: Array, observed: Array, sd: Array) -> Solution:
    """The least squares solution of ``design @ x = observed``, weights 1/sd².

    Where the rank falls short, the shortest solution, and ``null`` says what is open.
    """
    a = np.asarray(design, dtype=float)
    sds = np.asarray(sd, dtype=float)
    right = np.asarray(observed, dtype=float) / sds
    u, s, vt = np.linalg.svd(a / sds[:, None], full_matrices=False)
    rank = int(np.sum(s > RANK * s[0])) if s.size else 0
    u, s, v = u[:, :rank], s[:rank], vt[:rank].T
    null = _complement(v) if rank < a.shape[1] else np.zeros((0, a.shape[1]))
    projected = u.T @ right
    x = v @ (projected / s)
    e = right - u @ projected
    hat = np.einsum("ij,ij->i", u, u)
    redundancy = np.clip(1.0 - hat, 0.0, 1.0)
    controlled = redundancy > LEAST_REDUNDANCY
    w = np.where(controlled, e / np.sqrt(np.where(controlled, redundancy, 1.0)), 0.0)
    scaled = v / s
    return Solution(
        x, scaled @ scaled.T, -e * sds, redundancy, w, sds * np.sqrt(hat), null,
        len(right) - rank, float(e @ e), sds, u, e,
    )


def _complement(v: Array) -> Array:
    """Rows that span what is orthogonal to the orthonormal columns of ``v``."""
    full = np.linalg.qr(np.hstack([v, np.eye(v.shape[0])]))[0]
    return full[:, v.shape[1]:].T


def greatest_sum(dof: int) -> float:
    """The sum of squares that chance exceeds once in a thousand (Wilson and Hilferty, 1931)."""
    if dof == 0:
        return 0.0
    t = 2.0 / (9.0 * dof)
    return float(dof * (1.0 - t + 3.0902 * math.sqrt(t)) ** 3)
