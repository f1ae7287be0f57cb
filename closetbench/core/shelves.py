"""Shelves, tops and bottoms: sag, strength, the longest span, and what would help.

A shelf is a beam as wide as the shelf is deep, between the centres of its supports, under
an even load and, where the user names one, a load in the middle. The verdict takes its
ends to turn freely; a shelf in grooves is held more than that and less than clamped, so
both bounds are given. Creep is shown beside the verdict: the published criteria are for
the first sag.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from enum import Enum
from functools import lru_cache

from closetbench.core import grades
from closetbench.core.beams import (
    Ends,
    Loading,
    Piece,
    Section,
    above_zero,
    composite,
    deflection,
    longest,
    moment,
)
from closetbench.core.figures import GRAVITY, Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.loads import PIN_SOURCE, Criterion
from closetbench.core.materials import Catalogue, Material

BEAM_SOURCE = "Wood Handbook FPL-GTR-190, eq. 9-2 and Table 9-1"
STRIP_HEIGHTS = (20.0, 30.0, 40.0, 50.0, 60.0, 80.0, 100.0)
"""mm, the lips and cleats that are tried as a remedy, of the shelf's own board."""
MOST_DIVIDERS = 3
PINS = 4
LONGEST_TRIED = 4000.0


class Hold(Enum):
    """How a shelf is held at its ends."""

    GROOVES = "in grooves"
    CLEATS = "on cleats"
    PINS = "on pins"
    FASTENERS = "by screws or nails through the sides"
    OVER = "on top of its supports"


@dataclass(frozen=True)
class Strip:
    """A strip glued along a shelf: ``thickness`` across the shelf's depth and ``height``,
    mm, E and G in N/mm². ``allowed``: bending stress that its board may bear for years, None
    for that of the shelf's board."""

    thickness: float
    height: float
    e: float
    g: float
    allowed: float | None = None


@dataclass(frozen=True)
class Shelf:
    """A shelf to be checked, lengths in mm.

    ``span``: between the centres of its supports; ``depth``: front to back; ``along``:
    whether the span runs along the length of the sheet; ``lip``: a strip at the front
    edge, flush with the top; ``cleat``: a strip glued and screwed under the rear edge.
    """

    name: str
    board: Material
    span: float
    depth: float
    hold: Hold = Hold.GROOVES
    along: bool = True
    lip: Strip | None = None
    cleat: Strip | None = None


@dataclass(frozen=True)
class Remedy:
    """Something that makes the shelf pass, and the first sag with it, mm."""

    text: str
    sag: float


@dataclass(frozen=True)
class Sagging:
    """What a shelf comes to: sags in mm, stresses in N/mm², ``load`` in N.

    ``sag``: ends turning freely; ``held``: ends clamped, None where nothing holds them;
    ``later``: ``sag`` after years, least, usual and greatest published; ``soft`` and
    ``stiff``: ``sag`` with the softest and the stiffest board published; ``stress``: the one
    closest to what its piece, shelf or strip, may bear, ``allowed``: what
    building design would allow, ``breaking``: what the weakest board of its standard bears
    for years, ``in_strip``: whether that is its lip or cleat; ``longest``: the longest span
    that passes, None where none does.
    """

    load: float
    sag: float
    held: float | None
    limit: float
    later: tuple[float, float, float]
    soft: float
    stiff: float
    stress: float
    allowed: float
    breaking: float
    in_strip: bool
    longest: float | None

    @property
    def passes(self) -> bool:
        """Whether the first sag is within the limit."""
        return self.sag <= self.limit

    @property
    def strong(self) -> bool:
        """Whether the stress is within what the board may bear for years."""
        return self.stress <= self.allowed

    @property
    def breaks(self) -> bool:
        """Whether a weak board may break under the load in time."""
        return self.stress > self.breaking


def section(shelf: Shelf, e: float) -> Section:
    """The shelf's section with its strips, the board's E as given, N/mm²."""
    t, g = shelf.board.thickness, grades.shear_modulus(shelf.board, e)
    pieces = [Piece(shelf.depth, t, 0.0, e, g)]
    if shelf.lip:
        lip = shelf.lip
        pieces.append(Piece(lip.thickness, lip.height, t - lip.height, lip.e, lip.g))
    if shelf.cleat:
        cleat = shelf.cleat
        pieces.append(Piece(cleat.thickness, cleat.height, -cleat.height, cleat.e, cleat.g))
    return composite(pieces)


def check(shelf: Shelf, use: Criterion, damp: bool = False) -> Sagging:
    """Sag and strength of a shelf. Raises ``ClosetError`` where it cannot be computed."""
    above_zero(shelf.name, span=shelf.span, depth=shelf.depth)
    return _checked(replace(shelf, name=""), use, damp)


