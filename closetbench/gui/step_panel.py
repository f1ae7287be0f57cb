"""The task panel that writes parts as a STEP file."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import FreeCADGui

from closetbench.core.errors import ClosetError
from closetbench.gui.dangers import DangerNote, report_written
from closetbench.gui.fields import ChoiceField, Field
from closetbench.gui.files import PathField, file_stem, home_folder
from closetbench.gui.form import Form
from closetbench.gui.qt import translate
from closetbench.gui.task import TaskPanel
from closetbench.model.step import bodies_in, write_step

CONTEXT = "Closetbench_Step"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


class StepPanel(TaskPanel):
    """Writes the file; the document does not change."""

    page = "Step"

    def __init__(self, closet: Any, title: str) -> None:
        super().__init__(closet.Document, title)
        self.closet = closet
        self.selected = bodies_in(FreeCADGui.Selection.getSelection(self.doc.Name))

    def build(self) -> None:
        form = Form(_tr("Solids"), "step")
        form.whole(DangerNote(self.closet))
        every = bodies_in([self.closet])
        shown = [o for o in every if o.ViewObject.Visibility]
        choices = [(every, _tr("the whole closet"))]
        if 0 < len(shown) < len(every):
            choices.append((shown, _tr("what is shown")))
        if 0 < len(self.selected) < len(every):
            choices.append((self.selected, _tr("what is selected")))
        self.which = ChoiceField("which", choices)
        self.which.edited.connect(self._count)
        form.row(_tr("Parts of"), self.which)
        if len(self.selected) < len(every):
            self.which.put(self.selected or every)
        self.file = PathField(
            "file", _tr("choose a file"), _tr("Write the solids"), "STEP (*.step *.stp)",
            save=True)
        self.file.put(str(home_folder() / f"{file_stem(self.closet.Label)}.step"))
        form.row(_tr("STEP file"), self.file)
        self.note = form.note("count")
        self.form = [form]

    def refresh(self) -> None:
        self._count()

    def _count(self, field: Field | None = None) -> None:
        self.note.setText(_tr(
            "{} solids, each with its name, where it stands; millimetres.").format(
            len(self.which.value())))

    def finish(self) -> None:
        """Write the file, in the colours of the view."""
        import ImportGui

        text = str(self.file.value()).strip()
        if not text:
            raise ClosetError(self.title, _tr("file"), _tr("empty"), _tr("choose a file"))
        path = write_step(Path(text).expanduser(), self.which.value(), ImportGui)
        report_written(_tr("Written: {}").format(path), self.closet)
