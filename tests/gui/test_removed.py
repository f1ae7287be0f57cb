"""What is left when the add-on is taken away: its settings, and whole files."""

from __future__ import annotations

import pytest

from closetbench.model import card_library
from tests.gui import harness

pytestmark = [pytest.mark.gui, pytest.mark.once]


def test_taken_away_it_leaves_only_settings(gui, tmp_path, monkeypatch):
    path = str(tmp_path / "closet.FCStd")
    before = gui("removed.py", there=True, file=path)

    def bare(home, env):
        version = furnish(home, env)
        for link in home.rglob(harness.MODULE):
            link.unlink()
        return version

    furnish = harness.furnish
    monkeypatch.setattr(harness, "furnish", bare)
    after = gui("removed.py", judge=False, there=False, file=path)
    assert after.finished
    assert after.status == 0
    assert after.failures == ()
    assert len(before.records["volumes"]) > 5
    assert after.records["volumes"] == before.records["volumes"] == after.records["recomputed"]
    assert after.records["active"]
    # FreeCAD keeps where bars and docks of any workbench were; settings of ours are one group,
    # and where FreeCAD has cards on shapes one more says where ours were
    mods = "BaseApp/Preferences/Mod/"
    cards = f"{mods}Material/Resources/Modules/Closetbench"
    assert {g for g in after.records["preferences"] if mods in g} == {
        f"{mods}Closetbench", *([cards] if card_library.has_cards() else []),
    }
    # nothing is said of us but, on opening the file, that its program is missing
    start, marker, _ = after.report.partition("-- the file is opened")
    assert marker
    assert [line for line in harness.error_lines(start) if "closet" in line.lower()] == []
