"""The circumstances of a job: read, written and refused."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

import pytest

from closetbench.core.anchoring import Drawer, FreeUnit
from closetbench.core.bench_strength import Bench
from closetbench.core.circumstances import Circumstances
from closetbench.core.loads import ShelfUse
from closetbench.core.people import ChildAge, Light
from closetbench.core.rods_strength import Rod, RodKind
from closetbench.core.walls import Wall, WallKind
from closetbench.job import JobError, parse_job
from closetbench.job_text import job_text

HEAD = """
[job]
name = "Hall"
unit = "in"
[size]
width = 48
depth = 20
height = 84
"""
WHOLE = HEAD + """
[circumstances]
shelf_use = "books"
shelf_load = 120
sag_over = 200
shelf_middle = 15
damp = false
children = ["3 to 4", "9 to 12"]
old_paint = true
outlets = false
light = "recessed, fluorescent"
light_clearance = 8
[circumstances.wall]
kind = "wood studs"
stud_spacing = 16
first_stud = "3 1/2"
lining = "1/2"
[[circumstances.rod]]
name = "coats"
kind = "steel tube"
diameter = "1 1/16"
wall = "0.049"
span = 40
height = 66
load = 30
[[circumstances.bench]]
name = "boots"
material = "stud_2x4"
span = 40
rails = 3
wide = "1 1/2"
high = "3 1/2"
top = "pine_glued27"
top_span = 8
sitters = 2
lid = true
volume = 90
[[circumstances.unit]]
name = "chest"
width = 36
depth = 17
height = 26
mass = 35
altered = true
[[circumstances.unit.drawers]]
width = 32
height = 6
depth = 15
level = 10
extension = 13
mass = 4
"""


def read(text: str) -> Circumstances:
    return parse_job(text, "job.toml", Path(".")).design.circumstances


def test_a_job_without_them_knows_nothing() -> None:
    assert read(HEAD) == Circumstances()


def inches(text: str) -> float:
    return float(Fraction(text) * Fraction("25.4"))


def test_every_circumstance_is_read() -> None:
    mm = inches
    drawer = Drawer(mm("32"), mm("6"), mm("15"), mm("10"), mm("13"), 4.0)
    assert read(WHOLE) == Circumstances(
        ShelfUse.BOOKS, 120.0, 200.0, False,
        Wall(WallKind.WOOD_STUDS, mm("16"), mm("3.5"), mm("0.5")),
        (ChildAge.THREE_TO_FOUR, ChildAge.NINE_TO_TWELVE), True, False,
        Light.RECESSED_FLUORESCENT, mm("8"),
        (Rod("coats", RodKind.STEEL, mm("17/16"), mm("40"), mm("0.049"), 0, mm("66"), 30.0),),
        (Bench("boots", "stud_2x4", mm("40"), 3, mm("1.5"), mm("3.5"), "pine_glued27", mm("8"),
               sitters=2, lid=True, volume=90.0),),
        (FreeUnit("chest", mm("36"), mm("17"), mm("26"), 35.0, drawers=(drawer,),
                  altered=True),),
        shelf_middle=15.0,
    )


def test_what_is_written_reads_back() -> None:
    job = parse_job(WHOLE, "job.toml", Path("."))
    assert parse_job(job_text(job), "again.toml", Path(".")).design == job.design
    assert read(HEAD + "[circumstances]\nchildren = []\n").children == ()


@pytest.mark.parametrize(
    ("line", "key"),
    [
        ('shelf_use = "anvils"', "shelf_use"),
        ("shelf_load = -4", "shelf load"),
        ("damp = 1", "damp"),
        ('children = ["2"]', "children"),
        ('light = "candle"', "light"),
        ("colour = 3", "key"),
        ('wall = { kind = "ice" }', "kind"),
        ("wall = { stud_spacing = 1 }", "stud spacing"),
        ('rod = [{ name = "r", kind = "steel tube", diameter = 1, span = 30 }]', "wall"),
    ],
)
def test_what_cannot_be_is_named(line: str, key: str) -> None:
    with pytest.raises(JobError) as caught:
        read(f"{HEAD}[circumstances]\n{line}\n")
    assert key in caught.value.prop
    assert "circumstances" in caught.value.subject
