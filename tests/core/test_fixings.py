"""Screws and nails in wood and boards, and the wall behind."""

from __future__ import annotations

import pytest

from closetbench.core.errors import ClosetError
from closetbench.core.findings import Severity
from closetbench.core.fixings import (
    FASTENERS,
    SAFETY,
    Fastener,
    FastenerKind,
    board_lateral,
    board_withdrawal,
    head_pull_through,
    lateral,
    lateral_allowable,
    lateral_k,
    particleboard_withdrawal,
    shortest_screw,
    withdrawal,
    withdrawal_allowable,
)
from closetbench.core.loaded import sideways_verdict
from closetbench.core.materials import Catalogue
from closetbench.core.walls import (
    STUD_GRAVITY,
    WHOM_TO_ASK,
    Wall,
    WallKind,
    studs_hit,
    through_board,
    wall_findings,
    wall_screw,
)
from tests.core.wooden import CATALOGUE, rules

SCREW = Fastener(FastenerKind.SCREW, 4.0, 50.0)
SCREWS, NAILS = FastenerKind.SCREW, FastenerKind.NAIL
STUDS = Wall(WallKind.WOOD_STUDS, 406.4, 100.0, 12.7)


def test_the_catalogues_fasteners_have_their_figures() -> None:
    keys = {k for k in CATALOGUE.hardware if k.startswith(("screw_", "nail_"))}
    assert keys == set(FASTENERS)
    for key, fastener in FASTENERS.items():
        title = CATALOGUE.item(key).title
        assert f"{fastener.length:g} mm" in title or " in" in title


def test_allowable_is_a_fixed_share_of_the_handbooks_ultimate() -> None:
    for kind in FastenerKind:
        ultimate = withdrawal(kind, 0.45, 4.0, 25.0)
        assert ultimate / withdrawal_allowable(kind, 0.45, 4.0, 25.0) == pytest.approx(
            SAFETY[kind], rel=1e-3)


def test_lateral_rows() -> None:
    # between two rows of the table the lighter wood's holds
    assert lateral_k(FastenerKind.SCREW, 0.425) == lateral_k(FastenerKind.SCREW, 0.40)
    assert lateral(FastenerKind.NAIL, 0.40, 2.0) == pytest.approx(50.04 * 2**1.5)
    assert lateral(FastenerKind.SCREW, 0.60, 4.0, hardwood=True) == pytest.approx(44.13 * 16)
    for gravity, hardwood in ((0.20, False), (0.60, False), (0.30, True), (0.90, True)):
        with pytest.raises(ClosetError, match="table of lateral loads"):
            lateral_k(FastenerKind.SCREW, gravity, hardwood)


def test_short_reach_carries_less_and_too_short_nothing() -> None:
    full = lateral_allowable(SCREWS, 0.45, 4.0, 28.0)
    assert lateral_allowable(SCREWS, 0.45, 4.0, 56.0) == full
    assert lateral_allowable(SCREWS, 0.45, 4.0, 21.0) == pytest.approx(full * 0.75)
    assert lateral_allowable(SCREWS, 0.45, 4.0, 15.9) == 0.0
    whole = lateral_allowable(NAILS, 0.40, 2.0, 28.0)
    assert lateral_allowable(NAILS, 0.40, 2.0, 14.0) == pytest.approx(whole / 2)
    assert lateral_allowable(NAILS, 0.40, 2.0, 9.0) == 0.0
    # birch plywood counts as a hardwood of its weight
    assert lateral_allowable(SCREWS, 0.60, 4.0, 28.0) == pytest.approx(0.75 * 44.13 * 16)
    with pytest.raises(ClosetError, match="table of lateral loads"):
        lateral_allowable(SCREWS, 0.20, 4.0, 28.0)


