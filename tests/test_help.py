"""The help pages: one for every command in every language, links that lead somewhere, names as
they stand on the buttons, cautions whole, plain words."""

from __future__ import annotations

import re
import sys
from collections import Counter
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT / "tools"))
try:
    import help_pages
    import translations
finally:
    sys.path.pop(0)

LANGUAGES = help_pages.LANGUAGES
PAGES = help_pages.english()
TRANSLATED = {language: help_pages.translated(language) for language in LANGUAGES}
TOLD = {
    language: translations.read(translations.ts_file(language)) for language in LANGUAGES
}
BESIDES = {"index", "Closet"}
"""Pages that are no command's."""
NAMES = {
    "FreeCAD", "TechDraw", "DXF", "CSV", "CNC", "STEP", "PDF", "SVG", "F1", "I", "Undo", "Cancel",
    "English", "French", "German", "Spanish",
}
"""Words with a capital that may stand within a sentence: of FreeCAD, of open formats, keys."""
FREECAD = {
    "de": {
        "Help": "Hilfe", "What's This?": "Direkthilfe", "Undo": "Rückgängig",
        "Cancel": "Abbrechen",
    },
    "fr": {
        "Help": "Aide", "What's This?": "Qu'est-ce que c'est\u00a0?", "Undo": "Annuler",
        "Cancel": "Annuler",
    },
    "es-ES": {
        "Help": "Ayuda", "What's This?": "¿Qué es esto?", "Undo": "Deshacer",
        "Cancel": "Cancelar",
    },
}
"""What FreeCAD and Qt themselves call their buttons and menus: read off FreeCAD 0.20, 1.0 and
1.1. In Spanish, all three leave the buttons of a task in English."""
ENGLISH_BUTTONS = {"de": set(), "fr": set(), "es-ES": {"Help", "Cancel"}}
STRESSED = {"measured", "your"}
"""Words that are slanted for their weight, and name nothing."""
CAUTION = {"de": "Vorsicht.", "fr": "Attention.", "es-ES": "Precaución."}
LINK = re.compile(r"\[([^\]]+)\]\(([^)]+)\)")
SLANTED = re.compile(r"(?<!\*)\*([^*\n]+)\*(?!\*)")

each_translated = pytest.mark.parametrize(
    ("language", "name"), [(language, name) for language in LANGUAGES for name in PAGES])


def commands() -> dict[str, list[str]]:
    """Our commands with their menu texts and tips, from the sources."""
    found: dict[str, list[str]] = {}
    for path in sorted((ROOT / "closetbench" / "gui" / "commands").glob("*.py")):
        text = path.read_text(encoding="utf-8")
        for name, said in re.findall(r'mark\(\s*"Closetbench_(\w+)",\s*"([^"]+)"', text):
            found.setdefault(name, []).append(said)
    return found


def buttons(language: str, name: str, said: str) -> set[str]:
    """What a name in a page may be in a language: what the .ts file calls the same text, in the
    command's own context if that has it. A leading … stands for a name that is filled in."""
    if said in FREECAD[language]:
        return {FREECAD[language][said]}
    told = {
        context: re.sub(r"^\{\} ", "… ", text)
        for (context, source), text in TOLD[language].items()
        if source == re.sub("^… ", "{} ", said)
    }
    own = told.get(f"Closetbench_{name}")
    return set(told.values()) if own is None else {own}


def quotes(text: str) -> str:
    """The cautions of a page, without the word that opens them."""
    return " ".join(re.findall(r"^> (?:\*\*[^*]+\*\*)?(.*)$", text, flags=re.MULTILINE))


def test_every_command_has_a_page_and_every_page_a_command():
    assert len(commands()) > 30
    assert set(commands()) | BESIDES == set(PAGES)


def test_a_page_is_headed_as_its_command_is_called():
    for name, texts in commands().items():
        assert PAGES[name].splitlines()[0].removeprefix("# ") in texts, name


@pytest.mark.parametrize("name", PAGES)
def test_links_lead_to_pages_and_call_commands_by_their_names(name):
    texts = commands()
    for text, target in LINK.findall(PAGES[name]):
        assert target.removesuffix(".md") in PAGES, target
        if text.endswith("…"):
            assert text in texts[target.removesuffix(".md")], (text, target)


@pytest.mark.parametrize("name", PAGES)
def test_what_a_page_names_is_called_so_on_the_screen(name):
    sources = {source for _, source in TOLD["de"]} | set(FREECAD["de"])
    for said in SLANTED.findall(PAGES[name]):
        assert said in STRESSED or re.sub("^… ", "{} ", said) in sources, said


def test_the_index_leads_to_every_page_and_every_page_to_the_index():
    listed = {target.removesuffix(".md") for _, target in LINK.findall(PAGES["index"])}
    assert listed == set(PAGES) - {"index"}
    for name, text in PAGES.items():
        assert name == "index" or "(index.md)" in text


