"""The whole design: what comes in is built in order, and what cannot be is named."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from closetbench.core.closet import Closet, ClosetDesign, build_closet, build_envelope
from closetbench.core.envelope import Clearances, Envelope, fit_envelope
from closetbench.core.errors import ClosetError
from closetbench.core.findings import Severity
from closetbench.core.panel import Rim
from closetbench.core.room import build_room
from closetbench.core.specs import BackKind, BackSpec, BaySpec, PanelSpec
from closetbench.core.survey import Survey
from tests.core.boards import CATALOGUE, closet, plain

SIZE = (1000.0, 600.0, 2000.0)
LOOSE = PanelSpec("loose", "mdf", 800.0, 250.0)
SURVEY = Survey(
    *[1900.0] * 6, *[2400.0] * 4, depth_left=600.0, depth_right=600.0,
    diagonal_to_right=math.hypot(1900.0, 600.0), diagonal_to_left=math.hypot(1900.0, 600.0),
)


def design(**changes: object) -> ClosetDesign:
    return replace(ClosetDesign("closet", size=SIZE), **changes)  # type: ignore[arg-type]


def built(**changes: object) -> Closet:
    return build_closet(design(**changes), CATALOGUE)


def refused(**changes: object) -> str:
    with pytest.raises(ClosetError) as caught:
        built(**changes)
    return str(caught.value)


def rules(found: Closet) -> list[str]:
    return [f.rule for f in found.findings]


def test_size_stands_for_the_envelope() -> None:
    room, envelope = build_envelope(design())
    assert room is None
    assert envelope == Envelope(1000.0, 600.0, 2000.0)


def test_survey_gives_room_and_envelope() -> None:
    keep = Clearances(left=8.0, right=9.0, back=20.0, top=30.0)
    found = built(survey=SURVEY, size=None, clearances=keep, depth_limit=450.0)
    assert found.room == build_room(SURVEY)
    assert found.room is not None
    assert found.envelope == fit_envelope(found.room, keep, 450.0)
    assert found.envelope.depth == 450.0
    # a survey counts for more than a size
    assert built(survey=SURVEY).envelope.width > 1800.0


def test_empty_closet_is_a_closet() -> None:
    found = built()
    assert (found.parts, found.hardware, found.components) == ((), (), ())


def test_carcasses_stand_from_left_to_right() -> None:
    found = closet(plain(width=400.0), plain(name="B"))
    assert [c.name for c in found.components] == ["A", "B"]
    assert [(c.box.x0, c.box.x1) for c in found.components] == [(0, 400), (400, 1000)]
    assert [p.component for p in found.parts] == ["A"] * 7 + ["B"] * 7


def test_single_panels_lie_in_front_of_the_closet_one_after_the_other() -> None:
    found = built(components=(LOOSE, plain(), replace(LOOSE, name="other", width=100.0)))
    first, case, second = found.components
    assert (first.box.y0, first.box.y1) == (-550.0, -300.0)
    assert (second.box.y0, second.box.y1) == (-950.0, -850.0)
    assert case.box.x0 == 0.0
    assert first.parts[0].box() == first.box


def test_same_design_gives_the_same_closet() -> None:
    made = design(components=(plain(bays=(BaySpec(fixed=2, adjustable=2),)), LOOSE))
    assert build_closet(made, CATALOGUE) == build_closet(made, CATALOGUE)


def test_hardware_of_one_purpose_is_added_up() -> None:
    bays = (BaySpec(adjustable=2), BaySpec(adjustable=1))
    found = closet(plain(width=500.0, bays=bays), plain(name="B", bays=bays))
    pins = [(h.key, h.count) for h in found.hardware if h.purpose == "adjustable shelves"]
    assert pins == [("shelf_pin_5", 4 * 6)]
    keys = [(h.key, h.purpose) for h in found.hardware]
    assert len(set(keys)) == len(keys)


def test_board_that_nobody_measured_is_pointed_at_once() -> None:
    found = built(components=(plain(material="loose"), replace(LOOSE, material="loose")))
    assert rules(found).count("thickness-not-measured") == 1
    assert "thickness-not-measured" not in rules(closet(plain()))


def test_findings_of_room_and_components_come_through() -> None:
    found = built(components=(plain(back=BackSpec(BackKind.NONE)),))
    assert "no-back" in rules(found)
    wide = built(survey=SURVEY, depth_limit=500.0, components=(plain(width=900.0, depth=400.0),))
    said = next(f for f in wide.findings if f.rule == "gap-wide")
    assert said.severity is Severity.NOTE
    assert said.limit == "38.1 mm"
    assert "gap-wide" not in rules(built(survey=SURVEY))
    assert wide.room is not None
    assert all(f in wide.findings for f in wide.room.findings)


@pytest.mark.parametrize("name", ["width", "depth", "height"])
@pytest.mark.parametrize("value", [0.0, -5.0, 20000.0, float("nan")])
def test_size_must_be_above_zero(name: str, value: float) -> None:
    size = tuple(
        value if n == name else v for n, v in zip(("width", "depth", "height"), SIZE, strict=True)
    )
    assert refused(size=size) == (
        f"closet: {name} is {value:g} mm; must be above 0 and below 20 m"
    )


@pytest.mark.parametrize(
    ("changes", "message"),
    [
        ({"size": None},
         "closet: survey is missing; enter the readings, or a width, depth and height"),
        ({"components": (plain(width=300.0), plain())},
         "closet: name of a component is 'A'; must be given and must differ from every other's"),
        ({"components": (plain(name=" "),)},
         "closet: name of a component is ' '; must be given and must differ from every other's"),
        ({"components": (LOOSE, replace(plain(), name="loose"))},
         "closet: name of a component is 'loose'; must be given and must differ from every "
         "other's"),
        ({"components": (plain(width=700.0), plain(name="B", width=400.0))},
         "B: width is 400 mm; must be 116 to 300 mm to fit the envelope"),
        ({"components": (plain(width=950.0), plain(name="B"))},
         "B: width is 50 mm; must be at least 116 mm, and only 50 mm are there to fit the "
         "envelope"),
        ({"components": (plain(width=500.0), plain(name="B", x=400.0))},
         "B: distance from the left is 400 mm; must be 500 to 1000 mm beside what stands there"),
        ({"components": (replace(LOOSE, rabbets=(Rim.END,), depth=10.0),)},
         "loose: groove depth is 10 mm; must be above 0 and at most 9 mm in a panel 18 mm thick"),
    ],
)
def test_design_that_cannot_be_built(changes: dict[str, object], message: str) -> None:
    assert refused(**changes) == message
