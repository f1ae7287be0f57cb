"""Records what general structural libraries say about the beams and sections of the checks.

    python3 -m venv V && V/bin/pip install PyNiteFEA==3.2.0 sectionproperties==3.10.2 \
        scikit-fem==12.0.2
    V/bin/python tests/outside/record_structures.py

writes structures.json beside itself, which test_structures.py compares with. Units: N, mm.
"""

from __future__ import annotations

import json
from importlib.metadata import version
from pathlib import Path
from typing import Any

import numpy as np
from Pynite import FEModel3D
from sectionproperties.analysis import Section
from sectionproperties.pre import Material
from sectionproperties.pre.library import (
    circular_hollow_section,
    circular_section,
    rectangular_section,
)
from skfem import (
    BilinearForm,
    ElementQuad2,
    ElementTriMorley,
    ElementVector,
    InteriorBasis,
    LinearForm,
    MeshQuad,
    MeshTri,
    condense,
    solve,
)
from skfem.helpers import dd, ddot, sym_grad

E, SPAN, EI = 2500.0, 800.0, 2500.0 * 300 * 18**3 / 12
"""An 18 x 300 mm shelf over 800 mm, E 2500 N/mm²."""

# point loads (force, at), line loads (force per mm, start, end)
BEAMS: dict[str, dict[str, Any]] = {
    "uniform, simple": {"lines": [(0.3, 0, 800)]},
    "uniform, clamped": {"lines": [(0.3, 0, 800)], "clamped": True},
    "centre, simple": {"points": [(250, 400)]},
    "centre, clamped": {"points": [(250, 400)], "clamped": True},
    "quarters, simple": {"points": [(125, 200), (125, 600)]},
    "off centre, simple": {"points": [(200, 150)]},
    "off centre, clamped": {"points": [(200, 150)], "clamped": True},
    "half loaded, simple": {"lines": [(0.5, 0, 400)]},
    "half loaded, clamped": {"lines": [(0.5, 0, 400)], "clamped": True},
    "mixed, simple": {"points": [(80, 100), (120, 640)], "lines": [(0.2, 250, 700)]},
    "mixed, clamped": {
        "points": [(80, 100), (120, 640)], "lines": [(0.2, 250, 700)], "clamped": True,
    },
    "three sitting, simple": {"points": [(1334, 150), (1334, 400), (1334, 650)]},
}


def beam(points: Any = (), lines: Any = (), clamped: bool = False) -> dict[str, float]:
    """Greatest deflection and moment and the reactions of one beam (no shear deflection)."""
    model = FEModel3D()
    model.add_node("a", 0, 0, 0)
    model.add_node("b", SPAN, 0, 0)
    model.add_material("board", E, E / 2.5, 0.25, 1e-9)
    inertia = EI / E
    model.add_section("shelf", 300 * 18, inertia, inertia, inertia)
    model.add_member("m", "a", "b", "board", "shelf")
    model.def_support("a", True, True, True, True, clamped, clamped)
    model.def_support("b", True, True, True, True, clamped, clamped)
    for force, at in points:
        model.add_member_pt_load("m", "Fy", -force, at)
    for per_mm, start, end in lines:
        model.add_member_dist_load("m", "Fy", -per_mm, -per_mm, start, end)
    model.analyze(check_statics=False)
    member = model.members["m"]
    stations = np.linspace(0, SPAN, 8001)
    sag = [member.deflection("dy", x) for x in stations]
    moments = [abs(member.moment("Mz", x)) for x in stations]
    return {
        "deflection": float(-min(sag)), "moment": float(max(moments)),
        "left": float(model.nodes["a"].RxnFY["Combo 1"]),
        "right": float(model.nodes["b"].RxnFY["Combo 1"]),
    }


def board(e: float) -> Material:
    """A material without Poisson's effect, as beam theory has it."""
    return Material(
        name=f"E {e:g}", elastic_modulus=e, poissons_ratio=0, yield_strength=1, density=1,
        color="grey",
    )


def ei_of(geometry: Any) -> float:
    """EI about the horizontal axis through the centroid."""
    geometry.create_mesh([20])
    section = Section(geometry)
    section.calculate_geometric_properties()
    return float(section.get_eic()[0])


def shear_area(geometry: Any) -> tuple[float, float]:
    """Area, and shear area for vertical loads, each of a section of one material."""
    geometry.create_mesh([2])
    section = Section(geometry)
    section.calculate_geometric_properties()
    section.calculate_warping_properties()
    e = 1000.0
    return float(section.get_ea()) / e, float(section.get_eas()[1]) / e


