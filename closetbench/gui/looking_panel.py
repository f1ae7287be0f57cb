"""A task panel that shows something of a closet and changes nothing."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCAD

from closetbench.core.closet import Closet
from closetbench.gui import scene
from closetbench.gui.task import TaskPanel
from closetbench.model import bridge
from closetbench.model.base import ours
from closetbench.model.children import BODIES


class LookingPanel(TaskPanel):
    """``root``: nodes of the panel's own in the 3D view, in the closet's frame, as long as
    it is open. Parts may be hidden in the view meanwhile; no property says so."""

    only_shows = True
    node = "ClosetbenchLooking"

    def __init__(self, closet: Any, title: str) -> None:
        super().__init__(closet.Document, title)
        self.closet = closet
        self.built: Closet = bridge.closet_of(closet)
        self.survey = bridge.survey_for(closet)
        self.root = scene.unpickable(self.node)
        self._hidden: dict[str, int] = {}

    def show(self) -> None:
        scene.put_in(self.survey.ViewObject, self.root)
        super().show()

    def reject(self) -> bool:
        """What the user changed elsewhere while the panel was open stays."""
        self._keep()
        return True

    def _close(self, end: Callable[[], None] | None) -> None:
        was_open = self.is_open
        super()._close(end)
        if was_open and self._name in FreeCAD.listDocuments():
            self.clear_view()

    def clear_view(self) -> None:
        """Take out what was put into the view, show what was hidden in it."""
        self.hide_parts(set())
        names = {o.Name for o in self.doc.Objects}
        if self._survey_name in names:
            scene.take_out(self.survey.ViewObject, self.node)

    def start(self, editing: bool = False) -> bool:
        self._survey_name = self.survey.Name
        return super().start(editing)

    def bodies(self) -> list[Any]:
        """The objects of everything that takes space in the closet."""
        return [o for o in ours(self.doc, *BODIES) if o.Closet == self.closet]

    def hide_parts(self, wanted: set[str]) -> None:
        """Hide these objects, by name, in the 3D view, and show those hidden before."""
        for name in set(self._hidden) - wanted:
            obj = self.doc.getObject(name)
            before = self._hidden.pop(name)
            if obj is not None and obj.ViewObject.Visibility:
                obj.ViewObject.SwitchNode.whichChild.setValue(before)
        for name in wanted - set(self._hidden):
            switch = self.doc.getObject(name).ViewObject.SwitchNode
            self._hidden[name] = switch.whichChild.getValue()
            switch.whichChild.setValue(-1)
