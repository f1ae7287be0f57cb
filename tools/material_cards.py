"""Writes FreeCAD's material cards of the catalogue's boards into resources/materials.

    python3 tools/material_cards.py

All that a card says is computed: number from the key, density and stiffness from the
catalogue, colour as boards are drawn. tests/model/test_cards.py fails where they differ.
FreeCAD shows a card by the name of its file: the key, as in a part's property Material.
"""

from __future__ import annotations

import json
import sys
import xml.etree.ElementTree as ET
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from closetbench import host  # noqa: E402 - the package is found only now

host.import_freecad()

from closetbench.core.materials import Material  # noqa: E402
from closetbench.model import card_library, cards  # noqa: E402
from closetbench.resources import load_catalogue  # noqa: E402
from closetbench.shop.board_colours import board_colour  # noqa: E402

# Numbers of the models, from FreeCAD's Mod/Material/Resources/Models.
DENSITY = "454661e5-265b-4320-8e6f-fcf6223ac3af"
ISOTROPIC = "f6f9e48c-b116-4e82-ad7f-3659a9219c50"
ORTHOTROPIC = "b19ccc6b-a431-418e-91c2-0ac8c649d146"
RENDERING = "f006c7e4-35b7-43d5-bbf9-c5d572309e6e"


def texts() -> dict[str, str]:
    """The text of every card by the name of its file."""
    return {f"{key}.FCMat": card(board) for key, board in load_catalogue().materials.items()}


def card(board: Material) -> str:
    """A board's card, YAML as FreeCAD 1.0 and later read it."""
    maker, licence = _makers()
    told = (
        f"{board.title}. Stiffness is E in bending"
        + ("" if board.e_along == board.e_across else ", X along the sheet, Y across it")
        + f". Source: {board.source}"
    )
    colour = ", ".join(f"{part:g}" for part in (*board_colour(board), 1.0))
    return "\n".join((
        "---",
        "# Written by tools/material_cards.py from resources/catalogue.",
        "General:",
        f'  UUID: "{cards.number_of(board.key)}"',
        f"  Author: {_quoted(maker)}",
        f"  License: {_quoted(licence)}",
        f"  Name: {_quoted(board.key)}",
        f"  Description: {_quoted(told)}",
        "Models:",
        "  Density:",
        f'    UUID: "{DENSITY}"',
        f'    Density: "{board.density:g} kg/m^3"',
        *_stiffness(board),
        "AppearanceModels:",
        "  BasicRendering:",
        f'    UUID: "{RENDERING}"',
        f'    DiffuseColor: "({colour})"',
        "",
    ))


def _stiffness(board: Material) -> tuple[str, ...]:
    if board.e_along == board.e_across:
        return (
            "  IsotropicLinearElastic:",
            f'    UUID: "{ISOTROPIC}"',
            f'    YoungsModulus: "{board.e_along:g} MPa"',
        )
    return (
        "  OrthotropicLinearElastic:",
        f'    UUID: "{ORTHOTROPIC}"',
        f'    YoungsModulusX: "{board.e_along:g} MPa"',
        f'    YoungsModulusY: "{board.e_across:g} MPa"',
    )


def _quoted(text: str) -> str:
    return json.dumps(text, ensure_ascii=False)  # a quoted text of JSON is one of YAML


def _makers() -> tuple[str, str]:
    """Maintainer and licence, as package.xml names them."""
    package = ET.parse(ROOT / "package.xml").getroot()
    maker, licence = (package.findtext(f"{{*}}{tag}") or "" for tag in ("maintainer", "license"))
    return maker, licence


def main() -> None:
    """Write the cards that differ, remove those of boards that are no more."""
    wanted = texts()
    folder = Path(card_library.FOLDER)
    folder.mkdir(exist_ok=True)
    for path in folder.glob("*.FCMat"):
        if path.name not in wanted:
            path.unlink()
    for name, text in wanted.items():
        (folder / name).write_text(text, encoding="utf-8")


if __name__ == "__main__":
    main()
