"""Material cards: what they say, whose parts they are on, and that files need none of them."""

from __future__ import annotations

import os
import subprocess
import sys
import zipfile
from pathlib import Path

import FreeCAD
import pytest

from closetbench import host
from closetbench.core.specs import PanelSpec
from closetbench.model import card_library, cards
from closetbench.model.base import class_of, ours
from closetbench.model.bridge import catalogue_of, closet_of
from closetbench.model.make import closet_from_design, make_panel
from closetbench.resources import load_catalogue
from closetbench.shop.board_colours import board_colour
from closetbench.shop.lines import part_lines

pytestmark = pytest.mark.freecad

on_shapes = pytest.mark.skipif(
    not card_library.has_cards(), reason="this FreeCAD has no cards on shapes"
)
STEEL = "Steel"
"""A card that comes with FreeCAD has this in its name."""

WITHOUT = """
import sys
sys.path.append(sys.argv[1])
import FreeCAD
doc = FreeCAD.openDocument(sys.argv[2])
doc.recompute()
print("cards:", sorted({o.ShapeMaterial.Name for o in doc.Objects if hasattr(o, "ShapeMaterial")}))
print("volume:", sum(o.Shape.Volume for o in doc.Objects if hasattr(o, "Shape")))
doc.saveAs(sys.argv[3])
sys.stdout.flush()
import os
os._exit(0)
"""


@pytest.fixture
def closet(doc, two_carcasses):
    return closet_from_design(doc, two_carcasses)


def parts_of(doc):
    return list(ours(doc, "ClosetPart"))


def manager():
    import Materials

    return Materials.MaterialManager()


def steel():
    found = (c for c in manager().Materials.values() if STEEL in c.Name)
    return next(c for c in found if c.hasPhysicalProperty("Density"))


def cards_by_name(doc):
    return {o.FullName: o.ShapeMaterial.Name for o in parts_of(doc)}


def test_the_files_are_what_the_catalogue_says(root):
    sys.path.insert(0, str(root / "tools"))
    try:
        import material_cards
    finally:
        sys.path.pop(0)
    written = {
        path.name: path.read_text(encoding="utf-8") for path in Path(card_library.FOLDER).iterdir()
    }
    assert written == material_cards.texts()
    assert len(written) == len(load_catalogue().materials) > 20


def test_numbers_never_change():
    # noted when the first cards were made
    assert cards.number_of("ply18") == "bc8dff0f-dac2-574f-8e98-611ce8e2be72"


@on_shapes
def test_freecad_reads_of_every_card_what_the_catalogue_says(closet):
    for key, board in load_catalogue().materials.items():
        card = manager().getMaterial(cards.number_of(key))
        assert (card.Name, card.LibraryName) == (key, card_library.NAME)
        density = FreeCAD.Units.Quantity(card.getPhysicalValue("Density"))
        assert density.getValueAs("kg/m^3").Value == pytest.approx(board.density, rel=1e-5)
        names = (
            ("YoungsModulus",) if board.e_along == board.e_across
            else ("YoungsModulusX", "YoungsModulusY")
        )
        for name, e in zip(names, (board.e_along, board.e_across), strict=False):
            stiffness = FreeCAD.Units.Quantity(card.getPhysicalValue(name))
            assert stiffness.getValueAs("MPa").Value == pytest.approx(e, rel=1e-5)
        colour = card.getAppearanceValue("DiffuseColor").strip("()").split(",")
        assert tuple(map(float, colour[:3])) == pytest.approx(board_colour(board))
        assert board.title in card.Description
        assert board.source in card.Description


@on_shapes
def test_a_part_has_the_card_of_its_board_and_weighs_what_the_bill_says(doc, closet):
    parts = parts_of(doc)
    assert {o.Material for o in parts} >= {"ply18", "melamine18"}
    assert [o.FullName for o in parts if o.ShapeMaterial.Name != o.Material] == []
    whole = 0.0
    for obj in parts:
        density = FreeCAD.Units.Quantity(obj.ShapeMaterial.getPhysicalValue("Density"))
        mass = (obj.Shape.Volume * density.getValueAs("kg/mm^3")).Value
        assert mass == pytest.approx(obj.Weight, rel=1e-4)
        whole += mass
    lines = part_lines(closet_of(closet).parts, catalogue_of(closet))
    assert whole == pytest.approx(sum(x.weight * len(x.parts) for x in lines), rel=1e-4)


