"""The task panel that makes a page of drawings, and prints it to a file."""

from __future__ import annotations

import datetime
import secrets
from collections.abc import Callable
from pathlib import Path
from typing import Any

import FreeCAD

from closetbench.core.errors import ClosetError, DocumentError
from closetbench.gui.dangers import DangerNote, report_written
from closetbench.gui.drawing import make_page, page_of
from closetbench.gui.fields import CheckField, ChoiceField, CountField, Field, TextField
from closetbench.gui.files import PathField
from closetbench.gui.form import Form
from closetbench.gui.looking import open_view
from closetbench.gui.qt import busy, translate
from closetbench.gui.task import TaskPanel
from closetbench.model import bridge
from closetbench.model.base import class_of
from closetbench.model.children import BODIES
from closetbench.model.drawn import PAPER
from closetbench.model.spoken import words
from closetbench.shop.drawing_plan import PAPERS, Sheet, drawing_sheet
from closetbench.stock.atomic import write_bytes_atomically

CONTEXT = "Closetbench_Drawing"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


class DrawingPanel(TaskPanel):
    """Makes the page in one undo step."""

    page = "Drawing"

    def __init__(self, closet: Any, title: str) -> None:
        super().__init__(closet.Document, title)
        self.closet = closet

    def build(self) -> None:
        form = Form(_tr("Drawing page"), "drawing")
        form.whole(DangerNote(self.closet))
        page = page_of(self.closet)
        self.paper = ChoiceField("paper", [(key, title) for key, (title, _, _) in PAPERS.items()])
        inches = bridge.format_of(self.closet).unit == "in"
        self.paper.put(getattr(page, PAPER, "") or ("tabloid" if inches else "a3"))
        self.paper.edited.connect(self._changed)
        form.row(_tr("Paper"), self.paper)
        self.plan = CheckField("plan", _tr("Plan, from above"))
        self.plan.put(True)
        self.plan.edited.connect(self._changed)
        form.check(self.plan)
        self.sections = CountField("sections", 0, 3)
        self.sections.put(1)
        self.sections.edited.connect(self._changed)
        form.row(_tr("Sections"), self.sections, tip=_tr(
            "Cuts through the widest bays, seen from the right."))
        self.by = TextField("by", _tr("nobody named"))
        before = page.Template.EditableTexts if page is not None and page.Template else {}
        self.by.put(before.get("value_5", ""))
        form.row(_tr("Drawn by"), self.by)
        self.file = PathField(
            "file", _tr("write no file"), _tr("Print the page to a file"),
            "PDF (*.pdf);;SVG (*.svg)", save=True)
        form.row(_tr("PDF or SVG file"), self.file)
        self.note = form.note("scale")
        self.form = [form]

    def refresh(self) -> None:
        self._changed()

    def _changed(self, field: Field | None = None) -> None:
        try:
            sheet = self._sheet()
        except ClosetError as error:
            self.set_error(self.paper, error.limit)
            self.note.setText("")
            return
        self.set_error(self.paper, "")
        text = _tr("Scale 1 : {}.").format(sheet.scale)
        if page_of(self.closet) is not None:
            text += " " + _tr(
                "The page that is there stays: delete it once the new one will do.")
        self.note.setText(text)

    def _sheet(self) -> Sheet:
        built = bridge.closet_of(self.closet)
        return drawing_sheet(
            built, bridge.boards_for(self.closet), bridge.format_of(self.closet),
            self.paper.value(), datetime.date.today().isoformat(), self.plan.value(),
            self.sections.value(), words())

    def finish(self) -> None:
        """Draw the page, show it, and print it where a file is named."""
        sheet = self._sheet()
        sheet.texts["value_5"] = str(self.by.value())
        parts = {
            o.FullName: o for o in self.doc.Objects
            if class_of(o) in BODIES and o.Closet == self.closet
        }
        survey = bridge.survey_for(self.closet)
        at = survey.Placement if survey is not None else FreeCAD.Placement()
        with busy():
            page = make_page(self.closet, bridge.closet_of(self.closet), sheet, parts, at)
        _show(page)
        text = str(self.file.value()).strip()
        if text:
            path = print_page(page, Path(text).expanduser())
            report_written(_tr("Written: {}").format(path), self.closet)


def _show(page: Any) -> None:
    """Bring the page to the front, without the frames of its views."""
    open_view(page)
    if hasattr(page.ViewObject, "ShowFrames"):
        page.ViewObject.ShowFrames = False


def print_page(page: Any, path: Path) -> Path:
    """Write a page as PDF or SVG by the ending of the name, whole or not at all."""
    import TechDrawGui

    makers: dict[str, Callable[[Any, str], None]] = {
        ".pdf": TechDrawGui.exportPageAsPdf, ".svg": TechDrawGui.exportPageAsSvg}
    suffix = path.suffix.lower()
    if suffix not in makers:
        raise DocumentError(
            "drawing page", "file", path, f"the name must end in {', '.join(makers)}")
    beside = path.with_name(f".{secrets.token_hex(4)}{suffix}")
    try:
        makers[suffix](page, str(beside))
        data = beside.read_bytes()
    except (OSError, RuntimeError) as error:
        raise DocumentError(
            "drawing page", "file", path, f"it cannot be written ({error})") from error
    finally:
        beside.unlink(missing_ok=True)
    return write_bytes_atomically(path, data, "drawing page")
