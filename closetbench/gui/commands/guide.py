"""The command that shows the steps of the work."""

from __future__ import annotations

from closetbench.gui.commands.base import Command, mark


class Guide(Command):
    """Shows or closes the panel of the steps."""

    name = "Closetbench_Guide"
    text = mark("Closetbench_Guide", "Steps of the work")
    tip = mark(
        "Closetbench_Guide",
        "Show or close the list that says what is done, what is next and what is wrong",
    )
    icon = "guide"

    def IsActive(self) -> bool:  # noqa: N802
        """Always: the panel is in nobody's way."""
        return True

    def run(self) -> None:
        from closetbench.gui import guide

        guide.toggle()


COMMANDS = (Guide(),)