@on_shapes
def test_files_hold_no_card_of_ours_and_parts_have_it_again(doc, closet, reopen, tmp_path):
    path = tmp_path / "made.FCStd"
    doc.saveCopy(str(path))
    with zipfile.ZipFile(path) as archive:
        text = archive.read("Document.xml").decode()
    assert not [key for key in load_catalogue().materials if cards.number_of(key) in text]
    again = reopen(doc)
    assert cards_by_name(again) == cards_by_name(doc)
    assert all(o.ShapeMaterial.Name == o.Material for o in parts_of(again))


@on_shapes
def test_a_freecad_without_the_library_opens_the_file_in_silence(doc, closet, tmp_path):
    made, without = tmp_path / "made.FCStd", tmp_path / "without.FCStd"
    doc.saveCopy(str(made))
    home = tmp_path / "home"
    home.mkdir()
    env = {k: v for k, v in os.environ.items() if not k.startswith(("PYTHON", "XDG_"))}
    done = subprocess.run(
        [sys.executable, "-c", WITHOUT, str(host.find_freecad()), str(made), str(without)],
        capture_output=True, text=True, cwd="/", env=env | {"HOME": str(home)}, timeout=120,
        check=True,
    )
    assert "cards: ['Default']" in done.stdout
    said = (done.stdout + done.stderr).lower()
    assert "not found" not in said.replace("module 'closetbench'", "")
    assert "exception" not in said
    opened = FreeCAD.openDocument(str(without))
    try:
        assert cards_by_name(opened) == cards_by_name(doc)
    finally:
        FreeCAD.closeDocument(opened.Name)


@on_shapes
def test_a_card_that_the_user_chose_stays(doc, closet, reopen):
    side = next(o for o in parts_of(doc) if o.Role == "side")
    side.ShapeMaterial = steel()
    doc.recompute()
    side.touch()
    doc.recompute()
    assert side.ShapeMaterial.UUID == steel().UUID
    again = reopen(doc).getObject(side.Name)
    assert again.ShapeMaterial.UUID == steel().UUID
    again.touch()
    again.Document.recompute()
    assert again.ShapeMaterial.UUID == steel().UUID
    # FreeCAD's plain one says: the board's again
    again.ShapeMaterial = manager().getMaterial(cards._PLAIN)
    again.touch()
    again.Document.recompute()
    assert again.ShapeMaterial.Name == again.Material


@on_shapes
def test_no_card_says_another_density_than_the_users_catalogue(doc, closet, tmp_path):
    own = tmp_path / "own.toml"
    own.write_text("[material.ply18]\ndensity = 480\n", encoding="utf-8")
    closet.Catalogue = str(own)
    doc.recompute()
    ply = [o for o in parts_of(doc) if o.Material == "ply18"]
    assert {o.ShapeMaterial.Name for o in ply} == {"Default"}
    assert {o.ShapeMaterial.Name for o in parts_of(doc) if o not in ply} >= {"melamine18"}
    # a thickness is none of a card's business
    own.write_text("[material.ply18]\nmeasured = 17.6\n", encoding="utf-8")
    closet.Catalogue = ""
    doc.recompute()
    closet.Catalogue = str(own)
    doc.recompute()
    assert {o.ShapeMaterial.Name for o in ply} == {"ply18"}


@on_shapes
def test_another_board_brings_its_card_and_undo_takes_it_back(doc, closet):
    carcass = next(o for o in doc.Objects if class_of(o) == "Carcass" and o.Label == "Shelves")
    before = cards_by_name(doc)
    doc.openTransaction("Board")
    carcass.Material = "birch18"
    doc.recompute()
    doc.commitTransaction()
    side = next(o for o in parts_of(doc) if o.Component == carcass and o.Role == "side")
    assert side.ShapeMaterial.Name == "birch18"
    doc.undo()
    assert cards_by_name(doc) == before
    doc.redo()
    assert side.ShapeMaterial.Name == "birch18"


@on_shapes
def test_a_single_panel_has_a_card_too(doc, reopen):
    panel = make_panel(doc, None, PanelSpec("Alone", "birch18", 600.0, 300.0))
    doc.recompute()
    assert panel.ShapeMaterial.Name == "birch18"
    assert reopen(doc).getObject(panel.Name).ShapeMaterial.Name == "birch18"


@on_shapes
def test_opening_a_file_leaves_its_parts_untouched(doc, closet, reopen):
    again = reopen(doc)
    assert [o.Name for o in parts_of(again) if "Touched" in o.State] == []


@pytest.mark.skipif(card_library.has_cards(), reason="this FreeCAD has cards on shapes")
def test_where_there_are_no_cards_nothing_is_registered(doc, closet):
    card_library.register()
    assert card_library.NAME not in FreeCAD.ParamGet(card_library.MODULES).GetGroups()
    assert not hasattr(parts_of(doc)[0], cards.PROPERTY)
