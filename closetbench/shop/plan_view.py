"""The plan: the closet from above, without what lies over the height it is cut at."""

from __future__ import annotations

from collections.abc import Sequence

from closetbench.core.bodies import Body
from closetbench.core.component import Bay
from closetbench.core.lengths import MILLIMETRES, LengthFormat
from closetbench.shop.language import Words, plain
from closetbench.shop.page import FAINT, Page, text_width
from closetbench.shop.painter import painted
from closetbench.shop.view import (
    Camera,
    Line,
    bar_length,
    bounds,
    heading,
    legend_lift,
    paint,
    role_legend,
    room_edges,
    shown_bays,
    wide,
)

HEIGHT = 1000.0
"""mm over the floor: what lies wholly above is left out, so that one sees into the bays. A
plan is cut at about a metre; common practice, no published source."""
_ABOVE = (0.0, 0.0, 1.0)
_NEAR, _STEP = 0.35, 0.42
"""Inches from the closet to the widths of its bays, and on to its outer width."""


def plan_page(
    parts: Sequence[Body], bays: Sequence[Bay], title: str, form: LengthFormat = MILLIMETRES,
    room: Sequence[Line] = (), words: Words = plain,
) -> Page:
    """The closet from above, its front down: clear widths of the bays, outer width and depth.

    ``room``: the room's edges, drawn see-through. ``DocumentError`` where there is nothing.
    """
    whole = bounds(parts, "plan")
    low = [b for b in parts if b.box().z0 < whole.z0 + HEIGHT]
    box = bounds(low, "plan")
    xs = [box.x0, box.x1, *(p[0] for line in room for p in line)]
    ys = [box.y0, box.y1, *(p[1] for line in room for p in line)]
    span, deep = max(xs) - min(xs), max(ys) - min(ys)
    scale = min(7.2 / span, 6.0 / deep)
    width = max(7.5, span * scale + 2.0)
    lift = legend_lift(low, words, width)
    height = deep * scale + 3.6 + lift
    page = Page(width, height, "plan", words=words)
    camera = Camera(0.0, 90.0)
    left = (width - span * scale) / 2 + 0.25
    camera.scale, camera.shift = scale, (left - min(xs) * scale, 2.3 + lift - min(ys) * scale)
    room_edges(page, camera, room, 0.9)
    paint(page, camera, painted(low, _ABOVE))
    room_edges(page, camera, room, 0.25)
    x0, front = camera((box.x0, box.y0, 0.0))
    x1, rear = camera((box.x1, box.y1, 0.0))
    foot = camera((0.0, min(ys), 0.0))[1]
    at = foot - _NEAR
    shown = [b for b in shown_bays(bays) if b.space.z0 < whole.z0 + HEIGHT]
    for bay in shown:
        a, b = (camera((x, 0.0, 0.0))[0] for x in (bay.space.x0, bay.space.x1))
        for x in (a, b):
            page.line(((x, front - 0.05), (x, at - 0.08)), FAINT, 0.4)
        page.dimension((a, at), (b, at), form.text(wide(bay)))
    # what does not fit between its ends is written down the page
    far = at - max([_STEP, *(
        0.25 + w for b in shown
        if (w := text_width(form.text(wide(b)), 7.5)) > wide(b) * scale - 0.2)])
    page.dimension((x0, far), (x1, far), form.text(box.x1 - box.x0), 8.5)
    for x in (x0, x1):
        page.line(((x, front - 0.05), (x, far - 0.08)), FAINT, 0.4)
    side = min(x0, camera((min(xs), 0.0, 0.0))[0]) - 0.4
    page.dimension((side, front), (side, rear), form.text(box.y1 - box.y0), 8.5)
    for y in (front, rear):
        page.line(((x0 - 0.05, y), (side - 0.08, y)), FAINT, 0.4)
    heading(page, title, words(
        "plan, from above, without what lies over {0}; widths of bays are clear",
        form.text(HEIGHT)))
    bar, length = bar_length(scale, form)
    page.scale_bar((page.width - 0.45 - bar, 0.3), bar, length)
    role_legend(page, low, page.width - bar - 1.3)
    return page
