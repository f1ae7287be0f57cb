"""Commands that show a closet in other ways, and save pictures of it."""

from __future__ import annotations

from typing import Any

from closetbench.gui.commands.base import mark
from closetbench.gui.commands.papers import Paper


class Look(Paper):
    """Pulled apart, cut open, kinds hidden, labels."""

    name = "Closetbench_Look"
    text = mark("Closetbench_Look", "Look inside…")
    tip = mark(
        "Closetbench_Look",
        "Pull the closet apart in the view, play its assembly, cut it open, hide kinds of parts "
        "or show their names",
    )
    icon = "look"
    accel = "C, V"

    def open(self, closet: Any) -> None:
        from closetbench.gui.look_panel import LookPanel

        LookPanel(closet, self.title).start()


class Pictures(Paper):
    """A set of pictures in a folder."""

    name = "Closetbench_Pictures"
    text = mark("Closetbench_Pictures", "Save pictures…")
    tip = mark(
        "Closetbench_Pictures",
        "Draw the closet from the front with sizes, from above, at an angle and pulled apart, "
        "and save the pictures into a folder",
    )
    icon = "pictures"

    def open(self, closet: Any) -> None:
        from closetbench.gui.pictures_panel import PicturesPanel

        PicturesPanel(closet, self.title).start()


COMMANDS = (Look(), Pictures())
