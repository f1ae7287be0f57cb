"""Commands that make what the shop works from."""

from __future__ import annotations

from typing import Any

from closetbench.gui.commands.base import Command, chosen, mark, there_are
from closetbench.gui.qt import translate


class Paper(Command):
    """A command that needs a closet with parts in it."""

    def run(self) -> None:
        closet = chosen("Closet")
        if closet is None:
            self.ask_for(
                mark("Closetbench", "Select the closet that this is for.")
                if there_are("Closet") else
                mark("Closetbench", "There is no closet in this document: start one first."),
                "Closetbench",
            )
            return
        from closetbench.model.bridge import closet_of

        if not closet_of(closet).parts:
            self.ask_for(mark(
                "Closetbench", "The closet has no parts yet: add a carcass or a panel first."
            ), "Closetbench")
            return
        self.open(closet)

    def open(self, closet: Any) -> None:
        """Open the panel for a closet."""
        raise NotImplementedError


class Layout(Paper):
    """The sheets and how to cut them."""

    name = "Closetbench_Layout"
    text = mark("Closetbench_Layout", "Lay out the sheets…")
    tip = mark(
        "Closetbench_Layout",
        "Plan which sheets to buy and how to rip and crosscut them into the closet's parts",
    )
    icon = "layout"
    accel = "C, L"

    def open(self, closet: Any) -> None:
        from closetbench.gui.dxf_panel import layout_for
        from closetbench.gui.layout_panel import LayoutPanel
        from closetbench.gui.panels import open_for
        from closetbench.gui.settings import cut_settings
        from closetbench.model.make import make_layout

        layout = layout_for(closet)
        if layout is not None:
            open_for(layout)
            return
        doc = closet.Document
        LayoutPanel(
            doc, self.title, make=lambda: make_layout(doc, closet, cut_settings())
        ).start()


class Dxf(Paper):
    """Drawings for the saw and the router."""

    name = "Closetbench_Dxf"
    text = mark("Closetbench_Dxf", "Export DXF…")
    tip = mark(
        "Closetbench_Dxf",
        "Write drawings of the cut layout, of each sheet or of each part",
    )
    icon = "dxf"
    accel = "C, D"

    def open(self, closet: Any) -> None:
        from closetbench.gui.dxf_panel import DxfPanel

        DxfPanel(closet, self.title).start()


class Bill(Paper):
    """Cut list, purchases and groove set-ups."""

    name = "Closetbench_Bill"
    text = mark("Closetbench_Bill", "Bill of materials…")
    tip = mark(
        "Closetbench_Bill",
        "Show and write the cut list, what to buy, the groove set-ups and the findings",
    )
    icon = "bill"
    accel = "C, M"

    def open(self, closet: Any) -> None:
        from closetbench.gui.bill_panel import BillPanel
        from closetbench.gui.dxf_panel import layout_for
        from closetbench.gui.panels import open_for
        from closetbench.model.base import class_of
        from closetbench.model.make import make_bill

        bill = next((o for o in closet.InList if class_of(o) == "Bill"), None)
        if bill is not None:
            open_for(bill)
            return
        doc, layout = closet.Document, layout_for(closet)
        BillPanel(doc, self.title, make=lambda: make_bill(doc, closet, layout)).start()


class BillSheet(Paper):
    """The bill as a spreadsheet in the document."""

    name = "Closetbench_BillSheet"
    text = mark("Closetbench_BillSheet", "Bill as a spreadsheet")
    tip = mark(
        "Closetbench_BillSheet",
        "Keep the bill in the document as a spreadsheet that follows every change; formulas can "
        "use its cells",
    )
    icon = "bill_sheet"

    def open(self, closet: Any) -> None:
        from closetbench.gui.dangers import report_written
        from closetbench.gui.dxf_panel import layout_for
        from closetbench.gui.looking import open_view
        from closetbench.model import children
        from closetbench.model.base import class_of
        from closetbench.model.make import make_bill, make_bill_sheet

        doc = closet.Document
        bill = next((o for o in closet.InList if class_of(o) == "Bill"), None)
        sheets = children.claimed(bill) if bill is not None else []
        if not sheets:
            doc.openTransaction(self.title)
            bill = bill or make_bill(doc, closet, layout_for(closet))
            sheets = [make_bill_sheet(doc, bill)]
            doc.recompute()
            doc.commitTransaction()
        open_view(sheets[0])
        report_written(
            translate("Closetbench_BillSheet", "The bill is in {}").format(sheets[0].Label), closet)


class Drawing(Paper):
    """A page with elevation, plan and sections."""

    name = "Closetbench_Drawing"
    text = mark("Closetbench_Drawing", "Drawing page…")
    tip = mark(
        "Closetbench_Drawing",
        "Make a page to print with the front, the plan and sections of the closet and their sizes",
    )
    icon = "drawing"

    def open(self, closet: Any) -> None:
        from closetbench.gui.drawing_panel import DrawingPanel

        DrawingPanel(closet, self.title).start()


class Step(Paper):
    """Solids for other programs."""

    name = "Closetbench_Step"
    text = mark("Closetbench_Step", "Export STEP…")
    tip = mark(
        "Closetbench_Step",
        "Write the parts of the closet, or those selected, as named solids for other programs",
    )
    icon = "step"

    def open(self, closet: Any) -> None:
        from closetbench.gui.step_panel import StepPanel

        StepPanel(closet, self.title).start()


class Offcuts(Command):
    """The offcuts at hand."""

    name = "Closetbench_Offcuts"
    text = mark("Closetbench_Offcuts", "Offcuts at hand…")
    tip = mark(
        "Closetbench_Offcuts",
        "List the offcuts that are at hand, to be used before anything is bought",
    )
    icon = "offcuts"

    def run(self) -> None:
        from closetbench.gui.commands.base import document_or_new
        from closetbench.gui.offcuts_panel import OffcutsPanel
        from closetbench.gui.panels import open_for
        from closetbench.model.base import ours
        from closetbench.model.make import make_offcuts

        doc, new = document_or_new()
        there = next(ours(doc, "Offcuts"), None)
        if there is not None:
            open_for(there)
            return

        def make() -> Any:
            made = make_offcuts(doc)
            for layout in ours(doc, "CutLayout"):
                layout.Offcuts = layout.Offcuts or made
            return made

        OffcutsPanel(doc, self.title, make=make, new_document=new).start()


COMMANDS = (
    Layout(), Dxf(), Bill(), BillSheet(), Drawing(), Step(), Offcuts(),
)
