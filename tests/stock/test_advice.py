"""Strips from a sheet: the arithmetic of kerf and trim, and the advice from it."""

from __future__ import annotations

from dataclasses import replace
from math import floor

import pytest
from hypothesis import given
from hypothesis import strategies as st

from closetbench.core.findings import Severity
from closetbench.stock.advice import strip_advice, strip_findings, strips_of
from closetbench.stock.plan import CutPart, GrainOnSheet, StockSheet

SHEET = StockSheet("full", "ply 18", 2440, 1220)
KERF = 3.2


def parts_of(depth: float, count: int, length: float = 780.0):
    return [CutPart(f"p{i}", length, depth, "ply 18") for i in range(count)]


@pytest.mark.parametrize(
    ("width", "depth", "strips", "rest"),
    [
        # 4 x 300 + 3 x 3.2 = 1209.6 leaves 10.4, of which one more kerf; 5 x 240 + 4 x 3.2 =
        # 1212.8. A 49 in board (1245 mm) still gives 4 of 300. Plain arithmetic.
        (1220, 300, 4, 7.2),
        (1220, 240, 5, 4.0),
        (1245, 300, 4, 32.2),
        (1220, 406, 2, 401.6),
        (1220, 404, 3, 0.0),
    ],
)
def test_strips(width, depth, strips, rest):
    found = strips_of(replace(SHEET, width=width), depth, KERF)
    assert found[0] == strips
    assert found[1] == pytest.approx(rest)


def test_trim_counts_at_both_edges():
    assert strips_of(replace(SHEET, trim=5), 401.2, KERF)[0] == 3
    assert strips_of(replace(SHEET, trim=5), 401.3, KERF)[0] == 2


@given(
    width=st.floats(300, 1500), trim=st.floats(0, 20), depth=st.floats(20, 280),
    kerf=st.floats(0, 6),
)  # fmt: skip
def test_the_slimmer_depth_gives_exactly_one_strip_more(width, trim, depth, kerf):
    sheet = replace(SHEET, width=width, trim=trim)
    strips, rest, slimmer = strips_of(sheet, depth, kerf)
    assert 0 <= rest < depth + kerf
    assert slimmer < depth
    if slimmer > 1:
        assert strips_of(sheet, slimmer, kerf)[0] == strips + 1
        assert strips_of(sheet, slimmer + 0.01, kerf)[0] == strips


def test_advice_counts_strips_and_sheets():
    # Three shelves of 780 end to end on 2440; 18 shelves are 6 strips.
    (advice,) = strip_advice(parts_of(406, 18), [SHEET], KERF)
    assert (advice.strips, advice.needed, advice.sheets, advice.sheets_slimmer) == (2, 6, 3, 2)
    assert floor(advice.slimmer * 10) / 10 == 404.5
    (finding,) = strip_findings([advice], KERF)
    assert finding.severity is Severity.NOTE
    assert finding.value == "406 mm"
    assert finding.limit == "404.5 mm"
    assert finding.message == (
        "sheet full, 1220 mm wide, gives 2 strips of 406 mm and 401.6 mm are left: the kerf takes "
        "the next one; at 404.5 mm or less it gives 3; 6 strips then need 2 sheets, not 3"
    )


def test_no_advice_where_little_would_not_help():
    assert strip_advice(parts_of(404, 18), [SHEET], KERF) == ()
    assert strip_advice(parts_of(450, 18), [SHEET], KERF) == ()
    across = [replace(part, grain=GrainOnSheet.ACROSS) for part in parts_of(406, 18)]
    assert strip_advice(across, [SHEET], KERF) == ()
    assert strip_advice(parts_of(406, 18), [replace(SHEET, offcut=True)], KERF) == ()


def test_a_plain_miss_is_not_put_on_the_kerf():
    (advice,) = strip_advice(parts_of(418, 3), [SHEET], KERF)
    assert "kerf takes" not in strip_findings([advice], KERF)[0].message
