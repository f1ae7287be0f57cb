"""Drawers: boxes sized to the slide, their joints, and their fronts.

Facing the closet, a box lies with its sides along the depth. Its width follows from the
opening and the slide's class, its length is that of the slide, its height what the front
or the opening leaves above and below.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from enum import Enum

from closetbench.core.component import Component, box_around, require
from closetbench.core.errors import ClosetError
from closetbench.core.findings import Finding, Severity
from closetbench.core.fixings import FASTENERS, longest_screw, shortest_screw
from closetbench.core.fronts import FrontKind, FrontSpec, front_part, front_spans, out_of_square
from closetbench.core.inside import Opening, Spot
from closetbench.core.joinery import JoineryRules, check_hole_row, check_panel
from closetbench.core.materials import Catalogue, Material
from closetbench.core.moves import Pull
from closetbench.core.panel import Face, Grain, Groove, HoleRow, Panel, Rim, Run
from closetbench.core.parts import FACING, LYING_DEEP, HardwareNeed, Part, Place, Role
from closetbench.core.skew import plumb
from closetbench.core.slides import LEAST_BOX, SlideClass

BOX_SCREW = "screw_4x40"
INTO_END, INTO_FRONT, BEHIND_FACE = 24.0, 6.0, 3.0
"""mm: how far a box's screws reach into an end at least, those of a front into it at least,
and what they stay short of its face: common practice, no published source."""


class BoxJoint(Enum):
    """How the front and the back of a box meet its sides."""

    BUTT = "butt, screwed"
    RABBET = "rabbet"
    TONGUE = "tongue and groove"


class BottomKind(Enum):
    """How the bottom of a box is held."""

    GROOVE = "in a groove all round"
    UNDER_BACK = "let in under the back"


@dataclass(frozen=True)
class DrawersSpec:
    """A bank of drawers, one above the other, in one opening.

    ``name``: the component's name.
    ``spot``: where it stands.
    ``count``: number of drawers of equal height.
    ``heights``: heights of the fronts from the bottom, one of them 0 to take what is left.
    ``slide``: key of a slide class.
    ``slide_length``: length of the slides, None takes the longest that fits.
    ``box_height``: height of the boxes' sides, None takes all that the slide leaves.
    ``box_material``: key of the boxes' board.
    ``bottom_material``: key of the bottoms' board.
    ``bottom_inset``: from the sides' lower edge to the bottom's groove.
    ``joint``: how front and back of a box meet its sides.
    ``bottom``: how the bottom is held.
    ``front``: the fronts.
    ``rules``: the joinery of the boxes.
    """

    name: str
    spot: Spot
    count: int = 1
    heights: tuple[float, ...] = ()
    slide: str = "side_mount"
    slide_length: float | None = None
    box_height: float | None = None
    box_material: str = "ply12"
    bottom_material: str = "ply6"
    bottom_inset: float = 10.0
    joint: BoxJoint = BoxJoint.RABBET
    bottom: BottomKind = BottomKind.GROOVE
    front: FrontSpec = field(default_factory=FrontSpec)
    rules: JoineryRules = field(default_factory=JoineryRules)


@dataclass(frozen=True)
class BoxSize:
    """Outer sizes and place of one drawer box: its front left bottom corner, mm."""

    x: float
    y: float
    z: float
    width: float
    length: float
    height: float


def build_drawers(spec: DrawersSpec, opening: Opening, catalogue: Catalogue) -> Component:
    """All boxes and fronts of a bank in the closet's frame; ``ClosetError`` for what cannot be."""
    slide = catalogue.slide(spec.slide, subject=opening.subject)
    spans = front_spans(spec.front, opening, spec.count, spec.heights)
    board = catalogue.material(spec.box_material, subject=opening.subject)
    groups: list[tuple[str, list[Part]]] = []
    for i, span in enumerate(spans, 1):
        name = f"drawer {i}" if len(spans) > 1 else "drawer"
        size = _box_size(spec, opening, slide, board, catalogue, span, name)
        maker = _BoxMaker(spec, size, board, catalogue, name, slide)
        group = maker.parts()
        if spec.front.kind is not FrontKind.NONE:
            group.append(front_part(
                spec.front, opening, catalogue, span, f"{name} front", spec.name
            ))
            group = _pulls_through(group, spec.rules)
        groups.append((name, group))
    parts = [p for _, group in groups for p in group]
    for part in parts:
        check_panel(part.panel, part.full_name, spec.rules)
    travel = slide.travel(size.length)
    return Component(
        spec.name, tuple(parts), box_around(parts),
        _hardware(spec, slide, size.length, len(spans), _screws(spec, board, opening, catalogue)),
        (*_findings(spec, slide, size.length, opening),
         *_screw_findings(spec, board, opening, catalogue)),
        moves=tuple(
            Pull(name, frozenset(p.name for p in group), tuple(p.box() for p in group), travel)
            for name, group in groups
        ),
    )


