"""A panel's machining in plain words.

Positions are in the user's unit and from the finished rims. Widths and depths of grooves
and diameters of holes stay in millimetres to 0.01 mm, beside thousandths of an inch where
the user reads inches: a fraction of an inch would spoil the fit.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TypeVar

from closetbench.core.lengths import INCH, LengthFormat
from closetbench.core.panel import (
    Groove,
    HoleRow,
    Notch,
    Panel,
    Pocket,
    Rim,
    RimHole,
    Run,
    Section,
    Taper,
)
from closetbench.stock.plan import CutFrom

_Cut = TypeVar("_Cut", RimHole, Pocket)


def fit_text(mm: float, form: LengthFormat) -> str:
    """A size that decides a fit: ``18.2 mm``, or ``18.2 mm (0.717")`` beside inches."""
    text = f"{mm:.2f}".rstrip("0").rstrip(".") + " mm"
    return f'{text} ({mm / float(INCH):.3f}")' if form.unit == "in" else text


def sound_words(whole: CutFrom, form: LengthFormat) -> str:
    """What a sheet is of a damaged offcut: ``sound part of 1000 mm x 400 mm, …``."""
    return (
        f"sound part of {form.text(whole.length)} x {form.text(whole.width)}, its corner at "
        f"{form.text(whole.x)} and {form.text(whole.y)}"
    )


def groove_words(groove: Groove, form: LengthFormat) -> str:
    """``groove for the top: 18.2 mm wide, 6 mm deep, 320 mm from the start, lower face``."""
    size = f"{fit_text(groove.width, form)} wide, {fit_text(groove.depth, form)} deep"
    rim = groove.measured_from.value
    if groove.is_rabbet:
        words = f"rabbet for {groove.name}: {size}, along the {rim}"
    else:
        words = f"groove for {groove.name}: {size}, {form.text(groove.offset)} from the {rim}"
    words += f", {groove.face.value} face"
    ends = (Rim.FRONT, Rim.REAR) if groove.run is Run.WIDTH else (Rim.START, Rim.END)
    for stop, end in zip((groove.stop_first, groove.stop_last), ends, strict=True):
        if stop:
            words += f", stopped {form.text(stop)} from the {end.value} and squared with a chisel"
    return words


def holes_words(row: HoleRow, thickness: float, form: LengthFormat) -> str:
    """``30 holes for the pins: 5 mm across, 10 mm deep, first 400 mm from the start …``."""
    count = "hole" if row.count == 1 else f"{row.count} holes"
    through = row.depth >= thickness - 1e-6
    depth = "right through" if through else f"{fit_text(row.depth, form)} deep"
    words = (
        f"{count} for {row.name}: {fit_text(row.diameter, form)} across, {depth}, "
        f"{'' if row.count == 1 else 'first '}{form.text(row.x)} from the start and "
        f"{form.text(row.y)} from the front"
    )
    if row.count > 1:
        words += f", every {fit_text(row.pitch, form)} {row.run.value}"
    return words if through else f"{words}, {row.face.value} face"


def notch_words(notch: Notch, form: LengthFormat) -> str:
    """``notch at the start and front corner: 80 mm along the length, 50 mm along the width``."""
    return (
        f"notch at the {notch.end.value} and {notch.edge.value} corner: {form.text(notch.dx)} "
        f"along the length, {form.text(notch.dy)} along the width"
    )


def rim_holes_words(holes: Sequence[RimHole], thickness: float, form: LengthFormat) -> str:
    """``2 holes in the end for the dowels: 8 mm across, 21 mm deep, 11 mm and 34 mm from the
    front, in the middle of the thickness``; the holes are equal but for their places."""
    first = holes[0]
    count = "hole" if len(holes) == 1 else f"{len(holes)} holes"
    at = _listed([form.text(h.at) for h in holes])
    middle = abs(first.level - thickness / 2) < 1e-6
    level = "in the middle of the thickness" if middle else (
        f"{fit_text(first.level, form)} above the lower face")
    return (
        f"{count} in the {first.rim.value} for {first.name}: {fit_text(first.diameter, form)} "
        f"across, {fit_text(first.depth, form)} deep, {at} from the {_from(first.rim)}, {level}"
    )


def pockets_words(pockets: Sequence[Pocket], form: LengthFormat) -> str:
    """``2 pockets at the end for rail and stile: lower face, 11 mm and 34 mm from the front``."""
    first = pockets[0]
    count = "pocket" if len(pockets) == 1 else f"{len(pockets)} pockets"
    at = _listed([form.text(p.at) for p in pockets])
    return (
        f"{count} at the {first.rim.value} for {first.name}: {first.face.value} face, {at} from "
        f"the {_from(first.rim)}"
    )


def taper_words(panel: Panel, taper: Taper, form: LengthFormat) -> str:
    """``rear aslant: 30 mm wide at the start, 18 mm at the end; sawn 6 mm wider to be scribed``:
    what is left of the finished panel from there to the rim across."""
    rim, end = taper.rim, taper.rim.is_end
    other = next((t for t in panel.tapers if t.rim is rim.opposite), None)
    whole, run = (panel.length, panel.width) if end else (panel.width, panel.length)
    first, last = ("the front", "the rear") if end else ("the start", "the end")
    sizes = []
    for share, inside in taper.places:
        size = form.text(whole - inside - (other.inside(share) if other else 0.0))
        where = {0.0: first, 1.0: last}.get(share) or f"{form.text(share * run)} from {first}"
        sizes.append(f"{size} {'long' if end else 'wide'} at {where}")
    words = f"{rim.value} aslant: {', '.join(sizes)}"
    if taper.allowance:
        words += f"; sawn {form.text(taper.allowance)} wider to be scribed"
    return words


def _from(rim: Rim) -> str:
    return "front" if rim.is_end else "start"


def _listed(texts: Sequence[str]) -> str:
    return " and ".join(filter(None, (", ".join(texts[:-1]), texts[-1])))


def _alike(cuts: Sequence[_Cut]) -> list[list[_Cut]]:
    """Work on rims that differs in nothing but its place, together."""
    found: dict[object, list[_Cut]] = {}
    for cut in cuts:
        found.setdefault(replace(cut, at=0.0), []).append(cut)
    return list(found.values())


def machining_words(panel: Panel, form: LengthFormat) -> str:
    """Everything that is done to the panel, one piece of work after another."""
    return "; ".join((
        *(() if panel.section is Section.FLAT else (panel.section.value,)),
        *(groove_words(g, form) for g in panel.grooves),
        *(holes_words(h, panel.thickness, form) for h in panel.holes),
        *(notch_words(n, form) for n in panel.notches),
        *(rim_holes_words(h, panel.thickness, form) for h in _alike(panel.rim_holes)),
        *(taper_words(panel, t, form) for t in panel.tapers),
        *(pockets_words(p, form) for p in _alike(panel.pockets)),
    ))
