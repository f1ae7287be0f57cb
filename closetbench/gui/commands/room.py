"""Commands over the room as it is: what goes into it, and what opens in it."""

from __future__ import annotations

from typing import Any

import FreeCADGui

from closetbench.gui.commands.base import mark
from closetbench.gui.commands.checks import OfCloset


class GoesIn(OfCloset):
    """Whether the selected pieces, or all, go in."""

    name = "Closetbench_GoesIn"
    text = mark("Closetbench_GoesIn", "Does it go in…")
    tip = mark(
        "Closetbench_GoesIn",
        "See whether the selected pieces, or all, come in through the opening, and play how",
    )
    icon = "goes_in"
    accel = "C, I"

    def open(self, closet: Any) -> None:
        from closetbench.gui.goes_in_panel import GoesInPanel

        selected = FreeCADGui.Selection.getSelection(closet.Document.Name)
        GoesInPanel(closet, self.title, selected).start()


class Opens(OfCloset):
    """What drawers and doors open into."""

    name = "Closetbench_Opens"
    text = mark("Closetbench_Opens", "What opens…")
    tip = mark(
        "Closetbench_Opens",
        "Show the space that drawers, pull-outs, doors and lids open into, and what they hit",
    )
    icon = "opens"
    accel = "C, O"

    def open(self, closet: Any) -> None:
        from closetbench.gui.opens_panel import OpensPanel

        panel = OpensPanel(closet, self.title)
        if panel.start():
            panel.selected(FreeCADGui.Selection.getSelection(closet.Document.Name))


COMMANDS = (GoesIn(), Opens())
"""Our commands. Their modules import panels and the core only when a command runs."""