def _box_size(
    spec: DrawersSpec, opening: Opening, slide: SlideClass, board: Material,
    catalogue: Catalogue, span: tuple[float, float], name: str,
) -> BoxSize:
    subject = f"{opening.subject}, {name}"
    opening, span = plumb(spec.front.lean, spec.front.gap, opening, span)
    width = slide.outer_width(opening.width, board.thickness, subject)
    y = opening.box.y0 + spec.front.inset_by(opening, catalogue)
    free = opening.box.y1 - y
    length = slide.longest(free, subject)
    if spec.slide_length is not None:
        length = require(
            subject, "slide length", spec.slide_length, LEAST_BOX, free - slide.behind,
            f"in {free:.1f} mm of depth with {slide.behind:g} mm behind it",
        )
        if slide.lengths and min(abs(length - v) for v in slide.lengths) > 0.01:
            raise ClosetError(
                subject, "slide length", f"{length:g} mm",
                f"must be one of {', '.join(f'{v:g}' for v in slide.lengths)} mm",
            )
    low, high = max(span[0], opening.box.z0), min(span[1], opening.box.z1)
    most = high - low - slide.above - slide.below
    height = most if spec.box_height is None else spec.box_height
    require(subject, "height of the box", height, max(slide.height, 20.0), most,
            f"to cover the slide, with {slide.above:g} mm above and {slide.below:g} mm below")
    x = opening.box.x0 + (opening.width - width) / 2
    return BoxSize(x, y, low + slide.below, width, length, height)


