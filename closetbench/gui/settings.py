"""What a user has set once for all new closets and papers, in FreeCAD's own preferences."""

from __future__ import annotations

from dataclasses import fields, replace
from enum import Enum
from typing import Any

import FreeCAD

from closetbench.stock.plan import CutSettings

GROUP = "User parameter:BaseApp/Preferences/Mod/Closetbench"
CATALOGUE = "catalogue"
LAST = f"{GROUP}/LastValues"
SAW = ("kerf", "first", "stages", "seconds", "tidy")
"""The fields of the cutting settings that are kept."""


def _group() -> Any:
    return FreeCAD.ParamGet(GROUP)


def text(name: str, start: str = "") -> str:
    """A text that was set; ``start`` before that."""
    return str(_group().GetString(name, start))


def set_text(name: str, value: str) -> None:
    """Keep a text."""
    _group().SetString(name, value)


def remembers() -> bool:
    """Whether new components start with the values that were accepted last."""
    return bool(_group().GetBool("RememberValues", True))


def set_remembers(wanted: bool) -> None:
    """Say whether they do."""
    _group().SetBool("RememberValues", wanted)


def last_values(kind: str) -> str:
    """What was accepted last for a kind of component; empty before that."""
    return str(FreeCAD.ParamGet(LAST).GetString(kind, ""))


def keep_last_values(kind: str, value: str) -> None:
    """Keep what was accepted for a kind of component."""
    FreeCAD.ParamGet(LAST).SetString(kind, value)


def forget_last_values() -> None:
    """Have all components start with the defaults again."""
    FreeCAD.ParamGet(LAST).Clear()


def cut_settings() -> CutSettings:
    """The settings that a new cut layout starts with; what cannot be read is as shipped."""
    start = CutSettings()
    for field in fields(CutSettings):
        kept = text(field.name) if field.name in SAW else ""
        if not kept:
            continue
        known = getattr(start, field.name)
        try:
            if isinstance(known, Enum):
                value: Any = type(known)(kept)
            elif kept == "none":
                value = None
            else:
                value = int(kept) if field.name == "stages" else float(kept)
            start = replace(start, **{field.name: value})
        except ValueError:
            continue
    return start


def keep_cut_settings(settings: CutSettings) -> None:
    """Keep what the saw and the shop allow for the layouts to come."""
    for name in SAW:
        value = getattr(settings, name)
        if isinstance(value, Enum):
            value = value.value
        set_text(name, "none" if value is None else str(value))
