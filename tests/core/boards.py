"""Boards of pinned thickness for the core's tests, so that every figure can be worked by hand."""

from __future__ import annotations

from dataclasses import replace

from closetbench.core.closet import Closet, ClosetDesign, build_closet
from closetbench.core.component import Component, Space
from closetbench.core.materials import Catalogue, EdgeBand, Material, MaterialKind, SheetSize
from closetbench.core.parts import Part
from closetbench.core.specs import BackSpec, BaseKind, BaseSpec, CarcassSpec, TopKind


def board(
    key: str,
    nominal: float,
    measured: float | None = None,
    kind: MaterialKind = MaterialKind.PLYWOOD,
    grained: bool = True,
    band: str = "",
) -> Material:
    """A board in sheets of 2440 x 1220 mm, trimmed by 5 mm all round, 650 kg/m³."""
    return Material(
        key, key, kind, nominal, measured, grained, 650.0, 8000.0, 3000.0,
        (SheetSize(2440.0, 1220.0, 50.0),), 5.0, band, bool(band), "invented for the tests",
    )


CATALOGUE = Catalogue(
    {
        m.key: m
        for m in (
            board("ply", 18.0, 17.6, band="half"),
            board("mdf", 18.0, 18.0, MaterialKind.MDF, grained=False),
            board("hard", 3.2, 3.1, MaterialKind.HARDBOARD, grained=False),
            board("ply6", 6.0, 6.0),
            board("loose", 18.0, kind=MaterialKind.MDF, grained=False),
        )
    },
    {"half": EdgeBand("half", "band, half a millimetre", 0.5, 22.0),
     "two": EdgeBand("two", "band, two millimetres", 2.0, 22.0)},
)

SPACE = Space(0.0, 1000.0, 600.0, 2000.0)

PLAIN = CarcassSpec(
    "A", "mdf", top=TopKind.BETWEEN, base=BaseSpec(BaseKind.NONE), back=BackSpec(inset=10.0)
)
"""A carcass of 18 mm board without bands or base: sides, bottom, top and cleats."""


def closet(*specs: CarcassSpec, size: tuple[float, float, float] = (1000.0, 600.0, 2000.0)
           ) -> Closet:
    """The closet of these carcasses in an envelope of this width, depth and height."""
    return build_closet(ClosetDesign("closet", size=size, components=specs), CATALOGUE)


def part(found: Closet | Component, name: str) -> Part:
    """The one part of that name."""
    (only,) = [p for p in found.parts if p.name == name]
    return only


def names(found: Closet | Component) -> list[str]:
    """The names of the parts, in order."""
    return [p.name for p in found.parts]


def plain(**changes: object) -> CarcassSpec:
    """``PLAIN`` with changes."""
    return replace(PLAIN, **changes)  # type: ignore[arg-type]
