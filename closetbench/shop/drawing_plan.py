"""What goes where on a page of drawings: views, cuts, sizes, scale, title block.

All places are millimetres on the paper from its lower left corner; the points that sizes
run between are millimetres in the closet's frame.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from closetbench.core.bodies import Body
from closetbench.core.closet import Closet
from closetbench.core.component import Bay
from closetbench.core.errors import DocumentError
from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Box, Point
from closetbench.core.parts import Role, Vector
from closetbench.shop.language import Words, mark, plain
from closetbench.shop.plan_view import HEIGHT
from closetbench.shop.view import bounds, clear_heights, shown_bays, wide

PAPERS = {
    "a3": ("A3", 420.0, 297.0), "a4": ("A4", 297.0, 210.0),
    "tabloid": ("11 x 17 in", 431.8, 279.4), "letter": ("8 1/2 x 11 in", 279.4, 215.9),
}
"""Title, width and height of the papers, lying; A sizes by ISO 216, the others by
ANSI/ASME Y14.1 (from memory)."""
METRIC = (5, 10, 15, 20, 25, 30, 40, 50, 75, 100)
INCH = (4, 8, 12, 16, 24, 32, 48, 64, 96)
"""What a scale may be one to; with inches those that an architect's rule has."""
MARGIN, STRIP = 10.0, 28.0
"""Border of the templates, and height of their title block."""
_LEFT, _FOOT, _HEAD, _GAP = 16.0, 32.0, 8.0, 14.0
"""Room left of a view, below the front with its sizes and caption, over it, and between two
views."""
_PLAN_FOOT = 9.0
"""From the plan down to its caption's lower edge."""
_NEAR, _FAR, _SAID = 12.0, 19.0, 27.0
"""From a view down to its first and its second line of sizes, and to its caption."""
_SIDE = 8.0
"""From a view to the sizes at its left."""
_PAST = 3.0
"""How far the mark of a section runs past the front."""
_UNITS = mark({"ft-in": "feet and inches", "in": "inches"})
LONGEST = 32
"""Letters that the title block has room for."""
MATERIALS = 6
"""Lines for materials in the title block."""


@dataclass(frozen=True)
class Size:
    """A size between two points. ``level``: along the paper's width; ``offset``: of its line
    from the middle of its view, mm on paper, upwards or to the right."""

    start: Vector
    end: Vector
    level: bool
    offset: float
    text: str


@dataclass(frozen=True)
class View:
    """One view. ``bodies``: full names of what it shows; ``toward`` the viewer, ``right``:
    directions in the closet's frame; ``middle``: of what it shows; ``at``: where that is on
    the paper; ``cut``: the x that a section is cut at, seen from the right."""

    name: str
    caption: str
    bodies: tuple[str, ...]
    toward: Vector
    right: Vector
    middle: Vector
    at: Point
    caption_at: Point
    sizes: tuple[Size, ...]
    cut: float | None = None


@dataclass(frozen=True)
class Mark:
    """Where a section is cut, as marked on the front: ends of the line in the closet's frame,
    its letter, and where on the paper that stands."""

    letter: str
    low: Vector
    high: Vector
    letters_at: tuple[Point, Point]


@dataclass(frozen=True)
class Sheet:
    """A page. ``scale``: drawn to one to so much; ``texts``: fields of the title block."""

    paper: str
    scale: int
    views: tuple[View, ...]
    marks: tuple[Mark, ...]
    texts: dict[str, str]


def drawing_sheet(
    closet: Closet, catalogue: Catalogue, form: LengthFormat = MILLIMETRES, paper: str = "a3",
    date: str = "", plan: bool = True, sections: int = 2, words: Words = plain,
) -> Sheet:
    """The page of a closet: its front, its plan and up to so many sections.

    Raises ``DocumentError`` where there is nothing to draw, or the paper is too small.
    """
    standing = [
        c for c in closet.components if any(b.role is not Role.PANEL for b in c.bodies)]
    bodies = [b for c in standing for b in c.bodies]
    box = bounds(bodies, "drawing page")
    bays = [b for c in standing for b in c.bays]
    cuts = _cuts(shown_bays(bays))[:sections]
    scale = _scale(box, paper, form, plan, len(cuts))
    views = _views(bodies, bays, box, form, paper, scale, plan, cuts, words)
    front = next(v for v in views if v.name == "front")
    marks = [_mark(v, front, box, scale) for v in views if v.cut is not None]
    return Sheet(
        paper, scale, tuple(views), tuple(marks),
        _texts(closet, catalogue, form, paper, date, scale, words))


