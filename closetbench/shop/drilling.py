"""The drilling drawing: every front and door as seen from its face, with its holes."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from itertools import groupby

from closetbench.core.hinges import CUPS
from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.core.panel import Face, HoleRow, Panel, Point, Rim, Taper
from closetbench.core.parts import FACING, Part, Role
from closetbench.shop.language import Words, mark, plain
from closetbench.shop.page import FAINT, INK, Page, fitting_size, text_width
from closetbench.shop.view import heading
from closetbench.shop.words import fit_text

DRILLED = (Role.FRONT, Role.DOOR)
"""What the drawing is about."""
_CELL, _ROOM = 3.3, 3.0
"""Inches from one front to the next, and for the drawing of one."""
_LINE = 0.155
_WORDS = 7.5
_ACROSS = 3
_LEAST = 8.2
"""Inches that the heading needs."""


def drilling_page(
    parts: Sequence[Part], title: str, form: LengthFormat = MILLIMETRES, words: Words = plain
) -> Page:
    """Fronts and doors that are equal once, each with its sizes and, in words, every hole from
    its left and its lower edge; borings from behind are broken lines.

    All are to one scale. ``parts``: fronts and doors, one or more.
    """
    groups: dict[tuple[object, ...], list[Part]] = {}
    for part in parts:
        groups.setdefault((part.component, part.place.along, part.panel), []).append(part)
    cells = [(group, _words(group, form, words)) for group in groups.values()]
    scale = min(
        min(2.4 / s[0], _ROOM / s[1]) for g, _ in cells for s in (_size(g[0]),)
    )
    rows = [cells[i:i + _ACROSS] for i in range(0, len(cells), _ACROSS)]
    tall = [
        max(_size(g[0])[1] * scale for g, _ in row) + max(len(w) for _, w in row) * _LINE + 0.75
        for row in rows
    ]
    page = Page(
        max(1.0 + _CELL * min(_ACROSS, len(cells)), _LEAST), 1.4 + sum(tall), "drilling drawing",
        words=words)
    heading(page, title, words(
        "fronts and doors as one faces them; distances are from the left and the lower edge of "
        "the rectangle around each"))
    top = page.height - 1.25
    for row, height in zip(rows, tall, strict=True):
        deep = max(_size(g[0])[1] * scale for g, _ in row)
        for i, (group, told) in enumerate(row):
            _cell(page, group[0], told, (0.55 + i * _CELL, top - deep), scale, form)
        top -= height
    return page


def _size(part: Part) -> Point:
    """Width and height as one faces it."""
    panel = part.panel
    return (panel.length, panel.width) if _lies(part) else (panel.width, panel.length)


def _lies(part: Part) -> bool:
    return part.place.along == FACING[0]


def _seen(part: Part, point: Point) -> Point:
    """A point of the panel's frame from its lower left corner as one faces it."""
    return point if _lies(part) else (part.panel.width - point[1], point[0])


def _cell(
    page: Page, part: Part, words: Sequence[str], at: Point, scale: float, form: LengthFormat
) -> None:
    def put(point: Point) -> Point:
        x, y = _seen(part, point)
        return at[0] + x * scale, at[1] + y * scale

    fine = _fine(form)
    wide, high = (v * scale for v in _size(part))
    page.shape([put(p) for p in part.panel.outline()], "#efe9dd", INK, 0.8)
    for row in part.panel.holes:
        for centre in row.centres():
            _hole(page, put(centre), max(row.diameter / 2 * scale, 0.02), _behind(row, part.panel))
    page.dimension((at[0], at[1] + high + 0.16), (at[0] + wide, at[1] + high + 0.16),
                   fine.text(_size(part)[0]))
    side = at[0] + wide + 0.2
    page.dimension((side, at[1]), (side, at[1] + high), fine.text(_size(part)[1]))
    y = at[1] - 0.18
    size = fitting_size(words, _CELL - 0.3, 99.0, _WORDS)
    for i, line in enumerate(words):
        page.text((at[0] - 0.1, y - i * _LINE), line, size, FAINT if i else INK, "left",
                  bold=i == 0 and text_width(line, size, True) < _CELL - 0.2)


