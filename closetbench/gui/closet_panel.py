"""The task panel of a closet as a whole: its name, its boards as measured, its papers."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

from closetbench.core.circumstances import Circumstances
from closetbench.core.errors import ClosetError
from closetbench.core.lengths import LengthFormat
from closetbench.gui import choices, units
from closetbench.gui.fields import ChoiceField, LengthField, TextField
from closetbench.gui.files import PathField
from closetbench.gui.form import FindingsList, Fold, Form
from closetbench.gui.qt import translate
from closetbench.gui.spec_fields import form_of
from closetbench.gui.spec_panel import SpecPanel
from closetbench.model import bridge
from closetbench.model.plain import to_text
from closetbench.resources import load_catalogue

CONTEXT = "Closetbench_Closet"

_PRINTS = (
    (("mm", "1"), "millimetres, to 1 mm"),
    (("mm", "1/10"), "millimetres, to 0.1 mm"),
    (("cm", "1/10"), "centimetres, to 1 mm"),
    (("m", "1/1000"), "metres, to 1 mm"),
    (("in-frac", "1/16"), "inches, to 1/16"),
    (("in-frac", "1/32"), "inches, to 1/32"),
    (("in", "1/1000"), "decimal inches, to 0.001"),
    (("ft-in", "1/16"), "feet and inches, to 1/16"),
)


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


@dataclass(frozen=True)
class Settings:
    """What the panel edits. ``measured``: mm by key of the board, None where not taken."""

    name: str
    catalogue: str
    prints: tuple[str, str]
    measured: Mapping[str, float | None]
    circumstances: Circumstances


class ClosetPanel(SpecPanel):
    """Settings that hold for the whole closet, and what it comes to."""

    page = "Closet"

    def spec(self) -> Settings:
        obj = self.obj
        measured = {key: _number(text) for key, text in obj.Measured.items()}
        prints = (obj.LengthStyle, _plain(obj.LengthStep))
        return Settings(
            obj.Label, obj.Catalogue, prints, measured, bridge.circumstances_of(obj))

    def verify(self, spec: Settings) -> None:
        if not spec.name:
            raise ClosetError(self.obj.Label, "name", "empty", _tr("must not be empty"))
        LengthFormat(spec.prints[0], Fraction(spec.prints[1]))  # type: ignore[arg-type]
        catalogue = load_catalogue(Path(spec.catalogue) if spec.catalogue else None)
        for key, value in spec.measured.items():
            if value is not None:
                catalogue.material(key, subject=self.obj.Label).with_measured(value)

    def write(self, spec: Settings) -> None:
        obj = self.obj
        before = self.spec()
        if spec.name != before.name:
            obj.Label = spec.name
        if spec.catalogue != before.catalogue:
            obj.Catalogue = spec.catalogue
        if spec.prints != before.prints:
            obj.LengthStyle, obj.LengthStep = spec.prints
        if spec.circumstances != before.circumstances:
            obj.Circumstances = to_text(spec.circumstances)
        if spec.measured != before.measured:
            obj.Measured = {k: repr(v) for k, v in spec.measured.items() if v is not None}

    def reason(self, error: ClosetError) -> str:
        return error.limit

    def build(self) -> None:
        head = Form(_tr("Closet"), "closet")
        head.row(_tr("Name"), TextField("name"))
        head.row(_tr("Papers print"), ChoiceField(
            "prints", [(value, _tr(text)) for value, text in _PRINTS]))
        head.row(_tr("Own catalogue"), PathField(
            "catalogue", _tr("none"), _tr("Catalogue of your own"), "TOML (*.toml)"), tip=_tr(
            "A file with boards, bands and prices of your own, laid over those that come along."))
        self.form = [head]
        boards = self._boards()
        if boards.fields:
            self.form.append(boards)
        self.form += [self._place(), self._results()]
        self.bind(*self.fields)

    def _boards(self) -> Form:
        form = Form(_tr("Boards as measured"), "part")
        note = form.note()
        note.setText(_tr(
            "Thickness by caliper, in the middle of three edges. Grooves follow it."))
        try:
            used = {p.panel.material for p in bridge.closet_of(self.obj).parts}
            catalogue = bridge.catalogue_of(self.obj)
        except ClosetError:
            return form
        for key in sorted(used):
            board = catalogue.material(key)
            field = LengthField(f"measured.{key}", "measured", _tr("not measured"))
            form.row(choices.words(board.title), field, tip=_tr("Sold as {}").format(
                units.shown(board.nominal)))
        return form

    def _place(self) -> Form:
        form = Form(_tr("The place and the people"), "survey")
        note = form.note()
        note.setText(_tr("What is not known is not checked, and the findings say so."))
        inner = form_of(
            Circumstances, "", "survey", bridge.catalogue_of(self.obj), "circumstances.",
            _tr("not known"),
        )
        form.whole(Fold(_tr("Loads, wall, damp, children, light"), inner), inner)
        return form

    def _results(self) -> Form:
        form = Form(_tr("What it comes to"), "part")
        self.summary = form.note("summary")
        self.findings = FindingsList()
        form.whole(self.findings)
        return form

    def refresh(self) -> None:
        try:
            closet = bridge.closet_of(self.obj)
        except ClosetError as error:
            self.summary.setText(units.explained(str(error)))
            self.findings.show_findings(())
            return
        self.summary.setText(_tr("{} components, {} parts, {:.1f} kg").format(
            len(closet.components), len(closet.parts), self.obj.Weight))
        self.findings.show_findings(closet.findings)


def _number(text: str) -> float | None:
    try:
        return float(text)
    except ValueError:
        return None


def _plain(step: str) -> str:
    try:
        return str(Fraction(step))
    except (ValueError, ZeroDivisionError):
        return step


