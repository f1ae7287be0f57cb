"""What follows from dragging: worked by hand for 18 mm board in 1000 x 600 x 2000 mm."""

from __future__ import annotations

from dataclasses import replace

import pytest

from closetbench.core.carcass import build_carcass
from closetbench.core.drags import Change, carcass_drags, panel_drags
from closetbench.core.single import build_panel
from closetbench.core.specs import BaySpec, PanelSpec
from tests.core.boards import CATALOGUE, SPACE, plain


def drags(locked=(), **changes):
    spec = plain(**changes)
    return {d.key: d for d in carcass_drags(spec, build_carcass(spec, SPACE, CATALOGUE), locked)}


def bays(*widths):
    return tuple(BaySpec(w) for w in widths)


def test_outer_faces():
    found = drags(width=800.0, height=1500.0, depth=400.0, x=100.0)
    assert set(found) == {"width", "height", "depth"}
    # against the back: it stands from y = 200 to 600, and grows towards the front
    assert found["width"].at == (900.0, 400.0, 750.0)
    assert found["height"].at == (500.0, 400.0, 1500.0)
    assert found["depth"].at == (900.0, 200.0, 1500.0)
    assert found["depth"].way == (0.0, -1.0, 0.0)
    assert found["depth"].values(-50.3, 1.0) == {"depth": 350.0}
    at_front = drags(depth=400.0, against_back=False)["depth"]
    assert (at_front.at[1], at_front.way[1]) == (400.0, 1.0)


def test_what_follows_a_formula_has_no_handle():
    assert set(drags(locked={"width", "depth"})) == {"height"}
    two = bays(400.0, None)
    assert "divider 1" in drags(bays=two)
    # with one of two without a width locked, the other takes it
    open_ones = bays(None, None)
    (change,) = drags(bays=open_ones, locked={"bays.0.width"})["divider 1"].changes
    assert change.path == "bays.1.width"
    # given widths on both sides of it and no bay to share: there is nothing to give
    assert "divider 1" not in drags(bays=two, locked={"bays.0.width"})


def test_steps():
    drag = drags(width=801.4)["width"]
    assert drag.values(10.0, 1.0) == {"width": 811.0}
    sixteenth = 25.4 / 16
    (value,) = drag.values(10.0, sixteenth).values()
    assert value == pytest.approx(511 * sixteenth)


@pytest.mark.parametrize(
    "widths",
    [(None, None), (300.0, None), (None, 300.0), (None, None, None), (200.0, None, 300.0),
     (None, 200.0, 300.0), (None, None, None, None, None), (200.0, 250.0, None, None)],
)
def test_dividers_go_as_far_as_they_are_dragged(widths):
    spec = plain(bays=bays(*widths))
    before = carcass_drags(spec, build_carcass(spec, SPACE, CATALOGUE))
    for i in range(1, len(widths)):
        drag = next(d for d in before if d.key == f"divider {i}")
        values = drag.values(7.0, 1e-6)
        changed = [
            replace(b, width=values.get(f"bays.{k}.width", b.width))
            for k, b in enumerate(spec.bays)
        ]
        moved = replace(spec, bays=tuple(changed))
        after = carcass_drags(moved, build_carcass(moved, SPACE, CATALOGUE))
        at = next(d for d in after if d.key == drag.key).at
        assert at[0] - drag.at[0] == pytest.approx(7.0, abs=1e-4)


def test_between_two_given_bays_both_change():
    # 1000 less four boards of 18 leaves 928
    drag = drags(bays=bays(300.0, 200.0, 428.0))["divider 2"]
    assert drag.changes == (Change("bays.1.width", 200.0), Change("bays.2.width", 428.0, -1.0))
    assert drag.values(9.6, 1.0) == {"bays.1.width": 210.0, "bays.2.width": 418.0}


def test_panel():
    spec = PanelSpec("shelf", plain().material, 600.0, 300.0)
    panel = build_panel(spec, CATALOGUE).parts[0].panel
    length, width = panel_drags(panel)
    assert length.at == (600.0, 150.0, 18.0)
    assert width.values(-20.4, 1.0) == {"width": 280.0}
    assert [d.key for d in panel_drags(panel, {"length"})] == ["width"]