@dataclass(frozen=True)
class _BoxMaker:
    """Makes the five parts of one box."""

    spec: DrawersSpec
    size: BoxSize
    board: Material
    catalogue: Catalogue
    name: str
    slide: SlideClass

    @property
    def t(self) -> float:
        return self.board.thickness

    @property
    def depth(self) -> float:
        return self.spec.rules.groove_depth(self.t, f"{self.spec.name}, {self.name}")

    @property
    def tongue(self) -> float:
        return self.depth - self.spec.rules.end_clearance

    @property
    def tongue_thickness(self) -> float:
        """Half the board, or as much as the bottom's groove leaves a web in."""
        return max(self.t / 2, self.depth + self.spec.rules.least_web * self.t)

    @property
    def bottom_inset(self) -> float:
        return max(self.spec.bottom_inset, self.slide.bottom_recess)

    @property
    def grain(self) -> Grain:
        return Grain.LENGTH if self.board.grained else Grain.NONE

    def parts(self) -> list[Part]:
        bottom = self.catalogue.material(self.spec.bottom_material, subject=self.spec.name)
        require(
            f"{self.spec.name}, {self.name}", "height of the box", self.size.height,
            self.bottom_inset + bottom.thickness + 15.0, float("inf"),
            "above the bottom and its inset",
        )
        groove = Groove(
            "bottom", Face.UPPER, Rim.FRONT, self.bottom_inset,
            self.spec.rules.groove_width(bottom.thickness), self.depth,
        )
        under = self.spec.bottom is BottomKind.UNDER_BACK
        left = self._side(groove)
        # under a back that ends above it the bottom slides in from the rear
        lift = self.bottom_inset + bottom.thickness if under else 0.0
        return [
            self._place("left side", left, self.size.x, 0.0, Role.BOX_SIDE),
            self._place(
                "right side", left.mirrored(), self.size.x + self.size.width - self.t, 0.0,
                Role.BOX_SIDE,
            ),
            self._cross("box front", Role.BOX_FRONT, (groove,), 0.0),
            self._cross("back", Role.BOX_BACK, () if under else (groove,), lift),
            self._bottom(bottom, under),
        ]

    def _side(self, groove: Groove) -> Panel:
        cuts = [groove]
        joint = self.spec.joint
        if joint is BoxJoint.RABBET:
            cuts += [Groove(n, Face.UPPER, rim, 0.0, self.t, self.depth)
                     for n, rim in (("box front", Rim.START), ("back", Rim.END))]
        elif joint is BoxJoint.TONGUE:
            width = self.spec.rules.groove_width(self.tongue_thickness)
            cuts += [Groove(n, Face.UPPER, rim, self.t - self.tongue_thickness, width, self.depth)
                     for n, rim in (("box front", Rim.START), ("back", Rim.END))]
        return Panel(
            self.size.length, self.size.height, self.t, self.board.key, self.grain, tuple(cuts)
        )

    def _place(self, name: str, panel: Panel, x: float, lift: float, role: Role) -> Part:
        place = Place((x, self.size.y, self.size.z + lift), *LYING_DEEP)
        return Part(f"{self.name} {name}", self.spec.name, role, panel, place)

    def _cross(self, name: str, role: Role, grooves: tuple[Groove, ...], lift: float) -> Part:
        """The box front or the back: facing, its UPPER face to the front of the closet."""
        reach = 0.0 if self.spec.joint is BoxJoint.BUTT else self.tongue
        front = role is Role.BOX_FRONT
        # the inside looks to the rear on the box front and to the front on the back
        inside = Face.LOWER if front else Face.UPPER
        cuts = [replace(g, face=inside) for g in grooves]
        if self.spec.joint is BoxJoint.TONGUE:
            cuts += [
                Groove("tongue", inside.other, rim, 0.0, reach, self.t - self.tongue_thickness)
                for rim in (Rim.START, Rim.END)
            ]
        length = self.size.width - 2 * self.t + 2 * reach
        height = self.size.height - lift
        holes: tuple[HoleRow, ...] = ()
        if front and self.spec.front.kind is not FrontKind.NONE:
            holes = self._front_holes(length, height)
        panel = Panel(
            length, height, self.t, self.board.key, self.grain, tuple(cuts), holes
        )
        rear = self.size.y + (self.t if front else self.size.length)
        place = Place(
            (self.size.x + (self.size.width - length) / 2, rear, self.size.z + lift), *FACING
        )
        return Part(f"{self.name} {name}", self.spec.name, role, panel, place)

    def _front_holes(self, length: float, height: float) -> tuple[HoleRow, ...]:
        """Oversize holes for the screws that hold the front and let it be aligned."""
        x = min(60.0, length / 4)
        y = self.bottom_inset + (height - self.bottom_inset) * 0.6
        return (HoleRow(
            "front screws", Face.UPPER, x, y, OVERSIZE_HOLE, self.t, 2, length - 2 * x, Run.LENGTH
        ),)

    def _bottom(self, board: Material, under: bool) -> Part:
        reach = self.tongue
        width = self.size.width - 2 * self.t + 2 * reach
        y0 = self.t - reach
        y1 = self.size.length if under else self.size.length - self.t + reach
        grain = Grain.LENGTH if board.grained else Grain.NONE
        panel = Panel(y1 - y0, width, board.thickness, board.key, grain)
        # length runs into the depth, width to the left, so that thickness points up
        place = Place(
            (
                self.size.x + self.t - reach + width, self.size.y + y0,
                self.size.z + self.bottom_inset,
            ),
            (0.0, 1.0, 0.0), (-1.0, 0.0, 0.0),
        )
        return Part(f"{self.name} bottom", self.spec.name, Role.BOX_BOTTOM, panel, place)


OVERSIZE_HOLE, OVERSIZE_FOR = 8.0, 4.0
"""mm: holes in the box front for 4 mm screws with washers, so that the front can be moved 2 mm
each way: common practice, no published source."""


