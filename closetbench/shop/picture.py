"""The pictures of a whole closet: as it stands, from the front, and its sheets.

The drawing is in ``view`` (axonometric view, front elevation) and ``sheets``.
"""

from __future__ import annotations

from pathlib import Path

from closetbench.core.closet import Closet
from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.shop.sheets import write_sheets
from closetbench.shop.view import Line, write_axonometric, write_elevation
from closetbench.stock.plan import Plan


def write_pictures(
    folder: str | Path, closet: Closet, plan: Plan, catalogue: Catalogue,
    form: LengthFormat = MILLIMETRES, ending: str = ".png",
) -> tuple[Path, ...]:
    """Write ``view``, ``front`` and ``sheets`` into a folder that is there.

    There is no front elevation of a closet without bays. ``ending``: .png, .svg or .pdf.
    Raises ``DocumentError`` where a picture cannot be made or written.
    """
    place = Path(folder)
    title = closet.design.name
    room = room_lines(closet)
    made = [write_axonometric(place / f"view{ending}", closet.parts, title, form, room)]
    standing = [c for c in closet.components if c.bays]
    if standing:
        parts = [p for c in standing for p in c.parts]
        bays = [b for c in standing for b in c.bays]
        made.append(write_elevation(place / f"front{ending}", parts, bays, title, form))
    made.append(write_sheets(place / f"sheets{ending}", plan, closet.parts, title, form, catalogue))
    return tuple(made)


def room_lines(closet: Closet) -> tuple[Line, ...]:
    """The edges of the room in the frame that the parts lie in."""
    if closet.room is None:
        return ()
    box = closet.envelope
    return tuple(
        (
            (a[0] - box.x0, a[1] - box.y0, a[2] - box.z0),
            (b[0] - box.x0, b[1] - box.y0, b[2] - box.z0),
        )
        for a, b in closet.room.corner_lines()
    )
