"""Surveys in job files: extra readings, obstacles, the opening; and the two wrong readings."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from closetbench.core.closet import build_closet
from closetbench.core.envelope import Objective
from closetbench.core.fillers import Cover, FillersSpec, Levelling
from closetbench.core.parts import Role
from closetbench.core.room import build_room
from closetbench.core.survey import Obstacle, OwnDoor, Reading, ReadingKind, Side, TapeClass
from closetbench.job import JobError, parse_job, read_job
from closetbench.job_text import job_text
from closetbench.resources import RESOURCES
from closetbench.stock.from_parts import cut_parts, stock_sheets
from closetbench.stock.plan import CutSettings
from closetbench.stock.sheets import plan_sheets

# The example as it would be without its opening and its fillers: some tests give it others.
EXAMPLE = re.sub(
    r"# The opening is narrower.*?\n\n|# What closes the gaps.*?\n\n", "\n",
    (RESOURCES / "examples" / "box-room.toml").read_text(encoding="utf-8"), flags=re.DOTALL,
)

MORE = """
tape = "III"
resolution = "1/16 in"
level_error = 0.8
opening_width = 1520
opening_height = 2030
jamb_depth = 110
door = "a pair, hinged at both sides"
door_thickness = "1 1/2 in"
door_opens = 120

[[survey.extra]]
kind = "rise"
value = "-1/8 in"
x = 1930
y = 0
x2 = 1930
y2 = 640

[[survey.extra]]
label = "over the skirting"
kind = "lean"
value = -3
side = "back"
x = 600
z = 100
z2 = 1200

[[survey.obstacle]]
name = "socket"
x0 = -5
y0 = 300
z0 = 250
x1 = 20
y1 = 400
z1 = 350

