"""The task panel that writes the sheet to take along to the closet."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from closetbench.core.errors import ClosetError
from closetbench.core.survey_sheet import (
    SurveySheet,
    level_step,
    rough_survey,
    survey_sheet,
)
from closetbench.gui.fields import CheckField
from closetbench.gui.files import PathField, file_stem, home_folder
from closetbench.gui.form import Form
from closetbench.gui.qt import translate
from closetbench.gui.report import report
from closetbench.gui.task import TaskPanel
from closetbench.model import bridge
from closetbench.model.spoken import words
from closetbench.model.survey import site_of

CONTEXT = "Closetbench_SurveySheet"
FILES = "PDF (*.pdf);;SVG (*.svg);;PNG (*.png)"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


class SurveySheetPanel(TaskPanel):
    """Writes the sheet; the document does not change."""

    page = "SurveySheet"

    def __init__(self, closet: Any, title: str) -> None:
        super().__init__(closet.Document, title)
        self.closet = closet

    def build(self) -> None:
        form = Form(_tr("Survey sheet"), "survey_sheet")
        self.blank = CheckField("blank", _tr("Leave all readings blank"))
        form.check(self.blank, _tr("To measure the closet afresh, whatever was read before."))
        self.full = CheckField("full", _tr("Ask for the readings that point out a wrong one"))
        form.check(self.full, _tr("A few more, so that no single wrong reading stays unnoticed."))
        self.file = PathField(
            "file", _tr("choose a file"), _tr("Write the survey sheet"), FILES, save=True)
        form.row(_tr("File"), self.file)
        note = form.note("sheet")
        measured = self._site().survey is not None
        self.blank.put(not measured)
        form.enable(self.blank, measured)
        self.full.put(True)
        stem = file_stem(self.closet.Label)
        self.file.put(str(home_folder() / f"{stem}-survey.pdf"))
        note.setText(
            _tr("Pages A4; the name's ending says PDF, SVG or PNG.") if measured else _tr(
                "The closet has sizes only: they draw it, and every reading is left blank."))
        self.form = [form]

    def _site(self) -> Any:
        survey = bridge.survey_for(self.closet)
        if survey is None:
            raise ClosetError(self.closet.Label, _tr("survey"), _tr("missing"),
                              _tr("put a survey into the closet's group"))
        return site_of(survey)

    def _sheet(self) -> SurveySheet:
        site = self._site()
        form = bridge.format_of(self.closet)
        survey = site.survey or rough_survey(site.size, level_step(form))
        blank = site.survey is None or bool(self.blank.value())
        return survey_sheet(self.closet.Label, survey, blank=blank, full=bool(self.full.value()))

    def finish(self) -> None:
        """Write the sheet."""
        from closetbench.shop.survey_sheet import write_survey_sheet

        text = str(self.file.value()).strip()
        if not text:
            raise ClosetError(self.title, _tr("file"), _tr("empty"), _tr("choose a file"))
        written = write_survey_sheet(
            self._sheet(), Path(text).expanduser(), bridge.format_of(self.closet), words())
        report(_tr("Written: {}").format(", ".join(map(str, written))))
