"""The drilling drawing: every hole of every front is told from its left and lower edge."""

from __future__ import annotations

import re
from fractions import Fraction
from itertools import combinations

import pytest

from closetbench.core.doors import DoorsSpec
from closetbench.core.drawers import DrawersSpec
from closetbench.core.fronts import FrontKind, FrontSpec
from closetbench.core.inside import Spot
from closetbench.core.lengths import MILLIMETRES, SIXTEENTHS, LengthFormat
from closetbench.core.parts import Part
from closetbench.shop.drilling import DRILLED, drilling_page
from closetbench.shop.page import Page
from closetbench.shop.words import fit_text
from tests.core.inside_case import closet

FINE = LengthFormat("mm", Fraction(1, 10))


def words(page: Page) -> list[str]:
    return [t.get_text() for t in page.axes.texts]


def drilled() -> list[Part]:
    built = closet(
        DrawersSpec("D", Spot("A", 1, 1), count=3, front=FrontSpec(pull_spacing=96.0)),
        DoorsSpec("E", Spot("A", 2, 1), 2, front=FrontSpec(FrontKind.FULL)),
        DrawersSpec("S", Spot("A", 2, 2, height=200.0), front=FrontSpec(lean_left=4.0)),
    )
    return [p for p in built.parts if p.role in DRILLED]


def test_equal_fronts_are_drawn_once_and_every_hole_is_told() -> None:
    parts = drilled()
    found = words(drilling_page(parts, "The closet"))
    assert "3 x D: drawer 1 front, drawer 2 front …" in found
    assert {"E: left door", "E: right door", "S: drawer front"} <= set(found)
    front = next(p for p in parts if p.component == "D")
    # two holes 96 mm apart about the middle, half way up
    middle = front.panel.length / 2
    at = f"– {FINE.text(middle - 48)}, {FINE.text(middle + 48)} from the left,"
    assert at in found
    assert f"– {FINE.text(front.panel.width / 2)} from below" in found
    # a left door's cups lie 21.5 mm from its left edge, a right door's from its right
    left = next(p for p in parts if p.name == "left door")
    assert "– 21.5 mm from the left," in found
    assert f"– {fit_text(left.panel.width - 21.5, MILLIMETRES)} from the left," in found
    assert found.count("hinge cup: 35 mm, 12.5 mm deep from behind") == 2
    slanted = next(p for p in parts if p.component == "S").panel.tapers[0]
    assert f"left edge in by 0 mm below, {FINE.text(slanted.last)} above" in found


@pytest.mark.parametrize("number", [1, 4])
@pytest.mark.parametrize("form", [MILLIMETRES, SIXTEENTHS])
def test_words_stay_on_the_page(form: LengthFormat, number: int) -> None:
    from matplotlib.backends.backend_agg import FigureCanvasAgg

    page = drilling_page(drilled()[-number:], "The closet", form)
    renderer = FigureCanvasAgg(page.figure).get_renderer()
    boxes = [(t.get_text(), t.get_window_extent(renderer)) for t in page.axes.texts]
    frame = page.figure.bbox
    for text, box in boxes:
        assert frame.x0 <= box.x0, text
        assert box.x1 <= frame.x1, text
        assert frame.y0 <= box.y0, text
        assert box.y1 <= frame.y1, text
    for (one, a), (other, b) in combinations(boxes, 2):
        wide, tall = min(a.x1, b.x1) - max(a.x0, b.x0), min(a.y1, b.y1) - max(a.y0, b.y0)
        assert min(wide, tall) < 1.0, (one, other)
    assert not [w for w in words(page) if re.search(r"\d{3}\.\d{4}", w)]
