"""Which bays and parts there are: as many as the parameters say, no more and no fewer."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from closetbench.core.parts import Part
from closetbench.model.base import class_of, create, is_invalid, ours
from closetbench.model.bridge import built_of, closet_for
from closetbench.model.carcass import Bay, bay_count
from closetbench.model.part import ClosetPart
from closetbench.model.properties import put


def sync(doc: Any) -> None:
    """Create and remove children after a recompute, within the same undo step.

    A carcass that could not be built, or was not looked at, keeps what it has.
    """
    carcasses = list(ours(doc, "Carcass"))
    for carcass in carcasses:
        if not is_invalid(carcass) and "Touched" not in carcass.State:
            ensure_bays(carcass, bay_count(carcass))
            _ensure_parts(carcass)
    _remove(doc, _orphans(doc, carcasses))


def ensure_bays(carcass: Any, count: int) -> None:
    """Make as many bay objects as there are bays, new ones on the right."""
    bays = list(carcass.BayList)
    if len(bays) == count == carcass.BaysMade:
        return
    doc = carcass.Document
    for number in range(len(bays) + 1, count + 1):
        bays.append(create(
            doc, Bay, f"{carcass.Name}_bay", f"{carcass.Label}: bay {number}"
        ))
        bays[-1].purgeTouched()
    surplus = bays[count:]
    carcass.BayList = bays[:count]
    put(carcass, "BayCount", count)
    put(carcass, "BaysMade", count)
    _hold(carcass, bays[:count])
    _remove(doc, surplus)
    carcass.purgeTouched()


def parts_of(carcass: Any) -> list[Any]:
    """The part objects of a carcass, in its order."""
    found = [o for o in carcass.InList if class_of(o) == "ClosetPart" and o.Component == carcass]
    return sorted(found, key=lambda o: int(o.Order))


def claimed(obj: Any) -> list[Any]:
    """What is shown under an object in the tree."""
    kind = class_of(obj)
    if kind == "Carcass":
        return [*obj.BayList, *parts_of(obj)]
    if kind != "Closet":
        return []
    below = {o.Name for c in obj.Group if class_of(c) == "Carcass" for o in claimed(c)}
    plans = [o for o in obj.InList if class_of(o) in ("CutLayout", "Bill")]
    return [*(o for o in obj.Group if o.Name not in below), *plans]


def delete_with(obj: Any) -> None:
    """Remove what cannot be without an object: bays and parts, or all that a closet holds."""
    _remove(obj.Document, obj.Group if class_of(obj) == "Closet" else claimed(obj))


def _ensure_parts(carcass: Any) -> None:
    wanted = built_of(carcass).parts
    have = {o.PartName: o for o in parts_of(carcass)}
    new = [_make_part(carcass, part) for name, part in wanted.items() if name not in have]
    if new:
        _hold(carcass, new)
    _remove(carcass.Document, [o for name, o in have.items() if name not in wanted])


def _make_part(carcass: Any, part: Part) -> Any:
    obj = create(carcass.Document, ClosetPart, f"{carcass.Name}_{part.name}")
    obj.PartName = part.name
    obj.Component = carcass
    obj.Proxy.work_out(obj)
    obj.purgeTouched()
    return obj


def _hold(carcass: Any, objects: Sequence[Any]) -> None:
    """Put objects into the closet's group, without asking for another recompute."""
    closet = closet_for(carcass)
    if closet is None:
        return
    held = set(closet.Group)
    new = [o for o in objects if o not in held]
    if new:
        closet.Group = [*closet.Group, *new]
        closet.purgeTouched()


def _orphans(doc: Any, carcasses: Sequence[Any]) -> list[Any]:
    bays = {bay for carcass in carcasses for bay in carcass.BayList}
    lost = [o for o in ours(doc, "Bay") if o not in bays]
    return lost + [o for o in ours(doc, "ClosetPart") if o.Component is None]


def _remove(doc: Any, objects: Sequence[Any]) -> None:
    groups = {c for o in objects if (c := closet_for(o)) is not None}
    for name in [o.Name for o in objects]:
        if doc.getObject(name) is not None:
            doc.removeObject(name)
    for closet in groups:
        closet.purgeTouched()
