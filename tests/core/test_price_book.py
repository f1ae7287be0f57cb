"""The user's own prices as CSV: laid over the catalogue, every refusal with its line."""

from __future__ import annotations

import pytest

from closetbench.core.errors import CatalogueError
from closetbench.core.price_book import read_price_book
from closetbench.resources import load_catalogue

OURS = load_catalogue()
BOOK = """item,length,width,price,currency
ply18,2440,1220,61.50,EUR
ply18,2500 mm,125 cm,64
ply18,1220,610,19.90
pine_1x6,8 ft,,15.20
plastic_10,,,0.75
plastic_20,50 m,,39
screw_4x50,,,5.40
steel_27,,,16
"""


def test_prices_take_the_place_of_the_invented_ones():
    found = read_price_book(BOOK, "book.csv", OURS)
    assert found.currency == "EUR"
    assert found.findings() == ()
    sizes = {(s.length, s.width): s.cost for s in found.material("ply18").sheets}
    assert sizes[2440, 1220] == 61.5
    assert sizes[2500, 1250] == 64.0
    assert sizes[1220, 610] == 19.9
    boards = {round(s.length, 1): s.cost for s in found.material("pine_1x6").sheets}
    assert boards[2438.4] == 15.2
    assert boards[3048.0] is None
    assert found.band("plastic_10").cost_per_m == 0.75
    assert [(r.length, r.cost) for r in found.band("plastic_20").rolls] == [(50_000, 39.0)]
    assert found.item("screw_4x50").cost == 5.4
    assert found.item("rod_steel_27").cost == 16.0
    assert found.material("mdf18").sheets[0].cost is None


def test_semicolons_and_decimal_commas():
    text = "Item;Length;Width;Price;Currency\nmdf18;2440;1220;44,90;EUR\n"
    found = read_price_book(text, "book.csv", OURS)
    assert 44.9 in [s.cost for s in found.material("mdf18").sheets]


def test_a_book_is_a_catalogue_file(tmp_path):
    path = tmp_path / "prices.csv"
    path.write_text(BOOK, encoding="utf-8-sig")
    assert load_catalogue(path).currency == "EUR"


@pytest.mark.parametrize(("text", "message"), [
    ("", "lines is 0"),
    ("item,price\n", "lines is 0"),
    ("item,cost\nx,3\n", "column is cost"),
    ("item,length\nply18,3\n", "price is 0"),
    ("item,price\nply18,3\n", "currency is missing"),
    ("item,price,currency\nply18,3,EUR\n", "line 2: length is empty"),
    ("item,price,currency\nplyy18,3,EUR\n", "nearest: ply18"),
    ("item,length,width,price,currency\nply18,2440,1220,-3,EUR\n", "must not be negative"),
    ("item,length,width,price,currency\nply18,2440,1220,dear,EUR\n", "price is dear"),
    ("item,length,width,price,currency\nply18,wide,1220,3,EUR\n", "line 2: length is wide"),
    ("item,length,width,price,currency\nply18,2440,1220,3,EUR\nply18,2440,1220,4\n",
     "another line prices the same"),
    ("item,price,currency\nplastic_10,1,EUR\nplastic_20,1,USD\n", "lines before say EUR"),
    ("item,length,price,currency\nply18,999,3,EUR\n", "width is empty"),
    ("item,price,currency\n\"plastic_10,1,EUR\n", "CSV is unreadable"),
    ("item,price,currency\nplastic_10,1,EUR,4\n", "cells is 4"),
])
def test_a_bad_book_is_refused_with_its_line(text, message):
    with pytest.raises(CatalogueError) as caught:
        read_price_book(text, "book.csv", OURS)
    assert message in str(caught.value)


def test_a_bar_has_a_price_for_each_length():
    text = (
        "item,length,price,currency\nsteel_27,,16,EUR\nsteel_27,1250,9.5\nsteel_27,3 m,22\n"
        "oak_32,2438.4,12\n")
    found = read_price_book(text, "book.csv", OURS)
    assert found.item("rod_steel_27").cost == 16.0
    assert [(b.length, b.cost) for b in found.bar("steel_27").lengths] == [
        (1250.0, 9.5), (3000.0, 22.0)]
    # its own length, 8 ft, given as a length
    assert found.item("rod_oak_32").cost == 12.0
    assert found.bar("oak_32").lengths == ()
    again = read_price_book("item,length,price,currency\nsteel_27,1250,8,USD\n", "b.csv", found)
    assert [(b.length, b.cost) for b in again.bar("steel_27").lengths] == [
        (3000.0, None), (1250.0, 8.0)]
    assert again.item("rod_steel_27").cost is None


def test_a_catalogue_file_lists_the_lengths_of_a_bar(tmp_path):
    path = tmp_path / "mine.toml"
    path.write_text(
        'currency = "EUR"\n[bar.steel_27]\nlengths = [{ length = "1250 mm", cost = 9.5 }]\n')
    assert [(b.length, b.cost) for b in load_catalogue(path).bar("steel_27").lengths] == [
        (1250.0, 9.5)]
    for value, said in (
        ("[{ length = 2500 }]", "lengths is 2500 mm; is there twice"),
        ("[{ cost = 3 }]", "a length must state it"),
        ("[{ length = 20 }]", "must be from 100 to 10000 mm"),
    ):
        path.write_text(f'currency = "EUR"\n[bar.steel_27]\nlengths = {value}\n')
        with pytest.raises(CatalogueError) as caught:
            load_catalogue(path)
        assert said in str(caught.value)
