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
    assert "18: 1 sheet (no plan takes less), 35.3% used" in capsys.readouterr().out
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
        (["--out", "/nowhere/plan.json"], "plan: file is /nowhere/plan.json; it cannot be written"),
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
