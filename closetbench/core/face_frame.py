"""The face frame: stiles, rails and mullions in front of a carcass.

Stiles run past the rails, rails past the mullions. The inner edges follow the carcass:
mullions stand in the middle of its dividers, the bottom rail ends level with the floor of
the bays, rails for shelves level with their tops. An end stile may reach to the wall with
an allowance to be scribed, in place of a filler.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum
from itertools import pairwise

from closetbench.core.component import (
    Component,
    bands_for,
    box_around,
    fastener_count,
    require,
)
from closetbench.core.envelope import Envelope, Wall
from closetbench.core.findings import Finding, Severity
from closetbench.core.inside import Site
from closetbench.core.joinery import JoineryRules, check_panel
from closetbench.core.materials import Catalogue, Material
from closetbench.core.panel import Face, Grain, Groove, Panel, Pocket, Rim, RimHole
from closetbench.core.parts import FACING, FACING_UPRIGHT, HardwareNeed, Part, Place, Role

POCKET_SCREW = "pocket_screw_4x32"
DOWEL = "dowel_8x40"
NAIL = "nail_18x40"
NAIL_SPACING = 200.0
DOWEL_ACROSS, DOWEL_LENGTH, DOWEL_PLAY = 8.0, 40.0, 2.0
"""mm; the play is what both holes of a dowel are longer together than it is, for the glue:
common practice, no published source."""
LEAST_BEHIND = 4.0
"""What stays of a member behind a dowel's hole across it, mm: common practice."""
TWO_FASTENERS = 32.0
"""A joint narrower than this has one pocket screw or dowel, else two, mm: common practice, no
published source."""
NARROWEST = 20.0


class FrameJoint(Enum):
    """How the members of a face frame are joined."""

    POCKET = "pocket screws"
    DOWEL = "dowels"
    HALF_LAP = "half lap"


class StileEnd(Enum):
    """Where an end stile ends."""

    FLUSH = "flush with the side"
    OVERHANG = "past the side"
    """By the frame's overhang."""
    WALL = "to the wall"
    """As far as the wall is at its farthest, with an allowance to be scribed."""


@dataclass(frozen=True)
class FaceFrameSpec:
    """A face frame in front of one carcass.

    ``name``: the component's name.
    ``carcass``: name of the carcass that it stands in front of.
    ``material``: key of the boards or sheets that its members are cut from.
    ``stile``: width of the stiles, at an end to the wall without what reaches past the side.
    ``top_rail``: height of the top rail.
    ``bottom_rail``: height of the bottom rail.
    ``mullion``: width of the mullions.
    ``shelf_rail``: height of a rail before each fixed shelf, 0 for none.
    ``left``: where the left stile ends.
    ``right``: where the right stile ends.
    ``overhang``: how far a stile reaches past the carcass's side.
    ``overhang_top``: how far the frame reaches past the carcass's top.
    ``scribe``: allowance for scribing an end stile to the wall.
    ``to_floor``: stiles run down to the floor, else to the bottom rail's lower edge.
    ``joint``: how the members are joined.
    ``band``: key of the edge band of their long edges, None for the material's own, "" for none.
    ``rules``: the joinery of its laps.
    """

    name: str
    carcass: str
    material: str = "pine_1x4"
    stile: float = 45.0
    top_rail: float = 60.0
    bottom_rail: float = 45.0
    mullion: float = 40.0
    shelf_rail: float = 0.0
    left: StileEnd = StileEnd.FLUSH
    right: StileEnd = StileEnd.FLUSH
    overhang: float = 6.0
    overhang_top: float = 0.0
    scribe: float = 10.0
    to_floor: bool = False
    joint: FrameJoint = FrameJoint.POCKET
    band: str | None = None
    rules: JoineryRules = field(default_factory=JoineryRules)


@dataclass
class _Member:
    """A stile, rail or mullion between its joints: x and z of its ends, its laps over what
    it meets (left and right, or below and above), and the cuts for what laps over it."""

    name: str
    role: Role
    x0: float
    x1: float
    z0: float
    z1: float
    laps: tuple[float, float] = (0.0, 0.0)
    cuts: list[Groove] = field(default_factory=list)
    rim_holes: list[RimHole] = field(default_factory=list)
    pockets: list[Pocket] = field(default_factory=list)

    @property
    def upright(self) -> bool:
        return self.role is not Role.RAIL


