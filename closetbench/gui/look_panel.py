"""The task panel for looking: pulled apart, cut open, kinds of things hidden, labels.

It changes how the closet is shown and nothing else. What was pulled apart and cut open is
whole again when the panel closes; what was hidden stays hidden.
"""

from __future__ import annotations

from typing import Any

import FreeCAD

from closetbench.core.errors import ClosetError
from closetbench.core.parts import Role, Vector
from closetbench.gui import units
from closetbench.gui.fields import CheckField, ChoiceField, Field
from closetbench.gui.form import Form
from closetbench.gui.play import PlayBar
from closetbench.gui.qt import QtCore, QtWidgets, translate
from closetbench.gui.stage import Stage
from closetbench.gui.task import TaskPanel
from closetbench.model import bridge
from closetbench.model.base import class_of
from closetbench.model.children import BODIES
from closetbench.shop.exploded import offsets, turns

CONTEXT = "Closetbench_Look"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


_mark = FreeCAD.Qt.QT_TRANSLATE_NOOP
KINDS: tuple[tuple[str, str, tuple[Role | str, ...]], ...] = (
    ("carcass", _mark("Closetbench_Look", "Carcasses and shelves"), (
        Role.SIDE, Role.DIVIDER, Role.TOP, Role.BOTTOM, Role.FIXED_SHELF, Role.ADJUSTABLE_SHELF,
        Role.CLEAT, Role.TOE_KICK, Role.BASE_FRAME)),
    ("backs", _mark("Closetbench_Look", "Backs"), (Role.BACK,)),
    ("fronts", _mark("Closetbench_Look", "Fronts, doors, face frames"), (
        Role.FRONT, Role.DOOR, Role.STILE, Role.RAIL, Role.MULLION)),
    ("drawers", _mark("Closetbench_Look", "Drawer boxes"), (
        Role.BOX_SIDE, Role.BOX_FRONT, Role.BOX_BACK, Role.BOX_BOTTOM)),
    ("rods", _mark("Closetbench_Look", "Rods"), (Role.ROD,)),
    ("benches", _mark("Closetbench_Look", "Benches"), (
        Role.BENCH_FRAME, Role.BENCH_TOP, Role.BENCH_FACE, Role.LID)),
    ("others", _mark("Closetbench_Look", "Other shelves"), (
        Role.SHOE_SHELF, Role.CORNER_SHELF, Role.OVER_SHELF, Role.LIP)),
    ("existing", _mark("Closetbench_Look", "Existing pieces"), (Role.EXISTING,)),
    ("fillers", _mark("Closetbench_Look", "Fillers and mouldings"), (
        Role.FILLER, Role.MOULDING, Role.SHIM)),
    ("panels", _mark("Closetbench_Look", "Single panels"), ("GroovedPanel",)),
    ("room", _mark("Closetbench_Look", "Room"), ("Survey",)),
    ("layout", _mark("Closetbench_Look", "Cut layout"), ("CutLayout",)),
)
"""Kinds of things by name: words, and the roles of parts or the classes of objects."""
_CUTS: tuple[tuple[Vector | None, str], ...] = (
    (None, _mark("Closetbench_Look", "whole")),
    ((0.0, -1.0, 0.0), _mark("Closetbench_Look", "cut from the front")),
    ((-1.0, 0.0, 0.0), _mark("Closetbench_Look", "cut from the left")),
    ((1.0, 0.0, 0.0), _mark("Closetbench_Look", "cut from the right")),
    ((0.0, 0.0, 1.0), _mark("Closetbench_Look", "cut from above")),
)


_GLANCE = 300
"""ms between two looks at where the view looks from, while names are shown."""


