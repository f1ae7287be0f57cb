"""A little less depth that saves sheets: the advice with its numbers, and a button that does it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from math import floor
from typing import Any

from closetbench.core.errors import ClosetError
from closetbench.core.findings import Finding
from closetbench.core.specs import CarcassSpec
from closetbench.gui import units
from closetbench.gui.form import ErrorLabel, Form
from closetbench.gui.qt import QtWidgets, translate
from closetbench.gui.said import said
from closetbench.gui.trial import verify_spec
from closetbench.model import bridge
from closetbench.model.base import class_of
from closetbench.model.layout import needs_for
from closetbench.model.make import write_spec
from closetbench.stock.advice import StripAdvice, strip_advice, strip_findings, strip_gains

CONTEXT = "Closetbench_Layout"


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


@dataclass(frozen=True)
class Proposal:
    """Carcasses that would be as deep as ``depths`` says, by label, and the advice behind it."""

    advice: StripAdvice
    depths: tuple[tuple[str, float], ...]


def proposals(layout: Any) -> list[Proposal]:
    """What saves a sheet and can be done by making carcasses less deep."""
    try:
        needs = needs_for(layout)
    except ClosetError:
        return []
    carcasses = {c.Label: c for c in bridge.carcasses_in(layout.Closet)}
    found = []
    for advice in strip_advice(needs.parts, needs.sheets, layout.Kerf.Value):
        if advice.sheets_slimmer >= advice.sheets:
            continue
        labels = dict.fromkeys(
            part.key.partition(": ")[0] for part in needs.parts
            if part.material == advice.sheet.material and part.width == advice.depth
        )
        if not labels or not all(label in carcasses for label in labels):
            continue
        saving = advice.depth - floor(advice.slimmer * 10) / 10
        found.append(Proposal(advice, tuple(
            (label, carcasses[label].OuterDepth.Value - saving) for label in labels)))
    return found


def strip_notes(closet: Any) -> list[Finding]:
    """What a little less depth would save, as findings of a closet whose sheets are planned."""
    layout = next((o for o in closet.InList if class_of(o) == "CutLayout"), None)
    if layout is None:
        return []
    try:
        needs = needs_for(layout)
    except ClosetError:
        return []
    return list(strip_gains(needs.parts, needs.sheets, layout.Kerf.Value, units.shown))


class DepthAdvice(Form):
    """The proposals; ``done`` is called once one was carried out."""

    def __init__(self, layout: Any, done: Callable[[], None]) -> None:
        super().__init__(_tr("Strip widths"), "layout")
        self._layout, self._done = layout, done
        self._box = QtWidgets.QWidget()
        self._stack = QtWidgets.QVBoxLayout(self._box)
        self._stack.setContentsMargins(0, 0, 0, 0)
        self.whole(self._box)
        self.none = self.note("no advice")
        self.trouble = ErrorLabel("depth")
        self.whole(self.trouble)

    def follow(self) -> None:
        """Show what there is to propose now."""
        while self._stack.count():
            widget = self._stack.takeAt(0).widget()
            widget.hide()
            widget.deleteLater()
        found = proposals(self._layout)
        self.none.setText("" if found else _tr(
            "No carcass that is up to 15 mm less deep would save a sheet."))
        self.none.setVisible(not found)
        kerf = self._layout.Kerf.Value
        for number, proposal in enumerate(found, 1):
            (finding,) = strip_findings([proposal.advice], kerf, units.shown)
            words = QtWidgets.QLabel(f"{finding.subject}: {said(finding.message)}")
            words.setWordWrap(True)
            words.setObjectName(f"advice {number}")
            self._stack.addWidget(words)
            whom = "; ".join(
                _tr("{} {} deep").format(label, units.shown(depth))
                for label, depth in proposal.depths)
            button = QtWidgets.QPushButton(_tr("Make {}").format(whom))
            button.setObjectName(f"less deep {number}")
            button.setAutoDefault(False)
            button.clicked.connect(lambda _=False, p=proposal: self._carry_out(p))
            self._stack.addWidget(button)

    def _carry_out(self, proposal: Proposal) -> None:
        carcasses = {c.Label: c for c in bridge.carcasses_in(self._layout.Closet)}
        changes: list[tuple[Any, CarcassSpec]] = []
        try:
            for label, depth in proposal.depths:
                spec = bridge.spec_of(carcasses[label])
                changes.append((carcasses[label], replace(spec, depth=depth)))
                verify_spec(*changes[-1])
        except ClosetError as error:
            self.trouble.say(units.explained(str(error)))
            return
        self.trouble.say("")
        for carcass, spec in changes:
            write_spec(carcass, spec)
        self._done()
