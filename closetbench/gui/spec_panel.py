"""A task panel whose fields stand for the fields of a frozen specification.

A change is tried on the core first; only what can be built is written to the object, and
only the properties that differ. What cannot be built stays in its field with the reason
beside it, and is tried again with the next change. What handles in the 3D view are dragged
to goes the same way, but a value that is refused gives way to the last good one.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from closetbench.core.drags import Drag
from closetbench.core.errors import ClosetError
from closetbench.gui import remembered, units
from closetbench.gui.fields import Field
from closetbench.gui.handles import Handles
from closetbench.gui.qt import QtWidgets, translate
from closetbench.gui.task import TaskPanel, tell

CONTEXT = "Closetbench"
_DEFAULTS = QtWidgets.QDialogButtonBox.RestoreDefaults


def get_path(spec: Any, path: str) -> Any:
    """The value at a path such as ``width``, ``back.inset`` or ``bays.0.fixed``."""
    for step in path.split("."):
        if isinstance(spec, Mapping):
            spec = spec.get(step)
        else:
            spec = spec[int(step)] if step.isdecimal() else getattr(spec, step)
    return spec


def put_paths(spec: Any, changes: Mapping[str, Any]) -> Any:
    """The specification with other values at some paths, all put in their place at once.

    One after the other would not do: what is valid in the end may not be in between.
    """
    own: dict[str, Any] = {}
    below: dict[str, dict[str, Any]] = {}
    for path, value in changes.items():
        step, _, rest = path.partition(".")
        if rest:
            below.setdefault(step, {})[rest] = value
        else:
            own[step] = value
    for step, inner in below.items():
        own[step] = put_paths(own.get(step, get_path(spec, step)), inner)
    if isinstance(spec, Mapping):
        return {**spec, **own}
    if isinstance(spec, tuple):
        return tuple(own.get(str(i), value) for i, value in enumerate(spec))
    return replace(spec, **own)


def formulas(obj: Any) -> dict[str, str]:
    """The formulas that a user has put on properties, by the specification's field."""
    found: dict[str, str] = {}
    bays = [(f"bays.{i}.", bay) for i, bay in enumerate(getattr(obj, "BayList", ()))]
    for prefix, one in (("", obj), *bays):
        by_property = {path.lstrip("."): text for path, text in one.ExpressionEngine}
        for prop in one.Proxy.properties:
            if prop.field and prop.name in by_property:
                found[prefix + prop.field] = by_property[prop.name]
    return found