class LookPanel(TaskPanel):
    """Shows a closet in other ways."""

    page = "Look"
    only_shows = True

    def __init__(self, closet: Any, title: str) -> None:
        super().__init__(closet.Document, title)
        self.closet = closet
        self.stage: Stage | None = None
        self._follow = _Follow(self)
        self._eye = ""
        self._watch_eye = QtCore.QTimer(self)
        self._watch_eye.setInterval(_GLANCE)
        self._watch_eye.timeout.connect(self._look_again)

    # -- what it works on

    def build(self) -> None:
        bridge.closet_of(self.closet)
        self._gather()
        self.form = [self._apart_form(), self._cut_form(), self._kinds_form()]

    def _gather(self) -> None:
        """The closet's things as they are now; a stage of their own."""
        if self.stage is not None:
            self.stage.close()
        parts = [
            o for o in self.doc.Objects
            if class_of(o) in BODIES and o.Closet == self.closet and not o.Shape.isNull()
        ]
        self.stage = Stage(self.doc, parts)
        self._names = {o.FullName: o.Name for o in parts}
        own = [*parts, *(o for o in self.closet.Group if class_of(o) in ("GroovedPanel", "Survey")),
               *(o for o in self.closet.InList if class_of(o) == "CutLayout")]
        self._held: dict[str, list[Any]] = {}
        for name, _, what in KINDS:
            marks = [m.value if isinstance(m, Role) else m for m in what]
            found = [o for o in own if (getattr(o, "Role", "") or class_of(o)) in marks]
            if found:
                self._held[name] = found
        try:
            built = bridge.closet_of(self.closet)
        except ClosetError:
            self._offsets, self._turn = {}, {}
            return
        turn = self._rotation().multVec
        standing = [c for c in built.components if any(b.full_name in self._names
                                                       for b in c.bodies)]
        self._offsets = {
            name: turn(FreeCAD.Vector(*way)) for name, way in offsets(standing).items()
        }
        rounds = turns(standing)
        self._rounds = len(rounds)
        self._turn = {name: i for i, names in enumerate(rounds) for name in names}

    def _rotation(self) -> Any:
        survey = bridge.survey_for(self.closet)
        return survey.Placement.Rotation if survey is not None else FreeCAD.Rotation()

    # -- forms

    def _apart_form(self) -> Form:
        form = Form(_tr("Pulled apart"), "look")
        self.apart = PlayBar(
            "apart", lambda share: self._show(), 8.0, (_tr("together"), _tr("apart")), back=True)
        self.apart.slider.setToolTip(_tr(
            "How far the parts are pulled apart in the view; they stay where they are."))
        form.whole(self.apart)
        self.by_turns = CheckField("turns", _tr("One after another, as they go together"))
        self.by_turns.put(True)
        self.by_turns.edited.connect(self._changed)
        form.check(self.by_turns, _tr(
            "Played back from apart to together it shows the order of assembly: from the floor "
            "up, then what goes in, then the fronts."))
        self.now = form.note("now")
        return form

    def _cut_form(self) -> Form:
        form = Form(_tr("Cut open"), "section")
        self.way = ChoiceField("cut", [(way, _tr(text)) for way, text in _CUTS])
        self.way.edited.connect(self._changed)
        form.row(_tr("Show it"), self.way)
        self.where = PlayBar("where", lambda share: self._show(), 8.0, back=True)
        self.where.slider.setToolTip(_tr("Where the closet is cut."))
        form.whole(self.where)
        self.where_text = form.note("where text")
        return form

    def _kinds_form(self) -> Form:
        form = Form(_tr("Show"), "kinds")
        self.kinds: dict[str, CheckField] = {}
        grid = QtWidgets.QWidget()
        cells = QtWidgets.QGridLayout(grid)
        cells.setContentsMargins(0, 0, 0, 0)
        shown = [(name, text) for name, text, _ in KINDS if name in self._held]
        for index, (name, text) in enumerate(shown):
            field = self.kinds[name] = CheckField(f"show {name}", _tr(text))
            field.put(any(o.ViewObject.Visibility for o in self._held[name]))
            field.edited.connect(self._hide)
            cells.addWidget(field.widget, *divmod(index, 2))
        form.whole(grid)
        form.adopt(self.kinds.values(), cells, len(shown))
        everything = QtWidgets.QPushButton(_tr("Show everything"))
        everything.setObjectName("everything")
        everything.setAutoDefault(False)
        everything.clicked.connect(self._everything)
        form.whole(everything)
        self.labels = CheckField("labels", _tr("Names of the parts"))
        self.labels.edited.connect(self._changed)
        form.check(self.labels, _tr("Write the names on the parts that can be seen."))
        self.left_out = form.note("left out")
        return form

    # -- closing

    def show(self) -> None:
        super().show()
        FreeCAD.addDocumentObserver(self._follow)

    def reject(self) -> bool:
        """What the user changed elsewhere while the panel was open stays."""
        self._keep()
        return True

    def _close(self, end: Any) -> None:
        if self.is_open:
            FreeCAD.removeDocumentObserver(self._follow)
            self._watch_eye.stop()
            for bar in (self.apart, self.where):
                bar.stop()
            if self.stage is not None:
                self.stage.close()
        super()._close(end)

    # -- what is shown

    def refresh(self) -> None:
        self.where.put(0.5)
        self._show()

    def follow(self) -> None:
        """The closet was recomputed: show what it is now in the same way."""
        if self.is_open:
            self._gather()
            self._show()

    def _changed(self, field: Field) -> None:
        self._show()

    def _show(self) -> None:
        if self.stage is None:
            return
        share = self.apart.share
        self.stage.shift(self._shifts(share) if share else {})
        self._say_turn(share)
        self._cut()
        self._write_names()

    def _write_names(self) -> None:
        """Write the names, for where the view looks from now."""
        named = self.labels.value()
        left = self.stage.label(
            {o.Name: o.PartName for o in self.stage.parts} if named else {})
        self._eye = self.stage.eye() if named else ""
        self.left_out.setText(_tr(
            "{} names are left out: their parts are hidden from here, or there is no room. Turn "
            "or zoom the view, or pull the parts apart.").format(left) if left else "")
        if named:
            self._watch_eye.start()
        else:
            self._watch_eye.stop()

    def _look_again(self) -> None:
        if self.is_open and self.stage is not None and self.stage.eye() != self._eye:
            self._write_names()

    def _shifts(self, share: float) -> dict[str, Vector]:
        found = {}
        for name, way in self._offsets.items():
            part = share
            if self.by_turns.value():
                # the last to go in is the first to come out
                early = self._rounds - 1 - self._turn.get(name, 0)
                part = min(1.0, max(0.0, share * self._rounds - early))
            if name in self._names:
                found[self._names[name]] = tuple(part * c for c in way)
        return found

    def _say_turn(self, share: float) -> None:
        text = ""
        if self.by_turns.value() and 0.0 < share < 1.0:
            at = self._rounds - 1 - min(self._rounds - 1, int(share * self._rounds))
            names = [name for name, turn in self._turn.items() if turn == at]
            some = ", ".join(names[:4]) + (" …" if len(names) > 4 else "")
            text = _tr("Step {} of {}: {}").format(at + 1, self._rounds, some)
        self.now.setText(text)

    def _cut(self) -> None:
        way = self.way.value()
        self.where.setEnabled(way is not None)
        if way is None or not self.stage.parts:
            self.where_text.setText("")
            self.stage.cut(None, 0.0)
            return
        normal = self._rotation().multVec(FreeCAD.Vector(*way))
        low, high = self._reach(normal)
        # from what is met first to what is met last
        distance = high - self.where.share * (high - low)
        self.stage.cut(tuple(normal), distance)
        self.where_text.setText(_tr("{} behind what is met first").format(
            units.shown(high - distance)))

    def _reach(self, normal: Any) -> tuple[float, float]:
        found = [
            FreeCAD.Vector(x, y, z).dot(normal)
            for o in self.stage.parts for b in (o.Shape.BoundBox,)
            for x in (b.XMin, b.XMax) for y in (b.YMin, b.YMax) for z in (b.ZMin, b.ZMax)
        ]
        return min(found), max(found)

    def _hide(self, field: Field) -> None:
        name = next(n for n, f in self.kinds.items() if f is field)
        for obj in self._held[name]:
            obj.ViewObject.Visibility = field.value()
        self._show()

    def _everything(self) -> None:
        for name, field in self.kinds.items():
            field.put(True)
            for obj in self._held[name]:
                obj.ViewObject.Visibility = True
        self._show()


class _Follow:
    """Tells the panel that its document was recomputed."""

    def __init__(self, panel: LookPanel) -> None:
        self._panel = panel

    def slotRecomputedDocument(self, doc: Any) -> None:  # noqa: N802
        if doc == self._panel.doc:
            QtCore.QTimer.singleShot(0, self._panel.follow)