[clearances]
confidence = 0.9
"""


def parse(more: str, base: str = EXAMPLE):
    survey, rest = base.split("\n# 20 mm at the left", 1)
    return parse_job(survey + more + rest.split("top = 10", 1)[1], "job.toml", Path())


def test_all_of_a_survey_is_read_and_written_back() -> None:
    job = parse(MORE)
    survey = job.design.survey
    assert survey is not None
    assert (survey.tape, survey.level_error) == (TapeClass.III, 0.8)
    assert survey.resolution == pytest.approx(1.5875)
    assert (survey.opening_width, survey.opening_height, survey.jamb_depth) == (1520, 2030, 110)
    assert (survey.door, survey.door_thickness, survey.door_opens) == (OwnDoor.PAIR, 38.1, 120)
    assert survey.extras == (
        Reading(ReadingKind.RISE, -3.175, x=1930.0, y=0.0, x2=1930.0, y2=640.0),
        Reading(ReadingKind.LEAN, -3.0, x=600.0, z=100.0, z2=1200.0, side=Side.BACK,
                label="over the skirting"),
    )
    assert survey.obstacles == (Obstacle("socket", -5.0, 300.0, 250.0, 20.0, 400.0, 350.0),)
    assert job.design.clearances.confidence == 0.9
    assert parse_job(job_text(job), "job.toml", Path()) == job


def test_a_unit_behind_a_reading_counts() -> None:
    mixed = EXAMPLE.replace("width_front_mid = 1934", 'width_front_mid = "76 1/8 in"')
    survey = parse("", mixed).design.survey
    assert survey is not None
    assert survey.width_front_mid == pytest.approx(76.125 * 25.4)


@pytest.mark.parametrize(
    ("old", "new", "message"),
    [
        ("width_front_mid = 1934", "width_front_mid = 76.125",
         "does not go with .* one was read in another unit; write the unit behind it"),
        ("depth_left = 642", "", r"\[survey\]: depth_left is missing; must be given"),
        ("levels = [100,", "opening_width = 2100\nlevels = [100,",
         "width of the opening is 2100 mm; must not be wider than the closet behind it"),
        ("levels = [100,", "tape = 'IV'\nlevels = [100,", "tape is 'IV'; must be one of I, II"),
    ],
)
def test_bad_readings_say_what_to_measure_or_change(old: str, new: str, message: str) -> None:
    with pytest.raises(JobError, match=message):
        parse("", EXAMPLE.replace(old, new))


@pytest.mark.parametrize(
    ("file", "key", "wrong", "right"),
    [
        # the digits changed places: 683 for 638
        ("box-room-blunder", "depth_right", 683.0, 638.0),
        # an inch was lost: 93 9/16 for 94 9/16
        ("porch-closet-blunder", "height_back_right", 93.5625 * 25.4, 94.5625 * 25.4),
    ],
)
def test_the_one_wrong_reading_is_found_and_named(
    file: str, key: str, wrong: float, right: float
) -> None:
    survey = read_job(RESOURCES / "examples" / f"{file}.toml").design.survey
    assert survey is not None
    room = build_room(survey)
    (blamed,) = (r for r in room.readings if not r.used)
    assert blamed.key == key
    assert blamed.value == pytest.approx(wrong)
    assert blamed.adjusted == pytest.approx(right, abs=2.0)
    (finding,) = (f for f in room.findings if f.rule == "reading-wrong")
    assert blamed.name in finding.message
    assert not [f for f in room.findings if f.rule == "readings-rival"]


@pytest.mark.parametrize("file", ["box-room", "porch-closet"])
def test_the_examples_themselves_have_no_wrong_reading(file: str) -> None:
    survey = read_job(RESOURCES / "examples" / f"{file}.toml").design.survey
    assert survey is not None
    room = build_room(survey)
    assert {f.rule for f in room.findings} <= {"wall-bent", "bows-not-read", "reading-alone"}
    assert all(r.used for r in room.readings)


def test_objective_is_read_and_written_back() -> None:
    text = EXAMPLE.replace('unit = "mm"', 'unit = "mm"\nobjective = "volume"')
    job = parse("", text)
    assert job.design.objective is Objective.VOLUME
    assert parse_job(job_text(job), "job.toml", Path()) == job
    with pytest.raises(JobError, match="objective is 'depth'; must be one of width first, volume"):
        parse("", text.replace('"volume"', '"depth"'))


FILLERS = """
[[fillers]]
name = "Fillers"
top = "moulding"
levelling = "base frame scribed to the floor"
least = 15
mouldings = ["scribe_45"]
"""


def test_fillers_come_into_parts_layout_and_bill() -> None:
    text = EXAMPLE.replace("left = 20\nright = 8", "left = 18\nright = 20") + FILLERS
    job = parse_job(text, "job.toml", Path())
    (spec,) = (c for c in job.design.components if isinstance(c, FillersSpec))
    assert (spec.top, spec.levelling) == (Cover.MOULDING, Levelling.SCRIBED)
    assert parse_job(job_text(job), "job.toml", Path()) == job
    catalogue = job.catalogue()
    closet = build_closet(job.design, catalogue)
    fillers = [p for p in closet.parts if p.component == "Fillers"]
    assert {p.name for p in fillers} == {
        "left filler", "right filler", "Craft top moulding", "Coats and boots top moulding"
    }
    bases = [p for p in closet.parts if p.role is Role.BASE_FRAME]
    assert all(p.panel.tapers for p in bases)
    assert not [f for f in closet.findings if f.rule in ("parts-overlap", "shims")]
    cut = {c.key: (c.length, c.width, c.material) for c in cut_parts(closet.parts, catalogue)}
    for part in (*fillers, *bases):
        length, width, material = cut[part.full_name]
        assert (length, width) == (part.panel.cut_length, part.panel.cut_width)
        assert material == part.panel.material
    materials = {p.panel.material for p in fillers}
    assert materials == {"ply18", "scribe_45"}
    boards = [p for p in cut_parts(fillers, catalogue) if p.material == "scribe_45"]
    plan = plan_sheets(boards, stock_sheets(catalogue, ["scribe_45"]), CutSettings(seconds=1.0))
    assert sum(len(s.placements) for s in plan.sheets) == 2
    assert any(n.key == "screw_4x30" and "fillers" in n.purpose for n in closet.hardware)
