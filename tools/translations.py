"""Bring the translations up to date: every text that a user may see, in every language.

    /usr/bin/python3 tools/translations.py           collect texts, write the .ts and .qm files
    /usr/bin/python3 tools/translations.py --list    what each language still lacks

Texts are collected from the sources: what is handed to ``translate`` and its like, labels and
hints that follow from specifications, tooltips of properties, the messages of the layers
below, as patterns with numbered gaps, and what the documents of the shop say. A .ts file is
edited with any editor for Qt's format; compiling it takes Qt's lrelease (Debian:
qttools5-dev-tools).
"""

from __future__ import annotations

import ast
import importlib
import json
import pkgutil
import re
import shutil
import subprocess
import sys
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from enum import Enum
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from closetbench import host  # noqa: E402
from closetbench.languages import CODE, COMMON, FILES, MESSAGES, PAPERS, read  # noqa: E402

PACKAGE = ROOT / "closetbench"
FOLDER = ROOT / "resources" / "translations"
LANGUAGES = tuple(FILES.values())
"""As FreeCAD calls them in the names of files."""
SAID, PROPERTY = MESSAGES, "App::Property"
PATTERNS = FOLDER / "patterns.json"
_CALLS = {"translate", "_tr", "words", "ask_for"}
_PAPER_CALLS = {"words", "tell"}
_MARKS = {"mark", "_QT", "QT_TRANSLATE_NOOP"}
_NO_WORDS = re.compile(
    r"^[\W\d_]*$|^[a-z]+(_[a-z0-9]+)+$|^[a-z_]+\.[a-z_.]+$|^\w+::\w+$|^[A-Z][a-z]+_\w+$|^#|^<|/|\.svg$"
)

_JOINTS = (
    "{0} and {1}", "{0} or {1}", "{0} times", "{0} mm of {1} mm", "{0} kg of {1}", "{0} lb of {1}",
    "sags", "sags too much", "weights from memory", "{0} in to {1} in", "{0} mm to {1} mm",
    "{0} of {1} mm", "{0} x {1} in {2}",
)
"""What texts are put together with at run time."""
_NOUNS = (
    "pull", "tongue", "dowels", "rod", "room", "survey", "light", "work", "envelope", "access",
    "wall", "children", "catalogue",
)
"""What work on panels is named by in one word, and what findings are about."""
_GAP = re.compile(r"\{\d+\}")

Texts = dict[str, set[str]]


def collect() -> Texts:
    """Every text to be translated, by its context."""
    found: Texts = {COMMON: set(), SAID: set(), PROPERTY: set(), PAPERS: set()}
    for path in sorted((PACKAGE / "gui").rglob("*.py")):
        _from_gui(ast.parse(path.read_text(encoding="utf-8")), found)
    for layer in ("core", "stock", "model"):
        for path in sorted((PACKAGE / layer).rglob("*.py")):
            _from_messages(ast.parse(path.read_text(encoding="utf-8")), found[SAID])
    for path in sorted((PACKAGE / "shop").rglob("*.py")):
        _from_papers(ast.parse(path.read_text(encoding="utf-8")), found[PAPERS])
    found[SAID].update(_JOINTS)
    found[PAPERS].update(_NOUNS)
    found[CODE[0]] = {CODE[1]}
    _from_classes(found)
    return {context: {t for t in texts if t.strip()} for context, texts in found.items()}


def _from_gui(tree: ast.Module, found: Texts) -> None:
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            name = _name(node.func)
            texts = [a.value for a in node.args if _is_text(a)]
            if name in _MARKS and len(texts) == 2:
                found.setdefault(texts[0], set()).add(texts[1])
            elif name in _CALLS and texts:
                found[COMMON].add(texts[-1])
    # texts in tables are handed on by name
    for statement in tree.body:
        if isinstance(statement, ast.Assign | ast.AnnAssign) and statement.value is not None:
            keys = {
                id(key) for node in ast.walk(statement.value) if isinstance(node, ast.Dict)
                for key in node.keys if _is_text(key) and key.value.isidentifier()
            }
            for node in ast.walk(statement.value):
                if _is_text(node) and id(node) not in keys and _reads(node.value):
                    found[COMMON].add(node.value)


