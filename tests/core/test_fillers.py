"""Fillers, mouldings and bases cut to the gaps around a carcass."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest

from closetbench.core.envelope import Clearances
from closetbench.core.errors import ClosetError
from closetbench.core.fillers import Cover, FillersSpec, Levelling, build_fillers
from closetbench.core.gaps import GapLine, gap_line
from closetbench.core.levelling import MOST_SHIM, scribe_base, shim_findings, shims
from closetbench.core.panel import Rim, Section, Taper
from closetbench.core.parts import Part, Role
from closetbench.core.specs import BaseKind, BaseSpec, CarcassSpec
from closetbench.core.trim import trim_cuts
from tests.core.around import STOCK, STRIPS, built, fillers, part, room


def test_strips_taper_as_the_gaps_do() -> None:
    found = fillers(room(lean=12.0), STRIPS)
    left, right, top = (part(found, n) for n in ("left filler", "right filler", "A top filler"))
    assert {p.role for p in found.parts} == {Role.FILLER}
    # 22 mm where the wall comes in furthest: at the envelope's top, 2,379 mm up
    most = 12.0 * 2379.0 / 2400.0
    assert left.panel.width == pytest.approx(22.0 + most, abs=1e-6)
    (taper,) = left.panel.tapers
    assert taper.rim is Rim.REAR
    assert taper.first == 0.0
    # it runs on to the ceiling, 21 mm higher
    assert taper.last == pytest.approx(12.0, abs=1e-6)
    assert left.panel.length == pytest.approx(2400.0)
    assert left.panel.cut_width == pytest.approx(left.panel.width + 6.0)
    box = left.box()
    assert (box.x1, box.z0, box.z1) == pytest.approx((0.0, 0.0, 2400.0))
    # the front of the carcass, which stands at the rear of the envelope
    assert (box.y0, box.y1) == pytest.approx((0.0, 18.0))
    assert right.panel.width == pytest.approx(24.0)
    assert right.box().x0 == pytest.approx(2000.0 - most - 22.0 - 24.0, abs=1e-6)
    assert top.panel.width == pytest.approx(21.0)
    assert top.box().z0 == pytest.approx(2379.0)
    assert {h.key: h.count for h in found.hardware if h.key == "screw_4x30"}
    assert found.findings == ()


def corners(part: Part) -> list[tuple[float, float]]:
    """x and z of the finished outline, in the closet's frame."""
    points = (part.place.point(x, y, 0.0) for x, y in part.panel.outline())
    return [(p[0], p[2]) for p in points]


def test_every_strip_ends_at_the_wall_it_is_scribed_to() -> None:
    crooked = room(lean=-9.0, rise=6.0, tilt=8.0)
    envelope, _ = built(crooked, STRIPS)
    found = fillers(crooked, STRIPS)
    for x, z in corners(part(found, "left filler"))[2:]:
        assert x + envelope.x0 == pytest.approx(crooked.left.at(0.0, z + envelope.z0), abs=1e-6)
    right = corners(part(found, "right filler"))
    for x, _ in right[:2]:
        assert x + envelope.x0 == pytest.approx(2000.0, abs=1e-6)
    for x, z in corners(part(found, "A top filler"))[2:]:
        assert z + envelope.z0 == pytest.approx(
            crooked.ceiling.at(x + envelope.x0, 0.0), abs=1e-6)


def test_narrow_gaps_are_covered_by_one_moulding_with_mitres() -> None:
    found = fillers(room(lean=6.0, tilt=4.0), Clearances())
    names = [p.name for p in found.parts]
    assert names == ["left moulding", "right moulding", "A top moulding"]
    left, right, top = found.parts
    assert {p.panel.material for p in found.parts} == {"scribe_32"}
    for p in found.parts:
        assert p.role is Role.MOULDING
        assert p.panel.cut_width == pytest.approx(32.0)
        assert p.box().y1 == pytest.approx(0.0)  # on the face of the carcass
    # outer corners in the corner of wall and ceiling, inner ones on the carcass, both shared
    (_, left_in, left_out, _), (top_left, _, _, top_out) = corners(left), corners(top)
    assert top_out == pytest.approx(left_out, abs=0.05)
    assert top_left == pytest.approx(left_in, abs=0.05)
    lap = left.box().x1
    assert 6.0 <= lap <= 18.0
    (_, right_out, right_in, _), (_, top_right, top_far, _) = corners(right), corners(top)
    assert top_right == pytest.approx(right_in, abs=0.05)
    assert top_far == pytest.approx(right_out, abs=0.05)


