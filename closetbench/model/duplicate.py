"""Copies of components: by our command, and out of what FreeCAD pasted.

What FreeCAD pastes stands in no closet, shares its bays with the original and brings along
whatever the original depends on. Its properties say what it is to be: a component of that
kind is made in the closet instead, and what was pasted goes.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Any

import FreeCAD

from closetbench.core.copies import copied, put_in, stands_in
from closetbench.core.errors import ClosetError
from closetbench.core.specs import CarcassSpec, PanelSpec
from closetbench.model import bridge
from closetbench.model.base import class_of, ours
from closetbench.model.contents import CONTENTS
from closetbench.model.make import make_carcass, make_content, make_panel

COPIED = ("Carcass", *CONTENTS)
_BROUGHT = (*COPIED, "Survey", "Bay", "ClosetPart", "Bar", "ExistingPiece")


def duplicate(obj: Any) -> Any:
    """A copy of a component in its closet, with its formulas; the caller recomputes.

    Raises ``ClosetError`` where there is no place for one.
    """
    closet = bridge.closet_for(obj)
    if class_of(obj) == "GroovedPanel":
        panel = make_panel(obj.Document, closet, _renamed(obj))
        panel.Placement = obj.Placement
        _formulas(obj, panel)
        return panel
    return _add(closet, bridge.spec_of(obj), obj)


def _renamed(obj: Any) -> PanelSpec:
    from closetbench.core.copies import free_name

    spec = bridge.spec_of(obj)
    return replace(spec, name=free_name(spec.name, (o.Label for o in obj.Document.Objects)))


def _add(closet: Any, spec: Any, source: Any) -> Any:
    doc = closet.Document
    catalogue, form = bridge.catalogue_of(closet), bridge.format_of(closet)
    design = bridge.design_of(closet)
    taken = [o.Label for o in doc.Objects if class_of(o)]
    added = copied(design, spec, taken, lambda d: bridge.build(d, catalogue, form))
    made = [
        make_carcass(doc, closet, one) if isinstance(one, CarcassSpec)
        else make_content(doc, closet, one)
        for one in added
    ]
    _formulas(source, made[0])
    return made[0]


def _formulas(source: Any, copy: Any) -> None:
    pairs = zip(getattr(source, "BayList", ()), getattr(copy, "BayList", ()), strict=False)
    for old, new in ((source, copy), *pairs):
        for path, text in old.ExpressionEngine:
            new.setExpression(path, text)


def adopt(doc: Any, names: Iterable[str]) -> None:
    """Make components of a closet out of what was pasted: ``names`` of objects that came into
    being in the transaction that is about to end."""
    found = [o for o in (doc.getObject(n) for n in names) if o is not None]
    strays = [o for o in found if class_of(o) in _BROUGHT and _is_stray(o)]
    wanted = [o for o in strays if class_of(o) in COPIED and not _is_needed(o, strays)]
    closets = list(ours(doc, "Closet"))
    if not wanted or not closets:
        return
    orders = [(closets[0], *_order(closets[0], obj), obj) for obj in wanted]
    for closet, spec, error, obj in orders:
        try:
            if spec is None:
                raise error
            _add(closet, spec, obj)
        except ClosetError as trouble:
            FreeCAD.Console.PrintWarning(f"{obj.Label} was not pasted: {trouble}\n")
    for name in [o.Name for o in strays]:
        if doc.getObject(name) is not None:
            doc.removeObject(name)
    doc.recompute()


def _is_stray(obj: Any) -> bool:
    if hasattr(obj, "Closet"):
        return obj.Closet is None or obj.Component is None or _is_stray(obj.Component)
    return bridge.closet_for(obj) is None


def _is_needed(obj: Any, strays: Sequence[Any]) -> bool:
    """Whether it was only brought along for another one that was pasted."""
    return any(o in strays and class_of(o) in COPIED and o != obj for o in obj.InList)


def _order(closet: Any, obj: Any) -> tuple[Any, Any]:
    """What a pasted object says, in the host of this closet that is like its own; or why that
    cannot be said."""
    try:
        spec = bridge.spec_of(obj)
        host = getattr(obj, "Host", None)
        if host is not None and stands_in(spec):
            spec = put_in(spec, _original(closet, host))
        else:
            spec = _like(closet, spec)
    except ClosetError as error:
        return None, error
    return spec, None


def _original(closet: Any, host: Any) -> str:
    """The name of the component that a pasted host is a copy of."""
    if bridge.closet_for(host) is not None:
        return str(host.Label)
    same = [o for o in closet.Group if class_of(o) == class_of(host)]
    blank = replace(bridge.spec_of(host), name="")
    alike = [o for o in same if replace(bridge.spec_of(o), name="") == blank]
    named = [o for o in alike or same if host.Label.startswith(o.Label)]
    return str(next(iter((*named, *alike, *same)), host).Label)


def _like(closet: Any, spec: Any) -> Any:
    """A pasted component with the name of the one that it is a copy of, where there is one."""
    names = [
        s.name for s in bridge.design_of(closet).components
        if type(s) is type(spec) and replace(s, name="") == replace(spec, name="")
    ]
    return replace(spec, name=names[0]) if names else spec