def _from_papers(tree: ast.Module, found: set[str]) -> None:
    """Texts of documents: what is handed to the words of a reader, or marked for that."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and node.args:
            name = _name(node.func)
            told = node.args[0] if name in _PAPER_CALLS else None
            if name == "mark":
                found.update(n.value for n in _values(node.args[0]) if _is_text(n))
            elif isinstance(told, ast.IfExp):
                found.update(n.value for n in (told.body, told.orelse) if _is_text(n))
            elif told is not None and _is_text(told):
                found.add(told.value)


def _values(node: ast.expr) -> Iterator[ast.expr]:
    """What is marked: a text, those of a row, those that a table leads to."""
    if isinstance(node, ast.Dict):
        yield from node.values
    elif isinstance(node, ast.Tuple):
        yield from node.elts
    else:
        yield node


def _reads(text: str) -> bool:
    # a stroke is a path's, but in a sentence that of a unit or of a standard
    sentence = len(re.findall(r"(?<!/)\b[a-z]{3,}\b(?!/)", text)) > 3
    text = text.replace("/", "") if sentence else text
    return len(re.findall(r"[a-zA-Z]", text)) > 2 and not _NO_WORDS.search(text)


def _name(node: ast.expr) -> str:
    if isinstance(node, ast.Attribute):
        return node.attr
    return node.id if isinstance(node, ast.Name) else ""


def _is_text(node: ast.AST) -> bool:
    return isinstance(node, ast.Constant) and isinstance(node.value, str)


def _from_messages(tree: ast.Module, found: set[str]) -> None:
    """Sentences of a layer below, and the names of properties in its errors."""
    skipped = _docstrings(tree)
    for node in ast.walk(tree):
        if isinstance(node, ast.JoinedStr):
            skipped.update(id(inner) for inner in ast.walk(node) if inner is not node)
        if isinstance(node, ast.Call) and _name(node.func).endswith("Error"):
            found.update(a.value for a in node.args if _is_text(a) and _reads(a.value))
    for node in ast.walk(tree):
        if id(node) in skipped:
            continue
        text = _pattern(node) if isinstance(node, ast.JoinedStr) else (
            node.value if _is_text(node) else "")
        if re.search(r"[{}]", _GAP.sub("", text)):
            continue  # a line of a file, no sentence
        if " " in text.strip() and _reads(_GAP.sub("", text)):
            found.add(text)


def _docstrings(tree: ast.Module) -> set[int]:
    """Texts that stand as statements: docstrings of modules, classes, functions and values."""
    return {
        id(node.value) for node in ast.walk(tree)
        if isinstance(node, ast.Expr) and _is_text(node.value)
    }


def _pattern(node: ast.JoinedStr) -> str:
    text, gaps = "", 0
    for part in node.values:
        if isinstance(part, ast.Constant):
            text += part.value
        else:
            text += f"{{{gaps}}}"
            gaps += 1
    return text


def _from_classes(found: Texts) -> None:
    """Choices, labels and hints of specifications, tooltips of properties."""
    host.import_freecad()
    from closetbench.core.parts import Role
    from closetbench.model.base import Scripted
    from closetbench.model.contents import CONTENTS
    from closetbench.model.spec_table import field_texts, label_text
    from closetbench.resources import load_catalogue

    for layer in ("core", "stock", "model"):
        package = importlib.import_module(f"closetbench.{layer}")
        for info in pkgutil.iter_modules(package.__path__, package.__name__ + "."):
            for kind in vars(importlib.import_module(info.name)).values():
                if not isinstance(kind, type) or not kind.__module__.startswith("closetbench."):
                    continue
                if issubclass(kind, Enum):
                    found[COMMON].update(m.value for m in kind if isinstance(m.value, str))
                elif issubclass(kind, Scripted):
                    found[PROPERTY].update(p.text for p in kind.properties if p.text)
                elif is_dataclass(kind) and kind.__name__.endswith("Spec"):
                    for one in _with_inner(kind):
                        found[COMMON].update(label_text(f.name) for f in fields(one))
                        found[COMMON].update(field_texts(one).values())
    # a part may have a name of its own where the windows speak of a side
    found[PAPERS].update(role.value for role in Role)
    catalogue = load_catalogue()
    for table in (catalogue.materials, catalogue.bands, catalogue.bars, catalogue.slides,
                  catalogue.hinges, catalogue.hardware):
        found[COMMON].update(item.title for item in table.values())
    for kind in CONTENTS:
        found[COMMON].add(re.sub(r"(?<!^)([A-Z])", r" \1", kind).capitalize())


def _with_inner(kind: type, seen: set[type] | None = None) -> Iterator[type]:
    """A specification and the records in it."""
    import typing

    seen = set() if seen is None else seen
    if kind in seen:
        return
    seen.add(kind)
    yield kind
    for hint in typing.get_type_hints(kind).values():
        for inner in (hint, *typing.get_args(hint)):
            if isinstance(inner, type) and is_dataclass(inner):
                yield from _with_inner(inner, seen)


def write(path: Path, language: str, texts: Texts, known: dict[tuple[str, str], str]) -> None:
    """A .ts file with all texts, those without a translation marked as unfinished."""
    root = ET.Element("TS", version="2.1", language=language, sourcelanguage="en")
    for context in sorted(texts):
        if not texts[context]:
            continue
        element = ET.SubElement(root, "context")
        ET.SubElement(element, "name").text = context
        for source in sorted(texts[context]):
            message = ET.SubElement(element, "message")
            ET.SubElement(message, "source").text = source
            told = ET.SubElement(message, "translation")
            if (context, source) in known:
                told.text = known[context, source]
            else:
                told.set("type", "unfinished")
    ET.indent(root, " ")
    body = ET.tostring(root, encoding="unicode")
    path.write_text(
        f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{body}\n', encoding="utf-8")


def ts_file(language: str) -> Path:
    """Where a language's translations are."""
    return FOLDER / f"closetbench_{language}.ts"


def lacking(language: str, texts: Texts) -> list[tuple[str, str]]:
    """What a language's file does not have."""
    known = read(ts_file(language))
    return sorted((c, t) for c, found in texts.items() for t in found if (c, t) not in known)


def compiler() -> str:
    """Qt's lrelease."""
    for name in ("lrelease", "/usr/lib/qt5/bin/lrelease", "/usr/lib/qt6/bin/lrelease"):
        path = shutil.which(name)
        if path:
            return path
    raise SystemExit("tools/translations.py: no lrelease: apt-get install qttools5-dev-tools")


def main() -> None:
    texts = collect()
    if "--list" in sys.argv:
        for language in LANGUAGES:
            for context, text in lacking(language, texts):
                print(json.dumps([language, context, text], ensure_ascii=False))
        return
    FOLDER.mkdir(exist_ok=True)
    PATTERNS.write_text(
        json.dumps(sorted(texts[SAID]), ensure_ascii=False, indent=0) + "\n", encoding="utf-8")
    for language in LANGUAGES:
        path = ts_file(language)
        write(path, language, texts, read(path))
        subprocess.run(
            [compiler(), "-silent", str(path), "-qm", str(path.with_suffix(".qm"))], check=True)
        print(f"{path.name}: {len(lacking(language, texts))} texts lack a translation")


if __name__ == "__main__":
    main()
