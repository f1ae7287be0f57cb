"""Every text that a user sees is there in every language."""

from __future__ import annotations

import json
import re
import sys

import pytest

pytestmark = pytest.mark.freecad

GAP = re.compile(r"\{[^{}]*\}")


@pytest.fixture(scope="module")
def tool(root_folder):
    sys.path.insert(0, str(root_folder / "tools"))
    try:
        import translations
    finally:
        sys.path.pop(0)
    return translations


@pytest.fixture(scope="module")
def root_folder():
    from pathlib import Path

    return Path(__file__).resolve().parent.parent


@pytest.fixture(scope="module")
def texts(tool):
    return tool.collect()


def test_texts_are_found_in_all_layers(texts):
    assert "Lay out the sheets…" in texts["Closetbench_Layout"]
    assert "half lap" in texts["Closetbench"]
    assert any("{0}" in text for text in texts["Closetbench_Said"])
    assert len(texts["App::Property"]) > 200


@pytest.mark.parametrize("language", ["de", "fr", "es-ES"])
def test_nothing_lacks_a_translation(tool, texts, language):
    assert tool.lacking(language, texts) == []


@pytest.mark.parametrize("language", ["de", "fr", "es-ES"])
def test_gaps_are_kept(tool, language):
    known = tool.read(tool.ts_file(language))
    wrong = [
        (source, told) for (_, source), told in known.items()
        if sorted(GAP.findall(source)) != sorted(GAP.findall(told))
    ]
    assert wrong == []


@pytest.mark.parametrize("language", ["de", "fr", "es-ES"])
def test_what_freecad_loads_is_compiled_from_what_is_written(tool, language):
    path = tool.ts_file(language)
    compiled = path.with_suffix(".qm").read_bytes()
    # a .qm file keeps its translations in UTF-16, high byte first
    lost = [t for t in tool.read(path).values() if t.encode("utf-16-be") not in compiled]
    assert lost == []


def test_patterns_are_those_of_the_sources(tool, texts):
    assert json.loads(tool.PATTERNS.read_text(encoding="utf-8")) == sorted(
        texts["Closetbench_Said"])


@pytest.mark.parametrize(("context", "word"), [
    ("Closetbench_Survey", "Back"), ("Closetbench_Help", "Back"), ("Closetbench_Bench", "Top"),
    ("Closetbench_Bench", "Face"), ("Closetbench_Existing", "Top"),
])
def test_words_that_mean_two_things_are_two_words_elsewhere(tool, context, word):
    known = tool.read(tool.ts_file("de"))
    assert known[context, word] != known[tool.COMMON, word]