def _mark(view: View, front: View, box: Box, one_to: int) -> Mark:
    assert view.cut is not None
    x = front.at[0] + (view.cut - front.middle[0]) / one_to
    half = (box.z1 - box.z0) / 2 / one_to
    return Mark(
        view.name.rpartition(" ")[2],
        (view.cut, box.y0, box.z0 - _PAST * one_to), (view.cut, box.y0, box.z1 + _PAST * one_to),
        ((x, front.at[1] + half + _PAST + 2.5), (x, front.at[1] - half - _PAST - 2.5)))


def _cuts(bays: Sequence[Bay]) -> list[float]:
    """Where sections go: through the widest bays, a little beside their middles."""
    chosen = sorted(bays, key=lambda b: -wide(b))
    return [b.space.x0 + 0.4 * wide(b) for b in chosen]


def _drawn(box: Box, one_to: int) -> tuple[float, float, float]:
    return (box.x1 - box.x0) / one_to, (box.y1 - box.y0) / one_to, (box.z1 - box.z0) / one_to


def _need(box: Box, one_to: int, plan: bool, sections: int) -> tuple[float, float]:
    """Paper that the views take, wide and high."""
    width, depth, height = _drawn(box, one_to)
    across = _LEFT + width + sections * (_GAP + _LEFT / 2 + depth)
    up = _HEAD + height + _FOOT + (depth + _PLAN_FOOT if plan else 0.0)
    return across, up


def _room(paper: str) -> tuple[float, float]:
    _, width, height = PAPERS[paper]
    return width - 2 * MARGIN - 6.0, height - 2 * MARGIN - STRIP - 6.0


def _scale(box: Box, paper: str, form: LengthFormat, plan: bool, sections: int) -> int:
    room = _room(paper)
    for one_to in INCH if form.unit == "in" else METRIC:
        need = _need(box, one_to, plan, sections)
        if need[0] <= room[0] and need[1] <= room[1]:
            return one_to
    raise DocumentError(
        "drawing page", "paper", PAPERS[paper][0], "is too small for the closet; take a larger one")


