"""The help pages: one for every command, links that lead somewhere, plain words."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
FOLDER = ROOT / "resources" / "help"
PAGES = {path.stem: path.read_text(encoding="utf-8") for path in sorted(FOLDER.glob("*.md"))}
BESIDES = {"index", "Closet"}
"""Pages that are no command's."""
NAMES = {
    "FreeCAD", "TechDraw", "DXF", "CSV", "CNC", "STEP", "PDF", "SVG", "F1", "I", "Undo", "Cancel",
    "English",
}
"""Words with a capital that may stand within a sentence: of FreeCAD, of open formats, keys."""
LINK = re.compile(r"\[([^\]]+)\]\(([^)]+)\)")


def commands() -> dict[str, list[str]]:
    """Our commands with their menu texts and tips, from the sources."""
    found: dict[str, list[str]] = {}
    for path in sorted((ROOT / "closetbench" / "gui" / "commands").glob("*.py")):
        text = path.read_text(encoding="utf-8")
        for name, said in re.findall(r'mark\(\s*"Closetbench_(\w+)",\s*"([^"]+)"', text):
            found.setdefault(name, []).append(said)
    return found


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


@pytest.mark.parametrize("name", PAGES)
def test_no_page_names_a_brand(name):
    """A name that is not known here would be one: nothing but open formats, FreeCAD and our
    own commands has a capital within a sentence, and no page leads out of the help."""
    text = LINK.sub("", PAGES[name])
    assert not re.search(r"https?:|www\.|[™®]", PAGES[name])
    text = re.sub(r"\*[^*\n]+\*|`[^`]+`|^#.*$", "", text, flags=re.MULTILINE)
    within = re.findall(r"(?<=[\w,;:)] )([A-Z]\w*)", re.sub(r"\s+", " ", text))
    assert set(within) - NAMES - {"What", "This", "Help"} == set()