def test_lengths_of_mouldings_with_their_mitres_and_waste() -> None:
    found = fillers(room(), Clearances())
    cuts = {c.name: c for c in trim_cuts(found.parts)}
    assert set(cuts) == {f"Fillers: {n}" for n in (
        "left moulding", "right moulding", "A top moulding")}
    top = cuts["Fillers: A top moulding"]
    assert top.mitres == (Rim.START, Rim.END)
    # gaps of 5, 5 and 10 mm and 6 mm left on take 24 of 32 mm at least, so 16 lie on the carcass
    assert top.long - top.short == pytest.approx(2 * (5.0 + 18.0) * 32.0 / 26.0, rel=0.15)
    assert top.stock > top.long + 2 * 18.0
    left = cuts["Fillers: left moulding"]
    assert left.mitres == (Rim.END,)
    assert left.short < 2400.0 <= left.long


def test_wanted_covers_are_kept_to() -> None:
    none = fillers(room(), STRIPS, left=Cover.NONE, right=Cover.NONE, top=Cover.NONE)
    assert none.parts == ()
    assert none.findings == ()
    names = {p.name for p in fillers(room(), STRIPS, top=Cover.MOULDING).parts}
    assert names == {"left filler", "right filler", "A top moulding"}
    with pytest.raises(ClosetError) as caught:
        fillers(room(), Clearances(left=3.0), left=Cover.STRIP)
    assert str(caught.value) == (
        "A, gap at the left: width is 3.0 mm; must be at least 5 mm for a strip; give it more "
        "clearance or cover it with a moulding"
    )


def test_a_strip_too_narrow_or_too_wide_is_doubted() -> None:
    (finding,) = fillers(room(), replace(STRIPS, left=9.0), left=Cover.STRIP).findings
    assert finding.subject == "A, gap at the left"
    assert "give it 11 mm more clearance" in finding.message
    wide = fillers(room(), replace(STRIPS, right=60.0))
    (finding,) = wide.findings
    assert finding.rule == "filler-wide"
    assert finding.message.endswith("make the carcass up to 21.9 mm larger")
    assert "right filler" in {p.name for p in wide.parts}


def test_without_a_moulding_wide_enough_the_gap_is_said_to_stay_open() -> None:
    found = fillers(room(), replace(STRIPS, left=15.0), mouldings=("scribe_20",))
    (finding,) = found.findings
    assert (finding.rule, finding.value) == ("filler-narrow", "15.0 mm to 15.0 mm")
    assert "left moulding" not in {p.name for p in found.parts}


def test_an_uncertain_wall_has_more_left_on_for_the_scribe() -> None:
    assert gap_line(lambda z: 20.0 + z / 1000.0, 0.0, 2000.0, 4.0) == GapLine(20.0, 22.0, 8.0)


