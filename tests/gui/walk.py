"""Random edits by the workbench's own commands and panels, undone and redone.

A walk is repeatable by its seed. What it did is kept as a list of words, and said in the
report view as it goes, so that a walk that ends wrong, or FreeCAD with it, can be read.
"""

from __future__ import annotations

import random
from dataclasses import replace
from typing import Any

import FreeCAD
import FreeCADGui

from tests.gui.snapshots import Snapshots, differences
from tests.gui.walk_report import REPORT, TAKEN_BACK

KINDS = (
    "Drawers", "Doors", "Rods", "ShoeShelves", "Bench", "CornerShelves", "OverShelf", "FaceFrame",
    "Fillers", "Existing",
)


def hurry(gui: Any) -> None:
    """Take the waiting out of FreeCAD, fine drawing, and most of the search for sheets.

    Commands, panels and timers do what they do, in the same order; nothing of what is left out
    is what a step of undo holds.
    """
    from closetbench.gui import settings, task

    # FreeCAD keeps 20 steps unless told
    FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Document").SetInt("MaxUndoSize", 1000)
    drawn = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Mod/Part")
    drawn.SetFloat("MeshDeviation", 50.0)
    drawn.SetFloat("MeshAngularDeflection", 120.0)
    task.SOON = task.LATER = task.WHOLE_DELAY = 1
    settings.keep_cut_settings(replace(settings.cut_settings(), seconds=0.01, tidy=0.01))


