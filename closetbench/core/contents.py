"""Everything that goes into or beside carcasses: which specification is built by what."""

from __future__ import annotations

from collections.abc import Mapping

from closetbench.core.bench import BenchSpec, build_bench
from closetbench.core.component import Component
from closetbench.core.doors import DoorsSpec, build_doors
from closetbench.core.drawers import DrawersSpec, build_drawers
from closetbench.core.existing import ExistingSpec, build_existing
from closetbench.core.face_frame import FaceFrameSpec, build_face_frame
from closetbench.core.inside import Site
from closetbench.core.materials import Catalogue
from closetbench.core.rods import RodsSpec, build_rods
from closetbench.core.shoe_shelves import ShoeShelvesSpec, build_shoe_shelves
from closetbench.core.wall_shelves import (
    CornerShelvesSpec,
    OverShelfSpec,
    build_corner_shelves,
    build_over_shelf,
)

Contents = (
    DrawersSpec | DoorsSpec | RodsSpec | ExistingSpec | FaceFrameSpec | BenchSpec
    | ShoeShelvesSpec | CornerShelvesSpec | OverShelfSpec
)
"""What a closet holds beside carcasses and single panels."""

HOSTING: Mapping[type, int] = {FaceFrameSpec: 1, BenchSpec: 2}
"""What others stand in or behind, in the order in which it has to be built."""


def build_inside(spec: Contents, site: Site, catalogue: Catalogue) -> Component:
    """A component on a site where the carcasses stand already."""
    if isinstance(spec, FaceFrameSpec):
        return build_face_frame(spec, site, catalogue)
    if isinstance(spec, BenchSpec):
        return build_bench(spec, site, catalogue)
    if isinstance(spec, CornerShelvesSpec):
        return build_corner_shelves(spec, site.envelope, catalogue)
    if isinstance(spec, OverShelfSpec):
        return build_over_shelf(spec, site, catalogue)
    opening = site.opening(spec.spot, spec.name)
    if isinstance(spec, DrawersSpec):
        return build_drawers(spec, opening, catalogue)
    if isinstance(spec, DoorsSpec):
        return build_doors(spec, opening, catalogue)
    if isinstance(spec, RodsSpec):
        return build_rods(spec, opening, catalogue)
    if isinstance(spec, ShoeShelvesSpec):
        return build_shoe_shelves(spec, opening, catalogue)
    return build_existing(spec, opening)
