"""A carcass with two bays for tests of what goes into it, and closets around it."""

from __future__ import annotations

from collections.abc import Iterable

from closetbench.core.closet import Closet, ClosetDesign, Spec, build_closet
from closetbench.core.component import Component
from closetbench.core.findings import Finding
from closetbench.core.parts import Part, Role
from closetbench.core.specs import BackKind, BackSpec, BaySpec, CarcassSpec
from closetbench.resources import load_catalogue

CATALOGUE = load_catalogue()
CARCASS = CarcassSpec(
    "A", "mdf18", bays=(BaySpec(width=600.0, fixed=1), BaySpec(fixed=1)),
    back=BackSpec(BackKind.PANEL, "hardboard3"),
)


def closet(
    *specs: Spec, carcass: CarcassSpec | None = CARCASS, width: float = 1300.0,
    depth: float = 600.0, height: float = 2000.0,
) -> Closet:
    """A closet of these sizes with one carcass and other components."""
    components = (*((carcass,) if carcass else ()), *specs)
    design = ClosetDesign("test", size=(width, depth, height), components=components)
    return build_closet(design, CATALOGUE)


def component(built: Closet, name: str) -> Component:
    """The component of that name."""
    return next(c for c in built.components if c.name == name)


def parts(built: Closet, role: Role, name: str = "D") -> list[Part]:
    """The parts of a role in a component."""
    return [p for p in component(built, name).parts if p.role is role]


def rules(found: Iterable[Finding], subject: str = "") -> set[str]:
    """The rules of findings whose subject begins so."""
    return {f.rule for f in found if f.subject.startswith(subject)}
