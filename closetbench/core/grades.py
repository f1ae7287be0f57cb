"""What is published about the boards of the catalogue beside their stiffness.

A catalogue entry states its own E. By kind of board this module adds the strength, how
much E scatters, how much boards creep, what damp does to them, and their specific
gravity. "From memory" marks figures whose document was not at hand.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cache

from closetbench.core.errors import ClosetError
from closetbench.core.materials import Material, MaterialKind

NINETY_PERCENT = 1.645
"""Standard deviations either side of the mean between which 90 % of boards lie."""

CREEP_SOURCE = (
    "creep: NDS 3.5.2 (seasoned lumber 1.5), APA Panel Design Specification 4.5 (plywood 2), "
    "trade guide for MDF shelves (1.5), EN 1995-1-1 Table 3.2 (quoted) with four fifths of the "
    "load lasting"
)
STRENGTH_SOURCE = "EN 1995-1-1 Tables 2.3 and 3.1 (quoted)"
LOAD_FACTOR = 1.5
"""Factor on variable loads, EN 1990 (quoted)."""


@dataclass(frozen=True)
class Grade:
    """Published figures for one kind of board.

    ``mor``: least bending strength that its standard asks for, N/mm²; ``means``: least and
    greatest mean strength published for the kind, N/mm²; ``e_range``: least
    and greatest mean E published for the kind, N/mm², None where ``cov`` (coefficient of
    variation of E) says how boards scatter; ``creep``: total over first deflection after
    years, least, usual and greatest published; ``lasting`` and ``brief``: share of the
    strength that is left under a load lasting years, and under one of less than a week
    (k_mod); ``partial``: partial factor (γ_M);
    ``damp``: stiffness and strength left in damp air, None where the board is made for dry
    rooms only; ``g``: shear modulus over the thickness, N/mm², None for E/16.
    """

    mor: float
    mor_source: str
    means: tuple[float, float]
    e_range: tuple[float, float] | None
    e_source: str
    creep: tuple[float, float, float]
    lasting: float
    brief: float
    partial: float
    damp: tuple[float, float] | None
    g: float | None
    cov: float = 0.0


DAMP_SOURCE = "APA Panel Design Specification: 16 % moisture or more, 0.85 stiffness, 0.75 strength"

GRADES: Mapping[MaterialKind, Grade] = {
    MaterialKind.MELAMINE: Grade(
        11.0, "EN 312 type P2, over 13 to 20 mm", (15.17, 24.13),
        (2760, 4140), "Wood Handbook FPL-GTR-282 Table 12-1, particleboard",
        (1.5, 2.0, 2.8), 0.45, 0.85, 1.3, None, 100.0,
    ),
    MaterialKind.MDF: Grade(
        20.0, "EN 622-5, over 12 to 19 mm", (35.85, 35.85),
        (3590, 3590), "Wood Handbook FPL-GTR-282 Table 12-1, MDF",
        (1.5, 2.0, 2.8), 0.40, 0.80, 1.3, None, 100.0,
    ),
    MaterialKind.PLYWOOD: Grade(
        33.7, "Wood Handbook FPL-GTR-282 Table 12-1, plywood, low end", (33.72, 42.61),
        (6960, 8550), "Wood Handbook FPL-GTR-282 Table 12-1, plywood",
        (1.5, 2.0, 2.0), 0.70, 0.90, 1.2, (0.85, 0.75), 50.0,
    ),
    MaterialKind.HARDBOARD: Grade(
        31.0, "Wood Handbook FPL-GTR-282 Table 12-1, hardboard, low end (from memory)",
        (31.02, 56.54),
        (3100, 5520), "Wood Handbook FPL-GTR-282 Table 12-1, hardboard (from memory)",
        (1.5, 2.0, 2.8), 0.45, 0.85, 1.3, None, 100.0,
    ),
    MaterialKind.LUMBER: Grade(
        13.9, "ASTM D245 as NDS uses it: 2.1 times the 875 psi x 1.1 that spruce-pine-fir "
        "No. 2 may carry laid flat (875 psi and 1.1 quoted; 2.1 from memory)", (54.5, 64.8),
        None, "Wood Handbook FPL-GTR-190 Table 5-6: coefficient of variation of E 22 % "
        "(from memory)",
        (1.5, 1.5, 3.0), 0.70, 0.90, 1.3, (0.85, 0.75), None, 0.22,
    ),
}


THICKER: Mapping[MaterialKind, tuple[tuple[float, float, str], ...]] = {
    MaterialKind.MELAMINE: (
        (20.0, 10.5, "EN 312 type P2, over 20 to 25 mm (from memory)"),
        (25.0, 9.5, "EN 312 type P2, over 25 to 32 mm (from memory)"),
        (32.0, 8.5, "EN 312 type P2, over 32 to 40 mm (from memory)"),
        (40.0, 7.0, "EN 312 type P2, over 40 mm (from memory)"),
    ),
    MaterialKind.MDF: (
        (19.0, 18.0, "EN 622-5, over 19 to 30 mm (from memory)"),
        (30.0, 17.0, "EN 622-5, over 30 to 45 mm (from memory)"),
        (45.0, 15.0, "EN 622-5, over 45 mm (from memory)"),
    ),
}
"""Over which nominal thickness (mm) a standard asks for less strength, and how much."""
_TRADE_STEP = 0.1
"""mm: boards of 3/4 in are sold as 19."""


def grade(material: Material) -> Grade:
    """The figures of a board's kind, its least strength by its nominal thickness."""
    return _grade(material.kind, material.nominal)


