"""The add-on as FreeCAD and its add-on manager see it, and the house rules of the files."""

from __future__ import annotations

import ast
import re
import subprocess
import sys
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from pathlib import Path

import pytest

import closetbench

NAMESPACE = "{https://wiki.freecad.org/Package_Metadata}"
NOT_OURS = {".git", ".venv", "build", "__pycache__", ".hypothesis"}
FREECAD_GIVES = {
    "FreeCAD", "FreeCADGui", "Part", "Mesh", "TechDraw", "TechDrawGui", "Spreadsheet", "Import",
    "ImportGui", "PySide", "pivy",
}  # fmt: skip
LIBRARIES = {"ezdxf", "matplotlib", "networkx", "numpy", "openpyxl", "scipy", "shapely"}
LONGEST_FILE = 400
LARGEST_LOGO = 10_000  # bytes; what reviewers of FreeCAD's add-on index ask for


def files(root: Path, *suffixes: str) -> Iterator[Path]:
    for path in sorted(root.iterdir()):
        if path.name in NOT_OURS or path.name.endswith("_cache"):
            continue
        if path.is_dir():
            yield from files(path, *suffixes)
        elif not suffixes or path.suffix in suffixes:
            yield path


@pytest.fixture(scope="module")
def manifest(root: Path) -> ET.Element:
    return ET.parse(root / "package.xml").getroot()


def texts(element: ET.Element, *tags: str) -> list[str]:
    return [found.text or "" for found in element.findall("/".join(NAMESPACE + t for t in tags))]


@pytest.mark.freecad
def test_freecad_reads_the_manifest(root):
    import FreeCAD

    metadata = FreeCAD.Metadata(str(root / "package.xml"))
    assert metadata.Name == "Closetbench"
    assert metadata.Version == closetbench.__version__
    assert metadata.FreeCADMin.startswith("0.20")
    assert [(entry["name"], entry["file"]) for entry in metadata.License] == [
        ("LGPL-2.1-or-later", "LICENSE")
    ]
    assert metadata.supportsCurrentFreeCAD()
    (workbench,) = metadata.Content["workbench"]
    assert workbench.Classname == "ClosetbenchWorkbench"
    assert workbench.Subdirectory == "./"
    assert workbench.supportsCurrentFreeCAD()
    (repository,) = (url for url in metadata.Urls if url["type"] == "repository")
    assert repository["branch"] == "main"


def test_manifest_requirements(manifest):
    assert texts(manifest, "version") == [closetbench.__version__]
    assert re.fullmatch(r"\d+\.\d+\.\d+", closetbench.__version__)
    assert texts(manifest, "pythonmin") == ["3.11"]
    assert texts(manifest, "freecadmin") == ["0.20.0"]
    assert re.fullmatch(r"\d{4}-\d\d-\d\d", texts(manifest, "date")[0])
    (maintainer,) = manifest.findall(f"{NAMESPACE}maintainer")
    assert "@" in maintainer.get("email", "")
    assert not re.search(r"<|&lt;", texts(manifest, "description")[0])


def test_declared_libraries_cover_the_imports(root, manifest):
    depends = manifest.findall(f"{NAMESPACE}depend")
    assert {depend.get("type") for depend in depends} == {"python"}
    declared = {depend.text for depend in depends}
    imported = set()
    for path in files(root / "closetbench", ".py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Import):
                imported |= {alias.name.split(".")[0] for alias in node.names}
            elif isinstance(node, ast.ImportFrom):
                assert node.level == 0, f"{path}:{node.lineno}: import by full name"
                imported.add((node.module or "").split(".")[0])
    third_party = imported - set(sys.stdlib_module_names) - FREECAD_GIVES - {"closetbench"}
    assert third_party == declared
    assert declared <= LIBRARIES


def test_no_stray_requirements(root):
    # The add-on manager takes any such file for a list of dependencies.
    assert [path for path in files(root) if re.match(r"requirements.*\.txt", path.name)] == []


def test_icons_are_small_and_there(root, manifest):
    icons = texts(manifest, "icon") + texts(manifest, "content", "workbench", "icon")
    assert len(icons) == 2
    for icon in icons:
        path = root / icon
        assert path.stat().st_size < LARGEST_LOGO
        assert ET.parse(path).getroot().tag.endswith("svg")


def test_licence_is_whole(root):
    text = (root / "LICENSE").read_text(encoding="utf-8")
    assert "GNU LESSER GENERAL PUBLIC LICENSE" in text
    assert "Version 2.1, February 1999" in text
    assert "END OF TERMS AND CONDITIONS" in text


def test_start_up_imports_nothing_at_the_top(root):
    starters = sorted(root.glob("Init*.py"))
    assert starters == [root / "Init.py", root / "InitGui.py"]
    for path in starters:
        tree = ast.parse(path.read_text(encoding="utf-8"))
        deferred = {
            inner
            for node in ast.walk(tree)
            if isinstance(node, ast.FunctionDef)
            for inner in ast.walk(node)
        }
        imports = [n for n in ast.walk(tree) if isinstance(n, ast.Import | ast.ImportFrom)]
        assert [node.lineno for node in imports if node not in deferred] == []


@pytest.mark.freecad
def test_init_watches_documents_and_loads_no_more_of_us(root):
    """In a fresh interpreter, as FreeCAD does it: executed without __file__."""
    code = (
        "import sys; sys.path.insert(0, sys.argv[1]); from closetbench.host import import_freecad;"
        "import_freecad(); exec(open(sys.argv[1] + '/Init.py', encoding='utf-8').read());"
        "from closetbench.model import watch; assert watch._installed;"
        "print(sorted(m for m in sys.modules if m.startswith('closetbench.')))"
    )
    done = subprocess.run(
        [sys.executable, "-c", code, str(root)], capture_output=True, text=True, timeout=120,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    loaded = set(ast.literal_eval(done.stdout.strip().splitlines()[-1]))
    asked = {"closetbench.host", "closetbench.core", "closetbench.core.errors"}
    assert loaded - asked == {
        "closetbench.model", "closetbench.model.card_library", "closetbench.model.watch",
    }


def test_no_paths_of_one_machine(root):
    pattern = re.compile(r"(?<![\w.$}-])/(home|root|tmp|work|Users)/\w")
    found = []
    for path in files(root, ".py", ".sh", ".md", ".toml", ".xml", ".svg", ".ui", ".ts", ".csv", ""):
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            if pattern.search(line):
                found.append(f"{path.relative_to(root)}:{number}: {line.strip()}")
    assert found == []


def test_files_are_short_enough_to_read(root):
    lengths = {
        str(path.relative_to(root)): len(path.read_text(encoding="utf-8").splitlines())
        for path in files(root, ".py", ".sh")
    }
    assert {name: lines for name, lines in lengths.items() if lines > LONGEST_FILE} == {}
