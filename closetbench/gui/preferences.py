"""Our page among FreeCAD's preferences."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from closetbench.core.errors import ClosetError
from closetbench.gui import choices, settings
from closetbench.gui.fields import (
    CheckField,
    ChoiceField,
    CountField,
    Field,
    LengthField,
    NumberField,
)
from closetbench.gui.files import PathField
from closetbench.gui.form import Form
from closetbench.gui.qt import QtWidgets, translate
from closetbench.gui.units import explained
from closetbench.stock.checks import check_settings
from closetbench.stock.plan import FirstCut

CONTEXT = "Closetbench_Preferences"
NAME = "Closetbench"
"""What the group of pages is called in FreeCAD's dialog."""


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


class Page:
    """What FreeCAD asks a page for: ``form``, and to load and to save it."""

    def __init__(self, parent: Any = None) -> None:
        self.form = Form(_tr("Closets"), "closetbench")
        self._saw: dict[str, Field] = {
            "kerf": LengthField("kerf", "kerf"),
            "first": ChoiceField("first", choices.of_enum(FirstCut)),
            "stages": CountField("stages", 0, 20, _tr("no limit")),
            "seconds": NumberField("seconds", "seconds", 0, 3600, "s"),
            "tidy": NumberField("tidy", "tidy", 0, 3600, "s"),
        }
        self._catalogue = PathField(
            "catalogue", _tr("none"), _tr("Catalogue of your own"), "TOML, CSV (*.toml *.csv)")
        form = self.form
        head = form.note("new closets")
        head.setText(_tr("What new closets and new cut layouts start with. Those that are there "
                         "keep what they have."))
        form.row(_tr("Own catalogue"), self._catalogue, tip=_tr(
            "Your boards, prices and slides, laid over those that are shipped."))
        form.row(_tr("Kerf"), self._saw["kerf"], tip=_tr("Width of the cut that the blade makes."))
        form.row(_tr("First cuts"), self._saw["first"], tip=_tr(
            "Direction of the cuts that are made first on a whole sheet."))
        form.row(_tr("Changes of direction"), self._saw["stages"], tip=_tr(
            "How many times the cutting may change direction, the first counted as one."))
        form.row(_tr("Search for fewer sheets"), self._saw["seconds"])
        form.row(_tr("Search for fewer cuts"), self._saw["tidy"])
        self._remember = CheckField("remember", _tr("New components start as the last ones"))
        form.check(self._remember, _tr(
            "The materials, joints and figures that were last accepted with OK for a component "
            "of the same kind. Sizes are those of the new place."))
        self._forget = QtWidgets.QPushButton(_tr("Forget the last ones"))
        self._forget.setObjectName("forget")
        self._forget.setToolTip(_tr("New components start with what comes with the workbench."))
        self._forget.clicked.connect(self._forgotten)
        form.whole(self._forget)
        form.grid.setRowStretch(form.grid.rowCount(), 1)
        for field in form.fields:
            field.edited.connect(self._check)

    def loadSettings(self) -> None:  # noqa: N802
        """Show what is kept."""
        kept = settings.cut_settings()
        for name, field in self._saw.items():
            value = getattr(kept, name)
            field.put(0 if value is None else value)
        self._catalogue.put(settings.text(settings.CATALOGUE))
        self._remember.put(settings.remembers())

    def saveSettings(self) -> None:  # noqa: N802
        """Keep what can be used; what cannot stays as it was before."""
        for field in self.form.fields:
            field.commit()
        kept = settings.cut_settings()
        for name, field in self._saw.items():
            value = self._read(name, field)
            if value is not None:
                kept = replace(kept, **{name: value})
        if self._saw["stages"].value() == 0:
            kept = replace(kept, stages=None)
        settings.keep_cut_settings(kept)
        settings.set_text(settings.CATALOGUE, self._catalogue.value())
        settings.set_remembers(self._remember.value())

    def _read(self, name: str, field: Field) -> Any:
        """A field's value; None where it cannot be used, which is said beside it."""
        try:
            value = field.value()
            if name != "stages":
                check_settings(replace(settings.cut_settings(), **{name: value}))
        except ClosetError as error:
            self.form.error(field.name, explained(error.limit))
            return None
        self.form.error(field.name, "")
        return value or None if name == "stages" else value

    def _forgotten(self) -> None:
        settings.forget_last_values()
        self._forget.setEnabled(False)

    def _check(self, field: Field) -> None:
        if field.name in self._saw:
            self._read(field.name, field)


def register() -> None:
    """Add the page, once."""
    import FreeCADGui

    FreeCADGui.addPreferencePage(Page, NAME)
