"""The surveyed room in the 3D view: see-through walls, dead space, obstacles, readings.

All of it hangs under the survey's view provider and is made from its properties: nothing of
it is saved, and the survey's own outline is all that shows where the add-on is missing.
"""

from __future__ import annotations

import math
from typing import Any

from pivy import coin

from closetbench.core.convex import Solid, Vector
from closetbench.core.envelope import Envelope
from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.reading_lines import ReadingLine, Trust, reading_lines
from closetbench.core.room import Room
from closetbench.core.room_scene import Kind, Shown, room_scene
from closetbench.core.survey import Survey
from closetbench.gui import palette, scene, units
from closetbench.gui.qt import translate
from closetbench.gui.units import signed
from closetbench.model.survey import fitted, site_of

CONTEXT = "Closetbench_Survey"
NAME = "ClosetbenchRoom"
READINGS = "ShowReadings"
FRONT = 100.0
"""mm into the closet up to which a reading counts as one at the front."""
NARROW = 20.0
"""mm: a dead space less deep than this is not worth a label."""
INSIDE = 2.0
"""mm that a dead space is drawn smaller all round."""
_GROUP = "Room"
_LABELLED = (Kind.DEAD_SPACE, Kind.OBSTACLES)

PROPERTIES: dict[str, tuple[Kind | None, bool, str]] = {
    READINGS: (None, False, "Show the readings also while the survey's task is closed"),
    "ShowWalls": (Kind.WALLS, True, "Show the walls of the room"),
    "ShowFloor": (Kind.FLOOR, True, "Show the floor of the room"),
    "ShowCeiling": (Kind.CEILING, False, "Show the ceiling of the room"),
    "ShowFront": (Kind.FRONT, True, "Show the wall around the opening"),
    "ShowTrim": (Kind.TRIM, True, "Show casing and baseboard"),
    "ShowDeadSpace": (Kind.DEAD_SPACE, True, "Show what the wall around the opening hides"),
    "ShowObstacles": (Kind.OBSTACLES, True, "Show what must stay clear"),
}
"""Properties of the survey's view: what they show, whether at first, and their text."""


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


class RoomView:
    """The nodes of one survey, a switch for each kind of them."""

    def __init__(self, view: Any) -> None:
        self._view = view
        self._open = False
        for name, (_, shown, text) in PROPERTIES.items():
            if name not in view.PropertiesList:
                view.addProperty("App::PropertyBool", name, _GROUP, text)
                setattr(view, name, shown)
        self._all = coin.SoSwitch()
        self._kinds: dict[str, Any] = {}
        self._labels: list[scene.Label] = []
        for name in PROPERTIES:
            self._kinds[name] = coin.SoSwitch()
            self._all.addChild(self._kinds[name])
        root = scene.unpickable(NAME)
        root.addChild(self._all)
        scene.put_in(view, root)
        self.follow()

    def follow(self) -> None:
        """Show and hide as the properties of the view say."""
        _set(self._all, bool(self._view.Visibility))
        for name, switch in self._kinds.items():
            _set(switch, bool(getattr(self._view, name, False))
                 or (name == READINGS and self._open))

    def while_open(self, is_open: bool) -> None:
        """The survey's panel opens or closes: its readings show as long as it is open."""
        self._open = is_open
        self.follow()

    def rebuild(self) -> None:
        """Make the nodes anew from the survey's properties."""
        try:
            site = site_of(self._view.Object)
            room, envelope = fitted(site)
        except ClosetError:
            # what cannot be fitted says so elsewhere; the last room stays
            return
        self.draw(site.survey, room, envelope)

    def draw(self, survey: Survey | None, room: Room | None, envelope: Envelope) -> None:
        """Show this room in the place of what was shown."""
        for switch in self._kinds.values():
            switch.removeAllChildren()
        if survey is None or room is None:
            return
        by_kind: dict[Kind, list[Shown]] = {}
        for one in room_scene(room, envelope):
            by_kind.setdefault(one.kind, []).append(one)
        for name, (kind, _, _) in PROPERTIES.items():
            for node in (_nodes(kind, by_kind.get(kind, [])) if kind else
                         self._readings(reading_lines(survey, room, envelope))):
                self._kinds[name].addChild(node)

    def _readings(self, lines: tuple[ReadingLine, ...]) -> list[Any]:
        """Lines, then labels, so that no line crosses a label; all of it before the parts."""
        drawn: list[Any] = []
        texts: list[tuple[str, Vector, palette.Colour]] = []
        for kind in Trust:
            own = [line for line in lines if line.trust is kind]
            if own:
                colour = palette.TRUST[kind]
                bright = tuple(min(1.0, 1.25 * c) for c in colour)
                width = 3.0 if kind is Trust.WRONG else 2.0
                drawn.append(scene.lines([(x.start, x.end) for x in own], bright, width))
                drawn.append(scene.dots([p for x in own for p in (x.start, x.end)], bright))
                texts += [(said(x), _label_at(x), colour) for x in own]
        # labels are kept for the next time: readings are drawn with every digit typed
        for label, text in zip(self._labels, texts, strict=False):
            label.show(*text)
        self._labels += [scene.Label(*text) for text in texts[len(self._labels):]]
        labels = [label.node for label in self._labels[:len(texts)]]
        return [scene.on_top([*drawn, *labels])] if drawn else []


