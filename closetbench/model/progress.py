"""What the steps of the work are told from, read from a document."""

from __future__ import annotations

from typing import Any

from closetbench.core.errors import ClosetError
from closetbench.core.findings import Severity
from closetbench.core.progress import Facts
from closetbench.model import bridge
from closetbench.model.base import class_of, is_invalid, ours
from closetbench.model.survey import BY_READINGS, fitted, site_of

_TROUBLE = (Severity.DANGER, Severity.WARNING)


def closet_in_view(doc: Any, chosen: Any = None) -> Any:
    """The closet that is spoken of: ``chosen`` if it is of this document, else the first one;
    None where there is none."""
    closets = [] if doc is None else list(ours(doc, "Closet"))
    return chosen if chosen in closets else next(iter(closets), None)


def facts_of(doc: Any, closet: Any) -> Facts:
    """The facts about a closet in a document, either of which may be None.

    Nothing is recomputed: what the closet comes to is looked up, or, where the document has
    changed since, built once and kept like any other design.
    """
    if doc is None or closet is None:
        return Facts(document=doc is not None, closet=False)
    survey = bridge.survey_for(closet)
    doubtful, room_broken = _room(survey)
    components = bridge.components_in(closet)
    broken = tuple((o.Label, class_of(o) == "Carcass") for o in components if is_invalid(o))
    held = [o for o in closet.InList if class_of(o) in ("CutLayout", "Bill")]
    layouts = [o for o in held if class_of(o) == "CutLayout" and o.PlanJson]
    bills = [o for o in held if class_of(o) == "Bill" and o.WrittenFor]
    dangers: int | None = None
    warnings = unchecked = parts = 0
    try:
        built = bridge.closet_of(closet)
    except ClosetError:
        pass
    else:
        found = [f.severity for f in built.findings]
        dangers, warnings = found.count(Severity.DANGER), found.count(Severity.WARNING)
        unchecked, parts = found.count(Severity.NOT_CHECKED), len(built.parts)
    return Facts(
        surveyed=survey is not None and survey.Source == BY_READINGS,
        doubtful=doubtful, room_broken=room_broken,
        carcasses=sum(class_of(o) == "Carcass" for o in components),
        components=sum(class_of(o) != "Carcass" for o in components),
        parts=parts, broken=broken, dangers=dangers, warnings=warnings, unchecked=unchecked,
        planned=bool(layouts), plan_old=any(o.OutOfDate for o in layouts),
        sheets=sum(o.Sheets for o in layouts),
        written=bool(bills), bill_old=any(o.OutOfDate for o in bills),
    )


def _room(survey: Any) -> tuple[int, bool]:
    """How many doubts there are about the readings, and whether no envelope fits."""
    if survey is None:
        return 0, True
    try:
        room, _ = fitted(site_of(survey))
    except ClosetError:
        return 0, True
    found = room.findings if room is not None else ()
    return sum(f.severity in _TROUBLE for f in found), False