@pytest.mark.parametrize("bow", [-9.0, -5.0, -0.8, 0.8, 4.0, 9.0, 25.0])
def test_along_a_bowed_wall_the_strip_has_several_straight_pieces(bow: float) -> None:
    def gap(z: float) -> float:
        return 20.0 + z / 500.0 + bow * (1 - (z / 1000.0 - 1) ** 2)

    line = gap_line(gap, 0.0, 2000.0, 0.5)
    count = len(line.widths) - 1
    assert count == {9.0: 3, 5.0: 3, 0.8: 1, 4.0: 2, 25.0: 4}[abs(bow)]
    assert line.spare == pytest.approx(abs(bow) / count**2 + 1.0)
    places = [(0.0, line.first), *line.via, (1.0, line.last)]
    short = []
    for i in range(201):
        share = i / 200
        (p, a), (q, b) = next(
            pair for pair in pairwise(places) if pair[0][0] <= share <= pair[1][0])
        short.append(gap(2000.0 * share) - (a + (b - a) * (share - p) / (q - p)))
    # never into the wall, and nowhere further from it than is spare
    assert min(short) == pytest.approx(0.0, abs=1e-9)
    assert max(short) <= abs(bow) / count**2 + 1e-9
    taper = line.taper(Rim.REAR, 6.0)
    assert (taper.rim, taper.allowance) == (Rim.REAR, 6.0)
    assert [line.wide - v for _, v in taper.places] == pytest.approx(line.widths)


def test_carcasses_of_other_depths_have_tops_of_their_own() -> None:
    found = fillers(
        room(), STRIPS, CarcassSpec("A", "mdf", width=900.0, depth=400.0), CarcassSpec("B", "mdf")
    )
    a, b = part(found, "A top filler"), part(found, "B top filler")
    assert a.box().y0 == pytest.approx(595.0 - 400.0)
    assert b.box().y0 == pytest.approx(0.0)
    assert a.box().x1 == pytest.approx(b.box().x0)
    assert part(found, "left filler").box().y0 == pytest.approx(195.0)
    assert part(found, "right filler").box().y0 == pytest.approx(0.0)


def test_shims_go_under_the_cross_members_as_thick_as_the_gap() -> None:
    sloping = room(rise=6.0, fall=4.0)
    envelope, (carcass,) = built(sloping, Clearances())
    places = shims(carcass, sloping, envelope)
    members = [p for p in carcass.parts if "cross member" in p.name]
    assert len(places) == 2 * len(members)
    for shim in places:
        floor = sloping.floor.at(shim.x + envelope.x0, shim.y)
        assert shim.thickness == pytest.approx(envelope.z0 - floor)
    (note,) = shim_findings("A", places)
    assert note.message.startswith("level it with shims: ")
    assert note.message.count("across") == sum(s.thickness >= 0.5 for s in places)
    assert shim_findings("A", tuple(s for s in places if s.thickness < 0.5)) == []
    steep = room(rise=30.0)
    envelope, (carcass,) = built(steep, Clearances())
    rules = [f.rule for f in shim_findings("A", shims(carcass, steep, envelope))]
    assert rules == ["shims", "shims-thick"]
    assert MOST_SHIM == 12.7


def test_shims_of_a_toe_kick_stand_behind_the_notch() -> None:
    sloping = room(rise=10.0)
    spec = CarcassSpec("A", "mdf", base=BaseSpec(BaseKind.TOE_KICK, 90.0, 50.0))
    envelope, (carcass,) = built(sloping, Clearances(), spec)
    places = shims(carcass, sloping, envelope)
    assert sorted({round(s.y, 6) for s in places}) == [50.0, 595.0]


