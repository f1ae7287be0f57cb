"""Dangers where something is exported: shown before, repeated after, never in the way."""

from __future__ import annotations

from typing import Any

import FreeCAD

from closetbench.core.errors import ClosetError
from closetbench.core.findings import Finding, Severity
from closetbench.core.walls import DEFER
from closetbench.gui.findings_table import CONTEXT, DANGER_GROUND, ON_DANGER, counted, safe
from closetbench.gui.qt import QtCore, QtWidgets, translate
from closetbench.gui.report import report
from closetbench.gui.said import finding_said, said
from closetbench.model import bridge
from closetbench.model.spoken import words
from closetbench.shop.report import finding_lines


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


def dangers_of(closet: Any) -> list[Finding]:
    """What can hurt somebody; nothing of a closet that cannot be built, which says so itself."""
    try:
        found = bridge.closet_of(closet).findings
    except ClosetError:
        return []
    return [f for f in found if f.severity is Severity.DANGER]


class DangerNote(QtWidgets.QLabel):
    """How many dangers there are and what each is, in white on red; hidden where none is."""

    def __init__(self, closet: Any) -> None:
        super().__init__()
        self.setObjectName("dangers")
        self.setWordWrap(True)
        self.setTextFormat(QtCore.Qt.RichText)
        self.setTextInteractionFlags(QtCore.Qt.TextSelectableByMouse)
        self.setFocusPolicy(QtCore.Qt.NoFocus)
        self.setStyleSheet(f"background: {DANGER_GROUND}; color: {ON_DANGER}; padding: 4px;")
        self.follow(closet)

    def follow(self, closet: Any) -> None:
        """Show the dangers of the closet as it is now."""
        found = dangers_of(closet)
        self.setVisible(bool(found))
        told = "".join(
            f'<p style="margin-top:2px;margin-bottom:2px"><b>{safe(f.subject)}</b>: '
            f"{safe(f.message)}{safe(_figures(f))}{_way_out(f)}</p>"
            for f in map(finding_said, found)
        )
        defer = "" if all(DEFER in f.message for f in found) else f"<i>{safe(said(DEFER))}</i>"
        self.setText(f"<b>{safe(counted(found))}</b>{told}{defer}")


def _figures(finding: Finding) -> str:
    limit = _tr("limit {}").format(finding.limit) if finding.limit else ""
    told = "; ".join(t for t in (finding.value, limit) if t)
    return f" ({told})" if told else ""


def _way_out(finding: Finding) -> str:
    return f" <i>{safe(finding.fix)}</i>" if finding.fix else ""


def report_written(text: str, closet: Any) -> None:
    """Say what was written; the closet's dangers stand above it in the report view."""
    found = dangers_of(closet)
    for danger in found:
        # no warning of FreeCAD's own: newer ones lay those over the window, where they are read
        # less than in the panel, which has shown them already
        FreeCAD.Console.PrintMessage("\n".join(finding_lines(danger, words())) + "\n")
    hint = _tr("; dangers in this closet: {}, see the checks").format(len(found)) if found else ""
    report(text + hint)