def build_face_frame(spec: FaceFrameSpec, site: Site, catalogue: Catalogue) -> Component:
    """The frame's members in the closet's frame; ``ClosetError`` for what cannot be built."""
    carcass, envelope = site.host(spec.carcass, spec.name), site.envelope
    board = catalogue.material(spec.material, subject=spec.name)
    _check(spec, carcass)
    members = _members(spec, carcass, envelope)
    if spec.joint is FrameJoint.HALF_LAP:
        _half_laps(spec, members, board)
    else:
        _butts(spec, members, board)
    parts = tuple(
        _part(spec, m, board, carcass.box.y0, catalogue) for m in members
    )
    needs = [HardwareNeed(
        NAIL, sum(fastener_count(p.panel.length, NAIL_SPACING) for p in parts),
        "face frame to the carcass",
    )]
    if spec.joint is not FrameJoint.HALF_LAP:
        key = POCKET_SCREW if spec.joint is FrameJoint.POCKET else DOWEL
        count = sum(len(m.pockets) for m in members)
        count += sum(len(m.rim_holes) for m in members) // 2
        needs.append(HardwareNeed(key, count, "joints of the face frame"))
    return Component(
        spec.name, parts, box_around(parts), tuple(needs),
        _findings(spec, parts, board, site), frames=carcass.name,
    )


def _check(spec: FaceFrameSpec, carcass: Component) -> None:
    dividers = [b.space.x0 - a.space.x1 for a, b in pairwise(carcass.bays)]
    narrowest = min(b.space.x1 - b.space.x0 for b in carcass.bays)
    side = carcass.bays[0].space.x0 - carcass.box.x0
    below = carcass.bays[0].space.z0 - carcass.box.z0
    require(spec.name, "width of the stiles", spec.stile, max(side, NARROWEST),
            side + narrowest / 3, "to cover the side's edge and leave an opening")
    if dividers:
        require(spec.name, "width of the mullions", spec.mullion, max(*dividers, NARROWEST),
                narrowest / 2, "to cover the dividers' edges and leave an opening")
    high = carcass.box.z1 - carcass.box.z0
    require(spec.name, "height of the top rail", spec.top_rail, NARROWEST, high / 4)
    require(spec.name, "height of the bottom rail", spec.bottom_rail, NARROWEST, below,
            "from the floor to the floor of the bays")
    if spec.shelf_rail:
        require(spec.name, "height of the shelf rails", spec.shelf_rail, NARROWEST, high / 8)
    for prop, value, most in (
        ("overhang", spec.overhang, spec.stile - side), ("scribe allowance", spec.scribe, 100.0),
        ("overhang at the top", spec.overhang_top, spec.top_rail),
    ):
        require(spec.name, prop, value, 0.0, most)


def _members(spec: FaceFrameSpec, carcass: Component, envelope: Envelope) -> list[_Member]:
    box, bays = carcass.box, [b.space for b in carcass.bays]
    z0 = bays[0].z0 - spec.bottom_rail
    z1 = box.z1 + spec.overhang_top
    ends = []
    for end, edge, out, wall, at in (
        (spec.left, box.x0, -1.0, Wall.LEFT, 0.0),
        (spec.right, box.x1, 1.0, Wall.RIGHT, envelope.width),
    ):
        over = spec.overhang if end is StileEnd.OVERHANG else 0.0
        inner = edge + out * (over - spec.stile)
        outer = edge + out * over
        if end is StileEnd.WALL:
            gap = max((g.value for g in envelope.gaps_at(wall)), default=0.0)
            outer = at + out * (gap + spec.scribe)
        ends.append((inner, outer))
    (left_in, left_out), (right_in, right_out) = ends
    foot = box.z0 if spec.to_floor else z0
    middles = [(a.x1 + b.x0) / 2 for a, b in pairwise(bays)]
    half = spec.mullion / 2
    low, high = bays[0].z0, z1 - spec.top_rail
    found = [
        _Member("left stile", Role.STILE, left_out, left_in, foot, z1),
        *(
            _Member(f"mullion {i}", Role.MULLION, x - half, x + half, low, high)
            for i, x in enumerate(middles, 1)
        ),
        _Member("right stile", Role.STILE, right_in, right_out, foot, z1),
        _Member("bottom rail", Role.RAIL, left_in, right_in, z0, low),
        _Member("top rail", Role.RAIL, left_in, right_in, high, z1),
    ]
    if spec.shelf_rail:
        edges = [left_in, *(v for x in middles for v in (x - half, x + half)), right_in]
        for i, (x0, x1) in enumerate(zip(edges[::2], edges[1::2], strict=True), 1):
            middle = (x0 + x1) / 2
            tops = sorted(
                b.z1 for p in carcass.parts if p.role is Role.FIXED_SHELF
                for b in (p.box(),) if b.x0 < middle < b.x1
            )
            found += [
                _Member(f"bay {i} rail {k}", Role.RAIL, x0, x1, z - spec.shelf_rail, z)
                for k, z in enumerate(tops, 1)
            ]
    return found


