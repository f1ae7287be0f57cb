"""The task panel that says whether each piece goes in, and plays how."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from closetbench.core.access import PLAY, Access, Entrance, entrance, way_in
from closetbench.core.carried import STEP, TURN, Position, loads_of, positions
from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.pieces import Load
from closetbench.gui import palette, units
from closetbench.gui.fields import ChoiceField, Field
from closetbench.gui.form import Form
from closetbench.gui.ghost import Ghost
from closetbench.gui.looking_panel import LookingPanel
from closetbench.gui.qt import QtCore, QtGui, QtWidgets, translate
from closetbench.model.base import class_of
from closetbench.model.children import BODIES, parts_of

CONTEXT = "Closetbench_GoesIn"
HIGH, BEAT, LONGEST = 220, 40, 6000
"""px of the table's height; ms between two positions; ms that a path plays at most."""


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


def loads_meant(loads: Sequence[Load], selected: Sequence[Any]) -> frozenset[str]:
    """Names of the pieces that a selection of objects stands for."""
    found = set()
    for obj in selected:
        part = class_of(obj) in BODIES
        label = obj.Component.Label if part else obj.Label
        for load in loads:
            if load.component != label:
                continue
            alone = len(load.bodies) == 1
            if (part and obj.PartName in load.bodies and (alone or not load.whole)) or (
                    not part and not (alone and not load.whole)):
                found.add(load.piece.name)
    return frozenset(found)


