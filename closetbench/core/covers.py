"""Strips and mouldings over gaps: which, how wide, where they end, how they meet.

A filler strip stands beside the carcass, flush with its front; a moulding lies on the front
edges of the carcass and reaches over to the wall. Both are as wide as the gap is, in one
straight piece or several, and are left wider on the wall's side by what is scribed away.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from closetbench.core.component import Component, fastener_count
from closetbench.core.envelope import Wall
from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.filler_specs import Cover, FillersSpec, Levelling
from closetbench.core.findings import Finding, Severity
from closetbench.core.gaps import Front, GapLine, Gaps, SideGap
from closetbench.core.materials import Catalogue, Material
from closetbench.core.panel import Box, Grain, Panel, Rim, Section, Taper
from closetbench.core.parts import FACING, FACING_UPRIGHT, HardwareNeed, Part, Place, Role
from closetbench.core.trim import narrowest, widest

STRIP_SCREW = "screw_4x30"
MOULDING_NAIL = "nail_16x25"
SPACING = 300.0
"""mm between screws of a strip and nails of a moulding: common practice, no published
source."""
LEAST_GAP = 1.0
"""mm: a gap this narrow all along is none to cover."""
LEAST_STRIP = 5.0
"""mm: no strip narrower than this can be sawn and held."""
AWS = "Architectural Woodwork Standards, edition 1 (2009), wall-to-wall details"
OPEN = 100.0
"""mm: a gap wider than this all along is no gap to be filled; common practice, no published
source."""
ROUND_LAP = 2.0
"""mm that a quarter round is larger than the gap it covers: common practice, no published
source."""
AT_WALL = 20.0
"""mm: a shelf that ends nearer to the envelope's side than this ends at the wall."""


