"""Trying a specification on the core before it is written to the document."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from closetbench.core.closet import Spec
from closetbench.core.errors import ClosetError
from closetbench.core.single import build_panel
from closetbench.core.specs import PanelSpec
from closetbench.model import bridge


def verify_spec(obj: Any, spec: Spec) -> None:
    """Raise ``ClosetError`` where ``obj`` cannot be built as ``spec`` says, or where that
    would leave no room for another component that can be built now."""
    closet = bridge.closet_for(obj)
    catalogue = bridge.catalogue_of(closet)
    if isinstance(spec, PanelSpec):
        build_panel(spec, catalogue)
    if closet is None:
        return
    design = bridge.design_of(closet)
    old = bridge.spec_of(obj).name
    index = [c.name for c in design.components].index(old)
    trial = [
        spec if i == index else _renamed(c, old, spec.name)
        for i, c in enumerate(design.components)
    ]
    try:
        bridge.build(replace(design, components=tuple(trial)), catalogue, bridge.format_of(closet))
    except ClosetError as error:
        # another component that cannot be built anyway does not stand in the way
        if error.subject.startswith((old, spec.name)) or _can_be_built(closet):
            raise


def _renamed(spec: Any, old: str, new: str) -> Any:
    """A component that stands in one with another name now."""
    if getattr(spec, "carcass", None) == old:
        spec = replace(spec, carcass=new)
    spot = getattr(spec, "spot", None)
    if spot is not None and spot.carcass == old:
        spec = replace(spec, spot=replace(spot, carcass=new))
    return spec


def _can_be_built(closet: Any) -> bool:
    try:
        bridge.closet_of(closet)
    except ClosetError:
        return False
    return True
