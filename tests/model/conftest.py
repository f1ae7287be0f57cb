"""Random designs, and what several tests compare."""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from closetbench import host
from closetbench.core.closet import ClosetDesign, build_closet
from closetbench.core.errors import ClosetError
from closetbench.core.joinery import Joint
from closetbench.core.specs import (
    BackKind,
    BackSpec,
    BaseKind,
    BaseSpec,
    BaySpec,
    CarcassSpec,
    TopKind,
)
from closetbench.core.survey import Survey
from closetbench.resources import load_catalogue

try:
    host.import_freecad()
except host.HostError:
    # these modules import FreeCAD; the run's head says that there is none
    collect_ignore_glob = ["test_*.py"]

BOARDS = ("melamine18", "ply18", "birch18", "mdf18", "melamine16")


def _carcass(rnd: random.Random, name: str) -> CarcassSpec:
    bays = tuple(
        BaySpec(fixed=rnd.randint(0, 4), adjustable=rnd.randint(0, 3))
        for _ in range(rnd.randint(1, 3))
    )
    return CarcassSpec(
        name, rnd.choice(BOARDS), width=rnd.uniform(450, 1300),
        height=rnd.choice((None, rnd.uniform(900, 2300))),
        depth=rnd.choice((None, rnd.uniform(300, 590))), against_back=rnd.random() < 0.5,
        bays=bays, joint=rnd.choice((Joint.GROOVE, Joint.SCREWS, Joint.NAILS)),
        shelf_joint=rnd.choice(tuple(Joint)), top=rnd.choice(tuple(TopKind)),
        base=BaseSpec(rnd.choice(tuple(BaseKind)), rnd.uniform(40, 120)),
        back=BackSpec(rnd.choice(tuple(BackKind))), band=rnd.choice((None, "")),
    )


def _designs(seed: int) -> Iterator[ClosetDesign]:
    rnd = random.Random(seed)
    while True:
        names = ("A", "B")[: rnd.randint(1, 2)]
        design = ClosetDesign(
            "Random", size=(rnd.uniform(1300, 2700), 600.0, rnd.uniform(2310, 2600)),
            components=tuple(_carcass(rnd, name) for name in names),
        )
        try:
            build_closet(design, load_catalogue())
        except ClosetError:
            continue
        yield design


@pytest.fixture(scope="session")
def designs() -> Callable[[int], Iterator[ClosetDesign]]:
    """Endless different designs that can be built, by a seed."""
    return _designs


@pytest.fixture(scope="session")
def readings() -> Survey:
    """A closet a little out of true; invented figures."""
    return Survey(
        1931, 1928, 1926, 1934, 1930, 1927, 2412, 2408, 2410, 2405, 642, 638,
        lean_left_front=3.0, lean_left_back=2.0, rise_front=4.0, rise_left=2.0,
    )


@pytest.fixture(scope="session")
def two_carcasses(readings: Survey) -> ClosetDesign:
    """Two carcasses side by side in a surveyed closet: shelves, a divider, a back."""
    return ClosetDesign(
        "Study", readings,
        components=(
            CarcassSpec("Shelves", "ply18", width=900.0, bays=(BaySpec(fixed=3),)),
            CarcassSpec(
                "Coats", "melamine18", back=BackSpec(BackKind.PANEL),
                bays=(BaySpec(width=400.0, adjustable=2), BaySpec(fixed=1)),
            ),
        ),
    )


@pytest.fixture
def reopen(tmp_path: Path) -> Iterator[Callable[[Any], Any]]:
    """Save a document and open what was saved beside it."""
    freecad = host.import_freecad()
    opened = []

    def again(doc: Any) -> Any:
        path = tmp_path / f"{len(opened)}.FCStd"
        doc.saveCopy(str(path))
        opened.append(freecad.openDocument(str(path)))
        opened[-1].UndoMode = 1
        return opened[-1]

    yield again
    for doc in opened:
        freecad.closeDocument(doc.Name)
