"""Fillers and mouldings over the gaps beside and above the carcasses, scribed to the walls.

A filler strip stands beside the carcass, flush with its front; a moulding lies on the front
edges of the carcass and reaches over to the wall. Both are as wide as the gap is at each
end, and are left wider on the wall's side by what is scribed away in place.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from enum import Enum

from closetbench.core.component import Component, box_around, fastener_count, require
from closetbench.core.envelope import Envelope, Wall
from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.gaps import GapLine, Gaps, SideGap
from closetbench.core.joinery import JoineryRules, check_panel
from closetbench.core.levelling import LEAST_SHIM, shim_findings, shims
from closetbench.core.materials import Catalogue, Material
from closetbench.core.panel import Box, Grain, Panel, Rim, Taper
from closetbench.core.parts import FACING, FACING_UPRIGHT, HardwareNeed, Part, Place, Role
from closetbench.core.room import Room
from closetbench.core.trim import narrowest, widest

STRIP_SCREW = "screw_4x30"
MOULDING_NAIL = "nail_16x25"
SHIM = "shim"
SPACING = 300.0
"""mm between screws of a strip and nails of a moulding: common practice, no published
source."""
LEAST_GAP = 1.0
"""mm: a gap this narrow all along is none to cover."""
LEAST_STRIP = 5.0
"""mm: no strip narrower than this can be sawn and held."""
AWS = "Architectural Woodwork Standards, edition 1 (2009), wall-to-wall details"


class Cover(Enum):
    """What covers a gap."""

    AUTO = "by the gap"
    """A strip where the gap is wide enough for one, else a moulding."""
    STRIP = "filler strip"
    MOULDING = "moulding"
    NONE = "none"


class Levelling(Enum):
    """How the base meets a floor that is not level."""

    SHIMS = "shims"
    SCRIBED = "base frame scribed to the floor"


@dataclass(frozen=True)
class FillersSpec:
    """Everything that closes the gaps around the carcasses.

    ``left``, ``right``, ``top``: what covers the gap there.
    ``levelling``: how the bases meet the floor.
    ``material``: of strips, None takes the carcass's.
    ``mouldings``, ``rounds``: keys of the flat mouldings and of the quarter rounds for the
    foot of the base to choose from; without rounds the foot stays open.
    ``scribe``: left on to be scribed away, 6 mm (common practice, no published source).
    ``least``, ``most``: narrowest and widest strip: 20 mm (common practice, no published
    source) and 38.1 mm, 1-1/2 in (Architectural Woodwork Standards, edition 1, 2009).
    ``overlap``: how far a moulding lies on the carcass at least, 6 mm as above.
    """

    name: str
    left: Cover = Cover.AUTO
    right: Cover = Cover.AUTO
    top: Cover = Cover.AUTO
    levelling: Levelling = Levelling.SHIMS
    material: str | None = None
    mouldings: tuple[str, ...] = ("scribe_20", "scribe_32", "scribe_45")
    rounds: tuple[str, ...] = ("quarter_round_12", "quarter_round_19")
    scribe: float = 6.0
    least: float = 20.0
    most: float = 38.1
    overlap: float = 6.0


def build_fillers(
    spec: FillersSpec, carcasses: Sequence[Component], room: Room | None, envelope: Envelope,
    catalogue: Catalogue, figures: Figures | None = None,
) -> Component:
    """Fillers, mouldings and shims of the carcasses, as a component of its own.

    Raises ``ClosetError`` without readings or carcasses, and for what cannot be made.
    """
    if room is None:
        raise ClosetError(
            spec.name, "survey", "missing", "must be there: gaps follow from its readings"
        )
    if not carcasses:
        raise ClosetError(spec.name, "carcasses", "0", "must be 1 or more to have gaps beside")
    require(spec.name, "scribe allowance", spec.scribe, 0.0, 30.0)
    require(spec.name, "narrowest strip", spec.least, LEAST_STRIP, spec.most)
    require(spec.name, "overlap of a moulding", spec.overlap, 2.0, 30.0)
    job = _Job(spec, Gaps(room, envelope), catalogue, figures or Figures())
    job.close_all(carcasses)
    for carcass in carcasses:
        job.close_foot(carcass)
    if spec.levelling is Levelling.SHIMS:
        for carcass in carcasses:
            places = shims(carcass, room, envelope)
            count = sum(s.thickness >= LEAST_SHIM for s in places)
            if count:
                job.needs.append(HardwareNeed(SHIM, 2 * count, f"to level {carcass.name}"))
            job.findings += shim_findings(carcass.name, places, figures)
    for part in job.parts:
        check_panel(part.panel, part.full_name, JoineryRules())
    first = carcasses[0].box
    box = box_around(job.parts) if job.parts else Box(
        first.x0, first.y0, first.z0, first.x0, first.y0, first.z0)
    return Component(spec.name, tuple(job.parts), box, tuple(job.needs), tuple(job.findings))


@dataclass
class _Job:
    """The work on one set of fillers; parts, needs and findings grow as it goes."""

    spec: FillersSpec
    gaps: Gaps
    catalogue: Catalogue
    figures: Figures
    parts: list[Part] = field(default_factory=list)
    needs: list[HardwareNeed] = field(default_factory=list)
    findings: list[Finding] = field(default_factory=list)
    flat: tuple[Material, float] = field(init=False)

    def close_all(self, carcasses: Sequence[Component]) -> None:
        """Cover the gaps beside the outer carcasses and above all of them.

        All mouldings are the same, wide enough for the widest gap, so that they meet.
        """
        tops, top_lines = {}, {}
        for c in carcasses:
            line = self.gaps.top(c, c.box.x0, c.box.x1)
            tops[c.name] = self.choose(self.spec.top, line, Wall.TOP, c.name)
            top_lines[c.name] = line
        sides = []
        for wall, wanted, c in (
            (Wall.LEFT, self.spec.left, min(carcasses, key=lambda c: c.box.x0)),
            (Wall.RIGHT, self.spec.right, max(carcasses, key=lambda c: c.box.x1)),
        ):
            side = self.gaps.side(wall, c, tops[c.name] is not Cover.NONE)
            sides.append((wall, c, self.choose(wanted, side.line, wall, c.name), side))
        covered = [s.line for _, _, cover, s in sides if cover is Cover.MOULDING]
        covered += [top_lines[n] for n, cover in tops.items() if cover is Cover.MOULDING]
        if covered:
            self._take_moulding(covered)
        mitred: dict[tuple[str, Wall], tuple[float, float]] = {}
        for wall, c, cover, side in sides:
            if cover is Cover.STRIP:
                self._side_strip(wall, c, side)
            elif cover is Cover.MOULDING:
                mitre = None
                if tops[c.name] is Cover.MOULDING:
                    line = top_lines[c.name]
                    mitre = (line.first if wall is Wall.LEFT else line.last) + self._lap(line, c)
                    gap = side.line.last
                    mitred[c.name, wall] = gap, gap + self._lap(side.line, c)
                self._side_moulding(wall, c, side, mitre)
        for c in carcasses:
            if tops[c.name] is Cover.STRIP:
                self._top_strip(c, top_lines[c.name])
            elif tops[c.name] is Cover.MOULDING:
                self._top_moulding(c, mitred.get((c.name, Wall.LEFT)),
                                   mitred.get((c.name, Wall.RIGHT)))

    def choose(self, wanted: Cover, line: GapLine, wall: Wall, carcass: str) -> Cover:
        """What covers a gap; what cannot be covered well is said."""
        spec, where = self.spec, f"{carcass}, gap at the {wall.value}"
        if wanted is Cover.NONE or line.wide < LEAST_GAP:
            return Cover.NONE
        strip = line.narrow >= spec.least and line.wide <= spec.most
        room = widest(self.catalogue, spec.mouldings, spec.name) - spec.overlap - spec.scribe
        moulding = line.wide + line.spare <= room
        if wanted is Cover.STRIP:
            if line.narrow < LEAST_STRIP:
                raise ClosetError(
                    where, "width", f"{line.narrow:.1f} mm",
                    f"must be at least {LEAST_STRIP:g} mm for a strip; give it more clearance or "
                    "cover it with a moulding",
                )
            if not strip:
                self._doubt(where, line)
            return Cover.STRIP
        if strip and wanted is Cover.AUTO:
            return Cover.STRIP
        if moulding:
            return Cover.MOULDING
        self._doubt(where, line)
        return Cover.STRIP if wanted is Cover.AUTO and line.narrow >= spec.least else Cover.NONE

    def _doubt(self, where: str, line: GapLine) -> None:
        spec, form = self.spec, self.figures
        if line.wide > spec.most:
            advice, rule, source = (
                "wider than a filler usually is: make the carcass up to "
                f"{form.length(line.wide - spec.most)} larger", "filler-wide", AWS)
        else:
            advice, rule, source = (
                "too narrow for a strip to be scribed and fixed, and too wide for the mouldings: "
                f"give it {form.length(spec.least - line.narrow)} more clearance", "filler-narrow",
                "common practice, no published source")
        self.findings.append(Finding(
            Severity.WARNING, where, rule, advice, source,
            form.small_range(line.narrow, line.wide), form.small_range(spec.least, spec.most),
        ))

    def _board(self, carcass: Component) -> Material:
        key = self.spec.material or carcass.board or next(
            p.panel.material for p in carcass.parts if p.role is Role.SIDE)
        return self.catalogue.material(key, subject=self.spec.name)

    def _add(self, name: str, role: Role, panel: Panel, place: Place) -> None:
        self.parts.append(Part(name, self.spec.name, role, panel, place))
        strip = role is Role.FILLER
        self.needs.append(HardwareNeed(
            STRIP_SCREW if strip else MOULDING_NAIL, fastener_count(panel.length, SPACING),
            "fillers to carcasses" if strip else "mouldings",
        ))

    def _allowance(self, line: GapLine) -> float:
        return max(self.spec.scribe, line.spare)

    def _take_moulding(self, lines: Sequence[GapLine]) -> None:
        spec = self.spec
        needed = max(line.wide + self._allowance(line) for line in lines) + spec.overlap
        found = narrowest(self.catalogue, spec.mouldings, needed, spec.name)
        if found is None:
            raise ClosetError(
                spec.name, "mouldings", ", ".join(spec.mouldings) or "none",
                f"must have one that is {needed:.0f} mm wide or more for the widest gap; name "
                "one, or leave less clearance",
            )
        self.flat = found

    def _lap(self, line: GapLine, carcass: Component) -> float:
        """How far the moulding lies on the carcass: no further than its board is thick."""
        _, wide = self.flat
        return min(self._board(carcass).thickness, wide - line.wide - self._allowance(line))

    def _side_strip(self, wall: Wall, carcass: Component, side: SideGap) -> None:
        board, b, line = self._board(carcass), carcass.box, side.line
        width = line.wide
        # facing the front with the length up, the width runs to the left
        rim, x = (Rim.REAR, b.x0) if wall is Wall.LEFT else (Rim.FRONT, b.x1 + width)
        panel = Panel(
            side.high - side.low, width, board.thickness, board.key,
            Grain.LENGTH if board.grained else Grain.NONE,
            tapers=(Taper(rim, width - line.first, width - line.last, self._allowance(line)),),
        )
        place = Place((x, b.y0 + board.thickness, side.low), *FACING_UPRIGHT)
        self._add(f"{wall.value} filler", Role.FILLER, panel, place)

    def _side_moulding(
        self, wall: Wall, carcass: Component, side: SideGap, mitre: float | None
    ) -> None:
        """``mitre``: width of the moulding that it meets above."""
        b, line, (board, wide) = carcass.box, side.line, self.flat
        lap = self._lap(line, carcass)
        width = line.wide + lap
        left = wall is Wall.LEFT
        outer = Rim.REAR if left else Rim.FRONT
        tapers = [Taper(outer, line.wide - line.first, line.wide - line.last, wide - width)]
        if mitre is not None:
            first, last = _mitre(mitre, width, line.wide - line.last)
            tapers.append(Taper(Rim.END, first, last) if left else Taper(Rim.END, last, first))
        panel = Panel(
            side.high - side.low, width, board.thickness, board.key, Grain.LENGTH,
            tapers=tuple(tapers),
        )
        x = b.x0 + lap if left else b.x1 + line.wide
        self._add(f"{wall.value} moulding", Role.MOULDING, _as_wide_as(panel, wide),
                  Place((x, b.y0, side.low), *FACING_UPRIGHT))

    def _top_strip(self, carcass: Component, line: GapLine) -> None:
        board, b = self._board(carcass), carcass.box
        width = line.wide
        panel = Panel(
            b.x1 - b.x0, width, board.thickness, board.key,
            Grain.LENGTH if board.grained else Grain.NONE,
            tapers=(Taper(Rim.REAR, width - line.first, width - line.last,
                          self._allowance(line)),),
        )
        self._add(f"{carcass.name} top filler", Role.FILLER, panel,
                  Place((b.x0, b.y0 + board.thickness, b.z1), *FACING))

    def _top_moulding(
        self, carcass: Component, left: tuple[float, float] | None,
        right: tuple[float, float] | None,
    ) -> None:
        """``left``, ``right``: the gap there and the width of the moulding that it meets over
        it in a mitre; None for a square end."""
        b, (board, wide) = carcass.box, self.flat
        x0, x1 = b.x0 - (left[0] if left else 0.0), b.x1 + (right[0] if right else 0.0)
        line = self.gaps.top(carcass, x0, x1)
        lap = self._lap(line, carcass)
        width = line.wide + lap
        tapers = [Taper(Rim.REAR, line.wide - line.first, line.wide - line.last, wide - width)]
        tapers += [
            Taper(end, *_mitre(meets[1], width, line.wide - gap))
            for end, meets, gap in (
                (Rim.START, left, line.first), (Rim.END, right, line.last)
            ) if meets is not None
        ]
        panel = Panel(
            x1 - x0, width, board.thickness, board.key, Grain.LENGTH, tapers=tuple(tapers)
        )
        self._add(f"{carcass.name} top moulding", Role.MOULDING, _as_wide_as(panel, wide),
                  Place((x0, b.y0, b.z1 - lap), *FACING))

    def close_foot(self, carcass: Component) -> None:
        """A quarter round in front of the base, where the floor falls away under it."""
        spec, b = self.spec, carcass.box
        if not spec.rounds or spec.levelling is Levelling.SCRIBED:
            return
        fronts = [p.box() for p in carcass.parts if p.role in (Role.TOE_KICK, Role.BASE_FRAME)]
        front = min(fronts, key=lambda f: f.y0, default=b)
        gaps = [self.gaps.below(front.x0 + s * (front.x1 - front.x0), front.y0)
                for s in (0.0, 0.5, 1.0)]
        if max(gaps) < LEAST_GAP:
            return
        # it follows the floor, so that it only has to be higher than the widest gap
        found = narrowest(self.catalogue, spec.rounds, max(gaps) + 2.0, spec.name)
        if found is None:
            self.findings.append(Finding(
                Severity.WARNING, carcass.name, "foot-open",
                "the gap under the base is wider than the quarter rounds: scribe the base frame "
                "to the floor, or name a larger one", "common practice, no published source",
                self.figures.small(max(gaps)),
                self.figures.small(widest(self.catalogue, spec.rounds, spec.name)),
            ))
            return
        board, side = found
        panel = Panel(front.x1 - front.x0, side, board.thickness, board.key, Grain.LENGTH)
        self._add(f"{carcass.name} quarter round", Role.MOULDING, panel,
                  Place((front.x0, front.y0, -max(gaps)), *FACING))


def _as_wide_as(panel: Panel, wide: float) -> Panel:
    """The moulding with as much left on as makes it exactly as wide as it is sold.

    The points of its mitres reach a little further along the taper than its length.
    """
    for _ in range(4):
        slant, *mitres = panel.tapers
        slant = replace(slant, allowance=slant.allowance + wide - panel.cut_width)
        panel = replace(panel, tapers=(slant, *mitres))
    return panel


def _mitre(reach: float, width: float, inside: float) -> tuple[float, float]:
    """How far a mitre lies inside the end at the inner edge and at the far side of the
    rectangle: ``reach`` at the inner edge, nothing where the outer edge is, ``inside``."""
    return reach, -reach * inside / (width - inside)
