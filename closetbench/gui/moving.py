"""Moving a component to another bay by dragging it there in the tree."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from closetbench.core.copies import put_in
from closetbench.core.errors import ClosetError
from closetbench.core.inside import Spot
from closetbench.gui import units
from closetbench.gui.qt import QtCore, translate
from closetbench.gui.trial import verify_spec
from closetbench.model import bridge
from closetbench.model.base import class_of
from closetbench.model.contents import CONTENTS
from closetbench.model.make import write_spec

CONTEXT = "Closetbench"


def can_stand(obj: Any, target: Any) -> bool:
    """Whether a component may be put into a bay, a carcass or a bench of its closet."""
    if class_of(obj) not in CONTENTS or obj == target:
        return False
    spec, host = CONTENTS[class_of(obj)].spec, _host(target)
    fields = spec.__dataclass_fields__
    takes = "spot" in fields or ("carcass" in fields and class_of(host) == "Carcass")
    return bool(takes and host and bridge.closet_for(host) == bridge.closet_for(obj))


def stand(obj: Any, target: Any) -> None:
    """Put it there, within FreeCAD's step for the dragging; where it cannot be built, say why
    and leave it where it is."""
    host, spec = _host(target), bridge.spec_of(obj)
    if hasattr(spec, "spot") and spec.spot is None:
        spec = replace(spec, spot=Spot(host.Label))
    spec = put_in(spec, host.Label)
    if class_of(target) == "Bay":
        if hasattr(spec, "spot"):
            at = list(host.BayList).index(target) + 1
            spec = replace(spec, spot=replace(spec.spot, bay=at))
    elif hasattr(spec, "spot") and obj.Host != host:
        spec = replace(spec, spot=replace(spec.spot, bay=1))
    try:
        verify_spec(obj, spec)
    except ClosetError as error:
        text = units.explained(str(error))
        QtCore.QTimer.singleShot(0, lambda: _tell(obj.Label, text))
        return
    write_spec(obj, spec)
    obj.Document.recompute()


def _tell(name: str, text: str) -> None:
    from closetbench.gui.task import tell

    tell(translate(CONTEXT, "Move {}").format(name), text)


def _host(target: Any) -> Any:
    if class_of(target) == "Bay":
        return next((o for o in target.InList if class_of(o) == "Carcass"), None)
    return target