def fastener_places(width: float) -> tuple[float, ...]:
    """Where the pocket screws or dowels of a joint ``width`` mm wide sit, from one end of it."""
    return (width / 4, 3 * width / 4) if width >= TWO_FASTENERS else (width / 2,)


def _butts(spec: FaceFrameSpec, members: list[_Member], board: Material) -> None:
    """Pockets in the rear of rails and mullions, or holes for dowels in them and in what they
    butt against. A rail's ends meet uprights, a mullion's the bottom and the top rail."""
    rails = {m.name: m for m in members if m.name in ("bottom rail", "top rail")}
    for m in (m for m in members if m.role is not Role.STILE):
        if m.upright:
            ends = [(Rim.START, rails["bottom rail"]), (Rim.END, rails["top rail"])]
        else:
            ends = [
                (rim, next(u for u in members if u.upright and abs(
                    (u.x0 if rim is Rim.END else u.x1) - x) < 1e-6))
                for rim, x in ((Rim.START, m.x0), (Rim.END, m.x1))
            ]
        across = m.x1 - m.x0 if m.upright else m.z1 - m.z0
        for rim, meets in ends:
            for at in fastener_places(across):
                if spec.joint is FrameJoint.POCKET:
                    m.pockets.append(Pocket(meets.name, Face.LOWER, rim, at))
                else:
                    _dowel(m, rim, meets, at, board)


def _dowel(m: _Member, rim: Rim, meets: _Member, at: float, board: Material) -> None:
    """The two holes of a dowel, in a member's end and in the edge that it meets."""
    wide = meets.x1 - meets.x0 if meets.upright else meets.z1 - meets.z0
    total = DOWEL_LENGTH + DOWEL_PLAY
    # a hole from either edge must have room in a mullion
    most = wide / 2 - LEAST_BEHIND / 2 if meets.role is Role.MULLION else wide - LEAST_BEHIND
    cross = min(total / 2, most)
    level = board.thickness / 2
    m.rim_holes.append(RimHole("dowels", rim, at, level, DOWEL_ACROSS, total - cross))
    if m.upright:
        # a mullion's width runs to the left, a rail's length to the right
        along = m.x1 - at - meets.x0
        edge = Rim.REAR if rim is Rim.START else Rim.FRONT
    else:
        along = m.z0 + at - meets.z0
        edge = Rim.FRONT if rim is Rim.START else Rim.REAR
    meets.rim_holes.append(RimHole("dowels", edge, along, level, DOWEL_ACROSS, cross))


def _half_laps(spec: FaceFrameSpec, members: list[_Member], board: Material) -> None:
    """Lengthen rails and mullions by what they lap over, and cut what they lap over.

    Rails lap behind stiles and mullions, mullions behind the top and bottom rails: the rear
    half of what is in front is cut away, the front half of what is behind.
    """
    depth = board.thickness / 2
    uprights = [m for m in members if m.upright]
    outer = [m for m in members if m.name in ("top rail", "bottom rail")]
    for rail in (m for m in members if not m.upright):
        laps = []
        for x, rightward in ((rail.x0, False), (rail.x1, True)):
            at = next(m for m in uprights if abs((m.x0 if rightward else m.x1) - x) < 1e-6)
            lap = spec.stile if at.role is Role.STILE else spec.mullion / 2
            lap = min(lap, at.x1 - at.x0)
            rest = at.x1 - at.x0 - lap
            # an upright's width is measured from its right edge
            stops = (rest, 0.0) if rightward else (0.0, rest)
            at.cuts.append(Groove(
                rail.name, Face.LOWER, Rim.START, rail.z0 - at.z0, rail.z1 - rail.z0, depth, *stops
            ))
            laps.append(lap)
        rail.laps = (laps[0], laps[1])
    for mullion in (m for m in uprights if m.role is Role.MULLION):
        mullion.laps = (spec.bottom_rail, spec.top_rail)
        for rail in outer:
            start = rail.x0 - rail.laps[0]
            rail.cuts.append(Groove(
                mullion.name, Face.LOWER, Rim.START, mullion.x0 - start, mullion.x1 - mullion.x0,
                depth,
            ))
    for m in members:
        if m.laps == (0.0, 0.0):
            continue
        # what was cut into a mullion is measured from the end of its own lap
        if m.upright:
            m.cuts = [_shifted(c, m.laps[0]) for c in m.cuts]
        m.cuts += [
            Groove(f"{end} lap", Face.UPPER, rim, 0.0, lap, depth)
            for end, rim, lap in zip(
                ("first", "second"), (Rim.START, Rim.END), m.laps, strict=True)
        ]


