"""The report: dangers on top and again below, figures in the user's units."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest

from closetbench.core.closet import Closet, ClosetDesign
from closetbench.core.envelope import Envelope, Gap, Wall
from closetbench.core.findings import Finding, Severity
from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.resources import load_catalogue
from closetbench.shop.report import finding_lines, report_lines
from closetbench.stock.length_plan import BarPlan, LengthCut, LengthPlan, StockLength
from closetbench.stock.plan import CutPart, CutSettings, Plan, StockSheet
from closetbench.stock.sheets import plan_sheets
from tests.shop import samples

INCHES = LengthFormat("in-frac", Fraction(1, 16))
NOTE = Finding(Severity.NOTE, "B", "gap-wide", "the gap is wide", value="40 mm", limit="38.1 mm")
DANGER = Finding(
    Severity.DANGER, "A", "tips", "it can tip", source="a rule", fix="anchor it",
    spread="1.2 to 1.9",
)


def lines(form: LengthFormat, *findings: Finding) -> list[str]:
    envelope = Envelope(
        1016.0, 508.0, 2032.0, gaps=(Gap(Wall.LEFT, 0, 0, 6.35), Gap(Wall.LEFT, 0, 9, 12.7))
    )
    closet = Closet(ClosetDesign("x"), None, envelope, (), findings)
    return report_lines(closet, Plan(()), samples.catalogue(), form)


def test_figures_are_in_the_users_units():
    found = lines(INCHES)
    assert 'envelope      40" x 20" x 80" (width x depth x height)' in found
    assert 'gap left,     1/4" to 1/2"' in found
    assert "parts         0, 0 lb" in found
    assert found[-1] == "no findings"


def test_dangers_come_first_and_are_repeated():
    found = lines(INCHES, NOTE, DANGER)
    assert found[0].startswith("1 DANGER: read this before anything is cut")
    assert "local codes and a licensed professional come first" in found[0]
    assert found[1] == "DANGER: A: it can tip [1.2 to 1.9]"
    assert found[2:4] == ["    anchor it", "    source: a rule"]
    below = found[found.index("findings"):]
    assert below[1] == "  DANGER: A: it can tip [1.2 to 1.9]"
    assert below[-1] == "  NOTE: B: the gap is wide (40 mm; limit 38.1 mm)"


def test_dangers_are_counted_and_no_danger_is_no_headline():
    other = replace(DANGER, subject="B")
    assert lines(INCHES, DANGER, NOTE, other)[0].startswith("2 DANGERS: ")
    assert lines(INCHES, NOTE)[0].startswith("envelope")


def test_what_was_not_checked_says_so_once():
    finding = Finding(Severity.NOT_CHECKED, "wall", "unknown", "not checked: the wall")
    assert finding_lines(finding) == ["wall: not checked: the wall"]


def test_the_load_to_bring_home_counts_boards_mouldings_and_bars():
    """Tube 27 x 1.2 mm of steel: 0.7634 kg/m; what is at hand weighs nothing."""
    catalogue = load_catalogue()
    stock = [
        StockLength("t", "steel_27", 2500.0), StockLength("b", "pine_1x6", 2000.0, width=139.7),
        StockLength("m", "scribe_20", 2400.0, width=20.0),
        StockLength("o", "steel_27", 900.0, offcut=True),
    ]
    plan = LengthPlan(
        tuple(BarPlan(s.key, s, (LengthCut(s.key, 0.0, 500.0),)) for s in stock),
        dict.fromkeys(("steel_27", "pine_1x6", "scribe_20"), True))
    closet = Closet(ClosetDesign("x"), None, Envelope(1000.0, 500.0, 2000.0), (), ())
    found = report_lines(closet, Plan(()), catalogue, MILLIMETRES, plan)
    (load,) = (line for line in found if line.startswith("load"))
    pine, scribe = catalogue.material("pine_1x6"), catalogue.material("scribe_20")
    wood = sum(
        length * width * m.thickness * 1e-9 * m.density
        for m, length, width in ((pine, 2000.0, 139.7), (scribe, 2400.0, 20.0)))
    assert float(load.split()[1]) == pytest.approx(2.5 * 0.7634 + wood, abs=0.06)
    assert "bars to bring home; spares, hardware and edge band not counted" in load


def test_sheets_at_hand_are_told_and_what_is_proved_of_the_rest():
    at_hand = StockSheet("left", "ply18", 900, 700, quantity=1, offcut=True)
    parts = [CutPart("long", 2300, 600, "ply18"), CutPart("short", 300, 200, "ply18")]
    whole = StockSheet("whole", "ply18", 2440, 1220)
    plan = plan_sheets(parts, [whole, at_hand], CutSettings(seconds=0.1, tidy=0.0))
    closet = Closet(ClosetDesign("x"), None, Envelope(900.0, 500.0, 2000.0), (), ())
    said = "\n".join(report_lines(closet, plan, load_catalogue(), MILLIMETRES))
    title = load_catalogue().material("ply18").title
    assert f"2 of {title}, 1 of them at hand, yield" in said
    assert "no plan buys less" in said
