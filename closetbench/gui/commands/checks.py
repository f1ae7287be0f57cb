"""Commands over a closet, built or not: what was found in it, and the sheet to measure with."""

from __future__ import annotations

from typing import Any

from closetbench.gui.commands.base import Command, chosen, mark, there_are


class OfCloset(Command):
    """A command over one closet."""

    def run(self) -> None:
        closet = chosen("Closet")
        if closet is not None:
            self.open(closet)
        elif there_are("Closet"):
            self.ask_for(mark("Closetbench", "Select the closet that this is for."), "Closetbench")
        else:
            self.ask_for(mark(
                "Closetbench", "There is no closet in this document: start one first."
            ), "Closetbench")

    def open(self, closet: Any) -> None:
        """Open the panel for a closet."""
        raise NotImplementedError


class Checks(OfCloset):
    """What was found in a closet."""

    name = "Closetbench_Checks"
    text = mark("Closetbench_Checks", "Checks…")
    tip = mark(
        "Closetbench_Checks",
        "See what is dangerous, doubtful or not checked in a closet, and what to do about it",
    )
    icon = "checks"
    accel = "C, K"

    def open(self, closet: Any) -> None:
        from closetbench.gui.checks_panel import ChecksPanel

        ChecksPanel(closet, self.title).start()


class SurveySheet(OfCloset):
    """The sheet to take along to the closet."""

    name = "Closetbench_SurveySheet"
    text = mark("Closetbench_SurveySheet", "Survey sheet…")
    tip = mark(
        "Closetbench_SurveySheet",
        "Write a sheet with drawings of the closet, numbered readings to take and blanks for them",
    )
    icon = "survey_sheet"

    def open(self, closet: Any) -> None:
        from closetbench.gui.survey_sheet_panel import SurveySheetPanel

        SurveySheetPanel(closet, self.title).start()


COMMANDS = (Checks(), SurveySheet())
