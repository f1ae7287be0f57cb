"""Boards, closets and findings for the tests of strength and safety."""

from __future__ import annotations

from collections.abc import Iterable

from closetbench.core.checks import run_checks
from closetbench.core.circumstances import Circumstances
from closetbench.core.closet import Closet, ClosetDesign, Spec, build_closet
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding
from closetbench.core.materials import Catalogue, Material, MaterialKind, SheetSize
from closetbench.resources import load_catalogue

CATALOGUE = load_catalogue()
FIGURES = Figures()


def board(
    e: float, thickness: float = 18.0, kind: MaterialKind = MaterialKind.MDF,
    across: float | None = None, density: float = 750.0,
) -> Material:
    """A board with a stiffness of its own."""
    return Material(
        "board", "board", kind, thickness, thickness, True, density, e, across or e,
        (SheetSize(2440.0, 1220.0),), 5.0, "", False, "test",
    )


def built(
    *specs: Spec, size: tuple[float, float, float] = (1200.0, 500.0, 2200.0),
    circumstances: Circumstances | None = None, catalogue: Catalogue = CATALOGUE,
) -> Closet:
    """A closet in an envelope of that size."""
    return build_closet(
        ClosetDesign(
            "closet", size=size, components=specs, circumstances=circumstances or Circumstances()
        ),
        catalogue,
    )


def checked(closet: Closet, circumstances: Circumstances | None = None) -> tuple[Finding, ...]:
    """The findings of the checks alone."""
    known = circumstances or closet.design.circumstances
    return run_checks(closet, CATALOGUE, known).findings


def rules(found: Iterable[Finding]) -> list[str]:
    """The findings' rules, in order."""
    return [f.rule for f in found]


def only(found: Iterable[Finding], rule: str, subject: str | None = None) -> Finding:
    """The one finding of that rule (and subject)."""
    (one,) = [f for f in found if f.rule == rule and subject in (None, f.subject)]
    return one
