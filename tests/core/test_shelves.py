"""Shelves: verdicts, bounds, remedies, and the texts that say so."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from closetbench.core.errors import ClosetError
from closetbench.core.findings import Severity
from closetbench.core.loads import CRITERIA, Criterion, ShelfUse
from closetbench.core.materials import Catalogue
from closetbench.core.shelves import (
    LONGEST_TRIED,
    Hold,
    Shelf,
    Strip,
    check,
    findings,
    remedies,
)
from tests.core.wooden import CATALOGUE, FIGURES, board, only, rules

LINEN, GENERAL = CRITERIA[ShelfUse.LINEN], CRITERIA[ShelfUse.GENERAL]
MELAMINE = CATALOGUE.material("melamine18")
LONG = Shelf("case: shelf", MELAMINE, 900, 300)


def test_a_grooved_shelf_lies_between_two_bounds() -> None:
    result = check(LONG, LINEN)
    assert result.held is not None
    assert result.held < result.sag / 4
    assert check(replace(LONG, hold=Hold.PINS), LINEN).held is None
    assert check(replace(LONG, hold=Hold.CLEATS), LINEN).held is None


def test_the_soft_and_the_stiff_board_bracket_the_verdict() -> None:
    result = check(replace(LONG, board=CATALOGUE.material("pine_glued18")), LINEN)
    assert result.stiff < result.sag < result.soft
    # 22 % of variation: 1/(1 − 1.645·0.22) softer, bending alone
    assert result.soft / result.sag == pytest.approx(1 / (1 - 1.645 * 0.22), rel=0.01)


def test_the_longest_span_is_just_within_limit_and_strength() -> None:
    books = CRITERIA[ShelfUse.BOOKS]
    for key, use in (("ply18", GENERAL), ("melamine18", LINEN), ("mdf18", books)):
        shelf = Shelf("s", CATALOGUE.material(key), 500, 300)
        span = check(shelf, use).longest
        assert span is not None
        at = check(replace(shelf, span=span), use)
        beyond = check(replace(shelf, span=span + 1), use)
        assert at.passes
        assert at.strong
        assert not (beyond.passes and beyond.strong)


def test_strength_can_limit_the_span_where_sag_does_not() -> None:
    lenient = replace(GENERAL, span_over=10.0)
    result = check(replace(LONG, span=1000), lenient)
    assert result.passes
    assert not result.strong
    assert result.longest is not None
    assert result.longest < 1000


def test_a_lip_and_a_cleat_stiffen() -> None:
    strip = Strip(18, 40, MELAMINE.e_along, 100)
    plain, lipped = check(LONG, LINEN).sag, check(replace(LONG, lip=strip), LINEN).sag
    both = check(replace(LONG, lip=strip, cleat=strip), LINEN).sag
    assert both < lipped < plain


def test_remedies_pass_and_each_is_the_least_of_its_kind() -> None:
    found = remedies(LONG, LINEN, CATALOGUE, FIGURES)
    assert [r.text.split(" ")[0] for r in found] == ["veneer-core", "a", "a", "1"]
    assert all(r.sag <= LINEN.limit(LONG.span) for r in found)
    lip = next(r for r in found if r.text.startswith("a front lip"))
    assert lip.text == "a front lip 18 mm x 40 mm"
    lower = Strip(18, 30, MELAMINE.e_along, 100)
    assert not check(replace(LONG, lip=lower), LINEN).passes


def test_a_thicker_board_of_the_same_kind_comes_first() -> None:
    thick = replace(board(1600, 25.0, MELAMINE.kind), key="m25", title="25 mm melamine")
    catalogue = Catalogue({"m18": MELAMINE, "m25": thick})
    assert remedies(LONG, LINEN, catalogue, FIGURES)[0].text == "25 mm melamine"


def test_a_board_too_small_for_the_shelf_is_no_remedy() -> None:
    thick = replace(board(1600, 25.0, MELAMINE.kind), key="m25", title="25 mm melamine")
    catalogue = Catalogue({"m25": thick})
    wide = replace(LONG, depth=1300)
    texts = [r.text for r in remedies(wide, LINEN, catalogue, FIGURES)]
    assert "25 mm melamine" not in texts


def test_excess_sag_is_a_warning_with_remedies() -> None:
    found = list(findings([LONG, replace(LONG, name="case: other")], LINEN, CATALOGUE, FIGURES))
    (sag,) = found
    assert (sag.severity, sag.rule, sag.subject) == (Severity.WARNING, "shelf-sag", "case: shelf")
    assert sag.parts == ("case: shelf", "case: other")
    assert (sag.value, sag.limit) == ("7.9 mm", "4.7 mm")
    assert "2 alike" in sag.message
    assert "1 divider" in sag.fix
    assert "longest span that passes is 754 mm" in sag.fix
    assert sag.spread.startswith("3.1 mm to 7.9 mm")
    assert "Table 9-1" in sag.source


def test_a_shelf_that_may_break_is_a_danger() -> None:
    found = list(findings([LONG], GENERAL, CATALOGUE, FIGURES))
    assert rules(found) == ["shelf-strength", "shelf-sag"]
    danger = found[0]
    assert danger.severity is Severity.DANGER
    # 40 lb/ft² and its own weight on 900 mm: q·L²/8 over t²/6, 11·0.45/(1.3·1.5) allowed
    q = GENERAL.pressure + 660e-9 * 18 * 9.80665
    assert danger.value == f"{q * 900**2 / 8 / 54:.1f} N/mm²"
    assert danger.limit == "2.5 N/mm²"


def test_a_good_shelf_still_shows_its_figures() -> None:
    short = replace(LONG, span=500)
    (note,) = findings([short], LINEN, CATALOGUE, FIGURES)
    assert note.severity is Severity.NOTE
    assert note.value
    assert note.limit
    assert note.spread
    assert "longest span" in note.fix
    endless = Criterion("feathers", 1e-9, 100, "test")
    ply = replace(short, board=CATALOGUE.material("ply18"))
    (far,) = findings([ply], endless, CATALOGUE, FIGURES)
    assert f"{LONGEST_TRIED:g} mm" in far.fix


def test_a_pass_that_soft_boards_would_fail_says_so() -> None:
    pine = Shelf("s", CATALOGUE.material("pine_glued18"), 1000, 300)
    longest_span = check(pine, GENERAL).longest
    assert longest_span is not None
    (note,) = findings([replace(pine, span=longest_span)], GENERAL, CATALOGUE, FIGURES)
    assert note.severity is Severity.NOTE
    assert "softest boards published would not pass" in note.message


def test_pins_are_said_not_to_be_checked() -> None:
    (found,) = findings([replace(LONG, span=500, hold=Hold.PINS)], LINEN, CATALOGUE, FIGURES)
    assert "pins are not checked" in found.message


def test_damp_air_is_not_checked_for_boards_made_for_dry_rooms() -> None:
    found = only(findings([LONG], LINEN, CATALOGUE, FIGURES, damp=True), "shelf-damp")
    assert found.severity is Severity.NOT_CHECKED
    ply = Shelf("s", CATALOGUE.material("ply18"), 900, 300)
    dry, wet = check(ply, LINEN), check(ply, LINEN, damp=True)
    assert wet.sag > dry.sag / 0.86
    assert wet.allowed == pytest.approx(dry.allowed * 0.75)
    # and no dry board is offered as a remedy
    long = replace(ply, span=1400)
    texts = [r.text for r in remedies(long, LINEN, CATALOGUE, FIGURES, damp=True)]
    assert texts
    assert not any("MDF" in t or "melamine" in t for t in texts)


def test_a_shelf_without_size_is_refused() -> None:
    for wrong in ({"span": -900.0}, {"depth": 0.0}, {"span": math.nan}):
        with pytest.raises(ClosetError):
            check(replace(LONG, **wrong), LINEN)


def test_nothing_may_help() -> None:
    hopeless = Criterion("anvils", 0.09, 2000, "test")
    (strength, _) = findings([LONG], hopeless, Catalogue({}), FIGURES)
    assert "no board of the catalogue" in strength.fix


def test_the_piece_that_breaks_first_is_measured_by_its_own_strength() -> None:
    # a stiff lip draws the load: it is stressed more than the board, and may bear more
    stiff = Strip(19, 40, 12550, 700, allowed=5.0)
    wide = replace(LONG, span=1400)
    plain = check(wide, GENERAL)
    lipped = check(replace(wide, lip=stiff), GENERAL)
    assert (plain.in_strip, lipped.in_strip) == (False, True)
    assert lipped.allowed == 5.0
    assert lipped.breaking == pytest.approx(7.5)
    assert lipped.stress > plain.stress
    said = only(findings([replace(wide, lip=stiff)], GENERAL, CATALOGUE, FIGURES),
                "shelf-strength")
    assert said.spread.startswith("in its lip")
    assert said.severity is Severity.DANGER
    # where the shelf alone would carry, a broken lip is no danger
    short = replace(LONG, span=850, lip=replace(stiff, allowed=1.0))
    assert check(short, GENERAL).breaks
    spared = only(findings([short], GENERAL, CATALOGUE, FIGURES), "shelf-strength")
    assert spared.severity is Severity.WARNING
    assert "its lip may break" in spared.message


def test_a_shelf_warns_before_it_is_a_danger() -> None:
    # what docs/criteria.md says of 18 mm melamine-faced particleboard under 40 lb/ft²
    def spans(test: str) -> list[int]:
        return [s for s in range(500, 1200, 5)
                if getattr(check(replace(LONG, span=s), GENERAL), test)]

    assert max(spans("passes")) == pytest.approx(600, abs=5)
    assert max(spans("strong")) == pytest.approx(735, abs=5)
    assert min(spans("breaks")) == pytest.approx(900, abs=5)
    # and of the same shelf with linen: neither in ordinary widths
    assert check(replace(LONG, span=1000), LINEN).strong
    warned = only(findings([replace(LONG, span=800)], GENERAL, CATALOGUE, FIGURES),
                  "shelf-strength")
    assert warned.severity is Severity.WARNING
    assert "reserve" in warned.message
    assert "mean strengths published 3.5 N/mm² to 5.6 N/mm²" in warned.spread


def test_shelves_alike_come_to_the_same_whatever_their_names() -> None:
    other = replace(LONG, name="another")
    assert check(other, GENERAL) == check(LONG, GENERAL)
    assert check(replace(other, span=other.span + 1), GENERAL) != check(LONG, GENERAL)
    assert check(other, LINEN) != check(LONG, GENERAL)
    # what cannot be is said of the one that was asked for
    for name in ("one", "two"):
        with pytest.raises(ClosetError, match=name):
            check(replace(LONG, name=name, span=-1.0), GENERAL)
