"""Papers in the languages of their readers: nothing that has a translation stays English."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from itertools import combinations
from pathlib import Path
from types import SimpleNamespace

import pytest

from closetbench.core.closet import build_closet
from closetbench.core.figures import Figures
from closetbench.core.survey_sheet import survey_sheet
from closetbench.job import read_job
from closetbench.languages import FILES, PAPERS, TRANSLATIONS, Language, language, read
from closetbench.produce import needs_for, plan_job
from closetbench.shop import cutting_pages, drawing_plan
from closetbench.shop import survey_sheet as sheet_of_survey
from closetbench.shop.bill import bill_rows, closet_bill
from closetbench.shop.csv_text import csv_text
from closetbench.shop.cutting_order import cutting_order_lines
from closetbench.shop.drawing_plan import drawing_sheet
from closetbench.shop.language import plain
from closetbench.shop.page import Page, text_width
from closetbench.shop.picture import pictures
from closetbench.shop.report import report_lines
from closetbench.shop.tables import glossed_rows, said_rows, tables

pytestmark = pytest.mark.once

EXAMPLES = Path(__file__).resolve().parents[2] / "resources" / "examples"
GAP = re.compile(r"\{\d+\}")
SENTENCE = 4
"""Words from which on a text is no name of something, which may stay."""


@pytest.fixture(scope="module", params=("box-room", "porch-closet"))
def made(request: pytest.FixtureRequest) -> SimpleNamespace:
    """A closet of the examples with the plans of its cutting."""
    job = read_job(EXAMPLES / f"{request.param}.toml")
    job = replace(job, cutting=replace(job.cutting, seconds=0.05, tidy=0.0))
    catalogue = job.catalogue()
    closet = build_closet(job.design, catalogue, Figures(job.lengths))
    return SimpleNamespace(
        job=job, catalogue=catalogue, closet=closet, form=job.lengths,
        cutting=plan_job(job, catalogue, closet, lambda text: None),
        needs=needs_for(job, catalogue, closet),
    )


def drawn(page: Page) -> list[str]:
    return [text.get_text() for text in page.axes.texts]


def report(made: SimpleNamespace, words: Language) -> list[str]:
    plans = made.cutting
    return report_lines(
        made.closet, plans.sheets, made.catalogue, made.form, plans.lengths, words=words)


def order(made: SimpleNamespace, words: Language) -> list[str]:
    plans, needs = made.cutting, made.needs
    return cutting_order_lines(
        plans.sheets, needs.parts, needs.sheets, made.job.cutting, made.catalogue, made.form,
        made.job.shop, plans.lengths, made.closet.parts, made.closet.findings, words)


def rows(made: SimpleNamespace, words: Language) -> list[list[object]]:
    plans = made.cutting
    bill = closet_bill(
        made.closet, plans.sheets, made.catalogue, made.form, 12.0, plans.lengths)
    return bill_rows(replace(bill, ways=plans.ways), words)


def bill(made: SimpleNamespace, words: Language) -> list[str]:
    return [str(cell) for row in said_rows(rows(made, words), words) for cell in row if cell]


def pages(made: SimpleNamespace, words: Language) -> list[str]:
    placed = {p.part for s in made.cutting.sheets.sheets for p in s.placements}
    parts = [p for p in made.closet.parts if p.full_name in placed]
    found = list(pictures(
        made.closet, made.cutting.sheets, made.catalogue, made.form, words=words).values())
    found.append(cutting_pages.cutting_page(
        made.cutting.sheets.sheets[0], parts, made.catalogue, made.form, made.job.shop, words))
    return [text for page in found for text in drawn(page)]


def survey(made: SimpleNamespace, words: Language) -> list[str]:
    return [text for page in survey_pages(made, words) for text in drawn(page)]


def survey_pages(made: SimpleNamespace, words: Language) -> list[Page]:
    found: list[Page] = []

    def keep(pages: list[Page], path: Path) -> tuple[Path, ...]:
        found.extend(pages)
        return ()

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(sheet_of_survey, "write_pages", keep)
        design = made.job.design
        sheet_of_survey.write_survey_sheet(
            survey_sheet(design.name, design.survey), "x.pdf", made.form, words)
    return found


def drawing(made: SimpleNamespace, words: Language) -> list[str]:
    sheet = drawing_sheet(made.closet, made.catalogue, made.form, words=words)
    return [*sheet.texts.values(), *(view.caption for view in sheet.views)]


MAKERS = (report, order, bill, pages, survey, drawing)


def sentences(code: str) -> Iterator[str]:
    """What stands between the gaps of every text that another language has, if it is long
    enough to be known again."""
    for (_, text), told in read(TRANSLATIONS / f"closetbench_{FILES[code]}.ts").items():
        if told != text:
            for piece in GAP.split(text):
                if len(re.findall(r"[a-z]+", piece)) >= SENTENCE and piece.strip() not in told:
                    yield piece.strip()


@pytest.mark.parametrize("code", FILES)
@pytest.mark.parametrize("maker", MAKERS)
def test_what_has_a_translation_is_translated(made: SimpleNamespace, maker, code: str) -> None:
    told = maker(made, language(code))
    english = maker(made, plain)
    assert len(told) >= len(english) * 0.9  # long words may leave no room for one or two
    known = set(sentences(code))
    # what is typed into a job file stands as it is typed
    text = "\n".join(line for line in told if not line.startswith("kind = "))
    there = [piece for piece in known if piece in "\n".join(english)]
    assert len(there) > 1, "the paper has no sentence that could be translated"
    assert [piece for piece in there if piece in text] == []


@pytest.mark.parametrize("code", ["en", *FILES])
def test_no_words_lie_on_others_or_leave_the_page(made: SimpleNamespace, code: str) -> None:
    from matplotlib.backends.backend_agg import FigureCanvasAgg

    words = plain if code == "en" else language(code)
    # on the sheets' pictures small parts may have no room for their names in any language
    found = pictures(made.closet, None, made.catalogue, made.form, words=words).values()
    for page in (*found, *survey_pages(made, words)):
        renderer, whole = FigureCanvasAgg(page.figure).get_renderer(), page.figure.bbox
        boxes = [
            (text.get_text(), text.get_window_extent(renderer))
            for text in page.axes.texts if text.get_text()
        ]
        for text, box in boxes:
            assert box.x0 > 0 < box.y0, text
            assert box.x1 < whole.width, text
            assert box.y1 < whole.height, text
        for (one, a), (other, b) in combinations(boxes, 2):
            across = min(a.x1, b.x1) - max(a.x0, b.x0)
            up = min(a.y1, b.y1) - max(a.y0, b.y0)
            assert not (across > 1 and up > 3), (page.subject, one, other)


def test_dangers_stand_on_top_in_full(made: SimpleNamespace) -> None:
    english, german = report(made, plain), report(made, language("de"))
    count = sum(line.startswith("DANGER") for line in english)
    assert sum(line.startswith("GEFAHR: ") for line in german) == count
    assert count > 0
    assert "lesen, bevor etwas geschnitten, getragen oder befüllt wird" in german[0]
    assert "örtliche Vorschriften und eine zugelassene Fachkraft gehen vor" in german[0]


def test_the_bill_file_keeps_its_heads_and_says_what_they_mean(made: SimpleNamespace) -> None:
    words = language("de")
    english, german = rows(made, plain), glossed_rows(rows(made, words), words)
    assert [(t.name, t.heads) for t in tables(german)] == [
        (t.name, t.heads) for t in tables(english)]
    assert "cut length mm = Zuschnittlänge mm" in csv_text(german)
    numbers = [[c for c in row if isinstance(c, int | float)] for row in english]
    assert [n for row in german if (n := [c for c in row if isinstance(c, int | float)])] == [
        n for n in numbers if n]
    assert glossed_rows(english, plain) == english


def test_heads_are_the_readers_on_screen(made: SimpleNamespace) -> None:
    words = language("de")
    names = [t.name for t in tables(said_rows(rows(made, words), words))]
    assert names[0] == "Teile"
    assert "Einkauf" in names


@pytest.mark.parametrize("paper", drawing_plan.PAPERS)
@pytest.mark.parametrize("code", FILES)
def test_the_title_block_has_room(made: SimpleNamespace, paper: str, code: str) -> None:
    """Each field ends before the next column of its template."""
    drawing = drawing_sheet(
        made.closet, made.catalogue, made.form, paper, plan=False, sections=0,
        words=language(code))
    status = language(code)("OUT OF DATE: the closet has changed since; make the page again")
    texts = {**drawing.texts, "status": status}
    template = (EXAMPLES.parent / "drawing" / f"{paper}.svg").read_text(encoding="utf-8")
    columns = {float(x) for x in re.findall(r"M(\d+\.?\d*) [\d.]+V", template)}
    found = {
        name: (float(x), float(size), weight == "bold") for x, size, weight, name in re.findall(
            r'<text x="([^"]*)"[^>]*font-size="([^"]*)" font-weight="(\w+)"[^>]*editable="(\w+)"',
            template)
    }
    assert found.keys() == texts.keys()
    starts = columns | {x for x, _, _ in found.values()}
    for name, (x, size, bold) in found.items():
        if name.startswith(("value", "title")):
            continue  # figures, and a name that is shortened
        end = x + 25.4 * text_width(texts[name], size * 72 / 25.4, bold)
        assert end <= min(s for s in starts if s > x), (name, texts[name])


@pytest.mark.parametrize("code", FILES)
def test_the_letters_of_all_papers_are_in_the_font(code: str) -> None:
    from matplotlib.font_manager import FontProperties, findfont, get_font

    told = [
        text for (context, _), text in read(TRANSLATIONS / f"closetbench_{FILES[code]}.ts").items()
        if context == PAPERS
    ]
    for weight in ("normal", "bold"):
        font = get_font(findfont(FontProperties(family="DejaVu Sans", weight=weight)))
        assert {ord(c) for text in told for c in text} - set(font.get_charmap()) == set()
    assert {"de": "ß", "fr": "é", "es": "ñ"}[code] in "".join(told)
