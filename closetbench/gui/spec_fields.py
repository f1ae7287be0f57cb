"""Fields for any specification of the core, from the types of its own fields.

What is said about a field is the specification's docstring, so that a rule is told once.
"""

from __future__ import annotations

import re
import types
import typing
from collections.abc import Iterator
from dataclasses import MISSING, fields, is_dataclass
from enum import Enum
from typing import Any

from closetbench.core.joinery import JoineryRules
from closetbench.core.materials import Catalogue
from closetbench.gui import choices
from closetbench.gui.cards_form import Line
from closetbench.gui.commands.base import mark
from closetbench.gui.fields import (
    CheckField,
    ChoiceField,
    CountField,
    Field,
    KeysField,
    LengthField,
    LengthsField,
    NumberField,
    TextField,
    TicksField,
)
from closetbench.gui.form import Form
from closetbench.gui.qt import translate
from closetbench.model.spec_table import field_texts, label_text

CONTEXT = "Closetbench_Component"
_OWN_LABELS = (
    mark("Closetbench_Bench", "Top"), mark("Closetbench_Bench", "Face"),
    mark("Closetbench_Existing", "Top"),
)
"""What other languages call otherwise in one specification than everywhere else."""
_PLAIN = {
    "weight": (0.0, 2000.0, "kg"), "fraction": (0.0, 1.0, ""), "web": (0.0, 1.0, ""),
    "load": (0.0, 2000.0, "kg/m²"), "sag_over": (50.0, 2000.0, ""), "middle": (0.0, 1000.0, "kg"),
}
"""Fields that are numbers and no lengths, by a word in their name."""
_STARTS = {"length": 600.0, "width": 300.0, "thickness": 18.0, "from_front": 60.0}
"""What a new record of a list starts with, mm."""
_ELSEWHERE = ("name", "carcass", "spot")


def _tr(text: str) -> str:
    return translate(CONTEXT, text)


def form_of(
    spec: type[Any], title: str, icon: str, catalogue: Catalogue, path: str = "", none: str = ""
) -> Form:
    """A form for all that a specification says but its name and its place; what it holds in
    records of its own is set apart by heads. ``path``: where the specification lies in the
    panel's; ``none``: how None reads."""
    form = Form(title, icon)
    _Maker(form, catalogue, none or _tr("by rule")).add(spec, path)
    return form


class _Maker:
    def __init__(self, form: Form, catalogue: Catalogue, none: str) -> None:
        self.form, self.catalogue, self.none = form, catalogue, none

    def add(self, spec: type[Any], path: str) -> None:
        """A row for each field of a specification."""
        texts = field_texts(spec)
        for name, hint in _hints(spec):
            kind, optional = _bare(hint)
            if name in _ELSEWHERE or kind is JoineryRules:
                continue
            label = label_of(name, spec)
            tip = _hint(_tr(texts[name])) if name in texts else ""
            if isinstance(kind, type) and is_dataclass(kind):
                if not optional:
                    self.form.heads(label)
                    self.add(kind, f"{path}{name}.")
                continue
            field = self.field(f"{path}{name}", name, kind, optional)
            if isinstance(field, CheckField):
                field.box.setText(label)
                self.form.check(field, tip)
            elif field is not None:
                self.form.row(label, field, tip=tip)

    def field(self, path: str, name: str, kind: Any, optional: bool) -> Field | None:
        """The field for a type; None for lists of records, which have cards of their own."""
        none = self.none
        if kind is str:
            return self.of_text(path, name, optional)
        if isinstance(kind, type) and issubclass(kind, Enum):
            first = [(None, none)] if optional else []
            return ChoiceField(path, first + choices.of_enum(kind))
        if kind is bool:
            if not optional:
                return CheckField(path)
            return ChoiceField(path, [(None, none), (True, _tr("yes")), (False, _tr("no"))])
        if kind is int:
            return RuledCountField(path, none) if optional else CountField(path, 0, 500)
        if kind is float:
            plain = next((limits for word, limits in _PLAIN.items() if word in name), None)
            if plain is not None:
                return NumberField(path, _spoken(name), *plain, blank=none if optional else "")
            return LengthField(path, _spoken(name), none if optional else "", signed=True)
        if typing.get_origin(kind) is tuple:
            inner = typing.get_args(kind)[0]
            if inner is float:
                return LengthsField(path, _spoken(name), none)
            if inner is str:
                return KeysField(path, choices.mouldings(self.catalogue, name == "rounds"))
            if isinstance(inner, type) and issubclass(inner, Enum):
                return TicksField(path, inner, _tr("none") if optional else "")
        return None

    def of_text(self, path: str, name: str, optional: bool) -> Field:
        """The field for a text, most of which are keys of the catalogue."""
        catalogue = self.catalogue
        if name == "band":
            return ChoiceField(path, choices.bands(catalogue, optional))
        tables = {"slide": catalogue.slides, "hinge": catalogue.hinges, "rod": catalogue.bars}
        if name in tables:
            listed = sorted(tables[name].values(), key=lambda item: item.title)
            return ChoiceField(path, [(item.key, choices.words(item.title)) for item in listed])
        if "material" in name or name == "top":
            first = [(None, self.none)] if optional else []
            return ChoiceField(path, choices.materials(catalogue, *first))
        return TextField(path)