def _hole(page: Page, centre: Point, radius: float, behind: bool) -> None:
    ring = [
        (centre[0] + radius * math.cos(a), centre[1] + radius * math.sin(a))
        for a in (i * math.pi / 16 for i in range(33))
    ]
    page.line(ring, INK, 0.7, (2.0, 1.5) if behind else None)
    reach = radius + 0.05
    for a, b in (((-reach, 0.0), (reach, 0.0)), ((0.0, -reach), (0.0, reach))):
        page.line([(centre[0] + a[0], centre[1] + a[1]), (centre[0] + b[0], centre[1] + b[1])],
                  INK, 0.3)


def _behind(row: HoleRow, panel: Panel) -> bool:
    return row.face is Face.LOWER and row.depth < panel.thickness - 1e-6


def _words(group: Sequence[Part], form: LengthFormat, words: Words) -> list[str]:
    """Names, and a line or two for each kind of hole."""
    part = group[0]
    names = [p.name for p in group]
    count = f"{len(group)} x " if len(group) > 1 else ""
    listed = ", ".join(names[:2]) + (" …" if len(names) > 2 else "")
    told = [f"{count}{part.component}: {listed}"]

    def kind(row: HoleRow) -> tuple[str, float, float, str]:
        return row.name, row.diameter, row.depth, row.face.value

    for _, rows in groupby(sorted(part.panel.holes, key=kind), key=kind):
        mine = list(rows)
        row = mine[0]
        through = row.depth >= part.panel.thickness - 1e-6
        depth = words("right through") if through else words(
            "{0} deep", fit_text(row.depth, form))
        if _behind(row, part.panel):
            depth = words("{0} from behind", depth)
        told.append(words(
            "{0}: {1}", words(row.name), f"{fit_text(row.diameter, form)}, {depth}"))
        at = sorted(_seen(part, c) for r in mine for c in r.centres())
        exact = row.name == CUPS
        told.append(words("– {0} from the left,", _listed(at, 0, form, exact)))
        told.append(words("– {0} from below", _listed(at, 1, form)))
    return told + [_slant(part, t, form, words) for t in part.panel.tapers]


_SLANTS = mark({
    "left": "left edge in by {0} below, {1} above",
    "right": "right edge in by {0} below, {1} above",
    "lower": "lower edge in by {0} left, {1} right",
    "upper": "upper edge in by {0} left, {1} right",
})


def _slant(part: Part, taper: Taper, form: LengthFormat, words: Words) -> str:
    """How far an edge lies inside the rectangle at its two ends, as one faces it."""
    lies = _lies(part)
    edges = {Rim.START: "left", Rim.END: "right", Rim.FRONT: "lower", Rim.REAR: "upper"}
    if not lies:
        edges = {Rim.START: "lower", Rim.END: "upper", Rim.FRONT: "right", Rim.REAR: "left"}
    edge = edges[taper.rim]
    sizes = [_fine(form).text(v) for v in (taper.first, taper.last)]
    if not lies and taper.rim.is_end:
        sizes.reverse()
    return words(_SLANTS[edge], *sizes)


def _fine(form: LengthFormat) -> LengthFormat:
    """To a tenth of a millimetre: a whole one would be too coarse for a cup."""
    if form.unit == "in":
        return form
    return replace(form, resolution=min(form.resolution, Fraction(1, 10)))


def _listed(
    points: Sequence[Point], axis: int, form: LengthFormat, exact: bool = False
) -> str:
    """The different distances, in the order of the holes; ``exact``: as sizes that decide a
    fit, for the distance of a cup from the edge decides the overlay."""
    values = [round(p[axis], 3) for p in points]
    fine = _fine(form)
    return ", ".join(
        fit_text(v, form) if exact else fine.text(v) for v in dict.fromkeys(values))
