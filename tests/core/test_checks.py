"""All checks on built closets: each applies where it should, and nothing passes in silence."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.anchoring import FreeUnit
from closetbench.core.bench_strength import Bench
from closetbench.core.checks import check_closet, run_checks
from closetbench.core.circumstances import Circumstances
from closetbench.core.drawers import DrawersSpec
from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.findings import Severity
from closetbench.core.inside import Spot
from closetbench.core.joinery import Joint
from closetbench.core.lengths import SIXTEENTHS
from closetbench.core.loads import ShelfUse
from closetbench.core.people import ChildAge, Light
from closetbench.core.rods_strength import Rod, RodKind
from closetbench.core.specs import (
    BackKind,
    BackSpec,
    BaseKind,
    BaseSpec,
    BaySpec,
    CarcassSpec,
    PanelSpec,
    TopKind,
)
from closetbench.core.walls import Wall, WallKind
from tests.core.wooden import CATALOGUE, FIGURES, built, checked, only, rules

STUDS = Wall(WallKind.WOOD_STUDS, 406.4, 100.0, 12.7)
KNOWN = Circumstances(
    ShelfUse.GENERAL, damp=False, wall=STUDS, children=(), old_paint=False, outlets=False,
    light=Light.NONE,
)
CASE = CarcassSpec("case", "ply18", bays=(BaySpec(fixed=2, adjustable=1), BaySpec(fixed=1)))


def test_what_is_not_known_is_not_checked() -> None:
    found = checked(built(CASE))
    unknown = [f for f in found if f.severity is Severity.NOT_CHECKED]
    assert rules(unknown) == [
        "wall-unknown", "shelf-use", "climate", "children-unknown", "light-clearance", "outlets",
        "old-paint",
    ]
    assert all(f.message.startswith("not checked") for f in unknown)
    assert only(found, "tipping").severity is Severity.DANGER


def test_with_everything_known_nothing_is_left_unchecked() -> None:
    found = checked(built(CASE, circumstances=KNOWN))
    assert not [f for f in found if f.severity is Severity.NOT_CHECKED]
    assert not [f for f in found if f.severity is Severity.DANGER]
    assert only(found, "tipping").severity is Severity.WARNING


def test_the_closet_carries_the_findings_and_the_fastening() -> None:
    closet = built(CASE, circumstances=KNOWN)
    assert {"tipping", "shelf-sag", "saw"} <= set(rules(closet.findings))
    screws, washers = (h for h in closet.hardware if h.purpose == "case to the studs")
    # studs at 100, 506.4 and 912.8 mm; a top, a middle and a bottom cleat in each bay
    assert screws.key.startswith("screw_")
    assert (screws.count, washers.key, washers.count) == (9, "washer_20", 9)
    assert screws in closet.fastening
    assert check_closet(closet, CATALOGUE, KNOWN) == run_checks(closet, CATALOGUE, KNOWN).findings


def test_equal_shelves_are_one_finding_that_names_them_all() -> None:
    found = [f for f in checked(built(CASE, circumstances=KNOWN)) if f.rule == "shelf-sag"]
    named = {f.subject: f.parts for f in found}
    assert named["case: bay 1 shelf 1"] == (
        "case: bay 1 shelf 1", "case: bay 1 shelf 2", "case: bay 2 shelf 1")
    assert set(named) == {"case: bottom", "case: bay 1 shelf 1", "case: bay 1 loose shelf 1"}
    grooved = next(f for f in found if f.subject == "case: bay 1 shelf 1")
    loose = next(f for f in found if f.subject == "case: bay 1 loose shelf 1")
    assert "could not turn" in grooved.message
    assert "pins are not checked" in loose.message


def test_a_top_with_room_above_it_carries_too() -> None:
    def loaded(case: CarcassSpec) -> set[str]:
        return {p for f in checked(built(case, circumstances=KNOWN)) if f.rule == "shelf-sag"
                for p in f.parts}

    low = replace(CASE, height=1500.0)
    assert "case: top" in loaded(low)
    assert "case: top" not in loaded(CASE)
    assert "case: top" not in loaded(replace(low, top=TopKind.NONE))


@pytest.mark.parametrize("kind", list(BaseKind))
def test_a_bottom_is_checked_unless_it_lies_on_the_floor(kind: BaseKind) -> None:
    case = replace(CASE, base=BaseSpec(kind))
    subjects = {f.subject for f in checked(built(case, circumstances=KNOWN))}
    assert ("case: bottom" in subjects) == (kind is not BaseKind.NONE)


def test_overloaded_shelves_are_a_danger() -> None:
    wide = CarcassSpec("case", "melamine18", bays=(BaySpec(fixed=2),))
    found = checked(built(wide, circumstances=KNOWN))
    assert only(found, "shelf-strength").severity is Severity.DANGER
    own = replace(KNOWN, shelf_use=None, shelf_load=20.0, sag_over=100.0)
    light = checked(built(wide, circumstances=own))
    assert "shelf-strength" not in rules(light)


def test_unknown_use_tells_what_the_weakest_shelf_would_do() -> None:
    wide = CarcassSpec("case", "melamine18", bays=(BaySpec(fixed=2),))
    said = only(checked(built(wide)), "shelf-use")
    assert "case: bay 1 shelf 1 would sag" in said.message
    assert "may break in time" in said.message
    damp = only(checked(built(wide, circumstances=Circumstances(damp=True))), "shelf-use")
    assert "would sag" not in damp.message


def test_shelves_on_screws_nails_and_cleats() -> None:
    def fixing(joint: Joint, material: str = "ply18", load: float = 150.0) -> list[Severity]:
        case = replace(CASE, material=material, shelf_joint=joint)
        found = checked(built(case, circumstances=replace(KNOWN, shelf_load=load)))
        return [f.severity for f in found if f.rule == "shelf-fixing"]

    assert fixing(Joint.GROOVE) == []
    # screws and nails of 50 mm into plywood hold, until they are overloaded
    assert fixing(Joint.SCREWS) == [Severity.NOTE]
    assert fixing(Joint.NAILS) == [Severity.NOTE]
    assert fixing(Joint.NAILS, load=500.0) == [Severity.DANGER]
    # a screw 4 x 30 through an 18 mm cleat reaches 3 diameters: no load is published
    assert fixing(Joint.CLEATS) == [Severity.WARNING]
    assert fixing(Joint.SCREWS, "melamine18") == [Severity.NOT_CHECKED]


def test_a_loaded_top_between_the_sides_hangs_on_its_screws() -> None:
    low = replace(CASE, height=1500.0, top=TopKind.BETWEEN)

    def fixing(case: CarcassSpec) -> list[str]:
        found = checked(built(case, circumstances=KNOWN))
        return [f.subject for f in found if f.rule == "shelf-fixing"]

    assert fixing(low) == []
    assert fixing(replace(low, joint=Joint.SCREWS)) == ["case: top"]
    # over the sides it lies on them; under a ceiling nothing lies on it
    assert fixing(replace(low, joint=Joint.SCREWS, top=TopKind.OVER)) == []
    assert fixing(replace(low, joint=Joint.SCREWS, height=None)) == []


@pytest.mark.parametrize(
    ("wall", "why"),
    [
        (Wall(), "not known"),
        (Wall(WallKind.BRICK), "not computed"),
        (Wall(WallKind.WOOD_STUDS), "not known"),
        (Wall(WallKind.WOOD_STUDS, 406.4, 100.0, 80.0), "no screw of the catalogue"),
        (Wall(WallKind.WOOD_STUDS, 1300.0, 605.0, 12.7), "no stud is sure"),
    ],
)
def test_fastening_that_cannot_be_computed_is_a_danger(wall: Wall, why: str) -> None:
    closet = built(CASE, circumstances=replace(KNOWN, wall=wall))
    danger = only(closet.findings, "tipping")
    assert danger.severity is Severity.DANGER
    assert why in danger.message


def test_without_strips_anchors_are_counted() -> None:
    thin = replace(CASE, back=BackSpec(BackKind.PANEL, "hardboard3"))
    closet = built(thin, circumstances=KNOWN)
    firm = only(closet.findings, "tipping")
    assert firm.severity is Severity.WARNING
    # 19.65·G²·D·L in 18 mm plywood of 600 kg/m³ at 8 %
    assert f"may hold {19.65 * (0.6 / 1.08) ** 2 * 4 * 16:.0f} N" in firm.message
    assert "2 anti-tip anchors made to ASTM F3096" in firm.message
    assert [(h.key, h.count) for h in closet.fastening] == [("anti_tip_anchor", 2)]
    # without a stud behind each, or with the wall not known, it is not settled
    for wall in (Wall(), Wall(WallKind.BRICK), Wall(WallKind.WOOD_STUDS, 1300.0, 605.0)):
        loose = built(thin, circumstances=replace(KNOWN, wall=wall))
        assert only(loose.findings, "tipping").severity is Severity.DANGER
        assert [(h.key, h.count) for h in loose.fastening] == [("anti_tip_anchor", 2)]
    thick = replace(CASE, back=BackSpec(BackKind.PANEL, "ply18"))
    screwed = built(thick, circumstances=KNOWN)
    assert only(screwed.findings, "tipping").severity is Severity.WARNING
    assert [h.purpose for h in screwed.fastening] == ["case to the studs"] * 2


def test_a_carcass_away_from_the_wall_has_nothing_to_be_screwed_to() -> None:
    off = replace(CASE, depth=300.0, against_back=False)
    danger = only(built(off, circumstances=KNOWN).findings, "tipping")
    assert danger.severity is Severity.DANGER
    assert "from the wall" in danger.message


def test_drawers_lean_a_carcass_over_and_are_checked_themselves() -> None:
    case = CarcassSpec("case", "ply18", height=1000.0)
    bank = DrawersSpec("bank", Spot("case"), count=3)
    size = (900.0, 500.0, 1200.0)
    alone = only(checked(built(case, size=size)), "tipping")
    full = checked(built(case, bank, size=size))
    danger = only(full, "tipping")
    assert "withstands" in alone.message
    assert "tips over" in danger.message
    assert "open drawer" in danger.message
    assert {f.rule for f in full if f.subject.startswith("bank")} == {"drawer-bottom"}


def test_a_drawer_fuller_than_its_slide_carries_is_a_danger() -> None:
    slides = dict(CATALOGUE.slides)
    slides["side_mount"] = replace(slides["side_mount"], load=5.0)
    weak = replace(CATALOGUE, slides=slides)
    case = CarcassSpec("case", "ply18", height=1000.0)
    closet = built(case, DrawersSpec("bank", Spot("case")), size=(900.0, 500.0, 1200.0))
    found = run_checks(closet, weak, KNOWN).findings
    assert only(found, "drawer-load").severity is Severity.DANGER


def test_rods_benches_and_units_of_the_circumstances() -> None:
    known = replace(
        KNOWN,
        rods=(Rod("rod", RodKind.PINE, 31.75, 1800.0, height=1650.0),),
        benches=(Bench("bench", "stud_2x4", 1000.0, 2, 38.1, 88.9, "pine_glued27", 200.0,
                       lid=True),),
        units=(FreeUnit("chest", 900.0, 420.0, 1000.0, 40.0, altered=True),),
    )
    closet = built(CASE, circumstances=known)
    by_rule = set(rules(closet.findings))
    assert {"rod-sag", "bench-sag", "lid-support", "lid-air", "altered-furniture"} <= by_rule
    assert only(closet.findings, "tipping", "chest").severity is Severity.DANGER
    assert [(h.key, h.purpose) for h in closet.fastening][2:] == [
        ("anti_tip_anchor", "chest to the wall")]


def test_children_and_paint_reach_the_findings() -> None:
    known = replace(KNOWN, children=(ChildAge.THREE_TO_FOUR,), old_paint=True)
    found = checked(built(CASE, circumstances=known))
    assert only(found, "old-paint").severity is Severity.DANGER
    assert only(found, "child-reach").parts
    assert "children-climb" in rules(found)


def test_a_single_panel_and_nothing_at_all() -> None:
    panel = built(PanelSpec("board", "mdf18", 800.0, 400.0))
    assert "tipping" not in rules(checked(panel))
    assert {"dust", "saw"} <= set(rules(checked(panel)))
    assert "dust" not in rules(checked(built()))


def test_wood_movement_is_said_where_it_matters() -> None:
    pine = built(CarcassSpec("case", "pine_glued18", depth=480.0), circumstances=KNOWN)
    note = only(checked(pine), "wood-movement")
    # 480 mm x 0.00216 x 4 %
    assert note.value == "4.1 mm"
    assert "wood-movement" not in rules(checked(built(CASE, circumstances=KNOWN)))


def test_figures_follow_the_user() -> None:
    closet = built(CASE, circumstances=KNOWN)
    inches = run_checks(closet, CATALOGUE, KNOWN, Figures(SIXTEENTHS)).findings
    assert '"' in next(f for f in inches if f.rule == "shelf-sag").value
    assert len(inches) == len(run_checks(closet, CATALOGUE, KNOWN, FIGURES).findings)


def test_every_finding_of_a_check_has_its_source_or_says_what_is_missing() -> None:
    for known in (KNOWN, Circumstances()):
        for finding in checked(built(CASE, circumstances=known)):
            assert finding.source or finding.severity is Severity.NOT_CHECKED, finding
            assert finding.subject
            assert finding.message


@pytest.mark.parametrize(
    "wrong", [{"shelf_load": -1.0}, {"sag_over": 0.0, "shelf_load": 5.0}, {"light_clearance": -1.0}]
)
def test_circumstances_that_cannot_be_are_refused(wrong: dict[str, float]) -> None:
    with pytest.raises(ClosetError):
        Circumstances(**wrong)  # type: ignore[arg-type]