def test_foot_is_closed_with_a_quarter_round_where_the_floor_falls_away() -> None:
    found = fillers(room(rise=8.0), STRIPS)
    foot = part(found, "A quarter round")
    assert foot.panel.material == "quarter_round_12"
    base = BaseSpec()
    assert foot.box().y1 == pytest.approx(base.setback)
    assert foot.panel.section is Section.QUARTER_ROUND
    assert foot.box().z0 == pytest.approx(-7.8, abs=0.2)
    # along the floor: its rear lower edge ends on it at both ends
    floor = room(rise=8.0)
    envelope, _ = built(floor, STRIPS)
    for x in (0.0, foot.panel.length):
        at = foot.place.point(x, 0.0, 0.0)
        assert at[2] + envelope.z0 == pytest.approx(floor.floor.at(at[0] + envelope.x0, 0.0))
    assert foot.box().z1 > 0
    assert "A quarter round" not in {p.name for p in fillers(room(), STRIPS).parts}
    assert "A quarter round" not in {p.name for p in fillers(room(rise=8.0), STRIPS,
                                                            rounds=()).parts}
    shim = {h.key: h.count for h in found.hardware}["shim"]
    # a pair at each point, where it lies in the model too: from the floor up to the base
    assert shim == 2 * len(found.pieces)
    for piece in found.pieces:
        assert piece.role is Role.SHIM
        box = piece.box()
        assert box.z1 == 0.0
        lowest = min(
            floor.floor.at(x + envelope.x0, 0.0) for x in (box.x0, box.x1)) - envelope.z0
        assert lowest - 0.2 <= box.z0 < 0.0
    steep = fillers(room(rise=24.0), STRIPS)
    assert "foot-open" in {f.rule for f in steep.findings}


def test_base_frame_scribed_to_the_floor_reaches_it_everywhere() -> None:
    sloping = room(rise=10.0, fall=6.0)
    envelope, (carcass,) = built(sloping, Clearances())
    lower = scribe_base(carcass, sloping, envelope, 6.0)
    changed = [p for p in lower.parts if p.role is Role.BASE_FRAME]
    assert len(changed) == sum(p.role is Role.BASE_FRAME for p in carcass.parts)
    for p in changed:
        box = p.box()
        assert box.z1 == pytest.approx(80.0)
        (taper,) = p.panel.tapers
        assert isinstance(taper, Taper)
        assert (taper.rim, taper.allowance) == (Rim.FRONT, 6.0)
        middle = (box.y0 + box.y1) / 2 if box.x1 - box.x0 > 50 else None
        for x, y in p.panel.outline()[:2]:
            at = p.place.point(x, y, p.panel.thickness / 2)
            floor = sloping.floor.at(at[0] + envelope.x0, at[1] if middle is None else middle)
            assert at[2] + envelope.z0 == pytest.approx(floor, abs=0.05)
    untouched = [p for p in lower.parts if p.role is not Role.BASE_FRAME]
    assert untouched == [p for p in carcass.parts if p.role is not Role.BASE_FRAME]
    standing = CarcassSpec("A", "mdf", base=BaseSpec(BaseKind.TOE_KICK))
    _, (kick,) = built(sloping, Clearances(), standing)
    with pytest.raises(ClosetError, match="needs a base frame, but the front kick board stands"):
        scribe_base(kick, sloping, envelope, 6.0)


def test_scribed_bases_need_neither_shims_nor_quarter_rounds() -> None:
    found = fillers(room(rise=8.0), STRIPS, levelling=Levelling.SCRIBED)
    assert "A quarter round" not in {p.name for p in found.parts}
    assert "shim" not in {h.key for h in found.hardware}


@pytest.mark.parametrize(
    ("choices", "message"),
    [
        ({"scribe": 40.0}, "Fillers: scribe allowance is 40 mm; must be 0 to 30 mm"),
        ({"least": 2.0}, "Fillers: narrowest strip is 2 mm; must be 5 to 38.1 mm"),
        ({"overlap": 0.0}, "Fillers: overlap of a moulding is 0 mm; must be 2 to 30 mm"),
        ({"mouldings": ("brass",)}, "brass"),
    ],
)
def test_figures_that_make_no_fillers(choices: dict[str, object], message: str) -> None:
    with pytest.raises(ClosetError, match=message):
        fillers(room(), Clearances(), **choices)


def test_fillers_need_readings_and_a_carcass() -> None:
    envelope, carcasses = built(room(), Clearances())
    spec = FillersSpec("Fillers")
    with pytest.raises(ClosetError, match="survey is missing; must be there: gaps follow"):
        build_fillers(spec, carcasses, None, envelope, STOCK)
    with pytest.raises(ClosetError, match="carcasses is 0; must be 1 or more"):
        build_fillers(spec, [], room(), envelope, STOCK)
