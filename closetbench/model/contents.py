"""What goes into or beside carcasses, in the document: drawers, doors, fillers and the like.

One class for each specification in ``core.closet.Spec`` but those of carcass and single
panel, called as that without its "Spec"; their properties follow from its fields.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any, get_args

from closetbench.core.closet import Spec
from closetbench.core.contents import HOSTING
from closetbench.core.specs import CarcassSpec, PanelSpec
from closetbench.model.base import class_of
from closetbench.model.component import LINKS, RESULTS, ComponentProxy
from closetbench.model.plain import type_hints
from closetbench.model.properties import (
    LINK,
    Prop,
    field_of,
    read_fields,
    record_of,
    write_fields,
)
from closetbench.model.spec_table import spec_table

PLACE = (
    Prop("Host", LINK, "Spot", "What it stands in or in front of"),
    Prop("Bay", LINK, "Spot", "The bay that it stands in; empty: by its number"),
)


class Content(ComponentProxy):
    """Base of the proxies; ``spec``: the specification that the properties stand for."""

    spec: type[Any]
    fields: tuple[Prop, ...]

    def __init_subclass__(cls) -> None:
        cls.fields = spec_table(cls.spec, cls.__name__)
        own = {p.name for p in cls.fields}
        shown = (p for p in RESULTS if p.name not in own)
        cls.properties = (*LINKS, *PLACE, *cls.fields, *shown)


def _class_for(spec: type[Any]) -> type[Content]:
    name = spec.__name__.removesuffix("Spec")
    words = (spec.__doc__ or "").partition("\n")[0]
    return type(name, (Content,), {"spec": spec, "__module__": __name__, "__doc__": words})


CONTENTS: dict[str, type[Content]] = {
    content.__name__: content
    for content in (_class_for(s) for s in get_args(Spec) if s not in (CarcassSpec, PanelSpec))
}
"""The classes by their short names."""
# a saved file names them as members of this module
globals().update(CONTENTS)


def content_class(spec: Any) -> type[Content]:
    """The class whose objects hold a specification."""
    return next(c for c in CONTENTS.values() if c.spec is type(spec))


def turn(spec: type[Any]) -> int:
    """When a content is built: what others stand in first, what stands in nothing last."""
    if not _host_fields(spec):
        return len(HOSTING) + 2
    return HOSTING.get(spec, len(HOSTING) + 1)


def rank(obj: Any) -> int:
    """Where a component's turn is: carcasses, then what others stand in, then the rest."""
    content = CONTENTS.get(class_of(obj))
    return 0 if content is None else turn(content.spec)


def content_spec(obj: Any) -> Any:
    """What a content object says. One that may do without a host has no spot then."""
    content = CONTENTS[class_of(obj)]
    values = {**read_fields(obj, content.fields), "name": obj.Label}
    host = "" if obj.Host is None else obj.Host.Label
    values |= dict.fromkeys(_host_fields(content.spec), host)
    bays = list(getattr(obj.Host, "BayList", ()))
    if obj.Bay in bays and "spot.bay" in values:
        values["spot.bay"] = bays.index(obj.Bay) + 1
    if not host and _may_stand_free(content.spec):
        values = {k: v for k, v in values.items() if not k.startswith("spot.")} | {"spot": None}
    return record_of(content.spec, values)


def write_content(obj: Any, spec: Any, hosts: Iterable[Any]) -> None:
    """Set the properties that differ from a spec; its host is looked for among ``hosts``."""
    content = CONTENTS[class_of(obj)]
    spot = getattr(spec, "spot", None)
    write_fields(
        obj, [p for p in content.fields if spot or not p.field.startswith("spot.")], spec
    )
    if obj.Label != spec.name:
        obj.Label = spec.name
    named = [field_of(spec, path) for path in _host_fields(content.spec) if spot or "." not in path]
    host = next((o for o in hosts if o.Label in named), None)
    if obj.Host != host:
        obj.Host = host
    bays = list(getattr(host, "BayList", ()))
    bay = bays[spot.bay - 1] if spot and 1 <= spot.bay <= len(bays) else None
    if obj.Bay != bay:
        obj.Bay = bay


def _may_stand_free(spec: type[Any]) -> bool:
    return type(None) in get_args(type_hints(spec).get("spot"))


def _host_fields(spec: type[Any]) -> list[str]:
    """The fields that hold the name of what a component stands in or in front of."""
    hints = type_hints(spec)
    found = ["carcass"] if "carcass" in hints else []
    return found + (["spot.carcass"] if "spot" in hints else [])
