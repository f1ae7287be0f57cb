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
    Face,
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
from closetbench.shop.language import Words, mark, plain
from closetbench.stock.plan import CutFrom

_Cut = TypeVar("_Cut", RimHole, Pocket)


def fit_text(mm: float, form: LengthFormat) -> str:
    """A size that decides a fit: ``18.2 mm``, or ``18.2 mm (0.717")`` beside inches."""
    text = f"{mm:.2f}".rstrip("0").rstrip(".") + " mm"
    return f'{text} ({mm / float(INCH):.3f}")' if form.unit == "in" else text


def sound_words(whole: CutFrom, form: LengthFormat, words: Words = plain) -> str:
    """What a sheet is of a damaged offcut: ``sound part of 1000 mm x 400 mm, …``."""
    return words(
        "sound part of {0}, its corner at {1} and {2}",
        f"{form.text(whole.length)} x {form.text(whole.width)}", form.text(whole.x),
        form.text(whole.y))


_FROM = mark({
    Rim.FRONT: "{0} from the front", Rim.REAR: "{0} from the rear",
    Rim.START: "{0} from the start", Rim.END: "{0} from the end",
})
_ALONG = mark({
    Rim.FRONT: "along the front", Rim.REAR: "along the rear",
    Rim.START: "along the start", Rim.END: "along the end",
})
_STOPPED = mark({
    Rim.FRONT: "stopped {0} from the front and squared with a chisel",
    Rim.REAR: "stopped {0} from the rear and squared with a chisel",
    Rim.START: "stopped {0} from the start and squared with a chisel",
    Rim.END: "stopped {0} from the end and squared with a chisel",
})
_IN_RIM = mark({
    Rim.FRONT: "{0} in the front for {1}", Rim.REAR: "{0} in the rear for {1}",
    Rim.START: "{0} in the start for {1}", Rim.END: "{0} in the end for {1}",
})
_AT_RIM = mark({
    Rim.FRONT: "{0} at the front for {1}", Rim.REAR: "{0} at the rear for {1}",
    Rim.START: "{0} at the start for {1}", Rim.END: "{0} at the end for {1}",
})
_CORNER = mark({
    (Rim.START, Rim.FRONT): "notch at the start and front corner",
    (Rim.START, Rim.REAR): "notch at the start and rear corner",
    (Rim.END, Rim.FRONT): "notch at the end and front corner",
    (Rim.END, Rim.REAR): "notch at the end and rear corner",
})
_ASLANT = mark({
    Rim.FRONT: "front aslant: {0}", Rim.REAR: "rear aslant: {0}",
    Rim.START: "start aslant: {0}", Rim.END: "end aslant: {0}",
})
_FACES = mark({Face.UPPER: "upper face", Face.LOWER: "lower face"})
_EVERY = mark({
    Run.LENGTH: "every {0} along the length", Run.WIDTH: "every {0} across the width"})


def groove_words(groove: Groove, form: LengthFormat, words: Words = plain) -> str:
    """``groove for the top: 18.2 mm wide, 6 mm deep, 320 mm from the start, lower face``."""
    size = words(
        "{0} wide, {1} deep", fit_text(groove.width, form), fit_text(groove.depth, form))
    name, rim = words(groove.name), groove.measured_from
    if groove.is_rabbet:
        told = [words("rabbet for {0}: {1}", name, size), words(_ALONG[rim])]
    else:
        told = [words("groove for {0}: {1}", name, size),
                words(_FROM[rim], form.text(groove.offset))]
    told.append(words(_FACES[groove.face]))
    ends = (Rim.FRONT, Rim.REAR) if groove.run is Run.WIDTH else (Rim.START, Rim.END)
    for stop, end in zip((groove.stop_first, groove.stop_last), ends, strict=True):
        if stop:
            told.append(words(_STOPPED[end], form.text(stop)))
    return ", ".join(told)


def holes_words(
    row: HoleRow, thickness: float, form: LengthFormat, words: Words = plain
) -> str:
    """``30 holes for the pins: 5 mm across, 10 mm deep, first 400 mm from the start …``."""
    several = row.count > 1
    name = words(row.name)
    head = words("{0} holes for {1}", row.count, name) if several else words("hole for {0}", name)
    through = row.depth >= thickness - 1e-6
    told = [
        words("{0} across", fit_text(row.diameter, form)),
        words("right through") if through else words("{0} deep", fit_text(row.depth, form)),
        words("first {0} from the start and {1} from the front" if several
              else "{0} from the start and {1} from the front",
              form.text(row.x), form.text(row.y)),
    ]
    if several:
        told.append(words(_EVERY[row.run], fit_text(row.pitch, form)))
    if not through:
        told.append(words(_FACES[row.face]))
    return words("{0}: {1}", head, ", ".join(told))


