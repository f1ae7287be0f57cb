"""A single grooved panel: where its grooves lie, and what cannot be cut."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.errors import CatalogueError, ClosetError
from closetbench.core.joinery import JoineryRules
from closetbench.core.panel import Band, Box, Face, Grain, Groove, Rim
from closetbench.core.parts import Part, Role
from closetbench.core.single import build_panel
from closetbench.core.specs import PanelSpec
from tests.core.boards import CATALOGUE

SIDE = PanelSpec("side", "mdf", 1000.0, 300.0, grooves=3, first=100.0, spacing=250.0)


def built(**changes: object) -> Part:
    (part,) = build_panel(replace(SIDE, **changes), CATALOGUE).parts  # type: ignore[arg-type]
    return part


def refused(**changes: object) -> str:
    with pytest.raises(ClosetError) as caught:
        built(**changes)
    return str(caught.value)


def test_panel_lies_at_the_origin_as_it_was_given() -> None:
    component = build_panel(SIDE, CATALOGUE)
    (part,) = component.parts
    assert (component.name, part.name, part.role) == ("side", "panel", Role.PANEL)
    assert part.box() == component.box == Box(0, 0, 0, 1000, 300, 18)
    assert (part.panel.material, part.panel.grain) == ("mdf", Grain.NONE)


def test_grooves_are_spaced_from_near_wall_to_near_wall() -> None:
    assert built().panel.grooves == tuple(
        Groove(f"panel {i}", Face.UPPER, Rim.START, at, 18.2, 6.0)
        for i, at in ((1, 100.0), (2, 350.0), (3, 600.0))
    )


def test_grooves_may_be_measured_from_any_rim_and_be_stopped() -> None:
    panel = built(
        measured_from=Rim.REAR, grooves=2, first=20.0, spacing=40.0, face=Face.LOWER,
        stop_first=15.0, stop_last=25.0,
    ).panel
    boxes = [panel.groove_box(g) for g in panel.grooves]
    assert [(b.x0, b.x1, b.z0, b.z1) for b in boxes] == [(15, 975, 0, 6)] * 2
    assert [(b.y0, b.y1) for b in boxes] == pytest.approx([(261.8, 280.0), (221.8, 240.0)])


def test_width_follows_the_measured_thickness_of_the_mating_board() -> None:
    assert built(mating="ply").panel.grooves[0].width == pytest.approx(17.6 + 0.2)
    assert built(mating="hard").panel.grooves[0].width == pytest.approx(3.1 + 0.2)
    assert built(rules=JoineryRules(fit=0.5)).panel.grooves[0].width == 18.5


def test_depth_is_the_rules_unless_it_is_given() -> None:
    assert built(material="ply").panel.grooves[0].depth == 5.5
    assert built(depth=9.0).panel.grooves[0].depth == 9.0
    assert refused(depth=9.5) == (
        "side: groove depth is 9.5 mm; must be above 0 and at most 9 mm in a panel 18 mm thick"
    )


def test_rabbets_lie_at_their_rims_without_fit() -> None:
    panel = built(grooves=0, rabbets=(Rim.END, Rim.REAR), mating="ply").panel
    assert panel.grooves == (
        Groove("panel at the end", Face.UPPER, Rim.END, 0.0, 17.6, 6.0),
        Groove("panel at the rear", Face.UPPER, Rim.REAR, 0.0, 17.6, 6.0),
    )
    # the two cross in the corner, and its volume is taken out once
    cut = 6.0 * (17.6 * 300 + 17.6 * 1000 - 17.6 * 17.6)
    assert panel.volume == pytest.approx(1000 * 300 * 18 - cut)


def test_bands_are_those_asked_for() -> None:
    panel = built(material="ply", bands=(Rim.FRONT, Rim.END)).panel
    assert panel.bands == (Band(Rim.FRONT, "half", 0.5), Band(Rim.END, "half", 0.5))
    assert panel.visible == {Rim.FRONT, Rim.END}
    assert (panel.cut_length, panel.cut_width) == (999.5, 299.5)
    assert built(bands=(Rim.FRONT,)).panel.bands == ()  # needs none, and none was named
    assert built(bands=(Rim.FRONT,), band="two").panel.cut_width == 298.0
    assert built(material="ply", bands=(Rim.FRONT,), band="").panel.bands == ()


def test_grain_is_kept_where_the_board_has_any() -> None:
    assert built(material="ply", grain=Grain.WIDTH).panel.grain is Grain.WIDTH
    assert built(material="ply", grain=Grain.NONE).panel.grain is Grain.NONE


def test_plain_panel_needs_no_joinery() -> None:
    thin = built(material="hard", grooves=0, rules=JoineryRules(depth=9.0))
    assert thin.panel.grooves == ()
    assert thin.panel.thickness == 3.1


@pytest.mark.parametrize(
    ("changes", "message"),
    [
        ({"grooves": -1}, "side: number of grooves is -1; must be 0 or more"),
        ({"length": 0.0, "grooves": 0}, "side: length is 0 mm; must be above 0"),
        ({"width": -300.0}, "side: width is -300 mm; must be above 0"),
        ({"spacing": 15.0},
         "side, grooves for panel 1 and panel 2: distance is less than 0 mm; must not run into "
         "each other; move one"),
        ({"first": 490.0},
         "side, groove for panel 3: position is 990 to 1008.2 mm; must lie within 0 and 1000 mm"),
        ({"first": -1.0},
         "side, groove for panel 1: position is -1 to 17.2 mm; must lie within 0 and 1000 mm"),
        ({"stop_first": 300.0},
         "side, groove for panel 1: stops is 300 and 0 mm; must be 0 or more and leave some of "
         "the run of 300 mm"),
        ({"rabbets": (Rim.START, Rim.START)},
         "side, grooves for panel at the start and panel at the start: distance is less than "
         "0 mm; must not run into each other; move one"),
        ({"bands": (Rim.FRONT, Rim.FRONT), "band": "two"},
         "side: edge band on the front is given twice; must be given once"),
    ],
)
def test_panel_that_cannot_be_cut(changes: dict[str, object], message: str) -> None:
    assert refused(**changes) == message


def test_unknown_boards_are_named() -> None:
    for changes in ({"material": "oak"}, {"mating": "oak"}):
        with pytest.raises(CatalogueError) as caught:
            built(**changes)
        assert (caught.value.subject, caught.value.prop) == ("side", "material")
        assert caught.value.value == "oak"
