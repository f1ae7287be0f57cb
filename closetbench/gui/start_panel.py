"""The task panel that starts a closet: its name, then its survey."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import FreeCADGui

from closetbench.core.errors import ClosetError
from closetbench.gui import settings
from closetbench.gui.fields import Field, TextField
from closetbench.gui.form import Form
from closetbench.gui.qt import translate
from closetbench.gui.survey_panel import SurveyPanel
from closetbench.gui.units import current_format
from closetbench.model import bridge
from closetbench.model.make import make_closet
from closetbench.resources import load_catalogue

CONTEXT = "Closetbench_Start"


def _own_catalogue() -> str:
    """The catalogue of the user's own, if it can be read now; else none."""
    path = settings.text(settings.CATALOGUE)
    try:
        load_catalogue(Path(path) if path else None)
    except ClosetError:
        return ""
    return path


class StartPanel(SurveyPanel):
    """A survey panel with the name of the closet on top."""

    page = "Start"

    @classmethod
    def begin(cls, doc: Any, title: str, new_document: bool) -> bool:
        """Open the panel over a new closet; lengths in its papers follow FreeCAD's units."""

        def make() -> Any:
            closet = make_closet(doc, translate(CONTEXT, "Closet"))
            form = current_format()
            closet.Catalogue = _own_catalogue()
            closet.LengthStyle, closet.LengthStep = form.style, str(form.resolution)
            return bridge.survey_for(closet)

        return cls(doc, title, make=make, new_document=new_document).start()

    def build(self) -> None:
        super().build()
        head = Form(translate(CONTEXT, "Closet"), "closet")
        self.name = TextField("name")
        head.row(translate(CONTEXT, "Name"), self.name)
        self.name.put(bridge.closet_for(self.obj).Label)
        self.name.edited.connect(self._rename)
        self.form.insert(0, head)

    def accept(self) -> bool:
        """OK: what comes next is meant for this closet."""
        closet = bridge.closet_for(self.obj)
        if not super().accept():
            return False
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.Selection.addSelection(closet)
        return True

    def first_field(self) -> Field:
        return self.name

    def _rename(self, field: Field) -> None:
        name = field.value()
        if not name:
            self.set_error(field, translate(CONTEXT, "must not be empty"))
            return
        self.set_error(field, "")
        closet = bridge.closet_for(self.obj)
        closet.Label = name
        field.put(closet.Label)
