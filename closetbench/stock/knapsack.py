"""The set of pieces that fits a length and is worth most."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np


def fullest(
    worth: Sequence[float], sizes: Sequence[int], most: Sequence[int], room: int
) -> tuple[float, list[int]]:
    """The most that fits ``room``, and how many of each it takes: a bounded knapsack.

    Sizes and room are whole steps; at most ``most`` of each may be taken. Pieces go in
    as bundles of 1, 2, 4 … so that any number is a sum of bundles.
    """
    best = np.zeros(room + 1)
    bundles: list[tuple[int, int, int, Any]] = []
    for i, (value, size) in enumerate(zip(worth, sizes, strict=True)):
        if value <= 1e-12:
            continue
        left = min(most[i], room // size) if size else most[i]
        bundle = 1
        while left > 0:
            count = min(bundle, left)
            step = size * count
            tried = best[: best.size - step] + value * count
            better = tried > best[step:] + 1e-12
            best[step:] = np.where(better, tried, best[step:])
            bundles.append((i, count, step, better))
            left -= count
            bundle *= 2
    counts = [0] * len(worth)
    at = room
    for i, count, step, better in reversed(bundles):
        if at >= step and better[at - step]:
            counts[i] += count
            at -= step
    return float(best[room]), counts
