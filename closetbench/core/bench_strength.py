"""Benches and frames of lumber: members upright or laid flat, and the top on them.

Each member is a simply supported beam. People count as one load each, placed where they
bend it most. Lengths mm, forces N, stresses N/mm².
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from closetbench.core import grades
from closetbench.core.beams import PointLoad, Section, above_zero, bend, rectangle
from closetbench.core.errors import ClosetError
from closetbench.core.figures import GRAVITY, PSI, Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.loads import SEAT_SPAN_OVER, SEAT_WIDTH, SITTER
from closetbench.core.materials import Catalogue, Material, MaterialKind

BENDING_ALLOWED = 875 * PSI
SHEAR_ALLOWED = 135 * PSI
"""Reference design values of spruce-pine-fir No. 2, NDS Supplement Table 4A (875 quoted, 135
from memory),
without the increases for size, for lying flat or for short loads."""
DESIGN_SOURCE = (
    "NDS Supplement Table 4A, spruce-pine-fir No. 2 (875 psi quoted, 135 psi from memory)"
)
SEAT_SOURCE = (
    "300 lb a person: International Residential Code Table R301.5 note c, stair treads; "
    "no standard for built-in benches was found"
)


@dataclass(frozen=True)
class Bench:
    """A bench: ``rails`` equal members of ``material`` from support to support, each
    ``wide`` and ``high`` as it lies in the bench; the ``top`` board spans from rail to
    rail over ``top_span``. ``lid``: whether the top is a hinged lid; ``volume``: closed
    space under it, litres, 0 where it is not closed, None where that is not known;
    ``top_along``: whether the top's grain runs from rail to rail; ``lid_turns``: N·mm by
    which the lid's weight turns it shut, None where that is not known.
    """

    name: str
    material: str
    span: float
    rails: int
    wide: float
    high: float
    top: str
    top_span: float
    top_along: bool = True
    sitters: int | None = None
    lid: bool = False
    lid_support: bool = False
    vents: bool = False
    volume: float | None = None
    lid_turns: float | None = None

    def __post_init__(self) -> None:
        above_zero(
            self.name, span=self.span, width_of_a_rail=self.wide, height_of_a_rail=self.high,
            span_of_the_top=self.top_span,
        )
        if self.rails < 1:
            raise ClosetError(self.name, "rails", self.rails, "must be 1 or more")
        if self.sitters is not None and self.sitters < 0:
            raise ClosetError(self.name, "sitters", self.sitters, "must be 0 or more")

    @property
    def seats(self) -> int:
        """People that it has to carry: as entered, else as many as find room."""
        if self.sitters is not None:
            return self.sitters
        return max(1, int(self.span / SEAT_WIDTH))


@dataclass(frozen=True)
class MemberResult:
    """Sag, its range, and limit in mm; bending and shear stress with what is allowed."""

    sag: float
    soft: float
    stiff: float
    limit: float
    bending: float
    bending_allowed: float
    shear: float
    shear_allowed: float

    @property
    def strong(self) -> bool:
        """Whether bending and shear are within what is allowed."""
        return self.bending <= self.bending_allowed and self.shear <= self.shear_allowed


def seat_loads(span: float, people: int, each: float = SITTER) -> tuple[PointLoad, ...]:
    """People side by side around midspan, a seat's width apart, closer where they must."""
    if people == 0:
        return ()
    pitch = min(SEAT_WIDTH, span / people)
    first = span / 2 - pitch * (people - 1) / 2
    return tuple(PointLoad(each, first + i * pitch) for i in range(people))


def check_member(
    board: Material, span: float, wide: float, high: float, loads: Iterable[PointLoad],
    share: float = 1.0, span_over: float = SEAT_SPAN_OVER,
) -> MemberResult:
    """A lumber member ``wide`` and ``high`` as it lies, carrying ``share`` of the loads.

    Shear stress is 1.5·V/A, V of a load standing beside a support. ``ClosetError`` where
    the material is not solid lumber: boards are checked as shelves.
    """
    if board.kind is not MaterialKind.LUMBER:
        raise ClosetError(board.title, "kind", board.kind.value, "must be solid lumber for a rail")
    own = board.density * 1e-9 * wide * high * span * GRAVITY
    shared = [PointLoad(p.force * share, p.at) for p in (*loads, PointLoad(own / share, span / 2))]
    e = grades.stiffness(board, True)
    low, high_e = grades.scatter(board, e)

    def bar(stiff: float) -> Section:
        return rectangle(wide, high, stiff, grades.shear_modulus(board, stiff))

    result = bend(bar(e), span, shared)
    heaviest = max(p.force for p in shared)
    push = max(result.left, result.right, heaviest)
    return MemberResult(
        result.deflection, bend(bar(low), span, shared).deflection,
        bend(bar(high_e), span, shared).deflection, span / span_over,
        bar(e).stress(result.moment), BENDING_ALLOWED,
        1.5 * push / (wide * high), SHEAR_ALLOWED,
    )


