"""The command that plans a part list from end to end."""

from __future__ import annotations

import json

import pytest

from closetbench.stock.layout_io import layout_command

JOB = {
    "kerf": 3.2,
    "trim": 6,
    "sheets": {"18": {"length": 2440, "width": 1220}},
    "parts": [{"id": "A", "length": 700, "width": 500, "qty": 3, "material": "18"}],
}
QUICK = ["--seconds", "0.02", "--tidy", "0"]


@pytest.fixture
def job(tmp_path):
    path = tmp_path / "job.json"
    path.write_text(json.dumps(JOB), encoding="utf-8")
    return path


def test_a_plan_is_written_and_told(job, tmp_path, capsys):
    out = tmp_path / "plan.json"
    assert layout_command([str(job), *QUICK, "--out", str(out)]) == 0
    plan = json.loads(out.read_text(encoding="utf-8"))
    (sheet,) = plan["sheets"]
    assert {k: sheet[k] for k in ("material", "length", "width", "trim", "kerf")} == {
        "material": "18", "length": 2440, "width": 1220, "trim": 6, "kerf": 3.2,
    }  # fmt: skip
    assert [p["part"] for p in sheet["placements"]] == ["A"] * 3
    assert {p["piece"] for p in sheet["placements"]} == {"A/1", "A/2", "A/3"}
    assert {(p["dx"], p["dy"]) for p in sheet["placements"]} <= {(700, 500), (500, 700)}
    assert plan["bound"] == {"18": 1}
    assert "18: 1 sheet (no plan buys less), 35.3% used" in capsys.readouterr().out
    assert [p.name for p in tmp_path.iterdir() if p.name.startswith(".")] == []


def test_without_a_file_the_plan_is_printed(job, capsys):
    assert layout_command([str(job), *QUICK]) == 0
    assert json.loads(capsys.readouterr().out)["settings"]["stages"] == 4


def test_csv_with_sheets_given_as_options(tmp_path, capsys):
    path = tmp_path / "parts.csv"
    path.write_text("part,length,width,quantity\nA,700,500,2\n", encoding="utf-8")
    options = ["--sheet", "sheet=2440x1220@54.5", "--offcut", "sheet=900x1100", "--trim", "6"]
    rest = ["--kerf", "3", "--stages", "none", "--first", "any"]
    assert layout_command([str(path), *QUICK, *options, *rest]) == 0
    plan = json.loads(capsys.readouterr().out)
    assert plan["settings"]["stages"] is None
    assert {sheet["kerf"] for sheet in plan["sheets"]} == {3}
    # Both lie on the offcut, which costs nothing.
    assert [sheet["sheet"] for sheet in plan["sheets"]] == ["sheet 900x1100 offcut 1"]


@pytest.mark.parametrize(
    ("options", "message"),
    [
        (["--sheet", "2440x1220"], "must be MATERIAL=LENGTHxWIDTH"),
        (["--sheet", "18=2440x1220@dear"], "cost is dear"),
        (["--stages", "few"], "stages: value is few"),
        (["--kerf=-1"], "kerf is -1"),
        (["--out", "/nowhere/plan.json"], "plan: file is /nowhere/plan.json; there is no folder"),
    ],
)
def test_what_is_refused(job, capsys, options, message):
    assert layout_command([str(job), *QUICK, *options]) == 1
    assert message in capsys.readouterr().err


def test_a_failed_write_leaves_the_old_plan(job, tmp_path):
    out = tmp_path / "plan.json"
    out.mkdir()
    assert layout_command([str(job), *QUICK, "--out", str(out)]) == 1
    assert sorted(p.name for p in tmp_path.iterdir()) == ["job.json", "plan.json"]


LUMBER = {
    "kerf": 3.0,
    "lengths": {"oak": [{"length": 2400, "cost": 9.5}, {"length": 3000, "cost": 14},
                        {"length": 1000, "offcut": True, "defects": [[0, 60]]}]},
    "parts": [{"id": "rail", "length": 912, "qty": 3, "material": "oak"}],
}


def test_lengths_of_lumber_are_planned_too(tmp_path, capsys):
    path, out = tmp_path / "job.json", tmp_path / "plan.json"
    path.write_text(json.dumps(LUMBER), encoding="utf-8")
    assert layout_command([str(path), *QUICK, "--out", str(out)]) == 0
    plan = json.loads(out.read_text(encoding="utf-8"))
    assert plan["sheets"] == []
    # one from the offcut behind its knot (1000 - 60 >= 912), two from the cheaper board
    assert [(b["stock"], len(b["cuts"])) for b in plan["lengths"]] == [
        ("oak 1000 offcut 3", 1), ("oak 2400", 2),
    ]  # fmt: skip
    (cut,) = plan["lengths"][0]["cuts"]
    assert (cut["part"], cut["start"], cut["end"]) == ("rail", 60.0, 972.0)
    assert plan["lengths"][1]["rest"] == 2400 - 2 * 912 - 3
    assert plan["proved"] == {"oak": True}
    told = capsys.readouterr().out
    assert "oak: 1 of 1000 mm, 1 of 2400 mm (no plan costs less), 80.5% used" in told


def test_sheets_and_lengths_in_one_csv(tmp_path, capsys):
    path = tmp_path / "parts.csv"
    path.write_text(
        "part,length,width,quantity,material\nA,700,500,2,ply\nB,36 in,,4,1x4\n", encoding="utf-8")
    options = ["--sheet", "ply=2440x1220", "--length", "1x4=8 ft@9", "--length", "1x4=10 ft@11.5"]
    assert layout_command([str(path), *QUICK, *options]) == 0
    plan = json.loads(capsys.readouterr().out)
    assert len(plan["sheets"]) == 1
    # two from 8 ft (9.00), three from 10 ft (11.50): two boards of 8 ft are cheapest
    assert [b["stock"] for b in plan["lengths"]] == ["1x4 8 ft", "1x4 8 ft"]


@pytest.mark.parametrize(("change", "options", "message"), [
    ({"lengths": []}, [], "lengths is []"),
    ({"lengths": {"oak": {"length": 0}}}, [], "length is 0"),
    ({"lengths": {"oak": {"length": 900}}}, [], "longer than every clear stretch"),
    ({"lengths": {"oak": {"length": 2400, "defects": [3]}}}, [], "defects is [3]"),
    ({"lengths": {"oak": {"length": 2400, "width": 3}}}, [], "entry is width"),
    ({"lengths": {"oak": {"length": 2400, "cost": -1}}}, [], "a price must be 0 or more"),
    ({"lengths": {}}, [], "part rail: width is missing"),
    ({}, ["--length", "oak"], "must be MATERIAL=LENGTH"),
    ({}, ["--length", "oak=3 m@dear"], "cost is dear"),
])
def test_bad_lengths_are_refused(tmp_path, capsys, change, options, message):
    path = tmp_path / "job.json"
    path.write_text(json.dumps({**LUMBER, **change}), encoding="utf-8")
    assert layout_command([str(path), *QUICK, *options]) == 1
    assert message in capsys.readouterr().err
