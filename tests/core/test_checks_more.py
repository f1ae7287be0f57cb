"""What the checks say of loads, lips, lids, bases and children, and in whose unit."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from closetbench.core.bench import BenchFace, BenchSpec
from closetbench.core.bench_strength import Bench
from closetbench.core.circumstances import Circumstances
from closetbench.core.closet import ClosetDesign, build_closet
from closetbench.core.drawers import DrawersSpec
from closetbench.core.errors import ClosetError
from closetbench.core.figures import GRAVITY, Figures
from closetbench.core.findings import Severity
from closetbench.core.inside import Spot
from closetbench.core.joinery import Joint
from closetbench.core.lengths import SIXTEENTHS
from closetbench.core.loaded import loaded_shelves
from closetbench.core.loads import CRITERIA, ShelfUse
from closetbench.core.parts import Role
from closetbench.core.people import ChildAge
from closetbench.core.rods_strength import Rod, RodKind
from closetbench.core.shelves import Shelf, section
from closetbench.core.shelves import check as check_shelf
from closetbench.core.shoe_shelves import ShoeShelvesSpec
from closetbench.core.specs import (
    BaseKind,
    BaseSpec,
    BaySpec,
    CarcassSpec,
    LipSpec,
)
from closetbench.core.wall_shelves import CornerShelvesSpec
from closetbench.resources import load_catalogue
from tests.core.test_checks import CASE, KNOWN
from tests.core.wooden import CATALOGUE, built, checked, only, rules


def test_a_missing_stiffness_a_load_without_area_and_a_negative_span_are_refused() -> None:
    ply = CATALOGUE.material("ply18")
    for wrong in ({"e_along": 0.0}, {"e_across": -1.0}, {"e_along": float("nan")}):
        with pytest.raises(ClosetError):
            replace(ply, **wrong)
    general = CRITERIA[ShelfUse.GENERAL]
    for length, depth in ((0.0, 300.0), (800.0, 0.0), (float("nan"), 300.0)):
        with pytest.raises(ClosetError, match="a load needs an area"):
            general.load(length, depth)
    for span in (-800.0, 0.0, float("nan")):
        with pytest.raises(ClosetError, match="must be above 0"):
            check_shelf(Shelf("shelf", ply, span, 300.0), general)
        with pytest.raises(ClosetError, match="must be above 0"):
            Rod("rod", RodKind.OAK, 32.0, span)
        with pytest.raises(ClosetError, match="must be above 0"):
            Bench("bench", "stud_2x4", span, 2, 38.1, 88.9, "pine_glued27", 200.0)
    with pytest.raises(ClosetError, match="thing in the middle"):
        Circumstances(shelf_middle=-5.0)


def test_a_catalogue_entry_without_a_stiffness_is_refused(tmp_path: Path) -> None:
    own = tmp_path / "own.toml"
    own.write_text(
        'currency = "EUR"\n[material.odd18]\ntitle = "odd"\nkind = "mdf"\nnominal = 18\n'
        "grained = false\ndensity = 700\nsheets = [{ length = 2440, width = 1220 }]\n",
        encoding="utf-8",
    )
    with pytest.raises(ClosetError, match="e_along"):
        load_catalogue(own)


def test_a_heavy_thing_in_the_middle_bends_a_shelf_more() -> None:
    plain = only(checked(built(CASE, circumstances=KNOWN)), "shelf-sag", "case: bay 1 shelf 1")
    heavy = replace(KNOWN, shelf_middle=20.0)
    found = only(checked(built(CASE, circumstances=heavy)), "shelf-sag", "case: bay 1 shelf 1")
    assert "and 20.0 kg in the middle" in found.message
    # 20 kg at midspan add W·L³/48EI to 5·W·L³/384EI, and little by shear
    ply, span = CATALOGUE.material("ply18"), (573 + 573 + 12) / 2
    added = 20 * GRAVITY * span**3 / (48 * ply.e_along * 482 * 18**3 / 12)
    assert float(found.value.split()[0]) - float(plain.value.split()[0]) == pytest.approx(
        added, abs=0.2)


def test_openings_that_hold_a_childs_head_are_pointed_at_where_children_are() -> None:
    tight = replace(CASE, bays=(BaySpec(heights=(150.0, 600.0)),))
    small = replace(KNOWN, children=(ChildAge.THREE_TO_FOUR,))
    said = only(checked(built(tight, circumstances=small), small), "entrapment")
    assert said.parts == ("case: bottom",)
    assert said.value == "150 mm"
    assert "16 CFR 1213" in said.source
    assert "entrapment" not in rules(checked(built(tight, circumstances=KNOWN)))
    # what is full of a drawer holds no head
    bank = DrawersSpec("bank", Spot("case"), count=1)
    assert "entrapment" not in rules(
        checked(built(tight, bank, circumstances=small, size=(900.0, 500.0, 2200.0)), small))


def test_what_the_shelves_are_for_is_asked_once() -> None:
    two = (replace(CASE, width=600.0), replace(CASE, name="other", width=600.0))
    said = only(checked(built(*two)), "shelf-use")
    assert "other: bay 1 shelf 1" in said.parts


def test_every_value_that_depends_on_a_board_says_how_it_scatters() -> None:
    rods = (Rod("rod", RodKind.PINE, 31.75, 1800.0, height=1650.0, holder="ply18"),)
    benches = (Bench("bench", "stud_2x4", 1500.0, 2, 38.1, 38.1, "pine_glued18", 900.0),)
    known = replace(KNOWN, rods=rods, benches=benches, shelf_use=ShelfUse.BOOKS)
    wide = CarcassSpec("case", "melamine18", bays=(BaySpec(fixed=2, adjustable=1),),
                       shelf_joint=Joint.SCREWS)
    ply = replace(CASE, name="ply", shelf_joint=Joint.SCREWS, width=600.0)
    bank = DrawersSpec("bank", Spot("ply"))
    closet = built(
        replace(wide, width=1200.0), ply, bank, circumstances=known, size=(1900.0, 500.0, 2200.0))
    by_board = {
        "shelf-sag", "shelf-strength", "shelf-fixing", "tipping", "drawer-bottom", "rod-sag",
        "rod-strength", "rod-overload", "rod-screws", "bench-sag", "bench-strength",
        "bench-top-sag", "bench-top-strength", "heavy-carcass", "heavy-part", "heavy-sheet",
    }
    found = [f for f in checked(closet, closet.design.circumstances) if f.rule in by_board]
    assert {"shelf-strength", "rod-screws", "bench-top-sag"} <= set(rules(found))
    assert not [f for f in found if not f.spread and f.severity is not Severity.NOT_CHECKED]


def test_who_reads_inches_reads_no_millimetres_first() -> None:
    wide = CarcassSpec("case", "melamine18", bays=(BaySpec(fixed=2, adjustable=1),))
    shoes = ShoeShelvesSpec("shoes", Spot("case", compartment=1))
    form = Figures(SIXTEENTHS)
    design = ClosetDesign(
        "closet", size=(1200.0, 500.0, 2200.0), circumstances=KNOWN,
        components=(wide, shoes, CornerShelvesSpec("nook", "ply18", (400.0,), along_side=400.0)),
    )
    for finding in build_closet(design, CATALOGUE, form).findings:
        # the names of boards and screws keep their sizes
        text = f"{finding.message} {finding.fix}"
        for title in (*(m.title for m in CATALOGUE.materials.values()),
                      *(h.title for h in CATALOGUE.hardware.values())):
            text = text.replace(title, "")
        assert " mm" not in text, finding
        assert " mm" not in finding.value + finding.limit + finding.spread, finding


@pytest.mark.parametrize("joint", [Joint.GROOVE, Joint.CLEATS])
def test_the_lips_of_a_carcass_stiffen_its_shelves(joint: Joint) -> None:
    plain = CarcassSpec(
        "case", "melamine18", bays=(BaySpec(fixed=1, adjustable=1),), shelf_joint=joint)
    lipped = replace(plain, shelf_lip=LipSpec(40.0))
    for name in ("case: bay 1 shelf 1", "case: bay 1 loose shelf 1"):
        bare, stiff = (
            only(checked(built(case, circumstances=KNOWN)), "shelf-sag", name)
            for case in (plain, lipped)
        )
        assert float(stiff.value.split()[0]) < float(bare.value.split()[0]) / 1.5
        assert "its lip glued and screwed on" in stiff.message
        assert "lip glued" not in bare.message
    # by hand: 18 mm of lip 40 mm high, level with the top, before what is left of the depth
    closet = built(lipped, circumstances=KNOWN)
    shelf = next(p for p in closet.parts if p.full_name == "case: bay 1 shelf 1")
    e, width = 1600.0, shelf.panel.width
    areas = ((width * 18, 9.0, width * 18**3 / 12), (18 * 40, -2.0, 18 * 40**3 / 12))
    axis = sum(a * z for a, z, _ in areas) / sum(a for a, _, _ in areas)
    stiffness = e * sum(i + a * (z - axis) ** 2 for a, z, i in areas)
    (group,) = [
        g for g in loaded_shelves(
            closet.components[0], lipped, closet.envelope.height, CATALOGUE)
        if g[0].name == shelf.full_name
    ]
    assert section(group[0], e).ei == pytest.approx(stiffness)


def test_the_rails_of_a_base_are_beams_between_its_cross_members() -> None:
    closet = built(CASE, circumstances=KNOWN)
    said = only(checked(closet), "base-rails")
    assert said.severity is Severity.NOTE
    assert said.parts == ("case: base front rail", "case: base rear rail")
    assert "softest" in said.spread
    # high spans under heavy loads of a melamine base do not do
    heavy = replace(KNOWN, shelf_use=None, shelf_load=600.0)
    soft = replace(CASE, base=BaseSpec(height=60.0, material="melamine18", spacing=1200.0))
    weak = only(checked(built(soft, circumstances=heavy), heavy), "base-rails")
    assert weak.severity is Severity.WARNING
    assert "weak board" in weak.message
    assert "shims" in weak.fix
    # by hand, W·L/8 over t·h²/6, half of everything spread over 1200 mm
    _, figure, _ = weak.message.replace("carries ", "|").replace(" kg", "|").split("|")[:3]
    span = 1200 - 18
    stress = float(figure) * GRAVITY * span / 8 * 6 / (18 * 60**2)
    assert float(weak.value.split()[0]) == pytest.approx(stress, rel=0.01)
    assert weak.limit == f"{0.6 * 11 * 0.45 / 1.3 / 1.5:.1f} N/mm²"
    assert "base-rails" not in rules(
        checked(built(replace(CASE, base=BaseSpec(BaseKind.TOE_KICK)), circumstances=KNOWN)))


def test_a_built_lid_says_what_its_supports_hold_and_an_open_bench_has_air() -> None:
    size = (1200.0, 450.0, 2200.0)
    shut = BenchSpec("boots", rails=2, lid=True, face=BenchFace.FULL)
    closet = built(shut, size=size, circumstances=KNOWN)
    lid = [p for p in closet.parts if p.role is Role.LID]
    depth = max(p.panel.length for p in lid)
    turns = 450e-9 * 27 * 1200 * depth * GRAVITY * depth / 2
    assert only(closet.findings, "lid-weight").value == f"{turns / 1000:.0f} N·m"
    assert only(closet.findings, "lid-air").severity is Severity.DANGER
    free = built(replace(shut, face=BenchFace.NONE), size=size, circumstances=KNOWN)
    assert "lid-air" not in rules(free.findings)
