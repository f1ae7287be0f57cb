"""The figures of one carcass that its parts share, worked out once."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property

from closetbench.core.component import bands_for, require
from closetbench.core.errors import ClosetError
from closetbench.core.figures import Figures
from closetbench.core.joinery import JoineryRules, Joint
from closetbench.core.materials import Catalogue, Material
from closetbench.core.panel import Band, Grain, Rim
from closetbench.core.specs import BackKind, BaseKind, CarcassSpec, TopKind

LEAST_OPENING = 80.0
"""The narrowest bay: a hand must get in (common practice, no published source), mm."""

REAR_PLAY = 0.5
"""How far dividers and shelves stay clear of a back in its groove, mm."""

BEHIND_LIP = 10.0
"""How far behind a shelf's lip its grooves stop, mm: common practice, no published source."""
MOST_LIP = 150.0

SCREW = "screw_4x50"
NAIL = "nail_20x50"
PIN = "shelf_pin_5"
PINS = "shelf pins"
"""What the rows of holes are called."""
SHORT_SCREW = "screw_4x30"
BACK_SCREW = "screw_35x16"


@dataclass(frozen=True)
class Vertical:
    """A side or a divider: left face at ``x``, from ``z0`` to ``z1``, ``depth`` deep."""

    index: int
    name: str
    is_side: bool
    x: float
    z0: float
    z1: float
    depth: float


@dataclass(frozen=True)
class Frame:
    """Outer sizes and everything that follows from them, in the carcass's own frame."""

    spec: CarcassSpec
    catalogue: Catalogue
    board: Material
    width: float
    height: float
    depth: float
    band: tuple[Band, ...]
    stop: float
    figures: Figures = field(default_factory=Figures)

    @property
    def rules(self) -> JoineryRules:
        """The joinery rules in force."""
        return self.spec.rules

    @property
    def t(self) -> float:
        """Measured thickness of the carcass board."""
        return self.board.thickness

    @property
    def grain(self) -> Grain:
        """Grain of every carcass panel: along its length, if the board has any."""
        return Grain.LENGTH if self.board.grained else Grain.NONE

    @property
    def let_in(self) -> bool:
        """Whether bottom, top and dividers stand in grooves."""
        return self.spec.joint is Joint.GROOVE

    @cached_property
    def groove_depth(self) -> float:
        """Depth of every groove in the carcass board."""
        return self.rules.groove_depth(self.t, self.spec.name)

    @property
    def tongue(self) -> float:
        """What a panel reaches into a groove."""
        return self.rules.tongue(self.t, self.spec.name)

    @cached_property
    def back(self) -> Material | None:
        """The back's board, None where there is no back panel."""
        if self.spec.back.kind is not BackKind.PANEL:
            return None
        key = self.spec.back.material or self.spec.material
        board = self.catalogue.material(key, subject=self.spec.name)
        require(
            self.spec.name, "inset of the back", self.spec.back.inset, 3.0,
            self.depth / 2 - board.thickness,
        )
        return board

    @cached_property
    def lip(self) -> Material | None:
        """The board of the shelves' lips, None where they have none."""
        spec = self.spec.shelf_lip
        if not spec.height:
            return None
        subject = self.spec.name
        board = self.catalogue.material(spec.material or self.spec.material, subject=subject)
        widest = max(max(s.length, s.width) for s in board.sheets)
        if board.by_length:
            widest = max(s.width for s in board.sheets)
        require(
            subject, "height of the shelves' lip", spec.height, self.t, min(MOST_LIP, widest),
            f"to cover the shelf's edge, from {board.title}",
        )
        rear = self.spec.drill.setback + board.thickness
        if any(b.adjustable for b in self.spec.bays):
            room = self.spec.drill.front - self.spec.drill.diameter
            require(subject, "rear face of a loose shelf's lip", rear, 0.0, room,
                    "from the front, to clear the pins")
        return board

    @property
    def lip_thickness(self) -> float:
        """How much less deep than the carcass a shelf is for its lip."""
        return self.lip.thickness if self.lip else 0.0

    @property
    def hang(self) -> float:
        """How far a lip hangs below its shelf."""
        return self.spec.shelf_lip.height - self.t if self.lip else 0.0

    @property
    def shelf_stop(self) -> float:
        """How far shelves' grooves stay back from the front edge: behind a lip, if there is
        one, so that none shows beside it."""
        return max(self.stop, self.lip_thickness + BEHIND_LIP) if self.lip else self.stop

    @cached_property
    def shelf_bands(self) -> tuple[Band, ...]:
        """The bands of the shelves' front edges."""
        if self.lip:
            return ()
        key = self.spec.shelf_band
        if key is None:
            return self.band
        return bands_for(self.catalogue, self.spec.material, key, (Rim.FRONT,), self.spec.name)

    @property
    def z_bottom(self) -> float:
        """Underside of the bottom."""
        return 0.0 if self.spec.base.kind is BaseKind.NONE else self.spec.base.height

    @property
    def z_floor(self) -> float:
        """Floor of the bays."""
        return self.z_bottom + self.t

    @property
    def z_ceiling(self) -> float:
        """Ceiling of the bays."""
        return self.height if self.spec.top is TopKind.NONE else self.height - self.t

    @property
    def y_inside(self) -> float:
        """Depth of the bays: to the back's front face, or to the rear."""
        if self.back is None:
            return self.depth
        return self.depth - self.spec.back.inset - self.back.thickness

    @property
    def y_panel(self) -> float:
        """Depth of what stands or lies in front of the back: dividers and shelves."""
        return self.depth if self.back is None else self.y_inside - REAR_PLAY

    @cached_property
    def openings(self) -> tuple[tuple[float, float], ...]:
        """Left and right end of each bay's clear opening."""
        spec, bays = self.spec, self.spec.bays
        free = self.width - (len(bays) + 1) * self.t
        given = sum(b.width for b in bays if b.width is not None)
        sharing = sum(1 for b in bays if b.width is None)
        if not sharing and abs(given - free) > 1e-6:
            raise ClosetError(
                spec.name, "sum of the bay widths", f"{given:g} mm",
                f"must be the {free:g} mm between the sides, or leave one bay's width open",
            )
        share = (free - given) / sharing if sharing else 0.0
        found, x = [], self.t
        for i, bay in enumerate(bays, 1):
            width = share if bay.width is None else bay.width
            if not width >= LEAST_OPENING:
                raise ClosetError(
                    f"{spec.name}, bay {i}", "width", f"{width:g} mm",
                    f"must be at least {LEAST_OPENING:g} mm to hold a shelf; {free:g} mm lie "
                    f"between the sides for {len(bays)} bays",
                )
            found.append((x, x + width))
            x += width + self.t
        return tuple(found)

    @cached_property
    def verticals(self) -> tuple[Vertical, ...]:
        """Left side, dividers from the left, right side."""
        spec = self.spec
        side0 = spec.base.height if spec.base.kind is BaseKind.FRAME else 0.0
        over = spec.top is TopKind.OVER
        side1 = self.height - self.t if over else self.height
        sink = self.tongue if self.let_in else 0.0
        rise = sink if spec.top is TopKind.BETWEEN else 0.0
        last = len(self.openings)
        found = [Vertical(0, "left side", True, 0.0, side0, side1, self.depth)]
        found += [
            Vertical(
                i, f"divider {i}", False, self.openings[i - 1][1],
                self.z_floor - sink, self.z_ceiling + rise, self.y_panel,
            )
            for i in range(1, last)
        ]
        found.append(Vertical(
            last, "right side", True, self.width - self.t, side0, side1, self.depth
        ))
        return tuple(found)
