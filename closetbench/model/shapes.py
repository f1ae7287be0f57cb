"""Solids of panels, made without boolean operations wherever that can be.

A panel less its grooves and notches is a box less boxes. Its faces are worked out on a
grid and put together with the edges that they share; where its section is the same from
end to end, that is extruded. A hole is a ring left out of a face, a wall and a bottom.
For the panels of a closet that is several times as quick as one cut with all tools, and
leaves no seams across faces; the cut is kept for what the grid does not decide.
"""

from __future__ import annotations

import math

import FreeCAD
import Part

from closetbench.core.panel import Box, Face, HoleRow, Panel, Rim, RimHole, Section
from closetbench.core.parts import Place
from closetbench.model.grid import Lines, Node, Patch, Undecided, surface

Vector = FreeCAD.Vector

ROOM = 1e-3
"""What must lie between a hole and anything else for it to be sewn in, mm."""


def panel_shape(panel: Panel) -> Part.Shape:
    """The finished panel as one solid in its own frame (mm)."""
    faces, solid = _grooved(panel)
    work = [_rim_drill(panel, h) for h in panel.rim_holes]
    if panel.holes and not panel.tapers and _apart(panel):
        # what is sewn once is sewn in half the time
        drilled = _drilled(faces or solid.Faces, panel)
        if drilled is not None:
            return _cut(drilled, work)
    solid = solid or _solid(faces)
    if solid is None:
        return cut_shape(panel)
    return _cut(solid, [t for row in panel.holes for t in _drills(panel, row)] + work)


def cut_shape(panel: Panel) -> Part.Shape:
    """The same solid by one cut with all tools at once."""
    tools = [_box(panel.groove_box(g)) for g in panel.grooves]
    tools += [_box(panel.notch_box(n)) for n in panel.notches]
    tools += [t for row in panel.holes for t in _drills(panel, row)]
    tools += [_rim_drill(panel, h) for h in panel.rim_holes]
    return _cut(_blank(panel), tools)


def placement(place: Place) -> FreeCAD.Placement:
    """Where a panel's frame lies, as FreeCAD's placement."""
    a, b, c, o = place.along, place.across, place.up, place.origin
    return FreeCAD.Placement(FreeCAD.Matrix(
        a[0], b[0], c[0], o[0],
        a[1], b[1], c[1], o[1],
        a[2], b[2], c[2], o[2],
        0.0, 0.0, 0.0, 1.0,
    ))


def _cut(blank: Part.Shape, tools: list[Part.Shape]) -> Part.Shape:
    return blank.cut(tools).Solids[0] if tools else blank


def _box(box: Box) -> Part.Shape:
    return Part.makeBox(
        box.x1 - box.x0, box.y1 - box.y0, box.z1 - box.z0, Vector(box.x0, box.y0, box.z0)
    )


def _blank(panel: Panel) -> Part.Shape:
    """The panel before any work but its tapers."""
    if panel.tapers:
        return _tapered(panel)
    return Part.makeBox(panel.length, panel.width, panel.thickness)


def _grooved(panel: Panel) -> tuple[list[Part.Face], Part.Shape | None]:
    """The panel without its holes: its faces, still to be sewn, or a solid."""
    if panel.section is Section.QUARTER_ROUND:
        return [], _quarter_round(panel)
    if panel.tapers:
        return [], _blank(panel)
    boxes = [panel.groove_box(g) for g in panel.grooves]
    boxes += [panel.notch_box(n) for n in panel.notches]
    blank = Box(0.0, 0.0, 0.0, panel.length, panel.width, panel.thickness)
    if boxes:
        try:
            lines, patches = surface(blank, boxes)
        except Undecided:
            return [], _cut(_box(blank), [_box(b) for b in boxes])
        solid = _extruded(lines, patches)
        return ([], solid) if solid else (_faces(lines, patches), None)
    return [], _box(blank)


def _tapered(panel: Panel) -> Part.Shape:
    return _standing([Vector(x, y, 0.0) for x, y in panel.outline()], Vector(
        0.0, 0.0, panel.thickness))


