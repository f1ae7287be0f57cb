"""Findings about what goes inside read in the user's unit."""

from __future__ import annotations

import re
from fractions import Fraction

from closetbench.core.closet import build_closet
from closetbench.core.figures import Figures
from closetbench.core.lengths import LengthFormat
from tests.core.furnished import CATALOGUE, furnished

INCHES = Figures(LengthFormat("in-frac", Fraction(1, 16)))
MINE = {
    "pull-blocked", "zone-taken", "slide-packing", "partial-extension", "wide-door",
    "shallow-rod", "rod-low", "existing-gap", "frame-past", "frame-proud", "scribe-stile",
    "pocket-thin", "seat-height", "joint-in-the-air",
}


def test_no_millimetres_where_the_user_reads_inches() -> None:
    seen = set()
    for seed in range(120):
        found = furnished(seed)
        inches = build_closet(found.design, CATALOGUE, INCHES)
        assert [f.rule for f in inches.findings] == [f.rule for f in found.findings]
        for f in inches.findings:
            if f.rule in MINE:
                seen.add(f.rule)
                assert not re.search(r"\d mm", f"{f.message} {f.value} {f.limit}"), f
    assert len(seen) > 8