@lru_cache(maxsize=512)
def _checked(shelf: Shelf, use: Criterion, damp: bool) -> Sagging:
    """Remembered, since most shelves of a closet are alike and stay as they are while
    something else in it is changed."""
    e = grades.stiffness(shelf.board, shelf.along, damp)
    bar = section(shelf, e)
    sag = _sag(bar, shelf.span, shelf.depth, use)
    low, high = grades.scatter(shelf.board, e)
    later = grades.grade(shelf.board).creep

    def ratio(span: float) -> float:
        bent = _sag(bar, span, shelf.depth, use) / use.limit(span)
        found = _stress(replace(shelf, span=span), bar, use, damp)
        return max(bent, found[0] / found[1])

    stress, allowed, in_strip = _stress(shelf, bar, use, damp)

    return Sagging(
        use.load(shelf.span, shelf.depth), sag,
        _sag(bar, shelf.span, shelf.depth, use, Ends.CLAMPED)
        if shelf.hold in (Hold.GROOVES, Hold.OVER) else None,
        use.limit(shelf.span),
        (sag * later[0], sag * later[1], sag * later[2]),
        _sag(section(shelf, low), shelf.span, shelf.depth, use),
        _sag(section(shelf, high), shelf.span, shelf.depth, use),
        stress, allowed, allowed * grades.LOAD_FACTOR, in_strip,
        longest(ratio, 1.0, LONGEST_TRIED),
    )


def _sag(
    bar: Section, span: float, depth: float, use: Criterion, ends: Ends = Ends.SIMPLE
) -> float:
    """First sag under the even load and the one in the middle, mm."""
    even = deflection(bar, span, use.load(span, depth), ends=ends)
    return even + (deflection(bar, span, use.centre, Loading.CENTRE, ends) if use.centre else 0.0)


def _stress(
    shelf: Shelf, bar: Section, use: Criterion, damp: bool
) -> tuple[float, float, bool]:
    """Bending stress under the loads and the shelf's own weight in the piece that is closest
    to breaking, what that may bear, N/mm², and whether it is a strip."""
    own = shelf.board.weight(shelf.span, shelf.depth) * GRAVITY
    even = moment(shelf.span, use.load(shelf.span, shelf.depth) + own)
    most = even + moment(shelf.span, use.centre, Loading.CENTRE)
    board = grades.allowed_stress(shelf.board, shelf.along, damp)
    left = grades.damp_factors(shelf.board)[1] if damp else 1.0
    pieces = [(board, False), *(
        (board if s.allowed is None else s.allowed * left, True)
        for s in (shelf.lip, shelf.cleat) if s
    )]
    found = zip(bar.stresses(most), pieces, strict=True)
    return max(
        ((at, allowed, strip) for at, (allowed, strip) in found), key=lambda f: f[0] / f[1])


def remedies(
    shelf: Shelf, use: Criterion, catalogue: Catalogue, figures: Figures, damp: bool = False
) -> tuple[Remedy, ...]:
    """What would make the shelf pass, each computed: a thicker or stiffer board of the
    catalogue, a lip, a cleat, dividers. Only what passes in sag and strength is given."""
    found: list[Remedy] = []
    t = shelf.board.thickness

    def tried(other: Shelf) -> float | None:
        """The sag, where the other shelf passes."""
        if damp and grades.grade(other.board).damp is None:
            return None
        bar = section(other, grades.stiffness(other.board, other.along, damp))
        sag = _sag(bar, other.span, other.depth, use)
        stress, allowed, _ = _stress(other, bar, use, damp)
        strong = stress <= allowed
        return sag if strong and sag <= use.limit(other.span) else None

    boards = sorted(
        (b for b in catalogue.materials.values() if _holds(b, shelf)),
        key=lambda b: (round(b.thickness), _price(b), b.title),
    )
    same = (b for b in boards if b.kind is shelf.board.kind and b.thickness > t + 0.5)
    other = (
        b for b in boards
        if b.kind is not shelf.board.kind and abs(b.thickness - t) <= 2
    )
    for choices in (same, other):
        for board in choices:
            sag = tried(replace(shelf, board=board))
            if sag is not None:
                found.append(Remedy(board.title, sag))
                break
    e = grades.stiffness(shelf.board, True)
    strips = [Strip(t, h, e, grades.shear_modulus(shelf.board, e)) for h in STRIP_HEIGHTS if h > t]
    for text, given, stiffer in (
        ("a front lip", shelf.lip, [replace(shelf, lip=s) for s in strips]),
        ("a cleat glued and screwed under the rear edge", shelf.cleat,
         [replace(shelf, cleat=s) for s in strips]),
    ):
        for strip, choice in zip(strips, stiffer, strict=True) if given is None else ():
            sag = tried(choice)
            if sag is not None:
                sizes = f"{figures.length(t)} x {figures.length(strip.height)}"
                found.append(Remedy(f"{text} {sizes}", sag))
                break
    for count in range(1, MOST_DIVIDERS + 1):
        clear = (shelf.span - count * t) / (count + 1)
        sag = tried(replace(shelf, span=clear)) if clear > t else None
        if sag is not None:
            text = f"{count} dividers to carry it" if count > 1 else "1 divider to carry it"
            found.append(Remedy(text, sag))
            break
    return tuple(found)


def _holds(board: Material, shelf: Shelf) -> bool:
    """Whether a sheet of this board is long and wide enough for the shelf."""
    length, width = (shelf.span, shelf.depth) if shelf.along else (shelf.depth, shelf.span)
    return any(s.length >= length and s.width >= width for s in board.sheets)


