"""CSV against RFC 4180 and the published advice on formulas."""

from __future__ import annotations

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from closetbench.shop.csv_text import csv_field, csv_text, harmless


@pytest.mark.parametrize(
    ("given_text", "escaped"),
    # OWASP, "CSV Injection", the two examples of its table (input, escaped output).
    [
        ('=1+2";=1+2', '"\'=1+2"";=1+2"'),
        ("=1+2'\" ;,=1+2", "\"'=1+2'\"\" ;,=1+2\""),
    ],
)
def test_the_two_published_examples(given_text: str, escaped: str) -> None:
    assert csv_field(given_text) == escaped


@pytest.mark.parametrize("start", ["=", "+", "-", "@", "\t", "\r", "\n"])
def test_every_published_first_character_is_defused(start: str) -> None:
    # OWASP, "CSV Injection": the list of characters that no cell may begin with.
    assert csv_field(f"{start}x").startswith('"\'')


def test_numbers_stay_numbers() -> None:
    # Common practice, no published source: a number in a numeric column is no formula.
    assert [csv_field(v) for v in (-3.5, 0.0, -0.0001, 559.5, 2200.0, 1234.56789, 7, None)] == [
        "-3.5", "0", "0", "559.5", "2200", "1234.568", "7", ""]


def test_quoting_by_the_standard() -> None:
    # RFC 4180, section 2: rule 6, fields with line breaks, quotes and commas in quotes;
    # rule 7, a quote in a field doubled; rule 1, CRLF; rule 4, equal field counts.
    assert csv_field('3/4" ply, birch') == '"3/4"" ply, birch"'
    assert csv_text([["a", 1], ["b\r\nc"]]) == '\ufeff"a",1\r\n"b\r\nc",\r\n'


@given(st.lists(st.lists(st.text() | st.integers() | st.none(), min_size=1), min_size=1))
def test_whatever_is_written_reads_back(rows: list[list[str | int | None]]) -> None:
    text = csv_text(rows).removeprefix("\ufeff")
    width = max(map(len, rows))
    wanted = [
        ["" if c is None else harmless(c) if isinstance(c, str) else str(c)
         for c in [*row, *[None] * (width - len(row))]]
        for row in rows
    ]
    back = list(csv.reader(io.StringIO(text, newline=""), strict=True))
    assert [row or [""] for row in back] == wanted