def sections() -> dict[str, float]:
    """EI of the sections of the checks."""
    shelf = rectangular_section(d=18, b=300, material=board(2500))
    lip = rectangular_section(d=40, b=18, material=board(2500)).shift_section(300, -22)
    oak = rectangular_section(d=40, b=19, material=board(12550)).shift_section(300, -22)
    cleat = rectangular_section(d=60, b=18, material=board(8890)).shift_section(0, -60)
    return {
        "shelf": ei_of(shelf),
        "shelf and lip": ei_of(shelf + lip),
        "shelf and oak lip": ei_of(shelf + oak),
        "shelf and pine cleat": ei_of(shelf + cleat),
        "shelf, lip and cleat": ei_of(shelf + lip + cleat),
        "tube": ei_of(circular_hollow_section(d=27, t=1.245, n=256, material=board(200e3))),
        "pole": ei_of(circular_section(d=31.75, n=256, material=board(8890))),
    }


def shear_areas() -> dict[str, tuple[float, float]]:
    """Area and shear area of a rectangle, a round and a tube."""
    one = board(1000)
    return {
        "rectangle": shear_area(rectangular_section(d=38, b=89, material=one)),
        "round": shear_area(circular_section(d=31.75, n=128, material=one)),
        "tube": shear_area(circular_hollow_section(d=27, t=1.245, n=128, material=one)),
    }


def plane_stress(span: float, height: float) -> float:
    """Deflection per mm of width of a deep rectangle under its own uniform load of 1 N/mm,
    as a plate in plane stress, its ends held vertically (shear deflection comes by itself)."""
    mesh = MeshQuad.init_tensor(
        np.linspace(0, span, 81), np.linspace(-height / 2, height / 2, 9))
    basis = InteriorBasis(mesh, ElementVector(ElementQuad2()))
    shear = E / 2  # no Poisson's effect

    @BilinearForm  # type: ignore[untyped-decorator]
    def stiffness(u: Any, v: Any, _: Any) -> Any:
        return 2 * shear * ddot(sym_grad(u), sym_grad(v))

    @LinearForm  # type: ignore[untyped-decorator]
    def load(v: Any, _: Any) -> Any:
        return -v[1] / height

    node = int(np.argmin(np.hypot(mesh.p[0] - span / 2, mesh.p[1])))
    across, up = basis.nodal_dofs[:2, node]
    ends = basis.get_dofs(lambda x: np.isclose(x[0], 0) | np.isclose(x[0], span)).all("u^2")
    held = np.append(ends, across)
    u = solve(*condense(stiffness.assemble(basis), load.assemble(basis), D=held))
    return float(-u[up])


def corner_plate(legs: tuple[float, float], cut: tuple[float, float]) -> float:
    """Greatest deflection of an L-shaped plate 18 mm thick under 1e-3 N/mm², by Kirchhoff's
    theory without Poisson's effect (Morley's elements). It lies on two walls along y = 0 and
    x = 0, which let it turn and hold it down; ``legs``: its sizes; ``cut``: sizes of the piece
    missing at the corner far from the walls."""
    step = 10.0
    (a, b), (dx, dy) = legs, cut
    mesh = MeshTri.init_tensor(np.arange(0, a + 1, step), np.arange(0, b + 1, step))
    middles = mesh.p[:, mesh.t].mean(axis=1)
    gone = (middles[0] > a - dx) & (middles[1] > b - dy)
    mesh = mesh.remove_elements(np.nonzero(gone)[0])
    basis = InteriorBasis(mesh, ElementTriMorley())

    @BilinearForm  # type: ignore[untyped-decorator]
    def bending(u: Any, v: Any, _: Any) -> Any:
        return E * 18**3 / 12 * ddot(dd(u), dd(v))

    @LinearForm  # type: ignore[untyped-decorator]
    def load(v: Any, _: Any) -> Any:
        return 1e-3 * v

    walls = basis.get_dofs(lambda x: np.isclose(x[0], 0) | np.isclose(x[1], 0)).all("u")
    u = solve(*condense(bending.assemble(basis), load.assemble(basis), D=walls))
    return float(np.abs(u[basis.nodal_dofs[0]]).max())


PLATES = (((600.0, 500.0), (300.0, 200.0)), ((500.0, 500.0), (200.0, 200.0)),
          ((800.0, 400.0), (400.0, 100.0)), ((400.0, 400.0), (0.0, 0.0)))
"""Corner shelves: sizes along the walls, and of the piece that is cut out."""


def record() -> dict[str, Any]:
    """Everything, with the libraries' names and versions."""
    return {
        "recorded with": {
            name: version(name) for name in ("PyNiteFEA", "sectionproperties", "scikit-fem")
        },
        "beams": {name: {**case, "result": beam(**case)} for name, case in BEAMS.items()},
        "sections": sections(),
        "shear areas": shear_areas(),
        "plane stress": [
            {"span": s, "height": 100.0, "deflection": plane_stress(s, 100.0)}
            for s in (400.0, 600.0, 1000.0, 2000.0)
        ],
        "corner plates": [
            {"legs": legs, "cut": cut, "deflection": corner_plate(legs, cut)}
            for legs, cut in PLATES
        ],
    }


if __name__ == "__main__":
    path = Path(__file__).with_name("structures.json")
    path.write_text(json.dumps(record(), indent=1) + "\n", encoding="utf-8")
