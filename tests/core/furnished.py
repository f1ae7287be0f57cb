"""Random closets with random things in them, as somebody might try them out."""

from __future__ import annotations

import random
from dataclasses import replace
from functools import cache

from closetbench.core.bench import BenchFace, BenchSpec, Lay, TopRun
from closetbench.core.closet import Closet, ClosetDesign, Spec, build_closet
from closetbench.core.doors import DoorsSpec, Hinged
from closetbench.core.drawers import BottomKind, BoxJoint, DrawersSpec
from closetbench.core.errors import ClosetError
from closetbench.core.existing import ExistingSpec
from closetbench.core.face_frame import FaceFrameSpec, FrameJoint, StileEnd
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.rods import RodHolder, RodRun, RodsSpec, RodUse
from closetbench.core.shoe_shelves import ShoeShelvesSpec
from closetbench.core.specs import (
    BackKind,
    BackSpec,
    BaseKind,
    BaseSpec,
    BaySpec,
    CarcassSpec,
    LipSpec,
    TopKind,
)
from closetbench.core.wall_shelves import Corner, CornerShelvesSpec, OverShelfSpec
from closetbench.resources import load_catalogue

CATALOGUE = load_catalogue()
BOARDS = ("mdf18", "ply18", "melamine_3_4", "birch18")


@cache
def furnished(seed: int) -> Closet:
    """The closet of a seed. What cannot be built is left out, one after another."""
    rng = random.Random(seed)
    design = _design(rng)
    while True:
        try:
            return build_closet(design, CATALOGUE)
        except ClosetError as error:
            names = [c.name for c in design.components]
            bad = next((n for n in names if error.subject.startswith(n)), names[-1])
            left = tuple(c for c in design.components if c.name != bad)
            if not left:
                return furnished(seed + 100_003)
            design = replace(design, components=left)


def _design(rng: random.Random) -> ClosetDesign:
    size = (rng.uniform(1200, 3200), rng.uniform(350, 720), rng.uniform(1600, 2600))
    specs: list[Spec] = []
    for name in ("A", "B")[: rng.choice((1, 1, 2))]:
        specs += _carcass(rng, name, size)
    if rng.random() < 0.3:
        specs.append(OverShelfSpec(
            "over", rng.choice(BOARDS), rng.choice((None, size[2] - 100.0)),
            rng.choice((None, size[1] - 80.0)), pieces=rng.choice((1, 2)),
            lip=LipSpec(rng.choice((0.0, 40.0))),
        ))
    if rng.random() < 0.2:
        specs.append(CornerShelvesSpec(
            "corner", rng.choice(BOARDS), (rng.uniform(700, 1100), rng.uniform(1200, 1500)),
            rng.choice(list(Corner)), rng.uniform(250, 500), rng.uniform(250, 340),
            rng.uniform(150, 250), rng.uniform(150, 250),
        ))
    if rng.random() < 0.4:
        specs += _bench(rng, "bench", None)
    return ClosetDesign("closet", size=size, components=tuple(specs))


def _carcass(rng: random.Random, name: str, size: tuple[float, float, float]) -> list[Spec]:
    bays = tuple(
        rng.choice((
            BaySpec(), BaySpec(fixed=1), BaySpec(fixed=2), BaySpec(heights=(700.0,)),
            BaySpec(fixed=1, adjustable=1), BaySpec(width=rng.uniform(300, 700)),
        ))
        for _ in range(rng.randint(1, 3))
    )
    if all(b.width for b in bays):
        bays = (*bays, BaySpec())
    carcass = CarcassSpec(
        name, rng.choice(BOARDS), width=rng.choice((None, size[0] * 0.6)),
        height=rng.choice((None, None, size[2] - 250.0)),
        depth=rng.choice((None, size[1] - 40.0)), bays=bays,
        top=rng.choice((TopKind.OVER, TopKind.BETWEEN)),
        base=BaseSpec(rng.choice(list(BaseKind))),
        back=rng.choice((BackSpec(), BackSpec(BackKind.PANEL, "hardboard3"))),
        shelf_lip=rng.choice((LipSpec(), LipSpec(), LipSpec(40.0), LipSpec(35.0, "pine_1x4"))),
        shelf_band=rng.choice((None, None, "", "veneer_06")),
    )
    specs: list[Spec] = [carcass]
    if rng.random() < 0.3:
        specs.append(FaceFrameSpec(
            f"frame {name}", name, stile=rng.uniform(40, 60), mullion=rng.uniform(30, 50),
            bottom_rail=rng.uniform(25, 60), shelf_rail=rng.choice((0.0, 32.0)),
            joint=rng.choice(list(FrameJoint)), left=rng.choice(list(StileEnd)),
            right=rng.choice(list(StileEnd)), to_floor=rng.random() < 0.5,
        ))
    for bay in range(1, len(bays) + 1):
        for compartment in range(1, max(bays[bay - 1].fixed, len(bays[bay - 1].heights)) + 2):
            tag = f"{name}{bay}.{compartment}"
            specs += _contents(rng, tag, Spot(name, bay, compartment))
    return specs