class SpecPanel(TaskPanel):
    """Binds fields by name: a field's name is the path in the specification."""

    def __init__(self, *args: Any, **kwargs: Any) -> None:
        super().__init__(*args, **kwargs)
        self._pending: dict[str, Any] = {}
        self._refused: list[Field] = []
        self.handles = Handles(self)

    def _close(self, end: Callable[[], None] | None) -> None:
        self.handles.close()
        super()._close(end)

    def accept(self) -> bool:
        self._forget_refusals()
        if not super().accept():
            return False
        remembered.keep(self.spec())
        return True

    # -- the way back to what nothing is remembered of

    def standard_buttons(self) -> Any:
        usual = super().standard_buttons()
        kept = self.obj is not None and remembered.is_kept(self.spec())
        return usual | _DEFAULTS if kept else usual

    def modifyStandardButtons(self, buttons: QtWidgets.QDialogButtonBox) -> None:  # noqa: N802
        """Say in few words what the button of the defaults does."""
        super().modifyStandardButtons(buttons)
        button = buttons.button(_DEFAULTS)
        if button is not None:
            button.setObjectName("defaults")
            button.setText(translate(CONTEXT, "Defaults"))
            button.setToolTip(translate(
                CONTEXT, "Materials, kinds and figures as they come with the workbench, in the "
                "place of those that were last accepted"))
            button.clicked.connect(self.restore_defaults)

    def restore_defaults(self, _: bool = False) -> None:
        """Put what a user chooses once back to what it comes as; formulas stay."""
        before = self.spec()
        locked = {self.path(f): get_path(before, self.path(f)) for f in self.fields if f.locked}
        try:
            spec = put_paths(replace(before, **remembered.defaults(type(before))), locked)
            self.verify(spec)
        except ClosetError as error:
            tell(self.title, units.explained(self.reason(error)))
            return
        self._pending.clear()
        self._refused = []
        self.write(spec)
        for field in self.fields:
            self.set_error(field, "")
        self.show_spec(self.fields)
        self.preview_now()

    # -- what subclasses give

    def spec(self) -> Any:
        """The specification as the object has it now."""
        raise NotImplementedError

    def verify(self, spec: Any) -> None:
        """Raise ``ClosetError`` where the specification cannot be built."""
        raise NotImplementedError

    def write(self, spec: Any) -> None:
        """Write a specification that can be built to the object."""
        raise NotImplementedError

    def path(self, field: Field) -> str:
        """The path in the specification that a field stands for."""
        return field.name

    def handle_frame(self) -> Any:
        """The object in whose frame the handles stand."""
        return self.obj

    def handle_title(self, drag: Drag) -> str:
        """What a handle is called in the 3D view."""
        return ""

    # -- the mechanism

    def bind(self, *fields: Field) -> None:
        """Show the specification's values in the fields and follow their changes."""
        spec, driven = self.spec(), formulas(self.obj)
        for field in fields:
            path = self.path(field)
            field.put(get_path(spec, path))
            field.edited.connect(self.take)
            formula = next(
                (text for name, text in driven.items() if f".{path}".endswith(f".{name}")), "")
            if formula:
                field.lock(translate(CONTEXT, "Follows the formula {}").format(formula))

    def take(self, field: Field) -> None:
        """A field was edited: try the specification with it."""
        try:
            self._pending[field.name] = field.value()
        except ClosetError as error:
            self._pending.pop(field.name, None)
            self.set_error(field, error.limit)
            return
        self.set_error(field, "")
        self.try_pending(field)

    def try_pending(self, last: Field | None) -> None:
        """Try all changes that are not yet on the object, ``last`` the newest."""
        self._forget_refusals()
        waiting = [f for f in self.fields if f.name in self._pending]
        changes = {self.path(f): self._pending[f.name] for f in waiting}
        try:
            spec = put_paths(self.spec(), changes)
            self.verify(spec)
        except ClosetError as error:
            culprit = next(
                (f for f in waiting if getattr(f, "prop", None) == error.prop), last
            )
            for field in waiting:
                said = units.explained(self.reason(error)) if field is culprit else ""
                self.set_error(field, said)
            return
        self.write(spec)
        self._pending.clear()
        for field in waiting:
            self.set_error(field, "")
        self.show_spec(waiting)
        self.preview_soon()

    def drag(self, values: Mapping[str, float]) -> bool:
        """Put lengths into fields, by their names, as if they were typed, and show at once
        what comes of it; False where that cannot be built, which is said beside the field."""
        spec = self.spec()
        fields = [f for f in self.fields if f.name in values]
        for field in fields:
            field.put(values[field.name])
            self._pending[field.name] = values[field.name]
        self.try_pending(fields[0])
        if not self._pending:
            self._preview.stop()
            self.preview()
            return True
        for field in fields:
            del self._pending[field.name]
            field.put(get_path(spec, self.path(field)))
        self._refused = fields
        return False

    @property
    def locked(self) -> set[str]:
        """The names of the fields that follow a formula."""
        return {f.name for f in self.fields if f.locked}

    def point_to(self, name: str) -> None:
        """Show the field of that name, and put the cursor into it."""
        widget = next(f.widget for f in self.fields if f.name == name)
        self.reveal(widget)
        widget.setFocus()
        above = widget.parentWidget()
        while above is not None and not isinstance(above, QtWidgets.QScrollArea):
            above = above.parentWidget()
        if above is not None:
            above.ensureWidgetVisible(widget)

    def _forget_refusals(self) -> None:
        """Take back what was said of values that have given way to good ones."""
        for field in self._refused:
            if field.name not in self._pending:
                self.set_error(field, "")
        self._refused = []

    def show_spec(self, fields: list[Field]) -> None:
        """Show in the fields what the object has now."""
        spec = self.spec()
        for field in fields:
            field.put(get_path(spec, self.path(field)))

    def reason(self, error: ClosetError) -> str:
        """What to say beside the field: the limit, and of what, where that is not plain."""
        if error.subject in self.own_subjects():
            return error.limit
        return f"{error.subject}: {error.prop} {error.limit}"

    def own_subjects(self) -> tuple[str, ...]:
        """Subjects of errors that are about the object itself."""
        return (self.obj.Label,)