@cache
def _grade(kind: MaterialKind, nominal: float) -> Grade:
    found = GRADES[kind]
    for over, mor, source in THICKER.get(kind, ()):
        if nominal > over + _TRADE_STEP:
            found = replace(GRADES[kind], mor=mor, mor_source=source)
    return found


def stiffness(material: Material, along: bool, damp: bool = False) -> float:
    """E in N/mm² along or across the length of the sheet, as the catalogue has it.

    Raises ``ClosetError`` where the catalogue's is no stiffness, or the board may not be
    used in damp air.
    """
    e = material.e_along if along else material.e_across
    if not e > 0:
        raise ClosetError(material.title, "stiffness", f"{e:g} N/mm²", "must be above 0")
    return e * damp_factors(material)[0] if damp else e


def damp_factors(material: Material) -> tuple[float, float]:
    """Stiffness and strength left in damp air."""
    found = grade(material).damp
    if found is None:
        raise ClosetError(
            material.title, "climate", "damp",
            "is made for dry, heated rooms; ask its maker for figures in damp air",
        )
    return found


def scatter(material: Material, e: float) -> tuple[float, float]:
    """The softest and the stiffest E that is published for boards sold as this one, N/mm².

    ``e`` is the value checked with; across the grain the range goes in proportion.
    """
    found = grade(material)
    if found.e_range is None:
        half = NINETY_PERCENT * found.cov
        return e * (1 - half), e * (1 + half)
    low, high = (v * e / material.e_along for v in found.e_range)
    return min(low, e), max(high, e)


def shear_modulus(material: Material, e: float) -> float:
    """G over the thickness, N/mm².

    Solid wood: about E/16 (Wood Handbook, from memory). Panels: a low value; at 18 mm and
    800 mm 100 N/mm² adds about 1 % to the sag (common practice, no published source).
    """
    found = grade(material).g
    return e / 16 if found is None else found


def lasting_strength(
    material: Material, along: bool, damp: bool = False, brief: bool = False
) -> float:
    """Bending stress in N/mm² that the weakest board of its standard bears for years, or for
    less than a week where ``brief``.

    Least strength x k_mod / γ_M, as EN 1995-1-1 has it; across the sheet the strength is
    taken to fall as E does.
    """
    found = grade(material)
    share = 1.0 if along else material.e_across / material.e_along
    left = damp_factors(material)[1] if damp else 1.0
    kept = found.brief if brief else found.lasting
    return found.mor * share * left * kept / found.partial


def allowed_stress(
    material: Material, along: bool, damp: bool = False, brief: bool = False
) -> float:
    """Bending stress in N/mm² that a board may bear under its plain load: ``lasting_strength``
    over the factor that building design puts on variable loads."""
    return lasting_strength(material, along, damp, brief) / LOAD_FACTOR


def strength_range(material: Material, allowed: float) -> tuple[float, float]:
    """``allowed`` for boards of the least and the greatest mean strength published."""
    found = grade(material)
    return allowed * found.means[0] / found.mor, allowed * found.means[1] / found.mor


def specific_gravity(material: Material, density: float | None = None) -> float:
    """Oven-dry weight over volume as it is, from the density (kg/m³, the catalogue's unless
    given) at 12 % (wood) or 8 % (boards)."""
    wet = 1.12 if material.kind is MaterialKind.LUMBER else 1.08
    return (material.density if density is None else density) / 1000 / wet
