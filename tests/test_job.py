"""Jobs as TOML: read, refused with a reason, written back."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from closetbench.core.closet import build_closet
from closetbench.core.errors import ClosetError
from closetbench.core.joinery import Joint
from closetbench.core.panel import Rim
from closetbench.core.specs import BackKind, BaseKind, CarcassSpec, PanelSpec, TopKind
from closetbench.job import JobError, parse_job, read_job
from closetbench.job_text import job_text
from closetbench.resources import RESOURCES
from closetbench.stock.plan import FirstCut
from closetbench.stock.purchase import SpareRule
from closetbench.stock.tools import StoreWork, Where

EXAMPLES = sorted((RESOURCES / "examples").glob("*.toml"))

SMALL = """
[job]
name = "Linen"
unit = "in"

[size]
width = 40
depth = "1' 4\\""
height = "2 m"

[[carcass]]
name = "A"
material = "mdf18"
"""


def parse(text: str):
    return parse_job(text, "linen.toml", Path())


def test_units_and_spellings():
    design = parse(SMALL).design
    assert design.size == (1016.0, 406.4, 2000.0)
    assert design.components == (CarcassSpec("A", "mdf18"),)


def test_everything_at_once():
    job = parse(SMALL + """
joint = "screws"
top = "none"
x = 1
width = "30 1/2"
groove_stop = "none"
[carcass.base]
kind = "toe kick"
height = 3
[carcass.back]
kind = "panel"
material = "hardboard3"
[carcass.rules]
depth_fraction = 0.4
fit = "0.3 mm"
[[carcass.bay]]
width = 10
heights = [12, "20 1/2"]
[[carcass.bay]]
adjustable = 2
[[panel]]
name = "P"
material = "mdf18"
length = 20
width = 10
rabbets = ["front", "end"]
[measured]
mdf18 = "17.9 mm"
[cutting]
first = "crosscut"
stages = "none"
bit = "1/2"
trim = 0
seconds = 2
""")
    carcass, panel = job.design.components
    assert isinstance(carcass, CarcassSpec)
    assert isinstance(panel, PanelSpec)
    assert (carcass.joint, carcass.top) == (Joint.SCREWS, TopKind.NONE)
    assert (carcass.x, carcass.width, carcass.groove_stop) == (25.4, 774.7, None)
    assert (carcass.base.kind, carcass.base.height) == (BaseKind.TOE_KICK, 76.2)
    assert (carcass.back.kind, carcass.back.material) == (BackKind.PANEL, "hardboard3")
    assert (carcass.rules.depth_fraction, carcass.rules.fit) == (0.4, 0.3)
    assert [b.width for b in carcass.bays] == [254.0, None]
    assert carcass.bays[0].heights == (304.8, 520.7)
    assert panel.rabbets == (Rim.FRONT, Rim.END)
    assert (job.cutting.first, job.cutting.stages, job.cutting.seconds) == (
        FirstCut.CROSSCUT, None, 2.0)
    assert (job.bit, job.trim) == (12.7, 0.0)
    assert job.catalogue().material("mdf18").thickness == 17.9


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda p: p.stem)
def test_examples_build_and_survive_being_written(path):
    job = read_job(path)
    again = parse_job(job_text(job), path.name, path.parent)
    assert again == job
    assert len(build_closet(job.design, job.catalogue()).parts) > 10


def test_written_names_with_quotes_and_line_breaks_read_back():
    text = SMALL.replace('"Linen"', '"3/4\\" \\\\ \\u007f \\n end"')
    job = parse(text)
    assert parse(job_text(job)).design == job.design


@pytest.mark.parametrize(
    ("old", "new", "message"),
    [
        ("width = 40", "width = '40 1/'", r"linen\.toml \[size\]: width is .*40 1/"),
        ("width = 40", "width = true", r"linen\.toml \[size\]: width is True; must be a length"),
        ("width = 40", "wdith = 40", r"\[size\]: key is wdith; is unknown; did you mean width\?"),
        ("width = 40\n", "", r"linen\.toml \[size\]: width is missing; must be given"),
        ("[size]", "[sizes]", r"linen\.toml: table is sizes; is unknown; did you mean size\?"),
        ('unit = "in"', 'unit = "inch"', r"\[job\]: unit is 'inch'; must be one of mm, cm, m"),
        ('name = "Linen"', "name = 3", r"\[job\]: name is 3; must be a text"),
        ('name = "A"\n', "", r"\[carcass 1\]: name is missing; must be given"),
        ('material = "mdf18"', 'material = "mdf18"\ntop = "lid"',
         r"\[carcass A\]: top is 'lid'; must be one of over the sides, between the sides, none"),
        ('material = "mdf18"', 'material = "mdf18"\nbase = {hight = 3}',
         r"\[carcass A, base\]: key is hight; is unknown; did you mean height\?"),
        ('material = "mdf18"', 'material = "mdf18"\n[[carcass.bay]]\nfixed = 2.5',
         r"\[carcass A, bay 1\]: fixed is 2\.5; must be a whole number"),
        ('material = "mdf18"', 'material = "mdf18"\n[carcass.rules]\nfit = 1',
         r"\[carcass A, rules\]: fit is 25\.4; must be 0 to 2"),
        ('material = "mdf18"', 'material = "mdf18"\nbay = 3',
         r"\[carcass A\]: bay is 3; must be a list"),
        ("[size]", "[size", r"linen\.toml: text is not TOML; "),
        ("[size]", "[job.size]", r"\[job\]: key is size; is unknown"),
        ('unit = "in"', 'unit = "in"\nprint = "furlong"', r"\[job\]: print is 'furlong'"),
        ('unit = "in"', 'unit = "in"\nstep = "1/3"', r"\[job\]: step is '1/3'; must be 1, 1/2"),
        ('unit = "in"', 'unit = "in"\nstep = "1/0"', r"\[job\]: step is '1/0'; must be a number"),
    ],
)
def test_bad_input_is_named(old, new, message):
    assert old in SMALL
    with pytest.raises(JobError, match=message):
        parse(SMALL.replace(old, new))


def test_a_survey_and_a_size_contradict_each_other():
    survey = (RESOURCES / "examples" / "box-room.toml").read_text(encoding="utf-8")
    with pytest.raises(JobError, match=r"\[size\]: size is given; must be left out"):
        parse(survey + "\n[size]\nwidth = 1\ndepth = 1\nheight = 1\n")


def test_negative_readings_are_for_leans_and_rises_only():
    survey = (RESOURCES / "examples" / "box-room.toml").read_text(encoding="utf-8")
    assert parse(survey).design.survey.lean_right_front == -4
    bad = re.sub(r"depth_left = \d+", "depth_left = -642", survey)
    with pytest.raises(JobError, match=r"\[survey\]: depth_left is .*-642"):
        parse(bad)


def test_a_measured_thickness_that_contradicts_the_catalogue():
    job = parse(SMALL + "[measured]\nmdf18 = '25 mm'\n")
    with pytest.raises(ClosetError, match=r"25.*18"):
        job.catalogue()
    with pytest.raises(ClosetError, match=r"mdf81.*mdf18"):
        parse(SMALL + "[measured]\nmdf81 = '18 mm'\n").catalogue()


def test_unreadable_files(tmp_path):
    with pytest.raises(JobError, match=r"none\.toml: file is .*none\.toml; cannot be read"):
        read_job(tmp_path / "none.toml")
    bad = tmp_path / "bad.toml"
    bad.write_bytes(b"name = '\xff'")
    with pytest.raises(JobError, match=r"must be UTF-8 text"):
        read_job(bad)


def test_the_users_catalogue_lies_beside_the_job(tmp_path):
    (tmp_path / "own.toml").write_text("[material.mdf18]\nmeasured = 17.85\n", encoding="utf-8")
    path = tmp_path / "linen.toml"
    path.write_text(SMALL.replace('unit = "in"', 'unit = "in"\ncatalogue = "own.toml"'),
                    encoding="utf-8")
    assert read_job(path).catalogue().material("mdf18").thickness == 17.85


SHOP = """
[size]
width = 900
depth = 500
height = 2000

