"""The whole design: readings and components in, parts, hardware and findings out."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from functools import lru_cache

from closetbench.core.access import Access
from closetbench.core.anchoring import FreeUnit
from closetbench.core.bench import BenchSpec
from closetbench.core.bench_strength import Bench
from closetbench.core.bodies import Body, LengthPart
from closetbench.core.borings import blocked_finding, drill
from closetbench.core.carcass import build_carcass
from closetbench.core.checks import run_checks
from closetbench.core.circumstances import Circumstances
from closetbench.core.component import Component, Space
from closetbench.core.conflicts import conflict_findings
from closetbench.core.contents import HOSTING, Contents, build_inside
from closetbench.core.envelope import Clearances, Envelope, Objective, fit_envelope
from closetbench.core.errors import ClosetError
from closetbench.core.existing import ExistingSpec, fitted
from closetbench.core.face_frame import FaceFrameSpec
from closetbench.core.figures import Figures
from closetbench.core.fillers import Around, FillersSpec, Levelling, build_fillers
from closetbench.core.findings import Finding, Severity
from closetbench.core.goes_in import access_findings
from closetbench.core.handling import part_weight as part_weight
from closetbench.core.inside import Site
from closetbench.core.joinery import JoineryRules
from closetbench.core.kept import take_out_reused, with_kept
from closetbench.core.levelling import scribe_base
from closetbench.core.materials import Catalogue
from closetbench.core.meeting import meeting_findings, room_blocks
from closetbench.core.parts import HardwareNeed, Part, Role
from closetbench.core.returns import dead_space_findings
from closetbench.core.rods_strength import Rod
from closetbench.core.room import Room, build_room
from closetbench.core.scribing import stiles_to_walls, walls_reached
from closetbench.core.single import build_panel
from closetbench.core.specs import CarcassSpec, PanelSpec
from closetbench.core.survey import Survey
from closetbench.core.wall_shelves import OverShelfSpec

WIDEST_GAP = 38.1
"""mm: fillers and scribes up to 1-1/2 in, Architectural Woodwork Standards, edition 1."""

DOUBTED = ("readings-rival", "readings-disagree", "reading-wrong")
"""Rules on readings that may be why something does not fit."""

Spec = CarcassSpec | PanelSpec | Contents | FillersSpec
"""Everything that a closet may hold, as the user specifies it."""

PANEL_SPACING = 300.0
"""mm between the closet, a single panel in front of it and the next one."""


@dataclass(frozen=True)
class ClosetDesign:
    """What the user has decided. Without a survey, ``size`` (width, depth, height) stands
    for the envelope. ``depth_limit``: how deep the envelope is to go at most;
    ``objective``: what of it is to be largest. ``circumstances``: what the checks are to
    reckon with."""

    name: str
    survey: Survey | None = None
    clearances: Clearances = field(default_factory=Clearances)
    size: tuple[float, float, float] | None = None
    depth_limit: float | None = None
    components: tuple[Spec, ...] = ()
    circumstances: Circumstances = field(default_factory=Circumstances)
    objective: Objective = Objective.WIDTH


@dataclass(frozen=True)
class Closet:
    """What follows. Parts lie in the envelope's frame. ``fastening``: what holds the closet
    to the wall; ``access``: how each piece goes in."""

    design: ClosetDesign
    room: Room | None
    envelope: Envelope
    components: tuple[Component, ...]
    findings: tuple[Finding, ...]
    fastening: tuple[HardwareNeed, ...] = ()
    access: tuple[Access, ...] = ()

    @property
    def parts(self) -> tuple[Part, ...]:
        """Every part to be cut from boards, of every component, in order."""
        return tuple(p for c in self.components for p in c.parts)

    @property
    def reused(self) -> tuple[Part, ...]:
        """Every part to be cut from a panel kept from an existing piece."""
        return tuple(p for c in self.components for p in c.reused)

    @property
    def lengths(self) -> tuple[LengthPart, ...]:
        """Every piece to be cut from a bar."""
        return tuple(p for c in self.components for p in c.lengths)

    @property
    def bodies(self) -> tuple[Body, ...]:
        """Everything that takes space, to be cut or not."""
        return tuple(b for c in self.components for b in c.bodies)

    @property
    def hardware(self) -> tuple[HardwareNeed, ...]:
        """All hardware and fastening, equal needs of one purpose added up."""
        total: dict[tuple[str, str], int] = {}
        inner = (h for c in self.components for h in c.hardware)
        for need in (*inner, *self.fastening):
            total[need.key, need.purpose] = total.get((need.key, need.purpose), 0) + need.count
        return tuple(HardwareNeed(k, n, why) for (k, why), n in total.items() if n)


def build_envelope(
    design: ClosetDesign, figures: Figures | None = None
) -> tuple[Room | None, Envelope]:
    """The room and the envelope of a design, or the envelope of the given size."""
    if design.survey is not None:
        return _surveyed(
            design.survey, design.clearances, design.depth_limit, design.objective, figures)
    if design.size is None:
        raise ClosetError(
            design.name, "survey", "missing", "enter the readings, or a width, depth and height"
        )
    for name, value in zip(("width", "depth", "height"), design.size, strict=True):
        if not 0 < value < 20000:
            raise ClosetError(design.name, name, f"{value:g} mm", "must be above 0 and below 20 m")
    width, depth, height = design.size
    return None, Envelope(width, depth, height)


@lru_cache(maxsize=16)
def _surveyed(
    survey: Survey, clearances: Clearances, depth_limit: float | None, objective: Objective,
    figures: Figures | None,
) -> tuple[Room, Envelope]:
    """Remembered, since the room stays as it is while the closet in it is changed."""
    room = build_room(survey, figures)
    return room, fit_envelope(room, clearances, depth_limit, objective)


def build_closet(
    design: ClosetDesign, catalogue: Catalogue, figures: Figures | None = None
) -> Closet:
    """The closet that a design comes to; ``figures`` prints those of its findings.

    Carcasses stand from left to right in the order given; what is inside them comes after
    them; single panels lie in front of the closet. Raises ``ClosetError`` for the first
    thing that cannot be built.
    """
    room, envelope = build_envelope(design, figures)
    names = [c.name for c in design.components]
    for name in names:
        if not name.strip() or names.count(name) > 1:
            raise ClosetError(
                design.name, "name of a component", f"'{name}'",
                "must be given and must differ from every other's",
            )
    try:
        components = _components(design, room, envelope, catalogue, figures)
    except ClosetError as error:
        doubt = next((f for f in room.findings if f.rule in DOUBTED), None) if room else None
        if doubt is None:
            raise
        raise type(error)(
            error.subject, error.prop, error.value,
            f"{error.limit}; but look at the readings first: {doubt.message}",
        ) from error
    blocked, access = access_findings(components, room, envelope, figures)
    findings = [
        *(room.findings if room else ()),
        *_gap_findings(envelope, figures or Figures()),
        *(f for c in components for f in c.findings),
        *conflict_findings(components),
        *meeting_findings(components, room_blocks(room, envelope), figures),
        *dead_space_findings(components, room, envelope, figures),
        *blocked,
        *_board_findings(
            [p for c in components for p in c.parts], catalogue, figures or Figures()),
    ]
    closet = Closet(
        design, room, envelope, components, tuple(findings), access=access
    )
    checked = run_checks(closet, catalogue, _circumstances(closet), figures)
    return replace(
        closet, findings=closet.findings + checked.findings, fastening=checked.hardware
    )


def _components(
    design: ClosetDesign, room: Room | None, envelope: Envelope, catalogue: Catalogue,
    figures: Figures | None,
) -> tuple[Component, ...]:
    """Every component, in the design's order: carcasses are built first, then what stands
    in them or beside them, fillers last."""
    built: dict[str, Component] = {}
    pieces = [c for c in design.components if isinstance(c, ExistingSpec)]
    catalogue = with_kept(catalogue, pieces)
    site, ahead = Site(envelope, figures=figures or Figures()), PANEL_SPACING
    for spec in sorted(design.components, key=_rank):
        if isinstance(spec, CarcassSpec):
            space = Space(site.free, envelope.width - site.free, envelope.depth, envelope.height)
            component = build_carcass(
                fitted(spec, pieces, catalogue), space, catalogue, site.figures)
        elif isinstance(spec, PanelSpec):
            component = _in_front(build_panel(spec, catalogue), ahead)
            ahead = -component.box.y0 + PANEL_SPACING
        elif isinstance(spec, FillersSpec):
            component = _close_gaps(
                spec, built, design, room, envelope, catalogue, figures
            )
        else:
            component = build_inside(spec, site, catalogue)
            if isinstance(spec, FaceFrameSpec) and room is not None:
                component = stiles_to_walls(component, spec, room, envelope, catalogue)
        built[spec.name] = component
        site = site.with_(component)
    _bore(built, design.components, figures or Figures())
    return take_out_reused([built[spec.name] for spec in design.components], pieces)


def _bore(built: dict[str, Component], specs: Iterable[Spec], figures: Figures) -> None:
    """Drill what components want in others; what cannot be drilled is a finding of the one
    that wants it."""
    rules = {s.name: s.rules for s in specs if isinstance(s, CarcassSpec)}
    for name, component in list(built.items()):
        for host in dict.fromkeys(b.host for b in component.borings):
            wanted = [b for b in component.borings if b.host == host]
            parts, blocked = drill(
                built[host].parts, wanted, rules.get(host, JoineryRules()))
            built[host] = replace(built[host], parts=parts)
            built[name] = replace(built[name], findings=(
                *built[name].findings, *(blocked_finding(name, b, figures) for b in blocked)))


def _close_gaps(
    spec: FillersSpec, built: dict[str, Component], design: ClosetDesign, room: Room | None,
    envelope: Envelope, catalogue: Catalogue, figures: Figures | None,
) -> Component:
    """The fillers; bases that are scribed take the place of those that are not."""
    names = [c.name for c in design.components if isinstance(c, CarcassSpec)]
    carcasses = [built[n] for n in names]
    frames = [c for c in design.components if isinstance(c, FaceFrameSpec)]
    around = Around(
        tuple(built[f.name] for f in frames), {f.name: walls_reached(f) for f in frames},
        tuple(built[c.name] for c in design.components
              if isinstance(c, BenchSpec) and c.spot is None),
        tuple(built[c.name] for c in design.components if isinstance(c, OverShelfSpec)),
    )
    found = build_fillers(spec, carcasses, room, envelope, catalogue, figures, around)
    if spec.levelling is Levelling.SCRIBED and room is not None:
        for name in names:
            built[name] = scribe_base(built[name], room, envelope, spec.scribe)
    return found


def _rank(spec: Spec) -> int:
    """Carcasses first, then what others stand in or behind, then the rest, then fillers."""
    if isinstance(spec, FillersSpec):
        return len(HOSTING) + 2
    return 0 if isinstance(spec, CarcassSpec) else HOSTING.get(type(spec), len(HOSTING) + 1)


def _circumstances(closet: Closet) -> Circumstances:
    """What is known about the place, with the closet's own rods, benches and pieces."""
    known = closet.design.circumstances
    own = [item for c in closet.components for item in c.checked]
    return replace(
        known,
        rods=(*known.rods, *(i for i in own if isinstance(i, Rod))),
        benches=(*known.benches, *(i for i in own if isinstance(i, Bench))),
        units=(*known.units, *(i for i in own if isinstance(i, FreeUnit))),
    )


