"""Doubts about a valid design: data, never prints."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum


class Severity(Enum):
    """How much a finding matters, from a remark to something that can hurt."""

    NOTE = "note"
    WARNING = "warning"
    DANGER = "danger"
    NOT_CHECKED = "not checked"


@dataclass(frozen=True)
class Finding:
    """One doubt about a design that can be built all the same.

    ``subject`` names the part or component; ``rule`` is a short slug that stays the
    same between versions; ``source`` says where the rule comes from; ``value`` and
    ``limit`` are texts as the user reads them (empty where there is none). ``fix``: what
    would put it right; ``spread``: the value over the published scatter of the material;
    ``parts``: full names of the parts concerned, where there are others than ``subject``.
    """

    severity: Severity
    subject: str
    rule: str
    message: str
    source: str = ""
    value: str = ""
    limit: str = ""
    fix: str = ""
    spread: str = ""
    parts: tuple[str, ...] = ()