def notch_words(notch: Notch, form: LengthFormat, words: Words = plain) -> str:
    """``notch at the start and front corner: 80 mm along the length, 50 mm along the width``."""
    sizes = words(
        "{0} along the length, {1} along the width", form.text(notch.dx), form.text(notch.dy))
    return words("{0}: {1}", words(_CORNER[notch.end, notch.edge]), sizes)


def rim_holes_words(
    holes: Sequence[RimHole], thickness: float, form: LengthFormat, words: Words = plain
) -> str:
    """``2 holes in the end for the dowels: 8 mm across, 21 mm deep, 11 mm and 34 mm from the
    front, in the middle of the thickness``; the holes are equal but for their places."""
    first = holes[0]
    count = words("hole") if len(holes) == 1 else words("{0} holes", len(holes))
    at = listed([form.text(h.at) for h in holes], words)
    middle = abs(first.level - thickness / 2) < 1e-6
    told = [
        words("{0} across", fit_text(first.diameter, form)),
        words("{0} deep", fit_text(first.depth, form)),
        words(_FROM[_measured_from(first.rim)], at),
        words("in the middle of the thickness") if middle else words(
            "{0} above the lower face", fit_text(first.level, form)),
    ]
    what = words(_IN_RIM[first.rim], count, words(first.name))
    return words("{0}: {1}", what, ", ".join(told))


def pockets_words(
    pockets: Sequence[Pocket], form: LengthFormat, words: Words = plain
) -> str:
    """``2 pockets at the end for rail and stile: lower face, 11 mm and 34 mm from the front``."""
    first = pockets[0]
    count = words("pocket") if len(pockets) == 1 else words("{0} pockets", len(pockets))
    at = listed([form.text(p.at) for p in pockets], words)
    told = (words(_FACES[first.face]), words(_FROM[_measured_from(first.rim)], at))
    what = words(_AT_RIM[first.rim], count, words(first.name))
    return words("{0}: {1}", what, ", ".join(told))


def taper_words(panel: Panel, taper: Taper, form: LengthFormat, words: Words = plain) -> str:
    """``rear aslant: 30 mm wide at the start, 18 mm at the end; sawn 6 mm wider to be scribed``:
    what is left of the finished panel from there to the rim across."""
    rim, end = taper.rim, taper.rim.is_end
    other = next((t for t in panel.tapers if t.rim is rim.opposite), None)
    whole, run = (panel.length, panel.width) if end else (panel.width, panel.length)
    sizes = []
    for share, inside in taper.places:
        size = form.text(whole - inside - (other.inside(share) if other else 0.0))
        size = words("{0} long", size) if end else words("{0} wide", size)
        if share == 0.0:
            at = words("{0} at the front", size) if end else words("{0} at the start", size)
        elif share == 1.0:
            at = words("{0} at the rear", size) if end else words("{0} at the end", size)
        else:
            first = Rim.FRONT if end else Rim.START
            at = words("{0} at {1}", size, words(_FROM[first], form.text(share * run)))
        sizes.append(at)
    told = words(_ASLANT[rim], ", ".join(sizes))
    if taper.allowance:
        told += "; " + words("sawn {0} wider to be scribed", form.text(taper.allowance))
    return told


def _measured_from(rim: Rim) -> Rim:
    return Rim.FRONT if rim.is_end else Rim.START


def listed(texts: Sequence[str], words: Words = plain) -> str:
    """Texts in a row, the last after an "and"."""
    return words(" and ").join(filter(None, (", ".join(texts[:-1]), texts[-1])))


def _alike(cuts: Sequence[_Cut]) -> list[list[_Cut]]:
    """Work on rims that differs in nothing but its place, together."""
    found: dict[object, list[_Cut]] = {}
    for cut in cuts:
        found.setdefault(replace(cut, at=0.0), []).append(cut)
    return list(found.values())


def machining_words(panel: Panel, form: LengthFormat, words: Words = plain) -> str:
    """Everything that is done to the panel, one piece of work after another."""
    return "; ".join((
        *(() if panel.section is Section.FLAT else (words(panel.section.value),)),
        *(groove_words(g, form, words) for g in panel.grooves),
        *(holes_words(h, panel.thickness, form, words) for h in panel.holes),
        *(notch_words(n, form, words) for n in panel.notches),
        *(rim_holes_words(h, panel.thickness, form, words) for h in _alike(panel.rim_holes)),
        *(taper_words(panel, t, form, words) for t in panel.tapers),
        *(pockets_words(p, form, words) for p in _alike(panel.pockets)),
    ))
