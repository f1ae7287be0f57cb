"""The pages of the survey's panel: which field stands for which reading."""

from __future__ import annotations

from closetbench.core.envelope import Objective
from closetbench.core.survey import (
    OPENING_NAMES,
    READING_NAMES,
    TRIM_NAMES,
    OwnDoor,
    ReadingKind,
    Side,
    TapeClass,
)
from closetbench.gui import choices, survey_sketch
from closetbench.gui.cards_form import Line
from closetbench.gui.commands.base import mark
from closetbench.gui.fields import ChoiceField, LengthField, NumberField, TextField
from closetbench.gui.form import Form
from closetbench.gui.qt import translate

CONTEXT = "Closetbench_Survey"
BACK = mark("Closetbench_Survey", "Back")
"""A place; elsewhere the word is a panel's."""
_NAMES = READING_NAMES | OPENING_NAMES | TRIM_NAMES


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


def reading(name: str, blank: str = "") -> LengthField:
    """The field of a reading; ``blank``: what an empty one means."""
    signed = name.startswith(("lean", "rise"))
    one = LengthField(f"survey.{name}", _NAMES.get(name, "levels"), blank, signed)
    one.line.setToolTip(survey_sketch.hint(name))
    return one


def pages() -> list[Form]:
    """The pages of readings in the order that they are taken."""
    return [_widths(), _heights(), _depths(), _plumb(), _opening()]


def _widths() -> Form:
    page = Form(_tr("Widths"), "survey")
    page.heads(_tr("Front"), _tr(BACK), _tr("At height"))
    levels = (("low", _tr("Low")), ("mid", _tr("Middle")), ("high", _tr("High")))
    for number, (level, label) in reversed(list(enumerate(levels))):
        page.row(
            label, reading(f"width_front_{level}"), reading(f"width_back_{level}"),
            reading(f"levels.{number}"),
        )
    return page


def _heights() -> Form:
    page = Form(_tr("Heights"), "survey")
    page.heads(_tr("Left"), _tr("Right"))
    for end, label in (("front", _tr("Front")), ("back", _tr(BACK))):
        page.row(label, reading(f"height_{end}_left"), reading(f"height_{end}_right"))
    return page


def _depths() -> Form:
    page = Form(_tr("Depths"), "survey")
    none = _tr("not taken")
    page.row(_tr("Along the left wall"), reading("depth_left"))
    page.row(_tr("Along the right wall"), reading("depth_right"))
    page.row(_tr("Diagonal to the right"), reading("diagonal_to_right", none))
    page.row(_tr("Diagonal to the left"), reading("diagonal_to_left", none))
    return page


def _plumb() -> Form:
    page = Form(_tr("Plumb"), "survey")
    none = _tr("not taken")
    page.heads(_tr("Front"), _tr(BACK))
    page.row(_tr("Left wall"), reading("lean_left_front"), reading("lean_left_back"))
    page.row(
        _tr("Right wall"), reading("lean_right_front", none), reading("lean_right_back", none))
    page.row(_tr("Floor to the right"), reading("rise_front"), reading("rise_back"))
    page.heads(_tr("Left"), _tr("Right"))
    page.row(_tr("Back wall"), reading("lean_back_left"), reading("lean_back_right"))
    page.row(_tr("Floor to the back"), reading("rise_left"))
    return page


def _opening() -> Form:
    page = Form(_tr("Opening"), "survey")
    none = _tr("not taken")
    page.heads(_tr("Width"), _tr("Height"))
    page.row(_tr("Opening"), reading("opening_width", none), reading("opening_height", none))
    page.heads(_tr("Left"), _tr("Right"))
    page.row(_tr("Returns"), reading("return_left", none), reading("return_right", none))
    page.row(_tr("Wall over it"), reading("lintel", none))
    page.row(_tr("Wall thickness"), reading("jamb_depth"))
    page.row(_tr("Its own door"), ChoiceField("survey.door", choices.of_enum(OwnDoor)), tip=_tr(
        "What closes the opening: drawers and doors inside have to clear it."))
    page.row(_tr("Thickness, opens to (°)"), reading("door_thickness"),
             NumberField("survey.door_opens", "angle of the door", 30.0, 180.0))
    page.heads(_tr("Width, height"), _tr("Thickness"))
    page.row(_tr("Casing"), reading("casing_width"), reading("casing_thickness"))
    page.row(_tr("Baseboard"), reading("baseboard_height"), reading("baseboard_thickness"))
    return page


def accuracy() -> Form:
    """How well the readings are known."""
    page = Form(_tr("How sure"), "survey")
    page.row(_tr("Tape, class"), ChoiceField("survey.tape", [(t, t.value) for t in TapeClass]),
             tip=_tr("Accuracy class that is printed on the tape."))
    page.row(_tr("Read to"), LengthField("survey.resolution", "resolution of the readings"),
             tip=_tr("The step to which the tape was read."))
    page.row(_tr("Level, in a metre"), LengthField("survey.level_error", "error of the level"),
             tip=_tr("Error of the level or the plumb line over one metre."))
    page.row(_tr("Gaps kept with"), NumberField("clearances.confidence", "confidence", 0.5, 0.999),
             tip=_tr("How likely all least gaps are kept, given how well the room is known."))
    page.row(_tr("Largest is"), ChoiceField("objective", choices.of_enum(Objective)), tip=_tr(
        "Width first, or the volume, which matters under a slope."))
    return page


def extra_lines(index: int) -> list[Line]:
    """The card of an extra reading."""
    path = f"survey.extras.{index}"
    blank = _tr("–")

    def place(name: str) -> LengthField:
        return LengthField(f"{path}.{name}", name, blank, signed=True)

    sides = [(None, "–"), *((s, choices.words(s.value)) for s in Side)]
    return [
        (_tr("Name"), [TextField(f"{path}.label", _tr("by its kind"))]),
        (_tr("What"), [ChoiceField(f"{path}.kind", choices.of_enum(ReadingKind))]),
        (_tr("Reading"), [LengthField(f"{path}.value", "value", signed=True)]),
        (_tr("Wall, end"), [ChoiceField(f"{path}.side", sides)]),
        (_tr("At"), [place("x"), place("y"), place("z")]),
        (_tr("To"), [place("x2"), place("y2"), place("z2")]),
    ]


def obstacle_lines(index: int) -> list[Line]:
    """The card of an obstacle."""
    path = f"survey.obstacles.{index}"

    def place(name: str) -> LengthField:
        return LengthField(f"{path}.{name}", f"{name[0]}0 and {name[0]}1", signed=True)

    return [
        (_tr("Name"), [TextField(f"{path}.name")]),
        (_tr("From"), [place("x0"), place("y0"), place("z0")]),
        (_tr("To"), [place("x1"), place("y1"), place("z1")]),
    ]


def axes() -> tuple[str, str, str]:
    """Heads of the columns of places in the room."""
    return _tr("right"), _tr("in"), _tr("up")
