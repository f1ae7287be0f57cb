"""All checks on random furnished closets: nothing goes without a word, nothing falls silent."""

from __future__ import annotations

import pytest

from closetbench.core.anchoring import TALL
from closetbench.core.checks import Checked, run_checks
from closetbench.core.circumstances import Circumstances
from closetbench.core.closet import Closet
from closetbench.core.figures import Figures
from closetbench.core.findings import Severity
from closetbench.core.lengths import SIXTEENTHS
from closetbench.core.loads import ShelfUse
from closetbench.core.people import ChildAge, Light
from closetbench.core.specs import CarcassSpec, PanelSpec
from closetbench.core.walls import Wall, WallKind
from tests.core.furnished import CATALOGUE, furnished

SEEDS = range(0, 80, 2)
KNOWN = Circumstances(
    ShelfUse.GENERAL, damp=False, wall=Wall(WallKind.WOOD_STUDS, 406.4, 100.0, 12.7),
    children=(ChildAge.THREE_TO_FOUR,), old_paint=False, outlets=False, light=Light.NONE,
)
COMPUTED = {
    "shelf-sag", "shelf-strength", "shelf-fixing", "corner-sag", "corner-strength", "corner-tips",
    "cleat-screws", "over-shelf-end", "base-rails", "hinge-screws", "frame-nails", "drawer-bottom",
    "drawer-load", "bench-sag", "bench-top-sag", "bench-top-strength", "rod-sag", "rod-screws",
    "heavy-carcass", "lid-weight",
}


def run(seed: int) -> tuple[Closet, Checked]:
    closet = furnished(seed)
    return closet, run_checks(closet, CATALOGUE, KNOWN, Figures(SIXTEENTHS))


@pytest.mark.parametrize("seed", SEEDS)
def test_every_component_is_spoken_of(seed: int) -> None:
    closet, checked = run(seed)
    about = {n for f in checked.findings for n in (f.subject, *f.parts)}
    # rods, benches and reused pieces reach the checks by way of the closet
    about |= {n for f in closet.findings for n in (f.subject, *f.parts)}
    for spec in closet.design.components:
        if not isinstance(spec, PanelSpec):
            assert any(n == spec.name or n.startswith(f"{spec.name}: ") for n in about), spec
    assert "component-not-checked" not in {f.rule for f in checked.findings}


@pytest.mark.parametrize("seed", SEEDS)
def test_every_tall_carcass_is_a_warning_at_least_and_its_fastening_is_in_the_bill(
    seed: int,
) -> None:
    closet, checked = run(seed)
    for spec in closet.design.components:
        if not isinstance(spec, CarcassSpec):
            continue
        box = next(c.box for c in closet.components if c.name == spec.name)
        (said,) = [f for f in checked.findings
                   if f.rule == "tipping" and f.subject == spec.name]
        if box.z1 - box.z0 >= TALL:
            assert said.severity in (Severity.WARNING, Severity.DANGER)
        if said.severity is Severity.WARNING:
            needs = {h.key: h.count for h in checked.hardware
                     if h.purpose.startswith(f"{spec.name} to the ")}
            assert needs
            if "anti_tip_anchor" in needs:
                assert f"{needs['anti_tip_anchor']} anti-tip anchors" in said.message


@pytest.mark.parametrize("seed", SEEDS)
def test_every_figure_is_in_the_readers_unit_and_says_how_it_scatters(seed: int) -> None:
    _, checked = run(seed)
    titles = sorted(
        (x.title for x in (*CATALOGUE.materials.values(), *CATALOGUE.hardware.values(),
                           *CATALOGUE.slides.values(), *CATALOGUE.hinges.values())),
        key=len, reverse=True,
    )
    for f in checked.findings:
        text = " | ".join((f.message, f.fix, f.value, f.limit, f.spread))
        for title in titles:
            text = text.replace(title, "")
        assert " mm" not in text, f
        assert " kg" not in text, f
        assert f.source or f.severity is Severity.NOT_CHECKED, f
        if f.rule in COMPUTED and f.severity is not Severity.NOT_CHECKED and f.limit:
            assert f.spread, f
        if f.severity is Severity.NOT_CHECKED:
            assert f.message.startswith("not checked: "), f
