"""What of the surveyed room the 3D view shows: a box to tick for each kind."""

from __future__ import annotations

from typing import Any

from closetbench.gui.form import Fold, Form
from closetbench.gui.qt import QtWidgets, translate
from closetbench.gui.room_view import PROPERTIES

CONTEXT = "Closetbench_Survey"
_TEXTS = {
    "ShowReadings": "Readings when this task is closed", "ShowWalls": "Walls",
    "ShowFloor": "Floor", "ShowCeiling": "Ceiling", "ShowFront": "Wall around the opening",
    "ShowTrim": "Casing and baseboard", "ShowDeadSpace": "Dead space",
    "ShowObstacles": "Obstacles",
}


class ShownForm(Form):
    """Switches properties of a survey's view at once; these are no part of an undo step."""

    def __init__(self, view: Any) -> None:
        super().__init__(translate(CONTEXT, "In the 3D view"), "survey")
        self._view = view
        self._before = {name: bool(getattr(view, name)) for name in PROPERTIES}
        inner = QtWidgets.QWidget()
        grid = QtWidgets.QGridLayout(inner)
        grid.setContentsMargins(0, 0, 0, 0)
        for at, (name, text) in enumerate(_TEXTS.items()):
            box = QtWidgets.QCheckBox(translate(CONTEXT, text))
            box.setObjectName(name)
            box.setChecked(self._before[name])
            box.setToolTip(translate("App::Property", PROPERTIES[name][2]))
            box.toggled.connect(lambda on, name=name: setattr(self._view, name, on))
            row, column = ((0, 0) if at == 0 else (1 + (at - 1) // 2, (at - 1) % 2))
            grid.addWidget(box, row, column, 1, 2 if at == 0 else 1)
        self.whole(Fold(translate(CONTEXT, "Show and hide"), inner))

    def put_back(self) -> None:
        """Show and hide as before the panel was opened."""
        for name, shown in self._before.items():
            if bool(getattr(self._view, name)) != shown:
                setattr(self._view, name, shown)
