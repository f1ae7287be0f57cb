"""The whole run without windows: what it writes, says, and refuses."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from closetbench.__main__ import main
from closetbench.core.errors import LayoutError
from closetbench.core.findings import Severity
from closetbench.job import parse_job, read_job
from closetbench.job_text import job_text
from closetbench.produce import produce, summary
from closetbench.resources import RESOURCES
from closetbench.stock.offcuts import read_offcuts

ROOT = Path(__file__).resolve().parent.parent
JOB = """
[job]
name = "Shelf"
[size]
width = 800
depth = 300
height = 1200
[[carcass]]
name = "A"
material = "mdf18"
[[carcass.bay]]
fixed = 2
"""


def run(*arguments: str, cwd: Path = ROOT) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "closetbench", *arguments], cwd=cwd, capture_output=True,
        text=True, timeout=300, check=False, env={**os.environ, "PYTHONPATH": str(ROOT)},
    )


@pytest.mark.freecad
def test_an_example_becomes_all_its_documents(tmp_path):
    job = RESOURCES / "examples" / "porch-closet.toml"
    done = run("build", str(job), "--out", str(tmp_path), "--sheets", "--parts")
    assert done.returncode == 0, done.stderr
    folder = tmp_path / "porch-closet"
    for name in ("closet.FCStd", "layout.dxf", "bill.csv", "report.txt", "cutting.txt",
                 "view.png", "front.png", "sheets.png"):
        assert (folder / name).stat().st_size > 500, name
        assert str(folder / name) in done.stdout
    assert len(list((folder / "parts").glob("*.dxf"))) > 10
    assert len(list((folder / "sheets").glob("*.dxf"))) >= 3
    assert "heaviest" in done.stdout
    assert "yield" in done.stdout


@pytest.mark.freecad
def test_a_model_gives_its_job_back(tmp_path):
    source = tmp_path / "shelf.toml"
    source.write_text(JOB, encoding="utf-8")
    assert run("build", str(source), "--out", str(tmp_path)).returncode == 0
    done = run("job", str(tmp_path / "shelf" / "closet.FCStd"), "--out", str(tmp_path / "b.toml"))
    assert done.returncode == 0, done.stderr
    assert read_job(tmp_path / "b.toml").design == read_job(source).design


def test_bad_input_is_one_line_and_writes_nothing(tmp_path):
    bad = tmp_path / "bad.toml"
    bad.write_text(JOB.replace("width = 800", "width = '8OO'"), encoding="utf-8")
    done = run("build", str(bad), "--out", str(tmp_path / "out"))
    assert done.returncode == 1
    assert done.stderr.startswith("closetbench: bad.toml [size]: width is 8OO")
    assert done.stderr.count("\n") == 1
    assert not (tmp_path / "out").exists()


def test_a_part_larger_than_any_sheet_is_named_and_nothing_is_written(tmp_path):
    job = parse_job(JOB.replace("height = 1200", "height = 3000"), "tall.toml", tmp_path)
    with pytest.raises(LayoutError, match=r"A: left side") as caught:
        produce(job, tmp_path / "out", lambda _: None)
    assert "2902 mm x 300 mm; larger than every sheet" in str(caught.value)
    assert not (tmp_path / "out").exists()


def test_an_unwritable_folder_is_named(tmp_path):
    blocked = tmp_path / "out"
    blocked.write_text("a file", encoding="utf-8")
    source = tmp_path / "shelf.toml"
    source.write_text(JOB, encoding="utf-8")
    assert main(["build", str(source), "--out", str(blocked)]) == 1
    assert blocked.read_text(encoding="utf-8") == "a file"


def test_a_missing_library_costs_its_document_only(tmp_path, monkeypatch):
    monkeypatch.setitem(sys.modules, "ezdxf", None)
    result = produce(parse_job(JOB, "j.toml", tmp_path), tmp_path / "out", lambda _: None)
    assert "ezdxf" in result.missing["cut layout"]
    assert "NOT WRITTEN" in summary(result)
    assert not (tmp_path / "out" / "layout.dxf").exists()
    assert (tmp_path / "out" / "bill.csv").stat().st_size > 500


def test_an_offcut_that_saves_a_sheet_is_used_and_what_is_left_is_listed(tmp_path):
    """The offcut is taken, is not bought, and does not stand in what is left."""
    (tmp_path / "hand.toml").write_text(
        '[[offcut]]\nkey = "mdf18 7"\nmaterial = "mdf18"\nlength = 2435.0\nwidth = 1215.0\n'
        '[[offcut]]\nkey = "ply6 1"\nmaterial = "ply6"\nlength = 900.0\nwidth = 300.0\n',
        encoding="utf-8",
    )
    text = JOB + '[cutting]\noffcuts = "hand.toml"\n'
    job = parse_job(text, "shelf.toml", tmp_path)
    assert parse_job(job_text(job), "shelf.toml", tmp_path) == job
    result = produce(job, tmp_path / "out", lambda _: None)
    assert "mdf18 7" in {s.sheet.key for s in result.cutting.sheets.sheets}
    kept = {o.key: o.reserved for o in read_offcuts(tmp_path / "out" / "offcuts-kept.toml")}
    assert kept == {"mdf18 7": job.design.name, "ply6 1": ""}
    left = {o.key for o in read_offcuts(tmp_path / "out" / "offcuts-after.toml")}
    assert "ply6 1" in left
    assert "mdf18 7" not in left
    assert "at hand: mdf18 7" in (tmp_path / "out" / "bill.csv").read_text(encoding="utf-8")
    assert {o.key for o in read_offcuts(tmp_path / "hand.toml")} == {"mdf18 7", "ply6 1"}


def test_a_survey_sheet_is_written_for_a_job_and_without_one(tmp_path, capsys):
    job = str(RESOURCES / "examples" / "porch-closet.toml")
    for name, arguments in {
        "job.pdf": [job], "blank.svg": [job, "--blank", "--few"], "rough.pdf": [],
        "inches.svg": ["--rough", "6'", "24 1/2", "96", "--unit", "in"],
    }.items():
        assert main(["survey", *arguments, "--out", str(tmp_path / name)]) == 0
        assert (tmp_path / name).stat().st_size > 10_000
        assert str(tmp_path / name) in capsys.readouterr().out
    assert (tmp_path / "job.pdf").read_bytes().startswith(b"%PDF")


@pytest.mark.parametrize(("arguments", "said"), [
    (["--rough", "wide", "600", "2400"], "width is wide"),
    (["--rough", "-5", "600", "2400"], "width is -5"),
    (["--out", "sheet.txt"], "the name must end in"),
    (["missing.toml"], "cannot be read"),
])
def test_a_survey_sheet_that_cannot_be_written_says_why(tmp_path, capsys, arguments, said):
    out = [] if "--out" in arguments else ["--out", str(tmp_path / "s.pdf")]
    assert main(["survey", *arguments, *out]) == 1
    assert said in capsys.readouterr().err
    assert list(tmp_path.iterdir()) == []


def test_dangers_stand_on_top_of_every_paper_with_words(tmp_path):
    result = produce(parse_job(JOB, "j.toml", tmp_path), tmp_path / "out", lambda _: None)
    assert [f.rule for f in result.closet.findings if f.severity is Severity.DANGER]
    report = (tmp_path / "out" / "report.txt").read_text(encoding="utf-8").splitlines()
    assert report[2].startswith("1 DANGER: ")
    assert report[3].startswith("DANGER: A: unanchored")
    bill = (tmp_path / "out" / "bill.csv").read_text(encoding="utf-8-sig").splitlines()
    assert bill[1].startswith('"1 DANGER: read this')
    assert bill[2].startswith('"DANGER","A","unanchored')
    assert "1 DANGER: " in summary(result)


def test_papers_are_in_the_language_that_is_asked_for(tmp_path, capsys):
    parts = tmp_path / "parts.csv"
    parts.write_text("id,material,length,width,quantity\na,strip,600,300,2\n", encoding="utf-8")
    asked = ["--sheet", "strip=2440x1220", "--seconds", "0.1", "--out", str(tmp_path / "plan.json")]
    assert main(["layout", str(parts), *asked, "--language", "de"]) == 0
    told = capsys.readouterr().out
    assert told.startswith("strip: 1 Platte (")  # the key of the material stays
    assert "genutzt" in told
    sheet = tmp_path / "sheet.pdf"
    assert main(["survey", "--out", str(sheet), "--language", "fr"]) == 0
    assert sheet.read_bytes().startswith(b"%PDF")
    with pytest.raises(SystemExit):
        main(["survey", "--out", str(sheet), "--language", "tlh"])