[shop]
store = "rips only"
most = 3
table = false

[[shop.saw]]
key = "bench"
name = "bench saw"
where = "home"
kerf = "1/8 in"
longest = 900
rips_only = true

[spare]
per = 10
above = 2
"""


def test_who_cuts_what_and_what_is_spare():
    job = parse_job(SHOP, "shop.toml", Path())
    assert (job.shop.store, job.shop.most, job.shop.table) == (StoreWork.RIPS, 3, False)
    (saw,) = job.shop.tools
    assert (saw.key, saw.where, saw.kerf, saw.longest) == ("bench", Where.HOME, 3.175, 900.0)
    assert job.spare == SpareRule(10, 2)
    again = parse_job(job_text(job), "shop.toml", Path())
    assert (again.shop, again.spare) == (job.shop, job.spare)


@pytest.mark.parametrize(("old", "new", "message"), [
    ('"rips only"', '"sometimes"', "must be one of nothing, rips only, rips and crosscuts"),
    ("most = 3", "most = -1", "store cuts is -1"),
    ('where = "home"', 'where = "shed"', "must be one of store, home"),
    ('kerf = "1/8 in"', "", "kerf is missing"),
    ("per = 10", 'per = "ten"', "per is 'ten'"),
])
def test_bad_shops_are_named(old, new, message):
    assert old in SHOP
    with pytest.raises(ClosetError) as caught:
        parse_job(SHOP.replace(old, new), "shop.toml", Path())
    assert message in str(caught.value)