def _views(
    bodies: Sequence[Body], bays: Sequence[Bay], box: Box, form: LengthFormat, paper: str,
    one_to: int, plan: bool, cuts: Sequence[float], words: Words,
) -> list[View]:
    width, depth, height = _drawn(box, one_to)
    room, need = _room(paper), _need(box, one_to, plan, len(cuts))
    left = MARGIN + 3.0 + max(0.0, room[0] - need[0]) / 2 + _LEFT
    # from the lower edge: title block, plan, front
    foot = MARGIN + STRIP + 3.0 + max(0.0, room[1] - need[1]) / 2
    plan_foot = foot + _PLAN_FOOT
    front_foot = (plan_foot + depth if plan else foot) + _FOOT
    middle = ((box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2, (box.z0 + box.z1) / 2)
    shown = shown_bays(bays)
    everything = tuple(b.full_name for b in bodies)
    x, z = left + width / 2, front_foot + height / 2
    found = [View(
        "front", words("front elevation"), everything, (0.0, -1.0, 0.0), (1.0, 0.0, 0.0), middle,
        (x, z), (x, front_foot - _SAID), _front_sizes(shown, bodies, box, form, one_to))]
    if plan:
        low = [b for b in bodies if b.box().z0 < box.z0 + HEIGHT]
        own = bounds(low, "plan")
        centre = ((own.x0 + own.x1) / 2, (own.y0 + own.y1) / 2, (own.z0 + own.z1) / 2)
        at = (
            left + (centre[0] - box.x0) / one_to, plan_foot + (centre[1] - box.y0) / one_to)
        found.append(View(
            "plan", words("plan, without what lies over {0}", form.text(HEIGHT)),
            tuple(b.full_name for b in low), (0.0, 0.0, 1.0), (1.0, 0.0, 0.0), centre, at,
            (x, plan_foot - _PLAN_FOOT + 2.5),
            (_size((own.x0, own.y0, 0.0), (own.x0, own.y1, 0.0), False,
                   -(own.x1 - own.x0) / 2 / one_to - _SIDE, form),)))
    for i, cut in enumerate(cuts):
        letter = "ABCDEFGH"[i]
        at_x = left + width + i * (depth + _GAP + _LEFT / 2) + _GAP + _LEFT / 2 + depth / 2
        behind = [b for b in bodies if b.box().x0 < cut]
        own = bounds(behind, "section")
        centre = ((own.x0 + own.x1) / 2, (own.y0 + own.y1) / 2, (own.z0 + own.z1) / 2)
        found.append(View(
            f"section {letter}", words("section {0}–{0}", letter), everything, (1.0, 0.0, 0.0),
            (0.0, 1.0, 0.0), centre,
            (at_x + (centre[1] - middle[1]) / one_to, z + (centre[2] - middle[2]) / one_to),
            (at_x, front_foot - _SAID),
            (_size((cut, own.y0, own.z0), (cut, own.y1, own.z0), True,
                   -(own.z1 - own.z0) / 2 / one_to - _NEAR, form),), cut))
    return found


def _front_sizes(
    bays: Sequence[Bay], bodies: Sequence[Body], box: Box, form: LengthFormat, one_to: int
) -> tuple[Size, ...]:
    foot = -(box.z1 - box.z0) / 2 / one_to
    side = -(box.x1 - box.x0) / 2 / one_to
    found = [
        _size((box.x0, box.y0, box.z0), (box.x1, box.y0, box.z0), True, foot - _FAR, form),
        _size((box.x0, box.y0, box.z0), (box.x0, box.y0, box.z1), False, side - _SIDE, form),
    ]
    for bay in bays:
        x0, x1 = bay.space.x0, bay.space.x1
        found.append(_size(
            (x0, box.y0, box.z0), (x1, box.y0, box.z0), True, foot - _NEAR, form))
        x = x0 + 0.62 * (x1 - x0)
        at = (x - (box.x0 + box.x1) / 2) / one_to
        found += [
            _size((x, box.y0, under), (x, box.y0, over), False, at, form)
            for under, over in clear_heights(bay, bodies)
        ]
    return tuple(found)


def _size(start: Vector, end: Vector, level: bool, offset: float, form: LengthFormat) -> Size:
    length = sum(abs(b - a) for a, b in zip(start, end, strict=True))
    return Size(start, end, level, offset, form.text(length, unit=False))


def _texts(
    closet: Closet, catalogue: Catalogue, form: LengthFormat, paper: str, date: str, scale: int,
    words: Words,
) -> dict[str, str]:
    counts: dict[str, int] = {}
    for part in (*closet.parts, *closet.reused):
        counts[part.panel.material] = counts.get(part.panel.material, 0) + 1
    lines = []
    for key, count in counts.items():
        board = catalogue.materials.get(key)
        said = words(board.title) if board is not None else key
        if board is not None and board.measured is not None:
            said += ", " + words("measured {0}", _thick(board.measured, form))
        lines.append(words("{0}: {1} parts", said, count) if count > 1 else words(
            "{0}: 1 part", said))
    if len(lines) > MATERIALS:
        rest = sum(list(counts.values())[MATERIALS - 1:])
        lines = [*lines[:MATERIALS - 1], words("others: {0} parts, see the bill", rest)]
    lines += [""] * (MATERIALS - len(lines))
    unit = "ft-in" if form.style == "ft-in" else form.unit
    unit = words(_UNITS[unit]) if unit in _UNITS else unit
    return {
        "title": _shortened(closet.design.name),
        "what": words("front elevation, plan and sections; sizes between boards are clear"),
        "caution_1": words("Measure on site before anything is cut; exact sizes are in the bill."),
        "caution_2": words(
            "Anchor to the structure; local codes and a licensed professional come first."),
        "status": "",
        "materials_head": words("Materials"),
        **{f"material_{i}": line for i, line in enumerate(lines, 1)},
        "head_1": words("scale"), "value_1": f"1 : {scale}",
        "head_2": words("sizes in"), "value_2": words("{0}, rounded to {1}", unit, _step(form)),
        "head_3": words("paper"), "value_3": PAPERS[paper][0],
        "head_4": words("date"), "value_4": date,
        "head_5": words("drawn by"), "value_5": "",
    }


def _shortened(name: str) -> str:
    """A name that fits into the title block of every paper."""
    return name if len(name) <= LONGEST else f"{name[:LONGEST - 1].rstrip()}…"


def _thick(mm: float, form: LengthFormat) -> str:
    return f"{mm:g} mm" if form.unit != "in" else f"{mm / 25.4:.3f} in"


def _step(form: LengthFormat) -> str:
    step = Fraction(form.resolution)
    return f"{step} {'in' if form.unit == 'in' else 'mm'}"
