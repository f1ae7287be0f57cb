"""The pictures of a whole closet: as it stands, from the front, and its sheets.

The drawing is in ``view`` (axonometric view, front elevation) and ``sheets``.
"""

from __future__ import annotations

from pathlib import Path

from closetbench.core.closet import Closet
from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.parts import Role
from closetbench.core.specs import CarcassSpec
from closetbench.shop.exploded import exploded
from closetbench.shop.sheets import write_sheets
from closetbench.shop.view import Line, write_axonometric, write_elevation
from closetbench.stock.plan import Plan


def write_pictures(
    folder: str | Path, closet: Closet, plan: Plan, catalogue: Catalogue,
    form: LengthFormat = MILLIMETRES, ending: str = ".png",
) -> tuple[Path, ...]:
    """Write the pictures into a folder that is there.

    ``room`` before anything stands in it, where it was measured; ``carcass``, where more
    than carcasses is in the closet; ``view`` and ``exploded`` with everything; ``front``,
    where there are bays; ``sheets``. ``ending``: .png, .svg or .pdf. Raises
    ``DocumentError`` where a picture cannot be made or written.
    """
    place = Path(folder)
    title = closet.design.name
    room = room_lines(closet)
    carcasses = {c.name for c in closet.design.components if isinstance(c, CarcassSpec)}
    standing = [
        c for c in closet.components if any(b.role is not Role.PANEL for b in c.bodies)
    ]
    made = []
    if room:
        made.append(write_axonometric(
            place / f"room{ending}", (), title, form, room, "the room as measured, empty"))
    if carcasses and len(standing) > len(carcasses):
        bare = [b for c in standing if c.name in carcasses for b in c.bodies]
        made.append(write_axonometric(
            place / f"carcass{ending}", bare, title, form, room, "the carcasses alone"))
    made.append(write_axonometric(place / f"view{ending}", closet.bodies, title, form, room))
    if standing:
        made.append(write_axonometric(
            place / f"exploded{ending}", exploded(standing), title, form, (),
            "pulled apart, parts and fittings before the carcasses", sized=False))
    if any(c.bays for c in standing):
        bodies = [b for c in standing for b in c.bodies]
        bays = [b for c in standing for b in c.bays]
        made.append(write_elevation(place / f"front{ending}", bodies, bays, title, form))
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