def test_a_head_is_pulled_through_a_thin_board() -> None:
    thin, thick = head_pull_through(0.5, 20.0, 12.0), head_pull_through(0.5, 20.0, 24.0)
    assert thick == pytest.approx(2 * thin)
    # no more than 2.5 diameters count
    assert head_pull_through(0.5, 10.0, 50.0) == head_pull_through(0.5, 10.0, 25.0)
    assert through_board(CATALOGUE.material("melamine18")) is None
    ply = through_board(CATALOGUE.material("ply18"))
    assert ply == pytest.approx(head_pull_through(0.6 / 1.08, 20.0, 18.0))


def test_boards_hold_by_kind() -> None:
    melamine, mdf = CATALOGUE.material("melamine18"), CATALOGUE.material("mdf18")
    ply = CATALOGUE.material("ply18")
    ten, half = (Fastener(SCREWS, d, 50.0) for d in (4.826, 2.413))
    face, source = board_withdrawal(melamine, SCREW, 16.0)
    edge, _ = board_withdrawal(melamine, SCREW, 30.0, edge=True)
    assert "particleboard" in source
    assert face == pytest.approx(
        particleboard_withdrawal(melamine.density / 1080, 4.0, 16.0) / SAFETY[SCREWS])
    assert edge > 0
    assert board_withdrawal(mdf, ten, 17.0)[0] == pytest.approx(
        1335 / SAFETY[SCREWS], rel=1e-3)
    assert board_withdrawal(mdf, half, 17.0, edge=True)[0] == pytest.approx(
        500 / SAFETY[SCREWS], rel=1e-3)
    assert board_withdrawal(ply, SCREW, 20.0, edge=True)[0] == pytest.approx(
        0.75 * board_withdrawal(ply, SCREW, 20.0)[0])
    # lighter boards of the kind hold less
    assert board_withdrawal(ply, SCREW, 20.0, density=400)[0] == pytest.approx(
        board_withdrawal(ply, SCREW, 20.0)[0] * (400 / 600) ** 2)
    nail = FASTENERS["nail_20x50"]
    assert board_withdrawal(ply, nail, 20.0)[0] == pytest.approx(withdrawal_allowable(
        NAILS, 600 / 1080, 2.0, 20.0))
    for board, fastener in (("hardboard6", SCREW), ("melamine18", nail), ("mdf18", nail)):
        with pytest.raises(ClosetError, match="no withdrawal is published"):
            board_withdrawal(CATALOGUE.material(board), fastener, 5.0)


def test_sideways_in_particleboard_and_mdf_nothing_is_published() -> None:
    for key in ("melamine18", "mdf18", "hardboard6"):
        with pytest.raises(ClosetError, match="no formula is published"):
            board_lateral(CATALOGUE.material(key), SCREW, 30.0)
    ply = CATALOGUE.material("ply18")
    end, source = board_lateral(ply, SCREW, 32.0, end=True)
    assert end == pytest.approx(board_lateral(ply, SCREW, 32.0)[0] * 2 / 3)
    assert source
    nail, _ = board_lateral(ply, FASTENERS["nail_20x50"], 32.0)
    assert nail == lateral_allowable(NAILS, 600 / 1080, 2.0, 32.0)


@pytest.mark.parametrize(("gravity", "d", "depth"), [(0, 4, 20), (0.4, -4, 20), (0.4, 4, 0)])
def test_no_fastener_is_refused(gravity: float, d: float, depth: float) -> None:
    for kind in FastenerKind:
        for call in (withdrawal, withdrawal_allowable, lateral_allowable):
            with pytest.raises(ClosetError):
                call(kind, gravity, d, depth)
    for plain in (particleboard_withdrawal, head_pull_through):
        with pytest.raises(ClosetError):
            plain(gravity, d, depth)
    with pytest.raises(ClosetError):
        Fastener(FastenerKind.SCREW, 0.0, 50.0)