def _price(board: Material) -> float:
    """Least price of a square millimetre; infinite where there is none."""
    return min(
        (s.cost / (s.length * s.width) for s in board.sheets if s.cost is not None),
        default=math.inf,
    )


def findings(
    shelves: Sequence[Shelf], use: Criterion, catalogue: Catalogue, figures: Figures,
    damp: bool = False,
) -> Iterable[Finding]:
    """The findings on shelves that are alike: one, and a second where strength fails."""
    shelf = shelves[0]
    if damp and grades.grade(shelf.board).damp is None:
        yield damp_finding(shelf.board, shelf.name, _names(shelves))
        return
    result = check(shelf, use, damp)
    help_text = _longest(result, figures)
    if not (result.passes and result.strong):
        found = [
            f"{r.text}: {figures.small(r.sag)}"
            for r in remedies(shelf, use, catalogue, figures, damp)
        ] or [f"no board of the catalogue, no lip and no {MOST_DIVIDERS} dividers do"]
        help_text = "; ".join([*found, help_text])
    mass = f"{figures.mass(result.load / GRAVITY)} of {use.title}"
    if use.centre:
        mass += f" and {figures.mass(use.centre / GRAVITY)} in the middle"
    lipped = ", its lip glued and screwed on" if shelf.lip else ""
    also = f" ({len(shelves)} alike)" if len(shelves) > 1 else ""
    if not result.strong:
        weak, good = grades.strength_range(shelf.board, result.allowed)
        breaks = result.breaks
        if breaks and result.in_strip:
            # a broken lip leaves the shelf itself, which may well carry on
            breaks = check(replace(shelf, lip=None, cleat=None), use, damp).breaks
        yield Finding(
            Severity.DANGER if breaks else Severity.WARNING, shelf.name, "shelf-strength",
            f"a weak board may break under {mass} in time{lipped}{also}" if breaks else
            f"its lip may break under {mass} in time, if it is a weak one; the shelf alone would "
            f"not{also}" if result.breaks else
            f"keeps less strength in reserve under {mass} for years than building design asks "
            f"for; the weakest board of its kind would break at "
            f"{figures.stress(result.breaking)}{lipped}{also}",
            f"{'' if result.in_strip else grades.grade(shelf.board).mor_source + '; '}"
            f"{grades.STRENGTH_SOURCE}; load: {use.source}",
            figures.stress(result.stress), figures.stress(result.allowed), help_text,
            "in its lip; allowed for the least strength of that one's standard"
            if result.in_strip else
            f"allowed for the least strength of its standard; for the mean strengths published "
            f"{figures.stress(weak)} to {figures.stress(good)}", _names(shelves),
        )
    bounds = ""
    if result.held is not None:
        bounds = f"; if its ends could not turn at all, {figures.small(result.held)}"
    elif shelf.hold is Hold.PINS:
        own = shelf.board.weight(shelf.span, shelf.depth) * GRAVITY
        each = figures.force((result.load + use.centre + own) / PINS)
        bounds = (
            f"; each of its {PINS} pins carries {each}: the pins are not checked ({PIN_SOURCE})"
        )
    if result.passes and result.soft > result.limit:
        bounds += "; the softest boards published would not pass"
    verb = "sags" if result.passes else "sags too much:"
    yield Finding(
        Severity.NOTE if result.passes else Severity.WARNING, shelf.name, "shelf-sag",
        f"{verb} {figures.small(result.sag)} under {mass}{lipped}{also}{bounds}; after "
        f"years about {figures.small(result.later[1])} "
        f"({figures.small_range(result.later[0], result.later[2])})",
        f"{use.source}; {BEAM_SOURCE}; {grades.CREEP_SOURCE}",
        figures.small(result.sag), figures.small(result.limit),
        help_text, _spread(shelf, result, figures), _names(shelves),
    )


def damp_finding(board: Material, name: str, parts: tuple[str, ...]) -> Finding:
    """A board that is made for dry rooms in damp air."""
    return Finding(
        Severity.NOT_CHECKED, name, "shelf-damp",
        f"not checked: {board.title} is made for dry, heated rooms; ask its maker for "
        "figures in damp air, or take plywood or solid wood",
        "EN 312, EN 622: boards for use in dry conditions", parts=parts,
    )


def _names(shelves: Sequence[Shelf]) -> tuple[str, ...]:
    return tuple(s.name for s in shelves)


def _spread(shelf: Shelf, result: Sagging, figures: Figures) -> str:
    source = grades.grade(shelf.board).e_source
    if math.isclose(result.soft, result.stiff):
        return f"no scatter is published ({source})"
    return (
        f"{figures.small_range(result.stiff, result.soft)} between the stiffest and the softest "
        f"boards published ({source})"
    )


def _longest(result: Sagging, figures: Figures) -> str:
    if result.longest is None:
        return "no span passes"
    if result.longest >= LONGEST_TRIED:
        return f"spans to {figures.length(LONGEST_TRIED)} pass"
    return f"the longest span that passes is {figures.length(math.floor(result.longest))}"