def _pulls_through(group: list[Part], rules: JoineryRules) -> list[Part]:
    """The parts of a drawer with the holes of its front's pulls in the box front too, so that
    pulls can be fastened from inside the box; none where a hole would meet a groove."""
    front = group[-1]
    at = next(i for i, p in enumerate(group) if p.role is Role.BOX_FRONT)
    box = group[at]
    dx, dz = (front.place.origin[i] - box.place.origin[i] for i in (0, 2))
    panel = box.panel
    for row in front.panel.holes:
        behind = replace(row, x=row.x + dx, y=row.y + dz, depth=panel.thickness)
        try:
            check_hole_row(panel, behind, box.full_name, rules)
        except ClosetError:
            continue
        panel = replace(panel, holes=(*panel.holes, behind))
    return [replace(p, panel=panel) if i == at else p for i, p in enumerate(group)]


def _screws(
    spec: DrawersSpec, board: Material, opening: Opening, catalogue: Catalogue
) -> tuple[str, str | None]:
    """Keys of the screws of boxes and of fronts, by what they go through and into; None
    where no screw is short enough for the fronts."""
    keys, t = catalogue.hardware, board.thickness
    box = shortest_screw(keys, t + INTO_END) or BOX_SCREW
    if spec.front.kind is FrontKind.NONE:
        return box, None
    front = catalogue.material(spec.front.board(opening), subject=opening.subject).thickness
    found = longest_screw(keys, t + front - BEHIND_FACE, OVERSIZE_FOR)
    short = found is None or FASTENERS[found].length < t + INTO_FRONT
    return box, None if short else found


def _screw_findings(
    spec: DrawersSpec, board: Material, opening: Opening, catalogue: Catalogue
) -> tuple[Finding, ...]:
    if spec.front.kind is FrontKind.NONE or _screws(spec, board, opening, catalogue)[1]:
        return ()
    front = catalogue.material(spec.front.board(opening), subject=opening.subject).thickness
    form = opening.figures
    most = board.thickness + front - BEHIND_FACE
    return (Finding(
        Severity.WARNING, spec.name, "front-screws",
        "no screw of the catalogue holds in its fronts without coming out at their faces: add one "
        "to your catalogue, or take thicker fronts", "common practice, no published source",
        f"{form.small(front)} thick",
        f"{form.small(board.thickness + INTO_FRONT)} to {form.small(most)} long",
    ),)


def _hardware(
    spec: DrawersSpec, slide: SlideClass, length: float, count: int,
    screws: tuple[str, str | None],
) -> tuple[HardwareNeed, ...]:
    needs = [HardwareNeed(screws[0], 8 * count, "drawer boxes")]
    if slide.lengths:
        needs.append(HardwareNeed(slide.hardware_key(length), 2 * count, slide.title))
    if spec.front.kind is not FrontKind.NONE:
        if screws[1]:
            needs.append(HardwareNeed(screws[1], 2 * count, "fronts to drawer boxes"))
        if spec.front.pulls:
            needs.append(HardwareNeed(
                "pull", spec.front.pulls * count, "drawer fronts and the boxes behind them"))
    return tuple(needs)


def _findings(
    spec: DrawersSpec, slide: SlideClass, length: float, opening: Opening
) -> tuple[Finding, ...]:
    found, form = [], opening.figures
    if max(opening.packing) > 0:
        left, right = opening.packing
        found.append(Finding(
            Severity.NOTE, spec.name, "slide-packing",
            f"the slides lie behind a face frame: pack them out by {form.small(left)} at the left "
            f"and {form.small(right)} at the right, flush with the frame's edges",
            "common practice, no published source",
        ))
    if spec.front.lean.any:
        found.append(out_of_square(spec.name, "shim the slides plumb and parallel"))
    if "memory" in slide.source:
        found.append(Finding(
            Severity.WARNING, spec.name, "slide-sheet",
            f"the figures of the {slide.title} are no maker's: enter the sheet of the slide in "
            "hand as a class of your own before cutting", slide.source,
        ))
    reach = slide.travel(length)
    if slide.lengths and slide.extension < 1.0:
        found.append(Finding(
            Severity.NOTE, spec.name, "partial-extension",
            f"the drawers pull out {form.length(reach)} of {form.length(length)}; the rear stays "
            "inside",
        ))
    return tuple(found)