def test_the_shortest_screw_of_the_catalogue() -> None:
    assert shortest_screw(CATALOGUE.hardware, 41.0) == "screw_4x50"
    assert shortest_screw(CATALOGUE.hardware, 41.0, 5.0) == "screw_5x70"
    assert shortest_screw(CATALOGUE.hardware, 200.0) is None
    assert shortest_screw({}, 10.0) is None


def test_studs_that_cleats_are_sure_to_find() -> None:
    # surveyed: middles at 100, 506.4, 912.8
    assert studs_hit(STUDS, [(0, 1000)]) == 3
    assert studs_hit(STUDS, [(95, 300)]) == 0
    assert studs_hit(STUDS, [(0, 300), (480, 520), (600, 950)]) == 3
    assert studs_hit(STUDS, [(0, 105)]) == 0
    # not surveyed: as few as there can be
    blind = Wall(WallKind.WOOD_STUDS, 406.4)
    assert studs_hit(blind, [(0, 400)]) == 0
    assert studs_hit(blind, [(0, 440)]) == 1
    assert studs_hit(blind, [(0, 1000)]) == 2
    assert studs_hit(Wall(WallKind.WOOD_STUDS), [(0, 3000)]) == 0


def test_the_screw_reaches_seven_diameters_into_the_stud() -> None:
    screw = wall_screw(STUDS, 18.0, 7.0, CATALOGUE)
    assert screw is not None
    fastener = FASTENERS[screw.key]
    assert fastener.length - 18 - 7 - 12.7 >= 7 * fastener.diameter - 1e-6
    assert screw.pull == pytest.approx(
        withdrawal_allowable(SCREWS, STUD_GRAVITY, fastener.diameter, screw.reach))
    assert screw.sideways == pytest.approx(
        lateral_allowable(SCREWS, STUD_GRAVITY, fastener.diameter, screw.reach))
    thick = wall_screw(Wall(WallKind.WOOD_STUDS, 406.4), 18.0, 7.0, CATALOGUE)
    assert thick is not None
    assert FASTENERS[thick.key].length >= fastener.length
    assert wall_screw(STUDS, 18.0, 80.0, CATALOGUE) is None
    assert wall_screw(STUDS, 18.0, 7.0, Catalogue({})) is None


@pytest.mark.parametrize("kind", [None, *WallKind])
def test_every_wall_is_computed_or_says_whom_to_ask(kind: WallKind | None) -> None:
    found = wall_findings(Wall(kind), "wall")
    assert [f.severity for f in found] == [Severity.NOT_CHECKED, Severity.WARNING]
    assert found[0].message.startswith("not checked: ")
    assert "licensed professional" in found[0].message
    if kind in WHOM_TO_ASK:
        assert WHOM_TO_ASK[kind] in found[0].message
    assert ("silica" in found[0].message) == (
        kind in (WallKind.BRICK, WallKind.CONCRETE, WallKind.HOLLOW_BLOCK))


def test_a_surveyed_stud_wall_needs_no_word() -> None:
    assert rules(wall_findings(STUDS, "wall")) == ["wires"]
    assert rules(wall_findings(Wall(WallKind.WOOD_STUDS), "wall")) == ["studs-unknown", "wires"]


@pytest.mark.parametrize(
    "wrong", [{"stud_spacing": 0.0}, {"stud_spacing": float("nan")}, {"first_stud": -3.0},
              {"lining": 500.0}],
)
def test_what_is_no_wall_is_refused(wrong: dict[str, float]) -> None:
    with pytest.raises(ClosetError):
        Wall(WallKind.WOOD_STUDS, **wrong)


def test_screws_work_loose_before_they_let_go() -> None:
    assert sideways_verdict(100.0, 100.0) == (Severity.NOTE, "")
    assert sideways_verdict(130.0, 100.0)[0] is Severity.WARNING
    # beyond the handbook's load at 0.38 mm of slip, which is 4/3 of the allowable
    assert sideways_verdict(134.0, 100.0)[0] is Severity.DANGER
