"""Messages of the layers below in the user's language."""

from __future__ import annotations

from dataclasses import replace

from closetbench.core.findings import Finding
from closetbench.model.spoken import words


def said(text: str) -> str:
    """A message in the user's language."""
    return words().message(text) if text else text


def finding_said(finding: Finding) -> Finding:
    """A finding in the user's language; its rule, its source and the names of parts stay."""
    return replace(
        finding, message=said(finding.message), value=said(finding.value),
        limit=said(finding.limit), fix=said(finding.fix), spread=said(finding.spread),
    )
