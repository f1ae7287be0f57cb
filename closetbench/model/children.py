"""Which bays and parts there are: as many as the parameters say, no more and no fewer."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from closetbench.core.bodies import Body, LengthPart, Piece
from closetbench.core.errors import ClosetError
from closetbench.model.base import class_of, create, is_invalid, ours
from closetbench.model.body import BodyProxy
from closetbench.model.bridge import Built, built_of, chain_of, closet_for, survey_for
from closetbench.model.carcass import Bay, bay_count
from closetbench.model.loose import Bar, ExistingPiece
from closetbench.model.part import ClosetPart
from closetbench.model.properties import put

BODIES = ("ClosetPart", "Bar", "ExistingPiece")
PLANS = ("CutLayout", "Bill")


def sync(doc: Any) -> None:
    """Create and remove children after a recompute, within the same undo step.

    A closet that could not be built, or was not looked at, keeps what it has.
    """
    for closet in list(ours(doc, "Closet")):
        if is_invalid(closet) or "Touched" in closet.State or survey_for(closet) is None:
            continue
        try:
            built = built_of(closet)
        except ClosetError:
            # a component cannot be built, of which FreeCAD has told; 0.20 passes over the closet
            continue
        for obj in chain_of(closet):
            if class_of(obj) == "Carcass":
                ensure_bays(obj, bay_count(obj))
                obj.purgeTouched()
            _ensure_bodies(closet, obj, built)
        # what was worked out already counts these children
        closet.purgeTouched()
    for obj in _orphans(doc):
        holder = closet_for(obj)
        doc.removeObject(obj.Name)
        if holder is not None:
            holder.purgeTouched()


def ensure_bays(carcass: Any, count: int) -> None:
    """Make as many bay objects as there are bays, new ones on the right."""
    bays = list(carcass.BayList)
    if len(bays) == count == carcass.BaysMade:
        return
    doc, closet = carcass.Document, closet_for(carcass)
    for number in range(len(bays) + 1, count + 1):
        bays.append(create(doc, Bay, f"{carcass.Name}_bay", f"{carcass.Label}: bay {number}"))
        bays[-1].purgeTouched()
    surplus, bays = bays[count:], bays[:count]
    carcass.BayList = bays
    put(carcass, "BayCount", count)
    put(carcass, "BaysMade", count)
    _remove(doc, surplus)
    if closet is not None:
        held = set(closet.Group)
        closet.Group = [*closet.Group, *(b for b in bays if b not in held)]


def parts_of(component: Any) -> list[Any]:
    """The objects of a component's parts, in its order."""
    found = [
        o for o in component.InList
        if _is_there(o) and class_of(o) in BODIES and o.Component == component
    ]
    return sorted(found, key=lambda o: int(o.Order))


def _is_there(obj: Any) -> bool:
    """Whether an object is in its document still: one that was undone may be linked yet."""
    try:
        return bool(obj.Name)
    except RuntimeError:
        return False


def claimed(obj: Any) -> list[Any]:
    """What is shown under an object in the tree."""
    if class_of(obj) == "Closet":
        plans = [o for o in obj.InList if class_of(o) in PLANS]
        return [*(o for o in obj.Group if class_of(o) != "Bay"), *plans]
    if class_of(obj) == "Bill":
        return [o for o in obj.InList if class_of(o) == "BillSheet"]
    return [*getattr(obj, "BayList", ()), *parts_of(obj)]


def delete_with(obj: Any) -> None:
    """Remove what cannot be without an object: bays and parts, or all that makes a closet."""
    doomed = claimed(obj)
    if class_of(obj) == "Closet":
        doomed = [o for o in obj.InList if class_of(o) in BODIES] + list(obj.Group)
    _remove(obj.Document, doomed)


def _ensure_bodies(closet: Any, component: Any, built: Built) -> None:
    wanted = {
        (name, _class_for(body).__name__): body
        for name, body in built.bodies.get(component.Label, {}).items()
    }
    surplus = []
    for obj in parts_of(component):
        # a second one is a copy that the user pasted
        if wanted.pop((obj.PartName, class_of(obj)), None) is None:
            surplus.append(obj.Name)
    doc = component.Document
    for body in wanted.values():
        _make(closet, component, body)
    # a recompute may have been let in meanwhile, which took them away already
    for name in surplus:
        if doc.getObject(name) is not None:
            doc.removeObject(name)


def _class_for(body: Body) -> type[BodyProxy]:
    if isinstance(body, LengthPart):
        return Bar
    return ExistingPiece if isinstance(body, Piece) else ClosetPart


def _make(closet: Any, component: Any, body: Body) -> None:
    obj = create(component.Document, _class_for(body), f"{component.Name}_{body.name}")
    obj.PartName = body.name
    obj.Component = component
    obj.Closet = closet
    obj.Proxy.work_out(obj)
    obj.purgeTouched()


def _orphans(doc: Any) -> list[Any]:
    bays = {bay for carcass in ours(doc, "Carcass") for bay in carcass.BayList}
    lost = [o for o in ours(doc, "Bay") if o not in bays]
    return lost + [o for o in ours(doc, *BODIES) if o.Component is None or o.Closet is None]


def _remove(doc: Any, objects: Sequence[Any]) -> None:
    for name in [o.Name for o in objects]:
        if doc.getObject(name) is not None:
            doc.removeObject(name)
