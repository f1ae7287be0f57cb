"""The task panel that writes drawings: whole layout, a sheet each, a part each."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from closetbench.core.errors import ClosetError, DocumentError
from closetbench.gui.dangers import DangerNote, report_written
from closetbench.gui.fields import CheckField, Field
from closetbench.gui.files import PathField, file_stem, home_folder
from closetbench.gui.form import Form
from closetbench.gui.qt import translate
from closetbench.gui.task import TaskPanel
from closetbench.model import bridge
from closetbench.model.base import class_of
from closetbench.model.layout import lengths_of, needs_for, plan_of, settings_of, shop_of
from closetbench.model.spoken import words

CONTEXT = "Closetbench_Dxf"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


def layout_for(closet: Any) -> Any:
    """The cut layout of a closet, None where there is none."""
    return next((o for o in closet.InList if class_of(o) == "CutLayout"), None)


class DxfPanel(TaskPanel):
    """Writes DXF files; the document does not change."""

    page = "Dxf"

    def __init__(self, closet: Any, title: str) -> None:
        super().__init__(closet.Document, title)
        self.closet = closet

    def build(self) -> None:
        form = Form(_tr("Drawings"), "dxf")
        form.whole(DangerNote(self.closet))
        self.layout = layout_for(self.closet)
        self.plan = plan_of(self.layout) if self.layout is not None else None
        self.current = self.plan is not None and not self.layout.OutOfDate
        built = bridge.closet_of(self.closet)
        # what is cut by length, or from kept panels, lies on no sheet
        sheets = self.plan.sheets if self.plan is not None else ()
        placed = {p.part for sheet in sheets for p in sheet.placements}
        self.parts = [p for p in built.parts if p.full_name in placed]
        self.all_parts = (*built.parts, *built.reused)
        self.whole = CheckField("layout", _tr("All sheets in one drawing"))
        self.sheets = CheckField("sheets", _tr("A drawing for each sheet"))
        self.each = CheckField("parts", _tr("A drawing for each part"))
        self.order = CheckField("cutting", _tr("The cutting order, as text and as pictures"))
        for field in (self.whole, self.sheets, self.each, self.order):
            form.check(field)
            field.edited.connect(self._show_files)
        self.whole.put(self.current)
        self.each.put(not self.current)
        for field in (self.whole, self.sheets, self.order):
            form.enable(field, self.current)
        self.why = form.note("why")
        if self.plan is None:
            self.why.setText(_tr(
                "The sheets are not planned yet: lay them out first, or draw the parts alone."))
        elif not self.current:
            self.why.setText(_tr(
                "The cut layout is out of date: plan the sheets again, or draw the parts alone."))
        self.folder = PathField("folder", _tr("choose a folder"), _tr("Folder for the drawings"))
        self.folder.put(str(home_folder()))
        self.folder.edited.connect(self._show_files)
        form.row(_tr("Folder"), self.folder)
        self.files = form.note("files")
        note = form.note()
        note.setText(_tr(
            "Millimetres, as sawn and before banding. Depth and side of each cut are in the "
            "layers' names."))
        self.form = [form]

    def refresh(self) -> None:
        self._show_files()

    def _show_files(self, field: Field | None = None) -> None:
        for one in self.fields:
            self.set_error(one, "")
        names = []
        if self.whole.value():
            names.append(f"{self._stem()}.dxf")
        if self.sheets.value() and self.plan is not None:
            names.append(_tr("sheets/, {} drawings").format(len(self.plan.sheets)))
        if self.each.value():
            names.append(_tr("parts/, {} drawings").format(len(self.all_parts)))
        if self.order.value() and self.plan is not None:
            names.append(_tr("cutting.txt; cutting/, {} pictures").format(len(self.plan.sheets)))
        self.files.setText(_tr("To be written: {}").format("; ".join(names)) if names else "")

    def _stem(self) -> str:
        return f"{file_stem(self.closet.Label)}-layout"

    def finish(self) -> None:
        """Write what is ticked."""
        from closetbench.shop import dxf

        if not any(f.value() for f in (self.whole, self.sheets, self.each, self.order)):
            raise ClosetError(self.title, _tr("drawings"), _tr("none"), _tr("tick one at least"))
        text = str(self.folder.value()).strip()
        if not text:
            raise ClosetError(self.title, _tr("folder"), _tr("empty"), _tr("choose a folder"))
        folder = Path(text).expanduser()
        form, reader = bridge.format_of(self.closet), words()
        written: list[Path] = []
        if self.whole.value():
            path = made(folder) / f"{self._stem()}.dxf"
            written.append(dxf.layout_dxf(self.plan, self.parts, path, form, reader))
        if self.sheets.value():
            written += dxf.sheet_files(self.plan, self.parts, made(folder / "sheets"), form, reader)
        if self.each.value():
            written += dxf.part_files(self.all_parts, made(folder / "parts"), form, reader)
        if self.order.value():
            written += self._write_order(made(folder))
        report_written(_tr("{} drawings written to {}").format(len(written), folder), self.closet)

    def _write_order(self, folder: Path) -> list[Path]:
        from closetbench.shop.cutting_order import write_cutting_order
        from closetbench.shop.cutting_pages import write_cutting_pages

        catalogue, form = bridge.catalogue_of(self.closet), bridge.format_of(self.closet)
        needs, shop = needs_for(self.layout), shop_of(self.layout)
        text = write_cutting_order(
            folder / "cutting.txt", self.plan, needs.parts, needs.sheets,
            settings_of(self.layout), catalogue, form, shop, lengths_of(self.layout),
            self.all_parts, bridge.closet_of(self.closet).findings, words(),
        )
        pages = write_cutting_pages(
            folder / "cutting", self.plan, self.parts, catalogue, form, shop, words=words())
        return [text, *pages]


def made(folder: Path) -> Path:
    """The folder, made where it was not there."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise DocumentError(
            "drawings", "folder", str(folder), f"cannot be made: {error.strerror or error}"
        ) from error
    return folder