@pytest.mark.parametrize("name", PAGES)
def test_pages_are_short_and_say_what_the_work_asks(name):
    text = PAGES[name]
    assert 40 < len(text.split()) < 420
    if name not in BESIDES | {"Examples", "BoxRoom", "Porch"}:
        for head in ("## What to enter", "## What comes out", "## What to watch for"):
            assert head in text, head


@pytest.mark.parametrize("name", [
    "Carcass", "Panel", "Drawers", "Doors", "Rods", "Existing", "Bench", "CornerShelves",
    "OverShelf", "Fillers", "GoesIn", "Checks", "Layout", "Dxf",
])
def test_where_the_work_can_hurt_the_page_says_so(name):
    assert "> **Caution.**" in PAGES[name]


def strange_capitals(text: str) -> set[str]:
    """Words with a capital within a sentence, but those of headings, links and buttons."""
    text = re.sub(r"\*[^*\n]+\*|`[^`]+`|^#.*$", "", LINK.sub("", text), flags=re.MULTILINE)
    within = re.findall(r"(?<=[\w,;:)] )([A-Z]\w*)", re.sub(r"\s+", " ", text))
    return set(within) - NAMES


@pytest.mark.parametrize("name", PAGES)
def test_no_page_names_a_brand(name):
    """A name that is not known here would be one: nothing but open formats, FreeCAD and our
    own commands has a capital within a sentence, and no page leads out of the help. (German
    has capitals everywhere; but every page is made from an English one.)"""
    for text in (PAGES[name], *(TRANSLATED[language][name] for language in LANGUAGES)):
        assert not re.search(r"https?:|www\.|[™®]", text)
    assert strange_capitals(PAGES[name]) - {"What", "This", "Help"} == set()
    for language in ("fr", "es-ES"):
        assert strange_capitals(TRANSLATED[language][name]) == set()


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_page_is_there_in_every_language(language):
    assert set(TRANSLATED[language]) == set(PAGES)


@pytest.mark.parametrize("language", LANGUAGES)
def test_translations_are_made_from_the_english_pages_as_they_are(language):
    """Where this fails an English page was changed: bring the translations up to it, then
    ``python3 tools/help_pages.py --done NAME``."""
    assert help_pages.behind(language) == []


def test_a_changed_english_page_is_noticed():
    text = help_pages.stamped("# Korpus…\n", "# Carcass…\n")
    assert help_pages.recorded(text) == help_pages.sum_of("# Carcass…\n")
    assert help_pages.recorded(text) != help_pages.sum_of("# Carcass…\n\nMore.\n")
    again = help_pages.stamped(text, "other")
    assert again.startswith("# Korpus…\n")
    assert again.count("translated from") == 1
    assert help_pages.recorded("# Korpus…\n") == ""


@each_translated
def test_translations_have_the_structure_of_the_english_page(language, name):
    def structure(text: str) -> dict[str, object]:
        lines = text.splitlines()
        return {
            "headings": [line.split()[0] for line in lines if line.startswith("#")],
            "items": sum(line.startswith("- ") for line in lines),
            "rows": sum(line.startswith("|") for line in lines),
            "cautions": sum(line.startswith("> **") for line in lines),
            "links": Counter(target for _, target in LINK.findall(text)),
            "code": re.findall(r"`[^`]+`", text),
            "numbers": Counter(re.findall(r"\d+(?:\.\d+)?", LINK.sub("", text))),
            "columns": [line.count("|") for line in lines if line.startswith("|")],
        }

    text = help_pages.without_sum(TRANSLATED[language][name])
    assert structure(text) == structure(PAGES[name])


@each_translated
def test_translations_call_commands_and_buttons_as_that_language_does(language, name):
    page, text = PAGES[name], TRANSLATED[language][name]
    if name in commands():
        heading = page.splitlines()[0].removeprefix("# ")
        assert text.splitlines()[0].removeprefix("# ") == TOLD[language][
            f"Closetbench_{name}", heading]
    for said, target in LINK.findall(text):
        if said.endswith("…"):
            key = f"Closetbench_{target.removesuffix('.md')}"
            assert said in {told for (context, _), told in TOLD[language].items()
                            if context == key}, said
    named = [said for said in SLANTED.findall(page) if said not in STRESSED]
    left = SLANTED.findall(text)
    assert len(left) >= len(named)
    for said in named:
        found = [one for one in left if one in buttons(language, name, said)]
        assert found, (said, left)
        left.remove(found[0])
    stressed = [said for said in SLANTED.findall(page) if said in STRESSED]
    over = [said for said in left if said not in ENGLISH_BUTTONS[language]]
    assert len(over) == len(stressed), over


@each_translated
def test_translated_cautions_say_no_less(language, name):
    """The caution stands where it stands in English, and none of it was left out: none of
    these languages says the same in less than four fifths of the letters."""
    page, text = PAGES[name], TRANSLATED[language][name]
    assert text.count(f"> **{CAUTION[language]}**") == page.count("> **Caution.**")
    assert len(quotes(text)) >= 0.8 * len(quotes(page))
    assert quotes(text).count(".") == quotes(page).count(".")
