"""What the steps of the work are called, what is said of them, and what opens them."""

from __future__ import annotations

import FreeCADGui

from closetbench.core.progress import Step, StepKey, StepState, Why
from closetbench.gui import palette
from closetbench.gui.qt import QtCore, QtGui, QtWidgets, translate

CONTEXT = "Closetbench_Guide"
START = Why.NO_DOCUMENT
_COMPONENTS = (
    "Closetbench_Drawers", "Closetbench_Doors", "Closetbench_Rods", "Closetbench_ShoeShelves",
    "Closetbench_Existing", "Closetbench_Bench", "Closetbench_CornerShelves",
    "Closetbench_OverShelf", "Closetbench_FaceFrame", "Closetbench_Fillers",
)
_COMMANDS = {
    StepKey.CARCASS: ("Closetbench_Carcass", "Closetbench_Bay", "Closetbench_Panel"),
    StepKey.COMPONENTS: _COMPONENTS,
    StepKey.CHECKS: ("Closetbench_Checks", "Closetbench_GoesIn", "Closetbench_Opens"),
    StepKey.LAYOUT: ("Closetbench_Layout", "Closetbench_Offcuts"),
    StepKey.PAPERS: (
        "Closetbench_Bill", "Closetbench_Dxf", "Closetbench_BillSheet", "Closetbench_Step"),
}


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


def safe(text: str) -> str:
    """A text within marked-up text."""
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")


def title(key: StepKey) -> str:
    """What a step is called."""
    return {
        StepKey.ROOM: _tr("Room"), StepKey.CARCASS: _tr("Carcasses"),
        StepKey.COMPONENTS: _tr("Components"), StepKey.CHECKS: _tr("Checks"),
        StepKey.LAYOUT: _tr("Cut layout"), StepKey.PAPERS: _tr("Bill and papers"),
    }[key]


def words(step: Step) -> str:
    """How far a step is."""
    count, key, why = step.count, step.key, step.why
    if why is Why.NO_DOCUMENT or why is Why.NO_CLOSET:
        return _tr("Click to start a closet") if key is StepKey.ROOM else _tr("Needs a closet")
    if why is Why.NO_CARCASS:
        return _tr("Needs a carcass")
    if why is Why.NOTHING_TO_CUT:
        return _tr("Nothing to cut yet")
    if why is Why.BROKEN:
        if not count:
            return _tr("Waits until everything can be built")
        if key is StepKey.ROOM:
            return _tr("No box fits into the room as entered")
        return _tr("Cannot be built: {}").format(count)
    if why is Why.READINGS:
        return _tr("Readings: {} to look at").format(count)
    if why is Why.DANGERS or why is Why.DOUBTS:
        return _found(step)
    if why is Why.THERE:
        return _tr("In the closet: {}").format(count)
    if why is Why.NONE_YET:
        return _tr("Click to add one") if key is StepKey.CARCASS else _tr("Click to choose one")
    if why is Why.PLANNED:
        return _tr("Sheets: {}").format(count)
    if why is Why.NOT_PLANNED:
        return _tr("Click to plan the sheets") if key is StepKey.LAYOUT else _tr(
            "Needs a cut layout")
    if why is Why.OUT_OF_DATE:
        return _tr("Out of date: the design has changed")
    return {
        Why.BY_SIZES: _tr("By sizes; readings come later"),
        Why.BY_READINGS: _tr("Surveyed"),
        Why.CLEAR: _tr("Nothing found"),
        Why.WRITTEN: _tr("Bill is up to date; drawings by DXF"),
        Why.NOT_WRITTEN: _tr("Click to write the bill"),
    }[why]


def _found(step: Step) -> str:
    said = []
    if step.why is Why.DANGERS:
        said.append(_tr("Dangers: {}").format(step.count))
    elif step.count:
        said.append(_tr("Warnings: {}").format(step.count))
    if step.also:
        said.append(_tr("not checked: {}").format(step.also))
    return ", ".join(said)