def record_lists(spec: type[Any]) -> Iterator[tuple[str, type[Any]]]:
    """The fields of a specification that hold several records, and of what kind."""
    for name, hint in _hints(spec):
        if typing.get_origin(hint) is tuple and is_dataclass(inner := typing.get_args(hint)[0]):
            yield name, inner


def label_of(name: str, spec: type[Any]) -> str:
    """What a field of a specification is called in a form."""
    return translate(f"Closetbench_{spec.__name__.removesuffix('Spec')}", label_text(name))


def card_lines(kind: type[Any], path: str, catalogue: Catalogue) -> list[Line]:
    """The lines of a card for one record of a list."""
    maker = _Maker(Form("", "part"), catalogue, _tr("by rule"))
    texts, lines = field_texts(kind), []
    for name, hint in _hints(kind):
        inner, optional = _bare(hint)
        one = maker.field(f"{path}.{name}", name, inner, optional)
        if one is not None:
            if name in texts:
                one.widget.setToolTip(_tr(texts[name]))
            lines.append((label_of(name, kind), [one]))
    return lines


def new_record(kind: type[Any], number: int) -> Any:
    """A record to start from in a list."""
    values: dict[str, Any] = {}
    for item, (name, hint) in zip(fields(kind), _hints(kind), strict=True):
        if item.default is not MISSING:
            continue
        if hint is float:
            values[name] = _STARTS.get(name, 100.0)
        elif hint is str:
            values[name] = _tr("panel {}").format(number)
        else:
            values[name] = next(iter(hint))
    return kind(**values)


def _hint(text: str) -> str:
    """What a specification says of a field, in a form's words: None is a field left empty,
    and a choice says by itself what its entries are."""
    text = re.sub(r", None.*\"\".*$", "", text)
    return re.sub(r"\bNone\b", _tr("empty"), text)


def _hints(spec: type[Any]) -> Iterator[tuple[str, Any]]:
    hints = typing.get_type_hints(spec)
    for item in fields(spec):
        yield item.name, hints[item.name]


def _bare(hint: Any) -> tuple[Any, bool]:
    """A type without None, and whether None was allowed."""
    if not isinstance(hint, types.UnionType):
        return hint, False
    return next(h for h in typing.get_args(hint) if h is not types.NoneType), True


def _spoken(name: str) -> str:
    return name.replace("_", " ")


class RuledCountField(CountField):
    """A whole number, or left to the rule: -1 stands for that."""

    def __init__(self, name: str, rule: str) -> None:
        super().__init__(name, -1, 500, rule)

    def value(self) -> int | None:  # type: ignore[override]
        return None if super().value() < 0 else super().value()

    def put(self, value: int | None) -> None:
        super().put(-1 if value is None else value)