def _front(rng: random.Random, *kinds: FrontKind) -> FrontSpec:
    front = FrontSpec(
        rng.choice(kinds), rng.choice((None, "mdf18")), rng.uniform(2, 4),
        lap=rng.choice((None, None, 6.0)), pull_spacing=rng.choice((0.0, 0.0, 96.0)),
    )
    if front.kind is FrontKind.INSET and rng.random() < 0.2:
        leans = [rng.uniform(-4, 4) for _ in range(4)]
        front = replace(front, lean_left=leans[0], lean_right=leans[1], rise_below=leans[2],
                        rise_above=leans[3])
    return front


def _contents(rng: random.Random, tag: str, spot: Spot) -> list[Spec]:
    """Nothing, or one thing or two for a compartment."""
    pick = rng.choice((
        "", "drawers", "drawers", "doors", "drawers behind doors", "rods", "shoes", "chest",
        "bench",
    ))
    found: list[Spec] = []
    behind = "behind" in pick
    if "drawers" in pick:
        kinds = (FrontKind.NONE,) if behind else tuple(FrontKind)
        found.append(DrawersSpec(
            f"drawers {tag}", replace(spot, height=rng.choice((None, 400.0, 600.0))),
            rng.randint(1, 4), (), rng.choice(sorted(CATALOGUE.slides)),
            box_material=rng.choice(("ply12", "birch12")), joint=rng.choice(list(BoxJoint)),
            bottom=rng.choice(list(BottomKind)), front=_front(rng, *kinds),
        ))
    if "doors" in pick:
        found.append(DoorsSpec(
            f"doors {tag}", spot, rng.choice((1, 2)), rng.choice(list(Hinged)),
            _front(rng, FrontKind.INSET, FrontKind.HALF, FrontKind.FULL),
            rng.choice(sorted(CATALOGUE.hinges)),
        ))
    if pick == "rods":
        found.append(RodsSpec(
            f"rods {tag}", spot, rng.choice(list(RodUse)), rng.choice(list(RodRun)),
            rng.choice(sorted(CATALOGUE.bars)), holder=rng.choice(list(RodHolder)),
        ))
    if pick == "shoes":
        found.append(ShoeShelvesSpec(
            f"shoes {tag}", spot, rng.randint(1, 4), rng.uniform(0, 140), rng.uniform(20, 60)))
    if pick == "chest":
        found.append(ExistingSpec(
            f"chest {tag}", spot, rng.uniform(250, 600), rng.uniform(300, 700),
            rng.uniform(250, 450), drawers=rng.choice((0, 3)), travel=rng.choice((0.0, 250.0)),
            fitted=rng.random() < 0.5, shelf_above=spot.compartment == 1 and rng.random() < 0.5,
            weight=rng.choice((None, 30.0)),
        ))
    if pick == "bench":
        found += _bench(rng, f"bench {tag}", spot)
    return found


def _bench(rng: random.Random, name: str, spot: Spot | None) -> list[Spec]:
    lid = rng.random() < 0.3
    bench = BenchSpec(
        name, spot, height=rng.uniform(380, 500), lay=rng.choice(list(Lay)),
        rails=2 if lid else rng.randint(2, 4), bays=rng.randint(1, 2),
        top=rng.choice(("pine_glued27", "ply18", "pine_1x6")), top_run=rng.choice(list(TopRun)),
        overhang=rng.uniform(0, 40), lid=lid,
        face=BenchFace.NONE if rng.random() < 0.7 else BenchFace.APRON,
    )
    if rng.random() < 0.5:
        return [bench]
    pull = DrawersSpec(
        f"pull-out {name}", Spot(name), front=_front(rng, FrontKind.INSET, FrontKind.FULL))
    return [bench, pull]
