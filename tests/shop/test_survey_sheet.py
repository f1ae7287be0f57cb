"""The survey sheet as it is printed."""

from __future__ import annotations

import re
import tomllib
from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest

from closetbench.core.errors import DocumentError
from closetbench.core.lengths import LengthFormat, read_length
from closetbench.core.survey import Reading, ReadingKind
from closetbench.core.survey_sheet import survey_sheet
from closetbench.shop import survey_sheet as printed
from closetbench.shop import survey_views
from closetbench.shop.page import Page
from closetbench.shop.survey_sheet import write_survey_sheet
from tests.core.test_room import opened


@pytest.fixture
def words(monkeypatch: pytest.MonkeyPatch) -> list[tuple[tuple[float, float], str]]:
    """Every text that is put on the page, with its place."""
    found: list[tuple[tuple[float, float], str]] = []
    real = Page.text

    def text(self: Page, at: tuple[float, float], what: str, *args: object, **more: object) -> None:
        found.append((at, what))
        real(self, at, what, *args, **more)  # type: ignore[arg-type]

    monkeypatch.setattr(Page, "text", text)
    return found


def test_page_holds_every_blank_with_its_key_and_property(
    tmp_path: Path, words: list[tuple[tuple[float, float], str]]
) -> None:
    sheet = survey_sheet("The box room", opened(), blank=True)
    (path,) = write_survey_sheet(sheet, tmp_path / "survey.pdf")
    assert path.read_bytes().startswith(b"%PDF")
    texts = [t for _, t in words]
    assert "Survey: The box room" in texts
    for blank in sheet.blanks:
        assert blank.name in texts
        assert any(t.startswith(f"{blank.key}  ·  {blank.prop}") for t in texts)
        # once in the drawing, once in the table
        assert texts.count(str(blank.number)) == 2
    assert any("100 mm, 1200 mm, 2200 mm" in t for t in texts)
    for size in sheet.trim:
        assert f"{size.key}  ·  {size.prop}" in texts
    assert [texts.count(key) for key in ("x0", "x1", "y0", "y1", "z0", "z1")] == [3] * 6
    for (x, y), _ in words:
        assert 0 < x < printed.WIDTH
        assert 0 < y < printed.HEIGHT


def test_numbers_in_the_drawings_do_not_cover_each_other(
    tmp_path: Path, words: list[tuple[tuple[float, float], str]]
) -> None:
    sheet = survey_sheet("The box room", opened())
    write_survey_sheet(sheet, tmp_path / "survey.svg")
    pages: list[list[tuple[float, float]]] = []
    for at, what in words:
        if re.fullmatch(r"\d+ of 2", what):
            pages.append([])
        elif re.fullmatch(r"\d+", what) and at not in pages[-1]:
            pages[-1].append(at)
    assert len(pages) == 2
    assert sum(map(len, pages)) == 2 * len(sheet.blanks)
    close = [
        (p, q) for marks in pages for i, p in enumerate(marks) for q in marks[i + 1:]
        if abs(p[0] - q[0]) < survey_views.MARK and abs(p[1] - q[1]) < survey_views.MARK
    ]
    assert not close


def test_readings_are_printed_in_the_users_unit(
    tmp_path: Path, words: list[tuple[tuple[float, float], str]]
) -> None:
    form = LengthFormat("in-frac", Fraction(1, 16))
    write_survey_sheet(survey_sheet("x", opened(opening_width=1524.0)), tmp_path / "s.svg", form)
    assert form.text(1524.0) in [t for _, t in words]
    assert (tmp_path / "s.svg").read_text(encoding="utf-8").startswith("<?xml")


def test_a_reading_taken_elsewhere_says_its_place_as_a_job_file_takes_it(
    tmp_path: Path, words: list[tuple[tuple[float, float], str]]
) -> None:
    extra = Reading(ReadingKind.HEIGHT, 2399.0, x=952.5, y=0.0, label="over the socket")
    sheet = survey_sheet("x", replace(opened(), extras=(extra,)), full=False)
    for form in (LengthFormat("mm", Fraction(1, 10)), LengthFormat("in-frac", Fraction(1, 16))):
        words.clear()
        write_survey_sheet(sheet, tmp_path / "s.svg", form)
        place = next(t for _, t in words if t.startswith("kind = "))
        table = tomllib.loads("\n".join(place.split(", ")))
        assert table["kind"] == "height"
        assert (read_length(table["x"]), read_length(table["y"])) == (952.5, 0.0)


def test_a_long_survey_still_fits_on_the_page(
    tmp_path: Path, words: list[tuple[tuple[float, float], str]]
) -> None:
    extras = tuple(
        Reading(ReadingKind.WIDTH, 1900.0, z=100.0 * k, label=f"width {k}") for k in range(1, 24)
    )
    sheet = survey_sheet("x", replace(opened(), extras=extras))
    write_survey_sheet(sheet, tmp_path / "s.svg")
    assert all(0 < x < printed.WIDTH and 0 < y < printed.HEIGHT for (x, y), _ in words)


def test_same_sheet_gives_the_same_file(tmp_path: Path) -> None:
    sheet = survey_sheet("The box room", opened())
    for ending in ("svg", "pdf"):
        first, second = (write_survey_sheet(sheet, tmp_path / f"{n}.{ending}") for n in "ab")
        assert [p.read_bytes() for p in first] == [p.read_bytes() for p in second]


def test_readings_taken_elsewhere_have_a_page_of_their_own(tmp_path: Path) -> None:
    sheet = survey_sheet("The box room", opened())
    written = write_survey_sheet(sheet, tmp_path / "s.svg")
    assert [p.name for p in written] == ["s.svg", "s-2.svg"]
    assert [p.name for p in write_survey_sheet(sheet, tmp_path / "s.pdf")] == ["s.pdf"]
    assert len(re.findall(rb"/Type /Page\b", (tmp_path / "s.pdf").read_bytes())) == 2
    few = survey_sheet("The box room", opened(), full=False)
    assert len(write_survey_sheet(few, tmp_path / "few.svg")) == 1


def test_other_files_are_refused(tmp_path: Path) -> None:
    sheet = survey_sheet("The box room", opened())
    with pytest.raises(DocumentError, match="the name must end in"):
        write_survey_sheet(sheet, tmp_path / "survey.txt")
    assert list(tmp_path.iterdir()) == []
