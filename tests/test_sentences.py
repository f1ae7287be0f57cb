"""Messages of the checks in the user's language: taken apart whole, none left half in English."""

from __future__ import annotations

import json
import re
import sys
from dataclasses import replace
from pathlib import Path

import pytest

from closetbench.core.checks import check_closet
from closetbench.core.circumstances import ChildAge, Light, ShelfUse
from closetbench.core.closet import build_closet
from closetbench.job import read_job
from closetbench.resources import load_catalogue
from closetbench.sentences import Sentences

ROOT = Path(__file__).resolve().parent.parent
EXAMPLES = ROOT / "resources" / "examples"
sys.path.insert(0, str(ROOT / "tools"))
try:
    import translations
finally:
    sys.path.pop(0)

ENGLISH = re.compile(
    r"\b(the|of|and|is|are|with|under|before|it|its|times|would|what|which|each|anything|sags)\b")
"""Words of English that none of the other languages has. Sources are cited in their own."""
CITED = re.compile(r"\([^()]*(?:\([^()]*\)[^()]*)*\)")


def sentences(language: str) -> Sentences:
    """As FreeCAD looks texts up: in the context of messages, else in that of all texts."""
    told = translations.read(translations.ts_file(language))

    def tell(text: str) -> str:
        return told.get((translations.SAID, text)) or told.get(
            (translations.COMMON, text)) or text

    return Sentences(json.loads(translations.PATTERNS.read_text(encoding="utf-8")), tell)


@pytest.fixture(scope="module")
def messages() -> list[str]:
    """All that the checks say of the examples, for rooms of which little and much is known."""
    found = {}
    catalogue = load_catalogue()
    for name in ("box-room", "porch-closet"):
        design = read_job(EXAMPLES / f"{name}.toml").design
        closet = build_closet(design, catalogue)
        known = design.circumstances
        for circumstances in (
            known,
            replace(known, shelf_use=ShelfUse.BOOKS, children=tuple(ChildAge), damp=True,
                    old_paint=True, outlets=True, light=next(iter(Light)), light_clearance=100.0),
        ):
            for finding in check_closet(closet, catalogue, circumstances):
                for text in (finding.message, finding.fix, finding.value, finding.limit):
                    found[text] = None
    return [text for text in found if text]


def test_there_is_something_to_say(messages):
    assert len(messages) > 100
    assert any("fasten it before anything is put into it" in text for text in messages)
    assert any("and how it is fastened is not settled" in text for text in messages)


@pytest.mark.parametrize("language", translations.LANGUAGES)
def test_what_the_checks_say_is_said_whole_in_every_language(messages, language):
    said = sentences(language).said
    left = {
        text: told for text in messages
        for told in [CITED.sub("", said(text))] if ENGLISH.search(told)
    }
    assert left == {}


def one(patterns: dict[str, str]) -> Sentences:
    return Sentences(patterns, lambda text: patterns.get(text, text))


def test_a_sentence_within_a_gap_is_translated_too():
    said = one({
        "{0}: move it": "{0}: versetzen", "hits {0}": "trifft {0}", "the wall": "die Wand",
    }).said
    assert said("hits the wall: move it") == "trifft die Wand: versetzen"
    assert said("hits Anna: move it") == "trifft Anna: versetzen"


def test_gaps_with_nothing_between_them_are_parted_where_both_are_known():
    said = one({
        "{0}{1}: fasten it": "{0}{1}: befestigen", "tips over {0}": "kippt {0}",
        "; it holds {0}": "; es hält {0}", "with all open": "mit allem offen",
    }).said
    assert said("tips over with all open; it holds 3 N: fasten it") == (
        "kippt mit allem offen; es hält 3 N: befestigen")
    assert said("tips over with all open: fasten it") == "kippt mit allem offen: befestigen"


def test_what_follows_a_sentence_is_not_swallowed_by_its_gap():
    said = one({
        "over {0}": "über {0} hinweg", "by hand": "von Hand", "codes come first": "erst die Normen",
    }).said
    assert said("over by hand; codes come first") == "über von Hand hinweg; erst die Normen"


def test_what_stands_before_something_and_units():
    said = one({"shims: ": "Unterlagen: ", "{0} at {1}": "{0} bei {1}"}).said
    assert said("shims: 3 mm at 10 mm; 4 mm at 20 mm") == (
        "Unterlagen: 3 mm bei 10 mm; 4 mm bei 20 mm")
    assert said("3.5 mm") == "3.5 mm"


def test_without_patterns_a_text_stays():
    assert Sentences([], lambda text: text).said("the wall; of a thing") == "the wall; of a thing"