@dataclass
class Covers:
    """The work on one set of fillers; parts, needs and findings grow as it goes."""

    spec: FillersSpec
    gaps: Gaps
    catalogue: Catalogue
    figures: Figures
    parts: list[Part] = field(default_factory=list)
    needs: list[HardwareNeed] = field(default_factory=list)
    findings: list[Finding] = field(default_factory=list)
    flat: tuple[Material, float] = field(init=False)

    def close_all(self, fronts: Sequence[Front]) -> None:
        """Cover the gaps beside the outer units and above all of them.

        All mouldings are the same, wide enough for the widest gap, so that they meet.
        """
        tops, top_lines = {}, {}
        for c in fronts:
            line = self.gaps.top(c, *self._run(c))
            wanted = self.spec.top if c.topped else Cover.NONE
            tops[c.name] = self.choose(wanted, line, Wall.TOP, c.name)
            top_lines[c.name] = line
        sides = []
        for wall, wanted, c in (
            (Wall.LEFT, self.spec.left, min(fronts, key=lambda c: c.box.x0)),
            (Wall.RIGHT, self.spec.right, max(fronts, key=lambda c: c.box.x1)),
        ):
            side = self.gaps.side(wall, c, tops[c.name] is not Cover.NONE)
            if wall in c.closed:
                self._leave_to_stile(wanted, wall, c)
                wanted = Cover.NONE
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
        for c in fronts:
            if tops[c.name] is Cover.STRIP:
                self._top_strip(c, top_lines[c.name])
            elif tops[c.name] is Cover.MOULDING:
                self._top_moulding(c, mitred.get((c.name, Wall.LEFT)),
                                   mitred.get((c.name, Wall.RIGHT)))

    def _leave_to_stile(self, wanted: Cover, wall: Wall, front: Front) -> None:
        """A stile that reaches to the wall is that side's filler: no other is made."""
        if wanted not in (Cover.AUTO, Cover.NONE):
            self.findings.append(Finding(
                Severity.NOTE, self.spec.name, "frame-covers",
                f"makes nothing at the {wall.value}: the stile in front of {front.name} reaches "
                "to the wall there", "", wanted.value, Cover.NONE.value,
            ))

    def choose(self, wanted: Cover, line: GapLine, wall: Wall, carcass: str) -> Cover:
        """What covers a gap; what cannot be covered well is said."""
        spec, where = self.spec, f"{carcass}, gap at the {wall.value}"
        if wanted is Cover.NONE or line.wide < LEAST_GAP:
            return Cover.NONE
        if wanted is Cover.AUTO and line.narrow > OPEN:
            return Cover.NONE  # so wide a gap is meant
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

    def _board(self, front: Front) -> Material:
        return self.catalogue.material(self.spec.material or front.board, subject=self.spec.name)

    def _run(self, front: Front) -> tuple[float, float]:
        """Where what lies above a unit starts and ends: over a stile it goes on to the wall."""
        b = front.box
        left, right = (
            self.gaps.beside(w, b, b.y0, b.z1) if w in front.closed else 0.0
            for w in (Wall.LEFT, Wall.RIGHT)
        )
        return b.x0 - left, b.x1 + right

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

    def _lap(self, line: GapLine, carcass: Front) -> float:
        """How far the moulding lies on the unit: no further than its edge is wide."""
        _, wide = self.flat
        return min(carcass.lap, wide - line.wide - self._allowance(line))

    def _side_strip(self, wall: Wall, carcass: Front, side: SideGap) -> None:
        board, b, line = self._board(carcass), carcass.box, side.line
        width = line.wide
        # facing the front with the length up, the width runs to the left
        rim, x = (Rim.REAR, b.x0) if wall is Wall.LEFT else (Rim.FRONT, b.x1 + width)
        panel = Panel(
            side.high - side.low, width, board.thickness, board.key,
            Grain.LENGTH if board.grained else Grain.NONE,
            tapers=(line.taper(rim, self._allowance(line)),),
        )
        place = Place((x, b.y0 + board.thickness, side.low), *FACING_UPRIGHT)
        self._add(f"{wall.value} filler", Role.FILLER, panel, place)

    def _side_moulding(
        self, wall: Wall, carcass: Front, side: SideGap, mitre: float | None
    ) -> None:
        """``mitre``: width of the moulding that it meets above."""
        b, line, (board, wide) = carcass.box, side.line, self.flat
        lap = self._lap(line, carcass)
        width = line.wide + lap
        left = wall is Wall.LEFT
        outer = Rim.REAR if left else Rim.FRONT
        tapers = [line.taper(outer, wide - width)]
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

    def _top_strip(self, carcass: Front, line: GapLine) -> None:
        board, b = self._board(carcass), carcass.box
        width, (x0, x1) = line.wide, self._run(carcass)
        panel = Panel(
            x1 - x0, width, board.thickness, board.key,
            Grain.LENGTH if board.grained else Grain.NONE,
            tapers=(line.taper(Rim.REAR, self._allowance(line)),),
        )
        self._add(f"{carcass.name} top filler", Role.FILLER, panel,
                  Place((x0, b.y0 + board.thickness, b.z1), *FACING))

    def _top_moulding(
        self, carcass: Front, left: tuple[float, float] | None,
        right: tuple[float, float] | None,
    ) -> None:
        """``left``, ``right``: the gap there and the width of the moulding that it meets over
        it in a mitre; None for a square end."""
        b, (board, wide) = carcass.box, self.flat
        x0, x1 = self._run(carcass)
        x0, x1 = x0 - (left[0] if left else 0.0), x1 + (right[0] if right else 0.0)
        line = self.gaps.top(carcass, x0, x1)
        lap = self._lap(line, carcass)
        width = line.wide + lap
        tapers = [line.taper(Rim.REAR, wide - width)]
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

    def _round_over(
        self, gap: float, subject: str, rule: str, advice: str
    ) -> tuple[Material, float] | None:
        """The smallest quarter round over a gap, and its size; None, and said, without one."""
        rounds, name = self.spec.rounds, self.spec.name
        found = narrowest(self.catalogue, rounds, gap + ROUND_LAP, name)
        if found is None:
            self.findings.append(Finding(
                Severity.WARNING, subject, rule, advice, "common practice, no published source",
                self.figures.small(gap),
                self.figures.small(max(0.0, widest(self.catalogue, rounds, name) - ROUND_LAP)),
            ))
        return found

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
        found = self._round_over(
            max(gaps), carcass.name, "foot-open",
            "the gap under the base is wider than the quarter rounds: scribe the base frame "
            "to the floor, or name a larger one",
        )
        if found is None:
            return
        # it lies along the floor, sloped as that is
        dx, dz = front.x1 - front.x0, gaps[0] - gaps[-1]
        length = math.hypot(dx, dz)
        along, across = (dx / length, 0.0, dz / length), (-dz / length, 0.0, dx / length)
        self._add(f"{carcass.name} quarter round", Role.MOULDING, quarter_round(found[0], length),
                  Place((front.x0, front.y0, -gaps[0]), along, across))

    def close_shelf(self, shelf: Component) -> None:
        """Quarter rounds on a shelf over everything, along the walls that it does not touch."""
        boards = [p.box() for p in shelf.parts if p.role is Role.OVER_SHELF]
        x0, x1 = min(b.x0 for b in boards), max(b.x1 for b in boards)
        box = Box(x0, boards[0].y0, boards[0].z0, x1, boards[0].y1, boards[0].z1)
        width = self.gaps.envelope.width
        behind = [self.gaps.behind(box, x0 + s * (x1 - x0), box.z1) for s in (0.0, 0.5, 1.0)]
        beside = {
            wall: [self.gaps.beside(wall, box, box.y0 + s * (box.y1 - box.y0), box.z1)
                   for s in (0.0, 0.5, 1.0)]
            for wall, away in ((Wall.LEFT, x0), (Wall.RIGHT, width - x1)) if away < AT_WALL
        }
        gaps = [g for found in (behind, *beside.values()) for g in found]
        if not self.spec.rounds or max(gaps) < LEAST_GAP:
            return
        found = self._round_over(
            max(gaps), shelf.name, "shelf-open",
            "the gap between the shelf and the walls is wider than the quarter rounds: scribe "
            "it to the walls, or name a larger one",
        )
        if found is None:
            return
        board, r = found
        left, right = beside.get(Wall.LEFT), beside.get(Wall.RIGHT)
        # each lies against its wall where that is nearest; in the corners they are mitred
        rear = box.y1 + min(behind)
        ends = (x0 - (min(left) if left else 0.0), x1 + (min(right) if right else 0.0))
        mitre = {True: (0.0, r)}
        self._add(
            f"{shelf.name} back quarter round", Role.MOULDING,
            quarter_round(board, ends[1] - ends[0], mitre.get(bool(right)), mitre.get(bool(left))),
            Place((ends[1], rear, box.z1), (-1.0, 0.0, 0.0), (0.0, -1.0, 0.0)),
        )
        length = rear - box.y0
        if left:
            self._add(f"{shelf.name} left quarter round", Role.MOULDING,
                      quarter_round(board, length, (0.0, r)),
                      Place((ends[0], rear, box.z1), (0.0, -1.0, 0.0), (1.0, 0.0, 0.0)))
        if right:
            self._add(f"{shelf.name} right quarter round", Role.MOULDING,
                      quarter_round(board, length, None, (0.0, r)),
                      Place((ends[1], box.y0, box.z1), (0.0, 1.0, 0.0), (-1.0, 0.0, 0.0)))


def quarter_round(
    board: Material, length: float, start: tuple[float, float] | None = None,
    end: tuple[float, float] | None = None,
) -> Panel:
    """A length of quarter round; ``start``, ``end``: its mitres, None for a square end."""
    tapers = [Taper(rim, *mitre) for rim, mitre in ((Rim.START, start), (Rim.END, end)) if mitre]
    return Panel(
        length, board.thickness, board.thickness, board.key, Grain.LENGTH, tapers=tuple(tapers),
        section=Section.QUARTER_ROUND,
    )


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
