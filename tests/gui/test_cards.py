"""Material cards from FreeCAD's start to a file that is opened again."""

import pytest

from closetbench.model import card_library

pytestmark = pytest.mark.gui


def test_cards_of_parts(gui):
    run = gui("cards.py", timeout=180)
    if card_library.has_cards():
        assert run.records["cards"] == run.records["boards"]
        assert run.records["registered"]["ModuleDir"].endswith("resources/materials")
    else:
        assert run.records["cards"] == [""]
        assert run.records["registered"] == {}