def _shifted(cut: Groove, by: float) -> Groove:
    return Groove(
        cut.name, cut.face, cut.measured_from, cut.offset + by, cut.width, cut.depth,
        cut.stop_first, cut.stop_last,
    )


def _part(
    spec: FaceFrameSpec, member: _Member, board: Material, rear: float, catalogue: Catalogue
) -> Part:
    rims = (Rim.FRONT, Rim.REAR)
    x0, x1, z0, z1 = member.x0, member.x1, member.z0, member.z1
    if member.upright:
        z0, z1 = z0 - member.laps[0], z1 + member.laps[1]
        length, width = z1 - z0, x1 - x0
        place = Place((x1, rear, z0), *FACING_UPRIGHT)
    else:
        x0, x1 = x0 - member.laps[0], x1 + member.laps[1]
        length, width = x1 - x0, z1 - z0
        place = Place((x0, rear, z0), *FACING)
    if board.by_length:
        widest = max(s.width for s in board.sheets)
        require(f"{spec.name}: {member.name}", "width", width, 0.0, widest, f"from {board.title}")
    panel = Panel(
        length, width, board.thickness, board.key,
        Grain.LENGTH if board.grained else Grain.NONE, tuple(member.cuts),
        bands=bands_for(catalogue, board.key, spec.band, rims, spec.name),
        visible=frozenset(rims), rim_holes=tuple(member.rim_holes), pockets=tuple(member.pockets),
    )
    part = Part(member.name, spec.name, member.role, panel, place)
    check_panel(panel, part.full_name, spec.rules)
    return part


def _findings(
    spec: FaceFrameSpec, parts: tuple[Part, ...], board: Material, site: Site
) -> tuple[Finding, ...]:
    found, envelope, form = [], site.envelope, site.figures
    whole = box_around(parts)
    for end, wall, past in (
        (spec.left, Wall.LEFT, -whole.x0), (spec.right, Wall.RIGHT, whole.x1 - envelope.width)
    ):
        if end is StileEnd.WALL or past <= 1e-6:
            continue
        gap = min((g.value for g in envelope.gaps_at(wall)), default=0.0)
        found.append(Finding(
            Severity.WARNING if past > gap else Severity.NOTE, spec.name, "frame-past",
            f"reaches past the envelope at the {wall.value}: take less overhang, or have the "
            "stile scribed to the wall", "", form.small(past), f"{form.small(gap)} to the wall",
        ))
    front = whole.y0
    if front < -1e-6:
        found.append(Finding(
            Severity.NOTE, spec.name, "frame-proud",
            "stands out in front of the envelope: make the carcass shallower, or have it lie over "
            "the wall beside the opening on purpose", "", form.small(-front), "none",
        ))
    if StileEnd.WALL in (spec.left, spec.right):
        found.append(Finding(
            Severity.NOTE, spec.name, "scribe-stile",
            "its end stile is cut with an allowance: offer it up plumb, scribe it to the wall and "
            "plane it down before the frame is joined",
            "common practice, no published source", form.small(spec.scribe),
        ))
    if spec.joint is FrameJoint.POCKET and board.thickness < 17.0:
        found.append(Finding(
            Severity.WARNING, spec.name, "pocket-thin",
            "is too thin for the pocket screws in the list: they come out at the face",
            "common practice, no published source", form.small(board.thickness),
            f"at least {form.small(17.0)}",
        ))
    return tuple(found)