def _in_front(component: Component, ahead: float) -> Component:
    """A single panel moved ``ahead`` mm in front of the closet, where it hides nothing."""
    part = component.parts[0]
    part = replace(part, place=part.place.moved(0.0, -ahead - component.box.y1, 0.0))
    return replace(component, parts=(part,), box=part.box())


def _gap_findings(envelope: Envelope, figures: Figures) -> list[Finding]:
    return [
        Finding(
            Severity.NOTE, "envelope", "gap-wide",
            f"the gap at the {wall.value} is wider than a scribed filler usually covers",
            "Architectural Woodwork Standards, edition 1 (2009), wall-to-wall details",
            figures.small(widest), figures.length(WIDEST_GAP),
        )
        for wall in dict.fromkeys(g.wall for g in envelope.gaps)
        if (widest := max(g.value for g in envelope.gaps_at(wall))) > WIDEST_GAP
    ]


def _board_findings(
    parts: Sequence[Part], catalogue: Catalogue, figures: Figures
) -> list[Finding]:
    found: list[Finding] = []
    # a moulding fits in nothing, so its thickness need not be measured
    fitted = (p for p in parts if p.role is not Role.MOULDING)
    for key in dict.fromkeys(p.panel.material for p in fitted):
        found += catalogue.material(key).findings(figures.fine)
    if parts:
        found += catalogue.findings()
    return found
