"""Commands that start, survey and open closets."""

from __future__ import annotations

import FreeCAD

from closetbench.gui.commands.base import (
    Command,
    chosen,
    document_or_new,
    mark,
    there_are,
)
from closetbench.gui.help_pages import page_url


class Start(Command):
    """A new closet with its survey."""

    name = "Closetbench_Start"
    text = mark("Closetbench_Start", "Start a closet…")
    tip = mark("Closetbench_Start", "Start a closet from readings in the room or from its sizes")
    icon = "start"
    accel = "C, N"

    def run(self) -> None:
        from closetbench.gui.start_panel import StartPanel

        doc, new = document_or_new()
        StartPanel.begin(doc, self.title, new)


class Survey(Command):
    """The readings of a closet."""

    name = "Closetbench_Survey"
    text = mark("Closetbench_Survey", "Survey…")
    tip = mark(
        "Closetbench_Survey",
        "Enter the readings taken in the closet and see which plumb, level box fits",
    )
    icon = "survey"
    accel = "C, S"

    def run(self) -> None:
        from closetbench.gui.panels import open_for
        from closetbench.model.bridge import survey_for

        closet = chosen("Closet")
        survey = survey_for(closet) if closet is not None else None
        if survey is not None:
            open_for(survey)
        elif there_are("Closet"):
            self.ask_for(mark("Closetbench_Survey", "Select the closet to survey."))
        else:
            self.ask_for(mark(
                "Closetbench_Survey", "There is no closet in this document: start one first."))


class _Example(Command):
    """An example, in a document of its own."""

    icon = "example"
    file = ""

    def run(self) -> None:
        from closetbench.gui.looking import show_all
        from closetbench.job import read_job
        from closetbench.model.make import closet_from_design, make_layout
        from closetbench.resources import RESOURCES

        job = read_job(RESOURCES / "examples" / self.file)
        doc = FreeCAD.newDocument(job.design.name)
        doc.openTransaction(self.title)
        closet = closet_from_design(
            doc, job.design, job.catalogue(), catalogue_file=job.catalogue_file, form=job.lengths
        )
        make_layout(doc, closet, job.cutting, job.shop)
        doc.recompute()
        doc.commitTransaction()
        show_all()


class BoxRoom(_Example):
    """The metric example."""

    name = "Closetbench_BoxRoom"
    text = mark("Closetbench_BoxRoom", "Example: the box room at number nine")
    tip = mark(
        "Closetbench_BoxRoom",
        "Open an example in millimetres; its readings and sizes are invented",
    )
    file = "box-room.toml"


class Porch(_Example):
    """The example in inches."""

    name = "Closetbench_Porch"
    text = mark("Closetbench_Porch", "Example: the porch closet")
    tip = mark(
        "Closetbench_Porch", "Open an example in inches; its readings and sizes are invented")
    file = "porch-closet.toml"


class Examples:
    """Both examples under one button."""

    name = "Closetbench_Examples"

    def GetCommands(self) -> tuple[str, ...]:  # noqa: N802
        """What is under the button."""
        return (BoxRoom.name, Porch.name)

    def GetDefaultCommand(self) -> int:  # noqa: N802
        """What the button itself does."""
        return 0

    def GetResources(self) -> dict[str, str]:  # noqa: N802
        """What FreeCAD shows."""
        tip = mark("Closetbench_Examples", "Open an example closet in a document of its own")
        return {
            "MenuText": mark("Closetbench_Examples", "Examples"),
            "ToolTip": tip, "StatusTip": tip, "WhatsThis": page_url(self.name),
        }

    def CmdHelpURL(self) -> str:  # noqa: N802
        """The page of help."""
        return page_url(self.name)

    def IsActive(self) -> bool:  # noqa: N802
        """Usable while no task panel is open."""
        return BoxRoom().IsActive()


COMMANDS = (Start(), Survey(), BoxRoom(), Porch(), Examples())
