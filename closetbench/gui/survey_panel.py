"""The task panel of a survey: readings in, the envelope and its gaps out."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Any

from closetbench.core.closet import ClosetDesign, build_envelope
from closetbench.core.envelope import Clearances, Envelope, Wall
from closetbench.core.errors import ClosetError
from closetbench.core.survey import READING_NAMES, Survey
from closetbench.gui import survey_sketch, units
from closetbench.gui.fields import ChoiceField, Field, LengthField
from closetbench.gui.form import FindingsList, Form
from closetbench.gui.qt import QtWidgets, translate
from closetbench.gui.spec_panel import SpecPanel
from closetbench.model import bridge
from closetbench.model.make import write_spec
from closetbench.model.properties import read_fields
from closetbench.model.survey import LEVELS, MAYBE_READ, READINGS, camel

CONTEXT = "Closetbench_Survey"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


@dataclass(frozen=True)
class Site:
    """What the panel edits: the readings and the sizes, of which one counts."""

    by_readings: bool
    width: float
    depth: float
    height: float
    survey: Survey
    clearances: Clearances = field(default_factory=Clearances)
    depth_limit: float | None = None

    def design(self, name: str) -> ClosetDesign:
        """The design without components."""
        if self.by_readings:
            return ClosetDesign(
                name, self.survey, self.clearances, depth_limit=self.depth_limit)
        return ClosetDesign(
            name, None, self.clearances, (self.width, self.depth, self.height))


class SurveyPanel(SpecPanel):
    """Readings or sizes, clearances, and what fits."""

    # -- the specification

    def spec(self) -> Site:
        obj = self.obj
        size = (obj.GivenWidth.Value, obj.GivenDepth.Value, obj.GivenHeight.Value)
        design = bridge.spec_of(obj)
        survey = design.survey or _kept_readings(obj) or _plain_room(*size)
        return Site(
            design.survey is not None, *size, survey, design.clearances,
            obj.DepthLimit.Value or None,
        )

    def verify(self, spec: Site) -> None:
        build_envelope(spec.design(self.obj.Label))

    def write(self, spec: Site) -> None:
        write_spec(self.obj, spec.design(self.obj.Label))

    def reason(self, error: ClosetError) -> str:
        if error.subject in ("survey", "clearances"):
            return error.limit
        return super().reason(error)

    # -- the forms

    def build(self) -> None:
        self.form = [self._readings(), self._clearances(), self._results()]
        self.bind(*self.fields)
        for one in self.fields:
            one.entered.connect(self._point_out)

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
        pages = []
        for title, page in (
            (_tr("Widths"), self._widths()),
            (_tr("Heights"), self._heights()),
            (_tr("Depths"), self._depths()),
            (_tr("Plumb"), self._plumb()),
            (_tr("Floor"), self._floor()),
        ):
            self.tabs.addTab(page, title)
            pages.append(page)
        form.whole(self.tabs, *pages)
        self.sizes = Form("", "survey")
        for name, label in (
            ("width", _tr("Width")), ("depth", _tr("Depth")), ("height", _tr("Height")),
        ):
            self.sizes.row(label, LengthField(name, name))
        form.whole(self.sizes, self.sizes)
        return form

    def _widths(self) -> Form:
        page = Form(_tr("Widths"), "survey")
        page.heads(_tr("Front"), _tr("Back"), _tr("At height"))
        for number, (level, label) in reversed(list(enumerate((
            ("low", _tr("Low")), ("mid", _tr("Middle")), ("high", _tr("High")),
        )))):
            page.row(
                label, self._reading(f"width_front_{level}"),
                self._reading(f"width_back_{level}"), self._reading(f"levels.{number}"),
            )
        return page

    def _heights(self) -> Form:
        page = Form(_tr("Heights"), "survey")
        page.heads(_tr("Left"), _tr("Right"))
        for end, label in (("front", _tr("Front")), ("back", _tr("Back"))):
            page.row(
                label, self._reading(f"height_{end}_left"), self._reading(f"height_{end}_right"))
        return page

    def _depths(self) -> Form:
        page = Form(_tr("Depths and diagonals"), "survey")
        page.row(_tr("Along the left wall"), self._reading("depth_left"))
        page.row(_tr("Along the right wall"), self._reading("depth_right"))
        none = _tr("not taken")
        page.row(_tr("To the back right"), self._reading("diagonal_to_right", none))
        page.row(_tr("To the back left"), self._reading("diagonal_to_left", none))
        return page

    def _plumb(self) -> Form:
        page = Form(_tr("Plumb"), "survey")
        page.heads(_tr("Front"), _tr("Back"))
        none = _tr("not taken")
        page.row(_tr("Left wall"), self._reading("lean_left_front"),
                 self._reading("lean_left_back"))
        page.row(_tr("Right wall"), self._reading("lean_right_front", none),
                 self._reading("lean_right_back", none))
        page.heads(_tr("Left"), _tr("Right"))
        page.row(_tr("Back wall"), self._reading("lean_back_left"),
                 self._reading("lean_back_right"))
        return page

    def _floor(self) -> Form:
        page = Form(_tr("Rise of the floor"), "survey")
        page.row(_tr("Left to right, front"), self._reading("rise_front"))
        page.row(_tr("Left to right, back"), self._reading("rise_back"))
        page.row(_tr("Front to back, left"), self._reading("rise_left"))
        return page

    @staticmethod
    def _reading(name: str, blank: str = "") -> LengthField:
        signed = name.startswith(("lean", "rise"))
        one = LengthField(f"survey.{name}", READING_NAMES.get(name, "levels"), blank, signed)
        one.line.setToolTip(survey_sketch.hint(name))
        return one

    def _clearances(self) -> Form:
        form = Form(_tr("Room to leave"), "closet")
        form.heads(_tr("Left"), _tr("Right"), _tr("Back"))
        form.row(
            _tr("Least gap"), *(
                LengthField(f"clearances.{name}", name) for name in ("left", "right", "back")))
        form.heads(_tr("Top"), _tr("Floor"), _tr("Depth at most"))
        self.limit = LengthField("depth_limit", "depth", _tr("the room's"))
        form.row(
            "", LengthField("clearances.top", "top"), LengthField("clearances.floor", "floor"),
            self.limit,
        )
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

    def first_field(self) -> Field:
        wanted = "survey.width_front_high" if self.spec().by_readings else "width"
        return next(f for f in self.fields if f.name == wanted)

    # -- what follows

    def take(self, field: Field) -> None:
        super().take(field)
        if field.name == "by_readings":
            self.show_spec([f for f in self.fields if f.name.startswith("survey.")])
            self._show_source()

    def refresh(self) -> None:
        self._show_source()
        try:
            room, envelope = build_envelope(self.spec().design(self.obj.Label))
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

    def _show_source(self) -> None:
        by_readings = self.spec().by_readings
        for widget in (self.tabs, self.sketch, self.caption):
            widget.setVisible(by_readings)
        self.sizes.setVisible(not by_readings)
        for name in ("left", "right", "back", "top", "floor"):
            one = next(f for f in self.fields if f.name == f"clearances.{name}")
            self.form[1].enable(one, by_readings)
        self.form[1].enable(self.limit, by_readings)

    def _point_out(self, field: Field) -> None:
        name = field.name.removeprefix("survey.")
        self.sketch.point_out(name)
        said = survey_sketch.hint(name) if name != field.name else ""
        self.caption.setText(said)


def _kept_readings(obj: Any) -> Survey | None:
    """Readings that the object holds while given sizes count; None where there are none."""
    values = read_fields(obj, READINGS)
    for name in MAYBE_READ:
        taken = getattr(obj, f"{camel(name)}Taken")
        values[name] = getattr(obj, camel(name)).Value if taken else None
    try:
        return Survey(**values, levels=tuple(getattr(obj, p.name).Value for p in LEVELS))
    except ClosetError:
        return None


def _plain_room(width: float, depth: float, height: float) -> Survey:
    """Readings of a room that is plumb, level and square, to begin with."""
    levels = (100.0, 1200.0, 2200.0)
    if height <= levels[2]:
        levels = (min(100.0, height / 8), height / 2, height * 0.9)
    survey = Survey(*[width] * 6, *[height] * 4, depth, depth)
    return replace(survey, levels=levels)


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


