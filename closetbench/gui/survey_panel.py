"""The task panel of a survey: readings in, the envelope and its gaps out."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCAD

from closetbench.core.envelope import Envelope, Wall
from closetbench.core.errors import ClosetError
from closetbench.core.reading_lines import Trust, trust
from closetbench.core.readings import recommended
from closetbench.core.room import Room
from closetbench.core.survey import Obstacle, Reading, ReadingKind
from closetbench.gui import survey_forms, survey_sketch, units
from closetbench.gui.cards_form import CardsForm
from closetbench.gui.fields import ChoiceField, Field, LengthField
from closetbench.gui.form import FindingsList, Fold, Form
from closetbench.gui.qt import QtCore, QtWidgets, translate
from closetbench.gui.readings_table import ReadingsTable, legend
from closetbench.gui.room_view import RoomView
from closetbench.gui.said import said
from closetbench.gui.shown_form import ShownForm
from closetbench.gui.spec_panel import SpecPanel, put_paths
from closetbench.gui.survey_site import Site, site_in
from closetbench.model.make import write_spec
from closetbench.model.survey import fitted

CONTEXT = "Closetbench_Survey"
WIDE = 400
"""px of the table of readings where there is room for it."""
PEEK_DELAY = 60
"""ms from the last key to the residuals with what is typed: between two quick keys."""


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


class SurveyPanel(SpecPanel):
    """Readings or sizes, clearances, and what fits."""

    page = "Survey"

    # -- the specification

    def spec(self) -> Site:
        return site_in(self.obj)

    def verify(self, spec: Site) -> None:
        fitted(spec.design(self.obj.Label))

    def write(self, spec: Site) -> None:
        write_spec(self.obj, spec.design(self.obj.Label))

    def reason(self, error: ClosetError) -> str:
        if error.subject in ("survey", "clearances"):
            return error.limit
        return super().reason(error)

    # -- the forms

    def build(self) -> None:
        self._object = self.obj.Name
        self._asked: set[int] = set()
        self.clearances, self.more = self._clearances(), self._elsewhere()
        self.form = [
            self._readings(), self._judged(), self.clearances, self.more, self._results(),
            ShownForm(self.obj.ViewObject),
        ]
        self._peek = QtCore.QTimer(self)
        self._peek.setSingleShot(True)
        self._peek.setInterval(PEEK_DELAY)
        self._peek.timeout.connect(self._look_ahead)
        self._peeked: LengthField | None = None
        self.bind(*self.fields)
        for form in (self.extras, self.obstacles):
            self._cards(form)

    def bind(self, *fields: Field) -> None:
        super().bind(*fields)
        for one in fields:
            one.entered.connect(self._point_out)
            if isinstance(one, LengthField) and one.name.startswith("survey."):
                one.line.textEdited.connect(lambda _, f=one: self._typing(f))

    def _readings(self) -> Form:
        form = Form(_tr("Survey"), "survey")
        form.row(_tr("The envelope"), ChoiceField("by_readings", (
            (True, _tr("follows from readings in the room")),
            (False, _tr("has sizes that I give")),
        )))
        self.sketch = survey_sketch.SurveySketch()
        form.whole(self.sketch)
        self.caption = form.note("reading hint")
        self.caption.setMinimumHeight(2 * self.caption.fontMetrics().lineSpacing())
        self.tabs = QtWidgets.QTabWidget()
        self.tabs.setObjectName("readings")
        self.tabs.setUsesScrollButtons(False)
        pages = survey_forms.pages()
        for page in pages:
            self.tabs.addTab(page, page.windowTitle())
        form.whole(self.tabs, *pages)
        self.sizes = Form("", "survey")
        for name, label in (
            ("width", _tr("Width")), ("depth", _tr("Depth")), ("height", _tr("Height")),
        ):
            self.sizes.row(label, LengthField(name, name))
        form.whole(self.sizes, self.sizes)
        return form

    def _judged(self) -> Form:
        form = self.judged = Form(_tr("What the readings say of each other"), "survey")
        self.verdict = form.note("verdict")
        self.table = ReadingsTable()
        self.table.picked.connect(self._go_to)
        form.whole(self.table)
        form.note("legend").setText(legend())
        return form

    def _clearances(self) -> Form:
        form = Form(_tr("Room to leave"), "closet")
        form.heads(_tr("Left"), _tr("Right"), _tr(survey_forms.BACK))
        form.row(
            _tr("Least gap"), *(
                LengthField(f"clearances.{name}", name) for name in ("left", "right", "back")))
        form.heads(_tr("Top"), _tr("Floor"), _tr("Depth at most"))
        self.limit = LengthField("depth_limit", "depth", _tr("room"))
        form.row(
            "", LengthField("clearances.top", "top"), LengthField("clearances.floor", "floor"),
            self.limit,
        )
        return form

    def _elsewhere(self) -> Form:
        form = Form(_tr("More about the room"), "survey")
        axes = survey_forms.axes()
        self.extras = CardsForm(
            _tr("Readings taken elsewhere"), "extras", _tr("Add a reading"),
            survey_forms.extra_lines, self._add_extra, lambda i: self._drop("extras", i), axes,
        )
        self.obstacles = CardsForm(
            _tr("Obstacles"), "obstacles", _tr("Add an obstacle"), survey_forms.obstacle_lines,
            self._add_obstacle, lambda i: self._drop("obstacles", i), axes,
        )
        self.extras.whole(self._more_readings())
        for inner in (survey_forms.accuracy(), self.extras, self.obstacles):
            form.whole(Fold(inner.windowTitle(), inner), inner)
        return form

    def _results(self) -> Form:
        form = Form(_tr("What fits"), "carcass")
        self.summary = form.note("summary")
        self.gaps = QtWidgets.QLabel()
        self.gaps.setObjectName("gaps")
        form.whole(self.gaps)
        self.findings = FindingsList()
        form.whole(self.findings)
        return form

    # -- readings taken elsewhere, obstacles

    def _more_readings(self) -> QtWidgets.QPushButton:
        """A button that offers what is still to be read for a room that is fully measured."""
        button = QtWidgets.QPushButton(_tr("Add one that is recommended"))
        button.setObjectName("add recommended")
        menu = QtWidgets.QMenu(button)

        def fill() -> None:
            menu.clear()
            for record in recommended(self.spec().survey):
                act = menu.addAction(said(record.name))
                act.triggered.connect(lambda _=False, r=record: self._add_reading(r))

        menu.aboutToShow.connect(fill)
        button.setMenu(menu)
        return button

    def _add_reading(self, record: Reading) -> None:
        """A card for a reading, whose value is still to be typed: OK insists on it."""
        count = len(self.spec().survey.extras)
        self._asked.add(count)
        self._put("extras", (*self.spec().survey.extras, record))
        if len(self.spec().survey.extras) == count:
            self._asked.discard(count)
            return
        field = self._value_field(count)
        self.reveal(field.widget)
        field.widget.setFocus()

    def _value_field(self, index: int) -> LengthField:
        name = f"survey.extras.{index}.value"
        return next(f for f in self.fields if f.name == name)

    def _ask(self) -> None:
        for index in self._asked:
            field = self._value_field(index)
            field.ask()
            self.set_error(field, _tr("Enter what was read."))

    def _cards(self, form: CardsForm) -> None:
        survey = self.spec().survey
        records = survey.extras if form is self.extras else survey.obstacles
        self.bind(*form.rebuild(len(records)))
        if form is self.extras:
            self._ask()
        if self.is_open:
            self.settle()

    def _add_extra(self) -> None:
        survey = self.spec().survey
        self._add_reading(
            Reading(ReadingKind.WIDTH, survey.width_front_mid, z=survey.levels[1]))

    def _add_obstacle(self) -> None:
        known = self.spec().survey.obstacles
        record = Obstacle(
            _tr("obstacle {}").format(len(known) + 1), 0.0, 0.0, 0.0, 100.0, 100.0, 100.0)
        self._put("obstacles", (*known, record))

    def _drop(self, which: str, index: int) -> None:
        known = getattr(self.spec().survey, which)
        if which == "extras":
            self._asked = {i - (i > index) for i in self._asked if i != index}
        self._put(which, (*known[:index], *known[index + 1:]))

    def _put(self, which: str, records: tuple[Reading, ...] | tuple[Obstacle, ...]) -> None:
        form = self.extras if which == "extras" else self.obstacles
        form.trouble.say("")
        try:
            spec = put_paths(self.spec(), {f"survey.{which}": records})
            self.verify(spec)
        except ClosetError as error:
            form.trouble.say(units.explained(self.reason(error)))
            return
        path = f"survey.{which}."
        self._pending = {k: v for k, v in self._pending.items() if not k.startswith(path)}
        self.write(spec)
        self._cards(form)
        self.preview_soon()

    def first_field(self) -> Field:
        wanted = "survey.width_front_high" if self.spec().by_readings else "width"
        return next(f for f in self.fields if f.name == wanted)

    # -- what follows

    def take(self, field: Field) -> None:
        super().take(field)
        self._asked = {i for i in self._asked if field.name != f"survey.extras.{i}.value"}
        if field.name == "by_readings":
            self.show_spec([f for f in self.fields if f.name.startswith("survey.")])
            self._show_source()

    def refresh(self) -> None:
        self._show_source()
        spec = self.spec()
        try:
            room, envelope = fitted(spec.design(self.obj.Label))
        except ClosetError as error:
            self.summary.setText(units.explained(str(error)))
            self.gaps.hide()
            self.findings.show_findings(())
            return
        self.summary.setText(_tr("Envelope: {} wide, {} deep, {} high").format(
            *(units.shown(v) for v in (envelope.width, envelope.depth, envelope.height))))
        self.gaps.setVisible(room is not None)
        self.gaps.setText(_gap_table(envelope))
        self.findings.show_findings(room.findings if room else ())
        self._judge(room)

    def _judge(self, room: Room | None) -> None:
        """Show each reading beside what the room makes of it."""
        self.judged.setVisible(room is not None)
        readings = room.readings if room else ()
        self.table.show_readings(readings)
        wrong = [said(r.name) for r in readings if trust(r) is Trust.WRONG]
        doubtful = [said(r.name) for r in readings if trust(r) is Trust.DOUBTFUL]
        self.verdict.setText(
            _tr("Cannot be right: {}").format(", ".join(wrong)) if wrong else
            _tr("Doubtful: {}").format(", ".join(doubtful)) if doubtful else
            _tr("The readings agree with each other."))

    def _typing(self, field: LengthField) -> None:
        self._peeked = field
        self._peek.start()

    def _look_ahead(self) -> None:
        """Show what the reading that is being typed would make of the room; nothing is
        written until it is entered, and nothing is said against half a number."""
        self._peek.stop()
        field = self._peeked
        if not self.is_open or field is None or not field.touched or self.doc.Recomputing:
            return
        try:
            spec = put_paths(self.spec(), {field.name: field.value()})
            room, envelope = fitted(spec.design(self.obj.Label))
        except ClosetError:
            return
        self._judge(room)
        view = _room_view(self.obj)
        if view is not None:
            view.draw(spec.survey if spec.by_readings else None, room, envelope)

    def _go_to(self, key: str) -> None:
        """Put the cursor into the field of a reading."""
        path = f"survey.{key}"
        if key.startswith("extra "):
            path = f"survey.extras.{int(key.removeprefix('extra ')) - 1}.value"
        field = next((f for f in self.fields if f.name == path), None)
        if field is not None:
            self.reveal(field.widget)
            field.widget.setFocus()

    def show(self) -> None:
        super().show()
        view = _room_view(self.obj)
        if view is not None:
            view.while_open(True)

    def _widen(self) -> None:
        # asked for where the dock can be widened, not insisted on where it cannot
        self.table.setMinimumWidth(WIDE)
        super()._widen()
        self.table.setMinimumWidth(0)

    def reject(self) -> bool:
        self.form[-1].put_back()
        return super().reject()

    def _close(self, end: Callable[[], None] | None) -> None:
        was_open = self.is_open
        super()._close(end)
        if was_open and self._name in FreeCAD.listDocuments() and self._there():
            view = _room_view(self.obj)
            if view is not None:
                view.while_open(False)
                # what was typed and not entered has been drawn as well
                view.rebuild()

    def _there(self) -> bool:
        """Whether the survey is still in its document."""
        return self._object in {o.Name for o in self.doc.Objects}

    def _show_source(self) -> None:
        by_readings = self.spec().by_readings
        for widget in (self.tabs, self.sketch, self.caption):
            widget.setVisible(by_readings)
        self.sizes.setVisible(not by_readings)
        for name in ("left", "right", "back", "top", "floor"):
            one = next(f for f in self.fields if f.name == f"clearances.{name}")
            self.clearances.enable(one, by_readings)
        self.clearances.enable(self.limit, by_readings)
        self.more.setEnabled(by_readings)

    def _point_out(self, field: Field) -> None:
        name = field.name.removeprefix("survey.")
        self.sketch.point_out(name)
        hint = survey_sketch.hint(name) if name != field.name else ""
        self.caption.setText(hint)


def _room_view(survey: Any) -> RoomView | None:
    """The survey's room in the 3D view."""
    return getattr(getattr(survey.ViewObject, "Proxy", None), "room", None)


def _gap_table(envelope: Envelope) -> str:
    rows = []
    for wall in Wall:
        values = [gap.value for gap in envelope.gaps_at(wall)]
        if values:
            rows.append(
                f"<tr><td>{_tr('Gap at the ' + wall.value)}&nbsp;&nbsp;</td>"
                f"<td align='right'>{units.shown(min(values))}</td><td>&nbsp;{_tr('to')}&nbsp;</td>"
                f"<td align='right'>{units.shown(max(values))}</td></tr>"
            )
    return f"<table>{''.join(rows)}</table>"


