"""Random closets that can be built, for the properties that every closet must have."""

from __future__ import annotations

from hypothesis import reject
from hypothesis import strategies as st

from closetbench.core.closet import Closet, ClosetDesign, build_closet
from closetbench.core.errors import ClosetError
from closetbench.core.joinery import JoineryRules, Joint
from closetbench.core.specs import (
    BackKind,
    BackSpec,
    BaseKind,
    BaseSpec,
    BaySpec,
    CarcassSpec,
    TopKind,
)
from tests.core.boards import CATALOGUE

half_mm = st.integers(0, 8).map(lambda n: n * 0.5)


@st.composite
def bay_specs(draw: st.DrawFn, width: float | None) -> BaySpec:
    """Up to four fixed shelves, spread or at heights of their own, and three loose ones."""
    if draw(st.booleans()):
        return BaySpec(width, draw(st.integers(0, 4)), (), draw(st.integers(0, 3)))
    gaps = draw(st.lists(st.integers(100, 500), max_size=4))
    heights = tuple(float(sum(gaps[: i + 1]) + 18 * i) for i in range(len(gaps)))
    return BaySpec(width, 0, heights, draw(st.integers(0, 2)))


@st.composite
def carcass_specs(draw: st.DrawFn, name: str, width: float | None) -> CarcassSpec:
    """A carcass with every choice open."""
    count = draw(st.integers(1, 4))
    given = draw(st.lists(st.sampled_from([None, None, 150.0, 222.5]), max_size=count - 1))
    widths = [*given, *[None] * (count - len(given))]
    return CarcassSpec(
        name,
        draw(st.sampled_from(["ply", "mdf"])),
        width=width,
        depth=draw(st.sampled_from([None, None, 300.0, 412.3])),
        against_back=draw(st.booleans()),
        bays=tuple(draw(bay_specs(w)) for w in draw(st.permutations(widths))),
        joint=draw(st.sampled_from([Joint.GROOVE, Joint.GROOVE, Joint.SCREWS, Joint.NAILS])),
        shelf_joint=draw(st.sampled_from(Joint)),
        top=draw(st.sampled_from(TopKind)),
        base=BaseSpec(
            draw(st.sampled_from(BaseKind)), draw(st.sampled_from([60.0, 80.0, 101.6])),
            draw(st.sampled_from([0.0, 50.0])), draw(st.sampled_from([None, "ply", "mdf"])),
            draw(st.sampled_from([300.0, 600.0])),
        ),
        back=BackSpec(
            draw(st.sampled_from(BackKind)), draw(st.sampled_from([None, "hard", "ply6"])),
            draw(st.sampled_from([6.0, 10.0])), draw(st.sampled_from([65.0, 90.0])),
        ),
        band=draw(st.sampled_from([None, "", "two"])),
        groove_stop=draw(st.sampled_from([None, 0.0, 12.0])),
        rules=JoineryRules(
            fit=draw(st.sampled_from([0.0, 0.2, 0.4])),
            end_clearance=draw(st.sampled_from([0.0, 0.5, 1.0])),
            depth=draw(st.sampled_from([None, None, 6.5])),
        ),
    )


@st.composite
def closets(draw: st.DrawFn) -> Closet:
    """One or two carcasses in an envelope of no round size."""
    size = (
        draw(st.integers(600, 2600)) + draw(half_mm), draw(st.integers(250, 700)) + 0.3,
        draw(st.integers(900, 2600)) + draw(half_mm),
    )
    specs: tuple[CarcassSpec, ...]
    if draw(st.booleans()):
        specs = (draw(carcass_specs("A", None)),)
    else:
        specs = (draw(carcass_specs("A", 500.0)), draw(carcass_specs("B", None)))
    try:
        return build_closet(
            ClosetDesign("closet", size=size, components=specs), CATALOGUE
        )
    except ClosetError:
        reject()
