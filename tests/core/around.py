"""Carcasses in rooms that are out, and the fillers around them."""

from __future__ import annotations

from dataclasses import replace

from closetbench.core.carcass import build_carcass
from closetbench.core.component import Component, Space
from closetbench.core.envelope import Clearances, Envelope, fit_envelope
from closetbench.core.fillers import FillersSpec, build_fillers
from closetbench.core.materials import Catalogue, MaterialKind, SheetSize
from closetbench.core.parts import Part
from closetbench.core.room import Room
from closetbench.core.specs import CarcassSpec
from closetbench.core.surfaces import Surface
from closetbench.resources import load_catalogue
from tests.core.boards import CATALOGUE, board

MOULDINGS = {
    key: replace(
        board(key, thick, thick, MaterialKind.LUMBER), sheets=(SheetSize(2700.0, width, 4.0),)
    )
    for key, width, thick in (
        ("scribe_20", 20.0, 6.0), ("scribe_32", 32.0, 6.0), ("scribe_45", 45.0, 8.0),
        ("quarter_round_12", 12.0, 12.0), ("quarter_round_19", 19.0, 19.0),
    )
}
STOCK = replace(CATALOGUE, materials={**CATALOGUE.materials, **MOULDINGS})
WITH_HARDWARE = replace(STOCK, hardware=load_catalogue().hardware)
STRIPS = Clearances(left=22.0, right=24.0, back=5.0, top=21.0)


def room(lean: float = 0.0, rise: float = 0.0, fall: float = 0.0, tilt: float = 0.0) -> Room:
    """2,000 x 600 x 2,400 mm; the left wall comes in by ``lean`` to the top, the floor rises
    by ``rise`` to the right and falls by ``fall`` to the back, the ceiling rises by ``tilt``
    to the right."""
    return Room(
        Surface.plane(0.0, 0.0, lean / 2400.0), Surface.plane(2000.0), Surface.plane(600.0),
        Surface.plane(0.0, rise / 2000.0, -fall / 600.0),
        Surface.plane(2400.0, tilt / 2000.0),
    )


def built(
    room: Room, clearances: Clearances, *specs: CarcassSpec
) -> tuple[Envelope, list[Component]]:
    envelope = fit_envelope(room, clearances)
    found, free = [], 0.0
    for spec in specs or (CarcassSpec("A", "mdf"),):
        space = Space(free, envelope.width - free, envelope.depth, envelope.height)
        found.append(build_carcass(spec, space, CATALOGUE))
        free = found[-1].box.x1
    return envelope, found


def fillers(
    room: Room, clearances: Clearances, *specs: CarcassSpec, catalogue: Catalogue = STOCK,
    **choices: object,
) -> Component:
    envelope, carcasses = built(room, clearances, *specs)
    spec = FillersSpec("Fillers", **choices)  # type: ignore[arg-type]
    return build_fillers(spec, carcasses, room, envelope, catalogue)


def part(found: Component, name: str) -> Part:
    (only,) = (p for p in found.parts if p.name == name)
    return only