class Walk:
    """One document and a sequence of random steps in it. ``gui``: the harness's driver.

    ``log``: what every step did. ``wrong``: where the document was not what it had been at
    the same place of the undo stack, in words. ``undo_steps``: how many were undone at last.
    """

    def __init__(self, gui: Any, seed: int) -> None:
        self.gui = gui
        self.seed = seed
        self.rnd = random.Random(seed)
        self.log: list[str] = []
        self.wrong: list[str] = []
        self.undo_steps = 0
        self._previews = 0
        self._snapshots = Snapshots()
        self._known: dict[int, tuple[dict[str, Any], str]] = {}
        """By the count of undo: what the document was there, and after which step."""
        self._closer = gui.QtCore.QTimer()
        self._closer.timeout.connect(self._answer)
        self._closer.start(30)

    # -- the whole

    def run(self, count: int) -> list[str]:
        """A closet, ``count`` steps, all undone, all redone; what was wrong, in words."""
        self._begin()
        for _ in range(count):
            self._step()
        self.undo_steps = self.doc.UndoCount
        while self.doc.UndoCount:
            self.doc.undo()
            self._compare("undone")
        self.doc.recompute()
        self._compare("undone and recomputed")
        # what the last step undid stays undone
        for _ in range(self.undo_steps):
            self.doc.redo()
            self._compare("redone")
        self.doc.recompute()
        self._compare("redone and recomputed")
        self._closer.stop()
        FreeCAD.closeDocument(self.doc.Name)
        self._settle()
        return self.wrong

    def _begin(self) -> None:
        from closetbench.core.closet import ClosetDesign
        from closetbench.core.inside import Spot
        from closetbench.core.rods import RodsSpec
        from closetbench.core.specs import BaySpec, CarcassSpec
        from closetbench.model.make import closet_from_design

        case = CarcassSpec("A", "ply18", width=1100.0, bays=(BaySpec(fixed=1), BaySpec()))
        # a hidden window paints nothing; but a view that was never shown crashes 0.20 in closing
        self.gui.window.show()
        self.doc = FreeCAD.newDocument("Walk")
        self.gui.settle(100)
        self.gui.window.hide()
        self.doc.UndoMode = 1
        closet_from_design(self.doc, ClosetDesign(
            "C", size=(2400.0, 600.0, 2400.0),
            components=(case, RodsSpec("Rods", Spot("A", 1, 2)))))
        self.doc.recompute()
        self.doc.clearUndos()
        self._settle()
        self._known[0] = self._snapshots.take(self.doc), "the start"

    def _step(self) -> None:
        kinds = (
            (self._edit, 12), (self._add, 5), (self._bay, 1), (self._copy, 2), (self._delete, 3),
            (self._undo, 4), (self._survey, 2), (self._papers, 1), (self._carcass, 1),
        )
        before = self.doc.UndoCount
        act = self.rnd.choices([k for k, _ in kinds], [w for _, w in kinds])[0]
        self.log.append("")
        self._say(act.__name__.strip("_"))
        act()
        self._settle()
        if self.doc.UndoCount > before and act != self._undo:
            self._known = {at: known for at, known in self._known.items() if at <= before}
            self._known[self.doc.UndoCount] = self._snapshots.take(self.doc), self._place()
        else:
            self._compare(f"after {self._place()}")

    def _compare(self, when: str) -> None:
        """Note where the document is not what it was at this place of the undo stack."""
        known = self._known.get(self.doc.UndoCount)
        if known is not None:
            wanted, place = known
            found = differences(wanted, self._snapshots.take(self.doc))
            self.wrong += [f"as of {place}, {when}: {line}" for line in found]

    def _place(self) -> str:
        return f"step {len(self.log)} ({self.log[-1]})"

    def _say(self, text: str) -> None:
        self.log[-1] += text
        FreeCAD.Console.PrintMessage(f"{REPORT}{self.seed} {self._place()}\n")

    # -- what a step may be

    def _edit(self) -> None:
        from closetbench.model.base import class_of

        found = [o for o in self.doc.Objects
                 if class_of(o) in ("Carcass", "GroovedPanel", "Closet", *KINDS)]
        obj = self.rnd.choice(found)
        self._say(f" {obj.Label}")
        obj.ViewObject.Proxy.doubleClicked(obj.ViewObject)
        self._settle()
        self._in_panel(self.rnd.randint(1, 3))

    def _survey(self) -> None:
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.runCommand("Closetbench_Survey")
        self._settle()
        self._in_panel(1)
        self._take_back()

    def _add(self) -> None:
        kind = self.rnd.choice(KINDS)
        self._say(f" {kind}")
        self._select(self._one("Carcass"))
        FreeCADGui.runCommand(f"Closetbench_{kind}")
        self._settle()
        self._in_panel(self.rnd.randint(0, 1))

    def _carcass(self) -> None:
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.runCommand(self.rnd.choice(("Closetbench_Carcass", "Closetbench_Panel")))
        self._settle()
        self._in_panel(self.rnd.randint(0, 1))

    def _papers(self) -> None:
        FreeCADGui.Selection.clearSelection()
        FreeCADGui.runCommand(self.rnd.choice(
            ("Closetbench_Bill", "Closetbench_Layout", "Closetbench_Offcuts")))
        self._settle()
        self._in_panel(0)

    def _bay(self) -> None:
        self._select(self._one("Carcass"))
        FreeCADGui.runCommand("Closetbench_Bay")

    def _copy(self) -> None:
        self._select(self._one("Carcass", *KINDS))
        FreeCADGui.runCommand("Closetbench_Duplicate")

    def _delete(self) -> None:
        self._select(self._one(*KINDS, "CutLayout", "Bill", "GroovedPanel"))
        if FreeCADGui.Selection.getSelection(self.doc.Name):
            FreeCADGui.runCommand("Std_Delete")
            self._settle()
            self._take_back()

    def _take_back(self) -> None:
        """Undo what others cannot be built without: FreeCAD has said so, and a user reads it."""
        from closetbench.model.base import is_invalid

        if any(is_invalid(obj) for obj in self.doc.Objects):
            FreeCADGui.runCommand("Std_Undo")
            self._settle()
            self._there_and_back()
            self._say(TAKEN_BACK)

    def _undo(self) -> None:
        back = self.rnd.randint(1, 4)
        forth = self.rnd.randint(0, back)
        for command, times in (("Std_Undo", back), ("Std_Redo", forth)):
            for _ in range(times):
                FreeCADGui.runCommand(command)
                self._settle()
        if not forth:
            self._there_and_back()

    def _there_and_back(self) -> None:
        """One step forth by the command, and back without it.

        FreeCAD's command keeps a list of what Undo brought back until the next Redo, and
        crashes in that if such an object is no more: on every FreeCAD here, in a document of
        boxes too (make one, delete it, undo twice, make another, undo, redo).
        """
        ahead = self.doc.RedoCount
        FreeCADGui.runCommand("Std_Redo")
        self._settle()
        if self.doc.RedoCount < ahead:
            self.doc.undo()
            self._settle()

    # -- how

    def _in_panel(self, changes: int) -> None:
        from closetbench.gui.task import TaskPanel

        panel = TaskPanel.current
        if panel is None:
            self._say(" (refused)")
            return
        for _ in range(changes):
            self._change(panel)
        wrong = panel.first_error() is not None
        if wrong or self.rnd.random() < 0.15:
            self._say(" cancel")
            panel.press(self.gui.QtWidgets.QDialogButtonBox.Cancel)
        else:
            panel.press(self.gui.QtWidgets.QDialogButtonBox.Ok)
        for _ in range(200):
            self._settle()
            if TaskPanel.current is None:
                return
            self.gui.settle(20)
        self._say(" (stuck)")
        panel.press(self.gui.QtWidgets.QDialogButtonBox.Cancel)
        self.gui.settle(200)

    def _change(self, panel: Any) -> None:
        from closetbench.core.errors import ClosetError
        from closetbench.gui import fields

        usable = [f for f in panel.fields if f.widget.isEnabled()]
        field = self.rnd.choice(usable)
        self._say(f" {field.name}")
        if isinstance(field, fields.LengthField):
            try:
                now = field.value()
            except ClosetError:
                return
            factor = self.rnd.choice((0.8, 0.95, 1.05, 1.2))
            shown = "" if field.blank and self.rnd.random() < 0.3 else (
                f"{(now or 300.0) * factor:.1f} mm")
            before = field.line.text()
            field.line.setText(shown)
            field.commit()
            if panel.first_error() is not None:
                field.line.setText(before)
                field.commit()
        elif isinstance(field, fields.CountField):
            field.spin.setValue(field.spin.value() + self.rnd.choice((-1, 1)))
        elif isinstance(field, fields.CheckField):
            field.box.click()
        elif isinstance(field, fields.ChoiceField):
            if field.combo.count():
                field.combo.setCurrentIndex(self.rnd.randrange(field.combo.count()))
        elif field.name == "name":
            field.line.setText(f"{field.line.text()[:8]}{self.rnd.randint(0, 99)}")
            field.commit()
        if self.rnd.random() < 0.3:
            self._settle()  # long enough for a preview
            self._previews += 1
            if self._previews % 2 == 0:
                self._settle()  # and for the holes that it left out

    def _one(self, *kinds: str) -> Any:
        from closetbench.model.base import class_of

        found = [o for o in self.doc.Objects if class_of(o) in kinds]
        return self.rnd.choice(found) if found else None

    def _select(self, obj: Any) -> None:
        FreeCADGui.Selection.clearSelection()
        if obj is not None:
            self._say(f" {obj.Label}")
            FreeCADGui.Selection.addSelection(obj)

    def _answer(self) -> None:
        modal = self.gui.QtWidgets.QApplication.activeModalWidget()
        if modal is not None:
            if hasattr(modal, "text") and self.log:
                self._say(f" [{modal.text()[:60]}]")
            modal.close()

    def _settle(self) -> None:
        self.gui.settle(2)
