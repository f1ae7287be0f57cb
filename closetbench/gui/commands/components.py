"""Commands that put components into a closet."""

from __future__ import annotations

from dataclasses import replace

from closetbench.gui.commands.base import Command, chosen, document_or_new, mark, there_are


class Carcass(Command):
    """A carcass beside those that are there."""

    name = "Closetbench_Carcass"
    text = mark("Closetbench_Carcass", "Carcass…")
    tip = mark(
        "Closetbench_Carcass",
        "Add a carcass with its sides, dividers, shelves, back and base to the closet",
    )
    icon = "carcass"
    accel = "C, C"

    def run(self) -> None:
        closet = chosen("Closet")
        if closet is None:
            self.ask_for(
                mark("Closetbench_Carcass", "Select the closet that the carcass is for.")
                if there_are("Closet") else
                mark("Closetbench_Carcass",
                     "There is no closet in this document: start one first.")
            )
            return
        self._add(closet)

    def _add(self, closet: object) -> None:
        from closetbench.gui.carcass_panel import CarcassPanel, new_spec

        doc = closet.Document
        spec = new_spec(closet)
        from closetbench.model.make import make_carcass

        CarcassPanel(doc, self.title, make=lambda: make_carcass(doc, closet, spec)).start()


class Bay(Command):
    """One more bay, in one step."""

    name = "Closetbench_Bay"
    text = mark("Closetbench_Bay", "Add a bay")
    tip = mark(
        "Closetbench_Bay",
        "Divide the selected carcass once more: a bay beside the selected one, or at the right",
    )
    icon = "bay"
    accel = "C, B"

    def run(self) -> None:
        import FreeCADGui

        carcass = chosen("Carcass")
        if carcass is None:
            self.ask_for(
                mark("Closetbench_Bay", "Select the carcass, or the bay beside which to divide it.")
                if there_are("Carcass") else
                mark("Closetbench_Bay", "There is no carcass in this document: add one first.")
            )
            return
        from closetbench.core.specs import BaySpec
        from closetbench.gui.trial import verify_spec
        from closetbench.model.bridge import spec_of
        from closetbench.model.make import write_spec

        spec = spec_of(carcass)
        selected = FreeCADGui.Selection.getSelection(carcass.Document.Name)
        at = next(
            (i for i, bay in enumerate(carcass.BayList, 1) if bay in selected), len(spec.bays))
        spec = replace(spec, bays=(*spec.bays[:at], BaySpec(), *spec.bays[at:]))
        verify_spec(carcass, spec)
        doc = carcass.Document
        doc.openTransaction(self.title)
        write_spec(carcass, spec)
        doc.recompute()
        doc.commitTransaction()


class Panel(Command):
    """A single grooved panel."""

    name = "Closetbench_Panel"
    text = mark("Closetbench_Panel", "Grooved panel…")
    tip = mark(
        "Closetbench_Panel", "Add a single panel with grooves, rabbets and edge bands")
    icon = "panel"
    accel = "C, P"

    def run(self) -> None:
        from closetbench.gui.grooved_panel import GroovedPanelPanel, make_new

        closet = chosen("Closet")
        if closet is None and there_are("Closet"):
            self.ask_for(mark("Closetbench_Panel", "Select the closet that the panel is for."))
            return
        doc, new = document_or_new()
        GroovedPanelPanel(
            doc, self.title, make=lambda: make_new(doc, closet), new_document=new
        ).start()


class Duplicate(Command):
    """A copy of the selected component, in one step."""

    name = "Closetbench_Duplicate"
    text = mark("Closetbench_Duplicate", "Duplicate")
    tip = mark(
        "Closetbench_Duplicate",
        "Copy the selected component into the next free place; a carcass comes with what is in it",
    )
    icon = "duplicate"
    accel = "C, U"

    def run(self) -> None:
        import FreeCAD
        import FreeCADGui

        from closetbench.gui.panels import edited_with
        from closetbench.model.base import class_of
        from closetbench.model.bridge import closet_for
        from closetbench.model.duplicate import COPIED, duplicate

        doc = FreeCAD.ActiveDocument
        picked = FreeCADGui.Selection.getSelection(doc.Name) if doc is not None else []
        found = [o for o in map(edited_with, picked) if class_of(o) in (*COPIED, "GroovedPanel")]
        if not found or (closet_for(found[0]) is None and class_of(found[0]) in COPIED):
            self.ask_for(mark("Closetbench_Duplicate",
                              "Select the carcass, component or panel to copy, or a part of it."))
            return
        doc.openTransaction(self.title)
        try:
            copy = duplicate(found[0])
            doc.recompute()
        except Exception:
            doc.abortTransaction()
            raise
        doc.commitTransaction()
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.Selection.addSelection(copy)


COMMANDS = (Carcass(), Bay(), Panel(), Duplicate())
