"""End stiles of a face frame cut to the walls as they stand, in place of fillers."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from closetbench.core.component import Component, box_around, require
from closetbench.core.envelope import Envelope, Wall
from closetbench.core.face_frame import FaceFrameSpec, StileEnd
from closetbench.core.gaps import Front, Gaps
from closetbench.core.joinery import check_panel
from closetbench.core.materials import Catalogue
from closetbench.core.panel import Rim
from closetbench.core.parts import Part
from closetbench.core.room import Room


def walls_reached(spec: FaceFrameSpec) -> frozenset[Wall]:
    """The walls that its end stiles reach to, so that no filler is wanted there."""
    ends = ((Wall.LEFT, spec.left), (Wall.RIGHT, spec.right))
    return frozenset(wall for wall, end in ends if end is StileEnd.WALL)


def stiles_to_walls(
    frame: Component, spec: FaceFrameSpec, room: Room, envelope: Envelope, catalogue: Catalogue
) -> Component:
    """The frame with the stiles that reach to a wall tapered as the gap there is, and so much
    left on as is scribed away.

    A stile with laps or dowel holes keeps its rectangle, which is as wide as the widest gap
    takes. Raises ``ClosetError`` where a board is too narrow.
    """
    gaps = Gaps(room, envelope)
    names = {wall: f"{wall.value} stile" for wall in walls_reached(spec)}
    parts = {
        part.name: _scribed(part, wall, spec, gaps, catalogue)
        for wall, part in _plain(frame, names)
    }
    if not parts:
        return frame
    found = tuple(parts.get(p.name, p) for p in frame.parts)
    return replace(frame, parts=found, box=box_around(found))


def _plain(frame: Component, names: dict[Wall, str]) -> Iterator[tuple[Wall, Part]]:
    for wall, name in names.items():
        part = next(p for p in frame.parts if p.name == name)
        panel = part.panel
        if not (panel.grooves or panel.rim_holes or panel.pockets):
            yield wall, part


def _scribed(
    part: Part, wall: Wall, spec: FaceFrameSpec, gaps: Gaps, catalogue: Catalogue
) -> Part:
    b, panel = part.box(), part.panel
    # the gap is measured from the stile's inner edge, so all of it is stile
    inner = replace(b, x0=b.x1) if wall is Wall.LEFT else replace(b, x1=b.x0)
    line = gaps.along(wall, Front(part.name, inner, panel.material, 0.0), b.z0, b.z1)
    # facing the front with the length up, the width runs to the left
    rim, x = (Rim.REAR, b.x1) if wall is Wall.LEFT else (Rim.FRONT, b.x0 + line.wide)
    allowance = max(spec.scribe, line.spare)
    board = catalogue.material(panel.material, subject=spec.name)
    if board.by_length:
        require(part.full_name, "width", line.wide + allowance, 0.0,
                max(s.width for s in board.sheets), f"from {board.title}")
    place = part.place.moved(x - part.place.origin[0], 0.0, 0.0)
    scribed = replace(
        panel, width=line.wide, tapers=(line.taper(rim, allowance),),
        bands=tuple(band for band in panel.bands if band.rim is not rim),
        visible=panel.visible - {rim},
    )
    check_panel(scribed, part.full_name, spec.rules)
    return replace(part, panel=scribed, place=place)
