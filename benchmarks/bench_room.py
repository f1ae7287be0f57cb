"""How long the room takes: adjustment with its envelope (aim: under 20 ms for 40 readings),
and the way in of a panel (aim: under 50 ms), on one core.

Then a larger Monte Carlo run than the tests': 1,000 rooms of each kind, or ``--rooms N``.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from statistics import median
from time import perf_counter

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS"):
    os.environ.setdefault(name, "1")
sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

import numpy as np  # noqa: E402

from closetbench.core.access import Entrance, Piece, way_in  # noqa: E402
from closetbench.core.envelope import Clearances, fit_envelope  # noqa: E402
from closetbench.core.fit import fit  # noqa: E402
from closetbench.core.panel import Box  # noqa: E402
from closetbench.core.room import build_room  # noqa: E402
from closetbench.core.turning import carry_through  # noqa: E402
from tests.core.measured import draw, plain_survey  # noqa: E402
from tests.core.test_adjust import room_of, stands_clear  # noqa: E402

RUNS = 15
ROOM_AIM, ACCESS_AIM = 20.0, 50.0
WAY = Entrance(Box(0.0, 0.0, 0.0, 1930.0, 640.0, 2410.0), 205.0, 1725.0, 2030.0, 135.0, 2410.0)


def milliseconds(work: Callable[[], object]) -> float:
    work()
    times = []
    for _ in range(RUNS):
        start = perf_counter()
        work()
        times.append(1000 * (perf_counter() - start))
    return median(times)


def forty_readings() -> None:
    plain = plain_survey(1930.0, 640.0, 2410.0)
    survey = replace(plain, extras=plain.extras[:17])
    assert len(build_room(survey).readings) == 40
    took = milliseconds(lambda: fit_envelope(build_room(survey), Clearances()))
    print(f"adjustment and envelope of 40 readings: {took:.1f} ms (aim {ROOM_AIM:g})")
    wrong = replace(survey, width_back_mid=1955.0)
    took = milliseconds(lambda: fit_envelope(build_room(wrong), Clearances()))
    print(f"the same with a wrong reading to find: {took:.1f} ms")


def panels() -> None:
    for words, size in (
        ("a shelf", (900.0, 400.0, 18.0)), ("a tall side", (18.0, 560.0, 2389.0)),
        ("a back", (980.0, 3.0, 2300.0)), ("a wide top", (1900.0, 560.0, 18.0)),
        ("a stiff back frame", (1600.0, 90.0, 2200.0)),
    ):
        box = Box(0.0, 0.0, 0.0, *size)
        found = way_in(Piece("panel", box), WAY)
        took = milliseconds(lambda box=box: anew(Piece("panel", box)))  # type: ignore[misc]
        print(f"way in of {words}: {took:.1f} ms (aim {ACCESS_AIM:g}), {found.how}")
    carcass = Piece("carcass", Box(0.0, 0.0, 0.0, 980.0, 450.0, 2389.0), True)
    took = milliseconds(lambda: anew(carcass, advise=False))
    print(f"no way in of a tall carcass: {took:.1f} ms")


def anew(piece: Piece, advise: bool = True) -> None:
    """A way in, with nothing remembered."""
    carry_through.cache_clear()
    way_in(piece, WAY, advise=advise)


def rooms(count: int) -> None:
    """Rooms drawn at random, ``count`` of each kind; the aims: the box fits in 95 % or more,
    its width is short of the best by less than a reading may be out, and a wrong reading is
    named in 90 % or more."""
    clearances = Clearances()
    for shared, bent, opening in ((0.0, 0, False), (0.5, 0, True), (1.0, 0, False), (0.5, 2, True)):
        rng = np.random.default_rng(95)
        kept = named = 0
        short = readings = 0.0
        for _ in range(count):
            m = draw(rng, shared, bent=bent, opening=opening)
            box = fit_envelope(room_of(m, fit(m.at, m.read)), clearances)
            best = fit_envelope(m.true_room(), clearances)
            kept += stands_clear(m.true_room(), box, clearances)
            short += best.width - box.width
            readings += m.survey.tape.error(best.width) + m.survey.resolution / 2
            index = int(rng.integers(len(m.read)))
            by = float(rng.choice([-1.0, 1.0]) * rng.uniform(10.0, 40.0))
            used = fit(m.at, m.with_blunder(index, by)).used
            named += [i for i, u in enumerate(used) if not u] == [index]
        kind = f"with {bent} bows or twists" if bent else "with flat walls"
        kind += " and an opening" if opening else ""
        print(
            f"{count} rooms {kind}, {shared:.0%} of the tape's error alike: box fits "
            f"{kept / count:.1%} (aim 95%), {short / count:.2f} mm short of the best (a reading "
            f"may be {readings / count:.2f} mm out), wrong reading named {named / count:.1%} "
            "(aim 90%)"
        )


if __name__ == "__main__":
    forty_readings()
    panels()
    rooms(int(sys.argv[sys.argv.index("--rooms") + 1]) if "--rooms" in sys.argv else 1000)
