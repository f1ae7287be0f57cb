"""Trying a specification on the core before it is written to the document."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from closetbench.core.errors import ClosetError
from closetbench.core.single import build_panel
from closetbench.core.specs import CarcassSpec, PanelSpec
from closetbench.model import bridge


def verify_spec(obj: Any, spec: CarcassSpec | PanelSpec) -> None:
    """Raise ``ClosetError`` where ``obj`` cannot be built as ``spec`` says, or where that
    would leave no room for another component that can be built now."""
    closet = bridge.closet_for(obj)
    catalogue = bridge.catalogue_of(closet)
    if isinstance(spec, PanelSpec):
        build_panel(spec, catalogue)
    if closet is None:
        return
    design = bridge.design_of(closet)
    index = [c.name for c in design.components].index(bridge.spec_of(obj).name)
    trial = (*design.components[:index], spec, *design.components[index + 1:])
    if isinstance(spec, CarcassSpec):
        bridge.build(replace(design, components=trial[: index + 1]), catalogue)
    try:
        bridge.build(replace(design, components=trial), catalogue)
    except ClosetError:
        if _can_be_built(closet):
            raise


def _can_be_built(closet: Any) -> bool:
    try:
        bridge.closet_of(closet)
    except ClosetError:
        return False
    return True