def tip(step: Step) -> str:
    """What a step is for, and what a click does."""
    what = {
        StepKey.ROOM: _tr("What the tape read, or the sizes of the closet"),
        StepKey.CARCASS: _tr("Boxes of boards with sides, bays, shelves, back and base"),
        StepKey.COMPONENTS: _tr("Drawers, doors, rods, a bench, a reused piece, fillers"),
        StepKey.CHECKS: _tr("What is dangerous, doubtful or not checked"),
        StepKey.LAYOUT: _tr("Which sheets to buy and how to cut them"),
        StepKey.PAPERS: _tr("The bill as CSV, drawings as DXF, solids as STEP"),
    }[step.key]
    more = _tr("Right click: all commands of this step.")
    return f"{what}\n{more}"


def command(step: Step) -> str:
    """The command that a click runs; "" where there are several to choose from."""
    if step.why in (Why.NO_DOCUMENT, Why.NO_CLOSET):
        return "Closetbench_Start"
    if step.why is Why.NO_CARCASS:
        return "Closetbench_Carcass"
    if step.key is StepKey.ROOM:
        return "Closetbench_Survey"
    if step.key is StepKey.PAPERS and step.why in (Why.NOT_PLANNED, Why.NOTHING_TO_CUT):
        return "Closetbench_Layout"
    if step.key is StepKey.COMPONENTS or step.why is Why.WRITTEN:
        return ""
    return _COMMANDS[step.key][0]


def commands(step: Step) -> tuple[str, ...]:
    """All commands of a step."""
    if step.key is StepKey.ROOM:
        start = step.why in (Why.NO_DOCUMENT, Why.NO_CLOSET)
        return ("Closetbench_Start" if start else "Closetbench_Survey", "Closetbench_SurveySheet")
    return _COMMANDS[step.key]


def command_text(name: str) -> tuple[str, str]:
    """A command's text as menus show it, and its icon."""
    info = FreeCADGui.Command.get(name).getInfo()
    return translate(name, info["menuText"]), str(info["pixmap"]).rpartition("/")[2].split(".")[0]


def colour(widget: QtWidgets.QWidget, state: StepState) -> QtGui.QColor:
    """The colour of words and mark of a state, legible on the widget's theme."""
    if state is StepState.WRONG:
        return QtGui.QColor(palette.error_colour(widget))
    if state is StepState.LOOK:
        return QtGui.QColor(palette.warning_colour(widget))
    if state is StepState.NEXT:
        return palette.accent(widget)
    if state is StepState.DONE:
        return QtGui.QColor(palette.done_colour(widget))
    return palette.ink(widget, 0.75 if state is StepState.OPEN else 0.6)


def draw_mark(
    painter: QtGui.QPainter, widget: QtWidgets.QWidget, at: QtCore.QPointF, state: StepState
) -> None:
    """The mark of a state around a point: they differ by shape, not by colour alone."""
    shade = colour(widget, state)
    painter.save()
    painter.translate(at)
    painter.setPen(QtGui.QPen(shade, 2.2, QtCore.Qt.SolidLine, QtCore.Qt.RoundCap))
    if state is StepState.DONE:
        painter.drawPolyline(_points((-5, 0), (-1.5, 4), (5.5, -4.5)))
    elif state is StepState.NEXT:
        painter.setBrush(shade)
        painter.drawPolygon(_points((-3.5, -5), (5, 0), (-3.5, 5)))
    elif state in (StepState.WRONG, StepState.LOOK):
        if state is StepState.WRONG:
            painter.setBrush(shade)
        painter.drawPolygon(_points((0, -6), (6, 5), (-6, 5)))
        if state is StepState.WRONG:
            painter.setPen(QtGui.QPen(palette.ink_over(shade), 1.8))
        painter.drawLine(QtCore.QPointF(0, -1.5), QtCore.QPointF(0, 1.5))
    else:
        painter.setPen(QtGui.QPen(shade, 1.4))
        painter.drawEllipse(QtCore.QPointF(0, 0), 4.2, 4.2)
    painter.restore()


def _points(*points: tuple[float, float]) -> QtGui.QPolygonF:
    return QtGui.QPolygonF([QtCore.QPointF(*p) for p in points])
