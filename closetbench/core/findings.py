"""Doubts about a valid design: data, never prints."""

from __future__ import annotations

from collections.abc import Iterable
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


_ORDER = (Severity.DANGER, Severity.WARNING, Severity.NOT_CHECKED, Severity.NOTE)


def by_severity(findings: Iterable[Finding]) -> list[Finding]:
    """What can hurt first, then in the order in which it was found."""
    return sorted(findings, key=lambda finding: _ORDER.index(finding.severity))
