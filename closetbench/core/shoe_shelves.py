"""Sloped shelves for shoes: each leans forward on tilted cleats, with a stop at its front."""

from __future__ import annotations

import math
from dataclasses import dataclass

from closetbench.core.component import Component, bands_for, box_around, require
from closetbench.core.errors import ClosetError
from closetbench.core.inside import Opening, Spot
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Grain, Panel, Rim
from closetbench.core.parts import HardwareNeed, Part, Place, Role, Vector

CLEAT_SCREW, STOP_SCREW = "screw_4x30", "screw_4x40"
SCREWS_PER_CLEAT = 3
"""Common practice, no published source."""
CLEAT_HEIGHT, CLEAT_SETBACK = 30.0, 20.0
PLAY, MARGIN = 3.0, 2.0
"""mm that a shelf is shorter than its bay, and stays off its front and rear: common practice,
no published source."""
LEAST_PITCH = 150.0
"""From one shoe shelf to the next, mm: common practice, no published source."""
RIGHT: Vector = (1.0, 0.0, 0.0)


@dataclass(frozen=True)
class ShoeShelvesSpec:
    """Sloped shelves for shoes in one opening, one above the other.

    ``name``: the component's name.
    ``spot``: where they lie.
    ``count``: number of shelves.
    ``drop``: how much lower the front of a shelf lies than its rear.
    ``stop``: height of the stop above the shelf.
    ``material``: key of their board, None takes the carcass's.
    ``band``: key of the edge band of shelves and stops, None for the material's own, "" for none.
    """

    name: str
    spot: Spot
    count: int = 2
    drop: float = 80.0
    stop: float = 40.0
    material: str | None = None
    band: str | None = None


@dataclass(frozen=True)
class _Slope:
    """A shelf's frame: ``u`` up the slope to the rear, ``n`` square to it, upwards."""

    y: float
    z: float
    sine: float
    cosine: float

    @property
    def rearward(self) -> Vector:
        return (0.0, self.cosine, self.sine)

    @property
    def upward(self) -> Vector:
        return (0.0, -self.sine, self.cosine)

    def at(self, x: float, u: float, n: float) -> Vector:
        return (
            x, self.y + u * self.cosine - n * self.sine, self.z + u * self.sine + n * self.cosine
        )


def build_shoe_shelves(
    spec: ShoeShelvesSpec, opening: Opening, catalogue: Catalogue
) -> Component:
    """Shelves, stops and cleats in the closet's frame; ``ClosetError`` for what cannot be."""
    subject = opening.subject
    if spec.count < 1:
        raise ClosetError(subject, "number of shelves", spec.count, "must be 1 or more")
    key = spec.material or opening.material
    t = catalogue.material(key, subject=subject).thickness
    depth = opening.depth - 2 * MARGIN
    require(subject, "drop", spec.drop, 0.0, depth / 2, "in this depth")
    require(subject, "height of the stop", spec.stop, 10.0, 150.0)
    length = slope_length(depth, spec.drop, t + spec.stop)
    sine = spec.drop / length
    cosine = math.sqrt(1 - sine**2)
    base = CLEAT_HEIGHT * cosine - CLEAT_SETBACK * sine + MARGIN
    pitch = (opening.height - base - spec.drop - t * cosine) / spec.count
    require(
        subject, "height for each shelf", pitch, LEAST_PITCH, float("inf"),
        f"for shoes; {opening.height:.1f} mm are there for {spec.count}",
    )
    y = opening.box.y0 + MARGIN + (t + spec.stop) * sine
    parts: list[Part] = []
    for k in range(spec.count):
        slope = _Slope(y, opening.box.z0 + base + k * pitch, sine, cosine)
        name = "shelf" if spec.count == 1 else f"shelf {k + 1}"
        parts += _shelf(spec, opening, catalogue, slope, (length, t), name)
    needs = (
        HardwareNeed(CLEAT_SCREW, 2 * SCREWS_PER_CLEAT * spec.count, "cleats of shoe shelves"),
        HardwareNeed(STOP_SCREW, 3 * spec.count, "stops to shoe shelves"),
    )
    return Component(spec.name, tuple(parts), box_around(parts), needs)


def slope_length(depth: float, drop: float, thick: float) -> float:
    """Length up the slope of a shelf that takes ``depth`` in plan, ``thick`` over its stop,
    and falls by ``drop``: L of sqrt(L² - drop²) + thick·drop/L = depth."""
    length = math.hypot(depth, drop)
    for _ in range(60):
        length = math.hypot(depth - thick * drop / length, drop)
    return length


def _shelf(
    spec: ShoeShelvesSpec, opening: Opening, catalogue: Catalogue, slope: _Slope,
    size: tuple[float, float], name: str,
) -> list[Part]:
    key = spec.material or opening.material
    board = catalogue.material(key, subject=opening.subject)
    grain = Grain.LENGTH if board.grained else Grain.NONE
    length, t = size
    x0, x1 = opening.box.x0 + PLAY / 2, opening.box.x1 - PLAY / 2

    def panel(long: float, wide: float, *rims: Rim) -> Panel:
        bands = bands_for(catalogue, key, spec.band, rims, spec.name) if rims else ()
        return Panel(long, wide, t, key, grain, bands=bands, visible=frozenset(rims))

    parts = [
        Part(
            name, spec.name, Role.SHOE_SHELF, panel(x1 - x0, length, Rim.FRONT),
            Place(slope.at(x0, 0.0, 0.0), RIGHT, slope.rearward),
        ),
        Part(
            f"{name} stop", spec.name, Role.LIP, panel(x1 - x0, spec.stop, Rim.REAR),
            Place(slope.at(x0, t, t), RIGHT, slope.upward),
        ),
    ]
    cleat = panel(length - 2 * CLEAT_SETBACK, CLEAT_HEIGHT)
    for side, x in (("left", opening.box.x0), ("right", opening.box.x1 - t)):
        place = Place(
            slope.at(x, CLEAT_SETBACK, -CLEAT_HEIGHT), slope.rearward, slope.upward)
        parts.append(Part(f"{name} {side} cleat", spec.name, Role.CLEAT, cleat, place))
    return parts
