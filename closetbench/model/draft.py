"""Shapes while somebody types: without their holes, which take longest to make and to draw.

A shape so left says so in its object's ``Fingerprint``; ``finish`` has it made whole.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import replace
from typing import Any

from closetbench.core.panel import Panel

_MARK = "draft "
_drafting = ContextVar("drafting", default=False)


@contextmanager
def drafting() -> Iterator[None]:
    """What is recomputed within makes drafts."""
    token = _drafting.set(True)
    try:
        yield
    finally:
        _drafting.reset(token)


def drafted(panel: Panel, mark: str) -> tuple[Panel, str]:
    """The panel to draw and its mark, for the panel and the mark of the whole shape."""
    if _drafting.get() and (panel.holes or panel.rim_holes):
        return replace(panel, holes=(), rim_holes=()), _MARK + mark
    return panel, mark


def finish(doc: Any) -> bool:
    """Touch what is a draft, for the next recompute to make it whole; whether anything is."""
    found = [o for o in doc.Objects if getattr(o, "Fingerprint", "").startswith(_MARK)]
    for obj in found:
        obj.touch()
    return bool(found)