def check_rails(bench: Bench, catalogue: Catalogue) -> MemberResult:
    """One rail of a bench. With two rails or more, two carry everybody: people sit on the
    front or on the rear half, so the load is not spread over all."""
    board = catalogue.material(bench.material, subject=bench.name)
    share = 1.0 if bench.rails == 1 else 0.5
    loads = seat_loads(bench.span, bench.seats)
    return check_member(board, bench.span, bench.wide, bench.high, loads, share)


def check_top(
    bench: Bench, catalogue: Catalogue, stiffness: float | None = None
) -> tuple[float, float, float, float]:
    """Sag and its limit (mm), stress and what is allowed (N/mm²) of the top under one
    person in the middle of its span, carried by a seat's width of board across the rails;
    ``stiffness`` (N/mm²) takes another than the catalogue's."""
    board = catalogue.material(bench.top, subject=bench.name)
    e = grades.stiffness(board, bench.top_along) if stiffness is None else stiffness
    bar = rectangle(SEAT_WIDTH, board.thickness, e, grades.shear_modulus(board, e))
    result = bend(bar, bench.top_span, [PointLoad(SITTER, bench.top_span / 2)])
    return (
        result.deflection, bench.top_span / SEAT_SPAN_OVER, bar.stress(result.moment),
        grades.allowed_stress(board, bench.top_along, brief=True),
    )


def findings(bench: Bench, catalogue: Catalogue, figures: Figures) -> Iterable[Finding]:
    """What there is to say about a bench's strength."""
    people = f"{bench.seats} {'person' if bench.seats == 1 else 'people'}"
    if bench.seats == 0:
        yield Finding(
            Severity.NOT_CHECKED, bench.name, "bench-load",
            "not checked: nobody is to sit on it, but somebody will; enter how many can",
        )
        return
    board = catalogue.material(bench.material, subject=bench.name)
    if board.kind is not MaterialKind.LUMBER:
        yield Finding(
            Severity.NOT_CHECKED, bench.name, "bench-rails",
            f"not checked: no design values are published for rails of {board.title}; take "
            "solid lumber, or ask its maker",
        )
    else:
        yield from _rail_findings(bench, catalogue, figures, people)
    sag, limit, stress, allowed = check_top(bench, catalogue)
    top = catalogue.material(bench.top, subject=bench.name)
    low, high = grades.scatter(top, grades.stiffness(top, bench.top_along))
    weak, good = grades.strength_range(top, allowed)
    fix = "a rail more under it, a thicker top, or its grain from rail to rail"
    source = f"{grades.STRENGTH_SOURCE}; {SEAT_SOURCE}"
    if stress > allowed:
        yield Finding(
            Severity.DANGER, bench.name, "bench-top-strength",
            "the top may break under one person between two rails", source,
            figures.stress(stress), figures.stress(allowed), fix,
            f"for the mean strengths published {figures.stress(weak)} to {figures.stress(good)}",
        )
    if sag > limit:
        yield Finding(
            Severity.WARNING, bench.name, "bench-top-sag",
            "the top gives way under one person between two rails",
            f"{SEAT_SOURCE}; limit: common practice, no published source",
            figures.small(sag), figures.small(limit), fix,
            figures.small_range(
                check_top(bench, catalogue, high)[0], check_top(bench, catalogue, low)[0])
            + f" ({grades.grade(top).e_source})",
        )


def _rail_findings(
    bench: Bench, catalogue: Catalogue, figures: Figures, people: str
) -> Iterable[Finding]:
    result = check_rails(bench, catalogue)
    upright = (
        f"set the rails upright ({figures.length(bench.wide)} high, not "
        f"{figures.length(bench.high)}), " if bench.wide > bench.high else "take higher rails, "
    )
    fix = upright + "or put a leg under midspan"
    if not result.strong:
        bending = result.bending / result.bending_allowed >= result.shear / result.shear_allowed
        value, allowed = (
            (result.bending, result.bending_allowed) if bending
            else (result.shear, result.shear_allowed)
        )
        yield Finding(
            Severity.DANGER, bench.name, "bench-strength",
            f"its rails may break in {'bending' if bending else 'shear'} under {people}",
            f"{DESIGN_SOURCE}; {SEAT_SOURCE}", figures.stress(value), figures.stress(allowed), fix,
            "the design value is for the weakest twentieth of the grade, over 2.1 (ASTM D245)",
        )
    ok = result.sag <= result.limit
    yield Finding(
        Severity.NOTE if ok else Severity.WARNING, bench.name, "bench-sag",
        f"its rails sag {figures.small(result.sag)} under {people}",
        f"{SEAT_SOURCE}; limit: common practice, no published source", figures.small(result.sag),
        figures.small(result.limit), "" if ok else fix,
        f"{figures.small_range(result.stiff, result.soft)} (Wood Handbook FPL-GTR-190 Table 5-6)",
    )
