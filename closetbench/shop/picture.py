"""The pictures of a whole closet: as it stands, from the front, from above, and
its sheets.

The drawing is in ``view`` (axonometric view, front elevation), ``plan_view`` and ``sheets``.
"""

from __future__ import annotations

from collections.abc import Callable, Collection
from pathlib import Path

from closetbench.core.closet import Closet
from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.parts import Role
from closetbench.core.specs import CarcassSpec
from closetbench.shop.drilling import DRILLED, drilling_page
from closetbench.shop.exploded import exploded
from closetbench.shop.language import Words, mark, plain
from closetbench.shop.page import Page
from closetbench.shop.plan_view import plan_page
from closetbench.shop.sheets import sheets_page
from closetbench.shop.view import Line, axonometric_page, elevation_page
from closetbench.stock.atomic import write_bytes_atomically
from closetbench.stock.plan import Plan

KINDS = ("room", "carcass", "view", "exploded", "front", "plan", "drilling", "sheets")
"""The pictures there are, by the start of their files' names."""


def write_pictures(
    folder: str | Path, closet: Closet, plan: Plan | None, catalogue: Catalogue,
    form: LengthFormat = MILLIMETRES, ending: str = ".png", kinds: Collection[str] = KINDS,
    stem: str = "", words: Words = plain,
) -> tuple[Path, ...]:
    """Write pictures into a folder that is there.

    ``room`` before anything stands in it, where it was measured; ``carcass``, where more
    than carcasses is in the closet; ``view`` and ``exploded`` with everything; ``front``,
    where there are bays; ``plan`` from above; ``drilling`` of fronts and
    doors, where there are any; ``sheets``, where they are planned.
    ``ending``: .png, .svg or .pdf; ``stem``: goes before the names. Raises
    ``DocumentError`` where a picture cannot be made or written; all of them are drawn
    before the first is written.
    """
    place = Path(folder)
    pages = pictures(closet, plan, catalogue, form, kinds, words)
    drawn = [
        (place / f"{stem}{kind}{ending}", page.drawn(ending)) for kind, page in pages.items()
    ]
    return tuple(write_bytes_atomically(path, data, "picture") for path, data in drawn)


def pictures(
    closet: Closet, plan: Plan | None, catalogue: Catalogue, form: LengthFormat = MILLIMETRES,
    kinds: Collection[str] = KINDS, words: Words = plain,
) -> dict[str, Page]:
    """The pages of those kinds that the closet has something for, by their kinds."""
    title = closet.design.name
    room = room_lines(closet)
    carcasses = {c.name for c in closet.design.components if isinstance(c, CarcassSpec)}
    standing = [
        c for c in closet.components if any(b.role is not Role.PANEL for b in c.bodies)
    ]
    bodies = [b for c in standing for b in c.bodies]
    bays = [b for c in standing for b in c.bays]
    made: dict[str, Page] = {}

    def add(kind: str, there: object, make: Callable[[], Page]) -> None:
        if there and kind in kinds:
            made[kind] = make()

    add("room", room, lambda: axonometric_page(
        (), title, form, room, mark("the room as measured, empty"), words=words))
    add("carcass", carcasses and len(standing) > len(carcasses), lambda: axonometric_page(
        [b for c in standing if c.name in carcasses for b in c.bodies], title, form, room,
        mark("the carcasses alone"), words=words))
    add("view", closet.bodies, lambda: axonometric_page(
        closet.bodies, title, form, room, words=words))
    add("exploded", standing, lambda: axonometric_page(
        exploded(standing), title, form, (),
        mark("pulled apart, parts and fittings before the carcasses"), sized=False, words=words))
    add("front", bays, lambda: elevation_page(bodies, bays, title, form, words))
    add("plan", bodies, lambda: plan_page(bodies, bays, title, form, room, words))
    drilled = [
        p for c in closet.components for p in (*c.parts, *c.reused)
        if p.role in DRILLED and p.panel.holes
    ]
    add("drilling", drilled, lambda: drilling_page(drilled, title, form, words))
    if plan is not None:
        planned = plan
        add("sheets", True, lambda: sheets_page(
            planned, closet.parts, title, form, catalogue, words))
    return made


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