class GoesInPanel(LookingPanel):
    """Pieces in a table, the answer for each, and its way in on a slider."""

    page = "GoesIn"

    def __init__(self, closet: Any, title: str, selected: Sequence[Any] = ()) -> None:
        super().__init__(closet, title)
        self.loads = loads_of(self.built)
        self.meant = loads_meant(self.loads, selected)
        self.answers: dict[str, Access] = {}
        self._known: dict[tuple[float | bool, ...], Access] = {}
        self.path: Sequence[Position] = ()
        self._ghost: Ghost | None = None
        self._way: Entrance | None = None
        self._timer = QtCore.QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._answer_one)
        self._clock = QtCore.QTimer(self)
        self._clock.setInterval(BEAT)
        self._clock.timeout.connect(self._beat)

    # -- the form

    def build(self) -> None:
        room = self.built.room
        self._way = entrance(room, self.built.envelope) if room is not None else None
        if self._way is None:
            raise ClosetError(
                self.closet.Label, "opening", "not measured",
                "must be measured to say what goes in through it; until then the whole front "
                "counts as open. Enter it in the survey, on the page Opening",
            )
        form = Form(_tr("Does it go in?"), "goes_in")
        form.note("way").setText(_tr("Opening {} x {}, inside {} x {} x {}").format(*(
            units.shown(v) for v in (self._way.width, self._way.height, *self._way.size))))
        shown = [
            ("whole", _tr("assembled pieces")), ("all", _tr("everything, each part too")),
            ("stuck", _tr("what does not go in")),
        ]
        if self.meant:
            shown.insert(0, ("meant", _tr("what is selected")))
        self.filter = ChoiceField("filter", shown)
        self.filter.edited.connect(self._fill)
        form.row(_tr("Show"), self.filter)
        self.table = QtWidgets.QTableWidget(0, 2)
        self.table.setObjectName("pieces")
        self.table.setHorizontalHeaderLabels([_tr("Piece"), _tr("Goes in")])
        self.table.horizontalHeader().setSectionResizeMode(0, QtWidgets.QHeaderView.Stretch)
        self.table.verticalHeader().hide()
        self.table.verticalHeader().setDefaultSectionSize(self.table.fontMetrics().height() + 6)
        self.table.setEditTriggers(QtWidgets.QAbstractItemView.NoEditTriggers)
        self.table.setSelectionBehavior(QtWidgets.QAbstractItemView.SelectRows)
        self.table.setSelectionMode(QtWidgets.QAbstractItemView.SingleSelection)
        self.table.setTabKeyNavigation(False)
        self.table.setFixedHeight(HIGH)
        self.table.itemSelectionChanged.connect(self._picked)
        form.whole(self.table)
        self.answer = form.note("answer")
        self.answer.setMinimumHeight(4 * self.answer.fontMetrics().lineSpacing())
        self.form = [form, self._player()]
        self._fill()
        self._timer.start()

    def _player(self) -> Form:
        form = Form(_tr("Its way in"), "goes_in")
        bar = QtWidgets.QWidget()
        row = QtWidgets.QHBoxLayout(bar)
        row.setContentsMargins(0, 0, 0, 0)
        self.slider = QtWidgets.QSlider(QtCore.Qt.Horizontal)
        self.slider.setObjectName("slider")
        self.slider.valueChanged.connect(self._place)
        self.buttons: dict[str, QtWidgets.QToolButton] = {}
        for name, icon, tip, act in (
            ("back", QtWidgets.QStyle.SP_MediaSkipBackward, _tr("One step back"),
             lambda: self._by(-1)),
            ("play", QtWidgets.QStyle.SP_MediaPlay, _tr("Play"), self.play),
            ("on", QtWidgets.QStyle.SP_MediaSkipForward, _tr("One step on"),
             lambda: self._by(1)),
        ):
            button = QtWidgets.QToolButton()
            button.setObjectName(name)
            button.setIcon(button.style().standardIcon(icon))
            button.setToolTip(tip)
            button.clicked.connect(act)
            self.buttons[name] = button
            row.addWidget(button)
        row.addWidget(self.slider)
        form.whole(bar)
        self.step = form.note("step")
        self.alone = QtWidgets.QCheckBox(_tr("Hide everything else"))
        self.alone.setObjectName("alone")
        self.alone.setChecked(True)
        self.alone.toggled.connect(self._hide)
        form.whole(self.alone)
        form.note("caution").setText(_tr(
            "Ways are looked for in an empty closet, from a room before it that is free. The "
            "picture moves in steps of {} and {}° at most; nothing in the document moves.").format(
            units.shown(STEP), f"{TURN:g}"))
        return form

    # -- the answers

    @property
    def rows(self) -> list[Load]:
        """The pieces that the table shows."""
        which = self.filter.value()
        if which == "meant":
            return [x for x in self.loads if x.piece.name in self.meant]
        if which == "whole":
            return [x for x in self.loads if x.whole]
        if which == "stuck":
            return [x for x in self.loads
                    if (a := self.answers.get(x.piece.name)) is not None and not a.passes]
        return list(self.loads)

    def _fill(self, field: Field | None = None) -> None:
        rows = self.rows
        self.table.blockSignals(True)
        self.table.clearSelection()
        self.table.setRowCount(len(rows))
        for at, load in enumerate(rows):
            for column in range(2):
                self.table.setItem(at, column, QtWidgets.QTableWidgetItem())
            self._show_answer(at, load)
        self.table.blockSignals(False)
        if rows:
            self.table.selectRow(0)
        else:
            self._picked()

    def _show_answer(self, at: int, load: Load) -> None:
        found = self.answers.get(load.piece.name)
        name, state = self.table.item(at, 0), self.table.item(at, 1)
        name.setText(load.piece.name)
        name.setToolTip(load.piece.name)
        state.setText("…" if found is None else _tr("✓ yes") if found.passes else _tr("✗ no"))
        bad = found is not None and not found.passes
        colour = palette.error_colour(self.table) if bad else palette.ink(self.table).name()
        state.setForeground(QtGui.QBrush(QtGui.QColor(colour)))

    def _answer_one(self) -> None:
        """The next piece that has no answer yet, those in the table first."""
        load = next((x for x in (*self.rows, *self.loads) if x.piece.name not in self.answers),
                    None)
        if load is None or not self.is_open:
            self._timer.stop()
            return
        self.ask(load)
        rows = self.rows
        if self.filter.value() == "stuck" and self.table.rowCount() != len(rows):
            self._fill()
        elif load in rows:
            at = rows.index(load)
            self._show_answer(at, load)
            if at == self.table.currentRow():
                self._picked()

    def ask(self, load: Load) -> Access:
        """Whether a piece goes in; pieces of one size are looked at once."""
        assert self._way is not None
        size = load.piece.size
        key = (*(round(v, 3) for v in size), load.piece.in_parts)
        same = self._known.get(key)
        # another of its size goes in alike, but ends elsewhere
        if same is None or same.passes:
            same = self._known[key] = way_in(
                load.piece, self._way, True, Figures(units.current_format()))
        self.answers[load.piece.name] = same
        return same

    # -- the piece that is chosen

    @property
    def chosen(self) -> Load | None:
        """The piece whose row is selected."""
        lines = self.table.selectionModel().selectedRows()
        rows = self.rows
        return rows[lines[0].row()] if lines and lines[0].row() < len(rows) else None

    def _picked(self) -> None:
        self._stop()
        load = self.chosen
        found = self.answers.get(load.piece.name) if load is not None else None
        if load is not None and found is None and self.is_open:
            found = self.ask(load)
            self._show_answer(self.table.currentRow(), load)
        self.answer.setText(_words(load, found))
        self.path = positions(found.path) if found is not None else ()
        self._haunt(load, found)
        self.slider.blockSignals(True)
        self.slider.setRange(0, max(0, len(self.path) - 1))
        self.slider.setValue(0)
        self.slider.blockSignals(False)
        for widget in (self.slider, *self.buttons.values()):
            widget.setEnabled(len(self.path) > 1)
        self._place(0)

    def _haunt(self, load: Load | None, found: Access | None) -> None:
        if self._ghost is not None:
            self.root.removeChild(self._ghost.node)
            self._ghost = None
        if load is not None and found is not None and self._way is not None:
            component = next(
                o for o in self.closet.Group if o.Label == load.component)
            own = [o for o in parts_of(component) if o.PartName in load.bodies]
            self._ghost = Ghost(load, own, self.survey.Placement)
            self.root.addChild(self._ghost.node)
            if not found.passes:
                self._ghost.stuck(
                    (self._way.jamb0 + self._way.jamb1) / 2, self._way.thick + 10 * PLAY)
        self._hide()

    def _hide(self, _: bool = True) -> None:
        load = self.chosen
        if load is None or not self.is_open:
            self.hide_parts(set())
            return
        mine = {o.Name for o in self.bodies()
                if o.Component.Label == load.component and o.PartName in load.bodies}
        self.hide_parts({o.Name for o in self.bodies()} if self.alone.isChecked() else mine)

    # -- playing

    def play(self) -> None:
        """Play the path from where it is, or from its start; a second time stops it."""
        if self._clock.isActive():
            self._stop()
            return
        if self.slider.value() == self.slider.maximum():
            self.slider.setValue(0)
        self.buttons["play"].setIcon(
            self.slider.style().standardIcon(QtWidgets.QStyle.SP_MediaPause))
        self._clock.start()

    def _stop(self) -> None:
        self._clock.stop()
        self.buttons["play"].setIcon(
            self.slider.style().standardIcon(QtWidgets.QStyle.SP_MediaPlay))

    def _beat(self) -> None:
        stride = max(1, len(self.path) * BEAT // LONGEST)
        self._by(stride)
        if self.slider.value() == self.slider.maximum():
            self._stop()

    def _by(self, steps: int) -> None:
        self.slider.setValue(self.slider.value() + steps)

    def _place(self, at: int) -> None:
        if self._ghost is None or not self.path:
            self.step.setText("")
            return
        self._ghost.put(self.path[at])
        pose = self.path[at].pose
        turned = _tr(", turned {}°").format(f"{abs(pose.angle):.0f}") if pose.angle else ""
        self.step.setText(_tr("Position {} of {}").format(at + 1, len(self.path)) + turned)

    def show(self) -> None:
        super().show()
        self._picked()

    def _close(self, end: Any) -> None:
        self._clock.stop()
        self._timer.stop()
        super()._close(end)


def _words(load: Load | None, found: Access | None) -> str:
    if load is None or found is None:
        return ""
    size = " x ".join(units.shown(v) for v in load.piece.size)
    exact = _tr("Exact.") if not found.searched else _tr(
        "Searched in steps of {}, with as much to spare all round.").format(
        units.shown(found.searched))
    if found.passes:
        return "\n".join((_tr("{} goes in: {}.").format(size, found.how), exact))
    return "\n".join((
        _tr("{} does not go in: {}.").format(size, found.how),
        _tr("What would help: {}.").format(found.remedy), exact))
