"""The task panel that saves a set of pictures of a closet."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import FreeCAD

from closetbench.core.errors import ClosetError
from closetbench.gui.dangers import DangerNote, report_written
from closetbench.gui.dxf_panel import layout_for, made
from closetbench.gui.fields import CheckField, ChoiceField, Field
from closetbench.gui.files import PathField, file_stem, home_folder
from closetbench.gui.form import Form
from closetbench.gui.qt import translate
from closetbench.gui.task import TaskPanel
from closetbench.model import bridge
from closetbench.model.layout import plan_of
from closetbench.model.spoken import words

CONTEXT = "Closetbench_Pictures"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


_mark = FreeCAD.Qt.QT_TRANSLATE_NOOP
_KINDS = (
    ("front", _mark("Closetbench_Pictures", "Front elevation with sizes")),
    ("plan", _mark("Closetbench_Pictures", "Plan, from above")),
    ("view", _mark("Closetbench_Pictures", "At an angle")),
    ("exploded", _mark("Closetbench_Pictures", "Pulled apart")),
    ("carcass", _mark("Closetbench_Pictures", "The carcasses alone")),
    ("room", _mark("Closetbench_Pictures", "The empty room")),
    ("drilling", _mark("Closetbench_Pictures", "Fronts and doors, to be drilled")),
    ("sheets", _mark("Closetbench_Pictures", "The sheets")),
)
"""Kinds of pictures, the set of four that is ticked to begin with first."""
_SET = 4
_ENDINGS = (
    (".png", _mark("Closetbench_Pictures", "PNG, for the screen")),
    (".pdf", _mark("Closetbench_Pictures", "PDF, for the printer")),
    (".svg", _mark("Closetbench_Pictures", "SVG, to draw on")),
)


class PicturesPanel(TaskPanel):
    """Writes pictures; the document and the view do not change."""

    page = "Pictures"

    def __init__(self, closet: Any, title: str) -> None:
        super().__init__(closet.Document, title)
        self.closet = closet

    def build(self) -> None:
        form = Form(_tr("Pictures"), "pictures")
        form.whole(DangerNote(self.closet))
        layout = layout_for(self.closet)
        self.plan = plan_of(layout) if layout is not None and not layout.OutOfDate else None
        there = self._there()
        self.kinds: dict[str, CheckField] = {}
        for index, (kind, text) in enumerate(_KINDS):
            field = self.kinds[kind] = CheckField(kind, _tr(text))
            field.put(index < _SET and kind in there)
            form.check(field)
            form.enable(field, kind in there)
            field.edited.connect(self._show_files)
        if self.plan is None:
            self.kinds["sheets"].widget.setToolTip(_tr("Plan the sheets first."))
        self.ending = ChoiceField("ending", [(e, _tr(text)) for e, text in _ENDINGS])
        self.ending.edited.connect(self._show_files)
        form.row(_tr("Kind of file"), self.ending)
        self.folder = PathField("folder", _tr("choose a folder"), _tr("Folder for the pictures"))
        self.folder.put(str(home_folder()))
        self.folder.edited.connect(self._show_files)
        form.row(_tr("Folder"), self.folder)
        self.files = form.note("files")
        self.form = [form]

    def _there(self) -> set[str]:
        """Kinds that the closet has something for."""
        built = bridge.closet_of(self.closet)
        found = {"view"}
        if built.components:
            found |= {"exploded", "plan"}
        if any(c.bays for c in built.components):
            found |= {"front", "carcass"}
        if built.room is not None:
            found.add("room")
        return found | ({"sheets"} if self.plan is not None else set())

    def refresh(self) -> None:
        self._show_files()

    def _chosen(self) -> list[str]:
        return [kind for kind, field in self.kinds.items() if field.value()]

    def _stem(self) -> str:
        return f"{file_stem(self.closet.Label)}-"

    def _show_files(self, field: Field | None = None) -> None:
        for one in self.fields:
            self.set_error(one, "")
        names = [f"{self._stem()}{kind}{self.ending.value()}" for kind in self._chosen()]
        self.files.setText(
            _tr("To be written: {}").format("; ".join(names)) if names else "")

    def finish(self) -> None:
        """Draw what is ticked, then write it."""
        from closetbench.shop.picture import write_pictures

        if not self._chosen():
            raise ClosetError(self.title, _tr("pictures"), _tr("none"), _tr("tick one at least"))
        text = str(self.folder.value()).strip()
        if not text:
            raise ClosetError(self.title, _tr("folder"), _tr("empty"), _tr("choose a folder"))
        folder = Path(text).expanduser()
        written = write_pictures(
            made(folder), bridge.closet_of(self.closet), self.plan,
            bridge.catalogue_of(self.closet), bridge.format_of(self.closet), self.ending.value(),
            self._chosen(), self._stem(), words())
        report_written(_tr("{} pictures written to {}").format(len(written), folder), self.closet)