def _quarter_round(panel: Panel) -> Part.Shape:
    r = panel.width
    mid, far, up = (
        Vector(0.0, r * math.cos(a), r * math.sin(a)) for a in (math.pi / 4, 0.0, math.pi / 2)
    )
    corner = Vector(0.0, 0.0, 0.0)
    edges = [
        Part.LineSegment(corner, far).toShape(), Part.Arc(far, mid, up).toShape(),
        Part.LineSegment(up, corner).toShape(),
    ]
    bar = Part.Face(Part.Wire(edges)).extrude(Vector(panel.length, 0.0, 0.0))
    return bar.common(_tapered(panel)).Solids[0] if panel.tapers else bar


def _extruded(lines: Lines, patches: list[Patch]) -> Part.Shape | None:
    """The solid by its section, if there is an axis along which nothing changes."""
    axis = next((i for i, line in enumerate(lines) if len(line) == 2), None)
    sections = [p for p in patches if p.axis == axis and not p.positive]
    if len(sections) != 1 or len(sections[0].loops) > 1:
        return None
    points = [_point(lines, node) for node in sections[0].loops[0]]
    way = [0.0, 0.0, 0.0]
    way[sections[0].axis] = lines[sections[0].axis][1]
    return _standing(points, Vector(*way))


def _standing(outline: list[Vector], way: Vector) -> Part.Shape:
    """The outline extruded along ``way``."""
    return Part.Face(Part.makePolygon([*outline, outline[0]])).extrude(way)


def _faces(lines: Lines, patches: list[Patch]) -> list[Part.Face]:
    """The faces of the solid, with the edges that they share."""
    # wires keep edges only if these share their ends, and sewing is quick only on kept edges
    ends: dict[Node, Part.Vertex] = {}
    edges: dict[tuple[Node, Node], Part.Edge] = {}

    def end(node: Node) -> Part.Vertex:
        if node not in ends:
            ends[node] = Part.Vertex(_point(lines, node))
        return ends[node]

    def edge(a: Node, b: Node) -> Part.Edge:
        key = (a, b) if a < b else (b, a)
        if key not in edges:
            edges[key] = Part.Edge(end(key[0]), end(key[1]))
        return edges[key]

    faces = []
    for patch in patches:
        wires = [
            Part.Wire([edge(loop[i - 1], node) for i, node in enumerate(loop)])
            for loop in patch.loops
        ]
        if len(wires) > 1:
            faces.append(Part.Face(wires))
            continue
        normal = [0.0, 0.0, 0.0]
        normal[patch.axis] = 1.0 if patch.positive else -1.0
        plane = Part.Plane(_point(lines, patch.loops[0][0]), Vector(*normal))
        faces.append(Part.Face(plane, wires[0]))
    return faces


def _solid(faces: list[Part.Face]) -> Part.Shape | None:
    """The solid that faces enclose, None where they do not."""
    shell = Part.Compound(faces)
    shell.sewShape()
    if shell.ShapeType != "Shell" or not shell.isClosed():
        return None
    return Part.Solid(shell)


def _point(lines: Lines, node: Node) -> Vector:
    return Vector(lines[0][node[0]], lines[1][node[1]], lines[2][node[2]])


def _drills(panel: Panel, row: HoleRow) -> list[Part.Shape]:
    depth = min(row.depth, panel.thickness)
    z = panel.thickness - depth if row.face is Face.UPPER else 0.0
    drill = Part.makeCylinder(row.diameter / 2, depth)
    return [drill.translated(Vector(x, y, z)) for x, y in row.centres()]


def _rim_drill(panel: Panel, hole: RimHole) -> Part.Shape:
    x, y = (0.0, hole.at) if hole.rim.is_end else (hole.at, 0.0)
    way = {
        Rim.START: Vector(1, 0, 0), Rim.END: Vector(-1, 0, 0), Rim.FRONT: Vector(0, 1, 0),
        Rim.REAR: Vector(0, -1, 0),
    }[hole.rim]
    if hole.rim is Rim.END:
        x = panel.length
    elif hole.rim is Rim.REAR:
        y = panel.width
    return Part.makeCylinder(hole.diameter / 2, hole.depth, Vector(x, y, hole.level), way)


def _openings(panel: Panel, row: HoleRow) -> tuple[Face, ...]:
    through = row.depth >= panel.thickness - 1e-9
    return (row.face, row.face.other) if through else (row.face,)


