"""The command that shows the help pages."""

from __future__ import annotations

from closetbench.gui.commands.base import Command, mark


class Help(Command):
    """Shows the page of the open task, else the list of all pages."""

    name = "Closetbench_Help"
    text = mark("Closetbench_Help", "Closet help")
    tip = mark(
        "Closetbench_Help", "Read what each command is for, what to enter and what comes out")
    icon = "help"

    def IsActive(self) -> bool:  # noqa: N802
        """Always: the window is in nobody's way."""
        return True

    def run(self) -> None:
        from closetbench.gui import help as window
        from closetbench.gui.help_pages import INDEX
        from closetbench.gui.task import TaskPanel

        panel = TaskPanel.current
        window.show(INDEX if panel is None else panel.help_page())


COMMANDS = (Help(),)
