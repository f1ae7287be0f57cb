"""The offcuts at hand, in the document: a list that a file can be read into and written from."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import Any

from closetbench.model.base import Scripted
from closetbench.model.plain import from_text, to_text
from closetbench.model.properties import FLOAT, INTEGER, STRING, TEXTS, Prop, put, result
from closetbench.stock.offcuts import Offcut, check_offcuts, read_offcuts, reserve, write_offcuts


class Offcuts(Scripted):
    """Proxy of a list of offcuts."""

    properties = (
        Prop("List", TEXTS, "Offcuts", "The offcuts at hand, a text of JSON each"),
        Prop("File", STRING, "Offcuts", "The file that they were read from last, none if empty"),
        result("Count", INTEGER, "How many there are"),
        result("Area", FLOAT, "Area of those that are rectangles, in m\u00b2"),
    )

    def work_out(self, obj: Any) -> None:
        """Check the list, and count it."""
        found = offcuts_of(obj)
        check_offcuts(found)
        put(obj, "Count", len(found))
        put(obj, "Area", sum(o.length * o.width for o in found) / 1e6)


def offcuts_of(obj: Any | None) -> tuple[Offcut, ...]:
    """The offcuts in a list; none without one."""
    if obj is None:
        return ()
    return tuple(
        from_text(Offcut, text, obj.Label, f"offcut {number}")
        for number, text in enumerate(obj.List, 1)
    )


def put_offcuts(obj: Any, offcuts: Sequence[Offcut]) -> None:
    """Set the list. Raises ``ClosetError``, and nothing is set, where it cannot be."""
    check_offcuts(offcuts)
    put(obj, "List", [to_text(o) for o in offcuts])


def reserve_for(obj: Any, keys: Sequence[str], job: str) -> None:
    """Keep these for a job, and set free what was kept for it before."""
    found = offcuts_of(obj)
    freed = reserve(found, [o.key for o in found if o.reserved == job], "")
    put_offcuts(obj, reserve(freed, keys, job))


def load_file(obj: Any, path: Path) -> None:
    """Read a file in the place of the list."""
    put_offcuts(obj, read_offcuts(path))
    put(obj, "File", str(path))


def save_file(obj: Any, path: Path) -> None:
    """Write the list to a file, whole or not at all."""
    write_offcuts(path, offcuts_of(obj))
    put(obj, "File", str(path))