def _apart(panel: Panel) -> bool:
    """Whether every hole has room around it in the face that it opens in."""
    holes: list[tuple[float, float, float]] = []
    for row in panel.holes:
        reach = row.diameter / 2 + ROOM
        faces = _openings(panel, row)
        cuts = [panel.groove_box(g) for g in panel.grooves if g.face in faces]
        cuts += [panel.notch_box(n) for n in panel.notches]
        for x, y in row.centres():
            if not (
                reach < x < panel.length - reach and reach < y < panel.width - reach
            ) or any(
                b.x0 - reach < x < b.x1 + reach and b.y0 - reach < y < b.y1 + reach for b in cuts
            ):
                return False
            holes.append((x, y, reach))
    holes.sort()
    widest = 2 * max(r for _, _, r in holes)
    for i, (x, y, r) in enumerate(holes):
        for x2, y2, r2 in holes[i + 1:]:
            if x2 - x > widest:
                break
            # two that lie on opposite faces over each other are left to the cut as well
            if (x2 - x) ** 2 + (y2 - y) ** 2 < (r + r2) ** 2:
                return False
    return True


def _drilled(blank: list[Part.Face], panel: Panel) -> Part.Shape | None:
    """The blank of these faces with the holes sewn in, None where that does not come out
    closed."""
    faces = list(blank)
    flats = {side: _flat_at(faces, _level(panel, side)) for side in Face}
    rings: dict[int, list[Part.Wire]] = {}
    walls: list[Part.Shape] = []
    for row in panel.holes:
        hole, ends = _hole(panel, row)
        for x, y in row.centres():
            shift = Vector(x, y, 0.0)
            walls += hole.translated(shift).Faces
            for side, ring in ends.items():
                index = _face_at(faces, flats[side], Vector(x, y, _level(panel, side)))
                if index is None:
                    return None
                rings.setdefault(index, []).append(ring.translated(shift))
    for index, wires in rings.items():
        faces[index] = _pierced(faces[index], wires)
    return _solid([*faces, *walls])


def _hole(panel: Panel, row: HoleRow) -> tuple[Part.Shape, dict[Face, Part.Wire]]:
    """Wall and, in a blind hole, bottom of a hole at the origin, and its ring in each face.

    The ring is the wall's own edge, so that sewing finds it without a search.
    """
    drill = _drills(panel, HoleRow(row.name, row.face, 0.0, 0.0, row.diameter, row.depth))[0]
    wall = next(f for f in drill.Faces if f.BoundBox.ZLength > 1e-6)
    flat = [f for f in drill.Faces if f.BoundBox.ZLength <= 1e-6]
    levels = {side: _level(panel, side) for side in _openings(panel, row)}
    bottoms = [f for f in flat if all(abs(f.BoundBox.ZMax - z) > 1e-6 for z in levels.values())]
    rings = {}
    for side, z in levels.items():
        edge = next(
            e for e in wall.Edges
            if e.BoundBox.ZLength < 1e-6 and abs(e.BoundBox.ZMax - z) < 1e-6
        )
        rings[side] = Part.Wire([edge])
    return Part.Compound([wall, *bottoms]).reversed(), rings


def _level(panel: Panel, face: Face) -> float:
    return panel.thickness if face is Face.UPPER else 0.0


def _pierced(face: Part.Face, rings: list[Part.Wire]) -> Part.Face:
    """The face without what lies within the rings, looking the same way."""
    # which way round a ring has to run differs with the face's history and with FreeCAD's
    # version: run the wrong way it would be added to the area
    made = Part.Face([face.OuterWire, *rings])
    if made.Area > face.Area:
        made = Part.Face([face.OuterWire, *(ring.reversed() for ring in rings)])
    same = made.normalAt(0.0, 0.0).dot(face.normalAt(0.0, 0.0)) > 0
    return made if same else made.reversed()


def _flat_at(faces: list[Part.Face], z: float) -> list[int]:
    return [
        i for i, f in enumerate(faces)
        if abs(f.BoundBox.ZMin - z) < 1e-6 and abs(f.BoundBox.ZMax - z) < 1e-6
    ]


def _face_at(faces: list[Part.Face], among: list[int], at: Vector) -> int | None:
    found = [
        i for i in among
        if faces[i].BoundBox.XMin < at.x < faces[i].BoundBox.XMax
        and faces[i].BoundBox.YMin < at.y < faces[i].BoundBox.YMax
    ]
    if len(found) > 1:
        found = [i for i in found if faces[i].isInside(at, 1e-6, True)]
    return found[0] if len(found) == 1 else None