def _set(switch: Any, shown: bool) -> None:
    wanted = coin.SO_SWITCH_ALL if shown else coin.SO_SWITCH_NONE
    if switch.whichChild.getValue() != wanted:
        switch.whichChild.setValue(wanted)


def _nodes(kind: Kind, shown: list[Shown]) -> list[Any]:
    if not shown:
        return []
    colour, clear = palette.ROOM[kind]
    solids = [_shrunk(s) if kind is Kind.DEAD_SPACE else s.faces for s in shown]
    found = [scene.faces(solids, colour, clear)]
    if kind in (Kind.FRONT, Kind.TRIM, *_LABELLED):
        found.append(scene.edges(solids, colour))
    if kind in _LABELLED:
        ground = tuple(0.75 * c for c in colour)
        found.append(scene.on_top([scene.label(_said(s), s.middle, ground) for s in shown
                                    if kind is Kind.OBSTACLES or s.sizes[0] > NARROW]))
    return found


def _shrunk(shown: Shown) -> Solid:
    """Its faces a little inside: parts stand in the very faces of a dead space."""
    middle = shown.middle

    def inside(point: Vector) -> Vector:
        x, y, z = (p + math.copysign(min(INSIDE, abs(m - p)), m - p)
                   for p, m in zip(point, middle, strict=True))
        return x, y, z

    return tuple(tuple(inside(p) for p in ring) for ring in shown.faces)


def _said(shown: Shown) -> str:
    """A body's name and sizes in words."""
    if shown.kind is Kind.OBSTACLES:
        return shown.name
    words = {
        "left": _tr("behind the left return: {}, {} l"),
        "right": _tr("behind the right return: {}, {} l"),
        "above": _tr("over the lintel: {}, {} l"),
    }[shown.name]
    return words.format(units.shown(shown.sizes[0]), f"{shown.litres:.0f}")


def _label_at(line: ReadingLine) -> Vector:
    """Off the middle, where a width and a height, a reading in front and one behind meet."""
    a, b = line.start, line.end
    share = 0.8 if line.offset else 0.28 if max(a[1], b[1]) < FRONT else 0.62
    return (
        a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1]), a[2] + share * (b[2] - a[2]),
    )


def said(line: ReadingLine) -> str:
    """What was read and its residual; of a wrong one what was expected."""
    form = units.current_format()
    figures, reading = Figures(form), line.reading
    sign = "+" if line.offset and reading.value > 0 else ""
    value = sign + form.text(reading.value, unit=False)
    if line.trust is Trust.WRONG:
        return _tr("{}: {} expected").format(value, form.text(reading.adjusted, unit=False))
    return f"{value}  ({signed(figures, reading.residual)})"
