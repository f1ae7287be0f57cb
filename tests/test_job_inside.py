"""Jobs with things inside: every table is read, written back the same, and refused by name."""

from __future__ import annotations

from pathlib import Path

import pytest

from closetbench.core.closet import build_closet
from closetbench.core.errors import ClosetError
from closetbench.core.existing import Flank
from closetbench.job import COMPONENTS, Job, JobError, parse_job, read_job
from closetbench.job_text import job_text
from closetbench.resources import RESOURCES
from tests.core.furnished import furnished

HEAD = """
[size]
width = 1400
depth = 640
height = 2300
[[carcass]]
name = "A"
material = "mdf18"
[[carcass.bay]]
[[carcass.bay]]
"""
CHEST = HEAD + """
[[existing]]
name = "Chest"
spot = { carcass = "A", bay = 1 }
width_front_low = 604
height_left = 640
depth_left = 420
weight = 31.5
[[existing.screws]]
side = "right"
from_front = 60
from_floor = 300
[[existing.kept]]
name = "side"
length = 600
width = 400
thickness = 19
"""


def parse(text: str) -> Job:
    return parse_job(text, "job.toml", Path())


@pytest.mark.parametrize("start", range(0, 120, 30))
def test_every_furnished_closet_is_read_back_as_it_was(start):
    for seed in range(start, start + 30):
        job = Job(furnished(seed).design)
        again = parse(job_text(job))
        # components are kept in the order of the tables
        assert sorted(again.design.components, key=lambda c: c.name) == sorted(
            job.design.components, key=lambda c: c.name), seed


@pytest.mark.parametrize("name", ["box-room", "porch-closet"])
def test_the_examples_build_without_conflict(name):
    job = read_job(RESOURCES / "examples" / f"{name}.toml")
    found = build_closet(job.design, job.catalogue())
    bad = {"parts-overlap", "pull-blocked", "swing-blocked", "in-the-wall", "joint-in-the-air"}
    assert not [f for f in found.findings if f.rule in bad]
    assert parse(job_text(job)).design == job.design


def test_the_examples_use_every_table_between_them():
    used = set()
    for name in ("box-room", "porch-closet"):
        design = read_job(RESOURCES / "examples" / f"{name}.toml").design
        used |= {type(c) for c in design.components}
    unused = {name for name, cls in COMPONENTS.items() if cls not in used}
    assert unused <= {"panel", "fillers"}


def test_a_chest_with_its_measurements_and_panels():
    job = parse(CHEST)
    chest = job.design.components[1]
    assert chest.weight == 31.5
    assert chest.screws[0].side is Flank.RIGHT
    assert chest.kept[0].name == "side"
    assert parse(job_text(job)) == job


@pytest.mark.parametrize(
    ("old", "new", "message"),
    [
        ('side = "right"', 'side = "top"', r"side is 'top'; must be one of left, right"),
        ("weight = 31.5", 'weight = "heavy"', r"\[existing Chest\]: weight is 'heavy'; must be a"),
        ("thickness = 19", "thick = 19", r"key is thick; is unknown; did you mean thickness"),
        ("height_left = 640", "", r"\[existing Chest\]: height_left is missing; must be given"),
        ("bay = 1", "bay = 1, shelf = 2", r"key is shelf; is unknown"),
    ],
)
def test_what_is_wrong_is_named(old, new, message):
    assert old in CHEST
    with pytest.raises(JobError, match=message):
        parse(CHEST.replace(old, new))


def test_what_cannot_be_built_names_component_and_limit():
    job = parse(CHEST.replace("width_front_low = 604", "width_front_low = 1390"))
    with pytest.raises(ClosetError, match=r"A, bay 2: width is .* must be at least 80 mm"):
        build_closet(job.design, job.catalogue())
