"""What every scripted object of ours has in common.

Only properties persist. The proxy's class is kept by FreeCAD as a module path and, so
that a file saved where this package was absent can be picked up again, as a tag in a
property of its own, beside a schema number. Class paths never change.
"""

from __future__ import annotations

import importlib
from collections.abc import Iterator
from typing import Any

import FreeCAD

from closetbench.core.errors import ClosetError
from closetbench.model import watch
from closetbench.model.properties import INTEGER, STRING, Prop, add_missing, put

TAG = watch.TAG
SCHEMA = "ClosetbenchSchema"

_MARKS = (
    Prop(TAG, STRING, "Base", "Class of this object in the workbench", result=True, hidden=True),
    Prop(SCHEMA, INTEGER, "Base", "Version of this object's properties", result=True, hidden=True),
)


class Scripted:
    """Base of all proxies: sets up, serialises nothing, brings old objects up to date."""

    schema = 1
    properties: tuple[Prop, ...] = ()
    type_id = "App::FeaturePython"

    def __init__(self, obj: Any) -> None:
        watch.install()
        watch.remember(obj.Document)
        obj.Proxy = self
        self.set_up(obj)

    def set_up(self, obj: Any) -> None:
        """Add what is missing, of this version or an older one."""
        add_missing(obj, (*_MARKS, *self.properties))
        put(obj, TAG, f"{type(self).__module__}.{type(self).__name__}")
        put(obj, SCHEMA, self.schema)

    def execute(self, obj: Any) -> None:
        """Work the object out. A bad value leaves all as it was and marks the object; the
        message has no trace of calls before it, since FreeCAD prints that to the user."""
        try:
            self.work_out(obj)
        except ClosetError as error:
            raise named(error, obj).with_traceback(None) from None

    def work_out(self, obj: Any) -> None:
        """What follows from the properties; ``ClosetError`` where nothing does."""

    def onDocumentRestored(self, obj: Any) -> None:  # noqa: N802 - FreeCAD's name
        watch.install()
        watch.remember(obj.Document)
        self.set_up(obj)
        attach_view(obj)

    # 0.20 asks for the first pair, later versions for the second
    def __getstate__(self) -> None:
        return None

    def __setstate__(self, state: object) -> None:
        return None

    def dumps(self) -> None:
        return None

    def loads(self, state: object) -> None:
        return None


def create(doc: Any, proxy: type[Scripted], name: str, label: str = "") -> Any:
    """A new object of a class, with its properties and, where there is a screen, its view."""
    obj = doc.addObject(proxy.type_id, name)
    proxy(obj)
    if label:
        obj.Label = label
    attach_view(obj)
    return obj


def class_of(obj: Any) -> str:
    """Our class's short name, "" for a foreign object. Works on lost proxies too."""
    return str(getattr(obj, TAG, "")).rpartition(".")[2]


def ours(doc: Any, *names: str) -> Iterator[Any]:
    """The document's objects of the classes of those short names."""
    return (obj for obj in doc.Objects if class_of(obj) in names)


def is_invalid(obj: Any) -> bool:
    """Whether the object's last recompute failed."""
    return "Invalid" in obj.State


def named(error: ClosetError, obj: Any) -> ClosetError:
    """The error, with the object's label where it does not say whose value is bad."""
    if obj.Label.lower() in error.subject.lower():
        return error
    return type(error)(f"{obj.Label}, {error.subject}", error.prop, error.value, error.limit)


def attach_view(obj: Any) -> None:
    """Give the object its view provider, where there is a screen and it has none."""
    if FreeCAD.GuiUp:
        view_providers = importlib.import_module("closetbench.gui.view_providers")
        view_providers.attach(obj)


def rebind(obj: Any) -> bool:
    """Give a proxy back to an object that lost it; whether that was needed and possible."""
    path = str(getattr(obj, TAG, ""))
    module, _, name = path.rpartition(".")
    if getattr(obj, "Proxy", None) is not None or not module.startswith("closetbench.model."):
        return False
    try:
        proxy = getattr(importlib.import_module(module), name)
    except (ImportError, AttributeError):
        FreeCAD.Console.PrintWarning(
            f"{obj.Label}: made by another version of the workbench ({path} is unknown); it "
            "stays as it is\n"
        )
        return False
    proxy(obj)
    attach_view(obj)
    obj.touch()
    return True
