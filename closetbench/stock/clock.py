"""Counted work in place of time, so that a seed finds the same plan on every machine."""

from __future__ import annotations

import time
from collections.abc import Callable

from closetbench.stock.plan import SearchEnd

WORK_PER_SECOND = 10_000_000
"""Steps of work in a second; set once on a small server of 2023, never measured anew."""
CLOCK_FACTOR = 10.0
"""How much slower than reckoned a machine may be before the clock ends the search."""
_CLOCK_FLOOR = 10.0  # seconds: a machine busy with other work must not spoil a small search


class Stop(Exception):
    """The search has to end; ``end`` says why."""

    def __init__(self, end: SearchEnd) -> None:
        self.end = end
        super().__init__(end.value)


class Clock:
    """Counts the work done against what is allowed; the real clock is only a guard.

    ``watch`` is told now and then how much of the allowance is spent, from 0 to 1, and
    ends the search by returning False.
    """

    def __init__(self, seconds: float, watch: Callable[[float], bool]) -> None:
        self.allowed = seconds * WORK_PER_SECOND
        self.spent = 0
        self._watch = watch
        self._deadline = time.monotonic() + _CLOCK_FLOOR + seconds * CLOCK_FACTOR
        self._next = 0.0

    def tick(self, work: int) -> None:
        """Add work; raise Stop when the search has to end."""
        self.spent += work
        if self.spent < self._next:
            return
        if self.spent >= self.allowed:
            raise Stop(SearchEnd.BUDGET)
        self._next = min(self.spent + 0.02 * WORK_PER_SECOND, self.allowed)
        if not self._watch(self.spent / self.allowed):
            raise Stop(SearchEnd.CANCELLED)
        if time.monotonic() > self._deadline:
            raise Stop(SearchEnd.CLOCK)

    def look(self) -> None:
        """Let the watcher end the search, whatever was done."""
        if not self._watch(self.spent / self.allowed if self.allowed else 0.0):
            raise Stop(SearchEnd.CANCELLED)
